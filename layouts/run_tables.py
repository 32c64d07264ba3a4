"""The tables of runs at one pitch: grids of feet and inches, or lists where the step makes no grid."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from layouts.grids import Grid, cells_of_foot, fit, grid, head_width
from layouts.trim import Trim, mixed_em
from layouts.words import WORDS
from tablegen import text
from tablegen.exact import nearest
from tablegen.geometry import common, hip
from tablegen.pitch import Pitch
from tablegen.rows import JackRow, PitchValues, RunRow, jack_rows, part_runs, pitch_values, run_rows
from tablegen.settings import Settings

FEET_LABEL, RUN_LABEL = 17.0, 60.5
"""Widths of the columns that name a row, in units."""
HEAD_SIZES, LEAST_HEAD_SIZE = ((2, 2.9), (5, 2.0), (7, 1.6), (9, 1.2)), 0.9
"""Letters of a pitch's name, at most, and the size in rem at which they have room."""
FIELD = {'common': 'common', 'hip-valley': 'hip_valley', 'rise': 'rise'}
WIDEST_ADDITION, MOST_IN_A_LINE, ROWS_OF_A_LINE = 34.0, 8, 2
"""Width of a small run's column in units; how many stand in a line; rows that each further line takes."""
ADDITION_SIZE, ADDITION_GAP = 8.0, 2.0
"""Size of their type, as the style sheet sets it, and what is free between them, in units."""


@dataclass(frozen=True, slots=True)
class Head:
    """The head of a pitch's page."""

    pitch: str
    """The big figure: '6', '7 1/2', '30°'."""
    unit: str
    """'in 12', or '' for a pitch in degrees."""
    size: float
    """Of the big figure, in rem: a longer name is set smaller."""


@dataclass(frozen=True, slots=True)
class Additions:
    """A line of small runs above a line of what each adds, at tab stops."""

    names: str
    figures: str
    column: float
    """Width of a column, in rem."""


@dataclass(frozen=True, slots=True)
class GridPage:
    """One page of a table of runs."""

    head: Head
    table: str
    """'common', 'hip-valley' or 'rise': its words are the template's."""
    values: PitchValues
    grid: Grid
    additions: tuple[Additions, ...]
    """Small runs and what each adds, this page's share of them."""
    last_of_table: bool


@dataclass(frozen=True, slots=True)
class ListPage:
    """One page of runs in a list, for steps that make no grid of feet and inches."""

    head: Head
    values: PitchValues
    grid: Grid
    added: bool
    """Whether these are small runs, to add to a run of the list."""


class PitchTables:
    """The rows of one pitch, computed once when its first page is made."""

    def __init__(self, pitch: Pitch, settings: Settings, trim: Trim):
        self.pitch, self.settings, self.trim = pitch, settings, trim

    @cached_property
    def values(self) -> PitchValues:
        return pitch_values(self.pitch, self.settings)

    @cached_property
    def rows(self) -> list[RunRow]:
        return list(run_rows(self.pitch, self.settings.runs, self.settings.measure))

    @cached_property
    def jacks(self) -> list[JackRow]:
        return jack_rows(self.pitch, self.settings)

    @cached_property
    def head(self) -> Head:
        unit = '' if self.pitch.short.endswith('°') else 'in 12'
        return Head(
            self.pitch.short,
            unit,
            next((size for most, size in HEAD_SIZES if len(self.pitch.short) <= most), LEAST_HEAD_SIZE),
        )


