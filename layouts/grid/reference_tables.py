"""The pages of reference tables: rows and columns cut to fit, short tables together, each saying what it measures."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from itertools import accumulate, pairwise

from layouts.grid.fitting import REFERENCE, Fit, em, fit, widest
from layouts.grid.grid import GROUP, Grid, grid
from layouts.grid.heads import HEAD_SIZE, corner_width, two_lines
from layouts.grid.table_columns import NOTHING, Columns, columns_of
from layouts.paper.page import Draft, Index, Tab
from layouts.paper.trim import FIGURE_SPACE, Trim
from layouts.words.reference import SPANS, notes
from tablegen.settings import Settings
from tablegen.tables.former import Table

HEAD_UNITS, LINE_UNITS, LETTERS_TO_A_LINE = 41.0, 10.0, 70
"""Height of title and column heads together, of a line of small print, and how much it holds."""
BETWEEN_UNITS = 9.0
"""Between two tables on one page."""
LEAST_ROW_UNITS = 9.5
"""Figures of 7.7 to 8.3 units with less than this between them run together in bad light."""
LABEL_GAP = 7.0
"""Between a row's name and its first figure, in units."""
COLUMN_CUTS = {'braces': (7, 6)}
"""Columns of each page where a table is best cut in one place."""
STUBS = {
    'unequal-hips': 2,
    'unequal-cheeks': 2,
    'unequal-fit': 2,
    'unequal-slide': 2,
    'unequal-shortening': 2,
    'unequal-points': 2,
    'whole-triangles': 3,
}
"""Values that name a row, where there are more than one."""


@dataclass(frozen=True, slots=True)
class TableSection:
    """A table, or as much of it as stands on one page."""

    title: str
    line: str
    """From where to where, on which face."""
    grid: Grid
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class TablePage:
    """One page of reference tables."""

    sections: tuple[TableSection, ...]


@dataclass(frozen=True, slots=True)
class Piece:
    """A section that is not made yet."""

    table: str
    """Key of its table."""
    first: bool
    units: float
    """Its height."""
    cells: tuple[str, ...]
    """Names under which its cells are looked for: see cell_key."""
    make: Callable[[], TableSection]


def table_drafts(tables: Sequence[Table], settings: Settings, trim: Trim, tab: Tab, head: str) -> list[Draft]:
    """Return the pages of some tables, in their order; tables that are short share a page."""
    pages: list[list[Piece]] = []
    used = 0.0
    for piece in [piece for table in tables for piece in _pieces(table, settings, trim)]:
        if pages and used + BETWEEN_UNITS + piece.units <= trim.text_height:
            pages[-1].append(piece)
            used += BETWEEN_UNITS + piece.units
        else:
            pages.append([piece])
            used = piece.units
    return [_draft(page, tab, head) for page in pages]


def _draft(pieces: Sequence[Piece], tab: Tab, head: str) -> Draft:
    def make(index: Index) -> TablePage:
        made = [piece.make() for piece in pieces]
        ends = [one.table != next_one.table for one, next_one in pairwise(pieces)]  # said once a table
        return TablePage(
            tuple(
                one if end else replace(one, notes=()) for one, end in zip(made, [*ends, True], strict=True)
            )
        )

    keys = tuple(f'table-{piece.table}' for piece in pieces if piece.first)
    cells = tuple(name for piece in pieces for name in piece.cells)
    return Draft('ref_table', make, '', head, tab, keys + cells)


def cell_key(table: str, row: str, place: int) -> str:
    """Return the name under which the index knows the page of a cell: its table, its row, its column from 0."""
    return f'cell-{table}:{row}:{place}'


