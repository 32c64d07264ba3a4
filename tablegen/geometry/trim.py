"""Compound miters of boards that turn a corner, and sheathing cut along a hip or valley.

Miter: on the board's face, from the line square across it. Bevel: tilt of the blade from square to that face.
Boards of one thickness; both pieces of a joint have the same bevel.
"""

from __future__ import annotations

from msgspec import Struct

from tablegen.geometry.corner import Corner, in_plane
from tablegen.numbers.angles import Angle, angle_of_sine, half_angle_of_cosine
from tablegen.numbers.exact import Exact


class Miter(Struct, frozen=True):
    """One end of one board."""

    miter: Angle
    """From square across the board's face; below 0 if it leans the other way."""
    bevel: Angle
    """Blade from square to the face."""


def standing_plumb(at: Corner) -> Miter:
    """Return the miter of a fascia that stands plumb: miter 0, bevel 90 − C/2.

    Source: the joint's plumb plane halves the corner.
    """
    return Miter(Angle(Exact()), Angle(1 / at.half_tangent))


def square_to_slope(at: Corner) -> Miter:
    """Return the miter of a board on side A that stands square to the slope, such as a fascia on square tails.

    Notes:
        1. With unequal pitches the two boards of the joint have different miters: see the corner turned.

    Source: the line where the two faces meet is square to both planes' normals across the eaves; on face A
    it leans from the square-across line by tan M = (cos θA tan θB + sin θA cos C) / sin C. The joint halves
    the angle ψ between the faces, cos ψ = sin θA sin θB − cos C cos θA cos θB. Equal pitches:
    tan M = sin θ cot C/2 and sin B = cos θ cos C/2.
    """
    a, b = Angle(at.slope_a), Angle(at.slope_b)
    miter = (a.cosine() * at.slope_b + a.sine() * at.cosine) / at.sine
    between = a.sine() * b.sine() - at.cosine * a.cosine() * b.cosine()
    return Miter(Angle(miter), half_angle_of_cosine(between))


def in_the_plane(at: Corner) -> Miter:
    """Return the miter of a board that lies in roof plane A, its edge along the eave, mitered along the hip.

    Source: the hip runs, in plane A, at atan(tan a / cos θ) from the eave, so tan M = cos θA cot a. The joint
    halves the angle ψ between the planes, cos ψ = cos θA cos θB − cos C sin θA sin θB. Equal pitches:
    tan M = cos θ cot C/2 and sin B = sin θ cos C/2.
    """
    a, b = Angle(at.slope_a), Angle(at.slope_b)
    between = a.cosine() * b.cosine() - at.cosine * a.sine() * b.sine()
    return Miter(in_plane(at).complement(), half_angle_of_cosine(between))


def sheathing_from_eave(at: Corner) -> Angle:
    """Return the cut of sheathing on plane A along a hip or valley, on its face, from the edge along the eave.

    Source: it lies in plane A along the hip.
    """
    return in_plane(at)


def sheathing_plumb_bevel(at: Corner) -> Angle:
    """Return the blade's tilt from square for a PLUMB edge on that cut, over the hip's center line.

    Source: the plumb plane through the hip has a level normal, cos a of it up the slope of A: sin = sin θ cos a.
    A mitered joint, halved between the planes, has in_the_plane's bevel instead; regular corners have both alike.
    """
    return angle_of_sine(Angle(at.slope_a).sine() * at.plan_a.cosine())
