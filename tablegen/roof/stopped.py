"""Ends of members: each by what stops it, square or with cheeks, and what comes off the line length for it."""

from __future__ import annotations

from fractions import Fraction

from msgspec.structs import replace

from tablegen.geometry import cheeks, shortening, tail
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import degree_figure
from tablegen.roof.cheeks import (
    JACK_TOP,
    OneCheek,
    TwoCheeks,
    cut_of,
    jack_cheek_against,
    two_cheeks,
)
from tablegen.roof.figures import TwoWays
from tablegen.roof.member import Deduction, End, Hand, LowerCorner, Stop, inches_of
from tablegen.roof.members import Members
from tablegen.roof.side import Side

FREE = End()
"""Cut square across, by nothing that stops it."""


def square_end(side: Side, stop: Stop, thickness_in: Fraction) -> End:
    """Return the end of a side's common or jack at what stands square to it, half of that coming off; nothing at a mate."""
    both = side.both(shortening.at_ridge(thickness_in), side.slope)
    return End(taken_off(stop, thickness_in, both)) if thickness_in else FREE


def faced_end(side: Side, stop: Stop, thickness_in: Fraction, off_in: Exact) -> End:
    """Return the end of a side's rafter at a face square to it that stands so far, level, from where its run ends."""
    return End(taken_off(stop, thickness_in, side.both(off_in, side.slope)))


def clipped_end(side: Side, ridge_in: Fraction, off_in: Exact) -> End:
    """Return the upper end of an end common at a ridge's end between two hips: thicker than the ridge, it is clipped to both.

    Source: shortening.end_common_clip; each clip lies on a hip's side, as a jack's cheek does.
    """
    end = faced_end(side, Stop.RIDGE, ridge_in, off_in)
    clip = shortening.end_common_clip(side.boards.rafter_in, ridge_in, side.at.turned())
    if not clip.terms:
        return end
    back, cheek = side.both(clip, side.slope), cheeks.jack_against(side.at.plan_a, side.slope)
    crossed = (side.boards.rafter_in - ridge_in) / 2
    cut = TwoCheeks(*cut_of(side, cheek, JACK_TOP, crossed), back)
    return replace(end, cut=cut, back=back, blunt=True)


def cheek_end(side: Side, stop: Stop, thickness_in: Fraction, plan: Angle, long: Hand | None = None) -> End:
    """Return the end of a side's jack at a hip or valley that stands at an angle in plan to its eave."""
    off = taken_off(stop, thickness_in, side.both(shortening.jack_at(thickness_in, plan), side.slope))
    return replace(cheeked(side, jack_cheek_against(side, plan), off), long=long)


def met_end(
    side: Side,
    stop: Stop,
    thickness_in: Fraction,
    off_in: Exact,
    cut: OneCheek | None = None,
    long: Hand | None = None,
) -> End:
    """Return the upper end of a hip or valley at what comes so far off it, level, square or with one cheek."""
    off = taken_off(stop, thickness_in, side.both(off_in, side.at.hip_slope))
    return replace(cheeked(side, cut, off), long=long) if cut else End(off)


def peak_end(side: Side, plan: Angle, wall: Hand | None = None, wall_plan: Angle | None = None) -> End:
    """Return the upper end of a hip at a peak where all hips meet: two cheeks to a point on the axis.

    Given:
        plan             the angle in plan from it to the plane half way to the next hip
        wall, wall_plan  the hand on which a wall stands in the place of that hip, and the angle to it
    """
    cheek = _peak_cheek(side, plan)
    end = End(None, cheek, cheek.point_to_side)
    if wall_plan is None:
        return end
    at_wall = _peak_cheek(side, wall_plan)
    left, right = (at_wall, cheek) if wall is Hand.LEFT else (cheek, at_wall)
    off = taken_off(Stop.WALL, Fraction(0), side.both(exact(0), side.at.hip_slope))
    return End(off, left, left.point_to_side, long=wall, other=right, other_back=right.point_to_side)


def _peak_cheek(side: Side, plan: Angle) -> TwoCheeks:
    """Return one of a hip's two cheeks to a point, against a plumb plane through that at an angle in plan to the hip."""
    back = side.boards.hip_in / 2 / plan.tan()
    return two_cheeks(side, cheeks.hip_against(plan, side.at), side.boards.hip_in, back)


def post_end(side: Side, post_in: Fraction) -> End:
    """Return the upper end of a hip, cut square to the flat of a post at the peak."""
    return End(taken_off(Stop.POST, post_in, side.both(exact(post_in / 2), side.at.hip_slope)))


def laid_end(side: Side, lift_in: Exact, main_slope: Exact) -> End:
    """Return the foot of a wing's jack on the sheathing of a main roof: a level cut, the blade tilted to that roof.

    Given:
        lift_in     how high its top stands over the main rafters' there, PLUMB: sheathing, and the board on it
        main_slope  of the main roof, whose eave the jack runs along

    Source: the main roof is level along the jack, and the jack comes down to it at its own slope: lift / m. Across half of
    the jack's thickness the main roof falls by its slope times that, so there its side comes down so much later.
    """
    off = taken_off(Stop.BOARD, Fraction(0), side.both(lift_in / side.slope, side.slope))
    back = side.both(side.boards.rafter_in / 2 * main_slope / side.slope, side.slope)
    return End(off, back=back, bevel=degree_figure(Angle(main_slope)))


def square_tail(side: Side) -> End:
    """Return the tail of a side's common or jack, cut square to its top edge."""
    depth, slope = side.boards.stock.depth_in, side.slope
    level, plumb = tail.square_cut_set_in(depth, slope), tail.square_cut_lower(depth, slope)
    return End(square=True, lower=LowerCorner(side.length(level), side.length(plumb)))


def one_cheek_tail(of: Members, long: Hand) -> End:
    """Return the tail of a hip at the fascia of one side alone, its long point on the hand away from that."""
    return replace(cheeked(of.side, of.cheek.hip_at_ridge), long=long)


def taken_off(stop: Stop, thickness_in: Fraction, both: TwoWays) -> Deduction:
    """Return what comes off for a stop of some thickness, both ways."""
    return Deduction(stop, thickness_in, both.level, both.along)


def cheeked(side: Side, cut: OneCheek | TwoCheeks, off: Deduction | None = None) -> End:
    """Return an end of one cheek, or of two that are alike."""
    if isinstance(cut, TwoCheeks):
        return End(off, cut, cut.point_to_side)
    points = cut.long_to_short_point
    halves = (side.length(inches_of(one) / 2) for one in (points.level, points.along))
    return End(off, cut, TwoWays(*halves))
