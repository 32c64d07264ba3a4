"""One cheek read on both faces of a board: the saw's line on its side, the line across its top."""

from __future__ import annotations

from math import radians, tan

from markupsafe import Markup

from layouts.drawings import svg

WIDTH, HEIGHT = 241.0, 94.0
TOP_UNITS, SIDE_UNITS = 28.0, 42.0
"""Breadth of the top edge and of the side as drawn."""
START = 70.0
END_SIZE = 6.5


def cheek_lines(saw_degrees: float, top_from_square: float) -> tuple[float, float]:
    """Return how far the cut runs along the board, in units: across the side, and across the top."""
    return SIDE_UNITS * tan(radians(saw_degrees)), TOP_UNITS * tan(radians(top_from_square))


def cheek_faces(saw_degrees: float, top_from_square: float, words: dict[str, str], title: str) -> Markup:
    """Return a board unfolded about its long edge: top face above, side below, the cheek's line on both.

    The ridge end is at the left: on the side the plumb line leans towards the tail as it goes down. The long point is
    on the far side, as on the boards of the examples: the jack has the corner at its left.

    words: 'top_angle', 'side_angle', 'top', 'side' (names of the faces), 'ridge', 'tail' (of the ends)
    """
    across_side, across_top = cheek_lines(saw_degrees, top_from_square)
    edge, above, below = 12 + TOP_UNITS, 12.0, 12 + TOP_UNITS + SIDE_UNITS
    start = START
    point = (start, edge)
    top_end, side_end = (start - across_top, above), (start + across_side, below)
    right = WIDTH - 4
    shapes = [
        svg.line((top_end[0], above), (right, above), svg.LINE),
        svg.line(point, (right, edge), svg.LINE),
        svg.line((side_end[0], below), (right, below), svg.LINE),
        svg.line(point, top_end, svg.HEAVY),
        svg.line(point, side_end, svg.HEAVY),
        svg.line(point, (start, above - 6), svg.HAIR, '3 2'),
        svg.line(point, (start, below + 6), svg.HAIR, '3 2'),
        svg.arc(point, 20, 90, 90 + top_from_square),
        svg.arc(point, 24, -90, -90 + saw_degrees),
        svg.text(words['top_angle'], (start + 5, edge - 11), 9, 'start', 700),
        svg.text(words['side_angle'], (start - 5, edge + 22), 9, 'end', 700),
        svg.text(words['top'], (right, edge - 11), 8, 'end'),
        svg.text(words['side'], (right, edge + 24), 8, 'end'),
        svg.dot(point, 1.7),
        svg.text(words['ridge'], (2, edge + 2.5), END_SIZE, weight=700),
        svg.text(words['tail'], (right + 3, below + 9), END_SIZE, 'end', 700),
    ]
    return svg.drawing(WIDTH, HEIGHT, title, shapes)
