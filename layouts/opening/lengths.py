"""The lengths of an opening: feet, whole inches and parts of an inch, to be added up."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from layouts.drawings import svg
from layouts.grid.run_tables import PitchTables
from layouts.opening.lines import Line, in_column
from layouts.opening.sheet import GAP, GROUP, Sheet, wide
from layouts.paper.table_font import NAMES
from layouts.words.say import _
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.tables.opening_runs import OpeningRuns

RULE_GAP, LABEL_GAP, BLOCK_GAP = 2.6, 3.2, 9.0
"""Between a row's name and the rule, the rule and the figures, two blocks; units."""
LEAST_WIDTH, LEAST_NEXT = 29.5, 16.0
"""Of the first column of lengths, whose head is long, and of the next; units."""


def rows_of(runs: OpeningRuns) -> int:
    """Return how many rows the longer block of lengths takes."""
    return max(len(runs.feet) + 2, len(runs.inches) + 1 + len(runs.parts))


def put_lengths(
    sheet: Sheet, tables: PitchTables, named: Sequence[tuple[str, str]], runs: OpeningRuns
) -> tuple[float, float]:
    """Put both blocks on a page.

    Given:
        named  the tables to put, by their names among a book's parts, and their heads

    Returned:
        where the figures of the first block begin, and where free room begins right of the second; units
    """
    begins, right = _block(sheet, tables, named, 0, [(0, _('ft'), _feet(runs.feet), runs.feet)])
    split = len(runs.inches) + 1
    _begin, right = _block(
        sheet,
        tables,
        named,
        right + BLOCK_GAP,
        [
            (0, _('in'), _names(runs.inches), runs.inches),
            (split, _('parts of an inch'), _names(runs.parts), runs.parts),
        ],
    )
    return begins, right


def _block(
    sheet: Sheet,
    tables: PitchTables,
    named: Sequence[tuple[str, str]],
    left: float,
    stacked: Sequence[tuple[int, str, list[str], Sequence[Fraction]]],
) -> tuple[float, float]:
    """Put one block on a page: groups of runs one under another; return where its figures begin and where it ends."""
    size = sheet.size
    runs = [run for *_ignored, some in stacked for run in some]
    columns = [in_column([tables.figures(name, runs)[run] for run in runs]) for name, _head in named]
    label = max(wide([NAMES + name for name in names], size) for _row, _head, names, _runs in stacked)
    edge = left + label
    first = edge + RULE_GAP + LABEL_GAP
    widths = [wide(column, size) for column in columns]
    widths = [max(one, least) for one, least in zip(widths, (LEAST_WIDTH, LEAST_NEXT), strict=False)]
    apart = widths[0] + GAP
    end = first + sum(widths) + GAP * (len(widths) - 1)
    place = 0
    for row, head, names, some in stacked:
        cells = [column[place : place + len(some)] for column in columns]
        place += len(some)
        told = [
            Line(NAMES + name, figures) for name, figures in zip(names, zip(*cells, strict=True), strict=True)
        ]
        sheet.put(row, edge, (first, apart), told, ends=True)
        sheet.down(edge + RULE_GAP, row, row + len(some))
        for under in range(row - row % GROUP + GROUP, row + len(some), GROUP):
            sheet.rule(under, left, end)
        if row:
            sheet.head(row - 1, left, end + BLOCK_GAP - 2, head, ends=False)
        else:
            sheet.head(-1.1, left, edge, head)
            at = first
            for (_name, words), width in zip(named, widths, strict=True):
                sheet.head(-1.1, at - GAP + 1, at + width, words)
                at += width + GAP
    sheet.rule(0, left, end, svg.LINE)
    return first, end


def _feet(runs: Sequence[Fraction]) -> list[str]:
    return [str(int(run // INCHES.group)) for run in runs]


def _names(runs: Sequence[Fraction]) -> list[str]:
    return [text.rational(run) for run in runs]
