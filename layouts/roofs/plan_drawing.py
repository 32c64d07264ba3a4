"""A roof drawn in plan, to a scale that is said: plates, eaves, every board with its mark, dimensions."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from itertools import pairwise
from math import atan2, degrees

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.drawings.svg import Point
from layouts.paper.typeface import advance_em
from layouts.roofs.lines import Of, PlanLine, lines_of
from layouts.roofs.names import CLEAR, ON, ROW_EM, SIZES, WEIGHT
from layouts.roofs.plan_detail import Detail, plan_detail
from layouts.roofs.plan_names import MANY, SHORT, Placed, by_other_ways, drawn, named
from layouts.words.drawings import ROOF_PLAN
from tablegen.frame.asked import Bay
from tablegen.frame.frame import Frame
from tablegen.frame.plan import Level, Slope
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import length_figure

POINTS_PER_INCH = 72
SCALES = (
    8,
    10,
    12,
    16,
    20,
    24,
    30,
    32,
    36,
    40,
    48,
    50,
    60,
    64,
    72,
    80,
    96,
    100,
    120,
    128,
    150,
    160,
    192,
    200,
    240,
    288,
    300,
    384,
    400,
    480,
)
ROW, NEAR = 21.0, 12.0
"""Between two rows of dimensions, and between the names and the first of them."""
SIZE, LEAST = 9.5, 6.5
"""Of the figures of dimensions."""
ROUND_OFF = 1e-9
"""What the sides of a regular roof may be off a straight line."""


class PlanDrawing(Struct, frozen=True):
    """A drawn plan."""

    image: Markup
    scale: int
    """So many times smaller than the roof."""
    unnamed: tuple[tuple[str, int], ...]
    """Marks that found no room, and how often."""
    detail: Detail | None = None
    """What is drawn larger, for boards that have their marks there."""


class _Sheet(Struct, frozen=True):
    """Where a roof lies on the drawing."""

    left: float
    """Inches at the drawing's corner."""
    top: float
    units: float
    box: tuple[float, float, float, float]
    """Left, top, right and foot of all that is drawn but dimensions, in units."""
    ring: float
    """The room for names around the eaves, in units."""
    wide: float
    """Of the drawing, in units."""

    def at(self, point: Point) -> Point:
        return (point[0] - self.left) * self.units, (self.top - point[1]) * self.units


def plan_drawing(frame: Frame, width: float, height: float) -> PlanDrawing:
    """Return a roof in plan within so many units."""
    lines = list(lines_of(frame))
    after = (one.mark for one in lines if one.of in (Of.CORNER, Of.RAFTER))
    longest = max(advance_em(mark, svg.WIDTH, WEIGHT) for mark in after) * SIZES[0]
    sheet, scale = _sheet(lines, ON + CLEAR + longest, (width, height))
    apart, placed = float(frame.asked.spacing_in), _placed(lines, sheet)
    names, without = named(placed, 1, apart * sheet.units)
    if len(without) > MANY:
        sheet, scale = _sheet(lines, ON + CLEAR + longest + ROW_EM * SIZES[0] + ON, (width, height))
        placed = _placed(lines, sheet)
        names, without = named(placed, 2, apart * sheet.units)
    unnamed, detail = by_other_ways(names, without, SHORT), None
    if unnamed:
        larger = [(one, POINTS_PER_INCH / one) for one in SCALES if one < scale]
        made = plan_detail(lines, unnamed, larger, (width, height), apart)
        detail, unnamed = made or (None, unnamed)
    foot = sheet.box[3] + NEAR + 2 * ROW + 8
    shapes = [*drawn(placed, names), *_dimensions(frame, sheet)]
    if detail:
        ring = pairwise(map(sheet.at, detail.ring))
        shapes += [svg.line(*piece, svg.HAIR, '1 1') for side in ring for piece in names.beside(side)]
    image = svg.drawing(width, foot, ROOF_PLAN['title'], shapes)
    return PlanDrawing(image, scale, tuple(Counter(one.mark for one in unnamed).items()), detail)


