"""The drawings of bird's mouths and tails by their ink: what each arrow spans, where each word points, ridge at the left."""

from __future__ import annotations

from math import atan, cos

import pytest
from drawn import near, to_stretch
from inked import Inked, inked

from layouts.drawings import svg
from layouts.drawings.bearing import seat_detail, tail_detail
from layouts.drawings.valley_heel import valley_heel
from layouts.pages.reference_drawings import PICTURES
from layouts.pages.reference_intros import question
from layouts.words.drawings import ROOF_DRAWINGS
from tablegen.roof.answer import regular
from tablegen.settings import read_settings

NAMES = ROOF_DRAWINGS
DEPTH, SEAT, OUT, FACE = 7.25, 3.5, 12.0, 5.5
UNIT = 0.06
"""Units: what two points may differ by where both were written to hundredths."""
RISES = pytest.mark.parametrize('rise', [4, 6, 8, 12])


def height_of(slope: float) -> float:
    return DEPTH / cos(atan(slope)) - SEAT * slope


def ridge_is_left_of_tail(drawing: Inked) -> bool:
    ridge, tail = drawing.label('RIDGE').at[0], drawing.label('TAIL').at[0]
    points = [x for stroke in drawing.drawn.lines(svg.LINE) for x, _ in stroke.points]
    return ridge <= min(points) and tail > max(points) - 20 > ridge


@RISES
def test_the_ridge_is_at_the_left_and_the_roof_rises_to_it(rise):
    slope = rise / 12
    height = height_of(slope)
    drawings = [
        inked(seat_detail(slope, DEPTH, SEAT, height, NAMES['seat'], 'title')),
        inked(tail_detail(slope, DEPTH, height_of(slope), OUT, FACE, NAMES['tail'], 'title')),
    ]
    for drawing in drawings:
        assert ridge_is_left_of_tail(drawing)
        top = min(drawing.drawn.lines(svg.LINE), key=lambda line: min(y for _, y in line.points))
        (high_x, high_y), (low_x, low_y) = sorted(top.points, key=lambda point: point[1])
        assert high_x < low_x
        assert near((low_y - high_y) / (low_x - high_x), slope, 0.01)


@pytest.mark.parametrize(('thickness', 'seat'), [(1.5, 4.21875), (3.5, 6.0), (0.75, 3.0)])
def test_a_valleys_heel_stands_outwards_of_the_corner_where_its_sides_meet_the_plates(thickness, seat):
    """The plates' outer faces leave the inside corner at 45 degrees to the valley; outwards is to the right, the tail's."""
    names = NAMES['valley-heel']
    drawing = inked(valley_heel(thickness, seat, names, 'title'))
    (heel,) = drawing.drawn.lines(svg.HEAVY)
    corner, out, level = (
        drawing.pointed(names['corner']),
        drawing.dimension(names['out']),
        drawing.dimension(names['seat']),
    )
    scale = heel.length / thickness
    faces = [
        line
        for line in drawing.drawn.lines(svg.LINE)
        if corner in line.points and near(abs(line.direction) % 90, 45, 0.1)
    ]

    assert ridge_is_left_of_tail(drawing)
    assert near(heel.points[0][0] - corner[0], thickness / 2 * scale, UNIT)
    assert [end[0] for end in out.ends] == pytest.approx([corner[0], heel.points[0][0]], abs=UNIT)
    assert [end[0] for end in level.ends] == pytest.approx(
        [heel.points[0][0] - seat * scale, heel.points[0][0]], abs=UNIT
    )
    assert len(faces) == 2
    assert all(min(to_stretch(end, *face.points) for face in faces) < UNIT for end in heel.points)


@pytest.mark.parametrize('name', ['seat', 'hip_seat', 'tail', 'hips'])
@pytest.mark.parametrize(
    'written',
    ['', 'pitches = [4]', 'pitches = [12]', 'stock = {ridge = 3.5, hip = "3/4"}', 'stock = {hip = 3.5}'],
)
def test_no_word_meets_a_line_or_another_word(name, written):
    ask = question(read_settings(written, ''))
    pictures, _ = PICTURES[name](ask, regular(ask))
    assert [inked(str(picture)).collisions() for picture in pictures] == [[]] * len(pictures)
