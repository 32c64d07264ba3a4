"""Drawings of seats, tails, gables and levels by their ink: what each arrow spans or points at, ridge to the left."""

from __future__ import annotations

from math import atan, degrees

import pytest
from drawn import direction, distance, from_line, near, to_stretch
from inked import inked

from layouts.drawings import svg
from layouts.drawings.bearing import seat_detail, tail_detail
from layouts.drawings.gable_studs import gable_studs
from layouts.drawings.setting_out import level_and_tape
from layouts.words.drawings import ROOF_DRAWINGS

RISES = pytest.mark.parametrize('rise', [4, 5, 6, 8, 10, 12])
UNIT = 0.06
DEPTH, SEAT = 7.25, 3.5


def height_above_plate(slope: float) -> float:
    return DEPTH * (1 + slope * slope) ** 0.5 - SEAT * slope


@RISES
def test_the_parts_of_a_birds_mouth_are_named_where_they_are(rise):
    slope, words = rise / 12, ROOF_DRAWINGS['seat']
    drawing = inked(seat_detail(slope, DEPTH, SEAT, height_above_plate(slope), words, 'seat'))
    toe, corner, foot = drawing.drawn.outlines(svg.HEAVY)[0].points
    top_edge = min(
        (
            line
            for line in drawing.drawn.lines(svg.LINE)
            if near(line.direction % 180, 180 - degrees(atan(slope)), 0.5)
        ),
        key=lambda line: line.points[0][1] - slope * line.points[0][0],
    )
    scale = distance(toe, corner) / SEAT
    height, left = drawing.dimension(words['height']), drawing.dimension(words['left'])

    assert toe[0] < corner[0] == foot[0]  # the seat runs from the plate line towards the ridge, to the left
    assert near(height.ends[0][0], corner[0])
    assert near(abs(height.direction), 90)
    assert max(end[1] for end in height.ends) == corner[1]
    assert near(height.length / scale, height_above_plate(slope), 0.05)
    for span in (height, left):
        assert sorted(from_line(end, *top_edge.points) < UNIT for end in span.ends) == [False, True]
    assert near(left.length / scale, DEPTH - SEAT * slope / (1 + slope * slope) ** 0.5, 0.05)
    assert to_stretch(drawing.pointed(words['seat']), toe, corner) < 1
    assert drawing.label(words['heel']).away(corner, foot) < 20
    assert drawing.label(words['notch']).at[0] > corner[0]
    assert drawing.collisions() == []


@RISES
def test_the_parts_of_a_tail_are_named_where_they_are(rise):
    slope, out, words = rise / 12, 12.0, ROOF_DRAWINGS['tail']
    drawing = inked(tail_detail(slope, DEPTH, height_above_plate(slope), out, 5.5, words, 'tail'))
    (plate_line,) = [
        line.points[0][0]
        for line in drawing.drawn.lines(svg.HAIR, dashed=True)
        if near(abs(line.direction), 90)
    ]
    (plumb,) = drawing.drawn.lines(svg.HEAVY)
    end = plumb.points[0]
    overhang, fall, tail = (drawing.dimension(words[name]) for name in ('overhang', 'fall', 'tail'))
    square, soffit = (line for line in drawing.drawn.lines(svg.LINE, dashed=True))

    assert plate_line < end[0]  # the tail is at the right
    assert [x for x, _ in overhang.ends] == pytest.approx([plate_line, end[0]], abs=UNIT)
    assert near(overhang.direction, 0)
    assert near(abs(fall.direction), 90)
    assert near(fall.length / overhang.length, slope, 0.01)
    assert max(y for _, y in fall.ends) == pytest.approx(end[1], abs=UNIT)
    assert near(-tail.direction, degrees(atan(slope)), 0.2)
    assert near(tail.ends[1][0] - tail.ends[0][0], overhang.length, 0.1)
    assert to_stretch(drawing.pointed(words['plumb']), *plumb.points) < UNIT
    assert to_stretch(drawing.pointed(words['square']), *square.points) < UNIT
    assert to_stretch(drawing.pointed(words['soffit']), *soffit.points) < UNIT
    assert near((direction(*square.points) - tail.direction) % 180, 90, 0.3)
    assert near(soffit.points[0][1], soffit.points[1][1])
    assert drawing.collisions() == []


@RISES
def test_studs_grow_toward_the_ridge_by_the_difference_that_is_named(rise):
    slope = rise / 12
    words = {
        'difference': '10 11/16 in',
        'spacing': '16 in',
        'cut': '33.69°',
        'ridge': 'RIDGE',
        'tail': 'TAIL',
    }
    drawing = inked(gable_studs(slope, 16.0, words, 'gable'))
    studs = [stroke.points for stroke in drawing.drawn.outlines(svg.LINE) if len(stroke.points) == 5][1:]
    tops = sorted((min(x for x, _ in stud), min(y for _, y in stud)) for stud in studs)
    spacing, step = drawing.dimension('16 in'), drawing.dimension('10 11/16 in')

    assert [y for _, y in tops] == sorted(y for _, y in tops)  # lower to the right
    assert near(spacing.length, tops[1][0] - tops[0][0], 0.1)
    assert drawing.pointed('33.69°')[0] == pytest.approx(tops[0][0], abs=3)
    assert near(step.length / spacing.length, slope, 0.01)
    assert near(abs(step.direction), 90)
    assert drawing.collisions() == []


@RISES
def test_the_gap_under_a_level_is_spanned_plumb_from_its_free_end_to_the_roof(rise):
    slope = rise / 12
    words = {'level': '24 in level', 'gap': 'GAP', 'pitch': 'PITCH', 'ridge': 'RIDGE', 'tail': 'TAIL'}
    drawing = inked(level_and_tape(slope, 24.0, words, 'level'))
    (roof,) = drawing.drawn.lines(svg.HEAVY)
    gap = drawing.dimension('GAP')
    (arc,) = [one.points for one in drawing.drawn.outlines(svg.HAIR) if one.points[0] != one.points[-1]]
    upper, lower = sorted(gap.ends, key=lambda end: end[1])

    assert near(-roof.direction, degrees(atan(slope)), 0.2)
    assert near(upper[0], lower[0])
    assert from_line(lower, *roof.points) < UNIT
    assert near(180 - direction(lower, arc[0]), degrees(atan(slope)), 0.3)
    assert drawing.label('PITCH').at[0] < lower[0]
    assert drawing.collisions() == []
