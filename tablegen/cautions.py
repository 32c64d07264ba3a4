"""Cautions that a roof's own numbers call for: they warn and defer, they decide nothing."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.exact import Exact
from tablegen.geometry import seat

LOW_RISE_IN = 3
STEEP_RISE_IN = 8
LONGEST_NOTCHED_TAIL_IN = 24
LEAST_STOCK_ON_A_TAIL_IN = Fraction(7, 2)
LEAST_SEAT_IN = Fraction(3, 2)
DEFERS = 'Local code and a licensed designer decide.'


@dataclass(frozen=True, slots=True)
class Caution:
    """One caution."""

    key: str
    text: str
    """A sentence or two, final."""
    source: str
    """Where the limit is from."""


LOW_SLOPE = Caution(
    'low_slope',
    'Under 3 in 12 the ridge, hips and valleys are designed as beams, and some coverings leak.',
    'IRC 2018 and later R802.4.4',
)
STEEP = Caution(
    'steep',
    'Over 8 in 12 nobody stands safely without a scaffold, roof brackets or a tied-off harness.',
    'common practice, no source',
)
PAST_A_QUARTER = Caution(
    'deep_notch',
    'The notch takes more than a quarter of the depth.',
    'IRC 2006 and later R802.7.1, ends of members',
)
PAST_A_THIRD = Caution(
    'deep_notch',
    'The notch takes more than a third of the depth.',
    'IRC 2006 and later R802.7.1 allows a quarter at ends; a third: common practice, no source',
)
LONG_TAIL = Caution(
    'long_tail', 'A rafter notched at the plate overhangs by more than 24 in.', 'IRC 2006 to 2024 R802.7.1'
)
THIN_TAIL = Caution(
    'thin_tail',
    'Less than 3 1/2 in of stock carries the tail over the notch.',
    'IRC 2024 R802.7.1.1; 4 in nominal in 2006 R802.7.1',
)
SHORT_SEAT = Caution('short_seat', 'The seat bears on less than 1 1/2 in of wood.', 'IRC 2006 to 2024 R802.6')


def pitch_cautions(slope: Exact) -> tuple[Caution, ...]:
    """Return what the pitch alone calls for."""
    found = [LOW_SLOPE] if slope * 12 < LOW_RISE_IN else []
    return tuple(found + ([STEEP] if slope * 12 > STEEP_RISE_IN else []))


def seat_cautions(
    depth_in: Fraction, seat_in: Fraction, overhang_in: Fraction, slope: Exact
) -> tuple[Caution, ...]:
    """Return what a bird's mouth and the tail outside it call for.

    Given:
        depth_in       of the stock, square to its edge
        seat_in        level
        overhang_in  level, 0 for no tail
    """
    passed = seat.marks_passed(depth_in, seat_in, slope)
    found = [(PAST_A_QUARTER, PAST_A_THIRD)[passed - 1]] if passed else []
    if overhang_in > LONGEST_NOTCHED_TAIL_IN:
        found.append(LONG_TAIL)
    if overhang_in and seat.stock_left(depth_in, seat_in, slope) < LEAST_STOCK_ON_A_TAIL_IN:
        found.append(THIN_TAIL)
    return (*found, SHORT_SEAT) if seat_in < LEAST_SEAT_IN else tuple(found)
