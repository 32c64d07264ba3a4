"""A roof in plan: its slopes, each with the lines that bound it, and the boards that lie along those lines.

A slope is seen from outside, its plate line level before one: `along` runs from the left end of that line to the right, and
`inward` level and square to it, into the building. Whatever stands up a slope runs inward at one place along.
"""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum
from fractions import Fraction
from typing import ClassVar

from msgspec import Struct, field
from msgspec.structs import replace

from tablegen.numbers.exact import Exact, exact, sign
from tablegen.roof.figures import Degrees
from tablegen.roof.member import Hand, Member
from tablegen.roof.members import Members

Point = tuple[Exact, Exact]
"""Right and up on the plan, in, from the left front corner of the framing."""


class Edge(StrEnum):
    """What bounds a slope."""

    PLATE = 'plate'
    RIDGE = 'ridge'
    MATE = 'mate'
    """The rafters of the other slope, where there is no ridge board."""
    HIP = 'hip'
    VALLEY = 'valley'
    PURLIN = 'purlin'
    WALL = 'wall'
    LEDGER = 'ledger'
    BEAM = 'beam'
    OVER = 'over'
    """A beam that rafters run over, to its far face."""
    BOARD = 'board'
    """A valley board that lies on the main roof's sheathing."""


class Reach(Struct, frozen=True):
    """A straight stretch of a slope's bounds, by the center line of what lies there."""

    edge: Edge
    mark: str
    """Of the board there, '' for a plate or a wall."""
    start_in: Exact
    end_in: Exact
    """Along."""
    inward_in: Exact
    """At its start."""
    rate: Exact = field(default_factory=Exact)
    """Inward per inch along: the tangent of its angle in plan to the plate line, above 0 where it runs away to the right."""
    thickness_in: Fraction = Fraction(0)
    off_in: Exact | None = None
    """What comes off a rafter there, level; None for what half of the thickness makes."""
    clipped: bool = False
    """Whether a thicker rafter there is clipped to the hips on both sides of it."""

    def at(self, along_in: Exact) -> Exact:
        """Return how far inward its center line is at a place along."""
        return self.inward_in + self.rate * (along_in - self.start_in)

    def part(self, start_in: Exact, end_in: Exact) -> Reach:
        """Return the part of it between two places along, which lie on it."""
        return replace(self, start_in=start_in, end_in=end_in, inward_in=self.at(start_in))

    def mirrored(self, length_in: Exact) -> Reach:
        """Return it as it is seen on a slope of some length turned right to left."""
        ends = length_in - self.end_in, length_in - self.start_in
        return replace(
            self, start_in=ends[0], end_in=ends[1], inward_in=self.at(self.end_in), rate=-self.rate
        )

    def spans(self, along_in: Exact) -> bool:
        """Return whether a place along lies on it, its ends too."""
        return self.start_in <= along_in <= self.end_in


class Region(Struct, frozen=True):
    """A part of a slope whose rafters run from one lower line to one upper line."""

    lower: tuple[Reach, ...]
    upper: tuple[Reach, ...]
    stations: tuple[Exact, ...]
    """Where its rafters stand, along, by their center lines."""
    tails: bool = True
    """Whether they run on over the plate; a wing's roof has none of the main roof's tails under it."""

    def valley_out_in(self, along_in: Exact) -> tuple[Exact, Reach] | None:
        """Return how far outward of the plate line a valley's tail crosses a place over the plate, and that valley.

        Source: the valley runs on past its inside corner, over the tails beside it.
        """
        found = []
        for reach in self.lower:
            if reach.edge in (Edge.VALLEY, Edge.BOARD) and sign(reach.rate):
                out = -reach.at(along_in)
                if sign(out) >= 0 and not (sign(reach.at(reach.start_in)) and sign(reach.at(reach.end_in))):
                    found.append((out, reach))
        return min(found, key=lambda one: one[0], default=None)


class Slope(Struct, frozen=True):
    """One slope of the roof."""

    name: str
    """front, back, left, right…"""
    members: Members
    """Its side of a corner: pitch, seat, overhang and boards of its rafters."""
    length_in: Exact
    """Of its plate line."""
    origin: Point
    """Of the left end of its plate line."""
    along: Point
    """The direction of its plate line on the plan, one inch of it."""
    regions: tuple[Region, ...]
    plate_in: Exact
    """How high its plate stands over the main ones."""
    top_in: Exact
    """Height of its top over the main plates where inward is 0."""

    def on_plan(self, along_in: Exact, inward_in: Exact) -> Point:
        """Return a point of it on the plan."""
        (x, y), (right, up) = self.origin, self.along
        return x + along_in * right - inward_in * up, y + along_in * up + inward_in * right

    def run_to(self, mark: str) -> Exact | None:
        """Return how far inward a board is that rafters of it run up to, square to it; None where none do."""
        upper = (reach for region in self.regions for reach in region.upper)
        return next((reach.inward_in for reach in upper if reach.mark == mark and reach.off_in is None), None)

    def lies_along(self, start: Point, end: Point, share: Fraction) -> bool:
        """Return whether a hip or valley bounds it where a share of the way from one point to another on the plan is."""
        x, y = (float(one + (other - one) * share) for one, other in zip(start, end, strict=True))
        (left, low), (right, up) = ([float(one) for one in two] for two in (self.origin, self.along))
        along, inward = (x - left) * right + (y - low) * up, (y - low) * right - (x - left) * up
        return any(
            reach.edge in (Edge.HIP, Edge.VALLEY)
            and float(reach.start_in) <= along <= float(reach.end_in)
            and abs(float(reach.at(exact(0))) + float(reach.rate) * along - inward) < ROUND_OFF_IN
            for region in self.regions
            for reach in (*region.lower, *region.upper)
        )

    def standing(self) -> Iterator[tuple[Region, Exact, Reach, Reach]]:
        """Return every place where a rafter may stand, with what is below and above it."""
        for region in self.regions:
            for along in region.stations:
                lower, upper = (_last(reaches, along) for reaches in (region.lower, region.upper))
                if lower and upper and lower.at(along) < upper.at(along):
                    yield region, along, lower, upper


