"""A hip cut square across: its top backed into both roof planes, and its square top dropped under them."""

from __future__ import annotations

from math import radians, tan

from markupsafe import Markup

from layouts.drawings import svg

WIDTH, HEIGHT = 241.0, 112.0
THICK_UNITS = 46.0
PLANE_UNITS = 26.0
"""How far a roof plane is drawn past the hip's side."""


def edge_depth(thickness: float, bevel_degrees: float) -> float:
    """Return how far the roof planes are below their meeting line at a hip's side, square to its edge."""
    return thickness / 2 * tan(radians(bevel_degrees))


def hip_section(
    thickness: float, bevel_degrees: float, words: tuple[str, str, str, str], title: str
) -> Markup:
    """Return both ways to fit a hip under two planes of one pitch.

    words: backed, its angle, dropped, how much (square to the edge)
    """
    scale = THICK_UNITS / thickness
    down = edge_depth(thickness, bevel_degrees) * scale
    half, base = THICK_UNITS / 2, HEIGHT - 16
    rise = tan(radians(bevel_degrees))
    y0 = 22.0
    shapes = []
    for x0, top in ((60.0, [(-half, down), (0, 0), (half, down)]), (170.0, [(-half, down), (half, down)])):
        outline = [(x0 - half, base), *((x0 + x, y0 + y) for x, y in top), (x0 + half, base)]
        side = half + PLANE_UNITS
        plane = [(x0 - side, y0 + side * rise), (x0, y0), (x0 + side, y0 + side * rise)]
        inside = [(x0 - half, base), (x0 - half, y0 + down), (x0 + half, y0 + down), (x0 + half, base)]
        shapes += [svg.hatch(inside, 4), svg.path(outline, svg.HEAVY), svg.path(plane, svg.LINE)]
    left, right = 60.0, 170.0
    shapes += [
        svg.line((left, y0), (left + half + 22, y0), svg.HAIR, '3 2'),
        svg.arc((left, y0), half + 14, -bevel_degrees, 0),
        svg.text(words[1], (left + half + 18, y0 + down * 0.5 + 5), 9, weight=700),
        svg.text(words[0], (left, HEIGHT - 4), 8, 'middle'),
        svg.line((right, y0), (right + half + 32, y0), svg.HAIR, '3 2'),
        svg.line((right + half, y0 + down), (right + half + 32, y0 + down), svg.HAIR, '3 2'),
        svg.arrow((right + half + 29, y0 - 9), (right + half + 29, y0)),
        svg.arrow((right + half + 29, y0 + down + 9), (right + half + 29, y0 + down)),
        svg.text(words[3], (right + half + 29, y0 - 12), 9, 'middle', 700),
        svg.text(words[2], (right, HEIGHT - 4), 8, 'middle'),
    ]
    return svg.drawing(WIDTH, HEIGHT, title, shapes)
