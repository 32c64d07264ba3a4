"""Exact numbers: sums of roots and their one rounding, shown with Fractions and against mpmath."""

from fractions import Fraction
from math import isqrt

import pytest
from fifty_digits import CLEAR, mp, mpf, real
from hypothesis import given
from hypothesis import strategies as st
from strategies import added_up, parts, rationals, runs, squares, terms

from tablegen.geometry import common, corner
from tablegen.geometry.corner import square_corner
from tablegen.numbers.exact import (
    Exact,
    exact,
    floor_of,
    nearest,
    nearest_root,
    root,
    sign,
)

RATIONAL_COMMON = {5: 13, 9: 15, 16: 20}
"""Rises per foot at which a common's unit length is whole: 5-12-13, 9-12-15, 12-16-20."""
RATIONAL_HIP = {1: 17, 6: 18, 14: 22, 21: 27}
"""Rises per foot at which √(288 + r²) is whole."""
NEAR_ZERO = 470832 * root(2) - 665857
"""A convergent of √2: 665857² is 2 · 470832² + 1, so this is below zero by 7.5e-7."""


def is_square(whole: int) -> bool:
    return isqrt(whole) ** 2 == whole


def fifty(pairs) -> mpf:
    return mp.fsum(real(coefficient) * mp.sqrt(real(radicand)) for coefficient, radicand in pairs)


@given(squares(), parts())
def test_nearest_root_is_within_half_a_part(square, per):
    """The root lies within half a part of the count, the lower half-part included: Fractions alone show it."""
    count = nearest_root(square, per)

    low, high = Fraction(2 * count - 1, 2 * per), Fraction(2 * count + 1, 2 * per)
    assert count == 0 or low * low <= square
    assert square < high * high


@given(squares(), parts())
def test_the_short_way_is_the_long_way(square, per):
    assert nearest_root(square, per) == nearest(root(square), per)


@given(rationals(), parts())
def test_nearest_of_a_rational(value, per):
    count = nearest(value, per)

    assert abs(count) == (abs(value) * per + Fraction(1, 2)) // 1
    assert count * value >= 0


@given(rationals(), squares(500), parts())
def test_nearest_of_a_multiple_of_a_root(coefficient, square, per):
    count = nearest(coefficient * root(square), per)

    size = coefficient * coefficient * square * per * per
    assert count == 0 or Fraction(2 * abs(count) - 1, 2) ** 2 <= size
    assert size < Fraction(2 * abs(count) + 1, 2) ** 2
    assert count * coefficient >= 0


@pytest.mark.parametrize(('rise', 'unit'), RATIONAL_COMMON.items())
@given(whole=st.integers(0, 5000), per=parts())
def test_an_exact_half_of_a_common_goes_up(rise, unit, whole, per):
    slope = exact(Fraction(rise, 12))
    run = Fraction(2 * whole + 1, 2 * per) * Fraction(12, unit)

    assert common.line_length(run, slope) == Fraction(2 * whole + 1, 2 * per)
    assert nearest(common.line_length(run, slope), per) == whole + 1
    assert nearest_root(common.line_length_squared(slope) * run * run, per) == whole + 1


@pytest.mark.parametrize(('rise', 'unit'), RATIONAL_HIP.items())
@given(whole=st.integers(0, 5000), per=parts())
def test_an_exact_half_of_a_hip_goes_up(rise, unit, whole, per):
    slope = exact(Fraction(rise, 12))
    run = Fraction(2 * whole + 1, 2 * per) * Fraction(12, unit)
    at = square_corner(slope, slope)

    assert corner.hip_length(run, at) == Fraction(2 * whole + 1, 2 * per)
    assert nearest(corner.hip_length(run, at), per) == whole + 1
    assert nearest_root(at.hip_length_squared * run * run, per) == whole + 1


@pytest.mark.parametrize(('rise', 'unit'), RATIONAL_COMMON.items())
@given(whole=st.integers(0, 5000), per=parts())
def test_the_least_below_a_half_goes_down(rise, unit, whole, per):
    run = (Fraction(2 * whole + 1, 2 * per) - Fraction(1, 10**40)) * Fraction(12, unit)

    assert nearest(common.line_length(run, exact(Fraction(rise, 12))), per) == whole


@pytest.mark.parametrize(
    ('half', 'count'),
    [
        (root(8) - 2 * root(2) + Fraction(1, 32), 1),
        (root(2) * root(8) + Fraction(3, 32), 66),
        (root(3) * root(Fraction(1, 3)) - Fraction(33, 32), -1),
        (root(18) / root(2) + Fraction(-1, 32), 48),
    ],
)
def test_roots_that_cancel_leave_an_exact_half(half, count):
    """A half made of roots is known for one, and goes up in size, whichever sign it has."""
    assert nearest(half, 16) == count


@given(terms(), parts())
def test_nearest_of_a_sum_agrees_with_fifty_digits(pairs, per):
    count, value = nearest(added_up(pairs), per), fifty(pairs) * per

    assert abs(count - value) <= mpf(1) / 2 + CLEAR


@given(terms())
def test_floor_of_a_sum_agrees_with_fifty_digits(pairs):
    floor, value = floor_of(added_up(pairs), 7), 7 * fifty(pairs)

    assert floor <= value + CLEAR
    assert value < floor + 1 + CLEAR


def test_floor_next_to_a_whole_number():
    """The convergents p/q of √2 lie by turns below and above it: p - q√2 comes to within 1e-40 of 0."""
    p, q = 1, 1
    for turn in range(105):
        number = p - q * root(2)
        assert p * p - 2 * q * q == (1 if turn % 2 else -1)
        assert floor_of(number) == (0 if turn % 2 else -1)
        assert floor_of(number + 7) == (7 if turn % 2 else 6)
        assert sign(number) == (1 if turn % 2 else -1)
        p, q = p + 2 * q, p + q


