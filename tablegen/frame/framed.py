"""The members of a whole roof by their marks: those that are cut alike under one, with where each of them stands."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import count

from msgspec import Struct
from msgspec.structs import replace

from tablegen.frame.asked import Asked
from tablegen.frame.gable_ends import barges
from tablegen.frame.plan import Plan, Point
from tablegen.frame.rafters import Stood, rafters_of
from tablegen.numbers.figure import Figure, length_figure
from tablegen.roof.figures import Length
from tablegen.roof.member import Hand, Kind, Line, Member, inches_of

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
    Kind.BARGE: 'B',
    Kind.UPPER_BARGE: 'UB',
    Kind.HIP: 'H',
    Kind.UPPER_HIP: 'UH',
    Kind.VALLEY: 'V',
}
"""How the mark of a member begins, by its kind; a number follows where there are several of one kind."""
UNHANDED = {Line.SIDE_RIGHT: Line.SIDE, Line.TAIL_RIGHT: Line.TAIL_SIDE}
"""Marks that change places between the two hands of a pair."""


class Standing(Struct, frozen=True):
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


class Framed(Struct, frozen=True):
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


Placed = tuple[Member, Hand | None, Standing]


def framed_members(asked: Asked, plan: Plan) -> Iterator[Framed]:
    """Return all members by kind, then from the shortest."""
    by_kind: dict[Kind, dict[tuple[tuple[str, ...], str], list[Placed]]] = {}
    told: tuple[Member, tuple[str, ...]] | None = None
    for member, hands, standing in _placed(asked, plan):
        if told is None or told[0] is not member:
            told = member, _lengths(member)
        alike = told[1], ' '.join(hand or '' for hand in hands)
        hand = next((one for one in hands if one), None)
        by_kind.setdefault(member.kind, {}).setdefault(alike, []).append((member, hand, standing))
    for kind in Kind:
        yield from _marked(MARKS[kind], by_kind.get(kind, {}).values())


def _placed(asked: Asked, plan: Plan) -> Iterator[tuple[Member, tuple[Hand | None, ...], Standing]]:
    main = plan.slopes[0].members.side.slope
    for slope in plan.slopes:
        for one in rafters_of(slope, asked, plan.lift_in, main):
            yield one.member, one.hands, _standing(one, asked)
    for member, of, (start, end) in barges(asked, plan):
        yield member, (member.head.long, member.tail.long), Standing(of.name, None, None, start, end)
    for board in plan.corners:
        yield board.member, (board.hand,), Standing('', None, None, board.start, board.end)


def _marked(letters: str, groups: Iterable[list[Placed]]) -> Iterator[Framed]:
    """Return members of one kind by mark: from the shortest; the two hands of a pair have one number."""
    pairs: dict[tuple[str, ...], list[list[Placed]]] = {}
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


def _lengths(member: Member) -> tuple[str, ...]:
    """Return what tells members apart: where every mark is, and the cut."""
    marks = (f'{UNHANDED.get(mark.line, mark.line)} {mark.at.decimal}' for mark in member.marks)
    seat = member.mouth.seat if member.mouth else None
    seated = seat.decimal if isinstance(seat, Figure) else ''
    return (*sorted(marks), member.cut.plumb.decimal, seated, 'square' if member.tail.square else '')


def _standing(one: Stood, asked: Asked) -> Standing:
    slope, half = one.slope, one.member.thickness_in / 2
    return Standing(
        slope.name,
        length_figure(one.along_in, asked.measure),
        length_figure(one.along_in - half, asked.measure),
        slope.on_plan(one.along_in, one.foot_in),
        slope.on_plan(one.along_in, one.head_in),
    )
