"""Sawn lengths, points, tails and jacks of the findings against planes in space: every member of its own thickness.

A's eave runs along x; the plates' corner is the origin. A line along a member's top edge is measured from the plumb
line over that corner, or over the plate line, by its level part over the cosine of the member's own slope.
"""

from fractions import Fraction
from functools import cached_property

import pytest
from fifty_digits import mp, mpf
from msgspec import Struct
from msgspec.structs import replace
from oracle.planes import LEVEL, Plane, dot, level, meet, member, roof_corner, scaled, size

from layouts.told.objects import as_data
from tablegen.roof.answer import answer
from tablegen.roof.question import RoofQuestion, TwoPitches
from tablegen.written.pitches import pitch
from tablegen.written.stocks import stock

RUN, OUT = 120, 12
RIDGE, HIP, VALLEY, RAFTER = Fraction(3, 4), Fraction(7, 2), Fraction(5, 2), Fraction(7, 4)
SPACING = 16
NEAR = mpf('0.51e-9')


def ask(rise):
    return RoofQuestion(
        pitch(rise),
        Fraction(RUN),
        stock=stock('2x8'),
        hip_stock=stock('2x10'),
        valley_stock=stock('2x12'),
        ridge_in=RIDGE,
        hip_in=HIP,
        valley_in=VALLEY,
        rafter_in=RAFTER,
        spacings=(Fraction(SPACING),),
    )


def real(fraction):
    return mpf(fraction.numerator) / fraction.denominator


class Case(Struct, frozen=True, dict=True):
    """A corner: rises of A and B, and the angle of its eaves."""

    rise_a: str
    rise_b: str
    angle: int

    @cached_property
    def told(self):
        asked = replace(ask(self.rise_a), roof=TwoPitches(pitch(self.rise_b), Fraction(self.angle)))
        return as_data(answer(asked))['two_pitches']

    @cached_property
    def roof(self):
        return roof_corner(mpf(self.rise_a) / 12, mpf(self.rise_b) / 12, mp.radians(self.angle))

    def hip(self, thickness):
        return self.roof.hip_member(real(thickness))

    def inwards(self, side):
        return self.roof.in_a if side == 'a' else self.roof.in_b

    def run(self, side):
        return mpf(RUN) if side == 'a' else mpf(RUN) * mpf(self.rise_a) / mpf(self.rise_b)

    def eave(self, side):
        return self.roof.eave_a if side == 'a' else self.roof.eave_b

    def end(self):
        """Return the corner of the two ridge center lines, level."""
        return level(meet(self.roof.a, self.roof.b, Plane(self.roof.in_a, mpf(RUN))))

    def on_hip(self, thickness, where, cut):
        """Return how far along a hip's top edge its center line, or the side towards A or B, meets a plane."""
        board = self.hip(thickness)
        line = {'center': board.center, 'a': board.right, 'b': board.left}[where]
        way = level(self.roof.hip())
        return dot(meet(line, board.top, cut), way) / size(way) / size(way) * size(self.roof.hip())

    def common_face(self, side):
        """Return the face, towards the corner, of a common of a side that stands at the end of the hip."""
        along = dot(self.end(), self.eave(side))
        return Plane(self.eave(side), along - real(RAFTER) / 2)

    def ridge_face(self, side):
        return Plane(self.inwards(side), self.run(side) - real(RIDGE) / 2)

    def jack(self, side, number, thickness, below):
        """Return how far up a jack's top edge, from the plate line, its points lie: center, long, short.

        Given:
            below  whether it is the hip's side that faces the side's eave, or the other one, a valley's
        """
        eave, inwards = self.eave(side), self.inwards(side)
        top = self.roof.a if side == 'a' else self.roof.b
        board = member(scaled(eave, mpf(number * SPACING)), inwards, real(RAFTER), top)
        hip = self.hip(thickness)
        face = hip.right if (side == 'a') == below else hip.left
        slope = mp.sqrt(1 + (mpf(self.rise_a if side == 'a' else self.rise_b) / 12) ** 2)
        ups = [
            dot(meet(line, top, cut), inwards) * slope
            for line, cut in (
                (board.center, hip.center),
                (board.left, face),
                (board.right, face),
            )
        ]
        return ups[0], max(ups[1:]), min(ups[1:])


