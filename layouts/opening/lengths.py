"""The lengths of an opening: feet, whole inches and parts of an inch, to be added up."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from functools import lru_cache

from msgspec.structs import replace

from layouts.drawings import svg
from layouts.grid.run_tables import PitchTables
from layouts.opening.lines import Column, Line, column_at, length, wide, widest
from layouts.opening.sheet import GAP, GROUP, TOP, Sheet, head_wide
from layouts.paper.table_font import NAMES
from layouts.words.say import _
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.tables.opening_runs import OpeningRuns

HEADS = TOP - 10.4
"""Where heads begin, units."""
RULE_GAP, LABEL_GAP = 2.6, 3.2
"""Between a row's name and the rule, the rule and the figures; units."""
LEAST_WIDTH, LEAST_NEXT = 29.5, 16.0
"""Of the first column of lengths, whose head is long, and of the next; units."""


def rows_of(runs: OpeningRuns) -> int:
    """Return how many rows the longer block of lengths takes."""
    return max(len(runs.feet) + 2, len(runs.inches) + 1 + len(runs.parts))


def put_lengths(
    sheet: Sheet,
    tables: PitchTables,
    named: Sequence[tuple[str, str]],
    runs: OpeningRuns,
    in_inches: bool,
) -> tuple[list[Column], float]:
    """Put both blocks on a page.

    Given:
        named      the tables to put, by their names among a book's parts, and their heads
        in_inches  whether what inches and parts of them add is told in inches in a book of feet and inches too

    Returned:
        the columns of the first block, and where free room begins right of the second; units
    """
    feet = [(0, _('ft'), [str(int(run // INCHES.group)) for run in runs.feet], runs.feet)]
    columns = _block(sheet, tables, named, 0, feet, False)
    small = [
        (0, _('in'), _names(runs.inches), runs.inches),
        (len(runs.inches) + 1, _('parts of an inch'), _names(runs.parts), runs.parts),
    ]
    return columns, _block(sheet, tables, named, columns[-1].right + sheet.apart, small, in_inches)[-1].right


def _block(
    sheet: Sheet,
    tables: PitchTables,
    named: Sequence[tuple[str, str]],
    left: float,
    stacked: Sequence[tuple[int, str, Sequence[str], Sequence[Fraction]]],
    in_inches: bool,
) -> list[Column]:
    """Put one block on a page: groups of runs one under another; return its columns."""
    size = sheet.size
    runs = [run for *_ignored, some in stacked for run in some]
    told = [tables.lengths(name, runs) for name, _head in named]
    cells = [[length(_inches(one) if in_inches else one) for one in some] for some in told]
    edge = left + max(widest([NAMES + name for name in names], size) for _row, _head, names, _runs in stacked)
    edge = max(edge - wide(NAMES, size), left + head_wide(stacked[0][1]))
    columns: list[Column] = []
    at = edge + RULE_GAP + LABEL_GAP
    for listed, least in zip(cells, (LEAST_WIDTH, LEAST_NEXT), strict=False):
        columns.append(column_at(at, listed, size, least))
        at = columns[-1].right + GAP
    end = columns[-1].right
    rows = list(zip(*cells, strict=True))
    for row, head, names, some in stacked:
        lines = [Line(NAMES + name, figures) for name, figures in zip(names, rows, strict=False)]
        del rows[: len(some)]
        sheet.put_rows(row, edge, columns, lines)
        sheet.down(edge + RULE_GAP, row, row + len(some) - 1)
        for under in range(row - row % GROUP + GROUP, row + len(some), GROUP):
            sheet.rule_over(under, left, end)
        if row:
            sheet.head(sheet.y(row - 1), left, end + sheet.apart - 2, head, ends=False)
        else:
            sheet.head(HEADS, left, edge, head)
            for (_name, words), column in zip(named, columns, strict=True):
                sheet.head(HEADS, column.left, column.right, words)
    sheet.rule(TOP, left, end, svg.LINE)
    return columns


@lru_cache(maxsize=8)  # they are those of every opening
def _names(runs: tuple[Fraction, ...]) -> tuple[str, ...]:
    return tuple(map(text.rational, runs))


def _inches(figure: Figure) -> Figure:
    """Return a length in inches alone, with the mark that it bears among feet."""
    return replace(figure, parts=text.mixed_parts(figure.count, figure.per)._replace(mark=figure.parts.mark))
