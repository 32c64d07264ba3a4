"""Boards to mark by their ink: what each arrow spans, and which figure stands at it."""

from __future__ import annotations

import pytest
from drawn import direction, distance, from_line, near
from inked import inked

from layouts.drawings import svg
from layouts.drawings.details import birds_mouth, ridge_end, top_cut
from layouts.drawings.marked_board import BoardMarks, marked_board

RISES = pytest.mark.parametrize('rise', [1, 3, 6, 8, 12, 16, 17, 20, 24])
UNIT = 0.06
"""Units: what two points may differ by where both were written to hundredths."""


@RISES
def test_distances_on_a_board_run_along_the_top_edge_from_the_ridges_center_line(rise):
    marks = BoardMarks(rise / 12, 5.5, 0.75, 74.9375, 83.875, 3.5 * rise / 12, 3.5)
    drawing = inked(marked_board(marks, ('ridge cut', 'LENGTH', 'WHOLE', 'mouth'), 'board'))
    center, building = drawing.drawn.lines(svg.HAIR, dashed=True)
    cut, tail = drawing.drawn.lines(svg.HEAVY)

    for word, start, end in (('LENGTH', center, building), ('WHOLE', center, tail)):
        span = drawing.dimension(word)
        assert [x for x, _ in span.ends] == pytest.approx([start.points[0][0], end.points[0][0]], abs=UNIT)
        assert near(span.direction, 0)
        assert span.ends[0][1] < start.points[0][1]  # above the top edge
    assert cut.points[0][0] > center.points[0][0]
    assert drawing.label('ridge cut').away(*cut.points) < drawing.label('ridge cut').away(*tail.points)
    assert drawing.collisions() == []


@RISES
def test_the_shortening_is_spanned_level_from_the_center_line_to_the_cut(rise):
    drawing = inked(ridge_end(rise / 12, 5.5, 0.75, ('center line', 'ridge cut', '3/4'), 'end'))
    (center,), (cut,) = drawing.drawn.lines(svg.HAIR, dashed=True), drawing.drawn.lines(svg.HEAVY)
    span = drawing.dimension('3/4')

    assert from_line(span.ends[0], *center.points) < UNIT
    assert from_line(span.ends[1], *cut.points) < UNIT
    assert near(abs(span.direction - cut.direction), 90, 0.3)
    assert drawing.label('center line').away(*center.points) < 15
    assert drawing.label('ridge cut').away(*cut.points) < 15
    assert drawing.collisions() == []


@RISES
def test_seat_and_heel_are_spanned_along_their_own_lines(rise):
    drawing = inked(birds_mouth(rise / 12, 5.5, 3.5, ('plate line', 'HEEL', 'SEAT'), 'mouth'))
    toe, corner, foot = drawing.drawn.outlines(svg.HEAVY)[0].points
    (plate_line,) = drawing.drawn.lines(svg.HAIR, dashed=True)

    for word, a, b in (('SEAT', toe, corner), ('HEEL', corner, foot)):
        span = drawing.dimension(word)
        assert near(span.length, distance(a, b), 0.1)
        assert abs(span.ends[1][0] - span.ends[0][0] - abs(b[0] - a[0])) < 0.1
        assert max(distance(span.ends[0], min(a, b)), distance(span.ends[1], max(a, b))) < 5
    assert distance(plate_line.points[1], corner) < UNIT
    assert drawing.label('plate line').away(plate_line.points[0], plate_line.points[0]) < 15
    assert drawing.collisions() == []


@pytest.mark.parametrize('angle', [45.0, 50.24, 65.91])
@pytest.mark.parametrize('double', [False, True], ids=['jack', 'hip'])
def test_a_cheeks_angle_lies_between_square_across_and_the_cut(angle, double):
    drawing = inked(top_cut(angle, double, ('ANGLE', 'top of the hip'), 'cut'))
    cut = (drawing.drawn.outlines(svg.HEAVY) if double else drawing.drawn.lines(svg.HEAVY))[0].points
    point, upper = cut[1], cut[0]
    arc = drawing.angle('ANGLE')

    assert near(direction(point, arc[-1]), 90, 0.3)
    assert near(direction(point, arc[0]), direction(point, upper), 0.3)
    assert near(90 - direction(point, upper), angle, 0.3)
    assert drawing.collisions() == []
