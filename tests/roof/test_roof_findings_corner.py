"""Findings of two pitches and of many sides: each side has its own values, and the regular corner is a case of both."""

from fractions import Fraction

from mpmath import mp, mpf
from msgspec.structs import replace
from near import NEAR
from oracle.planes import (
    ORIGIN,
    Plane,
    angle,
    cut_readings,
    dot,
    level,
    meet,
    member,
    plumb_plane,
    roof_corner,
    scaled,
    size,
)
from oracle.planes import sub as less

from layouts.told.objects import as_data
from tablegen.roof.answer import answer
from tablegen.roof.question import ManySided, RoofQuestion, TwoPitches
from tablegen.written.pitches import pitch

ASK = RoofQuestion(pitch('8'), Fraction(120))


def _data(ask=ASK):
    return as_data(answer(ask))


def two_pitches(ask, other, angle=Fraction(90)):
    return as_data(answer(replace(ask, roof=TwoPitches(other, angle))))['two_pitches']


def many_sides(ask, sides):
    return as_data(answer(replace(ask, roof=ManySided(sides))))['many_sided']


def _near(decimal, model, unit=1):
    """A decimal of nine places is the model's value rounded."""
    return abs(mpf(decimal) - model) <= unit * mpf('0.51')


def test_two_pitches_against_planes():
    """8 in 12 as A, 12 in 12 as B: each side's values are that side's."""
    data = two_pitches(ASK, pitch('12'))
    roof = roof_corner(mpf(8) / 12, mpf(1))
    in_plan = level(roof.hip())
    hip = roof.hip_member(mpf(3) / 2)
    jack_a = member(scaled(roof.eave_a, mpf(60)), roof.in_a, mpf(3) / 2, roof.a)
    jack_b = member(scaled(roof.eave_b, mpf(60)), roof.in_b, mpf(3) / 2, roof.b)
    end = meet(roof.a, roof.b, Plane(roof.in_a, mpf(120)))
    cut_a, cut_b = cut_readings(jack_a, hip.right), cut_readings(jack_b, hip.left)
    degree = NEAR

    line = data['hip_valley']
    assert _near(line['plan_from_eave_a']['degrees'], mp.degrees(angle(in_plan, roof.eave_a)), degree)
    assert _near(line['plan_from_eave_b']['degrees'], mp.degrees(angle(in_plan, roof.eave_b)), degree)
    assert _near(line['length']['inches'], size(end), NEAR)
    assert _near(data['side_b']['length']['run']['inches'], dot(roof.in_b, end), NEAR)
    for side, jack in (('side_a', cut_a), ('side_b', cut_b)):
        cheek = data[side]['cheek']['jack']
        assert _near(cheek['top_from_square']['degrees'], 90 - mp.degrees(jack.top_from_edge), degree)
        assert _near(cheek['top_figure_on_12']['inches'], 12 * mp.tan(jack.top_from_edge), NEAR)
        assert _near(cheek['side_plumb']['degrees'], mp.degrees(jack.saw), degree)
        assert _near(cheek['side_blade_tilt']['degrees'], mp.degrees(jack.blade), degree)
    ridge_b = cut_readings(hip, Plane(roof.in_b, mpf(80)))
    common_a = cut_readings(hip, Plane(roof.eave_a, mpf(80)))
    for key, cut in (('hip_at_ridge', ridge_b), ('valley_tail', ridge_b), ('hip_tail', ridge_b)):
        cheek = data['side_b']['cheek'][key]
        assert _near(cheek['top_from_square']['degrees'], 90 - mp.degrees(cut.top_from_edge), degree)
        assert _near(cheek['side_plumb']['degrees'], mp.degrees(cut.saw), degree)
        assert _near(cheek['side_blade_tilt']['degrees'], mp.degrees(cut.blade), degree)
    between = data['side_a']['cheek']['hip_between_commons']
    assert _near(between['top_from_square']['degrees'], 90 - mp.degrees(common_a.top_from_edge), degree)
    for side, edge, roof_plane in (('side_a', hip.right, roof.a), ('side_b', hip.left, roof.b)):
        at_edge = meet(edge, hip.top, Plane(scaled(in_plan, 1 / size(in_plan)), mpf(0)))
        assert _near(
            data[side]['drop']['plumb']['inches'], roof_plane.height(at_edge) / roof_plane.normal[2], NEAR
        )


def test_a_corner_that_is_not_square_against_planes():
    data = two_pitches(ASK, pitch('6'), Fraction(120))
    roof = roof_corner(mpf(8) / 12, mpf(6) / 12, mp.radians(120))
    foot = scaled(roof.eave_b, mpf(16))
    jack = meet(plumb_plane(foot, roof.in_b), roof.b, plumb_plane(ORIGIN, level(roof.hip())))

    assert data['corner']['degrees'] == '120.000000000'
    assert _near(
        data['side_b']['jack']['difference'][1]['difference']['inches'], size(less(jack, foot)), NEAR
    )


