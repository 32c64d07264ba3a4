"""What stands at a gable: studs under its rafters, barge rafters outside it, lookouts that carry those."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import ClassVar

from msgspec import Struct
from msgspec.structs import replace

from tablegen.frame.asked import Asked
from tablegen.frame.plan import ZERO, Edge, Level, LevelBoard, Plan, Point, Reach, Region, Slope
from tablegen.frame.rafters import head_of, tail_of
from tablegen.frame.stations import clear_of
from tablegen.frame.wood import free_tail
from tablegen.geometry import common, shortening, tail
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, floor_of, sign
from tablegen.numbers.figure import degree_figure, length_figure
from tablegen.numbers.units import INCHES
from tablegen.roof.figures import Degrees, Length
from tablegen.roof.framing import rafter
from tablegen.roof.member import Kind, Member, Stop
from tablegen.roof.members import Members
from tablegen.roof.plane import Plane
from tablegen.roof.stopped import square_end
from tablegen.written.stocks import stock

LADDER_IN = INCHES.unit_run
"""Up to so much gable overhang the barge rafter is carried by blocks from the gable's rafter alone; past it by lookouts that
run back over that one to the next: common practice, no source."""
LOOKOUT, STUD = stock('2×4'), stock('2×4')
"""Lookouts lie flat."""


class Rake(Struct, frozen=True):
    """The sloping edge of a slope at a gable, at its left or right end."""

    slope: Slope
    region: Region
    lower: Reach
    upper: Reach
    at_left: bool

    @property
    def end_in(self) -> Exact:
        """Return where it is, along, at the outside of framing."""
        return self.lower.start_in if self.at_left else self.lower.end_in

    @property
    def outwards(self) -> int:
        return -1 if self.at_left else 1

    @property
    def foot_in(self) -> Exact:
        """Return where it starts, inward: at the plate line, or at a purlin."""
        return self.lower.at(self.end_in)

    @property
    def top_in(self) -> Exact:
        """Return where it ends, inward: at the ridge or purlin, or where a half-hip begins."""
        return self.upper.at(self.end_in)


class Stud(Struct, frozen=True):
    """Gable studs alike."""

    datum: ClassVar = ('cut_list.studs',)
    mark: str
    count: int
    from_plate: Length
    """LEVEL, from the plate line of its slope to its center."""
    long: Length
    """From the plate's top to the upper edge of its top cut."""
    short: Length
    top_cut: Degrees
    """From the line square across it."""
    slopes: tuple[str, ...]
    """Names of the slopes that it stands under."""


def rakes(plan: Plan) -> Iterator[Rake]:
    """Return every rake: where the end of a slope's lower line has its upper one above it."""
    for slope in plan.slopes:
        for at_left, region in ((True, slope.regions[0]), (False, slope.regions[-1])):
            place = 0 if at_left else -1
            one = Rake(slope, region, region.lower[place], region.upper[place], at_left)
            free = one.lower.edge in (Edge.PLATE, Edge.PURLIN) and one.upper.edge is not Edge.VALLEY
            raised = one.upper.edge is Edge.HIP and 'left' in plan.edges  # a hip that crosses a raised plate
            if free and not raised and one.top_in > one.foot_in and not slope.name.startswith('side_'):
                yield one


def studs_of(asked: Asked, plan: Plan) -> tuple[Stud, ...]:
    """Return the studs of all gables, a space on center from each plate line, from the shortest.

    Source: the underside of the rafter over the plate's top: its top edge there less its plumb depth.
    """
    found: dict[tuple[str, ...], tuple[Exact, Exact, Exact, Slope, list[str]]] = {}
    for rake in rakes(plan):
        slope, half = rake.slope.members.side.slope, STUD.thickness_in / 2
        depth = tail.plumb_cut_length(asked.rafters.depth_in, slope)
        for place in _stud_places(asked, rake):
            under = rake.slope.top_in - rake.slope.plate_in - depth
            long, short = (under + slope * (place + side) for side in (half, -half))
            if short > 0:
                key = (length_figure(long, asked.measure).text, degree_figure(Angle(slope)).text)
                found.setdefault(key, (place, long, short, rake.slope, []))[-1].append(rake.slope.name)
    ordered = sorted(found.values(), key=lambda one: one[1])
    return tuple(
        Stud(
            f'GS{number}' if len(ordered) > 1 else 'GS',
            len(names),
            length_figure(place, asked.measure),
            length_figure(long, asked.measure),
            length_figure(short, asked.measure),
            degree_figure(Angle(slope.members.side.slope)),
            tuple(dict.fromkeys(names)),
        )
        for number, (place, long, short, slope, names) in enumerate(ordered, 1)
    )


