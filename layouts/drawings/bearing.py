"""A rafter on its plate and the tail outside it, to scale, with every part measured; the ridge is to the left."""

from __future__ import annotations

from math import atan, cos, hypot, sin

from markupsafe import Markup

from layouts.drawings import svg

WIDTH = 241.0
SEAT_UNITS, TAIL_UNITS = 118.0, 128.0
"""Most that a drawing is high, less its words."""
LETTER = 4.3
"""Width of a letter, on average."""
PLATE_THICK = 1.5
STUB = 2.5
"""Inches of a rafter's underside drawn outside the plate."""


def seat_points(slope: float, depth: float, seat: float, height: float) -> dict[str, svg.Point]:
    """Return the points of a bird's mouth, in, from the outside of the plate's top; y upwards.

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
    angle = atan(slope)
    ends = -7.0, max(8.0, seat + 2)
    tall = height + drop + ends[1] * slope + max(depth / cos(angle) - height + STUB * slope, PLATE_THICK)
    scale = min(11.0, SEAT_UNITS / tall)
    x0, y0 = WIDTH - 105.0, 4 + (height + ends[1] * slope + drop) * scale

    def at(point: svg.Point) -> svg.Point:
        return x0 - point[0] * scale, y0 - point[1] * scale

    def top(x: float, up: float = 0.0) -> svg.Point:
        return x, height + x * slope + up

    def low(x: float) -> svg.Point:
        return x, height + x * slope - depth / cos(angle)

    outline = [
        top(ends[0]),
        top(ends[1]),
        low(ends[1]),
        points['toe'],
        (0.0, 0.0),
        points['foot'],
        low(-STUB),
    ]
    plate = [(0.0, 0.0), (max(seat, 1.5), 0.0), (max(seat, 1.5), -PLATE_THICK), (0.0, -PLATE_THICK)]
    plate = [at(one) for one in plate]
    shapes = [
        svg.path([at(one) for one in (outline[0], outline[1])], svg.LINE),
        svg.path([at(one) for one in outline[2:]], svg.LINE),
        svg.path([at(points[name]) for name in ('toe', 'corner', 'foot')], svg.HEAVY),
        svg.shape(plate, svg.LINE),
        svg.hatch(plate, 2.8),
        svg.arrow(at(points['corner']), at(points['top']), both=True),
    ]
    reach = max(at((ends[1], 0))[0] - 4, LETTER * len(words['height']))
    if drop:
        shapes.append(svg.line(at(top(ends[0], drop)), at(top(ends[1], drop)), svg.LINE, '4 2'))
        shapes += _note(words['drop'], at(top(4.6, drop * 1.0)), (reach, at(top(2.2))[1]), 'end')
    if words['left']:
        shapes.append(svg.arrow(at(points['corner']), at(points['over']), both=True))
        middle = tuple(sum(pair) / 2 for pair in zip(points['corner'], points['over'], strict=True))
        shapes += _note(
            words['left'],
            at(middle),
            (at(points['over'])[0] + 26, at(points['over'])[1] + 26 * slope - 6),
            'start',
        )
    if words['notch']:
        shapes.append(svg.line(at(points['corner']), at(points['under']), svg.HAIR))
        middle = tuple(sum(pair) / 2 for pair in zip(points['corner'], points['under'], strict=True))
        shapes += _note(
            words['notch'], at(middle), (at((-STUB, 0))[0] + 6, at(points['foot'])[1] + 1), 'start'
        )
    shapes += _note(words['height'], at((0, height * 0.55)), (reach, at((0, height * 0.9))[1] + 12), 'end')
    shapes += _note(
        words['seat'],
        at((seat * 0.97, -0.05)),
        (at((seat, 0))[0] - 16, at((0, -PLATE_THICK))[1] + 2),
        'end',
    )
    shapes += _note(
        words['heel'], at((0, points['foot'][1] * 0.6)), (at((0, 0))[0] + 16, at((0, 0))[1] + 2), 'start'
    )
    height_units = max(at(low(-STUB))[1], at((0, -PLATE_THICK))[1]) + 8
    return svg.drawing(WIDTH, height_units + 6 * bool(words['notch']), title, shapes)


def tail_points(
    slope: float, depth: float, height: float, overhang: float, face: float
) -> dict[str, svg.Point]:
    """Return the points of a tail's end, in, from the outside of the plate's top; y upwards.

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
    angle = atan(slope)
    inside = 5.0
    tall = height + inside * slope - points['plumb'][1] + 3
    scale = min(8.5, TAIL_UNITS / tall, 150 / (overhang + inside))
    x0, y0 = WIDTH - 78.0 - overhang * scale, 6 + (height + inside * slope) * scale

    def at(point: svg.Point) -> svg.Point:
        return x0 - point[0] * scale, y0 - point[1] * scale

    def low(x: float) -> svg.Point:
        return x, height + x * slope - depth / cos(angle)

    seat = (depth / cos(angle) - height) / slope
    plate = [at(one) for one in ((0.0, 0.0), (seat, 0.0), (seat, -PLATE_THICK), (0.0, -PLATE_THICK))]
    body = [points['end'], (inside, height + inside * slope), low(inside), (seat, 0.0), (0.0, 0.0), low(0.0)]
    level = at(points['plumb'])[1] + 9
    side = at(points['end'])[0] + 10
    shapes = [
        svg.path([at(one) for one in body[:2]], svg.LINE),
        svg.path([at(one) for one in (*body[2:], points['plumb'])], svg.LINE),
        svg.line(at(points['end']), at(points['plumb']), svg.HEAVY),
        svg.line(at(points['end']), at(points['square']), svg.LINE, '4 2'),
        svg.line(at(points['face']), at(points['soffit']), svg.LINE, '1.5 1.5')
        if points['soffit'][0] > points['face'][0]
        else '',
        svg.shape(plate, svg.LINE),
        svg.hatch(plate, 2.8),
        svg.line(at((0, height)), at((0, points['plumb'][1] - 2)), svg.HAIR, '6 1.5 1 1.5'),
        svg.line(at(points['plumb']), (at(points['plumb'])[0], level + 2), svg.HAIR),
        svg.arrow((at(points['end'])[0], level), (at((0, 0))[0], level), both=True),
        svg.text(
            words['overhang'], ((at(points['end'])[0] + at((0, 0))[0]) / 2, level + 9), 8, 'middle', 700
        ),
        svg.line(at((0, height)), (side + 2, at((0, height))[1]), svg.HAIR),
        svg.line(at(points['end']), (side + 2, at(points['end'])[1]), svg.HAIR),
        svg.arrow((side, at((0, height))[1]), (side, at(points['end'])[1]), both=True),
        svg.text(
            words['fall'], (side + 4, (at((0, height))[1] + at(points['end'])[1]) / 2 + 3), 8, 'start', 700
        ),
    ]
    foot = at(points['end'])[1]
    shapes += _note(
        words['plumb'],
        at((points['end'][0], points['plumb'][1] + depth * 0.12)),
        (side + 6, foot + 42),
        'start',
    )
    middle = tuple(sum(pair) / 2 for pair in zip(points['face'], points['soffit'], strict=True))
    left, base = at((0, 0))[0] - 12, min(at((0, -5.6))[1], level - 12)
    shapes += _note(words['square'], at(points['square']), (left, base - 6), 'end')
    shapes += _note(words['soffit'], at(middle), (left, base + 6), 'end')
    along = (at((0, height)), at(points['end']))
    shapes.append(svg.dimension(*along, 9, words['tail'], 8, weight=700, share=0.7))
    return svg.drawing(WIDTH, max(level + 12, at((0, -5.6))[1] + 10), title, shapes)


def _note(words: str, target: svg.Point, words_at: svg.Point, anchor: str) -> list[str]:
    if not words:
        return []
    shift = -1.5 if anchor == 'start' else 1.5
    start = (words_at[0] + shift, words_at[1] - 2.6)
    near = hypot(target[0] - start[0], target[1] - start[1]) < 4
    return [svg.text(words, words_at, 8, anchor), '' if near else svg.arrow(start, target)]
