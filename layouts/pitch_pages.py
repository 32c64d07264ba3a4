"""The pages of one pitch: its values, its jacks, and its tables of runs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from markupsafe import Markup

from layouts.drawings.framing_square import square_on_board
from layouts.drawings.wedge import measured_wedge
from layouts.grids import Grid, cells_of_foot, fit, grid, offsets_of_foot
from layouts.pages import Block, Draft, Tab
from layouts.trim import Trim
from layouts.words import WORDS
from tablegen import text
from tablegen.exact import exact, nearest
from tablegen.figures import Measure, decimal_figure, length_figure
from tablegen.geometry import common, hip
from tablegen.pitch import Pitch
from tablegen.rows import PitchValues, RunRow, jack_rows, part_runs, pitch_values, run_rows
from tablegen.settings import Settings
from tablegen.stepping import Hold, common_hold, hip_hold

FEET_LABEL, RUN_LABEL, JACK_LABEL = 17.0, 58.0, 26.0
"""Widths of the columns that name a row, in units."""
WIDEST_ADDITION = 34.0
FEWEST_IN_A_GRID = 3
"""Runs to a foot below which feet and inches make a worse table than a list."""
TABLES = ('common', 'hip-valley', 'rise')
SQUARE_MEASURE = Measure(16)
"""A square is read in sixteenths, whatever the tape."""
FIELD = {'common': 'common', 'hip-valley': 'hip_valley', 'rise': 'rise'}
TAB_WIDTH_REM = 2.9
"""Width of a tab in letters of one rem."""
FEWEST_TABS, MOST_TABS = 12, 24
"""Tabs down an edge: no taller than a twelfth of it, and after 24 the next begins at the top again."""


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
    additions: Additions | None
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


@dataclass(frozen=True, slots=True)
class ValuesPage:
    """What a pitch has but once."""

    head: Head
    values: PitchValues
    wedge: Markup
    square: Markup
    common_hold: tuple[str, str]
    """What is read on the body, on the tongue."""
    hip_hold: tuple[str, str]
    hip_body_exact: str
    plumb_on_body: bool
    hip_holds: int
    """Holds of the square for a foot of common run on the hip."""
    spacings: tuple[tuple[str, str], ...]
    """Spacing and jack difference."""
    hip_thickness: str
    part: str


@dataclass(frozen=True, slots=True)
class JackPage:
    """Lengths of jacks by number from the corner."""

    head: Head
    values: PitchValues
    grid: Grid
    differences: tuple[tuple[str, str], ...]


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
    def head(self) -> Head:
        unit = '' if self.pitch.short.endswith('°') else 'in 12'
        return Head(
            self.pitch.short,
            unit,
            2.9 if len(self.pitch.short) <= 2 else 2.0 if len(self.pitch.short) <= 5 else 1.6,
        )


def pitch_block(pitch: Pitch, place: int, settings: Settings, trim: Trim) -> Block:
    """Return all pages of one pitch, beginning on a left-hand page."""
    tables = PitchTables(pitch, settings, trim)
    slot_mm = (trim.height_mm - trim.top_mm - trim.foot_mm) / max(
        FEWEST_TABS, min(len(settings.pitches), MOST_TABS)
    )
    size = min(0.85, TAB_WIDTH_REM / len(pitch.short))
    tab = Tab(pitch.short, round(place % MOST_TABS * slot_mm, 3), round(slot_mm, 3), round(size, 3))
    drafts: list[Draft] = []

    def add(pages: Sequence[tuple], *names: str, even: bool = False) -> None:
        if even and len(pages) % 2 == 0 and len(drafts) % 2:
            drafts.append(Draft('notes', lambda index: None, '', pitch.text, tab))
        keys = [f'{name}:{pitch.text}' for name in names]
        for place, (template, make) in enumerate(pages):
            known = () if place else keys
            drafts.append(Draft(template, make, '', pitch.text, tab, tuple(known)))

    if 'values' in settings.parts:
        add([('values', lambda index: _values_page(tables))], 'values')
    if 'jacks' in settings.parts:
        add(_jack_pages(tables), 'jacks')
    wanted = [name for name in TABLES if name in settings.parts]
    offsets = offsets_of_foot(settings.runs)
    if wanted and (offsets is None or len(offsets) < FEWEST_IN_A_GRID):
        add(_list_pages(tables, wanted), *wanted)
    else:
        for name in wanted:
            add(_grid_pages(tables, name, offsets), name, even=True)
    if len(drafts) % 2:
        drafts.append(Draft('notes', lambda index: None, '', pitch.text, tab))
    return Block(tuple(drafts), opens_left=True, pitches=(pitch.short,))


def grid_columns(settings: Settings, trim: Trim, offsets: Sequence[Fraction]) -> tuple:
    """Return how one table's columns fit the page, the same at every pitch, and how many to a page."""
    measure, steepest = settings.measure, settings.pitches[-1]
    greatest = max(
        nearest(hip.line_length(settings.runs.last, steepest.slope), measure.per),
        nearest(common.rise(settings.runs.last, steepest.slope), measure.per),
    )
    fitted = fit(trim, measure, greatest, FEET_LABEL, len(offsets))
    pages = -(-len(offsets) // fitted.columns)
    return fitted, -(-len(offsets) // pages)


def _grid_pages(tables: PitchTables, name: str, offsets: Sequence[Fraction]) -> list[tuple]:
    runs = tables.settings.runs
    fitted, columns = grid_columns(tables.settings, tables.trim, offsets)
    feet = range(int(runs.first // 12), int(runs.last // 12) + 1)
    bands = _bands(feet, tables.trim.rows)
    cuts = [offsets[at : at + columns] for at in range(0, len(offsets), columns)]
    pages = []
    for band in bands:
        for place, cut in enumerate(cuts):
            last = band == bands[-1] and place == len(cuts) - 1
            make = _grid_maker(tables, name, fitted, band, cut, place, len(cuts), last)
            pages.append(('grid', make))
    return pages


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
        heads = [f'{text.rational(offset)} in' for offset in cut]
        group = 6 - band[0] % 6
        page = grid(rows, heads, 'ft', fitted, FEET_LABEL, tables.trim, group)
        parts = _additions(tables, name)
        share = -(-len(parts) // min(cuts, 2))  # every opening of a table has them all
        mine = parts[place % 2 * share : (place % 2 + 1) * share]
        width = min(tables.trim.text_width / (share + 1), WIDEST_ADDITION) / 10
        additions = Additions(
            '\t'.join(name for name, _ in mine), '\t'.join(figure for _, figure in mine), round(width, 4)
        )
        return GridPage(tables.head, name, tables.values, page, additions if mine else None, last)

    return make


def _additions(tables: PitchTables, name: str) -> list[tuple[str, str]]:
    """Return the small runs to add, each with what it adds to this table's figures."""
    parts = part_runs(tables.settings.runs)
    rows = run_rows(tables.pitch, parts, tables.settings.measure)
    return [(text.rational(row.run_in), getattr(row, FIELD[name]).text) for row in rows]


def _list_pages(tables: PitchTables, wanted: Sequence[str]) -> list[tuple]:
    """Return the list of runs, then the lists of small runs to add to them."""
    settings, trim = tables.settings, tables.trim
    steepest = settings.pitches[-1]
    greatest = nearest(hip.line_length(settings.runs.last, steepest.slope), settings.measure.per)
    fitted = fit(trim, settings.measure, greatest, RUN_LABEL, len(wanted))
    runs, small = list(settings.runs), part_runs(settings.runs)
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


def _jack_pages(tables: PitchTables) -> list[tuple]:
    settings, trim = tables.settings, tables.trim
    most = max(settings.runs.last // spacing for spacing in settings.spacings)
    rows = trim.rows - 1
    pages = max(1, -(-int(most) // rows))
    return [('jacks', _jack_maker(tables, at * rows, (at + 1) * rows)) for at in range(pages)]


def _jack_maker(tables, start, stop):
    def make(index) -> JackPage:
        settings = tables.settings
        steepest = settings.pitches[-1]
        greatest = nearest(common.line_length(settings.runs.last, steepest.slope), settings.measure.per)
        fitted = fit(tables.trim, settings.measure, greatest, JACK_LABEL, len(settings.spacings))
        rows = [(str(row.number), row.lengths) for row in jack_rows(tables.pitch, settings)[start:stop]]
        heads = [f'{text.rational(spacing)} in' for spacing in settings.spacings]
        page = grid(rows, heads, 'jack', fitted, JACK_LABEL, tables.trim)
        differences = tuple(
            zip(heads, (figure.text for figure in tables.values.jack_differences), strict=True)
        )
        return JackPage(tables.head, tables.values, page, differences)

    return make


def _values_page(tables: PitchTables) -> ValuesPage:
    pitch, settings, values = tables.pitch, tables.settings, tables.values
    held, hip_held = common_hold(pitch.slope), hip_hold(pitch.slope)
    read, hip_read = _read_on_square(held), _read_on_square(hip_held)
    labels = ('12', values.rise_per_foot.text.rstrip('0').rstrip('.'), values.common_per_foot.text)
    heads = [text.rational(spacing) for spacing in settings.spacings]
    return ValuesPage(
        tables.head,
        values,
        measured_wedge(pitch, labels, values.plumb_cut, pitch.text),
        square_on_board(held, read, pitch.text),
        read,
        hip_read,
        decimal_figure(hip_held.tongue_in if hip_held.plumb_on_body else hip_held.body_in, 2).text,
        held.plumb_on_body,
        hip_held.holds,
        tuple(zip(heads, (figure.text for figure in values.jack_differences), strict=True)),
        text.rational(settings.hip_thickness),
        text.mixed(1, settings.measure.per),
    )


def _read_on_square(held: Hold) -> tuple[str, str]:
    """Return both figures as they are found on a square: whole or in sixteenths; √288 reads as 17."""

    def reading(inches) -> str:
        return length_figure(inches, SQUARE_MEASURE).text

    return reading(exact(held.body_in)), reading(exact(held.tongue_in))
