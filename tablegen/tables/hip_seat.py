"""Bird's mouths of hips and valleys at a square corner of equal pitches, on the commons' height above plate."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, NamedTuple

from tablegen.geometry import backing, seat
from tablegen.geometry.corner import Corner, hip_angle
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.exact import Exact
from tablegen.numbers.units import Stock
from tablegen.roof.cautions import LEAST_STOCK_UNDER_A_TAIL_IN
from tablegen.settings import Settings
from tablegen.tables.columns import Make, by_pitch, data_name, each
from tablegen.tables.seat import common_height, notch_marks
from tablegen.tables.table import Column, S, Table
from tablegen.written.stocks import stock

HIP_STOCK = tuple(map(stock, ('2×6', '2×8', '2×10', '2×12')))
"""Sizes that hips and valleys are tabled in on rafters of the same size, besides the settings' own."""


class Mouth(NamedTuple):
    """A bird's mouth of a hip or valley on its center line; no heel and no seat where it is not tabled."""

    height: Exact | None = None
    """in, plumb, height above plate over the plates' corner; None where the common's own bird's mouth is not tabled."""
    heel: Exact | None = None
    """in, plumb, seat to underside."""
    seat: Exact | None = None
    """in, level along the member, from its heel inwards."""
    marks: tuple[str, ...] = ()


class Hip(NamedTuple):
    """A hip at one pitch: its square top lowered by its drop, which is in the height, or its top backed."""

    pitch: Pitch
    dropped: Mouth = Mouth()
    backed: Mouth = Mouth()


class Valley(NamedTuple):
    """A valley at one pitch, which is not dropped."""

    pitch: Pitch
    mouth: Mouth = Mouth()


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

    def hip(it: Pitch) -> Hip:
        height = common_height(it, rafters, settings.seat)
        if height is None:
            return Hip(it)
        lowered = seat.hip_height_above_plate(height, backing.drop_plumb(settings.hip_thickness, it.corner))
        heels = (seat.hip_heel(hips.depth_in, one, it.corner) for one in (lowered, height))
        dropped, backed = (
            _mouth(one, heel, hips, it.corner) for one, heel in zip((lowered, height), heels, strict=True)
        )
        return Hip(it, dropped, backed)

    columns = (
        make.pitch(lambda it: it.pitch),
        make.length('dropped_height', lambda it: it.dropped.height, 'hip_height'),
        make.length('dropped_heel', lambda it: it.dropped.heel, 'hip_height'),
        make.length(
            'dropped_seat', lambda it: it.dropped.seat, 'hip_seat', marks=lambda it: it.dropped.marks
        ),
        make.length('backed_height', lambda it: it.backed.height, 'hip_height'),
        make.length('backed_heel', lambda it: it.backed.heel, 'hip_height'),
        make.length('backed_seat', lambda it: it.backed.seat, 'hip_seat', marks=lambda it: it.backed.marks),
    )
    return _seats(settings, 'hip', rafters, hips, columns, hip)


def _valleys(settings: Settings, rafters: Stock, valleys: Stock) -> Table[Valley]:
    """Return the bird's mouths of valleys, whose heel stands outwards of the plates' inside corner."""
    make, thick, depth = Make[Valley](settings), settings.hip_thickness, valleys.depth_in

    def valley(it: Pitch) -> Valley:
        height = common_height(it, rafters, settings.seat)
        if height is None:
            return Valley(it)
        heel = seat.valley_heel(depth, height, thick, it.corner)
        return Valley(it, _mouth(height, heel, valleys, it.corner))

    columns = (
        make.pitch(lambda it: it.pitch),
        make.length('plumb_depth', lambda it: depth / hip_angle(it.pitch.corner).cosine(), 'valley_plumb'),
        make.length('height', lambda it: it.mouth.height, 'valley_plumb'),
        make.length('heel', lambda it: it.mouth.heel, 'valley_plumb'),
        make.length('seat', lambda it: it.mouth.seat, 'valley_level', marks=lambda it: it.mouth.marks),
        make.length('heel_out', lambda it: seat.valley_heel_back(thick, it.pitch.corner), 'valley_level'),
    )
    return _seats(settings, 'valley', rafters, valleys, columns, valley)


def _seats(
    settings: Settings,
    member: str,
    rafters: Stock,
    own: Stock,
    columns: tuple[Column[S], ...],
    subject: Callable[[Pitch], S],
) -> Table[S]:
    size = own.name if own == rafters else message('table.with_rafters', own=own.name, rafters=rafters.name)
    return Table(
        key_of(member, rafters, own),
        'seat',
        message(f'table.{member}_seat', size=size),
        columns,
        lambda: map(subject, settings.pitches),
        datum=message('datum.common_seat', seat=settings.seat),
        notes=(
            message(f'note.{member}_seats', hip=settings.hip_thickness),
            message('note.notches_and_dashes', least=LEAST_STOCK_UNDER_A_TAIL_IN),
        ),
    )


def _mouth(height: Exact, heel: Exact, size: Stock, at: Corner) -> Mouth:
    """Return the bird's mouth of a member, without heel and seat where geometry.seat.is_tabled says no."""
    level, notch = seat.hip_seat(heel, at), seat.hip_notch_depth(heel, at)
    if not seat.is_tabled(size.depth_in, level, notch):
        return Mouth(height)
    return Mouth(height, heel, level, notch_marks(size.depth_in, notch))


def _old_rule(settings: Settings) -> Table[Pitch]:
    """Return how far too low an old rule, a seat of 17/12 of the common's, puts a dropped hip of the rafters' stock."""

    def low(it: Pitch, size: Stock) -> Exact | None:
        height = common_height(it, size, settings.seat)
        if height is None:
            return None
        drop = backing.drop_plumb(settings.hip_thickness, it.corner)
        as_said = seat.shortcut_hip_height(size.depth_in, settings.seat, it.corner)
        return seat.hip_height_above_plate(height, drop) - as_said

    return by_pitch(
        settings,
        'seat',
        'old-rule',
        each(Make[Pitch](settings).length, 'low', HIP_STOCK, low),
        datum=message('datum.old_rule', seat=settings.seat),
        notes=(message('note.old_rule', hip=settings.hip_thickness),),
    )
