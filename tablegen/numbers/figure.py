"""Figures: an exact number rounded once, with its count and its finished text kept apart."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.numbers import text
from tablegen.numbers.angles import Angle, degrees_count
from tablegen.numbers.exact import Exact, Rational, exact, floor_of, nearest

INCH = 'in'
DEGREE = 'deg'
FOOT = 'ft'
RATIO = ''


@dataclass(frozen=True, slots=True)
class Figure:
    """One printed number."""

    count: int
    """Whole count of the smallest printed part."""
    per: int
    """Parts in one unit: 16 for sixteenths of an inch, 1000 for thousandths, 100 for hundredths."""
    unit: str
    """'in', 'deg', 'ft', or '' for a ratio."""
    text: str
    """What is printed; final."""


@dataclass(frozen=True, slots=True)
class Measure:
    """How a book's lengths are rounded and read."""

    per: int = 16
    """Smallest printed parts in an inch."""
    style: str = text.INCHES
    """'inches' or 'feet-inches'."""


def length_figure(inches: Exact | Rational, measure: Measure) -> Figure:
    """Return a length to the nearest smallest part, a half up."""
    count = nearest(inches, measure.per)
    return length_of_count(count, measure)


def length_rounded_down(inches: Exact | Rational, measure: Measure) -> Figure:
    """Return a length that is not to be passed, to the smallest part BELOW it: as printed it is never over the limit."""
    return length_of_count(floor_of(exact(inches), measure.per), measure)


def length_rounded_up(inches: Exact | Rational, measure: Measure) -> Figure:
    """Return a length that is not to be gone under, to the smallest part ABOVE it."""
    return length_of_count(-floor_of(-exact(inches), measure.per), measure)


def length_of_count(count: int, measure: Measure) -> Figure:
    """Return the figure of a length already counted in smallest parts."""
    return Figure(count, measure.per, INCH, text.length(count, measure.per, measure.style))


def decimal_figure(number: Exact | Rational, places: int, unit: str = INCH) -> Figure:
    """Return a number to so many decimals, a half up."""
    count = nearest(number, 10**places)
    return Figure(count, 10**places, unit, text.decimal(count, places))


def degree_figure(angle: Angle, places: int = 2) -> Figure:
    """Return an angle in degrees to so many decimals, with its sign."""
    count = degrees_count(angle, places)
    return Figure(count, 10**places, DEGREE, text.degrees(count, places))


def rounding_left(inches: Exact | Rational, figure: Figure) -> Exact:
    """Return the printed length less the exact one, in inches: what rounding has added."""
    return exact(Fraction(figure.count, figure.per)) - exact(inches)
