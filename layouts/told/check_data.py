"""The checks as data: a check's record as an object for JSON, a square's figures as rows for CSV."""

from __future__ import annotations

from typing import Any

from layouts.told import dialect
from layouts.told.objects import as_data
from tablegen.checking.square_file import HEADER
from tablegen.checking.square_judging import SquareCheck
from tablegen.numbers.figure import INCH, Figure
from tablegen.tables.table import Table

JUDGED_HEADER = (
    'rise',
    'column',
    *dialect.column_names('shown', INCH),
    *dialect.column_names('right', INCH),
    *dialect.column_names('difference', INCH),
    'verdict',
    'belongs_to_rise',
)


def check_data(name: str, check: Any) -> dict[str, Any]:
    """Return a check's record as an object that says which check it is of."""
    return {'check': name, **as_data(check)}


def figures_data(carried: Table[int]) -> dict[str, Any]:
    """Return what a square should carry as an object."""
    keys = [column.key for column in carried.columns]
    rows = [dict(zip(keys, map(as_data, row.cells), strict=True)) for row in carried.rows()]
    return {'check': 'square', 'rows': rows}


def blank_rows(carried: Table[int]) -> list[tuple[str, ...]]:
    """Return the form in which a square's figures are read: a row a rise, its cells empty."""
    return [HEADER, *((str(row.cells[0]), *[''] * (len(HEADER) - 1)) for row in carried.rows())]


def figure_rows(carried: Table[int]) -> list[tuple[str, ...]]:
    """Return what a square should carry as rows under their header."""
    stub, *columns = carried.columns
    names = [name for column in columns for name in dialect.column_names(column.key, column.unit)]
    rows = [
        (
            str(row.cells[0]),
            *(told for cell in row.cells if isinstance(cell, Figure) for told in dialect.cells(cell)),
        )
        for row in carried.rows()
    ]
    return [(stub.key, *names), *rows]


def judged_rows(check: SquareCheck) -> list[tuple[str, ...]]:
    """Return a square's judgement as rows, a cell a row."""
    rows = [
        (
            str(cell.rise),
            cell.column,
            *as_data(cell.shown).values(),
            *dialect.cells(cell.right),
            *dialect.cells(cell.difference),
            cell.verdict,
            str(cell.belongs_to_rise or ''),
        )
        for cell in check.cells
    ]
    return [JUDGED_HEADER, *rows]
