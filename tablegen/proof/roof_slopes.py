"""A whole roof as planes over its plates: each slope with what bounds it above, each hip where two of them meet."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from fractions import Fraction

from tablegen.proof.digits import SLACK, real
from tablegen.proof.roof import UP
from tablegen.proof.roof_stated import THICK, Asked
from tablegen.proof.space import Plane, Vector, cross, dot, level, meet, plane, vector
from tablegen.proof.timber import End, Timber, past

HIP_JACK, MAIN = 'hip_jack', ('front', 'back')
KNOWN = ('shed', 'gable', 'saltbox', 'hip')
"""Kinds of roof that are worked out."""
EAST, NORTH, WEST, SOUTH = vector(1, 0, 0), vector(0, 1, 0), vector(-1, 0, 0), vector(0, -1, 0)
ZERO = Decimal(0)
LEVEL = Plane(UP, ZERO)


@dataclass(frozen=True)
class Stop:
    """What a slope's rafters end at: the plumb plane of its center line, and how thick it is."""

    kind: str
    """What a rafter is that ends there: 'common' at a ridge, 'hip_jack', 'end_common' at a ridge's end, 'shed_rafter'."""
    center: Plane
    thick: Fraction
    off: Decimal | None = None
    """What comes off there, level, where it is not half of that thickness."""


@dataclass
class Slope:
    """One plane of the roof over its plate."""

    name: str
    origin: Vector
    """The left end of its plate line, seen from outside, at the plate's top."""
    along: Vector
    inward: Vector
    rise: Decimal
    """Over one of run."""
    length: Decimal
    overhang: Decimal
    above: Decimal
    """Its top over its plate line, plumb."""
    square: bool = False
    """Whether tails are cut square to it."""
    stops: list[Stop] = field(default_factory=list)

    def on_plate(self, along: Decimal) -> Vector:
        """Return the point of its top over a place along its plate line."""
        x, y, z = (at + along * way for at, way in zip(self.origin, self.along, strict=True))
        return x, y, z + self.above

    @property
    def edge(self) -> Vector:
        """Return the direction of its rafters, uphill."""
        return self.inward[0], self.inward[1], self.rise

    @property
    def top(self) -> Plane:
        """Return the plane of its tops."""
        return plane(cross(self.along, self.edge), self.on_plate(ZERO))

    def line(self, inward: Decimal) -> Plane:
        """Return the plumb plane along its plate, so far inward of the plate line."""
        return Plane(self.inward, dot(self.inward, self.origin) + inward)

    def crosswise(self, along: Decimal) -> Plane:
        """Return the plumb plane square to its plate, at a place along it."""
        return Plane(self.along, dot(self.along, self.origin) + along)

    @property
    def tail(self) -> Plane:
        """Return the plane of its tails: plumb, or square to the slope through the same line of its tops."""
        if not self.square:
            return self.line(-self.overhang)
        x, y, z = self.on_plate(ZERO)
        out = tuple(at - self.overhang * way for at, way in zip((x, y, z), self.edge, strict=True))
        return plane(self.edge, (out[0], out[1], out[2]))

    def stop_at(self, along: Decimal) -> tuple[Stop, Decimal]:
        """Return what a rafter there comes to first, and the level run to its center line."""
        start, found = self.on_plate(along), []
        for stop in self.stops:
            rate = dot(stop.center.normal, self.inward)
            if abs(rate) > SLACK:
                run = (stop.center.offset - dot(stop.center.normal, start)) / rate
                if run > SLACK:
                    found.append((run, stop))
        nearest = min(run for run, _stop in found)
        tied = [
            (stop.kind == HIP_JACK, run, n) for n, (run, stop) in enumerate(found) if run - nearest < SLACK
        ]
        _jack, run, n = min(tied)  # one that ends at a ridge's very end ends at the ridge
        return found[n][1], run

    def rafter(self, along: Decimal, depth: Fraction) -> Timber:
        """Return the rafter whose center stands at a place along."""
        stop, run = self.stop_at(along)
        start = self.on_plate(along)
        face = past(stop.center, stop.thick, start) if stop.off is None else self.line(run - stop.off)
        return Timber(start, self.edge, THICK, depth, End((face,)), End((self.tail,)), stop.center)


