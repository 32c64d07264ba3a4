"""Rows of the opening by member: a name that says face and datum, and up to four figures beside it."""

from __future__ import annotations

from dataclasses import dataclass

from layouts.grid.table_columns import NOTHING, PASSED
from layouts.words.say import N_, _
from tablegen.geometry import corner
from tablegen.geometry.seat import valley_heel_back
from tablegen.geometry.stepping import Hold, common_hold, hip_hold
from tablegen.numbers import text
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.roof.cheeks import CheekCut, cheeks_of
from tablegen.roof.figures import TwoWays
from tablegen.roof.jacks import differences_of
from tablegen.roof.lengths import common_cut, common_length, hip_cut
from tablegen.roof.names import Mark, Why
from tablegen.roof.planes import backing_of, drop_of
from tablegen.roof.seat import Mouth, Notch, common_mouth, common_notch, dropped_hip, hip_mouths, valley_mouth
from tablegen.roof.seat import valley as valley_notch
from tablegen.roof.shortening import shortening_of
from tablegen.roof.side import Side
from tablegen.roof.tail import tail_of
from tablegen.settings import MOST_SPACINGS, Settings
from tablegen.tables.finish import unit

COMMON_LINE_REM, HIP_LINE_REM = 1.07, 1.03
"""Heights of a row on either page."""
COLUMNS = 4
THIN = '§'
"""Beside what is too little wood under a tail."""
WHY = {Why.TOO_SHALLOW: N_('too shallow to reach the plate'), Why.CUT_THROUGH: N_('cut through by the seat')}


@dataclass(frozen=True, slots=True)
class MemberRow:
    """One line: a head of several rows, or a name and its figures."""

    is_head: bool
    name: str
    cells: tuple[str, str, str, str]
    """Last ones first filled: '' before fewer than four."""


@dataclass(frozen=True, slots=True)
class MemberRows:
    """All lines of a page."""

    rows: tuple[MemberRow, ...]
    line: float
    """Height of a row, rem."""
    rules: tuple[float, ...]
    """Where a rule is drawn over a head, rem from the top."""


def common_rows(side: Side, settings: Settings) -> MemberRows:
    """Return the rows of the common rafter."""
    part, ridge = text.mixed(1, settings.measure.per), text.rational(settings.ridge_thickness)
    cut, notch, mouth = common_cut(side), common_notch(side), common_mouth(side)
    off, foot = shortening_of(side).common_at_ridge, common_length(side, INCHES.unit_run)
    head = _('Bird’s mouth of a {stock}, seat {seat} in, level')
    height, heel, deep, left = (
        (mouth.height_above_plate, mouth.heel, mouth.notch_depth, _wood_left(notch, mouth))
        if notch.fault is None
        else (None,) * 4
    )
    return _laid(
        [
            _row(_('Plumb cut, on the side, from square across'), cut.plumb),
            _row(_('Level cut, on the side, from square across'), cut.level),
            *_held(common_hold(side.slope), '', _('both figures'), _('one step'), ''),
            _row(_('Per foot of run, along the top edge'), thousandths(foot)),
            _row(_('  to the nearest {part}').format(part=part), foot),
            _row(
                _('Tail per {base} in of overhang, along the top edge').format(base=INCHES.base),
                tail_of(side).common_and_jack,
            ),
            _head(_('Off the length, center line to face'), _('level'), _('along top')),
            _two_ways(_('At a ridge {ridge} in thick: half of it').format(ridge=ridge), off),
            _head(head.format(stock=mouth.stock, seat=text.rational(settings.seat))),
            _row(_('Height above plate, plumb over the plate line'), height),
            _row(_('Heel, plumb, at the outside of the plate'), heel),
            _row(_('Notch, square to the edge'), deep),
            _row(_('Wood left over the notch, square to the edge'), left),
        ],
        COMMON_LINE_REM,
    )


