"""A board in its place: plumb sides, a flat top, ends cut off by planes; its marks, cuts and seat from points where these meet."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from fractions import Fraction
from functools import cached_property

from msgspec import Struct
from msgspec.structs import replace

from tablegen.proof.digits import real
from tablegen.proof.roof import UP, arms
from tablegen.proof.space import Plane, Vector, angle, between, cross, dot, level, meet, plane, size

PARALLEL = Decimal('1e-30')


class End(Struct, frozen=True):
    """What cuts an end off: planes, each by itself or, where hollow, all of them at once."""

    faces: tuple[Plane, ...]
    hollow: bool = False
    thick: Fraction = Fraction(0)
    """Of what it ends at."""
    line: Plane | None = None
    """The center of that, where what comes off is told from it."""

    @property
    def leans(self) -> bool:
        """Return whether it is not plumb."""
        return any(abs(face.normal[2]) > PARALLEL for face in self.faces)


class Timber(Struct, frozen=True, dict=True):
    """One board."""

    foot: Vector
    """Of its top's center line, over the plate line or what stands for it."""
    edge: Vector
    """Uphill along that line."""
    thick: Fraction
    depth: Fraction
    head: End
    tail: End
    center: Plane | None
    """The line that its marks are told from: of what stops it above."""
    height: Decimal | None = None
    """Of its top over the plate, plumb; None of one that stands on none."""
    out: Decimal = Decimal(0)
    """How far outside of the plates' corner the heel of its bird's mouth stands, level."""

    def without_mouth(self) -> Timber:
        """Return it over no plate."""
        return replace(self, height=None)

    def moved(self, along: Decimal) -> Timber:
        """Return it with its marks told from so far up."""
        share = along / size(self.edge)
        x, y, z = (at + share * way for at, way in zip(self.foot, self.edge, strict=True))
        return replace(self, foot=(x, y, z))

    @property
    def flat(self) -> Decimal:
        """Return how far level an inch along its top edge goes."""
        return size(level(self.edge)) / size(self.edge)

    @cached_property
    def ahead(self) -> Vector:
        """Return the level direction uphill, one inch long."""
        flat = level(self.edge)
        long = size(flat)
        return flat[0] / long, flat[1] / long, Decimal(0)

    @cached_property
    def left(self) -> Vector:
        """Return the level direction to the left of one who looks uphill."""
        return cross(UP, self.ahead)

    @cached_property
    def top(self) -> Vector:
        """Return the direction square to its top."""
        return cross(self.edge, self.left)

    def to(self, face: Plane, aside: Decimal = Decimal(0)) -> Decimal | None:
        """Return how far along the top edge a plane crosses a line of the top, so far to the left of the center; None where
        it never does.
        """
        start = tuple(at + aside * way for at, way in zip(self.foot, self.left, strict=True))
        rate = dot(face.normal, self.edge)
        if abs(rate) < PARALLEL:
            return None
        share = (face.offset - dot(face.normal, (start[0], start[1], start[2]))) / rate
        return share * size(self.edge)

    def at(self, end: End, aside: Decimal = Decimal(0), upper: bool = True) -> Decimal:
        """Return where an end is on a line of the top: the first plane that one comes to, the last where it is hollow."""
        found = [one for face in end.faces if (one := self.to(face, aside)) is not None]
        return min(found) if upper is not end.hollow else max(found)

    def _asides(self, end: End) -> Iterator[Decimal]:
        """Yield the lines of the top on which an end may reach furthest: sides, center, and where two planes meet."""
        half = real(self.thick) / 2
        yield from (-half, Decimal(0), half)
        if len(end.faces) == 2:
            at, beside = ([self.to(face, aside) for face in end.faces] for aside in (Decimal(0), Decimal(1)))
            if None not in at:
                (a, b), (c, d) = ([one or Decimal(0) for one in some] for some in (at, beside))
                rate = (c - a) - (d - b)
                if abs(rate) > PARALLEL and abs((b - a) / rate) < half:
                    yield (b - a) / rate

    def reach(self, end: End, upper: bool = True) -> Decimal:
        """Return where the board begins or ends: the furthest that any line of its top reaches."""
        places = [self.at(end, aside, upper) for aside in self._asides(end)]
        return max(places) if upper else min(places)

    @property
    def overall(self) -> Decimal:
        """Return its length along the top edge, from point to point."""
        return self.reach(self.head) - self.reach(self.tail, False)

    @property
    def is_wood(self) -> bool:
        """Return whether its ends leave wood between them on both of its sides."""
        half = real(self.thick) / 2
        return all(self.at(self.head, side) > self.at(self.tail, side, False) for side in (half, -half))

    @property
    def stick(self) -> Decimal:
        """Return how long the board must be that it is cut from: a plumb cut's lower corner reaches further than its top edge."""
        steep = self.edge[2] / size(level(self.edge))
        return self.overall + (Decimal(0) if self.tail.leans else real(self.depth) * steep)

    # Cuts ---------------------------------------------------------------------------------------------------

    @property
    def plumb_cut(self) -> Decimal:
        """Return the angle of a plumb line on its side from the line square across."""
        return angle(self.top, UP)

    @property
    def level_cut(self) -> Decimal:
        """Return that of a level line."""
        return angle(self.top, self.ahead)

    def side_line(self, face: Plane) -> Decimal:
        """Return the angle on a side from the line square across."""
        return angle(self.top, cross(self.left, face.normal))

    def tilt(self, face: Plane) -> Decimal:
        """Return the blade's tilt from square, for a saw on the side."""
        return 90 - angle(face.normal, self.left)

    def cheek(self, face: Plane) -> Decimal:
        """Return the angle on the top from the line square across."""
        return 90 - angle(cross(self.top, face.normal), self.edge)

    def held(self, face: Plane) -> tuple[Decimal, Decimal]:
        """Return the body's and the tongue's figures for that line, marked along the body."""
        line = cross(self.top, face.normal)
        away = size(cross(line, self.edge)) / abs(dot(line, self.edge))
        return arms(Decimal(12), 12 * away)

    # On the plate -------------------------------------------------------------------------------------------

    @property
    def seats(self) -> bool:
        """Return whether it has room for a bird's mouth: not where no more than twice the seat's length is left of a hip or valley."""
        if self.height is None or self.center is None:
            return False
        heel, seat, _notch, left = self.mouth(self.height)
        return heel > 0 and left > 0 and 2 * seat <= (self.to(self.center) or Decimal(0)) * self.flat

    def mouth(self, height: Decimal) -> tuple[Decimal, Decimal, Decimal, Decimal]:
        """Return heel, seat, notch and wood left of the mouth that lets it stand so high over the plate."""
        unit = size(self.top)
        up = (self.top[0] / unit, self.top[1] / unit, self.top[2] / unit)
        over = (self.foot[0], self.foot[1], height)
        under = plane(up, over).moved(-real(self.depth))
        sides = plane(self.left, over)
        heel = meet(under, sides, Plane(self.ahead, dot(self.ahead, over) - self.out))
        inner = meet(under, sides, Plane(UP, Decimal(0)))
        corner = (heel[0], heel[1], Decimal(0))
        notch = dot(up, corner) - under.offset
        return -heel[2], dot(between(corner, inner), self.ahead), notch, real(self.depth) - notch


def past(plane_: Plane, thickness: Fraction | int, towards: Vector) -> Plane:
    """Return the face of a board that has a plumb center plane, on the side of a point."""
    away = dot(plane_.normal, towards) - plane_.offset
    half = real(Fraction(thickness)) / 2
    return plane_.moved(half if away > 0 else -half)
