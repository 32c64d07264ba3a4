"""An L at the right of two hipped ends has the members of that at the left: of the other hand, as far from the other end."""

from __future__ import annotations

from collections import Counter
from fractions import Fraction as F

import pytest
from frame_roofs import FIXED
from msgspec.structs import replace

from tablegen.frame.frame import Frame, frame
from tablegen.frame.framed import Framed
from tablegen.numbers.exact import exact
from tablegen.numbers.figure import length_figure
from tablegen.roof.member import End, inches_of
from tablegen.roof.taped import taped

MEASURE = FIXED['gable'].measure
OTHER = {'left': 'right', 'right': 'left', 'wing_left': 'wing_right', 'wing_right': 'wing_left'}
UNLIKE = {'side': 'side_right', 'side_right': 'side', 'tail_side': 'tail_right', 'tail_right': 'tail_side'}
"""The mark of a left cheek and that of the right one, where they are not alike."""


def _sawn(end: End, turn: bool) -> tuple:
    """Return what comes off at an end, its left cheek and its right one, and the side of its long point."""
    cheeks = [
        (cut.top_from_square.text, cut.side_line.text, cut.side_blade_tilt.text, back.along.text) if cut and back else ()
        for cut, back in ((end.cut, end.back), (end.other or end.cut, end.other_back or end.back))
    ]  # fmt: skip
    long = OTHER[end.long] if end.long and turn else end.long
    return end.off and end.off.along.text, *(cheeks[::-1] if turn else cheeks), long, end.hollow, end.square


def _sort(one: Framed, turn: bool) -> tuple:
    """Return how one is cut: its marks by their places from both ends of the board."""
    member, hand = one.member, OTHER[one.hand] if one.hand and turn else one.hand
    rows = taped(member, MEASURE)
    lines = [row.line for row in rows]
    names = [UNLIKE[line] if turn and UNLIKE.get(line) in lines else line.value for line in lines]
    at = [(row.from_upper.text, row.from_lower.text) for row in rows]
    marks = tuple(sorted(zip(names, at, strict=True)))
    bevels = tuple(one.text for one in (member.backs.left, member.backs.right)) if member.backs else ()
    bevels = bevels[::-1] if turn else bevels
    ends = _sawn(member.head, turn), _sawn(member.tail, turn)
    return member.kind, hand, one.count, member.stick.text, member.cut.plumb.text, ends, bevels, marks


def _members(made: Frame, turn: bool) -> Counter:
    return Counter(_sort(one, turn) for one in made.members)


def _places(made: Frame, turn: bool) -> Counter:
    """Return the kinds of members by where they stand along each plate; turned, from its right end."""
    long = {slope.name: slope.length_in for slope in made.plan.slopes}
    found = Counter()
    for one in made.members:
        for place in one.standing:
            if place.center:
                at = inches_of(place.center)
                at = length_figure(long[place.slope] - at if turn else exact(at), MEASURE).text
                found[one.member.kind, OTHER.get(place.slope, place.slope) if turn else place.slope, at] += 1
    return found


def _corners(made: Frame, turn: bool) -> Counter:
    """Return where hips, valleys and ridges begin and end on the plan, in; turned, from the right end."""
    boards = [(one.member.kind, one.start, one.end) for one in made.plan.corners]
    boards += [(one.mark, one.start, one.end) for one in made.plan.levels]
    long = float(made.asked.length_in)
    return Counter(
        (
            kind,
            *sorted((round(long - float(x) if turn else float(x), 6), round(float(y), 6)) for x, y in ends),
        )
        for kind, *ends in boards
    )


@pytest.mark.parametrize('name', [name for name in FIXED if name.startswith('ell at the right,')])
def test_an_l_at_the_right_is_the_one_at_the_left_turned(name):
    right = FIXED[name]
    left, made = frame(replace(right, kind=replace(right.kind, from_left_in=F(0)))), frame(right)

    for told in (_members, _places, _corners):
        assert told(made, False) == told(left, True)
    assert made.studs == tuple(
        replace(one, slopes=tuple(OTHER.get(s, s) for s in one.slopes)) for one in left.studs
    )
    assert (made.heights, made.checks, made.concerns) == (left.heights, left.checks, left.concerns)
