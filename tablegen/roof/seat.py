"""Bird's mouths: of commons, and of the hips and valleys that match them, each from its own stock."""

from __future__ import annotations

from fractions import Fraction
from functools import partial
from typing import Any, ClassVar

from msgspec import Struct

from tablegen.geometry import backing, seat, tail
from tablegen.geometry.corner import Corner, greater
from tablegen.numbers.exact import Exact, sign
from tablegen.numbers.figure import length_rounded_down, length_rounded_up
from tablegen.numbers.units import Stock
from tablegen.roof.cautions import Caution, bearing_cautions, notch_cautions, too_thin_for_a_tail
from tablegen.roof.figures import Length, Ratio, ratio, size
from tablegen.roof.names import Mark, Why
from tablegen.roof.side import Side


class Notch(Struct, frozen=True):
    """The bird's mouth of any member, exact; lengths in inches."""

    stock: Stock
    slope: Exact
    """The member's own."""
    height_in: Exact
    """Height above plate on the center line, plumb."""
    heel_in: Exact
    """Plumb; 0 or less where the stock does not reach the plate."""
    seat_in: Exact
    """Level, along the member."""
    notch_in: Exact
    """Square to the edge."""

    @property
    def fault(self) -> Why | None:
        """Return why there is no such bird's mouth, None where there is one."""
        if sign(self.heel_in) <= 0:
            return Why.TOO_SHALLOW
        return None if self.notch_in < self.stock.depth_in else Why.CUT_THROUGH

    @property
    def left_in(self) -> Exact:
        """Return the stock left over it, square to the edge."""
        return self.stock.depth_in - self.notch_in

    @property
    def mark(self) -> Mark:
        """Return which share of the depth it is past."""
        return tuple(Mark)[seat.notch_marks(self.stock.depth_in, self.notch_in)]

    def cautions(self, overhang_in: Exact | Fraction) -> tuple[Caution, ...]:
        """Return what it calls for under a tail so long, level; nothing where it cannot be."""
        if self.fault:
            return ()
        called = notch_cautions(self.stock.depth_in, self.notch_in, overhang_in)
        return (*called, *bearing_cautions(self.seat_in))

    @property
    def thin(self) -> bool:
        """Return whether too little is left of it under a tail."""
        return too_thin_for_a_tail(self.left_in)


class Mouth(Struct, frozen=True):
    """A bird's mouth as it is told; what a member of its kind has not is None."""

    datum: tuple[str, ...]
    stock: str
    depth: Length
    height_above_plate: Length
    plumb_depth: Length
    seat: Length | Why
    heel: Length | None = None
    heel_back: Length | None = None
    """Of a valley."""
    notch_depth: Length | None = None
    stock_left: Length | None = None
    notch_share_of_depth: Ratio | None = None
    mark: Mark | None = None
    longest_seat_for_a_quarter: Length | None = None
    longest_seat_for_a_third: Length | None = None
    """Of a common."""
    least_depth: Length | None = None
    """Of a hip or valley: stock that just reaches the plate."""


class OldRule(Struct, frozen=True):
    """What a seat of 17/12 of the common's does to a hip's height."""

    datum: ClassVar = ('roof.seat.old_rule',)
    height_above_plate: Length
    low_if_dropped: Length | None
    high_if_dropped: Length | None
    low_if_backed: Length | None
    high_if_backed: Length | None


class Seats(Struct, frozen=True):
    """The bird's mouths of a regular corner."""

    common: Mouth
    hip_dropped: Mouth
    hip_backed: Mouth
    valley: Mouth
    hip_by_17_over_12: OldRule


def common_notch(side: Side) -> Notch:
    """Return the bird's mouth of the side's commons."""
    stock, slope, level = side.boards.stock, side.slope, side.seat_in
    notch = seat.notch_depth(level, slope)
    return Notch(stock, slope, side.height_in, seat.heel(level, slope), level, notch)


def greater_drop(side: Side) -> Exact:
    """Return the drop that serves both planes: at a corner of two pitches the greater one."""
    return greater(partial(backing.drop_plumb, side.boards.hip_in), side.at)


