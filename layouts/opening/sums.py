"""What an opening says of adding its figures up: how many sums come out a part off, counted over every run of the book."""

from __future__ import annotations

from fractions import Fraction

from layouts.grid.run_tables import PitchTables
from layouts.words.say import _
from tablegen.geometry import common
from tablegen.numbers import text
from tablegen.numbers.figure import length_figure
from tablegen.tables.opening_runs import OpeningRuns
from tablegen.tables.runs import SQUARES
from tablegen.tables.sums import Less, sums_of

NONE = Fraction(0)


def common_note(tables: PitchTables, runs: OpeningRuns) -> str:
    """Return what is said of sums of the common's lengths, and of what is left when the ridge is off."""
    off = tables.members.shortening.common_at_ridge.along
    return f'{_sums_note(tables, "common", runs, off.count)}.'


def hip_note(tables: PitchTables, runs: OpeningRuns) -> str:
    """Return the same of the hip's and valley's lengths, and of the points of jacks."""
    off = tables.members.shortening.hip_valley_at_ridge.along
    said, (far, sums) = _sums_note(tables, 'hip-valley', runs, off.count), jack_points(tables, runs)
    jacks = _('; jack points, {far} of {sums}').format(far=far, sums=sums)
    return f'{said}{jacks if sums else ""}.'


def _sums_note(tables: PitchTables, table: str, runs: OpeningRuns, taken: int) -> str:
    square, per = SQUARES[table](tables.pitch), tables.settings.measure.per
    feet = runs.feet[:-1] or runs.feet
    added = sums_of(square, [feet, runs.inches], per)
    with_parts = sums_of(square, [feet, runs.inches, runs.parts], per)
    ridge = Less(taken, tables.settings.ridge_thickness / 2)
    less = sums_of(square, [(NONE, *group) for group in (feet, runs.inches, runs.parts)], per, ridge)
    return _(
        'Feet + inches: {off} of {sums} sums are {part} off; with parts, {off_parts} of {sums_parts}. '
        'Less the ridge, {far} of {sums_less} are {two} off'
    ).format(
        part=text.mixed(1, per),
        off=added.off(),
        sums=added.count,
        off_parts=with_parts.off(),
        sums_parts=with_parts.count,
        far=less.off(1),
        sums_less=less.count,
        two=text.mixed(2, per),
    )


def jack_points(tables: PitchTables, runs: OpeningRuns) -> tuple[int, int]:
    """Return how many of a jack's long and short points come out over a part off, added up at every whole inch, and of how many.

    Notes:
        1. Its line length is the common's at its own run; off comes what stands for the hip; half of its own thickness,
           read as a run, is put on for the long point and taken off for the short one. None where that is no tabled run.
    """
    half, slope = tables.settings.rafter_thickness / 2, tables.members.side.slope
    if half not in (*runs.inches, *runs.parts):
        return 0, 0
    measure, hip = tables.members.side.boards.measure, tables.settings.hip_thickness
    points = length_figure(common.line_length(half, slope), measure).count
    off = tables.members.shortening.jack_at_hip.along.count
    lines = [(NONE, *group) for group in (runs.feet[:-1] or runs.feet, runs.inches)]
    long_and_short = [
        sums_of(
            SQUARES['common'](tables.pitch),
            lines,
            measure.per,
            Less(off + sign * points, sign * half, hip**2 / 2),
        )
        for sign in (-1, 1)
    ]
    return sum(one.off(1) for one in long_and_short), sum(one.count for one in long_and_short)
