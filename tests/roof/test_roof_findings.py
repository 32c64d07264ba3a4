"""The findings of one roof: their names, their values where worked out elsewhere, and what is refused."""

from dataclasses import replace
from fractions import Fraction

import pytest
from mpmath import mp, mpf
from near import NEAR

from layouts.words.error import error_line, error_lines
from tablegen.errors import BookError
from tablegen.numbers.figure import Measure
from tablegen.roof.corner import corner_sides, two_pitches
from tablegen.roof.question import RoofQuestion
from tablegen.roof.readings import Group, Rows, as_data, length, signed
from tablegen.roof.roof import GROUPS, roof_findings
from tablegen.roof.sides import many_sides, sided
from tablegen.written.pitches import pitch
from tablegen.written.stocks import stock

ASK = RoofQuestion(pitch('8'), Fraction(120))


def _data(ask=ASK):
    return {finding.key: as_data(finding) for finding in roof_findings(ask)}


def _near(decimal, model, unit=1):
    """A decimal of nine places, or of six for degrees, is the model's value rounded."""
    return abs(mpf(decimal) - model) <= unit * mpf('0.51')


def test_the_objects_are_all_there():
    assert list(_data()) == [
        *(
            'length',
            'cut',
            'square',
            'shortening',
            'sawn',
            'jack',
            'seat',
            'tail',
            'cheek',
            'backing',
            'drop',
        ),
        *('trim', 'ridge', 'gable_stud', 'area'),
    ]


def test_groups_asked_for_come_alone_and_in_order():
    assert [group.key for group in roof_findings(ASK, ('drop', 'length'))] == ['length', 'drop']
    assert list(GROUPS) == list(_data())


def test_eight_in_twelve():
    """Worked by hand from the right triangles: see each module's source."""
    data = _data()

    assert data['drop']['plumb_in'] == '0.353553391'
    assert data['seat']['valley']['heel_back_in'] == '0.750000000'
    # outwards the underside is lower: the backed hip's seat, 3.468558861, and the 0.75 that the heel stands outwards
    assert data['seat']['valley']['seat_in'] == '4.218558861'
    assert data['seat']['valley']['heel_in'] == data['seat']['hip_dropped']['heel_in']
    assert data['backing']['bevel_deg'] == '23.093469'
    assert data['shortening']['hip_valley_at_ridge_level_in'] == '1.060660172'
    assert data['cheek']['jack']['top_figure_on_12_in'] == '9.984603532'
    assert data['cheek']['hip_at_ridge']['top_figure_on_12_in'] == '10.854408405'
    assert data['seat']['hip_dropped']['height_above_plate_in'] == '6.026528858'
    assert data['seat']['hip_backed']['height_above_plate_in'] == '6.380082249'
    assert (
        data['seat']['hip_by_17_over_12']['height_above_plate_in'] == '5.677795828'
    )  # the rule as it is said: 17/12, not √2
    assert data['tail']['hip_valley_in'] == '18.761663039'
    assert data['area']['roof_per_plan'] == '1.201850425'
    assert data['gable_stud']['difference'][-1]['spacing_in'] == '24.000000000'
    assert data['gable_stud']['difference'][-1]['difference_in'] == '16.000000000'


def test_the_old_rule_says_whether_it_is_low_or_high():
    """2×8 at 8 in 12: 6.0265 dropped less 5.6778. A 2×10 hip: D/cos H is 2 √11/3 = 2.211 in more than a 2×8's, so is its top."""
    low = _data()['seat']['hip_by_17_over_12']
    high = _data(replace(ASK, hip_stock=stock('2x10')))['seat']['hip_by_17_over_12']

    assert _near(low['low_if_dropped_in'], mpf('6.026528858') - mpf('5.677795828'), 2 * NEAR)
    assert _near(high['high_if_dropped_in'], 2 * mp.sqrt(11) / 3 - mpf('0.348733030'), 2 * NEAR)
    assert 'low_if_dropped_in' not in high
    assert all('−' not in value for value in high.values())


def test_a_length_is_told_twice_exact_and_rounded_once():
    """√208 is 14.4222051; six of them, not rounded before, 86.5332306: 86 8.53/16."""
    data = _data(replace(ASK, run_in=Fraction(72)))

    assert (data['length']['common_in'], data['length']['common_text']) == ('86.533230611', '86 9/16 in')
    for group in data.values():
        assert _lengths_have_texts(group)