def _placed(lines: Sequence[PlanLine], sheet: _Sheet) -> list[Placed]:
    return [(one, (sheet.at(one.start), sheet.at(one.end))) for one in lines]


def _sheet(lines: Sequence[PlanLine], ring: float, room: tuple[float, float]) -> tuple[_Sheet, int]:
    """Return the largest of the usual scales at which a roof and its dimensions have room."""
    points = [point for one in lines for point in (one.start, one.end)]
    (left, right), (low, high) = ((min(axis), max(axis)) for axis in zip(*points, strict=True))
    margins = 2 * ring + 4 * ROW, 2 * ring + 5 * ROW + NEAR
    for scale in SCALES:
        units = POINTS_PER_INCH / scale
        wide, tall = (right - left) * units, (high - low) * units
        if wide + margins[0] <= room[0] and tall + margins[1] <= room[1]:
            break
    x = ring + 2 * ROW + 6 + max(0.0, room[0] - wide - margins[0]) / 2
    y = ring + 2 * ROW
    box = (x - ring, y - ring, x + wide + ring, y + tall + ring)
    return _Sheet(left - x / units, high + y / units, units, box, ring, room[0]), scale


def _dimensions(frame: Frame, sheet: _Sheet) -> Iterator[str]:
    """Return the dimensions around a roof: chains of the plates' corners, the whole, the ridge, the first rafters of a plate."""
    plates = frame.plan.plates
    slanted = any(a != c and b != d for (a, b), (c, d) in zip(plates, plates[1:] + plates[:1], strict=True))
    _, top, right, foot = sheet.box
    slope = _at_the_edge(frame)
    if slope and not _is_level(
        slope
    ):  # its first rafters are dimensioned askew, where the first row would stand
        foot += ROW
    for axis in (0, 1):
        places = _apart(point[axis] for point in plates)
        whole = [places[0], places[-1]]
        rows = [whole] if slanted or len(places) < 3 else [places, whole]
        for row, stops in enumerate(rows):
            for a, b in pairwise(stops):
                words = told(frame, b - a)
                if axis == 0:
                    yield from _level(sheet, (a, b), foot + NEAR + ROW * (row + 1), words, foot + NEAR + 4)
                else:
                    yield from _upright(sheet, (a, b), sheet.box[0] - ROW * (row + 1) + 8, words)
    for board in frame.plan.levels:
        if board.level is Level.RIDGE:
            axis = 0 if board.start[1] == board.end[1] else 1
            low, high = sorted((board.start[axis], board.end[axis]))
            sawn = ROOF_PLAN['ridge'], {'mark': board.mark, 'length': told(frame, board.length_in)}
            if axis:
                yield from _upright(sheet, (low, high), right + NEAR, sawn)
            else:
                yield from _level(sheet, (low, high), top - ROW - 2, sawn, top - ROW + 5)
    if slope:
        yield from _first(frame, sheet, slope)


def _apart(places: Iterable[Exact]) -> list[Exact]:
    """Return places from the least on, each once."""
    found: list[Exact] = []
    for place in sorted(places):
        if not found or place != found[-1]:
            found.append(place)
    return found


def told(frame: Frame, length: Exact | Fraction) -> str:
    """Return a length of the plan in feet and inches, to the roof's smallest part."""
    figure = length_figure(length, frame.asked.measure)
    return text.run(Fraction(figure.count, figure.per))


def _level(
    sheet: _Sheet, ends: tuple[Exact, Exact], y: float, words: svg.Words, from_y: float
) -> Iterator[str]:
    a, b = (sheet.at((float(end), 0.0))[0] for end in ends)
    out = 3 if y > from_y else -3
    for x in (a, b):
        yield svg.line((x, from_y), (x, y + out), svg.HAIR)
    yield svg.arrow((a, y), (b, y), both=True)
    size = _fitting(words, b - a)
    at = ((a + b) / 2, y - 2.5, 'middle') if size else (b + 4, y + 3, 'start')
    yield svg.text(words, at[:2], size or SIZE, at[2], 600)


