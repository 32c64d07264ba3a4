"""Members made of the engine's answer: what a side of a corner has whatever its run becomes boards by one.

Hips and valleys of a corner whose sides agree have both cheeks alike; of another corner each side has its own.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from msgspec.structs import replace

from tablegen.geometry import corner, shortening
from tablegen.geometry import tail as tails
from tablegen.numbers.exact import Exact, exact, one_term
from tablegen.numbers.figure import length_figure, length_rounded_up
from tablegen.roof.cautions import Caution, pitch_cautions
from tablegen.roof.cheeks import TwoCheeks, square_tail_cheeks
from tablegen.roof.marks import places
from tablegen.roof.member import Backs, Deduction, End, Hand, Kind, Line, Mark, Member, Stop, inches_of
from tablegen.roof.members import Members
from tablegen.roof.plane import Plane
from tablegen.roof.seat import Mouth, Notch, greater_drop, hip_mouths, valley_mouth
from tablegen.roof.side import Side
from tablegen.roof.stopped import (
    FREE,
    cheek_end,
    cheeked,
    faced_end,
    square_end,
    taken_off,
)


def common(name: str, of: Plane) -> Member:
    """Return a common rafter, cut square to the ridge."""
    return rafter(name, Kind.COMMON, of, of.run_in, square_end(of.side, Stop.RIDGE, of.side.boards.ridge_in))


def shed_rafter(name: str, of: Plane, ledger_in: Fraction) -> Member:
    """Return a shed's rafter, cut square to a ledger, the run going to the wall behind it."""
    end = faced_end(of.side, Stop.LEDGER, ledger_in, shortening.at_ledger(ledger_in))
    return rafter(name, Kind.SHED_RAFTER, of, of.run_in, end)


def hip_jack(name: str, of: Plane, run_in: Exact | Fraction) -> Member:
    """Return a hip jack whose run to the hip's center line is given."""
    end = cheek_end(of.side, Stop.HIP, of.side.boards.hip_in, of.side.at.plan_a)
    return rafter(name, Kind.HIP_JACK, of, run_in, end)


def hip(
    name: str,
    of: Plane,
    stop: Stop = Stop.RIDGE,
    head: End | None = None,
    tail: End | None = None,
    kind: Kind = Kind.HIP,
) -> Member:
    """Return a hip left square and dropped, or backed: one cheek at a ridge over its side, two between commons.

    Given:
        head, tail  ends of other kinds
    """
    made = _member(name, kind, of, of.run_in, head or _hip_head(of, stop), tail or _hip_tail(of))
    if not of.backed:
        return made
    bevels = [it.backing.bevel for it in (of.members, of.other or of.members)]
    return replace(made, backs=Backs(*(bevels if of.a_on is Hand.LEFT else reversed(bevels))))


def valley(name: str, of: Plane, stop: Stop = Stop.RIDGES, head: End | None = None) -> Member:
    """Return a valley, which is not dropped, in the corner of two ridges of one height and thickness, or at one ridge."""
    cheeks, at = of.members.cheek, of.members.shortening
    if stop == Stop.RIDGE:
        off = taken_off(stop, of.side.boards.ridge_in, at.hip_valley_at_ridge)
        head = head or replace(cheeked(of.side, cheeks.valley_at_ridge, off), long=of.a_on and of.a_on.other)
    else:
        off = taken_off(stop, of.side.boards.ridge_in, at.valley_between_ridges)
        head = head or _two(of, lambda it: it.cheek.valley_between_ridges, _beside_ridge, _at_ridge, off)
    tail = _valley_tail(of)
    return _member(name, Kind.VALLEY, of, of.run_in, head, replace(tail, hollow=True))


def _hip_head(of: Plane, stop: Stop) -> End:
    cheeks, at, boards = of.members.cheek, of.members.shortening, of.side.boards
    if stop == Stop.COMMONS:
        off = taken_off(stop, boards.rafter_in, at.hip_between_commons)
        return _two(of, lambda it: it.cheek.hip_between_commons, _beside_common, _at_common, off)
    off = taken_off(stop, boards.ridge_in, at.hip_valley_at_ridge)
    return replace(cheeked(of.side, cheeks.hip_at_ridge, off), long=of.a_on)


def _at_common(side: Side) -> Exact:
    return shortening.hip_at_common(side.boards.rafter_in, side.at)


def _beside_common(side: Side) -> Exact:
    return shortening.set_back_at_common(side.boards.hip_in, side.at)


def _at_ridge(side: Side) -> Exact:
    return shortening.hip_at_ridge(side.boards.ridge_in, side.at)


def _beside_ridge(side: Side) -> Exact:
    return shortening.set_back_at_ridge(side.boards.valley_thickness_in, side.at)


def _hip_tail(of: Plane) -> End:
    if not of.square_tails:
        return _two(
            of, lambda it: it.cheek.hip_tail, lambda it: shortening.set_back_at_ridge(it.boards.hip_in, it.at)
        )
    drop = exact(0) if of.backed else greater_drop(of.side)
    stops = [tails.square_set_in(drop, it.side.at) for it in (of.members, of.other) if it]
    end = _two(
        of,
        lambda it: square_tail_cheeks(it.side, it.side.boards.hip_in),
        lambda it: tails.square_set_back(it.boards.hip_in, it.at),
        lambda it: tails.square_set_in(drop, it.at),
        mark_in=max(stops),
    )
    return replace(end, square=True, set_in_in=shortening.along(max(stops), of.side.at.hip_slope))


