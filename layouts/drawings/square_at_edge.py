"""A framing square at one edge of a drawn board, either edge, with its two figures and what each arm gives."""

from __future__ import annotations

from collections.abc import Callable

from layouts.drawings import svg
from layouts.drawings.framing_square import BODY_WIDTH, TONGUE_WIDTH, HeldSquare
from layouts.paper.typeface import advance_em
from layouts.words.drawings import ONE_RAFTER_DRAWING as LABELS
from tablegen.geometry.stepping import Hold

SIZE, SMALL = 9.0, 7.0
DESCENT = 2.0
"""How far letters reach below their line, units."""


def square_at_edge(
    hold: Hold,
    square: HeldSquare,
    at: Callable[[svg.Point], svg.Point],
    origin: svg.Point,
    words: tuple[str, str],
    most: float,
) -> list[str]:
    """Return the square with its tongue's figure at a point of an edge, both figures, what each arm gives.

    Given:
        most  how far above that edge words may stand, units
    """

    def out(point: svg.Point) -> svg.Point:
        return at((origin[0] + point[0], origin[1] + point[1]))

    tongue, body = out((0.0, 0.0)), out((square.span, 0.0))
    units = (body[0] - tongue[0]) / square.span
    figure = advance_em(hold.tongue.text, svg.WIDTH, 700) * SIZE + 3
    for said in (words[0], LABELS['tongue_short'], ''):  # between steep arms there is no room for more
        start, up = _between_arms(square, units, figure + advance_em(said, svg.WIDTH, 500) * SMALL)
        if up < most:
            break
    start, over = tongue[0] + start, tongue[1] - up
    return [
        svg.shape([out(point) for point in square.outline()], svg.LINE, '#fff'),
        svg.dot(tongue, 1.6),
        svg.dot(body, 1.6),
        svg.text(hold.tongue.text, (start, over), SIZE, 'start', 700),
        svg.text(said, (start + figure, over), SMALL) if said else '',
        svg.text(hold.body.text, (body[0] + 3, body[1] + 9), SIZE, 'start', 700),
        svg.text(words[1], (body[0] + 3, body[1] + 16.5), SMALL),
    ]


def _between_arms(square: HeldSquare, units: float, long: float) -> tuple[float, float]:
    """Return how far right of the tongue's figure and above the edge words of some length clear both arms; units."""
    level, rise = square.body[0], -square.body[1]
    up = 4.0
    while True:
        start = 3 + max(0.0, TONGUE_WIDTH / level * units - up * rise / level)
        end = (square.span - BODY_WIDTH / rise) * units + (up - DESCENT) * level / rise
        if start + long + 3 <= end:
            return start, up
        up += 1