def hip_rows(side: Side, settings: Settings) -> MemberRows:
    """Return the rows of hip, valley and jacks."""
    part, ridge = text.mixed(1, settings.measure.per), text.rational(settings.ridge_thickness)
    thick, rafter = text.rational(settings.hip_thickness), text.rational(settings.rafter_thickness)
    cut, off, cheek, valley = hip_cut(side), shortening_of(side), cheeks_of(side), valley_mouth(side)
    foot = side.length(corner.hip_length(INCHES.unit_run, side.at))
    return _laid(
        [
            _row(_('Plumb cut, on the side, from square across'), cut.plumb),
            _row(_('Level cut, on the side, from square across'), cut.level),
            *_held(hip_hold(side.at), ' (√288)', _('17 (√288) and rise'), _('a step'), 'COMMON '),
            _row(_('Per foot of COMMON run, along the top edge'), thousandths(foot)),
            _row(_('  to the nearest {part}').format(part=part), foot),
            _row(
                _('Tail per {base} in of COMMON overhang, along top edge').format(base=INCHES.base),
                tail_of(side).hip_valley,
            ),
            _row(_('Backing, each face, from the square top'), backing_of(side).bevel),
            _row(_('Drop, plumb: already in the dropped hip’s figures'), drop_of(side).plumb),
            _row(
                _('Valley’s heel, level, outwards of the inside corner'),
                side.length(valley_heel_back(side.boards.valley_thickness_in, side.at)),
            ),
            _head(_('Off the length, center line to face'), _('level'), _('along top')),
            _two_ways(
                _('Hip or valley, ridge {ridge} in: one cheek').format(ridge=ridge), off.hip_valley_at_ridge
            ),
            _two_ways(
                _('Hip between commons {rafter} in: two cheeks').format(rafter=rafter),
                off.hip_between_commons,
            ),
            _two_ways(_('Jack at a hip or valley {hip} in thick').format(hip=thick), off.jack_at_hip),
            _head(_('Cheeks'), _('top edge'), _('top edge'), _('side'), _('blade')),
            _row(
                _('  from square across'),
                _('angle'),
                _('along the {base}').format(base=INCHES.base),
                _('plumb'),
                _('tilt'),
            ),
            _cheek(_('Hip, valley'), cheek.hip_at_ridge),
            _cheek(_('Jack'), cheek.jack),
            _head(_('Between the plumb lines of a cheek'), _('level'), _('along top')),
            _two_ways(_('Hip, one cheek: short to long point'), cheek.hip_at_ridge.long_to_short_point),
            _two_ways(
                _('Hip, two cheeks: point back to each side’s line'), cheek.hip_between_commons.point_to_side
            ),
            _two_ways(_('Jack: short to long point'), cheek.jack.long_to_short_point),
            _head(_('Bird’s mouth'), _('height'), _('heel'), _('seat'), _('wood left')),
            _row(_('  on the center line'), _('plumb'), _('plumb'), _('level'), _('square')),
            _mouth(_('Dropped hip'), side, dropped_hip(side), hip_mouths(side)[0]),
            _mouth(_('Valley'), side, valley_notch(side), valley),
            _head(_('Jacks, on center'), *(f'{text.rational(spacing)} in' for spacing in settings.spacings)),
            _row(_('Longer by, along top'), *(one.difference for one in differences_of(side))),
        ],
        HIP_LINE_REM,
    )


def wood_mark(notch: Notch) -> str:
    """Return what stands beside the wood left over a notch: '', †, ‡, §."""
    return '' if notch.fault else PASSED[tuple(Mark).index(notch.mark)] + (THIN if notch.thin else '')


def thousandths(figure: Figure) -> Figure:
    """Return a length per foot to thousandths."""
    assert isinstance(figure.value, Exact)
    return unit(figure.value)


def _laid(rows: list[MemberRow], line: float) -> MemberRows:
    rules = (round(place * line, 2) for place, row in enumerate(rows) if row.is_head)
    return MemberRows(tuple(rows), line, tuple(rules))


def _line(is_head: bool, name: str, cells: tuple[Figure | str | None, ...]) -> MemberRow:
    assert len(cells) <= COLUMNS == MOST_SPACINGS
    said = [NOTHING if cell is None else cell if isinstance(cell, str) else cell.text for cell in cells]
    first, second, third, fourth = (*[''] * (COLUMNS - len(said)), *said)
    return MemberRow(is_head, name, (first, second, third, fourth))


def _head(name: str, *cells: str) -> MemberRow:
    return _line(True, name, cells)


def _row(name: str, *cells: Figure | str | None) -> MemberRow:
    return _line(False, name, cells)


def _two_ways(name: str, measured: TwoWays) -> MemberRow:
    return _row(name, measured.level, measured.along)


def _cheek(name: str, cut: CheekCut) -> MemberRow:
    held = f'{INCHES.base} & {cut.top_figure_on_12.text}'
    return _row(name, cut.top_from_square, held, cut.side_plumb, cut.side_blade_tilt)


def _mouth(name: str, side: Side, notch: Notch, mouth: Mouth) -> MemberRow:
    fault = Why.CUT_THROUGH if common_notch(side).fault is Why.CUT_THROUGH else notch.fault
    if fault or isinstance(mouth.seat, Why):
        return _row(f'{name}, {mouth.stock}: {_(WHY[fault])}' if fault else name, None)
    return _row(
        f'{name}, {mouth.stock}', mouth.height_above_plate, mouth.heel, mouth.seat, _wood_left(notch, mouth)
    )


def _wood_left(notch: Notch, mouth: Mouth) -> str | None:
    return mouth.stock_left.text + wood_mark(notch) if mouth.stock_left else None


def _held(held: Hold, stands_for: str, figures: str, step: str, run: str) -> list[MemberRow]:
    """Return how the square is held, and what a step then is where its figures are made less."""
    body = held.body.text + (stands_for if held.holds == 1 else '')
    said = _('Square: level along the {body}, plumb along the {tongue}')
    rows = [_row(said.format(body=body, tongue=held.tongue.text), held.text)]
    if held.holds > 1:
        less = _('halved') if held.holds == 2 else _('divided by {count}').format(count=held.holds)
        rows.append(_row(f'  {figures} {less}: {step} is {held.run_text} of {run}run'))
    return rows
