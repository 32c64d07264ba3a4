"""A corner by its diagonal, a square turned over, and the rows the book has of both."""

from fractions import Fraction

import pytest
from card_support import decimals
from check_support import near, real, rounded
from hypothesis import given, settings
from hypothesis import strategies as st
from mpmath import acos, asin, degrees, sin, sqrt

from layouts.words.error import error_line
from tablegen.checking.amounts import amount
from tablegen.checking.book_rows import STEP_COUNTS, drift_table, mark_to_mark_table, turned_over_table
from tablegen.checking.corner import check_corner, turn_over
from tablegen.checking.written import written
from tablegen.errors import BookError
from tablegen.numbers.figure import Measure
from tablegen.written.pitches import pitch


def corner(side='72', other='96', diagonal='10 ft 1/8 in', **more):
    return check_corner(Fraction(side), Fraction(other), written(diagonal, '--diagonal'), **more)


def test_six_eight_ten_and_an_eighth():
    """The cosine rule by mpmath; six, eight and ten make a square corner (common practice, no source)."""
    found = corner()
    angle = acos((real(72) ** 2 + real(96) ** 2 - real('120.125') ** 2) / (2 * 72 * 96))

    assert near(found.out, degrees(angle) - 90)
    assert near(found.over_long_side, 96 * sin(angle - acos(0)))
    assert (found.out.sign, found.out.size, found.over_long_side.size) == (1, '0.124°', '0.208')
    assert (found.true_diagonal.size, found.difference.size, found.verdict) == (
        '120.000',
        '0.125',
        'wrong',
    )


@pytest.mark.parametrize(
    ('diagonal', 'sign', 'verdict'),
    [
        ('10 ft', 0, 'right'),
        ('119 7/8', -1, 'wrong'),
        ('120 1/16', 1, 'wrong'),
        ('120.0', 0, 'right'),
        ('120 0/8', 0, 'right'),
    ],
)
def test_which_way_it_is_out(diagonal, sign, verdict):
    found = corner(diagonal=diagonal)

    assert (found.out.sign, found.over_long_side.sign, found.verdict) == (sign, sign, verdict)


def test_the_sides_may_come_in_either_order():
    assert corner('96', '72') == corner('72', '96')


def test_a_diagonal_that_no_mark_can_show():
    """12 by 12: √288 = 16.9706 lies 0.4 of a sixteenth from 17, which is as near as sixteenths come."""
    assert corner('12', '12', '17').verdict == 'right'
    assert corner('12', '12', '16 15/16').verdict == 'wrong'


def test_what_a_diagonal_cannot_see():
    found = corner('60', '70', '92 1/8')
    true = sqrt(real(60) ** 2 + real(70) ** 2)

    assert near(found.unseen, 70 * ((true + real('1/16')) ** 2 - true**2) / (2 * 60 * 70))


def test_an_allowance_and_the_tape():
    assert corner(within_in=Fraction(1, 8)).verdict == 'right'
    assert corner(with_tape=True).verdict == 'right'  # 1/16 read, 1/16 for a tape at 10 ft
    assert corner(with_tape=True).allowed.total == Fraction(1, 8)


@settings(max_examples=60, deadline=None)
@given(st.integers(1, 400), st.integers(1, 400), st.integers(1, 799))
def test_any_triangle_against_mpmath(side, other, across):
    if not abs(side - other) < across < side + other:
        with pytest.raises(BookError):
            corner(side, other, str(across))
        return
    cosine = (real(side) ** 2 + real(other) ** 2 - real(across) ** 2) / (2 * side * other)

    assert near(corner(side, other, str(across)).out, degrees(acos(cosine)) - 90)


