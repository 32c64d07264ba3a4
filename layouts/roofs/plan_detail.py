"""A part of a plan drawn larger, where boards are too short for their marks on the plan itself."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.drawings.svg import Point
from layouts.patterns.boxes import Box
from layouts.roofs.lines import PlanLine
from layouts.roofs.plan_names import by_other_ways, drawn, named
from layouts.words.drawings import ROOF_PLAN

ROUND_IN = 16.0
"""What is shown around the boards that it is drawn for."""


class Detail(Struct, frozen=True):
    """One drawn."""

    image: Markup
    scale: int
    """So many times smaller than the roof."""
    ring: tuple[Point, ...]
    """The corners of what it shows, in inches, as the plan is measured, the first once more at the end."""


def plan_detail(
    lines: Sequence[PlanLine],
    of: Sequence[PlanLine],
    scales: Sequence[tuple[int, float]],
    room: tuple[float, float],
    spacing_in: float,
) -> tuple[Detail, list[PlanLine]] | None:
    """Return what lies about some lines at the largest scale that has room, and those of them without a name there too.

    Given:
        scales  those that are larger than the plan's, from the largest, each with its units to the inch

    Returned:
        None where none has room
    """
    ends = [point for one in of for point in (one.start, one.end)]
    (left, right), (low, high) = (
        (min(axis) - ROUND_IN, max(axis) + ROUND_IN) for axis in zip(*ends, strict=True)
    )
    wide, tall = right - left, high - low
    fitting = (one for one in scales if wide * one[1] <= room[0] and tall * one[1] <= room[1])
    scale, units = next(fitting, (0, 0.0))
    if not scale:
        return None

    def at(point: Point) -> Point:
        return (point[0] - left) * units + svg.HAIR, (high - point[1]) * units + svg.HAIR

    ring = ((left, low), (right, low), (right, high), (left, high), (left, low))
    frame = list(pairwise(map(at, ring)))
    placed = [(one, (at(a), at(b))) for one, a, b in _within(lines, Box(left, low, right, high))]
    names, without = named(placed, 0, spacing_in * units, frame)
    unnamed = by_other_ways(names, [each for each in without if each[0] in of], 0)
    shapes = [*drawn(placed, names), *(svg.line(*side, svg.HAIR) for side in frame)]
    size = wide * units + 2 * svg.HAIR, tall * units + 2 * svg.HAIR
    return Detail(svg.drawing(*size, ROOF_PLAN['detail'], shapes), scale, ring), unnamed


def _within(lines: Sequence[PlanLine], window: Box) -> Iterator[tuple[PlanLine, Point, Point]]:
    """Return what of some lines lies in a window."""
    for one in lines:
        seen = window.clipped(one.start, one.end)
        if seen:
            yield one, *seen
