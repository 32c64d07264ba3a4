"""The framing square laid on a board, to scale, held by the two numbers of a pitch.

The board lies as every board in the book: ridge at the left, tail at the right, top edge up. The square lies on it
with both arms out over the top edge, the tongue towards the ridge: along the tongue is plumb, along the body level.
"""

from __future__ import annotations

from math import hypot

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.drawings.marked_board import ends_named
from layouts.paper.trim import mixed_em
from layouts.words.drawings import ENDS, SQUARE_DRAWING
from tablegen.geometry.stepping import BODY_REACH, TONGUE_REACH, Hold

BODY_WIDTH, TONGUE_WIDTH = 2.0, 1.5
"""Inches; the usual widths of a framing square's arms (common practice, no source)."""
PAST_EDGE = 3.4
"""Inches of each arm drawn past the board's edge."""
BOARD_DEPTH = 11.25
"""A 2 × 12, so that the words about both arms find room on it."""
WIDTH, HEIGHT = 112.0, 94.0
SIDE_ROOM, HEAD_ROOM = 34.0, 11.0
"""Units kept free beside the two figures for them and the board's ends, and above for the arms' names."""
END_ROOM, FIGURE_SIZE, BOLDER = 12.0, 9.0, 1.08
"""Units beside the tongue's figure; size of both figures, and how much wider than a table's their bold digits are."""
LABELS = SQUARE_DRAWING


class HeldSquare(Struct, frozen=True):
    """A square held against a board's top edge, in inches; x along the edge towards the tail, y into the board.

    Its tongue's figure stands at the origin and its body's figure further on, both on the edge.
    """

    span: float
    """From the tongue's figure to the body's: one step."""
    heel: svg.Point
    tongue: svg.Point
    body: svg.Point
    """Directions from the heel out along the two arms' outer edges."""
    tongue_end: float
    body_end: float
    """Inches of the arms that are drawn, from the heel."""

    def out(self, arm: svg.Point, along: float, inward: float = 0.0) -> svg.Point:
        """Return a point so far out along an arm's outer edge and so far in from it, towards the other arm."""
        other = self.body if arm == self.tongue else self.tongue
        return (
            self.heel[0] + arm[0] * along + other[0] * inward,
            self.heel[1] + arm[1] * along + other[1] * inward,
        )

    def outline(self) -> list[svg.Point]:
        """Return its corners: heel, out along the body and back, out along the tongue and back."""
        return [
            self.heel,
            self.out(self.body, self.body_end),
            self.out(self.body, self.body_end, BODY_WIDTH),
            self.out(self.body, TONGUE_WIDTH, BODY_WIDTH),
            self.out(self.tongue, self.tongue_end, TONGUE_WIDTH),
            self.out(self.tongue, self.tongue_end),
        ]


def held_square(hold: Hold, past_edge: float) -> HeldSquare:
    """Return where a square lies when it is held so, each arm drawn so far past the board's edge."""
    on_body, on_tongue = float(hold.body_in), float(hold.tongue_in)
    span = hypot(on_body, on_tongue)
    level, plumb = on_body / span, on_tongue / span
    return HeldSquare(
        span,
        (on_tongue * plumb, on_tongue * level),
        (-plumb, -level),
        (level, -plumb),
        min(TONGUE_REACH, on_tongue + past_edge),
        min(BODY_REACH, on_body + past_edge),
    )


def square_on_board(hold: Hold, title: str) -> Markup:
    """Return the square on a board's top edge, the two figures at which it is held and what each arm gives."""
    square = held_square(hold, PAST_EDGE)
    outline = square.outline()
    low, high = min(y for _, y in outline), max(BOARD_DEPTH, square.heel[1])
    room = max(SIDE_ROOM, END_ROOM + FIGURE_SIZE * BOLDER * mixed_em(hold.tongue.text))
    scale = min((WIDTH - 2 * room) / square.span, (HEIGHT - HEAD_ROOM - 2) / (high - low))
    left, edge = (WIDTH - square.span * scale) / 2, HEAD_ROOM - low * scale

    def at(point: svg.Point) -> svg.Point:
        return left + point[0] * scale, edge + point[1] * scale

    bottom = edge + BOARD_DEPTH * scale
    right = at((square.span, 0))[0]
    ends = (9.0, WIDTH - 9.0)
    ticks = [
        svg.line(at(square.out(arm, inch)), at(square.out(arm, inch, 0.55)), svg.HAIR)
        for arm, end in ((square.body, square.body_end), (square.tongue, square.tongue_end))
        for inch in range(1, int(end) + 1)
    ]
    tongue_top, body_top = (
        at(square.out(arm, end, wide / 2))
        for arm, end, wide in (
            (square.tongue, square.tongue_end, TONGUE_WIDTH),
            (square.body, square.body_end, BODY_WIDTH),
        )
    )
    shapes = [
        svg.line((ends[0], bottom), (ends[1], bottom), svg.LINE),
        svg.shape([at(point) for point in outline], svg.LINE, '#fff'),
        *ticks,
        svg.line((ends[0], edge), (ends[1], edge), svg.HEAVY),
        *ends_named(ends, (edge + bottom) / 2, ENDS['ridge'], size=6.5),
        svg.dot((left, edge), 1.6),
        svg.dot((right, edge), 1.6),
        svg.text(LABELS['tongue'], (tongue_top[0], tongue_top[1] - 5.5), 7, 'middle'),
        svg.text(LABELS['body'], (body_top[0] + 5, body_top[1] - 1), 7),
        svg.text(hold.tongue.text, (left - 3, edge + 9.5), FIGURE_SIZE, 'end', 700),
        svg.text(LABELS['plumb'], (left - 3, edge + 17), 7, 'end'),
        svg.text(hold.body.text, (right + 3, edge + 9.5), FIGURE_SIZE, 'start', 700),
        svg.text(LABELS['level'], (right + 3, edge + 17), 7),
    ]
    return svg.drawing(WIDTH, HEIGHT, title, shapes)
