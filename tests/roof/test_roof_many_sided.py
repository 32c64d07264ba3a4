"""Regular many-sided roofs, against n planes turned about an axis."""

from fractions import Fraction

import pytest
from corners import SIDES, per_foot
from fifty_digits import real
from mpmath import mp, mpf
from near import NEAR, gap, number
from oracle.planes import (
    ORIGIN,
    UP,
    Plane,
    add,
    angle,
    cut_readings,
    dot,
    level,
    meet,
    member,
    plane,
    plumb_plane,
    scaled,
    size,
    square_top,
    sub,
    unit,
)

from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.geometry import cheeks, common, corner, many_sided
from tablegen.numbers.angles import degrees_count
from tablegen.numbers.exact import root

APOTHEM = Fraction(1591, 16)
RISES = (1, 4, 9, 16, 24)
ROOFS = [(sides, rise) for sides in SIDES for rise in RISES]


def _directions(sides):
    """Level directions from the axis to the middle of each of the first three sides."""
    return [(mp.cos(k * 2 * mp.pi / sides), mp.sin(k * 2 * mp.pi / sides), mpf(0)) for k in (-1, 0, 1)]


def _planes(sides, rise):
    """Three neighboring roof planes; eaves at z = 0, the apothem from the axis."""
    slope = mpf(rise) / 12
    return [plane(scaled(out, real(APOTHEM)), add(scaled(out, slope), UP)) for out in _directions(sides)]


def _corners(sides):
    """The two corners of the plates at the ends of the middle side."""
    ground = Plane(UP, mpf(0))
    lines = [Plane(out, real(APOTHEM)) for out in _directions(sides)]
    return meet(lines[0], lines[1], ground), meet(lines[1], lines[2], ground)


def _hips(sides, rise, thickness):
    """The two hips of the middle side, square-topped, from their corners to the peak."""
    peak = meet(*_planes(sides, rise))
    return [
        member(foot, level(sub(peak, foot)), real(thickness), square_top(peak, sub(peak, foot)))
        for foot in _corners(sides)
    ]


@pytest.mark.parametrize(('sides', 'rise'), ROOFS)
def test_the_hip(sides, rise):
    peak, (foot, _) = meet(*_planes(sides, rise)), _corners(sides)
    slope = per_foot(rise)
    at = many_sided.regular_corner(slope, sides)

    assert (
        gap(corner.hip_length(APOTHEM, many_sided.regular_corner(slope, sides)), size(sub(peak, foot))) < NEAR
    )
    assert gap(corner.hip_length(APOTHEM, at), size(sub(peak, foot))) < NEAR
    assert gap(corner.hip_angle(at), angle(sub(peak, foot), level(sub(peak, foot)))) < NEAR
    assert (
        gap(
            many_sided.radius_from_apothem(Fraction(12), sides),
            size(level(sub(peak, foot))) / real(APOTHEM) * 12,
        )
        < NEAR
    )


@pytest.mark.parametrize('sides', SIDES)
def test_sides_and_apothems(sides):
    one, two = _corners(sides)
    side = size(sub(one, two))
    ours = many_sided.side_from_apothem(APOTHEM, sides)

    assert gap(ours, side) < NEAR
    assert gap(many_sided.radius_from_apothem(APOTHEM, sides), size(one)) < NEAR
    back = many_sided.apothem_from_side(Fraction(str(mp.nstr(side, 25))), sides)
    assert gap(back, real(APOTHEM)) < NEAR


@pytest.mark.parametrize('sides', SIDES)
def test_the_plates_corner(sides):
    one, two = _corners(sides)
    inside = mp.degrees(angle(sub(two, one), sub(_corner_before(sides), one)))

    assert abs(real(many_sided.plan_corner_degrees(sides)) - inside) < NEAR


def _corner_before(sides):
    """The corner before the middle side's first one."""
    turn = -2 * mp.pi / sides
    x, y, z = _corners(sides)[0]
    return (x * mp.cos(turn) - y * mp.sin(turn), x * mp.sin(turn) + y * mp.cos(turn), z)


@pytest.mark.parametrize(('sides', 'rise'), ROOFS)
def test_the_peak(sides, rise):
    """Neighboring hips share the plumb plane through the axis and the middle of their side."""
    first, second = _hips(sides, rise, Fraction(3, 2))
    shared = plumb_plane(ORIGIN, _directions(sides)[1])
    ours = many_sided.peak_cheek(per_foot(rise), sides)
    for board in (first, second):
        model = cut_readings(board, shared)
        assert gap(ours.saw, model.saw) < NEAR
        assert gap(ours.blade, model.blade) < NEAR
        assert gap(ours.top, mp.pi / 2 - model.top_from_edge) < NEAR


@pytest.mark.parametrize('sides', SIDES)
def test_the_point_of_a_hip_and_the_smallest_post(sides, thickness):
    """Where the side of one hip meets the side of the next, measured level along the hip from the axis."""
    first, second = _hips(sides, 9, thickness)
    ground = Plane(UP, mpf(0))
    nearest = meet(first.right, second.left, ground), meet(first.left, second.right, ground)
    towards_foot = unit(_corners(sides)[0])
    reach = max(dot(point, towards_foot) for point in nearest)

    assert gap(many_sided.peak_point(thickness, sides), reach) < NEAR


@pytest.mark.parametrize('rise', range(1, 25))
def test_four_sides_are_the_regular_square_corner(rise):
    slope = per_foot(rise)

    assert corner.hip_length(Fraction(100), many_sided.regular_corner(slope, 4)).squared() == 100**2 * (
        2 + slope.squared()
    )
    assert (
        many_sided.peak_cheek(slope, 4).figure()
        == cheeks.hip_at_ridge(corner.square_corner(slope, slope)).figure()
    )
    assert many_sided.side_from_apothem(Fraction(100), 4) == 200


def test_six_sides_are_exact():
    """A regular hexagon's side is its radius: 2/√3 of the apothem."""
    assert many_sided.side_from_apothem(Fraction(100), 6) == 100 * root(Fraction(4, 3))
    assert many_sided.radius_from_apothem(Fraction(100), 6) == 100 * root(Fraction(4, 3))
    assert many_sided.plan_corner_degrees(6) == 120


def test_eight_sides_known_value():
    """The octagon's side is 2(√2 − 1) of its apothem."""
    assert abs(number(many_sided.side_from_apothem(Fraction(60), 8)) - 120 * (mp.sqrt(2) - 1)) < NEAR


def test_more_sides_come_nearer_to_a_cone():
    """Hips grow shorter towards the common, and jacks' differences grow."""
    slope = per_foot(8)
    lengths = [
        number(corner.hip_length(Fraction(120), many_sided.regular_corner(slope, sides)))
        for sides in (3, 4, 5, 6, 8, 12, 60, 360)
    ]

    assert lengths == sorted(lengths, reverse=True)
    assert lengths[-1] - number(common.line_length(Fraction(120), slope)) < mpf('0.01')


def test_degrees_on_a_rounding_boundary_go_up():
    """32 sides: p is 5.625 degrees, printed to two places as 5.63, and 90 − p as 84.38."""
    half = many_sided.half_central(32)

    assert degrees_count(half, 2) == 563
    assert degrees_count(half.complement(), 2) == 8438


@pytest.mark.parametrize('sides', [2, 0, -4, 361])
def test_too_few_sides_are_refused(sides):
    with pytest.raises(BookError) as refused:
        many_sided.regular_corner(per_foot(8), sides)

    assert error_line(refused.value) == f'sides: {sides} sides make no roof; allowed: 3 to 360'
