"""A common rafter on its plate and ridge, seen from the side with the ridge at the left, to scale: every part named."""

from __future__ import annotations

from math import atan, degrees

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.drawings.rafter_side import PLATE_THICK, PLUMB_LINE, RafterSide, wood

RUN, OVERHANG, DEPTH, SEAT, RIDGE = 27.0, 14.5, 7.25, 3.5, 1.5
"""Inches: a short rafter, so that its parts can be seen."""
WIDTH = 241.0
LEFT, RIGHT = 38.0, 41.0
"""Units left of the ridge center line, for the rise, and right of the tail, for its cut's name."""
ABOVE, BELOW = 18.0, 29.0
"""Units over the roof for the line length and the plumb lines' names, and under the tail for run and overhang."""
STUB, WALL = 4.0, 5.0
RISE_X = 10.0
OUT = 11.0
"""Units from the top edge up to the line length."""


class RafterLabels(Struct, frozen=True):
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
    tail_cut: str
    plumb: str


def labelled_rafter(slope: float, labels: RafterLabels) -> Markup:
    """Return the drawing for a roof of this slope, not over 1 in 1.

    Run, rise and line length are drawn between the same two plumb lines, the rise and the line length from where
    the top edge meets them.
    """
    side = RafterSide(slope, RUN, OVERHANG, DEPTH, SEAT, RIDGE)
    scale = (WIDTH - LEFT - RIGHT) / side.end
    peak = ABOVE + OUT

    def at(x: float, y: float) -> svg.Point:
        return LEFT + x * scale, peak + (side.upper(0) - y) * scale

    level = at(0, side.lower(side.end))[1] + BELOW
    shapes = wood(side, at, svg.HEAVY, (1.2, '#fff'), STUB, WALL)
    shapes += [*_plumb_lines(side, at, level, labels), *_lengths(side, at, level, labels)]
    turn = -degrees(atan(slope))

    def along(words: str, x: float, down: float, size: float) -> None:
        """Write along the board, so much of its depth below the top edge."""
        shapes.append(svg.text(words, at(x, side.upper(x) - side.deep * down), size, 'middle', turn=turn))

    along(labels.top_edge, RUN * 0.42, 0.3, 7.5)
    along(labels.tail, side.end - OVERHANG * 0.42, 0.62, 9)
    shapes += _names(side, at, labels)
    return svg.drawing(WIDTH, level + 3, labels.title, shapes)


def _plumb_lines(side: RafterSide, at: svg.Place, level: float, labels: RafterLabels) -> list[str]:
    """Return the ridge center line and the plate line, by name, and the tail's plumb line; none through a dimension."""
    ridge, plate, tail = (at(x, 0)[0] for x in (0.0, side.run, side.end))
    peak, eave = (at(x, side.upper(x))[1] - OUT for x in (0.0, side.run))
    below = at(0, -PLATE_THICK * 2)[1]
    return [
        svg.line((ridge, peak - 5), (ridge, level + 2), svg.HAIR, PLUMB_LINE),
        svg.line((plate, eave - 14), (plate, at(0, side.upper(side.run))[1]), svg.HAIR, PLUMB_LINE),
        svg.line((plate, below), (plate, level + 2), svg.HAIR, PLUMB_LINE),
        svg.line((tail, at(0, side.lower(side.end))[1] + 1), (tail, level + 2), svg.HAIR),
        svg.text(labels.ridge_line, (ridge - 6, peak - 9), 8),
        svg.text(labels.plate_line, (plate + 4, eave - 8), 8),
    ]


def _lengths(side: RafterSide, at: svg.Place, level: float, labels: RafterLabels) -> list[str]:
    """Return every length between what it measures."""
    ridge, plate, tail = (at(x, 0)[0] for x in (0.0, side.run, side.end))
    high, low = (at(x, side.upper(x))[1] for x in (0.0, side.run))
    share = 0.56  # along the line length, clear of the ridge center line's name
    middle = ridge + (plate - ridge) * share, high - OUT + (low - high) * share
    return [
        svg.arrow((ridge, level), (plate, level), both=True),
        svg.text(labels.run, ((ridge + plate) / 2, level - 2.5), 8.5, 'middle', 700),
        svg.arrow((plate, level), (tail, level), both=True),
        svg.text(labels.overhang, ((plate + tail) / 2, level - 2.5), 8.5, 'middle', 700),
        svg.arrow((ridge, high - OUT), (plate, low - OUT), both=True),
        svg.text(
            labels.line_length,
            (middle[0] + 1.5, middle[1] - 3),
            8.5,
            'middle',
            700,
            -degrees(atan(side.slope)),
        ),
        svg.line((ridge, high), (RISE_X - 3, high), svg.HAIR),
        svg.line((plate, low), (RISE_X - 3, low), svg.HAIR),
        svg.arrow((RISE_X, high), (RISE_X, low), both=True),
        svg.text(labels.rise, (RISE_X + 3, (high + low) / 2 + 3), 8.5, 'start', 700),
        svg.arrow(at(side.run, 0), (plate, low), both=True, width=svg.LINE),
        svg.text(labels.height_above_plate, (plate + 15, low - 2), 8),
        svg.line((plate + 13.5, low - 4), (plate, (low + at(0, 0)[1]) / 2), svg.HAIR),
    ]


def _names(side: RafterSide, at: svg.Place, labels: RafterLabels) -> list[str]:
    """Return the names of parts and cuts, each with an arrow to it."""
    face, under = RIDGE / 2, at(0, side.lower(0))[1]
    ridge, plate, inside = at(0, 0)[0], at(side.run, 0), at(side.run - SEAT, 0)[0]
    tail = at(side.end, (side.upper(side.end) + side.lower(side.end)) / 2)
    heel = (plate[0] + 8, at(0, side.lower(side.end))[1] + 4)
    cut = max(
        at(0, side.upper(side.run))[1] + 11, under + 50 * side.slope + 8
    )  # clear of the rise and of the board
    return [
        *_note(labels.ridge, (ridge + 6, plate[1] + 24), at(0, side.lower(0) - 0.2)),
        *_note(labels.plumb_cut, (ridge + 10, cut), at(face, side.lower(face) + 0.6)),
        *_note(labels.seat, (inside - 19, plate[1] + 1), at(side.run - SEAT * 0.6, 0), 'end'),
        *_note(labels.plate, (inside - 19, plate[1] + 15), at(side.run - SEAT + 0.3, -PLATE_THICK), 'end'),
        *_note(labels.heel, heel, at(side.run, side.lower(side.run) / 2)),
        *_note(labels.tail_cut, (tail[0] + 8, tail[1] - 9), tail),
        *(svg.text(labels.plumb, (x, y + 8.5), 8) for x, y in (heel, (tail[0] + 8, tail[1] - 9))),
    ]


def _note(words: str, words_at: svg.Point, target: svg.Point, anchor: str = 'start') -> list[str]:
    """Return words and an arrow to what they name."""
    shift = {'start': -1.5, 'end': 1.5}[anchor]
    return [
        svg.text(words, words_at, 8, anchor),
        svg.arrow((words_at[0] + shift, words_at[1] - 2.6), target),
    ]
