"""Gables and areas: studs under a slope, and how much roof lies over a plan."""

from __future__ import annotations

from fractions import Fraction

from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact


def stud_difference(spacing_in: Fraction, slope: Exact) -> Exact:
    """Return the difference in length of neighboring gable studs, in, PLUMB, on the same side of each.

    Given:
        spacing_in  on center, level, in

    Source: the slope rises so much over a space: s · m. Their tops are cut at the slope angle.
    """
    return slope * spacing_in


def area_factor(slope: Exact) -> Exact:
    """Return the roof area over one unit of level plan area, the same unit: 1 / cos θ.

    Notes:
        1. It holds for gable and hip roofs alike where every plane has this pitch, overhangs being measured
           in the plan. It adds nothing for waste.

    Source: only the length up the slope is stretched, by 1/cos θ; the length along the eave is not.
    """
    return 1 / Angle(slope).cosine()
