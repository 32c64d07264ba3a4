"""The pages of one pitch: its values, its jacks, and its tables of runs."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from layouts.grid.run_grid import grid_offsets
from layouts.grid.run_tables import PitchTables, grid_pages, list_pages, places_of_run
from layouts.opening.pages import opening
from layouts.pages.jack_pages import jack_pages
from layouts.pages.member_pages import member_pages
from layouts.paper.page import Block, Draft, Index, Tab, Unplaced, page_side
from layouts.paper.trim import Trim
from tablegen.geometry.pitch import Pitch
from tablegen.settings import Settings
from tablegen.tables.opening_runs import reads_openings

TABLES = ('common', 'hip-valley', 'rise')
TAB_WIDTH_REM = 2.9
"""Width of a tab in letters of one rem."""
FEWEST_TABS, MOST_TABS = 12, 24
"""Tabs down an edge: no taller than a twelfth of it, and after 24 the next begins at the top again."""


def pitch_block(pitch: Pitch, place: int, settings: Settings, trim: Trim) -> Block:
    """Return all pages of one pitch, beginning on a left-hand page."""
    tables = PitchTables(pitch, settings, trim)
    slot_mm = (trim.height_mm - trim.top_mm - trim.foot_mm) / max(
        FEWEST_TABS, min(len(settings.pitches), MOST_TABS)
    )
    size = min(0.85, TAB_WIDTH_REM / trim.unit_pt / len(pitch.short))  # a tab is no wider in large print
    tab = Tab(pitch.short, round(place % MOST_TABS * slot_mm, 3), round(slot_mm, 3), round(size, 3))
    drafts: list[Draft] = []

    def add(pages: Sequence[Unplaced], *names: str, even: bool = False) -> None:
        if even and len(pages) % 2 == 0 and len(drafts) % 2:
            drafts.append(Draft('notes', lambda index: None, '', pitch.text, tab))
        keys = [f'{name}:{pitch.text}' for name in names]
        for place, (template, make) in enumerate(pages):
            known = () if place else keys
            drafts.append(Draft(template, make, '', pitch.text, tab, tuple(known)))

    if 'opening' in settings.parts:
        add(opening(tables), 'opening')
    if 'values' in settings.parts:
        common, hip = member_pages(tables)
        add([common], 'values')
        add([hip], 'hip-values')
    if 'jacks' in settings.parts:
        add(jack_pages(tables), 'jacks')
    wanted = [name for name in TABLES if name in settings.parts]
    if wanted and not is_grid(settings):
        add(list_pages(tables, wanted), *wanted)
    elif wanted:
        for name, pages in grid_pages(tables, wanted).items():
            add(pages, name, even=True)
    if len(drafts) % 2:
        drafts.append(Draft('notes', lambda index: None, '', pitch.text, tab))
    return Block(tuple(drafts), opens_left=True, pitches=(pitch.short,))


def page_of_run(
    index: Index, table: str, run_in: Fraction, pitch: Pitch, settings: Settings, trim: Trim
) -> int:
    """Return the page on which a run's figure stands: of its table, or of the first lines that add a small run.

    Given:
        table  'common', 'hip-valley' or 'rise'
    """
    return _pages_of_run(index, table, run_in, pitch, settings, trim)[0]


def page_of_addition(
    index: Index,
    table: str,
    run_in: Fraction,
    after_in: Fraction,
    pitch: Pitch,
    settings: Settings,
    trim: Trim,
) -> int:
    """Return the page on which a small run to add stands: in a grid, of the opening on which another run is read.

    Given:
        run_in    the small run, in
        after_in  the run that it is added to; the small run itself where there is none
    """
    where = (pitch, settings, trim)
    near = page_of_run(index, table, after_in, *where)
    facing = near + 1 if page_side(near) == 'left' else near - 1
    pages = _pages_of_run(index, table, run_in, *where)
    return min(pages, key=lambda page: (abs(page - near), page != facing))


def _pages_of_run(
    index: Index, table: str, run_in: Fraction, pitch: Pitch, settings: Settings, trim: Trim
) -> list[int]:
    if reads_openings(settings):
        return [index[f'opening:{pitch.text}'] + (table == 'hip-valley')]
    first = index[f'{table}:{pitch.text}']
    return [first + place for place in places_of_run(run_in, settings, trim)]


def is_grid(settings: Settings) -> bool:
    """Return whether runs are tabled by feet and inches, not in a list."""
    return bool(grid_offsets(settings))
