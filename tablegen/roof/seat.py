"""Bird's mouths: of commons, and of the hips and valleys that match them, each from its own stock."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.geometry import backing, seat, tail
from tablegen.geometry.corner import hip_angle
from tablegen.numbers.exact import Exact, sign
from tablegen.numbers.figure import Measure
from tablegen.numbers.units import Stock
from tablegen.roof.readings import Group, Reading, at_least, at_most, length, ratio, words
from tablegen.roof.side import Side

MARKS_SAID = (
    'not past a quarter of the depth',
    'past a quarter of the depth: a mark to look at, local code decides',
    'past a third of the depth: a mark to look at, local code decides',
)
TOO_SHALLOW = 'none: this stock is too shallow to reach the plate'
CUT_THROUGH = 'none: its notch would cut through this stock'


@dataclass(frozen=True, slots=True)
class Mouth:
    """The bird's mouth of a hip or valley."""

    stock: Stock
    height_in: Exact
    """Height above plate on the center line, plumb."""
    heel_in: Exact
    """Plumb; 0 or less where the stock does not reach the plate."""
    seat_in: Exact
    """Level, along the member."""
    notch_in: Exact
    """Square to the edge."""
    least_depth_in: Exact
    """Of stock that just reaches the plate, square to the edge."""

    @property
    def fault(self) -> str:
        """Return why there is no such bird's mouth; '' where there is one."""
        if sign(self.heel_in) <= 0:
            return TOO_SHALLOW
        return '' if self.notch_in < self.stock.depth_in else CUT_THROUGH


def greater_drop(side: Side) -> Exact:
    """Return the drop that serves both planes: at a corner of two pitches the greater one."""
    drops = (backing.drop_plumb(side.ask.hip_in, at) for at in (side.at, side.at.turned()))
    return max(drops)


def dropped_hip(side: Side) -> Mouth:
    """Return the bird's mouth of a square-topped hip, dropped."""
    return _hip(side, seat.hip_height_above_plate(side.height_in, greater_drop(side)))


def backed_hip(side: Side) -> Mouth:
    """Return the bird's mouth of a backed hip."""
    return _hip(side, side.height_in)


def valley(side: Side) -> Mouth:
    """Return the bird's mouth of a valley, which is not dropped, at an inside corner of the plates."""
    depth, thick, at = side.ask.valleys.depth_in, side.ask.valley_thickness_in, side.at
    heel = seat.valley_heel(depth, side.height_in, thick, at)
    level = seat.valley_seat(heel, at)
    least = seat.valley_least_depth(side.height_in, thick, at)
    return Mouth(side.ask.valleys, side.height_in, heel, level, heel * hip_angle(at).cosine(), least)


def _hip(side: Side, height_in: Exact) -> Mouth:
    heel = seat.hip_heel(side.ask.hips.depth_in, height_in, side.at)
    level, notch = seat.hip_seat(heel, side.at), heel * hip_angle(side.at).cosine()
    return Mouth(side.ask.hips, height_in, heel, level, notch, seat.hip_least_depth(height_in, side.at))


def seat_of(side: Side) -> Group:
    """Return the bird's mouths of a regular corner: common, hip dropped and backed, valley.

    The old shortcut's error is told at a square corner only: nobody takes it elsewhere.
    """
    old = (_shortcut(side),) if side.square else ()
    hips = hip_seats_of(side)
    return Group('seat', (common_seat_of(side), *hips, valley_seat_of(side), *old))


def hip_seats_of(side: Side) -> tuple[Group, Group]:
    """Return the bird's mouths of a dropped and of a backed hip."""
    line = (
        "on the hip's center line, at the outer corner of the plates; height above plate, heel and plumb depth: plumb; "
        'seat: level along the hip, from that corner inwards; notch depth, stock left and least depth, which just '
        'reaches the plate: square to the edge'
    )
    dropped = '; the drop is off already, nothing more is taken off'
    return (
        _mouth('hip_dropped', dropped_hip(side), side, line + dropped),
        _mouth('hip_backed', backed_hip(side), side, f'{line}; before any backing'),
    )


