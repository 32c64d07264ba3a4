"""The fan of all a book's pitches from one point: its cover."""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from math import atan, cos, sin

from markupsafe import Markup

from layouts.drawings import svg
from tablegen.pitch import Pitch


def pitch_fan(pitches: Sequence[Pitch], width: float, height: float, title: str) -> Markup:
    """Return every pitch as a line from the lower left, the space between every other two in black."""
    reach = min(width, height) * 0.985
    foot = (1.0, height - 1)
    angles = [0.0, *(atan(float(pitch.slope)) for pitch in pitches)]

    def end(angle: float, radius: float) -> svg.Point:
        return foot[0] + radius * cos(angle), foot[1] - radius * sin(angle)

    shapes = []
    for place, (low, high) in enumerate(itertools.pairwise(angles)):
        if place % 2 == 0:
            steps = 6
            rim = [end(low + (high - low) * step / steps, reach) for step in range(steps + 1)]
            shapes.append(svg.shape([foot, *rim], 0, '#000'))
        else:
            shapes.append(svg.line(end(low, reach), end(low, reach), svg.HAIR))
    shapes.append(svg.line(foot, (foot[0] + reach, foot[1]), svg.LINE))
    rim = [end(angles[-1] * step / 60, reach) for step in range(61)]
    shapes.append(svg.path(rim, svg.LINE))
    shapes.append(svg.line(foot, end(angles[-1], reach), svg.LINE))
    return svg.drawing(width, height, title, shapes)