def dropped_hip(side: Side) -> Notch:
    """Return the bird's mouth of a square-topped hip, dropped."""
    return _hip(side, seat.hip_height_above_plate(side.height_in, greater_drop(side)))


def backed_hip(side: Side) -> Notch:
    """Return the bird's mouth of a backed hip."""
    return _hip(side, side.height_in)


def valley(side: Side) -> Notch:
    """Return the bird's mouth of a valley, which is not dropped, at an inside corner of the plates."""
    stock, at = side.boards.valleys, side.at
    heel = seat.valley_heel(stock.depth_in, side.height_in, side.boards.valley_thickness_in, at)
    return _corner_notch(stock, side.height_in, heel, at)


def _hip(side: Side, height_in: Exact) -> Notch:
    stock, at = side.boards.hips, side.at
    heel = seat.hip_heel(stock.depth_in, height_in, at)
    return _corner_notch(stock, height_in, heel, at)


def _corner_notch(stock: Stock, height_in: Exact, heel: Exact, at: Corner) -> Notch:
    level = seat.hip_seat(heel, at)
    return Notch(stock, at.hip_slope, height_in, heel, level, seat.notch_depth(level, at.hip_slope))


def common_mouth(side: Side) -> Mouth:
    """Return the bird's mouth of the side's commons as it is told."""
    notch, measure = common_notch(side), side.boards.measure
    depth = notch.stock.depth_in
    quarter, third = (
        length_rounded_down(seat.longest_seat(depth, share, side.slope), measure) for share in seat.MARKS
    )
    there = notch.fault is None
    return _mouth(
        side,
        notch,
        'roof.seat.common',
        notch_share_of_depth=ratio(notch.notch_in / depth) if there else None,
        mark=notch.mark if there else None,
        longest_seat_for_a_quarter=quarter,
        longest_seat_for_a_third=third,
    )


def hip_mouths(side: Side) -> tuple[Mouth, Mouth]:
    """Return the bird's mouths of a dropped and of a backed hip as they are told."""
    return (
        _hip_mouth(side, dropped_hip(side), 'roof.seat.dropped'),
        _hip_mouth(side, backed_hip(side), 'roof.seat.backed'),
    )


def _hip_mouth(side: Side, notch: Notch, datum: str) -> Mouth:
    least = length_rounded_up(seat.hip_least_depth(notch.height_in, side.at), side.boards.measure)
    return _mouth(side, notch, 'roof.seat.hip', datum, least_depth=least)


def valley_mouth(side: Side) -> Mouth:
    """Return the bird's mouth of a valley as it is told."""
    notch, thick = valley(side), side.boards.valley_thickness_in
    back = None if notch.fault else side.length(seat.valley_heel_back(thick, side.at))
    least = length_rounded_up(seat.valley_least_depth(notch.height_in, thick, side.at), side.boards.measure)
    return _mouth(side, notch, 'roof.seat.valley', heel_back=back, least_depth=least)


def _mouth(side: Side, notch: Notch, *datum: str, **own: Any) -> Mouth:
    """Return a bird's mouth with what only members of its kind have, by name."""
    depth = notch.stock.depth_in
    if notch.fault is None:
        own |= {
            'heel': side.length(notch.heel_in),
            'notch_depth': side.length(notch.notch_in),
            'stock_left': side.length(notch.left_in),
        }
    return Mouth(
        datum,
        notch.stock.name,
        side.length(depth),
        side.length(notch.height_in),
        side.length(tail.plumb_cut_length(depth, notch.slope)),
        notch.fault or side.length(notch.seat_in),
        **own,
    )


def seats_of(side: Side) -> Seats:
    """Return the bird's mouths of a regular corner."""
    return Seats(common_mouth(side), *hip_mouths(side), valley_mouth(side), _old_rule(side))


def _old_rule(side: Side) -> OldRule:
    height = seat.shortcut_hip_height(side.boards.hips.depth_in, side.seat_in, side.at)
    ways: list[Length | None] = []
    for right in (dropped_hip(side).height_in, side.height_in):
        off = side.length(size(right - height))
        ways += [off, None] if sign(right - height) >= 0 else [None, off]
    return OldRule(side.length(height), *ways)
