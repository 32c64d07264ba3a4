"""The whole frame of one roof: its plan, every member by its mark with where each one stands, its heights."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from itertools import count

from tablegen.frame.asked import (
    Asked,
    Bay,
    Gable,
    Gambrel,
    HalfHip,
    Hip,
    ManySided,
    RidgeTop,
    Saltbox,
    Shed,
    Wing,
)
from tablegen.frame.gables import gable, gambrel, shed
from tablegen.frame.hips import half_hipped, hipped
from tablegen.frame.many_sided import bay, rounded
from tablegen.frame.plan import LevelBoard, Plan, Point
from tablegen.frame.rafters import Stood, rafters_of
from tablegen.frame.wings import winged
from tablegen.geometry import ridge
from tablegen.numbers.figure import Figure, length_figure
from tablegen.roof.figures import Length
from tablegen.roof.member import Hand, Kind, Line, Member, inches_of

PLANS: dict[type, Callable[[Asked], Plan]] = {
    Shed: shed,
    Gable: gable,
    Saltbox: gable,
    Gambrel: gambrel,
    Hip: hipped,
    HalfHip: half_hipped,
    Wing: winged,
    ManySided: rounded,
    Bay: bay,
}
MARKS = {
    Kind.COMMON: 'C',
    Kind.END_COMMON: 'E',
    Kind.SHED_RAFTER: 'C',
    Kind.LOWER_RAFTER: 'LR',
    Kind.UPPER_RAFTER: 'UR',
    Kind.HIP_JACK: 'HJ',
    Kind.VALLEY_JACK: 'VJ',
    Kind.CRIPPLE: 'CJ',
    Kind.LAID_JACK: 'LJ',
    Kind.HIP: 'H',
    Kind.VALLEY: 'V',
}
"""How the mark of a member begins, by its kind; a number follows where there are several of one kind."""

UNHANDED = {Line.SIDE_RIGHT: Line.SIDE, Line.TAIL_RIGHT: Line.TAIL_SIDE}
"""Marks that change places between the two hands of a pair."""


@dataclass(frozen=True, slots=True)
class Standing:
    """Where one member of a mark stands."""

    slope: str
    """The name of its slope, or of the corner."""
    center: Length | None
    """Along the plate from its left end, seen from outside, to its center line; None for a hip or valley."""
    near_edge: Length | None
    """The same to its near side: draw the line there, and the X beyond it."""
    start: Point
    end: Point
    """On the plan: its plate line or foot, and what stops it."""


@dataclass(frozen=True, slots=True)
class Framed:
    """All members that are cut alike, under one mark."""

    member: Member
    """Its name is the mark."""
    hand: Hand | None
    """Left or right, where it has a mate cut the other way; by the side of its head's long point, or else its foot's."""
    standing: tuple[Standing, ...]

    @property
    def count(self) -> int:
        """Return how many there are."""
        return len(self.standing)


@dataclass(frozen=True, slots=True)
class Heights:
    """Of the roof, PLUMB over the main plates' top."""

    above_plate: Length
    """The main rafters' top edge over the plate line."""
    planes_meet: Length
    """The line where the planes of the tops meet at the highest ridge, or the top edge's end of a shed."""
    ridge_top: Length | None
    """None where there is no ridge board."""
    ridge_bottom: Length | None
    tail_top: Length
    """The tails' upper corner: the fascia's line; below 0 is under the plates' top."""


@dataclass(frozen=True, slots=True)
class Frame:
    """One whole roof."""

    asked: Asked
    plan: Plan
    members: tuple[Framed, ...]
    """By kind, then from the shortest."""
    levels: tuple[LevelBoard, ...]
    heights: Heights


def frame(asked: Asked) -> Frame:
    """Return the frame of a roof.

    Errors:
        BookError for sizes that no such roof has
    """
    plan = PLANS[type(asked.kind)](asked)
    return Frame(asked, plan, tuple(_members(asked, plan)), plan.levels, _heights(asked, plan))


