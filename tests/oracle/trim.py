"""Boards and sheets along an eave that turn the corner, cut in the plumb plane of the hip, and gables."""

from fifty_digits import mp, mpf

from oracle.planes import (
    ORIGIN,
    along,
    cross,
    dihedral,
    dot,
    line_angle,
    meet,
    plane,
    scaled,
    size,
    sub,
    unit,
)


def _up(place):
    """Return the direction up plane A's slope."""
    return unit(cross(place.roof.a.normal, place.roof.eave_a))


def standing(place):
    """Return the face of a board along eave A that stands square to the slope."""
    return plane(ORIGIN, _up(place))


def lying(place):
    """Return the face of a board along eave A that lies in the roof plane."""
    return place.roof.a


def miter(place, face):
    """On a board's face along eave A: from the line square across to the plumb plane of the hip."""
    return line_angle(along(place.hip_center, face), cross(face.normal, place.roof.eave_a))


def bevel(place, face):
    """The saw's shoe on that face: the blade's tilt out of square that puts it in the plumb plane of the hip."""
    return mp.pi / 2 - dihedral(place.hip_center, face)


def sheathing(place):
    """On a sheet in plane A, an edge along the eave: from that edge to the hip or valley."""
    return line_angle(place.hip, place.roof.eave_a)


def sheathing_figure(place):
    """On that sheet: how far up the slope the hip is, 12 along the eave's edge from where the two meet."""
    reached = scaled(place.hip, 12 / dot(place.hip, place.roof.eave_a))
    return abs(dot(reached, _up(place)))


# Gables ------------------------------------------------------------------------------------------------------


def stud_difference(place, spacing):
    """Two neighboring gable studs: from the plane over the one's side to that over the other's same side, plumb."""
    far, near = (meet(place.roof.a, place.along_a(0), place.across_a(k * mpf(spacing))) for k in (5, 4))
    return far[2] - near[2]


def stud_top(place):
    """On a gable stud's side: from the line square across to the plane above it."""
    return line_angle(along(place.roof.a, place.along_a(0)), place.roof.in_a)


def area_factor(place):
    """The piece of plane A over a square of plan: its area over the square's."""
    corners = [meet(place.roof.a, place.along_a(x), place.across_a(y)) for x, y in ((0, 0), (1, 0), (0, 1))]
    return size(cross(sub(corners[1], corners[0]), sub(corners[2], corners[0])))
