"""Reference tables for other programs: every printed figure as a number, and as text where it is no decimal."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import fields
from fractions import Fraction
from typing import Any

from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.exact import nearest
from tablegen.numbers.figure import DEGREE, INCH, Figure
from tablegen.tables.former import Record

UNIT_NAMES = {INCH: 'inches', DEGREE: 'degrees'}
A_LENGTH = Figure(0, 16, INCH, text.Parts())
MOST_PLACES = 6
"""Decimals that show a 64th exactly."""


def table_data(rows: Sequence[Record], names: Sequence[str]) -> Iterator[tuple[str, ...]]:
    """Return a table's column names, then its rows as text, one at a time.

    Given:
        rows   records of one kind, all of one table
        names  Table.names(): the plain name of each head, in order

    Notes:
        1. A length to a part of an inch makes two columns: NAME_inches, the value of the printed figure in
           decimals, and NAME_text, as printed. A figure in decimals makes one. No figure leaves its cells empty.
        2. Several figures of one kind are told apart by what their heads name: drop_1_1_2_in_inches is the drop of a
           hip 1 1/2 in thick.
    """
    flat = [_flat(row, names) for row in rows]
    kinds = [_kind([row[place] for row in flat]) for place in range(len(flat[0]))]
    yield tuple(name for (key, _), kind in zip(flat[0], kinds, strict=True) for name in _names(key, kind))
    for row in flat:
        yield tuple(cell for (_, value), kind in zip(row, kinds, strict=True) for cell in _cells(value, kind))


def _flat(row: Record, names: Sequence[str]) -> list[tuple[str, object]]:
    """Return the values of a row by name, those of a tuple by their heads."""
    found: list[tuple[str, object]] = []
    for field in fields(row):
        value = getattr(row, field.name)
        if isinstance(value, tuple):
            begun, own = len(found), f'{field.name}_'
            told = [own + names[begun + n].removeprefix(own) for n in range(len(value))]
            found += list(zip(told, value, strict=True))
        else:
            found.append((field.name, value))
    return found


def _kind(column: list[tuple[str, object]]) -> Figure | None:
    """Return a figure that shows how a column is told, None for a column without figures.

    Where every figure is left out it was one of lengths: nothing else is left out of a table.
    """
    if all(value is None for _, value in column):
        return A_LENGTH
    return next((value for _, value in column if isinstance(value, Figure)), None)


def _fraction(figure: Figure) -> bool:
    return figure.per & (figure.per - 1) == 0 and figure.unit == INCH


def _names(key: str, kind: Figure | None) -> list[str]:
    if kind is None:
        return [key]
    unit = UNIT_NAMES.get(kind.unit)
    name = f'{key}_{unit}' if unit else key
    return [name, f'{key}_text'] if _fraction(kind) else [name]


def _cells(value: Any, kind: Figure | None) -> list[str]:
    if kind is None:
        return [_plain(value)]
    if value is None:
        return ['', ''] if _fraction(kind) else ['']
    return [_number(value), value.text] if _fraction(kind) else [_number(value)]


def _number(figure: Figure) -> str:
    places = MOST_PLACES if _fraction(figure) else len(str(figure.per)) - 1
    return text.plain_decimal(nearest(Fraction(figure.count, figure.per), 10**places), places)


def _plain(value: object) -> str:
    if isinstance(value, Pitch):
        return value.text
    return text.rational(value) if isinstance(value, Fraction) else str(value)
