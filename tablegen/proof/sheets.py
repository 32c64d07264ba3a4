"""Reading the reference tables: each cell by its title, its row and its head, and whether all of them are there."""

from __future__ import annotations

import re
from collections.abc import Sequence
from fractions import Fraction

from msgspec.structs import replace

from tablegen.proof.digits import named, read, real
from tablegen.proof.found import Fault
from tablegen.proof.laid import Laid, laid
from tablegen.proof.names import Sheet
from tablegen.proof.page import Page, Phrase
from tablegen.proof.places import Kept
from tablegen.proof.roof import ANY_BOARDS, Boards, corner
from tablegen.proof.rows import with_signs
from tablegen.proof.sentences import told
from tablegen.proof.stated import Pitch, Stated, pitch_of
from tablegen.proof.tabled import KNOWN, Asked, right
from tablegen.proof.tabled_plans import (
    BY_SIDES,
    PAIRED,
    SET_OUT,
    SIDES,
    Cell,
    Hip,
    is_known,
    of_pitches,
    of_plan,
    of_sides,
    set_out,
)

SIZE = re.compile(r'\d+×\d+')
NUMBER = re.compile(r'\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?')
OF_A_SEAT = {'height', 'stock-left'}
"""Kinds of tables whose title says a seat."""
LEVEL = Pitch(Fraction(12), False)
"""Stands for any pitch, where rows are of something else."""
MINUS = '−'
TITLE = 1.3
"""Titles are set larger than so many times the words at the foot."""


