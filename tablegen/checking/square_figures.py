"""The figures that a framing square's rafter table should carry."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from fractions import Fraction

from tablegen.checking.members import seventeen_cheek, seventeen_length
from tablegen.geometry import common, hip, jacks
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.geometry.stepping import SQUARE
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, Measure, decimal_figure, length_figure
from tablegen.numbers.units import INCHES

HUNDREDTHS, SIXTEENTHS = 100, SQUARE.per
RISES = range(1, 25)
"""Rises, in per foot of run, that the book has figures for."""
USUAL_RISES = range(2, 19)
"""Rises that squares usually carry (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Column:
    """One line of a square's table."""

    key: str
    per: int
    """Smallest part in an inch that is engraved: 100 or 16."""
    exact: Callable[[Exact], Exact]
    """Of the slope, in inches."""
    seventeen: Callable[[Exact], Exact] | None
    """The same with 17 for √288; None where no hip's run takes part."""

    def figure(self, slope: Exact) -> Figure:
        """Return the figure as it should be engraved."""
        value = self.exact(slope)
        return decimal_figure(value, 2) if self.per == HUNDREDTHS else length_figure(value, Measure(self.per))


COLUMNS = (
    Column('common', HUNDREDTHS, lambda slope: common.line_length(INCHES.unit_run, slope), None),
    Column(
        'hip_valley',
        HUNDREDTHS,
        lambda slope: hip.line_length(INCHES.unit_run, slope),
        lambda slope: seventeen_length(INCHES.unit_run, slope),
    ),
    Column('jack_16', HUNDREDTHS, lambda slope: jacks.difference(INCHES.spacing, slope), None),
    Column('jack_24', HUNDREDTHS, lambda slope: jacks.difference(Fraction(24), slope), None),
    Column('jack_cheek', SIXTEENTHS, jacks.cheek_figure, None),
    Column('hip_cheek', SIXTEENTHS, hip.cheek_figure, seventeen_cheek),
)
"""Unit lengths per foot of common run, differences of jacks at 16 and 24 in on center, cheeks against 12."""
KEYS = tuple(column.key for column in COLUMNS)


@dataclass(frozen=True, slots=True)
class SquareRow:
    """The figures under one rise."""

    rise: int
    """in per foot of run."""
    figures: tuple[Figure, ...]
    """In the order of COLUMNS."""


def engraved_rows(rises: Iterable[int] = RISES) -> tuple[SquareRow, ...]:
    """Return what a square should carry under each whole rise."""
    return tuple(SquareRow(rise, tuple(one.figure(slope_of_rise(rise)) for one in COLUMNS)) for rise in rises)


def slope_of_rise(rise: int) -> Exact:
    """Return the slope of a whole rise per foot of run."""
    return pitch_of_rise(Fraction(rise)).slope
