"""What worked examples cite: a page, its row and its column, and the figure that was read there."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from functools import cached_property

from msgspec import Struct, field

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

    def figure(self, page: int, row: str, head: str, printed: str, *right: str) -> None:
        """Take a figure down, and keep it."""
        self.cells.setdefault(page, []).append((row, head, printed))
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
    kept: Kept
    openings: Mapping[tuple[Pitch, int], int] = field(default_factory=dict)

    def pitch_of(self, page: int) -> Pitch | None:
        """Return whose opening a page is of."""
        return next((pitch for (pitch, _side), one in self.openings.items() if one == page), None)

    def figures(self, place: Place) -> list[str]:
        """Return what stands in a place: nothing where there is none, several where its row has several."""
        found = []
        for row, head, printed in self.kept.cells.get(place.page, ()):
            bare = row.partition(', ')[2]
            title, _colon, label = bare.rpartition(': ')
            number, _blank, unit = bare.partition(' ')
            named = {bare, self.citing.alike.get(bare, bare), f'{number} {self.citing.units.get(unit, unit)}'}
            named |= {number} if '/' in number else set()
            named |= set() if place.title else {label}
            if place.title:
                named = {label} if title == place.title else set()
            if place.row in named and place.head in ('', head):
                found.append(without_signs(printed))
        return found

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
            told_rows = [(one, next(names, '')) if one == HELD else (one, '') for one in self._listed(rows)]
            heads = [next(names, '') for _one in self._listed(columns)] if columns else ['']
            for page in pages:
                title = self._title(page, told_rows)
                for plain, name in told_rows[bool(title) :]:
                    yield from (Place(page, title, name or plain, head) for head in heads)

    def _pages(self, part: str) -> tuple[list[int], str]:
        for sentence in (self.citing.pages, self.citing.page):
            found = told_at(sentence, part, 0)
            if found and all(one.isdigit() for one in found[0].values()):
                return [int(one) for one in found[0].values()], part[found[1] :].strip()
        return [], part

    def _listed(self, words: str) -> list[str]:
        bare = words.strip().strip(',').strip()
        for begins in (self.citing.rows, self.citing.row):
            bare = bare.removeprefix(begins)
        *first, last = bare.split(', ')
        return [one.strip() for one in (*first, *last.split(self.citing.both)) if one.strip()]

    def _title(self, page: int, rows: list[tuple[str, str]]) -> str:
        """Return the title that the first of several names is, '' where it is a row."""
        first = rows[0][1] if len(rows) > 1 else ''
        titled = (
            row.partition(', ')[2].startswith(f'{first}: ')
            for row, _head, _printed in self.kept.cells.get(page, ())
        )
        return first if first and any(titled) else ''


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
