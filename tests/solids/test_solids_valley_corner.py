"""A valley corner, assembled from solids that are cut by the book's printed numbers.

Plates with their inside corner at the origin, the building where x or y is above 0, tops at z = 0. Plane A rises
with y over the plate along x, plane B with x over the plate along y. Both ridges end where the valley does.
"""

from fractions import Fraction
from functools import cache
from math import cos, sqrt

import pytest
from assembly import SLACK, Assembly, Face
from boards import box, printed, printed_degrees, stick

from tablegen.angles import Angle
from tablegen.exact import exact
from tablegen.geometry import backing, cheeks, common, corner, ridge, seat, shortening, tail
from tablegen.geometry.corner import square_corner

THICK, DEPTH, SEAT, SPACING = Fraction(3, 2), Fraction(29, 4), Fraction(7, 2), Fraction(16)
RUN, OUT = Fraction(96), Fraction(6)
PITCHES = (4, 8, 12)
JACKS = (1, 2, 3, 4)
DOWN = (0.0, 0.0, -1.0)


def _valley(at, height, heel_stands_out=True):
    """A valley with a double cheek, between the two ridges, its heel and seat cut by their printed lengths."""
    length = printed(corner.hip_length(RUN, at))
    short = printed(shortening.along(shortening.hip_at_ridge(THICK, at), at.hip_slope))
    blade = printed_degrees(cheeks.hip_at_ridge(at).blade)
    out = printed(seat.valley_heel_back(THICK, at)) if heel_stands_out else 0
    heel = seat.valley_heel(DEPTH, height, THICK, at)
    board = stick(printed_degrees(corner.hip_angle(at)), float(THICK), float(DEPTH), 300)
    board = board.plumb_cut(length - short, blade).plumb_cut(length - short, -blade)
    board = board.lower_cut(-printed(tail.hip_tail(OUT, at)))
    board = board.notched(printed(heel), printed(seat.valley_seat(heel, at)), out)
    return board.placed(-printed(height) * board.up(), (0, 0, 0), (1, 1))


def _rafter(slope):
    return stick(printed_degrees(Angle(slope)), float(THICK), float(DEPTH), 300)


def _common(slope, height):
    top = printed(common.line_length(RUN, slope))
    short = printed(shortening.along(shortening.at_ridge(THICK), slope))
    board = _rafter(slope).plumb_cut(top - short).lower_cut(-printed(tail.common_tail(OUT, slope)))
    return board.birds_mouth(printed(height))


def _jack(at, number, long_on_left, shorten):
    """A valley jack: measured on the center line from the ridge's center line down to the valley's.

    Its mark x = 0 is where the plumb cut for the ridge leaves its top edge.
    """
    slope = at.slope_a
    own = printed(common.line_length(RUN - number * SPACING, slope))
    at_ridge = printed(shortening.along(shortening.at_ridge(THICK), slope))
    at_valley = printed(shortening.along(shortening.jack_at_hip(THICK, at), slope)) if shorten else 0
    blade = printed_degrees(cheeks.jack(at).blade)
    cut = _rafter(slope).plumb_cut(0.0)
    return cut.lower_cut(-(own - at_ridge - at_valley), blade if long_on_left else -blade)


