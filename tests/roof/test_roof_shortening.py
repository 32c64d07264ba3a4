"""Shortening at ridges, commons, hips and valleys, against members in space."""

from fractions import Fraction

from corners import per_foot
from fifty_digits import real
from mpmath import mp
from near import NEAR, gap, number
from oracle.planes import ORIGIN, Plane, dot, level, meet, member, scaled, size, sub

from tablegen.geometry import shortening
from tablegen.geometry.corner import square_corner
from tablegen.numbers.exact import root

JACK_AT = mp.mpf(61)


def _jack(roof, thickness):
    return member(scaled(roof.eave_a, JACK_AT), roof.in_a, real(thickness), roof.a)


def _apart(p, q):
    return size(level(sub(p, q))), size(sub(p, q))


def test_a_common_at_the_ridge(case, run, thickness):
    roof = case.roof
    rafter = member(ORIGIN, roof.in_a, mp.mpf(1), roof.a)
    ridge = Plane(roof.in_a, real(run))
    flat, sloped = _apart(rafter.end(ridge), rafter.end(ridge.moved(-real(thickness) / 2)))
    ours = shortening.at_ridge(thickness)

    assert gap(ours, flat) < NEAR
    assert gap(shortening.along(ours, case.slope), sloped) < NEAR


def test_a_valley_jack_at_the_ridge(case, run, thickness):
    """It starts at the valley, and meets the ridge of its plane square."""
    roof = case.roof
    rafter = _jack(roof, Fraction(3, 2))
    ridge = Plane(roof.in_a, real(run))
    flat, _ = _apart(rafter.end(ridge), rafter.end(ridge.moved(-real(thickness) / 2)))

    assert gap(shortening.at_ridge(thickness), flat) < NEAR


def test_a_hip_at_a_ridge(case, run, thickness):
    roof = case.roof
    board = roof.hip_member(mp.mpf(1))
    ridge = Plane(roof.in_a, real(run))
    flat, sloped = _apart(board.end(ridge), board.end(ridge.moved(-real(thickness) / 2)))
    ours = shortening.hip_at_ridge(thickness, case.at)

    assert gap(ours, flat) < NEAR
    assert gap(shortening.along(ours, case.at.hip_slope), sloped) < NEAR


def test_a_hip_between_commons(case, run, thickness):
    """One common of A and one of B stand where the hip ends; it stops at the face that it meets first."""
    roof = case.roof
    board = roof.hip_member(mp.mpf(1))
    end = board.end(Plane(roof.in_a, real(run)))
    of_a = board.end(Plane(roof.eave_a, dot(roof.eave_a, end)).moved(-real(thickness) / 2))
    of_b = board.end(Plane(roof.eave_b, dot(roof.eave_b, end)).moved(-real(thickness) / 2))

    assert gap(shortening.hip_at_common(thickness, case.at), _apart(end, of_a)[0]) < NEAR
    assert gap(shortening.hip_at_common(thickness, case.at.turned()), _apart(end, of_b)[0]) < NEAR
    first = min((of_a, of_b), key=size)
    assert gap(shortening.hip_between_commons(thickness, case.at), _apart(end, first)[0]) < NEAR


def test_a_jack_at_a_hip_or_valley(case, thickness):
    roof = case.roof
    rafter, board = _jack(roof, Fraction(3, 2)), roof.hip_member(real(thickness))
    on_the_hip_side, on_the_valley_side = rafter.end(board.right), rafter.end(board.left)
    ours = shortening.jack_at_hip(thickness, case.at)

    assert gap(ours, _apart(rafter.end(board.center), on_the_hip_side)[0]) < NEAR
    assert gap(ours, _apart(rafter.end(board.center), on_the_valley_side)[0]) < NEAR
    assert (
        gap(shortening.along(ours, case.slope), _apart(rafter.end(board.center), on_the_hip_side)[1]) < NEAR
    )


def test_long_point_to_short_point_of_a_jack(case, thickness):
    roof = case.roof
    rafter, board = _jack(roof, thickness), roof.hip_member(mp.mpf(1))
    left, right = (dot(roof.in_a, meet(side, roof.a, board.right)) for side in (rafter.left, rafter.right))
    ours = shortening.point_to_point(thickness, case.at)

    assert gap(ours, right - left) < NEAR
    assert (
        right > left
    )  # the hip jack's long point, away from the corner; a valley jack's is on the other side


def test_long_point_to_short_point_of_a_hip_at_a_ridge(case, run, thickness):
    roof = case.roof
    board = roof.hip_member(real(thickness))
    along_plan = scaled(level(roof.hip()), 1 / size(level(roof.hip())))
    left, right = (
        dot(along_plan, meet(side, board.top, Plane(roof.in_a, real(run))))
        for side in (board.left, board.right)
    )

    assert gap(shortening.hip_point_to_point(thickness, case.at), right - left) < NEAR


def test_the_regular_hip_loses_half_the_ridges_diagonal():
    """Navy builder's manual and every other: half of the 45-degree thickness."""
    at = square_corner(per_foot(8), per_foot(8))
    half_diagonal = Fraction(3, 2) / 2 * root(2)

    assert shortening.hip_at_ridge(Fraction(3, 2), at) == half_diagonal
    assert shortening.hip_between_commons(Fraction(3, 2), at) == half_diagonal
    assert shortening.jack_at_hip(Fraction(3, 2), at) == half_diagonal
    assert shortening.point_to_point(Fraction(3, 2), at) == Fraction(3, 2)


def test_it_is_never_less_along_the_edge(case):
    level_in = shortening.jack_at_hip(Fraction(3, 2), case.at)

    assert number(shortening.along(level_in, case.slope)) > number(level_in)