class SheetReader:
    """All reference tables of a book."""

    def __init__(self, sheets: Sequence[Sheet], book: Stated):
        self.sheets = [sheet for sheet in sheets if _is_known(sheet)]
        self.book, self.found = book, Kept()
        self.seen: dict[str, dict[tuple[str, str], int]] = {}
        """Row and head of every cell that was read, and its page, by the title of its table."""

    def page(self, page: Page) -> None:
        """Read a page, if it has such a table."""
        large = [phrase for phrase in page.phrases if phrase.size > TITLE * page.notes_size]
        titles = [(phrase, sheet) for phrase in large if (sheet := _sheet(self.sheets, phrase))]
        bases = [phrase.base for phrase, _sheet in titles]
        for title, sheet in titles:
            self.found.read.add(page.number)
            self.seen.setdefault(sheet.title, {})
            foot = max((base for base in bases if base < title.base - 1), default=0.0)
            found = laid(page, title.base, foot, paired=not sheet.span)
            if not found or not self._known(found, sheet):
                self.found.faults.append(Fault('pitch', page.number, title.text, '', '', ''))
                continue
            self._cells(page, sheet, found)

    def end(self) -> None:
        """Say what of these tables is nowhere."""
        groups = {sheet.group for sheet in self.sheets if sheet.title in self.seen}
        for sheet in self.sheets:
            if sheet.group in groups:
                self._missing(sheet)

    def _known(self, found: Laid, sheet: Sheet) -> bool:
        over = ' '.join(one.text for one in found.above) if sheet.span else ''
        heads = [head.text for head in found.heads]
        return (found.corner, over) == (sheet.corner, sheet.span) and set(heads) <= {
            one for one, _kind in sheet.columns
        }

    def _cells(self, page: Page, sheet: Sheet, found: Laid) -> None:
        kinds, seen = dict(sheet.columns), self.seen[sheet.title]
        for label, cells in found.rows:
            for head, printed in zip(found.heads, cells, strict=True):
                wanted = (
                    self._right(sheet, kinds[head.text], head.text, label)
                    if (label, head.text) not in seen
                    else ()
                )
                seen[label, head.text] = page.number
                said = with_signs(printed).replace(f'{MINUS} ', MINUS)
                self.found.figure(page.number, f'{sheet.title}, {label}', head.text, said, *(wanted or ('',)))

    def _right(self, sheet: Sheet, kind: str, head: str, label: str) -> tuple[str, ...]:
        """Return what a cell may read, none where its row is none of the table's."""
        if not is_known(sheet.key):
            asked = self._asked(sheet, kind, head, label)
            return (right(asked),) if asked else ()
        if sheet.rows and label not in sheet.rows:
            return ()
        number, per = NUMBER.search(head), self.book.per
        if sheet.key in SET_OUT:
            return set_out(
                sheet.key, kind, label, self.book.exactly(number[0]) if number else Fraction(0), per
            )
        hip = self._hip(sheet, label)
        boards = self.book.boards or ANY_BOARDS
        thick = map(real, (boards.ridge, boards.hip, boards.rafter))
        return of_plan(sheet.key, kind, Cell(hip, *thick), per) if hip else ()

    def _hip(self, sheet: Sheet, label: str) -> Hip | None:
        """Return the hip that a row is of; None where it is none of the table's."""
        pitches = [pitch_of(one) for one in label.split()] if sheet.key in PAIRED else [pitch_of(label)]
        first, last = pitches[0], pitches[-1]
        if first is None or last is None:
            return None
        if sheet.key in PAIRED:
            return of_pitches(first.slope, last.slope)
        if sheet.key in BY_SIDES:
            return of_sides(int(label), LEVEL.slope)
        if self.book.pitches and first not in self.book.pitches:
            return None
        return of_sides(int(sheet.key.removesuffix(SIDES)), first.slope)

    def _asked(self, sheet: Sheet, kind: str, head: str, label: str) -> Asked | None:
        """Return what a cell is of; None where its row is none of the table's."""
        pitch, row = pitch_of(label), read(label.removesuffix('°'))
        if pitch is None or row is None or (sheet.rows and label not in sheet.rows):
            return None
        if not sheet.rows and self.book.pitches and pitch not in self.book.pitches:
            return None
        by_pitch = not sheet.rows or sheet.key == 'pitch-to-degrees'
        sizes, number = SIZE.findall(head), NUMBER.search(head)
        own = SIZE.findall(sheet.title)
        return Asked(
            sheet.key,
            kind,
            row,
            self.book.exactly(number[0]) if number and not sizes else Fraction(0),
            (sizes or own or [''])[0],
            corner((pitch if by_pitch else LEVEL).slope, self._boards(sheet, own)),
            self.book,
        )

    def _boards(self, sheet: Sheet, sizes: Sequence[str]) -> Boards:
        boards = self.book.boards or ANY_BOARDS
        if sizes:
            boards = replace(boards, rafters=sizes[-1], hips=sizes[0], valleys=sizes[0])
        seat = NUMBER.search(sheet.title) if sheet.key in OF_A_SEAT else None
        return replace(boards, seat=self.book.exactly(seat[0])) if seat else boards

    def _missing(self, sheet: Sheet) -> None:
        """Say which cells of a table are nowhere; a page is where the cell above or below it stands."""
        seen = self.seen.get(sheet.title, {})
        rows = sheet.rows or tuple(
            f'{named(pitch.number)}{"°" * pitch.in_degrees}' for pitch in self.book.pitches
        )
        for head, _kind in sheet.columns:
            for place, row in enumerate(rows):
                if (row, head) not in seen:
                    near = [one for one in (*rows[place::-1], *rows[place:]) if (one, head) in seen]
                    page = seen[near[0], head] if near else next(iter(seen.values()), 0)
                    self.found.faults.append(Fault('missing', page, f'{row}, {head}', sheet.title, '', ''))


def _is_known(sheet: Sheet) -> bool:
    return sheet.key in KNOWN or is_known(sheet.key)


def _sheet(sheets: Sequence[Sheet], title: Phrase) -> Sheet | None:
    """Return the table that a title names, whole or a part of it."""
    return next((one for one in sheets if title.text == one.title or told(one.part, title.text)), None)
