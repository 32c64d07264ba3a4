"""The marked board: its plumb lines, its bird's mouth, its cuts across the top edge, read back from the ink."""

from __future__ import annotations

from itertools import pairwise
from math import atan, cos, hypot

import pytest
from drawn import direction, distance, from_line, near, read

from layouts.drawings import svg
from layouts.drawings.marked_board import BoardMarks, End, marked_board

RISES = pytest.mark.parametrize('rise', [1, 4, 6, 8, 12, 18, 24])
COMMON = BoardMarks(
    0.5, 7.25, 0.0, End(0.84, 0.84, 0.84), End(83.85, 83.85, 83.85), 74.91, 74.91, 1.75, 3.5,
    (0.0, 0.84, 74.91, 83.85), ((74.91, 'LENGTH'), (83.85, 'WHOLE')),
)  # fmt: skip
HIP = BoardMarks(
    0.3536, 7.25, 1.5, End(0.33, 1.125, 1.92), End(111.7, 112.5, 111.7), 100.5, 100.5, 1.6, 4.52,
    (0.0, 0.33, 1.125, 1.92, 100.5, 111.7, 112.5), ((100.5, 'LENGTH'), (112.5, 'WHOLE')),
)  # fmt: skip
VALLEY = BoardMarks(
    0.3536, 7.25, 1.5, End(1.92, 1.125, 1.92), End(113.3, 112.5, 113.3), 100.5, 101.3, 1.6, 4.52,
    (0.0, 1.125, 1.92, 100.5, 101.3, 112.5, 113.3), ((100.5, 'LENGTH'), (112.5, 'WHOLE')),
)  # fmt: skip
SHED = BoardMarks(
    1 / 3, 7.25, 0.0, End(1.58, 1.58, 1.58), End(62.85, 62.85, 62.85), 56.52, 56.52, 1.17, 3.5,
    (0.0, 1.58, 56.52, 62.85), ((56.52, 'LENGTH'), (62.85, 'WHOLE')),
)  # fmt: skip
"""Its tail is so short that the pieces of bird's mouth and tail nearly meet."""
BOARDS = pytest.mark.parametrize(
    'marks', [COMMON, HIP, VALLEY, SHED], ids=['common', 'hip', 'valley', 'shed']
)


def steep(rise: float, marks: BoardMarks = COMMON) -> BoardMarks:
    """Return a board of another slope, its heel with it."""
    slope = rise / 12
    return BoardMarks(slope, *(getattr(marks, name) for name in ('depth', 'thickness', 'head', 'tail', 'plate', 'heel_at')), 3.5 * slope, 3.5, marks.marks, marks.distances)  # fmt: skip


def board(marks: BoardMarks):
    return read(marked_board(marks, ('HEEL', 'SEAT'), 'board'))


def units(drawing, marks: BoardMarks) -> float:
    """Return the units of an inch, by the bird's mouth: its seat's length is known."""
    toe, corner, _ = mouth(drawing)
    return distance(toe, corner) / marks.seat


def mouth(drawing):
    (found,) = [one.points for one in drawing.outlines(svg.HEAVY) if len(one.points) == 3 and not flat(one)]
    return found


def flat(stroke) -> bool:
    """Return whether an outline is a cut across the top edge: its far and near ends are as far apart as it is thick."""
    ys = [y for _, y in stroke.points]
    return ys == sorted(ys)


def cuts(drawing):
    """Return the heavy plumb lines of the side, the upper end's first."""
    return sorted((one.points for one in drawing.lines(svg.HEAVY)), key=lambda line: line[0][0])


@RISES
def test_plumb_lines_lean_towards_the_tail_as_the_slope_says(rise):
    """A board lies flat, its top edge up and its ridge end left: a plumb line leans right on its way down."""
    marks = steep(rise)
    drawing = board(marks)
    lines = [*cuts(drawing), *(one.points for one in drawing.lines(svg.HAIR, dashed=True) if not near(one.direction % 90, 0, 0.5))]  # fmt: skip

    assert len(lines) == 4
    for (x1, y1), (x2, y2) in lines:
        assert near((x2 - x1) / (y2 - y1), marks.slope, 0.01 * (1 + marks.slope))


@BOARDS
def test_the_birds_mouth_is_a_square_notch_at_its_heel(marks):
    """Heel plumb, seat level and towards the ridge, at right angles, to one scale; toe and foot on the lower edge."""
    drawing = board(marks)
    toe, corner, foot = mouth(drawing)

    assert near(abs(direction(corner, toe) - direction(corner, foot)) % 180, 90, 0.3)
    assert near(distance(corner, foot) / units(drawing, marks), marks.heel, 0.03)
    assert near(toe[1], foot[1], 0.2)
    assert toe[0] < corner[0] < foot[0]


