"""The lengths before anything is taken off, the plumb and level cuts, and how the square is held for them."""

from __future__ import annotations

from fractions import Fraction
from typing import ClassVar

from msgspec import Struct

from tablegen.geometry import common, corner
from tablegen.geometry.stepping import SQUARE, Hold, common_hold, hip_hold
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import degree_figure, length_figure
from tablegen.roof.figures import Length, PlumbLevel
from tablegen.roof.side import Side


class Lengths(Struct, frozen=True):
    """The line lengths of a regular corner."""

    datum: ClassVar = ('roof.length',)
    common: Length
    hip_valley: Length
    rise: Length


class SideLengths(Struct, frozen=True):
    """The line lengths of one side's commons."""

    datum: ClassVar = ('roof.length.side',)
    run: Length
    common: Length
    rise: Length


class Cuts(Struct, frozen=True):
    """Cuts of commons and jacks, and of hip or valley."""

    datum: ClassVar = ('roof.cut',)
    common: PlumbLevel
    hip_valley: PlumbLevel


class CommonCuts(Struct, frozen=True):
    """Cuts of one side's commons and jacks."""

    datum: ClassVar = ('roof.cut',)
    common: PlumbLevel


class HipCuts(Struct, frozen=True):
    """Cuts of a corner's hip or valley."""

    datum: ClassVar = ('roof.cut',)
    hip_valley: PlumbLevel


class Held(Struct, frozen=True):
    """How the framing square is held for one member's steps."""

    held: str
    """Body and tongue: '12 & 8'."""
    level_on_body: Length
    plumb_on_tongue: Length
    run_of_step: Length
    """Of the common."""


class Squares(Struct, frozen=True):
    """The square on commons and jacks, and on hip or valley."""

    datum: ClassVar = ('roof.square',)
    common: Held
    hip_valley: Held


def lengths_of(side: Side, run_in: Fraction) -> Lengths:
    """Return the line lengths of a regular corner over a run."""
    return Lengths(
        common_length(side, run_in),
        side.length(corner.hip_length(run_in, side.at)),
        side.length(run_in * side.slope),
    )


def side_lengths_of(side: Side, run_in: Exact) -> SideLengths:
    """Return the line lengths of one side's commons over a run of theirs."""
    return SideLengths(side.length(run_in), common_length(side, run_in), side.length(run_in * side.slope))


def common_length(side: Side, run_in: Exact | Fraction) -> Length:
    """Return the line length of a side's commons over a run."""
    return side.length(common.line_length(run_in, side.slope))


def common_cut(side: Side) -> PlumbLevel:
    """Return the cuts of the side's commons and jacks."""
    return plumb_and_level(Angle(side.slope))


def hip_cut(side: Side) -> PlumbLevel:
    """Return the cuts of the corner's hip or valley."""
    return plumb_and_level(corner.hip_angle(side.at))


def plumb_and_level(plumb: Angle) -> PlumbLevel:
    """Return a member's two cuts."""
    return PlumbLevel(degree_figure(plumb), degree_figure(plumb.complement()))


def common_held(side: Side) -> Held:
    """Return how the square is held for the side's commons and jacks."""
    return held_of(common_hold(side.slope))


def hip_held(side: Side) -> Held:
    """Return how the square is held for the corner's hip or valley."""
    return held_of(hip_hold(side.at))


def held_of(one: Hold) -> Held:
    """Return a hold of the square as it is told."""
    return Held(one.text, one.body, one.tongue, length_figure(one.run_in, SQUARE))
