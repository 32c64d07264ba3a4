"""The longest seats whose notch keeps to a share of the depth, by stock."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import partial
from typing import ClassVar

from tablegen.geometry import seat
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.exact import exact
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.roof.cautions import too_thin_for_a_tail
from tablegen.settings import Settings
from tablegen.tables.finish import limit
from tablegen.tables.former import Table
from tablegen.tables.seat import SIZE_HEADS, THIN_HEADS


@dataclass(frozen=True, slots=True)
class LongestSeatRow:
    """The seats at which the notch just reaches a mark."""

    MARKED: ClassVar[tuple[str, ...]] = ('seats',)
    pitch: Pitch
    seats: tuple[Figure | None, ...]
    """in, level, outside of plate inwards, rounded DOWN, one a size of lumber.INCHES.stocks; None where
    geometry.seat.is_tabled says no."""
    thin: tuple[int, ...]
    """As in SeatRow."""


def longest_seat_rows(settings: Settings, share: Fraction) -> list[LongestSeatRow]:
    """Return the seats whose notch is just that share of the depth: one of geometry.seat.MARKS."""
    rows = []
    for pitch in settings.pitches:
        seats = tuple(seat.longest_seat(size.depth_in, share, pitch.slope) for size in INCHES.stocks)
        told = tuple(
            limit(wide, settings)
            if seat.is_tabled(size.depth_in, wide, exact(share * size.depth_in))
            else None
            for size, wide in zip(INCHES.stocks, seats, strict=True)
        )
        thin = tuple(int(too_thin_for_a_tail(exact((1 - share) * size.depth_in))) for size in INCHES.stocks)
        rows.append(LongestSeatRow(pitch, told, thin))
    return rows


def listed(settings: Settings) -> list[Table]:
    """Return the tables of longest seats."""
    shares = zip(('quarter', 'third'), seat.MARKS, strict=True)
    return [_longest_seat(word, share) for word, share in shares]


def _longest_seat(word: str, share: Fraction) -> Table:
    return Table(
        'seat',
        f'longest-seat-{word}',
        f'Longest seats, notch a {word} of the depth',
        ('pitch', *SIZE_HEADS, *THIN_HEADS),
        'inches, level, outside of plate inwards, rounded down; by stock'
        '; marks: thin: 1 where under 3 1/2 in is left',
        partial(longest_seat_rows, share=share),
    )
