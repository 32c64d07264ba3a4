"""The findings of one roof: their names, their values where worked out elsewhere, and what is refused."""

from fractions import Fraction

import pytest
from mpmath import mp, mpf
from msgspec.structs import replace
from near import NEAR

from layouts.told.objects import as_data
from layouts.words.error import error_line, error_lines
from tablegen.errors import BookError
from tablegen.numbers.exact import exact
from tablegen.numbers.figure import Measure
from tablegen.roof.answer import answer, regular
from tablegen.roof.figures import given
from tablegen.roof.layout import pitch_found
from tablegen.roof.question import ManySided, RoofQuestion, TwoPitches
from tablegen.written.pitches import pitch
from tablegen.written.stocks import stock

ASK = RoofQuestion(pitch('8'), Fraction(120))


def _data(ask=ASK):
    return as_data(answer(ask))


def _octagon():
    return as_data(answer(replace(ASK, roof=ManySided(8))))['many_sided']


def _near(decimal, model, unit=1):
    """A decimal of nine places is the model's value rounded."""
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
        *('trim', 'ridge', 'gable_stud', 'area', 'caution'),
    ]


def test_eight_in_twelve():
    """Worked by hand from the right triangles: see each module's source."""
    data = _data()

    assert data['drop']['plumb']['inches'] == '0.353553391'
    assert data['seat']['valley']['heel_back']['inches'] == '0.750000000'
    # outwards the underside is lower: the backed hip's seat, 3.468558861, and the 0.75 that the heel stands outwards
    assert data['seat']['valley']['seat']['inches'] == '4.218558861'
    assert data['seat']['valley']['heel']['inches'] == data['seat']['hip_dropped']['heel']['inches']
    assert data['backing']['bevel']['degrees'] == '23.093469270'
    assert data['shortening']['hip_valley_at_ridge']['level']['inches'] == '1.060660172'
    assert data['cheek']['jack']['top_figure_on_12']['inches'] == '9.984603532'
    assert data['cheek']['hip_at_ridge']['top_figure_on_12']['inches'] == '10.854408405'
    assert data['seat']['hip_dropped']['height_above_plate']['inches'] == '6.026528858'
    assert data['seat']['hip_backed']['height_above_plate']['inches'] == '6.380082249'
    assert (
        data['seat']['hip_by_17_over_12']['height_above_plate']['inches'] == '5.677795828'
    )  # the rule as it is said: 17/12, not √2
    assert data['tail']['hip_valley']['inches'] == '18.761663039'
    assert data['area']['roof_per_plan'] == '1.201850425'
    assert data['gable_stud']['difference'][-1]['spacing']['inches'] == '24.000000000'
    assert data['gable_stud']['difference'][-1]['difference']['inches'] == '16.000000000'


def test_the_old_rule_says_whether_it_is_low_or_high():
    """2×8 at 8 in 12: 6.0265 dropped less 5.6778. A 2×10 hip: D/cos H is 2 √11/3 = 2.211 in more than a 2×8's, so is its top."""
    low = _data()['seat']['hip_by_17_over_12']
    high = _data(replace(ASK, hip_stock=stock('2x10')))['seat']['hip_by_17_over_12']

    assert _near(low['low_if_dropped']['inches'], mpf('6.026528858') - mpf('5.677795828'), 2 * NEAR)
    assert _near(high['high_if_dropped']['inches'], 2 * mp.sqrt(11) / 3 - mpf('0.348733030'), 2 * NEAR)
    assert 'low_if_dropped' not in high
    assert '−' not in str(high)


def test_a_length_is_told_twice_exact_and_rounded_once():
    """√208 is 14.4222051; six of them, not rounded before, 86.5332306: 86 8.53/16."""
    data = _data(replace(ASK, run_in=Fraction(72)))

    assert data['length']['common'] == {'inches': '86.533230611', 'text': '86 9/16'}
    assert _lengths_have_texts(data)


def _lengths_have_texts(told):
    if isinstance(told, list):
        return all(_lengths_have_texts(one) for one in told)
    if not isinstance(told, dict):
        return True
    own = 'inches' not in told or 'text' in told
    return own and all(_lengths_have_texts(value) for value in told.values())


