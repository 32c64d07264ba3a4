"""Details of a marked board, to scale: the ridge end, the bird's mouth, and the cut across the top."""

from __future__ import annotations

from math import atan, cos, radians, sin, tan

from markupsafe import Markup

from layouts.drawings import svg
from layouts.drawings.marked_board import ENDS, ends_named

WIDTH, HEIGHT = 117.0, 92.0
LEFT, RIGHT = 9.0, WIDTH - 11.0
"""Where the board is broken off; its ends' names stand outside."""
OFF = 4.5
"""How far beside what it measures an arrow lies."""
TOP = 26.0
BOARD_HEIGHT = 46.0


def ridge_end(
    slope: float,
    depth: float,
    shortening: float,
    words: tuple[str, str, str],
    title: str,
    head: str = ENDS['ridge'],
) -> Markup:
    """Return the ridge end of a board with its center line and the cut.

    Given:
        slope       of the member itself
        shortening  level, in; 0 where the cut is on the center line
        words       at the center line, at the cut, the shortening
        head        what stands at the board's upper end
    """
    angle, scale = atan(slope), BOARD_HEIGHT / depth
    lean = BOARD_HEIGHT * tan(angle)
    start = max(8.0, min(34.0, (WIDTH - lean) / 2 - 14))
    center = [(start, TOP), (start + lean, TOP + BOARD_HEIGHT)]
    back = shortening / cos(angle) * scale
    cut = [(x + back, y) for x, y in center]
    shapes = [*_board(head), svg.line(*cut, svg.HEAVY)]
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


def birds_mouth(
    slope: float,
    depth: float,
    seat: float,
    words: tuple[str, str, str],
    title: str,
    head: str = ENDS['ridge'],
) -> Markup:
    """Return the bird's mouth on a board.

    Given:
        seat   level, in
        words  at the plate's plumb line, the heel, the seat
        head   what stands at the board's upper end
    """
    angle, scale = atan(slope), BOARD_HEIGHT / depth
    lean = BOARD_HEIGHT * tan(angle)
    start = max(LEFT + 4, (LEFT + RIGHT - lean) / 2)
    above = depth / cos(angle) - seat * slope
    corner = (start + above * sin(angle) * scale, TOP + above * cos(angle) * scale)
    toe = (corner[0] - seat * cos(angle) * scale, corner[1] + seat * sin(angle) * scale)
    foot = (start + lean, TOP + BOARD_HEIGHT)
    notch = [toe, corner, foot]
    shapes = [
        *_board(head),
        svg.line((start, TOP), corner, svg.HAIR, '3 2'),
        svg.shape(notch, 0, '#fff'),
        svg.hatch(notch, 2.6),
        svg.path(notch, svg.HEAVY),
        svg.text(words[0], (max(start, 20.0), TOP - 13), 7.5, 'middle'),
        svg.line((start, TOP - 11), (start, TOP), svg.HAIR),
        *_beside(corner, foot, (OFF * cos(angle), -OFF * sin(angle)), words[1]),
        *_beside(toe, corner, (-OFF * sin(angle), -OFF * cos(angle)), words[2]),
    ]
    return svg.drawing(WIDTH, HEIGHT, title, shapes)


def top_cut(
    from_square_degrees: float,
    double: bool,
    words: tuple[str, str],
    title: str,
    head: str = ENDS['ridge'],
) -> Markup:
    """Return a board's top edge with the cut across it, on one cheek or to a point on two.

    Given:
        from_square_degrees  between the cut and the line square across; the two cheeks of a hip mirror one another
        words                the angle, and what is right of the cut
        head                 what stands at the board's upper end
    """
    x0, y0 = 46.0, TOP + 6
    slant = tan(radians(from_square_degrees))
    breadth = min(30.0, (RIGHT - 8 - x0) / slant * (2 if double else 1))
    half = breadth / 2 if double else breadth
    point, upper = (x0, y0 + half), (x0 + half * slant, y0)
    end = [upper, point, (upper[0], y0 + breadth)] if double else [upper, point]
    reach = half + 7
    shapes = [
        svg.path([(RIGHT, y0), *end, (RIGHT, y0 + breadth)], svg.LINE),
        svg.path(end, svg.HEAVY),
        svg.line(point, (x0, y0 - 7), svg.HAIR, '2 1.5'),
        svg.arc(point, reach, 90 - from_square_degrees, 90),
        svg.arrow_head(_out(point, reach, 90 - from_square_degrees), -from_square_degrees),
        svg.text(words[0], (x0 - 4, y0 + 3), 8.5, 'end', 700),
        svg.text(words[1], (RIGHT, y0 + breadth + 11), 7.5, 'end'),
        *ends_named((LEFT, RIGHT), y0 + breadth / 2, head),
    ]
    if double:
        shapes.append(svg.line(point, (RIGHT, point[1]), svg.HAIR, '3 2'))
    return svg.drawing(WIDTH, HEIGHT - 6, title, shapes)


def _beside(a: svg.Point, b: svg.Point, off: svg.Point, words: str) -> list[str]:
    """Return an arrow between two points, drawn so far off, its words on the side that it is off to.

    Beside a steep heel they stand high, where there is room before the tail's name.
    """
    c, d = ((x + off[0], y + off[1]) for x, y in (a, b))
    right = off[0] > 0
    slope = (d[0] - c[0]) / (d[1] - c[1]) if right else 0.0
    y = c[1] - off[1] + min((d[1] - c[1]) / 2 + 3, 4 / slope) if right else (c[1] + d[1]) / 2 - 1
    y = min(y, TOP + BOARD_HEIGHT - 2)
    x = c[0] + (y - c[1]) * slope + 3 if right else (c[0] + d[0]) / 2 - 2.5
    return [
        svg.line(a, c, svg.HAIR),
        svg.line(b, d, svg.HAIR),
        svg.arrow(c, d, both=True),
        svg.text(words, (x, y), 8.5, 'start' if right else 'end', 700),
    ]


def _out(at: svg.Point, radius: float, direction: float) -> svg.Point:
    return at[0] + radius * cos(radians(direction)), at[1] - radius * sin(radians(direction))


def _board(head: str) -> list[str]:
    return [
        svg.line((LEFT, TOP), (RIGHT, TOP), svg.LINE),
        svg.line((LEFT, TOP + BOARD_HEIGHT), (RIGHT, TOP + BOARD_HEIGHT), svg.LINE),
        *ends_named((LEFT, RIGHT), TOP + BOARD_HEIGHT / 2, head),
    ]
