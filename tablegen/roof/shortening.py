"""What comes off the line lengths, and what is left of them: to the faces where members meet, rounded once."""

from __future__ import annotations

from fractions import Fraction
from functools import cached_property
from typing import ClassVar

from msgspec import Struct

from tablegen.geometry import shortening
from tablegen.numbers.exact import Exact
from tablegen.roof.figures import Length, TwoWays
from tablegen.roof.names import Why
from tablegen.roof.ridge import past_ends
from tablegen.roof.side import Side


class EndCommon(Struct, frozen=True):
    """What comes off an end common, in both arrangements of a ridge's end."""

    datum: ClassVar = ('roof.end_common',)
    between_commons: TwoWays
    hips_on_ridge: TwoWays
    clip: Length
    """Level, of an end common thicker than the ridge."""


class Shortening(Struct, frozen=True):
    """What comes off members of one side, and off the hip or valley at what stands on it."""

    datum: ClassVar = ('roof.shortening',)
    common_at_ridge: TwoWays
    hip_valley_at_ridge: TwoWays
    hip_between_commons: TwoWays
    valley_between_ridges: TwoWays
    jack_at_hip: TwoWays
    jack_at_valley: TwoWays
    valley_jack_at_ridge: TwoWays
    end_common: EndCommon | None
    """None where the corner is not square: no common there stands in line with a ridge."""


class Sawn(Struct, frozen=True):
    """The lengths to the faces of one side's commons, and of hip and valley at what stands on that side."""

    datum: ClassVar = ('roof.sawn',)
    common: Length | Why
    end_common_between_commons: Length | Why | None
    end_common_hips_on_ridge: Length | Why | None
    hip_between_commons_point: Length | Why
    hip_between_commons_side: Length | Why
    hip_at_ridge_long_point: Length | Why
    hip_at_ridge_short_point: Length | Why
    valley_between_ridges_point: Length | Why
    valley_between_ridges_side: Length | Why
    valley_at_ridge_long_point: Length | Why
    valley_at_ridge_short_point: Length | Why


class ShorteningOf:
    """What comes off on a side, each made when asked for."""

    def __init__(self, side: Side):
        self.side, self.boards, self.at = side, side.boards, side.at

    common_at_ridge = cached_property(lambda of: _own(of.side, shortening.at_ridge(of.boards.ridge_in)))
    hip_valley_at_ridge = cached_property(
        lambda of: _hip(of.side, shortening.hip_at_ridge(of.boards.ridge_in, of.at))
    )
    hip_between_commons = cached_property(
        lambda of: _hip(of.side, shortening.hip_between_commons(of.boards.rafter_in, of.at))
    )
    valley_between_ridges = cached_property(lambda of: _hip(of.side, _between_ridges(of.side)))
    jack_at_hip = cached_property(lambda of: _own(of.side, shortening.jack_at_hip(of.boards.hip_in, of.at)))
    jack_at_valley = cached_property(
        lambda of: _own(of.side, shortening.jack_at_hip(of.boards.valley_thickness_in, of.at))
    )
    end_common = cached_property(lambda of: end_common_of(of.side) if of.side.square else None)


def shortening_of(side: Side) -> Shortening:
    """Return what comes off on a side."""
    of = ShorteningOf(side)
    return Shortening(
        common_at_ridge=of.common_at_ridge,
        hip_valley_at_ridge=of.hip_valley_at_ridge,
        hip_between_commons=of.hip_between_commons,
        valley_between_ridges=of.valley_between_ridges,
        jack_at_hip=of.jack_at_hip,
        jack_at_valley=of.jack_at_valley,
        valley_jack_at_ridge=of.common_at_ridge,
        end_common=of.end_common,
    )


def end_common_of(side: Side) -> EndCommon:
    """Return what comes off an end common of this side, the ridge running over the other one."""
    between, on_ridge = past_ends(side.boards, side.at.turned())
    clip = shortening.end_common_clip(side.boards.rafter_in, side.boards.ridge_in, side.at.turned())
    return EndCommon(
        side.both(between, side.slope),
        side.both(on_ridge, side.slope),
        side.length(clip),
    )


def sawn_of(side: Side, run_in: Exact | Fraction) -> Sawn:
    """Return the lengths to the faces over a run of the side's commons."""
    boards, at = side.boards, side.at

    def hip(level_in: Exact) -> Length | Why:
        return side.hip_less(run_in, level_in)

    at_ridge, at_common = (
        shortening.hip_at_ridge(boards.ridge_in, at),
        shortening.hip_at_common(boards.rafter_in, at),
    )
    back, valley_back = (
        shortening.set_back_at_ridge(thick, at) for thick in (boards.hip_in, boards.valley_thickness_in)
    )
    between, on_ridge = (
        [side.common_less(run_in, past) for past in past_ends(boards, at.turned())]
        if side.square
        else (None, None)
    )
    return Sawn(
        common=side.common_less(run_in, shortening.at_ridge(boards.ridge_in)),
        end_common_between_commons=between,
        end_common_hips_on_ridge=on_ridge,
        hip_between_commons_point=hip(shortening.hip_between_commons(boards.rafter_in, at)),
        hip_between_commons_side=hip(at_common + shortening.set_back_at_common(boards.hip_in, at)),
        hip_at_ridge_long_point=hip(at_ridge - back),
        hip_at_ridge_short_point=hip(at_ridge + back),
        valley_between_ridges_point=hip(_between_ridges(side)),
        valley_between_ridges_side=hip(at_ridge + valley_back),
        valley_at_ridge_long_point=hip(at_ridge - valley_back),
        valley_at_ridge_short_point=hip(at_ridge + valley_back),
    )


def _between_ridges(side: Side) -> Exact:
    return shortening.valley_between_ridges(side.boards.ridge_in, side.boards.ridge_in, side.at)


def _own(side: Side, level_in: Exact) -> TwoWays:
    """Return a level length, and the same along a common or jack."""
    return side.both(level_in, side.slope)


def _hip(side: Side, level_in: Exact) -> TwoWays:
    """Return a level length, and the same along hip or valley."""
    return side.both(level_in, side.at.hip_slope)
