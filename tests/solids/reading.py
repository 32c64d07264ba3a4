"""A carpenter's reading of the book: each figure by its page's title, its section, its name and its head, and no other way.

A figure that was read is remembered, so that an assembly knows what it was made from, and one figure can be misread on
purpose. Nothing here knows what a figure should be. What is read is floats: nothing here is printed.
"""

from __future__ import annotations

import re
from functools import cached_property
from math import radians
from typing import NamedTuple

from headed import NotTold, Table, lines, phrases, read, reference_part
from headed_members import Members, members
from headed_pages import grid_parts, headed, under_spacings
from msgspec import Struct
from msgspec.structs import replace
from names import HOLE, JACKS, RIDGE_END, RUNS, TABLES

HALF_PART, HALF_DEGREE, HALF_DECIMAL = 1 / 32, 0.005, 0.0005
"""Most that rounding moves a figure: lengths to 1/16 in, angles to 0.01 degree, lengths per foot to 0.001 in."""
MISREAD_IN, MISREAD_DEGREES = 1 / 8, 1.0
"""What a figure is misread by, to see that it matters."""
COARSE = {
    'seat, level': 3 / 8, 'backed seat': 3 / 8,
    **{f'{head}: {way}': 3 / 16 for head in ('A less', 'B more') for way in ('level', 'along')},
}  # fmt: skip
"""By head, what shows no earlier, in: where a seat's level line leaves the underside of a hip, 1/32 of heel is 1/10 of
seat; what a slid hip takes off or adds to jacks is the slide, 1/32 out, drawn out along the hip."""
WORD_GAP_MM, ASIDE_MM = 1.5, 5


class Place(NamedTuple):
    """Where a figure stands."""

    page: str
    """Title."""
    section: str
    name: str
    """Of its row, or words around it."""
    head: str = ''
    """Of its column."""
    part: int = 0
    """Of a square's two figures, body first."""


class Figure(Struct, frozen=True):
    """A figure as it was read."""

    value: float
    """Inches, or degrees."""
    half: float
    """Most that its rounding can have moved it."""
    step: float
    """What it is misread by to see whether it matters."""


def figure(text: str, part: int, given: tuple[float, ...]) -> Figure:
    """Return a printed figure; what the carpenter set, 12 and the pitch, is not rounded, and neither is a whole angle."""
    text = text.rstrip('†‡§ ').split(' & ')[part]
    number = text.removesuffix('°')
    if text.endswith('°'):
        return Figure(float(number), HALF_DEGREE if '.' in number else 0.0, MISREAD_DEGREES)
    if '.' in text:
        return Figure(float(text), HALF_DECIMAL, MISREAD_IN)
    value = mixed(text)
    return Figure(value, 0.0 if value in given else HALF_PART, MISREAD_IN)


def mixed(text: str) -> float:
    """Return '53 11/16' in inches."""
    value = 0.0
    for word in text.removeprefix('−').split():
        upper, _, lower = word.partition('/')
        value += int(upper) / int(lower or 1)
    return -value if text.startswith('−') else value


