"""Rows for the book's opening on checking: gaps, diagonals, drift."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from tablegen.checking.amounts import PLACES, amount
from tablegen.checking.corner import BODY_IN, TurnOver, sine_of_excess, turn_over
from tablegen.checking.square_figures import RISES
from tablegen.checking.written import written
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.geometry.stepping import TONGUE_REACH, common_hold, drift, steps
from tablegen.messages import message
from tablegen.numbers.exact import root
from tablegen.numbers.figure import Figure, Measure, decimal_figure, length_figure
from tablegen.tables.table import Column, Kind, Table

GAPS = ('1/64', '1/32', '3/64', '1/16', '3/32', '1/8')
"""in, as a reader measures them."""
TURN_OVER_AT = Fraction(TONGUE_REACH)
"""Distance along the shorter arm at which the gap is measured, in."""
MARKS = ((12, 5), (12, 9), (16, 12), (15, 8), (20, 15), (24, 7), (24, 10), (12, 12), (24, 16))
"""Marks on the longer and the shorter arm, in; the first seven have whole diagonals."""
DIAGONAL_EXCESS = Fraction(1, 32)
"""in; the least that is surely seen on a tape with sixteenths (chosen here, no source)."""
STEP_COUNTS = (4, 8, 12, 16, 20, 24)


@dataclass(frozen=True, slots=True)
class DiagonalRow:
    """A diagonal between two marks of a framing square, outside edges, from the heel."""

    body_in: int
    tongue_in: int
    diagonal: Figure
    """Of a true square, to the smallest part."""
    exact: Figure
    """in."""
    whole: bool
    """Whether the exact diagonal is a whole number of inches."""
    error: Figure
    """Of the square over 24 in, when the diagonal is 1/32 in long."""


def turn_over_rows(gaps: Iterable[str] = GAPS, over_in: Fraction = TURN_OVER_AT) -> tuple[TurnOver, ...]:
    """Return a square's error for each gap of the turn-over test."""
    return tuple(turn_over(written(gap, 'gap'), over_in) for gap in gaps)


def diagonal_rows(measure: Measure, marks: Iterable[tuple[int, int]] = MARKS) -> tuple[DiagonalRow, ...]:
    """Return diagonals between a square's own marks that a tape can check."""
    rows = []
    for body, tongue in marks:
        true = root(body**2 + tongue**2)
        error = BODY_IN * sine_of_excess(true, DIAGONAL_EXCESS, Fraction(2 * body * tongue))
        figure = length_figure(true, measure)
        whole = true == figure.count // figure.per
        rows.append(DiagonalRow(body, tongue, figure, amount(true), whole, amount(error)))
    return tuple(rows)


def drift_table(measure: Measure, rises: Iterable[int] = RISES) -> Table[Pitch]:
    """Return how far off the last of several steps of a common is at each whole rise, each set to the smallest part."""

    def step(pitch: Pitch) -> Figure:
        return length_figure(common_hold(pitch.slope).step_in, measure)

    def after(count: int) -> Column[Pitch]:
        def off(pitch: Pitch) -> Figure:
            held = common_hold(pitch.slope)
            return decimal_figure(drift(steps(count * held.run_in, held), measure.per), PLACES)

        head, datum = message('square.steps', count=count), message('square.off')
        return Column(f'off_after_{count}_steps', head, off, datum, Kind.DECIMAL)

    return Table(
        'drift',
        'square',
        message('square.drift'),
        (
            Column('rise', message('square.rise'), lambda pitch: pitch, kind=Kind.PITCH),
            Column('step', message('square.step'), step, message('square.step_set')),
            *map(after, STEP_COUNTS),
        ),
        lambda: (pitch_of_rise(Fraction(rise)) for rise in rises),
    )
