"""Faces: one side of a card as a plain record."""

from __future__ import annotations

from msgspec import Struct

from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES


class Cell(Struct, frozen=True):
    """A figure with its fraction apart; '' where it has none."""

    whole: str
    fraction: str


class Title(Struct, frozen=True):
    """What stands beside the hole."""

    figure: str
    """Set big."""
    unit: str
    what: str


class Row(Struct, frozen=True):
    """One row of a table."""

    label: str
    cells: tuple[Cell, ...]


class TableFace(Struct, frozen=True):
    """A face with one table; sizes in points."""

    title: Title
    heads: tuple[tuple[str, ...], ...]
    """Of the labels, then of every column, each in the same number of lines."""
    groups: tuple[tuple[Row, ...], ...]
    """Rows between rules."""
    widths: tuple[float, ...]
    """Of the labels, then of every column; together the width for figures."""
    fractions: tuple[float, ...]
    """Room for a fraction in every column; 0 where it has none."""
    size: float
    line: float
    head_size: float
    foot: tuple[str, ...]


class Block(Struct, frozen=True):
    """Lines of words, or rows of several figures, under a head."""

    head: str
    rows: tuple[tuple[str, ...], ...]
    """A row of one text is a line of words; of two, a name and its meaning."""
    figures: bool = False
    """Whether the rows are figures in columns instead."""
    name_width: float = 0.0
    """Room for the names in a row of two; known once the type is."""


class WordsFace(Struct, frozen=True):
    """A face of words."""

    title: Title
    blocks: tuple[Block, ...]
    size: float
    line: float
    foot: tuple[str, ...]


Face = TableFace | WordsFace


def cell_of(figure: Figure | None) -> Cell:
    """Return a figure with its fraction apart; a decimal has none."""
    if figure is None:
        return Cell('', '')
    if figure.per not in INCHES.parts:
        return Cell(figure.text, '')
    return Cell(figure.parts.before, figure.parts.fraction)
