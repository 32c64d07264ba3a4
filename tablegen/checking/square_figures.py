"""The figures that a framing square's rafter table should carry."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from fractions import Fraction

from msgspec import Struct

from tablegen.geometry import cheeks, common, corner, seventeen
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.geometry.stepping import SQUARE
from tablegen.messages import message
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, Measure, decimal_figure, length_figure
from tablegen.numbers.units import INCHES
from tablegen.tables.table import Column, Kind, Table

GROUP = 'square'
"""The part of a book that its tables stand in."""
HUNDREDTHS, SIXTEENTHS = 100, SQUARE.per
RISES = range(1, 25)
"""Rises, in per foot of run, that the book has figures for."""
USUAL_RISES = range(2, 19)
"""Rises that squares usually carry (common practice, no source)."""


class Line(Struct, frozen=True):
    """One line of a square's table."""

    key: str
    datum: str
    """Name of the words that say what it is of, and on which face."""
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


LINES = (
    Line('common', 'per_foot', HUNDREDTHS, lambda one: common.line_length(INCHES.unit_run, one.slope), None),
    Line(
        'hip_valley',
        'per_foot',
        HUNDREDTHS,
        lambda one: corner.hip_length(INCHES.unit_run, one.corner),
        lambda one: seventeen.hip_length(INCHES.unit_run, one.slope),
    ),
    Line(
        'jack_16', 'jacks', HUNDREDTHS, lambda one: corner.jack_difference(INCHES.spacing, one.corner), None
    ),
    Line('jack_24', 'jacks', HUNDREDTHS, lambda one: corner.jack_difference(Fraction(24), one.corner), None),
    Line('jack_cheek', 'cheek', SIXTEENTHS, lambda one: cheeks.jack(one.corner).figure(), None),
    Line(
        'hip_cheek',
        'cheek',
        SIXTEENTHS,
        lambda one: cheeks.hip_at_ridge(one.corner).figure(),
        lambda one: seventeen.cheek_figure(one.slope),
    ),
)
"""Unit lengths per foot of common run, differences of jacks at 16 and 24 in on center, cheeks against 12."""
KEYS = tuple(line.key for line in LINES)


def engraved_table(rises: Sequence[int] = RISES) -> Table[int]:
    """Return what a square should carry under each whole rise."""
    columns = (Column('rise', message('square.rise'), _rise, kind=Kind.COUNT), *map(_column, LINES))
    return Table('engraved', GROUP, message('square.engraved'), columns, lambda: rises)


def _rise(rise: int) -> int:
    return rise


def _column(line: Line) -> Column[int]:
    def cell(rise: int) -> Figure:
        return line.figure(pitch_of_rise(Fraction(rise)))

    kind = Kind.DECIMAL if line.per == HUNDREDTHS else Kind.LENGTH
    return Column(line.key, message(f'square.{line.key}'), cell, message(f'square.{line.datum}'), kind)
