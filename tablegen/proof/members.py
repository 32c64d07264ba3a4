"""Reading the first opening of a pitch in a book of ten pages a pitch: the common, then hip, valley and jacks."""

from __future__ import annotations

from collections.abc import Sequence

from tablegen.proof.digits import FOOT_IN, read
from tablegen.proof.figures import figures
from tablegen.proof.found import Fault, Found
from tablegen.proof.names import Member, Names
from tablegen.proof.page import Page
from tablegen.proof.roof import Corner
from tablegen.proof.rows import RowsReader
from tablegen.proof.stated import Pitch, Stated, called, pitch_of

STEP, NOTES = ' in', 1.05
"""The unit of a step; figures are set larger than so many times the words at the foot."""


def read_members(pages: Sequence[Page], names: Names, book: Stated, found: Found) -> None:
    """Read every such page, and say which a pitch has not, or not beside the other."""
    if book.boards is None:
        return
    there: dict[tuple[Pitch, str], int] = {}
    for page in pages:
        pitch = pitch_of(page.pitch)
        member = next((one for one in names.tables.members if page.named(one.title)), None)
        if pitch is None or member is None or page.named(names.exact_foot):
            continue
        if (pitch, member.name) in there:
            found.faults.append(Fault('pitch', page.number, member.title, '', page.pitch, ''))
            continue
        there[pitch, member.name] = page.number
        found.read.add(page.number)
        _read(page, member, Corner(pitch.slope, book.boards), pitch, book, found)
    for pitch in book.pitches if there else ():
        places = [there.get((pitch, member.name)) for member in names.tables.members]
        for member, place in zip(names.tables.members, places, strict=True):
            if place is None or (places[0] is not None and place - places[0] > 1):
                found.faults.append(Fault('opening', place or 0, called(pitch), member.title, '', ''))


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
