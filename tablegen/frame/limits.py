"""How a size's limit is told to who asked for more or less than can be framed."""

from __future__ import annotations

from fractions import Fraction

from tablegen.frame.asked import Asked
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, floor_of


def greatest(inches: Exact, asked: Asked) -> str:
    """Return a greatest length in its unit, rounded down, so that what is told can be framed."""
    per = asked.measure.per
    return text.in_units(Fraction(floor_of(inches, per), per))


def least(inches: Exact, asked: Asked) -> str:
    """Return a least length in its unit, rounded up."""
    per = asked.measure.per
    return text.in_units(Fraction(-floor_of(-inches, per), per))
