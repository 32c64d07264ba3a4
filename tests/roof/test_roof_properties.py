"""Properties that hold at every pitch, every pair of pitches and every thickness, and the exact numbers under them."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from mpmath import mp, mpf
from near import number, radians

from tablegen.errors import BookError
from tablegen.geometry import backing, cheeks, common, corner, many_sided, shortening, trim
from tablegen.numbers.angles import (
    Angle,
    angle_of_sine,
    degrees_count,
    half_angle_of_cosine,
    tangent_of_degrees,
)
from tablegen.numbers.exact import exact, one_term, root

slopes = st.fractions(min_value=Fraction(1, 48), max_value=10, max_denominator=96).map(exact)
runs = st.fractions(min_value=1, max_value=400, max_denominator=16)
quick = settings(max_examples=30, deadline=None)


@quick
@given(slopes, slopes, runs)
def test_the_hips_triangle_closes(slope_a, slope_b, run):
    """Exactly: length² = own run² + rise², and own run² = run A² + run B² at a square corner."""
    at = corner.square_corner(slope_a, slope_b)
    own = corner.hip_run(run, at).squared()

    assert corner.hip_length(run, at).squared() == own + common.rise(run, slope_a).squared()
    assert own == run * run + corner.run_b(run, at).squared()


@quick
@given(slopes, slopes)
def test_a_square_corner_is_shared_by_its_sides(slope_a, slope_b):
    at = corner.square_corner(slope_a, slope_b)
    turned = corner.square_corner(slope_b, slope_a)

    assert at.turned() == turned
    assert at.plan_a.tangent * at.plan_b.tangent == 1
    assert at.hip_slope == turned.hip_slope
    assert backing.slide(Fraction(2), at) == -backing.slide(Fraction(2), turned)
    assert backing.drop_when_slid(Fraction(2), at) == backing.drop_when_slid(Fraction(2), turned)


@quick
@given(slopes, slopes, runs)
def test_the_one_drop_lies_between_the_two(slope_a, slope_b, thickness):
    at = corner.square_corner(slope_a, slope_b)
    two = sorted(float(backing.drop_plumb(thickness, side)) for side in (at, at.turned()))

    assert two[0] - 1e-12 <= float(backing.drop_when_slid(thickness, at)) <= two[1] + 1e-12


@quick
@given(slopes, slopes)
def test_the_backing_bevels_close_the_dihedral(slope_a, slope_b):
    """Both bevels and the angle between the planes make two right angles: they turn one plane into the other.

    In the section square to the hip the two faces fall by their bevels on each side of level.
    """
    at = corner.square_corner(slope_a, slope_b)
    between = 2 * radians(trim.in_the_plane(at).bevel)
    bevels = radians(backing.bevel(at)) + radians(backing.bevel(at.turned()))

    assert abs(bevels - between) < mpf('1e-20')


@quick
@given(slopes, slopes, runs)
def test_lengths_scale(slope_a, slope_b, run):
    at = corner.square_corner(slope_a, slope_b)

    assert corner.hip_length(3 * run, at) == 3 * corner.hip_length(run, at)
    assert corner.jack_difference(3 * run, at) == 3 * corner.jack_difference(run, at)
    assert corner.hip_length(3 * run, at) == 3 * corner.hip_length(run, at)
    assert backing.drop_plumb(3 * run, at) == 3 * backing.drop_plumb(run, at)
    assert shortening.jack_at_hip(3 * run, at) == 3 * shortening.jack_at_hip(run, at)


@quick
@given(slopes, slopes)
def test_a_jack_and_a_common_beside_the_hip_agree(slope_a, slope_b):
    """The jack that is as far out as B's run is the common itself."""
    at = corner.square_corner(slope_a, slope_b)
    run = Fraction(100)
    ((last, _),) = corner.run_b(run, at).terms

    assert corner.jack_difference(last, at) == common.line_length(run, slope_a)


@quick
@given(slopes)
def test_the_cheeks_two_lines_are_one_cut(slope):
    """The part of its direction that lies along the board is the same from the side and from the top, where a blade leans as for sheathing."""
    at = corner.square_corner(slope, slope)
    cut = cheeks.jack(at)
    from_side = mp.cos(radians(cut.saw)) * mp.cos(radians(cut.blade))
    from_top = mp.cos(radians(cut.top)) * mp.cos(radians(trim.sheathing_plumb_bevel(at)))

    assert abs(from_side - from_top) < mpf('1e-20')


@quick
@given(slopes, st.integers(3, 40), runs)
def test_a_many_sided_roof_closes(slope, sides, apothem):
    """Half a side, the apothem and the radius; exactly, with the one rational that stands for tan p."""
    half = many_sided.side_from_apothem(apothem, sides) / 2

    assert many_sided.radius_from_apothem(apothem, sides).squared() == half.squared() + apothem * apothem
    at = many_sided.regular_corner(slope, sides)
    assert abs(number(at.hip_slope) - number(slope) * mp.cos(mp.pi / sides)) < mpf('1e-25')


@quick
@given(slopes, slopes, st.integers(30, 170))
def test_a_hip_leans_back_just_when_a_plane_does_not_rise_to_the_other(slope_a, slope_b, degrees):
    cosine = mp.cos(mp.radians(degrees))
    rises = min(number(slope_a) + number(slope_b) * cosine, number(slope_b) + number(slope_a) * cosine) > 0
    half = tangent_of_degrees(Fraction(degrees, 2))
    if rises:
        at = corner.corner(slope_a, slope_b, half)
        assert abs(radians(at.plan_a) + radians(at.plan_b) - mp.radians(degrees)) < mpf('1e-20')
    else:
        with pytest.raises(BookError):
            corner.corner(slope_a, slope_b, half)


@quick
@given(st.fractions(min_value=-1, max_value=1, max_denominator=500))
def test_half_angles(cosine):
    half = half_angle_of_cosine(exact(cosine))

    assert abs(radians(half) - mp.acos(mpf(cosine.numerator) / cosine.denominator) / 2) < mpf('1e-14')


@quick
@given(st.fractions(min_value=0, max_value=1, max_denominator=500))
def test_angles_by_their_sine(sine):
    assert abs(radians(angle_of_sine(exact(sine))) - mp.asin(mpf(sine.numerator) / sine.denominator)) < mpf(
        '1e-14'
    )


def test_one_term():
    """A sum of roots becomes a rational next to it; what has one term already stays."""
    summed = root(2) + root(3)
    near = one_term(summed)

    assert one_term(root(2)) is not near
    assert one_term(root(2)) == root(2)
    assert one_term(3) == 3
    assert len(near.terms) == 1
    assert abs(number(near) - number(summed)) < mpf('1e-27')
    assert -(summed - near) < exact(Fraction(1, 10**69))
    assert summed - near < exact(Fraction(1, 10**69))


@pytest.mark.parametrize(
    ('degrees', 'places', 'count'),
    [
        ('26.565', 2, 2657),
        ('22.225', 2, 2223),
        ('5.625', 2, 563),
        ('0.005', 2, 1),
        ('89.995', 2, 9000),
        ('7.25', 1, 73),
    ],
)
def test_degrees_set_at_a_half_go_up(degrees, places, count):
    """Also those of the complement, which is at a half as well: 90 − 26.565 is 63.435."""
    angle = Angle(tangent_of_degrees(Fraction(degrees)))

    assert degrees_count(angle, places) == count
    assert degrees_count(angle.complement(), places) == 90 * 10**places - count + 1
