"""Whether a slope has a rafter wherever it should: no bay wider than the spacing at any height, up to what bounds it."""

from __future__ import annotations

import numpy as np
from frame_assembly import Roof
from frame_placed import Placed
from frame_slopes import Slope
from frame_together import Together

SHORT = 2.5
"""What an end may be short of the line of a hip or ridge: half of that, on the skew, in."""
BESIDE = 2.0
"""Of what bounds a slope there stands so much on it, in: a hip's half on the skew, a rafter flush with the gable; and a jack that
would stand nearer to a corner has no wood between its points."""
ROUNDED = 1 / 16
"""Of two printed places, in."""


def wide_bays(made: Together) -> list[str]:
    """Return the places on each slope where rafters, or a rafter and what bounds it, stand farther apart than asked."""
    roof: Roof = made.build
    found = []
    for slope in roof.lay.slopes.values():
        rafters = [_reach(slope, one) for one in _of(roof, made, slope)]
        heights = {
            y for _, low, high in rafters for y in (low - SHORT + 0.1, high + SHORT - 0.1, low + 1, high - 1)
        }
        heights |= {y + step for _, y in slope.outline for step in (-0.5, 0.5)}
        for y in sorted(heights):
            there = [x for x, low, high in rafters if low - SHORT <= y <= high + SHORT]
            for left, right in _inside(slope, y):
                marks = [left + BESIDE, *sorted(x for x in there if left <= x <= right), right - BESIDE]
                widest = max(np.diff(marks))
                if widest > float(roof.asked.spacing_in) + ROUNDED:
                    found.append(
                        f'{slope.name}, {y:.1f} in from its plate: {widest:.2f} in from rafter to rafter'
                    )
    return found


def _of(roof: Roof, made: Together, slope: Slope):
    for key, sort, name, _ in roof.standing():
        if name == slope.name and not sort.barge:
            yield made.assembly.members[key]


def _reach(slope: Slope, one: Placed) -> tuple[float, float, float]:
    """Return where a rafter's center line stands, along, and how far inward it goes from and to."""
    flat = one.corners('top')[:, :2] - slope.origin
    along, inward = flat @ np.array(slope.along), flat @ slope.inward
    return (min(along) + max(along)) / 2, min(inward), max(inward)


def _inside(slope: Slope, y: float) -> list[tuple[float, float]]:
    """Return the stretches of a level line up the slope that lie on it."""
    corners, crossed = slope.outline, []
    for (x0, y0), (x1, y1) in zip(corners, (*corners[1:], corners[0]), strict=True):
        if (y0 > y) != (y1 > y):
            crossed.append(x0 + (y - y0) / (y1 - y0) * (x1 - x0))
    crossed.sort()
    return list(zip(crossed[::2], crossed[1::2], strict=True))
