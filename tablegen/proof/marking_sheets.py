"""Reading the marking sheets of a book whose pitches have one opening each: where each line says that its figure is read."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence

from msgspec import Struct

from tablegen.proof.found import Fault, Found
from tablegen.proof.names import MarkingNames, Side, Where
from tablegen.proof.page import Line, Page, close
from tablegen.proof.stated import Pitch
from tablegen.proof.worked_lines import cells_of

LENGTHS, DRAWN = 'lengths', 'drawing'
"""What stands for the lengths by run of a page, and for its drawing."""


class Entry(Struct):
    """One line to fill in."""

    name: str
    words: str = ''


class MarkingReader:
    """Reads both sheets.

    Given:
        glances   the pages of each glance that were read, which all are known at the end
        openings  the pages of the pitches' openings; a book without any has other places
    """

    def __init__(
        self,
        names: MarkingNames,
        sides: tuple[Side, Side],
        glances: Sequence[Callable[[], set[int]]],
        openings: Mapping[tuple[Pitch, int], int],
    ):
        self.names, self.glances, self.openings, self.found = names, glances, openings, Found()
        self.known = [dict(_called(side, names)) for side in sides]
        self.pages: list[tuple[int, str, str, int]] = []
        """Pages that lines cite: where, the line, the number, and which glance it should be."""

    def page(self, page: Page) -> None:
        """Read a page, if it is one."""
        title = next(iter(page.phrases), None)
        if title is None or title.text not in self.names.titles or not self.openings:
            return
        which = self.names.titles.index(title.text)
        self.found.read.add(page.number)
        wanted = dict(self.names.lines[which])
        entries, numbers = _entries(page)
        self._numbers(page, title.text, numbers)
        if [entry.name for entry in entries] != list(wanted):
            odd = [entry.name for entry in entries if entry.name not in wanted]
            self._fault(
                'gap', page, f'{title.text}, {"; ".join(odd or set(wanted) - {one.name for one in entries})}'
            )
        for entry in entries:
            if entry.name in wanted:
                self._where(page, entry, wanted[entry.name])

    def end(self) -> None:
        """Hold pages that are cited against those of the glances."""
        for place, name, number, glance in self.pages:
            right = [str(one) for one in sorted(self.glances[glance]())] if glance < len(self.glances) else []
            self.found.figure(place, name, '', number, *(right or ['']))

    def _fault(self, kind: str, page: Page, row: str) -> None:
        self.found.faults.append(Fault(kind, page.number, row, '', '', ''))

    def _numbers(self, page: Page, title: str, numbers: list[int]) -> None:
        first = 1 if title == self.names.titles[0] else len(self.names.lines[0]) + 1
        last = first + len(self.names.lines[self.names.titles.index(title)])
        if sorted(numbers) != list(range(first, last)):
            self._fault('gap', page, f'{title}, {" ".join(map(str, numbers))}')

    def _where(self, page: Page, entry: Entry, where: Where) -> None:
        """Hold what a line cites against what it should: the side, the rows and titles there, and the glance."""
        side, keys, glance = where
        _how, begins, cited = entry.words.partition(self.names.sides[side])
        if not keys:
            if any(one in entry.words for one in self.names.sides):
                self._fault('cited', page, entry.name)
            return
        told, rest = self._named(cited.strip(), side)
        self.found.figures += 1
        missing = [key for key in keys if not any(one.startswith(key) for some in told for one in some)]
        page_told = re.search(rf'{re.escape(self.names.short)} (\d+)$', rest)
        if glance >= 0 and page_told:
            self.pages.append((page.number, entry.name, page_told[1], glance))
        beyond = rest[: page_told.start()] if page_told else rest
        if not begins or missing or beyond.strip(' ;'):
            self.found.faults.append(
                Fault('cited', page.number, entry.name, cited.strip() or entry.words, str(page.number), '')
            )

    def _named(self, cited: str, side: int) -> tuple[list[tuple[str, ...]], str]:
        """Return what the names that words begin with are of, and the words after them."""
        found: list[tuple[str, ...]] = []
        while name := max((one for one in self.known[side] if cited.startswith(one)), key=len, default=''):
            found.append(self.known[side][name])
            cited = cited[len(name) :].lstrip('; ')
        return found, cited


def _called(side: Side, names: MarkingNames) -> Iterator[tuple[str, tuple[str, ...]]]:
    """Yield what titles, rows and heads of a page are called, and the names of their figures."""
    if not side.title:
        return
    yield names.lengths, (LENGTHS,)
    yield names.drawing, (DRAWN,)
    for rows in side.rows:
        if rows.title:
            yield rows.title, tuple(key for _label, keys in rows.rows for key in keys)
        for label, keys in rows.rows:
            yield (f'{rows.title}, {label}' if rows.title else label), keys
        for place, head in enumerate(rows.heads):
            if head and rows.title:
                yield head, tuple(keys[place] for _label, keys in rows.rows if place < len(keys))


def _entries(page: Page) -> tuple[list[Entry], list[int]]:
    """Return the lines to fill in, and the numbers beside them."""
    edge = page.lines[0][0].left
    found: list[Entry] = []
    numbers: list[int] = []
    for line in page.lines[1:]:
        cells = cells_of(line)
        first = line[0]
        if first.bold and first.text.isdigit() and first.left < edge + 5:
            numbers.append(int(first.text))
            cells = [cell for cell in (cells[0][1:], *cells[1:]) if cell]
        if not cells or not (edge + 5 < cells[0][0].left < edge + 30):
            continue
        _take(cells[0], found)
    return found, numbers


def _take(cell: Line, found: list[Entry]) -> None:
    """Add words to a line, or begin another with its name in bold."""
    if cell[0].bold:
        count = next((n for n, word in enumerate(cell) if not word.bold), len(cell))
        found.append(Entry(close(cell[:count]), close(cell[count:])))
    elif found:
        found[-1].words += f' {close(cell)}'
