"""Boxes on paper: what of a line lies in one, and whether two that are turned meet; y goes down."""

from __future__ import annotations

from math import cos, radians, sin
from typing import NamedTuple

from msgspec import Struct

from layouts.drawings.svg import Point


class Box(NamedTuple):
    """An upright box."""

    left: float
    top: float
    right: float
    foot: float

    def clipped(self, a: Point, b: Point) -> tuple[Point, Point] | None:
        """Return the part of a line that lies in it, None where nothing does (Liang and Barsky's way)."""
        start, end = 0.0, 1.0
        for at, way, low, high in (
            (a[0], b[0] - a[0], self.left, self.right),
            (a[1], b[1] - a[1], self.top, self.foot),
        ):
            if way == 0:
                if not low <= at <= high:
                    return None
                continue
            first, last = sorted(((low - at) / way, (high - at) / way))
            start, end = max(start, first), min(end, last)
        if start >= end:
            return None
        return _between(a, b, start), _between(a, b, end)

    def holds(self, point: Point) -> bool:
        return self.left <= point[0] <= self.right and self.top <= point[1] <= self.foot


def _between(a: Point, b: Point, share: float) -> Point:
    return a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share


class Turned(Struct, frozen=True):
    """A box of some width and height about its middle, turned anticlockwise."""

    middle: Point
    wide: float
    high: float
    degrees: float = 0.0

    def own(self, point: Point) -> Point:
        """Return a point of the paper as this box sees it, from its middle."""
        x, y = point[0] - self.middle[0], point[1] - self.middle[1]
        turn = radians(self.degrees)
        return x * cos(turn) - y * sin(turn), x * sin(turn) + y * cos(turn)

    @property
    def corners(self) -> list[Point]:
        turn = radians(-self.degrees)
        half = [(x * self.wide / 2, y * self.high / 2) for x, y in ((-1, -1), (1, -1), (1, 1), (-1, 1))]
        return [
            (self.middle[0] + x * cos(turn) - y * sin(turn), self.middle[1] + x * sin(turn) + y * cos(turn))
            for x, y in half
        ]

    def meets(self, a: Point, b: Point) -> bool:
        """Return whether a line goes through it."""
        upright = Box(-self.wide / 2, -self.high / 2, self.wide / 2, self.high / 2)
        return upright.clipped(self.own(a), self.own(b)) is not None

    def overlaps(self, other: Turned) -> bool:
        """Return whether two boxes have a point in common."""
        sides = list(zip(other.corners, other.corners[1:] + other.corners[:1], strict=True))
        return any(self.meets(a, b) for a, b in sides) or other.meets(*_across(self))


def _across(box: Turned) -> tuple[Point, Point]:
    corners = box.corners
    return corners[0], corners[2]


def inside(point: Point, outline: tuple[Point, ...]) -> bool:
    """Return whether a point is in an outline, hollow or not: a level ray from it crosses the outline an odd number of times."""
    within = False
    for a, b in zip(outline, outline[1:] + outline[:1], strict=True):
        if (a[1] > point[1]) != (b[1] > point[1]):
            within ^= point[0] < a[0] + (b[0] - a[0]) * (point[1] - a[1]) / (b[1] - a[1])
    return within
