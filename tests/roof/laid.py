"""Members laid in space on their plates: tops, undersides and where plates touch them, from planes alone.

Plate's top at z = 0; the corner of the plates at the origin, the plate line of eave A along x.
"""

from fifty_digits import mpf
from msgspec import Struct
from oracle.planes import LEVEL, ORIGIN, Plane, dot, level, meet, plane, plumb_plane, scaled, size, square_top


def common(roof, depth, seat):
    """Return top and underside of a common rafter of plane A whose seat ends so far inside the plate's outer face."""
    inner = scaled(roof.in_a, seat)
    underside = Plane(roof.a.normal, mpf(0)).moved(dot(roof.a.normal, inner))
    return underside.moved(depth), underside


def plumb_at_corner(roof, top):
    """Return how high a plane stands plumb over the corner of the plates."""
    return meet(plumb_plane(ORIGIN, roof.in_a), Plane(roof.in_a, mpf(0)), top)[2]


def dropped_top(roof, height, thickness):
    """Return a square top whose edge towards A lies in plane A, that plane standing so high over the plate."""
    board = roof.hip_member(thickness)
    edge = meet(board.right, roof.a.lifted(height), plane(ORIGIN, level(roof.hip())))
    return square_top(edge, roof.hip())


def backed_top(roof, height):
    """Return the square top of stock whose center line lies where both planes meet, so high over the plates."""
    met = meet(roof.a.lifted(height), roof.b.lifted(height), plumb_plane(ORIGIN, roof.eave_a))
    return square_top(met, roof.hip())


def outwards_of_corner(roof, point):
    """Return how far a point is from the corner, level along the hip or valley, towards its tail."""
    along = level(roof.hip())
    return -dot(point, along) / size(along)


def valley_heel_out(roof, thickness):
    """Return where the plates' outer faces, carried on past an inside corner, meet the valley's sides: the farthest."""
    board = roof.hip_member(thickness)
    return max(
        outwards_of_corner(roof, meet(side, LEVEL, Plane(inwards, mpf(0))))
        for side in (board.left, board.right)
        for inwards in (roof.in_a, roof.in_b)
    )


class BirdsMouth(Struct, frozen=True):
    """Measured on the center line of a hip or valley."""

    height: mpf
    """Plumb, over the corner of the plates."""
    heel: mpf
    """Plumb, at the heel."""
    seat: mpf
    """Level, from the heel inwards."""
    left: mpf
    """Square to the edge, over the notch's corner."""


def birds_mouth(roof, top, depth, out=0):
    """Return the bird's mouth of stock with such a top whose heel stands so far outwards of the corner."""
    along = scaled(level(roof.hip()), 1 / size(level(roof.hip())))
    center, at_heel = plumb_plane(ORIGIN, along), plane(scaled(along, -out), along)
    underside, corner = top.moved(-depth), scaled(along, -out)
    inner = meet(center, underside, LEVEL)
    return BirdsMouth(
        plumb_at_corner(roof, top),
        -meet(center, at_heel, underside)[2],
        out - outwards_of_corner(roof, inner),
        -top.height(corner),
    )
