"""A roof of two slopes cut through, to scale: each rafter by its mark, and under it its level run."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from math import atan, cos, sin

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.drawings.rafter_side import PLUMB_LINE
from layouts.paper.typeface import advance_em

WIDTH, HIGH = 134.0, 34.0
"""Of the drawing, and of the roof in it at most; units."""
ABOVE = 9.0
"""Over the ridge, for the rafters' marks."""
UNDER, BELOW = 5.0, 18.0
"""From the rafters' lowest point to the floor, and from there to the drawing's foot."""
PLATE_IN = 3.5, 3.0
"""A plate is drawn so wide, and so deep."""
SIZE = 8.5
Place = Callable[[svg.Point], svg.Point]
"""Where a point of the roof stands in the drawing."""


class Slope(Struct, frozen=True):
    """One rafter, inches."""

    slope: float
    run: float
    mark: str
    run_words: str


class Band(Struct, frozen=True):
    """A rafter where it lies: inches to the right of the left plate line, and up from the top edges over it."""

    start: svg.Point
    end: svg.Point
    deep: float
    """Plumb."""
    of: Slope


def two_slopes(
    slopes: tuple[Slope, Slope],
    meet: bool,
    depth: float,
    overhang: float,
    words: dict[str, str],
    room: float = 1.0,
) -> Markup:
    """Return the roof.

    Given:
        slopes  of its two rafters: from the left one, or from the lower
        meet    whether they meet at the ridge; else both stand on either side of it, one over the other
        depth, overhang  of its rafters, inches
        words   by 'title'
        room    how high it may be, of the usual
    """
    first, second = slopes
    run = first.run if meet else first.run + second.run
    width = first.run + second.run if meet else 2 * run
    left, right, units = _to_scale(slopes, meet, depth, overhang, room)
    aside, top = (WIDTH - width * units) / 2, ABOVE + run_up(left) * units

    def at(point: svg.Point) -> svg.Point:
        return aside + point[0] * units, top - point[1] * units

    bands = list(_bands(left, depth, overhang))
    bands += [_mirrored(band, width) for band in _bands(right, depth, overhang)]
    floor = _floor(left, right, depth, overhang, units)
    lines = [0.0, run, width] if meet else [0.0, first.run, run]
    shapes = [shape for band in bands for shape in _wood(band, at)]
    for x, band in ((0.0, bands[0]), (width, bands[len(left)])):
        shapes += _plate(x, band.deep * 0.72, width, at)
    shapes += [
        svg.line(
            (at((x, 0))[0], at((x, _top(x, bands)))[1] - 5), (at((x, 0))[0], floor + 15), svg.HAIR, PLUMB_LINE
        )
        for x in lines
    ]
    for start, stop, one in zip(lines, lines[1:], slopes, strict=False):
        a, b = at((start, 0))[0], at((stop, 0))[0]
        shapes.append(svg.arrow((a, floor + 12), (b, floor + 12), both=True))
        if advance_em(one.run_words, svg.WIDTH, 700) * SIZE < b - a - 3:
            shapes.append(svg.text(one.run_words, ((a + b) / 2, floor + 9), SIZE, 'middle', 700))
        else:  # a short run is told beside its arrow
            x, side = (a - 3, 'end') if start == lines[0] else (b + 3, 'start')
            shapes.append(svg.text(one.run_words, (x, floor + 15), SIZE, side, 700))
    shapes += [shape for band in bands[: 2 if meet else len(left)] for shape in _mark(band, at)]
    return svg.drawing(WIDTH, floor + BELOW, words['title'], shapes)


def height_of(
    slopes: tuple[Slope, Slope], meet: bool, depth: float, overhang: float, room: float = 1.0
) -> float:
    """Return how high the roof's drawing is, units; all as of `two_slopes`."""
    left, right, units = _to_scale(slopes, meet, depth, overhang, room)
    return _floor(left, right, depth, overhang, units) + BELOW


def _to_scale(
    slopes: tuple[Slope, Slope], meet: bool, depth: float, overhang: float, room: float
) -> tuple[Sequence[Slope], Sequence[Slope], float]:
    """Return the slopes of both sides, and the units in an inch."""
    first, second = slopes
    left, right = ((first,), (second,)) if meet else (slopes, slopes)
    width = (first.run + second.run) * (1 if meet else 2)
    units = min(WIDTH / (width + 2 * overhang), room * HIGH / (run_up(left) + depth))
    return left, right, units


def _floor(
    left: Sequence[Slope], right: Sequence[Slope], depth: float, overhang: float, units: float
) -> float:
    """Return how far below the drawing's top its floor is, units."""
    lowest = max(
        band.deep - band.start[1] for side in (left, right) for band in _bands(side, depth, overhang)
    )
    return ABOVE + (run_up(left) + lowest) * units + UNDER


def run_up(slopes: Sequence[Slope]) -> float:
    """Return how high slopes one over the other rise."""
    return sum(one.run * one.slope for one in slopes)


def _bands(slopes: Sequence[Slope], depth: float, overhang: float) -> Iterator[Band]:
    x = y = 0.0
    for place, one in enumerate(slopes):
        out = 0.0 if place else overhang
        end = x + one.run, y + one.run * one.slope
        yield Band((x - out, y - out * one.slope), end, depth / cos(atan(one.slope)), one)
        x, y = end


def _mirrored(band: Band, width: float) -> Band:
    return Band(
        (width - band.start[0], band.start[1]), (width - band.end[0], band.end[1]), band.deep, band.of
    )


def _wood(band: Band, at: Place) -> list[str]:
    (x, y), (end, high), deep = band.start, band.end, band.deep
    outline = [(x, y), (end, high), (end, high - deep), (x, y - deep)]
    return [svg.shape([at(one) for one in outline], svg.HEAVY, '#fff')]


def _plate(x: float, below: float, width: float, at: Place) -> list[str]:
    wide, deep = PLATE_IN
    inward = wide if x < width / 2 else -wide
    corners = [
        at(one)
        for one in ((x, -below), (x + inward, -below), (x + inward, -below - deep), (x, -below - deep))
    ]
    return [svg.shape(corners, svg.LINE, '#fff'), svg.hatch(corners, 2.6)]


def _top(x: float, bands: Sequence[Band]) -> float:
    """Return how high the top edges are over a point."""
    heights = []
    for band in bands:
        (a, low), (b, high) = sorted((band.start, band.end))
        if a <= x <= b:
            heights.append(low + (high - low) * (x - a) / (b - a))
    return max(heights)


def _mark(band: Band, at: Place) -> list[str]:
    """Return a rafter's mark over its middle."""
    (a, low), (b, high) = at(band.start), at(band.end)
    angle = atan((low - high) / (b - a))
    away = 5.0
    x, y = (a + b) / 2 - away * sin(angle), (low + high) / 2 - away * cos(angle)
    short = b - a < advance_em(band.of.mark, svg.WIDTH, 700) * SIZE + away
    side = 'end' if b > a and (angle > 0.5 or short) else 'middle'
    return [svg.text(band.of.mark, (x, y), SIZE, side, 700)]