def _members(asked: Asked, plan: Plan) -> Iterator[Framed]:
    stood = [
        one
        for slope in plan.slopes
        for one in rafters_of(slope, asked, plan.lift_in, plan.slopes[0].members.side.slope)
    ]
    found: dict[tuple[Kind, tuple[str, ...], str], list[tuple[Member, Hand | None, Standing]]] = {}
    for one in stood:
        member, hand = one.member, next((hand for hand in one.hands if hand), None)
        found.setdefault(_alike(member, one.hands), []).append((member, hand, _standing(one, asked)))
    for board in plan.corners:
        member = board.member
        place = Standing('', None, None, board.start, board.end)
        found.setdefault(_alike(member, (board.hand, None)), []).append((member, board.hand, place))
    by_kind: dict[Kind, list[list[tuple[Member, Hand | None, Standing]]]] = {}
    for (kind, _, _), each in found.items():
        by_kind.setdefault(kind, []).append(each)
    for kind in Kind:
        yield from _marked(MARKS[kind], by_kind.get(kind, []))


def _marked(letters: str, groups: list[list[tuple[Member, Hand | None, Standing]]]) -> Iterator[Framed]:
    """Return members of one kind by mark: from the shortest; the two hands of a pair have one number."""
    pairs: dict[tuple[str, ...], list[list[tuple[Member, Hand | None, Standing]]]] = {}
    for each in groups:
        head, foot = each[0][0].head.long, each[0][0].tail.long
        parallel = 'parallel' if head and head == foot else ''
        pairs.setdefault((*_lengths(each[0][0]), parallel), []).append(each)
    ordered = sorted(pairs.values(), key=lambda pair: inches_of(pair[0][0][0].overall))
    for number, pair in zip(count(1), ordered, strict=False):
        mark = f'{letters}{number}' if len(ordered) > 1 else letters
        for each in sorted(pair, key=lambda one: one[0][1] or ''):
            member, hand, _ = each[0]
            yield Framed(replace(member, name=mark), hand, tuple(place for _, _, place in each))


def _alike(member: Member, hands: tuple[Hand | None, Hand | None]) -> tuple[Kind, tuple[str, ...], str]:
    return member.kind, _lengths(member), ' '.join(hand or '' for hand in hands)


def _lengths(member: Member) -> tuple[str, ...]:
    """Return what tells members apart: where every mark is, and the cut."""
    marks = (f'{UNHANDED.get(mark.line, mark.line)} {mark.at.decimal}' for mark in member.marks)
    seat = member.mouth.seat if member.mouth else None
    return (*sorted(marks), member.cut.plumb.decimal, seat.decimal if isinstance(seat, Figure) else '')


def _standing(one: Stood, asked: Asked) -> Standing:
    slope, half = one.slope, one.member.thickness_in / 2
    return Standing(
        slope.name,
        length_figure(one.along_in, asked.measure),
        length_figure(one.along_in - half, asked.measure),
        slope.on_plan(one.along_in, one.foot_in),
        slope.on_plan(one.along_in, one.head_in),
    )


def _heights(asked: Asked, plan: Plan) -> Heights:
    side, measure = plan.slopes[0].members.side, asked.measure
    highest = [slope for slope in plan.slopes if slope.ends_at('R')] or [plan.slopes[0]]
    meet = highest[0].top_in + plan.ridge_run_in * highest[0].members.side.slope
    top = bottom = None
    if asked.ridge and any(board.mark == 'R' for board in plan.levels):
        steeper = max(slope.members.side.slope for slope in highest)
        down = ridge.sits_down(asked.ridge.thickness_in, steeper)
        top = meet if asked.ridge.top is RidgeTop.BEVELED else meet - down
        bottom = top - asked.ridge.depth_in
    return Heights(
        length_figure(side.height_in, measure),
        length_figure(meet, measure),
        length_figure(top, measure) if top is not None else None,
        length_figure(bottom, measure) if bottom is not None else None,
        length_figure(side.height_in - side.overhang_in * side.slope, measure),
    )
