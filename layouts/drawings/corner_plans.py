"""Plans of corners that are not regular: two pitches at a square corner, and a roof of many sides; to scale."""

from __future__ import annotations

from math import cos, pi, radians, sin, tan

from markupsafe import Markup

from layouts.drawings import svg

WIDTH, HEIGHT = 241.0, 150.0
POLYGON = 150.0
CENTER = '6 1.5 1 1.5'


def eave_corner(plan_a: float, overhang_a: float) -> svg.Point:
    """Return where the eave lines meet, in, from the plates' corner: eave A below it, eave B left of it.

    Given:
        plan_a        deg, plan angle from eave A to the hip
        overhang_a  level
    """
    return -overhang_a / tan(radians(plan_a)), -overhang_a


def unequal_plan(plan_a: float, words: dict[str, str], title: str) -> Markup:
    """Return the corner of two pitches, seen from above: A's plates along the bottom, B's up the right, ridge left.

    words: 'a', 'b' (names of the sides), 'plan' (the angle), 'half' (the 45-degree line), 'out_a', 'out_b'
    """
    overhang, size, spacing = 14.0, 84.0, 14.0
    x, y = eave_corner(plan_a, overhang)
    scale = 122 / (size - y)
    x0, y0 = WIDTH - 50.0, HEIGHT - 16 + y * scale

    def at(px: float, py: float) -> svg.Point:
        """Return a point by its distance along eave A and along eave B."""
        return x0 - px * scale, y0 - py * scale

    rise = tan(radians(plan_a))
    end = min(size, size / rise)
    far = at(size, 0)[0]
    shapes = [
        svg.line(at(0, 0), at(size, 0), svg.LINE),
        svg.line(at(0, 0), at(0, size), svg.LINE),
        svg.path([at(x, size), at(x, y), at(size, y)], svg.LINE),
    ]
    step = spacing
    while step < size:
        if step * rise < size:
            shapes.append(svg.line(at(step, y), at(step, step * rise), svg.HAIR))
        if step / rise < size:
            shapes.append(svg.line(at(x, step), at(step / rise, step), svg.HAIR))
        step += spacing
    shapes += [
        svg.line(at(0, 0), at(size, size), svg.HAIR, '3 2'),
        svg.line(at(x, y), at(end, end * rise), 1.8),
        svg.arc(at(0, 0), 40, 180 - plan_a, 180, svg.LINE),
        svg.text(words['plan'], (at(end, 0)[0] - 4, at(0, 20)[1]), 9, 'end', 700),
        svg.text(words['half'], (at(size, size)[0] - 2, at(size, size)[1] + 6), 8, 'end'),
        svg.text(words['a'], (far - 6, at(0, 8)[1]), 8, 'end', 700),
        svg.text(words['b'], (at(x, 0)[0] + 4, at(0, size)[1] + 6), 8, weight=700),
        svg.arrow((far - 2, at(0, y)[1]), (far - 2, at(0, 0)[1]), both=True),
        svg.text(words['out_a'], (far - 6, at(0, y * 0.5)[1] + 3), 8, 'end'),
        svg.arrow((at(x, 0)[0], at(0, y)[1] + 5), (at(0, 0)[0], at(0, y)[1] + 5), both=True),
        svg.text(words['out_b'], (at(x, 0)[0], at(0, y)[1] + 14), 8, 'end'),
    ]
    return svg.drawing(WIDTH, HEIGHT, title, shapes)


def polygon_corners(sides: int, apothem: float) -> list[svg.Point]:
    """Return the corners of a regular plan about the origin, its first side level and below, y upwards."""
    radius = apothem / cos(pi / sides)
    first = -pi / 2 - pi / sides
    return [
        (radius * cos(first + 2 * pi * n / sides), radius * sin(first + 2 * pi * n / sides))
        for n in range(sides)
    ]


def polygon_plan(sides: int, words: dict[str, str], title: str) -> Markup:
    """Return a many-sided roof from above.

    words: 'apothem', 'side', 'hip', 'jack', 'corner'
    """
    apothem = 58.0
    corners = polygon_corners(sides, apothem)
    x0, y0 = 66.0, 66.0

    def at(point: svg.Point) -> svg.Point:
        return x0 + point[0], y0 - point[1]

    shapes = [svg.shape([at(one) for one in corners], svg.LINE)]
    shapes += [
        svg.line(at((0, 0)), at(one), svg.HEAVY if n == 1 else svg.LINE) for n, one in enumerate(corners)
    ]
    left, right = corners[0], corners[1]
    side = right[0] - left[0]
    half = tan(pi / sides)
    for share in (0.25, 0.75):
        x = left[0] + side * share
        shapes.append(svg.line(at((x, -apothem)), at((x, -abs(x) / half)), svg.HAIR))
    shapes += [
        svg.line(at((0, 0)), at((0, -apothem)), svg.LINE, '4 2'),
        svg.dot(at((0, 0)), 1.6),
    ]
    level = at(left)[1] + 6
    shapes += [
        svg.arrow((at(left)[0], level), (at(right)[0], level), both=True),
        svg.text(words['side'], (x0, level + 9), 8, 'middle', 700),
    ]

    def note(key: str, target: svg.Point, y: float) -> None:
        shapes.append(svg.text(words[key], (146, y), 8))
        shapes.append(svg.arrow((144, y - 2.6), at(target)))

    note('hip', (right[0] * 0.55, right[1] * 0.55), 66)
    note('apothem', (0, -apothem * 0.7), 84)
    note('jack', (right[0] * 0.5, -apothem * 0.9), 102)
    note('corner', corners[2], 48)
    return svg.drawing(241, POLYGON - 6, title, shapes)
