"""The text of numbers: lowest terms, never 16/16, never 12 in after feet, never minus zero."""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from strategies import parts, rationals, styles

from tablegen.numbers import text, units
from tablegen.written import lengths
from tablegen.written.numbers import number

counts = st.integers(0, 120_000 * 64)


@pytest.mark.parametrize(
    ('count', 'per', 'expected'),
    [
        (0, 16, '0'),
        (1, 16, '1/16'),
        (2, 16, '1/8'),
        (8, 16, '1/2'),
        (15, 16, '15/16'),
        (16, 16, '1'),
        (17, 16, '1 1/16'),
        (859, 16, '53 11/16'),
        (32, 64, '1/2'),
        (63, 64, '63/64'),
        (1, 2, '1/2'),
        (3456 * 16, 16, '3456'),
        (-1, 16, '−1/16'),
        (-16, 16, '−1'),
        (-859, 16, '−53 11/16'),
    ],
)
def test_mixed(count, per, expected):
    assert text.mixed(count, per) == expected
    assert text.length(count, per, text.INCHES).text == expected


@pytest.mark.parametrize(
    ('count', 'per', 'expected'),
    [
        (0, 16, '0″'),
        (14, 16, '7/8″'),
        (191, 16, '11 15/16″'),
        (192, 16, '1′ 0″'),
        (193, 16, '1′ 0 1/16″'),
        (207, 16, '1′ 0 15/16″'),
        (208, 16, '1′ 1″'),
        (-193, 16, '−1′ 0 1/16″'),
        (383, 16, '1′ 11 15/16″'),
        (384, 16, '2′ 0″'),
        (859, 16, '4′ 5 11/16″'),
        (24 * 192, 16, '24′ 0″'),
        (-859, 16, '−4′ 5 11/16″'),
        (-1, 16, '−1/16″'),
    ],
)
def test_feet_inches(count, per, expected):
    assert text.feet_inches(count, per).text == expected
    assert text.length(count, per, text.FEET_INCHES).text == expected


@pytest.mark.parametrize(
    ('count', 'places', 'expected'),
    [
        (0, 3, '0.000'),
        (5, 3, '0.005'),
        (13416, 3, '13.416'),
        (20000, 3, '20.000'),
        (999, 3, '0.999'),
        (1000, 3, '1.000'),
        (-1, 2, '−0.01'),
        (-13416, 3, '−13.416'),
        (7, 0, '7'),
    ],
)
def test_decimal(count, places, expected):
    assert text.decimal(count, places) == expected
    assert text.plain_decimal(count, places) == expected.replace('−', '-')


@pytest.mark.parametrize(
    ('count', 'expected'), [(2657, '26.57°'), (9000, '90.00°'), (0, '0.00°'), (-477, '−4.77°')]
)
def test_degrees(count, expected):
    assert text.degree_parts(count, 2).text == expected


@pytest.mark.parametrize(
    ('value', 'expected'),
    [
        (Fraction(6), '6'),
        (Fraction(15, 2), '7 1/2'),
        (Fraction(96, 5), '19.2'),
        (Fraction('26.565'), '26.565'),
        (Fraction(1, 3), '1/3'),
        (Fraction(13, 3), '4 1/3'),
        (Fraction(1, 64), '1/64'),
        (Fraction(1, 128), '0.0078125'),
        (Fraction(0), '0'),
        (Fraction(-15, 2), '−7 1/2'),
        (Fraction(-1, 5), '−0.2'),
    ],
)
def test_rational(value, expected):
    assert text.rational(value) == expected


@pytest.mark.parametrize(
    ('inches', 'expected'),
    [
        (Fraction(48), '4 ft'),
        (Fraction(111, 2), '4 ft 7 1/2 in'),
        (Fraction(9), '9 in'),
        (Fraction(12), '1 ft'),
        (Fraction(191, 16), '11 15/16 in'),
        (Fraction(0), '0 in'),
        (Fraction(288), '24 ft'),
        (Fraction(96, 5), '1 ft 7.2 in'),
    ],
)
def test_run(inches, expected):
    assert text.run(inches) == expected


@given(counts, parts(), styles())
def test_a_length_read_back_is_the_length_printed(count, per, style):
    count = min(count, units.INCHES.longest * per)

    assert lengths.length(text.length(count, per, style).text) == Fraction(count, per)


@given(counts, parts())
def test_a_run_read_back_is_the_run_printed(count, per):
    inches = Fraction(min(count, units.INCHES.longest * per), per)

    assert lengths.length(text.run(inches)) == inches


@given(st.fractions(0, 1000, max_denominator=64))
def test_a_setting_read_back_is_the_setting(value):
    assert number(text.rational(value)) == value


@given(counts, parts(), styles())
def test_fractions_are_proper_and_in_lowest_terms(count, per, style):
    for top, bottom in re.findall(r'(\d+)/(\d+)', text.length(count, per, style).text):
        assert Fraction(int(top), int(bottom)).denominator == int(bottom)
        assert 0 < int(top) < int(bottom) <= per


@given(counts, parts())
def test_inches_after_feet_are_always_named_and_under_twelve(count, per):
    """Whole inches stand after feet even where there are none: 10′ 0 1/16″ is not to be read 10 1/16."""
    feet, mark, inches = text.feet_inches(count, per).text.rpartition('′ ')

    assert bool(mark) == (count >= 12 * per)
    if mark:
        assert int(feet) == count // (12 * per)
        assert 0 <= int(re.match(r'(\d+)[ ″]', inches)[1]) < 12


@given(counts, parts(), styles())
def test_a_negative_length_is_the_positive_with_a_minus(count, per, style):
    positive = text.length(count, per, style).text

    assert text.length(-count, per, style).text == (f'−{positive}' if count else positive)


@given(st.integers(-(10**9), 10**9), st.integers(0, 9))
def test_a_decimal_read_back_is_the_count(count, places):
    plain = text.plain_decimal(count, places)

    assert Fraction(plain) == Fraction(count, 10**places)
    assert plain.lstrip('-0.') or not plain.startswith('-')
    assert len(plain.partition('.')[2]) == places


@given(rationals())
def test_a_minus_sign_stands_only_before_a_number_below_zero(value):
    assert text.rational(value).startswith('−') == (value < 0)