def _last(reaches: tuple[Reach, ...], along_in: Exact) -> Reach | None:
    """Return the stretch at a place along: where some meet, a ridge's end, or else the one that is level, or the first."""
    found = [reach for reach in reaches if reach.spans(along_in)]
    found.sort(key=lambda reach: (reach.off_in is None, sign(reach.rate) != 0))
    return found[0] if found else None


class CornerBoard(Struct, frozen=True):
    """A hip or a valley where it lies."""

    member: Member
    start: Point
    """Its lower end: the corner of the plates."""
    end: Point
    """Where the center line of what it meets is."""
    hand: Hand | None = None
    """Where it has a mate cut the other way."""


class Level(StrEnum):
    """What a level board of the roof is."""

    RIDGE = 'ridge'
    LEDGER = 'ledger'
    PURLIN = 'purlin'
    FASCIA = 'fascia'
    LOOKOUT = 'lookout'
    VALLEY_BOARD = 'valley_board'


class EndCut(StrEnum):
    """How an end of a fascia or a valley board is sawn that is not square."""

    OUTSIDE = 'outside'
    """Mitered at an outside corner: long on its outer face, of one that leans on that face's upper edge."""
    INSIDE = 'inside'
    """Mitered at an inside corner: long on its back, of one that leans on the back's lower edge."""
    WALL = 'wall'
    """As at an outside corner, against the wall there."""
    LEVEL = 'level'
    """Of a board flat on a roof: along the eave."""
    UP = 'up'
    """Of a board flat on a roof: straight up it, against its mate."""


class BoardEnd(Struct, frozen=True):
    """An end of a level board that is not square."""

    datum: ClassVar = ('cut_list.board_end',)
    hand: Hand | None
    """Left or right, seen from outside; of a board flat on a roof None: there LEVEL is the lower end."""
    cut: EndCut
    miter: Degrees
    """On the board's face, from the line square across it."""
    blade: Degrees
    """Its tilt from square to that face."""


class LevelBoard(Struct, frozen=True):
    """A ridge, a purlin, a fascia… where it lies."""

    mark: str
    level: Level
    length_in: Exact
    """Sawn."""
    start: Point
    end: Point
    """Of its sawn ends, on its center line."""
    thickness_in: Fraction
    depth_in: Fraction
    number: int = 1
    """How many there are, of which one is laid on the plan."""
    end_cheeks: int = 0
    """At its end: 0 where it is square, 1 for one cheek, 2 for a point."""
    end_tilt: Degrees | None = None
    """Of the blade for them, from square; or, of a ridge that ends on sheathing, of that cut from the board's end."""
    ends: tuple[BoardEnd, ...] = ()
    """Of a fascia or valley board: those that are not square."""
    edge: int | None = None
    """Of a fascia: the place of its eave in the plan's edges."""


class Plan(Struct, frozen=True):
    """The whole roof in plan."""

    slopes: tuple[Slope, ...]
    corners: tuple[CornerBoard, ...] = ()
    levels: tuple[LevelBoard, ...] = ()
    ridge_run_in: Exact = field(default_factory=Exact)
    """Of the first slope, to the highest ridge."""
    lift_in: Exact = field(default_factory=Exact)
    """How high over the main rafters' tops a wing's are laid, PLUMB; 0 where none are."""
    plates: tuple[Point, ...] = ()
    """The outline of the framing, a corner after the other with the building at the left."""
    edges: tuple[str, ...] = ()
    """What stands on each side of that, from its corner to the next: the name of a slope, '' for a gable; a bay's wall has
    none."""

    def between(self, start: Point, end: Point) -> tuple[str, ...]:
        """Return the names of the slopes that the hip or valley between two points lies between.

        Notes:
            1. Of a longer valley the wing's slope is there near its foot only, of an upper hip the front from its foot's middle on.
        """
        shares = Fraction(1, 20), Fraction(1, 2)
        return tuple(
            slope.name
            for slope in self.slopes
            if any(slope.lies_along(start, end, share) for share in shares)
        )


ROUND_OFF_IN = 1e-6
ZERO = exact(0)
EAST: Point = (exact(1), ZERO)
NORTH: Point = (ZERO, exact(1))
WEST: Point = (exact(-1), ZERO)
SOUTH: Point = (ZERO, exact(-1))
