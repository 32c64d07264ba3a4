"""The left page of an opening: the common rafter."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from markupsafe import Markup
from msgspec import Struct
from msgspec.structs import replace

from layouts.grid.run_tables import PitchTables
from layouts.grid.table_columns import NOTHING, SIGNS
from layouts.opening.beside import Section
from layouts.opening.lines import Cell, Line, length, plain
from layouts.paper.table_font import NAMES
from layouts.words.say import _
from tablegen.geometry import common
from tablegen.geometry.shortening import at_ledger
from tablegen.geometry.stepping import Hold
from tablegen.numbers import text
from tablegen.numbers.figure import Measure, length_figure
from tablegen.numbers.units import INCHES
from tablegen.roof.figures import TwoWays
from tablegen.roof.seat import Notch, common_notch
from tablegen.roof.side import side
from tablegen.tables.seat import is_tabled, marks_of
from tablegen.tables.table import PAST_A_QUARTER, PAST_A_THIRD, THIN

OVERHANGS_IN = tuple(map(Fraction, (8, 12, 16, 18, 24)))
"""in, level (common practice, no source); others are runs, and read in the lengths."""


def hold_lines(hold: Hold, body: str) -> tuple[Line, ...]:
    """Return how the square is held, and what a step then is where its figures are made less."""
    held = ((hold.body.text, body), (hold.tongue.text, _('tongue: plumb')))
    told = tuple(Line(NAMES + figure, words=words) for figure, words in held)
    return (*told, Line(_('a step: {run} of run').format(run=hold.run_text))) if hold.holds > 1 else told


class Mouth(Struct, frozen=True):
    """A bird's mouth and the marks beside it."""

    notch: Notch
    marks: tuple[str, ...]

    @property
    def signs(self) -> str:
        """Return its marks as they stand beside a figure."""
        return ''.join(SIGNS[mark] for mark in self.marks)


def common_sections(tables: PitchTables, mouths: Sequence[Mouth | None]) -> list[Section]:
    """Return cuts, what comes off for the ridge, bird's mouths by stock and tails by overhang."""
    settings, measure = tables.settings, tables.members.side.boards.measure
    cut, off = tables.members.cut.common, tables.members.shortening.common_at_ridge
    ridge, seat = text.rational(settings.ridge_thickness), text.rational(settings.seat)
    ledger = tables.members.side.both(at_ledger(settings.rafter_thickness), tables.members.side.slope)
    tails = [common.line_length(out, tables.members.side.slope) for out in OVERHANGS_IN]
    return [
        Section(
            (
                Line(_('Plumb cut'), (plain(cut.plumb.text),)),
                Line(_('Level cut'), (plain(cut.level.text),)),
            )
        ),
        _off(_('Off for a ridge {ridge}').format(ridge=ridge), off),
        _off(_('Off for a ledger {ledger}').format(ledger=text.rational(settings.rafter_thickness)), ledger),
        Section(
            (
                *(
                    Line(size.name, (_height(one, measure),))
                    for size, one in zip(INCHES.stocks, mouths, strict=True)
                ),
                Line(_('heel'), (length(length_figure(common_notch(tables.members.side).heel_in, measure)),)),
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


def _off(title: str, off: TwoWays) -> Section:
    rows = (_('level'), off.level), (_('along the top'), off.along)
    return Section(tuple(Line(name, (length(figure),)) for name, figure in rows), title)


def _height(mouth: Mouth | None, measure: Measure) -> Cell:
    """Return the height over the plate with the marks of its notch; a dash where the size cannot be notched so."""
    if mouth is None:
        return length(None, none=NOTHING)
    return length(length_figure(mouth.notch.height_in, measure), mouth.signs)


def mouths_of(tables: PitchTables) -> list[Mouth | None]:
    """Return the bird's mouths of commons, one a size of stock; None for one that is not tabled."""
    boards = [replace(tables.members.side.boards, stock=size) for size in INCHES.stocks]
    notches = (common_notch(side(tables.pitch, one)) for one in boards)
    return [Mouth(one, marks_of(one)) if is_tabled(one) else None for one in notches]


def marks_note(mouths: Sequence[Mouth | None], page: int) -> Markup:
    """Return what the marks beside heights mean, of those alone that some bird's mouths bear; '' for none.

    Given:
        page  where more is said of them; 0 for nowhere
    """
    words = {
        PAST_A_QUARTER: _('notch past 1/4 of depth'),
        PAST_A_THIRD: _('notch past 1/3 of depth'),
        THIN: _('leaves under 3 1/2'),
    }
    borne = {mark for mouth in mouths if mouth for mark in mouth.marks}
    told = ', '.join(f'{SIGNS[mark]} {said}' for mark, said in words.items() if mark in borne)
    if not told or not page:
        return Markup('{}.' if told else '').format(told)
    return Markup(_('{said}: page {page}.')).format(said=told, page=page)
