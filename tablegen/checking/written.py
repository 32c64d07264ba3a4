"""A reading as it was written: its exact length, and the finest part that it names."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.errors import Word
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, Rational, exact, nearest
from tablegen.numbers.figure import Figure
from tablegen.numbers.text import Parts
from tablegen.numbers.units import INCHES
from tablegen.written.lengths import inches_in, read_length
from tablegen.written.numbers import Number

METRIC_PLACES = {'mm': 0, 'cm': 1, 'm': 3}
"""Decimals of a unit that make a millimeter, which is what a metric tape shows."""


class Part(Struct, frozen=True):
    """The finest part that a reading names: one of so many to a unit."""

    unit: str
    """'in', 'ft', 'mm', 'cm', 'm' or 'yd'."""
    unit_in: Fraction
    """Inches in one unit."""
    per: int
    """Parts in one unit."""
    decimals: int | None
    """Decimal places, where it was written so; None for a fraction."""
    assumed: bool
    """Whether the reading named no part, so that the usual one is taken."""

    @property
    def inches(self) -> Fraction:
        """Return the length of the part in inches."""
        return self.unit_in / self.per

    @property
    def text(self) -> str:
        """Return the part with its unit: '1/8 in', '0.01 in', '1 mm'."""
        return f'{self.number} {self.unit}'

    @property
    def number(self) -> str:
        """Return the part without its unit: '1/8', '0.01', '1'."""
        return self._of(1).text

    def nearest(self, inches: Exact | Rational) -> Figure:
        """Return a length in inches to the nearest part, in the unit of the reading; a half goes up."""
        in_units = exact(inches) / self.unit_in
        count = nearest(in_units, self.per)
        return Figure(count, self.per, self.unit, self._of(count), in_units)

    def _of(self, count: int) -> Parts:
        if self.decimals is None:
            return text.mixed_parts(count, self.per)
        return text.decimal_parts(count, self.decimals)


class Written(Struct, frozen=True):
    """A length that somebody read."""

    inches: Fraction
    part: Part

    @property
    def figure(self) -> Figure:
        """Return the reading in its own unit and part."""
        return self.part.nearest(self.inches)


def written(reading: str, place: Word) -> Written:
    """Return a reading with the finest part it names.

    Given:
        reading  a length as read_length takes it
        place    what to call it in an error

    Returned:
        the part is the one below the line of the last number (13 3/8: eighths), or its last decimal place
        (13.42: hundredths); a whole number of inches or feet names none and is taken to the sixteenth, one
        of meters or centimeters to the millimeter

    Errors:
        BookError if it is no length
    """
    read = read_length(reading, place)
    return Written(read.inches, _part(read.last, read.unit))


def half(part: Part) -> Fraction:
    """Return half of a part in inches: how far from its mark a right reading may be."""
    return part.inches / 2


def inches_text(inches: Fraction) -> str:
    """Return a short exact text of an allowance where there is one, else four decimals, with the unit."""
    exactly = (inches * 10**9).denominator == 1
    return f'{text.rational(inches) if exactly else text.decimal(nearest(inches, 10**4), 4)} {INCHES.unit}'


def _part(last: Number, unit: str) -> Part:
    unit_in = inches_in(unit)
    if last.places:
        return Part(unit, unit_in, 10**last.places, last.places, False)
    if last.below and unit == INCHES.unit:
        return Part(unit, unit_in, last.below, None, False)
    if unit in METRIC_PLACES:
        return Part(unit, unit_in, 10 ** METRIC_PLACES[unit], METRIC_PLACES[unit], unit != 'mm')
    return Part(INCHES.unit, Fraction(1), INCHES.part, None, True)