def _valley_tail(of: Plane) -> End:
    if not of.square_tails:
        return _two(of, lambda it: it.cheek.valley_tail, _beside_ridge)
    end = _two(
        of,
        lambda it: square_tail_cheeks(it.side, it.side.boards.valley_thickness_in),
        lambda it: tails.square_set_back(it.boards.valley_thickness_in, it.at),
    )
    return replace(end, square=True)


def _two(
    of: Plane,
    cut: Callable[[Members], TwoCheeks],
    back: Callable[[Side], Exact],
    stops: Callable[[Side], Exact] | None = None,
    off: Deduction | None = None,
    mark_in: Exact | None = None,
) -> End:
    """Return an end of two cheeks, one to each side.

    Given:
        cut      takes a side's cheek
        back     takes how far it leaves the board's side from where it crosses the center line, level
        stops    takes where it does that, from the center line's end; there where None
        mark_in  where the mark on the center line is, if nothing comes off there
    """
    end = cheeked(of.side, cut(of.members), off)
    if of.other is None:
        return end
    slope, sides = of.side.at.hip_slope, (of.members, of.other)
    off_in = inches_of(off.level) if off else mark_in or exact(0)
    from_off = [(stops(it.side) if stops else exact(0)) - off_in for it in sides]
    backs = [back(it.side) for it in sides]
    each = [
        (cut(it), of.side.both(stop + more, slope))
        for it, stop, more in zip(sides, from_off, backs, strict=True)
    ]
    (left, left_back), (right, other_back) = each if of.a_on is Hand.LEFT else reversed(each)
    tip_in = _tip_in(*from_off, *backs) if stops else exact(0)
    tip = of.side.both(tip_in, slope) if off or tip_in.terms else None
    return End(off, left, left_back, other=right, other_back=other_back, tip=tip)


def _tip_in(a_in: Exact, b_in: Exact, back_a_in: Exact, back_b_in: Exact) -> Exact:
    """Return how far on from the mark on the center line two unlike cheeks meet, level: uphill of it, at a tail downhill.

    Given:
        a_in, b_in            back of that mark, where each crosses the center line
        back_a_in, back_b_in  from there to where it leaves its own side

    Source: aside of the center by the share u of half the thickness, towards a, they lie at a + back_a · u and
    b − back_b · u back; these agree at (a · back_b + b · back_a) / (back_a + back_b).
    """
    return -(a_in * back_b_in + b_in * back_a_in) / one_term(back_a_in + back_b_in)


def _member(
    name: str,
    kind: Kind,
    of: Plane,
    run_in: Exact | Fraction,
    head: End,
    tail: End = FREE,
) -> Member:
    side, boards, in_corner = of.side, of.side.boards, kind.in_corner
    slope = side.at.hip_slope if in_corner else side.slope
    cuts, (mouth, called) = of.members.cut, _mouth(kind, of)
    marks = sorted(places(of, kind, run_in, head, tail, mouth).items(), key=lambda one: one[1])
    cut = [at for line, at in marks if line not in (Line.CENTER, Line.FOOT)]
    at = dict(marks)
    if head.tip:
        cut.insert(0, at[Line.POINT] - inches_of(head.tip.along))
    if tail.tip:
        cut.append(at[Line.TAIL] + inches_of(tail.tip.along))
    hips = (Kind.HIP, Kind.UPPER_HIP)
    stock = boards.hips if kind in hips else boards.valleys if kind is Kind.VALLEY else boards.stock
    lean = exact(0)
    if not tail.bevel and not tail.square:  # a plumb cut's lower corner
        lean = shortening.along(tails.square_cut_set_in(stock.depth_in, slope), slope)
    thick = {**dict.fromkeys(hips, boards.hip_in), Kind.VALLEY: boards.valley_thickness_in}
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
        other_pitch=of.other.side.pitch if in_corner and of.other else None,
    )


rafter = _member
"""Return any rafter that runs up its plane, of any kind: its level run (to the center line of what stops it at its foot,
where it has no plate), and its two ends."""


def _notch(kind: Kind, of: Plane) -> tuple[Notch, Callable[[], Mouth]]:
    members, side = of.members, of.side
    if not kind.in_corner:
        return members.mouth, lambda: members.told_mouth
    if kind == Kind.VALLEY:
        return members.valley_mouth, lambda: valley_mouth(side)
    if of.backed:
        return members.backed_mouth, lambda: hip_mouths(side)[1]
    return members.dropped_mouth, lambda: hip_mouths(side)[0]


def _mouth(kind: Kind, of: Plane) -> tuple[Mouth | None, tuple[Caution, ...]]:
    """Return a member's bird's mouth and what it calls for; no seat takes half of a hip's or valley's own run.

    Deep stock on a flat roof would be notched up to the ridge.
    """
    if not kind.stands_on_plate:
        return None, ()
    side, (notch, told) = of.side, _notch(kind, of)
    if of.members.fault(notch) or (kind.in_corner and 2 * notch.seat_in > corner.hip_run(of.run_in, side.at)):
        return None, ()
    return told(), notch.cautions(side.overhang_in)
