"""How the tables of runs lie on pages, feet down and inches across: the same at every pitch of a book."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from functools import cached_property
from itertools import pairwise

from msgspec import Struct

from layouts.grid import small_runs
from layouts.grid.figures import fitted
from layouts.grid.fitting import RUNS, SIZES, Fit
from layouts.paper.trim import Trim, mixed_em
from tablegen.geometry import corner
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import Runs, Settings
from tablegen.tables.runs import offsets_of_foot

FEWEST_IN_A_GRID = 3
"""Runs to a foot below which feet and inches make a worse table than a list."""


class Share(Struct, frozen=True):
    """What stands on one page of a table."""

    feet: range
    cut: Sequence[Fraction]
    """Inches past a whole foot."""
    rows: tuple[tuple[Fraction | None, ...], ...]
    """The runs of each foot, None for one that the book has not."""
    small: Sequence[Fraction]
    """Runs to add."""
    in_a_line: int
    """How many of them stand in a line."""


class RunGrid:
    """The pages of a table of runs."""

    def __init__(self, settings: Settings, trim: Trim):
        self.settings, self.trim, self.offsets = settings, trim, grid_offsets(settings)

    @cached_property
    def laid(self) -> Fit:
        settings, numbers = self.settings, map(text.rational, self.offsets)
        greatest = corner.hip_length(settings.runs.last, settings.pitches[-1].corner)
        least = max(map(mixed_em, numbers)) * SIZES[0] + RUNS.gaps[0]
        return fitted(greatest, small_runs.LABEL, len(self.offsets), settings, self.trim, least)

    @cached_property
    def cuts(self) -> list[Sequence[Fraction]]:
        """The inches that stand on pages side by side.

        Notes:
            1. More than one page is an even number, so that every opening is of one table and has all small runs to add.
        """
        pages = -(-len(self.offsets) // self.laid.columns)
        pages += pages % 2 if pages > 1 else 0
        bounds = [-(-len(self.offsets) * place // pages) for place in range(pages + 1)]
        return [self.offsets[first:last] for first, last in pairwise(bounds)]

    @cached_property
    def shares(self) -> list[Share]:
        """What stands on every page, in order."""
        settings, trim, runs = self.settings, self.trim, self.settings.runs
        feet = range(int(runs.first // INCHES.group), int(runs.last // INCHES.group) + 1)
        turns = small_runs.turns(settings, trim, len(self.cuts))
        lies = [small_runs.lie(turn, settings, trim) for turn in turns]
        bands = _bands(feet, trim.rows - small_runs.rows_taken(lies))
        pages = [(band, cut) for band in bands for cut in self.cuts]
        return [
            Share(
                band,
                cut,
                tuple(tuple(_tabled(runs, foot, cut)) for foot in band),
                turns[place % len(turns)],
                lies[place % len(turns)].columns,
            )
            for place, (band, cut) in enumerate(pages)
        ]

    def places_of(self, run_in: Fraction) -> list[int]:
        """Return on which pages, from 0, a run stands: one, or all that have a small run."""
        tabled = [
            place for place, share in enumerate(self.shares) if any(run_in in row for row in share.rows)
        ]
        return tabled or [place for place, share in enumerate(self.shares) if run_in in share.small]


_last: list[RunGrid] = []


def run_grid(settings: Settings, trim: Trim) -> RunGrid:
    """Return how a book's tables of runs lie: worked out once for the very settings that all its pages are made from."""
    if not _last or _last[0].settings is not settings or _last[0].trim != trim:
        _last[:] = [RunGrid(settings, trim)]
    return _last[0]


def grid_offsets(settings: Settings) -> Sequence[Fraction]:
    """Return the inches past a whole foot at which runs fall, none where they make a list."""
    offsets = offsets_of_foot(settings.runs) or ()
    return offsets if len(offsets) >= FEWEST_IN_A_GRID else ()


def _bands(feet: range, rows: int) -> list[range]:
    """Return feet cut into pages, at whole groups of six where there is more than one page."""
    if len(feet) <= rows:
        return [feet]
    step = rows - rows % 6
    return [feet[at : at + step] for at in range(0, len(feet), step)]


def _tabled(runs: Runs, foot: int, cut: Sequence[Fraction]) -> Iterator[Fraction | None]:
    """Return a foot's runs at some inches past it, None for one that the book has not."""
    for inches in cut:
        run = foot * INCHES.group + inches
        has = runs.first <= run <= runs.last and (run - runs.first) % runs.step == 0
        yield run if has else None
