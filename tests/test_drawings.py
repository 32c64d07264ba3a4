"""Drawings: what they show is the geometry of the figures beside them, read back from the ink."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from math import atan, cos, degrees, hypot, radians, sin, tan

import pytest
from drawn import INK, direction, distance, from_line, near, read
from hypothesis import given
from hypothesis import strategies as st
from inked import inked

from layouts.drawings import svg
from layouts.drawings.corner import CornerLabels, labelled_corner
from layouts.drawings.cover_rafter import EDGE, TICK, cover_rafter
from layouts.drawings.framing_square import BODY_WIDTH, TONGUE_WIDTH, square_on_board
from layouts.drawings.rafter import RafterLabels, labelled_rafter
from layouts.drawings.reading import found_figure
from layouts.drawings.wedge import measured_wedge
from layouts.words.drawings import CORNER_DRAWING, COVER_DRAWING, RAFTER_DRAWING
from tablegen.geometry import common
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.geometry.stepping import common_hold, hip_hold
from tablegen.numbers.angles import Angle
from tablegen.numbers.figure import degree_figure
from tablegen.written.pitches import pitch

RISES = pytest.mark.parametrize('rise', [1, 4, 6, 8, 12, 18, 24])


# The triangle of a pitch -------------------------------------------------------------------------------------


def wedge(name: str):
    found = pitch(name, steep=True)
    slope_angle: Angle = common.slope_angle(found.slope)
    return found, read(measured_wedge(found, ('12', 'rise', 'length'), degree_figure(slope_angle), name))


@pytest.mark.parametrize('name', ['0.5', '1', '6', '7 1/2', '12', '24', '60', '26.565 deg'])
def test_the_wedge_has_the_slope_of_its_pitch(name):
    found, drawing = wedge(name)
    foot, corner, top, _ = drawing.outlines(svg.HEAVY)[0].points

    assert near(foot[1], corner[1])
    assert near(corner[0], top[0])
    assert near(
        corner[1] - top[1], float(found.slope) * (foot[0] - corner[0]), INK * (1 + float(found.slope))
    )
    assert 0 < top[1] < corner[1] < drawing.height
    assert 0 < corner[0] < foot[0] < drawing.width  # the upper end at the left


@pytest.mark.parametrize('name', ['1', '6', '12', '24'])
def test_the_wedges_arc_spans_its_angle(name):
    found, drawing = wedge(name)
    foot, corner, _, _ = drawing.outlines(svg.HEAVY)[0].points
    arc = max(drawing.outlines(svg.HAIR), key=lambda stroke: len(stroke.points)).points

    assert near(direction(foot, arc[0]), 180, 0.1)
    assert near(180 - direction(foot, arc[-1]), degrees(atan(float(found.slope))), 0.1)
    assert distance(foot, arc[0]) < distance(foot, corner)


# The square on the board ---------------------------------------------------------------------------------------


@RISES
@pytest.mark.parametrize(
    'held',
    [lambda pitch: common_hold(pitch.slope), lambda pitch: hip_hold(pitch.corner)],
    ids=['common', 'hip'],
)
def test_the_square_is_held_by_its_two_numbers(held, rise):
    """Its two points lie on the top edge, each as far from the heel as its number says, its arms square."""
    hold = held(pitch_of_rise(Fraction(rise)))
    drawing = read(square_on_board(hold, 'square'))
    square = drawing.outlines(svg.LINE)[0].points
    heel, body_end, tongue_end = square[0], square[1], square[-2]
    scale = distance(square[1], square[2]) / BODY_WIDTH
    (edge,) = drawing.lines(svg.HEAVY)
    tongue, body = sorted(drawing.dots)

    assert near(body[1], edge.points[0][1])
    assert near(tongue[1], edge.points[0][1])
    assert near(edge.direction, 0)
    assert near(distance(body, heel) / scale, float(hold.body_in), 0.1)
    assert near(distance(tongue, heel) / scale, float(hold.tongue_in), 0.1)
    assert near(distance(body, tongue) / scale, hypot(float(hold.body_in), float(hold.tongue_in)), 0.15)
    assert near(abs(direction(heel, body_end) - direction(heel, tongue_end)), 90, 0.3)
    assert from_line(body, heel, body_end) < 0.05
    assert from_line(tongue, heel, tongue_end) < 0.05


@RISES
def test_the_tongue_is_plumb_and_the_body_level_on_a_board_with_its_ridge_at_the_left(rise):
    """A board that falls to the right, laid flat, turns plumb and level back by the slope, against the clock."""
    drawing = read(square_on_board(common_hold(pitch_of_rise(Fraction(rise)).slope), 'square'))
    heel = drawing.outlines(svg.LINE)[0].points[0]
    tongue, body = sorted(drawing.dots)
    slope = degrees(atan(rise / 12))

    assert drawing.words['RIDGE'][0] < tongue[0] < body[0] < drawing.words['TAIL'][0]
    assert heel[1] > drawing.lines(svg.HEAVY)[0].points[0][1]
    assert near(direction(heel, body), slope, 0.3)
    assert near(direction(heel, tongue), 90 + slope, 0.3)


@RISES
def test_the_squares_inches_are_evenly_marked(rise):
    drawing = read(square_on_board(common_hold(pitch_of_rise(Fraction(rise)).slope), 'square'))
    square = drawing.outlines(svg.LINE)[0].points
    scale = distance(square[1], square[2]) / BODY_WIDTH
    inches = [tick.points[0] for tick in drawing.lines(svg.HAIR)]
    gaps = [distance(a, b) / scale for a, b in pairwise(inches)]

    assert sum(near(gap, 1, 0.06) for gap in gaps) >= len(gaps) - 1
    assert near(distance(square[-3], square[-2]) / scale, TONGUE_WIDTH, 0.05)
    assert all(0 <= x <= drawing.width and 0 <= y <= drawing.height for x, y in square)


# The cover, the hatch, and the rest --------------------------------------------------------------------------------


@RISES
def test_the_cover_shows_a_rafter_in_true_proportion(rise):
    """A 2×10 on a seat of 3 1/2 in; the run in feet between two plumb lines, the line length between the same."""
    drawing, slope = inked(cover_rafter(rise / 12, 241, 194, COVER_DRAWING)), rise / 12
    tail_top, ridge_top, ridge_foot, toe, corner = drawing.drawn.outlines(EDGE)[0].points[:5]
    ridge_line, plate_line = sorted(line.points[0][0] for line in drawing.drawn.lines(svg.HAIR, dashed=True))
    unit = distance(toe, corner) / 3.5
    length, run = (drawing.dimension(COVER_DRAWING[word]) for word in ('line_length', 'run'))
    feet = round((plate_line - ridge_line) / unit / 12)
    ticks = sorted(tick.points[0][0] for tick in drawing.drawn.lines(svg.LINE) if near(tick.length, TICK))

    assert near(180 - direction(tail_top, ridge_top), degrees(atan(slope)), 0.1)
    assert near(distance(ridge_top, ridge_foot) * cos(atan(slope)) / unit, 9.25, 0.05)
    assert near((ridge_top[0] - ridge_line) / unit, 0.75, 0.02)  # half of a ridge of 1 1/2 in
    assert near(toe[1], corner[1])
    assert near(corner[0], plate_line)
    assert near((plate_line - ridge_line) / unit, 12 * feet, 0.1)
    for one in (length, run):
        assert [end[0] for end in one.ends] == pytest.approx([ridge_line, plate_line], abs=0.05)
    assert near(run.direction, 0)
    assert near(-length.direction, degrees(atan(slope)), 0.1)
    assert [(x - ridge_line) / unit for x in ticks] == pytest.approx(
        [12 * n for n in range(1, feet)], abs=0.1
    )
    bands = [
        one.points for one in drawing.drawn.outlines(svg.HAIR) if len(one.points) == 5 and one.fill != 'none'
    ]
    assert len(bands) == feet
    for place, band in enumerate(bands):  # from the plate up, along the top edge
        assert [x for x, _ in band[:2]] == pytest.approx(
            [plate_line - 12 * unit * (place + 1), plate_line - 12 * unit * place], abs=0.3
        )
        assert max(from_line(point, tail_top, ridge_top) for point in band[:2]) < 0.05
    assert drawing.collisions() == []


def polygons():
    """Convex outlines: points of a circle in order, stretched."""
    turns = st.lists(st.integers(0, 71), min_size=3, max_size=8, unique=True)
    return st.tuples(turns, st.floats(3, 60), st.floats(3, 60)).map(
        lambda drawn: [
            (100 + drawn[1] * cos(radians(5 * turn)), 100 + drawn[2] * sin(radians(5 * turn)))
            for turn in sorted(drawn[0])
        ]
    )


@given(polygons(), st.floats(1, 5))
def test_hatch_lines_keep_inside(points, spacing):
    """On the inner side of every edge, at one angle, evenly apart."""
    lines = read(svg.drawing(300, 300, 'hatch', [svg.hatch(points, spacing)])).lines(svg.HAIR)
    edges = list(zip(points, points[1:] + points[:1], strict=True))
    for line in lines:
        for x, y in line.points:
            assert all(
                (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= -INK * distance((ax, ay), (bx, by)) * 2
                for (ax, ay), (bx, by) in edges
            )
    levels = [sum(line.points[0]) for line in lines]
    assert all(near(sum(line.points[1]), level, 0.05) for line, level in zip(lines, levels, strict=True))
    assert all(near(b - a, spacing, 0.05) for a, b in pairwise(levels))


def test_hatching_reaches_all_of_a_shape():
    square = [(0.0, 0.0), (30.0, 0.0), (30.0, 30.0), (0.0, 30.0)]
    assert len(read(svg.drawing(30, 30, 'hatch', [svg.hatch(square, 3)])).lines(svg.HAIR)) == 20


@pytest.mark.parametrize('slope', [0.375, 0.5, 0.9])
def test_the_labelled_rafter_is_drawn_at_its_slope(slope):
    drawing = read(labelled_rafter(slope, RafterLabels(**RAFTER_DRAWING)))
    rafter = drawing.outlines(svg.HEAVY)[0].points
    tail_top, ridge_top, ridge_foot = rafter[:3]

    assert near(180 - direction(tail_top, ridge_top), degrees(atan(slope)), 0.1)
    assert near(ridge_top[0], ridge_foot[0])
    assert near(rafter[3][1], rafter[4][1])
    assert near(rafter[4][0], rafter[5][0])
    assert set(RAFTER_DRAWING.values()) - {RAFTER_DRAWING['title']} == set(drawing.words)


def test_hips_and_valleys_run_at_45_degrees_in_plan():
    """A regular corner: square in plan, one pitch on both sides."""
    drawing = read(labelled_corner(CornerLabels(**CORNER_DRAWING)))
    members = [stroke.points for stroke in drawing.outlines(svg.HAIR) if len(stroke.points) == 5]
    thick = [points for points in members if near(distance(points[0], points[3]), 0.75 * 4.9, 0.05)]
    turns = sorted(round(direction(points[0], points[1])) % 180 for points in thick)

    assert turns == [0, 45, 45, 90, 135, 135]


def test_the_figure_found_is_framed():
    cells = [['40', '41', '42'], ['53', '54', '55'], ['67', '68', '69']]
    drawing = read(found_figure(['6 in', '7 in', '8 in'], ['3', '4', '5'], cells, (1, 1), 'ft', 'found'))
    frame = next(stroke.points for stroke in drawing.outlines(svg.HEAVY))
    (left, top), (right, foot) = frame[0], frame[2]
    inside = [word for word, (x, y) in drawing.words.items() if left < x < right and top < y < foot]

    assert inside == ['54']


def test_words_on_a_drawing_are_escaped():
    drawing = read(svg.drawing(10, 10, 'a "b" <c>', [svg.text('<&>', (1, 1))]))
    assert drawing.words == {'<&>': (1, 1)}


def test_a_dimension_runs_beside_what_it_measures():
    """Parallel to it, as long, and as far off as asked, on the left of its direction."""
    drawing = read(svg.drawing(100, 100, 'dimension', [svg.dimension((10, 50), (70, 50), 12, '60')]))
    (line,) = [line for line in drawing.lines(svg.HAIR) if near(line.direction, 0)]

    assert line.points == ((10, 38), (70, 38))
    assert drawing.words['60'][1] < 38


@pytest.mark.parametrize('turn', [0, 30, 90, 135])
def test_an_arrow_ends_where_it_points(turn):
    tip = (50 + 30 * cos(radians(turn)), 50 - 30 * sin(radians(turn)))
    drawing = read(svg.drawing(100, 100, 'arrow', [svg.arrow((50, 50), tip)]))
    head = next(stroke.points for stroke in drawing.strokes if stroke.fill == '#000')

    assert distance(head[0], tip) < 2 * INK
    assert near(direction(((head[1][0] + head[2][0]) / 2, (head[1][1] + head[2][1]) / 2), head[0]), turn, 0.5)
    assert tan(radians(10)) < distance(head[1], head[2]) / distance(head[0], head[1])
