"""The pages of reference tables: rows and columns cut to fit, short tables together, each saying what it measures."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import accumulate, pairwise
from typing import Any

from msgspec import Struct
from msgspec.structs import replace

from layouts.grid.fitting import REFERENCE, Fit, em, fit, widest
from layouts.grid.grid import GROUP, Grid, grid
from layouts.grid.heads import HEAD_SIZE, corner_width, two_lines
from layouts.grid.table_columns import Columns, columns_of
from layouts.paper.page import Draft, Index, Tab
from layouts.paper.trim import FIGURE_SPACE, Trim
from layouts.words.datum import datum_of
from layouts.words.lists import capital
from layouts.words.say import SOURCE, language, say, speaking
from tablegen.messages import message
from tablegen.tables.table import Row, Table

HEAD_UNITS, LINE_UNITS, LETTERS_TO_A_LINE = 41.0, 10.0, 70
"""Height of title and column heads together, of a line of small print, and how much it holds."""
BETWEEN_UNITS = 9.0
"""Between two tables on one page."""
LEAST_ROW_UNITS = 9.5
"""Figures of 7.7 to 8.3 units with less than this between them run together in bad light."""
LABEL_GAP = 9.0
"""Between a row's name and its first figure, in units."""


class TableSection(Struct, frozen=True):
    """A table, or as much of it as stands on one page."""

    title: str
    line: str
    """From where to where, on which face."""
    grid: Grid
    notes: tuple[str, ...]


class TablePage(Struct, frozen=True):
    """One page of reference tables."""

    sections: tuple[TableSection, ...]
    width: float
    """Of its text, in rem."""


class Piece(Struct, frozen=True):
    """A section that is not made yet."""

    table: str
    """Key of its table."""
    first: bool
    units: float
    """Its height."""
    cells: tuple[str, ...]
    """Names under which its cells are looked for: see cell_key."""
    make: Callable[[], TableSection]


def table_drafts(tables: Sequence[Table[Any]], trim: Trim, tab: Tab, head: str) -> list[Draft]:
    """Return the pages of some tables, in their order; tables that are short share a page."""
    pages: list[list[Piece]] = []
    used = 0.0
    for piece in [piece for table in tables for piece in _pieces(table, trim)]:
        if pages and used + BETWEEN_UNITS + piece.units <= trim.text_height:
            pages[-1].append(piece)
            used += BETWEEN_UNITS + piece.units
        else:
            pages.append([piece])
            used = piece.units
    return [_draft(page, trim, tab, head) for page in pages]


def _draft(pieces: Sequence[Piece], trim: Trim, tab: Tab, head: str) -> Draft:
    def make(index: Index) -> TablePage:
        made = [piece.make() for piece in pieces]
        ends = [one.table != next_one.table for one, next_one in pairwise(pieces)]  # said once a table
        return TablePage(
            tuple(
                one if end else replace(one, notes=()) for one, end in zip(made, [*ends, True], strict=True)
            ),
            trim.text_width / 10,
        )

    keys = tuple(f'table-{piece.table}' for piece in pieces if piece.first)
    cells = tuple(name for piece in pieces for name in piece.cells)
    return Draft('ref_table', make, '', head, tab, keys + cells)


def cell_key(table: str, row: str, place: int) -> str:
    """Return the name under which the index knows the page of a cell: its table, its row, its column from 0."""
    return f'cell-{table}:{row}:{place}'


def _pieces(table: Table[Any], trim: Trim) -> list[Piece]:
    """Return the pieces of a table: what stands on which page is planned by the English, in whatever language it is said."""
    rows = tuple(table.rows())
    with speaking(SOURCE):
        around = HEAD_UNITS + sum(_lines(words) * LINE_UNITS + 2 for words in _small_print(table))
        planned, corner = columns_of(table, rows), _corner(table)
        parts = _column_parts(planned, table.needs.cuts, corner, trim)
    made = planned if language() == SOURCE else columns_of(table, rows)
    room = trim.text_height - around
    pages = -(-len(planned.labels) // int(room // LEAST_ROW_UNITS))
    step = -(-len(planned.labels) // pages)
    row_units = min(trim.row_units, room / step)
    firsts = [0, *accumulate(len(part.columns) for part in parts)]
    cuts = [
        (start, first, part)
        for start in range(0, len(planned.labels), step)
        for first, part in zip(firsts, parts, strict=False)
    ]
    found = []
    for place, (start, first, part) in enumerate(cuts):
        rules = _rules(table, rows[start : start + step])
        mine = _rows(Columns(made.labels, made.columns[first : first + len(part.columns)]), start, step)

        def make(
            place: int = place, part: Columns = part, mine: Columns = mine, rules: list[int] = rules
        ) -> TableSection:
            laid, span = _fitted(part, corner, trim), say(table.needs.span) if table.needs.span else ''
            lines = two_lines([one.head for one in mine.columns], _corner(table), span, laid.stop()[0])
            page = grid(mine, laid, *lines, rules, row_units, HEAD_SIZE)
            line, *notes = _small_print(table)
            return TableSection(_title(table, place, len(cuts)), capital(line), page, tuple(notes))

        labels = [label.replace(FIGURE_SPACE, '').strip() for label in part.labels[start : start + step]]
        names = tuple(
            cell_key(table.key, label, first + nth) for label in labels for nth in range(len(part.columns))
        )
        found.append(Piece(table.key, not place, around + len(labels) * row_units, names, make))
    return found


def _small_print(table: Table[Any]) -> tuple[str, ...]:
    """Return from where to where a table is measured, and its notes."""
    return datum_of(table, table.columns), *map(say, table.notes)


def _column_parts(made: Columns, whole_cuts: Sequence[int], corner: str, trim: Trim) -> list[Columns]:
    """Return a table cut by columns into as many as its pages need."""
    whole, start = [], 0
    for count in whole_cuts or (len(made.columns),):
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
    longest, least = max(map(em, part.labels)), corner_width(corner)

    def label(size: float) -> float:
        return max(longest * size + LABEL_GAP, least)

    found = fit(widest(part.columns), label, len(part.columns), REFERENCE, trim)
    pages = -(-len(part.columns) // found.columns)
    return replace(found, columns=-(-len(part.columns) // pages))


def _rows(part: Columns, start: int, step: int) -> Columns:
    stop = start + step
    columns = tuple(
        replace(one, cells=one.cells[start:stop], marks=one.marks[start:stop]) for one in part.columns
    )
    return Columns(part.labels[start:stop], columns)


def _corner(table: Table[Any]) -> str:
    """Return the head of the labels."""
    heads = [column.head for column in table.columns[: table.stubs]]
    return '  '.join(map(say, [table.needs.corner] if table.needs.corner else heads))


def _title(table: Table[Any], place: int, count: int) -> str:
    """Return the title of one of the parts that a table is cut into, of the table itself where it is whole."""
    title = (
        table.title if count == 1 else message('table.part', title=table.title, place=place + 1, count=count)
    )
    return say(title)


def _rules(table: Table[Any], rows: Sequence[Row]) -> list[int]:
    """Return after which rows of a page a rule is drawn."""
    between = table.needs.rule
    if between is None:
        return list(range(GROUP, len(rows), GROUP))
    return [place for place, pair in enumerate(pairwise(rows), 1) if between(*pair)]


def _lines(words: str) -> int:
    return -(-len(words) // LETTERS_TO_A_LINE)
