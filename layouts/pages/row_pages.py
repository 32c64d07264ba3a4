"""Tables with a short row for each pitch or rise: cells by themselves, with rules between groups of rows."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from layouts.paper.longer import CUTS
from layouts.paper.typeface import advance_em
from tablegen.numbers.figure import Figure

GROUP = 6
"""Rows between rules."""
Cell = tuple[str, str]
"""A figure, and its fraction where that is set smaller."""


class Over(Struct, frozen=True):
    """What stands over several heads."""

    lines: tuple[str, ...]
    columns: int


class RowsPage(Struct, frozen=True):
    """One page of such a table."""

    heads: tuple[tuple[str, ...], ...]
    """Of the rows' names, then of every column, in lines."""
    groups: tuple[tuple[tuple[Cell, ...], ...], ...]
    """Rows between rules: the row's name, then its figures."""
    over: tuple[Over, ...] = ()
    """Of the rows' names, then of groups of columns; none for no such line."""
    size: float = 0
    """Of the figures, rem; 0 for the style's own."""
    below: str = ''

    @property
    def slots(self) -> tuple[float, ...]:
        """Return how wide the fractions of each column are, in em of their size; 0 for a column without."""
        rows = [row for group in self.groups for row in group]
        return tuple(round(slot_em(column), 3) for column in zip(*rows, strict=True))


def slot_em(cells: Sequence[Cell]) -> float:
    """Return how wide the widest fraction of some cells is, in em of its size; 0 for none."""
    return max((advance_em(fraction, *CUTS['text']) for _figure, fraction in cells), default=0.0)


def grouped(rows: Sequence[tuple[Cell, ...]]) -> tuple[tuple[tuple[Cell, ...], ...], ...]:
    """Return rows between rules."""
    return tuple(tuple(rows[at : at + GROUP]) for at in range(0, len(rows), GROUP))


def parted(figure: Figure) -> Cell:
    """Return a figure with its fraction apart."""
    return figure.parts._replace(fraction='').text, figure.parts.fraction
