"""Tails, against stock in space that runs past the plate line."""

from fractions import Fraction
from itertools import pairwise

import pytest
from corners import per_foot
from fifty_digits import real
from mpmath import mpf
from near import NEAR, gap, number
from oracle.planes import ORIGIN, Plane, dot, meet, plane, plumb_plane, size, sub

from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.geometry import common, corner, seat, tail
from tablegen.geometry.corner import square_corner

OUT = Fraction(149, 8)
DEPTH = Fraction(29, 4)
FACE = Fraction(11, 2)


def _end(roof):
    """The end of the common's top edge: over the overhang, on the rafter at x = 0."""
    return meet(plumb_plane(ORIGIN, roof.in_a), roof.a, Plane(roof.in_a, -real(OUT)))


def _underside(roof, cut):
    return meet(plumb_plane(ORIGIN, roof.in_a), roof.a.moved(-real(DEPTH)), cut)


def test_tails(case):
    roof = case.roof
    at_corner = meet(roof.a, roof.b, Plane(roof.in_a, -real(OUT)))

    assert gap(common.line_length(OUT, case.slope), size(_end(roof))) < NEAR
    assert gap(corner.hip_length(OUT, case.at), size(at_corner)) < NEAR
    assert gap(common.rise(OUT, case.slope), -_end(roof)[2]) < NEAR


def test_a_plumb_tail_cut(case):
    lower = _underside(case.roof, Plane(case.roof.in_a, -real(OUT)))

    assert gap(tail.plumb_cut_length(DEPTH, case.slope), size(sub(_end(case.roof), lower))) < NEAR


def test_a_square_tail_cut(case):
    roof = case.roof
    upper = _end(roof)
    lower = _underside(roof, plane(upper, upper))

    assert gap(tail.square_cut_set_in(DEPTH, case.slope), dot(roof.in_a, sub(lower, upper))) < NEAR
    assert gap(tail.square_cut_lower(DEPTH, case.slope), upper[2] - lower[2]) < NEAR


def test_a_level_soffit_cut(case):
    roof = case.roof
    end = _end(roof)
    under = Plane((mpf(0), mpf(0), mpf(1)), end[2] - real(FACE))
    inner = _underside(roof, under)
    height = seat.height_above_plate(DEPTH, Fraction(7, 2), case.slope)
    below = -(number(height) + end[2] - real(FACE))

    assert gap(tail.soffit_cut(DEPTH, FACE, case.slope), dot(roof.in_a, sub(inner, end))) < NEAR
    assert gap(tail.soffit_below_plate(height, OUT, FACE, case.slope), below) < NEAR


def test_the_overhang_that_makes_the_eaves_meet(case):
    """B's eave line at the height of A's, measured square to eave B; both then meet on the hip."""
    roof = case.roof
    height = Plane((mpf(0), mpf(0), mpf(1)), _end(roof)[2])
    on_b = meet(plumb_plane(ORIGIN, roof.in_b), roof.b, height)
    on_hip = meet(roof.a, roof.b, height)
    ours = corner.run_b(OUT, case.at)

    assert gap(ours, -dot(roof.in_b, on_b)) < NEAR
    assert abs(dot(roof.in_b, on_hip) - dot(roof.in_b, on_b)) < NEAR


def test_raising_a_plate_makes_equal_overhangs_meet_at_one_height(case):
    roof = case.roof
    raised = roof.b.lifted(number(tail.plate_raise(OUT, case.at)))
    on_b = meet(plumb_plane(ORIGIN, roof.in_b), raised, Plane(roof.in_b, -real(OUT)))

    assert abs(on_b[2] - _end(roof)[2]) < NEAR


@pytest.mark.parametrize('rise', range(1, 25))
def test_the_regular_hip_tail_runs_two_overhangs_square_to_each_other(rise):
    slope = per_foot(rise)

    assert corner.hip_length(OUT, square_corner(slope, slope)).squared() == OUT**2 * (2 + slope.squared())
    assert common.line_length(OUT, slope) == common.line_length(OUT, slope)


def test_equal_overhangs_on_unequal_pitches_do_not_meet():
    at = square_corner(per_foot(6), per_foot(9))

    assert corner.run_b(Fraction(18), at) == 12
    assert tail.plate_raise(Fraction(18), at) == Fraction(9, 2)


def test_tails_lengthen_with_the_pitch():
    lengths = [common.line_length(OUT, per_foot(rise)) for rise in range(1, 25)]

    assert all(low < high for low, high in pairwise(lengths))


@pytest.mark.parametrize(
    ('overhang', 'said'),
    [
        (Fraction(-1), 'overhang: is below zero; allowed: from 0 up to the run'),
        (
            Fraction(121),
            'overhang: 121 in is more than the run, 120 in: such a tail cannot be; allowed: from 0 up to the run',
        ),
    ],
)
def test_a_overhang_that_cannot_be(overhang, said):
    with pytest.raises(BookError) as refused:
        tail.checked_overhang(overhang, Fraction(120))

    assert error_line(refused.value) == said


def test_a_tail_as_long_as_the_run_or_none_at_all_can_be():
    tail.checked_overhang(Fraction(0), Fraction(120))
    tail.checked_overhang(Fraction(120), Fraction(120))
