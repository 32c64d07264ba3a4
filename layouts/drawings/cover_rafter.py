"""A rafter on its plate and at its ridge board in true proportions, its run told off in feet: the cover of a book."""

from __future__ import annotations

from itertools import pairwise
from math import atan, atan2, cos, degrees, hypot

from markupsafe import Markup

from layouts.drawings import svg
from layouts.drawings.rafter_side import PLUMB_LINE, RafterSide, placed, wood
from tablegen.numbers.units import INCHES

MOST_FEET, LONGEST_IN = 6, 104.0
"""Of run, in whole feet, and about how long the rafter may be: so its depth is seen in true proportion."""
DEPTH, SEAT, RIDGE = 9.25, 3.5, 1.5
OVERHANG = 12.0
"""Level; over a steep roof it falls no more than so."""
STUB, WALL, LOWEST = 6.0, 7.0, 10.0
"""Inches shown of the rafter beyond the ridge and of the wall under the plates; how far both reach below the seat."""
RIDGE_BELOW = 2.0
ABOVE, BELOW = 17.0, 8.0
"""Units from the top edge up to the arrow of the line length, square to it, and from the lowest of it down to the run."""
SIZE = 9.0
BAND = 0.28
"""Of the rafter's depth: the scale of feet along its top edge."""
EDGE, ARROW = 2.2, 1.0
"""Widths of the rafter's outline and of the arrows."""
HEAD, TICK = 7.0, 3.5


def cover_rafter(slope: float, width: float, height: float, words: dict[str, str]) -> Markup:
    """Return the drawing.

    Given:
        slope          of the roof
        width, height  room for it, units
        words          by 'title', 'line_length' and 'run'
    """
    feet = max(1, min(MOST_FEET, int(LONGEST_IN * cos(atan(slope)) / INCHES.group)))
    side = RafterSide(slope, float(feet * INCHES.group), OVERHANG / max(1.0, slope), DEPTH, SEAT, RIDGE)
    out = ABOVE / side.steep
    foot = max(-side.lower(side.end), LOWEST)
    scale = min(
        (width - 2 * svg.HEAVY) / (side.end + STUB),
        (height - out - BELOW - 2 * SIZE) / (foot + side.upper(0)),
    )
    left, top = (width - (side.end + STUB) * scale) / 2 + STUB * scale, out + 6

    def at(x: float, y: float) -> svg.Point:
        return left + x * scale, top + (side.upper(0) - y) * scale

    level = at(0, -foot)[1] + BELOW
    ends = [(at(x, 0)[0], level) for x in (0.0, side.run)]
    peak, eave = ((at(x, side.upper(x))[0], at(x, side.upper(x))[1] - out) for x in (0.0, side.run))
    shapes = wood(side, at, EDGE, (RIDGE_BELOW, '#000'), STUB, WALL)
    shapes += [
        svg.line((above[0], above[1] - 3), (below[0], level + 3), svg.HAIR, PLUMB_LINE)
        for above, below in zip((peak, eave), ends, strict=True)
    ]
    marks = [side.run - one * INCHES.group for one in range(feet + 1)]
    for place, (low, high) in enumerate(pairwise(marks)):
        band = [(high, side.upper(high)), (low, side.upper(low))]
        band += [(x, y - side.deep * BAND) for x, y in reversed(band)]
        shapes.append(svg.shape(placed(at, band), svg.HAIR, '#fff' if place % 2 else '#000'))
    shapes += [svg.line((at(x, 0)[0], level - TICK), (at(x, 0)[0], level), svg.LINE) for x in marks[1:-1]]
    middle = (peak[0] + eave[0]) / 2, (peak[1] + eave[1]) / 2
    turn = -degrees(atan(slope))
    shapes += [
        *_span(peak, eave),
        svg.text(words['line_length'], _off(middle, peak, eave, 4), SIZE, 'middle', 700, turn),
        *_span(*ends),
        svg.text(words['run'], ((ends[0][0] + ends[1][0]) / 2, level + SIZE), SIZE, 'middle', 700),
    ]
    return svg.drawing(width, height, words['title'], shapes)


def _span(a: svg.Point, b: svg.Point) -> list[str]:
    """Return a bold arrow with a head at either end."""
    along = degrees(atan2(a[1] - b[1], b[0] - a[0]))
    return [svg.line(a, b, ARROW), svg.arrow_head(b, along, HEAD), svg.arrow_head(a, along + 180, HEAD)]


def _off(point: svg.Point, a: svg.Point, b: svg.Point, out: float) -> svg.Point:
    """Return a point so far over a line that falls to the right."""
    long = hypot(b[0] - a[0], b[1] - a[1])
    return point[0] + (b[1] - a[1]) / long * out, point[1] - (b[0] - a[0]) / long * out
