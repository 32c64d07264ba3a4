"""Amounts: what a tool is off by, in decimals that are to be read."""

from __future__ import annotations

from tablegen.numbers.exact import Exact, Rational
from tablegen.numbers.figure import Figure, decimal_figure

PLACES = 3


def amount(inches: Exact | Rational) -> Figure:
    """Return inches to thousandths, with their sign."""
    return decimal_figure(inches, PLACES)
