"""The turn-over test: a square against a straight edge, drawn twice from one point, its error made large."""

from __future__ import annotations

from math import cos, radians, sin

from markupsafe import Markup

from layouts.drawings import svg
from layouts.drawings.framing_square import BODY_WIDTH, TONGUE_WIDTH
from tablegen.geometry.stepping import BODY_REACH, TONGUE_REACH

WIDTH, HEIGHT = 242.0, 99.0
ERROR_DEG = 6.0
"""Drawn error of the square: many times what any square has, so that the gap can be seen."""
SCALE = 4.35
"""Units of drawing in an inch."""
EDGE_Y, POINT_X = 87.0, WIDTH / 2


def turned_over(words: dict[str, str]) -> Markup:
    """Return the drawing; words by 'title', 'first', 'second', 'gap', 'over'."""
    first, second = _square(-1), _square(1)
    top = 0.98 * TONGUE_REACH
    left, right = _leaning(-1, top), _leaning(1, top)
    bar = [(0.5, EDGE_Y), (WIDTH - 0.5, EDGE_Y), (WIDTH - 0.5, EDGE_Y + 7), (0.5, EDGE_Y + 7)]
    gap_y = right[1] - 4.5
    shapes = [
        svg.shape(bar, svg.LINE),
        svg.hatch(bar, 4),
        svg.shape(first, svg.LINE),
        svg.shape(second, svg.HAIR, 'none', '3 2'),
        *_inches(),
        svg.line((POINT_X, EDGE_Y), left, svg.HEAVY),
        svg.line((POINT_X, EDGE_Y), right, svg.HEAVY),
        svg.dot((POINT_X, EDGE_Y), 1.8),
        svg.line((left[0], left[1] - 1), (left[0], gap_y - 2), svg.HAIR),
        svg.line((right[0], right[1] - 1), (right[0], gap_y - 2), svg.HAIR),
        svg.arrow((left[0] - 14, gap_y), (left[0], gap_y)),
        svg.arrow((right[0] + 14, gap_y), (right[0], gap_y)),
        svg.text(words['gap'], ((left[0] + right[0]) / 2, gap_y - 5), 8.5, 'middle', 800),
        svg.text(words['first'], (right[0] + 17, gap_y + 3), 8, weight=700),
        svg.text(words['second'], (left[0] - 17, gap_y + 3), 8, 'end', 700),
        svg.line((right[0] + 3, right[1]), (WIDTH - 6, right[1]), svg.HAIR),
        svg.arrow((WIDTH - 10, EDGE_Y), (WIDTH - 10, right[1]), both=True),
        svg.text(words['over'], (WIDTH - 13, (EDGE_Y + right[1]) / 2 + 3), 8, 'end', 700),
    ]
    return svg.drawing(WIDTH, HEIGHT, words['title'], shapes)


def _leaning(way: int, along: float, beside: float = 0.0) -> svg.Point:
    """Return a point so many inches up a drawn line, and so many beside it on the side it leans to."""
    turn = radians(ERROR_DEG) * way
    x = along * sin(turn) + beside * way * cos(turn)
    return POINT_X + x * SCALE, EDGE_Y - (along * cos(turn) - beside * abs(sin(turn))) * SCALE


def _square(way: int) -> list[svg.Point]:
    """Return the outline of a square of too wide an angle: its long arm on the edge, to the side of way."""
    body = POINT_X + way * BODY_REACH * SCALE
    inner = EDGE_Y - BODY_WIDTH * SCALE
    lean = -way  # the short arm leans away from the long one
    foot = _leaning(lean, BODY_WIDTH, -TONGUE_WIDTH)
    return [
        (POINT_X, EDGE_Y),
        (body, EDGE_Y),
        (body, inner),
        (foot[0], inner),
        _leaning(lean, TONGUE_REACH, -TONGUE_WIDTH),
        _leaning(lean, TONGUE_REACH),
    ]


def _inches() -> list[str]:
    """Return the inch marks on the long arm of the first square."""
    return [
        svg.line(
            (POINT_X - inch * SCALE, EDGE_Y - BODY_WIDTH * SCALE),
            (POINT_X - inch * SCALE, EDGE_Y - BODY_WIDTH * SCALE + 2.4),
            svg.HAIR,
        )
        for inch in range(2, BODY_REACH)
    ]
