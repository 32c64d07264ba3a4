"""One rafter at the fold by its ink, held against the triangle of its pitch: plumb lines, notch, the square in both holds."""

from __future__ import annotations

from fractions import Fraction
from math import atan, cos, degrees, hypot

import pytest
from drawn import distance, from_line, inside, near
from inked import inked

from layouts.drawings import svg
from layouts.drawings.rafter_at_fold import RafterAtFold, rafter_at_fold
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.geometry.stepping import common_hold

RISES = pytest.mark.parametrize('rise', [1, 3, 6, 9, 12, 16, 17, 20, 24])
DEEP, SEAT, TAIL_OUT, OFF = 7.25, 3.5, 8.0, 0.75
WIDTH = 242.0


class Board:
    """Both halves as drawn, and what a pitch makes of the board, in inches; the triangle of the pitch is all it knows."""

    def __init__(self, rise: int, deep: float = DEEP, seat: float = SEAT):
        self.slope = rise / 12
        self.angle = atan(self.slope)
        self.height = deep / cos(self.angle) - seat * self.slope
        self.hold = common_hold(pitch_of_rise(Fraction(rise)).slope)
        self.tail = TAIL_OUT / cos(self.angle)
        told = ('LENGTH', '8 15/16', '3/4', '6 3/8', '3 1/2')
        drawn = RafterAtFold(self.slope, deep, self.tail, OFF, self.height, seat, self.hold, *told)
        self.left, self.right = map(inked, rafter_at_fold(drawn, WIDTH))
        self.edges = [heavy_level(half) for half in (self.left, self.right)]
        self.units = (foot_of(self.right) - self.edges[1]) / deep

    def lean(self, stroke) -> float:
        """Return how far off plumb a line is, in degrees: plumb leans by the slope, towards the tail as it goes down."""
        (x, y), (a, b) = sorted(stroke.points, key=lambda point: point[1])
        return degrees(atan((a - x) / (b - y))) - degrees(self.angle)


def heavy_level(half) -> float:
    """Return where the top edge runs."""
    (edge,) = [line for line in half.drawn.lines(svg.HEAVY) if near(line.direction % 180, 0)]
    return edge.points[0][1]


def foot_of(half) -> float:
    """Return where the bottom edge runs."""
    return max(line.points[0][1] for line in half.drawn.lines(svg.LINE) if near(line.direction % 180, 0) and line.length > 200)  # fmt: skip


@RISES
def test_both_halves_lie_at_one_height_and_are_of_one_scale(rise):
    board = Board(rise)

    assert near(*board.edges)
    assert near(foot_of(board.left), foot_of(board.right))
    assert board.left.drawn.width == board.right.drawn.width == WIDTH
    assert board.left.label('RIDGE').at[0] < 12 < WIDTH - 12 < board.right.label('TAIL').at[0]


@RISES
def test_every_plumb_line_is_plumb_and_where_its_figure_says(rise):
    """The ridge's cut half the ridge LEVEL from its center line; the tail's as far from the plate line as the tail is long."""
    board = Board(rise)
    cuts = [
        one for one in board.left.drawn.lines(svg.HEAVY) + board.right.drawn.lines(svg.HEAVY)
        if not near(one.direction % 180, 0)
    ]  # fmt: skip
    dashed = [(half.drawn.lines(svg.LINE, dashed=True)) for half in (board.left, board.right)]
    (ridge,), (plate,) = dashed
    ridge_cut, tail_cut = cuts

    assert all(abs(board.lean(line)) < 0.1 for line in (*cuts, ridge, plate))
    assert near(from_line(ridge.points[0], *ridge_cut.points), OFF * board.units, 0.1)
    pinched = board.left.dimension('3/4 level')
    assert near(pinched.length, OFF * board.units, 0.1)
    assert near(pinched.direction, degrees(board.angle), 1.5)
    tail = board.right.dimension('tail 8 15/16')
    assert near(tail.length, board.tail * board.units, 0.1)
    assert near(tail.ends[0][0], plate.points[0][0])
    assert near(tail.ends[1][0], tail_cut.points[0][0])
    assert near(
        board.left.pointers[0][1][0], ridge.points[0][0]
    )  # the line length's arrow: no word at the fold
    assert board.right.pointers[0][1][0] == pytest.approx(plate.points[0][0], abs=0.05)


