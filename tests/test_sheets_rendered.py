"""Sheets as a printer gets them: every mark is looked for among the dots, and the bar is measured in them."""

from __future__ import annotations

from functools import cache

import pytest
from card_support import ink
from each import some
from made_books import MadeBook, made
from msgspec import Struct

from layouts.sheets.fold import SheetSide, sheet_sides

OPENING = 'pitches = [6]\nparts = ["opening"]\n'
DOTS = 10
"""To a millimeter."""
PAPERS = {'letter': (215.9, 279.4), 'a4': (210.0, 297.0)}
"""Width and height in mm: US Letter is 8 1/2 by 11 in; A4 by ISO 216."""
EDITIONS = [(trim, paper) for trim in ('pocket', 'large') for paper in ('letter', 'a4')]
PRINTED_MM = 4.5
"""A printer prints no nearer to the paper's edge: common practice, no source."""
INCH_MM = 25.4


class Side(Struct):
    """One side in dots; mm from the upper left corner."""

    dots: tuple[int, int, bytes]
    side: SheetSide
    trim: str
    paper: str

    @property
    def sheet(self) -> tuple[float, float]:
        return PAPERS[self.paper] if self.trim == 'pocket' else PAPERS[self.paper][::-1]

    @property
    def page(self) -> tuple[float, float]:
        """Width and height of a page: 100 by 133 mm, or half of the paper."""
        return (100, 133) if self.trim == 'pocket' else (self.sheet[0] / 2, self.sheet[1])

    @property
    def spine(self) -> float:
        return self.sheet[0] / 2

    @property
    def block(self) -> tuple[float, float, float, float]:
        """Left, top, right and lower edge of all pages together: in the middle of the paper."""
        width, height = 2 * self.page[0], self.page[1] * (2 if self.trim == 'pocket' else 1)
        beside, above = (self.sheet[0] - width) / 2, (self.sheet[1] - height) / 2
        return beside, above, beside + width, above + height

    def along(self, x0: float, y0: float, x1: float, y1: float) -> list[bool]:
        """Return for every dot of a level or plumb line whether there is ink at it, or at the dot beside it."""
        width, height, grays = self.dots
        long = round(max(abs(x1 - x0), abs(y1 - y0)) * DOTS)
        found = []
        for step in range(1, long):
            x, y = (
                min(int((a + (b - a) * step / long) * DOTS), most - 2)
                for a, b, most in ((x0, x1, width), (y0, y1, height))
            )
            beside = [(x, y + d) if y0 == y1 else (x + d, y) for d in (-1, 0, 1)]
            found.append(any(grays[v * width + u] < 225 for u, v in beside if u >= 0 and v >= 0))
        return found

    def solid(self, *line: float) -> bool:
        return all(self.along(*line)[1:-1])

    def dashed(self, *line: float) -> bool:
        """Whether ink and white change along a line, neither for longer than 1 mm."""
        dots = self.along(*line)
        return 0.3 < sum(dots) / len(dots) < 0.9 and _longest(dots, False) <= DOTS


def _longest(dots: list[bool], kind: bool) -> int:
    best = now = 0
    for dot in dots:
        now = now + 1 if dot is kind else 0
        best = max(best, now)
    return best


@pytest.fixture(scope='module')
def book(tmp_path_factory):
    """Return a function that makes a short book in an edition."""

    @cache
    def make(trim: str, paper: str) -> MadeBook:
        return made(
            f'{OPENING}trim = "{trim}"\npaper = "{paper}"', tmp_path_factory.mktemp(f'{trim}-{paper}')
        )

    return make


@pytest.fixture(scope='module')
def sides(book):
    """Return a function that gives every side of a short book in dots, those of the instructions left out."""

    @cache
    def make(trim: str, paper: str) -> list[Side]:
        planned, built = book(trim, paper).planned, book(trim, paper).built
        bounds = [(first - 1, count) for first, count in planned.index.sections]
        return [
            Side(ink(built.sheets, number, DOTS), side, trim, paper)
            for number, side in enumerate(sheet_sides(bounds, planned.trim.up), 3)
        ]

    return make


