"""The findings of one roof: their names, their values where worked out elsewhere, and what is refused."""

from dataclasses import replace
from fractions import Fraction

import pytest
from mpmath import mp, mpf
from near import NEAR

from tablegen.errors import BookError
from tablegen.figures import Measure
from tablegen.findings_corner import many_sides, two_pitches
from tablegen.findings_roof import RoofQuestion, roof_findings
from tablegen.lumber import stock
from tablegen.readings import Group, as_data
from tablegen.written.pitches import pitch

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
    # outwards the underside is lower: the backed hip's seat, 3.468558861, and the 0.75 that the heel stands outwards
    assert data['seat']['valley']['seat_in'] == '4.218558861'
    assert data['seat']['valley']['heel_in'] == data['seat']['hip_dropped']['heel_in']
    assert data['backing']['bevel_deg'] == '23.093469'
    assert data['shortening']['hip_level_in'] == '1.060660172'
    assert data['cheek']['jack']['figure_against_12_in'] == '9.984603532'
    assert data['cheek']['hip']['figure_against_12_in'] == '10.854408405'
    assert data['seat']['hip_dropped']['height_above_plate_in'] == '6.026528858'
    assert data['seat']['hip_backed']['height_above_plate_in'] == '6.380082249'
    assert (
        data['seat']['hip_by_17_over_12']['height_above_plate_in'] == '5.677795828'
    )  # the rule as it is said: 17/12, not √2
    assert data['tail']['hip_in'] == '18.761663039'
    assert data['area']['roof_per_plan'] == '1.201850425'
    assert data['gable_stud']['difference']['24_in'] == '16.000000000'


def test_limits_are_rounded_to_the_safe_side():
    """Depth over 4 sin θ is 3.2675 and over 3 sin θ 4.3567 in: 4 3/8 would pass the third. HAP · cos H is 5.4512."""
    seat = next(finding for finding in roof_findings(ASK) if finding.key == 'seat')
    read = {value.key: value for value in seat.values}
    least = next(value for value in read['hip_dropped'].values if value.key == 'least_depth_in')

    assert read['longest_seat_at_a_quarter_in'].text == '3 1/4 in'
    assert read['longest_seat_at_a_third_in'].text == '4 5/16 in'
    assert read['longest_seat_at_a_third_in'].data == '4.356707791'
    assert (least.text, least.data) == ('5 1/2 in', '5.451200458')


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
        yield from _leaves(value) if isinstance(value, Group) else [value]


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
        if isinstance(value, Group):
            yield from _lines(value, told)
        else:
            yield value.key, told


def test_every_reading_says_its_line():
    exempt = {'pitch', 'run_in'}
    for finding in _all():
        assert all(told for key, told in _lines(finding) if key not in exempt)


def test_a_cut_on_the_scale_has_no_setting_from_the_end():
    assert 'blade_from_end_deg' not in _data()['cheek']['jack']


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
    assert _near(ridge['hip_roof']['sawn_with_hips_on_it_in'], 120 + mpf(3) / 2 * (1 + mp.sqrt(2)), NEAR)
    assert 'hip_roof' not in _data()['ridge']


@pytest.mark.parametrize(
    ('changes', 'keys'),
    [
        ({}, ['deep_notch']),
        ({'pitch': pitch('2')}, ['low_slope']),
        ({'pitch': pitch('3'), 'overhang_in': Fraction(24)}, []),
        ({'pitch': pitch('3'), 'overhang_in': Fraction(25)}, ['long_tail']),
        ({'pitch': pitch('9'), 'seat_in': Fraction(1)}, ['steep', 'short_seat']),
        ({'pitch': pitch('4'), 'seat_in': Fraction(3, 2)}, ['short_seat_on_masonry']),
        ({'pitch': pitch('4'), 'seat_in': Fraction(3)}, []),
        (
            {'stock': stock('2x4'), 'seat_in': Fraction(2), 'pitch': pitch('4')},
            ['thin_tail', 'short_seat_on_masonry'],
        ),
        (
            {
                'stock': stock('2x4'),
                'seat_in': Fraction(2),
                'pitch': pitch('4'),
                'overhang_in': Fraction(0),
            },
            ['short_seat_on_masonry'],
        ),
    ],
)
def test_cautions_stand_where_the_numbers_call_for_them(changes, keys):
    caution = _data(replace(ASK, **changes))['caution']

    assert [key for key in caution if key != 'from'] == keys
    assert caution['from'] == 'Local code and a licensed designer decide.'


def test_a_tail_makes_a_deep_notch_one_that_is_not_at_an_end():
    with_tail, without = (
        _data(replace(ASK, overhang_in=Fraction(out)))['caution']['deep_notch'] for out in (12, 0)
    )

    assert 'not at the end of the member' in with_tail
    assert 'R802.7.1.1' in with_tail
    assert 'not at the end of the member' not in without
    assert 'later editions refer to R502.8.1' in without


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
            lambda: roof_findings(replace(ASK, overhang_in=Fraction(240))),
            'overhang: 240 in is more than the run',
        ),
        (lambda: two_pitches(ASK, pitch('2'), Fraction(120)), 'corner: the hip leans back'),
        (lambda: two_pitches(ASK, pitch('6'), Fraction(180)), 'corner: 180 degrees is no corner'),
        (lambda: two_pitches(replace(ASK, seat_in=Fraction(60)), pitch('6')), 'seat: its notch is'),
        (
            lambda: roof_findings(replace(ASK, plate_length_in=Fraction(239))),
            'plate length: 239 in is less than the',
        ),
        (lambda: many_sides(ASK, 2), 'sides: 2 sides make no roof; allowed: 3 to 360'),
        (lambda: many_sides(replace(ASK, overhang_in=Fraction(-1)), 8), 'overhang: is below zero'),
    ],
)
def test_what_cannot_be_is_refused_in_one_line(ask, said):
    with pytest.raises(BookError) as refused:
        ask()

    assert str(refused.value).startswith(said)
    assert len(refused.value.lines()) == 1
    assert '\n' not in str(refused.value)
