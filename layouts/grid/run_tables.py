"""The tables of runs at one pitch: grids of feet and inches, or lists where the step makes no grid."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction
from functools import cached_property

from msgspec import Struct
from msgspec.structs import replace

from layouts.grid.figures import LISTS, figures_grid, fitted, over_wholes
from layouts.grid.fitting import Fit
from layouts.grid.grid import GROUP, Grid
from layouts.grid.run_grid import Share, grid_offsets, run_grid
from layouts.grid.small_runs import Additions, additions
from layouts.paper.page import Index, Maker, Unplaced
from layouts.paper.trim import Trim
from layouts.paper.typeface import advance_em
from layouts.words.pages import LENGTHS
from layouts.words.runs import FOOT, INCHES, RUN, Side, below, over
from layouts.words.say import _, say
from tablegen.geometry import corner
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.figure import Figure, decimal_figure
from tablegen.roof.members import Members
from tablegen.settings import Settings
from tablegen.tables.columns import UNIT_PLACES
from tablegen.tables.jack_lengths import jack_table
from tablegen.tables.lookup import set_of_tabled
from tablegen.tables.runs import head_of, part_runs, run_lengths
from tablegen.tables.table import Row
from tablegen.tables.values import Values, members_of

RUN_LABEL = 60.5
"""Width of the column that names a run, in units."""
HEAD_SIZES, LEAST_HEAD_SIZE = ((2, 2.9), (5, 2.0), (7, 1.6), (9, 1.2)), 0.9
"""Letters of a pitch's name, at most, and the size in rem at which they have room."""
HEAVY, HEAD_GAP = (76, 800), 0.3
"""The cut of that name, and what is left free beside it, in rem."""


class Head(Struct, frozen=True):
    """The head of a pitch's page."""

    pitch: str
    """The big figure: '6', '7 1/2', '30°'."""
    unit: str
    """'in 12', or '' for a pitch in degrees."""
    size: float
    """Of the big figure, in rem: a longer name is set smaller."""
    room: float
    """Beside it, in rem."""
    lengths: str
    """How lengths read in the tables: 'inches', or 'feet and inches'."""


class FiguresPage(Struct, frozen=True):
    """One page of a table of a pitch's figures."""

    head: Head
    table: str
    """'common', 'hip-valley', 'rise', 'list', 'small-runs' (to add to a run of the list) or 'jacks'."""
    over: dict[str, Side]
    """What stands over it, by the side on which it lies."""
    grid: Grid
    below: str = ''
    additions: tuple[Additions, ...] = ()
    """Small runs and what each adds, this page's share of them."""


class PitchTables:
    """The rows of one pitch, computed once when its first page is made."""

    def __init__(self, pitch: Pitch, settings: Settings, trim: Trim):
        self.pitch, self.settings, self.trim = pitch, settings, trim

    @cached_property
    def values(self) -> Values:
        return Values(self.settings)

    @cached_property
    def members(self) -> Members:
        return members_of(self.pitch, self.settings)

    @cached_property
    def rise_per_foot(self) -> Figure:
        return decimal_figure(self.pitch.rise, UNIT_PLACES)

    def lengths(self, name: str, runs: Iterable[Fraction]) -> list[Figure]:
        """Return the figures of some runs in a table."""
        return run_lengths(name, runs, self.pitch, self.settings.measure)

    @cached_property
    def jacks(self) -> list[Row]:
        return list(jack_table(replace(self.settings, pitches=(self.pitch,))).rows())

    @cached_property
    def head(self) -> Head:
        name, unit = self.pitch.short, self.pitch.unit
        size = next((size for most, size in HEAD_SIZES if len(name) <= most), LEAST_HEAD_SIZE)
        wide = advance_em(f'{name} ', *HEAVY) * size + advance_em(unit, *HEAVY)
        room = round(self.trim.text_width / 10 - wide - HEAD_GAP, 3)
        return Head(name, unit, size, room, _(LENGTHS[self.settings.measure.style]))

    def page(
        self, table: str, made: Grid, note: str = '', additions: tuple[Additions, ...] = (), **values: str
    ) -> FiguresPage:
        """Return a page with what stands over and below its table, from the words of the table and its note."""
        return FiguresPage(
            self.head,
            table,
            over(table, lengths=self.head.lengths, **values),
            made,
            below(note or table, **values),
            additions,
        )


