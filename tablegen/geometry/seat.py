"""The bird's mouth: a level seat on the plate and a plumb heel at the plate's outer face.

Depths of stock are square to its edge. The plate line is the outer upper edge of the plate.
"""

from __future__ import annotations

from fractions import Fraction

from tablegen.errors import BookError
from tablegen.geometry.corner import Corner, hip_angle
from tablegen.geometry.seventeen import SHARE
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, floor_of, nearest

MARKS = (Fraction(1, 4), Fraction(1, 3))
"""Shares of the depth past which a notch is marked. A quarter is the limit at the ENDS of a sawn member in the
residential code (IRC 2006 and 2009 R802.7.1; later editions refer to R502.8.1): a notch with a tail outside it is not
at an end. A third is common practice, no source. Local code decides."""


def heel(seat_in: Exact | Fraction, slope: Exact) -> Exact:
    """Return the heel cut of a common rafter.

    Given:
        seat_in  level length of the seat, from the plate's outer face inwards, in
        slope    rise over run

    Returned:
        in, PLUMB, from the seat to the underside of the rafter, at the plate's outer face

    Source: the underside rises with the slope over the length of the seat.
    """
    return slope * seat_in


def height_above_plate(depth_in: Fraction, seat_in: Exact | Fraction, slope: Exact) -> Exact:
    """Return the height above plate of a common rafter.

    Returned:
        in, PLUMB over the plate line, from the plate's top to the rafter's top edge

    Source: the plumb depth of the stock, D/cos θ, less the heel.
    """
    return depth_in / Angle(slope).cosine() - heel(seat_in, slope)


def seat_for_height(depth_in: Fraction, height_in: Exact, slope: Exact) -> Exact:
    """Return the seat that gives a common rafter a wanted height above plate.

    Returned:
        in, LEVEL, from the plate's outer face inwards; 0 or less if the stock is too shallow to reach the plate

    Source: height_above_plate, turned about: (D / cos θ − HAP) / m.
    """
    return (depth_in / Angle(slope).cosine() - height_in) / slope


def notch_depth(seat_in: Exact | Fraction, slope: Exact) -> Exact:
    """Return the depth of the notch, in, SQUARE to the rafter's edge, from its underside to the notch's corner.

    Source: the seat times the sine of the slope.
    """
    return seat_in * Angle(slope).sine()


def stock_left(depth_in: Fraction, seat_in: Exact | Fraction, slope: Exact) -> Exact:
    """Return the stock left over the notch, in, SQUARE to the edge, from the notch's corner to the top edge."""
    return depth_in - notch_depth(seat_in, slope)


def notch_marks(depth_in: Fraction, notch_in: Exact) -> int:
    """Return how many of MARKS a notch, in, SQUARE to the edge, is deeper than: 0, 1 or 2."""
    return sum(notch_in > depth_in * share for share in MARKS)


def longest_seat(depth_in: Fraction, share: Fraction, slope: Exact) -> Exact:
    """Return the seat, in, level, whose notch takes just that share of the depth: share · D / sin θ."""
    return depth_in * share / Angle(slope).sine()


def is_tabled(depth_in: Fraction, seat_in: Exact | Fraction, notch_in: Exact) -> bool:
    """Return whether a table gives a bird's mouth: seat no longer than the stock is deep, half of it or more left.

    Given:
        seat_in   level, of any member; 0 or less where its stock does not reach the plate
        notch_in  square to its edge
    """
    return 0 < exact(seat_in) <= depth_in and 2 * notch_in <= depth_in


def checked_seat(depth_in: Fraction, seat_in: Exact | Fraction, slope: Exact, place: str = 'seat') -> None:
    """Refuse a seat whose notch would cut through the stock.

    Errors:
        BookError naming the longest seat that leaves half of the stock
    """
    if seat_in <= 0:
        raise BookError(place, message('error.seat_without_length'), message('error.above_zero'))
    if stock_left(depth_in, seat_in, slope) <= 0:
        most = floor_of(longest_seat(depth_in, Fraction(1, 2), slope), 100)
        notch = nearest(notch_depth(seat_in, slope), 100)
        problem = message('error.notch_through_stock', notch=text.decimal(notch, 2), depth=depth_in)
        raise BookError(place, problem, message('error.longest_seat', seat=text.decimal(most, 2)))


