"""Lists and ranges of pitches: in order, none twice, and what is refused."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from strategies import rises

from layouts.words.error import error_line
from layouts.words.say import said
from tablegen.errors import BookError
from tablegen.written.pitches import read_pitches

RANGE = "a range such as '4 to 12 by 1/2'"
PITCH = 'a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to 24 in 12'
SAY_SO = 'if it is meant, say so: steep = true in the settings, --steep on the command line'


def read(value: object, steep: bool = False) -> list:
    return [pitch.rise_in for pitch in read_pitches(value, 'pitches', steep)]


def half(*doubles: int) -> list[Fraction]:
    return [Fraction(double, 2) for double in doubles]


@pytest.mark.parametrize(
    ('value', 'expected'),
    [
        ('1 to 4', [1, 2, 3, 4]),
        ('4 to 5 by 1/2', half(8, 9, 10)),
        ('1/2 to 2 by 1/2', half(1, 2, 3, 4)),
        ('4 TO 5 BY 1/2', half(8, 9, 10)),
        ('4 to 6 by 1 1/2', half(8, 11)),
        ('4/12 to 6 in 12', [4, 5, 6]),
        ('45 deg to 14', [12, 13, 14]),
        ('24 to 24', [24]),
        (['4 to 5 by 0.5', 18, '4'], half(8, 9, 10, 36)),
        ([12, 6, 6, '6/12', '45 deg'], [6, 12]),
        ([24, 1], [1, 24]),
        (['1 to 2'], [1, 2]),
        (6, [6]),
        (Fraction(15, 2), half(15)),
    ],
)
def test_accepted(value, expected):
    assert read(value) == expected


def test_pitches_in_degrees_stand_in_their_place():
    found = read_pitches(['30 deg', 6, 7, '20 deg'], 'pitches', False)

    assert [pitch.text for pitch in found] == ['20°', '6 in 12', '30°', '7 in 12']


def test_steep_ones_when_they_are_meant():
    assert read('24 to 36 by 6', steep=True) == [24, 30, 36]


@given(st.lists(rises(), min_size=1, max_size=12))
def test_any_list_comes_out_in_order_and_none_twice(listed):
    assert read(listed) == sorted(set(listed))


@pytest.mark.parametrize(
    ('value', 'expected'),
    [
        ([], "pitches: no pitch is given; allowed: a list such as [4, 6, '7 1/2'] or '1 to 24'"),
        (0, f"pitches: '0' is flat: a rafter needs a rise; allowed: {PITCH}"),
        ([-4], f"pitches: '-4' is below zero; allowed: {PITCH}"),
        ('1 to', f"pitches: '1 to' is no pitch; allowed: {PITCH}"),
        ('1 to 4 to 8', f"pitches: '1 to 4 to 8' is no pitch; allowed: {PITCH}"),
        ('1 to 30', f"pitches: '30' is over 24 in 12; allowed: {PITCH}; next: {SAY_SO}"),
        ('12 to 4', f'pitches: the range goes backwards, 12 to 4; allowed: {RANGE}'),
        ('1 to 6 by 0', f'pitches: a range needs inches of rise and a step above 0; allowed: {RANGE}'),
        ('1 to 6 by x', f'pitches: a range needs inches of rise and a step above 0; allowed: {RANGE}'),
        ('20 deg to 6', f'pitches: a range needs inches of rise and a step above 0; allowed: {RANGE}'),
        ('1 to 24 by 1/64', 'pitches: 1473 pitches are too many; allowed: up to 200'),
        (['1 to 13 by 1/16', '13 to 24 by 1/8'], 'pitches: 281 pitches are too many; allowed: up to 200'),
    ],
)
def test_refused(value, expected):
    with pytest.raises(BookError) as caught:
        read(value)

    assert error_line(caught.value) == expected


def test_every_fault_of_a_list_is_told_by_its_place():
    with pytest.raises(BookError) as caught:
        read([0, 6, 'many'])

    assert [(fault.place, said(fault.problem)) for fault in caught.value.each()] == [
        ('pitches[1]', "'0' is flat: a rafter needs a rise"),
        ('pitches[3]', "'many' is no pitch"),
    ]