@dataclass
class Roof:
    """All of them."""

    asked: Asked
    slopes: list[Slope]
    hips: list[tuple[Slope, Slope]] = field(default_factory=list)
    """Of each the slope on its left and on its right hand, looking up it."""
    ends: tuple[Decimal, Decimal] = (ZERO, ZERO)
    """Where the ridge's center lines end, along the front, in theory."""

    def slope(self, name: str) -> Slope:
        """Return the slope of a name."""
        return next(one for one in self.slopes if one.name == name)

    @property
    def height(self) -> Decimal:
        """Return the height above plate of all rafters, plumb: the main ones' seat says it."""
        return above_plate(self.asked)

    def hip(self, number: int, dropped: bool = True) -> Timber:
        """Return a hip, its center line where the two slopes meet, or under it by as much as it is dropped."""
        left, right = self.hips[number]
        main, end = (left, right) if left.name in MAIN else (right, left)
        edge, foot = hip_line(left, right)
        at_ridge, at_end = main.line(run_of(main)), end.line(run_of(end))
        faces: tuple[Plane, ...] = past(at_ridge, THICK, foot), past(at_end, THICK, foot)
        if self.asked.word('cuts.hip_heads') == 'single':
            faces = (past(at_ridge, self.asked.ridge, foot),)
        deep = self.asked.depth('stock.hips')
        if dropped and self.asked.word('cuts.hips', 'dropped') == 'dropped':
            foot = foot[0], foot[1], foot[2] - self.hip_drop(number)
        return Timber(foot, edge, THICK, deep, End(faces), End((left.tail, right.tail)), at_ridge)

    def hip_drop(self, number: int) -> Decimal:
        """Return how far a hip's square top lies under the line where its slopes meet: until its edges are in them, or under."""
        board, drops = self.hip(number, dropped=False), []
        square = plane(board.top, board.foot)
        for slope, aside in zip(self.hips[number], (1, -1), strict=True):
            side = plane(board.left, board.foot).moved(aside * real(THICK) / 2)
            station = plane(board.ahead, board.foot)
            drops.append(meet(side, square, station)[2] - meet(side, slope.top, station)[2])
        return max(drops)


def gables(roof: Roof) -> int:
    """Return how many ends are no slopes."""
    return 2 - sum(one.name not in MAIN for one in roof.slopes)


def run_of(slope: Slope) -> Decimal:
    """Return the run of a slope's longest rafters to the line where planes meet."""
    middle = slope.length / 2
    return slope.stop_at(middle)[1]


def hip_line(left: Slope, right: Slope) -> tuple[Vector, Vector]:
    """Return the direction uphill of the line where two slopes meet, and its point over the plate lines' corner."""
    found = cross(left.top.normal, right.top.normal)
    edge = found if found[2] > 0 else (-found[0], -found[1], -found[2])
    lower = max(left, right, key=lambda one: one.origin[2])
    return edge, meet(left.top, right.top, lower.line(ZERO))


def above_plate(asked: Asked) -> Decimal:
    """Return how high the main rafters' top edge is over the plate line: their stock over the seat's inner end."""
    rise, depth = asked.slope(), real(asked.depth('stock.rafters'))
    return depth * (1 + rise * rise).sqrt() - real(asked.inches('stock.seat')) * rise


def roof_of(asked: Asked) -> Roof | None:
    """Return the roof; None of a kind that is not worked out."""
    kind = asked.word('kind')
    if kind not in KNOWN:
        return None
    return {'shed': _shed, 'gable': _gable, 'saltbox': _gable, 'hip': _hip}[kind](asked)


def _slope(
    asked: Asked, name: str, origin: Vector, ways: tuple[Vector, Vector], length: Fraction, key: str = ''
) -> Slope:
    rise = asked.slope(key) if key else asked.slope()
    out = real(asked.inches('overhang.eave'))
    return Slope(name, origin, *ways, rise, real(length), out, above_plate(asked), asked.square)


