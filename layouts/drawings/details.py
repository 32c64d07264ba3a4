"""Details of a marked board, to scale: the ridge end, the bird's mouth, and the cut across the top."""

from __future__ import annotations

from math import atan, cos, sin, tan

from markupsafe import Markup

from layouts.drawings import svg

WIDTH, HEIGHT = 117.0, 92.0
TOP = 26.0
BOARD_HEIGHT = 46.0


def ridge_end(
    slope: float, depth: float, shortening: float, words: tuple[str, str, str], title: str
) -> Markup:
    """Return the ridge end of a board with its center line and the cut.

    Given:
        slope       of the member itself
        shortening  level, in; 0 where the cut is on the center line
        words       at the center line, at the cut, the shortening
    """
    angle, scale = atan(slope), BOARD_HEIGHT / depth
    lean = BOARD_HEIGHT * tan(angle)
    start = max(8.0, min(34.0, (WIDTH - lean) / 2 - 14))
    center = [(start, TOP), (start + lean, TOP + BOARD_HEIGHT)]
    back = shortening / cos(angle) * scale
    cut = [(x + back, y) for x, y in center]
    shapes = [*_board(), svg.line(*cut, svg.HEAVY)]
    if shortening:
        shapes.append(svg.line(*center, svg.HAIR, '5 1.5 1 1.5'))
        at = (start + lean * 0.5, TOP + BOARD_HEIGHT * 0.5)
        reach = shortening * scale
        level = (cos(angle), -sin(angle))
        near = (at[0] - level[0] * 11, at[1] - level[1] * 11)
        far = (at[0] + level[0] * (reach + 11), at[1] + level[1] * (reach + 11))
        tip = (at[0] + level[0] * reach, at[1] + level[1] * reach)
        shapes += [
            svg.arrow(near, at),
            svg.arrow(far, tip),
            svg.text(words[2], (far[0] + 2, far[1] + 3), 8.5, 'start', 700),
        ]
        shapes += [
            svg.text(words[0], (start - 4, TOP - 13), 7.5),
            svg.line((start, TOP - 11), (start, TOP), svg.HAIR),
        ]
    cut_foot = cut[1]
    shapes.append(svg.text(words[1], (min(cut_foot[0], WIDTH - 22), TOP + BOARD_HEIGHT + 10), 7.5, 'middle'))
    return svg.drawing(WIDTH, HEIGHT, title, shapes)


def birds_mouth(slope: float, depth: float, seat: float, words: tuple[str, str, str], title: str) -> Markup:
    """Return the bird's mouth on a board.

    Given:
        seat   level, in
        words  at the plate's plumb line, the heel, the seat
    """
    angle, scale = atan(slope), BOARD_HEIGHT / depth
    lean = BOARD_HEIGHT * tan(angle)
    start = max(18.0, (WIDTH - lean) / 2)
    above = depth / cos(angle) - seat * slope
    corner = (start + above * sin(angle) * scale, TOP + above * cos(angle) * scale)
    toe = (corner[0] - seat * cos(angle) * scale, corner[1] + seat * sin(angle) * scale)
    foot = (start + lean, TOP + BOARD_HEIGHT)
    notch = [toe, corner, foot]
    shapes = [
        *_board(),
        svg.line((start, TOP), corner, svg.HAIR, '3 2'),
        svg.shape(notch, 0, '#fff'),
        svg.hatch(notch, 2.6),
        svg.path(notch, svg.HEAVY),
        svg.text(words[0], (start, TOP - 13), 7.5, 'middle'),
        svg.line((start, TOP - 11), (start, TOP), svg.HAIR),
        svg.text(words[1], ((corner[0] + foot[0]) / 2 + 5, (corner[1] + foot[1]) / 2 + 1), 8.5, 'start', 700),
        svg.text(words[2], ((corner[0] + toe[0]) / 2 - 4, (corner[1] + toe[1]) / 2 - 3), 8.5, 'end', 700),
    ]
    return svg.drawing(WIDTH, HEIGHT, title, shapes)


def top_cut(from_edge_degrees: float, double: bool, words: tuple[str, str], title: str) -> Markup:
    """Return a board's top face with the cut across it, on one cheek or to a point on two.

    Given:
        from_edge_degrees  from the long edge; the two cheeks of a hip mirror one another
        words              the angle, and what is right of the cut
    """
    breadth, x0 = 30.0, 26.0
    turn = from_edge_degrees * 3.14159265 / 180
    y0 = TOP + 6
    half = breadth / 2 if double else breadth
    run = half / tan(turn)
    upper, lower = (x0 + run, y0), (x0 + (run if double else 0), y0 + breadth)
    point = (x0, y0 + breadth / 2) if double else (x0, y0 + breadth)
    end = [upper, point, lower] if double else [upper, point]
    shapes = [
        svg.path([(WIDTH, y0), *end, (WIDTH, y0 + breadth)], svg.LINE),
        svg.path(end, svg.HEAVY),
        svg.line(point, (WIDTH if double else point[0] - 14, point[1]), svg.HAIR, '3 2'),
        svg.arc(upper, 15, 180 + from_edge_degrees, 180, svg.HAIR)
        if double
        else svg.arc(point, 15, 0, from_edge_degrees),
    ]
    if double:
        shapes += [
            svg.line((upper[0] - 18, y0), upper, svg.HAIR, '2 1.5'),
            svg.text(words[0], (upper[0] - 8, y0 - 4), 8.5, 'middle', 700),
        ]
    else:
        shapes.append(svg.text(words[0], (x0 + 17, y0 + breadth - 5), 8.5, 'start', 700))
    shapes.append(svg.text(words[1], (WIDTH - 2, y0 + breadth + 11), 7.5, 'end'))
    return svg.drawing(WIDTH, HEIGHT - 6, title, shapes)


def _board() -> list[str]:
    return [
        svg.line((0, TOP), (WIDTH, TOP), svg.LINE),
        svg.line((0, TOP + BOARD_HEIGHT), (WIDTH, TOP + BOARD_HEIGHT), svg.LINE),
    ]
