"""A common rafter on its plate and ridge, seen from the side with the ridge at the left, to scale."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import atan, cos, degrees

from markupsafe import Markup

from layouts.drawings import svg

RUN, OVERHANG, DEPTH, SEAT, RIDGE = 38.0, 15.0, 7.25, 3.5, 1.5
PLATE_WIDTH, PLATE_THICK = 5.5, 1.5
"""Inches: a short rafter, so that its parts can be seen."""
WIDTH, HEIGHT = 241.0, 196.0
LEFT, RIGHT = 26.0, 54.0
"""Units left of the ridge center line and right of the tail, for words."""
ABOVE, BELOW = 30.0, 28.0
"""Units over the roof for the line length and the plumb lines' names, and under the tail for run and overhang."""
RISE_X = WIDTH - 12
PLUMB_LINE = '6 1.5 1 1.5'


@dataclass(frozen=True, slots=True)
class RafterLabels:
    """The words written on the drawing."""

    title: str
    ridge: str
    ridge_line: str
    plate: str
    plate_line: str
    top_edge: str
    line_length: str
    run: str
    rise: str
    overhang: str
    plumb_cut: str
    seat: str
    heel: str
    height_above_plate: str
    tail: str


Edge = Callable[[float], float]
"""Height above the plate of an edge of the rafter, by how far in from the plate line, in."""


def labelled_rafter(slope: float, labels: RafterLabels) -> Markup:
    """Return the drawing for a roof of this slope, not over 1 in 1.

    Run, rise and line length are drawn between the same two plumb lines, the rise and the line length from where
    the top edge meets them.
    """
    angle = atan(slope)
    above = DEPTH / cos(angle) - SEAT * slope  # height above plate, plumb over the plate line
    scale = min(
        (WIDTH - LEFT - RIGHT) / (RUN + OVERHANG),
        (HEIGHT - ABOVE - BELOW) / ((RUN + OVERHANG) * slope + DEPTH / cos(angle)),
    )
    plate_x = LEFT + RUN * scale
    plate_y = ABOVE + (RUN * slope + above) * scale

    def at(x: float, y: float) -> svg.Point:
        """Return a point so far in from the plate line, towards the ridge, and so high above the plate."""
        return plate_x - x * scale, plate_y - y * scale

    def top(x: float) -> float:
        return above + x * slope

    def low(x: float) -> float:
        return top(x) - DEPTH / cos(angle)

    shapes = [*_wood(at, top, low), *_lengths(at, top, low, labels)]
    turn = -degrees(angle)

    def along(words: str, x: float, y: float, size: float) -> None:
        shapes.append(svg.text(words, at(x, y), size, 'middle', turn=turn))

    def note(words: str, words_at: svg.Point, target: svg.Point, anchor: str) -> None:
        shift = {'start': -1.5, 'end': 1.5, 'middle': 0}[anchor]
        shapes.append(svg.text(words, words_at, 8, anchor))
        shapes.append(svg.arrow((words_at[0] + shift, words_at[1] - 2.6), target))

    down = 8 / scale
    along(labels.top_edge, RUN * 0.5, top(RUN * 0.5) - down / cos(angle), 7)
    along(labels.tail, -OVERHANG * 0.55, top(-OVERHANG * 0.55) - DEPTH * 0.62 / cos(angle), 8)
    ridge_x, end = at(RUN, 0)[0], RUN - RIDGE / 2
    inside = at(PLATE_WIDTH, 0)[0] - 14
    ridge_foot = at(RUN, low(end) - 1.2)
    note(labels.ridge, (ridge_x - 5, ridge_foot[1] + 20), (ridge_x - 1, ridge_foot[1] - 2), 'end')
    under = at(0, low(end) - 17 * slope)[1] + 9
    note(labels.plumb_cut, (ridge_x + 7, under), at(end, low(end) + 1.5), 'start')
    note(labels.seat, (inside, at(0, 0)[1] - 2), at(SEAT * 0.55, 0), 'end')
    note(labels.plate, (inside, at(0, 0)[1] + 12), at(PLATE_WIDTH - 0.4, -PLATE_THICK), 'end')
    foot = at(0, low(-OVERHANG))[1]
    note(labels.heel, (at(0, 0)[0] + 10, foot + 9), at(0, low(0) / 2), 'start')
    return svg.drawing(WIDTH, foot + BELOW, labels.title, shapes)


