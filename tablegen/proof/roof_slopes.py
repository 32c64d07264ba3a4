"""A roof as planes over its plates: each slope with what bounds its rafters below and above, boards where two slopes meet."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from fractions import Fraction
from itertools import pairwise

from msgspec import Struct, field

from tablegen.proof.digits import SLACK, real
from tablegen.proof.roof import UP
from tablegen.proof.roof_stated import THICK, Asked
from tablegen.proof.roof_stops import Region, Stop, Way
from tablegen.proof.space import Plane, Vector, cross, dot, meet, plane, vector
from tablegen.proof.timber import End, Timber, past

MAIN = ('front', 'back')
EAST, NORTH, WEST, SOUTH = vector(1, 0, 0), vector(0, 1, 0), vector(-1, 0, 0), vector(0, -1, 0)
ZERO = Decimal(0)
LEVEL = Plane(UP, ZERO)


class Slope(Struct):
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
    pitch: str = ''
    """As it was asked for."""
    square: bool = False
    """Whether tails are cut square to it."""
    regions: list[Region] = field(default_factory=lambda: [Region()])
    edges: list[Plane] = field(default_factory=list)
    """The plumb planes that bound it in plan, out to eaves and rakes, one after the other."""
    beside: list[tuple[Plane, Plane]] = field(default_factory=list)
    """What is at the left and at the right end of each of its eaves, where those do not tell it."""
    ends: tuple[bool, bool] = (True, True)
    """Whether its rafters begin, and end, over its plate: where they do not, over a valley."""

    @property
    def stops(self) -> list[Stop]:
        """Return what is above the rafters of the one region that it has."""
        return self.regions[0].upper

    def on_plate(self, along: Decimal, inward: Decimal = ZERO) -> Vector:
        """Return the point of its top over a place along its plate line, or so far inward of that."""
        x, y, z = (
            at + along * way + inward * into
            for at, way, into in zip(self.origin, self.along, self.inward, strict=True)
        )
        return x, y, z + self.above + inward * self.rise

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

    def place_of(self, *planes: Plane) -> Decimal:
        """Return how far along it the line is in which two plumb planes cross."""
        return dot(self.along, meet(planes[0], planes[1], LEVEL)) - dot(self.along, self.origin)

    def on_eave(self, center: Plane) -> Decimal:
        """Return how far along it a plumb plane crosses its plate line."""
        return self.place_of(center, self.line(ZERO))

    def inward_of(self, center: Plane, along: Decimal) -> Decimal | None:
        """Return how far inward a plumb plane crosses a place along; None where it runs along with it."""
        rate = dot(center.normal, self.inward)
        if abs(rate) < SLACK:
            return None
        return (center.offset - dot(center.normal, self.on_plate(along))) / rate

    @property
    def eave(self) -> Plane:
        """Return the plumb plane through the upper corners of its tails."""
        return self.line(-self.overhang)

    @property
    def tail(self) -> Plane:
        """Return the plane of its tails: plumb, or square to the slope through the same line of its tops."""
        return plane(self.edge, self.on_plate(ZERO, -self.overhang)) if self.square else self.eave

    def ways(self, along: Decimal) -> Iterator[Way]:
        """Yield where rafters may run at a place along."""
        for region in self.regions:
            if not region.spans(along):
                continue
            lower = [
                (at, stop)
                for stop in region.lower
                if stop.spans(along) and (at := self.inward_of(stop.center, along)) is not None
            ]
            foot, off = max(lower, key=lambda one: one[0], default=(ZERO, None))
            upper = [
                (at, stop.edge == 'hip', n)
                for n, stop in enumerate(region.upper)
                if stop.spans(along)
                and (at := self.inward_of(stop.center, along)) is not None
                and (at > foot + SLACK or (off is None and stop.edge == 'hip'))
            ]
            if upper and min(upper)[0] > foot + SLACK:  # a hip may cross a raised plate aside of its end
                nearest = min(upper)[0]
                # one that ends at a ridge's very end ends at the ridge
                _jack, n, at = min((jack, n, at) for at, jack, n in upper if at - nearest < SLACK)
                yield Way(region, foot, off, at, region.upper[n])

    def way(self, along: Decimal, kind: str = '') -> Way:
        """Return that of a kind of rafter, the first where there is none of it."""
        there = list(self.ways(along))
        return next((one for one in there if one.kind == kind), there[0])

    def rafter(self, along: Decimal, depth: Fraction, kind: str = '') -> Timber:
        """Return the rafter whose center stands at a place along."""
        way = self.way(along, kind)
        start, to, off = self.on_plate(along, way.foot), way.to, way.off
        faces: tuple[Plane, ...] = (
            past(to.center, to.thick, start) if to.off is None else self.line(way.head - to.off),
        )
        faces += to.clips
        head = End(faces, thick=to.thick, line=to.over)
        if off is None:
            tail = self.tail_at(along, way.region, depth)
            return Timber(start, self.edge, THICK, depth, head, tail, to.center, self.above)
        upper = self.on_plate(along, way.head)
        tail = End((off.lies_on or past(off.center, off.thick, upper),), thick=off.thick, line=off.center)
        return Timber(start, self.edge, THICK, depth, head, tail, to.center)

    def tail_at(self, along: Decimal, region: Region, depth: Fraction) -> End:
        """Return the tail of a rafter: beside an inside corner the valley's tail stops it.

        Notes:
            1. Where the valley crosses a corner of the tail only, that is cut plumb and square across short of it.
            2. Where a wing's roof is laid on the main one it has no tail there.
        """
        if not region.eaves:
            return End((self.line(ZERO),))
        for stop in region.lower:
            at = self.inward_of(stop.center, along)
            if at is None or at > SLACK or stop.edge == 'purlin':
                continue
            half, start = real(THICK) / 2, self.on_plate(along)
            face = past(stop.center, stop.thick, start)
            outs = [-(self.inward_of(face, along + side) or ZERO) for side in (half, -half)]
            if min(outs) >= self.overhang - SLACK:
                continue
            if stop.edge == 'board':
                return End((self.line(ZERO),))
            steep = (1 + self.rise * self.rise).sqrt()
            most = self.overhang - (real(depth) * self.rise / steep if self.square else ZERO)
            return (
                End((self.line(-min(*outs, most)),))
                if max(outs) > most + SLACK
                else End((face,), thick=stop.thick, line=stop.center)
            )
        return End((self.tail,))

    @property
    def eave_ends(self) -> list[tuple[Plane, Plane]]:
        """Return what is at the left and at the right end of each of its eaves."""
        if self.beside:
            return self.beside
        places = [n for n, edge in enumerate(self.edges) if edge == self.eave]
        return [(self.edges[n - 1], self.edges[n + 1]) for n in places]

    @property
    def corners(self) -> list[Vector]:
        """Return its corners in plan."""
        return [meet(one, other, LEVEL) for one, other in pairwise([*self.edges, self.edges[0]])]

    @property
    def in_plan(self) -> Decimal:
        """Return its area in plan."""
        points = self.corners
        twice = ((a[0] * b[1] - a[1] * b[0]) for a, b in pairwise([*points, points[0]]))
        return abs(sum(twice, ZERO)) / 2


def run_of(slope: Slope) -> Decimal:
    """Return how far inward of the plate line a slope's longest rafters run, to the line where planes meet."""
    upper = [stop for region in slope.regions for stop in region.upper]
    level = [stop for stop in upper if abs(dot(stop.center.normal, slope.along)) < SLACK]
    if level:
        return max(slope.inward_of(stop.center, ZERO) or ZERO for stop in level)
    return max(dot(slope.inward, point) for point in slope.corners) - dot(slope.inward, slope.origin)


def above_plate(asked: Asked) -> Decimal:
    """Return how high the main rafters' top edge is over the plate line: their stock over the seat's inner end."""
    rise, depth = asked.slope(), real(asked.depth('stock.rafters'))
    return depth * (1 + rise * rise).sqrt() - real(asked.inches('stock.seat')) * rise


def slope_of(
    asked: Asked,
    name: str,
    origin: Vector,
    ways: tuple[Vector, Vector],
    length: Fraction | Decimal,
    key: str = '',
) -> Slope:
    """Return a slope that nothing bounds yet.

    Given:
        key  of its pitch, where it is not the main one
    """
    rise = asked.slope(key) if key else asked.slope()
    out = real(asked.inches('overhang.eave'))
    long = real(length) if isinstance(length, Fraction) else length
    return Slope(
        name, origin, *ways, rise, long, out, above_plate(asked), asked.pitch_told(key), asked.square
    )


def bounded(slope: Slope, *sides: Plane) -> None:
    """Say what bounds a slope in plan from its eave on around."""
    slope.edges = [slope.eave, *sides]
