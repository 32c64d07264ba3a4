"""The findings of one roof: their names, their values where worked out elsewhere, and what is refused."""

from dataclasses import replace
from fractions import Fraction

import pytest
from mpmath import mp, mpf
from near import NEAR
from planes import (
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
from planes import sub as less

from tablegen.errors import BookError
from tablegen.figures import Measure
from tablegen.readings import Finding, as_data
from tablegen.findings_corner import many_sides, two_pitches
from tablegen.findings_layout import brace, pitch_found, rectangle, rectangle_check
from tablegen.findings_roof import RoofQuestion, roof_findings
from tablegen.geometry import finding_pitch
from tablegen.lumber import stock
from tablegen.pitch import pitch

ASK = RoofQuestion(pitch('8'), Fraction(120))


def _data(ask=ASK):
    return {finding.key: as_data(finding) for finding in roof_findings(ask)}


def _near(decimal, model, unit=1):
    """A decimal of nine places, or of six for degrees, is the model's value rounded."""
    return abs(mpf(decimal) - model) <= unit * mpf('0.51')


def test_the_objects_are_all_there():
    names = [
        'shortening',
        'seat',
        'tail',
        'cheek',
        'backing',
        'drop',
        'trim',
        'ridge',
        'gable_stud',
        'caution',
        'area',
    ]

    assert list(_data()) == names


def test_eight_in_twelve():
    """Worked by hand from the right triangles: see each module's source."""
    data = _data()

    assert data['drop']['plumb_in'] == '0.353553391'
    assert data['drop']['from'].startswith('from the top of the hip')
    assert data['seat']['valley']['heel_back_in'] == '0.750000000'
    assert data['seat']['valley']['seat_in'] == '2.718558861'  # the backed hip's 3.468558861 less the 0.75
    assert data['backing']['bevel_deg'] == '23.093469'
    assert data['shortening']['hip_level_in'] == '1.060660172'
    assert data['cheek']['jack']['figure_against_12_in'] == '9.984603532'
    assert data['cheek']['hip']['figure_against_12_in'] == '10.854408405'
    assert data['seat']['hip_dropped']['height_above_plate_in'] == '6.026528858'
    assert data['seat']['hip_backed']['height_above_plate_in'] == '6.380082249'
    assert data['seat']['hip_by_17_over_12']['height_above_plate_in'] == '5.681843243'
    assert data['tail']['hip_in'] == '18.761663039'
    assert data['area']['roof_per_plan'] == '1.201850425'
    assert data['gable_stud']['difference']['24_in'] == '16.000000000'


def test_what_a_person_reads():
    """The same values to the smallest part and to hundredths of a degree."""
    drop = next(finding for finding in roof_findings(ASK) if finding.key == 'drop')
    backing = next(finding for finding in roof_findings(ASK) if finding.key == 'backing')

    assert [value.text for value in drop.values] == ['3/8 in', '5/16 in', '1 1/2 in']
    assert backing.values[0].text == '23.09°'


def test_feet_and_inches_are_followed():
    ask = replace(ASK, measure=Measure(8, 'feet-inches'), projection_in=Fraction(30))
    tail = next(finding for finding in roof_findings(ask) if finding.key == 'tail')

    assert tail.values[1].text == '3′ 0″'


def _leaves(finding):
    for value in finding.values:
        yield from _leaves(value) if isinstance(value, Finding) else [value]


def _all():
    return [*roof_findings(ASK), two_pitches(ASK, pitch('12')), many_sides(ASK, 8)]


def test_every_length_and_angle_names_its_unit():
    """A decimal string is in inches or degrees and says so, or is one of the two ratios."""
    for finding in _all():
        for value in _leaves(finding):
            decimal = isinstance(value.data, str) and value.data.replace('.', '').replace('-', '').isdigit()
            named = value.key.endswith(('_in', '_deg')) or value.key in (
                'notch_share_of_depth',
                'roof_per_plan',
            )
            assert named == decimal, value


def _lines(finding, above=False):
    told = above or bool(finding.from_line)
    for value in finding.values:
        if isinstance(value, Finding):
            yield from _lines(value, told)
        else:
            yield value.key, told


def test_every_reading_says_its_line():
    exempt = {'pitch', 'run_in'}
    for finding in _all():
        assert all(told for key, told in _lines(finding) if key not in exempt)


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
    assert data['plate_mitre_deg'] == '22.500000'
    assert _near(data['side_in'], 240 * (mp.sqrt(2) - 1), NEAR)
    assert data['cheek']['jack']['within_saw_scale'] is False
    assert data['cheek']['jack']['blade_from_end_deg'] == '22.500000'


def test_a_cut_on_the_scale_has_no_setting_from_the_end():
    assert 'blade_from_end_deg' not in _data()['cheek']['jack']


def test_a_hip_too_shallow_for_its_plate_says_so():
    """Steep and a short seat: the hip's plumb depth is less than the common's height above plate."""
    seat = _data(replace(ASK, pitch=pitch('24'), seat_in=Fraction(1, 2)))['seat']

    assert seat['hip_backed']['seat'] == 'none: this stock is too shallow to reach the plate'
    assert mpf(seat['hip_backed']['least_depth_in']) > mpf('7.25')


@pytest.mark.parametrize(
    ('face', 'projection', 'said'),
    [
        (Fraction(9), Fraction(12), 'none: the plumb cut is no longer than the face'),
        (Fraction(2), Fraction(6), 'none: it would run in past the outside of plate'),
    ],
)
def test_a_soffit_that_needs_no_cut_or_has_none(face, projection, said):
    tail = _data(replace(ASK, tail_face_in=face, projection_in=projection))['tail']

    assert tail['soffit']['level_cut'] == said


def test_a_hip_roofs_ridge():
    """Plates 30 by 20 ft: 10 ft between centre lines; commons of 1½ in add ¾ at each end."""
    ridge = _data(replace(ASK, plate_length_in=Fraction(360)))['ridge']

    assert ridge['hip_roof']['centre_lines_in'] == '120.000000000'
    assert ridge['hip_roof']['sawn_between_commons_in'] == '121.500000000'
    assert _near(ridge['hip_roof']['sawn_with_hips_on_it_in'], 120 + mpf(3) / 2 * (1 + mp.sqrt(2)), NEAR)
    assert 'hip_roof' not in _data()['ridge']


@pytest.mark.parametrize(
    ('changes', 'keys'),
    [
        ({}, ['deep_notch']),
        ({'pitch': pitch('2')}, ['low_slope']),
        ({'pitch': pitch('3'), 'projection_in': Fraction(24)}, []),
        ({'pitch': pitch('3'), 'projection_in': Fraction(25)}, ['long_tail']),
        ({'pitch': pitch('9'), 'seat_in': Fraction(1)}, ['steep', 'short_seat']),
        ({'stock': stock('2x4'), 'seat_in': Fraction(2), 'pitch': pitch('4')}, ['thin_tail']),
        (
            {
                'stock': stock('2x4'),
                'seat_in': Fraction(2),
                'pitch': pitch('4'),
                'projection_in': Fraction(0),
            },
            [],
        ),
    ],
)
def test_cautions_stand_where_the_numbers_call_for_them(changes, keys):
    caution = _data(replace(ASK, **changes))['caution']

    assert [key for key in caution if key != 'from'] == keys
    assert caution['from'] == 'Local code and a licensed designer decide.'


def test_marks():
    assert _data()['seat']['mark'].startswith('past a quarter')
    assert _data(replace(ASK, seat_in=Fraction(2)))['seat']['mark'].startswith('not past a quarter')
    assert _data(replace(ASK, seat_in=Fraction(5)))['seat']['mark'].startswith('past a third')


@pytest.mark.parametrize(
    ('ask', 'said'),
    [
        (
            lambda: roof_findings(replace(ASK, stock=stock('2x4'), seat_in=Fraction(7))),
            'seat: its notch is 3.88 in deep',
        ),
        (
            lambda: roof_findings(replace(ASK, projection_in=Fraction(240))),
            'projection: 240 in is more than the run',
        ),
        (lambda: two_pitches(ASK, pitch('2'), Fraction(120)), 'corner: the hip leans back'),
        (lambda: two_pitches(ASK, pitch('6'), Fraction(180)), 'corner: 180 degrees is no corner'),
        (lambda: two_pitches(replace(ASK, seat_in=Fraction(60)), pitch('6')), 'seat: its notch is'),
        (
            lambda: roof_findings(replace(ASK, plate_length_in=Fraction(239))),
            'plate length: 239 in is less than the',
        ),
        (lambda: many_sides(ASK, 2), 'sides: 2 sides make no roof; allowed: 3 to 360'),
        (lambda: many_sides(replace(ASK, projection_in=Fraction(-1)), 8), 'projection: is below zero'),
    ],
)
def test_what_cannot_be_is_refused_in_one_line(ask, said):
    with pytest.raises(BookError) as refused:
        ask()

    assert str(refused.value).startswith(said)
    assert len(refused.value.lines()) == 1
    assert '\n' not in str(refused.value)


def test_a_found_pitch():
    """A level of 24 in with 13⅛ in under its end: 6.5625 in 12, a sixteenth over the half."""
    data = as_data(pitch_found(finding_pitch.from_level_and_tape(Fraction(24), Fraction(105, 8)), Measure()))

    assert data['rise_per_foot_in'] == '6.562500000'
    assert data['nearest_half_pitch'] == '6 1/2 in 12'
    assert data['off_by_per_foot_in'] == '0.062500000'


def test_a_layout_out_of_square():
    """24 by 32 ft with diagonals 40 ft 1 in and 39 ft 11 in: (481² − 479²)/(4 · 384) = 1.25 in."""
    sides, diagonals = (Fraction(384), Fraction(288)), (Fraction(481), Fraction(479))
    data = as_data(rectangle_check(*sides, *diagonals, Measure()))
    turned = as_data(rectangle_check(*sides, *reversed(diagonals), Measure()))

    assert data['diagonals_should_be_in'] == '480.000000000'
    assert data['push_along_length_in'] == turned['push_along_length_in'] == '1.250000000'
    assert data['verdict'] == 'the first diagonal is the longer'
    assert turned['verdict'] == 'the second diagonal is the longer'
    assert as_data(rectangle_check(*sides, Fraction(480), Fraction(480), Measure()))['verdict'] == 'square'


def test_a_rectangle_and_a_brace():
    """3-4-5 by eight feet: 24 by 32 ft has a diagonal of 40 ft."""
    assert as_data(rectangle(Fraction(288), Fraction(384), Measure()))['diagonal_in'] == '480.000000000'
    data = as_data(brace(Fraction(36), Fraction(48), Measure()))
    assert data['length_in'] == '60.000000000'
    assert data['cut_on_leg_deg'] == '36.869898'
    assert data['cut_on_other_leg_deg'] == '53.130102'
