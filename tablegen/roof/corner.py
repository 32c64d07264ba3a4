"""A corner of two pitches: each side's members, and what brings both sides together."""

from __future__ import annotations

from fractions import Fraction
from typing import ClassVar

from msgspec import Struct

from tablegen.geometry import backing, corner, shortening, tail
from tablegen.numbers.exact import Exact, exact, sign
from tablegen.numbers.figure import degree_figure, degrees_known
from tablegen.numbers.units import INCHES
from tablegen.roof.cheeks import Cheeks, cheeks_of
from tablegen.roof.figures import Degrees, Length, TwoWays, size
from tablegen.roof.jacks import Jacks, jacks_of
from tablegen.roof.lengths import (
    CommonCuts,
    Held,
    HipCuts,
    SideLengths,
    common_cut,
    common_held,
    hip_cut,
    hip_held,
    side_lengths_of,
)
from tablegen.roof.names import Become, Gap, Point, Raised, Slid
from tablegen.roof.planes import Backing, Drop, Trim, backing_of, drop_of, trim_of
from tablegen.roof.question import RoofQuestion
from tablegen.roof.ridge import Ridge, ridge_of
from tablegen.roof.seat import Mouth, common_mouth, hip_mouths, valley_mouth
from tablegen.roof.shortening import Sawn, Shortening, sawn_of, shortening_of
from tablegen.roof.side import Side
from tablegen.roof.tail import Tail, tail_of


class HipLine(Struct, frozen=True):
    """The hip or valley of two pitches, before anything is taken off."""

    datum: ClassVar = ('roof.hip_valley',)
    plan_from_eave_a: Degrees
    plan_from_eave_b: Degrees
    length: Length
    length_per_foot_of_run_a: Length
    own_run: Length
    rise_per_foot_of_own_run: Length


class SquaresOfTwo(Struct, frozen=True):
    """The square on both sides' commons and jacks, and on hip or valley."""

    datum: ClassVar = ('roof.square',)
    side_a: Held
    side_b: Held
    hip_valley: Held


class CommonSeat(Struct, frozen=True):
    """The bird's mouth of one side's commons."""

    common: Mouth


class OneSide(Struct, frozen=True):
    """Everything of one side of a corner."""

    pitch: str
    length: SideLengths
    cut: CommonCuts
    shortening: Shortening
    sawn: Sawn
    jack: Jacks
    seat: CommonSeat
    tail: Tail
    cheek: Cheeks
    backing: Backing
    drop: Drop
    trim: Trim


class DoubleCheek(Struct, frozen=True):
    """Where the two cheeks of a hip between commons meet."""

    datum: ClassVar = ('roof.double_cheek',)
    aside: Length
    point: Point


class GreaterDrop(Struct, frozen=True):
    """The drop of a square-topped hip on its line, and what it leaves on the other side."""

    datum: ClassVar = ('roof.drop.greater',)
    plumb: Length
    gap_on: Gap
    gap_plumb: Length


class Changed(Struct, frozen=True):
    """How a member's length changes when the hip is slid."""

    become: Become
    by: TwoWays


class Slide(Struct, frozen=True):
    """A square-topped hip moved aside instead of dropped by the greater drop."""

    datum: ClassVar = ('roof.slide',)
    aside: Length
    way: Slid
    drop_plumb: Length
    jacks_of_a: Changed
    jacks_of_b: Changed
    hip_at_ridge_over_a: Changed
    hip_at_ridge_over_b: Changed


class HipSeats(Struct, frozen=True):
    """The bird's mouths of hip and valley, at the height above plate that both sides have."""

    datum: ClassVar = ('roof.seat.of_two',)
    hip_dropped: Mouth
    hip_backed: Mouth
    valley: Mouth


class Eaves(Struct, frozen=True):
    """What makes both overhangs equal."""

    datum: ClassVar = ('roof.eaves',)
    raise_for_equal_overhangs: Length
    raised: Raised


