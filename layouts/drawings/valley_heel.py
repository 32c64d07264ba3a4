"""A valley over the inside corner of the plates, seen from above: its square heel stands outwards of the corner."""

from __future__ import annotations

from collections.abc import Callable

from markupsafe import Markup

from layouts.drawings import svg
from layouts.drawings.plan import DIAGONAL
from layouts.words.drawings import ENDS

WIDTH = 241.0
THICK_UNITS = 22.0
"""Of the valley on paper."""
INWARDS, OUTWARDS = 96.0, 44.0
"""Units of the valley drawn inwards of the corner, and outwards."""
SPREAD = 9.0
"""Units of a plate drawn past the valley's side."""
PLATE_IN = 3.5
CENTER = '6 1.5 1 1.5'


def heel_points(thickness: float, seat: float) -> dict[str, svg.Point]:
    """Return the points of a regular valley's bird's mouth in plan, in, from the inside corner; x inwards.

    Returned:
        'left' and 'right' (where its sides meet the plates' outer faces), 'heel' and 'toe' on its center line
    """
    half = thickness / 2  # the faces leave the corner at 45 degrees
    return {'left': (-half, half), 'right': (-half, -half), 'heel': (-half, 0.0), 'toe': (seat - half, 0.0)}


def valley_heel(thickness: float, seat: float, words: dict[str, str], title: str) -> Markup:
    """Return the plan, the valley's upper end at the left.

    Given:
        seat   level, from the heel inwards
        words  'seat', 'out', 'plates', 'corner'
    """
    scale = min(THICK_UNITS / thickness, INWARDS * 0.8 / seat)
    points, half = heel_points(thickness, seat), thickness / 2 * scale
    x0, y0 = 36.0 + INWARDS, 19.0 + SPREAD + half

    def at(point: svg.Point) -> svg.Point:
        return x0 - point[0] * scale, y0 - point[1] * scale

    reach = half + SPREAD
    shapes = []
    for side in (1, -1):
        ends = [(x0, y0), (x0 + reach, y0 - side * reach)]
        back = PLATE_IN * scale * DIAGONAL
        plate = [*ends, (ends[1][0] - back, ends[1][1]), (x0 - back, y0)]
        shapes += [svg.hatch(plate, 4.5), svg.path(ends, svg.LINE)]
    board = [(x0 - INWARDS, y0 - half), (x0 + OUTWARDS, y0 - half), (x0 + OUTWARDS, y0 + half), (x0 - INWARDS, y0 + half)]  # fmt: skip
    shapes += [
        svg.shape(board, 0, '#fff'),
        svg.line(board[0], board[1], svg.LINE),
        svg.line(board[3], board[2], svg.LINE),
        svg.line((x0 - INWARDS, y0), (x0 + OUTWARDS, y0), svg.HAIR, CENTER),
        svg.line((x0, y0), at(points['left']), svg.HAIR, '2 1.5'),
        svg.line((x0, y0), at(points['right']), svg.HAIR, '2 1.5'),
        svg.line(at(points['left']), at(points['right']), svg.HEAVY),
        *_lengths(at, points, half, words),
        svg.text(ENDS['ridge'], (x0 - INWARDS - 3, y0 + 2.5), 7, 'end', 700),
        svg.text(ENDS['tail'], (x0 + OUTWARDS + 3, y0 + 2.5), 7, weight=700),
    ]
    return svg.drawing(WIDTH, y0 + half + SPREAD + 19, title, shapes)


def _lengths(
    at: Callable[[svg.Point], svg.Point], points: dict[str, svg.Point], half: float, words: dict[str, str]
) -> list[str]:
    """Return how far the heel stands out, over the board, the seat, under it, and the corner's name."""
    corner, heel, toe = at((0.0, 0.0)), at(points['heel']), at(points['toe'])
    over, under = corner[1] - half - SPREAD - 7, corner[1] + half + SPREAD + 7
    name = (corner[0] - 38, over + 3)
    return [
        svg.line((corner[0], over - 2), corner, svg.HAIR),
        svg.line((heel[0], over - 2), at(points['left']), svg.HAIR),
        svg.arrow((corner[0] - 12, over), (corner[0], over)),
        svg.arrow((heel[0] + 12, over), (heel[0], over)),
        svg.text(words['out'], (heel[0] + 15, over + 3), 8, weight=700),
        svg.line(toe, (toe[0], under + 2), svg.HAIR),
        svg.line(at(points['right']), (heel[0], under + 2), svg.HAIR),
        svg.arrow((toe[0], under), (heel[0], under), both=True),
        svg.text(words['seat'], ((toe[0] + heel[0]) / 2, under + 9), 8, 'middle', 700),
        svg.text(words['corner'], name, 8, 'end'),
        svg.arrow((name[0] + 1.5, name[1] - 2.6), corner),
    ]
