"""Judging the figures of a square: a convention told apart from a misprint."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from enum import StrEnum
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from tablegen.checking.allowance import Verdict
from tablegen.checking.amounts import amount
from tablegen.checking.square_figures import LINES, RISES, SIXTEENTHS, Line
from tablegen.checking.square_file import ShownRow
from tablegen.checking.written import Part, Written
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.exact import Exact, floor_of, nearest
from tablegen.roof.figures import Length


class Fit(StrEnum):
    """How a figure comes from the exact length, from the mildest: a cell gets the first that fits it."""

    RIGHT = 'right'
    COARSER = 'coarser'
    """Rounded to a coarser part."""
    CUT_OFF = 'cut_off'
    """Cut off instead of rounded."""
    SEVENTEEN = 'seventeen'
    """Made with 17 for √288."""
    WRONG = 'wrong'


class Convention(StrEnum):
    """What a square's hip figures follow."""

    ROOT_288 = 'root_288'
    SEVENTEEN = 'seventeen'
    NOT_SHOWN = 'not_shown'


class Rounding(StrEnum):
    """What a column's last digits follow."""

    ROUNDED = 'rounded'
    CUT_OFF = 'cut_off'
    NOT_SHOWN = 'not_shown'


EIGHTHS, TWELFTHS = 8, 12
"""Parts that squares are also engraved in; NAVEDTRA 14044, p. 2-7, names both."""


class Cell(Struct, frozen=True):
    """One figure of a square, judged."""

    rise: int
    column: str
    shown: Written
    right: Length
    """What should stand there."""
    difference: Length
    """Shown less exact, in."""
    verdict: Fit
    follows: Convention
    """What this cell speaks for; NOT_SHOWN where both, or neither, give its figure."""
    rounding: Rounding
    """NOT_SHOWN where rounding and cutting off both give its figure, and for one that is coarser or wrong."""
    belongs_to_rise: int | None
    """For a wrong cell, the rise whose figure it is in that column; None where there is none."""
    misprint: bool = False
    """Whether it is wrong, or leaves the square's own convention, or the rounding of its own column."""


class SquareCheck(Struct, frozen=True):
    """A square judged."""

    cells: tuple[Cell, ...]
    counts: Mapping[Fit, int]
    """How many cells there are of each."""
    hip_convention: Convention
    """What most of the telling hip figures follow; NOT_SHOWN where none tells."""
    verdict: Verdict
    """RIGHT where every cell is right or rounded otherwise and none is a misprint."""

    @property
    def misprints(self) -> tuple[Cell, ...]:
        """Return the cells that are misprints."""
        return tuple(cell for cell in self.cells if cell.misprint)


def judge_square(rows: Iterable[ShownRow]) -> SquareCheck:
    """Return the judgement of every cell of a square, and of the whole.

    Notes:
        1. The convention is that of the greater number of telling hip figures, a draw going to √288; a
           telling figure of the other convention is a misprint, for no table follows two.
        2. So it is with figures cut off instead of rounded, in each column by itself: where fewer are cut off than
           rounded, those are misprints. A draw tells nothing.
    """
    cells = [
        _judged(row.rise, line, shown)
        for row in rows
        for line, shown in zip(LINES, row.cells, strict=True)
        if shown is not None
    ]
    follows = Counter(cell.follows for cell in cells)
    old, new = follows[Convention.SEVENTEEN], follows[Convention.ROOT_288]
    convention = (
        Convention.NOT_SHOWN if not old + new else Convention.SEVENTEEN if old > new else Convention.ROOT_288
    )
    strays = [cell for line in LINES for cell in _strays(cells, line)]
    told = tuple(
        replace(
            cell,
            misprint=cell.verdict == Fit.WRONG
            or cell.follows not in (convention, Convention.NOT_SHOWN)
            or cell in strays,
        )
        for cell in cells
    )
    counts = Counter(cell.verdict for cell in told)
    wrong = counts[Fit.SEVENTEEN] or any(cell.misprint for cell in told)
    every = {fit: counts[fit] for fit in Fit}
    return SquareCheck(told, every, convention, Verdict.WRONG if wrong else Verdict.RIGHT)


def _strays(cells: Sequence[Cell], line: Line) -> list[Cell]:
    """Return the cells of a column that leave the rounding of the greater number of it."""
    rounded, cut = (
        [cell for cell in cells if cell.column == line.key and cell.rounding == how]
        for how in (Rounding.ROUNDED, Rounding.CUT_OFF)
    )
    return cut if len(cut) < len(rounded) else rounded if len(rounded) < len(cut) else []


def _judged(rise: int, column: Line, shown: Written) -> Cell:
    pitch = pitch_of_rise(Fraction(rise))
    true = column.exact(pitch)
    how = _fit(shown, true, column)
    by_seventeen = column.seventeen(pitch) if column.seventeen else None
    old = None if by_seventeen is None else _fit(shown, by_seventeen, column)
    verdict = how or (Fit.SEVENTEEN if old else Fit.WRONG)
    follows = Convention.NOT_SHOWN
    if column.seventeen and bool(how) != bool(old):
        follows = Convention.ROOT_288 if how else Convention.SEVENTEEN
    return Cell(
        rise,
        column.key,
        shown,
        column.figure(pitch),
        amount(shown.inches - true),
        verdict,
        follows,
        _rounding(how or old, shown, true if how or not old or by_seventeen is None else by_seventeen),
        _rise_of(column, shown) if verdict == Fit.WRONG else None,
    )


def _rounding(fit: Fit | None, shown: Written, value: Exact) -> Rounding:
    """Return what the last digit of a figure follows: a rounded one tells only where cutting off gives another."""
    part = shown.part.inches
    if fit == Fit.CUT_OFF:
        return Rounding.CUT_OFF
    tells = fit == Fit.RIGHT and floor_of(value / part) * part != shown.inches
    return Rounding.ROUNDED if tells else Rounding.NOT_SHOWN


def _fit(shown: Written, true: Exact, column: Line) -> Fit | None:
    """Return how a figure comes from an exact length, the mildest way first, or None if it does not."""
    parts = _parts(shown.part, column)
    finest = Fraction(1, column.per)
    near = [part for part in parts if nearest(true / part, 1) * part == shown.inches]
    if any(part <= finest for part in near):
        return Fit.RIGHT
    if near:
        return Fit.COARSER
    return Fit.CUT_OFF if any(floor_of(true / part) * part == shown.inches for part in parts) else None


def _parts(read: Part, column: Line) -> list[Fraction]:
    """Return the parts, in inches, that a figure so written may have been rounded to.

    Notes:
        1. A fraction in lowest terms does not tell its part: 11 1/2 may stand for sixteenths or eighths.
           A coarse part is not taken from its looks, else every half would pass for a rounding.
    """
    parts = [Fraction(1, column.per)]
    if read.decimals is not None:
        return [*parts, read.inches]
    parts += [Fraction(1, SIXTEENTHS), Fraction(1, EIGHTHS)]
    if read.per > EIGHTHS:
        parts.append(read.inches)
    if TWELFTHS % read.per == 0 and read.per % 3 == 0:
        parts.append(Fraction(1, TWELFTHS))
    return parts


def _rise_of(column: Line, shown: Written) -> int | None:
    for rise in RISES:
        figure = column.figure(pitch_of_rise(Fraction(rise)))
        if Fraction(figure.count, figure.per) == shown.inches:
            return rise
    return None
