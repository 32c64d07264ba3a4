"""Tables on the square and on stepping: gaps, diagonals, drift."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from typing import Any

from msgspec import Struct

from tablegen.checking.amounts import amount
from tablegen.checking.corner import BODY_IN, TurnOver, sine_of_excess, turn_over
from tablegen.checking.square_figures import GROUP, RISES, engraved_table
from tablegen.checking.written import written
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.geometry.stepping import TONGUE_REACH, common_hold, drift
from tablegen.messages import message
from tablegen.numbers.exact import Exact, root
from tablegen.numbers.figure import DEGREE, Figure, Measure, length_figure
from tablegen.tables.table import Column, Kind, Table

GAPS = ('1/64', '1/32', '3/64', '1/16', '3/32', '1/8')
"""in, as a reader measures them."""
TURN_OVER_AT = Fraction(TONGUE_REACH)
"""Distance along the shorter arm at which the gap is measured, in."""
MARKS = ((12, 5), (12, 9), (16, 12), (15, 8), (20, 15), (24, 7), (24, 10), (12, 12), (24, 16))
"""Marks on the longer and the shorter arm, in; the first seven have whole diagonals."""
DIAGONAL_EXCESS = Fraction(1, 32)
"""in; the least that is surely seen on a tape with sixteenths (chosen here, no source)."""
DIAGONAL_PER = 32
"""Parts of an inch for diagonals, at least: with sixteenths their rounding would hide the error looked for."""
STEP_COUNTS = (4, 8, 12, 16, 20, 24)


Arms = tuple[int, int]
"""Marks on the body and the tongue of a framing square, outside edges, in from the heel."""


def square_tables(measure: Measure) -> list[Table[Any]]:
    """Return every table on the square and on stepping, its lengths to a part of an inch."""
    return [engraved_table(), drift_table(measure), turned_over_table(), mark_to_mark_table(measure)]


def turned_over_table() -> Table[TurnOver]:
    """Return a square's error for each gap of the turn-over test."""
    return Table(
        'turned-over',
        GROUP,
        message('square.turned_over'),
        (
            Column('gap', message('square.gap'), lambda it: it.gap.figure, message('square.gap_at')),
            Column('out', message('square.out'), lambda it: it.out, None, Kind.DEGREES, DEGREE),
            Column('out_in_24_in', message('square.in_24_in'), lambda it: it.over_body, None, Kind.DECIMAL),
            Column('out_in_12_ft', message('square.in_12_ft'), lambda it: it.over_wall, None, Kind.DECIMAL),
        ),
        lambda: (turn_over(written(gap, 'gap'), TURN_OVER_AT) for gap in GAPS),
        datum=message('square.own_error'),
    )


def mark_to_mark_table(measure: Measure) -> Table[Arms]:
    """Return diagonals between a square's own marks that a tape can check."""
    fine = diagonal_measure(measure)

    def true(arms: Arms) -> Exact:
        return root(arms[0] ** 2 + arms[1] ** 2)

    def out(arms: Arms) -> Figure:
        return amount(BODY_IN * sine_of_excess(true(arms), DIAGONAL_EXCESS, Fraction(2 * arms[0] * arms[1])))

    return Table(
        'mark-to-mark',
        GROUP,
        message('square.mark_to_mark'),
        (
            Column('body', message('square.body'), lambda arms: arms[0], kind=Kind.COUNT),
            Column('tongue', message('square.tongue'), lambda arms: arms[1], kind=Kind.COUNT),
            Column('diagonal', message('square.must_measure'), lambda arms: length_figure(true(arms), fine)),
            Column(
                'out_in_24_in', message('square.long_by', excess=DIAGONAL_EXCESS), out, None, Kind.DECIMAL
            ),
        ),
        lambda: MARKS,
        2,
        datum=message('square.outside_edges'),
    )


def diagonal_measure(measure: Measure) -> Measure:
    """Return how diagonals between marks are read: no coarser than shows the error looked for."""
    return Measure(max(measure.per, DIAGONAL_PER))


class Step(Struct, frozen=True):
    """One step of a common at one pitch."""

    pitch: Pitch
    step_in: Exact
    """Along the top edge."""


def drift_table(measure: Measure, rises: Iterable[int] = RISES) -> Table[Step]:
    """Return how far off the last of several steps of a common is at each whole rise, each set to the smallest part."""

    def after(count: int) -> Column[Step]:
        def off(it: Step) -> Figure:
            return amount(drift(count, it.step_in, measure.per))

        head, datum = message('square.steps', count=count), message('square.off')
        return Column(f'off_after_{count}_steps', head, off, datum, Kind.DECIMAL)

    return Table(
        'drift',
        GROUP,
        message('square.drift'),
        (
            Column('rise', message('square.rise'), lambda it: it.pitch, kind=Kind.PITCH),
            Column(
                'step',
                message('square.step'),
                lambda it: length_figure(it.step_in, measure),
                message('square.step_set'),
            ),
            *map(after, STEP_COUNTS),
        ),
        lambda: (
            Step(one, common_hold(one.slope).step_in) for one in map(pitch_of_rise, map(Fraction, rises))
        ),
    )
