"""The one form in which programs are told a figure; values by mpmath."""

import pytest
from mpmath import atan, degrees, mpf, sqrt

from layouts.told import dialect
from tablegen.geometry.common import line_length, slope_angle
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.figure import INCH, Measure, decimal_figure, degree_figure, length_figure

SIX = pitch_of_rise(6).slope


def nine(number: mpf) -> str:
    """Return a number to nine decimals."""
    return f'{float(number):.9f}'


def test_a_length_is_told_exactly_and_as_it_is_read():
    """Four feet of run at 6 in 12: 48 times the root of 1.25, and the carpenter's 53 11/16."""
    told = dialect.told(length_figure(line_length(48, SIX), Measure()))

    assert told == {'inches': nine(48 * sqrt(mpf('1.25'))), 'text': '53 11/16'}


def test_feet_and_inches_are_text_and_the_inches_stay():
    told = dialect.told(length_figure(line_length(48, SIX), Measure(16, 'feet-inches')))

    assert told == {'inches': nine(48 * sqrt(mpf('1.25'))), 'text': '4′ 5 11/16″'}


def test_an_angle_is_told_in_degrees_and_a_ratio_as_its_decimals():
    assert dialect.told(degree_figure(slope_angle(SIX))) == {'degrees': nine(degrees(atan(mpf('0.5'))))}
    assert dialect.told(decimal_figure(SIX, 3, '')) == '0.500000000'


@pytest.mark.parametrize(
    ('figure', 'names', 'cells'),
    [
        (
            length_figure(line_length(48, SIX), Measure()),
            ('x_inches', 'x_text'),
            ('53.665631460', '53 11/16'),
        ),
        (degree_figure(slope_angle(SIX)), ('x_degrees', 'x_text'), ('26.565051177', '26.57°')),
        (decimal_figure(SIX, 3, ''), ('x', 'x_text'), ('0.500000000', '0.500')),
    ],
)
def test_a_figure_is_two_columns_in_csv(figure, names, cells):
    """tan 26.565051177 degrees is 1/2; 53.665631460 is the root of 2880."""
    assert dialect.column_names('x', figure.unit) == names
    assert dialect.cells(figure) == cells


def test_no_figure_leaves_both_cells_empty():
    assert dialect.cells(None) == ('', '')
    assert len(dialect.column_names('x', INCH)) == 2
