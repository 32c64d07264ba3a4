"""A square with a gauge on each arm, stepped along the top edge of a board from ridge to tail, its marks numbered."""

from __future__ import annotations

from markupsafe import Markup

from layouts.drawings import svg
from layouts.drawings.framing_square import LABELS, HeldSquare, held_square
from layouts.drawings.marked_board import ends_named
from layouts.words.drawings import ENDS
from tablegen.geometry.stepping import Hold

WIDTH, HIGHEST = 242.0, 80.0
HEAD_ROOM = 20.0
"""Units above the arms, for words."""
STEPS = 2
PAST_EDGE = 2.6
"""Inches of each arm drawn past the board's edge."""
SIDE_ROOM = 44.0
"""Units left of the first mark and right of the last."""
GAUGE_IN = 0.62
"""Half-width of a gauge."""
BOARD_DEPTH = 9.25
BENEATH = 13.0
"""Units from the edge down to the words about an arm."""
MARK = 4.2
"""Units: radius of the disc that a mark's number stands in."""


def gauges_on_board(hold: Hold, words: dict[str, str]) -> Markup:
    """Return the drawing.

    Given:
        hold   the figures at which the square is held for one step
        words  by 'title', 'gauge', 'first', 'step'
    """
    square = held_square(hold, PAST_EDGE)
    outline, span = square.outline(), square.span
    low, high = min(y for _, y in outline), max(BOARD_DEPTH, square.heel[1])
    scale = min((WIDTH - 2 * SIDE_ROOM) / (STEPS * span), (HIGHEST - HEAD_ROOM) / (high - low))
    left, edge = (WIDTH - STEPS * span * scale) / 2, HEAD_ROOM - low * scale

    def at(x: float, y: float) -> svg.Point:
        return left + x * scale, edge + y * scale

    bottom, last = at(0, BOARD_DEPTH)[1], (STEPS - 1) * span
    ends = (10.0, WIDTH - 10.0)
    shapes = [svg.line((ends[0], bottom), (ends[1], bottom), svg.LINE)]
    shapes += [
        svg.shape([at(x + step * span, y) for x, y in outline], svg.HAIR, 'none', '3 2')
        for step in range(STEPS - 1)
    ]
    shapes += [
        svg.shape([at(x + last, y) for x, y in outline], svg.LINE, '#fff'),
        svg.line((ends[0], edge), (ends[1], edge), svg.HEAVY),
        *ends_named(ends, (edge + bottom) / 2, ENDS['ridge']),
        svg.text(ENDS['top_edge'], (ends[0] + 1, edge + 7), 6.5),
    ]
    # A gauge bears against the board's edge from above, its screw on the arm's outer edge.
    for x in (last, last + span):
        middle = at(x, -GAUGE_IN)
        shapes += [svg.dot(middle, GAUGE_IN * scale), svg.dot(middle, GAUGE_IN * scale * 0.4, '#fff')]
    for step in range(STEPS + 1):
        x = at(step * span, 0)[0]
        shapes.append(svg.line((x, edge - 1.5), (x, edge + 2), svg.HEAVY))
        shapes += _numbered(str(step), (x, edge + 1 + MARK))
    tongue, body, heel = at(last, 0)[0], at(last + span, 0)[0], at(square.heel[0] + last, square.heel[1])
    gauge = at(last + span, -GAUGE_IN)
    note = (gauge[0] + 16, 9.0)
    shapes += [
        svg.text(words['gauge'], note, 8, 'middle'),
        svg.arrow((note[0] - 2, note[1] + 2), (gauge[0] + 2, gauge[1] - 2.5)),
        svg.text(words['first'], (at(0, 0)[0], 9), 8, 'middle'),
        svg.arrow((at(0, 0)[0], 11), (at(0, 0)[0], edge - 2.5)),
        *_told(
            (hold.tongue.text, LABELS['tongue'], LABELS['plumb']),
            (tongue + _aside(square), edge + 17),
            'middle',
        ),
        *_told((hold.body.text, LABELS['body'], LABELS['level']), (body + 6, edge + 11), 'start'),
    ]
    return svg.drawing(WIDTH, max(bottom, heel[1]) + 2, words['title'], shapes)


def _told(lines: tuple[str, str, str], at: svg.Point, anchor: str) -> list[str]:
    """Return an arm's figure, its name and what it marks, one under the other."""
    x, y = at
    figure, *names = lines
    return [
        svg.text(figure, at, 8, anchor, 700),
        *(svg.text(name, (x, y + 7.8 * place), 7, anchor) for place, name in enumerate(names, 1)),
    ]


def _aside(square: HeldSquare) -> float:
    """Return how far aside of a mark there is most room below it, between one square's body and the next tongue."""
    rise = -square.body[1] / square.body[0]
    return (min(BENEATH * rise, 2 * BENEATH) - min(BENEATH / rise, 2 * BENEATH)) / 2


def _numbered(number: str, middle: svg.Point) -> list[str]:
    """Return a mark's number, white in a black disc, so that no figure of the square is taken for it."""
    return [
        svg.dot(middle, MARK),
        svg.text(number, (middle[0], middle[1] + 2.5), 7, 'middle', 800, fill='#fff'),
    ]
