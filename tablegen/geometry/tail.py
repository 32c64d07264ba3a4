"""Tails: the part of a rafter outside the plate, and the cuts at its end.

An overhang is LEVEL, square to the eave, from the plate's outer face to the plumb line at the top edge's end. A tail is
the length of a member over so much run of the common, and falls as far as that rises: common.line_length and rise, and
corner.hip_length to the point where the eave lines meet, on the center line: a hip's long point, a valley's short one.
Eaves of one height have overhangs as runs of one rise, corner.run_b; each side of a hip's or valley's tail is cut as at
a ridge over that side, cheeks.hip_at_ridge, set back from that point by shortening.set_back_at_ridge.
"""

from __future__ import annotations

from fractions import Fraction

from tablegen.errors import BookError
from tablegen.geometry import common, shortening
from tablegen.geometry.corner import Corner
from tablegen.messages import message
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact


def plumb_cut_length(depth_in: Fraction, slope: Exact) -> Exact:
    """Return the length of a plumb tail cut, in, PLUMB, top edge to underside: D / cos θ."""
    return depth_in / Angle(slope).cosine()


def square_cut_set_in(depth_in: Fraction, slope: Exact) -> Exact:
    """Return how far the lower corner of a SQUARE tail cut stands in from the upper one, in, LEVEL.

    Source: the cut is as long as the stock is deep and leans θ from plumb: D sin θ.
    """
    return depth_in * Angle(slope).sine()


def square_cut_lower(depth_in: Fraction, slope: Exact) -> Exact:
    """Return how far below the upper corner of a square tail cut the lower one is, in, PLUMB: D cos θ."""
    return depth_in * Angle(slope).cosine()


def square_set_back(thickness_in: Fraction, at: Corner) -> Exact:
    """Return how far a side of a hip or valley starts from its center line's mark at A's fascia, square to the slope, in, LEVEL.

    Source: cheeks.hip_at_square_fascia, over half the thickness: what it is at a plumb fascia over 1 + mA².
    """
    return shortening.set_back_at_ridge(thickness_in, at) / (1 + at.slope_a.squared())


def square_set_in(drop_in: Exact, at: Corner) -> Exact:
    """Return how far in of the corner of the eaves that fascia crosses the center of a top that lies so much lower, in, LEVEL.

    Given:
        drop_in  PLUMB, of the hip's top on its center line under the planes; 0 of a backed hip or a valley

    Source: as there, u sin a = mA z on the center line, where the top lies u mA sin a + drop under the eave.
    """
    return drop_in * at.slope_a / (1 + at.slope_a.squared()) / at.plan_a.sine()


def soffit_cut(depth_in: Fraction, face_in: Fraction, slope: Exact) -> Exact:
    """Return the level cut under a tail that carries a level soffit.

    Given:
        depth_in  of the stock, square to its edge
        face_in   length of the plumb cut left at the tail's end, in, from the top edge down

    Returned:
        in, LEVEL, from the tail's end inwards to the underside of the rafter. The cut is marked with the
        seat's angle: square to the plumb cut. 0 or less if the plumb cut is not longer than face_in.

    Source: what is left of the plumb cut below face_in, over the slope.
    """
    return (plumb_cut_length(depth_in, slope) - face_in) / slope


def soffit_below_plate(
    height_in: Exact, overhang_in: Exact | Fraction, face_in: Fraction, slope: Exact
) -> Exact:
    """Return how far the level cut of a tail lies BELOW the plate's top, in, PLUMB; above it if negative.

    Given:
        height_in  height above plate of the rafter, in

    Source: the tail end's top edge is at HAP − fall over the plate's top, and the cut face_in under that.
    """
    return common.rise(overhang_in, slope) + face_in - height_in


def plate_raise(overhang_in: Fraction, at: Corner) -> Exact:
    """Return how far plate B is raised over plate A, in, so that EQUAL overhangs end at one height.

    Returned:
        in, PLUMB; below 0 where plate A is the one to raise: always the steeper side's

    Source: the difference of the two falls, overhang · (mB − mA).
    """
    return overhang_in * (at.slope_b - at.slope_a)


def checked_overhang(overhang_in: Fraction, run_in: Fraction, place: str = 'overhang') -> None:
    """Refuse an overhang that no rafter on its run can have.

    Errors:
        BookError if it is below 0 or longer than the run
    """
    if overhang_in < 0:
        raise BookError(place, message('error.below_zero'), message('error.up_to_the_run'))
    if overhang_in > run_in:
        problem = message('error.tail_longer_than_run', overhang=overhang_in, run=run_in)
        raise BookError(place, problem, message('error.up_to_the_run'))