def _pieces(table: Table, settings: Settings, trim: Trim) -> list[Piece]:
    told, line = notes(table.key, settings), table.line.partition('; marks:')[0]
    none = '' if table.group == 'set-out' else NOTHING
    made = columns_of(table.rows(settings), table.heads, STUBS.get(table.key, 1), none)
    corner = _corner(table, settings)
    parts = _column_parts(table.key, made, corner, trim)
    around = HEAD_UNITS + sum(_lines(words) * LINE_UNITS + 2 for words in (line, *told))
    room = trim.text_height - around
    pages = -(-len(made.labels) // int(room // LEAST_ROW_UNITS))
    step = -(-len(made.labels) // pages)
    row_units = min(trim.row_units, room / step)
    firsts = [0, *accumulate(len(part.columns) for part in parts)]
    cuts = [
        (start, first, part)
        for start in range(0, len(made.labels), step)
        for first, part in zip(firsts, parts, strict=False)
    ]
    found = []
    for place, (start, first, part) in enumerate(cuts):
        title = table.title if len(cuts) == 1 else f'{table.title}, {place + 1} of {len(cuts)}'
        mine = _rows(part, start, step)

        def make(title: str = title, part: Columns = part, mine: Columns = mine) -> TableSection:
            laid, rules = _fitted(part, corner, trim), _rules(table, mine.labels)
            heads = [one.head for one in mine.columns]
            lines = two_lines(heads, corner, SPANS.get(table.key, ''), laid.stop()[0])
            page = grid(mine, laid, *lines, rules, row_units, HEAD_SIZE)
            return TableSection(title, line[0].upper() + line[1:], page, told)

        units = around + len(mine.labels) * row_units
        names = tuple(
            cell_key(table.key, label.replace(FIGURE_SPACE, '').strip(), first + nth)
            for label in mine.labels
            for nth in range(len(mine.columns))
        )
        found.append(Piece(table.key, not place, units, names, make))
    return found


def _column_parts(key: str, made: Columns, corner: str, trim: Trim) -> list[Columns]:
    """Return a table cut by columns into as many as its pages need."""
    whole, start = [], 0
    for count in COLUMN_CUTS.get(key, (len(made.columns),)):
        whole.append(Columns(made.labels, made.columns[start : start + count]))
        start += count
    parts = []
    for part in whole:
        count = _fitted(part, corner, trim).columns
        cuts = range(0, len(part.columns), count)
        parts += [Columns(part.labels, part.columns[at : at + count]) for at in cuts]
    return parts


def _fitted(part: Columns, corner: str, trim: Trim) -> Fit:
    """Return how a table's columns are set, as many on each of its pages."""

    def label(size: float) -> float:
        return max(max(map(em, part.labels)) * size + LABEL_GAP, corner_width(corner))

    found = fit(widest(part.columns), label, len(part.columns), REFERENCE, trim)
    pages = -(-len(part.columns) // found.columns)
    return replace(found, columns=-(-len(part.columns) // pages))


def _rows(part: Columns, start: int, step: int) -> Columns:
    stop = start + step
    columns = tuple(
        replace(one, cells=one.cells[start:stop], marks=one.marks[start:stop]) for one in part.columns
    )
    return Columns(part.labels[start:stop], columns)


def _corner(table: Table, settings: Settings) -> str:
    if table.group == 'unequal':
        return 'A  B'
    if table.key == 'whole-triangles':
        return 'sides'
    plain = not any(pitch.short.endswith('°') for pitch in settings.pitches)
    return 'in\n12' if table.heads[0] == 'pitch' and plain else table.heads[0]


def _rules(table: Table, labels: Sequence[str]) -> list[int]:
    """Return after which rows a rule is drawn."""
    if table.group == 'unequal':
        sides = [label.split()[0] for label in labels]
        return [place for place in range(1, len(sides)) if sides[place] != sides[place - 1]]
    if table.key == 'degrees-to-pitch':
        return [place for place in range(1, len(labels)) if int(labels[place - 1]) % 5 == 0]
    return list(range(GROUP, len(labels), GROUP))


def _lines(words: str) -> int:
    return -(-len(words) // LETTERS_TO_A_LINE)
