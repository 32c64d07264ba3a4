"""Angles: every printed digit of a degree is right, against mpmath at 50 digits."""

from fractions import Fraction

import pytest
from fifty_digits import count_of, mp, mpf, real
from hypothesis import given
from hypothesis import strategies as st
from strategies import rationals, squares

from tablegen.geometry import backing, cheeks, common, corner
from tablegen.geometry.corner import square_corner
from tablegen.numbers.angles import Angle, degrees_count, tangent_of_degrees
from tablegen.numbers.exact import exact, root

RISES = [Fraction(rise, 2) for rise in range(1, 49)] + [Fraction(rise) for rise in (30, 48, 120)]
PLACES = (2, 6, 12)


def check(angle: Angle, degrees: mpf):
    for places in PLACES:
        assert degrees_count(angle, places) == count_of(degrees, 10**places)
        assert degrees_count(angle.complement(), places) == count_of(90 - degrees, 10**places)


def arctan(tangent: mpf) -> mpf:
    return mp.degrees(mp.atan(tangent))


@pytest.mark.parametrize('rise', RISES, ids=str)
def test_every_angle_of_a_pitch(rise):
    """Slopes, cheeks and backing of all pitches, to 2, 6 and 12 places, with their complements."""
    slope, m = exact(rise / 12), real(rise) / 12
    at = square_corner(slope, slope)

    check(common.slope_angle(slope), arctan(m))
    check(corner.hip_angle(at), arctan(m / mp.sqrt(2)))
    check(cheeks.jack(at).top, arctan(mp.sqrt(1 + m * m)))
    check(cheeks.hip_at_ridge(at).top, arctan(mp.sqrt((2 + m * m) / 2)))
    check(backing.bevel(at), arctan(m / mp.sqrt(2 + m * m)))


@given(rationals().filter(bool), squares(500).filter(bool), st.sampled_from(PLACES))
def test_any_angle(coefficient, square, places):
    tangent = real(coefficient) * mp.sqrt(real(square))
    whole = 3 * arctan(tangent) / 45  # a whole number only at multiples of 15 degrees, exact elsewhere
    if abs(whole - mp.nint(whole)) > mpf(10) ** -20:
        assert degrees_count(Angle(coefficient * root(square)), places) == count_of(
            arctan(tangent), 10**places
        )


@pytest.mark.parametrize(
    ('tangent', 'degrees'),
    [
        (exact(0), 0),
        (2 - root(3), 15),
        (root(Fraction(1, 3)), 30),
        (exact(1), 45),
        (root(3), 60),
        (2 + root(3), 75),
        (None, 90),
    ],
)
def test_exact_multiples_of_fifteen_degrees(tangent, degrees):
    for places in (1, *PLACES):
        assert degrees_count(Angle(tangent), places) == degrees * 10**places


@given(st.fractions(Fraction(1, 100), Fraction(8999, 100), max_denominator=10_000))
def test_tangent_of_degrees_is_within_what_it_says(degrees):
    """To 1e-55, for which the reference needs 70 digits: near 90 degrees a tangent loses some."""
    ((coefficient, radicand),) = tangent_of_degrees(degrees).terms

    with mp.workdps(70):
        reference = mp.tan(mp.radians(real(degrees)))
        assert abs(real(coefficient) * mp.sqrt(real(radicand)) - reference) < mpf(10) ** -55


@pytest.mark.parametrize(('degrees', 'squared'), [(30, Fraction(1, 3)), (45, 1), (60, 3)])
def test_tangents_whose_square_is_rational_are_exact(degrees, squared):
    assert tangent_of_degrees(Fraction(degrees)).squared() == squared


@given(st.integers(1, 89_999))
def test_degrees_given_are_degrees_printed(thousandths):
    """There and back: a pitch of 26.565° has a plumb cut of 26.565°."""
    angle = Angle(tangent_of_degrees(Fraction(thousandths, 1000)))

    assert degrees_count(angle, 3) == thousandths
    assert degrees_count(angle.complement(), 3) == 90_000 - thousandths
    assert degrees_count(angle, 12) == thousandths * 10**9


@given(st.integers(0, 899), st.sampled_from([1, 2, 5]))
def test_a_half_of_the_last_place_goes_up(tenths, places):
    """An angle given in degrees can lie on a half; it goes up, and so does its complement."""
    degrees = Fraction(tenths, 10) + Fraction(1, 2 * 10**places)
    angle = Angle(tangent_of_degrees(degrees))

    assert degrees_count(angle, places) == degrees * 10**places + Fraction(1, 2)
    assert degrees_count(angle.complement(), places) == (90 - degrees) * 10**places + Fraction(1, 2)


@given(rationals(50), squares(50))
def test_minus_is_put_on_after_rounding(coefficient, square):
    tangent = coefficient * root(square)

    assert degrees_count(Angle(-tangent), 2) == -degrees_count(Angle(tangent), 2)


@given(rationals(50), squares(50))
def test_sine_and_cosine(coefficient, square):
    tangent = coefficient * root(square)
    angle = Angle(tangent)

    assert angle.sine() * angle.sine() + angle.cosine() * angle.cosine() == 1
    assert angle.sine() == tangent * angle.cosine()
    assert angle.cosine() > 0


def test_the_right_angle():
    assert Angle(None).complement() == Angle(exact(0))
    assert Angle(exact(0)).complement() == Angle(None)
    assert (Angle(None).sine(), Angle(None).cosine()) == (exact(1), exact(0))


@pytest.mark.parametrize(
    ('tangent', 'count'),
    [(Fraction(3, 4), 3687), (Fraction(8, 17), 2520), (root(3), 6000), (1 / root(3), 3000), (Fraction(0), 0)],
)
def test_angles_of_right_triangles(tangent, count):
    assert degrees_count(Angle(exact(tangent)), 2) == count