@pytest.mark.parametrize(
    ('sides', 'diagonal', 'said'),
    [
        (
            ('72', '96'),
            '14 ft',
            'diagonal: 14 ft cannot join sides of 6 ft and 8 ft; allowed: between 2 ft and 14 ft; '
            'next: measure again',
        ),
        (
            ('72', '96'),
            '2 ft',
            'diagonal: 2 ft cannot join sides of 6 ft and 8 ft; allowed: between 2 ft and 14 ft; '
            'next: measure again',
        ),
        (('0', '96'), '8 ft', 'along: a side of 0 makes no corner; allowed: two lengths above 0'),
    ],
)
def test_sides_that_make_no_triangle_are_refused(sides, diagonal, said):
    with pytest.raises(BookError) as caught:
        corner(*sides, diagonal)
    assert error_line(caught.value) == said


def test_the_turn_over_test_shows_twice_the_error():
    """A square out by some angle is drawn both ways: the lines part by twice that angle (mpmath)."""
    found = turn_over(written('1/16', '--gap'), Fraction(16))
    error = asin(real('1/16') / 32)

    assert near(found.out, degrees(error))
    assert near(found.error, 16 * sin(error))
    assert near(found.over_body, 24 * sin(error))
    assert near(found.over_wall, 144 * sin(error))
    assert (found.error.size, found.verdict) == ('0.031', 'wrong')


@pytest.mark.parametrize(
    ('gap', 'within', 'verdict'), [('0', None, 'right'), ('1/64', None, 'wrong'), ('1/64', '1/64', 'right')]
)
def test_any_gap_that_can_be_read_is_one(gap, within, verdict):
    assert turn_over(written(gap, '--gap'), Fraction(16), within and Fraction(within)).verdict == verdict


def test_a_gap_is_below_its_distance():
    with pytest.raises(BookError) as caught:
        turn_over(written('16', '--gap'), Fraction(16))
    assert error_line(caught.value) == (
        'gap: 1 ft 4 in is not below the distance it is measured at, 1 ft 4 in; '
        'allowed: a gap far below the distance; next: measure again'
    )


def test_the_book_s_gaps():
    rows = [row.cells for row in turned_over_table().rows()]

    assert [gap.text for gap, *_ in rows] == ['1/64', '1/32', '3/64', '1/16', '3/32', '1/8']
    for gap, _, _, over_wall in rows:
        assert near(over_wall, 144 * real(Fraction(gap.count, gap.per)) / 32)


def test_diagonals_between_the_square_s_own_marks():
    rows = [row.cells for row in mark_to_mark_table(Measure(16)).rows()]

    assert [(body, tongue) for body, tongue, diagonal, _ in rows if diagonal.decimal.endswith('.000000000')] == [
        (12, 5), (12, 9), (16, 12), (15, 8), (20, 15), (24, 7), (24, 10),
    ]  # fmt: skip
    for body, tongue, diagonal, out in rows:
        true = sqrt(real(body) ** 2 + real(tongue) ** 2)
        assert body <= 24
        assert tongue <= 16
        assert near(diagonal, true)
        assert diagonal.count == rounded(true, 32)
        longer = true + real('1/32')
        sine = (longer**2 - true**2) / (2 * body * tongue)
        assert near(out, 24 * sine)


def test_the_book_s_drift_rows():
    (row,) = drift_table(Measure(16), [8]).rows()
    rise, step, *drifts = row.cells

    assert (rise, step.text) == (pitch(8), '14 7/16')
    assert [
        near(amount(cell.value), n * (real('14.4375') - sqrt(208)))
        for cell, n in zip(drifts, STEP_COUNTS, strict=True)
    ] == [True] * 6


def test_drifts_are_of_steps_to_the_books_own_part():
    (row,) = drift_table(Measure(8), [6]).rows()

    assert row.cells[1].text == '13 3/8'
    assert [cell.signed for cell in row.cells[2:5]] == [
        f'−{decimals(n * (sqrt(180) - real("13.375")), 3)}' for n in (4, 8, 12)
    ]


@pytest.mark.parametrize(
    ('number', 'said'), [('0.0841', '+0.084'), ('-1/16', '−0.063'), ('0', '0'), ('1/9999', '0')]
)
def test_an_amount_told_with_its_direction(number, said):
    assert amount(Fraction(number)).signed == said
