"""The right page of an opening: hip, valley and jacks."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import zip_longest

from layouts.grid.run_tables import PitchTables
from layouts.grid.table_columns import NOTHING
from layouts.opening.beside import Section
from layouts.opening.common import Mouth
from layouts.opening.lines import Cell, Line, length, plain
from layouts.words.say import _
from tablegen.geometry import corner
from tablegen.numbers import text
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import length_figure
from tablegen.numbers.units import INCHES
from tablegen.roof.cheeks import OnTop
from tablegen.roof.figures import TwoWays
from tablegen.roof.members import Members
from tablegen.settings import Settings
from tablegen.tables.seat import marks_of

OVERHANGS_IN = tuple(map(Fraction, (12, 16, 18, 24)))
"""in, level, of the commons (common practice, no source)."""


def hip_sections(tables: PitchTables, mouths: Sequence[Mouth | None]) -> list[Section]:
    """Return cuts, what comes off, cheeks, bird's mouths, jacks' differences and tails."""
    it, settings = tables.members, tables.settings
    side, cut, off, cheek = it.side, it.cut.hip_valley, it.shortening, it.cheek
    stocks = dict.fromkeys((side.boards.hips.name, side.boards.valleys.name))
    thick = text.rational(settings.hip_thickness)
    hip, valley = mouths
    return [
        Section(
            (
                Line(_('Plumb cut'), (plain(cut.plumb.text),)),
                Line(_('Level cut'), (plain(cut.level.text),)),
                Line(_('Backing, each face'), (plain(it.backing.bevel.text),)),
                Line(_('Drop, plumb; hip {thick}').format(thick=thick), (length(it.drop.plumb),)),
            )
        ),
        Section(
            (
                _off(_('Hip at ridge, one cheek'), off.hip_valley_at_ridge),
                _off(_('Hip at commons, two'), off.hip_between_commons),
                _off(_('Valley, one or two'), off.hip_valley_at_ridge),
                _off(_('Jack at a hip'), off.jack_at_hip),
            ),
            _('Comes off, center to face'),
            (_('level'), _('along top')),
        ),
        Section(
            (_cheek(_('Jack'), cheek.jack_top), _cheek(_('Hip, valley'), cheek.hip_top)),
            _('Cheek on top'),
            (_('from square'), _('square {base} &').format(base=INCHES.base)),
        ),
        Section(
            (
                _mouth(_('Hip, dropped'), it, hip),
                _mouth(_('Valley'), it, valley),
            ),
            _('Bird’s mouth {stock}').format(stock=' '.join(stocks)),
            (_('height'), _('heel'), _('seat')),
        ),
        Section((Line(_('Valley’s heel: out, level'), (length(it.valley_heel_out),)),)),
        _spaced(tables, settings),
    ]


def _spaced(tables: PitchTables, settings: Settings) -> Section:
    """Return jacks' differences by their spacing, and beside them hip tails by the commons' overhang."""
    side = tables.members.side
    measure = side.boards.measure
    spaced = [(text.rational(one), corner.jack_difference(one, side.at)) for one in settings.spacings]
    hung = [(text.rational(one), corner.hip_length(one, side.at)) for one in OVERHANGS_IN]

    def told(length_in: Exact | None) -> Cell:
        return length(None if length_in is None else length_figure(length_in, measure))

    none: tuple[str, None] = ('', None)
    return Section(
        tuple(
            Line(apart, (told(jack), plain(out), told(tail)))
            for (apart, jack), (out, tail) in zip_longest(spaced, hung, fillvalue=none)
        ),
        _('Jacks apart'),
        (_('longer by'), _('overhang'), _('hip tail')),
    )


def mouths_of(it: Members) -> list[Mouth | None]:
    """Return the bird's mouths of hip and valley; None for one that cannot be."""
    notches = it.dropped_mouth, it.valley_mouth
    return [None if it.fault(one) else Mouth(one, marks_of(one)) for one in notches]


def _off(name: str, measured: TwoWays) -> Line:
    return Line(name, (length(measured.level), length(measured.along)))


def _cheek(name: str, top: OnTop) -> Line:
    return Line(name, (plain(top.from_square.text), length(top.figure_on_12)))


def _mouth(name: str, it: Members, mouth: Mouth | None) -> Line:
    if mouth is None:
        return Line(name, (length(None, none=NOTHING),) * 3)
    notch = mouth.notch
    height, heel, seat = map(it.side.length, (notch.height_in, notch.heel_in, notch.seat_in))
    return Line(name, (length(height, mouth.signs), length(heel), length(seat)))