def _lengths_have_texts(told):
    if isinstance(told, list):
        return all(_lengths_have_texts(one) for one in told)
    if not isinstance(told, dict):
        return True
    own = all(key.removesuffix('_in') + '_text' in told for key in told if key.endswith('_in'))
    return own and all(_lengths_have_texts(value) for value in told.values())


def test_a_difference_has_its_sign():
    assert signed('off', Fraction(1, 8), Measure()).text == '+1/8 in'
    assert signed('off', Fraction(-1, 8), Measure()).text == '−1/8 in'
    assert signed('off', Fraction(0), Measure()).text == '0 in'
    assert signed('off', Fraction(1, 64), Measure()).text == '0 in'
    assert length('on', Fraction(1, 8), Measure()).text == '1/8 in'


def test_limits_are_rounded_to_the_safe_side():
    """Depth over 4 sin θ is 3.2675 and over 3 sin θ 4.3567 in: 4 3/8 would pass the third. HAP · cos H is 5.4512."""
    seat = _data()['seat']

    assert seat['common']['longest_seat_for_a_quarter_text'] == '3 1/4 in'
    assert seat['common']['longest_seat_for_a_third_text'] == '4 5/16 in'
    assert seat['common']['longest_seat_for_a_third_in'] == '4.356707791'
    assert seat['hip_dropped']['least_depth_text'] == '5 1/2 in'
    assert seat['hip_dropped']['least_depth_in'] == '5.451200458'


def test_what_a_person_reads():
    """The same values to the smallest part and to hundredths of a degree."""
    drop = next(finding for finding in roof_findings(ASK) if finding.key == 'drop')
    backing = next(finding for finding in roof_findings(ASK) if finding.key == 'backing')

    assert [value.text for value in drop.values] == ['3/8 in', '5/16 in', '1 1/2 in']
    assert backing.values[0].text == '23.09°'


def test_feet_and_inches_are_followed():
    ask = replace(ASK, measure=Measure(8, 'feet-inches'), overhang_in=Fraction(30))
    tail = next(finding for finding in roof_findings(ask) if finding.key == 'tail')

    assert tail.values[1].text == '3′ 0″'


def _leaves(finding):
    for value in finding.values:
        if isinstance(value, Rows):
            yield from (reading for row in value.rows for reading in row)
        else:
            yield from _leaves(value) if isinstance(value, Group) else [value]


def _all():
    return [
        *roof_findings(ASK),
        two_pitches(*corner_sides(ASK, pitch('12'))),
        many_sides(sided(ASK, 8), 8),
    ]


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
        if isinstance(value, Group):
            yield from _lines(value, told)
        else:
            yield value.key, told


def test_every_reading_says_its_line():
    exempt = {'pitch'}
    for finding in _all():
        assert all(told for key, told in _lines(finding) if key not in exempt)


def test_a_cheek_past_the_saws_scale_names_the_hand_saw_first():
    """Blade 67.5° at an octagon: 22.5° from the end, and through 1 1/2 in it cuts 1.5 / cos 67.5°."""
    jack = as_data(many_sides(sided(ASK, 8), 8))['cheek']['jack']
    plain = _data()['cheek']['jack']

    assert jack['within_saw_scale'] is False
    assert jack['end_blade_tilt_deg'] == '22.500000'
    assert _near(jack['blade_reach_in'], mpf('1.5') / mp.cos(mp.radians(mpf('67.5'))), NEAR)
    assert 0 < jack['from'].index('hand saw') < jack['from'].index('wheel saw')
    assert 'end_blade_tilt_deg' not in plain
    assert 'hand saw' not in plain['from']


def test_no_cheek_is_told_from_the_edge():
    """One datum: on top from square across, with its figure on 12; on the side the plumb angle and the blade's tilt."""

    def keys(told):
        for key, value in told.items():
            yield key
            yield from keys(value) if isinstance(value, dict) else ()

    found = [key for finding in _all() for key in keys({finding.key: as_data(finding)})]
    assert 'top_from_square_deg' in found
    assert not [key for key in found if 'edge_deg' in key or key.endswith('from_edge')]


