"""find: cuts and deductions after the length, corners of two pitches, many sides; digit for digit, and refusals."""

from __future__ import annotations

import json
from math import atan, cos, degrees, pi, radians, sqrt, tan

import pytest
from asking import ask

HELP = 'see rafterbook find --help'
OBJECTS = (
    *(
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
    ),
)
UNITS = ('_in', '_deg')
WITHOUT_UNIT = {'within_saw_scale', 'notch_share_of_depth', 'roof_per_plan', 'sides'}


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
    return [
        leaf
        for key, value in told.items()
        for leaf in (leaves(value) if isinstance(value, dict) else [(key, value)])
    ]


def test_eight_in_twelve():
    """Source: D = 7¼, t = 1½, b = 3½, m = 8/12 in the relations of the bird's mouth and the drop, by hand."""
    told = found('8', '10 ft')
    slope, hip = 8 / 12, 8 / sqrt(288)
    height = 7.25 * sqrt(208) / 12 - 3.5 * slope
    drop = 0.75 * hip

    assert set(OBJECTS) < set(told)
    assert told['drop']['plumb_in'] == f'{drop:.9f}'[:11] == '0.353553391'
    assert told['backing']['bevel_deg'] == '23.093469'
    assert told['shortening']['hip_level_in'] == '1.060660172'
    assert told['cheek']['jack']['figure_against_12_in'] == f'{144 / sqrt(208):.9f}' == '9.984603532'
    assert told['cheek']['hip']['figure_against_12_in'].startswith('10.854')
    assert told['seat']['stock'] == '2×8'
    assert told['seat']['hip_dropped']['height_above_plate_in'] == f'{height - drop:.9f}' == '6.026528858'
    assert told['seat']['hip_backed']['height_above_plate_in'] == f'{height:.9f}' == '6.380082249'
    assert told['tail']['common_in'] == f'{sqrt(208):.9f}'
    assert told['trim']['in_the_roof_plane']['miter_deg'] == f'{degrees(atan(12 / sqrt(208))):.6f}'


@pytest.mark.parametrize(
    'words', [('8', '10 ft'), ('8', '10 ft', '--with', '12'), ('8', '10 ft', '--sides', '8')]
)
def test_every_key_is_plain_and_names_its_unit(words):
    for group in found(*words).values():
        for key, value in leaves(group) if isinstance(group, dict) else []:
            number = not isinstance(value, bool) and str(value).replace('.', '').replace('-', '').isdigit()
            usual = key in ('inches', 'text') or key in WITHOUT_UNIT or not number
            old = key.endswith(('_cut', '_from_square', 'bevel'))  # all in an object named 'degrees'
            assert usual or key.endswith(UNITS) or old


def test_every_object_says_from_which_line():
    told = found('8', '10 ft')
    assert all(told[name]['from'] for name in OBJECTS if name not in ('cheek', 'trim'))
    assert all(told['cheek'][name]['from'] for name in told['cheek'])


def test_stock_seat_and_overhang_are_those_asked_for():
    told = found('6', '10 ft', '--stock', '2x12', '--seat', '5 1/2 in', '--overhang', '2 ft')

    assert told['seat']['stock'] == '2×12'
    assert told['seat']['heel_in'] == '2.750000000'
    assert told['tail']['fall_in'] == '12.000000000'


def test_thicknesses_are_those_asked_for():
    told = found(
        '6', '4 ft', '--ridge-thickness', '3/4', '--hip-thickness', '3', '--rafter-thickness', '2 1/2'
    )

    assert told['shortening']['common_level_in'] == '0.375000000'
    assert told['shortening']['jack_level_in'] == f'{1.5 * sqrt(2):.9f}'
    assert told['shortening']['jack_long_to_short_point_level_in'] == '2.500000000'


def test_the_ridge_of_a_hip_roof():
    """Source: 24 ft of plates less 20 ft of width."""
    told = found('8', '10 ft', '--plate-length', '24 ft')['ridge']['hip_roof']
    assert told['center_lines_in'] == '48.000000000'


def test_a_short_run_has_a_tail_no_longer_than_itself():
    assert found('8', '4 in')['tail']['overhang_in'] == '4.000000000'


def test_two_pitches():
    """Source: in plan the hip leaves eave A at atan(mB/mA)."""
    told = found('8', '10 ft', '--with', '12')
    corner = told['two_pitches']
    along = atan(12 / 8)

    assert corner['hip']['plan_from_eave_a_deg'] == f'{degrees(along):.6f}'
    assert corner['side_b']['run_in'] == '80.000000000'
    assert corner['side_a']['jack_difference']['16_in'] == f'{16 * tan(along) * sqrt(208) / 12:.9f}'
    assert corner['eaves']['overhang_b_in'] == '8.000000000'
    assert set(told['lengths']) == {'rise', 'common'}
    assert 'hip_plumb_cut' not in told['degrees']
    assert not set(OBJECTS) - {'caution'} & set(told)


