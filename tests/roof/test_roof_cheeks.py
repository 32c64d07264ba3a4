"""Cheek cuts, read on the faces of members in space."""

from fractions import Fraction

import pytest
from corners import per_foot
from fifty_digits import real
from mpmath import mp, mpf
from near import NEAR, gap, radians
from oracle.planes import (
    ORIGIN,
    Plane,
    along,
    cut_readings,
    dihedral,
    dot,
    line_angle,
    meet,
    member,
    plane,
    scaled,
)

from tablegen.geometry import cheeks
from tablegen.geometry.corner import square_corner
from tablegen.numbers.angles import degrees_count
from tablegen.numbers.exact import exact, nearest


def _jack(roof):
    return member(scaled(roof.eave_a, mpf(61)), roof.in_a, mpf(3) / 2, roof.a)


def _agree(ours, model):
    assert gap(ours.saw, model.saw) < NEAR
    assert gap(ours.blade, model.blade) < NEAR
    assert gap(ours.top, mp.pi / 2 - model.top_from_edge) < NEAR
    assert gap(ours.figure(), 12 * mp.tan(model.top_from_edge)) < NEAR * 12


def test_a_jack_against_a_hip_or_valley(case, thickness):
    board = case.roof.hip_member(real(thickness))

    _agree(cheeks.jack(case.at), cut_readings(_jack(case.roof), board.right))
    _agree(cheeks.jack(case.at), cut_readings(_jack(case.roof), board.left))


def test_a_hip_against_a_ridge(case, run):
    board = case.roof.hip_member(mpf(3) / 2)

    _agree(cheeks.hip_at_ridge(case.at), cut_readings(board, Plane(case.roof.in_a, real(run))))


def test_a_hip_against_a_common(case):
    board = case.roof.hip_member(mpf(3) / 2)

    _agree(cheeks.hip_at_common(case.at), cut_readings(board, Plane(case.roof.eave_a, mpf(100))))


def test_a_double_cheeks_sides(case):
    """Straight ahead of a hip stands a common of A on A's side: the A side of the hip is the one that meets it."""
    roof = case.roof
    board = roof.hip_member(mpf(3) / 2)
    of_a = Plane(roof.eave_a, mpf(100))
    towards_a, towards_b = (
        dot(board.direction(), meet(side, board.top, of_a)) for side in (board.right, board.left)
    )

    assert towards_a < towards_b


def test_a_backed_hip(case, run):
    roof = case.roof
    board = roof.hip_member(mpf(3) / 2)
    at_ridge = cut_readings(board, Plane(roof.in_a, real(run)), roof.a)
    at_common = cut_readings(board, Plane(roof.eave_a, mpf(100)), roof.a)

    assert gap(cheeks.backed_at_ridge(case.at), mp.pi / 2 - at_ridge.top_from_edge) < NEAR
    assert gap(cheeks.backed_at_common(case.at), mp.pi / 2 - at_common.top_from_edge) < NEAR


def test_past_the_saws_scale(case):
    """Cut plumb and square first; from that end the blade's tilt is the angle between the two cuts, less 90."""
    roof = case.roof
    rafter, board = _jack(roof), roof.hip_member(mpf(3) / 2)
    squared_end = plane(ORIGIN, roof.in_a)
    ours = cheeks.jack(case.at)

    assert gap(ours.from_end(), mp.pi / 2 - dihedral(board.right, squared_end)) < NEAR
    assert line_angle(along(board.right, rafter.left), along(squared_end, rafter.left)) < NEAR
    assert ours.within_scale() == (radians(ours.blade) <= mp.pi / 4 + NEAR)
    assert ours.within_scale() or radians(ours.from_end()) < mp.pi / 4


@pytest.mark.parametrize('rise', range(1, 25))
def test_regular_corners_are_cut_alike_at_ridge_and_common(rise):
    slope = per_foot(rise)
    at = square_corner(slope, slope)

    assert cheeks.hip_at_ridge(at).figure() == cheeks.hip_at_common(at).figure()
    assert cheeks.jack(at).blade.tangent == 1
    assert cheeks.figure_against_12(cheeks.backed_at_common(at)) == cheeks.jack(at).figure()


def test_the_worked_figures():
    """8 in 12: 144/√208 and 12·√(288/352), worked by hand."""
    at = square_corner(per_foot(8), per_foot(8))

    assert nearest(cheeks.jack(at).figure(), 1000) == 9985
    assert nearest(cheeks.hip_at_ridge(at).figure(), 1000) == 10854


def test_flat_and_plumb_limits():
    """On a flat roof the cut on the top is the plan angle; on a plumb one it runs along the edge."""
    flat, steep = (
        square_corner(exact(slope), exact(slope)) for slope in (Fraction(1, 10**12), Fraction(10**12))
    )

    assert degrees_count(cheeks.jack(flat).top, 4) == 450000
    assert degrees_count(cheeks.jack(steep).top, 4) == 900000


def test_the_two_jacks_of_an_unequal_corner_share_a_right_angle_in_plan():
    at = square_corner(per_foot(8), per_foot(12))

    assert cheeks.jack(at).blade.tangent * cheeks.jack(at.turned()).blade.tangent == 1
    assert not cheeks.jack(at).within_scale()
    assert cheeks.jack(at.turned()).within_scale()
