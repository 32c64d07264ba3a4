"""Pitches as people write them: every accepted form, every refusal in full."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from strategies import rises

from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.geometry.pitch import pitch_of_degrees, pitch_of_rise
from tablegen.numbers.angles import Angle, degrees_count
from tablegen.numbers.exact import exact, root
from tablegen.written.pitches import pitch

ALLOWED = 'a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to 24 in 12'
SAY_SO = 'if it is meant, say so: steep = true in the settings, --steep on the command line'


@pytest.mark.parametrize(
    ('written', 'rise', 'text', 'short'),
    [
        ('6', 6, '6 in 12', '6'),
        (6, 6, '6 in 12', '6'),
        ('6/12', 6, '6 in 12', '6'),
        ('6 / 12', 6, '6 in 12', '6'),
        ('6 in 12', 6, '6 in 12', '6'),
        ('6 on 12', 6, '6 in 12', '6'),
        ('6 IN 12', 6, '6 in 12', '6'),
        ('6in12', 6, '6 in 12', '6'),
        ('6:12', 6, '6 in 12', '6'),
        ('1:2', 6, '6 in 12', '6'),
        ('3 in 4', 9, '9 in 12', '9'),
        (' 6 ', 6, '6 in 12', '6'),
        ('7.5', Fraction(15, 2), '7 1/2 in 12', '7 1/2'),
        ('7 1/2', Fraction(15, 2), '7 1/2 in 12', '7 1/2'),
        ('7-1/2', Fraction(15, 2), '7 1/2 in 12', '7 1/2'),
        ('7½', Fraction(15, 2), '7 1/2 in 12', '7 1/2'),
        ('7¼', Fraction(29, 4), '7 1/4 in 12', '7 1/4'),
        ('18/12', 18, '18 in 12', '18'),
        ('7 1/2 in 12', Fraction(15, 2), '7 1/2 in 12', '7 1/2'),
        ('7 1/2/12', Fraction(15, 2), '7 1/2 in 12', '7 1/2'),
        (Fraction(15, 2), Fraction(15, 2), '7 1/2 in 12', '7 1/2'),
        ('2 in 5', Fraction(24, 5), '4.8 in 12', '4.8'),
        ('1/12', 1, '1 in 12', '1'),
        ('1/4 in 12', Fraction(1, 4), '1/4 in 12', '1/4'),
        ('1/3 in 1', 4, '4 in 12', '4'),
        ('24', 24, '24 in 12', '24'),
        ('45 deg', 12, '45°', '45°'),
    ],
)
def test_accepted(written, rise, text, short):
    found = pitch(written)

    assert (found.rise_in, found.text, found.short) == (rise, text, short)
    assert found.rise == rise
    assert found.slope == exact(Fraction(rise) / 12)


@pytest.mark.parametrize(
    ('written', 'count', 'text'),
    [
        ('26.565 deg', 26565, '26.565°'),
        ('26.565°', 26565, '26.565°'),
        ('26.565 degrees', 26565, '26.565°'),
        ('1 degree', 1000, '1°'),
        ('26 1/2 deg.', 26500, '26 1/2°'),
        ('26½ DEG', 26500, '26 1/2°'),
    ],
)
def test_accepted_in_degrees(written, count, text):
    found = pitch(written)

    assert (found.rise_in, found.text, found.short) == (None, text, text)
    assert degrees_count(Angle(found.slope), 3) == count


def test_degrees_with_an_exact_slope():
    assert pitch('30 deg').rise == root(48)
    assert pitch('60 deg').slope == root(3)
    assert pitch('45 deg').slope == pitch('12').slope


def test_a_pitch_over_24_passes_when_it_is_meant():
    assert pitch('36', steep=True).rise_in == 36
    assert pitch('120', steep=True).rise_in == 120
    assert pitch('84 deg', steep=True).text == '84°'


@pytest.mark.parametrize(
    ('written', 'rest'),
    [
        ('', f"'' is no pitch; allowed: {ALLOWED}"),
        ('steep', f"'steep' is no pitch; allowed: {ALLOWED}"),
        ('6 12', f"'6 12' is no pitch; allowed: {ALLOWED}"),
        ('6:0', f"'6:0' is no pitch; allowed: {ALLOWED}"),
        ('6 / 10', f"'6 / 10' is no pitch; allowed: {ALLOWED}"),
        ('1 1/0', f"'1 1/0' is no pitch; allowed: {ALLOWED}"),
        ('6 in 12 in', f"'6 in 12 in' is no pitch; allowed: {ALLOWED}"),
        (True, f'True is no pitch; allowed: {ALLOWED}'),
        (None, f'None is no pitch; allowed: {ALLOWED}'),
        (6.5, f'6.5 is no pitch; allowed: {ALLOWED}'),
        ('71/2', f"'71/2' is no pitch; allowed: {ALLOWED}; next: did you mean 7 1/2?"),
        ('131/2 in 12', f"'131/2 in 12' is no pitch; allowed: {ALLOWED}; next: did you mean 13 1/2 in 12?"),
        ('2°6', f"'2°6' is no pitch; allowed: {ALLOWED}"),
        ('26 deg 5', f"'26 deg 5' is no pitch; allowed: {ALLOWED}"),
        ('0', f"'0' is flat: a rafter needs a rise; allowed: {ALLOWED}"),
        (0, f"'0' is flat: a rafter needs a rise; allowed: {ALLOWED}"),
        ('0/12', f"'0/12' is flat: a rafter needs a rise; allowed: {ALLOWED}"),
        ('-6', f"'-6' is below zero; allowed: {ALLOWED}"),
        ('−6', f"'−6' is below zero; allowed: {ALLOWED}"),
        (-6, f"'-6' is below zero; allowed: {ALLOWED}"),
        ('0 deg', "'0 deg' is no slope; allowed: above 0 and below 90 degrees"),
        ('90 deg', "'90 deg' is no slope; allowed: above 0 and below 90 degrees"),
        ('24.5', f"'24.5' is over 24 in 12; allowed: {ALLOWED}; next: {SAY_SO}"),
        (25, f"'25' is over 24 in 12; allowed: {ALLOWED}; next: {SAY_SO}"),
        ('64 deg', f"'64 deg' is over 24 in 12; allowed: {ALLOWED}; next: {SAY_SO}"),
        ('121', "'121' is steeper than any rafter; allowed: up to 120 in 12"),
        ('89.9 deg', "'89.9 deg' is steeper than any rafter; allowed: up to 120 in 12"),
        (
            '6/10',
            f"'6/10' can be read in more than one way; allowed: {ALLOWED}; "
            "next: write '6/10 in 12' for so many inches per foot, or the rise and run as 6:12",
        ),
        (
            '1/2',
            f"'1/2' can be read in more than one way; allowed: {ALLOWED}; "
            "next: write '1/2 in 12' for so many inches per foot, or the rise and run as 6:12",
        ),
    ],
)
def test_refused(written, rest):
    with pytest.raises(BookError) as caught:
        pitch(written, 'pitches[2]')

    assert error_line(caught.value) == f'pitches[2]: {rest}'


def test_steeper_than_any_rafter_is_refused_even_when_meant():
    with pytest.raises(BookError) as caught:
        pitch('121', 'PITCH', steep=True)

    assert error_line(caught.value) == "PITCH: '121' is steeper than any rafter; allowed: up to 120 in 12"


@given(rises())
def test_a_pitch_read_back_is_the_pitch_printed(rise):
    printed = pitch_of_rise(rise)

    assert pitch(printed.text) == printed
    assert rise < 1 or pitch(printed.short) == printed


@given(st.integers(1, 6300))
def test_a_pitch_in_degrees_read_back_is_the_pitch_printed(hundredths):
    printed = pitch_of_degrees(Fraction(hundredths, 100))

    assert pitch(printed.text) == printed
