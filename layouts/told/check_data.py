"""The checks as data: a check's record as an object for JSON, a square's figures as rows for CSV."""

from __future__ import annotations

from typing import Any

from layouts.told import dialect
from layouts.told.objects import as_data
from tablegen.checking.square_file import HEADER
from tablegen.checking.square_judging import SquareCheck
from tablegen.numbers.figure import INCH
from tablegen.tables.table import Table

MEASURED = ('shown', 'right', 'difference')


def check_data(name: str, check: Any) -> dict[str, Any]:
    """Return a check's record as an object that says which check it is of."""
    return {'check': name, **as_data(check)}


def blank_rows(carried: Table[int]) -> list[tuple[str, ...]]:
    """Return the form in which a square's figures are read: a row a rise, its cells empty."""
    return [HEADER, *((str(row.cells[0]), *[''] * (len(HEADER) - 1)) for row in carried.rows())]


def judged_rows(check: SquareCheck) -> list[tuple[str, ...]]:
    """Return a square's judgement as rows, a cell a row."""
    names = [name for key in MEASURED for name in dialect.column_names(key, INCH)]
    rows = []
    for cell in check.cells:
        measured = [told for key in MEASURED for told in as_data(getattr(cell, key)).values()]
        rows.append((str(cell.rise), cell.column, *measured, cell.verdict, str(cell.belongs_to_rise or '')))
    return [('rise', 'column', *names, 'verdict', 'belongs_to_rise'), *rows]