def grid_pages(tables: PitchTables, names: Sequence[str]) -> dict[str, list[Unplaced]]:
    """Return template and maker of every page of some tables, feet down and inches across."""
    laid = run_grid(tables.settings, tables.trim)
    return {
        name: [('grid', _grid_maker(tables, name, laid.laid, share)) for share in laid.shares]
        for name in names
    }


def places_of_run(run_in: Fraction, settings: Settings, trim: Trim) -> list[int]:
    """Return on which pages of a table, from 0, a run's figure stands: one page, or all that have a small run."""
    if grid_offsets(settings):
        return run_grid(settings, trim).places_of(run_in)
    runs = settings.runs
    if run_in in set_of_tabled(settings, [run_in]):
        return [int((run_in - runs.first) // runs.step) // trim.rows]
    return [place for place, (some, added) in enumerate(_lists(settings, trim)) if added and run_in in some]


def _grid_maker(tables: PitchTables, name: str, laid: Fit, share: Share) -> Maker:
    def make(index: Index) -> FiguresPage:
        figures = iter(tables.lengths(name, [run for row in share.rows for run in row if run is not None]))
        cells = [[None if run is None else next(figures) for run in row] for row in share.rows]
        rows = list(zip(share.feet, cells, strict=True))
        whole = all(one.denominator == 1 for one in share.cut)  # beside a fraction a unit has no room
        name_of = _(INCHES) if whole else '{number}'
        heads = [over_wholes(one, name_of.format(number=text.rational(one)), laid) for one in share.cut]
        added = list(zip(share.small, tables.lengths(name, share.small), strict=True))
        return tables.page(
            name,
            figures_grid(rows, heads, _(FOOT), laid, GROUP - share.feet[0] % GROUP),
            additions=additions(added, share.in_a_line, tables.trim),
            plumb_cut=tables.members.cut.common.plumb.text,
            hip_plumb_cut=tables.members.cut.hip_valley.plumb.text,
            rise_per_foot=tables.rise_per_foot.text,
        )

    return make


def list_pages(tables: PitchTables, wanted: Sequence[str]) -> list[Unplaced]:
    """Return the list of runs, then the lists of small runs to add to them."""
    settings, trim = tables.settings, tables.trim
    longest = max([settings.runs.last, *part_runs(settings.runs, settings.measure.per)])
    greatest = corner.hip_length(longest, settings.pitches[-1].corner)
    laid = fitted(greatest, RUN_LABEL, len(wanted), settings, trim, RUN_LABEL + 1, LISTS)
    lists = _lists(settings, trim)
    return [('list', _list_maker(tables, wanted, laid, some, added)) for some, added in lists]


def _lists(settings: Settings, trim: Trim) -> list[tuple[list[Fraction], bool]]:
    """Return the runs of every page of a list, and whether they are small runs to add."""
    runs, small = list(settings.runs), part_runs(settings.runs, settings.measure.per)
    parts = [run for run in small if run < 1], [run for run in small if run >= 1]
    tabled = [(runs[at : at + trim.rows], False) for at in range(0, len(runs), trim.rows)]
    return tabled + [(some, True) for some in parts if some]


def _list_maker(
    tables: PitchTables, wanted: Sequence[str], laid: Fit, runs: Sequence[Fraction], added: bool
) -> Maker:
    def make(index: Index) -> FiguresPage:
        columns = zip(*(tables.lengths(name, runs) for name in wanted), strict=True)
        rows = list(zip(map(text.run, runs), columns, strict=True))
        heads = [say(head_of(name)) for name in wanted]
        return tables.page('small-runs' if added else 'list', figures_grid(rows, heads, _(RUN), laid))

    return make
