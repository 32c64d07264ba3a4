"""A page of a pattern: its head, a map of its piece's pages, two bars to measure, what is to be done at its foot."""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.drawings.svg import Point
from layouts.paper.typeface import advance_em
from layouts.patterns.flat import Flat
from layouts.patterns.ink import CUT, Tile, page_ink, width_of
from layouts.patterns.tiles import Tiling, tiling
from layouts.patterns.typed import Typed, high_mm, set_in, wrapped, written
from layouts.sheets.fold import PAPERS_MM
from layouts.sheets.strips import Strip, bar
from layouts.words import patterns as words
from layouts.words.say import _
from tablegen.roof.pattern import Pattern

SAFE_MM = 8.0
"""Along the paper's edge: nothing stands there, whatever the printer."""
UNDER_HEAD = 1.2
"""Between a page's head and its drawing."""
MAP_MM = (46.0, 15.0)
MAP_NUMBER, MAP_GRAY = 3.2, '#ccc'
BAR_MM = 6.5
"""Of the bar below the drawing, and of the one at its right."""
TITLE, FACT, FOOT = 4.4, 2.7, 2.5
"""Sizes of type, mm."""
LEADING, FACT_LEADING, TITLE_LEADING = 1.3, 1.4, 1.15
WEIGHT, STRONG = 500, 800
FOOT_RISE = 0.2 * FOOT * LEADING
"""What the last line at the foot stands over the lower margin."""
BAR_INK = 0.2


class Shown(Struct, frozen=True):
    """A piece to be printed, with its words, for one member or for all that have it alike."""

    whole: Pattern
    """Of one of them."""
    flat: Flat
    title: str
    part: str
    """What of a member it shows."""
    facts: tuple[str, ...]
    """Under the title."""
    lengths: tuple[str, ...]
    """Where it lies on a board, and what its top becomes."""
    ends: tuple[str, str]
    """What stands at the left and at the right."""
    alone: tuple[str, ...]
    """Sentences at the foot of one page."""
    joined: tuple[str, ...]
    """And of each of several."""


class Sheet(Struct, frozen=True):
    """How a piece lies on the printer's paper."""

    size: tuple[float, float]
    """Width and height of the paper as it is printed, mm."""
    head: tuple[Typed, ...]
    foot: tuple[Typed, ...]
    tiling: Tiling

    @property
    def head_mm(self) -> float:
        return head_mm(self.head)

    @property
    def upright(self) -> bool:
        return self.size[0] < self.size[1]


class Laid(Struct, frozen=True):
    """A piece laid on pages."""

    shown: Shown
    sheet: Sheet
    first: int
    """Number of its first page."""
    joints_before: int

    @property
    def last(self) -> int:
        return self.first + self.sheet.tiling.count - 1

    @property
    def joints(self) -> int:
        """Return how many there are up to its last page."""
        return self.joints_before + len(self.sheet.tiling.joints())


def sheet_for(shown: Shown, paper: str) -> Sheet:
    """Return the way of laying a piece on a paper that takes the fewest pages, the upright one where both take as many."""
    width, height = PAPERS_MM[paper]
    ways = [_sheet(shown, size) for size in ((width, height), (height, width))]
    return min(ways, key=lambda one: one.tiling.count)


def _sheet(shown: Shown, size: tuple[float, float]) -> Sheet:
    flat, wide = shown.flat, size[0] - 2 * SAFE_MM
    head = _typed(shown, _head_room(size))
    for said in (shown.alone, shown.joined):
        foot = foot_of(said, wide)
        high = size[1] - 2 * SAFE_MM - head_mm(head) - BAR_MM - high_mm(foot)
        tiles = tiling((flat.wide, flat.high), (wide - BAR_MM, high), flat.top_whole, flat.drawn_in)
        if tiles.count == 1:
            break
    return Sheet(size, head, foot, tiles)


def _head_room(size: tuple[float, float]) -> float:
    return size[0] - 2 * SAFE_MM - MAP_MM[0] - 4


def _typed(shown: Shown, room: float) -> tuple[Typed, ...]:
    """Return the lines at the head of a piece's pages."""
    said = [(shown.title, TITLE, STRONG, TITLE * TITLE_LEADING)]
    said += [(fact, FACT, WEIGHT, FACT * FACT_LEADING) for fact in shown.facts]
    said += [(fact, FACT, STRONG, FACT * FACT_LEADING) for fact in shown.lengths]
    return tuple(
        line for words, size, weight, after in said for line in set_in(words, room, size, weight, after)
    )


def head_mm(lines: Sequence[Typed]) -> float:
    """Return how high a page's head is, with the line of its number."""
    return high_mm(lines) + FACT * FACT_LEADING + UNDER_HEAD


def foot_of(sentences: Sequence[str], wide: float) -> tuple[Typed, ...]:
    """Return sentences as they stand one after another at the foot of a page."""
    return tuple(
        Typed(line, FOOT, WEIGHT, FOOT * LEADING) for line in wrapped(' '.join(sentences), wide, FOOT, WEIGHT)
    )


