"""A marking sheet's board as ink: from the exact lines of its members to inches that a drawing takes."""

from __future__ import annotations

from fractions import Fraction

from layouts.drawings.cut_board import CutBoard, CutEnd, Notch
from layouts.roofs.groups import Group, all_alike, hands_of, lines_on
from layouts.words.drawings import CUT_BOARD, ENDS
from layouts.words.frame import HANDS
from layouts.words.say import _
from tablegen.frame.asked import Asked
from tablegen.frame.turned import turned_member
from tablegen.numbers.figure import Measure
from tablegen.roof.ends import Crossing, crossings
from tablegen.roof.member import Line, Member, inches_of, known
from tablegen.roof.taped import points_of, taped


def board_ink(group: Group, asked: Asked) -> CutBoard:
    """Return the board of a group: of several marks the longest, without the figures that only one of them has."""
    marked = group[-1]
    member = marked.lead.member
    head, foot = _plumb_ends(member)
    thick = float(member.thickness_in)
    skew = not head.square or (foot is not None and not foot.square)
    shown = {one.hand: one.member for one in marked.hands}  # another mark may have the other hand alone
    hands = hands_of(group) if skew else []
    ends = [_plumb_ends(shown.get(hand) or turned_member(member)) for hand in hands] or [(head, foot)]
    names = [HANDS[hand] if hand else ENDS['top_edge'] for hand in hands] or ['']
    lines = [line for line in lines_on(member) if line is not Line.UPPER_PLATE or member.mouth]
    at = {mark.line: float(member.at(mark.line)) for mark in member.marks}
    above = _distances(member, asked.measure) if all_alike(group) else ()
    bare = float(inches_of(member.head.off.along)) if member.head.off else 0.0
    return CutBoard(
        float(member.slope),
        float(member.stock.depth_in),
        thick,
        tuple(
            (name, _cut_end(upper, thick), _cut_end(lower, thick) if lower else None)
            for name, (upper, lower) in zip(names, ends, strict=True)
        ),
        at[Line.FOOT_CUT] if member.tail.bevel else None,
        tuple(_notches(member)),
        _mouth_words(member),
        (at[Line.PLATE],) if member.kind.stands_on_plate else (),
        tuple(at[line] for line in lines),
        bare > 0,
        above,
    )


def _plumb_ends(member: Member) -> tuple[Crossing, Crossing | None]:
    """Return both ends of a member; None for a foot that is cut level, which is drawn otherwise."""
    head, foot = crossings(member)
    return head, None if member.tail.bevel else foot


def _cut_end(crossing: Crossing, thick: float) -> CutEnd:
    points = [(float(one.along), float(one.across)) for one in crossing.over_top(Fraction(thick))]
    return CutEnd(float(crossing.left), float(crossing.lean), tuple(points))


def _notches(member: Member) -> list[Notch]:
    mouth = member.mouth
    if mouth is None:
        return []
    left, heel, seat = (float(inches_of(known(one))) for one in (mouth.stock_left, mouth.heel, mouth.seat))
    lines = [Line.HEEL if mouth.heel_back else Line.PLATE]
    lines += [mark.line for mark in member.marks if mark.line is Line.UPPER_PLATE]
    return [Notch(float(member.at(line)), left, heel, seat) for line in lines]


def _mouth_words(member: Member) -> tuple[str, str]:
    mouth = member.mouth
    if mouth is None:
        return '', ''
    return (
        _(CUT_BOARD['heel']).format(length=known(mouth.heel).text),
        _(CUT_BOARD['seat']).format(length=known(mouth.seat).text),
    )


def _distances(member: Member, measure: Measure) -> tuple[tuple[tuple[float, float, str], ...], ...]:
    """Return the distances that are drawn: to the plate line from both ends, and the whole."""
    first, last = map(float, points_of(member))
    tapes = {one.line: one for one in taped(member, measure)}
    whole = ((first, last, member.overall.text),)
    if Line.PLATE not in tapes:
        return (whole,)
    plate, one = float(member.at(Line.PLATE)), tapes[Line.PLATE]
    tail = ((plate, last, one.from_lower.text),) if one.from_lower.count else ()
    return (((first, plate, one.from_upper.text), *tail), whole)
