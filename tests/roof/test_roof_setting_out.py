"""Diagonals, whole triangles, braces and the check for square, against points in a plane."""

from fractions import Fraction

import pytest
from fifty_digits import real
from mpmath import mp, mpf
from near import NEAR, gap, number
from oracle.planes import angle, line_angle, size, sub
from refused import refused

from tablegen.geometry import setting_out
from tablegen.numbers.exact import root


@pytest.mark.parametrize(('long', 'wide'), [(12, 5), (20, 16), (40, 24), (33, 7)])
def test_diagonals(long, wide):
    across = sub((mpf(long), mpf(wide), mpf(0)), (mpf(0), mpf(0), mpf(0)))

    assert gap(setting_out.diagonal(Fraction(long), Fraction(wide)), size(across)) < NEAR


@pytest.mark.parametrize(('leg', 'other'), [(24, 24), (24, 36), (36, 24), (12, 60)])
def test_a_brace_is_cut_along_its_leg(leg, other):
    """The first leg runs along x: the cut lies along x; square across the brace is its own left."""
    brace = (mpf(leg), mpf(other), mpf(0))
    square_across = (-brace[1], brace[0], mpf(0))

    assert (
        gap(
            setting_out.brace_cut(Fraction(leg), Fraction(other)),
            line_angle((mpf(1), mpf(0), mpf(0)), square_across),
        )
        < NEAR
    )


def test_an_equal_brace_is_the_root_of_two():
    assert setting_out.diagonal(Fraction(36), Fraction(36)) == 36 * root(2)
    assert setting_out.brace_cut(Fraction(36), Fraction(36)).tangent == 1


def test_whole_triangles_are_right_and_all_there():
    """Against every pair of legs tried in turn."""
    tried = {
        (a, b, c)
        for a in range(1, 100)
        for b in range(a, 100)
        for c in [round((a * a + b * b) ** 0.5)]
        if c * c == a * a + b * b and c <= 100 and mp.mpf(1) == _common_measure(a, b)
    }

    assert setting_out.whole_triangles(100)[:3] == [(3, 4, 5), (5, 12, 13), (8, 15, 17)]
    assert set(setting_out.whole_triangles(100)) == tried


def _common_measure(a, b):
    while b:
        a, b = b, a % b
    return a


@pytest.mark.parametrize('off_degrees', [mpf('0.1'), mpf('-0.5'), mpf(2), mpf(0)])
def test_out_of_square(off_degrees):
    """A parallelogram 240 by 144 whose corner is 90 degrees less so much: how far its far side leans."""
    corner = mp.pi / 2 - mp.radians(off_degrees)
    side = (144 * mp.cos(corner), 144 * mp.sin(corner), mpf(0))
    base = (mpf(240), mpf(0), mpf(0))
    far = size((base[0] + side[0], side[1], mpf(0)))
    near = size(sub(base, side))
    measured = [Fraction(mp.nstr(one, 28)) for one in (far, near)]

    assert gap(setting_out.lean(Fraction(240), *measured), side[0]) < NEAR
    assert abs(angle(base, side) - corner) < NEAR


def test_equal_diagonals_are_square():
    assert setting_out.lean(Fraction(240), Fraction(280), Fraction(280)) == 0


def test_no_side_is_refused():
    with refused(r'^sides: a side needs a length; allowed: above 0$'):
        setting_out.lean(Fraction(0), Fraction(280), Fraction(280))


def test_the_diagonal_is_longer_than_either_side():
    assert number(setting_out.diagonal(Fraction(7), Fraction(24))) == real(Fraction(25))
