"""Studs under a gable rafter: each longer than the last by the same difference, to scale."""

from __future__ import annotations

from math import atan, cos

from markupsafe import Markup

from layouts.drawings import svg

WIDTH, HEIGHT = 241.0, 128.0
STUD_IN, DEPTH_IN = 1.5, 5.5
STUDS = 5
WIDEST, TALLEST, RIGHT = 158.0, 100.0, 22.0
END_SIZE = 6.5


def stud_tops(slope: float, spacing: float) -> tuple[float, ...]:
    """Return the heights of the studs' longer corners under the rafter, in, the first one at one space."""
    return tuple(slope * (spacing * place + STUD_IN / 2) for place in range(1, STUDS + 1))


def gable_studs(slope: float, spacing: float, words: dict[str, str], title: str) -> Markup:
    """Return the studs of one side of a gable, its ridge at the left.

    words: 'difference', 'spacing', 'cut' (the angle on the tops), 'ridge', 'tail'
    """
    end = spacing * (STUDS + 0.8)
    scale = min(WIDEST / end, TALLEST / (slope * end + DEPTH_IN * 1.3))
    x0, y0 = WIDTH - RIGHT, HEIGHT - 20

    def at(x: float, y: float) -> svg.Point:
        """Return a point by its distance from the plate's outside and its height."""
        return x0 - x * scale, y0 - y * scale

    depth = DEPTH_IN / cos(atan(slope))
    shapes = [
        svg.shape([at(0, 0), at(end, slope * end), at(end, slope * end + depth), at(0, depth)], svg.LINE),
        svg.line(at(-2, 0), at(end, 0), svg.HEAVY),
        svg.text(words['ridge'], (at(end, slope * end + depth)[0] - 4, 14), END_SIZE, 'end', 700),
        svg.text(words['tail'], (x0 + 2, at(0, depth)[1] - 5), END_SIZE, weight=700),
    ]
    tops = stud_tops(slope, spacing)
    for place, high in enumerate(tops, 1):
        outer, inner = spacing * place - STUD_IN / 2, spacing * place + STUD_IN / 2
        shapes.append(
            svg.shape(
                [at(outer, 0), at(outer, slope * outer), at(inner, high), at(inner, 0)], svg.LINE, '#fff'
            )
        )
    third, fourth = spacing * 3 + STUD_IN / 2, spacing * 4 + STUD_IN / 2
    beside = fourth + spacing * 0.2
    side = at(end, 0)[0] - 6
    shapes += [
        svg.line(at(third, tops[2]), at(beside + 1, tops[2]), svg.HAIR, '3 2'),
        svg.line(at(fourth, tops[3]), at(beside + 1, tops[3]), svg.HAIR, '3 2'),
        svg.arrow(at(beside, tops[2]), at(beside, tops[3]), both=True),
        svg.text(words['difference'], (side, at(0, tops[1])[1] + 3), 9, 'end', 700),
        svg.line((side + 2, at(0, tops[1])[1]), at(beside, (tops[2] + tops[3]) / 2), svg.HAIR),
        svg.arrow((at(2 * spacing, 0)[0], y0 + 6), (at(spacing, 0)[0], y0 + 6), both=True),
        svg.text(words['spacing'], (at(1.5 * spacing, 0)[0], y0 + 16), 8, 'middle'),
        svg.text(words['cut'], (side, at(0, tops[4])[1] + 8), 8.5, 'end', 700),
        svg.arrow((side + 2, at(0, tops[4])[1] + 5), at(spacing * 5 + STUD_IN / 2, tops[4] - 0.4)),
    ]
    return svg.drawing(WIDTH, HEIGHT, title, shapes)