@pytest.mark.parametrize('turns', range(10, 60))
def test_floor_of_two_roots_next_to_whole_numbers(turns):
    """q√2 a hair below p and s√3 a hair above r: their sum is next to p + r, on the side of the longer hair."""
    p, q, r, s = 3, 2, 1, 1
    for _ in range(turns):
        p, q = 3 * p + 4 * q, 2 * p + 3 * q
    while r < 3 * p:
        r, s = 2 * r + 3 * s, r + 2 * s
        number = q * root(2) + s * root(3) - p - r
        assert (p * p - 2 * q * q, r * r - 3 * s * s) == (1, -2)
        assert floor_of(number) == (0 if r < 2 * p else -1)


@given(rationals(), st.integers(1, 50))
def test_floor_of_a_rational(value, scale):
    assert floor_of(exact(value), scale) == value * scale // 1


@given(terms())
def test_sign_of_a_sum_agrees_with_fifty_digits(pairs):
    value = fifty(pairs)

    assert sign(added_up(pairs)) == (0 if abs(value) < CLEAR else mp.sign(value))


@pytest.mark.parametrize(
    ('number', 'expected'),
    [
        (exact(0), 0),
        (root(0), 0),
        (NEAR_ZERO, -1),
        (-NEAR_ZERO, 1),
        (root(10**40 + 1) - 10**20, 1),
        (root(10**80 + 1) + root(2) - root(10**80) - root(2), 1),
        (root(2) + root(8) - root(18), 0),
        (-root(3), -1),
    ],
)
def test_sign_of_what_floats_cannot_tell(number, expected):
    assert sign(number) == expected


@given(terms(), parts())
def test_minus_turns_a_count_about(pairs, per):
    number = added_up(pairs)

    assert nearest(-number, per) == -nearest(number, per)
    assert number - number == 0
    assert number + -number == exact(0)


@given(terms(), terms())
def test_comparisons_agree_with_fifty_digits(left_pairs, right_pairs):
    left, right = added_up(left_pairs), added_up(right_pairs)
    gap = fifty(left_pairs) - fifty(right_pairs)

    assert (left < right) == (gap < -CLEAR)
    assert (left > right) == (gap > CLEAR)
    assert (left <= right) == (gap < CLEAR)
    assert (left >= right) == (gap > -CLEAR)
    assert (left == right) == (abs(gap) < CLEAR)


@given(terms(), terms())
def test_sums_and_products_agree_with_fifty_digits(left_pairs, right_pairs):
    left, right = added_up(left_pairs), added_up(right_pairs)
    x, y = fifty(left_pairs), fifty(right_pairs)

    assert abs(fifty((left + right).terms) - (x + y)) < CLEAR
    assert abs(fifty((left - right).terms) - (x - y)) < CLEAR
    assert abs(fifty((left * right).terms) - x * y) < CLEAR


@pytest.mark.parametrize(
    ('number', 'same'),
    [
        (root(2) + root(8), 3 * root(2)),
        (root(Fraction(1, 2)), root(2) / 2),
        (root(2) * root(8), exact(4)),
        (root(Fraction(9, 4)), exact(Fraction(3, 2))),
        (root(12) - root(3), root(3)),
        (1 / root(2), root(2) / 2),
        (5 - root(9), exact(2)),
        (root(288), 12 * root(2)),
        (root(Fraction(50, 9)) + root(Fraction(2, 9)), 2 * root(2)),
    ],
)
def test_roots_of_one_class_are_put_together(number, same):
    assert number == same
    assert len(number.terms) == len(same.terms) == 1


@given(squares(500).filter(bool))
def test_a_rational_root_is_held_as_a_rational(number):
    assert root(number * number).terms == ((number, 1),)


@given(terms())
def test_no_two_terms_share_a_class(pairs):
    """Of any two radicands kept, the product is no square: that the sum is irrational rests on it."""
    kept = added_up(pairs).terms

    products = [q * r for place, (_, q) in enumerate(kept) for _, r in kept[:place]]
    assert all(not is_square(product.numerator) or not is_square(product.denominator) for product in products)
    assert all(coefficient for coefficient, _ in kept)


@given(terms(), squares(500).filter(bool), rationals().filter(bool))
def test_division_undoes_multiplication(pairs, square, coefficient):
    divisor = coefficient * root(square)

    assert added_up(pairs) * divisor / divisor == added_up(pairs)


@given(runs())
def test_squared_undoes_the_root(square):
    assert root(square).squared() == square
    assert exact(0).squared() == 0


@pytest.mark.parametrize('number', [exact(0), exact(1), root(2)])
def test_nothing_is_divided_by_zero(number):
    with pytest.raises(ZeroDivisionError):
        number / exact(0)


def test_what_an_exact_number_refuses():
    with pytest.raises(ValueError, match='square must not be negative, got -2'):
        root(-2)
    with pytest.raises(ValueError, match='too many values'):
        1 / (root(2) + 1)
    with pytest.raises(TypeError, match='do not use it as a key'):
        hash(root(2))


def test_equality_is_only_with_numbers():
    assert root(4) == 2
    assert root(4) == Fraction(2)
    assert (root(4) == '2') is False
    assert Fraction(1) < root(2) < 2


@given(terms())
def test_the_float_for_drawings_is_near(pairs):
    assert abs(float(added_up(pairs)) - fifty(pairs)) < mpf(10) ** -12


def test_an_exact_number_is_frozen():
    with pytest.raises(AttributeError):
        Exact().terms = ()
