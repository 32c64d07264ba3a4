"""How the square is held, small: the board lies at its true slope, so that the body is level and the tongue plumb."""

from __future__ import annotations

from math import atan2, cos, hypot, sin

from markupsafe import Markup

from layouts.drawings import svg
from tablegen.geometry.stepping import Hold

BODY_WIDTH, TONGUE_WIDTH = 2.0, 1.5
"""Inches; the usual widths of a framing square's arms (common practice, no source)."""
BOARD_DEPTH, PAST_MARK, PAST_EDGE = 5.5, 2.5, 3.0
"""Inches: of the board, of its edge past each figure, of each arm past the edge."""
SIZE = 8.5


def compact_hold(hold: Hold, width: float, height: float) -> Markup:
    """Return a board, its ridge at the left, with the square on its top edge and the two figures at which it is held.

    Given:
        width, height  of the drawing, units
    """
    run, rise = float(hold.body_in), float(hold.tongue_in)
    slant = atan2(rise, run)

    def on_board(along: float, inward: float) -> svg.Point:
        return along * cos(slant) - inward * sin(slant), along * sin(slant) + inward * cos(slant)

    length, body_end = hypot(run, rise), run + PAST_EDGE
    board = [
        on_board(-PAST_MARK, 0),
        on_board(length + PAST_MARK, 0),
        on_board(length + PAST_MARK, BOARD_DEPTH),
        on_board(-PAST_MARK, BOARD_DEPTH),
    ]
    body = [(0.0, rise), (body_end, rise), (body_end, rise - BODY_WIDTH), (TONGUE_WIDTH, rise - BODY_WIDTH)]
    tongue = [(TONGUE_WIDTH, -PAST_EDGE), (0.0, -PAST_EDGE)]
    points = [*board, *body, *tongue]
    left, right = min(x for x, _ in points), max(x for x, _ in points)
    top, bottom = min(y for _, y in points), max(y for _, y in points)
    short = rise > run or hold.holds > 1  # the body's figure has no room over it: it stands right of its end
    beside = 2.2 * SIZE if short else 0.0
    scale = min((width - 2 - beside) / (right - left), (height - 2) / (bottom - top))
    move = (width - beside - (right - left) * scale) / 2

    def at(point: svg.Point) -> svg.Point:
        return move + (point[0] - left) * scale, 1 + (point[1] - top) * scale

    over = at((TONGUE_WIDTH, -PAST_EDGE))
    body_says = (
        (at((body_end, rise))[0] + 3, at((0, rise - BODY_WIDTH / 2))[1] + 3, 'start')
        if beside
        else (at((run, rise))[0], at((0, rise - BODY_WIDTH))[1] - 3, 'end')
    )
    shapes = [
        svg.shape(map(at, board), svg.LINE),
        svg.shape(map(at, [*body, *tongue]), svg.LINE, '#fff'),
        svg.line(at((0.0, rise)), at((body_end, rise)), svg.HEAVY),
        svg.line(at((0.0, -PAST_EDGE)), at((0.0, rise)), svg.HEAVY),
        svg.text(hold.tongue.text, (over[0] + 3, over[1] + SIZE - 2), SIZE, 'start', 700),
        svg.text(hold.body.text, body_says[:2], SIZE, body_says[2], 700),
    ]
    return svg.drawing(width, height, hold.text, shapes)
