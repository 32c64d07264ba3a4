"""Reading a drawing back: the lines, outlines, dots and words of an image, by a parser of our own."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from collections.abc import Sequence
from math import atan2, degrees, hypot
from urllib.parse import unquote

from msgspec import Struct

SVG = '{http://www.w3.org/2000/svg}'
TOUCH = 0.03
"""Units: ends that are one point."""
INK = 0.011
"""Units: points are written to hundredths, so that a distance may be off by this much."""
Point = tuple[float, float]


class Stroke(Struct, frozen=True):
    """Points joined by ink; a closed one ends where it began."""

    points: tuple[Point, ...]
    width: float
    fill: str
    dashed: bool

    @property
    def length(self) -> float:
        return distance(self.points[0], self.points[-1])

    @property
    def direction(self) -> float:
        """Return the direction from its first point to its last, in degrees, anticlockwise from the right."""
        return direction(self.points[0], self.points[-1])


class Drawn(Struct, frozen=True):
    """What is on a drawing; x to the right and y down, in units."""

    width: float
    height: float
    strokes: tuple[Stroke, ...]
    dots: tuple[Point, ...]
    words: dict[str, Point]

    def lines(self, width: float, dashed: bool = False) -> list[Stroke]:
        """Return straight open lines of one width of ink."""
        return [s for s in self.strokes if len(s.points) == 2 and (s.width, s.dashed) == (width, dashed)]

    def outlines(self, width: float) -> list[Stroke]:
        """Return what has more than two points."""
        return [stroke for stroke in self.strokes if len(stroke.points) > 2 and stroke.width == width]


def read(markup: str) -> Drawn:
    """Return what is on a drawing that stands on a page as an image."""
    root = ET.fromstring(unquote(re.search(r'data:image/svg\+xml,([^"]*)"', markup)[1]))
    width, height = (float(root.get(side)) for side in ('width', 'height'))
    assert root.get('viewBox') == f'0 0 {root.get("width")} {root.get("height")}'
    return Drawn(width, height, tuple(strokes(root)), tuple(dots(root)), words(root))


def strokes(root: ET.Element) -> list[Stroke]:
    found = []
    for node in root:
        width = float(node.get('stroke-width', 0))
        dashed = node.get('stroke-dasharray') is not None
        if node.tag == f'{SVG}line':
            x1, y1, x2, y2 = (float(node.get(name)) for name in ('x1', 'y1', 'x2', 'y2'))
            found.append(Stroke(((x1, y1), (x2, y2)), width, 'none', dashed))
        if node.tag == f'{SVG}path':
            numbers = [float(number) for number in re.findall(r'-?\d+\.?\d*', node.get('d'))]
            points = tuple(zip(numbers[::2], numbers[1::2], strict=True))
            closed = points[:1] if node.get('d').endswith('Z') else ()
            found.append(Stroke(points + closed, width, node.get('fill'), dashed))
    return found


def dots(root: ET.Element) -> list[Point]:
    return [(float(node.get('cx')), float(node.get('cy'))) for node in root.iter(f'{SVG}circle')]


def words(root: ET.Element) -> dict[str, Point]:
    return {node.text: (float(node.get('x')), float(node.get('y'))) for node in root.iter(f'{SVG}text')}


def distance(a: Point, b: Point) -> float:
    return hypot(b[0] - a[0], b[1] - a[1])


def direction(a: Point, b: Point) -> float:
    return degrees(atan2(a[1] - b[1], b[0] - a[0]))


def from_line(point: Point, a: Point, b: Point) -> float:
    """Return how far a point is from the line through two others."""
    across = (b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0])
    return abs(across) / distance(a, b)


def near(value: float, wanted: float, within: float = 4 * INK) -> bool:
    return abs(value - wanted) <= within


def alike(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Return whether two stretches point the same way."""
    return abs((direction(a, b) - direction(c, d) + 180) % 360 - 180) < 5


def to_stretch(point: Point, a: Point, b: Point) -> float:
    """Return how far a point is from a stretch of line."""
    long = distance(a, b)
    if long < TOUCH:
        return distance(point, a)
    share = ((point[0] - a[0]) * (b[0] - a[0]) + (point[1] - a[1]) * (b[1] - a[1])) / long**2
    share = min(1.0, max(0.0, share))
    return hypot(point[0] - a[0] - share * (b[0] - a[0]), point[1] - a[1] - share * (b[1] - a[1]))


def inside(point: Point, box: list[Point]) -> bool:
    """Return whether a point is in a convex outline."""
    turns = [_turn(a, b, point) for a, b in zip(box, box[1:] + box[:1], strict=True)]
    return all(turn > 0 for turn in turns) or all(turn < 0 for turn in turns)


def may_touch(some: Sequence[Point], others: Sequence[Point]) -> bool:
    """Return whether the upright boxes around some points and around others may touch."""
    return all(
        min(one[axis] for one in some) - TOUCH < max(one[axis] for one in others)
        and min(one[axis] for one in others) - TOUCH < max(one[axis] for one in some)
        for axis in (0, 1)
    )


def crossing(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Return whether two stretches of line cross."""
    return _turn(a, b, c) * _turn(a, b, d) < 0 and _turn(c, d, a) * _turn(c, d, b) < 0


def _turn(a: Point, b: Point, c: Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
