"""Bird's mouths of hips and valleys at a square corner of equal pitches, on the commons' height above plate."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import partial
from typing import ClassVar

from tablegen.geometry import backing, seat
from tablegen.geometry.corner import Corner, hip_angle
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import Stock
from tablegen.roof.cautions import too_thin_for_a_tail
from tablegen.settings import Settings
from tablegen.tables.finish import mark
from tablegen.tables.former import Table
from tablegen.tables.seat import MARKS_SAID
from tablegen.written.stocks import stock

HIP_STOCK = tuple(map(stock, ('2×6', '2×8', '2×10', '2×12')))
"""Sizes that hips and valleys are tabled in on rafters of the same size, besides the settings' own."""


@dataclass(frozen=True, slots=True)
class HipSeatRow:
    """A hip at one pitch, dropped and backed."""

    MARKED: ClassVar[tuple[str, ...]] = ('dropped_seat', 'backed_seat')
    pitch: Pitch
    dropped_height: Figure | None
    """in, plumb, height above plate of a DROPPED hip: plate's top to its square top, on its center line over the
    plates' corner; the drop is in it. None where the common's own bird's mouth is not tabled, as in all of a row."""
    dropped_heel: Figure | None
    """in, plumb at the plates' corner, on the center line of its side, seat to underside; None where
    geometry.seat.is_tabled says no."""
    dropped_seat: Figure | None
    """in, level along the hip from the plates' corner inwards."""
    backed_height: Figure | None
    """in, the same of a BACKED hip, to its ridge: the commons' height above plate."""
    backed_heel: Figure | None
    backed_seat: Figure | None
    marks: tuple[int, ...]
    """Of the dropped and the backed hip: 0; 1 where the notch is deeper than a quarter of the stock, 2 than a third."""
    thin: tuple[int, ...]
    """Of both: 1 where less stock is left than the code asks for under a tail, else 0."""


@dataclass(frozen=True, slots=True)
class ValleySeatRow:
    """A valley at one pitch, which is not dropped."""

    MARKED: ClassVar[tuple[str, ...]] = ('seat',)
    pitch: Pitch
    plumb_depth: Figure
    """in, plumb, top edge to underside, of this stock as a valley or hip."""
    height: Figure | None
    """in, plumb, height above plate on its center line over the inside corner: the commons'."""
    heel: Figure | None
    """in, plumb, seat to underside, where heel_out says; None where geometry.seat.is_tabled says no."""
    seat: Figure | None
    """in, level along the valley, from its heel inwards."""
    heel_out: Figure
    """in, level along the valley, from the inside corner outwards, towards the tail, to the heel."""
    marks: int
    """As in HipSeatRow, of one."""
    thin: int


@dataclass(frozen=True, slots=True)
class OldRuleRow:
    """What an old rule, a seat of 17/12 of the common's, does to a dropped hip of the rafters' stock at one pitch."""

    pitch: Pitch
    low: tuple[Figure | None, ...]
    """in, plumb: how far its top ends up below where it should be, one a size of HIP_STOCK; None where the common's
    own bird's mouth is not tabled."""


@dataclass(frozen=True, slots=True)
class _BirdsMouth:
    heel: Figure | None
    seat: Figure | None
    marks: int
    thin: int


def hip_seat_rows(settings: Settings, seat_in: Fraction, rafters: Stock, hips: Stock) -> list[HipSeatRow]:
    """Return bird's mouths of hips for the commons' seat, in, and the stock of both."""
    return [_hip_seat_row(settings, seat_in, rafters, hips, pitch) for pitch in settings.pitches]


def valley_seat_rows(
    settings: Settings, seat_in: Fraction, rafters: Stock, valleys: Stock
) -> list[ValleySeatRow]:
    """Return bird's mouths of valleys for the commons' seat, in, and the stock of both."""
    rows = []
    for pitch in settings.pitches:
        at, height = pitch.corner, _height(seat_in, rafters, pitch)
        heel = (
            None if height is None else seat.valley_heel(valleys.depth_in, height, settings.hip_thickness, at)
        )
        made = _birds_mouth(heel, valleys, at, settings)
        rows.append(
            ValleySeatRow(
                pitch,
                mark(valleys.depth_in / hip_angle(at).cosine(), settings),
                None if height is None else mark(height, settings),
                made.heel,
                made.seat,
                mark(seat.valley_heel_back(settings.hip_thickness, at), settings),
                made.marks,
                made.thin,
            )
        )
    return rows


def old_rule_rows(settings: Settings, seat_in: Fraction) -> list[OldRuleRow]:
    """Return what the old rule costs for the commons' seat, in."""
    rows = []
    for pitch in settings.pitches:
        at = pitch.corner
        low: list[Figure | None] = []
        drop = backing.drop_plumb(settings.hip_thickness, at)
        for size in HIP_STOCK:
            height = _height(seat_in, size, pitch)
            if height is None:
                low.append(None)
                continue
            as_said = seat.shortcut_hip_height(size.depth_in, seat_in, at)
            low.append(mark(seat.hip_height_above_plate(height, drop) - as_said, settings))
        rows.append(OldRuleRow(pitch, tuple(low)))
    return rows


