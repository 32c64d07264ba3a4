"""How the reference tables finish their numbers: lengths to the smallest part, angles to hundredths."""

from __future__ import annotations

from tablegen.numbers import text
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, Rational
from tablegen.numbers.figure import (
    Figure,
    Measure,
    decimal_figure,
    degree_figure,
    length_figure,
)
from tablegen.settings import Settings

DEGREE_PLACES = 2
UNIT_PLACES = 3


def mark(inches: Exact | Rational, settings: Settings) -> Figure:
    """Return a length of less than a foot or so, to the smallest part, always in plain inches."""
    return length_figure(inches, Measure(settings.measure.per, text.INCHES))


def unit(inches: Exact | Rational) -> Figure:
    """Return a length per foot of run, or a factor, to thousandths."""
    return decimal_figure(inches, UNIT_PLACES)


def deg(angle: Angle) -> Figure:
    """Return an angle to hundredths of a degree."""
    return degree_figure(angle, DEGREE_PLACES)
