"""find: cuts and deductions after the length, corners of two pitches, many sides; digit for digit, and refusals."""

from __future__ import annotations

import json
import re
from math import atan, cos, degrees, pi, radians, sqrt, tan

import pytest
from asking import ask

OBJECTS = (
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
        'trim',
    ),
    *('ridge', 'gable_stud', 'area'),
)
RATIOS = {'notch_share_of_depth', 'roof_per_plan'}
COUNTS = {'sides', 'number'}


def found(*words: str) -> dict:
    """Return the object that find prints."""
    status, told, remarks = ask('find', *words, '--format', 'json')
    assert (status, remarks) == (0, '')
    return json.loads(told)


def text_of(*words: str) -> str:
    status, told, remarks = ask('find', *words)
    assert (status, remarks) == (0, '')
    return told


def leaves(told: dict) -> list[tuple[str, object]]:
    """Return every value that is no object under its key, also those in lists."""
    found = []
    for key, value in told.items():
        inner = value if isinstance(value, list) else [value]
        found += [leaf for one in inner for leaf in (leaves(one) if isinstance(one, dict) else [(key, one)])]
    return found


def test_eight_in_twelve():
    """Source: D = 7¼, t = 1½, b = 3½, m = 8/12 in the relations of the bird's mouth and the drop, by hand."""
    told = found('8', '10 ft')
    slope, hip = 8 / 12, 8 / sqrt(288)
    height = 7.25 * sqrt(208) / 12 - 3.5 * slope
    drop = 0.75 * hip

    assert set(OBJECTS) < set(told)
    assert told['drop']['plumb']['inches'] == f'{drop:.9f}'[:11] == '0.353553391'
    assert told['backing']['bevel']['degrees'] == f'{degrees(atan(8 / sqrt(352))):.9f}'
    assert told['shortening']['hip_valley_at_ridge']['level']['inches'] == '1.060660172'
    assert told['cheek']['jack']['top_figure_on_12']['inches'] == f'{144 / sqrt(208):.9f}' == '9.984603532'
    assert told['cheek']['hip_at_ridge']['top_figure_on_12']['inches'].startswith('10.854')
    assert told['seat']['common']['stock'] == '2×8'
    assert (
        told['seat']['hip_dropped']['height_above_plate']['inches'] == f'{height - drop:.9f}' == '6.026528858'
    )
    assert told['seat']['hip_backed']['height_above_plate']['inches'] == f'{height:.9f}' == '6.380082249'
    assert told['tail']['common_and_jack']['inches'] == f'{sqrt(208):.9f}'
    assert told['trim']['in_the_roof_plane']['miter']['degrees'] == f'{degrees(atan(12 / sqrt(208))):.9f}'


def test_hips_and_valleys_of_their_own_stock():
    """2×8 rafters on 3 1/2 at 8 in 12 stand 6.3801 in; a 2×10 hip's seat is (D/cos H − HAP + drop)/tan H, by hand."""
    words = ('8', '10 ft', '--stock', '2x8', '--hip-stock', '2x10', '--seat', '3 1/2')
    told, text = found(*words), text_of(*words)
    hip, cos_h = 8 / sqrt(288), 1 / sqrt(1 + 64 / 288)
    height, drop = 7.25 * sqrt(208) / 12 - 3.5 * 8 / 12, 0.75 * hip

    assert told['seat']['hip_dropped']['stock'] == '2×10'
    assert told['seat']['hip_dropped']['seat']['inches'] == f'{(9.25 / cos_h - height + drop) / hip:.9f}'
    assert told['seat']['hip_backed']['heel']['inches'] == f'{9.25 / cos_h - height:.9f}'
    assert told['seat']['hip_dropped']['plumb_depth']['inches'] == f'{9.25 / cos_h:.9f}'
    assert told['seat']['valley']['stock'] == '2×8'
    assert (
        told['seat']['valley']['seat']['inches']
        == f'{(7.25 / cos_h - height + 0.75 * hip) / hip:.9f}'
        == '4.218558861'
    )
    assert (
        told['seat']['valley']['heel']['inches']
        == f'{7.25 / cos_h - height + 0.75 * hip:.9f}'
        == '1.988647718'
    )
    assert 'hip dropped 2×10 8 15/16 4 3/16 6 10 1/4 3 13/16 5 7/16' in ' '.join(text.split())
    assert 'valley 2×8 4 3/16 2 6 3/8 8 1 13/16 5 7/16' in ' '.join(text.split())
    assert 'heel stands 3/4 in outwards of the inside corner' in ' '.join(text.split())


