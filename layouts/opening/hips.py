"""The right page of an opening: hip, valley and jacks."""

from __future__ import annotations

from fractions import Fraction

from layouts.grid.run_tables import PitchTables
from layouts.grid.table_columns import NOTHING
from layouts.opening.beside import Section
from layouts.opening.common import SIGNS
from layouts.opening.lines import Line, length, plain
from layouts.words.say import _
from tablegen.geometry import corner
from tablegen.numbers import text
from tablegen.numbers.figure import length_figure
from tablegen.roof.cheeks import CheekCut
from tablegen.roof.figures import TwoWays
from tablegen.roof.members import Members
from tablegen.roof.seat import Notch
from tablegen.settings import Settings
from tablegen.tables.seat import marks_of

OVERHANGS_IN = tuple(map(Fraction, (12, 16, 18, 24)))
"""in, level, of the commons (common practice, no source)."""


def hip_sections(tables: PitchTables) -> list[Section]:
    """Return cuts, what comes off, cheeks, bird's mouths, jacks' differences and tails."""
    it, settings = tables.members, tables.settings
    side, cut, off, cheek = it.side, it.cut.hip_valley, it.shortening, it.cheek
    stocks = dict.fromkeys((side.boards.hips.name, side.boards.valleys.name))
    thick = text.rational(settings.hip_thickness)
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
                _off(_('Hip at a ridge'), off.hip_valley_at_ridge),
                _off(_('Hip at commons'), off.hip_between_commons),
                _off(_('Jack at a hip'), off.jack_at_hip),
            ),
            _('Off, center to face'),
            (_('level'), _('along top')),
        ),
        Section(
            (_cheek(_('Jack'), cheek.jack), _cheek(_('Hip, valley'), cheek.hip_at_ridge)),
            _('Cheek, top edge'),
            (_('from square'), _('12 and')),
        ),
        Section(
            (
                _mouth(_('Hip'), it, it.dropped_mouth),
                _mouth(_('Valley'), it, it.valley_mouth),
            ),
            _('Mouth {stock}').format(stock=' '.join(stocks)),
            (_('height'), _('heel'), _('seat')),
        ),
        Section((Line(_('Valley’s heel: out, level'), (length(it.valley_heel_out),)),)),
        _spaced(tables, settings),
    ]


def _spaced(tables: PitchTables, settings: Settings) -> Section:
    """Return jacks' differences and hip tails: both are had from a level distance along the eave or square to it."""
    side = tables.members.side
    measure = side.boards.measure
    apart = sorted({*settings.spacings, *OVERHANGS_IN})
    jacks = [
        length_figure(corner.jack_difference(one, side.at), measure) if one in settings.spacings else None
        for one in apart
    ]
    tails = [
        length_figure(corner.hip_length(one, side.at), measure) if one in OVERHANGS_IN else None
        for one in apart
    ]
    rows = zip(apart, jacks, tails, strict=True)
    return Section(
        tuple(Line(text.rational(one), (length(jack), length(tail))) for one, jack, tail in rows),
        _('Apart; overhang'),
        (_('jacks'), _('hip tail')),
    )


def _off(name: str, measured: TwoWays) -> Line:
    return Line(name, (length(measured.level), length(measured.along)))


def _cheek(name: str, cut: CheekCut) -> Line:
    return Line(name, (plain(cut.top_from_square.text), length(cut.top_figure_on_12)))


def _mouth(name: str, it: Members, notch: Notch) -> Line:
    lengths = (notch.height_in, notch.heel_in, notch.seat_in)
    if it.fault(notch):
        return Line(name, (length(None, none=NOTHING),) * len(lengths))
    height, heel, seat = map(it.side.length, lengths)
    marks = ''.join(SIGNS[mark] for mark in marks_of(notch))
    return Line(name, (length(height, marks), length(heel), length(seat)))
