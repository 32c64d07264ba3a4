"""Findings of two pitches and of many sides: each side has its own values, and the regular corner is a case of both."""

from fractions import Fraction

from mpmath import mp, mpf
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

from tablegen.roof.corner import corner_sides
from tablegen.roof.corner import two_pitches as told_of
from tablegen.roof.question import RoofQuestion
from tablegen.roof.readings import as_data
from tablegen.roof.roof import roof_findings
from tablegen.roof.sides import many_sides as told_of_sides
from tablegen.roof.sides import sided
from tablegen.written.pitches import pitch

ASK = RoofQuestion(pitch('8'), Fraction(120))


def _data(ask=ASK):
    return {finding.key: as_data(finding) for finding in roof_findings(ask)}


def two_pitches(ask, other, angle=Fraction(90)):
    return told_of(*corner_sides(ask, other, angle), angle)


def many_sides(ask, sides):
    return told_of_sides(sided(ask, sides), sides)


def _near(decimal, model, unit=1):
    """A decimal of nine places, or of six for degrees, is the model's value rounded."""
    return abs(mpf(decimal) - model) <= unit * mpf('0.51')


def test_two_pitches_against_planes():
    """8 in 12 as A, 12 in 12 as B: each side's values are that side's."""
    data = as_data(two_pitches(ASK, pitch('12')))
    roof = roof_corner(mpf(8) / 12, mpf(1))
    in_plan = level(roof.hip())
    hip = roof.hip_member(mpf(3) / 2)
    jack_a = member(scaled(roof.eave_a, mpf(60)), roof.in_a, mpf(3) / 2, roof.a)
    jack_b = member(scaled(roof.eave_b, mpf(60)), roof.in_b, mpf(3) / 2, roof.b)
    end = meet(roof.a, roof.b, Plane(roof.in_a, mpf(120)))
    cut_a, cut_b = cut_readings(jack_a, hip.right), cut_readings(jack_b, hip.left)
    degree = mpf('1e-6')

    line = data['hip_valley']
    assert _near(line['plan_from_eave_a_deg'], mp.degrees(angle(in_plan, roof.eave_a)), degree)
    assert _near(line['plan_from_eave_b_deg'], mp.degrees(angle(in_plan, roof.eave_b)), degree)
    assert _near(line['length_in'], size(end), NEAR)
    assert _near(data['side_b']['length']['run_in'], dot(roof.in_b, end), NEAR)
    for side, jack in (('side_a', cut_a), ('side_b', cut_b)):
        cheek = data[side]['cheek']['jack']
        assert _near(cheek['top_from_square_deg'], 90 - mp.degrees(jack.top_from_edge), degree)
        assert _near(cheek['top_figure_on_12_in'], 12 * mp.tan(jack.top_from_edge), NEAR)
        assert _near(cheek['side_plumb_deg'], mp.degrees(jack.saw), degree)
        assert _near(cheek['side_blade_tilt_deg'], mp.degrees(jack.blade), degree)
    ridge_b = cut_readings(hip, Plane(roof.in_b, mpf(80)))
    common_a = cut_readings(hip, Plane(roof.eave_a, mpf(80)))
    for key, cut in (('hip_at_ridge', ridge_b), ('valley_tail', ridge_b), ('hip_tail', ridge_b)):
        cheek = data['side_b']['cheek'][key]
        assert _near(cheek['top_from_square_deg'], 90 - mp.degrees(cut.top_from_edge), degree)
        assert _near(cheek['side_plumb_deg'], mp.degrees(cut.saw), degree)
        assert _near(cheek['side_blade_tilt_deg'], mp.degrees(cut.blade), degree)
    between = data['side_a']['cheek']['hip_between_commons']
    assert _near(between['top_from_square_deg'], 90 - mp.degrees(common_a.top_from_edge), degree)
    for side, edge, roof_plane in (('side_a', hip.right, roof.a), ('side_b', hip.left, roof.b)):
        at_edge = meet(edge, hip.top, Plane(scaled(in_plan, 1 / size(in_plan)), mpf(0)))
        assert _near(data[side]['drop']['plumb_in'], roof_plane.height(at_edge) / roof_plane.normal[2], NEAR)


def test_a_corner_that_is_not_square_against_planes():
    data = as_data(two_pitches(ASK, pitch('6'), Fraction(120)))
    roof = roof_corner(mpf(8) / 12, mpf(6) / 12, mp.radians(120))
    foot = scaled(roof.eave_b, mpf(16))
    jack = meet(plumb_plane(foot, roof.in_b), roof.b, plumb_plane(ORIGIN, level(roof.hip())))

    assert data['corner_deg'] == '120.000000'
    assert _near(data['side_b']['jack']['difference'][1]['difference_in'], size(less(jack, foot)), NEAR)


