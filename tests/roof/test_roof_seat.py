"""Bird's mouths of commons and hips, against stock laid in space: plate's top at z = 0, plate line under eave A."""

from fractions import Fraction

import pytest
from corners import REGULAR, per_foot
from fifty_digits import real
from mpmath import mp, mpf
from near import NEAR, gap, number
from oracle.planes import LEVEL, ORIGIN, Plane, level, meet, plane, plumb_plane, scaled, size, square_top

from tablegen.errors import BookError
from tablegen.exact import exact
from tablegen.geometry import backing, seat
from tablegen.geometry.corner import square_corner
from tablegen.lumber import SIZES, stock

DEPTHS = (Fraction(7, 2), Fraction(29, 4), Fraction(45, 4))
SEAT = Fraction(7, 2)


def _common(roof, depth):
    """The top and underside of a common rafter whose seat ends SEAT inside the plate's outer face."""
    inner = scaled(roof.in_a, real(SEAT))
    underside = Plane(roof.a.normal, mpf(0)).moved(
        sum(a * b for a, b in zip(roof.a.normal, inner, strict=True))
    )
    return underside.moved(real(depth)), underside


def _plumb_at_corner(roof, top):
    return meet(plumb_plane(ORIGIN, roof.in_a), Plane(roof.in_a, mpf(0)), top)[2]


@pytest.mark.parametrize('depth', DEPTHS, ids=str)
def test_heel_height_and_stock_left(case, depth):
    top, underside = _common(case.roof, depth)

    assert gap(seat.heel(SEAT, case.slope), -_plumb_at_corner(case.roof, underside)) < NEAR
    assert gap(seat.height_above_plate(depth, SEAT, case.slope), _plumb_at_corner(case.roof, top)) < NEAR
    assert seat.seat_for_height(depth, seat.height_above_plate(depth, SEAT, case.slope), case.slope) == SEAT
    assert gap(seat.notch_depth(SEAT, case.slope), underside.height(ORIGIN)) < NEAR
    assert gap(seat.stock_left(depth, SEAT, case.slope), -top.height(ORIGIN)) < NEAR


def _hip_top(roof, height, thickness):
    """A square top whose edge towards A lies in plane A, that plane standing so high over the plate."""
    board = roof.hip_member(real(thickness))
    plane_a = roof.a.lifted(height)
    edge = meet(board.right, plane_a, plane(ORIGIN, level(roof.hip())))
    return square_top(edge, roof.hip())


@pytest.mark.parametrize('depth', DEPTHS, ids=str)
def test_a_dropped_hip_keeps_the_height_above_plate(case, depth, thickness):
    roof = case.roof
    height = seat.height_above_plate(depth, SEAT, case.slope)
    ours = seat.hip_height_above_plate(height, backing.drop_plumb(thickness, case.at))
    top = _hip_top(roof, number(height), thickness)

    assert gap(ours, _plumb_at_corner(roof, top)) < NEAR
    _check_hip_seat(case, depth, ours, top)


@pytest.mark.parametrize('depth', DEPTHS, ids=str)
def test_a_backed_hip_keeps_the_height_above_plate(case, depth):
    roof = case.roof
    height = seat.height_above_plate(depth, SEAT, case.slope)
    where_planes_meet = meet(
        roof.a.lifted(number(height)), roof.b.lifted(number(height)), plumb_plane(ORIGIN, roof.eave_a)
    )
    top = square_top(where_planes_meet, roof.hip())
    ours = seat.hip_height_above_plate(height, exact(0))

    assert gap(ours, _plumb_at_corner(roof, top)) < NEAR
    _check_hip_seat(case, depth, ours, top)


