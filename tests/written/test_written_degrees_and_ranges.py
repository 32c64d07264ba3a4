"""Degrees and ranges as people write them."""

from fractions import Fraction

import pytest
from refused import refused

from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.written.degrees import degrees
from tablegen.written.ranges import WrittenRange, split_range


@pytest.mark.parametrize(
    ('written', 'expected'),
    [
        ('30', 30),
        ('30 deg', 30),
        ('30°', 30),
        ('30 Degrees', 30),
        ('22½°', Fraction(45, 2)),
        ('22 1/2 deg.', Fraction(45, 2)),
        ('26.565', Fraction('26.565')),
    ],
)
def test_degrees(written, expected):
    assert degrees(written, '--corner', 180) == expected


@pytest.mark.parametrize(
    'written', ['', 'deg', '0', '180', '3deg0', '3°0', 'degrees 30', '30 in', '-30', '1e2']
)
def test_what_is_no_angle(written):
    with pytest.raises(BookError) as caught:
        degrees(written, '--corner', 180)

    assert (
        error_line(caught.value)
        == f"--corner: '{written}' is no such angle; allowed: degrees above 0 and below 180"
    )


def test_a_whole_number_that_ran_into_its_fraction():
    with refused(r'did you mean 22 1/2\?'):
        degrees('221/2', '--corner', 180)


@pytest.mark.parametrize(
    ('written', 'expected'),
    [
        ('4 to 12', WrittenRange('4', '12', None)),
        (' 1 in to 24 ft by 1 in ', WrittenRange('1 in', '24 ft', '1 in')),
        ('4 TO 12 BY 1/2', WrittenRange('4', '12', '1/2')),
        ('4 ft', None),
        ('4 to', None),
        ('to 4', None),
        ('1 to 4 to 8', None),
        ('1 to 4 by 2 by 3', None),
    ],
)
def test_ranges(written, expected):
    assert split_range(written) == expected
