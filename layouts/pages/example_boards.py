"""The board of a worked example, from its member's marks to inches that a drawing takes."""

from __future__ import annotations

from markupsafe import Markup

from layouts.drawings.marked_board import BoardMarks, End, marked_board
from layouts.words.drawings import ENDS
from layouts.words.examples import BOARD_TITLE
from tablegen.examples.records import Example, HipExample, JackExample
from tablegen.numbers.figure import Figure
from tablegen.roof.member import Kind, Line, Member, Stop, known

HEADS = {Kind.SHED_RAFTER: 'wall', Kind.HIP_JACK: 'hip'}
"""What stands at the upper end, where it is no ridge."""


def _inches(figure: Figure) -> float:
    return figure.count / figure.per


def otherwise(example: Example | JackExample, roof: str) -> End | None:
    """Return how the store's hip would be cut between commons, where it is cut at the ridge; None of another member."""
    if roof or not isinstance(example, HipExample):
        return None
    off = example.member.head.off
    if off is None or off.stop is not Stop.RIDGE:
        return None
    return _head({mark.line: _inches(mark.at) for mark in example.between.marks})


def board_of(member: Member, room: float, lengths: bool, other_head: End | None) -> Markup:
    """Return a member's board with its marks by number.

    Given:
        room        how much higher than usual it may be
        lengths     whether its lengths are drawn
        other_head  how it would be cut in another arrangement, dashed
    """
    at = {mark.line: _inches(mark.at) for mark in member.marks}
    mouth = member.mouth
    heel, seat = (known(mouth.heel), known(mouth.seat)) if mouth else (None, None)
    board = BoardMarks(
        float(member.slope),
        float(member.stock.depth_in),
        float(member.thickness_in) if member.head.cut else 0.0,
        _head(at),
        _tail(at),
        at[Line.PLATE],
        at.get(Line.HEEL, at[Line.PLATE]),
        _inches(heel) if heel else 0.0,
        _inches(seat) if seat else 0.0,
        tuple(at.values()),
        tuple(
            (at[mark.line], mark.at.text)
            for mark in member.marks
            if lengths and mark.line in (Line.PLATE, Line.TAIL)
        ),
        other_head,
    )
    words = (heel.text, seat.text) if heel and seat else ('', '')
    return marked_board(board, words, BOARD_TITLE, ENDS[HEADS.get(member.kind, 'ridge')], room)


def _head(at: dict[Line, float]) -> End:
    if Line.LONG in at:
        return End(at[Line.LONG], at[Line.CUT], at[Line.SHORT])
    if Line.SIDE in at:
        return End(at[Line.SIDE], at[Line.POINT], at[Line.SIDE])
    return End(at[Line.CUT], at[Line.CUT], at[Line.CUT])


def _tail(at: dict[Line, float]) -> End:
    side = at.get(Line.TAIL_SIDE, at[Line.TAIL])
    return End(side, at[Line.TAIL], side)
