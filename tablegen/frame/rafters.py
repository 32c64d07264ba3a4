"""Every rafter that stands on a slope, as a member: what is above and below it in plan says how its ends are cut."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from operator import is_

from msgspec import Struct
from msgspec.structs import replace

from tablegen.frame.asked import Asked
from tablegen.frame.plan import Edge, Reach, Region, Slope
from tablegen.frame.wood import free_tail
from tablegen.geometry import shortening, tail
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, sign
from tablegen.roof.framing import rafter
from tablegen.roof.member import End, Hand, Kind, Line, Mark, Member, Stop
from tablegen.roof.members import Members
from tablegen.roof.plane import Plane
from tablegen.roof.seat import common_notch
from tablegen.roof.side import Side
from tablegen.roof.stopped import FREE, cheek_end, clipped_end, faced_end, laid_end, square_end

STOPS = {
    Edge.RIDGE: Stop.RIDGE,
    Edge.MATE: Stop.MATE,
    Edge.HIP: Stop.HIP,
    Edge.VALLEY: Stop.VALLEY,
    Edge.PURLIN: Stop.PURLIN,
    Edge.WALL: Stop.WALL,
    Edge.LEDGER: Stop.LEDGER,
    Edge.BEAM: Stop.BEAM,
    Edge.OVER: Stop.BEAM,
    Edge.BOARD: Stop.BOARD,
}
RIDGES = (Edge.RIDGE, Edge.MATE)
KINDS = {
    **{(Edge.PLATE, edge): Kind.COMMON for edge in RIDGES},
    **{(Edge.VALLEY, edge): Kind.VALLEY_JACK for edge in RIDGES},
    **{(Edge.BOARD, edge): Kind.LAID_JACK for edge in RIDGES},
    **{(Edge.PURLIN, edge): Kind.UPPER_RAFTER for edge in RIDGES},
    **{(Edge.PLATE, edge): Kind.SHED_RAFTER for edge in (Edge.WALL, Edge.LEDGER, Edge.BEAM, Edge.OVER)},
    (Edge.PLATE, Edge.HIP): Kind.HIP_JACK,
    (Edge.PLATE, Edge.VALLEY): Kind.HIP_JACK,
    (Edge.PLATE, Edge.PURLIN): Kind.LOWER_RAFTER,
    (Edge.VALLEY, Edge.HIP): Kind.CRIPPLE,
    (Edge.BOARD, Edge.HIP): Kind.LAID_JACK,
    (Edge.VALLEY, Edge.VALLEY): Kind.CRIPPLE,
}
"""What a rafter is by what is below it and above it."""


class Stood(Struct, frozen=True):
    """A rafter where it stands."""

    member: Member
    slope: Slope
    along_in: Exact
    foot_in: Exact
    """Inward, of its plate line or of the center line that stops it there."""
    head_in: Exact

    @property
    def hands(self) -> tuple[Hand | None, Hand | None]:
        """Return on which hand its two ends have their long points."""
        return self.member.head.long, self.member.tail.long


def rafters_of(slope: Slope, asked: Asked, lift_in: Exact, main_slope: Exact) -> Iterator[Stood]:
    """Return the rafters of a slope; where two lines leave no board between them, none.

    Given:
        lift_in, main_slope  of the main roof's sheathing and boards, under what is laid on it

    Notes:
        1. Between two level lines, away from a valley, one rafter is as the next.
    """
    between: tuple[Region, Reach, Reach] | None = None
    for region, along, lower, upper in slope.standing():
        level = not (sign(lower.rate) or sign(upper.rate) or region.valley_out_in(along))
        if not (level and between and all(map(is_, between, (region, lower, upper)))):
            foot = _foot(slope.members.side, lower)
            if lower.edge is Edge.BOARD:
                foot = replace(laid_end(slope.members.side, lift_in, main_slope), long=foot.long)
            member = _rafter(slope, asked, region, along, lower, upper, foot)
            between = (region, lower, upper) if level else None
        if _is_board(member):
            yield Stood(member, slope, along, lower.at(along), upper.at(along))


def _rafter(
    slope: Slope, asked: Asked, region: Region, along: Exact, lower: Reach, upper: Reach, foot: End
) -> Member:
    """Return the rafter at a place along.

    Given:
        foot  its lower end, where that is not on a plate
    """
    members, side = slope.members, slope.members.side
    kind = Kind.END_COMMON if upper.off_in is not None else KINDS[lower.edge, upper.edge]
    if kind is Kind.SHED_RAFTER and sign(upper.rate):  # a bay's jack, that the wall cuts as a hip would
        kind = Kind.HIP_JACK
    if lower.edge is Edge.PLATE:
        out, foot = tail_of(region, along, side, free_tail(asked, slope))
        members = members if out is side.overhang_in else Members(replace(side, overhang_in=out))
    run = upper.at(along) - lower.at(along)
    member = rafter('', kind, Plane(members, run, asked.measure), run, head_of(side, upper), foot)
    return _over_beam(member, upper.thickness_in, side) if upper.edge is Edge.OVER else member


def tail_of(region: Region, along: Exact, side: Side, free: End) -> tuple[Exact, End]:
    """Return a tail's level length and its end: beside an inside corner the valley's tail stops it.

    Given:
        free  the end of one that reaches the fascia

    Notes:
        1. Where the valley crosses the corner of a tail only, that is cut plumb and square across short of it.
        2. Where a wing's roof is laid on the main one, that one's tails run on there, and the wing has none.
        3. A plumb end ends where its lower corner comes to a fascia that leans.
    """
    crossed = region.valley_out_in(along)
    if not region.tails:
        return exact(0), FREE
    if crossed is None:
        return side.overhang_in, free
    out, reach = crossed
    plan = _plan(reach)
    off = shortening.jack_at(reach.thickness_in, plan)
    half = shortening.points_apart(side.boards.rafter_in, plan) / 2
    if out - off - half >= side.overhang_in:
        return side.overhang_in, free
    if reach.edge is Edge.BOARD:
        return exact(0), FREE
    most = side.overhang_in
    if free.square:
        most = most - tail.square_cut_set_in(side.boards.stock.depth_in, side.slope)
    if out - off + half > most:
        return min(out - off - half, most), FREE
    return out, _foot(side, reach)


def head_of(side: Side, reach: Reach) -> End:
    """Return the upper end of a rafter at what lies there."""
    stop = STOPS[reach.edge]
    if reach.off_in is not None and reach.clipped and reach.thickness_in:
        return clipped_end(side, reach.thickness_in, reach.off_in)
    if reach.off_in is not None:
        return faced_end(side, stop, reach.thickness_in, reach.off_in)
    if reach.edge in (Edge.LEDGER, Edge.BEAM, Edge.OVER):
        off = shortening.at_ledger(reach.thickness_in) if reach.edge is Edge.LEDGER else exact(0)
        return faced_end(side, stop, reach.thickness_in, off)
    if sign(reach.rate):
        hand = Hand.RIGHT if sign(reach.rate) > 0 else Hand.LEFT
        return cheek_end(side, stop, reach.thickness_in, _plan(reach), hand)
    return square_end(side, stop, reach.thickness_in)


def _foot(side: Side, reach: Reach) -> End:
    if reach.edge is Edge.PLATE:
        return FREE
    if not sign(reach.rate):
        return square_end(side, STOPS[reach.edge], reach.thickness_in)
    hand = Hand.LEFT if sign(reach.rate) > 0 else Hand.RIGHT
    return cheek_end(side, STOPS[reach.edge], reach.thickness_in, _plan(reach), hand)


def _plan(reach: Reach) -> Angle:
    """Return its angle in plan to the plate line."""
    return Angle(reach.rate if sign(reach.rate) > 0 else -reach.rate)


def _over_beam(member: Member, beam_in: Fraction, side: Side) -> Member:
    """Return a rafter that runs over a beam to its far face, where it ends: its second heel stands at the near one, the seats are alike."""
    near = Mark(Line.UPPER_PLATE, side.length(shortening.along(beam_in, side.slope)))
    first, *rest = member.marks
    called = (*member.cautions, *(common_notch(side).cautions(Fraction(0)) if member.mouth else ()))
    return replace(
        member,
        marks=(first, *rest[:1], near, *rest[1:]),
        upper_mouth=member.mouth,
        cautions=tuple(dict.fromkeys(called)),
    )


def _is_board(member: Member) -> bool:
    """Return whether there is wood between the short points of both ends."""
    at = {mark.line: member.at(mark.line) for mark in member.marks}
    head = at.get(Line.SHORT, at.get(Line.CUT))
    foot = at.get(Line.FOOT_SHORT, at.get(Line.FOOT_CUT, at.get(Line.PLATE)))
    return head is not None and foot is not None and head < foot
