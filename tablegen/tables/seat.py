"""Bird's mouths of commons by stock and seat: heel, height above plate, stock left."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from copy import copy
from fractions import Fraction
from functools import partial
from itertools import tee
from typing import NamedTuple

from msgspec.structs import replace

from tablegen.geometry import seat
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.exact import Exact
from tablegen.numbers.units import INCHES, Stock
from tablegen.roof.cautions import LEAST_STOCK_UNDER_A_TAIL_IN as LEAST
from tablegen.roof.names import Mark
from tablegen.roof.question import boards_of
from tablegen.roof.seat import Notch, common_notch
from tablegen.roof.side import side
from tablegen.settings import Settings
from tablegen.tables.columns import Make, data_name, each
from tablegen.tables.table import THIN, Table

SEATS_IN = (Fraction(3, 2), Fraction(7, 2), Fraction(11, 2))
"""Seats, in, level: the least bearing on wood in the residential code (IRC 2006 to 2024 R802.6), and the widths of
nominal 4 and 6 in plates; the book's own seat is added. Local code decides."""
Told = tuple[str, Callable[[Notch], Exact]]
"""A column and the words of what it is measured from, both under one name; and what it tells of a bird's mouth."""
HEEL: Told = ('heel', lambda it: it.heel_in)
HEIGHT: Told = ('height', lambda it: it.height_in)
NOTCH: Told = ('notch', lambda it: it.notch_in)
LEFT: Told = ('left', lambda it: it.left_in)


class Commons(NamedTuple):
    """The bird's mouths of commons with one seat, at one pitch, on each size of stock."""

    pitch: Pitch
    notches: dict[Stock, Notch]


def listed(settings: Settings) -> list[Table[Commons]]:
    """Return the tables of bird's mouths of commons: heights, and what is left, for each seat."""
    found = []
    for wide in sorted({*SEATS_IN, settings.seat}):
        rows = partial(copy, tee(_commons(settings, wide), 1)[0])  # made once, by the table that asks first
        found.append(_of_seat(settings, 'height', wide, HEEL, HEIGHT, rows))
        found.append(_of_seat(settings, 'stock-left', wide, NOTCH, LEFT, rows))
    return found


def key_of(what: str, seat_in: Fraction) -> str:
    """Return the key of a table of commons, 'height' or 'stock-left', for a seat."""
    return f'{what}-{data_name(seat_in, "").replace("_", "-")}'


def is_tabled(notch: Notch) -> bool:
    """Return whether a table gives a bird's mouth: see geometry.seat.is_tabled."""
    return seat.is_tabled(notch.stock.depth_in, notch.seat_in, notch.notch_in)


def marks_of(notch: Notch) -> tuple[str, ...]:
    """Return the marks that stand beside a bird's mouth."""
    mark = notch.mark
    past = () if mark is Mark.WITHIN_A_QUARTER else (mark.value,)
    return (*past, THIN) if notch.thin else past


def _commons(settings: Settings, seat_in: Fraction) -> Iterator[Commons]:
    boards = [replace(boards_of(settings), seat_in=seat_in, stock=size) for size in INCHES.stocks]
    for pitch in settings.pitches:
        yield Commons(pitch, {one.stock: common_notch(side(pitch, one)) for one in boards})


def _of_seat(
    settings: Settings,
    what: str,
    seat_in: Fraction,
    whole: Told,
    by_size: Told,
    rows: Callable[[], Iterator[Commons]],
) -> Table[Commons]:
    """Return a table for one seat: a figure that is the same on any stock, then one for each size."""
    name, make = what.replace('-', '_'), Make[Commons](settings)

    def of_size(it: Commons, size: Stock) -> Exact | None:
        return by_size[1](it.notches[size]) if is_tabled(it.notches[size]) else None

    columns = (
        make.pitch(lambda it: it.pitch),
        make.length(whole[0], lambda it: whole[1](it.notches[INCHES.stocks[0]]), f'common_{whole[0]}'),
        *each(
            make.length,
            by_size[0],
            INCHES.stocks,
            of_size,
            f'common_{by_size[0]}',
            marks=lambda it, size: marks_of(it.notches[size]),
        ),
    )
    note, title = message('note.notches_and_dashes', least=LEAST), message(f'table.{name}', seat=seat_in)
    return make.table('seat', key_of(what, seat_in), rows, columns, note, title=title, datum=name)
