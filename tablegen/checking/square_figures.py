"""The figures that a framing square's rafter table should carry."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry import cheeks, common, corner, seventeen
from tablegen.geometry.pitch import Pitch, pitch_of_rise
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
    exact: Callable[[Pitch], Exact]
    """in."""
    seventeen: Callable[[Pitch], Exact] | None
    """The same with 17 for √288; None where no hip's run takes part."""

    def figure(self, pitch: Pitch) -> Figure:
        """Return the figure as it should be engraved."""
        value = self.exact(pitch)
        return decimal_figure(value, 2) if self.per == HUNDREDTHS else length_figure(value, Measure(self.per))


COLUMNS = (
    Column('common', HUNDREDTHS, lambda one: common.line_length(INCHES.unit_run, one.slope), None),
    Column(
        'hip_valley',
        HUNDREDTHS,
        lambda one: corner.hip_length(INCHES.unit_run, one.corner),
        lambda one: seventeen.hip_length(INCHES.unit_run, one.slope),
    ),
    Column('jack_16', HUNDREDTHS, lambda one: corner.jack_difference(INCHES.spacing, one.corner), None),
    Column('jack_24', HUNDREDTHS, lambda one: corner.jack_difference(Fraction(24), one.corner), None),
    Column('jack_cheek', SIXTEENTHS, lambda one: cheeks.jack(one.corner).figure(), None),
    Column(
        'hip_cheek',
        SIXTEENTHS,
        lambda one: cheeks.hip_at_ridge(one.corner).figure(),
        lambda one: seventeen.cheek_figure(one.slope),
    ),
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
    return tuple(
        SquareRow(rise, tuple(one.figure(pitch_of_rise(Fraction(rise))) for one in COLUMNS)) for rise in rises
    )
