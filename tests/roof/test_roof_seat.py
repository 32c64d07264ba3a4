"""Bird's mouths of commons and hips, against stock laid in space: plate's top at z = 0, plate line under eave A."""

from fractions import Fraction

import laid
import pytest
from corners import REGULAR, per_foot
from fifty_digits import real
from mpmath import mp, mpf
from near import NEAR, gap, number
from oracle.planes import ORIGIN, level, scaled, size, square_top
from refused import refused

from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.geometry import backing, seat
from tablegen.geometry.corner import square_corner
from tablegen.numbers.exact import exact
from tablegen.numbers.units import INCHES
from tablegen.written.stocks import stock

DEPTHS = (Fraction(7, 2), Fraction(29, 4), Fraction(45, 4))
SEAT = Fraction(7, 2)


@pytest.mark.parametrize('depth', DEPTHS, ids=str)
def test_heel_height_and_stock_left(case, depth):
    top, underside = laid.common(case.roof, real(depth), real(SEAT))

    assert gap(seat.heel(SEAT, case.slope), -laid.plumb_at_corner(case.roof, underside)) < NEAR
    assert gap(seat.height_above_plate(depth, SEAT, case.slope), laid.plumb_at_corner(case.roof, top)) < NEAR
    assert seat.seat_for_height(depth, seat.height_above_plate(depth, SEAT, case.slope), case.slope) == SEAT
    assert gap(seat.notch_depth(SEAT, case.slope), underside.height(ORIGIN)) < NEAR
    assert gap(seat.stock_left(depth, SEAT, case.slope), -top.height(ORIGIN)) < NEAR


@pytest.mark.parametrize('depth', DEPTHS, ids=str)
def test_a_dropped_hip_keeps_the_height_above_plate(case, depth, thickness):
    roof = case.roof
    height = seat.height_above_plate(depth, SEAT, case.slope)
    ours = seat.hip_height_above_plate(height, backing.drop_plumb(thickness, case.at))
    top = laid.dropped_top(roof, number(height), real(thickness))

    assert gap(ours, laid.plumb_at_corner(roof, top)) < NEAR
    _check_hip_seat(case, depth, ours, top)


@pytest.mark.parametrize('depth', DEPTHS, ids=str)
def test_a_backed_hip_keeps_the_height_above_plate(case, depth):
    roof = case.roof
    height = seat.height_above_plate(depth, SEAT, case.slope)
    top = laid.backed_top(roof, number(height))
    ours = seat.hip_height_above_plate(height, exact(0))

    assert gap(ours, laid.plumb_at_corner(roof, top)) < NEAR
    _check_hip_seat(case, depth, ours, top)


def _check_hip_seat(case, depth, ours, top):
    found = laid.birds_mouth(case.roof, top, real(depth))
    heel = seat.hip_heel(depth, ours, case.at)

    assert gap(heel, found.heel) < NEAR
    assert gap(seat.hip_seat(heel, case.at), found.seat) < NEAR
    assert gap(depth - seat.notch_depth(seat.hip_seat(heel, case.at), case.at.hip_slope), found.left) < NEAR
    least = top.moved(-number(seat.hip_least_depth(ours, case.at)))
    assert abs(laid.plumb_at_corner(case.roof, least)) < NEAR


def test_a_valleys_heel_clears_the_plates(case, thickness):
    out = laid.valley_heel_out(case.roof, real(thickness))

    assert gap(seat.valley_heel_back(thickness, case.at), out) < NEAR


@pytest.mark.parametrize('depth', DEPTHS, ids=str)
def test_a_valleys_heel_and_seat(case, depth, thickness):
    """Stock whose top holds the line of the two planes; the heel where the plates' faces meet its sides."""
    at = case.at
    height = seat.height_above_plate(
        Fraction(29, 4), SEAT, case.slope
    )  # the rafters', on a stock of their own
    top, out = laid.backed_top(case.roof, number(height)), laid.valley_heel_out(case.roof, real(thickness))
    found, ours = (
        laid.birds_mouth(case.roof, top, real(depth), out),
        seat.valley_heel(depth, height, thickness, at),
    )

    assert gap(ours, found.heel) < NEAR
    assert gap(seat.hip_seat(ours, at), found.seat) < NEAR
    least = number(seat.valley_least_depth(height, thickness, at))
    assert abs(laid.birds_mouth(case.roof, top, least, out).heel) < NEAR


