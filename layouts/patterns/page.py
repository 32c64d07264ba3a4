"""A page of a pattern: its head, a map of its piece's pages, two bars to measure, what is to be done at its foot."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from markupsafe import Markup

from layouts.drawings import svg
from layouts.drawings.svg import Point
from layouts.paper.typeface import advance_em
from layouts.patterns.flat import Flat
from layouts.patterns.ink import CUT, Tile, page_ink, width_of
from layouts.patterns.tiles import Tiling, tiling
from layouts.sheets.fold import PAPERS_MM
from layouts.sheets.strips import Strip, bar
from layouts.words import patterns as words
from layouts.words.say import _
from tablegen.roof.pattern import Pattern

SAFE_MM = 8.0
"""Along the paper's edge: nothing stands there, whatever the printer."""
HEAD_MM = 10.0
"""Above the drawing, but for its facts."""
MAP_MM = (46.0, 15.0)
MAP_NUMBER, MAP_GRAY = 3.2, '#ccc'
BAR_MM = 6.5
"""Of the bar below the drawing, and of the one at its right."""
TITLE, FACT, FOOT = 4.4, 2.7, 2.5
"""Sizes of type, mm."""
LEADING, FACT_LEADING = 1.3, 1.4
WEIGHT = 500
BAR_INK = 0.2


@dataclass(frozen=True, slots=True)
class Sheet:
    """How a piece lies on the printer's paper."""

    size: tuple[float, float]
    """Width and height of the paper as it is printed, mm."""
    head_mm: float
    foot: tuple[str, ...]
    """Lines of small type."""
    tiling: Tiling

    @property
    def foot_mm(self) -> float:
        return len(self.foot) * FOOT * LEADING

    @property
    def upright(self) -> bool:
        return self.size[0] < self.size[1]


@dataclass(frozen=True, slots=True)
class Laid:
    """A piece laid on pages."""

    flat: Flat
    sheet: Sheet
    facts: tuple[str, ...]
    """Lines at the head of its pages."""
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


def sheet_for(flat: Flat, paper: str, facts: int, alone: Sequence[str], joined: Sequence[str]) -> Sheet:
    """Return the way of laying a piece on a paper that takes the fewest pages, the upright one where both take as many.

    Given:
        facts          lines at the head
        alone, joined  what is said at the foot of one page, and of each of several
    """
    width, height = PAPERS_MM[paper]
    head = HEAD_MM + facts * FACT * FACT_LEADING
    ways = [_sheet(flat, size, head, (alone, joined)) for size in ((width, height), (height, width))]
    return min(ways, key=lambda one: one.tiling.count)


def _sheet(
    flat: Flat, size: tuple[float, float], head: float, feet: tuple[Sequence[str], Sequence[str]]
) -> Sheet:
    wide = size[0] - 2 * SAFE_MM
    for said in feet:
        foot = tuple(_wrapped(said, wide))
        high = size[1] - 2 * SAFE_MM - head - BAR_MM - len(foot) * FOOT * LEADING
        tiles = tiling((flat.wide, flat.high), (wide - BAR_MM, high), flat.top_whole, flat.drawn_in)
        if tiles.count == 1:
            break
    return Sheet(size, head, foot, tiles)


def _wrapped(sentences: Sequence[str], room: float) -> list[str]:
    """Return sentences one after another, in lines that have room."""
    lines = ['']
    for word in ' '.join(sentences).split(' '):
        longer = f'{lines[-1]} {word}'.strip()
        if advance_em(longer, svg.WIDTH, WEIGHT) * FOOT <= room:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines


def page_drawing(whole: Pattern, one: Laid, page: int, pages: int) -> Markup:
    """Return a whole page.

    Given:
        page   within its piece, from 0
        pages  of the whole pattern
    """
    flat, sheet, first = one.flat, one.sheet, one.first
    width, height = sheet.size
    room = width - 2 * SAFE_MM - BAR_MM
    shown = sheet.tiling.box(page)
    corner = (SAFE_MM + (room - (shown.right - shown.left)) / 2, SAFE_MM + sheet.head_mm)
    tile = Tile(whole, flat, sheet.tiling, page, first, one.joints_before, corner)
    base = height - SAFE_MM - sheet.foot_mm
    shapes = [
        *_head(whole, one, first + page, pages),
        *_map(tile, (width - SAFE_MM - MAP_MM[0], SAFE_MM)),
        *page_ink(tile),
        *_bar(Strip(SAFE_MM, height - base, width - 2 * SAFE_MM, BAR_MM), height),
        *_bar(Strip(width - SAFE_MM, height - base + BAR_MM, base - BAR_MM - SAFE_MM - sheet.head_mm, BAR_MM, True), height),
        *(
            svg.text(line, (SAFE_MM, base + (place + 0.8) * FOOT * LEADING), FOOT, weight=WEIGHT)
            for place, line in enumerate(sheet.foot)
        ),
    ]  # fmt: skip
    return svg.drawing(width, height, words.head_of(whole, flat.piece), shapes)


def _head(whole: Pattern, one: Laid, page: int, pages: int) -> list[str]:
    room = one.sheet.size[0] - 2 * SAFE_MM - MAP_MM[0] - 4
    said = [(words.head_of(whole, one.flat.piece), TITLE, 800)]
    said += [(fact, FACT, WEIGHT if place < 2 else 800) for place, fact in enumerate(one.facts)]
    shapes, y = [], SAFE_MM
    for line, size, weight in said:
        fits = min(size, room / advance_em(line, svg.WIDTH, weight))
        y += size * (1.15 if size == TITLE else FACT_LEADING)
        shapes.append(svg.text(line, (SAFE_MM, y), round(fits, 2), weight=weight))
    y += FACT * FACT_LEADING
    of = _(words.PAGE).format(page=page, pages=pages)
    upper, lower = words.ends_of(whole)
    ends = [(upper, SAFE_MM, -1), (lower, SAFE_MM + room, 1)]
    shapes.append(svg.text(of, (SAFE_MM + room / 2, y), FACT * 1.1, 'middle', 800))
    for end, x, way in ends:
        tip = (x, y - 0.9)
        shapes.append(svg.line((x - 7 * way, y - 0.9), tip, BAR_INK))
        shapes.append(svg.arrow_head(tip, 0 if way > 0 else 180, 2.4))
        shapes.append(svg.text(end, (x - 8 * way, y), FACT, 'end' if way > 0 else 'start', 800))
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
