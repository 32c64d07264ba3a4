"""Jack rafters of a regular corner: lengths, their common difference, and the cheek."""

from __future__ import annotations

from fractions import Fraction

from tablegen.geometry import common
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact
from tablegen.numbers.units import INCHES


def difference(spacing_in: Fraction, slope: Exact) -> Exact:
    """Return the difference in length of neighboring jacks.

    Given:
        spacing_in  on center along the plate, in

    Returned:
        in, along the slope. A jack n spaces from the corner is n differences long, from the plate line
        to the center line of the hip, before any shortening.

    Source: the hip stands at 45 degrees in plan, so each space along the plate adds as much run.
    """
    return common.line_length(spacing_in, slope)


def cheek(slope: Exact) -> Angle:
    """Return the cheek of a jack against a hip or valley, on its top face.

    Returned:
        angle from the line square across the jack's top edge: tan = 1 / cos θ

    Source: 45 degrees in plan; the top face stretches the run by 1/cos θ.
    """
    return Angle(common.slope_angle(slope).cosine()).complement()


def cheek_figure(slope: Exact) -> Exact:
    """Return the figure held against 12 for that cheek, in: 144/Lc. Marked on the side of the 12."""
    return INCHES.base * common.slope_angle(slope).cosine()