def common_seat_of(side: Side, name: str = 'common') -> Group:
    """Return the bird's mouth of the side's commons."""
    stock, slope, measure, level = side.ask.stock, side.slope, side.ask.measure, side.seat_in
    depth, notch = stock.depth_in, seat.notch_depth(level, slope)
    cut: tuple[Reading, ...] = (words('seat', TOO_SHALLOW),)
    if sign(level) > 0:
        cut = (
            length('seat', level, measure),
            length('heel', seat.heel(level, slope), measure),
            length('notch_depth', notch, measure),
            length('stock_left', depth - notch, measure),
            ratio('notch_share_of_depth', notch / depth),
            words('mark', MARKS_SAID[seat.notch_marks(depth, notch)]),
        )
    return Group(
        name,
        (
            words('stock', stock.name),
            length('depth', depth, measure),
            length('height_above_plate', side.height_in, measure),
            length('plumb_depth', tail.plumb_cut_length(depth, slope), measure),
            *cut,
            at_most('longest_seat_for_a_quarter', seat.longest_seat(depth, seat.MARKS[0], slope), measure),
            at_most('longest_seat_for_a_third', seat.longest_seat(depth, seat.MARKS[1], slope), measure),
        ),
        'seat: level, from the outside of plate inwards; heel, height above plate and plumb depth, top edge to '
        'underside: plumb, at the outside of plate; notch depth and stock left over it: square to the edge; longest '
        'seats: rounded down; geometry only, not strength',
    )


def valley_seat_of(side: Side) -> Group:
    """Return the bird's mouth of a valley."""
    back = seat.valley_heel_back(side.ask.valley_thickness_in, side.at)
    return _mouth(
        'valley',
        valley(side),
        side,
        "on the valley's center line; height above plate and plumb depth: plumb, over the inside corner of the plates; "
        'heel: plumb, heel_back outwards of that corner, towards the tail, level, where the sides meet the outer faces of '
        'the plates; seat: level, from that heel inwards; notch depth, stock left and least depth: square to the edge; '
        'its top is square and not dropped: jacks stand above its edges by the drop',
        length('heel_back', back, side.ask.measure),
    )


def _mouth(key: str, mouth: Mouth, side: Side, line: str, *more: Reading) -> Group:
    measure, depth = side.ask.measure, mouth.stock.depth_in
    cut: tuple[Reading, ...] = (words('seat', mouth.fault),)
    if not mouth.fault:
        cut = (
            length('seat', mouth.seat_in, measure),
            length('heel', mouth.heel_in, measure),
            *more,
            length('notch_depth', mouth.notch_in, measure),
            length('stock_left', depth - mouth.notch_in, measure),
        )
    return Group(
        key,
        (
            words('stock', mouth.stock.name),
            length('depth', depth, measure),
            length('height_above_plate', mouth.height_in, measure),
            length('plumb_depth', tail.plumb_cut_length(depth, side.at.hip_slope), measure),
            *cut,
            at_least('least_depth', mouth.least_depth_in, measure),
        ),
        line,
    )


def _shortcut(side: Side) -> Group:
    """Return what a seat of 17/12 of the common's does to a hip's height."""
    height = seat.shortcut_hip_height(side.ask.hips.depth_in, side.seat_in, side.at)
    measure = side.ask.measure
    return Group(
        'hip_by_17_over_12',
        (
            length('height_above_plate', height, measure),
            _off('dropped', dropped_hip(side).height_in - height, measure),
            _off('backed', side.height_in - height, measure),
        ),
        "an old shortcut, wrong: it gives the hip 17/12 of the common's seat; low or high: how far its top then stands "
        'under or over where it should, plumb',
    )


def _off(how: str, low_in: Exact, measure: Measure) -> Reading:
    high = sign(low_in) < 0
    return length(f'{"high" if high else "low"}_if_{how}', -low_in if high else low_in, measure)
