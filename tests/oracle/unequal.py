"""Corners that are not regular: the slide of a square-topped hip, and many-sided plans."""

from fifty_digits import mp, mpf

from oracle.planes import (
    LEVEL,
    ORIGIN,
    UP,
    cross,
    cut_readings,
    dot,
    level,
    meet,
    plumb_plane,
    sub,
    unit,
)


def _height(place, roof, aside):
    """Return a plane's height over the line square to the hip through the corner, so far aside towards eave B."""
    left = cross(UP, place.hip_level)  # of the hip seen uphill: towards eave B
    over = plumb_plane(ORIGIN, left), plumb_plane(tuple(aside * x for x in left), place.hip_level)
    return meet(roof, *over)[2]


def slide(place, thickness):
    """Hip, square top: how far it is moved, level, square to its length, for both its edges to lie in the planes at
    one height; above 0 towards eave A."""
    half = mpf(thickness) / 2

    def uneven(aside):
        return _height(place, place.roof.a, aside - half) - _height(place, place.roof.b, aside + half)

    at_0, at_1 = uneven(mpf(0)), uneven(mpf(1))  # heights are linear in the distance aside
    return at_0 / (at_1 - at_0)


def slid_drop(place, thickness):
    """Hip slid so: from the height of the planes' meeting line over the corner down to its square top, plumb."""
    aside = -slide(place, thickness)
    return -_height(place, place.roof.a, aside - mpf(thickness) / 2)


# Regular plans of many sides -----------------------------------------------------------------------------------


def _axis(place, apothem):
    """Return the middle of the plan, over which all hips meet."""
    on_hip = place.on_hip(place.across_a(apothem))
    return level(on_hip)


def side(place, apothem):
    """Plates' corner to the next one, for a middle so far inside each side."""
    return 2 * dot(_axis(place, apothem), place.roof.eave_a)


def apothem(place, long):
    """Middle of the plan to the middle of a side so long."""
    return mpf(long) / side(place, 1)


def plate_cut(place):
    """On a plate's top: from the line square across to the line of the hip, where its end meets the next plate's."""
    return abs(mp.acos(dot(place.hip_level, place.roof.in_a)))


def corner_degrees(place):
    """In plan, inside, between two neighboring plates; radians."""
    return mp.acos(dot(place.roof.eave_a, place.roof.eave_b))


def _half_way(place):
    """Return the plumb plane through the axis and the middle of side A, half way from this hip to the next."""
    return place.along_a(side(place, 100) / 2)


def peak_blade(place):
    """Hip at the peak, the shoe on its side: the blade's tilt that puts it in the plane half way to the next hip."""
    return cut_readings(place.hip_board(1), _half_way(place)).blade


def peak_cheek(place):
    """Hip at the peak, on its square top: from the line square across to that plane."""
    return mp.pi / 2 - cut_readings(place.hip_board(1), _half_way(place)).top_from_edge


def least_post(place, thickness):
    """Post: across flats, where neighboring hips, square-cut against it, stand with their edges touching."""
    axis = _axis(place, 100)
    towards_b = place.hip_level
    turn = dot(towards_b, place.roof.eave_a)
    other = unit(tuple(x - 2 * turn * e for x, e in zip(towards_b, place.roof.eave_a, strict=True)))
    one_side = plumb_plane(axis, towards_b).moved(-mpf(thickness) / 2)
    other_side = plumb_plane(axis, other).moved(mpf(thickness) / 2)
    point = meet(one_side, other_side, LEVEL)
    return 2 * abs(dot(sub(point, axis), towards_b))
