"""A corner measured across, and the square itself turned over: how far out of 90 degrees."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.checking.allowance import Allowance, Verdict, allowance, verdict
from tablegen.checking.amounts import PLACES, amount
from tablegen.checking.written import Written, half
from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, root
from tablegen.numbers.figure import degree_figure
from tablegen.roof.figures import Degrees, Length

BODY_IN = Fraction(24)
"""Length of a framing square's longer arm (common practice, no source)."""
WALL_IN = Fraction(144)


class CornerCheck(Struct, frozen=True):
    """A corner judged from two sides and the diagonal between their ends."""

    long_side: Fraction
    """in."""
    short_side: Fraction
    diagonal: Written
    true_diagonal: Length
    """Of a square corner, in."""
    difference: Length
    """Measured less true diagonal, in."""
    out: Degrees
    """Corner less 90 degrees; above 0 it is too wide."""
    over_long_side: Length
    """How far the end of the long side lies off the line square to the short one, in; sign as above."""
    unseen: Length
    """The same for a diagonal that is long by half its finest part: less than this cannot be seen, in."""
    allowed: Allowance
    verdict: Verdict
    """RIGHT where the diagonal is within what is allowed."""


class TurnOver(Struct, frozen=True):
    """A square judged by the gap between two lines drawn from one point, the square turned over between them."""

    gap: Written
    over: Fraction
    """Distance from the point, along the lines, at which the gap is measured, in."""
    out: Degrees
    """The square's own error in degrees, without a direction: half of what shows."""
    error: Length
    """Its own error at that distance, in: half of the gap."""
    over_body: Length
    """The same over 24 in."""
    over_wall: Length
    """The same over 12 ft."""
    allowed: Allowance
    verdict: Verdict
    """RIGHT where the gap is within what is allowed."""


def check_corner(
    side_in: Fraction,
    other_in: Fraction,
    diagonal: Written,
    within_in: Fraction | None = None,
    with_tape: bool = False,
) -> CornerCheck:
    """Return how far a corner is out of square.

    Given:
        side_in, other_in  from the corner along each side, in, taken as exact
        diagonal           between the two ends
        within_in          what the diagonal may be off by, in; None for half of its finest part
        with_tape          whether the tape's own tolerance comes on top

    Errors:
        BookError where no triangle has those sides

    Source: the cosine rule: sin(corner − 90°) = (diagonal² − side² − other²) / (2 · side · other).
    """
    across = diagonal.inches
    if not side_in or not other_in:
        raise BookError('along', message('check.no_side'), message('check.two_sides'))
    if not abs(side_in - other_in) < across < side_in + other_in:
        one, other = text.run(side_in), text.run(other_in)
        problem = message('check.cannot_join', across=text.run(across), side=one, other=other)
        least, most = text.run(abs(side_in - other_in)), text.run(side_in + other_in)
        between = message('error.between', least=least, most=most)
        raise BookError('diagonal', problem, between, message('error.measure_again'))
    true = root(side_in**2 + other_in**2)
    twice = 2 * side_in * other_in
    sine = (across**2 - side_in**2 - other_in**2) / twice
    longer, seen = max(side_in, other_in), half(diagonal.part)
    allowed = allowance(diagonal, within_in, with_tape)
    return CornerCheck(
        longer,
        min(side_in, other_in),
        diagonal,
        amount(true),
        amount(across - true),
        degree_figure(angle_of_sine(sine), PLACES),
        amount(longer * sine),
        amount(longer * sine_of_excess(true, seen, twice)),
        allowed,
        verdict(across - true, allowed),
    )


def turn_over(gap: Written, over_in: Fraction, within_in: Fraction | None = None) -> TurnOver:
    """Return a square's error from the turn-over test.

    Given:
        gap        between the two lines, square to the way they run
        over_in    distance from the point where they meet, along the lines, in
        within_in  what the gap may be, in; None for half of its finest part

    Errors:
        BookError where the gap is not below the distance

    Source: one line leans as far one way as the other leans the other way, so the gap is twice the error:
    2 · over · sin(error).
    """
    if gap.inches >= over_in:
        problem = message('check.wide_gap', gap=text.run(gap.inches), over=text.run(over_in))
        raise BookError('gap', problem, message('check.small_gap'), message('error.measure_again'))
    sine = gap.inches / (2 * over_in)
    allowed = allowance(gap, within_in)
    return TurnOver(
        gap,
        over_in,
        degree_figure(angle_of_sine(sine), PLACES),
        amount(over_in * sine),
        amount(BODY_IN * sine),
        amount(WALL_IN * sine),
        allowed,
        verdict(exact(gap.inches), allowed),
    )


def angle_of_sine(sine: Fraction) -> Angle:
    """Return the angle of a sine between -1 and 1, neither included."""
    return Angle(sine * root(1 / (1 - sine**2)))


def sine_of_excess(true: Exact, excess_in: Fraction, twice_product: Fraction) -> Exact:
    """Return the sine of the corner's error when its true diagonal is exceeded by so many inches."""
    return (2 * excess_in * true + excess_in**2) / twice_product