def _upright(sheet: _Sheet, ends: tuple[Exact, Exact], x: float, words: svg.Words) -> Iterator[str]:
    a, b = (sheet.at((0.0, float(end)))[1] for end in ends)
    for y in (a, b):
        yield svg.line((x - 3, y), (x + 6, y), svg.HAIR)
    yield svg.arrow((x, a), (x, b), both=True)
    size = _fitting(words, a - b)
    at = (x - 2.5, (a + b) / 2, 'middle') if size else (x + 3, b - 6, 'start')
    yield svg.text(words, at[:2], size or SIZE, at[2], 600, 90)


def _fitting(words: svg.Words, room: float) -> float:
    """Return the size in which words stand over their arrow, 0 where they are too long for it."""
    told = words if isinstance(words, str) else words[0].format(**words[1])
    size = min(SIZE, (room - 4) / advance_em(told, svg.WIDTH, 600))
    return round(size, 2) if size >= LEAST else 0.0


def _first(frame: Frame, sheet: _Sheet, slope: Slope) -> Iterator[str]:
    """Return where the first rafters of a plate stand, from its left end, along the plate beyond all names."""
    thick = frame.asked.rafters.thickness_in
    places = _apart(along for _, along, _, _ in slope.standing() if along > thick)
    if len(places) < 2:
        return
    right, up = map(float, slope.along)
    off = float(slope.members.side.overhang_in) * sheet.units + sheet.ring + NEAR / 2

    def at(along: Point, on: float = 0.0, out: float = 0.0) -> Point:
        """Return a place of the plate on the chain, so far on along it and out of it."""
        x, y = sheet.at(along)
        return x + right * on + up * (off + out), y - up * on + right * (off + out)

    ends = [_floats(slope, one) for one in (exact(0), places[0], places[1])]
    for a, b in pairwise(ends):
        yield svg.arrow(at(a), at(b), both=True)
    for one in ends:
        yield svg.line(at(one, out=-3), at(one, out=3), svg.HAIR)
    first = ROOF_PLAN['first'], {'length': told(frame, places[0])}
    then = ROOF_PLAN['then'], {'length': told(frame, places[1] - places[0])}
    if _is_level(slope):
        before, after = ('end', 'start') if right > 0 else ('start', 'end')
        down = 3 if right > 0 else -3
        x, long = at(ends[0], -4)[0], advance_em(first[0].format(**first[1]), svg.WIDTH, 600) * SIZE
        if (
            not 0 < x - right * long < sheet.wide
        ):  # it would run out of the drawing: both stand on the other side
            both = ROOF_PLAN['first_then'], {'first': first[1]['length'], 'length': then[1]['length']}
            yield svg.text(both, at(ends[2], 4, down), SIZE, after, 600)
            return
        yield svg.text(first, at(ends[0], -4, down), SIZE, before, 600)
        yield svg.text(then, at(ends[2], 4, down), SIZE, after, 600)
        return
    turn = degrees(atan2(up, right))
    middle = ((ends[1][0] + ends[2][0]) / 2, (ends[1][1] + ends[2][1]) / 2)
    yield svg.text(first, at(ends[0], -4, 3), SIZE, 'end', 600, turn)
    yield svg.text(then, at(middle, 0, SIZE + 2), SIZE, 'middle', 600, turn)


def _is_level(slope: Slope) -> bool:
    """Return whether a plate lies level on the plan."""
    return abs(float(slope.along[1])) < ROUND_OFF


def _at_the_edge(frame: Frame) -> Slope | None:
    """Return a slope with rafters whose plate is level and the nearest to the reader, or the farthest from him; of a bay that has none
    such the one that faces him most."""
    up = [float(point[1]) for point in frame.plan.plates]
    level = [one for one in frame.plan.slopes if _is_level(one)]
    for way, end in ((1, min(up)), (-1, max(up))):
        for one in level:
            if float(one.along[0]) * way > 0 and abs(float(one.origin[1]) - end) < ROUND_OFF:
                return one
    return (
        max(frame.plan.slopes, key=lambda one: float(one.along[0]))
        if isinstance(frame.asked.kind, Bay)
        else None
    )


def _floats(slope: Slope, along: Exact) -> Point:
    x, y = slope.on_plan(along, exact(0))
    return float(x), float(y)
