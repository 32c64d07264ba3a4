"""Figures of an answer by their unit, and how lengths that may be missing, or were given, become figures."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from msgspec import Struct

from tablegen.numbers import text
from tablegen.numbers.exact import Exact, sign
from tablegen.numbers.figure import (
    DEGREE,
    INCH,
    RATIO,
    Figure,
    Measure,
    decimal_figure,
    length_figure,
)
from tablegen.roof.names import Why

Length = Annotated[Figure, INCH]
Degrees = Annotated[Figure, DEGREE]
Ratio = Annotated[Figure, RATIO]
RATIO_PLACES = 3
READ_PLACES = 6
"""Decimals of an inch that a person is shown where no tape shows a length."""
FINEST_PER = 64
"""Parts of an inch that the finest tape shows."""


class TwoWays(Struct, frozen=True):
    """One distance between two plumb lines, measured two ways."""

    level: Length
    """In plan, in the member's own direction."""
    along: Length
    """Along its top edge."""


class PlumbLevel(Struct, frozen=True):
    """The two cuts of a member, which are square to each other: on its side, from the line square across it."""

    plumb: Degrees
    level: Degrees


def board(inches: Exact, measure: Measure) -> Figure | Why:
    """Return a board's length; where nothing is left of it, that there is none."""
    return length_figure(inches, measure) if sign(inches) > 0 else Why.NOTHING_LEFT


def given(inches: Fraction) -> Figure:
    """Return a length that was asked for, which nothing rounds; decimals stand for it where no tape shows it."""
    if text.is_metric(inches):
        return decimal_figure(inches, RATIO_PLACES)
    places = next((n for n in range(1, READ_PLACES + 1) if 10**n % inches.denominator == 0), 0)
    on_a_tape = inches.denominator <= FINEST_PER
    if on_a_tape and (not places or FINEST_PER % inches.denominator == 0):
        return length_figure(inches, Measure(inches.denominator))
    return decimal_figure(inches, places or READ_PLACES)


def ratio(number: Exact) -> Figure:
    """Return a number without a unit."""
    return decimal_figure(number, RATIO_PLACES, RATIO)


def size(x: Exact) -> Exact:
    """Return a number without its sign."""
    return -x if sign(x) < 0 else x
