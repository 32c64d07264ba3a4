"""The fan of all a book's pitches from one point: its cover."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import atan, cos, sin

from markupsafe import Markup

from layouts.drawings import svg
from tablegen.geometry.pitch import Pitch

RIM_STEPS = 6


def pitch_fan(
    pitches: Sequence[Pitch], shown: Sequence[Pitch], width: float, height: float, title: str
) -> Markup:
    """Return every pitch as a line from the lower left, every other space between those shown in black."""
    reach = min(width, height) * 0.985
    foot = (1.0, height - 1)
    angles = [0.0, *(atan(float(pitch.slope)) for pitch in pitches)]
    names = {pitch.text for pitch in shown}

    def end(angle: float) -> svg.Point:
        return foot[0] + reach * cos(angle), foot[1] - reach * sin(angle)

    shapes = []
    for place, ((low, high), pitch) in enumerate(zip(pairwise(angles), pitches, strict=True)):
        rim = [end(low + (high - low) * step / RIM_STEPS) for step in range(RIM_STEPS + 1)]
        if place % 2 == 0 and pitch.text in names:
            shapes.append(svg.shape([foot, *rim], 0, '#000'))
        elif place % 2 == 0:
            shapes.append(svg.shape([foot, *rim], svg.HAIR))
        shapes.append(svg.path(rim, svg.LINE))
    shapes += [svg.line(foot, end(angle), svg.LINE) for angle in (angles[0], angles[-1])]
    return svg.drawing(width, height, title, shapes)
