"""Backing bevels, drops and slides of hips, against planes in space."""

from fractions import Fraction
from itertools import pairwise

import pytest
from corners import per_foot
from fifty_digits import real
from near import NEAR, gap, number
from oracle.planes import (
    ORIGIN,
    add,
    along,
    cross,
    level,
    line_angle,
    meet,
    member,
    plane,
    scaled,
    size,
    square_top,
    sub,
    unit,
)

from tablegen.geometry import backing
from tablegen.geometry.corner import square_corner
from tablegen.numbers.exact import exact


def _edge_towards_a(roof, hip_board):
    """The point of the top edge on A's side, straight across from the corner."""
    return meet(hip_board.right, hip_board.top, plane(ORIGIN, level(roof.hip())))


def test_bevel(case):
    roof = case.roof
    square = plane(ORIGIN, roof.hip())
    top = square_top(ORIGIN, roof.hip())

    assert gap(backing.bevel(case.at), line_angle(along(roof.a, square), along(top, square))) < NEAR


def test_drop_plumb(case, thickness):
    roof = case.roof
    edge = _edge_towards_a(roof, roof.hip_member(real(thickness)))

    assert gap(backing.drop_plumb(thickness, case.at), roof.a.height(edge) / roof.a.normal[2]) < NEAR


def test_drop_square_to_the_edge(case, thickness):
    """From the square edge to the line where the roof plane cuts the hip's side, square to both."""
    roof = case.roof
    board = roof.hip_member(real(thickness))
    edge = _edge_towards_a(roof, board)
    lower = meet(board.right, roof.a, plane(edge, roof.hip()))

    assert gap(backing.drop_square(thickness, case.at), size(sub(edge, lower))) < NEAR


def test_a_slid_and_dropped_hip_has_both_edges_in_the_planes(case, thickness):
    roof = case.roof
    towards_a = scaled(cross((0, 0, 1), unit(level(roof.hip()))), -1)
    aside = scaled(towards_a, number(backing.slide(thickness, case.at)))
    down = (0, 0, -number(backing.drop_when_slid(thickness, case.at)))
    board = member(aside, level(roof.hip()), real(thickness), square_top(add(aside, down), roof.hip()))
    across = plane(ORIGIN, level(roof.hip()))

    assert abs(roof.a.height(meet(board.right, board.top, across))) < NEAR
    assert abs(roof.b.height(meet(board.left, board.top, across))) < NEAR


@pytest.mark.parametrize('rise', range(1, 25))
def test_a_regular_hip_needs_no_slide(rise):
    slope, t = per_foot(rise), Fraction(3, 2)
    at = square_corner(slope, slope)

    assert backing.slide(t, at) == 0
    assert backing.drop_when_slid(t, at) == backing.drop_plumb(t, at)


def test_twelve_in_twelve_is_backed_at_thirty_degrees():
    """A known value: tan 30 is the root of a third."""
    at = square_corner(per_foot(12), per_foot(12))

    assert backing.bevel(at).tangent.squared() == Fraction(1, 3)


def test_the_hip_slides_towards_the_lower_pitch():
    t = Fraction(3, 2)

    assert backing.slide(t, square_corner(per_foot(4), per_foot(12))) > 0
    assert backing.slide(t, square_corner(per_foot(12), per_foot(4))) < 0


def test_the_drop_square_to_the_edge_is_less_than_the_plumb_one(case):
    assert backing.drop_square(Fraction(1), case.at) < backing.drop_plumb(Fraction(1), case.at)


def test_backing_grows_with_the_pitch():
    bevels = [backing.bevel(square_corner(per_foot(rise), per_foot(rise))).tangent for rise in range(1, 25)]

    assert all(low < high for low, high in pairwise(bevels))


def test_the_limits():
    """A flat roof needs no backing; a plumb one as much as the corner: 45 degrees."""
    flat, steep = (
        square_corner(exact(slope), exact(slope)) for slope in (Fraction(1, 10**15), Fraction(10**15))
    )

    assert number(backing.bevel(flat).tangent) < NEAR
    assert abs(number(backing.bevel(steep).tangent) - 1) < NEAR
