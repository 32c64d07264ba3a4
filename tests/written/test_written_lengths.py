"""Lengths as people write them: every accepted form, every refusal in full, and the mixed-number trap."""

import re
import subprocess
import sys
from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from refused import refused

from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.written.lengths import length
from tablegen.written.numbers import number

ALLOWED = 'a length such as 4 ft, 4\' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m or 1400 mm'
MM = Fraction(5, 127)
"""Inches in a millimetre: an inch is 25.4 mm exactly, by the international agreement of 1959 (from memory)."""


@pytest.mark.parametrize(
    ('written', 'inches'),
    [
        ('4 ft', 48),
        ('4 FT', 48),
        ('1400 MM', 1400 * MM),
        ('2 Yards', 72),
        ('4ft7in', 55),
        ('7⅓', Fraction(22, 3)),
        ('4ft', 48),
        ('4 ft.', 48),
        ('4 feet', 48),
        ('1 foot', 12),
        ('1 FOOT', 12),
        ("4'", 48),
        ('4′', 48),
        ('4’', 48),
        ('4.5 ft', 54),
        ('4 1/2 ft', 54),
        ('1/2 ft', 6),
        ('4\' 7 1/2"', Fraction(111, 2)),
        ('4\'7 1/2"', Fraction(111, 2)),
        ('4\'-7 1/2"', Fraction(111, 2)),
        ("4' 7 1/2", Fraction(111, 2)),
        ('4′ 7 1/2″', Fraction(111, 2)),
        ('4’ 7½”', Fraction(111, 2)),
        ("4' 7 1/2''", Fraction(111, 2)),
        ('4 ft 7 1/2 in', Fraction(111, 2)),
        ('4 feet, 7.5 inches', Fraction(111, 2)),
        ('4 ft 7-1/2 in', Fraction(111, 2)),
        ('4 ft 7', 55),
        ('4 ft 0 in', 48),
        ('55.5 in', Fraction(111, 2)),
        ('55.5 in.', Fraction(111, 2)),
        ('55.5"', Fraction(111, 2)),
        ('1 inch', 1),
        ('55 1/2', Fraction(111, 2)),
        ('55-1/2', Fraction(111, 2)),
        ('55½', Fraction(111, 2)),
        ('55 ½ in', Fraction(111, 2)),
        ('55.5', Fraction(111, 2)),
        ('.5', Fraction(1, 2)),
        ('5.', 5),
        ('3/4', Fraction(3, 4)),
        ('3⁄4 in', Fraction(3, 4)),
        ('¼', Fraction(1, 4)),
        ('7¾', Fraction(31, 4)),
        ('7⅛', Fraction(57, 8)),
        ('7⅜', Fraction(59, 8)),
        ('7⅝', Fraction(61, 8)),
        ('7⅞', Fraction(63, 8)),
        ('0', 0),
        ('  4  ft  ', 48),
        ('4\u00a0ft', 48),
        ('19.2 in', Fraction(96, 5)),
        ('1.4 m', 1400 * MM),
        ('1400 mm', 1400 * MM),
        ('1400mm', 1400 * MM),
        ('140 cm', 1400 * MM),
        ('1.4 metres', 1400 * MM),
        ('1.4 meter', 1400 * MM),
        ('140 centimetres', 1400 * MM),
        ('25.4 millimeters', 1),
        ('1 1/2 m', 1500 * MM),
        ('2 yd', 72),
        ('2 yards', 72),
        ('1 yard', 36),
        ('10000 ft', 120_000),
        (48, 48),
        (Fraction(111, 2), Fraction(111, 2)),
    ],
)
def test_accepted(written, inches):
    assert length(written) == inches


@pytest.mark.parametrize('written', ['3 1/2 inch', '3 1/2 in', '3 1/2"', '3 1/2'])
def test_a_mixed_number_is_three_and_a_half(written):
    assert length(written) == Fraction(7, 2)


def test_a_mixed_number_is_never_left_to_the_units_library():
    """It takes the space for a multiplication, and would make 3 1/2 yards one and a half."""
    assert pint.UnitRegistry(non_int_type=Fraction).Quantity('3 1/2 yard').magnitude == Fraction(3, 2)
    assert length('3 1/2 yd') == 126
    assert length('3 1/2 m') == 3500 * MM


