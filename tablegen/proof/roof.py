"""Every figure of one pitch by the name of what it is: built as boards and planes, read off as points and lines."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from functools import cache, cached_property

from msgspec import Struct

from tablegen.proof.digits import SLACK, real, written
from tablegen.proof.space import Plane, Vector, angle, between, cross, dot, level, meet, plane, size, vector

DEPTHS = {
    '2×4': Fraction(7, 2),
    '2×6': Fraction(11, 2),
    '2×8': Fraction(29, 4),
    '2×10': Fraction(37, 4),
    '2×12': Fraction(45, 4),
}
"""in, dressed, dry. Source: Voluntary Product Standard PS 20, American Softwood Lumber Standard."""
FAR, TONGUE, BODY = Decimal(100), 16, 24
"""A run at which boards meet whose angles do not depend on it; the arms of a framing square, in."""
UP, EAVE, IN_B = vector(0, 0, 1), vector(1, 0, 0), vector(1, 0, 0)
IN_A = vector(0, 1, 0)
LEAST_LEFT = Decimal('3.5')
"""in, of wood over a notch before a tail. Source: IRC 2024 R802.7.1.1."""


class Boards(Struct, frozen=True):
    """What a page says its boards are; in."""

    ridge: Fraction
    hip: Fraction
    rafter: Fraction
    rafters: str
    hips: str
    valleys: str
    seat: Fraction


ANY_BOARDS = Boards(*(Fraction(3, 2),) * 3, *('2×8',) * 3, Fraction(7, 2))
"""For a book that has no use for lumber: its lengths do not depend on it."""


def _both(start: Vector, end: Vector) -> tuple[Decimal, Decimal]:
    """Return the distance of two points level, and along the line through them."""
    way = between(start, end)
    return size(level(way)), size(way)


class Corner(Struct, frozen=True, eq=False, dict=True):
    """A square corner of two roofs of one slope, its tops through the plate lines; `corner` gives the same one again."""

    slope: Decimal
    boards: Boards

    @cached_property
    def a(self) -> Plane:
        """Return roof A, its normal up and outwards."""
        return plane(cross(EAVE, vector(0, 1, self.slope)))

    @cached_property
    def b(self) -> Plane:
        """Return roof B."""
        return plane(cross(vector(1, 0, self.slope), vector(0, 1, 0)))

    @cached_property
    def hip(self) -> Vector:
        """Return the line where they meet, uphill."""
        found = cross(self.a.normal, self.b.normal)
        return found if found[2] > 0 else (-found[0], -found[1], -found[2])

    @cached_property
    def center(self) -> Plane:
        """Return the plumb plane through the hip, its normal towards eave B."""
        return plane(cross(UP, level(self.hip)))

    @cached_property
    def top(self) -> Plane:
        """Return the hip's square top, its middle on the line of both roofs."""
        return plane(cross(self.hip, self.center.normal))

    @cached_property
    def station(self) -> Plane:
        """Return the plumb plane square to the hip over the plates' corner."""
        return plane(level(self.hip))

    def across(self, run: Decimal) -> Plane:
        """Return the plumb plane along eave A, so far inside: a ridge's center line or face."""
        return Plane(IN_A, run)

    def common_at(self, run: Decimal) -> Vector:
        """Return the point of a common's top so far in."""
        return meet(self.a, Plane(EAVE, Decimal(0)), self.across(run))

    def hip_at(self, run: Decimal) -> Vector:
        """Return the point of the hip over a common's run."""
        return meet(self.a, self.b, self.across(run))

    # Lengths ----------------------------------------------------------------------------------------------

    @cached_property
    def an_inch(self) -> dict[str, Decimal]:
        """Return how far an inch of run is along the common and up, and along the hip; so many inches, so many times as far."""
        common, hip = (between(at(Decimal(0)), at(Decimal(1))) for at in (self.common_at, self.hip_at))
        return {'common': size(common), 'rise': common[2], 'hip': size(hip)}

    def common_length(self, run: Fraction | int) -> Decimal:
        """Along the top edge, plate line to ridge center line."""
        return self.an_inch['common'] * real(run)

    def step_length(self, run: Decimal) -> Decimal:
        """Along the top edge of a common, of one step of a square set to so much run."""
        return size(between(self.common_at(Decimal(0)), self.common_at(run)))

    def rise(self, run: Fraction | int) -> Decimal:
        """Plumb, the same two points."""
        return self.an_inch['rise'] * real(run)

    def rise_between(self, one: Decimal, other: Decimal) -> Decimal:
        """Plumb, between the points of a common at two runs."""
        return between(self.common_at(one), self.common_at(other))[2]

    def hip_length(self, run: Fraction | int) -> Decimal:
        """Along the line of both roofs, plates' corner to ridge center line."""
        return self.an_inch['hip'] * real(run)

    def jack_difference(self, spacing: Fraction) -> Decimal:
        """Of two jacks so far apart, each from plate line to the hip's center line."""
        ends = [meet(self.a, Plane(EAVE, n * real(spacing)), self.center) for n in (2, 3)]
        feet = [meet(self.a, Plane(EAVE, n * real(spacing)), self.across(Decimal(0))) for n in (2, 3)]
        short, long = (size(between(*pair)) for pair in zip(feet, ends, strict=True))
        return long - short

    @cache  # noqa: B019
    def jack(self, number: int, spacing: Fraction) -> dict[str, Decimal]:
        """Along the top edge of a jack, plate line to the hip's center line and to either point of its cheek."""
        at, half = number * real(spacing), real(self.boards.rafter) / 2
        face = self.center.moved(-real(self.boards.hip) / 2)
        lines = {'line': (at, self.center), 'long': (at + half, face), 'short': (at - half, face)}
        found = {}
        for name, (along, end) in lines.items():
            place = Plane(EAVE, along)
            way = between(meet(self.a, place, self.across(Decimal(0))), meet(self.a, place, end))
            found[name] = size(way) if way[1] > 0 else -size(way)
        return found

    # What comes off -----------------------------------------------------------------------------------------

    def common_off(self, thickness: Fraction) -> tuple[Decimal, Decimal]:
        """Ridge's center line to its face; level, and along the top edge."""
        return _both(self.common_at(FAR), self.common_at(FAR - real(thickness) / 2))

    def common_less(self, thickness: Fraction) -> tuple[Decimal, Decimal]:
        """From a wall's face to that of a ledger so thick on it; level, and along the top edge."""
        return _both(self.common_at(FAR), self.common_at(FAR - real(thickness)))

    def hip_off(self, thickness: Fraction) -> tuple[Decimal, Decimal]:
        """The same of a hip or valley, at a ridge or at the side of a common so thick."""
        return _both(self.hip_at(FAR), self.hip_at(FAR - real(thickness) / 2))

    def jack_off(self, thickness: Fraction) -> tuple[Decimal, Decimal]:
        """Jack: the center line of a hip so thick to its side."""
        place = Plane(EAVE, FAR)
        side = self.center.moved(-real(thickness) / 2)
        return _both(meet(self.a, place, self.center), meet(self.a, place, side))

    # Cuts -------------------------------------------------------------------------------------------------

    def cut(self, edge: Vector, line: Vector) -> Decimal:
        """On a plumb side: from the line square across an edge to another line of that side."""
        side = cross(UP, level(edge))
        return angle(cross(side, edge), line)

    def cheek(self, edge: Vector, top: Plane, face: Vector) -> Decimal:
        """On a top: from the line square across its edge to where a plumb face cuts it."""
        return 90 - angle(cross(top.normal, face), edge)

    def blade(self, edge: Vector, face: Vector) -> Decimal:
        """Tilt of the blade that follows the plumb line on a side: from square to where a plumb face lies."""
        return angle(level(edge), face)

    def sides_of_hip(self, thickness: Fraction) -> tuple[Decimal, Decimal]:
        """From one side's plumb line to the other's, where a ridge over A is met; level, and along the top edge."""
        return self._sides(self.hip, self.center, self.top, Plane(IN_A, FAR), thickness)

    def sides_of_jack(self) -> tuple[Decimal, Decimal]:
        """The same of a jack where the hip is met."""
        edge = vector(0, 1, self.slope)
        return self._sides(edge, Plane(EAVE, FAR), self.a, self.center, self.boards.rafter)

    def _sides(
        self, edge: Vector, middle: Plane, top: Plane, face: Plane, thickness: Fraction
    ) -> tuple[Decimal, Decimal]:
        ends = [meet(middle.moved(sign * real(thickness) / 2), top, face) for sign in (1, -1)]
        way, flat = between(*ends), level(edge)
        return abs(dot(level(way), flat)) / size(flat), abs(dot(way, edge)) / size(edge)

    def against_12(self, edge: Vector, top: Plane, face: Vector) -> Decimal:
        """The tongue's figure along an edge that goes with 12 of the body for that line: 12 along it, so much across."""
        line, along = cross(top.normal, face), edge
        away = size(cross(line, along)) / abs(dot(line, along))
        return 12 * away

    def backing(self) -> Decimal:
        """Between the hip's square top and roof A."""
        return angle(self.top.normal, self.a.normal)

    def drop_square(self, thickness: Fraction) -> Decimal:
        """The same square to the edge."""
        side = self.center.moved(-real(thickness) / 2)
        return self.top.offset - dot(self.top.normal, meet(side, self.a, self.station))

    def drop(self, thickness: Fraction) -> Decimal:
        """From the hip's square top's edge down to roof A, plumb."""
        side = self.center.moved(-real(thickness) / 2)
        return meet(side, self.top, self.station)[2] - meet(side, self.a, self.station)[2]

    # Bird's mouths ----------------------------------------------------------------------------------------

    @cached_property
    def underside(self) -> Plane:
        """Return the common's underside, which leaves the plate's top at the end of its seat."""
        return plane(self.a.normal, vector(0, real(self.boards.seat), 0))

    def common_mouth(self, size_sold: str) -> tuple[Decimal, Decimal]:
        """Return height above plate over the plate line, and the notch square to the edge."""
        top = self.underside.moved(real(DEPTHS[size_sold]))
        height = meet(top, Plane(EAVE, Decimal(0)), self.across(Decimal(0)))[2]
        return height, -self.underside.offset

    def common_heel(self) -> Decimal:
        """From the seat down to the underside at the plate's outer face, plumb."""
        return -meet(self.underside, Plane(EAVE, Decimal(0)), self.across(Decimal(0)))[2]

    def hip_mouth(self, stock: str, down: Decimal, out: Decimal) -> tuple[Decimal, Decimal, Decimal, Decimal]:
        """Return height, heel, seat and notch of a hip or valley.

        Given:
            down  how far its square top lies under the commons' roofs on its center line, plumb
            out   how far outside of the plates' corner its heel stands, level
        """
        height = self.common_mouth(self.boards.rafters)[0] - down
        under = plane(self.top.normal, vector(0, 0, height)).moved(-real(DEPTHS[stock]))
        direction = self.station.normal
        heel = meet(under, self.center, Plane(direction, -out))
        inner = meet(under, self.center, Plane(UP, Decimal(0)))
        notch = abs(dot(under.normal, (direction[0] * -out, direction[1] * -out, Decimal(0))) - under.offset)
        return height, -heel[2], dot(inner, direction) + out, notch

    def valley_out(self) -> Decimal:
        """How far outside of the inside corner a valley's sides meet the plates' faces, level along it."""
        sides = [self.center.moved(sign * real(self.boards.hip) / 2) for sign in (1, -1)]
        faces = self.across(Decimal(0)), Plane(IN_B, Decimal(0))
        reached = [meet(side, face, Plane(UP, Decimal(0))) for side in sides for face in faces]
        return max(-dot(point, self.station.normal) for point in reached)


@cache
def corner(slope: Decimal, boards: Boards) -> Corner:
    """Return the corner of a slope."""
    return Corner(slope, boards)


def arms(run: Decimal, up: Decimal) -> tuple[Decimal, Decimal]:
    """Return the body's and the tongue's figures, halved until neither arm is too short."""
    while up > TONGUE or run > BODY:
        run, up = run / 2, up / 2
    return run, up


def marks(depth: Fraction, notch: Decimal) -> str:
    """Return what stands beside a height: a notch past a third or a quarter of the depth, too little left over it."""
    deep = real(depth)
    past = '‡' if notch * 3 > deep + SLACK else '†' if notch * 4 > deep + SLACK else ''
    return past + '§' * (deep - notch < LEAST_LEFT - SLACK)


def both_written(pair: tuple[Decimal, Decimal], per: int) -> tuple[str, str]:
    """Return a pair of lengths as printed."""
    return written(pair[0], per), written(pair[1], per)