@RISES
def test_the_notch_stands_on_the_plate_line_at_its_height(rise):
    board = Board(rise)
    (notch,) = [one for one in board.right.drawn.outlines(svg.HEAVY) if len(one.points) == 3]
    toe, corner_, foot = notch.points
    (plate,) = board.right.drawn.lines(svg.LINE, dashed=True)
    height = board.right.dimension('6 3/8')

    assert near(distance(*plate.points), board.height * board.units, 0.1)
    assert near(distance(plate.points[1], corner_), 0, 0.05)
    assert near(height.length, board.height * board.units, 0.1)
    assert near(degrees(atan((corner_[1] - toe[1]) / (toe[0] - corner_[0]))), degrees(board.angle), 0.6)
    assert near(distance(toe, corner_), SEAT * board.units, 0.1)
    assert near(toe[1], foot[1])
    assert near(from_line(board.right.pointed('heel'), corner_, foot), 0, 0.1)
    seat = [tip for _word, tip in board.right.pointers if near(from_line(tip, toe, corner_), 0, 0.1)]
    assert len(seat) == 1


@RISES
def test_the_square_lies_at_its_two_figures_body_level_and_hides_no_notch(rise):
    board = Board(rise)
    notch = next(one for one in board.right.drawn.outlines(svg.HEAVY) if len(one.points) == 3).points
    span = hypot(float(board.hold.body_in), float(board.hold.tongue_in)) * board.units
    assert (board.hold.holds == 2) == (rise > 16)
    for half, edge in ((board.left, board.edges[0]), (board.right, foot_of(board.right))):
        outline = next(
            one for one in half.drawn.strokes if one.fill == '#fff' and one.width == svg.LINE
        ).points
        heel, body_end, tongue_end = outline[0], outline[1], outline[5]
        tongue, body = [dot for dot in half.drawn.dots if near(dot[1], edge)]
        assert near(body[0] - tongue[0], span, 0.1)
        assert near(from_line(body, heel, body_end), 0, 0.05)
        assert near(from_line(tongue, heel, tongue_end), 0, 0.05)
        assert near(
            degrees(atan((heel[1] - body_end[1]) / (body_end[0] - heel[0]))), degrees(board.angle), 0.1
        )
        assert any(label.text == board.hold.body.text and label.away(body, body) < 8 for label in half.labels)
        assert any(label.text == board.hold.tongue.text and label.at[0] > tongue[0] for label in half.labels)
    assert near(from_line(notch[1], heel, body_end), 0, 0.1)  # its body runs through the corner
    middle = tuple(sum(point[side] for point in notch) / 3 for side in (0, 1))
    body_box = [outline[0], outline[1], outline[2], outline[3]]
    assert not inside(middle, body_box)


@RISES
@pytest.mark.parametrize('deep', [5.5, 7.25, 9.25])
def test_no_word_lies_on_another_or_on_a_line(rise, deep):
    board = Board(rise, deep)
    assert board.left.collisions() == board.right.collisions() == []


def test_past_the_steepest_roof_there_is_no_square_nor_a_word_on_another():
    board = Board(40)
    for half in (board.left, board.right):
        assert not [one for one in half.drawn.strokes if one.fill == '#fff' and one.width == svg.LINE]
        assert half.collisions() == []


def test_marks_are_numbered_once():
    board = Board(6)
    discs = [label.text for half in (board.left, board.right) for label in half.labels if label.on_black]
    assert sorted(discs, key=int) == ['1', '2', '3', '4', '5', '6', '7', '8']
