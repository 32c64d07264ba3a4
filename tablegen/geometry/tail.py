"""Tails: the part of a rafter outside the plate, and the cuts at its end.

An overhang is LEVEL, square to the eave, from the plate's outer face to the plumb line at the top edge's end.
"""

from __future__ import annotations

from fractions import Fraction

from tablegen.errors import BookError
from tablegen.geometry import corner, shortening
from tablegen.geometry.corner import Corner
from tablegen.messages import message
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact


def common_tail(overhang_in: Exact | Fraction, slope: Exact) -> Exact:
    """Return the tail of a common rafter, in, along its top edge, plate line to tail end."""
    return shortening.along(overhang_in, slope)


def hip_tail(overhang_a_in: Fraction, at: Corner) -> Exact:
    """Return the tail of a hip or valley, in, along its top, from the corner of the plates to the eave lines.

    Given:
        overhang_a_in  of the commons of plane A

    Notes:
        1. It is the length to the point where the two eave lines meet, on the center line: a hip's long point, a
           valley's short one. Between two fascias it has two cheeks, cheeks.hip_at_fascia on side A; the plumb
           line of each side starts hip_tail_set_back from that point.

    Source: the hip's length for so much run of A; regular: overhang · Lh/12.
    """
    return corner.hip_length(overhang_a_in, at)


def hip_tail_set_back(thickness_in: Fraction, at: Corner) -> Exact:
    """Return how far from the end of hip_tail the plumb line of the hip's side towards A starts.

    Given:
        thickness_in  in, of the hip or valley

    Returned:
        in, level along the member: a hip's towards the ridge, a valley's outwards

    Source: shortening.set_back_at_ridge: A's fascia runs parallel to eave A. Regular: half of its own thickness.
    """
    return shortening.set_back_at_ridge(thickness_in, at)


def fall(overhang_in: Fraction, slope: Exact) -> Exact:
    """Return how far the top edge falls from plate line to tail end, in, PLUMB."""
    return slope * overhang_in


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


def soffit_below_plate(height_in: Exact, overhang_in: Fraction, face_in: Fraction, slope: Exact) -> Exact:
    """Return how far the level cut of a tail lies BELOW the plate's top, in, PLUMB; above it if negative.

    Given:
        height_in  height above plate of the rafter, in

    Source: the tail end's top edge is at HAP − fall over the plate's top, and the cut face_in under that.
    """
    return fall(overhang_in, slope) + face_in - height_in


def eave_matching_overhang(overhang_a_in: Exact | Fraction, at: Corner) -> Exact:
    """Return the overhang on side B, in, level, that brings both eaves to one height and the hip to their corner.

    Notes:
        1. Both plates at one height, both planes with one height above plate.

    Source: equal fall: overhang A · mA = overhang B · mB.
    """
    return corner.run_b(overhang_a_in, at)


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
