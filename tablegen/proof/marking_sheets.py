"""Reading the marking sheets of a book whose pitches have one opening each: where each line says that its figure is read."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator

from msgspec import Struct

from tablegen.proof.counted import Counted
from tablegen.proof.found import Fault, Found
from tablegen.proof.names import MarkingNames, Side, Where
from tablegen.proof.page import Line, Page, close
from tablegen.proof.stated import called
from tablegen.proof.worked_lines import cells_of

LENGTHS, OF_JACKS, DRAWN = 'lengths', 'jacks', 'drawing'
"""What stands for the lengths by run of a page, for those of jacks, and for its drawing."""


class Entry(Struct):
    """One line to fill in."""

    name: str
    words: str = ''


class MarkingReader:
    """Reads both sheets.

    Given:
        counted  what has the pages of a pitch; a book without any has no sheets
    """

    def __init__(self, names: MarkingNames, sides: tuple[Side, Side], counted: Counted):
        self.names, self.counted, self.found = names, counted, Found()
        self.known = [dict(_called(side, names)) for side in sides]
        self.titled: dict[str, int] = {}
        """The first page of each title."""
        self.at_end: list[Callable[[], None]] = []
        """What is to be looked up once all pages are read."""

    def page(self, page: Page) -> None:
        """Read a page, if it is one."""
        title = next(iter(page.phrases), None)
        if title is None:
            return
        self.titled.setdefault(title.text, page.number)
        if title.text not in self.names.titles:
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
        """Hold pages and openings that are cited against where these things stand."""
        for one in self.at_end:
            one()

    def _fault(self, kind: str, page: Page, row: str) -> None:
        self.found.faults.append(Fault(kind, page.number, row, '', '', ''))

    def _numbers(self, page: Page, title: str, numbers: list[int]) -> None:
        first = 1 if title == self.names.titles[0] else len(self.names.lines[0]) + 1
        last = first + len(self.names.lines[self.names.titles.index(title)])
        if sorted(numbers) != list(range(first, last)):
            self._fault('gap', page, f'{title}, {" ".join(map(str, numbers))}')

    def _where(self, page: Page, entry: Entry, where: Where) -> None:
        """Hold what a line cites against what it should: the page of a pitch, the rows and titles there, the page that has more."""
        side, keys, more = where
        begun, cited, opening = self._begins(entry.words, side if keys else None)
        words, number = _without_page(cited if begun else entry.words, self.names.short)
        if not keys:
            if begun or number:
                self._fault('cited', page, entry.name)
            return
        self.found.figures += 1
        if more:
            self.at_end.append(lambda: self._more(page.number, entry.name, number, more))
        elif number:
            self._cited(page.number, entry.name, number)
        if not begun:
            self.at_end.append(lambda: self._nowhere(page.number, entry.name, side, keys))
        elif opening is None:
            named, beyond = self._named(words, side)
            missing = [key for key in keys if not any(one.startswith(key) for some in named for one in some)]
            if missing or beyond.strip(' ;'):
                self._cited(page.number, entry.name, cited)
        else:
            self.at_end.append(lambda: self._counted(page.number, entry.name, opening, words, side, keys))

    def _begins(self, words: str, side: int | None) -> tuple[bool, str, str | None]:
        """Return whether a place is named, of a side at best, what stands there, and the words that count its opening."""
        for place, begins in enumerate(self.names.sides):
            if begins in words and side in (None, place):
                return True, words.partition(begins)[2].strip(), None
        for told in self.names.counted:
            found = re.search(_counting(told), words)
            if found:
                return True, words[found.end() :].strip(), found[0].strip()
        return False, '', None

    def _cited(self, page: int, name: str, cited: str) -> None:
        self.found.faults.append(Fault('cited', page, name, cited, str(page), ''))

    def _more(self, page: int, name: str, number: str, title: str) -> None:
        right = self.titled.get(title)
        if right is None and self.counted.translated:
            return
        self.found.figure(page, name, title, number, str(right) if right else '')

    def _nowhere(self, page: int, name: str, side: int, keys: tuple[str, ...]) -> None:
        """Say that a line cites no page of a pitch, where there is one that has its figures."""
        if any(self.counted.has(kind, side) for kind in self._kinds(keys)):
            self._cited(page, name, '')

    def _counted(
        self, page: int, name: str, opening: str, words: str, side: int, keys: tuple[str, ...]
    ) -> None:
        """Count the openings of every pitch to the page that has what a line is for."""
        kinds = [kind for kind in self._kinds(keys) if self._has(kind, side, words, keys)]
        if not kinds and not self.counted.translated:
            self._cited(page, name, f'{opening} {words}')
        for pitch in self.counted.pitches if kinds else ():
            there = self.counted.page_of(kinds[0], side, pitch)
            count, way = divmod(there - self.counted.first_of(pitch), 2) if there else (0, 0)
            right = self.names.counted[way].format(opening=count + 1, row='').strip() if there else ''
            self.found.figure(page, f'{name}, {called(pitch)}', '', opening, right)

    def _kinds(self, keys: tuple[str, ...]) -> tuple[str, ...]:
        """Return the kinds of page that may have what a line is for."""
        by_run = keys[0] in (LENGTHS, OF_JACKS) or 'tail-' in keys[0]
        return ('jacks', 'runs', 'opening')[keys[0] != OF_JACKS :] if by_run else ('opening', 'member')

    def _has(self, kind: str, side: int, words: str, keys: tuple[str, ...]) -> bool:
        """Return whether what words name is what a line is for, on a page of a kind."""
        if not self.counted.has(kind, side):
            return False
        if kind == 'runs':
            return words == self.names.by_run
        if kind == 'jacks':
            return words == self.counted.jacks
        if kind == 'member':
            return (
                words == self.names.drawing if keys == (DRAWN,) else self.counted.rows_have(side, words, keys)
            )
        named, beyond = self._named(words, side)
        return not beyond and all(any(one.startswith(key) for some in named for one in some) for key in keys)

    def _named(self, cited: str, side: int) -> tuple[list[tuple[str, ...]], str]:
        """Return what the names that words begin with are of, and the words after them."""
        found: list[tuple[str, ...]] = []
        while name := max((one for one in self.known[side] if cited.startswith(one)), key=len, default=''):
            found.append(self.known[side][name])
            cited = cited[len(name) :].lstrip('; ')
        return found, cited


def _counting(told: str) -> str:
    """Return what finds the words that count an opening."""
    return re.escape(told.partition('{row}')[0]).replace(r'\{opening\}', r'\d+')


def _without_page(words: str, short: str) -> tuple[str, str]:
    """Return words without the page that they end with, and that; '' for none."""
    found = re.search(rf'(?:^|; |\s){re.escape(short)} (\d+)$', words)
    return (words[: found.start()].strip(' ;'), found[1]) if found else (words, '')


def _called(side: Side, names: MarkingNames) -> Iterator[tuple[str, tuple[str, ...]]]:
    """Yield what titles, rows and heads of a page are called, and the names of their figures."""
    if not side.title:
        return
    yield names.lengths, (LENGTHS, OF_JACKS)
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
