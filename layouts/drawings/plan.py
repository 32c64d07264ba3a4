"""Members meeting in plan: what comes off for their thickness, and the two points of a jack; to scale."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from math import cos, radians, sin

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from tablegen.geometry import corner
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.units import INCHES

PANEL, HEIGHT = 76.0, 104.0
REACH_IN = 2.6
"""Half of what is shown, in thicknesses of the thickest member."""
POINTS_WIDTH, POINTS_HEIGHT = 241.0, 136.0
CENTER = '6 1.5 1 1.5'
DIAGONAL = float(corner.hip_run(Fraction(1), pitch_of_rise(INCHES.unit_run).corner))
"""Along a regular hip in plan, for one of common run."""


class PlanLabels(Struct, frozen=True):
    """Names above the three panels, and the three deductions."""

    title: str
    names: tuple[str, str, str]
    figures: tuple[str, str, str]


def meeting(point: svg.Point, direction: float, on: svg.Point, way: float) -> svg.Point:
    """Return where a line through a point meets another; directions in degrees from the right, y upwards."""
    dx, dy, ex, ey = *_unit(direction), *_unit(way)
    across = dx * ey - dy * ex
    reach = ((on[0] - point[0]) * ey - (on[1] - point[1]) * ex) / across
    return point[0] + dx * reach, point[1] + dy * reach


def edges(point: svg.Point, direction: float, thickness: float) -> tuple[svg.Point, svg.Point]:
    """Return a point on the left and on the right edge of a member, looking along it."""
    dx, dy = _unit(direction)
    half = thickness / 2
    return (point[0] - dy * half, point[1] + dx * half), (point[0] + dy * half, point[1] - dx * half)


def cut_member(
    thickness: float, direction: float, met: float, met_direction: float, length: float
) -> tuple[svg.Point, ...]:
    """Return a member that ends against the near face of another whose center line passes the origin, inches.

    Given:
        direction      of the member, towards what it meets, its center line aimed at the origin
        met            thickness of what it meets
        met_direction  so turned that the member comes from its right-hand side

    Returned:
        far left, near left, where its center line meets the face, near right, far right
    """
    face = edges((0.0, 0.0), met_direction, met)[1]
    left, right = edges((0.0, 0.0), direction, thickness)
    far = [(x - _unit(direction)[0] * length, y - _unit(direction)[1] * length) for x, y in (left, right)]
    near = [meeting(at, direction, face, met_direction) for at in (left, (0.0, 0.0), right)]
    return far[0], *near, far[1]


def shortening_plan(ridge: float, hip: float, rafter: float, labels: PlanLabels) -> Markup:
    """Return three panels: a common at a ridge, a hip at a ridge, a jack at a hip, with what comes off."""
    scale = PANEL / (2 * REACH_IN * max(ridge, hip, rafter))
    reach = PANEL / 2 / scale
    shapes = []
    for place, (met, met_way, own, way, hand) in enumerate(
        ((ridge, 90, rafter, 180, 1), (ridge, 0, hip, 45, -1), (hip, 45, rafter, 90, -1))
    ):
        x0, y0 = PANEL / 2 + place * (PANEL + 6.5), 54.0

        def at(point: svg.Point, x0: float = x0, y0: float = y0, hand: int = hand) -> svg.Point:
            return x0 + hand * point[0] * scale, y0 - point[1] * scale

        long = reach if way != 45 else reach * 1.25
        outline = cut_member(own, way, met, met_way, long)
        through = [edges(_along(met_way, out), met_way, met) for out in (-reach, reach)]
        strip = [through[0][0], through[1][0], through[1][1], through[0][1]]
        far, near = (0.0, 0.0), outline[2]
        shapes += [
            svg.shape([at(one) for one in strip], svg.LINE, '#fff'),
            svg.shape(
                [at(one) for one in (outline[0], outline[1], outline[3], outline[4])], svg.LINE, '#fff'
            ),
            svg.line(at(_along(met_way, -reach)), at(_along(met_way, reach)), svg.HAIR, CENTER),
            svg.line(at(_along(way, -long)), at(far), svg.HAIR, CENTER),
            svg.line(at(far), at(near), 2.2),
            svg.dot(at(far), 1.7),
            svg.dot(at(near), 1.7, '#fff'),
            svg.text(labels.names[place], (x0, 8), 8, 'middle', 700),
            svg.text(labels.figures[place], (x0, HEIGHT - 2), 9, 'middle', 700),
        ]
    return svg.drawing(3 * PANEL + 13, HEIGHT, labels.title, shapes)


def jack_points(hip: float, rafter: float, words: Mapping[str, svg.Words], title: str) -> Markup:
    """Return a jack against a hip in plan, with its long point, its short point and its center line; ridge at the left.

    words: 'long', 'short' (point), 'off' (what comes off), 'hip' (its center line), 'corner' (towards it)
    """
    scale = 66 / (2 * max(hip, rafter) + rafter)
    x0, y0 = POINTS_WIDTH - 96.0, 50.0

    def at(point: svg.Point) -> svg.Point:
        return x0 - point[0] * scale, y0 - point[1] * scale

    low = 74 / scale
    outline = cut_member(rafter, 90, hip, 45, low)
    ends = [edges(_along(45, out), 45, hip) for out in (-66 / scale, 54 / scale)]
    strip = [ends[0][0], ends[1][0], ends[1][1], ends[0][1]]
    short, center, long = outline[1:4]
    left = at((rafter / 2, 0))[0] - 8
    corner = POINTS_WIDTH - 19
    shapes = [
        svg.shape([at(one) for one in strip], svg.LINE, '#fff'),
        svg.shape([at(one) for one in (outline[0], short, long, outline[4])], svg.HEAVY, '#fff'),
        svg.line(at(_along(45, -66 / scale)), at(_along(45, 54 / scale)), svg.HAIR, CENTER),
        svg.line(at((0, -low)), at((0, 0)), svg.HAIR, CENTER),
        svg.line(at((0, 0)), at(center), 2.2),
        svg.dot(at((0, 0)), 1.8),
        svg.dot(at(center), 1.8, '#fff'),
        svg.dot(at(long), 1.8),
        svg.dot(at(short), 1.8),
        svg.text(words['long'], (left - 6, at(long)[1] + 12), 8, 'end', 700),
        svg.arrow((left - 4, at(long)[1] + 9), (at(long)[0] - 2, at(long)[1] + 1)),
        svg.text(words['short'], (at(short)[0] + 4, at(short)[1] + 50), 8, weight=700),
        svg.arrow((at(short)[0] + 12, at(short)[1] + 41), (at(short)[0] + 1, at(short)[1] + 2.5)),
        svg.text(words['off'], (left - 6, at(center)[1] + 16), 8, 'end'),
        svg.arrow((left - 4, at(center)[1] + 13), at((0, center[1] * 0.55))),
        svg.text(words['hip'], (x0 + 36, 14), 8),
        svg.arrow((x0 + 34, 12), at(_along(45, 12 / scale))),
        svg.text(words['corner'], (corner + 17, POINTS_HEIGHT - 14), 8, 'end'),
        svg.arrow((corner - 9, POINTS_HEIGHT - 34), (corner, POINTS_HEIGHT - 24)),
    ]
    return svg.drawing(POINTS_WIDTH, POINTS_HEIGHT, title, shapes)


def _unit(direction: float) -> svg.Point:
    return cos(radians(direction)), sin(radians(direction))


def _along(direction: float, out: float) -> svg.Point:
    dx, dy = _unit(direction)
    return dx * out, dy * out
