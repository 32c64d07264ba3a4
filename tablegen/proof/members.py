"""Reading the first opening of a pitch in a book of ten pages a pitch: the common, then hip, valley and jacks."""

from __future__ import annotations

from tablegen.proof.digits import FOOT_IN, read
from tablegen.proof.figures import figures
from tablegen.proof.found import Fault, Found
from tablegen.proof.names import Member, Names
from tablegen.proof.page import Page
from tablegen.proof.places import Kept
from tablegen.proof.roof import Corner, corner
from tablegen.proof.rows import RowsReader
from tablegen.proof.stated import Pitch, Stated, called, pitch_of

STEP, NOTES = ' in', 1.05
"""The unit of a step; figures are set larger than so many times the words at the foot."""


class MemberReader:
    """Reads every such page."""

    def __init__(self, names: Names, book: Stated):
        self.names, self.book, self.found = names, book, Kept()
        self.there: dict[tuple[Pitch, str], int] = {}

    def page(self, page: Page) -> None:
        """Read a page, if it is one."""
        pitch, boards = pitch_of(page.pitch), self.book.boards
        member = next((one for one in self.names.tables.members if page.named(one.title)), None)
        if pitch is None or member is None or boards is None or page.named(self.names.exact_foot):
            return
        if (pitch, member.name) in self.there:
            self.found.faults.append(Fault('pitch', page.number, member.title, '', page.pitch, ''))
            return
        self.there[pitch, member.name] = page.number
        self.found.read.add(page.number)
        self.found.pitches[page.number] = pitch
        _read(page, member, corner(pitch.slope, boards), pitch, self.book, self.found)

    def end(self) -> None:
        """Say which page a pitch has not, or not beside the other."""
        members = self.names.tables.members
        for pitch in self.book.pitches if self.there else ():
            places = [self.there.get((pitch, member.name)) for member in members]
            for member, place in zip(members, places, strict=True):
                if place is None or (places[0] is not None and place - places[0] > 1):
                    self.found.faults.append(
                        Fault('opening', place or 0, called(pitch), member.title, '', '')
                    )


def _read(page: Page, member: Member, at: Corner, pitch: Pitch, book: Stated, found: Found) -> None:
    right = figures(at, book)
    rows = RowsReader(page, page.lines, 0.0, called(pitch), right, found)
    held = {'body': f'{member.name}-body', 'tongue': f'{member.name}-tongue'}
    steps = FOOT_IN / (read(right['step'].removesuffix(STEP)) or FOOT_IN)
    rows.sentence(member.held_whole if steps == 1 else member.held, held, '{body} & {tongue}')
    if steps != 1:
        less = member.halved if steps == 2 else member.divided.replace('{number}', str(steps))
        rows.sentence(less, {'step': 'step'})
    rows.read(member.rows)
    head = max(page.body, key=lambda word: word.size)
    rows.strange(page.notes_size * NOTES, head.base - head.size / 3)
