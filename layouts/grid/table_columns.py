"""A table's rows as the labels and columns of a printed one."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import Any

from msgspec import Struct

from layouts.paper.trim import FIGURE_SPACE
from layouts.words.say import say
from tablegen.geometry.pitch import Pitch
from tablegen.messages import Message
from tablegen.numbers import text
from tablegen.numbers.text import Parts
from tablegen.tables.table import PAST_A_QUARTER, PAST_A_THIRD, THIN, Cell, Row, Table

NOTHING = '—'
SIGNS = {PAST_A_QUARTER: '†', PAST_A_THIRD: '‡', THIN: '§'}
"""What stands beside a figure for each mark."""


class Column(Struct, frozen=True):
    """One column of finished figures."""

    head: str
    cells: tuple[object, ...]
    """Figures, whole numbers, words, or None for none."""
    marks: tuple[str, ...]
    """What stands after each figure, mostly nothing."""
    none: str = NOTHING
    """What stands where there is no figure."""


class Columns(Struct, frozen=True):
    """A table's rows as labels and columns."""

    labels: tuple[str, ...]
    columns: tuple[Column, ...]


def columns_of(table: Table[Any], rows: Sequence[Row]) -> Columns:
    """Return the labels and columns of a table's rows."""
    found = [
        Column(
            say(column.head),
            tuple(_said(row.cells[place]) for row in rows),
            tuple(''.join(SIGNS[mark] for mark in row.marks[place]) for row in rows),
            NOTHING if table.needs.dashes else '',
        )
        for place, column in enumerate(table.columns)
    ]
    names = [[_named(stub) for stub in row.cells[: table.stubs]] for row in rows]
    return Columns(_aligned(names), tuple(found[table.stubs :]))


def label(stub: Cell) -> str:
    """Return how a row is called by one of its stubs."""
    return _named(stub).text


def _named(stub: Cell) -> Parts:
    match stub:
        case Pitch():
            return stub.parts
        case Fraction():
            return text.rational_parts(stub)
        case _:
            return Parts(whole=str(_said(stub)))


def _said(cell: Cell) -> object:
    return say(cell) if isinstance(cell, Message) else cell


def _aligned(names: Sequence[Sequence[Parts]]) -> tuple[str, ...]:
    """Return names of rows, a part a stub, with whole numbers under each other, whatever fraction follows the last."""
    parted = [
        ('  '.join([*(one.text for one in first), last.before if last.fraction else last.text]), last)
        for *first, last in names
    ]
    longest = max(len(whole) for whole, _ in parted)
    gap = ' ' if any(last.fraction for _, last in parted) else ''
    return tuple(
        f'{whole.rjust(longest, FIGURE_SPACE)}{gap}{last.fraction}{last.mark if last.fraction else ""}'.rstrip(
            ' '
        )
        for whole, last in parted
    )
