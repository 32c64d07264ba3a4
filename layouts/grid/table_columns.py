"""Records of a reference table as the labels and columns of a printed one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields
from fractions import Fraction

from layouts.paper.trim import FIGURE_SPACE
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.tables.former import Record

NOTHING = '–'
MARKS, THIN = ('', '†', '‡'), '§'
"""Beside a figure: nothing; a notch past a quarter of the depth; past a third. After it: too little left under a tail."""


@dataclass(frozen=True, slots=True)
class Column:
    """One column of finished figures."""

    head: str
    cells: tuple[object, ...]
    """Figures, whole numbers, words, or None for none."""
    marks: tuple[str, ...]
    """What stands after each figure, mostly nothing."""
    none: str = NOTHING
    """What stands where there is no figure."""


@dataclass(frozen=True, slots=True)
class Columns:
    """A table's rows as labels and columns."""

    labels: tuple[str, ...]
    columns: tuple[Column, ...]


def columns_of(rows: Sequence[Record], heads: Sequence[str], stubs: int, none: str = NOTHING) -> Columns:
    """Return the labels and columns of a table's records.

    Given:
        heads  one for each value of a row, a tuple's each for itself
        stubs  values at the beginning of a row that name it
        none   what stands where there is no figure
    """
    flat = [_flat(row) for row in rows]
    labels = _aligned(['  '.join(_label(value) for _, value in row[:stubs]) for row in flat])
    found = []
    beside = [iter(_beside(row)) for row in rows]
    marked = getattr(rows[0], 'MARKED', ())
    for place in range(stubs, len(flat[0])):
        name = flat[0][place][0]
        if name in ('marks', 'thin'):
            continue
        cells = tuple(row[place][1] for row in flat)
        marks = tuple(next(one) for one in beside) if name in marked else ('',) * len(rows)
        found.append(Column(heads[place], cells, marks, none))
    return Columns(labels, tuple(found))


def _several(value: int | tuple[int, ...]) -> tuple[int, ...]:
    return value if isinstance(value, tuple) else (value,)


def _beside(row: object) -> list[str]:
    """Return what stands beside the marked figures of a row, in their order."""
    thin = _several(getattr(row, 'thin', ()))
    past = _several(getattr(row, 'marks', (0,) * len(thin)))
    return [MARKS[one] + THIN * under for one, under in zip(past, thin, strict=True)]


def _flat(row: Record) -> list[tuple[str, object]]:
    found: list[tuple[str, object]] = []
    for field in fields(row):
        value = getattr(row, field.name)
        found += [(field.name, one) for one in value] if isinstance(value, tuple) else [(field.name, value)]
    return found


def _aligned(names: Sequence[str]) -> tuple[str, ...]:
    """Return names of rows with whole numbers under each other, whatever fraction follows."""
    parts = [(name, '') if '/' not in name else name.rpartition(' ')[::2] for name in names]
    before = max(len(whole) for whole, _ in parts)
    if not any(fraction for _, fraction in parts):
        return tuple(name.rjust(before, FIGURE_SPACE) for name in names)
    return tuple(f'{whole.rjust(before, FIGURE_SPACE)} {fraction}'.rstrip(' ') for whole, fraction in parts)


def _label(value: object) -> str:
    if isinstance(value, Pitch):
        return value.short
    return text.rational(value) if isinstance(value, Fraction) else str(value)
