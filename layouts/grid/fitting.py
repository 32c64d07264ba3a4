"""How the columns of a table lie on a page: as many as will go, in the largest type that takes them."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import TypeGuard

from msgspec import Struct

from layouts.grid.table_columns import NOTHING, Column
from layouts.paper.trim import DIGIT_EM, FRACTION_OF_WHOLE, SPACE_EM, Trim, fraction_em, whole_em
from tablegen.numbers.figure import INCH, Figure

SIZES = (8.3, 8.0, 7.7)
"""Sizes of type tried for a table, in units; none below the least that reads in bad light."""
EDGE = 1.0
"""Kept free at the right: the typesetter places each letter to a thousandth of an em, and a line of them drifts."""
PX_PER_POINT, STRETCH = 4 / 3, 1.024
"""The typesetter cuts a tab stop down to whole CSS pixels, then sets it 1024/1000 as far: measured, and columns are
made to fit such stops, lest the last of them leave the page."""
MARK_EM = 0.5
NARROW_EM = {'.': 0.28, '°': 0.44, '-': 0.33, ' ': 0.25}
"""Widths of what is narrower than a digit, in em."""


class Look(Struct, frozen=True):
    """How tables of one kind are spaced, in units."""

    gaps: tuple[float, ...]
    """Widths between columns that are tried, the widest first."""
    label_rule: float
    """How far left of the first figure the rule beside the labels stands: not beside it as a 1 would."""
    spread: float
    """What a column may be wider than its figures and the gap."""
    narrow_spaces: int
    """Spaces narrower than a digit that may push a label to its place."""


RUNS = Look((5.0,), 2.4, 9.0, 0)
REFERENCE = Look((6.4, 5.2), 3.6, 24.0, 6)


class Widest(Struct, frozen=True):
    """What the columns of a table must have room for."""

    digits: int
    """Of the longest whole number of a length, which every shorter one is padded to; 0 for no lengths."""
    feet: int
    """Digits of the longest feet before it; 0 where lengths are in inches alone."""
    per: int
    """Smallest parts of an inch."""
    marked: int = 0
    """Marks beside a figure, at most."""
    plain: float = 0
    """Width of the widest decimal, angle or word, em."""


class Fit(Struct, frozen=True):
    """How a table's columns lie on a page; widths in units."""

    look: Look
    wide: Widest
    trim: Trim
    size: float
    label: float
    """Of the labels' column."""
    needed: float
    """Of one column at least, its gap included."""
    room: float
    """For all columns, the last one's gap included."""
    columns: int

    @property
    def whole(self) -> float:
        """Return the width of the longest whole number."""
        return whole_em(self.wide.digits, self.wide.feet) * self.size

    def stop(self) -> tuple[float, float]:
        """Return how far it is from one column to the next as it is set, and the tab stop to ask for, in rem."""
        return tab_stop(min(self.room / max(self.columns, 1), self.needed + self.look.spread), self.trim)


def widest(columns: Iterable[Column]) -> Widest:
    """Return what some columns must have room for."""
    columns = tuple(columns)
    lengths = [cell for column in columns for cell in column.cells if is_length(cell)]
    return Widest(
        *_digits(lengths),
        max((cell.per for cell in lengths), default=1),
        max((len(mark) for column in columns for mark in column.marks), default=0),
        max((em(plain(cell)) for one in columns for cell in one.cells if not is_length(cell)), default=0),
    )


def widest_of(figure: Figure) -> Widest:
    """Return what columns of lengths up to a greatest one must have room for."""
    return Widest(*_digits([figure]), figure.per)


def fit(
    wide: Widest, label: Callable[[float], float], most: int, look: Look, trim: Trim, least: float = 0
) -> Fit:
    """Return how columns are set: as many as will go on a page, in the largest type that takes them.

    Given:
        label  gives the width of the labels' column in a size of type, units
        most   columns that would be welcome
        least  width that a column's head needs, its gap included, units
    """
    found = []
    for gap in look.gaps:
        for size in SIZES:
            whole = whole_em(wide.digits, wide.feet) * size
            part = (fraction_em(wide.per) + MARK_EM * wide.marked) * size * FRACTION_OF_WHOLE
            length = whole + SPACE_EM * size + part if wide.digits else 0
            needed = max(least, max(length, wide.plain * size) + gap)
            room = trim.text_width - label(size) + gap - EDGE
            columns = min(most, int(room // needed))
            found.append(Fit(look, wide, trim, size, label(size), needed, room, columns))
    columns = max(one.columns for one in found)
    return next(one for one in found if one.columns == columns)


def tab_stop(width: float, trim: Trim) -> tuple[float, float]:
    """Return the width in units of the widest column that the typesetter sets within a width, and what to ask for."""
    per_pixel = STRETCH / (trim.unit_pt * PX_PER_POINT)  # units
    pixels = int(width / per_pixel)
    return pixels * per_pixel, round((pixels + 0.25) / (10 * trim.unit_pt * PX_PER_POINT), 4)


def is_length(cell: object) -> TypeGuard[Figure]:
    """Return whether a cell is a length in parts of an inch, which has a fraction."""
    return isinstance(cell, Figure) and cell.unit == INCH and cell.per & (cell.per - 1) == 0


def em(words: str) -> float:
    """Return the width of a number or a few letters in em, roughly."""
    return sum(NARROW_EM.get(letter, DIGIT_EM) for letter in words)


def _digits(lengths: Sequence[Figure]) -> tuple[int, int]:
    """Return digits of the longest whole number, and of the feet before it where lengths are in feet."""
    feet = [len(cell.parts.feet) for cell in lengths if cell.parts.feet]
    if feet:
        return 2, max(feet)
    return max((len(cell.parts.sign + (cell.parts.whole or '0')) for cell in lengths), default=0), 0


def plain(cell: object) -> str:
    if cell is None:
        return NOTHING
    return cell.text if isinstance(cell, Figure) else str(cell)
