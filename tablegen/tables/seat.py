"""Bird's mouths of commons by stock and seat: heel, height above plate, stock left."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import partial
from typing import ClassVar

from tablegen.geometry import seat
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES, Stock
from tablegen.roof.cautions import too_thin_for_a_tail
from tablegen.settings import Settings
from tablegen.tables.finish import mark
from tablegen.tables.former import Table

SEATS_IN = (Fraction(3, 2), Fraction(7, 2), Fraction(11, 2))
"""Seats, in, level: the least bearing on wood in the residential code (IRC 2006 to 2024 R802.6), and the widths of
nominal 4 and 6 in plates; the book's own seat is added. Local code decides."""
SIZE_HEADS = tuple(size.name for size in INCHES.stocks)
THIN_HEADS = tuple(f'thin {size}' for size in SIZE_HEADS)
MARK_HEADS = (*(f'marks {size}' for size in SIZE_HEADS), *THIN_HEADS)
MARKS_SAID = '; marks: 1 past a quarter of the depth, 2 past a third; thin: 1 where under 3 1/2 in is left'
"""At the end of a line: for a data file, where marks are numbers."""


@dataclass(frozen=True, slots=True)
class SeatRow:
    """The bird's mouth of commons with one seat, at one pitch, on each size of stock."""

    MARKED: ClassVar[tuple[str, ...]] = ('heights',)
    pitch: Pitch
    heel: Figure
    """in, plumb at the plate's outer face, seat to underside; the same on any stock."""
    heights: tuple[Figure | None, ...]
    """in, height above plate: plumb over the plate line, plate's top to rafter's top edge, one a size of
    lumber.INCHES.stocks; None where geometry.seat.is_tabled says no."""
    marks: tuple[int, ...]
    """One a size: 0; 1 where the notch is deeper than a quarter of the stock, 2 where it is than a third."""
    thin: tuple[int, ...]
    """One a size: 1 where less stock is left than the code asks for under a tail, else 0."""


@dataclass(frozen=True, slots=True)
class NotchRow:
    """How deep the notch of one seat is and what it leaves, at one pitch."""

    MARKED: ClassVar[tuple[str, ...]] = ('left',)
    pitch: Pitch
    notch: Figure
    """in, SQUARE to the edge, underside to the notch's corner; the same on any stock."""
    left: tuple[Figure | None, ...]
    """in, SQUARE to the edge, notch's corner to top edge, one a size; None where geometry.seat.is_tabled says no."""
    marks: tuple[int, ...]
    """As in SeatRow."""
    thin: tuple[int, ...]


def seat_rows(settings: Settings, seat_in: Fraction) -> list[SeatRow]:
    """Return heel and heights above plate for one seat, in."""
    return [
        SeatRow(
            pitch,
            mark(seat.heel(seat_in, pitch.slope), settings),
            tuple(
                mark(seat.height_above_plate(size.depth_in, seat_in, pitch.slope), settings)
                if _is_tabled(size, seat_in, pitch)
                else None
                for size in INCHES.stocks
            ),
            *_marks(seat_in, pitch),
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
                if _is_tabled(size, seat_in, pitch)
                else None
                for size in INCHES.stocks
            ),
            *_marks(seat_in, pitch),
        )
        for pitch in settings.pitches
    ]


def _is_tabled(size: Stock, seat_in: Fraction, pitch: Pitch) -> bool:
    return seat.is_tabled(size.depth_in, seat_in, seat.notch_depth(seat_in, pitch.slope))


def _marks(seat_in: Fraction, pitch: Pitch) -> tuple[tuple[int, ...], tuple[int, ...]]:
    """Return marks and thin, one a size."""
    marks = tuple(seat.marks_passed(size.depth_in, seat_in, pitch.slope) for size in INCHES.stocks)
    left = [seat.stock_left(size.depth_in, seat_in, pitch.slope) for size in INCHES.stocks]
    return marks, tuple(int(too_thin_for_a_tail(one)) for one in left)


def seats_of(settings: Settings) -> tuple[Fraction, ...]:
    """Return the seats that a book tables, the settings' own among them."""
    return tuple(sorted({*SEATS_IN, settings.seat}))


def listed(settings: Settings) -> list[Table]:
    """Return the tables of bird's mouths of commons."""
    found = []
    for wide in seats_of(settings):
        said = text.rational(wide)
        key = said.replace(' ', '-').replace('/', '-')
        found += [
            Table(
                'seat',
                f'height-{key}',
                f'Height above plate, seat {said} in',
                ('pitch', 'heel', *SIZE_HEADS, *MARK_HEADS),
                'inches, plumb: heel, seat to underside at the outside of plate; by stock: height, '
                f"plate's top to top edge there{MARKS_SAID}",
                partial(seat_rows, seat_in=wide),
            ),
            Table(
                'seat',
                f'stock-left-{key}',
                f'Stock left, seat {said} in',
                ('pitch', 'notch', *SIZE_HEADS, *MARK_HEADS),
                "inches, square to the edge: notch, underside to the notch's corner; by stock: left, from there to the "
                f'top edge{MARKS_SAID}',
                partial(notch_rows, seat_in=wide),
            ),
        ]
    return found
