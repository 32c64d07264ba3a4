"""A whole roof turned left to right: an L flush with the right one of two hipped ends is framed as one flush with the left one."""

from __future__ import annotations

from fractions import Fraction

from msgspec.structs import replace

from tablegen.frame.plan import ZERO, CornerBoard, Plan, Point, Slope
from tablegen.frame.wing_parts import turned_over
from tablegen.numbers.exact import exact
from tablegen.roof.member import Backs, End, Line, Member

NAMES = {'left': 'right', 'right': 'left', 'wing_left': 'wing_right', 'wing_right': 'wing_left'}
"""What a slope is called when it is turned."""
LINES = {
    Line.SIDE: Line.SIDE_RIGHT,
    Line.SIDE_RIGHT: Line.SIDE,
    Line.TAIL_SIDE: Line.TAIL_RIGHT,
    Line.TAIL_RIGHT: Line.TAIL_SIDE,
}
"""The marks of the left and of the right one of two cheeks that are not alike."""


def turned(plan: Plan, length_in: Fraction) -> Plan:
    """Return the plan of a roof turned left to right.

    Given:
        length_in  of its framing, along the main ridge
    """

    def over(point: Point) -> Point:
        return exact(length_in) - point[0], point[1]

    def slope(one: Slope) -> Slope:
        right, up = one.along
        origin = over(one.on_plan(one.length_in, ZERO))
        name = NAMES.get(one.name, one.name)
        return replace(turned_over(one), name=name, origin=origin, along=(right, -up))

    def corner(one: CornerBoard) -> CornerBoard:
        hand = one.hand and one.hand.other
        return CornerBoard(turned_member(one.member), over(one.start), over(one.end), hand)

    edges = [NAMES.get(name, name) for name in plan.edges]
    return replace(
        plan,
        slopes=tuple(map(slope, plan.slopes)),
        corners=tuple(map(corner, plan.corners)),
        levels=tuple(replace(one, start=over(one.start), end=over(one.end)) for one in plan.levels),
        plates=tuple(over(point) for point in reversed(plan.plates)),
        edges=(*reversed(edges[:-1]), edges[-1]),  # each from its corner to the next
    )


def turned_member(one: Member) -> Member:
    """Return a member turned left to right."""
    there = {mark.line for mark in one.marks}
    marks = tuple(
        replace(mark, line=LINES[mark.line]) if LINES.get(mark.line) in there else mark for mark in one.marks
    )
    backs = Backs(one.backs.right, one.backs.left) if one.backs else None
    return replace(one, head=_end(one.head), tail=_end(one.tail), marks=marks, backs=backs)


def _end(one: End) -> End:
    one = replace(one, long=one.long and one.long.other)
    if one.other is None:
        return one
    return replace(one, cut=one.other, other=one.cut, back=one.other_back, other_back=one.back)
