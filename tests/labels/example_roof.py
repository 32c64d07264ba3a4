"""What the worked examples' figures are worked out from: the roof, and what commons and hips have alike."""

from __future__ import annotations

from fractions import Fraction

from fifty_digits import mp, mpf
from msgspec import Struct
from oracle import framing_square, seats
from oracle.corner import common_length, corner, hip_length, hip_run, rise
from oracle.rounding import decimal, nearest, part

from labels.expected import DEPTHS

STORE_RUN, STORE_OUT = Fraction(67), Fraction(8)
PORCH_RUN, PORCH_OUT = Fraction(429, 8), Fraction(6)
STAMPED = 17
"""On most squares for a hip's 16.97 in of run: common practice, from memory."""


class Roof(Struct, frozen=True):
    """A book's settings, and the runs that it reaches."""

    rise: Fraction
    porch_rise: Fraction
    ridge: Fraction = Fraction(3, 2)
    hip: Fraction = Fraction(3, 2)
    rafter: Fraction = Fraction(3, 2)
    rafters: str = '2×8'
    hips: str = '2×8'
    valleys: str = '2×8'
    seat: Fraction = Fraction(7, 2)
    run: Fraction = STORE_RUN
    porch_run: Fraction = PORCH_RUN
    spacing: Fraction = Fraction(16)
    slopes: object = None
    """Of the roofs beside it, `labels.two_slopes`; None where the book has neither."""
    opened: bool = False
    """Whether a pitch has one opening, and each of those roofs one page."""

    @property
    def at(self):
        return corner(self.rise)

    @property
    def porch(self):
        return corner(self.porch_rise)

    @property
    def height(self):
        return seats.height_above_plate(self.at, DEPTHS[self.rafters], self.seat)

    @property
    def jacks(self) -> range:
        """Jacks that reach past the hip's side and stand clear of the side common."""
        last = int((self.run - self.rafter) // self.spacing)
        return range(1, min(last, 5) + 1)

    @property
    def last_jack(self) -> int:
        return self.jacks[-1]


def signed(value) -> str:
    """Return a number to thousandths with its sign; 0 where it is nothing."""
    if abs(value) < mpf(10) ** -30:
        return '0'
    return ('+' if value > 0 else '') + decimal(value, 3)


def feet(run: Fraction) -> str:
    """Return a run as a carpenter says it."""
    whole, inches = divmod(run, 12)
    return ' '.join(filter(None, [f'{whole} ft' if whole else '', f'{part(inches)} in' if inches else '']))


def lean(plumb_length, depth):
    """Return how far along the edge a plumb cut's lower end stands from its upper one, from the two lines' lengths."""
    return mp.sqrt(plumb_length**2 - mpf(depth.numerator) ** 2 / depth.denominator**2)


def stepped(at, run, out, off, hip: bool) -> dict[str, str]:
    """Return the steps with the square: whole, odd remainder, tail, off, and what rounded steps add up to."""
    level = hip_run if hip else lambda at, run: mpf(run.numerator) / run.denominator
    length = hip_length if hip else common_length
    halved = rise(at, 12) > framing_square.FULL_TONGUE
    one = Fraction(6 if halved else 12)
    whole, left = divmod(run, one)
    more, out_left = divmod(out, one)
    step = length(at, one)
    arms = f'{part(level(at, left))} & {part(rise(at, left))}' if left else ''
    beyond = f'{part(level(at, out_left))} & {part(rise(at, out_left))}' if out_left else ''
    drift = whole * (mpf(nearest(step, 16)) / 16 - step)
    found = {
        'Hold the square at': str(whole),
        f'{whole} steps of {part(step)} for {decimal(step, 3)} are': f'{signed(drift)} in',
        'along the body, level': part(off),
    }
    found |= {'Odd remainder': arms} if left else {'No odd remainder': ''}
    return found | {f'{more} more whole' if more else 'Then the tail, body': beyond}
