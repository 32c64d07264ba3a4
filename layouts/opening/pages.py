"""An opening of a pitch: two pages, in the largest type in which its figures have room."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from markupsafe import Markup

from layouts.drawings.compact_hold import compact_hold
from layouts.grid.run_tables import Head as PitchHead
from layouts.grid.run_tables import PitchTables
from layouts.opening.beside import ALONE, Section, put_sections
from layouts.opening.common import common_sections, hold_lines, mark_lines
from layouts.opening.hips import hip_sections
from layouts.opening.lengths import LEAST_WIDTH, put_lengths, rows_of
from layouts.opening.lines import Line, Lines
from layouts.opening.sheet import Head, Sheet, wide
from layouts.opening.sums import common_note, hip_note
from layouts.paper.page import Index, Unplaced
from layouts.words.caution import caution_text
from layouts.words.say import _, say
from tablegen.geometry import common, corner
from tablegen.geometry.stepping import Hold
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import decimal_figure
from tablegen.numbers.units import INCHES
from tablegen.roof import cautions
from tablegen.tables.opening_runs import OpeningRuns, opening_runs

SIZES = (8.2, 8.0, 7.8, 7.6)
HOLD_ROWS, SIDE_GAP = 6, 9.0
EXACT_PLACES = 4


@dataclass(frozen=True, slots=True)
class OpeningPage:
    """One page of an opening; places in rem."""

    head: PitchHead
    title: str
    line: str
    lines: tuple[Lines, ...]
    heads: tuple[Head, ...]
    rules: Markup
    hold: Markup
    hold_left: float
    notes: tuple[tuple[str, str], ...]
    """A word in bold, '' for none, and what is said."""
    caution: str
    """What the pitch calls for, boxed; '' for nothing."""
    row: float
    """Height of a row."""
    height: float
    """Of the text."""


def opening(tables: PitchTables) -> list[Unplaced]:
    """Return template and maker of both pages."""
    return [
        ('opening', lambda index: _common_page(tables, index)),
        ('opening', lambda index: _hip_page(tables, index)),
    ]


def _common_page(tables: PitchTables, index: Index) -> OpeningPage:
    runs = opening_runs(tables.settings)
    exact = _(
        'feet of run, less the ridge’s “level”, × exact foot. A seat’s heel is its rise; read a ledger as a run.'
    )
    return _page(
        tables,
        runs,
        (_('Common rafter'), _('along the top edge, plate line to ridge center line')),
        [('common', _('common')), ('rise', _('rise'))],
        tables.members.common_hold,
        _('body: level'),
        common_sections(tables),
        mark_lines(),
        [common.line_length(INCHES.unit_run, tables.members.side.slope), tables.pitch.rise],
        [('', common_note(tables, runs)), (_('Exact:'), exact)],
        '',
    )


def _hip_page(tables: PitchTables, index: Index) -> OpeningPage:
    runs = opening_runs(tables.settings)
    return _page(
        tables,
        runs,
        (_('Hip, valley, jacks'), _('for feet and inches of COMMON run; corner to ridge center')),
        [('hip-valley', _('hip, valley'))],
        tables.members.hip_hold,
        _('body: level (√288)') if tables.members.hip_hold.holds == 1 else _('body: level'),
        hip_sections(tables),
        (),
        [corner.hip_length(INCHES.unit_run, tables.members.side.at)],
        [('', f'{hip_note(tables, runs)} {say(cautions.DEFERS)}')],
        ' '.join(map(caution_text, cautions.pitch_cautions(tables.pitch.slope))),
    )


def _page(
    tables: PitchTables,
    runs: OpeningRuns,
    over: tuple[str, str],
    named: Sequence[tuple[str, str]],
    hold: Hold,
    body: str,
    sections: Sequence[Section],
    marks: Sequence[Line],
    per_foot: Sequence[Exact],
    notes: Sequence[tuple[str, str]],
    caution: str,
) -> OpeningPage:
    rows = max(rows_of(runs), HOLD_ROWS + sum(one.height for one in sections) + len(marks))
    for size in SIZES:
        sheet = Sheet(tables.trim, rows, size)
        first, right = put_lengths(sheet, tables, named, runs)
        left = right + SIDE_GAP
        if left + _needed(sections, size) <= sheet.end:
            break
    after = len(runs.feet)
    sheet.head(after, 0, first + LEAST_WIDTH, _('exact foot'), ends=False)
    cells = tuple(decimal_figure(one, EXACT_PLACES).text for one in per_foot)
    sheet.put(after + 1, 0, (first - 2, 36), [Line('', cells)])
    told = hold_lines(hold, body)
    name = wide([line.name for line in told if line.cells], size) + 4.5
    sheet.put(HOLD_ROWS - len(told), left, (left + name, ALONE), told)
    put_sections(sheet, sections, HOLD_ROWS, left)
    if marks:
        sheet.rule(rows - len(marks), left, sheet.end)
        sheet.put(rows - len(marks), left, (left + 11, ALONE), marks)
    drawn = compact_hold(hold, sheet.end - left, (HOLD_ROWS - len(told)) * sheet.row + 7)
    return OpeningPage(
        tables.head,
        *over,
        tuple(sheet.lines),
        tuple(sheet.heads),
        sheet.rules(),
        drawn,
        round(left / 10, 3),
        tuple(notes),
        caution,
        round(sheet.row / 10, 4),
        round(tables.trim.text_height / 10, 3),
    )


def _needed(sections: Sequence[Section], size: float) -> float:
    """Return the width that the widest row of some sections needs, units."""
    return max(
        wide([line.name], size) + sum(wide([cell], size) + 6 for cell in line.cells)
        for one in sections
        for line in one.rows
    )