CASES = [
    Case('5', '7.5', 90),
    Case('7.5', '5', 90),
    Case('8', '8', 90),
    Case('6', '9', 110),
    Case('7', '7', 135),
]
EACH = pytest.mark.parametrize('pair', CASES, ids=str)


def near(told, model):
    return abs(mpf(told) - model) <= NEAR


@EACH
@pytest.mark.parametrize('side', 'ab')
def test_hips_and_valleys_to_a_ridge_have_a_long_and_a_short_point(pair, side):
    for name, thickness in (('hip', HIP), ('valley', VALLEY)):
        points = [pair.on_hip(thickness, where, pair.ridge_face(side)) for where in 'ab']
        told = pair.told[f'side_{side}']['sawn']
        assert near(told[f'{name}_at_ridge_long_point']['inches'], max(points))
        assert near(told[f'{name}_at_ridge_short_point']['inches'], min(points))
        cheek = pair.told[f'side_{side}']['cheek'][f'{name}_at_ridge']
        assert near(cheek['long_to_short_point']['along']['inches'], max(points) - min(points))


@EACH
def test_a_hip_between_commons_stops_at_the_first_face_and_each_side_at_its_own(pair):
    faces = {side: pair.common_face(side) for side in 'ab'}
    center = min(pair.on_hip(HIP, 'center', faces[side]) for side in 'ab')

    for side in 'ab':
        told = pair.told[f'side_{side}']['sawn']
        assert near(told['hip_between_commons_point']['inches'], center)
        assert near(told['hip_between_commons_side']['inches'], pair.on_hip(HIP, side, faces[side]))


@EACH
def test_a_valley_between_ridges_stops_at_the_first_face_and_each_side_at_its_own(pair):
    faces = {side: pair.ridge_face(side) for side in 'ab'}
    center = min(pair.on_hip(VALLEY, 'center', faces[side]) for side in 'ab')

    for side, away in (('a', 'b'), ('b', 'a')):  # a valley's side at A's ridge is the one away from its plane
        told = pair.told[f'side_{side}']['sawn']
        assert near(told['valley_between_ridges_point']['inches'], center)
        assert near(told['valley_between_ridges_side']['inches'], pair.on_hip(VALLEY, away, faces[side]))


@EACH
def test_the_point_of_a_double_cheek_lies_where_the_two_faces_cross(pair):
    told = pair.told['double_cheek']
    at = meet(pair.common_face('a'), pair.common_face('b'), LEVEL)
    aside = pair.hip(HIP).center.height(at)  # the normal is on the left of the hip, towards B
    way = 'on_the_center_line' if abs(aside) < NEAR else f'towards_side_{"b" if aside > 0 else "a"}'

    assert near(told['aside']['inches'], abs(aside))
    assert told['point'] == way


@EACH
@pytest.mark.parametrize('side', 'ab')
def test_tails_reach_their_fascias(pair, side):
    """The fascia of B stands so far out that both eaves are at one height."""
    fall = mpf(OUT) * mpf(pair.rise_a) / 12
    out = fall / (mpf(pair.rise_a if side == 'a' else pair.rise_b) / 12)
    fascia = Plane(pair.inwards(side), -out)
    told = pair.told[f'side_{side}']['tail']

    assert near(told['overhang']['inches'], out)
    assert near(told['hip_valley']['inches'], -pair.on_hip(HIP, 'center', fascia))
    assert near(told['hip_side']['inches'], -pair.on_hip(HIP, side, fascia))
    over_eave = 'b' if side == 'a' else 'a'  # a valley's side over A's eave is the one away from its plane
    assert near(told['valley_side']['inches'], -pair.on_hip(VALLEY, over_eave, fascia))


