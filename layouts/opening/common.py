"""The left page of an opening: the common rafter."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from layouts.grid.run_tables import PitchTables
from layouts.grid.table_columns import NOTHING
from layouts.opening.beside import Section
from layouts.opening.lines import Cell, Line, length, plain
from layouts.paper.table_font import NAMES
from layouts.words.say import _
from tablegen.geometry import common
from tablegen.geometry.stepping import Hold
from tablegen.numbers import text
from tablegen.numbers.figure import Measure, length_figure
from tablegen.numbers.units import INCHES
from tablegen.roof.seat import Notch, common_notch
from tablegen.roof.side import side
from tablegen.tables.seat import is_tabled, marks_of
from tablegen.tables.table import MARKS

OVERHANGS_IN = tuple(map(Fraction, (8, 12, 16, 18, 24)))
"""in, level (common practice, no source); others are runs, and read in the lengths."""
SIGNS = dict(zip(MARKS, ('†', '‡', '§'), strict=True))


def hold_lines(hold: Hold, body: str) -> tuple[Line, ...]:
    """Return how the square is held, and what a step then is where its figures are made less."""
    held = ((hold.body.text, body), (hold.tongue.text, _('tongue: plumb')))
    told = tuple(Line(NAMES + figure, words=words) for figure, words in held)
    return (*told, Line(_('a step: {run} of run').format(run=hold.run_text))) if hold.holds > 1 else told


def common_sections(tables: PitchTables) -> list[Section]:
    """Return cuts, what comes off for the ridge, bird's mouths by stock and tails by overhang."""
    settings, measure = tables.settings, tables.members.side.boards.measure
    cut, off = tables.members.cut.common, tables.members.shortening.common_at_ridge
    ridge, seat = text.rational(settings.ridge_thickness), text.rational(settings.seat)
    boards = [replace(tables.members.side.boards, stock=size) for size in INCHES.stocks]
    notches = [common_notch(side(tables.pitch, one)) for one in boards]
    told = [one if is_tabled(one) else None for one in notches]
    tails = [common.line_length(out, tables.members.side.slope) for out in OVERHANGS_IN]
    return [
        Section(
            (
                Line(_('Plumb cut'), (plain(cut.plumb.text),)),
                Line(_('Level cut'), (plain(cut.level.text),)),
            )
        ),
        Section(
            (Line(_('level'), (length(off.level),)), Line(_('along the top'), (length(off.along),))),
            _('Off for a ridge {ridge}').format(ridge=ridge),
        ),
        Section(
            (
                *(
                    Line(size.name, (_height(one, measure),))
                    for size, one in zip(INCHES.stocks, told, strict=True)
                ),
                Line(_('heel'), (length(length_figure(notches[0].heel_in, measure)),)),
            ),
            _('Seat {seat}').format(seat=seat),
            (_('over plate'),),
        ),
        Section(
            tuple(
                Line(text.rational(out), (length(length_figure(tail, measure)),))
                for out, tail in zip(OVERHANGS_IN, tails, strict=True)
            ),
            _('Overhang'),
            (_('tail'),),
        ),
    ]


def _height(notch: Notch | None, measure: Measure) -> Cell:
    """Return the height over the plate with the marks of its notch; a dash where the size cannot be notched so."""
    if notch is None:
        return length(None, none=NOTHING)
    return length(length_figure(notch.height_in, measure), ''.join(SIGNS[mark] for mark in marks_of(notch)))


def marks_section() -> Section:
    """Return what the marks beside heights mean."""
    said = (_('past a quarter'), _('past a third'), _('3 1/2 not left'))
    return Section(tuple(Line(f'{sign}  {words}') for sign, words in zip(SIGNS.values(), said, strict=True)))
