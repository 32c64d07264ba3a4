"""Drawings of the square in the hand by their ink, and the pages that they stand on."""

from __future__ import annotations

from fractions import Fraction

import pytest
from complete import read_complete
from drawn import Point, direction, distance, from_line, near
from inked import crossing, drawings_on, inked, to_stretch

from layouts.drawings import svg
from layouts.drawings.framing_square import square_on_board
from layouts.drawings.gauges import gauges_on_board
from layouts.drawings.plan import jack_points
from layouts.drawings.turn_over import turned_over
from layouts.drawings.wedge import measured_wedge
from layouts.pages.book import plan
from layouts.words.drawings import GAUGES_DRAWING, TURN_OVER_DRAWING
from tablegen.geometry import common
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.geometry.stepping import common_hold
from tablegen.numbers.figure import degree_figure

RISES = pytest.mark.parametrize('rise', [1, 3, 6, 8, 12, 16, 17, 20, 24])
UNIT = 0.06
"""Units: what two points may differ by where both were written to hundredths."""


def one_point(a: Point, b: Point, within: float = UNIT) -> bool:
    return distance(a, b) < within


@RISES
def test_each_arm_bears_its_own_figure_name_and_line(rise):
    """The tongue towards the ridge with the rise and 'plumb', the body towards the tail with the run and 'level'."""
    hold = common_hold(pitch_of_rise(Fraction(rise)).slope)
    drawing = inked(square_on_board(hold, 'square'))
    outline = drawing.drawn.outlines(svg.LINE)[0].points
    tongue_end, body_end = outline[4:6], outline[1:3]
    assert distance(*tongue_end) < distance(*body_end)  # the narrow arm is the tongue
    tongue_dot, body_dot = sorted(drawing.drawn.dots)
    left = [label for label in drawing.labels if label.anchor == 'end']
    right = [label for label in drawing.labels if label.anchor == 'start' and label.text != 'body']

    assert to_stretch(tongue_dot, outline[0], outline[5]) < 0.1
    assert to_stretch(body_dot, outline[0], outline[1]) < 0.1
    assert [label.text for label in left] == [hold.tongue.text, 'plumb']
    assert [label.text for label in right] == [hold.body.text, 'level']
    assert all(label.away(tongue_dot, tongue_dot) < 20 for label in left)
    assert all(label.away(body_dot, body_dot) < 20 for label in right)
    assert drawing.label('tongue').away(*tongue_end) < 6
    assert drawing.label('body').away(*body_end) < 6
    assert drawing.label('RIDGE').at[0] < tongue_dot[0] < body_dot[0] < drawing.label('TAIL').at[0]
    assert drawing.collisions() == []


@RISES
def test_marks_are_numbered_from_the_ridge_and_gauges_sit_at_the_figures(rise):
    hold = common_hold(pitch_of_rise(Fraction(rise)).slope)
    drawing = inked(gauges_on_board(hold, GAUGES_DRAWING))
    (edge,) = [line for line in drawing.drawn.lines(svg.HEAVY) if near(line.direction, 0)]
    ticks = sorted(
        line.points[0][0] for line in drawing.drawn.lines(svg.HEAVY) if near(abs(line.direction), 90)
    )
    numbers = [label for label in drawing.labels if label.on_black]
    outline = next(stroke for stroke in drawing.drawn.outlines(svg.LINE) if stroke.fill == '#fff').points

    assert [label.text for label in numbers] == ['0', '1', '2']
    assert [label.at[0] for label in numbers] == pytest.approx(ticks, abs=UNIT)
    assert near(ticks[1] - ticks[0], ticks[2] - ticks[1])
    assert near(from_line((ticks[1], edge.points[0][1]), outline[0], outline[5]), 0, 0.1)  # the tongue's edge
    assert near(from_line((ticks[2], edge.points[0][1]), outline[0], outline[1]), 0, 0.1)  # the body's edge
    assert near(drawing.pointed('ridge center line')[0], ticks[0])
    assert abs(drawing.pointed('gauge')[0] - ticks[2]) < 6
    places = {label.text: label for label in drawing.labels}
    for arm, line, tick in (('tongue', 'plumb', ticks[1]), ('body', 'level', ticks[2])):
        arms_figure = [
            label.text
            for label in drawing.labels
            if not label.on_black and label.weight == 700 and abs(label.at[0] - places[arm].at[0]) < UNIT
        ]
        assert arms_figure == [getattr(hold, arm).text]
        assert near(places[line].at[0], places[arm].at[0])
        assert places[arm].away((tick, edge.points[0][1]), (tick, edge.points[0][1])) < 28
        assert min(ticks, key=lambda x: abs(x - places[arm].at[0])) == tick
    assert drawing.collisions() == []