def page_drawing(one: Laid, page: int, pages: int) -> Markup:
    """Return a whole page: a drawing, and the lines of type that stand on it.

    Given:
        page   within its piece, from 0
        pages  of the whole file
    """
    shown, sheet, first = one.shown, one.sheet, one.first
    width, height = sheet.size
    room = width - 2 * SAFE_MM - BAR_MM
    box = sheet.tiling.box(page)
    corner = (SAFE_MM + (room - (box.right - box.left)) / 2, SAFE_MM + sheet.head_mm)
    tile = Tile(shown.whole, shown.flat, sheet.tiling, page, first, one.joints_before, corner)
    shapes = [
        *_head(one, first + page, pages),
        *_map(tile, (width - SAFE_MM - MAP_MM[0], SAFE_MM)),
        *page_ink(tile),
        *bars(sheet.size, sheet.head_mm, sheet.foot),
    ]
    return svg.drawing(width, height, shown.title, shapes) + head_and_foot(sheet.size, sheet.head, sheet.foot)


def head_and_foot(size: tuple[float, float], head: Sequence[Typed], foot: Sequence[Typed]) -> Markup:
    """Return the lines of type at the head of a page and at its foot."""
    base = size[1] - SAFE_MM - high_mm(foot)
    return written(head, (SAFE_MM, SAFE_MM)) + written(foot, (SAFE_MM, base - FOOT_RISE))


def bars(size: tuple[float, float], head: float, foot: Sequence[Typed]) -> list[str]:
    """Return both bars of a page."""
    width, height = size
    base = height - SAFE_MM - high_mm(foot)
    upright = base - BAR_MM - SAFE_MM - head
    return [
        *_bar(Strip(SAFE_MM, height - base, width - 2 * SAFE_MM, BAR_MM), height),
        *_bar(Strip(width - SAFE_MM, height - base + BAR_MM, upright, BAR_MM, True), height),
    ]


def _head(one: Laid, page: int, pages: int) -> list[str]:
    room = _head_room(one.sheet.size)
    shapes: list[str] = []
    y = SAFE_MM + high_mm(one.sheet.head) + FACT * FACT_LEADING
    of = _(words.PAGE).format(page=page, pages=pages)
    upper, lower = one.shown.ends
    ends = [(upper, SAFE_MM, -1), (lower, SAFE_MM + room, 1)]
    shapes.append(svg.text(of, (SAFE_MM + room / 2, y), FACT * 1.1, 'middle', STRONG))
    for end, x, way in ends:
        tip = (x, y - 0.9)
        shapes.append(svg.line((x - 7 * way, y - 0.9), tip, BAR_INK))
        shapes.append(svg.arrow_head(tip, 0 if way > 0 else 180, 2.4))
        shapes.append(svg.text(end, (x - 8 * way, y), FACT, 'end' if way > 0 else 'start', STRONG))
    return shapes


def _map(tile: Tile, corner: Point) -> list[str]:
    """Return the piece at a small scale, its pages numbered, this one gray."""
    flat, tiles = tile.flat, tile.tiling
    scale = min(MAP_MM[0] / flat.wide, MAP_MM[1] / flat.high)

    def at(point: Point) -> Point:
        return corner[0] + MAP_MM[0] - (flat.wide - point[0]) * scale, corner[1] + point[1] * scale

    grounds, borders, numbers = [], [], []
    for page in range(tiles.count):
        left, top, right, foot = tiles.share(page)
        fill = MAP_GRAY if page == tile.page else '#fff'
        corners = [at(point) for point in ((left, top), (right, top), (right, foot), (left, foot))]
        grounds.append(svg.shape(corners, 0, fill))
        borders.append(svg.shape(corners, 0.15))
        number = str(tile.first + page)
        wide = advance_em(number, svg.WIDTH, 800)
        size = round(min(MAP_NUMBER, 0.7 * scale * min(foot - top, (right - left) / wide)), 2)
        x, y = at(((left + right) / 2, (top + foot) / 2))
        half = size * wide / 2, size * 0.42
        behind = [(x - half[0], y - half[1]), (x + half[0], y - half[1]), (x + half[0], y + half[1]), (x - half[0], y + half[1])]  # fmt: skip
        numbers += [svg.shape(behind, 0, fill), svg.text(number, (x, y + 0.35 * size), size, 'middle', 800)]
    lines = [
        svg.line(at(line.start), at(line.end), 0.25 if width_of(line.name) == CUT else 0.08)
        for line in flat.lines
    ]
    return [*grounds, *lines, *borders, *numbers]


def _bar(strip: Strip, height: float) -> list[str]:
    """Return a bar in the middle of a strip, and what its ticks are."""
    lines, _before, _after = bar(strip)
    drawn = [svg.line((a, height - b), (c, height - d), BAR_INK) for a, b, c, d in lines]
    (_x, _y, *metric), (_u, _v, *inches) = lines[2], lines[3]
    (x, y), (u, v) = (metric[0], height - metric[1]), (inches[0], height - inches[1])
    if strip.turned:
        names = [
            svg.text('100 mm', (x - 0.6, y + 1), 2.3, 'end', 600, 90),
            svg.text('4 in', (u + 0.7, v - 0.6), 2.3, 'start', 600, 90),
        ]
    else:
        names = [
            svg.text('100 mm', (x - 0.6, y - 0.2), 2.3, 'end', 600),
            svg.text('4 in', (u + 0.4, v + 1.5), 2.3, 'start', 600),
        ]
    return drawn + names
