"""A table as it should be printed: title, heads, labels, and how each figure is worked out."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from msgspec import Struct
from oracle.corner import corner
from oracle.rounding import part
from skewed import PITCHES

DEPTHS = {
    '2×4': Fraction(7, 2),
    '2×6': Fraction(11, 2),
    '2×8': Fraction(29, 4),
    '2×10': Fraction(37, 4),
    '2×12': Fraction(45, 4),
}
"""in, dressed, dry. Source: Voluntary Product Standard PS 20, American Softwood Lumber Standard."""
THICKNESSES = {
    '3/4': Fraction(3, 4),
    '1': Fraction(1),
    '1 1/4': Fraction(5, 4),
    '1 1/2': Fraction(3, 2),
    '2 1/2': Fraction(5, 2),
    '3 1/2': Fraction(7, 2),
    '5 1/2': Fraction(11, 2),
}
"""in, the columns of tables by thickness."""
BY_PITCH = tuple((label, corner(rise)) for label, rise in PITCHES.items())


class Column(Struct, frozen=True):
    """A column by its printed head."""

    head: str
    figure: Callable[[object], str]
    """The digits of a row, from what its label stands for."""


class Labels(Struct, frozen=True):
    """A table by its printed names."""

    key: str
    """Its name among the tables of the code under test, and in data files."""
    title: str
    corner: str
    """At the head of the labels."""
    rows: tuple[tuple[str, object], ...]
    """Printed labels and what they stand for."""
    columns: tuple[Column, ...]
    says: tuple[str, ...]
    """Words that the small print under the title must hold: the lines, the face, the unit."""
    span: str = ''
    """Over several heads."""


def by(
    columns: dict[str, object], figure: Callable[[object, object], object], told=part
) -> tuple[Column, ...]:
    """Return a column for each of some named values; figure takes a row's value and the column's."""
    return tuple(
        Column(head, lambda row, value=value: told(figure(row, value))) for head, value in columns.items()
    )


def col(head: str, figure: Callable[[object], object], told=part) -> Column:
    """Return a column; figure takes a row's value."""
    return Column(head, lambda row: told(figure(row)))
