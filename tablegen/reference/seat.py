"""Bird's mouths by stock and seat: heel, height above plate, stock left, and the hip's that match."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import partial

from tablegen import text
from tablegen.exact import Exact
from tablegen.figures import Figure
from tablegen.geometry import backing, seat
from tablegen.geometry.corner import Corner, square_corner
from tablegen.lumber import SIZES, Stock, stock
from tablegen.pitch import Pitch
from tablegen.reference.finish import mark, parts
from tablegen.reference.table import Table
from tablegen.settings import Settings

SEATS_IN = (Fraction(3, 2), Fraction(7, 2), Fraction(11, 2))
"""Seats, in, level: the least bearing on wood in the residential code (IRC R802.6), and the widths of nominal 4
and 6 in plates. Local code decides."""
HIP_SEAT_IN = Fraction(7, 2)
"""The commons' seat of the tables of hips' seats."""
HIP_STOCK = ('2×6', '2×8', '2×10', '2×12')
SIZE_HEADS = tuple(size.name for size in SIZES)


@dataclass(frozen=True, slots=True)
class SeatRow:
    """The bird's mouth of commons with one seat, at one pitch, on each size of stock."""

    pitch: Pitch
    heel: Figure
    """in, plumb at the plate's outer face, seat to underside; the same on any stock."""
    heights: tuple[Figure | None, ...]
    """in, height above plate: plumb over the plate line, plate's top to rafter's top edge, one a size of
    lumber.SIZES; None where the notch would cut through."""


@dataclass(frozen=True, slots=True)
class NotchRow:
    """How deep the notch of one seat is and what it leaves, at one pitch."""

    pitch: Pitch
    notch: Figure
    """in, SQUARE to the edge, underside to the notch's corner; the same on any stock."""
    left: tuple[Figure | None, ...]
    """in, SQUARE to the edge, notch's corner to top edge, one a size; None where nothing is left."""
    marks: tuple[int, ...]
    """One a size: 0; 1 where the notch is deeper than a quarter of the stock, 2 where it is than a third."""


@dataclass(frozen=True, slots=True)
class LongestSeatRow:
    """The seats at which the notch just reaches a mark."""

    pitch: Pitch
    seats: tuple[Figure, ...]
    """in, level, outside of plate inwards, one a size of lumber.SIZES."""


@dataclass(frozen=True, slots=True)
class HipSeatRow:
    """Hips on the same stock as the commons, at one pitch and the commons' seat, square corner, equal pitches."""

    pitch: Pitch
    common_height: Figure | None
    """in, height above plate of the common; of a BACKED hip too, on its center line over the plates' corner."""
    dropped_height: Figure | None
    """in, height above plate of a DROPPED hip, on its center line over the plates' corner, to its square top."""
    dropped_seat: Figure | None
    """in, level along the hip from the plates' corner; None where the stock does not reach the plate."""
    backed_seat: Figure | None
    """in, the same for a backed hip."""
    valley_seat: Figure | None
    """in, level along the valley, from its heel inwards, which stands half of its thickness outwards of the corner."""
    shortcut_low: Figure | None
    """in, plumb: how far a dropped hip cut with a seat of 17/12 of the common's ends up below dropped_height."""


def seat_rows(settings: Settings, seat_in: Fraction) -> list[SeatRow]:
    """Return heel and heights above plate for one seat, in."""
    return [
        SeatRow(
            pitch,
            mark(seat.heel(seat_in, pitch.slope), settings),
            tuple(
                mark(seat.height_above_plate(size.depth_in, seat_in, pitch.slope), settings)
                if _cuts(size, seat_in, pitch)
                else None
                for size in SIZES
            ),
        )
        for pitch in settings.pitches
    ]


def notch_rows(settings: Settings, seat_in: Fraction) -> list[NotchRow]:
    """Return the notch of one seat, in, and the stock left."""
    return [
        NotchRow(
            pitch,
            mark(seat.notch_depth(seat_in, pitch.slope), settings),
            tuple(
                mark(seat.stock_left(size.depth_in, seat_in, pitch.slope), settings)
                if _cuts(size, seat_in, pitch)
                else None
                for size in SIZES
            ),
            tuple(seat.marks_passed(size.depth_in, seat_in, pitch.slope) for size in SIZES),
        )
        for pitch in settings.pitches
    ]


