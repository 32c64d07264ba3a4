"""Rows of the opening by member: a name that says face and datum, and up to four figures beside it."""

from __future__ import annotations

from dataclasses import dataclass

from layouts.grid.table_columns import NOTHING, PASSED
from tablegen.geometry.stepping import Hold
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.settings import MOST_SPACINGS, Settings
from tablegen.tables.members import (
    SHALLOW,
    THROUGH,
    CheekCut,
    CommonValues,
    HipValues,
    JackValues,
    Mouth,
    NoMouth,
    OneWayAndAnother,
)

COMMON_LINE_REM, HIP_LINE_REM = 1.07, 1.03
"""Heights of a row on either page."""
COLUMNS = 4
THIN = '§'
"""Beside what is too little wood under a tail."""
WHY = {SHALLOW: 'too shallow to reach the plate', THROUGH: 'cut through by the seat'}


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


def common_rows(values: CommonValues, settings: Settings) -> MemberRows:
    """Return the rows of the common rafter."""
    part, ridge = text.mixed(1, settings.measure.per), text.rational(settings.ridge_thickness)
    mouth, seat = values.mouth, text.rational(settings.seat)
    return _laid(
        [
            _row('Plumb cut, on the side, from square across', values.plumb_cut),
            _row('Level cut, on the side, from square across', values.level_cut),
            *_held(values.hold, '', 'both figures', 'one step', ''),
            _row('Per foot of run, along the top edge', values.per_foot),
            _row(f'  to the nearest {part}', values.per_foot_part),
            _row('Tail per 12 in of overhang, along the top edge', values.tail_per_foot),
            _head('Off the length, center line to face', 'level', 'along top'),
            _two_ways(f'At a ridge {ridge} in thick: half of it', values.at_ridge),
            _head(f'Bird’s mouth of a {mouth.stock.name}, seat {seat} in, level'),
            _row('Height above plate, plumb over the plate line', getattr(mouth, 'height', None)),
            _row('Heel, plumb, at the outside of the plate', getattr(mouth, 'heel', None)),
            _row('Notch, square to the edge', getattr(mouth, 'notch', None)),
            _row('Wood left over the notch, square to the edge', _wood_left(mouth)),
        ],
        COMMON_LINE_REM,
    )


def hip_rows(hip: HipValues, jack: JackValues, settings: Settings) -> MemberRows:
    """Return the rows of hip, valley and jacks."""
    part, ridge = text.mixed(1, settings.measure.per), text.rational(settings.ridge_thickness)
    thick, rafter = text.rational(settings.hip_thickness), text.rational(settings.rafter_thickness)
    return _laid(
        [
            _row('Plumb cut, on the side, from square across', hip.plumb_cut),
            _row('Level cut, on the side, from square across', hip.level_cut),
            *_held(hip.hold, ' (√288)', '17 (√288) and rise', 'a step', 'COMMON '),
            _row('Per foot of COMMON run, along the top edge', hip.per_foot),
            _row(f'  to the nearest {part}', hip.per_foot_part),
            _row('Tail per 12 in of COMMON overhang, along top edge', hip.tail_per_foot),
            _row('Backing, each face, from the square top', hip.backing_bevel),
            _row('Drop, plumb: already in the dropped hip’s figures', hip.drop),
            _row('Valley’s heel, level, outwards of the inside corner', hip.valley_back),
            _head('Off the length, center line to face', 'level', 'along top'),
            _two_ways(f'Hip or valley, ridge {ridge} in: one cheek', hip.at_ridge),
            _two_ways(f'Hip between commons {rafter} in: two cheeks', hip.between_commons),
            _two_ways(f'Jack at a hip or valley {thick} in thick', jack.at_hip),
            _head('Cheeks', 'top edge', 'top edge', 'side', 'blade'),
            _row('  from square across', 'angle', 'along the 12', 'plumb', 'tilt'),
            _cheek('Hip, valley', hip.cheek),
            _cheek('Jack', jack.cheek),
            _head('Between the plumb lines of a cheek', 'level', 'along top'),
            _two_ways('Hip, one cheek: short to long point', hip.points),
            _two_ways('Hip, two cheeks: point back to each side’s line', hip.set_back),
            _two_ways('Jack: short to long point', jack.points),
            _head('Bird’s mouth', 'height', 'heel', 'seat', 'wood left'),
            _row('  on the center line', 'plumb', 'plumb', 'level', 'square'),
            _mouth('Dropped hip', hip.dropped),
            _mouth('Valley', hip.valley),
            _head('Jacks, on center', *(f'{text.rational(spacing)} in' for spacing in settings.spacings)),
            _row('Longer by, along top', *jack.differences),
        ],
        HIP_LINE_REM,
    )


def wood_mark(mouth: Mouth | NoMouth) -> str:
    """Return what stands beside the wood left over a notch: '', †, ‡, §."""
    return PASSED[mouth.marks] + (THIN if mouth.thin else '') if isinstance(mouth, Mouth) else ''


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


def _two_ways(name: str, measured: OneWayAndAnother) -> MemberRow:
    return _row(name, measured.level, measured.along)


def _cheek(name: str, cut: CheekCut) -> MemberRow:
    return _row(name, cut.top, f'12 & {cut.top_figure.text}', cut.side, cut.blade)


def _mouth(name: str, mouth: Mouth | NoMouth) -> MemberRow:
    if isinstance(mouth, NoMouth):
        return _row(f'{name}, {mouth.stock.name}: {WHY[mouth.why]}', None)
    return _row(f'{name}, {mouth.stock.name}', mouth.height, mouth.heel, mouth.seat, _wood_left(mouth))


def _wood_left(mouth: Mouth | NoMouth) -> str | None:
    return mouth.left.text + wood_mark(mouth) if isinstance(mouth, Mouth) else None


def _held(held: Hold, stands_for: str, figures: str, step: str, run: str) -> list[MemberRow]:
    """Return how the square is held, and what a step then is where its figures are made less."""
    body = held.body.text + (stands_for if held.holds == 1 else '')
    rows = [_row(f'Square: level along the {body}, plumb along the {held.tongue.text}', held.text)]
    if held.holds > 1:
        less = 'halved' if held.holds == 2 else f'divided by {held.holds}'
        rows.append(_row(f'  {figures} {less}: {step} is {held.run_text} of {run}run'))
    return rows
