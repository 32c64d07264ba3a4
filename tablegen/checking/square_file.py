"""What a square shows, read from a CSV file that its owner filled in."""

from __future__ import annotations

import csv
import io
from dataclasses import dataclass

from tablegen.checking.square_figures import KEYS, RISES
from tablegen.checking.written import Written, written
from tablegen.errors import BookError

RISE = 'rise'
HEADER = (RISE, *KEYS)
TEMPLATE = 'rafterbook check square --blank prints one to fill in'
RISES_ALLOWED = f'whole inches per foot, {RISES.start} to {RISES.stop - 1}'


@dataclass(frozen=True, slots=True)
class ShownRow:
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
        raise BookError(f'{source}: row {table.line_num}', f'is no CSV: {fault}', '', TEMPLATE) from None
    if not lines:
        raise BookError(source, 'is empty', f'a header {",".join(HEADER)} and a row a rise', TEMPLATE)
    header = _header(lines[0][1], source)
    rows: dict[int, ShownRow] = {}
    for number, cells in lines[1:]:
        row = _row(header, cells, f'{source}: row {number}')
        if row.rise in rows:
            said = f'the rise {row.rise} is there twice'
            raise BookError(f"{source}: row {number}, column '{RISE}'", said, 'each rise once')
        rows[row.rise] = row
    if not any(cell for row in rows.values() for cell in row.cells):
        raise BookError(source, 'has no figure in it', 'at least one filled cell', TEMPLATE)
    return tuple(rows[rise] for rise in sorted(rows))


def _header(cells: list[str], source: str) -> list[str]:
    names = [cell.strip().lower() for cell in cells]
    place = f'{source}: row 1'
    for name in HEADER:
        if name not in names:
            raise BookError(place, f"the column '{name}' is missing", ', '.join(HEADER), TEMPLATE)
    for column, name in enumerate(names, 1):
        if name not in HEADER:
            raise BookError(f'{place}, column {column}', f"'{name}' is unknown", ', '.join(HEADER), TEMPLATE)
        if name in names[: column - 1]:
            raise BookError(f'{place}, column {column}', f"'{name}' is there twice", 'each column once')
    return names


def _row(header: list[str], cells: list[str], place: str) -> ShownRow:
    if len(cells) != len(header):
        said = f'{len(cells)} cells under {len(header)} columns'
        raise BookError(place, said, 'a cell a column, empty where the square shows nothing')
    shown = dict(zip(header, (cell.strip() for cell in cells), strict=True))
    rise = shown[RISE]
    if not rise.isascii() or not rise.isdigit() or len(rise) > 3 or int(rise) not in RISES:
        raise BookError(f"{place}, column '{RISE}'", f"'{rise}' is off the table", RISES_ALLOWED)
    return ShownRow(
        int(rise),
        tuple(_cell(shown[key], f"{place}, column '{key}'") if shown[key] else None for key in KEYS),
    )


def _cell(shown: str, place: str) -> Written:
    read = written(shown, place)
    if not read.inches:
        raise BookError(place, f"'{shown}' is no figure of a square", 'above 0', 'leave the cell empty')
    return read
