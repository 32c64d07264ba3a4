"""A regular roof corner in space: two planes, boards with plumb sides, and what stands between points where planes meet.

Nothing here knows a formula of the trade. The plates' corner stands at the origin, eave A along x and eave B along y,
the building where both are above 0; z is up. Lengths in inches, angles in degrees.
"""

from __future__ import annotations

from decimal import Decimal
from typing import NamedTuple

from tablegen.proof.digits import SLACK, arctangent, pi

Vector = tuple[Decimal, Decimal, Decimal]


class Plane(NamedTuple):
    """The points p with normal · p = offset; the normal has the length 1."""

    normal: Vector
    offset: Decimal

    def moved(self, distance: Decimal) -> Plane:
        """Return the parallel plane so far along the normal."""
        return Plane(self.normal, self.offset + distance)

    def is_like(self, other: Plane) -> bool:
        """Return whether another one has the same points."""
        way = 1 if dot(self.normal, other.normal) > 0 else -1
        apart = (
            *(a - way * b for a, b in zip(self.normal, other.normal, strict=True)),
            self.offset - way * other.offset,
        )
        return all(abs(one) < SLACK for one in apart)


def vector(x: Decimal | int, y: Decimal | int, z: Decimal | int) -> Vector:
    """Return a point or a direction."""
    return Decimal(x), Decimal(y), Decimal(z)


def dot(u: Vector, v: Vector) -> Decimal:
    """Return the scalar product."""
    return u[0] * v[0] + u[1] * v[1] + u[2] * v[2]


def cross(u: Vector, v: Vector) -> Vector:
    """Return the vector square to both."""
    return u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]


def size(u: Vector) -> Decimal:
    """Return how long a vector is."""
    return dot(u, u).sqrt()


def between(u: Vector, v: Vector) -> Vector:
    """Return the vector from one point to another."""
    return v[0] - u[0], v[1] - u[1], v[2] - u[2]


def level(u: Vector) -> Vector:
    """Return the part of a vector that lies level."""
    return u[0], u[1], Decimal(0)


def plane(normal: Vector, point: Vector | None = None) -> Plane:
    """Return the plane square to a direction through a point, the origin where none is given."""
    long = size(normal)
    unit = (normal[0] / long, normal[1] / long, normal[2] / long)
    return Plane(unit, dot(unit, point) if point else Decimal(0))


def meet(p: Plane, q: Plane, r: Plane) -> Vector:
    """Return the point of three planes, by Cramer's rule."""
    sides = cross(q.normal, r.normal), cross(r.normal, p.normal), cross(p.normal, q.normal)
    whole = dot(p.normal, sides[0])
    x, y, z = (
        (p.offset * sides[0][n] + q.offset * sides[1][n] + r.offset * sides[2][n]) / whole for n in range(3)
    )
    return x, y, z


def angle(u: Vector, v: Vector) -> Decimal:
    """Return the angle of two lines, 0 to 90 degrees: which way each points does not count."""
    along, across = abs(dot(u, v)), size(cross(u, v))
    turn = pi() / 2 - arctangent(along / across) if along < across else arctangent(across / along)
    return turn * 180 / pi()
