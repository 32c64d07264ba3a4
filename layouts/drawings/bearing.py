"""A rafter on its plate and the tail outside it, to scale, ridge at the left, with every part measured."""

from __future__ import annotations

from collections.abc import Callable
from math import atan, cos, hypot, sin

from markupsafe import Markup

from layouts.drawings import svg
from layouts.words.drawings import ENDS

WIDTH = 241.0
SEAT_UNITS, HIP_SEAT_UNITS, TAIL_UNITS = 118.0, 82.0, 122.0
"""Most that a drawing is high, less its words; that of a hip shares its page with a valley's."""
LETTER = 4.3
"""Width of a letter, on average."""
PLATE_THICK = 1.5
STUB = 2.5
"""Inches of a rafter's underside drawn outside the plate."""
END_WORDS = 26.0
"""Units kept free at either end for the name of it."""
At = Callable[[svg.Point], svg.Point]
"""From inches inwards and upwards of the outside of the plate's top to the drawing's units."""


def seat_points(slope: float, depth: float, seat: float, height: float) -> dict[str, svg.Point]:
    """Return the points of a bird's mouth, in, from the outside of the plate's top; x inwards, y upwards.

    Returned:
        'corner', 'toe' (inner end of the seat), 'foot' (lower end of the heel), 'top' (plumb over the corner),
        'under' (square below the corner, on the underside), 'over' (square above it, on the top edge)
    """
    angle = atan(slope)
    left = height * cos(angle)
    notch = depth - left
    across = (-sin(angle), cos(angle))
    return {
        'corner': (0.0, 0.0),
        'toe': (seat, 0.0),
        'foot': (0.0, height - depth / cos(angle)),
        'top': (0.0, height),
        'under': (-across[0] * notch, -across[1] * notch),
        'over': (across[0] * left, across[1] * left),
    }


def seat_detail(
    slope: float,
    depth: float,
    seat: float,
    height: float,
    words: dict[str, str],
    title: str,
    drop: float = 0.0,
) -> Markup:
    """Return the bird's mouth of a member with its measures.

    Given:
        slope   of the member itself
        height  above plate, plumb
        words   'height', 'seat', 'heel', 'notch', 'left', and 'drop' where there is one; one that is '' is left out
        drop    plumb, in: the line of the roof planes runs so far above the top edge
    """
    points = seat_points(slope, depth, seat, height)
    plumb = depth / cos(atan(slope))
    ends = -7.0, max(7.5, seat + 2)
    tall = height + drop + ends[1] * slope + max(plumb - height + STUB * slope, PLATE_THICK)
    scale = min(11.0, (HIP_SEAT_UNITS if drop else SEAT_UNITS) / tall)
    x0, y0 = WIDTH - 125.0, 6 + (height + ends[1] * slope + drop) * scale

    def at(point: svg.Point) -> svg.Point:
        return x0 - point[0] * scale, y0 - point[1] * scale

    def top(x: float, up: float = 0.0) -> svg.Point:
        return x, height + x * slope + up

    def low(x: float) -> svg.Point:
        return x, height + x * slope - plumb

    plate = _plate(at, max(seat, 1.5))
    shapes = [
        svg.path([at(top(ends[0])), at(top(ends[1]))], svg.LINE),
        svg.path([at(low(ends[1])), at(points['toe'])], svg.LINE),
        svg.path([at(points['foot']), at(low(-STUB))], svg.LINE),
        svg.path([at(points[name]) for name in ('toe', 'corner', 'foot')], svg.HEAVY),
        svg.shape(plate, svg.LINE),
        svg.hatch(plate, 2.8),
        svg.arrow(at(points['corner']), at(points['top']), both=True),
        *_ends(at(top(ends[1])), at(low(ends[1])), at(top(ends[0]))),
    ]
    if drop:
        shapes.append(svg.line(at(top(ends[0], drop)), at(top(ends[1], drop)), svg.LINE, '4 2'))
    shapes += _seat_words(at, points, slope, drop, words)
    if drop:
        tip = at(top(-5.5, drop))
        shapes += _note(words['drop'], tip, (tip[0] + 10, tip[1] - 5), 'start')
    height_units = max(at(low(-STUB))[1], plate[2][1]) + 8
    return svg.drawing(WIDTH, height_units + 6 * bool(words['notch']), title, shapes)


