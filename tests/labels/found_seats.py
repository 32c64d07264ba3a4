"""What `find` tells of bird's mouths and tails."""

from __future__ import annotations

from fifty_digits import mpf, real
from oracle import sawn, seats, tails
from oracle.rounding import decimal
from oracle.sawn import CENTER, LEFT, RIGHT

from labels.expected import DEPTHS
from labels.told import (
    DATA_PLACES,
    FACE,
    HIP,
    HIPS,
    MARKS,
    OVERHANG,
    RAFTERS,
    SEAT,
    VALLEY,
    VALLEYS,
    Told,
    at_least,
    at_most,
    inches,
    inside,
)


def common_seat(at, seat=SEAT) -> Told:
    """Return the common's bird's mouth."""
    depth = real(DEPTHS[RAFTERS])
    notch = seats.notch(at, seat)
    return {
        'stock': RAFTERS,
        **inches(
            depth=depth,
            height_above_plate=seats.height_above_plate(at, depth, seat),
            plumb_depth=tails.plumb_cut_length(at, depth),
            seat=seat,
            heel=seats.heel(at, seat),
            notch_depth=notch,
            stock_left=seats.left(at, depth, seat),
        ),
        'notch_share_of_depth': decimal(notch / depth, DATA_PLACES),
        'mark': MARKS[(notch > depth / 4) + (notch > depth / 3)],
        **at_most(
            longest_seat_for_a_quarter=seats.longest(at, depth, mpf(1) / 4),
            longest_seat_for_a_third=seats.longest(at, depth, mpf(1) / 3),
        ),
    }


def _own_notch(at, heel, depth):
    """Return a hip's or valley's notch square to its edge: its heel's corner over the underside."""
    underside = at.hip_board(1).top.moved(-mpf(depth))
    at_corner = underside.lifted(-heel - (underside.offset / underside.normal[2]))
    return at_corner.height((mpf(0), mpf(0), mpf(0)))


def hip_seat(at, height, stock: str, thickness=0) -> Told:
    """Return the bird's mouth of a hip, dropped if it has sides, else backed."""
    depth = real(DEPTHS[stock])
    heel = seats.hip_heel(at, height, depth, thickness)
    notch = _own_notch(at, heel, depth)
    return {
        'stock': stock,
        **inches(
            depth=depth,
            height_above_plate=seats.hip_height(at, height, thickness),
            plumb_depth=tails.hip_plumb_cut_length(at, depth),
            seat=seats.hip_seat(at, height, depth, thickness),
            heel=heel,
            notch_depth=notch,
            stock_left=depth - notch,
        ),
        **at_least(least_depth=depth - notch),
    }


def valley_seat(at, height, stock: str) -> Told:
    """Return the bird's mouth of a valley."""
    depth = real(DEPTHS[stock])
    heel = seats.valley_heel(at, height, depth, VALLEY)
    notch = _own_notch(at, heel, depth)
    return {
        'stock': stock,
        **inches(
            depth=depth,
            height_above_plate=seats.hip_height(at, height),
            plumb_depth=tails.hip_plumb_cut_length(at, depth),
            seat=seats.valley_seat(at, height, depth, VALLEY),
            heel=heel,
            heel_back=seats.valley_back(at, VALLEY),
            notch_depth=notch,
            stock_left=depth - notch,
        ),
        **at_least(least_depth=depth - notch),
    }


def height_of_commons(at):
    return seats.height_above_plate(at, real(DEPTHS[RAFTERS]), SEAT)


def all_seats(at) -> Told:
    """Return the bird's mouths of a regular corner."""
    height = height_of_commons(at)
    wrong = seats.height_of_seat(at, real(DEPTHS[HIPS]), real(SEAT) * 17 / 12)
    return {
        **inside('common', common_seat(at)),
        **inside('hip_dropped', hip_seat(at, height, HIPS, HIP)),
        **inside('hip_backed', hip_seat(at, height, HIPS)),
        **inside('valley', valley_seat(at, height, VALLEYS)),
        **inside(
            'hip_by_17_over_12',
            inches(
                height_above_plate=wrong,
                high_if_dropped=wrong - seats.hip_height(at, height, HIP),
                high_if_backed=wrong - seats.hip_height(at, height),
            ),
        ),
    }


def tail(at, height, overhang=OVERHANG) -> Told:
    """Return the tail of commons that stand so high over the plate."""
    depth = real(DEPTHS[RAFTERS])
    inset, below = sawn.square_cut(at, depth)
    level_cut, below_plate = sawn.soffit(at, depth, height, overhang, FACE)
    return {
        **inches(
            overhang=overhang,
            common_and_jack=tails.common_tail(at, overhang),
            fall=tails.fall(at, overhang),
            common_plumb_cut=tails.plumb_cut_length(at, depth),
            square_cut_inset=inset,
            square_cut_below=below,
        ),
        **inside('soffit', inches(face=FACE, level_cut=level_cut, below_plate=below_plate)),
    }


def hip_tails(at, overhang=OVERHANG) -> Told:
    """Return the tails of hip and valley, and their sides to the fascia of A."""
    fascia = sawn.fascia(at, overhang)
    return inches(
        hip_valley=sawn.towards_tail(at, HIP, CENTER, fascia),
        hip_side=sawn.towards_tail(at, HIP, RIGHT, fascia),
        valley_side=sawn.towards_tail(at, VALLEY, LEFT, fascia),
        hip_plumb_cut=tails.hip_plumb_cut_length(at, real(DEPTHS[HIPS])),
    )
