"""Drawings of a marked board: its lines, its bird's mouth and its cuts, read back from the ink."""

from __future__ import annotations

from math import atan, cos, degrees

import pytest
from drawn import direction, distance, from_line, near, read

from layouts.drawings import svg
from layouts.drawings.details import birds_mouth, ridge_end, top_cut
from layouts.drawings.marked_board import BoardMarks, marked_board

RISES = pytest.mark.parametrize('rise', [1, 4, 6, 8, 12, 18, 24])


# The marked board ----------------------------------------------------------------------------------------------

MARKS = BoardMarks(0.5, 5.5, 0.75, 74.9375, 83.875, 1.75, 3.5)


def board(marks: BoardMarks):
    return read(marked_board(marks, ('cut', 'building', 'tail', 'mouth'), 'board'))


def plumb_lines(drawing) -> dict[str, tuple]:
    """Return center line, building line, and cut and tail, by how they are drawn."""
    dashed = drawing.lines(svg.HAIR, dashed=True)
    return {'center': dashed[0], 'building': dashed[1], 'cut': drawing.lines(svg.HEAVY)[0], 'tail': drawing.lines(svg.HEAVY)[1]}  # fmt: skip


@pytest.mark.parametrize('slope', [1 / 12, 0.5, 1.0, 2.0, 8 / 12 / 2**0.5])
def test_plumb_lines_lean_as_the_slope_says(slope):
    """A board lies flat: a plumb line leans from square across it by the angle of the slope."""
    for line in plumb_lines(board(BoardMarks(slope, 5.5, 0.75, 75, 84, 1.75, 3.5))).values():
        (x1, y1), (x2, y2) = line.points
        assert near((x2 - x1) / (y2 - y1), slope, 0.002 * (1 + slope))


def test_marks_stand_at_their_distances_along_the_edge():
    lines = {name: line.points[0] for name, line in plumb_lines(board(MARKS)).items()}
    building = lines['building'][0] - lines['center'][0]
    tail = lines['tail'][0] - lines['center'][0]

    assert near(tail / building, MARKS.tail / MARKS.building, 0.001)
    assert len({y for _, y in lines.values()}) == 1


def test_the_cut_is_the_shortening_from_the_center_line_measured_level():
    """At the scale across the board, which is its depth drawn."""
    lines = plumb_lines(board(MARKS))
    top, foot = lines['center'].points
    scale = (foot[1] - top[1]) / MARKS.depth
    along = lines['cut'].points[0][0] - top[0]

    assert near(along * cos(atan(MARKS.slope)) / scale, MARKS.shortening, 0.01)


def test_without_a_ridge_the_cut_is_the_center_line():
    lines = plumb_lines(board(BoardMarks(0.5, 5.5, 0, 75, 84, 1.75, 3.5)))
    assert lines['cut'].points == lines['center'].points


def test_the_birds_mouth_is_a_square_notch_at_the_plate_line():
    """The heel plumb and the seat level: at right angles, as long as they are; toe and foot on the lower edge."""
    drawing = board(MARKS)
    toe, corner, foot = next(
        stroke for stroke in drawing.outlines(svg.HEAVY) if len(stroke.points) == 3
    ).points
    building = plumb_lines(drawing)['building'].points
    scale = (building[1][1] - building[0][1]) / MARKS.depth

    assert near(abs(direction(corner, toe) - direction(corner, foot)) % 180, 90, 0.3)
    assert near(distance(corner, toe) / scale, MARKS.seat, 0.02)
    assert near(distance(corner, foot) / scale, MARKS.heel, 0.02)
    assert from_line(corner, *building) < 0.05
    assert near(toe[1], foot[1], 0.05)


def test_a_hip_has_no_birds_mouth_marked():
    drawing = board(BoardMarks(0.47, 5.5, 1.06, 117, 130, 0, 0))
    assert [stroke for stroke in drawing.outlines(svg.HEAVY) if len(stroke.points) == 3] == []
    assert 'mouth' not in drawing.words


# Details -------------------------------------------------------------------------------------------------------


