"""Rows of the opening by member: a name that says face and datum, and up to four figures beside it."""

from __future__ import annotations

from dataclasses import dataclass

from layouts.grid.table_columns import NOTHING, SIGNS
from layouts.paper.trim import trim_of
from layouts.words.runs import INCHES as IN_INCHES
from layouts.words.say import N_, _, say
from tablegen.geometry.stepping import Hold
from tablegen.messages import Message
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.roof.members import Members
from tablegen.settings import MOST_SPACINGS, Settings
from tablegen.tables.values import One, Values

COMMON_LINE_REM, HIP_LINE_REM = 1.07, 1.03
"""Heights of a row on either page."""
COLUMNS = 4
COMMON_LESS = (
    N_('  both figures halved: one step is {step} of run'),
    N_('  both figures divided by {number}: one step is {step} of run'),
)
HIP_LESS = (
    N_('  17 (√288) and rise halved: a step is {step} of COMMON run'),
    N_('  17 (√288) and rise divided by {number}: a step is {step} of COMMON run'),
)
"""What a step is where the square's figures are halved, or made less still."""


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
    width: float
    """Of the text, rem."""


class _Lines:
    """Makes the lines of one pitch from the columns of its values."""

    def __init__(self, it: Members):
        self.it = it

    def told(self, column: One) -> str:
        """Return a column's figure with the marks beside it."""
        cell = column.cell(self.it)
        if not isinstance(cell, Figure):
            return NOTHING
        return cell.text + ''.join(SIGNS[mark] for mark in (column.marks(self.it) if column.marks else ()))

    def row(self, *columns: One, name: str = '') -> MemberRow:
        """Return a line of columns under one head, which names it where nothing else does."""
        return _line(False, name or say(columns[0].head), *map(self.told, columns))

    def part(self, column: One) -> MemberRow:
        return self.row(column, name=f'  {say(column.head)}')

    def cheek(self, name: str, top: One, top_12_and: One, side: One, blade: One) -> MemberRow:
        against = f'{INCHES.base} & {self.told(top_12_and)}'
        return _line(False, name, self.told(top), against, self.told(side), self.told(blade))

    def mouth(self, name: str, stock: str, why: One, *columns: One) -> MemberRow:
        fault = why.cell(self.it)
        if isinstance(fault, Message):
            named = _('{member}, {stock}: {why}').format(member=name, stock=stock, why=say(fault))
            return _line(False, named, NOTHING)
        return self.row(*columns, name=_('{member}, {stock}').format(member=name, stock=stock))


def common_rows(of: Values, it: Members, settings: Settings) -> MemberRows:
    """Return the rows of the common rafter."""
    lines, stock, seat = _Lines(it), settings.rafters.name, text.rational(settings.seat)
    return _laid(
        [
            lines.row(of.common_plumb_cut),
            lines.row(of.common_level_cut),
            *_held(it.common_hold, it.common_hold.body.text, COMMON_LESS),
            lines.row(of.common_per_foot),
            lines.part(of.common_per_foot_part),
            lines.row(of.common_tail_per_foot),
            _head(_('Off the length, center line to face'), _('level'), _('along top')),
            lines.row(of.common_at_ridge_level, of.common_at_ridge_along),
            _head(_('Bird’s mouth of a {stock}, seat {seat} in, level').format(stock=stock, seat=seat)),
            *map(lines.row, (of.common_height, of.common_heel, of.common_notch, of.common_left)),
        ],
        COMMON_LINE_REM,
        settings,
    )


