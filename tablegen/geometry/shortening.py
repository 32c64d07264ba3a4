"""Shortening: what comes off a line length because the member stops at a face, not at a center line.

Every function returns inches LEVEL, measured in the direction of the member in plan, on its center line,
between two plumb lines: the one at the center line of what it meets, and the one at the face. along() turns
that into inches along the member's edge.
"""

from __future__ import annotations

from fractions import Fraction

from tablegen.angles import Angle
from tablegen.exact import Exact, exact
from tablegen.geometry.corner import Corner


def at_ridge(ridge_thickness_in: Fraction) -> Exact:
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
    return max(hip_at_common(common_thickness_in, at), hip_at_common(common_thickness_in, at.turned()))


def jack_at_hip(hip_thickness_in: Fraction, at: Corner) -> Exact:
    """Return the shortening of a jack of plane A at a hip or valley, at the jack's center line.

    Given:
        hip_thickness_in  in, of the hip or valley, its sides plumb

    Source: the jack stands square to eave A, at 90 − a to the hip's side: half the hip over cos a.
    """
    return hip_thickness_in / 2 / at.plan_a.cosine()


def point_to_point(thickness_in: Fraction, at: Corner) -> Exact:
    """Return the level length from the short point to the long point of a jack of plane A.

    Given:
        thickness_in  in, of the JACK

    Returned:
        in, level, between the two plumb edges of its cheek. Half lies on each side of the center line. The
        long point of a hip jack is on the side away from the corner; of a valley jack, towards it.

    Source: across its own thickness the hip's side runs on by t tan a.
    """
    return thickness_in * at.plan_a.tangent


def hip_point_to_point(thickness_in: Fraction, at: Corner) -> Exact:
    """Return the level length, in, from short to long point of a hip cut against a ridge parallel to eave A.

    Given:
        thickness_in  in, of the HIP

    Source: the ridge's side crosses the hip at the plan angle a: t cot a.
    """
    return thickness_in / at.plan_a.tangent


def along(level_in: Exact | Fraction, slope: Exact) -> Exact:
    """Return a level length measured along the edge of a member instead.

    Given:
        level_in  in, level, in the member's own direction in plan
        slope     the member's own rise over run: of the hip itself for a hip

    Source: level over the cosine of the slope.
    """
    return exact(level_in) / Angle(slope).cosine()
