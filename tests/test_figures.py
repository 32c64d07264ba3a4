"""Figures: one rounding, with count, unit and finished text kept apart."""

from fractions import Fraction

import pytest
from hypothesis import given
from strategies import parts, rises, runs

from tablegen.geometry import common
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import exact, root
from tablegen.numbers.figure import (
    Figure,
    Measure,
    decimal_figure,
    degree_figure,
    degrees_known,
    length_figure,
    length_of_count,
    length_of_root,
    length_rounded_down,
    length_rounded_up,
    rounding_left,
)


def printed(figure: Figure) -> tuple[int, int, str, str]:
    """Return a figure's count, parts and unit, and what is printed."""
    return figure.count, figure.per, figure.unit, figure.text


@pytest.mark.parametrize(
    ('run_in', 'per', 'expected'),
    [(12, 8, '13 3/8'), (48, 8, '53 5/8'), (48, 16, '53 11/16')],
)
def test_six_in_twelve_as_the_trade_knows_it(run_in, per, expected):
    """Common practice, no source: 13 3/8 a foot and 53 5/8 for four feet, to the nearest eighth."""
    length = common.line_length(Fraction(run_in), exact(Fraction(1, 2)))

    assert length_figure(length, Measure(per)).text == expected


def test_a_length():
    assert printed(length_figure(root(2880), Measure(16))) == (859, 16, 'in', '53 11/16')
    assert printed(length_figure(root(2880), Measure(16, 'feet-inches'))) == (859, 16, 'in', '4′ 5 11/16″')
    assert length_of_count(859, Measure(16)) == length_figure(root(2880), Measure(16))
    assert length_figure(-root(2880), Measure(16)).text == '−53 11/16'


def test_limits_are_rounded_to_one_side():
    """√2880 is 53.666: 858.65 sixteenths; a whole count stays what it is."""
    assert printed(length_rounded_down(root(2880), Measure(16))) == (858, 16, 'in', '53 5/8')
    assert printed(length_rounded_up(root(2880), Measure(16))) == (859, 16, 'in', '53 11/16')
    for rounded in (length_rounded_down, length_rounded_up):
        assert rounded(Fraction(13, 8), Measure(16)).text == '1 5/8'
        assert rounded(Fraction(-13, 8), Measure(16)).text == '−1 5/8'


def test_a_length_that_rounds_to_nothing_has_no_minus():
    assert printed(length_figure(Fraction(-1, 64), Measure(16))) == (0, 16, 'in', '0')
    assert decimal_figure(Fraction(-1, 3000), 3).text == '0.000'
    assert degree_figure(Angle(exact(Fraction(-1, 100_000)))).text == '0.00°'


def test_a_decimal():
    assert printed(decimal_figure(root(180), 3)) == (13416, 1000, 'in', '13.416')
    assert printed(decimal_figure(Fraction(1, 2000), 3, 'ft')) == (1, 1000, 'ft', '0.001')


def test_an_angle():
    assert printed(degree_figure(Angle(exact(Fraction(1, 2))))) == (2657, 100, 'deg', '26.57°')
    assert printed(degree_figure(Angle(None))) == (9000, 100, 'deg', '90.00°')


def test_what_rounding_has_added_is_above_zero_where_the_printed_length_is_longer():
    """At 6 in 12 and 4 ft, 53 11/16 is longer than √2880 = 53.666, and 53 5/8 shorter."""
    length = root(2880)

    assert rounding_left(length, length_figure(length, Measure(16))) == Fraction(859, 16) - length > 0
    assert rounding_left(length, length_figure(length, Measure(8))) == Fraction(429, 8) - length < 0


@given(rises(), runs(), parts())
def test_what_rounding_adds_is_at_most_half_a_part(rise, run_in, per):
    length = common.line_length(run_in, exact(rise / 12))
    left = rounding_left(length, length_figure(length, Measure(per)))

    assert -Fraction(1, 2 * per) < left <= Fraction(1, 2 * per)


def test_nine_decimals_are_of_what_was_rounded_and_not_of_what_is_printed():
    """√2880 = 53.6656314599…, arctan(1/2) = 26.5650511770…, by any calculator; a limit is cut, not rounded."""
    assert length_figure(root(2880), Measure(8)).decimal == '53.665631460'
    assert length_of_root(Fraction(2880), Measure(8)).decimal == '53.665631460'
    assert length_rounded_down(root(2880), Measure(8)).decimal == '53.665631459'
    assert length_of_count(859, Measure(16)).decimal == '53.687500000'
    assert length_figure(-root(2880), Measure(8)).decimal == '-53.665631460'
    assert degree_figure(Angle(exact(Fraction(1, 2)))).decimal == '26.565051177'
    assert degrees_known(Fraction(45, 2)).decimal == '22.500000000'
