"""Areas: how much roof lies over a plan. Gable studs differ, PLUMB, by what the slope rises over a space: common.rise."""

from __future__ import annotations

from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact


def area_factor(slope: Exact) -> Exact:
    """Return the roof area over one unit of level plan area, the same unit: 1 / cos θ.

    Notes:
        1. It holds for gable and hip roofs alike where every plane has this pitch, overhangs being measured
           in the plan. It adds nothing for waste.

    Source: only the length up the slope is stretched, by 1/cos θ; the length along the eave is not.
    """
    return 1 / Angle(slope).cosine()
