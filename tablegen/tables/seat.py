"""Bird's mouths of commons by stock and seat: heel, height above plate, stock left; the longest seats by stock."""

from __future__ import annotations

from fractions import Fraction
from functools import partial

from tablegen.geometry import seat
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import DOWN
from tablegen.numbers.units import INCHES, Stock
from tablegen.roof.cautions import LEAST_STOCK_UNDER_A_TAIL_IN, too_thin_for_a_tail
from tablegen.settings import Settings
from tablegen.tables.columns import Make, by_pitch, data_name, each
from tablegen.tables.table import PAST_A_QUARTER, PAST_A_THIRD, THIN, Column, Table

SEATS_IN = (Fraction(3, 2), Fraction(7, 2), Fraction(11, 2))
"""Seats, in, level: the least bearing on wood in the residential code (IRC 2006 to 2024 R802.6), and the widths of
nominal 4 and 6 in plates; the book's own seat is added. Local code decides."""
PAST = dict(zip(('quarter', 'third'), seat.MARKS, strict=True))
"""Shares of the depth past which a notch is marked, by name."""


def listed(settings: Settings) -> list[Table[Pitch]]:
    """Return the tables of bird's mouths of commons: a height and what is left for each seat."""
    seats = sorted({*SEATS_IN, settings.seat})
    return [table for wide in seats for table in (_heights(settings, wide), _stock_left(settings, wide))]


def longest(settings: Settings) -> list[Table[Pitch]]:
    """Return the tables of the seats at which the notch just reaches a mark; no longer when rounded."""
    return [_longest(settings, name, share) for name, share in PAST.items()]


def notch_marks(depth_in: Fraction, notch_in: Exact) -> tuple[str, ...]:
    """Return the marks of a notch, in, square to the edge, in stock of a depth."""
    past = (PAST_A_QUARTER, PAST_A_THIRD)[: seat.notch_marks(depth_in, notch_in)][-1:]
    return (*past, THIN) if too_thin_for_a_tail(depth_in - notch_in) else past


def _heights(settings: Settings, seat_in: Fraction) -> Table[Pitch]:
    make = Make[Pitch](settings)

    def height(it: Pitch, size: Stock) -> Exact | None:
        return common_height(it, size, seat_in)

    columns = (
        make.length('heel', lambda it: seat.heel(seat_in, it.slope), 'common_heel'),
        *each(
            make.length,
            'height',
            INCHES.stocks,
            height,
            'common_height',
            marks=lambda it, size: notch_marks(size.depth_in, seat.notch_depth(seat_in, it.slope)),
        ),
    )
    return _of_seat(settings, 'height', seat_in, columns, 'plumb')


def _stock_left(settings: Settings, seat_in: Fraction) -> Table[Pitch]:
    make = Make[Pitch](settings)

    def left(it: Pitch, size: Stock) -> Exact | None:
        is_tabled = common_height(it, size, seat_in) is not None
        return seat.stock_left(size.depth_in, seat_in, it.slope) if is_tabled else None

    columns = (
        make.length('notch', lambda it: seat.notch_depth(seat_in, it.slope), 'notch'),
        *each(
            make.length,
            'left',
            INCHES.stocks,
            left,
            'left',
            marks=lambda it, size: notch_marks(size.depth_in, seat.notch_depth(seat_in, it.slope)),
        ),
    )
    return _of_seat(settings, 'stock-left', seat_in, columns, 'square_to_edge')


def common_height(it: Pitch, size: Stock, seat_in: Fraction) -> Exact | None:
    """Return the commons' height above plate, in, None where geometry.seat.is_tabled says no."""
    if not seat.is_tabled(size.depth_in, seat_in, seat.notch_depth(seat_in, it.slope)):
        return None
    return seat.height_above_plate(size.depth_in, seat_in, it.slope)


def _of_seat(
    settings: Settings, what: str, seat_in: Fraction, columns: tuple[Column[Pitch], ...], datum: str
) -> Table[Pitch]:
    name = what.replace('-', '_')
    return by_pitch(
        settings,
        'seat',
        f'{what}-{data_name(seat_in, "").replace("_", "-")}',
        columns,
        title=message(f'table.{name}', seat=seat_in),
        datum=message(f'datum.seat_{datum}'),
        notes=(message('note.notches_and_dashes', least=LEAST_STOCK_UNDER_A_TAIL_IN),),
    )


def _longest(settings: Settings, name: str, share: Fraction) -> Table[Pitch]:
    def longest(it: Pitch, size: Stock) -> Exact | None:
        wide = seat.longest_seat(size.depth_in, share, it.slope)
        return wide if seat.is_tabled(size.depth_in, wide, exact(share * size.depth_in)) else None

    def thin(it: Pitch, size: Stock) -> tuple[str, ...]:
        return (THIN,) if too_thin_for_a_tail(exact((1 - share) * size.depth_in)) else ()

    return by_pitch(
        settings,
        'seat',
        f'longest-seat-{name}',
        each(partial(Make[Pitch](settings).length, way=DOWN), 'seat', INCHES.stocks, longest, marks=thin),
        datum=message('datum.longest_seat'),
        notes=(message('note.thin_and_dashes', least=LEAST_STOCK_UNDER_A_TAIL_IN),),
    )