def _seat_words(
    at: At, points: dict[str, svg.Point], slope: float, drop: float, words: dict[str, str]
) -> list[str]:
    """Return the words of a bird's mouth, what lies across the board, and a pointer from each word to its part."""
    corner, foot, top = at(points['corner']), at(points['foot']), at(points['top'])
    under_plate = at((0, -PLATE_THICK))[1]
    shapes = []
    if words['left']:
        over = at(points['over'])
        shapes.append(svg.arrow(corner, over, both=True))
        beside = (over[0] + 26, over[1] + 26 * slope - 6)  # over the top edge, which falls with the slope
        shapes += _note(words['left'], _middle(corner, over), beside, 'start')
    if words['notch']:
        under = at(points['under'])
        shapes.append(svg.line(corner, under, svg.HAIR))
        shapes += _note(words['notch'], _middle(corner, under), (at((-STUB, 0))[0] + 8, foot[1] + 1), 'start')
    over_planes = (top[0] + 12, at((0.0, points['top'][1] + drop))[1] - 6)
    return [
        *shapes,
        *_note(words['height'], (top[0], corner[1] + (top[1] - corner[1]) * 0.7), over_planes, 'start'),
        *_note(words['seat'], at((points['toe'][0] * 0.97, -0.05)), (at(points['toe'])[0] - 16, under_plate + 2), 'end'),
        *_note(words['heel'], (foot[0], corner[1] + (foot[1] - corner[1]) * 0.6), (corner[0] + 16, corner[1] + 2), 'start'),
    ]  # fmt: skip


def tail_points(
    slope: float, depth: float, height: float, overhang: float, face: float
) -> dict[str, svg.Point]:
    """Return the points of a tail's end, in, from the outside of the plate's top; x inwards, y upwards.

    Returned:
        'end' (top edge), 'plumb' (lower end of a plumb cut), 'square' (lower end of a square cut), 'face' (lower
        end of the plumb cut that a level soffit leaves), 'soffit' (inner end of the soffit's cut)
    """
    angle = atan(slope)
    end = (-overhang, height - overhang * slope)
    plumb = depth / cos(angle)
    return {
        'end': end,
        'plumb': (end[0], end[1] - plumb),
        'square': (end[0] + depth * sin(angle), end[1] - depth * cos(angle)),
        'face': (end[0], end[1] - face),
        'soffit': (end[0] + (plumb - face) / slope, end[1] - face),
    }


