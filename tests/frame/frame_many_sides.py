"""How regular roofs of many sides lie: corners on a circle, hips to its middle, the first side along x at the front; of a bay
the wall."""

from __future__ import annotations

from math import cos, pi, sin, tan

from frame_slopes import Lay, Slope, corner, named

from tablegen.frame.asked import Asked


def many_sided(asked: Asked, lean: float = 0.0) -> Lay:
    """Return a whole roof, turned by an angle."""
    sides, side, apothem = _round(asked)
    slopes = [_side(asked, number, sides, side, apothem, lean) for number in range(sides)]
    corners = [
        corner(one.origin, tuple(-x for x in one.origin), one.name, slopes[number - 1].name)
        for number, one in enumerate(slopes)
    ]
    return Lay(named(*slopes), tuple(corners), {}, ((0.0, 0.0), tuple(one.name for one in slopes)))


def bayed(asked: Asked) -> Lay:
    """Return half of such a roof, against a wall through two of its corners or the middles of two sides."""
    sides, side, apothem = _round(asked)
    whole = many_sided(asked, -pi / 2 + (pi / sides if asked.kind.wall_through == 'corners' else 0))
    kept = [f'side_{number + 1}' for number in range(sides // 2 + (asked.kind.wall_through == 'middles'))]
    slopes = {name: whole.slopes[name] for name in kept}
    if asked.kind.wall_through == 'middles':
        first, last = slopes[kept[0]], slopes[kept[-1]]
        half = ((0.0, 0.0), (side / 2, 0.0), (0.0, apothem))
        slopes[kept[0]] = _half(first, first.at(side / 2, 0)[:2], half)
        slopes[kept[-1]] = _half(last, last.origin, tuple((side / 2 - x, y) for x, y in half))
        wall = ((-apothem, 0.0), (apothem, 0.0))
    else:
        start, end = slopes[kept[0]].origin, slopes[kept[-1]].at(side, 0)[:2]
        wall = (start, tuple(end))
    corners = tuple(one for one in whole.corners if one.right in kept and one.left in kept)
    return Lay(slopes, corners, {}, ((0.0, 0.0), tuple(slopes)), wall)


def _half(slope: Slope, origin, outline) -> Slope:
    return Slope(
        slope.name, tuple(origin), slope.along, slope.length / 2, slope.rise, outline, slope.overhang
    )


def _round(asked: Asked) -> tuple[int, float, float]:
    kind = asked.kind
    if kind.side_in is not None:
        side = float(kind.side_in)
        return kind.sides, side, side / 2 / tan(pi / kind.sides)
    apothem = float(kind.across_flats_in) / 2
    return kind.sides, 2 * apothem * tan(pi / kind.sides), apothem


def _side(asked: Asked, number: int, sides: int, side: float, apothem: float, lean: float) -> Slope:
    turn = 2 * pi * number / sides + lean
    x, y = -side / 2, -apothem
    origin = (x * cos(turn) - y * sin(turn), x * sin(turn) + y * cos(turn))
    outline = ((0.0, 0.0), (side, 0.0), (side / 2, apothem))
    rise, out = float(asked.pitch.rise) / 12, float(asked.overhang_in)
    return Slope(f'side_{number + 1}', origin, (cos(turn), sin(turn)), side, rise, outline, out)
