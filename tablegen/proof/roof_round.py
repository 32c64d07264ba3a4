"""Regular roofs of many sides, whole or half of one against a wall, as planes around a plumb axis."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from fractions import Fraction
from itertools import pairwise

from tablegen.proof.digits import real, tangent
from tablegen.proof.roof import UP
from tablegen.proof.roof_corners import hip, line_of, stop_of
from tablegen.proof.roof_slopes import EAST, NORTH, ZERO, Slope, bounded, slope_of
from tablegen.proof.roof_stated import Asked
from tablegen.proof.roof_stops import Stop
from tablegen.proof.roof_whole import Roof
from tablegen.proof.space import Plane, Vector, cross, level, plane
from tablegen.proof.timber import End

AXIS: Vector = (ZERO, ZERO, ZERO)


def rounded(asked: Asked) -> Roof:
    """Return a roof of many sides."""
    count = int(asked.told['many-sided.sides'])
    slopes, measured = _sides(asked, count, count)
    return _hipped(asked, slopes, [*slopes[-1:], *slopes], measured)


def bay(asked: Asked) -> Roof:
    """Return half of one, its peak at a wall through corners or through the middles of two sides."""
    count = int(asked.told['bay.sides'])
    middles = asked.word('bay.wall_through') == 'middles'
    slopes, measured = _sides(asked, count, count // 2 + middles)
    first, last = slopes[0], slopes[-1]
    if middles:
        half = first.length / 2
        first.origin = _on(first, half)
        first.length = last.length = half
        walls = []
        measured = {
            'bay_halves': measured['sides'] | {'half': half},
            'bay_hips': measured['corners'],
            'bay_wall': {'wall': 2 * measured['sides']['apothem']},
        }
    else:
        corners = first.origin, _on(last, last.length)
        measured = {
            'bay_sides': measured['sides'],
            'bay_corners': measured['corners'],
            'bay_wall': {'wall': 2 * measured['corners']['radius']},
        }
        walls = [Stop('hip', _to(corner), Fraction(0)) for corner in corners]
        for slope, wall in zip((first, last), walls, strict=True):
            slope.stops.append(wall)
    return _hipped(asked, slopes, slopes, measured, walls)


def _on(slope: Slope, along: Decimal) -> Vector:
    x, y, _z = (at + along * way for at, way in zip(slope.origin, slope.along, strict=True))
    return x, y, ZERO


def _to(point: Vector) -> Plane:
    """Return the plumb plane through the axis and a point."""
    return plane(cross(UP, level(point)), AXIS)


def _sides(asked: Asked, sides: int, count: int) -> tuple[list[Slope], dict[str, dict[str, Decimal]]]:
    """Return the slopes that nothing bounds yet, and what their plates measure."""
    kind, half = asked.word('kind'), tangent(Fraction(180, sides))
    key = f'{kind}.across_flats'
    if key in asked.told:
        apothem = real(asked.inches(key)) / 2
        side = 2 * apothem * half
    else:
        side = real(asked.inches(f'{kind}.side'))
        apothem = side / 2 / half
    cosine, sine = (1 - half * half) / (1 + half * half), 2 * half / (1 + half * half)
    ways, found = (EAST, NORTH), []
    for number in range(1, count + 1):
        along, inward = ways
        x, y, _z = (-along[n] * side / 2 - inward[n] * apothem for n in range(3))
        found.append(slope_of(asked, f'side_{number}', (x, y, ZERO), ways, side))
        a, b = ((x * cosine - y * sine, x * sine + y * cosine, ZERO) for x, y, _z in ways)
        ways = (a, b)
    radius = apothem * (1 + half * half).sqrt()
    return found, {'sides': {'side': side, 'apothem': apothem}, 'corners': {'radius': radius}}


def _hipped(
    asked: Asked,
    slopes: list[Slope],
    ring: Sequence[Slope],
    measured: dict[str, dict[str, Decimal]],
    walls: Sequence[Stop] = (),
) -> Roof:
    """Return the roof with a hip between every two of a ring of slopes that follow one another."""
    pairs = list(pairwise(ring))
    roof = Roof(asked, slopes, measured=measured)
    for pair in pairs:
        for slope in pair:
            slope.stops.append(stop_of('hip', *pair))
    for number, (left, right) in enumerate(pairs):
        center = plane(level(line_of(left, right)[0]), AXIS)
        faces = [plane(one.along, AXIS) for one in (left, right)]  # half way to the next hips
        hand = None
        for at_wall, wall in enumerate(walls):
            if number == (0, len(pairs) - 1)[at_wall]:
                faces[at_wall], hand = wall.center, at_wall
        head = End(tuple(faces))
        if 'many-sided.post' in asked.told:
            post = asked.inches('many-sided.post')
            head = End((center.moved(-real(post) / 2),), thick=post)
        roof.corners.append(hip(asked, (left, right), left, head, center, hand=hand))
    for slope in slopes:
        sides = [stop.center for stop in slope.stops]
        if len(sides) < 2:  # its middle is at the wall
            sides.append(slope.crosswise(ZERO if slope is slopes[0] else slope.length))
        bounded(slope, *sorted(sides, key=slope.on_eave, reverse=True))
    return roof
