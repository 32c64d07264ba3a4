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

from tablegen.findings_corner import many_sides, two_pitches
from tablegen.findings_roof import RoofQuestion, roof_findings
from tablegen.readings import as_data
from tablegen.written.pitches import pitch

ASK = RoofQuestion(pitch('8'), Fraction(120))


def _data(ask=ASK):
    return {finding.key: as_data(finding) for finding in roof_findings(ask)}


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

    assert _near(data['hip']['plan_from_eave_a_deg'], mp.degrees(angle(in_plan, roof.eave_a)), degree)
    assert _near(data['hip']['plan_from_eave_b_deg'], mp.degrees(angle(in_plan, roof.eave_b)), degree)
    assert _near(data['hip']['length_in'], size(end), NEAR)
    assert _near(data['side_b']['run_in'], dot(roof.in_b, end), NEAR)
    assert _near(
        data['side_a']['cheek']['jack']['top_from_edge_deg'], mp.degrees(cut_a.top_from_edge), degree
    )
    assert _near(
        data['side_b']['cheek']['jack']['top_from_edge_deg'], mp.degrees(cut_b.top_from_edge), degree
    )
    assert _near(data['side_b']['cheek']['jack']['blade_deg'], mp.degrees(cut_b.blade), degree)
    ridge_b = cut_readings(hip, Plane(roof.in_b, mpf(80)))
    assert _near(
        data['side_b']['cheek']['hip']['top_from_edge_deg'], mp.degrees(ridge_b.top_from_edge), degree
    )
    for side, edge, roof_plane in (('side_a', hip.right, roof.a), ('side_b', hip.left, roof.b)):
        at_edge = meet(edge, hip.top, Plane(scaled(in_plan, 1 / size(in_plan)), mpf(0)))
        assert _near(data[side]['drop']['plumb_in'], roof_plane.height(at_edge) / roof_plane.normal[2], NEAR)


def test_a_corner_that_is_not_square_against_planes():
    data = as_data(two_pitches(ASK, pitch('6'), Fraction(120)))
    roof = roof_corner(mpf(8) / 12, mpf(6) / 12, mp.radians(120))
    foot = scaled(roof.eave_b, mpf(16))
    jack = meet(plumb_plane(foot, roof.in_b), roof.b, plumb_plane(ORIGIN, level(roof.hip())))

    assert data['corner_deg'] == '120.000000'
    assert _near(data['side_b']['jack_difference']['16_in'], size(less(jack, foot)), NEAR)


def test_equal_pitches_give_the_regular_answers():
    """Symmetry: side a, side b and the plain question agree in every shared reading."""
    both = as_data(two_pitches(ASK, pitch('8')))
    plain = _data()

    for name in ('shortening', 'cheek', 'backing', 'drop', 'trim'):
        assert both['side_a'][name] == both['side_b'][name] == plain[name]
    assert both['slide']['aside_in'] == '0.000000000'
    assert both['slide']['way'] == 'not needed'
    assert both['eaves']['raised'] == 'neither plate'
    assert both['seat']['seat_b_in'] == plain['seat']['seat_in']


def test_four_sides_give_the_regular_answers():
    four, plain = as_data(many_sides(ASK, 4)), _data()

    for name in ('backing', 'drop', 'trim', 'seat'):
        assert four[name] == plain[name]
    assert four['cheek']['hip_at_peak'] == plain['cheek']['hip']


def test_an_unequal_hip_is_dropped_by_the_greater_drop():
    """Worked by hand: 8 and 12 in 12, tan a = 3/2, so the drops are 0.75 · 8/12 · 2/√13 and 0.75 · 3/√13."""
    seats = as_data(two_pitches(ASK, pitch('12')))['seat']
    height = mpf(seats['height_above_plate_in'])

    assert _near(seats['hip_dropped']['height_above_plate_in'], height - mpf(9) / 4 / mp.sqrt(13), 2 * NEAR)
    assert _near(seats['seat_b_in'], mpf(29) / 4 * mp.sqrt(2) - height, 2 * NEAR)


def test_slide_and_raise_say_which_way():
    steeper_b = as_data(two_pitches(ASK, pitch('12')))
    flatter_b = as_data(two_pitches(ASK, pitch('4')))

    assert steeper_b['slide']['way'] == 'towards eave a'
    assert steeper_b['eaves']['raised'] == 'plate b'
    assert flatter_b['slide']['way'] == 'towards eave b'
    assert flatter_b['eaves']['raised'] == 'plate a'


def test_an_octagon():
    data = as_data(many_sides(ASK, 8))

    assert data['corner_deg'] == '135.000000'
    assert data['plate_miter_deg'] == '22.500000'
    assert _near(data['side_in'], 240 * (mp.sqrt(2) - 1), NEAR)
    assert data['cheek']['jack']['within_saw_scale'] is False
    assert data['cheek']['jack']['blade_from_end_deg'] == '22.500000'
