"""Where hips and valleys run, against planes in space."""

from fractions import Fraction
from itertools import pairwise

import pytest
from corners import per_foot
from fifty_digits import real
from mpmath import mp
from near import NEAR, gap, number
from oracle.planes import ORIGIN, Plane, angle, level, meet, plumb_plane, scaled, size, sub

from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.geometry import common, corner
from tablegen.numbers.angles import tangent_of_degrees
from tablegen.numbers.exact import exact


def _end(roof, run_in):
    return meet(roof.a, roof.b, Plane(roof.in_a, real(run_in)))


def test_plan_angles(case):
    roof = case.roof
    in_plan = level(roof.hip())

    assert gap(case.at.plan_a, angle(in_plan, roof.eave_a)) < NEAR
    assert gap(case.at.plan_b, angle(in_plan, roof.eave_b)) < NEAR


def test_hip_slope(case):
    assert gap(corner.hip_angle(case.at), angle(case.roof.hip(), level(case.roof.hip()))) < NEAR


def test_hip_length_and_own_run(case, run):
    end = _end(case.roof, run)

    assert gap(corner.hip_length(run, case.at), size(end)) < NEAR
    assert gap(corner.hip_run(run, case.at), size(level(end))) < NEAR


def test_the_other_side_rises_as_high(case, run):
    end = _end(case.roof, run)

    assert (
        gap(corner.run_b(run, case.at), sum(a * b for a, b in zip(end, case.roof.in_b, strict=True))) < NEAR
    )


@pytest.mark.parametrize('spacing', [Fraction(12), Fraction(16), Fraction(96, 5), Fraction(24)])
def test_jack_difference(case, spacing):
    roof = case.roof
    valley_or_hip = plumb_plane(ORIGIN, level(roof.hip()))

    def length(number_of_jack):
        foot = scaled(roof.eave_a, number_of_jack * real(spacing))
        return size(sub(meet(plumb_plane(foot, roof.in_a), roof.a, valley_or_hip), foot))

    assert gap(corner.jack_difference(spacing, case.at), length(3) - length(2)) < NEAR
    assert gap(corner.jack_difference(spacing, case.at), length(1)) < NEAR


def test_turned_is_the_other_side(case):
    turned = case.at.turned()

    assert (
        abs(
            number(turned.slope_a) * mp.sin(mp.atan(number(turned.plan_a.tangent)))
            - number(case.at.hip_slope)
        )
        < NEAR
    )
    assert turned.turned() == case.at


@pytest.mark.parametrize('rise', [*range(1, 25), Fraction(15, 2)])
def test_equal_pitches_at_a_square_corner_are_the_regular_corner(rise):
    """Exact numbers, not only near ones: the hip's run is the diagonal of a square, a jack's length its common's."""
    slope = per_foot(rise)
    at = corner.square_corner(slope, slope)

    assert at.plan_a.tangent == at.plan_b.tangent == 1
    assert corner.hip_length(Fraction(100), at).squared() == 100**2 * (2 + slope.squared())
    assert at.hip_slope.squared() == slope.squared() / 2
    assert corner.jack_difference(Fraction(16), at) == common.line_length(Fraction(16), slope)


def test_a_steeper_partner_turns_the_hip_towards_itself_in_plan():
    """The hip leans to the steeper plane's eave: that plane covers less of the plan."""
    at = corner.square_corner(per_foot(8), per_foot(12))

    assert at.plan_a.tangent == Fraction(12, 8)
    assert at.plan_b.tangent == Fraction(8, 12)


@pytest.mark.parametrize('rise', [1, 8, 24])
def test_the_hip_is_flatter_than_the_common(rise):
    at = corner.square_corner(per_foot(rise), per_foot(2 * rise))

    assert at.hip_slope < per_foot(rise)


def test_the_limits_of_the_pitch():
    """Towards flat the hip's length is its level run; towards plumb it is the rise."""
    flat = corner.square_corner(exact(Fraction(1, 10**15)), exact(Fraction(1, 10**15)))
    steep = corner.square_corner(exact(10**15), exact(10**15))

    assert abs(number(corner.hip_length(Fraction(12), flat)) - mp.sqrt(288)) < NEAR
    assert abs(number(corner.hip_length(Fraction(12), steep)) / 12 / 10**15 - 1) < NEAR
    assert corner.jack_difference(Fraction(16), flat) > 16


def test_hips_lengthen_with_the_pitch():
    lengths = [
        corner.hip_length(Fraction(12), corner.square_corner(per_foot(rise), per_foot(12)))
        for rise in range(1, 25)
    ]

    assert all(low < high for low, high in pairwise(lengths))


@pytest.mark.parametrize(('rise_a', 'rise_b'), [(3, 9), (9, 3)])
def test_a_hip_that_leans_back_is_refused(rise_a, rise_b):
    """At 120 degrees a plane twice as steep as its neighbor, or more, never meets it over the building."""
    with pytest.raises(BookError) as refused:
        corner.corner(per_foot(rise_a), per_foot(rise_b), tangent_of_degrees(Fraction(60)))

    assert error_line(refused.value) == (
        'corner: the hip leans back: the flatter plane never rises to meet the steeper one; '
        'allowed: pitches closer to each other, or a corner nearer to square'
    )


def test_just_short_of_leaning_back_is_a_hip():
    at = corner.corner(per_foot(5), per_foot(Fraction(99, 10)), tangent_of_degrees(Fraction(60)))

    assert at.hip_slope > 0


def test_common_rafters_close_their_triangle():
    slope = per_foot(8)

    assert (
        common.line_length(Fraction(120), slope).squared()
        == 120**2 + common.rise(Fraction(120), slope).squared()
    )