class CornerOfTwo(Struct, frozen=True):
    """All that two pitches say about the corner where they meet."""

    datum: ClassVar = ('roof.two_pitches',)
    corner: Degrees
    hip_valley: HipLine
    cut: HipCuts
    square: SquaresOfTwo
    side_a: OneSide
    side_b: OneSide
    double_cheek: DoubleCheek
    drop: GreaterDrop
    slide: Slide
    seat: HipSeats
    eaves: Eaves
    ridge: Ridge


def corner_of_two(
    a: Side, b: Side, corner_degrees: Fraction, ask: RoofQuestion, listed: bool = True
) -> CornerOfTwo:
    """Return all about a corner.

    Given:
        a, b    its sides, of corner_degrees
        listed  whether each jack is told, or their differences only
    """
    return CornerOfTwo(
        degrees_known(corner_degrees),
        _hip(a, ask.run_in),
        HipCuts(hip_cut(a)),
        SquaresOfTwo(common_held(a), common_held(b), hip_held(a)),
        one_side(a, exact(ask.run_in), listed),
        one_side(b, corner.run_b(ask.run_in, a.at), listed),
        _double_cheek(a),
        _drop(a, b),
        _slide(a, b),
        HipSeats(*hip_mouths(a), valley_mouth(a)),
        _eaves(a),
        ridge_of(a, ask.run_in, ask.plate_length_in),
    )


def one_side(side: Side, run_in: Exact, listed: bool = True) -> OneSide:
    """Return everything of one side of a corner over a run of its commons."""
    return OneSide(
        side.pitch.text,
        side_lengths_of(side, run_in),
        CommonCuts(common_cut(side)),
        shortening_of(side),
        sawn_of(side, run_in),
        jacks_of(side, run_in, listed=listed),
        CommonSeat(common_mouth(side)),
        tail_of(side),
        cheeks_of(side),
        backing_of(side),
        drop_of(side),
        trim_of(side),
    )


def _hip(a: Side, run_in: Fraction) -> HipLine:
    at, foot = a.at, INCHES.unit_run
    return HipLine(
        degree_figure(at.plan_a),
        degree_figure(at.plan_b),
        a.length(corner.hip_length(run_in, a.at)),
        a.length(corner.hip_length(foot, a.at)),
        a.length(corner.hip_run(run_in, at)),
        a.length(foot * at.hip_slope),
    )


def _double_cheek(a: Side) -> DoubleCheek:
    aside = shortening.double_cheek_aside(a.boards.rafter_in, a.boards.rafter_in, a.at)
    return DoubleCheek(a.length(size(aside)), tuple(Point)[sign(aside) + 1])


def _drop(a: Side, b: Side) -> GreaterDrop:
    thick = a.boards.hip_in
    drops = [backing.drop_plumb(thick, side.at) for side in (a, b)]
    gaps = [backing.gap_when_dropped(thick, side.at) for side in (a, b)]
    gap_on = next((on for on, gap in zip((Gap.A, Gap.B), gaps, strict=True) if sign(gap)), Gap.NEITHER)
    return GreaterDrop(a.length(max(drops)), gap_on, a.length(max(gaps)))


def _slide(a: Side, b: Side) -> Slide:
    thick = a.boards.hip_in
    aside = backing.slide(thick, a.at)
    return Slide(
        a.length(size(aside)),
        (Slid.B, Slid.NOT, Slid.A)[sign(aside) + 1],
        a.length(backing.drop_when_slid(thick, a.at)),
        *(_changed(side, backing.slid_jack(thick, side.at), side.slope) for side in (a, b)),
        *(_changed(side, backing.slid_hip_at_ridge(thick, side.at), side.at.hip_slope) for side in (a, b)),
    )


def _changed(side: Side, level_in: Exact, slope: Exact) -> Changed:
    return Changed(tuple(Become)[sign(level_in) + 1], side.both(size(level_in), slope))


def _eaves(a: Side) -> Eaves:
    raised = tail.plate_raise(a.boards.overhang_in, a.at)
    return Eaves(a.length(size(raised)), tuple(Raised)[sign(raised) + 1])