def hip_height_above_plate(common_height_in: Exact, drop_in: Exact) -> Exact:
    """Return the height above plate of a hip whose top serves the same roof planes as the commons.

    Given:
        common_height_in  height above plate of the commons, in, plumb over the plate line
        drop_in           plumb drop of a square-topped hip; 0 for a backed one

    Returned:
        in, PLUMB over the corner of the plates, on the hip's center line, to its top (to the backed ridge of
        a backed hip)

    Source: on the center line of the corner both planes stand as high above plate as on the plate lines.
    """
    return common_height_in - drop_in


def hip_heel(hip_depth_in: Fraction, hip_height_in: Exact, at: Corner) -> Exact:
    """Return the heel of a hip.

    Given:
        hip_depth_in   depth of the hip's stock before any backing, in, square to its edge
        hip_height_in  from hip_height_above_plate

    Returned:
        in, PLUMB at the corner of the plates, on the center line of the hip's side, from seat to underside;
        0 or less if the hip is too shallow to reach the plate: see hip_least_depth

    Source: the hip's plumb depth D/cos H, less what stands above the plate.
    """
    return hip_depth_in / hip_angle(at).cosine() - hip_height_in


def hip_seat(heel_in: Exact, at: Corner) -> Exact:
    """Return the seat of a hip or valley, in, LEVEL along it from its heel inwards: heel / tan H."""
    return heel_in / at.hip_slope


def hip_least_depth(hip_height_in: Exact, at: Corner) -> Exact:
    """Return the depth of hip stock, in, square to its edge, that only just reaches the plate: HAP · cos H."""
    return hip_height_in * hip_angle(at).cosine()


def valley_heel_back(valley_thickness_in: Fraction, at: Corner) -> Exact:
    """Return how far outwards of the inside corner of the plates the square heel of a valley stands.

    Given:
        valley_thickness_in  in, of the valley

    Returned:
        in, LEVEL along the valley, from the corner towards the tail. A hip needs none: the corner of its plates
        touches the middle of its heel.

    Source: the outer faces of the plates run back from an inside corner, and the valley's sides meet them t/2
    cot a and t/2 cot b outwards of it; the farther one decides. Regular: half of the thickness.
    """
    return valley_thickness_in / 2 * max(1 / at.plan_a.tan(), 1 / at.plan_b.tan())


def valley_heel(
    valley_depth_in: Fraction, height_in: Exact, valley_thickness_in: Fraction, at: Corner
) -> Exact:
    """Return the heel of a valley, which is not dropped and stands on an inside corner of the plates.

    Given:
        valley_depth_in      of the valley's own stock, in, square to its edge
        height_in            height above plate of the commons, in: the valley's own on its center line
        valley_thickness_in  in

    Returned:
        in, PLUMB, from seat to underside, valley_heel_back outwards of the corner; 0 or less if the stock is too
        shallow to reach the plate: see valley_least_depth

    Notes:
        1. At a regular corner a valley and a DROPPED hip of one stock and thickness have the same heel and seat:
           there the drop, t/2 · tan H, is what the underside falls in t/2 of level.

    Source: at the corner the underside is D/cos H − HAP below the plate's top, and outwards it falls by tan H.
    """
    return hip_heel(valley_depth_in, height_in, at) + valley_heel_back(valley_thickness_in, at) * at.hip_slope


def valley_least_depth(height_in: Exact, valley_thickness_in: Fraction, at: Corner) -> Exact:
    """Return the depth of valley stock, in, square to its edge, that only just reaches the plate at its heel."""
    lower = valley_heel_back(valley_thickness_in, at) * at.hip_slope
    return (height_in - lower) * hip_angle(at).cosine()


def shortcut_hip_height(hip_depth_in: Fraction, seat_in: Exact | Fraction, at: Corner) -> Exact:
    """Return the height above plate, in, that an old shortcut gives: hip seat = 17/12 of the common seat, as it is said.

    Notes:
        1. It is wrong: it carries the common's seat over and forgets that the hip's plumb depth is less.
           How wrong is this less hip_height_above_plate.
    """
    return hip_depth_in / hip_angle(at).cosine() - SHARE * seat_in * at.hip_slope
