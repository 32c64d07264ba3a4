"""Members made of the engine's answer: what a plane has whatever its run becomes boards by one.

Hips and valleys are those of a regular corner, whose cheeks are alike on both sides.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from tablegen.geometry import common as commons
from tablegen.geometry import corner, shortening
from tablegen.geometry import tail as tails
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import Measure, length_figure, length_rounded_up
from tablegen.roof.cautions import Caution, pitch_cautions
from tablegen.roof.cheeks import OneCheek, TwoCheeks
from tablegen.roof.figures import TwoWays
from tablegen.roof.member import Deduction, End, Kind, Line, Mark, Member, Stop, inches_of
from tablegen.roof.members import Members
from tablegen.roof.seat import Mouth, common_mouth, hip_mouths, valley_mouth
from tablegen.roof.side import Side

FREE = End()
"""Cut square across, by nothing that stops it."""


@dataclass(frozen=True, slots=True)
class Plane:
    """A roof plane whose members are to be made boards."""

    members: Members
    """What they have whatever the run."""
    run_in: Fraction
    """Level, of its commons, plate line to ridge center line (of a shed: to the wall)."""
    measure: Measure
    """How lengths of boards are read."""

    @property
    def side(self) -> Side:
        return self.members.side


def common(name: str, of: Plane) -> Member:
    """Return a common rafter, cut square to the ridge."""
    off = _off(Stop.RIDGE, of.side.boards.ridge_in, of.members.shortening.common_at_ridge)
    return _member(name, Kind.COMMON, of, of.run_in, End(off))


def shed_rafter(name: str, of: Plane, ledger_in: Fraction) -> Member:
    """Return a shed's rafter, cut square to a ledger, the run going to the wall behind it."""
    both = of.side.both(shortening.at_ledger(ledger_in), of.side.slope)
    return _member(name, Kind.SHED_RAFTER, of, of.run_in, End(_off(Stop.LEDGER, ledger_in, both)))


def hip_jack(name: str, of: Plane, run_in: Fraction) -> Member:
    """Return a hip jack whose run to the hip's center line is given."""
    off = _off(Stop.HIP, of.side.boards.hip_in, of.members.shortening.jack_at_hip)
    return _member(name, Kind.HIP_JACK, of, run_in, _cut(of, of.members.cheek.jack, off))


def hip(name: str, of: Plane, stop: Stop = Stop.RIDGE) -> Member:
    """Return a hip left square and dropped: one cheek at a ridge, two between commons."""
    if stop == Stop.COMMONS:
        off = _off(stop, of.side.boards.rafter_in, of.members.shortening.hip_between_commons)
        head = _cut(of, of.members.cheek.hip_between_commons, off)
    else:
        off = _off(stop, of.side.boards.ridge_in, of.members.shortening.hip_valley_at_ridge)
        head = _cut(of, of.members.cheek.hip_at_ridge, off)
    return _member(name, Kind.HIP, of, of.run_in, head, _cut(of, of.members.cheek.hip_tail))


def valley(name: str, of: Plane) -> Member:
    """Return a valley, which is not dropped, in the corner of two ridges of one height and thickness."""
    off = _off(Stop.RIDGES, of.side.boards.ridge_in, of.members.shortening.valley_between_ridges)
    head = _cut(of, of.members.cheek.valley_between_ridges, off)
    tail = replace(_cut(of, of.members.cheek.valley_tail), hollow=True)
    return _member(name, Kind.VALLEY, of, of.run_in, head, tail)


def _off(stop: Stop, thickness_in: Fraction, both: TwoWays) -> Deduction:
    return Deduction(stop, thickness_in, both.level, both.along)


def _cut(of: Plane, cut: OneCheek | TwoCheeks, off: Deduction | None = None) -> End:
    if isinstance(cut, TwoCheeks):
        return End(off, cut, cut.point_to_side)
    points = cut.long_to_short_point
    halves = (of.side.length(inches_of(one) / 2) for one in (points.level, points.along))
    return End(off, cut, TwoWays(*halves))


def _member(name: str, kind: Kind, of: Plane, run_in: Fraction, head: End, tail: End = FREE) -> Member:
    side, boards, in_corner = of.side, of.side.boards, kind.in_corner
    slope = side.at.hip_slope if in_corner else side.slope
    cuts, (mouth, called) = of.members.cut, _mouth(kind, of)
    marks = sorted(_places(of, kind, run_in, head, tail, mouth).items(), key=lambda one: one[1])
    cut = [at for line, at in marks if line != Line.CENTER]
    stock = {Kind.HIP: boards.hips, Kind.VALLEY: boards.valleys}.get(kind, boards.stock)
    lean = shortening.along(tails.square_cut_set_in(stock.depth_in, slope), slope)
    thick = {Kind.HIP: boards.hip_in, Kind.VALLEY: boards.valley_thickness_in}
    return Member(
        name=name,
        kind=kind,
        pitch=side.pitch,
        slope=slope,
        stock=stock,
        thickness_in=thick.get(kind, boards.rafter_in),
        run_in=run_in,
        overhang_in=side.overhang_in,
        cut=cuts.hip_valley if in_corner else cuts.common,
        hold=of.members.hip_hold if in_corner else of.members.common_hold,
        head=head,
        tail=tail,
        mouth=mouth,
        marks=tuple(Mark(line, length_figure(at, of.measure)) for line, at in marks),
        overall=length_figure(cut[-1] - cut[0], of.measure),
        stick=length_rounded_up(cut[-1] - cut[0] + lean, of.measure),
        cautions=called if in_corner else pitch_cautions(slope) + called,
    )


def _mouth(kind: Kind, of: Plane) -> tuple[Mouth | None, tuple[Caution, ...]]:
    """Return a member's bird's mouth and what it calls for; no seat takes half of a hip's or valley's own run.

    Deep stock on a flat roof would be notched up to the ridge.
    """
    members, side = of.members, of.side
    if not kind.in_corner:
        notch, mouth = members.mouth, common_mouth(side)
    elif kind == Kind.HIP:
        notch, mouth = members.dropped_mouth, hip_mouths(side)[0]
    else:
        notch, mouth = members.valley_mouth, valley_mouth(side)
    if members.fault(notch) or (kind.in_corner and 2 * notch.seat_in > corner.hip_run(of.run_in, side.at)):
        return None, ()
    return mouth, notch.cautions(side.overhang_in)


def _places(
    of: Plane, kind: Kind, run_in: Fraction, head: End, tail: End, mouth: Mouth | None
) -> dict[Line, Exact]:
    """Return where every mark is, in."""
    at, runs = of.side.at, (run_in, run_in + of.side.overhang_in)
    if kind.in_corner:
        plate, end = (corner.hip_length(one, at) for one in runs)
    else:
        plate, end = (commons.line_length(one, at.slope_a) for one in runs)
    stops = inches_of(head.off.along) if head.off else exact(0)
    back, out = (inches_of(one.back.along) if one.back else exact(0) for one in (head, tail))
    places = {Line.CENTER: exact(0), Line.PLATE: plate, Line.TAIL: end}
    match head.cut:
        case None:
            places[Line.CUT] = stops
        case TwoCheeks():
            places |= {Line.POINT: stops, Line.SIDE: stops + back}
        case OneCheek():
            places |= {Line.LONG: stops - back, Line.CUT: stops, Line.SHORT: stops + back}
    if tail.cut:
        places[Line.TAIL_SIDE] = end + out if tail.hollow else end - out
    if mouth and mouth.heel_back:
        places[Line.HEEL] = plate + shortening.along(inches_of(mouth.heel_back), at.hip_slope)
    return places