def hip_rows(of: Values, it: Members, settings: Settings) -> MemberRows:
    """Return the rows of hip, valley and jacks."""
    lines, held, row = _Lines(it), it.hip_hold, _Lines(it).row
    body = held.body.text if held.holds > 1 else _('{body} (√288)').format(body=held.body.text)
    level, along, plumb = _('level'), _('along top'), _('plumb')
    along_base = _('along the {base}').format(base=INCHES.base)
    hip_cheek = of.hip_cheek_top, of.hip_cheek_top_12_and, of.hip_cheek_side, of.hip_cheek_blade
    jack_cheek = of.jack_cheek_top, of.jack_cheek_top_12_and, of.jack_cheek_side, of.jack_cheek_blade
    dropped = of.dropped_hip_height, of.dropped_hip_heel, of.dropped_hip_seat, of.dropped_hip_left
    valley = of.valley_height, of.valley_heel, of.valley_seat, of.valley_left
    spacings = [_(IN_INCHES).format(number=text.rational(spacing)) for spacing in settings.spacings]
    return _laid(
        [
            row(of.hip_plumb_cut),
            row(of.hip_level_cut),
            *_held(held, body, HIP_LESS),
            row(of.hip_per_foot),
            lines.part(of.hip_per_foot_part),
            *map(row, (of.hip_tail_per_foot, of.hip_backing, of.hip_drop, of.valley_heel_out)),
            _head(_('Off the length, center line to face'), level, along),
            row(of.hip_at_ridge_level, of.hip_at_ridge_along),
            row(of.hip_between_commons_level, of.hip_between_commons_along),
            row(of.jack_at_hip_level, of.jack_at_hip_along),
            _head(_('Cheeks'), _('top edge'), _('top edge'), _('side'), _('blade')),
            _line(False, _('  from square across'), _('angle'), along_base, plumb, _('tilt')),
            lines.cheek(_('Hip, valley'), *hip_cheek),
            lines.cheek(_('Jack'), *jack_cheek),
            _head(_('Between the plumb lines of a cheek'), level, along),
            row(of.hip_points_level, of.hip_points_along),
            row(of.hip_set_back_level, of.hip_set_back_along),
            row(of.jack_points_level, of.jack_points_along),
            _head(_('Bird’s mouth'), _('height'), _('heel'), _('seat'), _('wood left')),
            _line(False, _('  on the center line'), plumb, plumb, level, _('square')),
            lines.mouth(_('Dropped hip'), settings.hips.name, of.dropped_hip_why, *dropped),
            lines.mouth(_('Valley'), settings.valleys.name, of.valley_why, *valley),
            _head(_('Jacks, on center'), *spacings),
            row(*of.jack_differences, name=_('Longer by, along top')),
        ],
        HIP_LINE_REM,
        settings,
    )


def has_marks(of: Values, it: Members) -> bool:
    """Return whether a mark stands beside the wood left over a notch of hip or valley."""
    left = of.dropped_hip_left, of.valley_left
    return any(one.marks(it) for one in left if one.marks and one.cell(it) is not None)


def _laid(rows: list[MemberRow], line: float, settings: Settings) -> MemberRows:
    rules = (round(place * line, 2) for place, row in enumerate(rows) if row.is_head)
    return MemberRows(tuple(rows), line, tuple(rules), trim_of(settings).text_width / 10)


def _line(is_head: bool, name: str, *cells: str) -> MemberRow:
    assert len(cells) <= COLUMNS == MOST_SPACINGS
    first, second, third, fourth = (*[''] * (COLUMNS - len(cells)), *cells)
    return MemberRow(is_head, name, (first, second, third, fourth))


def _head(name: str, *cells: str) -> MemberRow:
    return _line(True, name, *cells)


def _held(held: Hold, body: str, less: tuple[str, str]) -> list[MemberRow]:
    """Return how the square is held, and what a step then is where its figures are made less."""
    named = _('Square: level along the {body}, plumb along the {tongue}')
    rows = [_line(False, named.format(body=body, tongue=held.tongue.text), held.text)]
    if held.holds > 1:
        halved, divided = less
        said = _(halved if held.holds == 2 else divided)
        rows.append(_line(False, said.format(number=held.holds, step=held.run_text)))
    return rows
