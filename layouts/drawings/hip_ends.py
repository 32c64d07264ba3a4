"""The ends of hips and valleys at a regular corner, their tops seen from above: one cheek, two, and hollow.

A member lies as a board does, its ridge end at the left. What it meets stands at 45 degrees to it.
"""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup

from layouts.drawings import svg
from layouts.drawings.plan import CENTER

WIDTH, HEIGHT = 241.0, 132.0
THICK, ROW = 25.0, 66.0
"""Of the member, and from one to the next."""
LEFT, RIGHT, FIRST = 62.0, 184.0, 30.0
"""The marks on the center line, and the first member's center line."""
BEYOND = 13.0
"""How far the faces that are met run past the member."""
END_SIZE = 6.5
ONE, POINT, HOLLOW = 'one', 'point', 'hollow'
End = tuple[svg.Point, tuple[svg.Point, svg.Point]]
"""A mark on the center line, and where the upper and the lower side are cut there."""


def side_marks(kind: str, mark: svg.Point, inwards: int) -> tuple[svg.Point, svg.Point]:
    """Return where the upper and the lower side of a member are cut.

    Given:
        kind     one cheek, two to a point, or two that are hollow
        mark     on the center line
        inwards  1 where the member lies to the right of the mark, -1 where to the left
    """
    half = THICK / 2
    upper = -half if kind != POINT else half
    lower = half if kind != HOLLOW else -half
    return (mark[0] + inwards * upper, mark[1] - half), (mark[0] + inwards * lower, mark[1] + half)


def hip_ends(words: dict[str, str], half: str, title: str) -> Markup:
    """Return a hip's ends, one cheek and a tail, above; below two cheeks, and a valley's tail.

    words: 'one', 'point', 'tail_point', 'hollow' (names of the four), 'ridge', 'tail' (of the ends)
    half:  half of the member's thickness, as it is told
    """
    shapes: list[str] = []
    rows = ((ONE, 'one', POINT, 'tail_point'), (POINT, 'point', HOLLOW, 'hollow'))
    for place, (left, left_name, right, right_name) in enumerate(rows):
        y = FIRST + place * ROW
        ends: list[End] = [
            ((LEFT, y), side_marks(left, (LEFT, y), 1)),
            ((RIGHT, y), side_marks(right, (RIGHT, y), -1)),
        ]
        shapes += _member(ends)
        for kind, (mark, cut), inwards in zip((left, right), ends, (1, -1), strict=True):
            shapes += [*_faces(kind, mark, cut), *_dimensions(mark, cut, inwards, half)]
        low = y + THICK / 2
        shapes += [
            svg.text(words['ridge'], (2, y + 2.4), END_SIZE, weight=700),
            svg.text(words['tail'], (WIDTH - 2, y + 2.4), END_SIZE, 'end', 700),
            svg.text(words[left_name], (LEFT + THICK / 2 + 8, low - 3), 7.5),
            svg.text(words[right_name], (RIGHT - THICK / 2 - 8, y - THICK / 2 + 8), 7.5, 'end'),
        ]
    return svg.drawing(WIDTH, HEIGHT, title, shapes)


def _member(ends: Sequence[End]) -> list[str]:
    """Return the member between its two ends, its center line and the lines of its cuts."""
    (left, (left_up, left_low)), (right, (right_up, right_low)) = ends
    return [
        svg.line(left_up, right_up, svg.LINE),
        svg.line(left_low, right_low, svg.LINE),
        svg.line(left, right, svg.HAIR, CENTER),
        svg.path([left_up, left, left_low], svg.HEAVY),
        svg.path([right_up, right, right_low], svg.HEAVY),
        svg.dot(left, 1.6),
        svg.dot(right, 1.6),
    ]


def _faces(kind: str, mark: svg.Point, cut: tuple[svg.Point, svg.Point]) -> list[str]:
    """Return what is met, beyond the member."""

    def past(point: svg.Point, share: float) -> svg.Point:
        return mark[0] + (point[0] - mark[0]) * share, mark[1] + (point[1] - mark[1]) * share

    share = 1 + BEYOND / (THICK / 2)
    return [svg.line(one, past(one, share), svg.LINE) for one in cut]


def _dimensions(mark: svg.Point, cut: tuple[svg.Point, svg.Point], inwards: int, half: str) -> list[str]:
    """Return the line square across through the mark, and how far from it each side is cut."""
    reach = THICK / 2 + 6
    shapes = [svg.line((mark[0], mark[1] - reach), (mark[0], mark[1] + reach), svg.HAIR, '3 2')]
    for point in cut:
        level = mark[1] + (reach - 2) * (1 if point[1] > mark[1] else -1)
        low = level > mark[1]
        shapes.append(svg.arrow((mark[0], level), (point[0], level)))
        away = 1 if point[0] > mark[0] else -1
        shapes.append(
            svg.text(
                half,
                (mark[0] - 2.5 * away, level + (6 if low else 0)),
                7,
                'end' if away > 0 else 'start',
                700,
            )
        )
    return shapes