def _wood(at: svg.Place, top: Edge, low: Edge) -> list[str]:
    """Return the rafter, the ridge, what shows of the rafter beyond it, and the plates on their wall."""
    end, tail = RUN - RIDGE / 2, -OVERHANG
    rafter = [
        at(tail, top(tail)), at(end, top(end)), at(end, low(end)), at(SEAT, 0), at(0, 0), at(0, low(0)), at(tail, low(tail)),
    ]  # fmt: skip
    ridge = _block(at, end, end + RIDGE, low(end) - 1.2, top(end))
    plates = [_block(at, 0, PLATE_WIDTH, -PLATE_THICK * (n + 1), -PLATE_THICK * n) for n in (0, 1)]
    foot = -PLATE_THICK * 2
    shapes = [
        svg.path([at(2 * RUN - end, edge(end)), at(2 * RUN - end + 4, edge(end - 4))], svg.HAIR)
        for edge in (top, low)
    ]
    shapes.append(svg.shape(rafter, svg.HEAVY, '#fff'))
    for block in (ridge, *plates):
        shapes += [svg.shape(block, svg.LINE, '#fff'), svg.hatch(block, 2.6)]
    return shapes + [svg.path([at(x, foot), at(x, foot - 5)], svg.LINE) for x in (0, PLATE_WIDTH)]


def _lengths(at: svg.Place, top: Edge, low: Edge, labels: RafterLabels) -> list[str]:
    """Return the two plumb lines and every length between what it measures."""
    tail, level = -OVERHANG, at(0, low(-OVERHANG))[1] + BELOW - 4
    over = (at(0, 0)[1] - at(0, 1)[1]) ** -1 * 12  # in: the line length lies 12 units above the top edge
    peak, eave = at(RUN, top(RUN) + over), at(0, top(0) + over)
    ridge_x, plate_x, tail_x = at(RUN, 0)[0], at(0, 0)[0], at(tail, 0)[0]
    middle = (peak[0] * 0.38 + eave[0] * 0.62, peak[1] * 0.38 + eave[1] * 0.62)  # below the line of the rise
    turn = -degrees(atan((eave[1] - peak[1]) / (eave[0] - peak[0])))
    return [
        svg.line((ridge_x, peak[1] - 4), (ridge_x, level + 2), svg.HAIR, PLUMB_LINE),
        svg.line((plate_x, eave[1] - 4), (plate_x, level + 2), svg.HAIR, PLUMB_LINE),
        svg.text(labels.ridge_line, (2, peak[1] - 8), 8),
        svg.text(labels.plate_line, (plate_x, eave[1] - 7), 8),
        svg.line((tail_x, at(0, low(tail))[1] + 1), (tail_x, level + 2), svg.HAIR),
        svg.arrow((ridge_x, level), (plate_x, level), both=True),
        svg.text(labels.run, ((ridge_x + plate_x) / 2, level - 2.5), 8.5, 'middle', 700),
        svg.arrow((plate_x, level), (tail_x, level), both=True),
        svg.text(labels.overhang, ((plate_x + tail_x) / 2, level - 2.5), 8, 'middle', 700),
        svg.arrow(peak, eave, both=True),
        svg.text(labels.line_length, (middle[0] + 2, middle[1] - 3), 8.5, 'middle', 700, turn),
        svg.line(at(RUN, top(RUN)), (RISE_X + 2, at(0, top(RUN))[1]), svg.HAIR),
        svg.line(at(0, top(0)), (RISE_X + 2, at(0, top(0))[1]), svg.HAIR),
        svg.arrow((RISE_X, at(0, top(RUN))[1]), (RISE_X, at(0, top(0))[1]), both=True),
        svg.text(labels.rise, (RISE_X - 3, (at(0, top(RUN))[1] + at(0, top(0))[1]) / 2), 8.5, 'end', 700),
        svg.arrow(at(0, 0), at(0, top(0)), both=True),
        *_called(labels.height_above_plate, (plate_x + 9, at(0, top(0))[1] - 4), at(0, top(0) * 0.8)),
    ]


def _called(words: str, words_at: svg.Point, target: svg.Point) -> list[str]:
    """Return words with a plain line to the arrow that they belong to."""
    return [
        svg.text(words, words_at, 8),
        svg.line((words_at[0] - 1.5, words_at[1] - 2.6), target, svg.HAIR),
    ]


def _block(at: svg.Place, left: float, right: float, low: float, high: float) -> list[svg.Point]:
    return [at(left, high), at(right, high), at(right, low), at(left, low)]
