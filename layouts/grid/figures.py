"""A page of lengths under one kind of head: runs by feet and inches, lists of runs, jacks by spacing."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from msgspec.structs import replace

from layouts.grid.fitting import RUNS, Fit, Look, fit, widest_of
from layouts.grid.grid import GROUP, Grid, grid
from layouts.grid.table_columns import Column, Columns
from layouts.paper.trim import FIGURE_SPACE, Trim
from tablegen.numbers import text
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, length_figure
from tablegen.settings import Settings

LISTS = replace(RUNS, spread=0.0)
"""In a list the lengths stand beside their runs."""
MOST_BEFORE_A_HEAD = 3
"""Figure spaces and digits that bring a head over the whole numbers below it."""


def fitted(
    length: Exact,
    label: float,
    most: int,
    settings: Settings,
    trim: Trim,
    least: float = 0,
    look: Look = RUNS,
) -> Fit:
    """Return how lengths up to a greatest one lie in columns, the same at every pitch.

    Given:
        length  in
        label   width of the labels' column, units
        most    columns that would be welcome
        least   width that a column's head needs, units
    """
    wide = widest_of(length_figure(length, settings.measure))
    return fit(wide, lambda size: label, most, look, trim, least)


def figures_grid(
    rows: Sequence[tuple[str | int, Sequence[Figure | None]]],
    heads: Sequence[str],
    corner: str,
    laid: Fit,
    first_group: int = GROUP,
    groups: Sequence[str] = (),
) -> Grid:
    """Return one page of figures.

    Given:
        rows         a label and a figure (or none) in every column; labels that are numbers end under each other
        heads        one a column
        corner       head of the labels
        first_group  rows before the first rule; later rules follow every six
        groups       heads of groups of columns, as many columns in each
    """
    longest = max(len(str(name)) for name, cells in rows)
    labels = tuple(
        name if isinstance(name, str) else str(name).rjust(longest, FIGURE_SPACE) for name, cells in rows
    )
    none = ('',) * len(rows)
    columns = tuple(
        Column('', cells, none, '') for cells in zip(*(cells for name, cells in rows), strict=True)
    )
    in_group = len(heads) // max(1, len(groups))
    over = ['', *(name for group in groups for name in (group, *[''] * (in_group - 1)))] if groups else []
    after = range(first_group, len(rows), GROUP)
    return grid(
        Columns(labels, columns), laid, over, [corner, *heads], after, laid.trim.row_units, 0, in_group
    )


def over_wholes(number: Fraction, head: str, laid: Fit) -> str:
    """Return a head that begins with a number moved right over the whole numbers below it; a fraction has no room to."""
    parts = text.rational_parts(number)
    room = min(laid.wide.digits + laid.wide.feet, MOST_BEFORE_A_HEAD) - len(parts.text)
    return head if parts.fraction else FIGURE_SPACE * max(0, room) + head
