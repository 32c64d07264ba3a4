"""Tables for other programs, in the one dialect: a row as the cells of a CSV file, or as an object of JSON."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction
from typing import Any

from layouts.told import dialect
from layouts.words.datum import datum_of
from layouts.words.say import say
from tablegen.geometry.pitch import Pitch
from tablegen.messages import Message
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.tables.table import Cell, Column, Kind, Table

MEASURED = (Kind.LENGTH, Kind.DECIMAL, Kind.DEGREES)
"""Kinds of columns whose cells are told in decimals and as text."""
MARKS = 'marks'


def csv_rows(table: Table[Any]) -> Iterator[list[str]]:
    """Return the names of a table's columns in CSV, then its rows, one at a time; no figure leaves its cells empty."""
    yield [name for column in table.columns for name in _names(column)]
    kinds = [(column.kind in MEASURED, column.marks is not None) for column in table.columns]
    for row in table.rows():
        found: list[str] = []
        for (measured, marked), cell, marks in zip(kinds, row.cells, row.marks, strict=True):
            found += _cells(cell) if measured else ['' if cell is None else str(_told(cell))]
            if marked:
                found.append(' '.join(marks))
        yield found


def json_rows(table: Table[Any]) -> Iterator[dict[str, object]]:
    """Return a table's rows as objects, one at a time; no figure is null, and marks stand in the figure's own object."""
    keys = [column.key for column in table.columns]
    marked = [(place, column.key) for place, column in enumerate(table.columns) if column.marks]
    for row in table.rows():
        told = dict(zip(keys, map(_told, row.cells), strict=True))
        for place, key in marked:
            figure = told[key]
            if isinstance(figure, dict):
                figure[MARKS] = list(row.marks[place])
        yield told


def listed(table: Table[Any]) -> dict[str, Any]:
    """Return what a list of tables says of one: its name, title, and each column with from where to where it is."""
    columns = [
        {
            'key': column.key,
            'kind': column.kind.value,
            'unit': dialect.UNITS.get(column.unit, '') if column.kind in MEASURED else '',
            'head': _line(column.head),
            'measured': datum_of(table, [column]),
        }
        for column in table.columns
    ]
    return {
        'table': table.key,
        'group': table.group,
        'title': say(table.title),
        'measured': datum_of(table, table.columns),
        'columns': columns,
    }


def csv_list(tables: Iterable[dict[str, Any]]) -> Iterator[list[str]]:
    """Return a list of tables in CSV: names and heads of all columns of a table, each in one cell."""
    yield ['table', 'group', 'title', 'columns', 'heads', 'measured']
    for one in tables:
        keys, heads = (' | '.join(column[what] for column in one['columns']) for what in ('key', 'head'))
        yield [one['table'], one['group'], one['title'], keys, heads, one['measured']]


def _line(head: Message) -> str:
    return say(head).replace('\n', ' ')


def _names(column: Column[Any]) -> list[str]:
    if column.kind not in MEASURED:
        return [column.key]
    marks = [f'{column.key}_{MARKS}'] if column.marks else []
    return [*dialect.column_names(column.key, column.unit), *marks]


def _cells(cell: Cell) -> tuple[str, str]:
    if isinstance(cell, Figure):  # asked first: most are
        return dialect.cells(cell)
    return (dialect.decimal(cell), text.rational(cell)) if isinstance(cell, Fraction) else dialect.cells(None)


def _told(cell: Cell) -> Any:
    match cell:
        case Figure():
            return dialect.told(cell)
        case Fraction():
            return dialect.length(cell, text.rational(cell))
        case Pitch():
            return cell.text
        case Message():
            return say(cell)
        case _:
            return cell
