"""Stepping off: counts, remainders, what a rounded step comes to."""

from fractions import Fraction

import pytest
from check_support import authority, near, real, rounded
from mpmath import sqrt

from layouts.words.error import error_line
from tablegen.checking.steps import check_steps, mark_rows
from tablegen.checking.written import written
from tablegen.errors import BookError
from tablegen.numbers.figure import Measure
from tablegen.written.pitches import pitch

RUN = Fraction(161)
"""13 ft 5 in."""


def check(step='13 3/8', kind='common', rise=6, run=RUN, **more):
    return check_steps(kind, pitch(rise), run, step and written(step, '--step'), **more)


def test_thirteen_steps_and_five_inches():
    found = check()

    assert (found.whole_steps, found.odd_run) == (13, 5)
    assert (found.odd_remainder.body.text, found.odd_remainder.tongue.text) == ('5', '2 1/2')
    assert near(found.exact_step, sqrt(180))
    assert near(found.exact_length, real(161) / 12 * sqrt(180))
    assert near(found.error, 13 * (real('13.375') - sqrt(180)))
    assert near(found.last_mark, real(161) / 12 * sqrt(180) + 13 * (real('13.375') - sqrt(180)))
    assert (found.error.size, found.error.sign, found.verdict) == ('0.538', -1, 'wrong')


def test_ten_steps_of_a_good_eighth_are_short_by_two_fifths():
    """6 in 12, ten steps of 13 3/8: 133.75 in against 134.164 in, 0.414 in short; √180 by mpmath."""
    assert near(check(run=Fraction(120)).error, real('133.75') - 10 * sqrt(180))
    assert check(run=Fraction(120)).error.size == '0.414'


@pytest.mark.parametrize(
    ('row_id', 'kind', 'level'),
    [('2-example-041', 'common', Fraction(7)), ('2-example-042', 'hip-valley', Fraction(119, 12))],
)
def test_the_odd_remainder_of_a_worked_example(row_id, kind, level):
    """Griffith, Carpentry, 1916, secs. 17 and 23: 12 steps, then 7 and 3 1/2; a hip by 17: 9 11/12 and 3 1/2."""
    (row,) = (row for row in authority('griffith-1916-examples.toml') if row['id'] == row_id)
    found = check(None, kind, 6, Fraction(151))

    assert row['printed'].startswith(f'{found.whole_steps} steps')
    assert row['printed'].endswith(f'& {found.odd_remainder.tongue.text}')
    arm = found.odd_remainder.body if kind == 'common' else found.with_seventeen.odd_body
    assert arm.count == rounded(real(level), 16)
    if kind == 'hip-valley':
        assert found.odd_remainder.body.count == rounded(7 * sqrt(2), 16)


def test_the_drift_of_a_step_that_is_off():
    assert {drift.step_off_by.per: Fraction(drift.total.decimal) for drift in check().drift} == {
        64: Fraction(13, 64),
        32: Fraction(13, 32),
        16: Fraction(13, 16),
    }


@pytest.mark.parametrize(
    ('run', 'within', 'allowed', 'setting'),
    [
        (161, '1/8', '0.0096', 64),  # 13 steps: half a sixty-fourth each makes 13/128
        (192, '1/8', '0.0078', 64),  # 16 steps: 16/128, just the eighth
        (204, '1/8', '0.0074', None),
        (48, '1/8', '0.0313', 16),
        (12, '1/8', '0.1250', 4),
        (161, '1/2', '0.0385', 16),
    ],
)
def test_how_small_the_error_of_a_step_must_be(run, within, allowed, setting):
    found = check(run=Fraction(run), within_in=Fraction(within))

    assert (found.step_allowed.size, found.set_to and found.set_to.per) == (allowed, setting)
    assert near(found.step_allowed, real(within) / (run // 12))


def test_less_than_a_step_has_nothing_to_drift():
    found = check(run=Fraction(11))

    assert (found.whole_steps, found.step_allowed, found.error.sign, found.verdict) == (
        0,
        None,
        0,
        'not_judged',
    )


def test_a_step_that_is_not_given_is_the_nearest_sixteenth():
    found = check(None)

    assert (found.step.text, found.step_given) == ('13 7/16', False)
    assert near(found.error, 13 * (real('13.4375') - sqrt(180)))


@pytest.mark.parametrize('rise', [1, 6, 8, 18])
def test_seventeen_makes_a_hip_too_long(rise):
    """Over 144 in of common run, whatever the steps: past 16 in 12 they are of 6 in."""
    found = check(None, 'hip-valley', rise, Fraction(144))
    halves = 2 if rise > 16 else 1

    assert found.whole_steps == 12 * halves
    assert near(found.with_seventeen.step, sqrt(289 + rise * rise) / halves)
    assert near(found.with_seventeen.error, 12 * (sqrt(289 + rise * rise) - sqrt(288 + rise * rise)))


def test_seventeen_at_eight_in_twelve():
    """0.320 in over twelve steps, by mpmath; only hips have it."""
    assert check(None, 'hip-valley', 8, Fraction(144)).with_seventeen.error.size == '0.320'
    assert check(None, 'common', 8, Fraction(144)).with_seventeen is None


def test_the_verdict_turns_at_what_is_allowed():
    """At 5 in 12 the step is just 13 in: eight steps of 13 1/64 end just 1/8 long."""
    assert check('13 1/64', rise=5, run=Fraction(96)).verdict == 'right'
    assert check('13 1/64', rise=5, run=Fraction(108)).verdict == 'wrong'


def test_each_mark_is_rounded_once_from_the_exact_length():
    rows = mark_rows('hip-valley', pitch(8), 20, Measure(16))

    assert [row.number for row in rows] == list(range(1, 21))
    for row in rows:
        assert row.mark.count == rounded(row.number * sqrt(352), 16)
        assert near(row.off, row.number * (real('18.75') - sqrt(352)))


@pytest.mark.parametrize(
    ('more', 'said'),
    [
        ({'run': Fraction(0)}, 'run: a length of 0 cannot be stepped; allowed: above 0'),
        ({'step': '0'}, 'step: a length of 0 cannot be stepped; allowed: above 0'),
    ],
)
def test_nothing_cannot_be_stepped(more, said):
    with pytest.raises(BookError) as caught:
        check(**more)
    assert error_line(caught.value) == said
