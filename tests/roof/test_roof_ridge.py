"""Ridges, gables and areas, against whole roofs in space."""

from fractions import Fraction
from itertools import pairwise

import pytest
from corners import per_foot
from fifty_digits import real
from mpmath import mpf
from near import NEAR, gap, number
from oracle.planes import ORIGIN, Plane, cross, dot, level, meet, plane, plumb_plane, scaled, size, sub

from tablegen.geometry import common, gable, ridge, seat
from tablegen.geometry.corner import square_corner
from tablegen.numbers.exact import exact

LENGTH, WIDTH = Fraction(480), Fraction(289)
DEPTH, SEAT = Fraction(29, 4), Fraction(7, 2)


def _roof_of_four(slope_a, slope_b):
    """Planes over a rectangle of plates: two of slope A along x, two of slope B at the ends."""
    long, wide = real(LENGTH), real(WIDTH)
    return (
        plane(ORIGIN, (mpf(0), -slope_a, mpf(1))),
        plane((mpf(0), wide, mpf(0)), (mpf(0), slope_a, mpf(1))),
        plane(ORIGIN, (-slope_b, mpf(0), mpf(1))),
        plane((long, mpf(0), mpf(0)), (slope_b, mpf(0), mpf(1))),
    )


@pytest.mark.parametrize('rise', range(1, 25))
def test_the_ridge_of_a_hip_roof(rise):
    a, other_a, b, other_b = _roof_of_four(mpf(rise) / 12, mpf(rise) / 12)
    long = size(sub(meet(a, other_a, b), meet(a, other_a, other_b)))

    at = square_corner(per_foot(rise), per_foot(rise))

    assert gap(ridge.hip_ridge_length(LENGTH, WIDTH / 2, at), long) < NEAR


@pytest.mark.parametrize(('rise_a', 'rise_b'), [(8, 12), (12, 8), (5, 9)])
def test_the_ridge_of_a_hip_roof_with_steeper_or_flatter_ends(rise_a, rise_b):
    a, other_a, b, other_b = _roof_of_four(mpf(rise_a) / 12, mpf(rise_b) / 12)
    long = size(sub(meet(a, other_a, b), meet(a, other_a, other_b)))
    at = square_corner(per_foot(rise_a), per_foot(rise_b))

    assert gap(ridge.hip_ridge_length(LENGTH, WIDTH / 2, at), long) < NEAR


def test_the_height_of_the_ridge(case, run, thickness):
    """Plane A, lifted to its height above plate, against the ridge's center line and its side."""
    roof = case.roof
    height = seat.height_above_plate(DEPTH, SEAT, case.slope)
    lifted = roof.a.lifted(number(height))
    rafter = plumb_plane(ORIGIN, roof.in_a)
    center = meet(lifted, rafter, Plane(roof.in_a, real(run)))
    edge = meet(lifted, rafter, Plane(roof.in_a, real(run) - real(thickness) / 2))

    assert gap(ridge.top_of_planes(run, height, case.slope), center[2]) < NEAR
    assert gap(ridge.sits_down(thickness, case.slope), center[2] - edge[2]) < NEAR
    assert gap(ridge.top_of_ridge(run, height, thickness, case.slope), edge[2]) < NEAR


def test_how_far_the_ridge_runs_past_hips(case, run, thickness):
    """The hip's side towards B ends last on the ridge's side, nearest to the corner."""
    roof = case.roof
    hip_board = roof.hip_member(mpf(3) / 2)
    side = Plane(roof.in_a, real(run) - real(thickness) / 2)
    end = hip_board.end(Plane(roof.in_a, real(run)))
    last = min(
        dot(roof.eave_a, meet(face, hip_board.top, side)) for face in (hip_board.left, hip_board.right)
    )

    assert gap(ridge.end_past_hips(thickness, Fraction(3, 2), case.at), dot(roof.eave_a, end) - last) < NEAR


def test_how_far_the_ridge_runs_past_commons(case, run, thickness):
    """The last pair of commons is centered on the ridge's theoretical end."""
    roof = case.roof
    end = roof.hip_member(mpf(1)).end(Plane(roof.in_a, real(run)))
    last_common = Plane(roof.eave_a, dot(roof.eave_a, end))
    outer_face = meet(roof.a, Plane(roof.in_a, real(run)), last_common.moved(-real(thickness) / 2))

    assert gap(ridge.end_past_commons(thickness), dot(roof.eave_a, sub(end, outer_face))) < NEAR


@pytest.mark.parametrize('spacing', [Fraction(12), Fraction(16), Fraction(96, 5), Fraction(24)])
def test_gable_studs(case, spacing):
    """Plumb lines in the gable, the same distance apart, up to the slope."""
    roof = case.roof
    gable_wall = plumb_plane(ORIGIN, roof.in_a)
    tops = [meet(roof.a, gable_wall, Plane(roof.in_a, k * real(spacing)))[2] for k in (3, 4)]

    assert gap(common.rise(spacing, case.slope), tops[1] - tops[0]) < NEAR


def test_roof_area_over_plan_area(case):
    """A triangle in plane A against the same triangle in plan: hips make triangles."""
    roof = case.roof
    one, two = meet(roof.a, roof.b, Plane(roof.in_a, mpf(70))), scaled(roof.eave_a, mpf(110))
    over, plan = size(cross(one, two)), size(cross(level(one), two))

    assert gap(gable.area_factor(case.slope), over / plan) < NEAR


def test_known_values():
    """5-12-13 and 9-12-15: at 5 in 12 the roof is 13/12 of the plan, at 9 in 12 it is 5/4."""
    assert gable.area_factor(per_foot(5)) == Fraction(13, 12)
    assert gable.area_factor(per_foot(9)) == Fraction(5, 4)


def test_the_area_grows_with_the_pitch_from_one():
    factors = [gable.area_factor(per_foot(rise)) for rise in range(1, 25)]

    assert all(low < high for low, high in pairwise(factors))
    assert abs(number(gable.area_factor(exact(Fraction(1, 10**12)))) - 1) < NEAR