def test_a_valley_and_a_dropped_hip_of_one_stock_are_notched_alike_at_a_regular_corner(thickness):
    for case in REGULAR:
        height = seat.height_above_plate(Fraction(29, 4), SEAT, case.slope)
        lowered = seat.hip_height_above_plate(height, backing.drop_plumb(thickness, case.at))
        heel = seat.hip_heel(Fraction(45, 4), lowered, case.at)

        assert gap(seat.valley_heel(Fraction(45, 4), height, thickness, case.at), number(heel)) < NEAR


def test_what_the_shortcut_gives():
    """A hip notched so that its seat is 17/12 of the common's, laid in space."""
    for case in REGULAR:
        roof, depth = case.roof, Fraction(29, 4)
        along_plan = scaled(level(roof.hip()), 1 / size(level(roof.hip())))
        inner = scaled(along_plan, mpf(17) / 12 * real(SEAT))
        top = square_top(inner, roof.hip()).moved(real(depth))

        assert gap(seat.shortcut_hip_height(depth, SEAT, case.at), laid.plumb_at_corner(roof, top)) < NEAR


def test_the_worked_values():
    """2×8 at 8 in 12 with a 3½ in seat, worked by hand: √(144 + 64)/12 · 7.25 − 3.5 · 8/12 = 6.380.

    The shortcut: 7.25 · √(1 + 2/9) − 17/12 · 3.5 · √2/3 = 5.678.
    """
    at = square_corner(per_foot(8), per_foot(8))
    depth = stock('2x8').depth_in
    height = seat.height_above_plate(depth, SEAT, per_foot(8))
    drop = backing.drop_plumb(Fraction(3, 2), at)

    assert abs(number(height) - mpf('6.380082249')) < NEAR
    assert abs(number(seat.hip_height_above_plate(height, drop)) - mpf('6.026528858')) < NEAR
    assert abs(number(seat.shortcut_hip_height(depth, SEAT, at)) - mpf('5.677795828')) < NEAR


def test_the_worked_valley():
    """The same roof by hand: 7.25·√(1 + 2/9) − 6.380082249 + 0.75·√2/3 = 1.988648; over √2/3 that is 4.218559."""
    at = square_corner(per_foot(8), per_foot(8))
    depth = stock('2x8').depth_in
    height = seat.height_above_plate(depth, SEAT, per_foot(8))
    heel = seat.valley_heel(depth, height, Fraction(3, 2), at)

    assert abs(number(heel) - mpf('1.988647718')) < NEAR
    assert abs(number(seat.hip_seat(heel, at)) - mpf('4.218558861')) < NEAR


def test_marks():
    """A seat that cuts just to the quarter is not past it; any longer is."""
    slope, depth = per_foot(5), Fraction(13)  # sin θ = 5/13

    assert seat.longest_seat(depth, Fraction(1, 4), slope) == Fraction(169, 20)
    assert seat.notch_marks(depth, seat.notch_depth(Fraction(169, 20), slope)) == 0
    assert seat.notch_marks(depth, seat.notch_depth(Fraction(17, 2), slope)) == 1
    assert seat.notch_marks(depth, seat.notch_depth(Fraction(12), slope)) == 2


def test_a_seat_deeper_than_the_stock_is_refused():
    with pytest.raises(BookError) as refused:
        seat.checked_seat(Fraction(7, 2), Fraction(11, 2), per_foot(12))

    assert error_line(refused.value) == (
        'seat: its notch is 3.89 in deep and the stock 3 1/2 in; allowed: a seat of 2.47 in leaves half of the stock'
    )


def test_no_seat_is_refused():
    with refused(r'^seat: a seat needs a length; allowed: above 0$'):
        seat.checked_seat(Fraction(7, 2), Fraction(0), per_foot(12))


def test_a_seat_that_leaves_stock_passes():
    for size_ in INCHES.stocks:
        seat.checked_seat(size_.depth_in, Fraction(7, 2), per_foot(8))


def test_the_notch_closes_its_triangle(case):
    """Heel and seat are the legs whose height over the underside is the notch's depth."""
    heel = number(seat.heel(SEAT, case.slope))
    across = mp.sqrt(heel * heel + real(SEAT) ** 2)

    assert abs(number(seat.notch_depth(SEAT, case.slope)) * across - heel * real(SEAT)) < NEAR


def test_a_flat_rafter_has_its_whole_depth_over_the_plate():
    assert (
        abs(number(seat.height_above_plate(Fraction(29, 4), SEAT, exact(Fraction(1, 10**15)))) - 7.25) < NEAR
    )
