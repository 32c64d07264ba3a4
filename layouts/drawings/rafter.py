"""A common rafter on its plate and ridge, seen from the side, to scale."""

from __future__ import annotations

from dataclasses import dataclass
from math import atan, cos

from markupsafe import Markup

from layouts.drawings import svg

RUN, OVERHANG, DEPTH, SEAT, RIDGE = 54.0, 14.0, 7.25, 3.5, 1.5
PLATE_WIDTH, PLATE_THICK = 5.5, 1.5
"""Inches: a short rafter, so that its parts can be seen."""
WIDTH, HEIGHT = 241.0, 178.0


@dataclass(frozen=True, slots=True)
class RafterLabels:
    """The words written on the drawing."""

    title: str
    ridge: str
    plate: str
    line_length: str
    run: str
    rise: str
    overhang: str
    plumb_cut: str
    seat: str
    heel: str
    height_above_plate: str
    tail: str


def labelled_rafter(slope: float, labels: RafterLabels) -> Markup:
    """Return the drawing for a roof of this slope, not over 1 in 1."""
    angle = atan(slope)
    scale = min(2.32, 128 / (RUN * slope + DEPTH + 12))
    x0, y0 = 98.0, 138.0  # outside of the plate, level of its top

    def at(x: float, y: float) -> svg.Point:
        return x0 + x * scale, y0 - y * scale

    above = DEPTH / cos(angle) - SEAT * slope  # height above plate, plumb over the plate line
    end, tail = RUN - RIDGE / 2, -OVERHANG

    def top(x: float) -> float:
        return above + x * slope

    def low(x: float) -> float:
        return top(x) - DEPTH / cos(angle)

    def mirrored(x: float) -> float:  # the far rafter, past the ridge
        return 2 * RUN - x

    rafter = [
        at(tail, top(tail)), at(end, top(end)), at(end, low(end)), at(SEAT, 0), at(0, 0), at(0, low(0)), at(tail, low(tail)),
    ]  # fmt: skip
    ridge_foot = low(end) - 1.2
    ridge = _block(at, end, end + RIDGE, ridge_foot, top(end))
    plates = [_block(at, 0, PLATE_WIDTH, -PLATE_THICK * (n + 1), -PLATE_THICK * n) for n in (0, 1)]
    foot = -PLATE_THICK * 2
    shapes = [
        svg.path([at(mirrored(end), top(end)), at(mirrored(end - 9), top(end - 9))], svg.HAIR),
        svg.path([at(mirrored(end), low(end)), at(mirrored(end - 9), low(end - 9))], svg.HAIR),
        svg.shape(rafter, svg.HEAVY, '#fff'),
    ]
    for block in (ridge, *plates):
        shapes += [svg.shape(block, svg.LINE, '#fff'), svg.hatch(block, 2.6)]
    shapes += [svg.path([at(x, foot), at(x, foot - 6)], svg.LINE) for x in (0, PLATE_WIDTH)]
    level = -13.5  # where run and overhang are written
    shapes += [
        svg.line(at(0, 0), at(RUN, RUN * slope), svg.LINE, '5 2'),
        svg.line(at(RUN, top(end) + 4), at(RUN, level - 1), svg.HAIR, '6 1.5 1 1.5'),
        svg.line(at(0, top(0) + 3), at(0, level - 1), svg.HAIR, '6 1.5 1 1.5'),
        svg.line(at(tail, low(tail) - 1), at(tail, level - 1), svg.HAIR),
        svg.arrow(at(0, level), at(RUN, level), both=True),
        svg.text(labels.run, _lifted(at(RUN / 2, level)), 8, 'middle', 700),
        svg.arrow(at(tail, level), at(0, level), both=True),
        svg.text(labels.overhang, _lifted(at(tail / 2, level)), 8, 'middle', 500),
        svg.dot(at(0, 0), 1.5),
        svg.dot(at(RUN, RUN * slope), 1.5),
    ]
    over = above * cos(angle) * scale + 11  # the dimension runs clear of the top edge
    shapes.append(svg.dimension(at(0, 0), at(RUN, RUN * slope), over, labels.line_length, 8.5, weight=700))
    side = RUN + 5
    shapes += [
        svg.line(at(RUN, RUN * slope), at(side + 1, RUN * slope), svg.HAIR),
        svg.line(at(PLATE_WIDTH + 1, 0), at(side + 1, 0), svg.HAIR),
        svg.arrow(at(side, 0), at(side, RUN * slope), both=True),
        svg.text(
            labels.rise,
            (at(side, RUN * slope * 0.4)[0] - 2.5, at(side, RUN * slope * 0.4)[1]),
            8,
            'middle',
            700,
            90,
        ),
    ]

    def note(words: str, words_at: svg.Point, target: svg.Point, anchor: str) -> None:
        shift = {'start': -1.5, 'end': 1.5, 'middle': 0}[anchor]
        shapes.append(svg.text(words, words_at, 8, anchor))
        shapes.append(
            svg.arrow((words_at[0] + shift, words_at[1] - 2.6 if shift else words_at[1] + 2), target)
        )

    peak, plate_line = at(RUN, top(end)), at(0, top(0))
    note(labels.ridge, (peak[0] - 26, peak[1] - 26), (peak[0] - 0.5, peak[1] + 1), 'end')
    note(labels.plumb_cut, (peak[0] - 24, at(end, low(end))[1] + 42), at(end, low(end) + 1.2), 'end')
    note(labels.height_above_plate, (plate_line[0] - 16, plate_line[1] - 30), at(0, above * 0.55), 'end')
    note(labels.tail, (at(tail, 0)[0] - 12, at(0, top(tail))[1] - 20), at(tail, top(tail) - 2), 'middle')
    note(labels.seat, (at(PLATE_WIDTH, 0)[0] + 22, at(0, -5)[1]), at(SEAT * 0.6, 0.1), 'start')
    note(labels.plate, (at(PLATE_WIDTH, 0)[0] + 22, at(0, -9)[1]), at(PLATE_WIDTH - 0.6, -2.2), 'start')
    note(labels.heel, (at(tail, 0)[0] - 10, at(0, low(tail))[1] - 4), at(0, low(0) / 2), 'end')
    return svg.drawing(WIDTH, HEIGHT, labels.title, shapes)


def _block(at, left: float, right: float, low: float, high: float) -> list[svg.Point]:
    return [at(left, high), at(right, high), at(right, low), at(left, low)]


def _lifted(point: svg.Point) -> svg.Point:
    return point[0], point[1] - 2
