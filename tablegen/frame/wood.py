"""The boards that a whole roof is framed with, as the engine asks for them, and its sides made of them."""

from __future__ import annotations

from fractions import Fraction

from msgspec.structs import replace

from tablegen.frame.asked import Asked, HalfHip, HipTop, TailCut
from tablegen.frame.plan import Slope
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.exact import Exact, exact
from tablegen.roof.member import End, Hand
from tablegen.roof.members import Members
from tablegen.roof.plane import Plane
from tablegen.roof.question import Boards
from tablegen.roof.side import Side, side, sides
from tablegen.roof.stopped import FREE, square_tail


def boards_of(asked: Asked) -> Boards:
    """Return what a roof is framed with; without a ridge board nothing comes off at the ridge."""
    return Boards(
        stock=asked.rafters,
        hip_stock=asked.hips,
        valley_stock=asked.valleys,
        seat_in=asked.seat_in,
        overhang_in=asked.overhang_in,
        ridge_in=ridge_in(asked),
        hip_in=asked.hips.thickness_in,
        valley_in=asked.valleys.thickness_in,
        rafter_in=asked.rafters.thickness_in,
        spacings=(asked.spacing_in,),
        measure=asked.measure,
    )


def ridge_in(asked: Asked) -> Fraction:
    """Return the thickness of the ridge board, 0 for none."""
    return asked.ridge.thickness_in if asked.ridge else Fraction(0)


def one_pitch(asked: Asked) -> Members:
    """Return the members of any side of a roof of one pitch with square corners."""
    return Members(side(asked.pitch, boards_of(asked)))


def two_pitches(asked: Asked, other: Pitch, overhang_in: Fraction | None = None) -> tuple[Members, Members]:
    """Return the members of the main side and of the other: one height above plate, eaves of one height.

    Given:
        overhang_in  of the other side, where its eave is to be of no height in particular
    """
    if other.slope == asked.pitch.slope and overhang_in is None:
        return (one_pitch(asked),) * 2
    a, b = sides(asked.pitch, boards_of(asked), other)
    if overhang_in is not None:
        b = replace(b, overhang_in=exact(overhang_in))
    return Members(a), Members(b)


def at_corner(
    asked: Asked, run_in: Exact | Fraction, a: Members, b: Members, a_on: Hand | None = None
) -> Plane:
    """Return the plane whose hips and valleys lie between two sides, over a run of the first.

    Given:
        a_on  on which hand of its hip or valley the first side lies
    """
    alike = a.side.slope == b.side.slope
    backed, square = asked.hip_top is HipTop.BACKED, asked.tail is TailCut.SQUARE
    return Plane(a, run_in, asked.measure, None if alike else b, a_on, backed, square)


def free_tail(asked: Asked, slope: Slope) -> End:
    """Return the tail of a slope's rafters that nothing but the fascia stops.

    Notes:
        1. Over a half-hip's gables tails stay plumb: the fascia there stands in one plane with the barge rafters.
    """
    over_gable = isinstance(asked.kind, HalfHip) and slope.plate_in.terms
    return square_tail(slope.members.side) if asked.tail is TailCut.SQUARE and not over_gable else FREE


def top_of(of: Side) -> Exact:
    """Return the height of a side's top over its plate line, in, PLUMB: its height above plate."""
    return of.height_in
