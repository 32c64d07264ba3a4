"""A corner of two roof planes: its lines, and the lengths along them.

The plates' corner stands at the origin, eave A along x; the planes pass through the plate lines at z = 0, so that a
length on a plane is a length on the top edge of a rafter, wherever its top edge is raised to.
"""

from fractions import Fraction
from functools import cache

from fifty_digits import mp, mpf, real
from msgspec import Struct

from oracle.planes import (
    ORIGIN,
    Plane,
    angle,
    cross,
    dot,
    level,
    meet,
    member,
    plumb_plane,
    roof_corner,
    scaled,
    size,
    sub,
    unit,
)

HALF_TURN = 180


class Place(Struct, frozen=True):
    """A corner seen from side A: roof planes, and the hip or valley where they meet."""

    roof: object
    degrees: object
    """Plan angle between the eaves."""
    rise_a: object
    rise_b: object

    @property
    def turned(self):
        """Return the same corner seen from side B."""
        return corner(self.rise_b, self.rise_a, self.degrees)

    @property
    def hip(self):
        """Return the direction of the line where the planes meet, uphill."""
        return self.roof.hip()

    @property
    def hip_level(self):
        """Return the same direction in plan."""
        return unit(level(self.hip))

    @property
    def hip_center(self):
        """Return the plumb plane through the hip's center line."""
        return plumb_plane(ORIGIN, self.hip_level)

    def across_a(self, run):
        """Return the plumb plane along eave A, level so far inside its plate line: a ridge's center, a face."""
        return Plane(self.roof.in_a, mpf(run))

    def along_a(self, distance):
        """Return the plumb plane square to eave A, level so far from the plates' corner: a common's center."""
        return Plane(self.roof.eave_a, mpf(distance))

    def hip_side(self, thickness):
        """Return the plumb plane of the hip's side that looks at A."""
        return self.roof.hip_member(mpf(thickness)).right

    def on_hip(self, cut):
        """Return where the line of the two planes meets a plane."""
        return meet(self.roof.a, self.roof.b, cut)

    def along_hip(self, point):
        """Return how far inwards of the plates' corner a point is, level along the hip."""
        return dot(point, self.hip_level)

    def rafter(self, distance, thickness):
        """Return a common or jack of A as a member whose center is so far from the plates' corner."""
        return member(scaled(self.roof.eave_a, mpf(distance)), self.roof.in_a, mpf(thickness), self.roof.a)

    def hip_board(self, thickness):
        """Return the hip as a square-topped member, its top's center on the line of the two planes."""
        return self.roof.hip_member(mpf(thickness))


@cache
def corner(rise_a, rise_b=None, degrees=90):
    """Return the corner of two pitches, inches of rise in 12; without the second they are equal."""
    other = rise_a if rise_b is None else rise_b
    turn = mp.pi * real(degrees) / HALF_TURN
    return Place(roof_corner(real(rise_a) / 12, real(other) / 12, turn), degrees, rise_a, other)


def many_sided(rise, sides):
    """Return a corner of a regular roof of so many sides."""
    return corner(rise, rise, Fraction(180) - Fraction(360, sides))


# Lengths -----------------------------------------------------------------------------------------------------


def _on_common(place, run):
    return meet(place.roof.a, place.along_a(0), place.across_a(run))


def common_length(place, run):
    """Common: from the plumb line over the plate line to the plumb line of the ridge's center, along the top edge."""
    return size(sub(_on_common(place, run), _on_common(place, 0)))


def rise(place, run):
    """From the height of the plane over the plate line to its height at the ridge's center line, plumb."""
    return _on_common(place, run)[2] - _on_common(place, 0)[2]


def hip_length(place, run):
    """Hip or valley: from the plates' corner to the ridge's center line, along the line of the two planes."""
    return size(sub(place.on_hip(place.across_a(run)), ORIGIN))


def hip_run(place, run):
    """Hip or valley: the same two points, level."""
    return size(level(place.on_hip(place.across_a(run))))


def run_of_b(place, run):
    """Level from B's plate line to the point where a hip over this run of A ends."""
    return dot(place.on_hip(place.across_a(run)), place.roof.in_b)


def hip_plan_angle(place):
    """In plan, between eave A and the hip."""
    return angle(place.roof.eave_a, place.hip_level)


def _jack_end(place, distance):
    return meet(place.roof.a, place.along_a(distance), place.hip_center)


def jack_length(place, distance):
    """Jack of A, its center so far from the plates' corner: plate line to the hip's center line, along its top edge."""
    foot = meet(place.roof.a, place.along_a(distance), place.across_a(0))
    return size(sub(_jack_end(place, distance), foot))


def jack_difference(place, spacing):
    """Two neighboring jacks of A: the one's length on its center line less the other's, along the top edge."""
    return jack_length(place, 3 * mpf(spacing)) - jack_length(place, 2 * mpf(spacing))


def jack_points(place, hip_thickness, rafter_thickness):
    """Jack of A: from the short point to the long point of its cheek, along the top edge."""
    board = place.rafter(97, rafter_thickness)
    side = place.hip_side(hip_thickness)
    return abs(_up(place, meet(board.left, board.top, side)) - _up(place, meet(board.right, board.top, side)))


def _up(place, point):
    """Return how far up plane A a point is, along its slope."""
    return dot(point, unit(cross(place.roof.a.normal, place.roof.eave_a)))


def jack_to_points(place, distance, hip_thickness, rafter_thickness):
    """Jack: from the plate line to its short point and to its long point, each along the top edge it stands on."""
    board = place.rafter(distance, rafter_thickness)
    side = place.hip_side(hip_thickness)
    lengths = [
        _up(place, meet(edge, board.top, side)) - _up(place, meet(edge, board.top, place.across_a(0)))
        for edge in (board.left, board.right)
    ]
    return min(lengths), max(lengths)
