"""What a square shows, read from a CSV file that its owner filled in."""

from __future__ import annotations

import csv
import io

from msgspec import Struct

from tablegen.checking.square_figures import KEYS, RISES
from tablegen.checking.written import Written, written
from tablegen.errors import BookError
from tablegen.messages import Message, message
from tablegen.written.numbers import whole_number

RISE = 'rise'
HEADER = (RISE, *KEYS)
TEMPLATE = message('square.template')
RISES_ALLOWED = message('square.rises', first=RISES.start, last=RISES.stop - 1)


class ShownRow(Struct, frozen=True):
    """What a square shows under one rise."""

    rise: int
    cells: tuple[Written | None, ...]
    """In the order of KEYS; None where the square has no figure."""


def read_square(content: str, source: str) -> tuple[ShownRow, ...]:
    """Return the rows of a CSV text whose header is HEADER, in any order; an empty cell is left out.

    Given:
        source  the file's name, for errors

    Errors:
        BookError naming row and column: a column missing, unknown or named twice, a rise that is off the
        table or given twice, a cell that is no length, no figure at all
    """
    table = csv.reader(io.StringIO(content.removeprefix('\ufeff'), newline=''), skipinitialspace=True)
    try:
        lines = [(table.line_num, cells) for cells in table if any(cell.strip() for cell in cells)]
    except csv.Error as fault:
        problem = message('square.no_csv', fault=str(fault))
        raise BookError(_row_place(source, table.line_num), problem, '', TEMPLATE) from None
    if not lines:
        raise BookError(
            source, message('square.empty'), message('square.header', header=','.join(HEADER)), TEMPLATE
        )
    header = _header(lines[0][1], source)
    rows: dict[int, ShownRow] = {}
    for number, cells in lines[1:]:
        row = _row(header, cells, source, number)
        if row.rise in rows:
            problem = message('square.rise_twice', rise=row.rise)
            raise BookError(_cell_place(source, number, RISE), problem, message('square.rises_once'))
        rows[row.rise] = row
    if not any(cell for row in rows.values() for cell in row.cells):
        raise BookError(source, message('square.no_figure'), message('square.one_cell'), TEMPLATE)
    return tuple(rows[rise] for rise in sorted(rows))


def _header(cells: list[str], source: str) -> list[str]:
    names = [cell.strip().lower() for cell in cells]
    for name in HEADER:
        if name not in names:
            problem = message('square.missing_column', name=name)
            raise BookError(_row_place(source, 1), problem, HEADER, TEMPLATE)
    for column, name in enumerate(names, 1):
        place = _row_place(source, 1, str(column))
        if name not in HEADER:
            raise BookError(place, message('error.unknown', value=f"'{name}'"), HEADER, TEMPLATE)
        if name in names[: column - 1]:
            raise BookError(place, message('square.twice', name=name), message('square.columns_once'))
    return names


def _row(header: list[str], cells: list[str], source: str, line: int) -> ShownRow:
    if len(cells) != len(header):
        problem = message('square.cells', cells=len(cells), columns=len(header))
        raise BookError(_row_place(source, line), problem, message('square.cell_a_column'))
    shown = dict(zip(header, (cell.strip() for cell in cells), strict=True))
    rise = shown[RISE]
    number = whole_number(rise)
    if number is None or number not in RISES:
        problem = message('square.off_the_table', written=rise)
        raise BookError(_cell_place(source, line, RISE), problem, RISES_ALLOWED)
    return ShownRow(
        number,
        tuple(_cell(shown[key], _cell_place(source, line, key)) if shown[key] else None for key in KEYS),
    )


def _cell(shown: str, place: Message) -> Written:
    read = written(shown, place)
    if not read.inches:
        problem, leave = message('square.no_square_figure', written=shown), message('square.leave_empty')
        raise BookError(place, problem, message('error.above_zero'), leave)
    return read


def _row_place(source: str, row: int, column: str = '') -> Message:
    if not column:
        return message('square.row', source=source, row=row)
    return message('square.cell', source=source, row=row, column=column)


def _cell_place(source: str, row: int, column: str) -> Message:
    return _row_place(source, row, f"'{column}'")
