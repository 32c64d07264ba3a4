"""A corner whose sides agree against planes and vectors in space, at 50 digits, with none of the book's relations used.

The corner of the plates is the origin; eave A runs along x, eave B along y, z is plumb. All inches.
"""

from fractions import Fraction

import pytest
from fifty_digits import mp, mpf, real

from tablegen.geometry import backing, cheeks, common, corner, shortening
from tablegen.geometry.corner import Corner, square_corner
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact

RISES = [Fraction(rise) for rise in (*range(1, 25), 36)] + [Fraction(1, 4), Fraction(15, 2), Fraction(24, 5)]
EACH = pytest.mark.parametrize('rise', RISES, ids=str)
RUN = Fraction(587, 8)
SPACING = Fraction(96, 5)
THICKNESS = Fraction(3, 2)
PLUMB = (0, 0, 1)
ACROSS_HIP = (1, -1, 0)
"""Level and square to the hip: the way its thickness goes."""
SO_NEAR = mpf(10) ** -40


def dot(u, v) -> mpf:
    return mp.fsum(a * b for a, b in zip(u, v, strict=True))


def cross(u, v):
    return (u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0])


def size(u) -> mpf:
    return mp.sqrt(dot(u, u))


def between(u, v) -> mpf:
    """Return the angle of two lines in degrees, 0 to 90."""
    return mp.degrees(mp.atan2(size(cross(u, v)), abs(dot(u, v))))


def to_plane(start, way, normal, distance) -> tuple[mpf, ...]:
    """Return the path from a point along a way to the plane of the points p with normal · p = distance."""
    steps = (distance - dot(normal, start)) / dot(normal, way)
    return tuple(steps * part for part in way)


def roof(rise: Fraction):
    """Return the normals of roof planes A and B, the way of A's common, and that of the hip where they meet."""
    m = real(rise) / 12
    normal_a, normal_b = (0, -m, 1), (-m, 0, 1)
    way_a, way_hip = cross((1, 0, 0), normal_a), cross(normal_a, normal_b)
    return normal_a, normal_b, tuple(-part for part in way_a), tuple(-part for part in way_hip)


def regular(rise: Fraction) -> Corner:
    return square_corner(exact(rise / 12), exact(rise / 12))


def value(number: Exact) -> mpf:
    return mp.fsum(real(coefficient) * mp.sqrt(real(radicand)) for coefficient, radicand in number.terms)


def degrees(angle: Angle) -> mpf:
    return mp.degrees(mp.atan(value(angle.tangent)))


def near(ours: mpf, theirs: mpf) -> bool:
    return abs(ours - theirs) < SO_NEAR


def square_across(way):
    """Return the square-across line on a board's side: square to its edge, in the plumb plane it lies in."""
    return cross(way, cross(way, PLUMB))


def level(way):
    return (way[0], way[1], 0)


@EACH
def test_the_model_itself(rise):
    """Both commons climb by the pitch, the hip lies in both planes, over the bisector of the corner."""
    normal_a, normal_b, way_a, way_hip = roof(rise)

    assert near(way_a[2] / way_a[1], real(rise) / 12)
    assert near(dot(way_hip, normal_a), mpf(0))
    assert near(dot(way_hip, normal_b), mpf(0))
    assert near(way_hip[0], way_hip[1])
    assert way_hip[2] > 0


@EACH
def test_lengths_and_rise(rise):
    """From the plate line to the plumb plane through the ridge, which lies a run in from eave A."""
    _, _, way_a, way_hip = roof(rise)
    slope, run = exact(rise / 12), real(RUN)
    common_path = to_plane((run, 0, 0), way_a, (0, 1, 0), run)
    hip_path = to_plane((0, 0, 0), way_hip, (0, 1, 0), run)

    assert near(value(common.line_length(RUN, slope)), size(common_path))
    assert near(value(common.rise(RUN, slope)), common_path[2])
    assert near(value(corner.hip_length(RUN, regular(rise))), size(hip_path))
    assert near(hip_path[2], common_path[2])


@EACH
def test_plumb_and_level_cuts(rise):
    """As they are marked: from the square-across line on the board's side to the plumb and the level line."""
    _, _, way_a, way_hip = roof(rise)
    slope = exact(rise / 12)

    for way, angle in ((way_a, common.slope_angle(slope)), (way_hip, corner.hip_angle(regular(rise)))):
        assert near(degrees(angle), between(square_across(way), PLUMB))
        assert near(degrees(angle.complement()), between(square_across(way), level(way)))


@EACH
def test_jacks_differ_by_one_space(rise):
    """Jack n stands n spaces along eave A and runs up plane A to the plumb plane through the hip."""
    _, _, way_a, _ = roof(rise)
    lengths = [size(to_plane((number * real(SPACING), 0, 0), way_a, ACROSS_HIP, 0)) for number in range(5)]

    for number in range(1, 5):
        assert near(value(number * corner.jack_difference(SPACING, regular(rise))), lengths[number])
        assert near(
            value(corner.jack_difference(SPACING, regular(rise))), lengths[number] - lengths[number - 1]
        )


