"""Compound miters, against boards laid in space: their outer faces, inner faces, and the plane of their joint."""

from fractions import Fraction

import pytest
from corners import per_foot
from mpmath import mp, mpf
from near import NEAR, gap, number
from oracle.planes import (
    ORIGIN,
    along,
    cross,
    dihedral,
    dot,
    level,
    line_angle,
    meet,
    plane,
    plane_through,
    plumb_plane,
    scaled,
)

from tablegen.geometry import trim
from tablegen.geometry.corner import square_corner
from tablegen.numbers.angles import degrees_count
from tablegen.numbers.exact import exact

THICK = mpf(3) / 4


def _joint(face_a, face_b):
    """The plane through the line where the outer faces meet and the line where the inner faces meet."""
    two_cuts = [plane(ORIGIN, along(face_a, face_b)), plane(along(face_a, face_b), along(face_a, face_b))]
    outer = [meet(face_a, face_b, cut) for cut in two_cuts]
    inner = meet(face_a.moved(-THICK), face_b.moved(-THICK), two_cuts[0])
    return plane_through(*outer, inner)


def _leaning(face, eave, other_face):
    """The tangent of the joint line's lean on a face, from square across the eave; above 0 away from the board."""
    across = cross(face.normal, eave)
    joint = along(face, other_face)
    return -dot(joint, eave) / dot(joint, across) * (1 if across[2] >= 0 else -1)


def _agree(ours, face_a, face_b, eave, sign=1):
    joint = _joint(face_a, face_b)

    assert abs(number(ours.miter.tangent) - sign * _leaning(face_a, eave, face_b)) < NEAR
    assert gap(ours.bevel, mp.pi / 2 - dihedral(joint, face_a)) < NEAR
    assert gap(ours.bevel, mp.pi / 2 - dihedral(joint, face_b)) < NEAR


def test_a_fascia_that_stands_plumb(case):
    roof = case.roof
    faces = plane(ORIGIN, scaled(roof.in_a, -1)), plane(ORIGIN, scaled(roof.in_b, -1))

    _agree(trim.standing_plumb(case.at), *faces, roof.eave_a)


def test_a_board_that_stands_square_to_the_slope(case):
    """Its outer face holds the eave line and the roof plane's normal. Out at the top, it miters longer there."""
    roof = case.roof
    faces = (
        plane(ORIGIN, cross(roof.eave_a, roof.a.normal)),
        plane(ORIGIN, scaled(cross(roof.eave_b, roof.b.normal), -1)),
    )

    _agree(trim.square_to_slope(case.at), *faces, roof.eave_a)


def test_a_board_that_lies_in_the_plane(case):
    """Going up the slope its joint leans with the hip, away from the corner."""
    roof = case.roof

    _agree(trim.in_the_plane(case.at), roof.a, roof.b, roof.eave_a, sign=-1)


def test_sheathing(case):
    roof = case.roof
    hip_plane = plumb_plane(ORIGIN, level(roof.hip()))

    assert gap(trim.sheathing_from_eave(case.at), line_angle(along(roof.a, hip_plane), roof.eave_a)) < NEAR
    assert gap(trim.sheathing_plumb_bevel(case.at), mp.pi / 2 - dihedral(hip_plane, roof.a)) < NEAR


@pytest.mark.parametrize('rise', range(1, 25))
def test_equal_pitches_take_the_short_forms(rise):
    """tan M = sin θ and sin B = cos θ/√2 square to the slope; the other way about in the plane."""
    at = square_corner(per_foot(rise), per_foot(rise))
    theta = mp.atan(mpf(rise) / 12)
    standing, lying = trim.square_to_slope(at), trim.in_the_plane(at)

    assert gap(standing.miter, mp.atan(mp.sin(theta))) < NEAR
    assert gap(standing.bevel, mp.asin(mp.cos(theta) / mp.sqrt(2))) < NEAR
    assert gap(lying.miter, mp.atan(mp.cos(theta))) < NEAR
    assert gap(lying.bevel, mp.asin(mp.sin(theta) / mp.sqrt(2))) < NEAR
    assert degrees_count(trim.sheathing_plumb_bevel(at), 6) == degrees_count(lying.bevel, 6)


def test_the_two_boards_of_a_joint_share_the_bevel(case):
    for kind in (trim.square_to_slope, trim.in_the_plane):
        assert degrees_count(kind(case.at).bevel, 9) == degrees_count(kind(case.at.turned()).bevel, 9)


def test_a_flat_roof_is_a_picture_frame_and_a_plumb_one_a_box():
    flat, steep = (
        square_corner(exact(slope), exact(slope)) for slope in (Fraction(1, 10**12), Fraction(10**12))
    )

    assert degrees_count(trim.in_the_plane(flat).miter, 4) == 450000
    assert degrees_count(trim.in_the_plane(flat).bevel, 4) == 0
    assert degrees_count(trim.in_the_plane(steep).miter, 4) == 0
    assert degrees_count(trim.in_the_plane(steep).bevel, 4) == 450000
