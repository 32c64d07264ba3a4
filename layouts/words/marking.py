"""The words of one roof's sheets: what each mark of a board is, what stops it and what comes off for that, what slopes are called."""

from __future__ import annotations

import re
from collections.abc import Sequence

from layouts.words import patterns
from layouts.words.drawings import ENDS
from layouts.words.examples import HIP_MARKS, MARKS
from layouts.words.lists import joined
from layouts.words.say import N_, _
from tablegen.roof.cheeks import TwoCheeks
from tablegen.roof.member import Hand, Kind, Line, Member, Stop

SLOPES = {
    'front': N_('front'),
    'back': N_('back'),
    'left': N_('left end'),
    'right': N_('right end'),
    'front_upper': N_('front, upper slope'),
    'back_upper': N_('back, upper slope'),
    'wing_front': N_('wing, front end'),
    'wing_left': N_('wing, left side'),
    'wing_right': N_('wing, right side'),
}
SIDE = N_('side {number}')
STOPS = {
    Stop.RIDGE: N_('ridge'),
    Stop.LEDGER: N_('ledger'),
    Stop.HIP: N_('hip'),
    Stop.COMMONS: N_('corner of the last side common and the end common'),
    Stop.RIDGES: N_('corner of the two ridges'),
    Stop.MATE: N_('rafter over against it'),
    Stop.WALL: N_('wall'),
    Stop.BEAM: N_('beam'),
    Stop.VALLEY: N_('valley'),
    Stop.PURLIN: N_('purlin'),
    Stop.HIPS: N_('other hips'),
    Stop.POST: N_('post'),
    Stop.BOARD: N_('board or sheathing that it lies on'),
}
RIDGE_END = N_('end of the ridge')
"""Of an end common that stands farther from where the planes meet than another does from the ridge's center line."""
LAST_COMMONS = N_('face of the last side commons')
"""Of an end common where there is no ridge board."""
UPPER_ENDS = {
    Stop.LEDGER: 'wall',
    Stop.WALL: 'wall',
    Stop.HIP: 'hip',
    Stop.VALLEY: 'upper',
    Stop.PURLIN: 'upper',
    Stop.BEAM: 'upper',
    Stop.HIPS: 'upper',
    Stop.POST: 'upper',
}
LINES = {
    Line.CUT: N_('upper cut'),
    Line.LONG: N_('long point, {hand}'),
    Line.SHORT: N_('short point, {hand}'),
    Line.POINT: HIP_MARKS[Line.TAIL],
    Line.SIDE_RIGHT: N_('upper cheek, right side'),
    Line.PLATE: N_('plate line: heel'),
    Line.UPPER_PLATE: N_('face of the beam: upper heel'),
    Line.TAIL: N_('tail cut'),
    Line.TAIL_LONG: N_('tail’s long point, {hand}'),
    Line.TAIL_SHORT: N_('tail’s short point, {hand}'),
    Line.TAIL_SIDE: N_('tail, both sides'),
    Line.TAIL_RIGHT: N_('tail, right side'),
    Line.FOOT_CUT: N_('lower cut'),
    Line.FOOT_LONG: N_('lower long point, {hand}'),
    Line.FOOT_SHORT: N_('lower short point, {hand}'),
    Line.HEEL: MARKS[Kind.VALLEY][Line.HEEL],
}
ON_CENTER = {
    Line.CUT: HIP_MARKS[Line.CUT],
    Line.FOOT_CUT: N_('the lower cut, on the center of the top'),
    Line.TAIL: N_('the tail’s cut, on the center of the top'),
}
"""Where cheeks make the cut skew."""
NO_HEEL = patterns.PLATE
RAISED = N_('raised plate’s line: heel')
"""Of a hip that crosses it aside of the corner."""
HAND_SIDES = {Hand.LEFT: N_('left side'), Hand.RIGHT: N_('right side')}
LONG_HAND, SHORT_HAND = N_('long side'), N_('short side')


def under(slopes: Sequence[str]) -> str:
    """Return the slopes that a stud stands under."""
    return joined([slope_name(name) for name in slopes])


def slope_name(name: str) -> str:
    """Return what a slope is called."""
    found = re.fullmatch(r'side_(\d+)', name)
    return _(SIDE).format(number=found[1]) if found else _(SLOPES.get(name, name))


def ends_of(member: Member) -> tuple[str, str]:
    """Return the words at the two ends of a drawn board."""
    stop, at_peak = member.head.off.stop if member.head.off else None, isinstance(member.head.cut, TwoCheeks)
    upper = UPPER_ENDS.get(stop, 'ridge') if stop else 'upper' if at_peak else 'ridge'
    return ENDS[upper], ENDS['tail' if member.kind.stands_on_plate else 'lower']


def line_name(member: Member, line: Line, pair: bool) -> str:
    """Return what a mark of a board is.

    Given:
        pair  whether boards of both hands are told together
    """
    named = (
        MARKS[Kind.VALLEY]
        if member.kind is Kind.VALLEY
        else MARKS[Kind.HIP]
        if member.kind is Kind.HIP
        else {}
    )
    end = member.tail if line.startswith(('tail', 'foot')) else member.head
    match line:
        case Line.CUT | Line.FOOT_CUT if end.cut is not None and not end.blunt:
            return _(ON_CENTER[line])
        case Line.POINT if end.tip:  # which stands aside
            return _(ON_CENTER[Line.CUT])
        case Line.POINT:
            return _(MARKS[Kind.VALLEY][Line.POINT])
        case Line.SIDE:
            alike = Line.SIDE_RIGHT not in {mark.line for mark in member.marks}
            return _(MARKS[Kind.VALLEY][Line.SIDE]) if alike else _('upper cheek, left side')
        case Line.TAIL if end.cut is not None:
            if isinstance(end.cut, TwoCheeks) and not end.tip:
                return _(MARKS[Kind.VALLEY if end.hollow else Kind.HIP][Line.TAIL])
            return _(ON_CENTER[line])
        case Line.TAIL_SIDE if Line.TAIL_RIGHT in {mark.line for mark in member.marks}:
            return _('tail, left side')
        case Line.PLATE if not member.mouth and member.kind not in (Kind.HIP, Kind.VALLEY):
            return _(NO_HEEL)
        case Line.PLATE if member.on_raised_plate:
            return _(RAISED if member.mouth else patterns.RAISED_PLATE)
        case Line.PLATE if member.kind.in_corner:
            return _(named[Line.PLATE]) if member.mouth else _(patterns.PLATES[Kind.HIP])
    return _(LINES[line]).format(hand=_hand(end.long, line, pair))


def _hand(long: Hand | None, line: Line, pair: bool) -> str:
    is_long = line in (Line.LONG, Line.TAIL_LONG, Line.FOOT_LONG)
    if pair or long is None:
        return _(LONG_HAND if is_long else SHORT_HAND)
    return _(HAND_SIDES[long if is_long else long.other])
