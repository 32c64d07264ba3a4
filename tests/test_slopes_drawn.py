"""Drawings of plans, slopes and faces, read back from the ink: the ridge is at the left, arrows span what they say."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from math import atan, degrees, radians, tan

import pytest
from drawn import distance, from_line, near, read
from oracle import trim as trim_oracle
from oracle.corner import corner
from oracle.planes import Plane, cross, dot, meet, scaled, unit

from layouts.drawings import svg
from layouts.drawings.cheek_faces import cheek_faces
from layouts.drawings.corner_plans import unequal_plan
from layouts.drawings.gable_studs import gable_studs
from layouts.drawings.plan import PlanLabels, jack_points, shortening_plan
from layouts.drawings.setting_out import level_and_tape
from layouts.pages.reference_drawings import PICTURES
from layouts.pages.reference_intros import question
from tablegen.roof.answer import regular
from tablegen.settings import read_settings

ENDS = {'ridge': 'RIDGE', 'tail': 'TAIL'}


# Plans: the ridge's side is at the left ---------------------------------------------------------------------------


def test_members_in_plan_come_from_the_right():
    drawing = read(shortening_plan(1.5, 1.5, 1.5, PlanLabels('plans', ('a', 'b', 'c'), ('1', '2', '3'))))
    common, hip, jack = [line for line in drawing.lines(2.2) if line.length > 0.1]

    assert common.points[0][0] < common.points[1][0]  # from the ridge's center line into the wood
    assert hip.points[0][0] < hip.points[1][0]
    assert near(jack.points[0][0], jack.points[1][0])


def test_a_hip_jacks_long_point_is_away_from_the_corner():
    words = {'long': 'long', 'short': 'short', 'off': 'off', 'hip': 'hip', 'corner': 'corner'}
    drawing = read(jack_points(1.5, 1.5, words, 'a jack at a hip'))
    (jack,) = drawing.outlines(svg.HEAVY)
    tips = sorted(jack.points[:4], key=lambda point: point[1])[:2]
    long, short = tips

    assert long[0] < short[0] < drawing.words['corner'][0]
    assert any(
        distance(line.points[1], long) < 4
        for line in drawing.lines(svg.HAIR)
        if line.points[0][0] > drawing.words['long'][0]
    )
    assert drawing.words['long'][0] < long[0]
    assert drawing.words['short'][0] > short[0]


def test_the_hip_of_two_pitches_runs_to_the_left_from_the_corner():
    words = {key: key for key in ('a', 'b', 'plan', 'half', 'out_a', 'out_b')}
    plan = degrees(atan(2))
    drawing = read(unequal_plan(plan, words, 'two pitches'))
    (hip,) = drawing.lines(1.8)
    (low, high) = hip.points

    assert high[0] < low[0]
    assert near(degrees(atan((low[1] - high[1]) / (low[0] - high[0]))), plan, 0.05)
    assert drawing.words['a'][0] < high[0] < drawing.words['b'][0]


# Slopes fall to the right -----------------------------------------------------------------------------------------


@pytest.mark.parametrize('slope', [4 / 12, 8 / 12, 1.0])
def test_gable_studs_under_a_slope(slope):
    words = {'difference': 'd', 'spacing': 's', 'cut': 'c', **ENDS}
    drawing = read(gable_studs(slope, 16.0, words, 'studs'))
    rafter, *studs = (s for s in drawing.outlines(svg.LINE) if len(s.points) == 5)
    feet = [stud.points[0][0] for stud in studs]
    steps = {round(a - b, 1) for a, b in pairwise(feet)}
    (step,) = steps
    (arrow,) = [
        line
        for line in drawing.lines(svg.HAIR)
        if near(line.length, step, 0.05) and near(line.points[0][1], line.points[1][1])
    ]
    rises = [
        line
        for line in drawing.lines(svg.HAIR)
        if near(line.points[0][0], line.points[1][0]) and line.length > 3
    ]

    assert feet == sorted(feet, reverse=True)  # the shortest at the right
    assert abs(drawing.words['s'][0] - sum(x for x, _ in arrow.points) / 2) < 1
    assert any(near(line.length, step * slope, 0.05) for line in rises)  # the difference, no more and no less
    (right, *_), (left, *_) = sorted(rafter.points[:4], reverse=True)[:1], sorted(rafter.points[:4])[:1]
    assert left[1] < right[1]
    assert drawing.words['RIDGE'][0] < drawing.words['TAIL'][0]


@pytest.mark.parametrize('slope', [4 / 12, 8 / 12, 1.5])
def test_a_level_on_a_roof(slope):
    words = {'level': 'l', 'gap': 'g', 'pitch': 'p', **ENDS}
    drawing = read(level_and_tape(slope, 24.0, words, 'a level'))
    (roof,) = drawing.lines(svg.HEAVY)
    body = next(s for s in drawing.outlines(svg.LINE) if len(s.points) == 5)
    (tape,) = [
        line
        for line in drawing.lines(svg.LINE)
        if near(line.points[0][0], line.points[1][0]) and line.length > 5
    ]
    touch, free = body.points[0], body.points[1]

    assert roof.points[0][0] < roof.points[1][0]
    assert roof.points[0][1] < roof.points[1][1]  # falls to the right
    assert from_line(touch, *roof.points) < 0.02
    assert distance(tape.points[0], free) < 0.02
    assert from_line(tape.points[1], *roof.points) < 0.02
    assert near(tape.length / distance(touch, free), slope, 0.002)
    assert drawing.words['g'][0] > free[0]


@pytest.mark.parametrize('rise', [4, 8, 12])
def test_trim_boards_stand_as_they_are_named(rise):
    """As the page draws them: to scale, mitered as in space, the edge longer that the corner in space makes longer."""
    place, lean = corner(Fraction(rise)), degrees(atan(rise / 12))
    ask = question(read_settings(f'pitches = [{rise}]', ''))
    pictures, _ = PICTURES['trim'](ask, regular(ask))
    drawing = read(pictures[0])
    roofs = [line for line in drawing.lines(svg.LINE) if near(tan(radians(line.direction)), -rise / 12, 0.01)]
    boards = [s for s in drawing.outlines(svg.LINE) if s.fill == '#fff']
    plumb, *miters = drawing.lines(svg.HEAVY)

    assert len(roofs) == len(boards) == 3
    assert len(miters) == 2
    assert near(plumb.points[0][0], plumb.points[1][0])
    for board, roof, angle in zip(boards, roofs, (90, 90 - lean, lean), strict=True):
        (x0, y0), (x1, y1) = board.points[:2]
        assert near(degrees(atan2_level(x1 - x0, y1 - y0)), angle, 0.2)
        assert min(x for x, _ in board.points) > min(x for x, _ in roof.points)
    for line, face in zip(miters, (trim_oracle.standing(place), trim_oracle.lying(place)), strict=True):
        top, foot = sorted(line.points, key=lambda point: point[1])
        assert (top[0] > foot[0]) == (upper_less_lower(place, face) > 0)
        drawn = degrees(atan(abs(top[0] - foot[0]) / (foot[1] - top[1])))
        assert near(drawn, float(degrees(trim_oracle.miter(place, face))), 0.1)


def atan2_level(across: float, down: float) -> float:
    return abs(atan(down / across)) if abs(across) > 1e-6 else radians(90)


def upper_less_lower(place, face) -> float:
    """Return how much longer the upper edge of a board's face is at the hip, its middle on the eave's corner."""
    up = unit(cross(place.roof.eave_a, face.normal))
    up = up if up[2] > 0 else scaled(up, -1)
    ends = []
    for step in (1, -1):
        edge = scaled(up, step)
        at_hip = meet(face, place.hip_center, Plane(up, dot(up, edge)))
        ends.append(-dot(at_hip, place.roof.eave_a))  # the board comes along the eave towards the corner
    return float(ends[0] - ends[1])


# The cheek on two faces -------------------------------------------------------------------------------------------


def test_a_cheek_unfolded_lies_with_its_ridge_at_the_left():
    words = {'top_angle': 't', 'side_angle': 's', 'top': 'top edge', 'side': 'side', **ENDS}
    drawing = read(cheek_faces(33.69, 50.24, words, 'a cheek'))
    top, side = sorted(drawing.lines(svg.HEAVY), key=lambda line: line.points[1][1])
    start = top.points[0]

    assert start == side.points[0]
    assert top.points[1][0] < start[0]  # the long point on the far side, as on the jack of the examples
    assert side.points[1][0] > start[0]  # the plumb line leans towards the tail as it goes down
    assert drawing.words['RIDGE'][0] < start[0] < drawing.words['TAIL'][0]
    assert near(degrees(atan((side.points[1][0] - start[0]) / (side.points[1][1] - start[1]))), 33.69, 0.05)