@pytest.mark.parametrize(
    ('rise', 'off'),
    [(Fraction(49, 8), '+1/8'), (Fraction(47, 8), '−1/8'), (Fraction(6), '0'), (Fraction(385, 64), '0')],
)
def test_a_difference_has_its_sign(rise, off):
    assert pitch_found(exact(rise / 12), Measure()).off_by_per_foot.text == off


@pytest.mark.parametrize(
    ('inches', 'text'),
    [
        ('16', '16'),
        ('33/2', '16 1/2'),
        ('96/5', '19.2'),
        ('1/3', '1/3'),
        ('1/100', '0.01'),
        ('95/127', '0.748'),
    ],
)
def test_a_length_that_was_given_is_told_as_a_tape_has_it_or_in_decimals(inches, text):
    assert given(Fraction(inches)).text == text


def test_limits_are_rounded_to_the_safe_side():
    """Depth over 4 sin θ is 3.2675 and over 3 sin θ 4.3567 in: 4 3/8 would pass the third. HAP · cos H is 5.4512."""
    seat = _data()['seat']

    assert seat['common']['longest_seat_for_a_quarter']['text'] == '3 1/4'
    assert seat['common']['longest_seat_for_a_third']['text'] == '4 5/16'
    assert seat['common']['longest_seat_for_a_third']['inches'] == '4.356707791'
    assert seat['hip_dropped']['least_depth']['text'] == '5 1/2'
    assert seat['hip_dropped']['least_depth']['inches'] == '5.451200458'


def test_what_a_person_reads():
    """The same values to the smallest part and to hundredths of a degree."""
    found = regular(ASK)
    drop = found.drop

    assert [one.text for one in (drop.plumb, drop.square_to_edge, drop.hip_thickness)] == [
        '3/8',
        '5/16',
        '1 1/2',
    ]
    assert found.backing.bevel.text == '23.09°'


def test_feet_and_inches_are_followed():
    ask = replace(ASK, measure=Measure(8, 'feet-inches'), overhang_in=Fraction(30))

    assert regular(ask).tail.common_and_jack.text == '3′ 0″'


def _records(told, above=False):
    """Return every record that holds values, and whether it or one that it is in says its line."""
    lined = above or 'from' in told
    yield told, lined
    for value in told.values():
        for inner in value if isinstance(value, list) else [value]:
            if isinstance(inner, dict):
                yield from _records(inner, lined)


def _every_answer():
    return [_data(), as_data(answer(replace(ASK, roof=TwoPitches(pitch('12'))))), _octagon()]


def test_every_figure_says_its_line():
    for told in _every_answer():
        groups = {key: value for key, value in told.items() if key != 'caution'}
        assert all(lined for one, lined in _records(groups) if 'inches' in one or 'degrees' in one)


def test_a_cheek_past_the_saws_scale_names_the_hand_saw_first():
    """Blade 67.5° at an octagon: 22.5° from the end, and through 1 1/2 in it cuts 1.5 / cos 67.5°."""
    jack = _octagon()['cheek']['jack']
    plain = _data()['cheek']['jack']

    assert jack['within_saw_scale'] is False
    assert jack['end_blade_tilt']['degrees'] == '22.500000000'
    assert _near(jack['blade_reach']['inches'], mpf('1.5') / mp.cos(mp.radians(mpf('67.5'))), NEAR)
    assert 0 < jack['from'].index('hand saw') < jack['from'].index('wheel saw')
    assert 'end_blade_tilt' not in plain
    assert 'hand saw' not in plain['from']


def test_no_cheek_is_told_from_the_edge():
    """One datum: on top from square across, with its figure on 12; on the side the plumb angle and the blade's tilt."""

    found = [key for told in _every_answer() for one, _ in _records(told) for key in one]
    assert 'top_from_square' in found
    assert not [key for key in found if 'edge_deg' in key or key.endswith('from_edge')]


@pytest.mark.parametrize(('rise', 'held'), [('6', '12 & 10 3/4'), ('24', '12 & 5 3/8')])
def test_a_cheek_is_held_body_and_tongue(rise, held):
    """12 & 144/√(144 + r²), the line marked along the 12: 10.733 and 5.367."""
    assert _data(replace(ASK, pitch=pitch(rise)))['cheek']['jack']['top_held'] == held


