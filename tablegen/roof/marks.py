"""Where every mark of a board stands, along its top edge from one line at its upper end."""

from __future__ import annotations

from fractions import Fraction

from tablegen.geometry import common as commons
from tablegen.geometry import corner, shortening
from tablegen.numbers.exact import Exact, exact
from tablegen.roof.cheeks import OneCheek, TwoCheeks
from tablegen.roof.member import End, Kind, Line, inches_of
from tablegen.roof.plane import Plane
from tablegen.roof.seat import Mouth
from tablegen.roof.side import Side


def places(
    of: Plane, kind: Kind, run_in: Exact | Fraction, head: End, tail: End, mouth: Mouth | None
) -> dict[Line, Exact]:
    """Return where every mark is, in."""
    at = of.side.at
    stops = inches_of(head.off.along) if head.off else exact(0)
    back = inches_of(head.back.along) if head.back else exact(0)
    found = {Line.CENTER: exact(0)}
    match head.cut:
        case None:
            found[Line.CUT] = stops
        case TwoCheeks():
            found |= {Line.CUT if head.blunt else Line.POINT: stops, Line.SIDE: stops + back}
        case OneCheek():
            found |= {Line.LONG: stops - back, Line.CUT: stops, Line.SHORT: stops + back}
    if head.other_back:
        found[Line.SIDE_RIGHT] = stops + inches_of(head.other_back.along)
    line = corner.hip_length if kind.in_corner else lambda run, _: commons.line_length(run, of.side.slope)
    if not kind.stands_on_plate:
        return found | _foot(line(run_in, at), tail)
    end = line(run_in + of.side.overhang_in, at) - tail.set_in_in
    found |= {Line.PLATE: line(run_in, at), Line.TAIL: end}
    return found | _tail(found[Line.TAIL], tail) | _heel(found[Line.PLATE], of.side, mouth)


def _foot(line_in: Exact, foot: End) -> dict[Line, Exact]:
    """Return the marks at the lower end of a member that something stops there, its center line at the line's end."""
    ends = line_in - (inches_of(foot.off.along) if foot.off else 0)
    if not foot.back:
        return {Line.FOOT: line_in, Line.FOOT_CUT: ends}
    back = inches_of(foot.back.along)
    return {
        Line.FOOT: line_in,
        Line.FOOT_LONG: ends + back,
        Line.FOOT_CUT: ends,
        Line.FOOT_SHORT: ends - back,
    }


def _tail(end: Exact, tail: End) -> dict[Line, Exact]:
    places = {}
    if isinstance(tail.cut, OneCheek):  # at one fascia, or at a valley's tail: one side is the longer
        assert tail.back
        out, end = inches_of(tail.back.along), end - (inches_of(tail.off.along) if tail.off else 0)
        return {Line.TAIL: end, Line.TAIL_LONG: end + out, Line.TAIL_SHORT: end - out}
    for line, back in ((Line.TAIL_SIDE, tail.back), (Line.TAIL_RIGHT, tail.other_back)):
        if back:
            places[line] = end + (inches_of(back.along) if tail.hollow else -inches_of(back.along))
    return places


def _heel(plate: Exact, side: Side, mouth: Mouth | None) -> dict[Line, Exact]:
    if not mouth or not mouth.heel_back:
        return {}
    return {Line.HEEL: plate + shortening.along(inches_of(mouth.heel_back), side.at.hip_slope)}