def _shed(asked: Asked) -> Roof | None:
    upper, thick = asked.word('shed.upper', 'wall'), asked.inches('shed.thickness')
    if upper == 'over-beam':
        return None
    long, wide = asked.inches('length'), real(asked.inches('width'))
    front = _slope(asked, 'front', vector(0, 0, 0), (EAST, NORTH), long)
    off = real(thick) if upper == 'ledger' else ZERO
    front.stops.append(Stop('shed_rafter', front.line(wide), thick, off))
    return Roof(asked, [front])


def _two_sides(asked: Asked) -> tuple[Slope, Slope]:
    long, wide = asked.inches('length'), real(asked.inches('width'))
    back_key = 'saltbox.back_pitch' if asked.word('kind') == 'saltbox' else ''
    below = real(asked.inches('saltbox.back_plate_below'))
    front = _slope(asked, 'front', vector(0, 0, 0), (EAST, NORTH), long)
    back = _slope(asked, 'back', (real(long), wide, -below), (WEST, SOUTH), long, back_key)
    ridge = meet(front.top, back.top, Plane(EAST, ZERO))
    for one in (front, back):
        run = abs(dot(one.inward, ridge) - dot(one.inward, one.origin))
        one.stops.append(Stop('common', one.line(run), asked.ridge))
    return front, back


def _gable(asked: Asked) -> Roof:
    front, back = _two_sides(asked)
    return Roof(asked, [front, back], ends=(ZERO, front.length))


def _hip(asked: Asked) -> Roof:
    front, back = _two_sides(asked)
    long, wide, number = asked.inches('length'), asked.inches('width'), int(asked.told.get('hip.ends', 2))
    left = _slope(asked, 'left', (ZERO, real(wide), ZERO), (SOUTH, EAST), wide, 'hip.end_pitch')
    ends = [left]
    if number > 1:
        ends.append(_slope(asked, 'right', (real(long), ZERO, ZERO), (NORTH, WEST), wide, 'hip.end_pitch'))
    for one in ends:  # eaves of one height: the steeper overhang is the shorter, or its plate the higher
        if asked.word('hip.eaves') == 'equal':
            x, y, z = one.origin
            one.origin = x, y, z + one.overhang * (one.rise - front.rise)
        else:
            one.overhang = one.overhang * front.rise / one.rise
    slopes = [front, back, *ends]
    pairs = (
        [(left, front), (back, left)]
        if number == 1
        else [(left, front), (front, ends[1]), (ends[1], back), (back, left)]
    )
    for one, other in pairs:
        edge, foot = hip_line(one, other)
        center = plane(cross(UP, level(edge)), foot)
        for slope in (one, other):
            slope.stops.append(Stop(HIP_JACK, center, THICK))
    reached = front.stops[0].center
    runs = []
    for one in ends:
        top = meet(one.top, front.top, reached)
        runs.append(abs(dot(one.inward, top) - dot(one.inward, one.origin)))
    for one, run in zip(ends, runs, strict=True):
        one.stops.append(Stop('end_common', one.line(run), asked.ridge, ridge_past(asked, one, front)))
    return Roof(asked, slopes, pairs, (runs[0], real(long) - (runs[1] if number > 1 else 0)))


def ridge_past(asked: Asked, end: Slope, main: Slope) -> Decimal:
    """Return how far a ridge runs past the point where the center lines meet: to the outer faces of the last side commons, or
    of single hips until the whole of their cheeks bears on it.
    """
    if asked.word('cuts.hip_heads') != 'single' or not asked.ridge:
        return real(THICK) / 2
    edge, foot = hip_line(main, end)
    center = plane(cross(UP, level(edge)), foot)
    ridge = main.line(run_of(main))
    outer = past(ridge, asked.ridge, foot)
    inward = [dot(end.inward, meet(center.moved(side * real(THICK) / 2), outer, LEVEL)) for side in (1, -1)]
    return dot(end.inward, meet(center, ridge, LEVEL)) - min(inward)
