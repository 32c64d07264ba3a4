"""Drawings of a ridge's end and of hips' ends, read back from the ink: what touches what, and what each name stands at."""

from __future__ import annotations

from math import sqrt

import pytest
from drawn import distance, from_line, near, read

from layouts.drawings import hip_ends, svg
from layouts.drawings.hip_ends import HOLLOW, ONE, POINT, side_marks
from layouts.drawings.ridge_end import Frame, between_commons, hips_on_ridge, ridge_ends

ENDS = {'ridge': 'RIDGE', 'tail': 'TAIL'}
SIZES = pytest.mark.parametrize(
    'sizes', [(1.5, 1.5, 1.5), (0.75, 3.5, 1.75), (3.5, 1.5, 1.5), (1.75, 0.75, 2.5)]
)
FRAME = Frame(12.0, 9.0)


def heavy(drawing) -> list:
    return [line for line in drawing.lines(2.2) if line.length > 0.1]


def outline_lines(outline) -> list:
    return list(zip(outline, (*outline[1:], outline[0]), strict=True))


# The ridge's end ------------------------------------------------------------------------------------------------


@SIZES
def test_hips_between_commons_stand_in_corners(sizes):
    """Each hip's point lies on a side common's outer face and on the end common's side; the ridge ends flush."""
    ridge, hip, common = sizes
    end = between_commons(ridge, hip, common, FRAME)

    assert end.past == common / 2 == max(x for x, _ in end.ridge) == max(x for x, _ in end.side_commons[0])
    for (far, one, tip, two, far_too), side in zip(end.hips, (1, -1), strict=True):
        assert near(tip[0], common / 2)
        assert near(tip[1], side * common / 2)
        assert near(one[1], tip[1])  # on the end common's side
        assert near(two[0], tip[0])  # on the side common's face
        assert near(from_line(two, one, far), hip)
        assert near(distance(tip, one), distance(tip, two))
        assert near(from_line(far_too, far, one), hip)


@SIZES
def test_hips_on_the_ridge_bear_with_the_whole_of_one_cheek(sizes):
    ridge, hip, common = sizes
    end = hips_on_ridge(ridge, hip, common, FRAME)

    assert near(end.past, ridge / 2 + hip / sqrt(2))
    for (far, last, first, far_too), side in zip(end.hips, (1, -1), strict=True):
        assert near(last[0], end.past)  # the ridge's sawn end
        assert near(last[1], side * ridge / 2)
        assert near(first[1], side * ridge / 2)
        assert near((last[0] + first[0]) / 2, ridge / 2)  # its center line comes from the theoretical end
        assert near(from_line(first, last, far), hip)
        assert near(from_line(far_too, last, far), hip)


@SIZES
def test_an_end_common_thicker_than_the_ridge_is_clipped_to_both_hips(sizes):
    ridge, hip, common = sizes
    end = hips_on_ridge(ridge, hip, common, FRAME)
    corners = sorted(point for point in end.end_common if point[0] < FRAME.wide)

    assert near(min(x for x, _ in corners), end.past)
    assert near(max(y for _, y in end.end_common), common / 2)
    for (far, last, *_), side in zip(end.hips, (1, -1), strict=True):
        touching = [point for point in corners if point[1] * side > 0]
        if common > ridge:
            assert all(from_line(point, last, far) < 1e-9 for point in touching)
        else:
            assert all(abs(point[1]) <= ridge / 2 for point in touching)


@SIZES
def test_the_black_line_is_what_the_ridge_runs_past(sizes):
    ridge, hip, common = sizes
    names = {'between': 'one', 'on_ridge': 'two', 'ridge': 'RIDGE'}
    drawing = read(ridge_ends(*sizes, names, ('short', 'long'), 'the end of a ridge'))
    short, long = heavy(drawing)

    assert near(long.length / short.length, (ridge / 2 + hip / sqrt(2)) / (common / 2), 0.02)
    for line, name, figure in ((short, 'one', 'short'), (long, 'two', 'long')):
        (x0, y0), (x1, y1) = line.points
        assert near(y0, y1)
        assert x0 < x1  # from the ridge at the left to the end common at the right
        assert abs(drawing.words[name][0] - drawing.words[figure][0]) < 0.01
        assert abs(drawing.words[figure][0] - x0) < 1  # under its own panel's theoretical end


# The ends of a hip ----------------------------------------------------------------------------------------------


def test_where_a_hips_sides_are_cut():
    """One cheek: one side up, one down. A point: both back into the wood. Hollow: both out of it."""
    half = hip_ends.THICK / 2
    for inwards in (1, -1):
        for kind, upper, lower in ((ONE, -half, half), (POINT, half, half), (HOLLOW, -half, -half)):
            up, low = side_marks(kind, (100.0, 50.0), inwards)
            assert (up[0] - 100, low[0] - 100) == (inwards * upper, inwards * lower)
            assert (up[1], low[1]) == (50 - half, 50 + half)


def test_the_four_ends_are_drawn_under_their_names():
    names = {'one': 'one', 'point': 'two', 'tail_point': 'hip tail', 'hollow': 'valley tail', **ENDS}
    drawing = read(hip_ends.hip_ends(names, '3/4 in', 'ends of hips'))
    cuts = {(round(s.points[1][0]), round(s.points[1][1])): s.points for s in drawing.outlines(svg.HEAVY)}
    (upper, lower) = sorted({y for _, y in cuts})
    left, right = sorted({x for x, _ in cuts})

    def sides(x: int, y: int) -> tuple[float, float]:
        (up, mark, low) = cuts[x, y]
        return up[0] - mark[0], low[0] - mark[0]

    half = hip_ends.THICK / 2
    assert sides(left, upper) == (-half, half)
    assert sides(right, upper) == (-half, -half)
    assert sides(left, lower) == sides(right, lower) == (half, half)
    for name, x, y in (
        ('one', left, upper),
        ('hip tail', right, upper),
        ('two', left, lower),
        ('valley tail', right, lower),
    ):
        at = drawing.words[name]
        assert abs(at[1] - y) < half
        assert abs(at[0] - x) < (right - left) / 2
    assert drawing.words['RIDGE'][0] < left < right < drawing.words['TAIL'][0]
