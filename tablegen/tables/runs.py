"""The tables of runs: common rafter, hip or valley and rise over every run of a pitch, and the small runs added to them."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from fractions import Fraction
from functools import cache

from msgspec import Struct

from tablegen.geometry import common
from tablegen.geometry.pitch import Pitch
from tablegen.messages import Message, message
from tablegen.numbers import text
from tablegen.numbers.figure import Figure, Measure, length_of_root
from tablegen.numbers.units import INCHES
from tablegen.settings import Runs, Settings
from tablegen.tables.columns import Make
from tablegen.tables.table import Column, Table

RUNS = 'runs'
"""Name of the table, in data."""
SQUARES: dict[str, Callable[[Pitch], Fraction]] = {
    'common': lambda pitch: common.line_length_squared(pitch.slope),
    'hip-valley': lambda pitch: pitch.corner.hip_length_squared,
    'rise': lambda pitch: pitch.slope.squared(),
}
"""Of each table, by its name among a book's parts: the square of a length over one inch of run."""
KEYS = {'common': 'common', 'hip-valley': 'hip_valley', 'rise': 'rise'}
"""The column of each in the table of runs."""
STUBS = 2
"""Columns that name a row: pitch and run."""


class Run(Struct, frozen=True):
    """One run at one pitch."""

    pitch: Pitch
    run_in: Fraction
    """Level run of the common rafter, in."""
    squares: dict[str, Fraction]
    """SQUARES at this pitch."""


def run_table(
    settings: Settings, pitches: Iterable[Pitch] | None = None, runs: Iterable[Fraction] | None = None
) -> Table[Run]:
    """Return the table of runs, its rows made one at a time.

    Given:
        pitches, runs  where they are not the book's
    """
    make, measure = Make[Run](settings), settings.measure

    def subjects() -> Iterator[Run]:
        for pitch in settings.pitches if pitches is None else pitches:
            squares = {name: square(pitch) for name, square in SQUARES.items()}
            for run_in in settings.runs if runs is None else runs:
                yield Run(pitch, run_in, squares)

    def length(name: str) -> Column[Run]:
        def cell(it: Run) -> Figure:
            return length_of_root(it.squares[name], measure, it.run_in)

        return Column(KEYS[name], head_of(name), cell, message(f'datum.{KEYS[name]}'))

    columns = (
        make.pitch(lambda it: it.pitch),
        make.given('run', lambda it: it.run_in),
        *map(length, SQUARES),
    )
    return Table(RUNS, RUNS, message('table.runs'), columns, subjects, STUBS)


def head_of(table: str) -> Message:
    """Return the head of the column of one of the lengths: 'common', 'hip-valley' or 'rise'."""
    return message(f'head.{KEYS[table]}')


def run_length(table: str, run_in: Fraction, pitch: Pitch, measure: Measure) -> Figure:
    """Return the length of a run, rounded once.

    Given:
        table   'common', 'hip-valley' or 'rise'
        run_in  level run of the common rafter, in
    """
    return run_lengths(table, [run_in], pitch, measure)[0]


def run_lengths(table: str, runs: Iterable[Fraction], pitch: Pitch, measure: Measure) -> list[Figure]:
    """Return the lengths of several runs, each rounded once; see run_length."""
    square = SQUARES[table](pitch)
    return [length_of_root(square, measure, run_in) for run_in in runs]


def part_runs(runs: Runs, per: int) -> list[Fraction]:
    """Return the small runs to add to a tabled run so that any run to the book's smallest part can be had.

    Given:
        per  smallest printed parts in an inch

    Returned:
        inches, below the step of the runs: the parts below coarse_part, the coarse parts below an inch, then whole
        inches; a reader adds at most one of each kind

    Notes:
        1. Sixteenths at least, whatever the book rounds to. A 1/32 book has one thirty-second beside them; a 1/64
           book has eighths and seven sixty-fourths, fourteen in all, since 63 would leave no room for the table.
    """
    coarse, least = coarse_part(per), Fraction(1, max(per, INCHES.part))
    fine = [least * n for n in range(1, int(coarse / least))]
    parts = (
        fine + [coarse * n for n in range(1, int(1 / coarse))] + [Fraction(n) for n in range(1, INCHES.group)]
    )
    return [part for part in parts if part < runs.step]


def coarse_part(per: int) -> Fraction:
    """Return of which parts of an inch a reader adds one first: sixteenths, or eighths in a 1/64 book."""
    return Fraction(1, 8) if per == 64 else Fraction(1, INCHES.part)


@cache
def offsets_of_foot(runs: Runs) -> tuple[Fraction, ...] | None:
    """Return the inches past a whole foot at which runs fall, or None where feet and inches make no grid.

    Notes:
        1. Runs given in metric make a list: their inches, such as 50/127, are heads that nobody finds on a tape.
    """
    if (INCHES.group / runs.step).denominator != 1 or any(map(text.is_metric, (runs.first, runs.step))):
        return None
    return tuple(sorted({run % INCHES.group for run in runs}))


def cells_of_foot(
    figures: dict[Fraction, Figure], feet: int, offsets: Sequence[Fraction]
) -> list[Figure | None]:
    """Return the figures of one foot's runs at some offsets in inches; None where the table has none."""
    return [figures.get(INCHES.group * feet + offset) for offset in offsets]
