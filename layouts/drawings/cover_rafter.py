"""A rafter on its plate and at its ridge board in true proportions, its run told off in feet: the cover of a book."""

from __future__ import annotations

from itertools import pairwise
from math import atan, atan2, cos, degrees, hypot

from markupsafe import Markup

from layouts.drawings import svg
from tablegen.numbers.units import INCHES

MOST_FEET, LONGEST_IN = 6, 104.0
"""Of run, in whole feet, and about how long the rafter may be: so its depth is seen in true proportion."""
DEPTH, SEAT, RIDGE, PLATE_THICK = 9.25, 3.5, 1.5, 1.5
RIDGE_DEPTH = 11.25
OVERHANG = 12.0
"""Level; over a steep roof it falls no more than so."""
STUB, WALL = 6.0, 7.0
"""Inches shown of the rafter beyond the ridge, and of the wall under the plates."""
ABOVE, BELOW = 17.0, 8.0
"""Units from the top edge out to the arrow of the line length, and from the tail's foot down to the run."""
SIZE = 9.0
BAND = 0.28
"""Of the rafter's depth: the scale of feet along its top edge."""
PLUMB_LINE = '6 1.5 1 1.5'
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
    steep = cos(atan(slope))
    feet = max(1, min(MOST_FEET, int(LONGEST_IN * steep / INCHES.group)))
    run, tail = float(feet * INCHES.group), OVERHANG / max(1.0, slope)
    over, deep = DEPTH / steep - SEAT * slope, DEPTH / steep  # height above plate; the board's depth, plumb
    foot = max(tail * slope + deep - over, 2 * PLATE_THICK + WALL)  # the lowest of it all, below the seat
    room = height - ABOVE / steep - BELOW - 2 * SIZE
    scale = min((width - 2 * svg.HEAVY) / (run + tail + STUB), room / (foot + over + run * slope))
    left, top = (width - (run + tail + STUB) * scale) / 2 + STUB * scale, ABOVE / steep + 6

    def at(x: float, y: float) -> svg.Point:
        """Return a point so far out from the ridge center line, and so high above the plate."""
        return left + x * scale, top + (over + run * slope - y) * scale

    def upper(x: float) -> float:
        return over + (run - x) * slope

    face, end = RIDGE / 2, run + tail
    rafter = [
        at(end, upper(end)), at(face, upper(face)), at(face, upper(face) - deep), at(run - SEAT, 0), at(run, 0),
        at(run, upper(run) - deep), at(end, upper(end) - deep),
    ]  # fmt: skip
    beyond = [
        at(-face, upper(face)), at(-STUB, upper(STUB)), at(-STUB, upper(STUB) - deep), at(-face, upper(face) - deep),
    ]  # fmt: skip
    level, thick = at(0, -foot)[1] + BELOW, deep * BAND
    shapes = [svg.path(beyond[:2], svg.LINE), svg.path(beyond[2:], svg.LINE), svg.shape(rafter, EDGE, '#fff')]
    shapes.append(
        svg.shape(_block(at, -face, face, upper(face) - RIDGE_DEPTH, upper(face)), svg.LINE, '#000')
    )
    for place in (0, 1):
        shapes.append(
            svg.shape(
                _block(at, run - SEAT, run, -PLATE_THICK * (place + 1), -PLATE_THICK * place),
                svg.LINE,
                '#fff',
            )
        )
        shapes.append(
            svg.line(at(run - SEAT, -PLATE_THICK * (place + 1)), at(run, -PLATE_THICK * place), svg.HAIR)
        )
    shapes += [
        svg.line(at(x, -2 * PLATE_THICK), at(x, -2 * PLATE_THICK - WALL), svg.LINE) for x in (run - SEAT, run)
    ]
    for x in (0.0, run):
        shapes.append(
            svg.line(
                (at(x, 0)[0], at(x, upper(x))[1] - ABOVE / steep - 3),
                (at(x, 0)[0], level + 3),
                svg.HAIR,
                PLUMB_LINE,
            )
        )
    marks = [run - one * INCHES.group for one in range(feet + 1)]
    for place, (x, nearer) in enumerate(pairwise(marks)):
        band = [
            at(nearer, upper(nearer)),
            at(x, upper(x)),
            at(x, upper(x) - thick),
            at(nearer, upper(nearer) - thick),
        ]
        shapes.append(svg.shape(band, svg.HAIR, '#fff' if place % 2 else '#000'))
    shapes += [svg.line((at(x, 0)[0], level - TICK), (at(x, 0)[0], level), svg.LINE) for x in marks[1:-1]]
    peak, eave = ((at(x, upper(x))[0], at(x, upper(x))[1] - ABOVE / steep) for x in (0.0, run))
    middle = (peak[0] + eave[0]) / 2, (peak[1] + eave[1]) / 2
    ends = at(0, 0)[0], at(run, 0)[0]
    shapes += [
        *_span(peak, eave),
        svg.text(
            words['line_length'], _off(middle, peak, eave, 4), SIZE, 'middle', 700, -degrees(atan(slope))
        ),
        *_span((ends[0], level), (ends[1], level)),
        svg.text(words['run'], (sum(ends) / 2, level + SIZE), SIZE, 'middle', 700),
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


def _block(at: svg.Place, left: float, right: float, low: float, high: float) -> list[svg.Point]:
    return [at(left, high), at(right, high), at(right, low), at(left, low)]
