"""Hips and valleys of a regular corner: eaves at 90 degrees in plan, one pitch on both sides.

A valley has the same lengths and angles as a hip; only backing and drop do not apply to it.
"""

from __future__ import annotations

from fractions import Fraction

from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, root
from tablegen.numbers.units import INCHES

RUN_SQUARED = 2
"""Square of a hip's own run for one unit of common run: it crosses the corner at 45 degrees in plan."""


def line_length(run_in: Fraction, slope: Exact) -> Exact:
    """Return the line length of a hip or valley.

    Given:
        run_in  level run of the COMMON rafter beside it, in, from outside of plate to center of ridge
        slope   rise over run of the common rafter

    Returned:
        in, along the hip, from the corner of the plates to the center of the ridge

    Source: its own run is √2 of the common run, its rise the same; per foot √(288 + r²).
    """
    return root(line_length_squared(slope) * run_in * run_in)


def line_length_squared(slope: Exact) -> Fraction:
    """Return the square of the line length for one inch of common run, in²."""
    return RUN_SQUARED + slope.squared()


def own_slope(slope: Exact) -> Exact:
    """Return the rise over the hip's own run."""
    return slope / root(RUN_SQUARED)


def slope_angle(slope: Exact) -> Angle:
    """Return the angle of the hip from level: its plumb cut, from square across the board's side."""
    return Angle(own_slope(slope))


def cheek(slope: Exact) -> Angle:
    """Return the cheek of a square-topped hip against a ridge or common, on its top edge.

    Returned:
        angle from the line square across the hip's top: tan = 1 / (tan 45° · cos H), H the hip's slope

    Notes:
        1. It holds for a top left square to the sides; a backed top has another figure.

    Source: the hip meets a plumb face at 45 degrees in plan; the top edge stretches plan lengths by 1/cos H.
    """
    return Angle(slope_angle(slope).cosine()).complement()


def cheek_figure(slope: Exact) -> Exact:
    """Return the figure held against 12 for that cheek, in: 12·√288/Lh. Marked on the side of the 12."""
    return INCHES.base * slope_angle(slope).cosine()


def backing_bevel(slope: Exact) -> Angle:
    """Return the bevel planed on each top edge of a hip so that it lies in both roof planes.

    Returned:
        angle from the square top, in a section square to the hip: tan = r/Lh

    Source: the angle between a roof plane and the plane square to the hip's sides, through the hip.
    """
    return Angle(slope / root(line_length_squared(slope)))


def drop(thickness_in: Fraction, slope: Exact) -> Exact:
    """Return how far an unbacked hip is lowered, in, measured PLUMB, so its edges meet the roof planes.

    Given:
        thickness_in  of the hip

    Source: its edge stands t/2 from its center line in plan, so t/2 · cos 45° nearer each eave.
    """
    return thickness_in / 2 * own_slope(slope)
