"""Tails by overhang, and the cuts at their ends by stock."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from tablegen.geometry import common, corner, tail
from tablegen.geometry.pitch import Pitch
from tablegen.messages import Message, message
from tablegen.numbers.exact import Exact
from tablegen.numbers.units import INCHES, Stock
from tablegen.roof.cautions import CANTILEVERS, LEAST_STOCK_UNDER_A_TAIL_IN, LONGEST_NOTCHED_TAIL_IN
from tablegen.settings import Settings
from tablegen.tables.columns import Make, by_pitch, each
from tablegen.tables.table import THIN, Table

OVERHANGS_IN = tuple(map(Fraction, (1, 6, 12, 16, 18, 20, 24)))
"""in, level, square to the eave; lengths for others add up from these, 1 in for every inch over."""


def listed(settings: Settings) -> list[Table[Pitch]]:
    """Return the tables of this group."""
    long = message('note.long_tail', most=LONGEST_NOTCHED_TAIL_IN, source=CANTILEVERS)
    return [
        _by_overhang(settings, 'common', 'overhang', lambda it, out: common.line_length(out, it.slope), long),
        _by_overhang(
            settings,
            'hip',
            'overhang_of_commons',
            lambda it, out: corner.hip_length(out, it.corner),
            message('note.tail_hip'),
        ),
        _by_overhang(settings, 'fall', 'overhang', lambda it, out: common.rise(out, it.slope)),
        _by_stock(
            settings, 'plumb', 'plumb_cut', lambda it, size: tail.plumb_cut_length(size.depth_in, it.slope)
        ),
        _by_stock(
            settings,
            'square',
            'lower_corner_set_in',
            lambda it, size: tail.square_cut_set_in(size.depth_in, it.slope),
        ),
    ]


def _by_overhang(
    settings: Settings, what: str, span: str, of: Callable[[Pitch, Fraction], Exact], *notes: Message
) -> Table[Pitch]:
    column = 'fall_overhang' if what == 'fall' else 'tail_overhang'
    columns = each(Make[Pitch](settings).length, column, OVERHANGS_IN, of)
    return by_pitch(settings, 'tail', f'tail-{what}', columns, *notes, datum=f'tail_{what}', span=span)


def _by_stock(settings: Settings, cut: str, column: str, of: Callable[[Pitch, Stock], Exact]) -> Table[Pitch]:
    columns = each(Make[Pitch](settings).length, column, INCHES.stocks, of, marks=_never_notched)
    note = message('note.any_notch', least=LEAST_STOCK_UNDER_A_TAIL_IN)
    return by_pitch(settings, 'tail', f'tail-{cut}-cut', columns, note, datum=f'{cut}_tail_cut')


def _never_notched(it: Pitch, size: Stock) -> tuple[str, ...]:
    """Mark sizes of which any notch at all leaves less than the code asks for under a tail."""
    return (THIN,) if size.depth_in <= LEAST_STOCK_UNDER_A_TAIL_IN else ()
