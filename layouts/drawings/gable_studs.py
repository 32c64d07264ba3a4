"""Studs under a gable rafter: each longer than the last by the same difference, to scale; the ridge is to the left."""

from __future__ import annotations

from math import atan, cos

from markupsafe import Markup

from layouts.drawings import svg

WIDTH, HEIGHT = 241.0, 128.0
STUD_IN, DEPTH_IN = 1.5, 5.5
STUDS = 5


def stud_tops(slope: float, spacing: float) -> tuple[float, ...]:
    """Return the heights of the studs' longer corners under the rafter, in, the first one at one space."""
    return tuple(slope * (spacing * place + STUD_IN / 2) for place in range(1, STUDS + 1))


def gable_studs(slope: float, spacing: float, words: tuple[str, str, str], title: str) -> Markup:
    """Return the studs of one side of a gable.

    words: difference, spacing, the top cut's angle
    """
    across, tall = spacing * (STUDS + 0.8), slope * spacing * (STUDS + 0.8) + DEPTH_IN * 1.3
    scale = min(160 / across, 100 / tall)
    x0, y0 = WIDTH - 26.0, HEIGHT - 20

    def at(x: float, y: float) -> svg.Point:
        return x0 - x * scale, y0 - y * scale

    end = spacing * (STUDS + 0.8)
    depth = DEPTH_IN / cos(atan(slope))
    shapes = [
        svg.shape([at(0, 0), at(end, slope * end), at(end, slope * end + depth), at(0, depth)], svg.LINE),
        svg.line(at(-2, 0), at(end, 0), svg.HEAVY),
    ]
    tops = stud_tops(slope, spacing)
    for place, high in enumerate(tops, 1):
        left, right = spacing * place - STUD_IN / 2, spacing * place + STUD_IN / 2
        shapes.append(
            svg.shape([at(left, 0), at(left, slope * left), at(right, high), at(right, 0)], svg.LINE, '#fff')
        )
    third, fourth = spacing * 3 + STUD_IN / 2, spacing * 4 + STUD_IN / 2
    shapes += [
        svg.line(at(third, tops[2]), at(fourth, tops[2]), svg.HAIR, '3 2'),
        svg.arrow(
            at(fourth - spacing * 0.22, tops[2]),
            at(fourth - spacing * 0.22, tops[3] - spacing * 0.22 * slope),
        ),
        svg.text(words[0], (at(end, 0)[0] - 6, at(0, tops[1])[1] + 3), 9, 'end', 700),
        svg.arrow(
            (at(end, 0)[0] - 4, at(0, tops[1])[1]),
            at(fourth - spacing * 0.22, (tops[2] + tops[3]) / 2 - spacing * 0.1 * slope),
        ),
        svg.arrow((at(spacing, 0)[0], y0 + 6), (at(2 * spacing, 0)[0], y0 + 6), both=True),
        svg.text(words[1], (at(1.5 * spacing, 0)[0], y0 + 16), 8, 'middle'),
        svg.text(words[2], (at(spacing * 5.9, 0)[0] - 4, at(0, tops[4])[1] + 8), 8.5, 'end', 700),
        svg.arrow(
            (at(spacing * 5.9, 0)[0] - 2, at(0, tops[4])[1] + 5), at(spacing * 5 + STUD_IN / 2, tops[4] - 0.4)
        ),
    ]
    return svg.drawing(WIDTH, HEIGHT, title, shapes)