def tail_detail(
    slope: float,
    depth: float,
    height: float,
    overhang: float,
    face: float,
    words: dict[str, str],
    title: str,
) -> Markup:
    """Return a tail with its plumb cut, its square cut, a level soffit's cut, its overhang and its fall.

    words: 'overhang', 'fall', 'plumb', 'square', 'soffit', 'tail'
    """
    points = tail_points(slope, depth, height, overhang, face)
    plumb, inside = depth / cos(atan(slope)), 5.0
    tall = height + inside * slope - points['plumb'][1] + 3
    words_wide = LETTER * max(len(words['square']), len(words['soffit'])) + 22
    scale = min(8.5, TAIL_UNITS / tall, (WIDTH - 62 - words_wide) / overhang)
    x0, y0 = WIDTH - 62.0 - overhang * scale, 8 + (height + inside * slope) * scale

    def at(point: svg.Point) -> svg.Point:
        return x0 - point[0] * scale, y0 - point[1] * scale

    def low(x: float) -> svg.Point:
        return x, height + x * slope - plumb

    upper, seat = (inside, height + inside * slope), (plumb - height) / slope
    plate = _plate(at, seat)
    shapes = [
        svg.path([at(points['end']), at(upper)], svg.LINE),
        svg.path([at(one) for one in (low(inside), (seat, 0), (0, 0), low(0), points['plumb'])], svg.LINE),
        svg.line(at(points['end']), at(points['plumb']), svg.HEAVY),
        svg.line(at(points['end']), at(points['square']), svg.LINE, '4 2'),
        svg.line(at(points['face']), at(points['soffit']), svg.LINE, '1.5 1.5')
        if points['soffit'][0] > points['face'][0]
        else '',
        svg.shape(plate, svg.LINE),
        svg.hatch(plate, 2.8),
        svg.line(at((0, height)), at((0, points['plumb'][1] - 2)), svg.HAIR, '6 1.5 1 1.5'),
        *_ends(at(upper), at(low(inside)), None),
        *_tail_lengths(at, points, height, words),
    ]
    end, below = at(points['end']), at((0, -5.6))[1]
    target = at((points['end'][0], points['plumb'][1] + depth * 0.12))
    shapes += _note(words['plumb'], target, (end[0] + 16, end[1] + 42), 'start')
    shapes += _note(words['square'], at(points['square']), (x0 - 22, below - 6), 'end')
    middle = _middle(at(points['face']), at(points['soffit']))
    shapes += _note(words['soffit'], middle, (x0 - 22, below + 6), 'end')
    shapes.append(svg.text(ENDS['tail'], (end[0] + 16, end[1] + 56), 7, weight=700))
    return svg.drawing(WIDTH, max(at(points['plumb'])[1] + 21, below + 10), title, shapes)


def _tail_lengths(at: At, points: dict[str, svg.Point], height: float, words: dict[str, str]) -> list[str]:
    """Return overhang, fall and tail, each between what it measures."""
    end, foot, line = at(points['end']), at(points['plumb']), at((0, height))
    level, side = foot[1] + 9, end[0] + 10
    return [
        svg.line(foot, (foot[0], level + 2), svg.HAIR),
        svg.arrow((line[0], level), (end[0], level), both=True),
        svg.text(words['overhang'], ((end[0] + line[0]) / 2, level + 9), 8, 'middle', 700),
        svg.line(line, (side + 2, line[1]), svg.HAIR),
        svg.line(end, (side + 2, end[1]), svg.HAIR),
        svg.arrow((side, line[1]), (side, end[1]), both=True),
        svg.text(words['fall'], (side + 4, (line[1] + end[1]) / 2 + 3), 8, 'start', 700),
        svg.dimension(line, end, 5, words['tail'], 8, weight=700),
    ]


def _plate(at: At, wide: float) -> list[svg.Point]:
    return [at(one) for one in ((0.0, 0.0), (wide, 0.0), (wide, -PLATE_THICK), (0.0, -PLATE_THICK))]


def _ends(upper: svg.Point, lower: svg.Point, tail: svg.Point | None) -> list[str]:
    """Return the names of a board's ends: beside its upper end, between its edges, and beside its lower."""
    named = [svg.text(ENDS['ridge'], (upper[0] - 3, _middle(upper, lower)[1] + 2.5), 7, 'end', 700)]
    return named + ([svg.text(ENDS['tail'], (tail[0] + 3, tail[1] + 10), 7, weight=700)] if tail else [])


def _middle(a: svg.Point, b: svg.Point) -> svg.Point:
    return (a[0] + b[0]) / 2, (a[1] + b[1]) / 2


def _note(words: str, target: svg.Point, words_at: svg.Point, anchor: str) -> list[str]:
    if not words:
        return []
    shift = -1.5 if anchor == 'start' else 1.5
    start = (words_at[0] + shift, words_at[1] - 2.6)
    near = hypot(target[0] - start[0], target[1] - start[1]) < 4
    return [svg.text(words, words_at, 8, anchor), '' if near else svg.arrow(start, target)]
