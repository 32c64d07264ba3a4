"""Bird's mouths of the findings against stock laid in space: rafters, hips and valleys of three sizes.

The plates' tops are at z = 0, their outer faces plumb over the eave lines; the corner is the origin.
"""

from fractions import Fraction

import pytest
from fifty_digits import mp, mpf
from msgspec.structs import replace
from oracle.planes import (
    LEVEL,
    ORIGIN,
    Plane,
    dot,
    level,
    meet,
    plane,
    plumb_plane,
    roof_corner,
    size,
    square_top,
)

from layouts.told.objects import as_data
from tablegen.roof.answer import answer
from tablegen.roof.question import ManySided, RoofQuestion, TwoPitches
from tablegen.written.pitches import pitch
from tablegen.written.stocks import stock

SEAT, HIP, VALLEY = mpf('3.5'), mpf('3.5'), mpf('2.5')
DEPTHS = {'2x8': mpf('7.25'), '2x10': mpf('9.25'), '2x12': mpf('11.25')}
"""Dressed depths, in: PS 20, as tests/authorities/ps20-lumber.toml has them."""
NEAR = mpf('0.51e-9')
PAIRS = [('5', '7.5', 90), ('7.5', '5', 90), ('7.5', '7.5', 90), ('6', '9', 110)]


def ask(rise):
    return RoofQuestion(
        pitch(rise),
        Fraction(120),
        stock=stock('2x8'),
        hip_stock=stock('2x10'),
        valley_stock=stock('2x12'),
        hip_in=Fraction(7, 2),
        valley_in=Fraction(5, 2),
    )


def two_pitches(rise_a, rise_b, angle):
    asked = replace(ask(rise_a), roof=TwoPitches(pitch(rise_b), Fraction(angle)))
    return as_data(answer(asked))['two_pitches']


def near(told, model):
    return abs(mpf(told) - model) <= NEAR


class Stood:
    """The planes that the rafters' tops make once A's commons stand on their seats."""

    def __init__(self, rise_a, rise_b, angle):
        self.slopes = mpf(rise_a) / 12, mpf(rise_b) / 12
        self.roof = roof_corner(*self.slopes, mp.radians(angle))
        inner = tuple(SEAT * part for part in self.roof.in_a)
        underside = plane(inner, self.roof.a.normal)
        top = underside.moved(DEPTHS['2x8'])
        self.height = meet(top, plumb_plane(ORIGIN, self.roof.in_a), Plane(self.roof.in_a, mpf(0)))[2]
        self.a, self.b = self.roof.a.lifted(self.height), self.roof.b.lifted(self.height)
        self.way = level(self.roof.hip())

    def board(self, thickness):
        return self.roof.hip_member(thickness)

    def level_along(self, point):
        return dot(point, self.way) / size(self.way)

    def backed(self):
        """Return the square top, before backing, on the line where the two planes meet."""
        where = meet(self.a, self.b, Plane(self.roof.in_a, mpf(0)))
        return square_top(where, self.roof.hip())

    def dropped(self):
        """Return the highest square top none of whose edges stands out of the two planes."""
        board, over_corner = self.board(HIP), plane(ORIGIN, self.way)
        tops = [
            square_top(meet(side, own, over_corner), self.roof.hip())
            for side, own in ((board.right, self.a), (board.left, self.b))
        ]
        return min(tops, key=lambda top: meet(top, board.center, over_corner)[2])

    def mouth(self, top, depth, thickness, outwards):
        """Return height above plate, heel, seat, notch and stock left of a member under a square top."""
        board = self.board(thickness)
        under = top.moved(-depth)
        height = meet(top, board.center, plane(ORIGIN, self.way))[2]
        heel = -meet(
            under,
            board.center,
            plane(tuple(-outwards * part / size(self.way) for part in self.way), self.way),
        )[2]
        seat = self.level_along(meet(under, board.center, LEVEL)) + outwards
        corner = tuple(-outwards * part / size(self.way) for part in self.way)
        notch = under.height(corner)
        return {
            'height_above_plate': height,
            'heel': heel,
            'seat': seat,
            'notch_depth': notch,
            'stock_left': -top.height(corner),
        }

    def back(self):
        """Return how far outwards the sides of a valley meet the outer faces of the plates."""
        board = self.board(VALLEY)
        crossings = [
            -self.level_along(meet(side, LEVEL, Plane(inwards, mpf(0))))
            for side in (board.left, board.right)
            for inwards in (self.roof.in_a, self.roof.in_b)
        ]
        return max(crossings)


def same(told, model):
    assert all(near(told[key]['inches'], value) for key, value in model.items())