def test_jacks_are_listed_each_rounded_once():
    """8 in 12 at 16: 16 √208/12 a space, less 1.06 level at the hip, 3/4 level more to the long point; up to the ridge."""
    told = found('8', '10 ft', '--spacing', '16 in')['jack']
    stretch = sqrt(208) / 12

    assert [row['number'] for row in told['hip_jacks']] == [1, 2, 3, 4, 5, 6, 7]
    for row in told['hip_jacks']:
        level = 16 * row['number']
        assert row['line_length']['inches'] == f'{level * stretch:.9f}'
        assert row['long_point']['inches'] == f'{(level - 0.75 * sqrt(2) + 0.75) * stretch:.9f}'
        assert row['short_point']['inches'] == f'{(level - 0.75 * sqrt(2) - 0.75) * stretch:.9f}'
    for row in told['valley_jacks']:
        level = 120 - 16 * row['number']
        assert row['line_length']['inches'] == f'{level * stretch:.9f}'
        assert row['long_point']['inches'] == f'{(level - 0.75 - 0.75 * sqrt(2) + 0.75) * stretch:.9f}'
    assert (
        told['hip_jacks'][1]['long_point']['text'] == '38 1/16'
    )  # 38.085: added printed figures give 38 1/8


@pytest.mark.parametrize(
    'words',
    [
        ('8', '10 ft'),
        ('8', '10 ft', '--with', '12'),
        ('8', '10 ft', '--sides', '8'),
        ('8', '10 ft', '--shed', 'ledger'),
    ],
)
def test_every_number_stands_under_its_unit_or_is_a_ratio(words):
    for key, value in leaves(found(*words)):
        decimal = isinstance(value, str) and re.fullmatch(r'-?\d+\.\d{9}', value) is not None
        assert decimal == (key in {'inches', 'degrees', *RATIOS}), key
        assert (type(value) is int) == (key in COUNTS), key


def test_every_object_says_from_which_line():
    told = found('8', '10 ft')
    assert all(told[name]['from'] for name in OBJECTS if name != 'seat')
    assert all(told['seat'][name]['from'] for name in told['seat'])
    assert all(told['cheek'][name]['from'] for name in told['cheek'] if name != 'from')


def test_stock_seat_and_overhang_are_those_asked_for():
    told = found('6', '10 ft', '--stock', '2x12', '--seat', '5 1/2 in', '--overhang', '2 ft')

    assert told['seat']['common']['stock'] == '2×12'
    assert told['seat']['hip_dropped']['stock'] == '2×12'
    assert told['seat']['common']['heel']['inches'] == '2.750000000'
    assert told['tail']['fall']['inches'] == '12.000000000'


def test_thicknesses_are_those_asked_for():
    told = found(
        '6', '4 ft', '--ridge-thickness', '3/4', '--hip-thickness', '3', '--rafter-thickness', '2 1/2'
    )

    assert told['shortening']['common_at_ridge']['level']['inches'] == '0.375000000'
    assert told['shortening']['jack_at_hip']['level']['inches'] == f'{1.5 * sqrt(2):.9f}'
    assert told['shortening']['jack_at_valley']['level']['inches'] == f'{1.5 * sqrt(2):.9f}'
    assert told['cheek']['jack']['long_to_short_point']['level']['inches'] == '2.500000000'
    assert told['shortening']['end_common']['clip']['inches'] == f'{(2.5 - 0.75) / 2:.9f}'


def test_a_valley_may_have_a_thickness_of_its_own():
    told = found('6', '4 ft', '--hip-thickness', '3', '--valley-thickness', '1 1/2')

    assert told['shortening']['jack_at_hip']['level']['inches'] == f'{1.5 * sqrt(2):.9f}'
    assert told['shortening']['jack_at_valley']['level']['inches'] == f'{0.75 * sqrt(2):.9f}'
    assert told['seat']['valley']['heel_back']['inches'] == '0.750000000'


def test_the_ridge_of_a_hip_roof():
    """Source: 24 ft of plates less 20 ft of width."""
    told = found('8', '10 ft', '--plate-length', '24 ft')['ridge']['hip_roof']
    assert told['center_lines']['inches'] == '48.000000000'


def test_a_short_run_has_a_tail_no_longer_than_itself():
    assert found('8', '4 in')['tail']['overhang']['inches'] == '4.000000000'


def test_two_pitches():
    """Source: in plan the hip leaves eave A at atan(mB/mA)."""
    told = found('8', '10 ft', '--with', '12')
    corner = told['two_pitches']
    along = atan(12 / 8)

    difference = corner['side_a']['jack']['difference'][1]
    assert corner['hip_valley']['plan_from_eave_a']['degrees'] == f'{degrees(along):.9f}'
    assert corner['side_b']['length']['run']['inches'] == '80.000000000'
    assert difference['difference']['inches'] == f'{16 * tan(along) * sqrt(208) / 12:.9f}'
    assert corner['side_b']['tail']['overhang']['inches'] == '8.000000000'
    assert not set(OBJECTS) & set(told)


def test_a_corner_that_is_not_square():
    corner = found('8', '10 ft', '--corner', '135 deg')['two_pitches']
    assert corner['hip_valley']['plan_from_eave_a']['degrees'] == '67.500000000'