def grid_columns(settings: Settings, trim: Trim, offsets: Sequence[Fraction]) -> tuple:
    """Return how one table's columns fit the page, the same at every pitch, and how many to a page."""
    measure, steepest = settings.measure, settings.pitches[-1]
    greatest = max(
        nearest(hip.line_length(settings.runs.last, steepest.slope), measure.per),
        nearest(common.rise(settings.runs.last, steepest.slope), measure.per),
    )
    least = head_width([text.rational(offset) for offset in offsets])
    fitted = fit(trim, measure, greatest, FEET_LABEL, len(offsets), least)
    pages = -(-len(offsets) // fitted.columns)
    return fitted, -(-len(offsets) // pages)


def page_shares(
    settings: Settings, trim: Trim, offsets: Sequence[Fraction]
) -> list[tuple[range, Sequence[Fraction]]]:
    """Return the feet and the inches past them of every page of a table, in order."""
    runs = settings.runs
    _, columns = grid_columns(settings, trim, offsets)
    feet = range(int(runs.first // 12), int(runs.last // 12) + 1)
    cuts = [offsets[at : at + columns] for at in range(0, len(offsets), columns)]
    lines = -(-_share(settings, len(cuts)) // _in_a_line(settings, trim))
    bands = _bands(feet, trim.rows - ROWS_OF_A_LINE * max(0, lines - 1))
    return [(band, cut) for band in bands for cut in cuts]


def grid_pages(tables: PitchTables, name: str, offsets: Sequence[Fraction]) -> list[tuple]:
    """Return template and maker of every page of one table, feet down and inches across."""
    fitted, columns = grid_columns(tables.settings, tables.trim, offsets)
    shares = page_shares(tables.settings, tables.trim, offsets)
    cuts = -(-len(offsets) // columns)
    return [
        ('grid', _grid_maker(tables, name, fitted, band, cut, place, cuts, place == len(shares) - 1))
        for place, (band, cut) in enumerate(shares)
    ]


def _share(settings: Settings, cuts: int) -> int:
    """Return how many small runs stand on a page: two facing pages of a table have them all."""
    return -(-len(part_runs(settings.runs)) // min(cuts, 2))


def _bands(feet: range, rows: int) -> list[range]:
    """Return feet cut into pages, at whole groups of six where there is more than one page."""
    if len(feet) <= rows:
        return [feet]
    step = rows - rows % 6
    return [feet[at : at + step] for at in range(0, len(feet), step)]


def _grid_maker(tables, name, fitted, band, cut, place, cuts, last):
    def make(index) -> GridPage:
        figures = {row.run_in: getattr(row, FIELD[name]) for row in tables.rows}
        rows = [(str(feet), cells_of_foot(figures, feet, cut)) for feet in band]
        whole = all(offset.denominator == 1 for offset in cut)
        unit = ' in' if whole else ''  # beside a fraction there is no room for it
        heads = [text.rational(offset) + unit for offset in cut]
        group = 6 - band[0] % 6
        page = grid(rows, heads, 'ft', fitted, FEET_LABEL, tables.trim, group)
        share = _share(tables.settings, cuts)
        turn = place % min(cuts, 2)
        mine = _additions(tables, name)[turn * share : (turn + 1) * share]
        return GridPage(tables.head, name, tables.values, page, _lines(mine, tables), last)

    return make


def _in_a_line(settings: Settings, trim: Trim) -> int:
    """Return how many small runs stand in a line, the same at every pitch: a wider figure than its column
    would push the next one under another run."""
    steepest = settings.pitches[-1]
    figures = [row.hip_valley.text for row in run_rows(steepest, part_runs(settings.runs), settings.measure)]
    widest = max(map(mixed_em, figures), default=0) * ADDITION_SIZE + ADDITION_GAP
    return min(MOST_IN_A_LINE, int(trim.text_width / widest) - 1)


def _lines(additions: list[tuple[str, str]], tables: PitchTables) -> tuple[Additions, ...]:
    """Return small runs and what they add, in lines."""
    trim = tables.trim
    count = min(len(additions), _in_a_line(tables.settings, trim))
    column = min(trim.text_width / (count + 1), WIDEST_ADDITION) / 10
    cuts = [additions[at : at + count] for at in range(0, len(additions), count)] if count else []
    return tuple(
        Additions(
            '\t'.join(name for name, _ in cut), '\t'.join(figure for _, figure in cut), round(column, 4)
        )
        for cut in cuts
    )


def _additions(tables: PitchTables, name: str) -> list[tuple[str, str]]:
    """Return the small runs to add, each with what it adds to this table's figures."""
    parts = part_runs(tables.settings.runs)
    rows = run_rows(tables.pitch, parts, tables.settings.measure)
    return [(text.rational(row.run_in), getattr(row, FIELD[name]).text.removesuffix('″')) for row in rows]


def list_pages(tables: PitchTables, wanted: Sequence[str]) -> list[tuple]:
    """Return the list of runs, then the lists of small runs to add to them."""
    settings, trim = tables.settings, tables.trim
    steepest = settings.pitches[-1]
    runs, small = list(settings.runs), part_runs(settings.runs)
    longest = max([settings.runs.last, *small])
    greatest = nearest(hip.line_length(longest, steepest.slope), settings.measure.per)
    fitted = fit(trim, settings.measure, greatest, RUN_LABEL, len(wanted), RUN_LABEL)
    lists = [(runs[at : at + trim.rows], False) for at in range(0, len(runs), trim.rows)]
    lists += [
        (some, True)
        for some in ([run for run in small if run < 1], [run for run in small if run >= 1])
        if some
    ]
    return [('list', _list_maker(tables, wanted, fitted, some, added)) for some, added in lists]


def _list_maker(tables, wanted, fitted, runs, added):
    def make(index) -> ListPage:
        rows = [
            (text.run(row.run_in), [getattr(row, FIELD[name]) for name in wanted])
            for row in run_rows(tables.pitch, runs, tables.settings.measure)
        ]
        heads = [WORDS['list_heads'][name] for name in wanted]
        return ListPage(
            tables.head, tables.values, grid(rows, heads, 'run', fitted, RUN_LABEL, tables.trim), added
        )

    return make