@RISES
def test_the_ridge_cut_is_half_the_ridge_back_measured_level(rise):
    slope, depth, shortening = rise / 12, 5.5, 0.75
    drawing = read(ridge_end(slope, depth, shortening, ('center', 'cut', '3/4'), 'ridge end'))
    (cut,) = drawing.lines(svg.HEAVY)
    (center,) = drawing.lines(svg.HAIR, dashed=True)
    scale = (cut.points[1][1] - cut.points[0][1]) / depth

    assert near(cut.direction, center.direction, 0.2)
    assert near(-cut.direction, 90 - degrees(atan(slope)), 0.2)
    assert near(from_line(cut.points[0], *center.points) / scale, shortening, 0.02)
    assert '3/4' in drawing.words


def test_a_head_cut_stands_on_its_line():
    drawing = read(ridge_end(1 / 3, 5.5, 0.0, ('wall', 'head cut', ''), 'head'))
    assert drawing.lines(svg.HAIR, dashed=True) == []
    assert len(drawing.lines(svg.HEAVY)) == 1


@RISES
def test_the_birds_mouth_is_as_deep_as_its_heel(rise):
    slope, depth, seat = rise / 12, 5.5, 3.5
    drawing = read(birds_mouth(slope, depth, seat, ('plate line', 'heel', 'seat'), 'mouth'))
    toe, corner, foot = drawing.outlines(svg.HEAVY)[0].points
    scale = (foot[1] - 26) / depth

    assert near(distance(corner, toe) / scale, seat, 0.02)
    assert near(distance(corner, foot) / scale, seat * slope, 0.02)
    assert near(abs(direction(corner, toe) - direction(corner, foot)) % 180, 90, 0.5)
    assert near(toe[1], foot[1], 0.05)


@pytest.mark.parametrize('angle', [30.0, 48.19, 45.0, 65.91, 78.69])
@pytest.mark.parametrize('double', [False, True], ids=['jack', 'hip'])
def test_a_top_cut_turns_from_square_across_by_its_angle(angle, double):
    """Drawn so, and its arc lies between the line square across and the cut, its number at it."""
    drawing = read(top_cut(angle, double, ('angle', 'top'), 'cut'))
    (cut,) = drawing.outlines(svg.HEAVY) if double else [*drawing.lines(svg.HEAVY)]
    upper, point = cut.points[:2]
    cheeks = [90 - direction(point, upper)]
    cheeks += [90 + direction(point, cut.points[2])] if double else []
    (across,) = (one for one in drawing.lines(svg.HAIR, dashed=True) if near(abs(one.direction), 90))
    arc = max(drawing.outlines(svg.HAIR), key=lambda stroke: len(stroke.points)).points

    assert all(near(cheek, angle, 0.2) for cheek in cheeks)
    assert across.points[0] == point
    assert near(direction(point, arc[-1]), 90, 0.1)
    assert near(90 - direction(point, arc[0]), angle, 0.1)
    assert distance(drawing.words['angle'], arc[-1]) < 12


@pytest.mark.parametrize('head', ['RIDGE', 'HIP', 'WALL'])
def test_every_board_has_its_upper_end_at_the_left_and_its_tail_at_the_right(head):
    """Then, with the top edge up, a plumb line leans towards the tail as it goes down."""
    drawings = [
        read(marked_board(MARKS, ('cut', 'building', 'tail', 'mouth'), 'board', head)),
        read(ridge_end(0.5, 5.5, 0.75, ('center', 'cut', '3/4'), 'ridge end', head)),
        read(birds_mouth(0.5, 5.5, 3.5, ('plate line', 'heel', 'seat'), 'mouth', head)),
        read(top_cut(48.19, False, ('angle', 'top'), 'cut', head)),
        read(top_cut(45, True, ('angle', 'top'), 'cut', head)),
    ]
    for drawing in drawings:
        board = [x for stroke in drawing.strokes if stroke.width == svg.LINE for x, _ in stroke.points]
        assert drawing.words[head][0] <= min(board)
        assert drawing.words['TAIL'][0] >= max(board)
    for drawing in drawings[:3]:
        for line in drawing.lines(svg.HAIR, dashed=True):
            assert line.points[0][1] < line.points[1][1]
            assert line.points[0][0] < line.points[1][0]