def _stud_places(asked: Asked, rake: Rake) -> Iterator[Exact]:
    """Return where a rake's studs stand, inward: none under the ridge itself, which its own post carries."""
    half, spacing = exact(STUD.thickness_in / 2), asked.spacing_in
    top, beside = rake.top_in - _in_the_way(rake.upper), half + _in_the_way(rake.lower)
    first = floor_of(rake.foot_in / spacing) + 1
    last = floor_of(top / spacing)
    places = clear_of(
        tuple(exact(spacing * number) for number in range(first, last + 1)), rake.foot_in, beside
    )
    return (place for place in places if rake.foot_in + beside <= place <= top - half)


def _in_the_way(reach: Reach) -> Exact:
    """Return how far from the center line that bounds a rake, or a wall's face, the board there may be in a stud's way, level."""
    if reach.edge is Edge.HIP:
        plan = Angle(reach.rate if sign(reach.rate) > 0 else -reach.rate)
        return shortening.jack_at(reach.thickness_in, plan)
    if reach.edge is Edge.BEAM:  # the run goes to its near face
        return ZERO
    whole = reach.edge in (Edge.OVER, Edge.LEDGER)
    return exact(reach.thickness_in if whole else reach.thickness_in / 2)


def barges(asked: Asked, plan: Plan) -> Iterator[tuple[Member, Slope, tuple[Point, Point]]]:
    """Return the barge rafter of every rake, with where it stands on the plan."""
    if not asked.gable_overhang_in:
        return
    middle = exact(asked.gable_overhang_in - asked.rafters.thickness_in / 2)
    for rake in rakes(plan):
        side = rake.slope.members.side
        along = rake.end_in + rake.outwards * middle
        run, head = rake.upper.at(along) - rake.foot_in, head_of(side, rake.upper)
        members, kind = rake.slope.members, Kind.BARGE
        if (
            rake.lower.edge is Edge.PLATE
        ):  # a valley at the corner of the plates there may stop it before the eave
            out, foot = tail_of(rake.region, along, side, free_tail(asked, rake.slope))
            members = Members(replace(side, overhang_in=out))
        else:
            kind, foot = Kind.UPPER_BARGE, square_end(side, Stop.PURLIN, rake.lower.thickness_in)
        member = rafter('', kind, Plane(members, run, asked.measure), run, head, foot)
        points = rake.slope.on_plan(along, rake.foot_in), rake.slope.on_plan(along, rake.foot_in + run)
        yield replace(member, mouth=None, cautions=()), rake.slope, points


def lookouts(asked: Asked, plan: Plan) -> Iterator[LevelBoard]:
    """Return what carries the barge rafters: of every rake one at its foot and one every space up the slope.

    Returned:
        up to LADDER_IN of overhang blocks from the gable's rafter to the barge's inner face; past it lookouts that run back to the
        near side of the rafter next to the gable's
    """
    out, thick = asked.gable_overhang_in, asked.rafters.thickness_in
    if out <= thick:
        return
    numbers: dict[str, tuple[Exact, int, Point, Point]] = {}
    for rake in rakes(plan):
        up = common.line_length(rake.top_in - rake.foot_in, rake.slope.members.side.slope)
        count = floor_of(up / asked.spacing_in) + 1
        back = ZERO if out <= LADDER_IN else _next_rafter(rake, thick) - thick / 2
        start = rake.end_in - rake.outwards * back
        end = rake.end_in + rake.outwards * exact(out - thick)
        key = length_figure(back + out - thick, asked.measure).decimal
        points = rake.slope.on_plan(start, rake.foot_in), rake.slope.on_plan(end, rake.foot_in)
        long, before, *kept = numbers.get(key, (back + out - thick, 0, *points))
        numbers[key] = (long, before + count, kept[0], kept[1])
    for number, (long, count, first, last) in enumerate(numbers.values(), 1):
        mark = f'LO{number}' if len(numbers) > 1 else 'LO'
        yield LevelBoard(
            mark, Level.LOOKOUT, long, first, last, LOOKOUT.depth_in, LOOKOUT.thickness_in, count
        )


def _next_rafter(rake: Rake, thickness_in: Fraction) -> Exact:
    """Return how far from the gable's outside the center of the next rafter is that does not stand beside the gable's own."""
    from_end = [
        place - rake.end_in if rake.at_left else rake.end_in - place for place in rake.region.stations
    ]
    own, *others = from_end if rake.at_left else from_end[::-1]
    return next(place for place in others if place - own > thickness_in)
