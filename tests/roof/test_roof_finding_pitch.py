"""Group a pitch, against mpmath."""

from fractions import Fraction

import pytest
from mpmath import mp, mpf
from near import NEAR, gap, number

from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.geometry import common, finding_pitch
from tablegen.numbers.angles import degrees_count
from tablegen.numbers.exact import exact


@pytest.mark.parametrize('rise', [*range(1, 25), Fraction(15, 2)])
def test_every_way_comes_back_to_the_same_pitch(rise):
    """A triangle of that pitch: any two of its sides, or a level on it, give the slope back."""
    run, up = Fraction(120), Fraction(rise) * 10
    length = mp.sqrt(mpf(run) ** 2 + mpf(up.numerator) ** 2 / up.denominator**2)
    written = Fraction(mp.nstr(length, 28))
    slope = mpf(up.numerator) / up.denominator / 120

    assert gap(finding_pitch.from_rise_and_run(up, run), slope) < NEAR
    assert gap(finding_pitch.from_level_and_tape(Fraction(24), Fraction(rise) * 2), slope) < NEAR
    assert gap(finding_pitch.from_length_and_run(written, run), slope) < NEAR
    assert gap(finding_pitch.from_length_and_rise(written, up), slope) < NEAR
    assert finding_pitch.rise_per_foot(finding_pitch.from_rise_and_run(up, run)) == rise
    assert gap(common.slope_angle(exact(Fraction(rise) / 12)), mp.atan(slope)) < NEAR


@pytest.mark.parametrize('degrees', range(1, 90))
def test_degrees_and_back(degrees):
    slope = finding_pitch.from_degrees(Fraction(degrees))

    assert abs(number(slope) - mp.tan(mp.radians(degrees))) < NEAR * mp.tan(mp.radians(degrees))
    assert degrees_count(common.slope_angle(slope), 6) == degrees * 10**6


def test_a_rational_answer_stays_rational():
    """5-12-13: 13 ft along a slope over 12 ft of run is 5 in 12."""
    assert finding_pitch.rise_per_foot(finding_pitch.from_length_and_run(Fraction(156), Fraction(144))) == 5


@pytest.mark.parametrize(
    ('ask', 'said'),
    [
        (
            lambda: finding_pitch.from_rise_and_run(Fraction(0), Fraction(12)),
            'rise: 0 in measures nothing; allowed: above 0',
        ),
        (
            lambda: finding_pitch.from_rise_and_run(Fraction(4), Fraction(0)),
            'run: 0 in measures nothing; allowed: above 0',
        ),
        (
            lambda: finding_pitch.from_level_and_tape(Fraction(0), Fraction(3)),
            'level: 0 in measures nothing; allowed: above 0',
        ),
        (
            lambda: finding_pitch.from_length_and_run(Fraction(12), Fraction(12)),
            'length: 12 in is no longer than its run; allowed: more than the run',
        ),
        (
            lambda: finding_pitch.from_length_and_rise(Fraction(12), Fraction(14)),
            'length: 12 in is no longer than its rise; allowed: more than the rise',
        ),
        (
            lambda: finding_pitch.from_degrees(Fraction(90)),
            'degrees: 90 is no slope; allowed: above 0 and below 90',
        ),
    ],
)
def test_what_measures_no_slope_is_refused(ask, said):
    with pytest.raises(BookError) as refused:
        ask()

    assert error_line(refused.value) == said
