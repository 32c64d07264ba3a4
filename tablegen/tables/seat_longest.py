"""The longest seats of commons by stock: those whose notch just reaches a mark, no longer when rounded."""

from __future__ import annotations

from fractions import Fraction
from functools import partial

from tablegen.geometry import seat
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import DOWN
from tablegen.numbers.units import INCHES, Stock
from tablegen.roof.cautions import LEAST_STOCK_UNDER_A_TAIL_IN as LEAST
from tablegen.roof.cautions import too_thin_for_a_tail
from tablegen.settings import Settings
from tablegen.tables.columns import Make, by_pitch, each
from tablegen.tables.table import THIN, Table


def listed(settings: Settings) -> list[Table[Pitch]]:
    """Return a table for each share of the depth past which a notch is marked."""
    shares = zip(('quarter', 'third'), seat.MARKS, strict=True)
    return [_longest(settings, name, share) for name, share in shares]


def _longest(settings: Settings, name: str, share: Fraction) -> Table[Pitch]:
    def longest(it: Pitch, size: Stock) -> Exact | None:
        wide = seat.longest_seat(size.depth_in, share, it.slope)
        return wide if seat.is_tabled(size.depth_in, wide, exact(share * size.depth_in)) else None

    def thin(it: Pitch, size: Stock) -> tuple[str, ...]:
        return (THIN,) if too_thin_for_a_tail(exact((1 - share) * size.depth_in)) else ()

    make = partial(Make[Pitch](settings).length, way=DOWN)
    columns = each(make, 'seat', INCHES.stocks, longest, marks=thin)
    note = message('note.thin_and_dashes', least=LEAST)
    return by_pitch(settings, 'seat', f'longest-seat-{name}', columns, note, datum='longest_seat')
