"""Ends: where the cut at an end of a member leaves the edges of its top, exact; what stands there is read here alone.

A point of a board is told by two lengths, in: ALONG its edge, from Line.CENTER towards the tail; and ACROSS a face, square to
that edge: on a side down from the top edge, on the top edge from the left side. Left and right are of somebody who looks up
the roof; the left side is the one that every drawing shows, its ridge at the left.
"""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, one_term
from tablegen.roof.cheeks import CheekCut, OneCheek, TwoCheeks
from tablegen.roof.figures import Degrees
from tablegen.roof.member import End, Hand, Line, Member, inches_of


class Point(Struct, frozen=True):
    """A point of a face."""

    along: Exact
    across: Exact


class Crossing(Struct, frozen=True):
    """A cut at one end: where it leaves the two sides' top edges, and where two cheeks meet between them."""

    left: Exact
    right: Exact
    center: Exact
    """On the center of the top edge."""
    lean: Exact
    """How far along the edge it runs down a side, for an inch square to that edge: the member's slope where it is plumb."""
    between: tuple[Point, ...] = ()
    """Where cheeks meet between the sides, from the left: one point, two where a square end is left; none for a cut in one plane."""
    right_lean: Exact | None = None
    """Its lean on the right side, where that may not be the left one's."""

    @property
    def leans(self) -> tuple[Exact, Exact]:
        """Return its lean on the left side and on the right one."""
        return self.lean, self.lean if self.right_lean is None else self.right_lean

    @property
    def square(self) -> bool:
        return self.left == self.right == self.center

    def over_top(self, thickness_in: Fraction) -> list[Point]:
        """Return its line over the top edge, from the left side to the right one."""
        ends = Point(self.left, exact(0)), Point(self.right, exact(thickness_in))
        return [ends[0], *self.between, ends[1]]

    def marks(self) -> list[Exact]:
        return [self.left, self.right, *([one.along for one in self.between] or [self.center])]


def squared(at: Exact, lean: Exact) -> Crossing:
    """Return a cut square across the board."""
    return Crossing(at, at, at, lean)


def crossings(member: Member) -> tuple[Crossing, Crossing]:
    """Return both ends of a member: all that a pattern takes of an End is read here."""
    upper = (Line.CUT, Line.LONG, Line.SHORT, Line.POINT, Line.SIDE, Line.SIDE_RIGHT)
    tail = (Line.TAIL, Line.TAIL_LONG, Line.TAIL_SHORT, Line.TAIL, Line.TAIL_SIDE, Line.TAIL_RIGHT)
    foot = (Line.FOOT_CUT, Line.FOOT_LONG, Line.FOOT_SHORT, Line.FOOT_CUT, Line.FOOT_CUT, Line.FOOT_CUT)
    lower = tail if member.kind.stands_on_plate else foot
    below = _crossing(member, member.tail, lower, -1 if member.tail.hollow else 1)
    return _crossing(member, member.head, upper, -1), below


def _crossing(member: Member, end: End, lines: tuple[Line, ...], way: int) -> Crossing:
    """Return one end.

    Given:
        lines  its marks: of a square cut, of one cheek's long and short point, of two cheeks and both sides
        way    to which the point of two cheeks lies from both sides: 1 towards the tail, -1 towards the ridge
    """
    at = {mark.line: inches_of(mark.at) for mark in member.marks}
    square, long, short, point, side, right_side = lines
    lean = _lean(member, end, end.cut)
    if isinstance(end.cut, OneCheek) or end.bevel:
        left, right = (at[long], at[short]) if end.long is Hand.LEFT else (at[short], at[long])
        return Crossing(left, right, at[square], lean)
    if end.cut is None:
        return squared(at[square], lean)
    left, right = at[side], at.get(right_side, at[side])
    if isinstance(end.other, TwoCheeks):
        slants = [way * tangent_of(cheek.top_from_square) for cheek in (end.cut, end.other)]
        between = (_meeting(left, right, slants, member.thickness_in),)
        return Crossing(left, right, at[point], lean, between, _lean(member, end, end.other))
    thick = exact(member.thickness_in)
    if end.blunt and end.off:
        clipped = (thick - end.off.thickness_in) / 2
        return Crossing(
            left, right, at[square], lean, tuple(Point(at[square], one) for one in (clipped, thick - clipped))
        )
    return Crossing(left, right, at[point], lean, (Point(at[point], thick / 2),))


def _lean(member: Member, end: End, cut: CheekCut | None) -> Exact:
    """Return how far along a side an end's cut runs for an inch down it; past square where it goes back towards the ridge."""
    if end.bevel:
        return -1 / member.slope
    if cut and cut.side_leaning:
        return -tangent_of(cut.side_leaning)
    return exact(0) if end.square else member.slope


def _meeting(left: Exact, right: Exact, slants: list[Exact], thick: Fraction) -> Point:
    """Return where two cheeks that are not alike meet on the top edge, which need not be on its center.

    Given:
        slants  how far along each goes for an inch across, from its own side

    Source: so far from the left side, across, both have come as far along: left + s k = right + (t − s) k'.
    """
    k, other = slants
    across = exact(one_term(right - left + thick * other)) / one_term(k + other)
    return Point(left + across * k, across)


def tangent_of(angle: Degrees) -> Exact:
    """Return the tangent of an angle that an answer has."""
    assert isinstance(angle.value, Angle)
    return angle.value.tan()
