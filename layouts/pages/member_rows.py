"""Rows of the opening by member: a name that says face and datum, and up to four figures beside it."""

from __future__ import annotations

from msgspec import Struct

from layouts.grid.table_columns import NOTHING, SIGNS
from layouts.paper.trim import trim_of
from layouts.words.members import (
    COMMON,
    COMMON_LESS,
    HELD,
    HIP,
    HIP_LESS,
    WITH_ROOT,
    Group,
    Row,
    called,
    columns,
    groups,
)
from layouts.words.say import _, say
from tablegen.geometry.stepping import Hold
from tablegen.messages import Message
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.roof.members import Members
from tablegen.settings import MOST_SPACINGS, Settings
from tablegen.tables.values import One, Values

COMMON_LINE_REM, HIP_LINE_REM = 1.07, 1.03
"""Heights of a row on either page."""
COLUMNS = 4
AGAINST_BASE = '_12_and'
"""End of the names of figures on the square that stand beside 12."""


class MemberRow(Struct, frozen=True):
    """One line: a head of several rows, or a name and its figures."""

    is_head: bool
    name: str
    cells: tuple[str, str, str, str]
    """Last ones first filled: '' before fewer than four."""


class MemberRows(Struct, frozen=True):
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

    def __init__(self, of: Values, it: Members, settings: Settings):
        self.of, self.it, self.settings = of, it, settings

    def told(self, column: One) -> str:
        """Return a column's figure with the marks beside it; a figure for the square stands after that of its other arm."""
        cell = column.cell(self.it)
        if not isinstance(cell, Figure):
            return NOTHING
        figure = cell.text + ''.join(SIGNS[mark] for mark in (column.marks(self.it) if column.marks else ()))
        return f'{INCHES.base} & {figure}' if column.key.endswith(AGAINST_BASE) else figure

    def row(self, row: Row) -> MemberRow:
        """Return a line of figures; of a bird's mouth that cannot be, why."""
        name, shown = called(row, self.of, self.settings), columns(row, self.of)
        fault = (
            getattr(self.of, row.values[0].rpartition('_')[0] + '_why').cell(self.it) if row.stock else None
        )
        if isinstance(fault, Message):
            return _line(False, _('{mouth}: {why}').format(mouth=name, why=say(fault)), NOTHING)
        return _line(False, name, *map(self.told, shown))

    def laid(self, of: tuple[Group, ...], held: list[MemberRow], line: float) -> MemberRows:
        """Return all lines of a page, how the square is held among them."""
        found: list[MemberRow] = []
        for group in groups(of, self.settings):
            found += [_line(True, group.name, *group.heads)] if group.name else []
            found += [_line(False, group.second, *group.below)] if group.second else []
            for row in group.rows:
                found += [self.row(row)] if row.values else held
        return _laid(found, line, self.settings)


def common_rows(of: Values, it: Members, settings: Settings) -> MemberRows:
    """Return the rows of the common rafter."""
    held = _held(it.common_hold, it.common_hold.body.text, COMMON_LESS)
    return _Lines(of, it, settings).laid(COMMON, held, COMMON_LINE_REM)


def hip_rows(of: Values, it: Members, settings: Settings) -> MemberRows:
    """Return the rows of hip, valley and jacks."""
    body = it.hip_hold.body.text
    held = _held(it.hip_hold, body if it.hip_hold.holds > 1 else _(WITH_ROOT).format(body=body), HIP_LESS)
    return _Lines(of, it, settings).laid(HIP, held, HIP_LINE_REM)


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


def _held(held: Hold, body: str, less: tuple[str, str]) -> list[MemberRow]:
    """Return how the square is held, and what a step then is where its figures are made less."""
    rows = [_line(False, _(HELD).format(body=body, tongue=held.tongue.text), held.text)]
    if held.holds > 1:
        halved, divided = less
        said = _(halved if held.holds == 2 else divided)
        rows.append(_line(False, said.format(number=held.holds, step=held.run_text)))
    return rows