def _hip_seat_row(
    settings: Settings, seat_in: Fraction, rafters: Stock, hips: Stock, pitch: Pitch
) -> HipSeatRow:
    at, height = pitch.corner, _height(seat_in, rafters, pitch)
    if height is None:
        return HipSeatRow(pitch, None, None, None, None, None, None, (0, 0), (0, 0))
    lowered = seat.hip_height_above_plate(height, backing.drop_plumb(settings.hip_thickness, at))
    dropped, backed = (
        _birds_mouth(seat.hip_heel(hips.depth_in, one, at), hips, at, settings) for one in (lowered, height)
    )
    return HipSeatRow(
        pitch,
        mark(lowered, settings),
        dropped.heel,
        dropped.seat,
        mark(height, settings),
        backed.heel,
        backed.seat,
        (dropped.marks, backed.marks),
        (dropped.thin, backed.thin),
    )


def _height(seat_in: Fraction, rafters: Stock, pitch: Pitch) -> Exact | None:
    """Return the commons' height above plate, None where their own bird's mouth is not tabled."""
    if not seat.is_tabled(rafters.depth_in, seat_in, seat.notch_depth(seat_in, pitch.slope)):
        return None
    return seat.height_above_plate(rafters.depth_in, seat_in, pitch.slope)


def _birds_mouth(heel: Exact | None, size: Stock, at: Corner, settings: Settings) -> _BirdsMouth:
    """Return heel and seat of a member, none where they are not tabled, and what they are marked with."""
    if heel is None:
        return _BirdsMouth(None, None, 0, 0)
    level, notch = seat.hip_seat(heel, at), seat.hip_notch_depth(heel, at)
    marks, thin = seat.notch_marks(size.depth_in, notch), int(too_thin_for_a_tail(size.depth_in - notch))
    if not seat.is_tabled(size.depth_in, level, notch):
        return _BirdsMouth(None, None, marks, thin)
    return _BirdsMouth(mark(heel, settings), mark(level, settings), marks, thin)


def listed(settings: Settings) -> list[Table]:
    """Return the tables of hips and of valleys: the settings' own sizes, then each size with rafters of its own."""
    own = (settings.rafters, settings.hips, settings.valleys)
    alike = [(size, size, size) for size in HIP_STOCK]
    found: dict[str, Table] = {}
    for rafters, hips, valleys in (*([] if own in alike else [own]), *alike):
        for table in (_hips(settings, rafters, hips), _valleys(settings, rafters, valleys)):
            found.setdefault(table.key, table)
    said = text.rational(settings.seat)
    old = Table(
        'seat',
        'old-rule',
        '17/12 low by: what the old rule costs',
        ('pitch', *(size.name for size in HIP_STOCK)),
        f"inches, plumb, how far a dropped hip on a seat of 17/12 of the common's, {said}, stands too low; by stock",
        partial(old_rule_rows, seat_in=settings.seat),
    )
    return [*found.values(), old]


def _hips(settings: Settings, rafters: Stock, hips: Stock) -> Table:
    said = text.rational(settings.seat)
    return Table(
        'seat',
        key_of('hip', rafters, hips),
        f'Hip seats, {_sizes(rafters, hips)}',
        (
            'pitch',
            *(f'{way} {what}' for way in ('dropped', 'backed') for what in ('height', 'heel', 'seat')),
            *('marks dropped', 'marks backed', 'thin dropped', 'thin backed'),
        ),
        f"inches, common's seat {said}; on the center line: height above plate and heel plumb, at the plates' corner; "
        f'seat level, from there inwards{MARKS_SAID}',
        partial(hip_seat_rows, seat_in=settings.seat, rafters=rafters, hips=hips),
    )


def _valleys(settings: Settings, rafters: Stock, valleys: Stock) -> Table:
    said = text.rational(settings.seat)
    return Table(
        'seat',
        key_of('valley', rafters, valleys),
        f'Valley seats, {_sizes(rafters, valleys)}',
        ('pitch', 'plumb depth', 'height', 'heel', 'seat', 'heel out', 'marks', 'thin'),
        f"inches, common's seat {said}; plumb: depth, height over the inside corner, heel; level: heel out, outwards of "
        f'it, seat, from heel inwards{MARKS_SAID}',
        partial(valley_seat_rows, seat_in=settings.seat, rafters=rafters, valleys=valleys),
    )


def key_of(member: str, rafters: Stock, own: Stock) -> str:
    """Return the key of the table of hips or of valleys, 'hip' or 'valley', for two sizes."""
    return (
        f'{member}-seat-{_sizes(rafters, own).removesuffix(" rafters").replace("×", "x").replace(" ", "-")}'
    )


def _sizes(rafters: Stock, own: Stock) -> str:
    return own.name if own == rafters else f'{own.name} with {rafters.name} rafters'
