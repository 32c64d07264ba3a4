"""Members that share a marking sheet: cut alike at both ends, of one stock and one bird's mouth, and of any length."""

from __future__ import annotations

from collections.abc import Hashable, Sequence

from msgspec import Struct

from tablegen.frame.framed import Framed
from tablegen.numbers.exact import Exact
from tablegen.roof.cheeks import CheekCut
from tablegen.roof.member import End, Hand, Kind, Line, Member
from tablegen.roof.taped import points_of


class Marked(Struct, frozen=True):
    """One mark: a member, or the two hands of a pair."""

    hands: tuple[Framed, ...]
    """The left one first."""

    @property
    def name(self) -> str:
        return self.lead.member.name

    @property
    def lead(self) -> Framed:
        return self.hands[0]

    @property
    def count(self) -> int:
        return sum(one.count for one in self.hands)

    def count_of(self, hand: Hand | None) -> int:
        """Return how many there are of one hand."""
        return sum(one.count for one in self.hands if one.hand is hand)


Group = tuple[Marked, ...]


def groups_of(members: Sequence[Framed]) -> list[Group]:
    """Return what is on each marking sheet, in the order of the members."""
    found: dict[Hashable, dict[str, list[Framed]]] = {}
    for framed in members:
        found.setdefault(_pattern(framed), {}).setdefault(framed.member.name, []).append(framed)
    return [tuple(Marked(tuple(hands)) for hands in marks.values()) for marks in found.values()]


def all_alike(group: Group) -> bool:
    """Return whether every mark of a group is as long as the others."""
    return len({one.lead.member.overall.count for one in group}) == 1


def hands_of(group: Group) -> list[Hand | None]:
    """Return the hands that a group has, the left one first."""
    there = {framed.hand for one in group for framed in one.hands}
    return [hand for hand in (None, Hand.LEFT, Hand.RIGHT) if hand in there]


def _pattern(framed: Framed) -> Hashable:
    member = framed.member
    lines = {mark.line for mark in member.marks}
    unlike = member.backs is not None and member.backs.left.text != member.backs.right.text
    alone = framed.hand if unlike or {Line.SIDE_RIGHT, Line.TAIL_RIGHT} & lines else None
    hands = member.head.long, member.tail.long
    crossed = hands[0] is hands[1] if all(hands) else None
    plate = member.at(Line.PLATE) if Line.PLATE in lines else None
    return (
        Kind.COMMON if member.kind is Kind.END_COMMON else member.kind, member.pitch.text, member.stock.name, member.cut.plumb.text, member.hold.text,
        _end(member.head), _end(member.tail), tuple(sorted(lines)), str(member.mouth and member.mouth.seat),
        plate is not None and _decimal(points_of(member)[1] - plate), crossed, alone, member.cautions,
    )  # fmt: skip


def _decimal(length: Exact) -> str:
    return f'{float(length):.6f}'


def _end(end: End) -> Hashable:
    cuts = [one for one in (end.cut, end.other) if isinstance(one, CheekCut)]
    off = (end.off.stop, end.off.along.decimal, end.off.thickness_in) if end.off else None
    return (
        off,
        tuple((type(cut), cut.top_from_square.text, cut.side_blade_tilt.text) for cut in cuts),
        end.blunt,
        bool(end.bevel),
        end.square,
    )


def lines_on(member: Member) -> list[Line]:
    """Return the marks of a member that are numbered on its board, from the upper end on."""
    return [mark.line for mark in member.marks if mark.line not in (Line.CENTER, Line.FOOT)]
