"""Shortening: what comes off a line length because the member stops at a face, not at a center line.

Every function returns inches LEVEL, measured in the direction of the member in plan, on its center line,
between two plumb lines: the one at the center line of what it meets, and the one at the face. along() turns
that into inches along the member's edge.
"""

from __future__ import annotations

from fractions import Fraction
from functools import partial

from tablegen.geometry.corner import Corner, greater
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact


def at_ledger(ledger_thickness_in: Fraction) -> Exact:
    """Return the shortening of a shed's rafter on a ledger, its line length running to the WALL behind the ledger.

    Notes:
        1. Nothing comes off where the run was taken to the ledger's face, nor at a bare wall without a ledger.

    Source: the whole ledger stands on the rafter's side of the wall; a ridge has half of itself on each side.
    """
    return exact(ledger_thickness_in)


def end_common_clip(common_thickness_in: Fraction, ridge_thickness_in: Fraction, at: Corner) -> Exact:
    """Return how far back each side of an end common is clipped, at a ridge's end between two hips' single cheeks.

    Given:
        common_thickness_in  in, of the end common, a common of B
        ridge_thickness_in   in, of the ridge, which runs parallel to eave A

    Returned:
        in, level, from the end common's square end to where its side meets the hip's; 0 where it is no thicker
        than the ridge. The clip is the cheek of a jack of B: cheeks.jack of the corner turned.

    Source: ridge.end_past_hips ends the ridge where both hips' sides stand as far apart as it is thick. Each
    hip's side runs away from there at the plan angle b' from square across the end common.
    """
    over = max(Fraction(0), common_thickness_in - ridge_thickness_in)
    return over / 2 * at.plan_b.tan()


def at_ridge(ridge_thickness_in: Exact | Fraction) -> Exact:
    """Return the shortening of a common rafter, or of a valley jack, at a ridge that it meets square.

    Source: half the ridge stands on each side of its center line.
    """
    return exact(ridge_thickness_in / 2)


def hip_at_ridge(ridge_thickness_in: Fraction, at: Corner) -> Exact:
    """Return the shortening of a hip or valley against the side of a ridge that runs parallel to eave A.

    Given:
        ridge_thickness_in  in, of the ridge

    Source: the hip crosses the ridge's side at the plan angle a: half of the ridge over sin a; regular t/√2.
    """
    return ridge_thickness_in / 2 / at.plan_a.sine()


def hip_at_common(common_thickness_in: Fraction, at: Corner) -> Exact:
    """Return the shortening of a hip against the side of a common rafter of plane A, at its center line.

    Given:
        common_thickness_in  in, of the common, which stands on the line where the hip ends

    Notes:
        1. Between a common of A and one of B the hip stops at the face that its center line meets first: take
           the greater of this and of the same for the corner turned. Regular: both are t/√2.

    Source: the common stands square to eave A, so at 90 − a to the hip: half of it over cos a.
    """
    return common_thickness_in / 2 / at.plan_a.cosine()


def hip_between_commons(common_thickness_in: Fraction, at: Corner) -> Exact:
    """Return the shortening of a hip that stops in the corner of a common of A and a common of B.

    Source: the greater of the two of hip_at_common; see its note.
    """
    return greater(partial(hip_at_common, common_thickness_in), at)


def valley_between_ridges(ridge_a_in: Fraction, ridge_b_in: Fraction, at: Corner) -> Exact:
    """Return the shortening of a valley in the corner of two ridges of one height, at its center line.

    Given:
        ridge_a_in, ridge_b_in  in, of the ridge parallel to eave A, and of the one parallel to eave B

    Source: the greater of the two of hip_at_ridge: the face that its center line meets first.
    """
    return max(hip_at_ridge(ridge_a_in, at), hip_at_ridge(ridge_b_in, at.turned()))


def double_cheek_aside(common_a_in: Fraction, common_b_in: Fraction, at: Corner) -> Exact:
    """Return how far the corner of a common of A and one of B lies from the hip's center line.

    Given:
        common_a_in, common_b_in  in, thickness of the last side common and of the end common

    Returned:
        in, level, square to the hip, above 0 towards side B: there stands the long point of the double cheek. 0 at
        a regular corner with commons of one thickness. From half the hip's thickness on there is one cheek only.

    Source: s back along the hip and e aside of it, the corner lies on both faces: s cos a + e sin a = half of
    the common of A, s cos b' − e sin b' = half of the one of B.
    """
    return (common_a_in * at.plan_b.cosine() - common_b_in * at.plan_a.cosine()) / (2 * at.sine)


def jack_at_hip(hip_thickness_in: Fraction, at: Corner) -> Exact:
    """Return the shortening of a jack of plane A at the hip or valley of a corner, at the jack's center line."""
    return jack_at(hip_thickness_in, at.plan_a)


def jack_at(hip_thickness_in: Fraction, plan: Angle) -> Exact:
    """Return the shortening of a jack at a hip or valley, at the jack's center line.

    Given:
        hip_thickness_in  in, of the hip or valley, its sides plumb
        plan              angle in plan from the jack's eave to it

    Source: the jack stands square to its eave, at 90 − a to the hip's side: half the hip over cos a.
    """
    return hip_thickness_in / 2 / plan.cosine()


def point_to_point(thickness_in: Fraction, at: Corner) -> Exact:
    """Return points_apart of a jack of plane A at the hip or valley of a corner."""
    return points_apart(thickness_in, at.plan_a)


def points_apart(thickness_in: Fraction, plan: Angle) -> Exact:
    """Return the level length from the short point to the long point of a jack.

    Given:
        thickness_in  in, of the JACK
        plan          angle in plan from its eave to the hip or valley

    Returned:
        in, level, between the two plumb edges of its cheek. Half lies on each side of the center line. The
        long point of a hip jack is on the side away from the corner; of a valley jack, towards it.

    Source: across its own thickness the hip's side runs on by t tan a.
    """
    return thickness_in * plan.tan()


def hip_point_to_point(thickness_in: Fraction, at: Corner) -> Exact:
    """Return the level length, in, from short to long point of a hip cut against a ridge parallel to eave A.

    Given:
        thickness_in  in, of the HIP

    Source: the ridge's side crosses the hip at the plan angle a: t cot a.
    """
    return thickness_in / at.plan_a.tan()


def set_back_at_ridge(thickness_in: Fraction, at: Corner) -> Exact:
    """Return how far from the center line's mark the plumb line of a hip's or valley's side starts, against a face
    that runs parallel to eave A: a ridge over A, or A's fascia at the tail.

    Given:
        thickness_in  in, of the hip or valley

    Returned:
        in, level along the member. One cheek over the whole thickness: one side starts so far up from the mark, the
        other so far down. Two cheeks to a point, side A's: back from the point, away from what it points at.

    Source: half of hip_point_to_point: t/2 · cot a. Regular: half of its own thickness.
    """
    return hip_point_to_point(thickness_in, at) / 2


def set_back_at_common(thickness_in: Fraction, at: Corner) -> Exact:
    """Return the same against the side of a common of plane A: the A side of a double cheek between commons.

    Source: the common stands square to eave A: t/2 · tan a. Regular: half of its own thickness.
    """
    return thickness_in / 2 * at.plan_a.tan()


def along(level_in: Exact | Fraction, slope: Exact) -> Exact:
    """Return a level length measured along the edge of a member instead.

    Given:
        level_in  in, level, in the member's own direction in plan
        slope     the member's own rise over run: of the hip itself for a hip

    Source: level over the cosine of the slope.
    """
    return exact(level_in) / Angle(slope).cosine()