@EACH
def test_cheek_of_a_jack(rise):
    """On its top face, between its edge and the line where the hip's plumb side meets that face."""
    normal_a, _, way_a, _ = roof(rise)
    cut = cross(normal_a, ACROSS_HIP)

    assert near(degrees(cheeks.jack(regular(rise)).top.complement()), between(way_a, cut))
    assert near(degrees(cheeks.jack(regular(rise)).top), between(cross(normal_a, way_a), cut))


@EACH
def test_cheek_of_a_square_topped_hip(rise):
    """On its top edge, level across, where the ridge's side or the common's cheeks it: they are alike."""
    _, _, _, way_hip = roof(rise)
    top = cross(way_hip, ACROSS_HIP)

    for face in ((0, 1, 0), (1, 0, 0)):
        cut = cross(top, face)
        assert near(degrees(cheeks.hip_at_ridge(regular(rise)).top.complement()), between(way_hip, cut))
        assert near(degrees(cheeks.hip_at_ridge(regular(rise)).top), between(ACROSS_HIP, cut))


@EACH
def test_cheek_figures_on_the_square(rise):
    """With 12 on one arm, the figure on the other, and the edge across their ends, the arm of the 12 is the cut."""

    for figure, angle in (
        (cheeks.jack(regular(rise)).figure(), cheeks.jack(regular(rise)).top.complement()),
        (cheeks.hip_at_ridge(regular(rise)).figure(), cheeks.hip_at_ridge(regular(rise)).top.complement()),
    ):
        edge, arm_of_twelve = (12, -value(figure), 0), (12, 0, 0)
        assert near(degrees(angle), between(edge, arm_of_twelve))


@EACH
def test_backing_bevel(rise):
    """In the section square to the hip, from the square top to each roof plane."""
    normal_a, normal_b, _, way_hip = roof(rise)
    bevel = degrees(backing.bevel(regular(rise)))

    assert near(bevel, between(ACROSS_HIP, cross(normal_a, way_hip)))
    assert near(bevel, between(ACROSS_HIP, cross(normal_b, way_hip)))


@EACH
def test_backing_bevel_is_what_the_dihedral_leaves(rise):
    """Half the angle between the roof planes, and the bevel, make a right angle."""
    normal_a, normal_b, _, _ = roof(rise)
    dihedral = 180 - mp.degrees(mp.acos(dot(normal_a, normal_b) / (size(normal_a) * size(normal_b))))

    assert near(degrees(backing.bevel(regular(rise))), 90 - dihedral / 2)


@EACH
def test_drop_of_an_unbacked_hip(rise):
    """Its top edges, half a thickness out and as high as its center line, come down plumb into the roof planes."""
    normal_a, normal_b, _, way_hip = roof(rise)
    out = real(THICKNESS) / 2 / size(ACROSS_HIP)
    for side, normal in ((1, normal_a), (-1, normal_b)):
        arris = tuple(a + side * out * b for a, b in zip(way_hip, ACROSS_HIP, strict=True))
        fall = to_plane(arris, PLUMB, normal, 0)
        assert near(value(backing.drop_plumb(THICKNESS, regular(rise))), -fall[2])


def test_what_comes_off_at_a_ridge_and_at_a_hip():
    """Level, from the center line's end to the face it meets: ridge before common, ridge before hip, hip before jack."""
    half = real(THICKNESS) / 2
    to_ridge = size(to_plane((0, 0, 0), (0, 1, 0), (0, 1, 0), half))
    hip_to_ridge = size(to_plane((0, 0, 0), (1, 1, 0), (0, 1, 0), half))
    jack_to_hip = size(to_plane((0, 0, 0), (0, 1, 0), ACROSS_HIP, half * size(ACROSS_HIP)))
    at = regular(Fraction(6))

    assert near(value(shortening.at_ridge(THICKNESS)), to_ridge)
    assert near(value(shortening.hip_at_ridge(THICKNESS, at)), hip_to_ridge)
    assert near(value(shortening.jack_at_hip(THICKNESS, at)), jack_to_hip)


@EACH
def test_jack_from_center_to_long_point(rise):
    """Along plane A, from where a jack's center line meets the hip's side to where its far arris does."""
    _, _, way_a, _ = roof(rise)
    half = real(THICKNESS) / 2
    center, arris = (to_plane((50 + out, 0, 0), way_a, ACROSS_HIP, 0) for out in (0, half))

    assert near(value(common.line_length(THICKNESS / 2, exact(rise / 12))), size(arris) - size(center))
