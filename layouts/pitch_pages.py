"""The pages of one pitch: its values, its jacks, and its tables of runs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from markupsafe import Markup

from layouts.drawings.framing_square import square_on_board
from layouts.drawings.wedge import measured_wedge
from layouts.grids import Grid, fit, grid, head_width, offsets_of_foot
from layouts.pages import Block, Draft, Index, Tab
from layouts.run_tables import Head, PitchTables, grid_pages, list_pages, page_shares
from layouts.trim import Trim
from tablegen import text
from tablegen.cautions import LOW_SLOPE, pitch_cautions
from tablegen.exact import nearest
from tablegen.geometry import common
from tablegen.pitch import Pitch
from tablegen.rows import PitchValues
from tablegen.settings import Settings
from tablegen.stepping import Hold, common_hold, hip_hold

JACK_LABEL = 26.0
"""Width of the column of jacks' numbers, in units."""
FEWEST_IN_A_GRID = 3
"""Runs to a foot below which feet and inches make a worse table than a list."""
TABLES = ('common', 'hip-valley', 'rise')
TAB_WIDTH_REM = 2.9
"""Width of a tab in letters of one rem."""
FEWEST_TABS, MOST_TABS = 12, 24
"""Tabs down an edge: no taller than a twelfth of it, and after 24 the next begins at the top again."""


@dataclass(frozen=True, slots=True)
class ValuesPage:
    """What a pitch has but once."""

    head: Head
    values: PitchValues
    wedge: Markup
    square: Markup
    common_hold: Hold
    hip_hold: Hold
    spacings: tuple[tuple[str, str], ...]
    """Spacing and jack difference."""
    hip_thickness: str
    part: str
    caution_page: int
    """Where the cautions for a pitch under 3 in 12 stand, 0 where it is none."""


@dataclass(frozen=True, slots=True)
class JackPage:
    """Lengths of jacks by number from the corner."""

    head: Head
    values: PitchValues
    grid: Grid
    differences: tuple[tuple[str, str], ...]


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
        add([('values', lambda index: _values_page(tables, _caution_page(index)))], 'values')
    if 'jacks' in settings.parts:
        add(_jack_pages(tables), 'jacks')
    wanted = [name for name in TABLES if name in settings.parts]
    offsets = _grid_offsets(settings)
    if wanted and not offsets:
        add(list_pages(tables, wanted), *wanted)
    else:
        for name in wanted:
            add(grid_pages(tables, name, offsets), name, even=True)
    if len(drafts) % 2:
        drafts.append(Draft('notes', lambda index: None, '', pitch.text, tab))
    return Block(tuple(drafts), opens_left=True, pitches=(pitch.short,))


def page_of_run(
    index: Index, table: str, run_in: Fraction, pitch: Pitch, settings: Settings, trim: Trim
) -> int:
    """Return the page on which a run's figure stands, or the first of its table for a run below them all."""
    first, runs, offsets = index[f'{table}:{pitch.text}'], settings.runs, _grid_offsets(settings)
    if not offsets:
        return first + max(0, int((run_in - runs.first) // runs.step)) // trim.rows
    for place, (feet, cut) in enumerate(page_shares(settings, trim, offsets)):
        if run_in // 12 in feet and run_in % 12 in cut and run_in >= runs.first:
            return first + place
    return first


def _grid_offsets(settings: Settings) -> list[Fraction]:
    """Return the inches past a whole foot at which runs fall, none where they make a list."""
    offsets = offsets_of_foot(settings.runs) or []
    return offsets if len(offsets) >= FEWEST_IN_A_GRID else []


def _jack_pages(tables: PitchTables) -> list[tuple]:
    settings, trim = tables.settings, tables.trim
    most = max(settings.runs.last // spacing for spacing in settings.spacings)
    rows = trim.rows - 1
    pages = -(-int(most) // rows)  # none where the runs end before the first jack
    return [('jacks', _jack_maker(tables, at * rows, (at + 1) * rows)) for at in range(pages)]


def _jack_maker(tables, start, stop):
    def make(index) -> JackPage:
        settings = tables.settings
        steepest = settings.pitches[-1]
        greatest = nearest(common.line_length(settings.runs.last, steepest.slope), settings.measure.per)
        rows = [(str(row.number), row.lengths) for row in tables.jacks[start:stop]]
        heads = [f'{text.rational(spacing)} in' for spacing in settings.spacings]
        fitted = fit(tables.trim, settings.measure, greatest, JACK_LABEL, len(heads), head_width(heads))
        page = grid(rows, heads, 'jack', fitted, JACK_LABEL, tables.trim)
        differences = tuple(
            zip(heads, (figure.text for figure in tables.values.jack_differences), strict=True)
        )
        return JackPage(tables.head, tables.values, page, differences)

    return make


def _caution_page(index: Index) -> int:
    return next((index[key] for key in ('care', 'cautions') if key in index), 0)


def _values_page(tables: PitchTables, caution_page: int) -> ValuesPage:
    pitch, settings, values = tables.pitch, tables.settings, tables.values
    held, hip_held = common_hold(pitch.slope), hip_hold(pitch.slope)
    labels = ('12', values.rise_per_foot.text.rstrip('0').rstrip('.'), values.common_per_foot.text)
    heads = [text.rational(spacing) for spacing in settings.spacings]
    return ValuesPage(
        tables.head,
        values,
        measured_wedge(pitch, labels, values.plumb_cut, pitch.text),
        square_on_board(held, pitch.text),
        held,
        hip_held,
        tuple(zip(heads, (figure.text for figure in values.jack_differences), strict=True)),
        text.rational(settings.hip_thickness),
        text.mixed(1, settings.measure.per),
        caution_page if LOW_SLOPE in pitch_cautions(pitch.slope) else 0,
    )
