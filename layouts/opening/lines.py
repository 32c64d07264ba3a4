"""Lines of an opening: a name and figures at tab stops, each line one run of text in reading order."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from layouts.grid.fitting import tab_stop
from layouts.grid.grid import padded as whole
from layouts.paper.table_font import line_em
from layouts.paper.trim import FIGURE_SPACE, Trim
from tablegen.numbers.figure import Figure

BEFORE, AFTER = 2.3, 0.6
"""A name that ends so near before a stop, or after it, in units, might pass it or not: the typesetter wants a space's width
before a stop. Blanks carry the name on."""


@dataclass(frozen=True, slots=True)
class Line:
    """One line."""

    name: str
    """Beginning with table_font.NAMES where it is bold."""
    cells: tuple[str, ...] = ()
    """What stands at the stops."""


@dataclass(frozen=True, slots=True)
class Lines:
    """Lines under one another; sizes and places in rem."""

    left: float
    top: float
    tab: float
    """The tab stop to ask for."""
    size: float
    text: str


def lines_at(
    listed: Sequence[Line],
    left: float,
    top: float,
    stops: tuple[float, float],
    size: float,
    trim: Trim,
    ends: bool = False,
) -> Lines:
    """Return lines whose figures stand at stops that are equally far apart.

    Given:
        left, top  where names begin, or with `ends` where they end, and the top of the first line, units
        stops      where the first figure stands, and how far it is from there to the next, units
        size       of the type, units

    Notes:
        1. Tab stops are counted from the left edge of the text, so that it begins as many whole stops left of the first
           figure as the longest name needs, and spaces bring each name to its place.
    """
    first, apart = stops
    column, tab = tab_stop(apart, trim)
    longest = max(line_em(line.name) for line in listed) * size
    begins = min(left - longest if ends else left, first)
    edge = first - (int((first - begins) // column) + 1) * column
    told = []
    for line in listed:
        width = line_em(line.name) * size
        blanks, given = _blank((left - width if ends else left) - edge, size)
        name, reaches = line.name, given + width
        while line.cells and not AFTER < reaches % column < column - BEFORE:
            name, reaches = f'{name} ', reaches + line_em(' ') * size
        tabs = round((first - edge) / column) - int(reaches // column)
        told.append(blanks + name + ('\t' * max(1, tabs) + '\t'.join(line.cells) if line.cells else ''))
    return Lines(round(edge / 10, 4), round(top / 10, 4), tab, round(size / 10, 4), '\n'.join(told))


def padded(figure: Figure | None, digits: int, none: str = '', mark: str = '', feet: int = 0) -> str:
    """Return a length with its whole number moved right by spaces as wide as digits, its fraction in one place."""
    if figure is None:
        return none and none.rjust(digits, FIGURE_SPACE)
    parts = figure.parts
    fraction = f' {parts.fraction}' if parts.fraction else ''
    return f'{whole(figure, digits, feet)}{fraction}{parts.mark}{mark}'


def in_column(figures: Sequence[Figure | None], none: str = '') -> list[str]:
    """Return lengths of one column, their whole numbers under one another."""
    feet = max((len(one.parts.feet) for one in figures if one), default=0)
    digits = max((len(one.parts.whole if feet else one.parts.before) for one in figures if one), default=0)
    return [padded(one, digits, none, feet=feet) for one in figures]


def _blank(width: float, size: float) -> tuple[str, float]:
    """Return blanks about as wide as said, and how wide they are."""
    wide, narrow = line_em(FIGURE_SPACE) * size, line_em(' ') * size
    many = max(0, int(width // wide))
    few = max(0, round((width - many * wide) / narrow))
    return FIGURE_SPACE * many + ' ' * few, many * wide + few * narrow
