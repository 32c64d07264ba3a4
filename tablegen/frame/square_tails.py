"""Square tails that are too short: cut square to the top edge, they would take the bird's mouth's heel away."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from tablegen.errors import BookError
from tablegen.frame.framed import Framed
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, exact, sign
from tablegen.numbers.figure import Measure, length_rounded_up
from tablegen.roof.ends import tangent_of
from tablegen.roof.member import Line, Member

TAIL = (Line.TAIL, Line.TAIL_SIDE, Line.TAIL_RIGHT)


def check_tails(members: Iterable[Framed], measure: Measure) -> None:
    """Find square tails whose cut comes down outside of their heel.

    Errors:
        BookError where one would not, naming the member that is the farthest from it
    """
    short = max(((_short(one.member), one.member.name) for one in members), default=None)
    if short and sign(short[0]) > 0:
        least = length_rounded_up(short[0], Measure(measure.per))
        raise BookError(
            'cuts.tails',
            message('frame.square_tail_in_the_mouth', mark=short[1]),
            message('frame.longer_tails', least=text.in_units(Fraction(least.count, least.per))),
            message('frame.plumb_tails'),
        )


def _short(member: Member) -> Exact:
    """Return how far a tail's cut comes out of the bottom edge short of the heel, ALONG it; 0 or less where it does not.

    Source: the heel's plumb line leans out by the slope on its way down, the cut leans in by what it is past square.
    """
    if not member.tail.square or member.mouth is None:
        return exact(0)
    lines = {mark.line for mark in member.marks}
    heel = member.at(Line.HEEL if Line.HEEL in lines else Line.PLATE)
    leans = [
        tangent_of(cut.side_leaning)
        for cut in (member.tail.cut, member.tail.other)
        if cut and cut.side_leaning
    ]
    end = min(member.at(line) for line in TAIL if line in lines)
    return heel - end + member.stock.depth_in * (member.slope + max(leans, default=exact(0)))