def test_many_sides():
    """Source: side = 2 · apothem · tan 22.5°, hip's run = apothem / cos 22.5°."""
    roof = found('8', '10 ft', '--sides', '8')['many_sided']
    run = 120 / cos(radians(22.5))

    assert roof['plan']['sides'] == 8
    assert roof['plan']['side']['inches'] == f'{240 * tan(pi / 8):.9f}'
    assert roof['length']['hip']['inches'] == f'{sqrt(run**2 + 80**2):.9f}'


def test_text_is_short_unless_more_is_asked_for():
    short, whole = text_of('8', '10 ft'), text_of('8', '10 ft', '--all')

    assert len(short.splitlines()) < 80 < 300 < len(whole.splitlines())
    assert 'hip dropped 2×8 4 3/16 2 6' in ' '.join(short.split())
    assert 'top figure on 12 10 9.984603532 in' in ' '.join(whole.split())


def test_groups_are_picked_by_name():
    told = text_of('8', '10 ft', '--show', 'drop, backing')

    assert [line for line in told.splitlines() if line[:1].isupper()][:2] == ['Backing', 'Drop']
    assert '\nSeat' not in told
    assert set(found('8', '10 ft', '--show', 'drop, backing')) & set(OBJECTS) == {'drop', 'backing'}


def test_cautions_stand_where_they_are_called_for():
    assert 'Caution, roof: Under 3 in 12' in text_of('2', '10 ft')
    assert 'Caution' not in text_of('3', '10 ft', '--shed', 'wall')
    assert 'hips backed, valleys: The notch takes more than a third' in ' '.join(
        text_of('12', '10 ft', '--stock', '2x4').split()
    )
    assert 'overhangs by more than 24 in' in text_of('6', '10 ft', '--overhang', '30', '--sides', '8')
    assert 'R802.3; 2018 and later R802.4.3)' in ' '.join(text_of('6', '10 ft').split())


def test_a_corner_tells_the_cautions_of_both_sides():
    told = ' '.join(text_of('6', '10 ft', '--with', '2').split())
    names = {(one['name'], of) for one in found('6', '10 ft', '--with', '12')['caution'] for of in one['of']}

    assert 'Caution, side B: Under 3 in 12' in told
    assert ('steep', 'side_b') in names


def test_a_seat_longer_than_the_stock_is_deep_is_answered_with_its_notch():
    """Source: 8 in on a 2×8 at 3 in 12: 8 sin θ = 1.940 deep, 5.310 left, a third passed by none."""
    told = found('3', '10 ft', '--seat', '8')['seat']['common']

    assert told['notch_depth']['inches'] == f'{8 * 3 / sqrt(153):.9f}'
    assert told['stock_left']['inches'] == f'{7.25 - 8 * 3 / sqrt(153):.9f}'
    assert told['mark'] == 'past_a_quarter'


def test_a_plate_length_gives_the_ridge_wherever_it_is_told():
    """Source: 40 ft of plates less twice 120 in; with ends of 12 in 12, less twice 80 in; half a common at each end."""
    plain = ' '.join(text_of('8', '10 ft', '--plate-length', '40 ft').split())
    ends = ' '.join(text_of('8', '10 ft', '--with', '12', '--plate-length', '40 ft').split())

    assert 'where the hips meet it 240 sawn, hips between commons 241 1/2' in plain
    assert 'where the hips meet it 320 sawn, hips between commons 321 1/2' in ends


def test_the_sides_letters_are_capitals():
    told = text_of('8', '10 ft', '--with', '12', '--all')

    assert 'eave A' in told
    assert not [
        f'{word} {side}'
        for word in ('eave', 'side', 'plate', 'overhang')
        for side in 'ab'
        if f'{word} {side} ' in told
    ]


@pytest.mark.parametrize(
    'words',
    [
        ('8', '10 ft', '--all'),
        ('26.565 deg', '1.4 m', '--with', '7 1/2', '--all', '--lengths', 'feet-inches', '--nearest', '1/64'),
        ('8', '1000 ft', '--with', '12', '--lengths=feet-inches', '--nearest', '1/64', '--spacing', '19.2'),
        ('26.565 deg', '1000 ft', '--sides', '12', '--lengths', 'feet-inches'),
        ('23 1/2', '10 ft', '--sides', '5', '--all'),
        ('23 1/2', '100 ft', '--lengths', 'feet-inches', '--hip-stock', '2x12', '--plate-length', '3000 ft'),
        ('22 1/2', '33 ft 11 1/2', '--shed', 'ledger', '--all'),
        ('22 1/2', '33 ft 11 1/2', '--shed', 'wall', '--nearest', '1/64'),
    ],
)
def test_text_fits_a_terminal(words):
    assert max(map(len, text_of(*words).splitlines())) <= 80