@pytest.mark.parametrize(('trim', 'paper'), some(list(EDITIONS)))
def test_the_fold_is_seen_at_both_ends_of_every_spine(sides, trim, paper):
    for side in sides(trim, paper):
        _, top, _, foot = side.block
        ends = (
            [(0, top), (foot, side.sheet[1])]
            if trim == 'pocket'
            else [(PRINTED_MM, PRINTED_MM + 3), (side.sheet[1] - PRINTED_MM - 3, side.sheet[1] - PRINTED_MM)]
        )
        for upper, lower in ends:
            assert side.dashed(side.spine, upper, side.spine, lower), f'{side.side.sheet} {side.side.face}'


@pytest.mark.parametrize('paper', PAPERS)
def test_cuts_are_seen_in_line_with_every_edge_and_the_middle(sides, paper):
    for side in sides('pocket', paper):
        left, top, right, foot = side.block
        across, down = side.sheet
        for y in (top, (top + foot) / 2, foot):
            assert side.solid(0.2, y, left, y)
            assert side.solid(right, y, across - 0.2, y)
        for x in (left, right):
            assert side.solid(x, 0.2, x, top)
            assert side.solid(x, foot, x, down - 0.2)


@pytest.mark.parametrize(('trim', 'paper'), EDITIONS)
def test_staples_are_seen_at_a_quarter_and_three_quarters_of_the_outer_spine(sides, trim, paper):
    """Ticks of 3 mm, white above and below; on no other side."""
    outer = 0
    for side in sides(trim, paper):
        top, tall = side.block[1], side.page[1]
        outermost = (side.side.sheet, side.side.face) == (1, 'front')
        for y in (top + tall / 4, top + tall * 3 / 4):
            dots = side.along(side.spine, y - 3, side.spine, y + 3)
            assert _longest(dots, True) == pytest.approx(3 * DOTS if outermost else 0, abs=2)
            assert not any(dots[: DOTS + 3] + dots[-DOTS - 3 :])
        outer += outermost
    assert outer == 1


@pytest.mark.parametrize(('trim', 'paper'), EDITIONS)
def test_the_bar_is_100_millimeters_and_4_inches_long(sides, trim, paper):
    """Measured in the dots of every side: from its start to a tick on one hand, and on to a tick on the other."""
    half = 2 * INCH_MM
    for side in sides(trim, paper):
        assert side.solid(*on_bar(side, -half), *on_bar(side, half))
        assert not any(side.along(*on_bar(side, -half - 1.2), *on_bar(side, -half - 0.2)))
        assert not any(side.along(*on_bar(side, half + 0.2), *on_bar(side, half + 1.2)))
        for up in (0.6, -0.6):
            ticks = [
                at
                for at in (-half, 100 - half, half)
                if any(side.along(*on_bar(side, at - 0.3, up), *on_bar(side, at + 0.3, up)))
            ]
            assert ticks == [-half, 100 - half if up > 0 else half]


def on_bar(side: Side, along: float, up: float = 0.0) -> tuple[float, float]:
    """Return a place beside the bar, from its middle: it lies in the lower margin, or up the fold, left of it."""
    down = side.sheet[1]
    if side.trim == 'pocket':
        return side.spine + along, (side.block[3] + down - PRINTED_MM) / 2 - up
    return side.spine - 5.2 - up, down / 2 - along


@pytest.mark.parametrize(('trim', 'paper'), EDITIONS)
def test_a_book_that_is_not_trimmed_has_its_tabs_at_its_edge(book, sides, trim, paper):
    """As low and as tall as in the booklet, and black from where a printer begins to print, 5 mm and more inwards."""
    booklet, seen = book(trim, paper).built.booklet, 0
    for side in sides(trim, paper):
        left, top, _, _ = side.block
        for panel in side.side.panels:
            tab = edge_of(ink(booklet, panel.page + 1, DOTS), panel.column)
            y = top + panel.row * side.page[1]
            at = [side.sheet[0] - beside if panel.column else beside for beside in (PRINTED_MM, left + 5)]
            drawn = side.along(at[0], y, at[0], y + side.page[1])
            assert sum(drawn) == pytest.approx(len(tab), abs=2)
            if tab:
                seen += 1
                for way in ((y + tab[0] / DOTS + 0.3), (y + tab[-1] / DOTS - 0.3)):
                    assert side.solid(min(at), way, max(at), way)
    assert seen == 4  # cautions, contents, and the pitch's opening


def edge_of(dots: tuple[int, int, bytes], column: int) -> list[int]:
    """Return the rows of a page that are black half a millimeter inside its outer edge."""
    width, height, grays = dots
    x = width - 1 - DOTS // 2 if column else DOTS // 2
    return [row for row in range(height) if grays[row * width + x] < 100]
