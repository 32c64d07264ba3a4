"""The pages of a pitch's jacks: line length, long point and short point of each, side by side, by spacing."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from layouts.grid.figures import figures_grid, fitted
from layouts.grid.fitting import Fit
from layouts.grid.run_tables import FiguresPage, PitchTables
from layouts.paper.page import Index, Maker, Unplaced
from layouts.paper.trim import Trim
from layouts.words.runs import INCHES, JACK, JACK_HEADS
from layouts.words.say import _
from tablegen.geometry import common
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.settings import Settings
from tablegen.tables.jack_lengths import STUBS
from tablegen.tables.table import Row

LABEL = 24.0
"""Width of the column of jacks' numbers, in units."""
LEAST_COLUMN = 25.0
"""Width that the longest head of a column needs, in units."""
LINES_BELOW = 1
"""Rows that the words below the table take, beside what every table leaves free."""
COLUMNS = ('line', 'long_point', 'short_point')
"""Of one spacing, as the rows have them."""


class JackShare(Struct, frozen=True):
    """What stands on one page of a pitch's jacks."""

    spacings: range
    """Places of the spacings in the settings."""
    rows: range
    """Numbers of the jacks, from 1."""


def jack_shares(settings: Settings, trim: Trim) -> list[JackShare]:
    """Return what stands on every page, in order, the same at every pitch; nothing where the runs end before a jack.

    Notes:
        1. An even number of pages, so that the next table opens on the left: where it would be odd the page with
           most jacks is cut in two. One jack alone stays on one page.
    """
    last = settings.runs.last
    counts = [int(last // spacing) for spacing in settings.spacings]
    if not any(counts):
        return []
    pages = -(-len(counts) // _spacings_on_a_page(settings, trim))
    each = -(-len(counts) // (pages + pages % 2))
    shares = []
    for at in range(0, len(counts), each):
        group = range(at, min(at + each, len(counts)))
        most = max(counts[place] for place in group)
        shares += [JackShare(group, rows) for rows in _cut(most, trim.rows - LINES_BELOW)]
    longest = max(range(len(shares)), key=lambda place: len(shares[place].rows))
    group, rows = shares[longest].spacings, shares[longest].rows
    if len(shares) % 2 and len(rows) > 1:
        half = rows[0] + (len(rows) + 1) // 2
        parts = (range(rows[0], half), range(half, rows[-1] + 1))
        shares[longest : longest + 1] = [JackShare(group, part) for part in parts]
    return shares


def jack_pages(tables: PitchTables) -> list[Unplaced]:
    """Return template and maker of every page."""
    shares = jack_shares(tables.settings, tables.trim)
    return [('jacks', _maker(tables, share, bool(place % 2))) for place, share in enumerate(shares)]


def page_of_jack(
    index: Index, number: int, spacing_place: int, pitch: Pitch, settings: Settings, trim: Trim
) -> int:
    """Return the page on which a jack stands.

    Given:
        number         of the jack, from 1 at the corner
        spacing_place  of its spacing in the settings, from 0
    """
    place = next(
        place
        for place, share in enumerate(jack_shares(settings, trim))
        if number in share.rows and spacing_place in share.spacings
    )
    return index[f'jacks:{pitch.text}'] + place


def _cut(count: int, rows: int) -> list[range]:
    return [range(at + 1, min(at + rows, count) + 1) for at in range(0, count, rows)]


def _fitted(settings: Settings, trim: Trim, spacings: int) -> Fit:
    greatest = common.line_length(settings.runs.last, settings.pitches[-1].slope)
    return fitted(greatest, LABEL, spacings * len(COLUMNS), settings, trim, LEAST_COLUMN)


def _spacings_on_a_page(settings: Settings, trim: Trim) -> int:
    return max(1, _fitted(settings, trim, len(settings.spacings)).columns // len(COLUMNS))


def _maker(tables: PitchTables, share: JackShare, right: bool) -> Maker:
    def make(index: Index) -> FiguresPage:
        settings = tables.settings
        rows = [(number, _cells(tables.jacks[number - 1], share.spacings)) for number in share.rows]
        names = [_(INCHES).format(number=text.rational(settings.spacings[place])) for place in share.spacings]
        heads = [_(JACK_HEADS[column]) for name in names for column in COLUMNS]
        laid = _fitted(settings, tables.trim, len(names))
        return tables.page(
            'jacks',
            figures_grid(rows, heads, _(JACK), laid, groups=names),
            'jacks-right' if right else 'jacks',
            hip=text.rational(settings.hip_thickness),
            rafter=text.rational(settings.rafter_thickness),
        )

    return make


def _cells(row: Row, spacings: Sequence[int]) -> list[Figure | None]:
    """Return the figures of some spacings in a row of jacks, after its pitch and its number."""
    figures = row.cells[STUBS:]
    cells = [figures[place * len(COLUMNS) + nth] for place in spacings for nth in range(len(COLUMNS))]
    return [cell if isinstance(cell, Figure) else None for cell in cells]
