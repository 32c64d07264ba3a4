"""A length that was read, judged against the exact one."""

from fractions import Fraction

import pytest
from check_support import near, real
from mpmath import atan, degrees, sqrt

from layouts.words.error import error_line
from tablegen.checking.reading import check_length
from tablegen.checking.written import written
from tablegen.errors import BookError
from tablegen.numbers.figure import Measure
from tablegen.written.pitches import pitch

FOOT = Fraction(12)
BOOK = Measure(16)


def check(reads, rise=6, run=FOOT, kind='common', **more):
    return check_length(kind, pitch(rise), run, written(reads, '--reads'), BOOK, **more)


def test_a_good_eighth_drifts_half_an_inch_over_twelve_steps():
    """13 3/8 for one foot at 6 in 12: common practice, no source; the drift by √180 = 13.416408."""
    found = check('13 3/8', total_run_in=Fraction(144))

    assert found.verdict == 'right'
    assert (found.nearest.text, found.nearest_book_part.text) == ('13 3/8', '13 7/16')
    assert (found.difference.sign, found.difference.size) == (-1, '0.041')
    assert (found.repeated.steps, found.repeated.error.sign) == (12, -1)
    assert found.repeated.error.size == '0.497'
    assert near(found.repeated.error, 12 * (real('13.375') - sqrt(180)))


@pytest.mark.parametrize(
    ('reads', 'part', 'figure', 'assumed'),
    [
        ('13 3/8', '1/8 in', '13 3/8', False),
        ('13 6/16', '1/16 in', '13 3/8', False),
        ('13⅜', '1/8 in', '13 3/8', False),
        ('1\' 1 3/8"', '1/8 in', '13 3/8', False),
        ('13.42', '0.01 in', '13.42', False),
        ('13.40 in', '0.01 in', '13.40', False),
        ('1.118 ft', '0.001 ft', '1.118', False),
        ('13', '1/16 in', '13', True),
        ('4 1/2 ft', '1/16 in', '54', True),
        ("10''", '1/16 in', '10', True),
        ('341 mm', '1 mm', '341', False),
        ('34 cm', '0.1 cm', '34.0', True),
        ('1 metre', '0.001 m', '1.000', True),
        ('0.34 m', '0.01 m', '0.34', False),
    ],
)
def test_the_finest_part_is_the_one_that_was_written(reads, part, figure, assumed):
    read = written(reads, '--reads')

    assert (read.part.text, read.figure.text, read.part.assumed) == (part, figure, assumed)


@pytest.mark.parametrize(
    ('reads', 'verdict', 'marks'),
    [
        ('13 3/8', 'right', 0),
        ('13 1/2', 'right', 0),  # to the half: the half-inch mark is the nearest of its kind
        ('13 4/8', 'wrong', 1),
        ('13 2/8', 'wrong', -1),
        ('13 7/16', 'right', 0),
        ('13 6/16', 'wrong', -1),
        ('13.42', 'right', 0),
        ('13.43', 'wrong', 1),
        ('13.4', 'right', 0),
        ('13', 'wrong', -7),
    ],
)
def test_right_is_within_half_of_the_finest_part(reads, verdict, marks):
    found = check(reads)

    assert (found.verdict, found.marks_off) == (verdict, marks)


def test_exactly_half_a_part_off_is_still_right():
    """At 5 in 12 a run of 1 1/2 in is just 1 5/8 in (5, 12, 13): 1 3/4 is half a quarter long."""
    found = check('1 3/4', rise=5, run=Fraction(3, 2))

    assert found.difference.size == '0.125'
    assert found.allowed.text == '1/8 in'
    assert found.verdict == 'right'


def test_an_allowance_can_be_given():
    assert check('13 1/8', rise=5, within_in=Fraction(1, 8)).verdict == 'right'
    assert check('13 1/8', rise=5, within_in=Fraction(1, 9)).verdict == 'wrong'


def test_the_tape_s_own_tolerance_comes_on_top():
    """NIST Handbook 44, sec. 5.52: 1/32 in up to 6 ft, here on 1/32 in for a sixteenth."""
    without, tape = check('13 6/16'), check('13 6/16', with_tape=True)

    assert (without.verdict, without.allowed.total) == ('wrong', Fraction(1, 32))
    assert (tape.verdict, tape.allowed.total) == ('right', Fraction(1, 16))


@pytest.mark.parametrize('rise', ['1', '4.5', '6', '12', '24'])
@pytest.mark.parametrize(
    ('kind', 'length'),
    [
        ('common', lambda run, m: run * sqrt(1 + m * m)),
        ('hip-valley', lambda run, m: run * sqrt(2 + m * m)),
        ('jack-difference', lambda run, m: run * sqrt(1 + m * m)),
        ('rise', lambda run, m: run * m),
    ],
)
def test_every_kind_against_mpmath(kind, length, rise):
    run = Fraction(161, 2)
    found = check('90', rise=rise, run=run, kind=kind)
    slope = real(rise) / 12

    assert near(found.exact, length(real(run), slope))
    assert near(found.difference, 90 - length(real(run), slope))


@pytest.mark.parametrize(
    ('kind', 'own'), [('common', 1), ('hip-valley', 2), ('jack-difference', 1), ('rise', 0)]
)
def test_the_pitch_that_a_reading_is_exact_for(kind, own):
    found = check('19 1/4', kind=kind)
    slope = sqrt((real('19.25') / 12) ** 2 - own)

    assert near(found.exact_for.rise_per_foot, 12 * slope)
    assert near(found.exact_for.angle, degrees(atan(slope)))


@pytest.mark.parametrize(('kind', 'reads'), [('common', '12'), ('common', '11 7/8'), ('hip-valley', '16.97')])
def test_no_pitch_fits_what_is_no_longer_than_its_own_run(kind, reads):
    assert check(reads, kind=kind).exact_for is None


def test_what_is_left_of_the_total_run_repeats_nothing():
    found = check('13 3/8', total_run_in=Fraction(161)).repeated

    assert (found.steps, found.left_run) == (13, 5)
    assert near(found.error, 13 * (real('13.375') - sqrt(180)))


def test_a_metric_reading_is_judged_in_millimetres():
    found = check('341 mm')

    assert (found.nearest.text, found.nearest.unit, found.verdict) == ('341', 'mm', 'right')
    assert check('342 mm').verdict == 'wrong'


@pytest.mark.parametrize(
    ('call', 'said'),
    [
        (lambda: check('0'), 'reads: a length of 0 cannot be checked; allowed: above 0'),
        (lambda: check('13', run=Fraction(0)), 'run: a length of 0 cannot be checked; allowed: above 0'),
        (
            lambda: check('13', total_run_in=Fraction(11)),
            'total-run: 11 in is shorter than the run that was read; allowed: 1 ft or more',
        ),
    ],
)
def test_what_cannot_be_checked_is_refused(call, said):
    with pytest.raises(BookError) as caught:
        call()
    assert error_line(caught.value) == said
