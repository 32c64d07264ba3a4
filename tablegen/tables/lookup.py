"""Looking a run up as a reader of the book does: the tabled run below it, and what is added."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import Figure, length_of_count
from tablegen.settings import Settings
from tablegen.tables.opening_runs import opening_runs, reads_openings
from tablegen.tables.runs import coarse_part, part_runs, run_length


class Reading(Struct, frozen=True):
    """One figure read from a table."""

    run_in: Fraction
    figure: Figure
    added: bool
    """Whether it is read from the line of small runs to add."""


class Found(Struct, frozen=True):
    """A length found in the book's tables."""

    table: str
    run_in: Fraction
    readings: tuple[Reading, ...]
    total: Figure
    """Sum of the readings."""
    direct: Figure
    """The exact length, rounded once; the total of two or three readings may be off by one part, of four by two."""


def addends(run_in: Fraction, settings: Settings) -> list[Fraction] | None:
    """Return the runs whose figures add up to a run, longest first, or None if the book cannot reach it.

    Notes:
        1. They are a tabled run, then from the lines of small runs at most one whole number of inches, one of
           rows.coarse_part and one of what is finer than that.
    """
    if reads_openings(settings):
        return opening_runs(settings).addends(run_in)
    runs, coarse = settings.runs, coarse_part(settings.measure.per)
    small = set(part_runs(runs, settings.measure.per))
    tabled = None
    longest = runs.first + (runs.count() - 1) * runs.step  # the last on the grid; runs.last may lie past it
    if runs.first <= run_in <= longest + runs.step:
        tabled = min(longest, runs.first + (run_in - runs.first) // runs.step * runs.step)
    left = run_in - (tabled or 0)
    parts = [left - left % 1, left % 1 - left % coarse, left % coarse]
    wanted = [part for part in parts if part]
    if any(part not in small for part in wanted):
        return None
    return ([tabled] if tabled else []) + wanted


def look_up(table: str, run_in: Fraction, pitch: Pitch, settings: Settings) -> Found | None:
    """Return a run's length as the book's table gives it, or None if it cannot be had there.

    Given:
        table   'common', 'hip-valley' or 'rise'
        run_in  level run of the common rafter, in
    """
    wanted = addends(run_in, settings)
    if wanted is None:
        return None
    tabled, openings = set_of_tabled(settings, wanted), reads_openings(settings)
    readings = tuple(
        Reading(
            run,
            run_length(table, run, pitch, settings.measure),
            run not in tabled or (place > 0 and not openings),
        )
        for place, run in enumerate(wanted)
    )
    total = length_of_count(sum(reading.figure.count for reading in readings), settings.measure)
    return Found(table, run_in, readings, total, run_length(table, run_in, pitch, settings.measure))


def set_of_tabled(settings: Settings, runs: list[Fraction]) -> set[Fraction]:
    """Return those of some runs that stand in the main tables."""
    if reads_openings(settings):
        return set(runs)
    first, last, step = settings.runs.first, settings.runs.last, settings.runs.step
    return {run for run in runs if first <= run <= last and (run - first) % step == 0}
