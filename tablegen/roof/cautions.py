"""Cautions that a roof's own numbers call for: they warn and defer, they decide nothing."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from tablegen.geometry import seat
from tablegen.numbers.exact import Exact

LOW_RISE_IN = 3
STEEP_RISE_IN = 8
"""Over this the caution of falls is given with a roof's figures. No limit of safety: none is known, and none is printed."""
LONGEST_NOTCHED_TAIL_IN = 24
LEAST_STOCK_UNDER_A_TAIL_IN = Fraction(7, 2)
LEAST_SEAT_IN = Fraction(3, 2)
LEAST_SEAT_ON_MASONRY_IN = 3
DEFERS = 'Local code and a licensed designer decide.'


@dataclass(frozen=True, slots=True)
class Caution:
    """One caution."""

    key: str
    text: str
    """A sentence or two, final."""
    source: str
    """Where the limit is from, and what of that is from memory."""


AT_ENDS = 'a quarter at the ends of a member: IRC 2006 and 2009 R802.7.1; later editions refer to R502.8.1'
CUSTOM = 'a third: common practice, no source'
CANTILEVERS = 'IRC 2006 and 2009 R802.7.1 exception; R802.7.1.1 in 2024, and from 2012 on from memory'
NOT_AT_AN_END = 'With a tail outside it, it is not at the end of the member: the stock left over it and the overhang govern.'

LOW_SLOPE = Caution(
    'low_slope',
    'Under 3 in 12 the ridge, hips and valleys are designed as beams, and some coverings leak.',
    'IRC 2006 and 2009 R802.3; 2018 and later R802.4.4',
)
LOW_SHED = Caution(
    'low_slope',
    'Under 3 in 12 some coverings leak: each has its own least slope.',
    'IRC 2021 R905.2.2 to R905.15.1',
)
STEEP = Caution(
    'steep',
    'Any roof is a fall. The steeper it is, the more is needed: scaffold, roof brackets, a tied-off harness.',
    'common practice, no source',
)
PAST_A_QUARTER = Caution('deep_notch', 'The notch takes more than a quarter of the depth.', AT_ENDS)
PAST_A_THIRD = Caution(
    'deep_notch',
    'The notch takes more than a third of the depth.',
    f'{CUSTOM}; {AT_ENDS}',
)
LONG_TAIL = Caution('long_tail', 'A rafter notched at the plate overhangs by more than 24 in.', CANTILEVERS)
THIN_TAIL = Caution(
    'thin_tail',
    'Less than 3 1/2 in of stock is left over the notch of a rafter with a tail.',
    'IRC 2024 R802.7.1.1, and from 2012 on from memory; 2006 and 2009 R802.7.1 exception: 4 in nominal',
)
SHORT_SEAT = Caution(
    'short_seat',
    'The seat bears on less than 1 1/2 in of wood or metal; on masonry or concrete 3 in is the least.',
    'IRC 2006 to 2024 R802.6',
)
SHORT_ON_MASONRY = Caution(
    'short_seat_on_masonry',
    'On masonry or concrete the seat would bear on less than 3 in.',
    'IRC 2006 to 2024 R802.6',
)
SHALLOW_HIP = Caution(
    'shallow_hip',
    'Less deep than the cut end of the rafters, which is as long as their plumb cut.',
    'IRC 2006 and 2009 R802.3; 2018 and later R802.4.3',
)


def pitch_cautions(slope: Exact) -> tuple[Caution, ...]:
    """Return what the pitch alone calls for."""
    found = [LOW_SLOPE] if slope * 12 < LOW_RISE_IN else []
    return tuple(found + ([STEEP] if slope * 12 > STEEP_RISE_IN else []))


def seat_cautions(
    depth_in: Fraction, seat_in: Exact | Fraction, overhang_in: Exact | Fraction, slope: Exact
) -> tuple[Caution, ...]:
    """Return what a common's bird's mouth and the tail outside it call for.

    Given:
        depth_in     of the stock, square to its edge
        seat_in      level
        overhang_in  level, 0 for no tail
    """
    notch = seat.notch_depth(seat_in, slope)
    return (*notch_cautions(depth_in, notch, overhang_in), *bearing_cautions(seat_in))


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
    return replace(
        one, text=f'{one.text} {NOT_AT_AN_END}', source=f'{one.source}; with a tail: {CANTILEVERS}'
    )
