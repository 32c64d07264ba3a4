"""A regular roof of many sides."""

from __future__ import annotations

from fractions import Fraction
from typing import ClassVar

from msgspec import Struct

from tablegen.geometry import corner, many_sided, shortening
from tablegen.numbers.figure import degrees_known, length_rounded_up
from tablegen.numbers.units import INCHES
from tablegen.roof.cheeks import (
    IN_THE_PLANE,
    SQUARE_TOP,
    CheekCut,
    OneCheek,
    TwoCheeks,
    cut_of,
    jack_cheek,
    tail_cheeks,
)
from tablegen.roof.figures import Degrees, Length, PlumbLevel, TwoWays
from tablegen.roof.jacks import Jacks, jacks_of
from tablegen.roof.lengths import (
    Held,
    common_cut,
    common_held,
    common_length,
    hip_cut,
    hip_held,
)
from tablegen.roof.planes import Backing, Drop, Trim, backing_of, drop_of, trim_of
from tablegen.roof.seat import Mouth, common_mouth, hip_mouths
from tablegen.roof.side import Side
from tablegen.roof.tail import ManySidedTail, many_sided_tail_of


class Plan(Struct, frozen=True):
    """The plates."""

    datum: ClassVar = ('roof.plan',)
    sides: int
    corner: Degrees
    plate_miter: Degrees
    apothem: Length
    side: Length
    middle_to_corner: Length


class ManySidedLengths(Struct, frozen=True):
    """The line lengths to the axis."""

    datum: ClassVar = ('roof.length.many_sided',)
    common: Length
    hip: Length
    hip_per_foot_of_apothem: Length
    rise: Length


class ManySidedCuts(Struct, frozen=True):
    """Cuts of commons and jacks, and of the hips."""

    datum: ClassVar = ('roof.cut',)
    common: PlumbLevel
    hip: PlumbLevel


class ManySidedSquares(Struct, frozen=True):
    """The square on commons and jacks, and on the hips."""

    datum: ClassVar = ('roof.square',)
    common: Held
    hip: Held


class ManySidedShortening(Struct, frozen=True):
    """What comes off jacks, and off hips at the smallest post."""

    datum: ClassVar = ('roof.level_and_along', 'roof.shortening.many_sided')
    jack_at_hip: TwoWays
    hip_at_least_post: TwoWays


class ManySidedSeats(Struct, frozen=True):
    """The bird's mouths of commons and hips."""

    common: Mouth
    hip_dropped: Mouth
    hip_backed: Mouth


class ManySidedCheeks(Struct, frozen=True):
    """The cheeks of jacks, and of hips at the peak and at their tails."""

    datum: ClassVar = ('roof.cheek.faces', 'roof.cheek.many_sided')
    jack: OneCheek
    hip_at_peak: CheekCut
    hip_tail: TwoCheeks


class Peak(Struct, frozen=True):
    """Where all hips meet."""

    datum: ClassVar = ('roof.peak',)
    point: TwoWays
    least_post_across_flats: Length


class ManySides(Struct, frozen=True):
    """All that a pitch says about a roof of many sides."""

    datum: ClassVar = ('roof.many_sided',)
    plan: Plan
    length: ManySidedLengths
    cut: ManySidedCuts
    square: ManySidedSquares
    shortening: ManySidedShortening
    jack: Jacks
    seat: ManySidedSeats
    tail: ManySidedTail
    cheek: ManySidedCheeks
    peak: Peak
    backing: Backing
    drop: Drop
    trim: Trim


def many_sides(side: Side, sides: int, run_in: Fraction, listed: bool = True) -> ManySides:
    """Return all about a roof of so many sides.

    Given:
        side    one of them: at many_sided.regular_corner
        run_in  the apothem
        listed  whether each jack is told, or their differences only
    """
    boards, at = side.boards, side.at
    point = many_sided.peak_point(boards.hip_in, sides)
    peak = many_sided.peak_cheek(side.slope, sides)
    return ManySides(
        _plan(side, sides, run_in),
        ManySidedLengths(
            common_length(side, run_in),
            side.length(corner.hip_length(run_in, side.at)),
            side.length(corner.hip_length(INCHES.unit_run, side.at)),
            side.length(run_in * side.slope),
        ),
        ManySidedCuts(common_cut(side), hip_cut(side)),
        ManySidedSquares(common_held(side), hip_held(side)),
        ManySidedShortening(
            side.both(shortening.jack_at_hip(boards.hip_in, at), side.slope), side.both(point, at.hip_slope)
        ),
        jacks_of(side, run_in, with_valley=False, listed=listed),
        ManySidedSeats(common_mouth(side), *hip_mouths(side)),
        many_sided_tail_of(side),
        ManySidedCheeks(
            jack_cheek(side, IN_THE_PLANE),
            CheekCut(*cut_of(side, peak, SQUARE_TOP, boards.hip_in / 2)),
            tail_cheeks(side, boards.hip_in),
        ),
        Peak(side.both(point, at.hip_slope), length_rounded_up(2 * point, boards.measure)),
        backing_of(side),
        drop_of(side),
        trim_of(side),
    )


def _plan(side: Side, sides: int, run_in: Fraction) -> Plan:
    return Plan(
        sides,
        degrees_known(many_sided.plan_corner_degrees(sides)),
        degrees_known(Fraction(180, sides)),
        side.length(run_in),
        side.length(many_sided.side_from_apothem(run_in, sides)),
        side.length(many_sided.radius_from_apothem(run_in, sides)),
    )
