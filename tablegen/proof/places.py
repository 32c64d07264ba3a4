"""What worked examples cite: a page, its row and its column, and the figure that was read there."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import cached_property

from msgspec import Struct

from tablegen.proof.found import Found
from tablegen.proof.names import Citing
from tablegen.proof.rows import SIGNS
from tablegen.proof.sentences import told_at
from tablegen.proof.stated import Pitch, called

HELD = '\0'
"""Stands for a name in quotes, which may hold anything."""


class Kept(Found, dict=True):
    """What was found, with every figure by its page."""

    @cached_property
    def cells(self) -> dict[int, list[tuple[str, str, str]]]:
        """Return row, head and figure of all that was read on a page."""
        return {}

    @cached_property
    def pitches(self) -> dict[int, Pitch]:
        """Return whose page each is that is of one pitch."""
        return {}

    def figure(self, page: int, row: str, head: str, printed: str, *right: str) -> None:
        """Take a figure down, and keep it."""
        there = self.cells.setdefault(page, [])
        there.append((there[-1][0] if there and there[-1][0] == row else row, head, printed))
        super().figure(page, row, head, printed, *right)


class Place(Struct, frozen=True):
    """One place."""

    page: int
    title: str
    row: str
    head: str
    """'' where the row has one figure."""


class Places(Struct):
    """All figures that may be cited."""

    citing: Citing
    kept: Sequence[Kept]
    """What was read of openings, of pages by member, of tables by the run and of reference tables."""

    def pitch_of(self, page: int) -> Pitch | None:
        """Return whose page one is; None where it is of no one pitch."""
        return next((kept.pitches[page] for kept in self.kept if page in kept.pitches), None)

    def cells(self, page: int) -> list[tuple[str, str, str]]:
        """Return row, head and figure of all that was read on a page."""
        return next((kept.cells[page] for kept in self.kept if page in kept.cells), [])

    def rows(self, page: int) -> Iterator[str]:
        """Yield what the rows of a page are called, each with the title that it is under."""
        of_a_pitch = self.pitch_of(page) is not None
        for row, _head, _printed in self.cells(page):
            yield row.partition(', ')[2] if of_a_pitch else row

    def figures(self, place: Place) -> list[str]:
        """Return what stands in a place: nothing where there is none, several where its row has several."""
        exact, begun = list[str](), list[str]()
        begins = re.compile(rf'(?:^|: ){re.escape(place.row)}(?=[ ,:]|$)')
        for row, (_row, head, printed) in zip(self.rows(place.page), self.cells(place.page), strict=True):
            named = ('', head, head.replace(',', ''))  # beside a fraction the unit of a head has no room
            if {place.head, place.head.replace(',', ''), self._number(place.head)} & {*named}:
                if place.row in self._names(row, place.title):
                    exact.append(without_signs(printed))
                elif not place.title and begins.search(row):
                    begun.append(without_signs(printed))
        return exact or begun

    def _names(self, row: str, under: str) -> set[str]:
        """Return how a row may be told, under a title or without one."""
        title, _colon, label = row.rpartition(': ')
        if under:
            told = row.removeprefix(f'{under}, ')
            return {label} if title == under else {told} if told != row else set()
        number, _blank, unit = row.partition(' ')
        named = {row, label, self.citing.alike.get(row, row), f'{number} {self.citing.units.get(unit, unit)}'}
        return named | ({number} if '/' in number else set())

    def told(self, words: str) -> Iterator[Place]:
        """Yield the places that words name."""
        opening, closing = self.citing.quotes.split('{}')
        quoted = re.compile(f'{re.escape(opening)}(.*?){re.escape(closing)}')
        names = iter(quoted.findall(words))
        pages: list[int] = []
        for part in quoted.sub(HELD, words).split('; '):
            here, rest = self._pages(part)
            pages = here or pages
            rows, _under, columns = rest.partition(self.citing.under)
            if columns.endswith(self.citing.jacks):
                jacks, spacing = self._jacks(rows), columns.removesuffix(self.citing.jacks)
                heads = [
                    f'{self._number(spacing)}, {one}' for one in self.citing.jacks.strip(': ').split(', ')
                ]
                yield from (Place(page, '', row, head) for page in pages for row in jacks for head in heads)
                continue
            if rest.startswith(self.citing.added):
                runs = self._listed(rest.removeprefix(self.citing.added))
                yield from (Place(page, '', self.citing.small, run) for page in pages for run in runs)
                continue
            told_rows = [(one, next(names, '')) if one == HELD else (one, '') for one in self._listed(rows)]
            heads = [next(names, '') if one == HELD else one for one in self._listed(columns)] or ['']
            for page in pages:
                title = self._title(page, told_rows)
                for plain, name in told_rows[bool(title) :]:
                    yield from (Place(page, title, name or plain, head) for head in heads)

    def _number(self, words: str) -> str:
        """Return a number without its unit; other words as they are."""
        number, _blank, unit = words.rpartition(' ')
        return number if unit in self.citing.units and number else words

    def _jacks(self, rows: str) -> list[str]:
        """Return what jacks are called of which a row is cited, or the first and the last row."""
        numbers = [int(one) for one in re.findall(r'\d+', rows)]
        return [f'{self.citing.jack} {n}' for n in range(numbers[0], numbers[-1] + 1)] if numbers else ['']

    def _pages(self, part: str) -> tuple[list[int], str]:
        for sentence in (self.citing.pages, self.citing.page):
            found = told_at(sentence, part, 0)
            if found and all(one.isdigit() for one in found[0].values()):
                return [int(one) for one in found[0].values()], part[found[1] :].strip()
        return [], part

    def _listed(self, words: str) -> list[str]:
        *first, last = words.strip().strip(',').strip().split(', ')
        return [self._bare(one) for one in (*first, *last.split(self.citing.both)) if self._bare(one)]

    def _bare(self, words: str) -> str:
        for begins in (self.citing.rows, self.citing.row):
            words = words.strip().removeprefix(begins)
        return words

    def _title(self, page: int, rows: list[tuple[str, str]]) -> str:
        """Return the title that the first of several names is, '' where it is a row."""
        first = rows[0][1] if len(rows) > 1 else ''
        begins = f'{first}: ' if self.pitch_of(page) else f'{first}, '
        return first if first and any(row.startswith(begins) for row in self.rows(page)) else ''


def without_signs(figure: str) -> str:
    """Return a figure without the signs beside it."""
    for sign in SIGNS:
        figure = figure.replace(sign, '')
    return figure.strip()


def stands_in(figure: str, words: str) -> bool:
    """Return whether a figure stands in words by itself."""
    return (
        re.search(rf'(?<![\d/.])(?<!\d )(?<!\d−){re.escape(figure)}(?![\d/])(?! \d+/\d)(?!\.\d)', words)
        is not None
    )


def named_pitch(pitch: Pitch | None) -> str:
    """Return a pitch by its name, '' for none."""
    return called(pitch) if pitch else ''