class Pages:
    """The pages of one pitch, and those of all pitches."""

    def __init__(self, book, pitch: str) -> None:
        self.book, self.pitch = book, pitch
        self._known: dict[Place, Figure] = {}
        self._tables: dict[str, Table] = {}

    @property
    def slope(self) -> float:
        """Rise over run: the pitch that the pages bear at their head."""
        return mixed(self.pitch) / 12

    def figure(self, place: Place) -> Figure:
        """Return the figure that stands at a place."""
        if place not in self._known:
            given = (12.0, mixed(self.pitch)) if place.name.startswith('Square: ') else ()
            found = figure(self._text(place), place.part, given)
            self._known[place] = replace(found, step=COARSE.get(place.head, found.step))
        return self._known[place]

    def _text(self, place: Place) -> str:
        if place.page in self.openings:
            return self.openings[place.page].figure(place.section, place.name, place.head)
        if place.page in RUNS and HOLE in place.name:
            return self._hole(' '.join(self.run_titles[place.page]), place.name)
        if place.page in (*RUNS, JACKS):
            return self.grids[place.page].cell(place.head, place.name)[1]
        if place.page == RIDGE_END:
            return self._at_the_ridges_end(place.name)
        return self._table(place.page).cell(place.head, place.name)[1]

    def _of(self, template: str):
        found = [(n, headed(n, self.book.words(n), self.book.rem)) for n in self.book.numbers(template)]
        return [(n, page) for n, page in found if page.pitch == f'{self.pitch} in 12']

    @cached_property
    def openings(self) -> dict[str, Members]:
        """The opening by member, by titles."""
        both = [number for template in ('values', 'hip_values') for number, _ in self._of(template)]
        found = [members(number, self.book.words(number), self.book.rem) for number in both]
        return {page.title: page for page in found}

    @cached_property
    def run_titles(self) -> dict[str, list[str]]:
        return {
            title: [page.title for _, page in self._of('grid') if page.title.startswith(start)]
            for title, start in RUNS.items()
        }

    @cached_property
    def grids(self) -> dict[str, Table]:
        """Tables of runs, the small ones to add at their foot, and of jacks."""
        rem, found = self.book.rem, {}
        for title in RUNS:
            pages = [(n, page) for n, page in self._of('grid') if page.title in self.run_titles[title]]
            found[title] = Table(tuple(part for n, page in pages for part in grid_parts(n, page, 'ft', rem)))
        jacks = [(n, under_spacings(page, rem)) for n, page in self._of('jacks') if page.title == JACKS]
        found[JACKS] = Table(tuple(grid_parts(n, page, 'jack', rem)[0] for n, page in jacks))
        return found

    def _table(self, title: str) -> Table:
        if title not in self._tables:
            head, span = TABLES.get(title, ('in 12', ''))
            self._tables[title] = Table(
                tuple(
                    reference_part(page, title, below, head, span, self.book.rem)
                    for page, below in self.book.titled[title]
                )
            )
        return self._tables[title]

    def _at_the_ridges_end(self, name: str) -> str:
        """Return what stands in a hole of the page's words, or under a drawing that bears a name."""
        (number,) = [
            n for n in self.book.numbers('ref_ridge_end') if read(self.book.words(n)).startswith(RIDGE_END)
        ]
        words = self.book.words(number)
        if HOLE in name:
            return self._hole(read(words), name)
        long = len(name.split())
        caption = next(words[n : n + long] for n in range(len(words)) if read(words[n : n + long]) == name)
        left, right, top = caption[0].left - ASIDE_MM, caption[-1].right + ASIDE_MM, caption[0].base
        below = [word for word in words if word.base > top and left < word.left and word.right < right]
        told = [phrase.text for line in lines(below) for phrase in phrases(line, WORD_GAP_MM)]
        sizes = [text for text in told if re.fullmatch(r'[\d /]+ in', text)]
        return sizes[0].removesuffix(' in')

    def _hole(self, words: str, name: str) -> str:
        before, after = (re.escape(part) for part in name.split(HOLE))
        found = re.findall(rf'{before}(−?\d[\d./ ]*°?){after}', words)
        if len(found) != 1:
            raise NotTold(f'"{name}" is found {len(found)} times')
        return found[0].strip()


class Reading:
    """The pages as they are read, one of their figures misread perhaps, and the members made from them."""

    def __init__(
        self, pages: Pages, misread: dict[Place, float] | None = None, right: Reading | None = None
    ) -> None:
        """Given:
        misread  by how much too great a figure is read, by place
        right    the same assembly rightly read: members that a misread figure has no part in are taken from there
        """
        self.pages, self.misread, self.right = pages, misread or {}, right
        self.used: dict[Place, Figure] = {}
        self.made: dict[str, tuple[dict[Place, Figure], object]] = {}

    def value(self, place: Place) -> float:
        """Return a figure, inches or degrees."""
        found = self.used[place] = self.pages.figure(place)
        return found.value + self.misread.get(place, 0.0)

    def angle(self, place: Place) -> float:
        """Return an angle in radians."""
        return radians(self.value(place))

    def member(self, name: str, make):
        """Return a member by its name, made unless it is known."""
        if name not in self.made:
            if self.right:
                read, right = self.right.made[name]
                if not any(place in read for place in self.misread):
                    return right
            before, self.used = self.used, {}
            self.made[name] = (self.used, make())
            self.used = before
        used, done = self.made[name]
        self.used |= used
        return done