def longest_seat_rows(settings: Settings, share: Fraction) -> list[LongestSeatRow]:
    """Return the seats whose notch is just that share of the depth: one of geometry.seat.MARKS."""
    return [
        LongestSeatRow(
            pitch, parts([seat.longest_seat(size.depth_in, share, pitch.slope) for size in SIZES], settings)
        )
        for pitch in settings.pitches
    ]


def hip_seat_rows(settings: Settings, seat_in: Fraction, size: Stock) -> list[HipSeatRow]:
    """Return hips' seats for one size of stock and the commons' seat, in."""
    return [_hip_seat_row(settings, seat_in, size, pitch) for pitch in settings.pitches]


def _hip_seat_row(settings: Settings, seat_in: Fraction, size: Stock, pitch: Pitch) -> HipSeatRow:
    if not _cuts(size, seat_in, pitch):
        return HipSeatRow(pitch, None, None, None, None, None, None)
    at = square_corner(pitch.slope, pitch.slope)
    height = seat.height_above_plate(size.depth_in, seat_in, pitch.slope)
    dropped = seat.hip_height_above_plate(height, backing.drop_plumb(settings.hip_thickness, at))
    valley = seat.valley_heel(size.depth_in, height, settings.hip_thickness, at)
    shortcut = seat.shortcut_hip_height(size.depth_in, seat_in, at)
    return HipSeatRow(
        pitch,
        mark(height, settings),
        mark(dropped, settings),
        _seat(seat.hip_heel(size.depth_in, dropped, at), at, settings),
        _seat(seat.hip_heel(size.depth_in, height, at), at, settings),
        _seat(valley, at, settings),
        mark(dropped - shortcut, settings),
    )


def _seat(heel: Exact, at: Corner, settings: Settings) -> Figure | None:
    return mark(seat.hip_seat(heel, at), settings) if heel > 0 else None


def _cuts(size: Stock, seat_in: Fraction, pitch: Pitch) -> bool:
    return seat.stock_left(size.depth_in, seat_in, pitch.slope) > 0


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    found = []
    for wide in SEATS_IN:
        said = text.rational(wide)
        key = said.replace(' ', '-').replace('/', '-')
        found += [
            Table(
                'seat',
                f'height-{key}',
                f'Height above plate, seat {said} in',
                ('pitch', 'heel', *SIZE_HEADS),
                "inches, plumb: heel, seat to underside at the outside of plate; height, plate's top to top edge there",
                partial(seat_rows, seat_in=wide),
            ),
            Table(
                'seat',
                f'stock-left-{key}',
                f'Stock left, seat {said} in',
                ('pitch', 'notch', *SIZE_HEADS, *(f'mark {size}' for size in SIZE_HEADS)),
                "inches, square to the edge: notch, underside to the notch's corner; left, from there to the top edge; "
                'marks: 1 past a quarter of the depth, 2 past a third',
                partial(notch_rows, seat_in=wide),
            ),
        ]
    shares = zip(('quarter', 'third'), seat.MARKS, strict=True)
    return [*found, *map(_hip_seats, HIP_STOCK), *(_longest_seat(word, share) for word, share in shares)]


def _hip_seats(size: str) -> Table:
    said = text.rational(HIP_SEAT_IN)
    return Table(
        'seat',
        f'hip-seat-{size.replace("×", "x")}',
        f'Hip and valley seats, {size}',
        ('pitch', 'common height', 'dropped height', 'dropped', 'backed', 'valley', '17/12 low by'),
        f"inches, for a common seat of {said}: heights plumb, on the center line over the plates' corner; seats level "
        'along the hip; low by: what the shortcut of 17/12 costs a dropped hip, plumb',
        partial(hip_seat_rows, seat_in=HIP_SEAT_IN, size=stock(size)),
    )


def _longest_seat(word: str, share: Fraction) -> Table:
    return Table(
        'seat',
        f'longest-seat-{word}',
        f'Seats whose notch is a {word} of the depth',
        ('pitch', *SIZE_HEADS),
        'inches, level, outside of plate inwards',
        partial(longest_seat_rows, share=share),
    )
