"""Planes, lines and vectors in three dimensions, at 50 digits: an independent model of roof corners.

Nothing here knows a formula of the trade. A roof is two planes through two level eave lines; a member is two
plumb sides and a top plane; a cut is a plane. Every reading is taken from points, lines and angles between them.
x and y are level, z is up. Lengths in inches, angles in radians.
"""

from fifty_digits import mp, mpf
from msgspec import Struct

UP = (mpf(0), mpf(0), mpf(1))
ORIGIN = (mpf(0), mpf(0), mpf(0))


def add(u, v):
    return tuple(a + b for a, b in zip(u, v, strict=True))


def sub(u, v):
    return tuple(a - b for a, b in zip(u, v, strict=True))


def scaled(u, k):
    return tuple(k * a for a in u)


def dot(u, v):
    return sum(a * b for a, b in zip(u, v, strict=True))


def cross(u, v):
    return (u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0])


def size(u):
    return mp.sqrt(dot(u, u))


def unit(u):
    return scaled(u, 1 / size(u))


def level(u):
    """Return the part of a vector that lies level."""
    return (u[0], u[1], mpf(0))


def angle(u, v):
    """Return the angle between two directions, 0 to π."""
    return mp.atan2(size(cross(u, v)), dot(u, v))


def line_angle(u, v):
    """Return the angle between two lines, 0 to π/2: which way each points does not count."""
    return mp.atan2(size(cross(u, v)), abs(dot(u, v)))


class Plane(Struct, frozen=True):
    """The points p with normal · p = offset; the normal has the length 1."""

    normal: tuple
    offset: mpf

    def height(self, point):
        """Return the distance of a point from the plane, on the side of the normal."""
        return dot(self.normal, point) - self.offset

    def moved(self, distance):
        """Return the parallel plane so far along the normal."""
        return Plane(self.normal, self.offset + distance)

    def lifted(self, distance):
        """Return the plane moved plumb."""
        return Plane(self.normal, self.offset + distance * self.normal[2])


def plane(point, normal):
    normal = unit(normal)
    return Plane(normal, dot(normal, point))


def plane_through(p, q, r):
    return plane(p, cross(sub(q, p), sub(r, p)))


def meet(p, q, r):
    """Return the point of three planes, by Cramer's rule."""
    determinant = dot(p.normal, cross(q.normal, r.normal))
    terms = (
        scaled(cross(q.normal, r.normal), p.offset),
        scaled(cross(r.normal, p.normal), q.offset),
        scaled(cross(p.normal, q.normal), r.offset),
    )
    return scaled(add(add(*terms[:2]), terms[2]), 1 / determinant)


def along(p, q):
    """Return the direction of the line where two planes meet."""
    return unit(cross(p.normal, q.normal))


def dihedral(p, q):
    """Return the angle between two planes, 0 to π/2."""
    return line_angle(p.normal, q.normal)


LEVEL = Plane(UP, mpf(0))


def plumb_plane(point, direction):
    """Return the plumb plane that holds a point and a level direction; its normal is on the left of it."""
    return plane(point, cross(UP, direction))


class Member(Struct, frozen=True):
    """A straight board with plumb sides: its direction, two sides, the plane of its top."""

    center: Plane
    """Plumb, half way between the sides; normal on the left."""
    left: Plane
    right: Plane
    top: Plane

    def direction(self):
        """Return the direction of its top edges, uphill."""
        found = along(self.center, self.top)
        return found if found[2] >= 0 else scaled(found, -1)

    def end(self, cut):
        """Return where the center line of the top meets a plane."""
        return meet(self.center, self.top, cut)


def member(point, run_direction, thickness, top):
    """Return a member whose center line passes over a point in plan."""
    center = plumb_plane(point, run_direction)
    return Member(center, center.moved(thickness / 2), center.moved(-thickness / 2), top)


def square_top(point, direction):
    """Return the plane through a point that holds a direction and the level line square to it."""
    return plane(point, cross(direction, cross(UP, direction)))


class RoofCorner(Struct, frozen=True):
    """Two roof planes over eaves that leave the origin: A's along x, B's at the corner's angle from it."""

    a: Plane
    b: Plane
    eave_a: tuple
    eave_b: tuple
    in_a: tuple
    """Level, square to eave A, into the building."""
    in_b: tuple

    def hip(self):
        """Return the direction of the line where the planes meet, uphill."""
        found = along(self.a, self.b)
        return found if found[2] > 0 else scaled(found, -1)

    def hip_member(self, thickness):
        """Return a square-topped member on that line, its top at the line itself."""
        return member(ORIGIN, level(self.hip()), thickness, square_top(ORIGIN, self.hip()))


def roof_corner(slope_a, slope_b, corner_angle=None):
    """Return the corner of two slopes; the eaves are at z = 0 and the building lies between them."""
    turn = mp.pi / 2 if corner_angle is None else corner_angle
    eave_a, eave_b = (mpf(1), mpf(0), mpf(0)), (mp.cos(turn), mp.sin(turn), mpf(0))
    in_a, in_b = cross(UP, eave_a), cross(eave_b, UP)
    up_a, up_b = add(in_a, scaled(UP, slope_a)), add(in_b, scaled(UP, slope_b))
    return RoofCorner(
        plane(ORIGIN, cross(eave_a, up_a)), plane(ORIGIN, cross(up_b, eave_b)), eave_a, eave_b, in_a, in_b
    )


class CutReadings(Struct, frozen=True):
    """A plane that cuts a member, read on the member's faces; radians."""

    saw: mpf
    """On the side, from the line square across."""
    blade: mpf
    """From square, the shoe on the side."""
    top_from_edge: mpf


def cut_readings(board, cut, top=None):
    """Return how a cut reads on a board; top is another top face than the board's own, if any."""
    side, top = board.left, top or board.top
    edge = board.direction()
    across = cross(side.normal, edge)
    return CutReadings(
        saw=line_angle(along(cut, side), across),
        blade=mp.pi / 2 - dihedral(cut, side),
        top_from_edge=line_angle(along(cut, top), edge),
    )
