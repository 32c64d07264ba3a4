"""Where a member's marks are on a tape that is hooked on the cut board: from its first point, and from its last."""

from __future__ import annotations

from msgspec import Struct

from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Measure, length_figure
from tablegen.roof.figures import Length
from tablegen.roof.member import Line, Member, inches_of

OFF_THE_BOARD = (Line.CENTER, Line.FOOT)
"""Lines of what stops the member: no wood is left there."""


class Taped(Struct, frozen=True):
    """One mark, ALONG the top edge, each way rounded once by itself."""

    line: Line
    from_upper: Length
    """From the first point of the cut board, at its upper end."""
    from_lower: Length
    """From its last point, at the tail or foot."""


def points_of(member: Member) -> tuple[Exact, Exact]:
    """Return where the first and the last point of the cut board are, from the line that its marks are measured from, in.

    Notes:
        1. Two unlike cheeks meet aside of the center of the top edge, uphill of its mark: that point is the first; at leaning
           fascias downhill: the last.
    """
    places = [inches_of(mark.at) for mark in member.marks if mark.line not in OFF_THE_BOARD]
    if member.head.tip:
        places.append(member.at(Line.POINT) - inches_of(member.head.tip.along))
    if member.tail.tip:
        places.append(member.at(Line.TAIL) + inches_of(member.tail.tip.along))
    return min(places), max(places)


def taped(member: Member, measure: Measure) -> tuple[Taped, ...]:
    """Return every mark on the wood of a member, from its upper end on."""
    first, last = points_of(member)
    return tuple(
        Taped(
            mark.line,
            length_figure(inches_of(mark.at) - first, measure),
            length_figure(last - inches_of(mark.at), measure),
        )
        for mark in member.marks
        if mark.line not in OFF_THE_BOARD
    )
