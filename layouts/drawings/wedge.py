"""The wedge: a pitch's triangle of run and rise, to scale, its upper end at the left as on every board."""

from __future__ import annotations

from markupsafe import Markup

from layouts.drawings import svg
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import Figure

LOW_DEGREES, STEEP_DEGREES = 20, 50
"""Slopes at which the angle no longer has room inside the triangle."""

LETTER = 5.0
"""Width of a digit of the rise, in units."""


def measured_wedge(pitch: Pitch, labels: tuple[str, str, str], angle: Figure, title: str) -> Markup:
    """Return the triangle with its run, rise, length and angle written on it.

    labels: run, rise, length along the slope
    """
    width, height = 112.0, 88.0
    left, base = max(22.0, 5.0 + LETTER * len(labels[1])), 77.0  # the rise is written left of its line
    run, rise = _fitted(float(pitch.slope), 84 - left, 64)
    foot, corner, top = (left + run, base), (left, base), (left, base - rise)
    slant = angle.count / angle.per
    arc = min(run * 0.36, 22)
    low, steep = slant < LOW_DEGREES, slant > STEEP_DEGREES
    share = 0.3 if low else 0.5  # of the way down the slope where its length is written
    along = (left + run * share + 4, base - rise * (1 - share) - 4)
    beside = (foot[0] + 2, base - 3) if low or steep else (foot[0] - arc - 2, base - 2.5)
    shapes = [
        svg.shape([foot, corner, top], svg.HEAVY),
        svg.path([(left + 4, base), (left + 4, base - 4), (left, base - 4)], svg.HAIR) if rise > 8 else '',
        svg.text(labels[0], ((foot[0] + corner[0]) / 2, base + 9), 8.5, 'middle'),
        svg.text(labels[1], (left - 3, base - rise / 2 + 3), 8.5, 'end'),
        svg.text(labels[2], along, 8.5, 'start', 700),
        svg.arc(foot, arc, 180, 180 - slant),
        svg.text(angle.text, beside, 7.5, 'start' if low or steep else 'end'),
    ]
    return svg.drawing(width, height, title, shapes)


def _fitted(slope: float, width: float, height: float) -> tuple[float, float]:
    run = min(width, height / slope)
    return run, run * slope
