"""Bird's mouths of hips and valleys at a square corner of equal pitches, on the commons' height above plate."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any, NamedTuple

from msgspec.structs import replace

from tablegen.geometry import seat, tail
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.exact import Exact
from tablegen.numbers.units import Stock
from tablegen.roof.cautions import LEAST_STOCK_UNDER_A_TAIL_IN
from tablegen.roof.question import boards_of
from tablegen.roof.seat import Notch, backed_hip, common_notch, dropped_hip, valley
from tablegen.roof.side import side
from tablegen.settings import Settings
from tablegen.tables.columns import Make, by_pitch, data_name, each
from tablegen.tables.seat import is_tabled, marks_of
from tablegen.tables.table import Column, S, Table
from tablegen.written.stocks import stock

HIP_STOCK = tuple(map(stock, ('2×6', '2×8', '2×10', '2×12')))
"""Sizes that hips and valleys are tabled in on rafters of the same size, besides the settings' own."""


class Hip(NamedTuple):
    """A hip at one pitch; no bird's mouth of either where the common's own is not tabled."""

    pitch: Pitch
    dropped: Notch | None = None
    """Of a square top, lowered by its drop, which is in its height."""
    backed: Notch | None = None
    """Of a hip whose ridge stands as high as the commons."""


class Valley(NamedTuple):
    """A valley at one pitch, which is not dropped."""

    pitch: Pitch
    mouth: Notch | None = None


def listed(settings: Settings) -> list[Table[Any]]:
    """Return the tables of hips and of valleys: the settings' own sizes, then each size with rafters of its own."""
    own = (settings.rafters, settings.hips, settings.valleys)
    alike = [(size, size, size) for size in HIP_STOCK]
    found: dict[str, Table[Any]] = {}
    for rafters, hips, valleys in (*([] if own in alike else [own]), *alike):
        for table in (_hips(settings, rafters, hips), _valleys(settings, rafters, valleys)):
            found.setdefault(table.key, table)
    return [*found.values(), _old_rule(settings)]


def key_of(member: str, rafters: Stock, own: Stock) -> str:
    """Return the key of the table of hips or of valleys, 'hip' or 'valley', for two sizes."""
    with_rafters = '' if own == rafters else f'-with-{data_name(rafters)}'
    return f'{member}-seat-{data_name(own)}{with_rafters}'


def _hips(settings: Settings, rafters: Stock, hips: Stock) -> Table[Hip]:
    """Return the bird's mouths of hips, dropped and backed, at the plates' corner."""
    make = Make[Hip](settings)
    boards = replace(boards_of(settings), stock=rafters, hip_stock=hips)

    def hip(it: Pitch) -> Hip:
        own = side(it, boards)
        return Hip(it, dropped_hip(own), backed_hip(own)) if is_tabled(common_notch(own)) else Hip(it)

    columns = (
        make.pitch(lambda it: it.pitch),
        make.length('dropped_height', lambda it: _height(it.dropped), 'hip_height'),
        make.length('dropped_heel', lambda it: _heel(it.dropped), 'hip_height'),
        make.length(
            'dropped_seat', lambda it: _seat(it.dropped), 'hip_seat', marks=lambda it: _marks(it.dropped)
        ),
        make.length('backed_height', lambda it: _height(it.backed), 'hip_height'),
        make.length('backed_heel', lambda it: _heel(it.backed), 'hip_height'),
        make.length(
            'backed_seat', lambda it: _seat(it.backed), 'hip_seat', marks=lambda it: _marks(it.backed)
        ),
    )
    return _seats(settings, 'hip', rafters, hips, columns, hip)


def _valleys(settings: Settings, rafters: Stock, valleys: Stock) -> Table[Valley]:
    """Return the bird's mouths of valleys, whose heel stands outwards of the plates' inside corner."""
    make, thick, depth = Make[Valley](settings), settings.hip_thickness, valleys.depth_in
    boards = replace(boards_of(settings), stock=rafters, valley_stock=valleys)

    def of(it: Pitch) -> Valley:
        own = side(it, boards)
        return Valley(it, valley(own)) if is_tabled(common_notch(own)) else Valley(it)

    columns = (
        make.pitch(lambda it: it.pitch),
        make.length(
            'plumb_depth', lambda it: tail.plumb_cut_length(depth, it.pitch.corner.hip_slope), 'valley_plumb'
        ),
        make.length('height', lambda it: _height(it.mouth), 'valley_plumb'),
        make.length('heel', lambda it: _heel(it.mouth), 'valley_plumb'),
        make.length('seat', lambda it: _seat(it.mouth), 'valley_level', marks=lambda it: _marks(it.mouth)),
        make.length('heel_out', lambda it: seat.valley_heel_back(thick, it.pitch.corner), 'valley_level'),
    )
    return _seats(settings, 'valley', rafters, valleys, columns, of)


def _height(mouth: Notch | None) -> Exact | None:
    return mouth.height_in if mouth else None


def _heel(mouth: Notch | None) -> Exact | None:
    return mouth.heel_in if mouth and is_tabled(mouth) else None


def _seat(mouth: Notch | None) -> Exact | None:
    return mouth.seat_in if mouth and is_tabled(mouth) else None


def _marks(mouth: Notch | None) -> tuple[str, ...]:
    return marks_of(mouth) if mouth else ()


def _seats(
    settings: Settings,
    member: str,
    rafters: Stock,
    own: Stock,
    columns: tuple[Column[S], ...],
    subject: Callable[[Pitch], S],
) -> Table[S]:
    size = own.name if own == rafters else message('table.with_rafters', own=own.name, rafters=rafters.name)
    return Make[S](settings).table(
        'seat',
        key_of(member, rafters, own),
        partial(map, subject, settings.pitches),
        columns,
        message(f'note.{member}_seats', hip=settings.hip_thickness),
        message('note.notches_and_dashes', least=LEAST_STOCK_UNDER_A_TAIL_IN),
        title=message(f'table.{member}_seat', size=size),
        datum=message('datum.common_seat', seat=settings.seat),
    )


def _old_rule(settings: Settings) -> Table[Pitch]:
    """Return how far too low an old rule, a seat of 17/12 of the common's, puts a dropped hip of the rafters' stock."""

    boards = boards_of(settings)

    def low(it: Pitch, size: Stock) -> Exact | None:
        own = side(it, replace(boards, stock=size, hip_stock=size))
        as_said = seat.shortcut_hip_height(size.depth_in, settings.seat, it.corner)
        return dropped_hip(own).height_in - as_said if is_tabled(common_notch(own)) else None

    columns = each(Make[Pitch](settings).length, 'low', HIP_STOCK, low)
    datum = message('datum.old_rule', seat=settings.seat)
    note = message('note.old_rule', hip=settings.hip_thickness)
    return by_pitch(settings, 'seat', 'old-rule', columns, note, datum=datum)
