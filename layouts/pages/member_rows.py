"""Rows of the opening by member: a name that says face and datum, and up to four figures beside it."""

from __future__ import annotations

from dataclasses import dataclass

from layouts.grid.table_columns import NOTHING, SIGNS
from layouts.words.runs import INCHES as IN_INCHES
from layouts.words.say import N_, _, say
from tablegen.geometry.stepping import Hold
from tablegen.messages import Message
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.roof.members import Members
from tablegen.settings import MOST_SPACINGS, Settings
from tablegen.tables.member_columns import BothWays, CheekColumns, HipMouth, One
from tablegen.tables.values import ValueColumns

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

    def both(self, ways: BothWays) -> MemberRow:
        return self.row(ways.level, ways.along)

    def part(self, column: One) -> MemberRow:
        return self.row(column, name=f'  {say(column.head)}')

    def cheek(self, name: str, cut: CheekColumns) -> MemberRow:
        against = f'{INCHES.base} & {self.told(cut.top_12_and)}'
        return _line(False, name, self.told(cut.top), against, self.told(cut.side), self.told(cut.blade))

    def mouth(self, name: str, stock: str, mouth: HipMouth) -> MemberRow:
        why = mouth.why.cell(self.it)
        if isinstance(why, Message):
            named = _('{member}, {stock}: {why}').format(member=name, stock=stock, why=say(why))
            return _line(False, named, NOTHING)
        named = _('{member}, {stock}').format(member=name, stock=stock)
        return self.row(mouth.height, mouth.heel, mouth.seat, mouth.left, name=named)


def common_rows(of: ValueColumns, it: Members, settings: Settings) -> MemberRows:
    """Return the rows of the common rafter."""
    lines, common, mouth = _Lines(it), of.common, of.common.mouth
    stock, seat = settings.rafters.name, text.rational(settings.seat)
    return _laid(
        [
            lines.row(common.plumb_cut),
            lines.row(common.level_cut),
            *_held(it.common_hold, it.common_hold.body.text, COMMON_LESS),
            lines.row(common.per_foot),
            lines.part(common.per_foot_part),
            lines.row(common.tail_per_foot),
            _head(_('Off the length, center line to face'), _('level'), _('along top')),
            lines.both(common.at_ridge),
            _head(_('Bird’s mouth of a {stock}, seat {seat} in, level').format(stock=stock, seat=seat)),
            *map(lines.row, (mouth.height, mouth.heel, mouth.notch, mouth.left)),
        ],
        COMMON_LINE_REM,
    )


def hip_rows(of: ValueColumns, it: Members, settings: Settings) -> MemberRows:
    """Return the rows of hip, valley and jacks."""
    lines, hip, jack, held = _Lines(it), of.hip, of.jack, it.hip_hold
    body = held.body.text if held.holds > 1 else _('{body} (√288)').format(body=held.body.text)
    level, along, plumb = _('level'), _('along top'), _('plumb')
    spacings = [_(IN_INCHES).format(number=text.rational(spacing)) for spacing in settings.spacings]
    return _laid(
        [
            lines.row(hip.plumb_cut),
            lines.row(hip.level_cut),
            *_held(held, body, HIP_LESS),
            lines.row(hip.per_foot),
            lines.part(hip.per_foot_part),
            *map(lines.row, (hip.tail_per_foot, hip.backing, hip.drop, hip.valley_heel_out)),
            _head(_('Off the length, center line to face'), level, along),
            *map(lines.both, (hip.at_ridge, hip.between_commons, jack.at_hip)),
            _head(_('Cheeks'), _('top edge'), _('top edge'), _('side'), _('blade')),
            _line(
                False,
                _('  from square across'),
                _('angle'),
                _('along the {base}').format(base=INCHES.base),
                plumb,
                _('tilt'),
            ),
            lines.cheek(_('Hip, valley'), hip.cheek),
            lines.cheek(_('Jack'), jack.cheek),
            _head(_('Between the plumb lines of a cheek'), level, along),
            *map(lines.both, (hip.points, hip.set_back, jack.points)),
            _head(_('Bird’s mouth'), _('height'), _('heel'), _('seat'), _('wood left')),
            _line(False, _('  on the center line'), plumb, plumb, level, _('square')),
            lines.mouth(_('Dropped hip'), settings.hips.name, hip.dropped),
            lines.mouth(_('Valley'), settings.valleys.name, hip.valley),
            _head(_('Jacks, on center'), *spacings),
            lines.row(*jack.differences, name=_('Longer by, along top')),
        ],
        HIP_LINE_REM,
    )


def has_marks(of: ValueColumns, it: Members) -> bool:
    """Return whether a mark stands beside the wood left over a notch of hip or valley."""
    left = of.hip.dropped.left, of.hip.valley.left
    return any(one.marks(it) for one in left if one.marks and one.cell(it) is not None)


def _laid(rows: list[MemberRow], line: float) -> MemberRows:
    rules = (round(place * line, 2) for place, row in enumerate(rows) if row.is_head)
    return MemberRows(tuple(rows), line, tuple(rules))


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
