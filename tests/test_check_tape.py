"""The tolerances of tapes, against the handbook's own rows."""

import re
from fractions import Fraction

import pytest
from check_support import authority

from layouts.words.error import error_line
from layouts.words.say import say
from tablegen.checking import tape
from tablegen.checking.tape import BANDS, tolerance
from tablegen.errors import BookError

ROWS = [
    row for row in authority('hb44-tapes.toml') if row['quantity'] == 'metal tape tolerance, plus or minus'
]


def test_every_band_is_the_handbook_s():
    """NIST Handbook 44, sec. 5.52 Linear Measures, metal tapes."""
    printed = []
    for row in ROWS:
        feet = [int(number) for number in re.findall(r'\d+', row['given']['interval_from_zero'])]
        printed.append((feet[0] if len(feet) == 2 else 0, feet[-1], Fraction(row['printed'])))

    assert printed == [(band.from_ft, band.to_ft, band.tolerance_in) for band in BANDS]
    assert all(row['source'].startswith(say(tape.SOURCE).split(',')[0]) for row in ROWS)


@pytest.mark.parametrize(
    ('feet', 'inches'),
    [
        ('0', '1/32'),
        ('6', '1/32'),
        ('13/2', '1/32'),
        ('7', '1/16'),
        ('30', '1/16'),
        ('61/2', '1/16'),
        ('31', '1/8'),
        ('55', '1/8'),
        ('56', '3/16'),
        ('80', '3/16'),
        ('81', '1/4'),
        ('100', '1/4'),
    ],
)
def test_between_two_bands_the_tighter_holds(feet, inches):
    assert tolerance(12 * Fraction(feet)) == Fraction(inches)


def test_past_the_end_of_the_table_nothing_is_guessed():
    with pytest.raises(BookError) as caught:
        tolerance(Fraction(1201))
    assert error_line(caught.value) == (
        'tape: 100 ft 1 in is past the end of the table of tape tolerances; allowed: up to 100 ft; '
        'next: leave out --tape'
    )