@pytest.mark.parametrize(('rise_a', 'rise_b', 'angle'), PAIRS)
def test_hips_and_valleys_have_heel_and_seat_of_their_own_stock(rise_a, rise_b, angle):
    told = two_pitches(rise_a, rise_b, angle)
    stood = Stood(rise_a, rise_b, angle)

    same(told['seat']['hip_dropped'], stood.mouth(stood.dropped(), DEPTHS['2x10'], HIP, mpf(0)))
    same(told['seat']['hip_backed'], stood.mouth(stood.backed(), DEPTHS['2x10'], HIP, mpf(0)))
    same(told['seat']['valley'], stood.mouth(stood.backed(), DEPTHS['2x12'], VALLEY, stood.back()))
    assert near(told['seat']['valley']['heel_back']['inches'], stood.back())
    assert near(told['side_b']['seat']['common']['height_above_plate']['inches'], stood.height)
    seat_b = (DEPTHS['2x8'] * mp.sqrt(1 + stood.slopes[1] ** 2) - stood.height) / stood.slopes[1]
    assert near(told['side_b']['seat']['common']['seat']['inches'], seat_b)


@pytest.mark.parametrize(('rise_a', 'rise_b', 'angle'), PAIRS)
def test_the_greater_drop_leaves_a_gap_on_the_other_side(rise_a, rise_b, angle):
    """How far the dropped hip's two edges lie under the planes, plumb: one in its plane, the other not."""
    told = two_pitches(rise_a, rise_b, angle)['drop']
    stood = Stood(rise_a, rise_b, angle)
    top, board = stood.dropped(), stood.board(HIP)
    over_corner = plane(ORIGIN, stood.way)
    gaps = {}
    for name, side, own in (('A', board.right, stood.a), ('B', board.left, stood.b)):
        edge = meet(top, side, over_corner)
        gaps[name] = -own.height(edge) / own.normal[2]
    wide = max(gaps, key=lambda name: gaps[name])

    assert min(gaps.values()) < NEAR
    assert near(told['gap_plumb']['inches'], gaps[wide])
    assert told['gap_on'] == (f'side_{wide.lower()}' if gaps[wide] > NEAR else 'neither_side')
    low = meet(stood.backed(), board.center, over_corner)[2] - meet(top, board.center, over_corner)[2]
    assert near(told['plumb']['inches'], low)


@pytest.mark.parametrize(('rise_a', 'rise_b', 'angle'), [*PAIRS, ('7.5', '5', 100)])
def test_a_slid_hip_has_both_edges_in_their_planes_and_changes_the_jacks(rise_a, rise_b, angle):
    """The hip moved aside as told and dropped as told; jacks then meet its center line elsewhere."""
    told = two_pitches(rise_a, rise_b, angle)['slide']
    stood = Stood(rise_a, rise_b, angle)
    board = stood.board(HIP)
    aside = (
        mpf(told['aside']['inches'])
        * {'towards_eave_a': -1, 'not_needed': 0, 'towards_eave_b': 1}[told['way']]
    )
    over_corner = plane(ORIGIN, stood.way)
    lows = [
        meet(stood.backed(), board.center, over_corner)[2] - meet(own, side.moved(aside), over_corner)[2]
        for side, own in ((board.right, stood.a), (board.left, stood.b))
    ]

    assert all(near(told['drop_plumb']['inches'], low) for low in lows)
    moved = board.center.moved(aside)
    for name, eave, inwards in (
        ('jacks_of_a', stood.roof.eave_a, stood.roof.in_a),
        ('jacks_of_b', stood.roof.eave_b, stood.roof.in_b),
    ):
        jack = Plane(eave, mpf(48))
        longer = dot(meet(jack, moved, LEVEL), inwards) - dot(meet(jack, board.center, LEVEL), inwards)
        word = 'as_they_were' if abs(longer) < NEAR else 'longer' if longer > 0 else 'shorter'
        assert told[name]['become'] == word
        assert abs(mpf(told[name]['by']['level']['inches']) - abs(longer)) < 4 * NEAR


def test_the_issue_of_a_valley_at_eight_in_twelve():
    """2×8, 3 1/2 seat, 1 1/2 valley: seat D·√(1 + 2/9)/(√2/3) …, worked in planes above; here 4.2186 and 1.9886."""
    found = as_data(answer(RoofQuestion(pitch('8'), Fraction(120))))

    assert found['seat']['valley']['seat']['inches'].startswith('4.2185')
    assert found['seat']['valley']['seat']['text'] == '4 3/16'
    assert found['seat']['valley']['heel']['inches'].startswith('1.9886')
    assert found['seat']['valley']['heel']['text'] == '2'
    assert found['seat']['hip_dropped']['seat']['inches'] == found['seat']['valley']['seat']['inches']


def test_a_many_sided_roof_has_no_valley():
    roof = as_data(answer(replace(ask('8'), roof=ManySided(8))))['many_sided']
    stood = Stood('8', '8', 135)

    assert set(roof['seat']) == {'common', 'hip_dropped', 'hip_backed'}
    same(roof['seat']['hip_dropped'], stood.mouth(stood.dropped(), DEPTHS['2x10'], HIP, mpf(0)))
    assert 'valley' not in str(roof['jack']) + str(roof['tail']) + str(roof['shortening'])
