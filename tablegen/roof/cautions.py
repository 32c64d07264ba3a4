"""Cautions that a roof's own numbers call for: they warn and defer, they decide nothing."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from tablegen.geometry import seat
from tablegen.messages import Message, message
from tablegen.numbers.exact import Exact
from tablegen.numbers.units import INCHES

LOW_RISE_IN = 3
STEEP_RISE_IN = 8
"""Over this the caution of falls is given with a roof's figures. No limit of safety: none is known, and none is printed."""
LONGEST_NOTCHED_TAIL_IN = Fraction(24)
LEAST_STOCK_UNDER_A_TAIL_IN = Fraction(7, 2)
LEAST_SEAT_IN = Fraction(3, 2)
LEAST_SEAT_ON_MASONRY_IN = Fraction(3)
DEFERS = message('caution.defers')


class Caution(Struct, frozen=True):
    """One caution."""

    key: str
    says: tuple[Message, ...]
    """A sentence or two."""
    sources: tuple[Message, ...]
    """Where the limit is from, and what of that is from memory."""


def _caution(key: str, says: Message, *sources: str) -> Caution:
    return Caution(key, (says,), tuple(map(Message, sources)))


AT_ENDS = message('caution.source.ends')
CUSTOM = 'caution.source.custom'
CANTILEVERS = message('caution.source.cantilevers')
NOT_AT_AN_END = message('caution.not_at_an_end')

LOW_SLOPE = _caution(
    'low_slope', message('caution.low_slope', rise=LOW_RISE_IN), 'caution.source.ridge_as_beam'
)
LOW_SHED = _caution('low_slope', message('caution.low_shed', rise=LOW_RISE_IN), 'caution.source.coverings')
STEEP = _caution('steep', message('caution.steep'), CUSTOM)
PAST_A_QUARTER = _caution('deep_notch', message('caution.past_a_quarter'), AT_ENDS.name)
PAST_A_THIRD = _caution('deep_notch', message('caution.past_a_third'), 'caution.source.third', AT_ENDS.name)
LONG_TAIL = _caution(
    'long_tail', message('caution.long_tail', most=LONGEST_NOTCHED_TAIL_IN), CANTILEVERS.name
)
THIN_TAIL = _caution(
    'thin_tail', message('caution.thin_tail', least=LEAST_STOCK_UNDER_A_TAIL_IN), 'caution.source.thin_tail'
)
SEATS = {'least': LEAST_SEAT_IN, 'masonry': LEAST_SEAT_ON_MASONRY_IN}
SHORT_SEAT = _caution('short_seat', message('caution.short_seat', **SEATS), 'caution.source.bearing')
LOOK_AT_THE_SEAT = message('caution.look_at_the_seat', **SEATS)
SHORT_ON_MASONRY = _caution(
    'short_seat_on_masonry',
    message('caution.short_seat_on_masonry', masonry=LEAST_SEAT_ON_MASONRY_IN),
    'caution.source.bearing',
)
SHALLOW_HIP = _caution('shallow_hip', message('caution.shallow_hip'), 'caution.source.hip_depth')

TIES = _caution('ties', message('caution.ties'), 'caution.source.ties')
TIES_AT_A_PEAK = _caution('ties', message('caution.ties_at_a_peak'), 'caution.source.ties')
SHALLOW_RIDGE = _caution('shallow_ridge', message('caution.shallow_ridge'), 'caution.source.ridge_depth')
HUNG_HIP = _caution('hung_hip', message('caution.hung_hip'), 'caution.source.hip_depth')
CARRYING_VALLEY = _caution('carrying_valley', message('caution.carrying_valley'), 'caution.source.hip_depth')


def pitch_cautions(slope: Exact) -> tuple[Caution, ...]:
    """Return what the pitch alone calls for."""
    found = [LOW_SLOPE] if slope * INCHES.base < LOW_RISE_IN else []
    return tuple(found + ([STEEP] if slope * INCHES.base > STEEP_RISE_IN else []))


def bearing_cautions(seat_in: Exact | Fraction) -> tuple[Caution, ...]:
    """Return what the level length of any member's seat calls for, in."""
    if seat_in < LEAST_SEAT_IN:
        return (SHORT_SEAT,)
    return (SHORT_ON_MASONRY,) if seat_in < LEAST_SEAT_ON_MASONRY_IN else ()


def notch_cautions(depth_in: Fraction, notch_in: Exact, overhang_in: Exact | Fraction) -> tuple[Caution, ...]:
    """Return what the notch of any member and the tail outside it call for.

    Given:
        depth_in     of the member's own stock, square to its edge
        notch_in     square to its edge
        overhang_in  level, 0 for no tail; of the commons, for a hip or valley
    """
    passed = seat.notch_marks(depth_in, notch_in)
    found = [(PAST_A_QUARTER, PAST_A_THIRD)[passed - 1]] if passed else []
    if overhang_in > 0:
        found = [_under_a_tail(one) for one in found]
    if overhang_in > LONGEST_NOTCHED_TAIL_IN:
        found.append(LONG_TAIL)
    if overhang_in > 0 and too_thin_for_a_tail(depth_in - notch_in):
        found.append(THIN_TAIL)
    return tuple(found)


def too_thin_for_a_tail(left_in: Exact) -> bool:
    """Return whether the stock left over a notch, square to the edge, is under what the code asks for under a tail."""
    return left_in < LEAST_STOCK_UNDER_A_TAIL_IN


def _under_a_tail(one: Caution) -> Caution:
    with_a_tail = message('caution.source.with_a_tail', source=CANTILEVERS)
    return replace(one, says=(*one.says, NOT_AT_AN_END), sources=(*one.sources, with_a_tail))