def test_four_sides_give_the_regular_answers():
    four, plain = many_sides(ASK, 4), _data()

    for name in ('backing', 'drop', 'trim'):
        assert four[name] == plain[name]
    for name in ('common', 'hip_dropped', 'hip_backed'):
        assert four['seat'][name] == plain['seat'][name]
    peak, ridge = four['cheek']['hip_at_peak'], plain['cheek']['hip_at_ridge']
    assert all(peak[key] == ridge[key] for key in peak)
    for mine, theirs in (
        ('hip', 'hip_valley'),
        ('hip_side', 'hip_side'),
        ('fall', 'fall'),
    ):
        assert four['tail'][mine] == plain['tail'][theirs]
    assert (
        four['shortening']['jack_at_hip']['along']['inches']
        == plain['shortening']['jack_at_hip']['along']['inches']
    )
    assert four['jack']['hip_jacks'] == plain['jack']['hip_jacks']


def test_an_unequal_hip_is_dropped_by_the_greater_drop():
    """Worked by hand: 8 and 12 in 12, tan a = 3/2, so the drops are 0.75 · 8/12 · 2/√13 and 0.75 · 3/√13."""
    told = two_pitches(ASK, pitch('12'))
    seats, seat_b = told['seat'], told['side_b']['seat']['common']
    height = mpf(seats['hip_backed']['height_above_plate']['inches'])

    assert _near(
        seats['hip_dropped']['height_above_plate']['inches'], height - mpf(9) / 4 / mp.sqrt(13), 2 * NEAR
    )
    assert _near(seat_b['seat']['inches'], mpf(29) / 4 * mp.sqrt(2) - height, 2 * NEAR)


def test_slide_and_raise_say_which_way():
    steeper_b = two_pitches(ASK, pitch('12'))
    flatter_b = two_pitches(ASK, pitch('4'))

    assert steeper_b['slide']['way'] == 'towards_eave_a'
    assert steeper_b['eaves']['raised'] == 'plate_b'
    assert flatter_b['slide']['way'] == 'towards_eave_b'
    assert flatter_b['eaves']['raised'] == 'plate_a'


def test_an_octagon():
    """By symmetry: corner 135°, plates cut at 22.5°; side 2 · 120 · tan 22.5°; a jack loses t/2 over cos 67.5°."""
    data = many_sides(ASK, 8)
    half, stretch = mp.radians(mpf('22.5')), mp.sqrt(208) / 12

    assert data['plan']['corner']['degrees'] == '135.000000000'
    assert data['plan']['plate_miter']['degrees'] == '22.500000000'
    assert _near(data['plan']['side']['inches'], 240 * (mp.sqrt(2) - 1), NEAR)
    assert _near(data['shortening']['jack_at_hip']['level']['inches'], mpf('0.75') / mp.sin(half), NEAR)
    assert _near(
        data['shortening']['jack_at_hip']['along']['inches'], mpf('0.75') / mp.sin(half) * stretch, NEAR
    )
    assert _near(data['shortening']['hip_at_least_post']['level']['inches'], mpf('0.75') / mp.tan(half), NEAR)
    assert _near(data['tail']['common_and_jack']['inches'], 12 * stretch, NEAR)
    assert _near(data['length']['common']['inches'], 120 * stretch, NEAR)
    hip = mp.sqrt((120 / mp.cos(half)) ** 2 + 80**2)
    assert _near(data['length']['hip']['inches'], hip, NEAR)
    assert _near(data['tail']['hip']['inches'], hip / 10, NEAR)
    assert _near(data['cheek']['hip_tail']['side_blade_tilt']['degrees'], mpf('22.5'), NEAR)


def test_a_ridge_between_ends_of_another_pitch():
    """Plates 40 ft by 20: ends of 12 in 12 come in by 120 · 8/12 each; half of a common, or ridge/2 · cot a + t/2 / sin a."""
    ask = RoofQuestion(pitch('8'), Fraction(120), plate_length_in=Fraction(480))
    ridge = two_pitches(ask, pitch('12'))['ridge']
    a = mp.atan(mpf(12) / 8)
    past = mpf('0.75') * mp.cot(a) + mpf('0.75') / mp.sin(a)

    assert ridge['hip_roof']['center_lines']['inches'] == '320.000000000'
    assert ridge['hip_roof']['sawn_between_commons']['inches'] == '321.500000000'
    assert _near(ridge['hip_roof']['sawn_hips_on_ridge']['inches'], 320 + 2 * past, NEAR)
    assert ridge['sits_down']['inches'] == '0.500000000'


def test_at_a_corner_that_is_not_square_no_common_stands_in_line_with_a_ridge():
    told = two_pitches(ASK, pitch('6'), Fraction(120))

    assert 'end_common' not in told['side_a']['shortening']
    assert not [key for key in told['side_a']['sawn'] if key.startswith('end_common')]
    assert not [key for key in told['ridge'] if key.startswith('past_end')]
