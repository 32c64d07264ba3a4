"""Judging the figures of a square: a convention told apart from a misprint."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from tablegen.checking.amounts import Amount, amount
from tablegen.checking.square_figures import LINES, RISES, SIXTEENTHS, Line
from tablegen.checking.square_file import ShownRow
from tablegen.checking.written import Part, Written
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.exact import Exact, floor_of, nearest
from tablegen.numbers.figure import Figure

RIGHT = 'right'
CUT_OFF = 'cut-off'
COARSER = 'coarser'
SEVENTEEN = 'seventeen'
WRONG = 'wrong'
VERDICTS = (RIGHT, COARSER, CUT_OFF, SEVENTEEN, WRONG)
"""From the mildest: a cell gets the first that fits it."""
ROUNDED_OTHERWISE = (CUT_OFF, COARSER)
ROOT_288, NOT_SHOWN = 'root-288', 'not-shown'
"""With SEVENTEEN, the conventions that a square's hip figures can follow."""
ROUNDED = 'rounded'
"""With CUT_OFF, what a column's last digits can follow."""
EIGHTHS, TWELFTHS = 8, 12
"""Parts that squares are also engraved in; NAVEDTRA 14044, p. 2-7, names both."""


@dataclass(frozen=True, slots=True)
class Cell:
    """One figure of a square, judged."""

    rise: int
    column: str
    shown: Written
    right: Figure
    """What should stand there."""
    difference: Amount
    """Shown less exact, in."""
    verdict: str
    """One of VERDICTS."""
    follows: str
    """The convention that this cell speaks for; 'not-shown' where both, or neither, give its figure."""
    rounding: str
    """'rounded' or 'cut-off'; 'not-shown' where both give its figure, and for one that is coarser or wrong."""
    belongs_to: int | None
    """For a wrong cell, the rise whose figure it is in that column; None where there is none."""


@dataclass(frozen=True, slots=True)
class SquareCheck:
    """A square judged."""

    cells: tuple[Cell, ...]
    convention: str
    """What most of the telling hip figures follow: 'root-288' or 'seventeen'; 'not-shown' where none tells."""
    misprints: tuple[Cell, ...]
    """Wrong cells, and cells that leave the square's own convention, or the rounding of their own column."""
    rounded_otherwise: tuple[Cell, ...]
    verdict: str
    """'right' where every cell is right or rounded otherwise and none is a misprint; else 'wrong'."""

    def count(self, verdict: str) -> int:
        """Return how many cells have a verdict."""
        return sum(cell.verdict == verdict for cell in self.cells)


def judge_square(rows: Iterable[ShownRow]) -> SquareCheck:
    """Return the judgement of every cell of a square, and of the whole.

    Notes:
        1. The convention is that of the greater number of telling hip figures, a draw going to √288; a
           telling figure of the other convention is a misprint, for no table follows two.
        2. So it is with figures cut off instead of rounded, in each column by itself: where fewer are cut off than
           rounded, those are misprints. A draw tells nothing.
    """
    cells = tuple(
        _judged(row.rise, column, shown)
        for row in rows
        for column, shown in zip(LINES, row.cells, strict=True)
        if shown is not None
    )
    follows = [cell.follows for cell in cells]
    old, new = follows.count(SEVENTEEN), follows.count(ROOT_288)
    convention = NOT_SHOWN if not old + new else SEVENTEEN if old > new else ROOT_288
    strays = [cell for column in LINES for cell in _strays(cells, column)]
    misprints = tuple(
        cell
        for cell in cells
        if cell.verdict == WRONG or cell.follows not in (convention, NOT_SHOWN) or cell in strays
    )
    return SquareCheck(
        cells,
        convention,
        misprints,
        tuple(cell for cell in cells if cell.verdict in ROUNDED_OTHERWISE),
        WRONG if misprints or any(cell.verdict == SEVENTEEN for cell in cells) else RIGHT,
    )


def _strays(cells: tuple[Cell, ...], column: Line) -> list[Cell]:
    """Return the cells of a column that leave the rounding of the greater number of it."""
    rounded, cut = (
        [cell for cell in cells if cell.column == column.key and cell.rounding == how]
        for how in (ROUNDED, CUT_OFF)
    )
    return cut if len(cut) < len(rounded) else rounded if len(rounded) < len(cut) else []


def _judged(rise: int, column: Line, shown: Written) -> Cell:
    pitch = pitch_of_rise(Fraction(rise))
    true = column.exact(pitch)
    how = _fit(shown, true, column)
    by_seventeen = column.seventeen(pitch) if column.seventeen else None
    old = None if by_seventeen is None else _fit(shown, by_seventeen, column)
    verdict = how or (SEVENTEEN if old else WRONG)
    follows = NOT_SHOWN
    if column.seventeen and bool(how) != bool(old):
        follows = ROOT_288 if how else SEVENTEEN
    return Cell(
        rise,
        column.key,
        shown,
        column.figure(pitch),
        amount(shown.inches - true),
        verdict,
        follows,
        _rounding(how or old, shown, true if how or not old or by_seventeen is None else by_seventeen),
        _rise_of(column, shown) if verdict == WRONG else None,
    )


def _rounding(fit: str | None, shown: Written, value: Exact) -> str:
    """Return what the last digit of a figure follows: a rounded one tells only where cutting off gives another."""
    part = shown.part.inches
    if fit == CUT_OFF:
        return CUT_OFF
    return ROUNDED if fit == RIGHT and floor_of(value / part) * part != shown.inches else NOT_SHOWN


def _fit(shown: Written, true: Exact, column: Line) -> str | None:
    """Return how a figure comes from an exact length, the mildest way first, or None if it does not."""
    parts = _parts(shown.part, column)
    finest = Fraction(1, column.per)
    near = [part for part in parts if nearest(true / part, 1) * part == shown.inches]
    if any(part <= finest for part in near):
        return RIGHT
    if near:
        return COARSER
    return CUT_OFF if any(floor_of(true / part) * part == shown.inches for part in parts) else None


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
