"""Small runs to add, at the foot of a table of runs: which stand on which of two facing pages, and in how many lines."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from functools import cache

from msgspec import Struct

from layouts.grid.fitting import REFERENCE, tab_stop
from layouts.grid.grid import pushed
from layouts.paper.longer import CUTS
from layouts.paper.trim import Trim, mixed_em
from layouts.paper.typeface import advance_em
from layouts.words.say import _
from tablegen.numbers import text
from tablegen.numbers.exact import root
from tablegen.numbers.figure import Figure, Measure, length_figure
from tablegen.settings import Settings
from tablegen.tables.runs import part_runs

WIDEST_COLUMN, MOST_IN_A_LINE, ROWS_OF_A_LINE = 34.0, 9, 2
"""Width of a small run's column in units; how many stand in a line; rows that each further line takes."""
SIZE, GAP = 8.0, 3.5
"""Size of their type, as the style sheet sets it, and what is free between them, in units: twice a word space."""
LABEL, LABEL_GAP = 17.0, 2.5
"""Width of the column that names a row, in units: theirs, and that of the feet above them; what is free in it."""


class Additions(Struct, frozen=True):
    """A line of small runs above a line of what each adds, at tab stops."""

    names: str
    figures: str
    column: float
    """Width of a column as it is set, in rem."""
    tab: float
    """The tab stop to ask for, rem."""
    left: float
    """Where lines begin, rem: a stop left of the table's first column."""
    indent: str
    """Blanks that bring the lines' names to the page's edge."""


class Lie(Struct, frozen=True):
    """How a page's small runs lie, the same at every pitch."""

    lines: int
    columns: int
    apart: float
    """What is free between two figures at least, units."""


def turns(settings: Settings, trim: Trim, cuts: int) -> list[list[Fraction]]:
    """Return the small runs of the first and of the second of two facing pages; all of them where there is but one.

    Given:
        cuts  pages of a table side by side

    Notes:
        1. They are parted where they take fewest lines, then where the figures stand furthest apart: those of the
           first page are narrower, and one more of them may have room there.
    """
    small = part_runs(settings.runs, settings.measure.per)
    if cuts == 1 or len(small) < 2:
        return [small] * min(cuts, 2)
    half = -(-len(small) // 2)
    parted = [[small[:at], small[at:]] for at in range(half, min(half + 2, len(small)))]

    def merit(turns: list[list[Fraction]]) -> tuple[int, float]:
        lies = [lie(turn, settings, trim) for turn in turns]
        return max(one.lines for one in lies), -min(one.apart for one in lies)

    return min(parted, key=merit)


def lie(turn: Sequence[Fraction], settings: Settings, trim: Trim) -> Lie:
    """Return how one page's small runs lie."""
    squares = tuple(pitch.corner.hip_length_squared for pitch in settings.pitches)
    widest = max((_widest_em(run, squares, settings.measure) for run in turn), default=0) * SIZE
    most = max(1, min(MOST_IN_A_LINE, int((trim.text_width - LABEL + GAP) / (widest + GAP))))
    columns = min(most, len(turn))
    return Lie(-(-len(turn) // most), columns, _column(columns, trim) - widest)


def rows_taken(lies: Sequence[Lie]) -> int:
    """Return how many rows of a table give way to lines of small runs past the first."""
    return ROWS_OF_A_LINE * max(0, max(one.lines for one in lies) - 1)


def additions(figures: Sequence[tuple[Fraction, Figure]], columns: int, trim: Trim) -> tuple[Additions, ...]:
    """Return the lines of one page's small runs.

    Given:
        figures  each run and what it adds, in order
        columns  how many stand in a line
    """
    pairs = [(text.rational(run), figure.parts._replace(mark='').text) for run, figure in figures]
    label = max(LABEL, *(advance_em(one, *CUTS['bold']) * SIZE + LABEL_GAP for one in (_('for'), _('add'))))
    column, tab = tab_stop(_column(columns, trim, label), trim)
    cuts = [pairs[at : at + columns] for at in range(0, len(pairs), max(1, columns))]
    return tuple(
        Additions(
            '\t'.join(run for run, _ in cut),
            '\t'.join(figure for _, figure in cut),
            round(column / 10, 4),
            tab,
            round((label - column) / 10, 4),
            pushed((column - label) / SIZE, REFERENCE),
        )
        for cut in cuts
    )


def _column(columns: int, trim: Trim, label: float = LABEL) -> float:
    return min((trim.text_width - label) / max(1, columns), WIDEST_COLUMN)


@cache
def _widest_em(run_in: Fraction, squares: tuple[Fraction, ...], measure: Measure) -> float:
    """Return the widest figure of a small run, a hip's, at any of a book's pitches; in em.

    Given:
        squares  Corner.hip_length_squared of each

    Notes:
        1. A figure wider than its column would push the next one under another run. The steepest pitch has not
           always the widest: 3 is narrower than 2 13/16.
    """
    lengths = (root(square) * run_in for square in squares)
    return max(mixed_em(length_figure(length, measure).parts._replace(mark='').text) for length in lengths)
