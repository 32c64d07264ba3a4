"""The lines of a roof's plan, in inches from the left front corner of its framing; for ink only."""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum

from msgspec import Struct

from layouts.drawings.svg import Point
from layouts.words.marking import STOPS
from layouts.words.say import N_, _
from tablegen.frame.asked import Shed, Upper
from tablegen.frame.eaves import outline
from tablegen.frame.frame import Frame
from tablegen.frame.framed import Framed, Standing
from tablegen.frame.plan import Level
from tablegen.frame.plan import Point as Exactly
from tablegen.roof.member import Hand, Kind, Line, Stop

HANDED = {Hand.LEFT: N_('{mark} L'), Hand.RIGHT: N_('{mark} R')}


UPPER = {
    Upper.WALL: Stop.WALL,
    Upper.LEDGER: Stop.LEDGER,
    Upper.BEAM_AGAINST: Stop.BEAM,
    Upper.BEAM_OVER: Stop.BEAM,
}


class Of(StrEnum):
    """What a line is."""

    PLATE = 'plate'
    EAVE = 'eave'
    RAFTER = 'rafter'
    CORNER = 'corner'
    """A hip or a valley."""
    LEVEL = 'level'
    WALL = 'wall'
    """That a bay stands against, or what holds a shed's upper ends."""


class PlanLine(Struct, frozen=True):
    """One line; of a member from its upper end to its lower one, on its center line."""

    of: Of
    mark: str
    start: Point
    end: Point
    alone: bool = True
    """Whether no line like it is so near that a name beside it could be that one's."""


def lines_of(frame: Frame) -> Iterator[PlanLine]:
    """Return every line of a roof's plan; lookouts are none of it, and a fascia is its eave's own line."""
    plan = frame.plan
    fascias = {board.edge: board.mark for board in frame.levels if board.edge is not None}
    for of, ring in ((Of.PLATE, plan.plates), (Of.EAVE, outline(frame.asked, plan))):
        corners = [_floats(point) for point in ring]
        for place, edge in enumerate(zip(corners, corners[1:] + corners[:1], strict=True)):
            if place < len(plan.edges):
                yield PlanLine(of, fascias.get(place, '') if of is Of.EAVE else '', *edge)
    if len(plan.edges) < len(plan.plates):
        yield PlanLine(Of.WALL, _(STOPS[Stop.WALL]), _floats(plan.plates[-1]), _floats(plan.plates[0]))
    if isinstance(frame.asked.kind, Shed):
        against = _(STOPS[UPPER[frame.asked.kind.upper]])
        for board in frame.levels:
            if board.level is Level.LEDGER:
                against = _('{board} {mark}').format(board=against, mark=board.mark)
        ends = plan.plates if frame.asked.kind.upper is not Upper.LEDGER else outline(frame.asked, plan)
        yield PlanLine(Of.WALL, against, _floats(ends[2]), _floats(ends[3]))
    for board in plan.levels:
        if board.level is not Level.LOOKOUT:
            yield PlanLine(Of.LEVEL, board.mark, _floats(board.start), _floats(board.end))
    for framed in frame.members:
        of = Of.CORNER if framed.member.kind.in_corner else Of.RAFTER
        for standing in framed.standing:
            alone = of is Of.CORNER or framed.member.kind in (Kind.BARGE, Kind.UPPER_BARGE)
            yield PlanLine(of, marked(framed), *_ends(framed, standing), alone)


def marked(framed: Framed) -> str:
    """Return a mark with its hand in a letter, where it has one."""
    name = framed.member.name
    return _(HANDED[framed.hand]).format(mark=name) if framed.hand else name


def _ends(framed: Framed, standing: Standing) -> tuple[Point, Point]:
    """Return where a member begins and ends: its marks are as far apart in plan as they are along it, to one scale."""
    member = framed.member
    at = {mark.line: float(member.at(mark.line)) for mark in member.marks}
    upper, lower = (
        next(at[line] for line in lines if line in at)
        for lines in (
            (Line.CUT, Line.POINT),
            (Line.TAIL, Line.FOOT_CUT),
        )
    )
    whole = at.get(Line.PLATE, at.get(Line.FOOT))
    assert whole, 'a member goes down to a plate or to what stops it'
    (x, y), (right, up) = _floats(standing.end), _floats(standing.start)

    def place(along: float) -> Point:
        return x + (right - x) * along / whole, y + (up - y) * along / whole

    return place(upper), place(lower)


def _floats(point: Exactly) -> Point:
    return float(point[0]), float(point[1])