@cache
def _built(rise, shorten=True, heel_stands_out=True):
    slope = exact(Fraction(rise, 12))
    at = square_corner(slope, slope)
    height = seat.height_above_plate(DEPTH, SEAT, slope)
    t, half, run, wide = float(THICK), float(THICK) / 2, float(RUN), float(SEAT)
    top = printed(ridge.top_of_ridge(RUN, height, THICK, slope))
    low = top - 12
    plumb = float(DEPTH) / cos(printed_degrees(Angle(slope)))
    valley_plumb = float(DEPTH) / cos(printed_degrees(corner.hip_angle(at)))
    board = _common(slope, height)
    members = {
        'plates': box((-60, 0, -3), (wide, wide, 0)) + box((0, -60, -3), (wide, wide, 0)),
        'ridge a': box((-60, run - half, low), (run + half, run + half, top)),
        'ridge b': box((run - half, -60, low), (run + half, run - half, top)),
        'valley': _valley(at, height, heel_stands_out),
        'common a': board.placed(-printed(height) * board.up(), (-16, 0, 0), (0, 1)),
        'common b': board.placed(-printed(height) * board.up(), (0, -16, 0), (1, 0)),
    }
    cheek = valley_plumb * t / 2 * sqrt(2)
    faces = [
        Face('ridge a', 'valley', (0.0, -1.0, 0.0), cheek, 0.5),
        Face('ridge b', 'valley', (-1.0, 0.0, 0.0), cheek, 0.5),
        Face('common a', 'ridge a', (0.0, 1.0, 0.0), plumb * t),
        Face('common b', 'ridge b', (1.0, 0.0, 0.0), plumb * t),
        Face('common a', 'plates', DOWN, wide * t),
        Face('common b', 'plates', DOWN, wide * t),
        Face('valley', 'plates', DOWN, wide * t),
    ]
    out_of_valley = 1 / sqrt(2)
    for number in JACKS:
        along = number * float(SPACING)
        # going up A's slope, along y, the side towards the corner, the longer one, is the left
        a, b = _jack(at, number, True, shorten), _jack(at, number, False, shorten)
        members[f'jack a{number}'] = a.placed((0, 0, 0), (along, run - half, top), (0, 1))
        members[f'jack b{number}'] = b.placed((0, 0, 0), (run - half, along, top), (1, 0))
        faces += [
            Face(f'jack a{number}', 'ridge a', (0.0, 1.0, 0.0), plumb * t),
            Face(f'jack b{number}', 'ridge b', (1.0, 0.0, 0.0), plumb * t),
            Face(f'jack a{number}', 'valley', (out_of_valley, -out_of_valley, 0.0), plumb * t * sqrt(2), 0.6),
            Face(f'jack b{number}', 'valley', (-out_of_valley, out_of_valley, 0.0), plumb * t * sqrt(2), 0.6),
        ]
    return Assembly(members, faces, {('ridge a', 'ridge b'): 12.0})


@pytest.mark.parametrize('rise', PITCHES)
def test_no_member_passes_into_another(rise):
    assert _built(rise).passing() == []


@pytest.mark.parametrize('rise', PITCHES)
def test_faces_that_should_touch_do(rise):
    assert _built(rise).apart() == []


@pytest.mark.parametrize('rise', PITCHES)
def test_jacks_stand_above_the_valleys_edges_by_the_drop(rise):
    """A valley is not dropped: its top is square, and the planes are higher at its edges."""
    slope = exact(Fraction(rise, 12))
    built = _built(rise)
    drop = printed(backing.drop_plumb(THICK, square_corner(slope, slope)))
    for jack in ('jack a2', 'jack b2'):
        x, y = (32, 32 + 0.75 * sqrt(2)) if jack == 'jack a2' else (32 + 0.75 * sqrt(2), 32)
        uphill = (
            (x, y + 0.2) if jack == 'jack a2' else (x + 0.2, y)
        )  # off the cheek, which may be a hair short
        on_jack = _top_at(built.members[jack], *uphill, 0.01) - 0.2 * rise / 12
        above = on_jack - _top_at(built.members['valley'], *_edge(x, y), 0.01)
        assert abs(above - drop) <= 2 * SLACK


def _edge(x, y):
    """The same place, a hair inside the valley's side."""
    aside = 0.01
    return (x + aside, y - aside) if y > x else (x - aside, y + aside)


def _top_at(solid, x, y, reach):
    """The highest point of a solid within a small square, in."""
    low, high = (x - reach, y - reach, -400.0), (x + reach, y + reach, 400.0)
    return (solid ^ box(low, high)).bounding_box()[5]


def test_a_jack_that_is_not_shortened_passes_into_the_valley():
    """The check can fail."""
    assert ('valley', 'jack a2') in _built(8, shorten=False).passing()


def test_a_valley_whose_heel_stands_at_the_corner_passes_into_the_plates():
    """The check can fail: the plates' outer faces run back past an inside corner."""
    assert ('plates', 'valley') in _built(8, heel_stands_out=False).passing()


@pytest.mark.parametrize('wrong', [Fraction(-1, 4), Fraction(1, 4)])
def test_a_heel_or_a_seat_a_quarter_off_does_not_fit(monkeypatch, wrong):
    """The check can fail: too short a seat leaves wood in the plate, too long a heel leaves the seat in the air."""
    right = seat.valley_heel
    monkeypatch.setattr(seat, 'valley_heel', lambda *given: right(*given) + wrong)
    _built.cache_clear()
    built = _built(8)
    _built.cache_clear()

    assert ('plates', 'valley') in (built.passing() if wrong < 0 else [pair[::-1] for pair in built.apart()])
