"""The wedge: a pitch's triangle of run and rise, to scale."""

from __future__ import annotations

from markupsafe import Markup

from layouts.drawings import svg
from tablegen.figures import Figure
from tablegen.pitch import Pitch

LOW_DEGREES, STEEP_DEGREES = 20, 50
"""Slopes at which the angle no longer has room inside the triangle."""


def measured_wedge(pitch: Pitch, labels: tuple[str, str, str], angle: Figure, title: str) -> Markup:
    """Return the triangle with its run, rise, length and angle written on it.

    labels: run, rise, length along the slope
    """
    width, height = 112.0, 88.0
    run, rise = _fitted(float(pitch.slope), 66, 64)
    left, base = 26.0, 77.0
    foot, corner, top = (left, base), (left + run, base), (left + run, base - rise)
    slant = angle.count / angle.per
    arc = min(run * 0.36, 22)
    low, steep = slant < LOW_DEGREES, slant > STEEP_DEGREES
    share = 0.62 if low else 0.5  # of the way up the slope where its length is written
    along = (left + run * share - (0 if low else 4), base - rise * share - 4)
    beside = (left - 2, base - 3) if low or steep else (left + arc + 2, base - 2.5)
    shapes = [
        svg.shape([foot, corner, top], svg.HEAVY),
        svg.path([(corner[0] - 4, base), (corner[0] - 4, base - 4), (corner[0], base - 4)], svg.HAIR)
        if rise > 8
        else '',
        svg.text(labels[0], ((foot[0] + corner[0]) / 2, base + 9), 8.5, 'middle'),
        svg.text(labels[1], (corner[0] + 3, base - rise / 2 + 3), 8.5),
        svg.text(labels[2], along, 8.5, 'middle' if low else 'end', 700),
        svg.arc(foot, arc, 0, slant),
        svg.text(angle.text, beside, 7.5, 'end' if low or steep else 'start'),
    ]
    return svg.drawing(width, height, title, shapes)


def _fitted(slope: float, width: float, height: float) -> tuple[float, float]:
    run = min(width, height / slope)
    return run, run * slope
