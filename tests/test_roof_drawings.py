"""Drawings of the reference tables, in numbers: what is drawn measures what the geometry says."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import pairwise
from math import atan, degrees, dist, isclose, sqrt
from urllib.parse import unquote

import pytest
from inked import inked

from layouts.drawings.bearing import seat_points, tail_points
from layouts.drawings.cheek_faces import SIDE_UNITS, TOP_UNITS, cheek_lines
from layouts.drawings.corner_plans import eave_corner, polygon_corners
from layouts.drawings.gable_studs import stud_tops
from layouts.drawings.hip_section import edge_depth
from layouts.drawings.plan import cut_member
from layouts.drawings.setting_out import level_gap
from layouts.pages.reference_drawings import PICTURES
from layouts.pages.reference_intros import question
from tablegen.geometry import backing, cheeks, common, corner, many_sided, seat, shortening, tail
from tablegen.geometry.corner import square_corner
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.roof.answer import regular
from tablegen.settings import Settings, read_settings
from tablegen.written.pitches import pitch

RISES = ('3', '8', '12', '19')
STOCK, SEAT, OUT, FACE = Fraction(29, 4), Fraction(7, 2), Fraction(12), Fraction(11, 2)
THICK = Fraction(3, 2)


def slope_of(rise: str):
    return pitch(rise).slope


def near(found: float, exact) -> bool:
    return isclose(found, float(exact), rel_tol=1e-9, abs_tol=1e-12)


@pytest.mark.parametrize(('hip', 'rafter'), [(1.5, 1.5), (3.5, 1.5), (0.75, 2.5)])
def test_a_jack_ends_at_the_hips_face(hip, rafter):
    at = square_corner(slope_of('8'), slope_of('8'))
    _, short, center, long, _ = cut_member(rafter, 90, hip, 45, 9)

    assert near(dist((0, 0), center), shortening.jack_at_hip(Fraction(hip), at))
    assert near(long[1] - short[1], shortening.point_to_point(Fraction(rafter), at))
    assert all(near(abs(x - y) / sqrt(2), Fraction(hip) / 2) for x, y in (short, center, long))


def test_a_hip_and_a_common_end_at_the_ridges_face():
    at = square_corner(slope_of('8'), slope_of('8'))
    ridge = Fraction(7, 2)

    assert near(dist((0, 0), cut_member(1.5, 45, 3.5, 0, 9)[2]), shortening.hip_at_ridge(ridge, at))
    assert near(dist((0, 0), cut_member(1.5, 180, 3.5, 90, 9)[2]), shortening.at_ridge(ridge))


@pytest.mark.parametrize('rise', RISES)
def test_a_birds_mouth(rise):
    slope = slope_of(rise)
    height = seat.height_above_plate(STOCK, SEAT, slope)
    points = seat_points(float(slope), float(STOCK), float(SEAT), float(height))

    assert near(-points['foot'][1], seat.heel(SEAT, slope))
    assert near(dist(points['corner'], points['under']), seat.notch_depth(SEAT, slope))
    assert near(dist(points['corner'], points['over']), seat.stock_left(STOCK, SEAT, slope))
    assert near(dist(points['under'], points['over']), STOCK)
    assert near((points['foot'][1] - 0) / (0 - points['toe'][0]), slope)


@pytest.mark.parametrize('rise', RISES)
def test_a_tail(rise):
    slope = slope_of(rise)
    height = seat.height_above_plate(STOCK, SEAT, slope)
    points = tail_points(*map(float, (slope, STOCK, height, OUT, FACE)))
    end = points['end']

    assert near(dist(end, (0, float(height))), common.line_length(OUT, slope))
    assert near(float(height) - end[1], common.rise(OUT, slope))
    assert near(dist(end, points['plumb']), tail.plumb_cut_length(STOCK, slope))
    assert near(dist(end, points['square']), STOCK)
    assert near(points['square'][0] - end[0], tail.square_cut_set_in(STOCK, slope))
    assert near(points['soffit'][0] - points['face'][0], tail.soffit_cut(STOCK, FACE, slope))
    assert near(-points['face'][1], tail.soffit_below_plate(height, OUT, FACE, slope))


@pytest.mark.parametrize('rise', RISES)
def test_a_hips_section(rise):
    at = square_corner(slope_of(rise), slope_of(rise))
    bevel = backing.bevel(at)
    turn = float(bevel.tangent)

    assert near(edge_depth(1.5, degrees(atan(turn))), backing.drop_square(THICK, at))


@pytest.mark.parametrize('rise', RISES)
def test_a_cheek_on_both_faces(rise):
    """Both lines start at one point; each runs along the board what its tangent says."""
    at = square_corner(slope_of(rise), slope_of(rise))
    cut = cheeks.jack(at)
    saw, top = (degrees(atan(float(angle.tangent))) for angle in (cut.saw, cut.top))

    side, across = cheek_lines(saw, top)
    assert near(side / SIDE_UNITS, slope_of(rise))
    assert near(across / TOP_UNITS, cut.top.tangent)


def test_gable_studs_grow_by_one_difference():
    tops = stud_tops(8 / 12, 16)
    assert all(near(high - low, Fraction(32, 3)) for low, high in pairwise(tops))


def test_eaves_of_two_pitches_meet_on_the_hip():
    at = square_corner(pitch_of_rise(Fraction(6)).slope, pitch_of_rise(Fraction(12)).slope)
    plan = degrees(atan(float(at.plan_a.tangent)))
    x, y = eave_corner(plan, 12.0)

    assert (near(-y, 12), near(-x, corner.run_b(Fraction(12), at))) == (True, True)
    assert near(y / x, at.plan_a.tangent)


@pytest.mark.parametrize('sides', [5, 6, 8, 12])
def test_a_polygon(sides):
    corners = polygon_corners(sides, 12.0)

    assert len(corners) == sides
    assert near(dist(corners[0], corners[1]), many_sided.side_from_apothem(Fraction(12), sides))
    assert all(
        near(dist((0, 0), one), many_sided.radius_from_apothem(Fraction(12), sides)) for one in corners
    )
    assert near(corners[0][1], -12)
    assert near(corners[0][1], corners[1][1])


def test_a_level_shows_the_pitch():
    assert near(level_gap(8 / 12, 24), 16)


@pytest.mark.parametrize('name', PICTURES)
@pytest.mark.parametrize(
    'written',
    [
        '',
        'pitches = ["30 deg"]',
        'pitches = [1, 24]',
        'stock = {ridge = 3.5, hip = "3/4"}',
        'smallest_part = "1/64"\nstock = {ridge = "3/4", hip = "3 1/2", rafter = "1 3/4"}',
        'stock = {rafter = 5.5}',
    ],
)
def test_every_picture_has_a_title_and_no_point_out_of_its_frame(name, written):
    ask = question(read_settings(written, ''))
    found = regular(ask)
    pictures, _ = PICTURES[name](ask, found)
    for picture in pictures:
        drawing = unquote(str(picture).partition('svg+xml,')[2])
        width, height = map(float, re.search(r'viewBox="0 0 (\S+) (\S+)"', drawing).groups())
        points = [tuple(map(float, pair)) for pair in re.findall(r'[ML](-?[\d.]+) (-?[\d.]+)', drawing)]
        points += [
            tuple(map(float, pair))
            for pair in re.findall(r'[xc][12x]?="(-?[\d.]+)" [yc][12y]?="(-?[\d.]+)"', drawing)
        ]

        assert points
        assert all(-1 <= x <= width + 1 and -1 <= y <= height + 1 for x, y in points)
        assert width <= 242
        assert re.search(r'alt="[A-Z][^"]{10,}"', str(picture))
        assert inked(picture).collisions() == []


def test_the_pitch_that_is_drawn_is_the_books():
    assert question(Settings()).pitch.text == '8 in 12'
    assert question(read_settings('pitches = [5, 20]', '')).pitch.text == '5 in 12'
    assert question(read_settings('pitches = [1, 24]', '')).pitch.text == '8 in 12'


def test_angles_of_the_drawn_section():
    """Source: half of 1½ in times tan 30°, by hand: 0.433013."""
    assert edge_depth(1.5, 30) == pytest.approx(0.4330127019, abs=1e-9)
