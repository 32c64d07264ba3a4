"""Printed figures against mpmath numbers, and what a row's pitch says in plain trigonometry."""

from mpmath import atan, mpf, sqrt

from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.columns import THICKNESSES_IN
from tablegen.tables.tables import tables

BOOK = Settings()
T = mpf(3) / 2
"""The book's thickness of ridge, hip and rafter, in."""
THICK = [mpf(t.numerator) / t.denominator for t in THICKNESSES_IN]
DEPTHS = [mpf(size.depth_in.numerator) / size.depth_in.denominator for size in INCHES.stocks]


class Told:
    """A row by the names of its columns: row.heel is a cell, row.height those of height_2x4, height_2x6 and so on."""

    def __init__(self, table, row):
        self.keys = [column.key for column in table.columns]
        self.cells, self.marks = row.cells, dict(zip(self.keys, row.marks, strict=True))

    def __getattr__(self, name):
        told = dict(zip(self.keys, self.cells, strict=True))
        several = [cell for key, cell in told.items() if key.startswith(f'{name}_')]
        if name not in told and not several:
            raise AttributeError(name)
        return told.get(name, several)


def rows_of(key, settings=BOOK):
    """Return the rows of a table."""
    table = next(one for one in tables(settings) if one.key == key)
    return [Told(table, row) for row in table.rows()]


def is_nearest(figure, expected):
    """A figure is the whole count of its parts that is nearest to a number; ties may round either way here."""
    assert abs(mpf(figure.count) / figure.per - expected) <= mpf(1) / (2 * figure.per) + mpf('1e-15')


def is_least(figure, number):
    """A figure that must not be less than a number is the first whole count of its parts from there up."""
    over = mpf(figure.count) / figure.per - number
    assert -mpf('1e-15') <= over < mpf(1) / figure.per


def are_nearest(figures, expected):
    for figure, number in zip(figures, expected, strict=True):
        is_nearest(figure, number)


def slope_of(row_pitch):
    return mpf(row_pitch.rise_in.numerator) / row_pitch.rise_in.denominator / 12


def angles_of(row):
    """Return the slope, its angle, and the angle of the regular hip."""
    m = slope_of(row.pitch)
    return m, atan(m), atan(m / sqrt(2))