def test_the_gap_of_a_square_turned_over_lies_between_its_two_lines():
    drawing = inked(turned_over(TURN_OVER_DRAWING))
    gap, over = drawing.dimension('gap'), drawing.dimension('16 in')
    left, right = sorted(line.points[1] for line in drawing.drawn.lines(svg.HEAVY))
    (foot,) = {line.points[0] for line in drawing.drawn.lines(svg.HEAVY)}

    assert [x for x, _ in gap.ends] == pytest.approx([left[0], right[0]], abs=UNIT)
    assert [y for _, y in over.ends] == pytest.approx([right[1], foot[1]], abs=UNIT)
    # The first square has its long arm at the left and an angle over 90, so its line leans to the right.
    assert drawing.label('first line').at[0] > right[0]
    assert drawing.label('line turned over').at[0] < left[0]
    assert drawing.collisions() == []


@RISES
def test_the_wedge_names_each_side_at_that_side(rise):
    pitch = pitch_of_rise(Fraction(rise))
    angle = degree_figure(common.slope_angle(pitch.slope))
    drawing = inked(measured_wedge(pitch, ('RUN', 'RISE', 'LENGTH'), angle, 'wedge'))
    foot, corner, top, _ = drawing.drawn.outlines(svg.HEAVY)[0].points
    sides = {'RUN': (foot, corner), 'RISE': (corner, top), 'LENGTH': (top, foot)}

    for name, side in sides.items():
        label = drawing.label(name)
        assert label.away(*side) <= min(label.away(*other) for other in sides.values()) + 0.5, name
    assert drawing.label(angle.text).away(foot, foot) < 26
    assert corner[0] < foot[0]


def test_the_points_of_a_jack_are_named():
    """The hip runs up to the left, away from the corner at the lower right: the long point is on the side away."""
    words = {'long': 'long', 'short': 'short', 'off': 'off', 'hip': 'hip line', 'corner': 'corner'}
    drawing = inked(jack_points(1.5, 1.5, words, 'jack'))
    dots = drawing.drawn.dots
    jack = drawing.drawn.outlines(svg.HEAVY)[0].points
    ends = sorted(jack[1:3])

    ((tail, tip),) = [(one.start, one.end) for one in drawing.arrows if ('', one.end) in drawing.pointers]
    assert 270 < direction(tail, tip) % 360 < 360
    assert drawing.label('corner').away(tip, tip) < 8
    assert one_point(drawing.pointed('long'), ends[0], 4)
    assert one_point(drawing.pointed('short'), ends[1], 4)
    assert all(any(one_point(end, one) for one in dots) for end in ends)
    assert ends[0][1] < ends[1][1]  # the long point is further up


@pytest.fixture(scope='module', params=[4, 6, 20], ids=str)
def pages(request):
    found = {}
    for page in plan(read_complete(f'pitches = [{request.param}]')).pages():
        found.setdefault(page.template, page)
    return request.param, found


def test_words_on_every_drawing_are_clear_of_one_another_and_of_every_line(pages):
    rise, found = pages
    drawings = [(template, one) for template, page in found.items() for one in drawings_on(page)]

    assert len(drawings) > 25
    assert [(template, hit) for template, one in drawings for hit in one.collisions()] == [], rise


def test_the_square_of_a_pitchs_page_is_held_at_that_pitch(pages):
    rise, found = pages
    tongue, body = (str(rise), '12') if rise <= 16 else ('10', '6')
    wedge, square = drawings_on(found['values'])

    assert [label.text for label in square.labels if label.weight == 700] == [tongue, body]
    assert {'12', str(rise)} <= {label.text for label in wedge.labels}


def test_a_slanting_dimension_is_read_as_it_stands():
    """The reader itself: ends, word and direction of a dimension, a pinched one and a pointer."""
    shapes = [
        svg.dimension((10, 80), (70, 50), 12, 'slant'),
        svg.arrow((10, 20), (30, 20)),
        svg.arrow((60, 20), (40, 20)),
        svg.text('pinched', (62, 23)),
        svg.text('told', (5, 95)),
        svg.arrow((22, 90), (50, 88)),
    ]
    drawing = inked(svg.drawing(100, 100, 'reader', shapes))

    assert near(drawing.dimension('slant').length, distance((10, 80), (70, 50)), 0.05)
    assert drawing.dimension('pinched').ends == ((30, 20), (40, 20))
    assert drawing.pointed('told') == (50, 88)
    assert crossing((0, 0), (2, 2), (0, 2), (2, 0))