@EACH
@pytest.mark.parametrize('side', 'ab')
def test_each_hip_jack_is_told_to_its_points(pair, side):
    rows = pair.told[f'side_{side}']['jack']['hip_jacks']
    whole = pair.run(side) * mp.sqrt(1 + (mpf(pair.rise_a if side == 'a' else pair.rise_b) / 12) ** 2)

    assert [row['number'] for row in rows] == list(range(1, len(rows) + 1))
    for row in rows:
        center, long, short = pair.jack(side, row['number'], HIP, below=True)
        assert near(row['line_length']['inches'], center)
        assert near(row['long_point']['inches'], long)
        assert near(row['short_point']['inches'], short)
        assert row['spacing']['inches'] == '16.000000000'
    assert pair.jack(side, len(rows) + 1, HIP, below=True)[0] >= whole - NEAR  # the next would pass the ridge


@EACH
@pytest.mark.parametrize('side', 'ab')
def test_each_valley_jack_is_told_from_its_cut_at_the_ridge(pair, side):
    """Its line is the rest of a common's, its top cut half a ridge short of the ridge's center line."""
    slope = mp.sqrt(1 + (mpf(pair.rise_a if side == 'a' else pair.rise_b) / 12) ** 2)
    whole, off = pair.run(side) * slope, real(RIDGE) / 2 * slope

    rows = pair.told[f'side_{side}']['jack']['valley_jacks']
    assert rows
    for row in rows:
        center, high, low = pair.jack(side, row['number'], VALLEY, below=False)
        assert near(row['line_length']['inches'], whole - center)
        assert near(row['long_point']['inches'], whole - off - low)
        assert near(row['short_point']['inches'], whole - off - high)


@pytest.mark.parametrize('rise', ['5', '7.5', '12'])
def test_a_regular_roof_says_what_a_corner_of_one_pitch_says(rise):
    """The one road: the plain answer is that of a corner whose two sides are alike, number for number."""
    plain = as_data(answer(ask(rise)))
    corner = Case(rise, rise, 90).told

    for side in (corner['side_a'], corner['side_b']):
        for key in ('shortening', 'sawn', 'jack', 'tail', 'cheek', 'backing', 'drop', 'trim'):
            assert plain[key] == side[key]
        assert plain['seat']['common'] == side['seat']['common']
    for key in ('hip_dropped', 'hip_backed', 'valley'):
        assert plain['seat'][key] == corner['seat'][key]
    assert plain['length']['hip_valley'] == corner['hip_valley']['length']


@pytest.mark.parametrize('pair', CASES[:3], ids=str)
def test_the_end_common_stops_at_the_ridges_end_in_both_arrangements(pair):
    """The end common of B, along eave A: to the last side common's far face, or to where the hips' cheeks end."""
    slope = mp.sqrt(1 + (mpf(pair.rise_b) / 12) ** 2)
    run_b, end = pair.run('b'), pair.end()
    told = pair.told['side_b']['shortening']['end_common']
    hip = pair.hip(HIP)
    cheek_end = min(
        dot(meet(side, pair.ridge_face('a'), LEVEL), pair.roof.in_b) for side in (hip.left, hip.right)
    )

    assert abs(dot(end, pair.roof.in_b) - run_b) < NEAR
    assert near(told['between_commons']['level']['inches'], real(RAFTER) / 2)
    assert near(told['hips_on_ridge']['level']['inches'], run_b - cheek_end)
    assert near(
        pair.told['side_b']['sawn']['end_common_between_commons']['inches'],
        (run_b - real(RAFTER) / 2) * slope,
    )
    assert near(pair.told['side_b']['sawn']['end_common_hips_on_ridge']['inches'], cheek_end * slope)
    side_of_common = Plane(pair.roof.eave_b, mpf(RUN) - real(RAFTER) / 2)
    on_hip = dot(meet(hip.left, side_of_common, LEVEL), pair.roof.in_b)
    assert near(told['clip']['inches'], cheek_end - on_hip)
