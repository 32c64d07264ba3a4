"""What examples show of a board: its marks in rows, what is cut off it, and the board itself with every mark on it."""

from __future__ import annotations

from collections.abc import Mapping

from markupsafe import Markup

from layouts.drawings.marked_board import BoardMarks, End, marked_board
from layouts.words.drawings import ENDS
from layouts.words.examples import BOARD_TITLE, MARKS
from layouts.words.say import _
from tablegen.examples.records import Example, HipExample, JackExample
from tablegen.numbers.figure import Figure, Measure, length_of_count
from tablegen.roof.member import Kind, Line, Member, Stop, known

HEADS = {Kind.SHED_RAFTER: 'wall', Kind.HIP_JACK: 'hip', Kind.LOWER_RAFTER: 'purlin'}
TAILS = {Kind.UPPER_RAFTER: 'purlin'}
"""What stands at the upper end of a board, where it is no ridge, and at the lower, where it is no tail."""
Rows = tuple[tuple[tuple[int | str, str, str], ...], ...]
"""Rows of number, what it is, distance; a few marks stand two in a row."""


def numbers_of(member: Member) -> dict[Line, int]:
    """Return the number of every mark."""
    return {mark.line: number for number, mark in enumerate(member.marks, 1)}


def marks_in_rows(member: Member, paired: bool) -> Rows:
    """Return a member's marks, numbered, one in a row or two."""
    numbered = tuple(
        (number, _(MARKS[member.kind][mark.line]), mark.at.text)
        for number, mark in enumerate(member.marks, 1)
    )
    if not paired:
        return tuple((one,) for one in numbered)
    half = -(-len(numbered) // 2)
    blanks: tuple[tuple[int | str, str, str], ...] = (('', '', ''),) * (2 * half - len(numbered))
    padded = (*numbered, *blanks)
    return tuple(padded[place::half] for place in range(half))


def by_marks(member: Member, numbers: Mapping[Line, int], measure: Measure) -> tuple[int, int, str] | None:
    """Return the numbers of the first and last mark of the cut board, and what they are apart; None where that is its length."""
    first, *_between, last = (mark for mark in member.marks if mark.line not in (Line.CENTER, Line.FOOT))
    apart = length_of_count(last.at.count - first.at.count, measure).text
    return None if apart == member.overall.text else (numbers[first.line], numbers[last.line], apart)


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


def board_of(member: Member, room: float, lengths: bool, other_head: End | None = None) -> Markup:
    """Return a member's board with its marks by number.

    Given:
        room        how much higher than usual it may be
        lengths     whether its lengths are drawn
        other_head  how it would be cut in another arrangement, dashed
    """
    at = {mark.line: _inches(mark.at) for mark in member.marks}
    mouth, stands = member.mouth, at.get(Line.PLATE) or at[Line.FOOT]
    heel, seat = (known(mouth.heel), known(mouth.seat)) if mouth else (None, None)
    board = BoardMarks(
        float(member.slope),
        float(member.stock.depth_in),
        float(member.thickness_in) if member.head.cut else 0.0,
        _head(at),
        _tail(at),
        stands,
        at.get(Line.HEEL, stands),
        _inches(heel) if heel else 0.0,
        _inches(seat) if seat else 0.0,
        tuple(at.values()),
        tuple(
            (at[mark.line], mark.at.text)
            for mark in member.marks
            if lengths and mark.line in (Line.PLATE, Line.TAIL, Line.FOOT)
        ),
        other_head,
    )
    ends = ENDS[HEADS.get(member.kind, 'ridge')], ENDS[TAILS.get(member.kind, 'tail')]
    words = (heel.text, seat.text) if heel and seat else ('', '')
    return marked_board(board, words, BOARD_TITLE, ends, room)


def _head(at: dict[Line, float]) -> End:
    if Line.LONG in at:
        return End(at[Line.LONG], at[Line.CUT], at[Line.SHORT])
    if Line.SIDE in at:
        return End(at[Line.SIDE], at[Line.POINT], at[Line.SIDE])
    return End(at[Line.CUT], at[Line.CUT], at[Line.CUT])


def _tail(at: dict[Line, float]) -> End:
    tail = at.get(Line.TAIL) or at[Line.FOOT_CUT]
    side = at.get(Line.TAIL_SIDE, tail)
    return End(side, tail, side)
