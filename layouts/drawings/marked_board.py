"""A board lying flat with the marks of a rafter on it, to scale along and across.

Every board in the book lies one way round: the ridge at the left, the tail at the right, the top edge up.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import atan, cos, sin, tan

from markupsafe import Markup

from layouts.drawings import svg
from layouts.words import WORDS


@dataclass(frozen=True, slots=True)
class BoardMarks:
    """Marks along the top edge, from the ridge's center line; inches, for ink only."""

    slope: float
    """Of the member itself."""
    depth: float
    shortening: float
    """Level, from the center line to the cut."""
    building: float
    """To the plumb line over the outside of the plate."""
    tail: float
    heel: float
    seat: float
    """Of the bird's mouth; 0 where it is not marked."""


ENDS = WORDS['ends']
SHALLOWEST = 5.0
"""Units in an inch across a long board: it is drawn deeper than it is, or its marks could not be seen."""


def marked_board(
    marks: BoardMarks, words: tuple[str, str, str, str], title: str, head: str = ENDS['ridge']
) -> Markup:
    """Return the board with its plumb lines, bird's mouth and the distances to mark.

    Given:
        words  at the cut, building distance, tail distance, at the bird's mouth
        head   what stands at the board's upper end
    """
    width, left = 240.0, 12.0
    angle = atan(marks.slope)
    lean = marks.depth * tan(angle)
    room, past = width - 2 * left, marks.tail + 6
    along = room / (past + lean)
    if along < SHALLOWEST:
        along = (room - lean * SHALLOWEST) / past
    across = max(along, SHALLOWEST)
    lean_drawn = lean * across
    top = 40.0
    depth = marks.depth * across
    origin = left + 3 * along

    def plumb(x_in: float, back_in: float = 0.0) -> tuple[svg.Point, svg.Point]:
        x = origin + x_in * along + back_in * across
        return (x, top), (x + lean_drawn, top + depth)

    center, cut = plumb(0), plumb(0, marks.shortening / cos(angle))
    building, tail = plumb(marks.building), plumb(marks.tail)
    ends = (left - 2, width - left + 2)
    shapes = [
        svg.path([(ends[0], top), (ends[1], top)], svg.LINE),
        svg.path([(ends[0], top + depth), (ends[1], top + depth)], svg.LINE),
        *ends_named(ends, top + depth / 2, head),
        svg.text(ENDS['top_edge'], (ends[0] + (ends[1] - ends[0]) * 0.42, top + 8), 7),
        svg.line(*center, svg.HAIR, '5 1.5 1 1.5'),
        svg.line(*building, svg.HAIR, '3 2'),
        svg.line(*cut, svg.HEAVY),
        svg.line(*tail, svg.HEAVY),
    ]
    if marks.seat:
        above = marks.depth / cos(angle) - marks.heel
        corner = (building[0][0] + above * sin(angle) * across, top + above * cos(angle) * across)
        toe = (corner[0] - marks.seat * cos(angle) * across, corner[1] + marks.seat * sin(angle) * across)
        notch = [toe, corner, building[1]]
        shapes += [svg.shape(notch, 0, '#fff'), svg.hatch(notch, 2.4), svg.path(notch, svg.HEAVY)]
        shapes.append(svg.text(words[3], (corner[0], top + depth + 9), 7.5, 'middle'))
    for level, (x, label) in enumerate(((building[0][0], words[1]), (tail[0][0], words[2]))):
        y = top - 8 - 15 * level
        shapes += [
            svg.line((x, y - 3), (x, top - 1), svg.HAIR),
            svg.arrow((origin, y), (x, y), both=True),
            svg.text(label, ((origin + x) / 2, y - 2), 8, 'middle', 700),
        ]
    shapes.append(svg.line((origin, top - 26), (origin, top - 1), svg.HAIR))
    shapes.append(svg.text(words[0], (left - 2, top + depth + 9), 7.5))
    return svg.drawing(width, top + depth + 13, title, shapes)


def ends_named(ends: tuple[float, float], middle: float, head: str, size: float = 7.0) -> list[str]:
    """Return the names of a board's two ends, written up along them, outside of the board."""
    return [
        svg.text(name, (x, middle), size, 'middle', 800, 90)
        for name, x in ((head, ends[0] - 2.5), (ENDS['tail'], ends[1] + 2.5 + size * 0.72))
    ]