def test_a_cheek_whose_figure_is_past_the_tongue_is_held_halved():
    """An octagon's hip tail: tan 67.5° · cos H · 12 = 24.67 is on no arm; 6 and 12.33 are."""
    tail = _octagon()['cheek']['hip_tail']
    model = 12 * mp.tan(mp.radians(mpf('67.5'))) / mp.sqrt(1 + (mpf(2) / 3 * mp.cos(mp.pi / 8)) ** 2)

    assert _near(tail['top_figure_on_12']['inches'], model, NEAR)
    assert tail['top_held'] == '6 & 12 5/16'


def test_a_hip_too_shallow_for_its_plate_says_so():
    """Steep and a short seat: the hip's plumb depth is less than the common's height above plate."""
    seat = _data(replace(ASK, pitch=pitch('24'), seat_in=Fraction(1, 2)))['seat']

    assert seat['hip_backed']['seat'] == 'too_shallow'
    assert mpf(seat['hip_backed']['least_depth']['inches']) > mpf('7.25')


@pytest.mark.parametrize(
    ('face', 'overhang', 'said'),
    [
        (Fraction(9), Fraction(12), 'no_longer_than_face'),
        (Fraction(2), Fraction(6), 'past_the_plate'),
    ],
)
def test_a_soffit_that_needs_no_cut_or_has_none(face, overhang, said):
    tail = _data(replace(ASK, tail_face_in=face, overhang_in=overhang))['tail']

    assert tail['soffit']['level_cut'] == said


def test_a_hip_roofs_ridge():
    """Plates 30 by 20 ft: 10 ft between center lines; commons of 1½ in add ¾ at each end."""
    ridge = _data(replace(ASK, plate_length_in=Fraction(360)))['ridge']

    assert ridge['hip_roof']['center_lines']['inches'] == '120.000000000'
    assert ridge['hip_roof']['sawn_between_commons']['inches'] == '121.500000000'
    assert _near(ridge['hip_roof']['sawn_hips_on_ridge']['inches'], 120 + mpf(3) / 2 * (1 + mp.sqrt(2)), NEAR)
    assert 'hip_roof' not in _data()['ridge']


def test_marks():
    assert _data()['seat']['common']['mark'] == 'past_a_quarter'
    assert _data(replace(ASK, seat_in=Fraction(2)))['seat']['common']['mark'] == 'within_a_quarter'
    assert _data(replace(ASK, seat_in=Fraction(5)))['seat']['common']['mark'] == 'past_a_third'


@pytest.mark.parametrize(
    ('ask', 'said'),
    [
        (
            lambda: answer(replace(ASK, stock=stock('2x4'), seat_in=Fraction(7))),
            'seat: its notch is 3.88 in deep',
        ),
        (
            lambda: answer(replace(ASK, overhang_in=Fraction(240))),
            'overhang: 240 in is more than the run',
        ),
        (
            lambda: answer(replace(ASK, roof=TwoPitches(pitch('2'), Fraction(120)))),
            'corner: the hip leans back',
        ),
        (
            lambda: answer(replace(ASK, roof=TwoPitches(pitch('6'), Fraction(180)))),
            'corner: 180 degrees is no corner',
        ),
        (
            lambda: answer(replace(ASK, seat_in=Fraction(60), roof=TwoPitches(pitch('6')))),
            'seat: its notch is',
        ),
        (
            lambda: answer(replace(ASK, plate_length_in=Fraction(239))),
            'plate_length: 239 in is less than twice',
        ),
        (lambda: answer(replace(ASK, roof=ManySided(2))), 'sides: 2 sides make no roof; allowed: 3 to 360'),
        (
            lambda: answer(replace(ASK, overhang_in=Fraction(-1), roof=ManySided(8))),
            'overhang: is below zero',
        ),
    ],
)
def test_what_cannot_be_is_refused_in_one_line(ask, said):
    with pytest.raises(BookError) as refused:
        ask()

    assert error_line(refused.value).startswith(said)
    assert len(error_lines(refused.value)) == 1
    assert '\n' not in error_line(refused.value)
