"""Tails: of commons, jacks, hips and valleys, and the cuts at their ends."""

from __future__ import annotations

from typing import ClassVar

from msgspec import Struct

from tablegen.geometry import common, corner, shortening, tail
from tablegen.numbers.exact import Exact, sign
from tablegen.roof.figures import Length, board, size
from tablegen.roof.names import Why
from tablegen.roof.side import Side


class Soffit(Struct, frozen=True):
    """The level cut under a tail that carries a level soffit."""

    datum: ClassVar = ('roof.soffit',)
    face: Length
    level_cut: Length | Why
    below_plate: Length | None
    above_plate: Length | None


class CommonTail(Struct, frozen=True):
    """The tails of a side's commons and jacks."""

    overhang: Length
    common_and_jack: Length
    fall: Length
    common_plumb_cut: Length
    square_cut_inset: Length
    square_cut_below: Length
    soffit: Soffit


class Tail(CommonTail, frozen=True):
    """The tails at one side of a corner."""

    datum: ClassVar = ('roof.tail', 'roof.tail.hip_valley', 'roof.tail.cuts')
    hip_valley: Length
    hip_side: Length | Why
    valley_side: Length | Why
    hip_plumb_cut: Length


class ManySidedTail(CommonTail, frozen=True):
    """The tails at one side of a roof of many sides, which has no valley."""

    datum: ClassVar = ('roof.tail', 'roof.tail.hip', 'roof.tail.cuts')
    hip: Length
    hip_side: Length | Why
    hip_plumb_cut: Length


class ShedTail(Struct, frozen=True):
    """The tail of a shed's rafters."""

    datum: ClassVar = ('roof.tail.rafter', 'roof.tail.cuts')
    overhang: Length
    rafter: Length
    fall: Length
    rafter_plumb_cut: Length
    square_cut_inset: Length
    square_cut_below: Length
    soffit: Soffit


def tail_of(side: Side) -> Tail:
    """Return the tails at one side of a corner."""
    at = side.at
    back, valley_back = (
        shortening.set_back_at_ridge(thick, at)
        for thick in (side.boards.hip_in, side.boards.valley_thickness_in)
    )
    return Tail(
        *_common(side),
        side.length(hip_tail_in(side)),
        _hip_board(side, _own(side) - back),
        _hip_board(side, _own(side) + valley_back),
        _hip_plumb_cut(side),
    )


def many_sided_tail_of(side: Side) -> ManySidedTail:
    """Return the tails at one side of a roof of many sides."""
    back = shortening.set_back_at_ridge(side.boards.hip_in, side.at)
    return ManySidedTail(
        *_common(side),
        side.length(hip_tail_in(side)),
        _hip_board(side, _own(side) - back),
        _hip_plumb_cut(side),
    )


def shed_tail_of(side: Side) -> ShedTail:
    """Return the tail of a shed's rafters."""
    return ShedTail(*_common(side))


def hip_tail_in(side: Side) -> Exact:
    """Return the tail of hip or valley, in, along its top edge, to the point where the eave lines meet."""
    return corner.hip_length(side.overhang_in, side.at)


def _own(side: Side) -> Exact:
    """Return the overhang in the hip's own direction, level, in."""
    return corner.hip_run(side.overhang_in, side.at)


def _hip_board(side: Side, level_in: Exact) -> Length | Why:
    return board(shortening.along(level_in, side.at.hip_slope), side.boards.measure)


def _hip_plumb_cut(side: Side) -> Length:
    return side.length(tail.plumb_cut_length(side.boards.hips.depth_in, side.at.hip_slope))


def _common(side: Side) -> tuple[Length, Length, Length, Length, Length, Length, Soffit]:
    slope, depth, out = side.slope, side.boards.stock.depth_in, side.overhang_in
    return (
        side.length(out),
        side.length(common.line_length(out, slope)),
        side.length(common.rise(out, slope)),
        side.length(tail.plumb_cut_length(depth, slope)),
        side.length(tail.square_cut_set_in(depth, slope)),
        side.length(tail.square_cut_lower(depth, slope)),
        soffit_of(side),
    )


def soffit_of(side: Side) -> Soffit:
    """Return the level cut that leaves the boards' face at the tail's end."""
    face, slope = side.boards.tail_face_in, side.slope
    under = tail.soffit_cut(side.boards.stock.depth_in, face, slope)
    below = tail.soffit_below_plate(side.height_in, side.overhang_in, face, slope)
    stands, told = side.length(size(below)), side.length(face)
    if under <= 0:
        return Soffit(told, Why.NO_LONGER_THAN_FACE, None, None)
    if under > side.overhang_in:
        return Soffit(told, Why.PAST_THE_PLATE, None, None)
    return Soffit(told, side.length(under), *((None, stands) if sign(below) < 0 else (stands, None)))