@BOARDS
def test_cuts_stand_at_their_distances_from_one_another(marks):
    """Within a piece, to scale: upper end and center line; heel and plate line; the tail's cuts."""
    drawing, inch = board(marks), None
    inch = units(drawing, marks)
    head, _ = cuts(drawing)
    center = min(
        (one.points for one in drawing.lines(svg.HAIR, dashed=True) if not near(one.direction % 90, 0, 0.5)),
        key=lambda line: line[0][0],
    )

    assert near((head[0][0] - center[0][0]) / inch, marks.head.near, 0.02)
    _, corner, foot = mouth(drawing)
    plate, *heel = [
        one.points
        for one in drawing.lines(svg.HAIR, dashed=True)
        if not near(one.direction % 90, 0, 0.5) and one.points[0][0] > head[0][0] + 5
    ]
    apart = marks.heel_at - marks.plate
    assert len(heel) == (apart > 0)
    for point in (corner, foot):
        assert near(from_line(point, *plate) / inch / cos(atan(marks.slope)), apart, 0.05)
        assert all(from_line(point, *line) < 0.1 for line in heel)


@pytest.mark.parametrize('marks', [HIP, VALLEY], ids=['hip', 'valley'])
def test_cheeks_cross_the_top_edge_from_far_side_over_the_center_to_near_side(marks):
    """And the saw's plumb line on the side begins where the cut leaves the near edge."""
    drawing = board(marks)
    inch = units(drawing, marks)
    across = sorted(
        (one.points for one in drawing.outlines(svg.HEAVY) if flat(one)), key=lambda line: line[0][0]
    )
    sides = cuts(drawing)

    assert len(across) == 2
    for (far, center, near_side), end, side in zip(across, (marks.head, marks.tail), sides, strict=True):
        assert near((far[0] - center[0]) / inch, end.far - end.center, 0.03)
        assert near((near_side[0] - center[0]) / inch, end.near - end.center, 0.03)
        assert near((near_side[1] - far[1]) / inch, marks.thickness, 0.03)
        assert near(center[1], (far[1] + near_side[1]) / 2, 0.02)
        assert hypot(near_side[0] - side[0][0], near_side[1] - side[0][1]) < 0.05


@BOARDS
def test_every_mark_has_its_number_over_it(marks):
    """A line leads from each number, in their order, down to the mark; none stands on another."""
    drawing = board(marks)
    inch = units(drawing, marks)
    leaders = sorted(
        (one.points for one in drawing.outlines(svg.HAIR) if len(one.points) == 3 and one.fill == 'none'),
        key=lambda line: line[2][0],
    )
    numbers = [drawing.words[str(number)] for number in range(1, len(marks.marks) + 1)]

    assert len(leaders) == len(marks.marks)
    for number, line in zip(numbers, leaders, strict=True):
        assert near(number[0], line[0][0], 0.02)
    assert all(b[0] - a[0] >= 7 for a, b in pairwise(numbers))
    feet = [line[2][0] for line in leaders]
    head = [at for at in marks.marks if at < 50]
    for at, x in zip(head, feet, strict=False):
        assert near((x - feet[0]) / inch, at - marks.marks[0], 0.03)


@BOARDS
def test_every_line_stays_on_its_piece_of_the_board(marks):
    """Between two breaks, or the end: what is left out lies between pieces."""
    drawing = board(marks)
    breaks = sorted({one.points[0][0] for one in drawing.lines(svg.HAIR, dashed=True) if near(abs(one.direction), 90, 0.5)})  # fmt: skip
    ends = [0.0, *breaks, drawing.width]
    pieces = list(zip(ends[::2], ends[1::2], strict=True))

    assert len(pieces) == 3
    for line in (*cuts(drawing), mouth(drawing)):
        xs = [x for x, _ in line]
        assert [first <= min(xs) and max(xs) <= last for first, last in pieces].count(True) == 1
    heads, tails = cuts(drawing)
    assert heads[1][0] < pieces[0][1]
    assert pieces[1][0] < mouth(drawing)[0][0] < pieces[1][1]
    assert pieces[2][0] < tails[0][0]


def test_without_a_birds_mouth_none_is_drawn():
    bare = BoardMarks(0.47, 5.5, 1.5, HIP.head, HIP.tail, 100.5, 100.5, 0.0, 0.0, HIP.marks, HIP.distances)
    drawing = board(bare)

    assert [one for one in drawing.outlines(svg.HEAVY) if not flat(one)] == []
    assert 'SEAT' not in drawing.words


@pytest.mark.parametrize('head', ['RIDGE', 'HIP', 'WALL'])
@BOARDS
def test_every_board_has_its_upper_end_at_the_left_and_its_tail_at_the_right(marks, head):
    drawing = read(marked_board(marks, ('HEEL', 'SEAT'), 'board', (head, 'TAIL')))
    wood = [x for stroke in drawing.strokes if stroke.width == svg.LINE for x, _ in stroke.points]

    assert drawing.words[head][0] <= min(wood)
    assert drawing.words['TAIL'][0] >= max(wood)