@pytest.mark.parametrize(
    ('written', 'problem'),
    [
        ('', "'' is no length"),
        ('four feet', "'four feet' is no length"),
        ('4 ft 7 ft', "'4 ft 7 ft' is no length"),
        ('7 in 4 ft', "'7 in 4 ft' is no length"),
        ('4 furlongs', "'4 furlongs' is no length"),
        ('4 kg', "'4 kg' is no length"),
        ('1/0 in', "'1/0 in' is no length"),
        ('3 1/0', "'3 1/0' is no length"),
        ('1,400 mm', "'1,400 mm' is no length"),
        ('1e3', "'1e3' is no length"),
        ('nan', "'nan' is no length"),
        ('in', "'in' is no length"),
        ('4 ft -', "'4 ft -' is no length"),
        ('1' * 41, f"'{'1' * 41}' is no length"),
        ('-4 ft', "'-4 ft' is below zero"),
        ('−4 ft', "'−4 ft' is below zero"),
        (-4, "'-4' is below zero"),
        (Fraction(-1, 2), "'-1/2' is below zero"),
        ('10000 ft 1/64 in', "'10000 ft 1/64 in' is over 10,000 ft"),
        ('4 km', "'4 km' is no length"),
        ('4000 m', "'4000 m' is over 10,000 ft"),
        (120_001, "'120001' is over 10,000 ft"),
        (True, 'True is no length'),
        (None, 'None is no length'),
        (['4 ft'], "['4 ft'] is no length"),
        (4.5, '4.5 is no length'),
        ('4\nyears', r"'4\nyears' is no length"),
    ],
)
def test_refused(written, problem):
    with pytest.raises(BookError) as caught:
        length(written, 'runs.to')

    assert error_line(caught.value) == f'runs.to: {problem}; allowed: {ALLOWED}'


@pytest.mark.parametrize(
    ('written', 'meant'),
    [
        ('131/2', '13 1/2'),
        ('71/2', '7 1/2'),
        ('1115/16', '11 15/16'),
        ('5/4', '1 1/4'),
        ('18/12', '1 1/2'),
        ('16/16', '1'),
        ('4½5', '4 1/2'),
        ('4 1/2 5', '4 1/2'),
        ('1/2 1/2', '1/2'),
        ('4 ft 13 in', '5 ft 1 in'),
        ('4\' 12"', '5 ft'),
        ('2 ft 131/2 in', '3 ft 1 1/2 in'),
    ],
)
def test_what_was_probably_meant_is_said(written, meant):
    """A whole number that ran into its fraction is the commonest slip, and reads as another length."""
    with pytest.raises(BookError) as caught:
        length(written, 'RUN')

    assert error_line(caught.value) == (
        f"RUN: '{written}' is no length; allowed: {ALLOWED}; next: did you mean {meant}?"
    )


@pytest.mark.parametrize(
    'written', ['1/0', '12 5/4', '3 8/8', '4 inx', '4 ft in', '4ftin', '+4', '1 -2', '٣ in']
)
def test_nothing_is_guessed_where_nothing_is_near(written):
    with refused('is no length') as caught:
        length(written)

    assert caught.value.next_step == ''


@pytest.mark.parametrize('written', ['', '1/0', '3 1/0', '-1', '+1', '1 2', '1/2/3', '1e3', 'six', '1' * 41])
def test_what_is_no_number(written):
    with pytest.raises(ValueError, match=f'^{re.escape(written)}$'):
        number(written)


@given(st.integers(0, 999), st.integers(0, 11), st.integers(0, 63))
def test_feet_inches_and_fraction_add_up(feet, inches, part):
    expected = 12 * feet + inches + Fraction(part, 64)

    assert length(f'{feet} ft {inches} {part}/64 in') == expected
    assert length(f'{feet}\'-{inches}-{part}/64"') == expected


@given(st.integers(0, 3_000_000))
def test_millimetres_are_exact(millimetres):
    assert length(f'{millimetres} mm') == millimetres * MM
    assert length(f'{millimetres // 1000}.{millimetres % 1000:03} m') == millimetres * MM


def test_feet_and_inches_wait_for_no_units_library():
    """Only a length in another unit loads it: a look-up answers at once."""
    code = "import sys; from tablegen.written.lengths import length; length('4 ft'); assert 'pint' not in sys.modules"

    assert subprocess.run([sys.executable, '-c', code], check=False).returncode == 0