@pytest.mark.parametrize(('rise', 'held'), [('6', '12 & 10 3/4'), ('24', '12 & 5 3/8')])
def test_a_cheek_is_held_body_and_tongue(rise, held):
    """12 & 144/√(144 + r²), the line marked along the 12: 10.733 and 5.367."""
    assert _data(replace(ASK, pitch=pitch(rise)))['cheek']['jack']['top_held'] == held


def test_a_cheek_whose_figure_is_past_the_tongue_is_held_halved():
    """An octagon's hip tail: tan 67.5° · cos H · 12 = 24.67 is on no arm; 6 and 12.33 are."""
    tail = as_data(many_sides(sided(ASK, 8), 8))['cheek']['hip_tail']
    model = 12 * mp.tan(mp.radians(mpf('67.5'))) / mp.sqrt(1 + (mpf(2) / 3 * mp.cos(mp.pi / 8)) ** 2)

    assert _near(tail['top_figure_on_12_in'], model, NEAR)
    assert tail['top_held'] == '6 & 12 5/16'


def test_a_hip_too_shallow_for_its_plate_says_so():
    """Steep and a short seat: the hip's plumb depth is less than the common's height above plate."""
    seat = _data(replace(ASK, pitch=pitch('24'), seat_in=Fraction(1, 2)))['seat']

    assert seat['hip_backed']['seat'] == 'none: this stock is too shallow to reach the plate'
    assert mpf(seat['hip_backed']['least_depth_in']) > mpf('7.25')


@pytest.mark.parametrize(
    ('face', 'overhang', 'said'),
    [
        (Fraction(9), Fraction(12), 'none: the plumb cut is no longer than the face'),
        (Fraction(2), Fraction(6), 'none: it would run in past the outside of plate'),
    ],
)
def test_a_soffit_that_needs_no_cut_or_has_none(face, overhang, said):
    tail = _data(replace(ASK, tail_face_in=face, overhang_in=overhang))['tail']

    assert tail['soffit']['level_cut'] == said


def test_a_hip_roofs_ridge():
    """Plates 30 by 20 ft: 10 ft between center lines; commons of 1½ in add ¾ at each end."""
    ridge = _data(replace(ASK, plate_length_in=Fraction(360)))['ridge']

    assert ridge['hip_roof']['center_lines_in'] == '120.000000000'
    assert ridge['hip_roof']['sawn_between_commons_in'] == '121.500000000'
    assert _near(ridge['hip_roof']['sawn_hips_on_ridge_in'], 120 + mpf(3) / 2 * (1 + mp.sqrt(2)), NEAR)
    assert 'hip_roof' not in _data()['ridge']


def test_marks():
    assert _data()['seat']['common']['mark'].startswith('past a quarter')
    assert _data(replace(ASK, seat_in=Fraction(2)))['seat']['common']['mark'].startswith('not past a quarter')
    assert _data(replace(ASK, seat_in=Fraction(5)))['seat']['common']['mark'].startswith('past a third')


@pytest.mark.parametrize(
    ('ask', 'said'),
    [
        (
            lambda: roof_findings(replace(ASK, stock=stock('2x4'), seat_in=Fraction(7))),
            'seat: its notch is 3.88 in deep',
        ),
        (
            lambda: roof_findings(replace(ASK, overhang_in=Fraction(240))),
            'overhang: 240 in is more than the run',
        ),
        (lambda: corner_sides(ASK, pitch('2'), Fraction(120)), 'corner: the hip leans back'),
        (lambda: corner_sides(ASK, pitch('6'), Fraction(180)), 'corner: 180 degrees is no corner'),
        (lambda: corner_sides(replace(ASK, seat_in=Fraction(60)), pitch('6')), 'seat: its notch is'),
        (
            lambda: roof_findings(replace(ASK, plate_length_in=Fraction(239))),
            'plate length: 239 in is less than twice',
        ),
        (lambda: sided(ASK, 2), 'sides: 2 sides make no roof; allowed: 3 to 360'),
        (lambda: sided(replace(ASK, overhang_in=Fraction(-1)), 8), 'overhang: is below zero'),
    ],
)
def test_what_cannot_be_is_refused_in_one_line(ask, said):
    with pytest.raises(BookError) as refused:
        ask()

    assert error_line(refused.value).startswith(said)
    assert len(error_lines(refused.value)) == 1
    assert '\n' not in error_line(refused.value)