def test_a_corner_that_is_not_square():
    corner = found('8', '10 ft', '--corner', '135 deg')['two_pitches']
    assert corner['hip']['plan_from_eave_a_deg'] == '67.500000'


def test_many_sides():
    """Source: side = 2 · apothem · tan 22.5°, hip's run = apothem / cos 22.5°."""
    roof = found('8', '10 ft', '--sides', '8')['many_sided']
    run = 120 / cos(radians(22.5))

    assert roof['sides'] == 8
    assert roof['side_in'] == f'{240 * tan(pi / 8):.9f}'
    assert roof['hip']['length_in'] == f'{sqrt(run**2 + 80**2):.9f}'


def test_text_is_short_unless_more_is_asked_for():
    short, whole = text_of('8', '10 ft'), text_of('8', '10 ft', '--all')

    assert len(short.splitlines()) < 60 < 100 < len(whole.splitlines())
    assert 'hip, dropped 4 3/16 2 6' in ' '.join(short.split())
    assert 'figure against 12 10 9.984603532 in' in ' '.join(whole.split())


def test_groups_are_picked_by_name():
    told = text_of('8', '10 ft', '--show', 'drop, backing')

    assert [line for line in told.splitlines() if line[:1].isupper()][:2] == ['Backing', 'Drop']
    assert '\nSeat' not in told


def test_cautions_stand_where_they_are_called_for():
    assert 'Caution: Under 3 in 12' in text_of('2', '10 ft')
    assert 'Caution' not in text_of('6', '10 ft')
    assert 'Caution: The notch takes more than a third' in text_of('12', '10 ft', '--stock', '2x4')
    assert 'overhangs by more than 24 in' in text_of('6', '10 ft', '--overhang', '30', '--sides', '8')


@pytest.mark.parametrize(
    'words',
    [
        ('8', '10 ft', '--all'),
        ('26.565 deg', '1.4 m', '--with', '7 1/2', '--all', '--feet-inches', '--nearest', '1/64'),
        ('8', '1000 ft', '--with', '12', '--feet-inches', '--nearest', '1/64', '--spacing', '19.2'),
        ('26.565 deg', '1000 ft', '--sides', '12', '--feet-inches'),
        ('23 1/2', '10 ft', '--sides', '5', '--all'),
    ],
)
def test_text_fits_a_terminal(words):
    assert max(map(len, text_of(*words).splitlines())) <= 80


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (
            ['3', '--with', '24', '--corner', '150'],
            '--corner: the hip leans back: the flatter plane never rises to meet the steeper one; '
            f'allowed: pitches closer to each other, or a corner nearer to square; next: {HELP}',
        ),
        (
            ['8', '--seat', '14'],
            '--seat: its notch is 7.77 in deep and the stock 7 1/4 in; '
            f'allowed: a seat of 6.53 in leaves half of the stock; next: {HELP}',
        ),
        (['8', '--seat', '0'], f'--seat: a seat needs a length; allowed: above 0; next: {HELP}'),
        (
            ['8', '--overhang', '121'],
            '--overhang: 121 in is more than the run, 120 in: such a tail cannot be; '
            f'allowed: from 0 up to the run; next: {HELP}',
        ),
        (
            ['8', '--stock', '2x9'],
            f"--stock: '2x9' is no size of rafter stock; allowed: 2×4, 2×6, 2×8, 2×10, 2×12; next: {HELP}",
        ),
        (
            ['8', '--plate-length', '10 ft'],
            '--plate-length: 120 in is less than the width, twice the run: the hips meet before it; '
            f'allowed: 240 in or more; next: {HELP}',
        ),
        (['8', '--sides', '2'], f'--sides: 2 sides make no roof; allowed: 3 to 360; next: {HELP}'),
        (
            ['8', '--sides', 'x'],
            f"--sides: 'x' is no number of sides; allowed: a whole number such as 5, 6, 8, 12; next: {HELP}",
        ),
        (
            ['8', '--corner', '180'],
            f"--corner: '180' is no such angle; allowed: degrees above 0 and below 180; next: {HELP}",
        ),
        (
            ['8', '--with', '6', '--sides', '8'],
            '--sides: a many-sided roof has one pitch and its own corners; next: leave it or --with out',
        ),
        (
            ['8', '--show', 'drop', '--sides', '8'],
            '--show: picks from a square corner of one pitch; next: leave it out, or give --all',
        ),
        (
            ['8', '--show', 'seet'],
            "--show: 'seet' is unknown; allowed: shortening, seat, tail, cheek, backing, drop, trim, ridge, "
            'gable-stud, area; next: did you mean seat?',
        ),
    ],
)
def test_what_cannot_be_is_refused_in_a_line(words, line):
    assert ask('find', words[0], '10 ft', *words[1:]) == (2, '', f'rafterbook: {line}\n')