def test_four_sides_give_the_regular_answers():
    four, plain = as_data(many_sides(ASK, 4)), _data()

    for name in ('backing', 'drop', 'trim'):
        assert four[name] == plain[name]
    for name in ('common', 'hip_dropped', 'hip_backed'):
        assert four['seat'][name] == plain['seat'][name]
    peak, ridge = four['cheek']['hip_at_peak'], plain['cheek']['hip_at_ridge']
    assert all(peak[key] == ridge[key] for key in peak)
    for mine, theirs in (
        ('hip_in', 'hip_valley_in'),
        ('hip_sides_in', 'hip_sides_in'),
        ('fall_in', 'fall_in'),
    ):
        assert four['tail'][mine] == plain['tail'][theirs]
    assert four['shortening']['jack_at_hip_along_in'] == plain['shortening']['jack_at_hip_along_in']
    assert four['jack']['hip_jacks'] == plain['jack']['hip_jacks']


def test_an_unequal_hip_is_dropped_by_the_greater_drop():
    """Worked by hand: 8 and 12 in 12, tan a = 3/2, so the drops are 0.75 · 8/12 · 2/√13 and 0.75 · 3/√13."""
    seats = as_data(two_pitches(ASK, pitch('12')))['seat']
    height = mpf(seats['height_above_plate_in'])

    assert _near(seats['hip_dropped']['height_above_plate_in'], height - mpf(9) / 4 / mp.sqrt(13), 2 * NEAR)
    assert _near(seats['seat_b_in'], mpf(29) / 4 * mp.sqrt(2) - height, 2 * NEAR)


def test_slide_and_raise_say_which_way():
    steeper_b = as_data(two_pitches(ASK, pitch('12')))
    flatter_b = as_data(two_pitches(ASK, pitch('4')))

    assert steeper_b['slide']['way'] == 'towards eave A'
    assert steeper_b['eaves']['raised'] == 'plate B'
    assert flatter_b['slide']['way'] == 'towards eave B'
    assert flatter_b['eaves']['raised'] == 'plate A'


def test_an_octagon():
    """By symmetry: corner 135°, plates cut at 22.5°; side 2 · 120 · tan 22.5°; a jack loses t/2 over cos 67.5°."""
    data = as_data(many_sides(ASK, 8))
    half, stretch = mp.radians(mpf('22.5')), mp.sqrt(208) / 12

    assert data['plan']['corner_deg'] == '135.000000'
    assert data['plan']['plate_miter_deg'] == '22.500000'
    assert _near(data['plan']['side_in'], 240 * (mp.sqrt(2) - 1), NEAR)
    assert _near(data['shortening']['jack_at_hip_level_in'], mpf('0.75') / mp.sin(half), NEAR)
    assert _near(data['shortening']['jack_at_hip_along_in'], mpf('0.75') / mp.sin(half) * stretch, NEAR)
    assert _near(data['shortening']['hip_at_least_post_level_in'], mpf('0.75') / mp.tan(half), NEAR)
    assert _near(data['tail']['common_and_jack_in'], 12 * stretch, NEAR)
    assert _near(data['length']['common_in'], 120 * stretch, NEAR)
    hip = mp.sqrt((120 / mp.cos(half)) ** 2 + 80**2)
    assert _near(data['length']['hip_in'], hip, NEAR)
    assert _near(data['tail']['hip_in'], hip / 10, NEAR)
    assert _near(data['cheek']['hip_tail']['side_blade_tilt_deg'], mpf('22.5'), mpf('1e-6'))


def test_a_ridge_between_ends_of_another_pitch():
    """Plates 40 ft by 20: ends of 12 in 12 come in by 120 · 8/12 each; half of a common, or ridge/2 · cot a + t/2 / sin a."""
    ask = RoofQuestion(pitch('8'), Fraction(120), plate_length_in=Fraction(480))
    ridge = as_data(two_pitches(ask, pitch('12')))['ridge']
    a = mp.atan(mpf(12) / 8)
    past = mpf('0.75') * mp.cot(a) + mpf('0.75') / mp.sin(a)

    assert ridge['hip_roof']['center_lines_in'] == '320.000000000'
    assert ridge['hip_roof']['sawn_between_commons_in'] == '321.500000000'
    assert _near(ridge['hip_roof']['sawn_hips_on_ridge_in'], 320 + 2 * past, NEAR)
    assert ridge['sits_down_in'] == '0.500000000'


def test_at_a_corner_that_is_not_square_no_common_stands_in_line_with_a_ridge():
    told = as_data(two_pitches(ASK, pitch('6'), Fraction(120)))

    assert 'end_common' not in told['side_a']['shortening']
    assert not [key for key in told['sawn'] if key.startswith('end_common')]
    assert not [key for key in told['ridge'] if key.startswith('past_end')]
