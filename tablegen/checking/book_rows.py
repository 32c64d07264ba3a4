"""Rows for the book's opening on checking: gaps, diagonals, drift."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from tablegen.checking.amounts import Amount, amount
from tablegen.checking.corner import BODY_IN, TurnOver, sine_of_excess, turn_over
from tablegen.checking.steps import drift_row
from tablegen.checking.written import written
from tablegen.geometry.pitch import Pitch
from tablegen.geometry.stepping import common_hold, hip_hold
from tablegen.numbers.exact import root
from tablegen.numbers.figure import Figure, Measure, length_figure

GAPS = ('1/64', '1/32', '3/64', '1/16', '3/32', '1/8')
"""in, as a reader measures them."""
TURN_OVER_AT = Fraction(16)
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
    exact: Amount
    """in."""
    whole: bool
    """Whether the exact diagonal is a whole number of inches."""
    error: Amount
    """Of the square over 24 in, when the diagonal is 1/32 in long."""


@dataclass(frozen=True, slots=True)
class DriftRow:
    """How far stepping drifts at one pitch, each step set to the smallest part."""

    pitch: Pitch
    step: Figure
    """What a step of the common is set to, in; past 16 in 12 it is of 6 in of run."""
    common: tuple[Amount, ...]
    """in, a cell a step count; above 0 is long."""
    hip_step: Figure
    hip_valley: tuple[Amount, ...]


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


def drift_rows(
    pitches: Iterable[Pitch], measure: Measure, counts: Iterable[int] = STEP_COUNTS
) -> tuple[DriftRow, ...]:
    """Return the drift at each pitch for each number of steps."""
    counts = tuple(counts)
    return tuple(
        DriftRow(
            pitch,
            length_figure(common_hold(pitch.slope).step_in, measure),
            drift_row('common', pitch, counts, measure),
            length_figure(hip_hold(pitch.corner).step_in, measure),
            drift_row('hip-valley', pitch, counts, measure),
        )
        for pitch in pitches
    )
