"""An opening of a pitch: two pages, in the largest type in which its figures have room."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from functools import cache
from itertools import product

from markupsafe import Markup, escape
from msgspec import Struct

from layouts.drawings.compact_hold import compact_hold
from layouts.grid.run_tables import Head as PitchHead
from layouts.grid.run_tables import PitchTables
from layouts.opening import common as commons
from layouts.opening import hips
from layouts.opening.beside import Section, put_sections
from layouts.opening.common import common_sections, hold_lines, marks_note
from layouts.opening.hips import hip_sections
from layouts.opening.lengths import put_lengths, rows_of
from layouts.opening.lines import Column, Line, Lines, plain, wide
from layouts.opening.sheet import GAP, Head, Sheet
from layouts.opening.sums import common_note, hip_note
from layouts.paper.longer import lines_in
from layouts.paper.page import Index, PageNumber, Unplaced
from layouts.paper.table_font import NAMES
from layouts.words.caution import caution_text
from layouts.words.say import _, say
from tablegen.geometry import common, corner
from tablegen.geometry.stepping import Hold
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import decimal_figure
from tablegen.numbers.units import INCHES
from tablegen.roof import cautions
from tablegen.tables.opening_runs import OpeningRuns, opening_runs

SIZES, APART, NEAR = (8.2, 8.0, 7.8, 7.6), 9.0, 5.0
ATTEMPTS = [
    *product((False, True), (APART,), SIZES),
    (True, NEAR, SIZES[-1]),
]
"""Whether small runs are told in inches in any book, what is free between blocks, and the size of type, units: the
first in which all has room, or the last."""
HOLD_ROWS, HOLD_TOP = 6, 29.5
"""Rows beside which the hold stands, and where it begins, units."""
NOTE_SIZE, NOTE_LINE, FREE = 7.2, 9.4, 4.0
"""Of notes as the style sheet sets them, and what is free above them, units."""
BOX_SIDES, BOX_UNITS = 11.0, 2.5
"""What a box takes of the width and of the height, units."""
EXACT_PLACES = 4


class OpeningPage(Struct, frozen=True):
    """One page of an opening; places in rem."""

    head: PitchHead
    title: str
    line: str
    lines: tuple[Lines, ...]
    heads: tuple[Head, ...]
    rules: Markup
    hold: Markup
    hold_left: float
    note: Markup
    caution: str
    """What the pitch calls for, boxed; '' for nothing."""
    row: float
    """Height of a row."""
    height: float
    """Of the text."""


def opening(tables: PitchTables) -> list[Unplaced]:
    """Return template and maker of both pages."""

    both = cache(lambda care, reading: _both(tables, care, reading))

    def page(index: Index, place: int) -> OpeningPage:
        care = next((index[key] for key in ('care', 'cautions') if key in index), PageNumber(0))
        return both(care, index.get('reading'))[place]

    return [('opening', lambda index: page(index, 0)), ('opening', lambda index: page(index, 1))]


class _Told(Struct, frozen=True):
    """What is said at the foot of a page."""

    note: Markup
    caution: str = ''

    def height(self, width: float) -> float:
        """Return what it takes, and is free above it, units."""
        lines = lines_in(self.note.striptags(), NOTE_SIZE, width)
        boxed = lines_in(self.caution, NOTE_SIZE, width - BOX_SIDES) if self.caution else 0
        return FREE + NOTE_LINE * (lines + boxed) + (BOX_UNITS if boxed else 0)


def _both(tables: PitchTables, care: PageNumber, reading: PageNumber) -> tuple[OpeningPage, OpeningPage]:
    """Return both pages, their rows alike: the page that has more to say at its foot decides.

    Given:
        care, reading  the pages of cautions and of reading lengths; 0 for none
    """
    at = tables.members
    runs = opening_runs(tables.settings)
    mouths, of_hips = commons.mouths_of(tables), hips.mouths_of(at)
    marks = marks_note(mouths, care), marks_note(of_hips, care)
    said = (_common_said(tables, runs, marks[0], reading), _hip_said(tables, runs, marks[1]))
    foot = max(one.height(tables.trim.text_width) for one in said)
    common_page = _page(
        tables,
        runs,
        (_('Common rafter'), _('along the top edge, plate line to ridge center line')),
        [('common', _('common')), ('rise', _('rise'))],
        (at.common_hold, _('body: level')),
        common_sections(tables, mouths),
        [common.line_length(INCHES.unit_run, at.side.slope), tables.pitch.rise],
        said[0],
        foot,
    )
    hip_page = _page(
        tables,
        runs,
        (_('Hip, valley, jacks'), _('for feet and inches of COMMON run; corner to ridge center')),
        [('hip-valley', _('hip, valley'))],
        (at.hip_hold, _('body: level (√288)') if at.hip_hold.holds == 1 else _('body: level')),
        hip_sections(tables, of_hips),
        [corner.hip_length(INCHES.unit_run, at.side.at)],
        said[1],
        foot,
    )
    return common_page, hip_page


def _common_said(tables: PitchTables, runs: OpeningRuns, marks: Markup, reading: PageNumber) -> _Told:
    sums = common_note(tables, runs)
    exact = Markup(
        _(
            '<b>To have it exact</b>, page {page}: run in feet × exact foot; take half the ridge off the run for its cut.'
        )
    )
    if not reading:
        exact = Markup(
            _(
                '<b>To have it exact</b>: run in feet × exact foot; take half the ridge off the run for its cut.'
            )
        )
    return _Told(Markup(f'{marks} {escape(sums)} {exact.format(page=reading)}'))


def _hip_said(tables: PitchTables, runs: OpeningRuns, marks: Markup) -> _Told:
    called = ' '.join(map(caution_text, cautions.pitch_cautions(tables.pitch.slope)))
    cheeks = _('Cheeks: blade at 45° on the plumb line.')
    told = (cheeks, marks, hip_note(tables, runs), say(cautions.DEFERS))
    return _Told(Markup(' ').join(filter(None, told)), called)


def _page(
    tables: PitchTables,
    runs: OpeningRuns,
    over: tuple[str, str],
    named: Sequence[tuple[str, str]],
    held: tuple[Hold, str],
    sections: Sequence[Section],
    per_foot: Sequence[Exact],
    told: _Told,
    foot: float,
) -> OpeningPage:
    rows = max(rows_of(runs), HOLD_ROWS + sum(one.height for one in sections))
    lines = hold_lines(*held)
    for in_inches, apart, size in ATTEMPTS:
        sheet = Sheet(tables.trim, rows, size, foot, apart)
        columns, right = put_lengths(sheet, tables, named, runs, in_inches)
        left = right + apart
        held_wide = max(wide(f'{line.name} {line.words}', size) for line in lines) - wide(NAMES, size)
        if left + max(held_wide, *(one.needs(size) for one in sections)) <= sheet.end:
            break
    _put_exact_foot(sheet, len(runs.feet), columns, per_foot)
    begins = sheet.y(HOLD_ROWS - len(lines))
    sheet.put(begins, left - wide(NAMES, size), [], lines[:2])
    if lines[2:]:
        sheet.put(begins + 2 * sheet.row, left, [], lines[2:])
    put_sections(sheet, sections, sheet.y(HOLD_ROWS), sheet.y(rows - 1) + sheet.row, left)
    drawn = compact_hold(held[0], sheet.end - left, begins - HOLD_TOP)
    return OpeningPage(
        tables.head,
        *over,
        tuple(sheet.lines),
        tuple(sheet.heads),
        sheet.rules(),
        drawn,
        round(left / 10, 3),
        told.note,
        told.caution,
        round(sheet.row / 10, 4),
        round(tables.trim.text_height / 10, 3),
    )


def _put_exact_foot(sheet: Sheet, row: int, columns: Sequence[Column], per_foot: Sequence[Exact]) -> None:
    """Put the exact length and rise of a foot of run under the feet."""
    sheet.head(sheet.y(row), 0, columns[0].right, _('exact foot'), ends=False)
    cells = tuple(plain(exactly(one)) for one in per_foot)
    places, left = [], 0.0
    for cell, column in zip(cells, columns, strict=True):
        right = max(column.right, left + wide(cell.text, sheet.size))
        places.append(Column(left, left, right))
        left = right + GAP
    sheet.put(sheet.y(row + 1), 0, places, [Line('', cells)])


def exactly(length: Exact) -> str:
    """Return a length as an opening tells it exactly: to a few decimals, one that has fewer with those alone."""
    told = decimal_figure(length, EXACT_PLACES)
    return told.text.rstrip('0').rstrip('.') if exact(Fraction(told.count, told.per)) == length else told.text