def _check_hip_seat(case, depth, ours, top):
    roof = case.roof
    underside = top.moved(-real(depth))
    heel = seat.hip_heel(depth, ours, case.at)
    center = plumb_plane(ORIGIN, level(roof.hip()))
    inner = meet(underside, LEVEL, center)
    reach = sum(a * b for a, b in zip(inner, level(roof.hip()), strict=True)) / size(level(roof.hip()))

    assert gap(heel, -_plumb_at_corner(roof, underside)) < NEAR
    assert gap(seat.hip_seat(heel, case.at), reach) < NEAR
    least = top.moved(-number(seat.hip_least_depth(ours, case.at)))
    assert abs(_plumb_at_corner(roof, least)) < NEAR


def _outwards_of_the_corner(roof, point):
    """How far a point is from the inside corner, level along the valley, towards its tail."""
    along = level(roof.hip())
    return -sum(a * b for a, b in zip(point, along, strict=True)) / size(along)


def _heel_of_a_valley(roof, thickness):
    """Where the plates' outer faces, carried on past the inside corner, meet the valley's sides, the farthest."""
    board = roof.hip_member(real(thickness))
    return max(
        _outwards_of_the_corner(roof, meet(side, LEVEL, Plane(inwards, mpf(0))))
        for side in (board.left, board.right)
        for inwards in (roof.in_a, roof.in_b)
    )


def test_a_valleys_heel_clears_the_plates(case, thickness):
    assert gap(seat.valley_heel_back(thickness, case.at), _heel_of_a_valley(case.roof, thickness)) < NEAR


@pytest.mark.parametrize('depth', DEPTHS, ids=str)
def test_a_valleys_heel_and_seat(case, depth, thickness):
    """The underside of stock whose top holds the line of the two planes, against that heel's plumb plane and z = 0."""
    roof, at = case.roof, case.at
    height = seat.height_above_plate(
        Fraction(29, 4), SEAT, case.slope
    )  # the rafters', on a stock of their own
    ridge = plumb_plane(ORIGIN, roof.eave_a)
    top = square_top(meet(roof.a.lifted(number(height)), roof.b.lifted(number(height)), ridge), roof.hip())
    underside, center = top.moved(-real(depth)), plumb_plane(ORIGIN, level(roof.hip()))
    out = _heel_of_a_valley(roof, thickness)
    at_heel = plane(scaled(level(roof.hip()), -out / size(level(roof.hip()))), level(roof.hip()))
    heel, ours = -meet(center, at_heel, underside)[2], seat.valley_heel(depth, height, thickness, at)
    reach = out - _outwards_of_the_corner(roof, meet(center, underside, LEVEL))

    assert gap(ours, heel) < NEAR
    assert gap(seat.valley_seat(ours, at), reach) < NEAR
    least = top.moved(-number(seat.valley_least_depth(height, thickness, at)))
    assert abs(meet(center, at_heel, least)[2]) < NEAR


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

        assert gap(seat.shortcut_hip_height(depth, SEAT, case.at), _plumb_at_corner(roof, top)) < NEAR


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
    assert abs(number(seat.valley_seat(heel, at)) - mpf('4.218558861')) < NEAR


def test_marks():
    """A seat that cuts just to the quarter is not past it; any longer is."""
    slope, depth = per_foot(5), Fraction(13)  # sin θ = 5/13

    assert seat.longest_seat(depth, Fraction(1, 4), slope) == Fraction(169, 20)
    assert seat.marks_passed(depth, Fraction(169, 20), slope) == 0
    assert seat.marks_passed(depth, Fraction(17, 2), slope) == 1
    assert seat.marks_passed(depth, Fraction(12), slope) == 2


def test_a_seat_deeper_than_the_stock_is_refused():
    with pytest.raises(BookError) as refused:
        seat.checked_seat(Fraction(7, 2), Fraction(11, 2), per_foot(12))

    assert str(refused.value) == (
        'seat: its notch is 3.89 in deep and the stock 3 1/2 in; allowed: a seat of 2.47 in leaves half of the stock'
    )


def test_no_seat_is_refused():
    with pytest.raises(BookError, match=r'^seat: a seat needs a length; allowed: above 0$'):
        seat.checked_seat(Fraction(7, 2), Fraction(0), per_foot(12))


def test_a_seat_that_leaves_stock_passes():
    for size_ in SIZES:
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
