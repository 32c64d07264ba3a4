"""The framing square laid on a board, to scale, held by the two numbers of a pitch."""

from __future__ import annotations

from math import hypot

from markupsafe import Markup

from layouts.drawings import svg
from tablegen.stepping import BODY_REACH, TONGUE_REACH, Hold

BODY_WIDTH, TONGUE_WIDTH = 2.0, 1.5
"""Inches; the usual widths of a framing square's arms (common practice, no source)."""
PAST_EDGE = 3.4
"""Inches of each arm drawn past the board's edge."""
BOARD_DEPTH = 7.25
LABEL_ROOM = 5.5
"""Inches kept free beside the two figures."""
WIDTH, HEIGHT = 112.0, 90.0


def square_on_board(hold: Hold, labels: tuple[str, str], title: str) -> Markup:
    """Return the square on a board's edge with the two figures at which it is held.

    labels: read on the body, read on the tongue
    """
    on_body, on_tongue = float(hold.body_in), float(hold.tongue_in)
    span = hypot(on_body, on_tongue)
    along, across = on_body / span, on_tongue / span
    heel = (on_body * along, on_body * across)  # from the body's figure: along the edge, down the board
    body, tongue = (-along, -across), (across, -along)
    body_end = min(BODY_REACH, on_body + PAST_EDGE)
    tongue_end = min(TONGUE_REACH, on_tongue + PAST_EDGE)

    def place(out: float, direction: svg.Point, inward: float, other: svg.Point) -> svg.Point:
        return heel[0] + direction[0] * out + other[0] * inward, heel[1] + direction[1] * out + other[
            1
        ] * inward

    outline = [
        heel,
        place(body_end, body, 0, tongue),
        place(body_end, body, BODY_WIDTH, tongue),
        place(TONGUE_WIDTH, body, BODY_WIDTH, tongue),
        place(tongue_end, tongue, TONGUE_WIDTH, body),
        place(tongue_end, tongue, 0, body),
    ]
    low, high = min(y for _, y in outline), max(BOARD_DEPTH, heel[1])
    left, right = min(-LABEL_ROOM, *(x for x, _ in outline)), max(span + LABEL_ROOM, *(x for x, _ in outline))
    scale = min(WIDTH / (right - left), (HEIGHT - 4) / (high - low))
    shift = ((WIDTH - (right + left) * scale) / 2, 2 - low * scale)

    def at(point: svg.Point) -> svg.Point:
        return point[0] * scale + shift[0], point[1] * scale + shift[1]

    edge, bottom = shift[1], BOARD_DEPTH * scale + shift[1]
    ticks = []
    for direction, other, end in ((body, tongue, body_end), (tongue, body, tongue_end)):
        for inch in range(1, int(end) + 1):
            ticks.append(
                svg.line(
                    at(place(inch, direction, 0, other)), at(place(inch, direction, 0.55, other)), svg.HAIR
                )
            )
    shapes = [
        svg.line((0, bottom), (WIDTH, bottom), svg.LINE),
        svg.shape([at(point) for point in outline], svg.LINE, '#fff'),
        *ticks,
        svg.line((0, edge), (WIDTH, edge), svg.HEAVY),
        svg.dot(at((0, 0)), 1.6),
        svg.dot(at((span, 0)), 1.6),
        svg.text(labels[0], (at((0, 0))[0] - 3, edge + 9.5), 9, 'end', 700),
        svg.text(labels[1], (at((span, 0))[0] + 3, edge + 9.5), 9, 'start', 700),
    ]
    return svg.drawing(WIDTH, HEIGHT, title, shapes)
