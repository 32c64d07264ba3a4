"""A square with a gauge on each arm, stepped along the edge of a board, its marks numbered."""

from __future__ import annotations

from math import hypot

from markupsafe import Markup

from layouts.drawings import svg
from layouts.drawings.framing_square import BODY_WIDTH, TONGUE_WIDTH
from tablegen.stepping import BODY_REACH, TONGUE_REACH, Hold

WIDTH, HIGHEST = 242.0, 90.0
STEPS = 2
PAST_EDGE = 2.6
"""Inches of each arm drawn past the board's edge."""
BOARD_DEPTH = 7.25
LEFT_ROOM, RIGHT_ROOM = 4.5, 6.0
"""Inches left of the first mark and right of the last."""
GAUGE_IN = 0.62
"""Half-width of a gauge."""


def gauges_on_board(hold: Hold, read: tuple[str, str], words: dict[str, str]) -> Markup:
    """Return the drawing.

    Given:
        hold   the figures at which the square is held, for one step or an even part of one
        read   those on the body and on the tongue, as text
        words  by 'title', 'gauge', 'first'
    """
    on_body, on_tongue = float(hold.body_in), float(hold.tongue_in)
    span = hypot(on_body, on_tongue)
    along, across = on_body / span, on_tongue / span
    above = max(PAST_EDGE * across, PAST_EDGE * along) + 1.0
    scale = min(
        WIDTH / (STEPS * span + LEFT_ROOM + RIGHT_ROOM),
        (HIGHEST - 12) / (above + max(BOARD_DEPTH, on_body * across)),
    )
    shift = (
        LEFT_ROOM * scale + (WIDTH - (STEPS * span + LEFT_ROOM + RIGHT_ROOM) * scale) / 2,
        12 + above * scale,
    )

    def at(x: float, y: float) -> svg.Point:
        return shift[0] + x * scale, shift[1] + y * scale

    def square(start: float) -> list[svg.Point]:
        heel = (start + on_body * along, on_body * across)
        body, tongue = (-along, -across), (across, -along)
        body_end, tongue_end = min(BODY_REACH, on_body + PAST_EDGE), min(TONGUE_REACH, on_tongue + PAST_EDGE)

        def place(out: float, direction: svg.Point, inward: float, other: svg.Point) -> svg.Point:
            return at(
                heel[0] + direction[0] * out + other[0] * inward,
                heel[1] + direction[1] * out + other[1] * inward,
            )

        return [
            place(0, body, 0, tongue),
            place(body_end, body, 0, tongue),
            place(body_end, body, BODY_WIDTH, tongue),
            place(TONGUE_WIDTH, body, BODY_WIDTH, tongue),
            place(tongue_end, tongue, TONGUE_WIDTH, body),
            place(tongue_end, tongue, 0, body),
        ]

    left, right = at(-LEFT_ROOM, 0)[0], at(STEPS * span + RIGHT_ROOM, 0)[0]
    edge, bottom = at(0, 0)[1], at(0, BOARD_DEPTH)[1]
    shapes = [svg.line((left, bottom), (right, bottom), svg.LINE)]
    shapes += [svg.shape(square(step * span), svg.HAIR, 'none', '3 2') for step in range(STEPS - 1)]
    last = (STEPS - 1) * span
    shapes += [svg.shape(square(last), svg.LINE, '#fff'), svg.line((left, edge), (right, edge), svg.HEAVY)]
    # A gauge bears against the board's edge from above, its screw on the arm's outer edge.
    for x in (last, last + span):
        middle = at(x, -GAUGE_IN)
        shapes.append(svg.dot(middle, GAUGE_IN * scale))
        shapes.append(svg.dot(middle, GAUGE_IN * scale * 0.4, '#fff'))
    for step in range(STEPS + 1):
        x = at(step * span, 0)[0]
        shapes += [
            svg.line((x, edge - 1.5), (x, edge + 6), svg.HEAVY),
            *_clear(str(step), x - 3.5, edge, 'end', 800),
        ]
    gauge = at(last + span, -GAUGE_IN)
    note = (min(gauge[0] + 14, WIDTH - 22), 8.0)
    shapes += [
        svg.text(words['gauge'], note, 8, 'middle'),
        svg.arrow((note[0] - 2, note[1] + 2), (gauge[0] + 2, gauge[1] - 2.5)),
        *_clear(read[0], at(last, 0)[0] + 3.5, edge, 'start', 700),
        *_clear(read[1], at(last + span, 0)[0] + 3.5, edge, 'start', 700),
        svg.text(words['first'], (at(0, 0)[0], 8), 8, 'middle'),
        svg.arrow((at(0, 0)[0], 10), (at(0, 0)[0], edge - 2.5)),
    ]
    return svg.drawing(WIDTH, bottom + 2, words['title'], shapes)


def _clear(words: str, x: float, edge: float, anchor: str, weight: int) -> list[str]:
    """Return words below the edge, what is drawn behind them wiped away."""
    wide = 4.6 * len(words) + 1
    left = x - 0.5 if anchor == 'start' else x + 0.5 - wide
    wiped = [(left, edge + 2), (left + wide, edge + 2), (left + wide, edge + 11), (left, edge + 11)]
    return [svg.shape(wiped, 0, '#fff'), svg.text(words, (x, edge + 9.5), 9, anchor, weight)]
