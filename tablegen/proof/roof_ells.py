"""An L as planes: a wing flush with a hipped end of the main roof, whose slope goes on as the wing's; at the right end all is turned over."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal

from msgspec.structs import replace

from tablegen.proof.digits import real
from tablegen.proof.roof_corners import HALF, center_of, commons_head, hip, line_of
from tablegen.proof.roof_kinds import run_to_ridge, single
from tablegen.proof.roof_slopes import ZERO, Slope, run_of
from tablegen.proof.roof_stated import THICK, Asked
from tablegen.proof.roof_stops import Region, Stop
from tablegen.proof.roof_whole import Corner, Level, Rake, Roof
from tablegen.proof.roof_wings import Joined, joined, one_valley, wing_end, wing_ridge
from tablegen.proof.space import Plane, Vector
from tablegen.proof.timber import End, past

NAMES = {'left': 'right', 'right': 'left', 'wing_left': 'wing_right', 'wing_right': 'wing_left'}
"""What a slope is called when it is turned over."""


def ell(asked: Asked) -> Roof:
    """Return an L."""
    if not asked.inches('wing.from_left'):
        return _at_left(asked)
    flush = Asked({**asked.told, 'wing.from_left': '0 in'})
    return _turned(_at_left(flush), real(asked.inches('length')))


def _at_left(asked: Asked) -> Roof:
    of = joined(asked)
    roof, front, right = of.roof, of.front, of.right
    left = roof.slope('left')
    roof.slopes.remove(of.left)
    of.left = left
    run = run_of(front)
    line = center_of(left, front)
    roof.corners.pop(0)  # of the main roof's corner there nothing is left but its upper part
    if not of.level_ridges:
        roof.corners.append(_upper_hip(of, run))
    _with_front(of, run)
    _with_left(of, line)
    valley = one_valley(of, (right, front), False, line, run)
    roof.corners.append(replace(valley, hand=None) if of.level_ridges else valley)
    edges = [*front.edges, center_of(right, front)]
    back_hip = center_of(roof.slope('back'), left)
    wing_ridge(of, wing_end(of))
    front.edges = edges
    left.edges.append(back_hip)
    return roof


def _upper_hip(of: Joined, run: Decimal) -> Corner:
    """Return the hip from the main ridge's end down to the far side of the wing's ridge, against a common there."""
    asked, left, front = of.asked, of.left, of.front
    foot = line_of(left, front)[1]
    ridge = front.line(run)
    head = commons_head(front, left, (run, run_to_ridge(left, front)), foot)
    if single(asked):
        head = End((past(ridge, asked.ridge, foot),), thick=asked.ridge)
    side = left.line(of.half - real(asked.ridge) / 2)
    found = hip(asked, (left, front), front, head, ridge, End((side,)), hand=1)
    if asked.word('cuts.hips', 'dropped') == 'dropped':
        of.roof.measured['upper_hip_top'] = {'drop': max(found.drops)}
    along = found.board.to(side) or ZERO
    board = found.board.moved(along)
    return replace(found, kind='upper_hip', board=board.without_mouth())


def _with_front(of: Joined, run: Decimal) -> None:
    """Let the front begin at its valley; a common that the upper hip is cut to may stand on that, before the plate."""
    front, end = of.front, of.start + 2 * of.half
    center = center_of(of.right, front)
    region = Region(front.stops, [Stop('valley', center, THICK, start=of.half, end=end)], start=of.half)
    front.regions = [region]
    on_wing = Stop('valley', center, THICK, start=of.out, end=of.out + of.reach)
    of.right.regions[0].lower.append(on_wing)
    front.ends = (False, True)
    place = of.top
    if not of.level_ridges and not single(of.asked) and ZERO <= place - end <= HALF / abs(center.normal[1]):
        near = Decimal(1) / of.asked.per
        front.regions.append(
            Region(region.upper, [Stop('valley', center, THICK)], place - near, place + near)
        )


def _with_left(of: Joined, line: Plane) -> None:
    """Let the main roof's left end go on as the wing's left side."""
    left, asked, wide = of.left, of.asked, of.left.length
    middle, turn = wide / 2, wide - of.reach
    (back_hip,) = [stop for stop in left.stops if stop.edge == 'hip' and not stop.center.is_like(line)]
    (end,) = [stop for stop in left.stops if stop.edge == 'end']
    aside = ZERO
    if of.level_ridges and single(asked):
        aside = max(ZERO, real(THICK - asked.ridge) / 2)
        end = replace(end, clips=())
    upper = [back_hip, replace(end, start=middle - HALF, end=middle + aside + HALF)]
    if not of.level_ridges:
        upper.append(Stop('hip', line, THICK, start=middle, end=turn))
    upper.append(Stop('ridge', left.line(of.half), asked.ridge, start=turn))
    left.regions = [Region(upper)]
    left.length = wide + of.out


# Turned over ----------------------------------------------------------------------------------------------------


def _turned(roof: Roof, long: Decimal) -> Roof:
    """Return a roof turned left to right, so long along its main ridge."""

    def way(one: Vector) -> Vector:
        return -one[0], one[1], one[2]

    def point(one: Vector) -> Vector:
        return long - one[0], one[1], one[2]

    def flat(one: Plane) -> Plane:
        return Plane(way(one.normal), one.offset - one.normal[0] * long)

    def stop(one: Stop, of: Slope) -> Stop:
        start, end = _over(one.start, of), _over(one.end, of)
        return replace(one, center=flat(one.center), start=end, end=start, clips=tuple(map(flat, one.clips)))

    def slope(one: Slope) -> Slope:
        x, y, z = one.on_plate(one.length)
        regions = [
            Region(
                [stop(each, one) for each in region.upper],
                [stop(each, one) for each in region.lower],
                _over(region.end, one),
                _over(region.start, one),
            )
            for region in one.regions
        ]
        right, up, level = way(one.along)
        first, *others = map(flat, one.edges)
        return replace(
            one,
            name=NAMES.get(one.name, one.name),
            origin=(long - x, y, z - one.above),
            along=(-right, -up, level),
            inward=way(one.inward),
            regions=regions,
            edges=[first, *reversed(others)],
            ends=(one.ends[1], one.ends[0]),
        )

    def end(one: End) -> End:
        return replace(one, faces=tuple(map(flat, one.faces)), line=one.line and flat(one.line))

    def corner(one: Corner) -> Corner:
        board, (left, right) = one.board, one.sides
        assert board.center
        return replace(
            one,
            sides=(NAMES.get(right, right), NAMES.get(left, left)),
            board=replace(
                board,
                foot=point(board.foot),
                edge=way(board.edge),
                head=end(board.head),
                tail=end(board.tail),
                center=flat(board.center),
            ),
            inward=way(one.inward),
            hand=None if one.hand is None else 1 - one.hand,
            drops=(one.drops[1], one.drops[0]),
            backs=one.backs and (one.backs[1], one.backs[0]),
        )

    slopes: Mapping[int, Slope] = {id(one): slope(one) for one in roof.slopes}
    return Roof(
        roof.asked,
        list(slopes.values()),
        [corner(one) for one in roof.corners],
        [
            Rake(slopes[id(one.slope)], one.slope.length - one.end, -one.outwards, one.foot, one.top)
            for one in roof.rakes
        ],
        {mark: Level(point(one.start), point(one.end), one.tilt) for mark, one in roof.levels.items()},
        roof.measured,
    )


def _over(along: Decimal | None, of: Slope) -> Decimal | None:
    return None if along is None else of.length - along
