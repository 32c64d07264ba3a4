"""The slopes of a roof as its builder lays them out before a rafter is cut: from its plates, its pitches, nothing printed.

A slope is seen from outside: along its plate from the left end to the right, inward level and square to it. Heights are over
the main plates' tops.
"""

from __future__ import annotations

from functools import cached_property
from math import hypot

import numpy as np
from msgspec import Struct

Point = tuple[float, float]
BOTH = ('left', 'right')


class Slope(Struct, frozen=True, dict=True):
    """One slope."""

    name: str
    origin: Point
    along: Point
    length: float
    rise: float
    """Over run."""
    outline: tuple[Point, ...]
    """Along and inward: its lines, as they lie over plates, hips, valleys and ridges."""
    overhang: float = 0.0
    plate: float = 0.0
    """Height of its plate's top."""
    lift: float = 0.0
    """Of its plane over the height above plate, where inward is 0, but for what its plate does."""
    plates: tuple[Point, ...] | None = None
    """Along, from and to, of the plates under it; None for one as long as the slope."""
    eaves: tuple[Point, ...] | None = None
    """The same of its fascias; None for one that runs past both ends."""
    eave_as_main: bool = True
    """Whether its tails end at the height of the main ones."""
    gables: tuple[str, ...] = ()
    """Its ends that are gables, with studs under their rafters from its plate line up."""

    @cached_property
    def inward(self) -> np.ndarray:
        return np.array([-self.along[1], self.along[0]])

    def at(self, along: float, inward: float, z: float = 0.0) -> np.ndarray:
        """Return a point in space."""
        flat = np.array(self.origin) + along * np.array(self.along) + inward * self.inward
        return np.array([*flat, z])

    def placed(self, point) -> np.ndarray:
        """Return how far along and inward a point of the plan is."""
        flat = np.asarray(point) - self.origin
        return np.array([flat @ np.array(self.along), flat @ self.inward])

    @cached_property
    def normal(self) -> np.ndarray:
        """Return the direction out of its plane, up."""
        return np.array([*(-self.rise * self.inward), 1.0])

    @cached_property
    def up(self) -> np.ndarray:
        """Return the direction up it, square to its eave."""
        return np.array([*self.inward, self.rise])

    @property
    def top(self) -> float:
        """Return how far inward it goes."""
        return max(inward for _, inward in self.outline)

    def gable_top(self, end: str) -> float:
        """Return how far inward its gable at an end goes."""
        at = 0.0 if end == 'left' else self.length
        return max(inward for along, inward in self.outline if abs(along - at) < 1e-9)


class Corner(Struct, frozen=True):
    """A line where a hip or valley lies: up from a corner of the plates."""

    start: Point
    way: Point
    right: str
    """The slope on its right, looking up it."""
    left: str
    plate: float = 0.0
    """Of the plates under it."""
    inside: bool = False
    """Whether it is a valley's."""


class Ridge(Struct, frozen=True):
    """Where a ridge or purlin lies before its length is known: by its middle, or by the end that it runs on to."""

    at: Point
    way: Point = (1.0, 0.0)
    by_middle: bool = True
    sides: tuple[str, ...] = ()
    """The slopes that its upper edges lie in, that on its right first; none where that is not asked."""


class Lay(Struct, frozen=True):
    """A whole roof."""

    slopes: dict[str, Slope]
    corners: tuple[Corner, ...]
    ridges: dict[str, Ridge]
    peak: tuple[Point, tuple[str, ...]]
    """A point of the line where planes meet highest, or of a shed's upper edge, and whose planes those are."""
    wall: tuple[Point, Point] | None = None
    """Two points of the wall that a roof of one slope, or a bay, stands against; the building on its right."""


def band(long: float, low: float, high: float) -> tuple[Point, ...]:
    """Return the outline of a slope between two level lines."""
    return (0.0, low), (long, low), (long, high), (0.0, high)


def named(*slopes: Slope) -> dict[str, Slope]:
    return {slope.name: slope for slope in slopes}


def corner(
    start: Point, way: Point, right: str, left: str, plate: float = 0.0, inside: bool = False
) -> Corner:
    long = hypot(*way)
    return Corner(start, (way[0] / long, way[1] / long), right, left, plate, inside)
