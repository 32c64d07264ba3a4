"""find: what it prints, digit for digit, and what it refuses."""

from __future__ import annotations

import json
from decimal import Decimal

import mpmath
import pytest
from asking import ask

PITCH = 'a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to 24 in 12'
LENGTH = 'a length such as 4 ft, 4\' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m or 1400 mm'
HELP = 'see rafterbook find --help'

SIX_IN_TWELVE = """\
6 in 12, run 4 ft, to the nearest 1/16 in

Lengths                                      measure   exact in   rounding
  common, plate line to ridge center        53 11/16  53.665631  +0.021869
  hip/valley, plate corner to ridge center  72        72.000000       none
  rise, plumb, plate line to ridge center   24        24.000000       none
  jack difference, 12 in on center          13 7/16   13.416408  +0.021092
  jack difference, 16 in on center          17 7/8    17.888544  −0.013544
  jack difference, 19.2 in on center        21 7/16   21.466253  −0.028753
  jack difference, 24 in on center          26 13/16  26.832816  −0.020316
  hip drop, plumb, hip 1 1/2 in thick          1/4     0.265165  −0.015165

Cuts, from square across the side  degrees  body & tongue, line
  common, plumb cut                26.565°  12 & 6, along the tongue
  common, level cut                63.435°  12 & 6, along the body
  hip/valley, plumb cut            19.471°  17 & 6, along the tongue
  hip/valley, level cut            70.529°  17 & 6, along the body
Cuts, from square across the top face
  jack, cheek                      48.190°  12 & 10 3/4, along the 12
  hip, cheek, top not backed       46.686°  12 & 11 5/16, along the 12
Bevel, from the square top, seen from the end
  hip, backing of each side        18.435°

Off, center line of what is met to its face      level  along the edge
  common at a ridge                               3/4            13/16
  hip/valley at a ridge, ridge over one side    1 1/16         1 1/8
  hip between commons                           1 1/16         1 1/8
  jack at a hip/valley, on its own center line  1 1/16         1 3/16

Bird's mouth, 2×8  seat level  heel plumb  height above plate
  common                3 1/2      1 3/4               6 3/8
  hip, dropped          4 1/2      1 5/8               6 1/16
  hip, backed           3 3/4      1 5/16              6 3/8
  valley                4 1/2      1 5/8               6 3/8
Tail, 12 in out from the plate, level   along the edge
  common, plate line to tail end               13 7/16
  hip/valley, plate corner to tail end         18

Lengths run along the member, before anything is taken off for the thickness of
ridge or hip. Rounding is the measure less the exact length, in inches; a half
goes up. Square: its figures on body & tongue at the board's top edge, the line
along the arm named: plumb along the tongue, level along the body; both halved
where the rise is over the tongue's 16 in. Geometry is not strength: local code
and a licensed designer decide.

More: --all, or --show with one or more of shortening, seat, tail, cheek,
backing, drop, trim, ridge, gable-stud, area.
"""

SIX_IN_TWELVE_OBJECT = {
    'pitch': '6 in 12',
    'rise_per_foot': '6.000000000',
    'run': {'inches': '48.000000000', 'text': '4 ft'},
    'nearest': '1/16',
    'lengths': {
        'rise': {'inches': '24.000000000', 'text': '24'},
        'common': {'inches': '53.665631460', 'text': '53 11/16'},
        'hip_valley': {'inches': '72.000000000', 'text': '72'},
        'jack_difference': {
            '12 in': {'inches': '13.416407865', 'text': '13 7/16'},
            '16 in': {'inches': '17.888543820', 'text': '17 7/8'},
            '19.2 in': {'inches': '21.466252584', 'text': '21 7/16'},
            '24 in': {'inches': '26.832815730', 'text': '26 13/16'},
        },
    },
    'degrees': {
        'plumb_cut': '26.565051177',
        'level_cut': '63.434948823',
        'hip_plumb_cut': '19.471220634',
        'hip_level_cut': '70.528779366',
        'jack_cheek_from_square': '48.189685104',
        'hip_cheek_from_square': '46.686143342',
        'backing_bevel': '18.434948823',
    },
}


def found(*words: str) -> dict:
    """Return the object that find prints."""
    status, told, remarks = ask('find', *words, '--format', 'json')
    assert (status, remarks) == (0, '')
    return json.loads(told)


def line_of(name: str, *words: str) -> str:
    """Return what find prints beside a name, blanks put together."""
    status, told, remarks = ask('find', *words)
    assert (status, remarks) == (0, '')
    (line,) = [line for line in told.splitlines() if line.strip().startswith(name)]
    return ' '.join(line.replace(name, '').split())


def test_text():
    assert ask('find', '6', '4 ft') == (0, SIX_IN_TWELVE, '')


def test_json():
    told = found('6', '4 ft')
    assert {name: told[name] for name in SIX_IN_TWELVE_OBJECT} == SIX_IN_TWELVE_OBJECT


@pytest.mark.parametrize(('run', 'common'), [('1 ft', '13 3/8'), ('4 ft', '53 5/8')])
def test_to_the_nearest_eighth_as_the_trade_has_it(run, common):
    """Source: common practice, no source."""
    assert found('6', run, '--nearest', '1/8')['lengths']['common']['text'] == common


@pytest.mark.parametrize('rise', ['1/2', '3', '7.5', '12', '17', '24'])
@pytest.mark.parametrize('run', ['1/16', '55 1/2', '288'])
def test_decimals_are_those_of_fifty_digits(rise, run):
    """Source: the relations of the right triangles, worked by mpmath, a general library, at 50 digits."""
    with mpmath.workdps(50):
        r = mpmath.mpf({'1/2': '0.5'}.get(rise, rise))
        feet = mpmath.mpf({'1/16': '0.0625', '55 1/2': '55.5'}.get(run, run)) / 12
        common, hip = mpmath.sqrt(144 + r**2), mpmath.sqrt(288 + r**2)
        lengths = {'rise': r * feet, 'common': common * feet, 'hip_valley': hip * feet}
        tangents = {
            'plumb_cut': r / 12,
            'level_cut': 12 / r,
            'hip_plumb_cut': r / mpmath.sqrt(288),
            'hip_level_cut': mpmath.sqrt(288) / r,
            'jack_cheek_from_square': common / 12,
            'hip_cheek_from_square': hip / mpmath.sqrt(288),
            'backing_bevel': r / hip,
        }
        told = found(f'{rise} in 12', run)

        half = Decimal(10) ** -9 / 2
        for name, length in lengths.items():
            wanted = Decimal(mpmath.nstr(length, 40))
            assert abs(Decimal(told['lengths'][name]['inches']) - wanted) <= half
        for name, tangent in tangents.items():
            wanted = Decimal(mpmath.nstr(mpmath.degrees(mpmath.atan(tangent)), 40))
            assert abs(Decimal(told['degrees'][name]) - wanted) <= half


def test_spacings_asked_for_replace_the_usual_ones():
    told = found('6', '4 ft', '--spacing', '16 in', '--spacing', '1 1/2 ft')
    assert list(told['lengths']['jack_difference']) == ['16 in', '18 in']


def test_the_drop_is_for_the_thickness_asked_for():
    """Source: half of 3 in, times 12/√288, by hand: 1.060660172."""
    told = found('12', '4 ft', '--hip-thickness', '3 in')['drop']
    assert told['thickness_in'] == '3.000000000'
    assert told['plumb_in'] == '1.060660172'


def test_feet_and_inches():
    assert found('6', '4 ft', '--feet-inches')['lengths']['common']['text'] == '4′ 5 11/16″'
    assert line_of('common, plate line to ridge center', '6', '4 ft', '--feet-inches').startswith(
        '4′ 5 11/16″ '
    )


def test_a_pitch_in_degrees_tells_its_rise():
    assert ask('find', '30 deg', '4 ft')[1].startswith('30° (6.928203 in 12), run 4 ft, ')
    assert found('30 deg', '4 ft')['rise_per_foot'] == '6.928203230'


def test_a_run_that_no_tape_shows_is_told_in_decimals():
    """Source: 1 in is 25.4 mm exactly, so 1.4 m is 7000/127 in."""
    assert found('6', '1.4 m')['run'] == {'inches': '55.118110236', 'text': '55.118110236 in'}
    assert found('6', '1524 mm')['run'] == {'inches': '60.000000000', 'text': '5 ft'}


@pytest.mark.parametrize(
    ('pitch', 'held'),
    [
        ('8', ['12 & 8', '17 & 8']),
        ('16', ['12 & 16', '17 & 16']),
        ('17', ['6 & 8 1/2', '8 1/2 & 8 1/2']),
        ('20', ['6 & 10', '8 1/2 & 10']),
    ],
)
def test_the_square_is_held_within_its_arms(pitch, held):
    """The body is level and told first, the tongue plumb; where the rise is past its 16 in both are halved."""
    for member, figures in zip(('common', 'hip/valley'), held, strict=True):
        for name, arm in (('plumb', 'tongue'), ('level', 'body')):
            line = line_of(f'{member}, {name} cut', pitch, '4 ft')
            assert line.partition('° ')[2] == f'{figures}, along the {arm}'


def test_steep_is_let_pass_when_asked_for():
    assert found('36', '4 ft', '--steep')['pitch'] == '36 in 12'


def test_text_fits_a_terminal():
    for words in (
        ['6', '4 ft'],
        ['7 1/2', '23 ft 11 in', '--feet-inches'],
        ['26.565 deg', '1.4 m', '--nearest', '1/64'],
    ):
        assert max(map(len, ask('find', *words)[1].splitlines())) <= 80


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (['', '4 ft'], f"PITCH: '' is no pitch; allowed: {PITCH}; next: {HELP}"),
        (['0', '4 ft'], f"PITCH: '0' is flat: a rafter needs a rise; allowed: {PITCH}; next: {HELP}"),
        (['-3', '4 ft'], f"PITCH: '−3' is below zero; allowed: {PITCH}; next: {HELP}"),
        (['-3/12', '4 ft'], f"PITCH: '−3/12' is below zero; allowed: {PITCH}; next: {HELP}"),
        (['--', '-3', '4 ft'], f"PITCH: '−3' is below zero; allowed: {PITCH}; next: {HELP}"),
        (
            ['91 deg', '4 ft'],
            f"PITCH: '91 deg' is no slope; allowed: above 0 and below 90 degrees; next: {HELP}",
        ),
        (
            ['25', '4 ft'],
            f"PITCH: '25' is over 24 in 12; allowed: {PITCH}; "
            'next: if it is meant, say so: steep = true in the settings, --steep on the command line',
        ),
        (
            ['121', '4 ft', '--steep'],
            f"PITCH: '121' is steeper than any rafter; allowed: up to 120 in 12; next: {HELP}",
        ),
        (
            ['1/2', '4 ft'],
            f"PITCH: '1/2' can be read in more than one way; allowed: {PITCH}; "
            "next: write '1/2 in 12' for so many inches per foot, or the rise and run as 6:12",
        ),
        (['6\n7', '4 ft'], f"PITCH: '6\\n7' is no pitch; allowed: {PITCH}; next: {HELP}"),
        (
            ['9' * 5000, '4 ft'],
            f"PITCH: '{'9' * 99} … {'9' * 37}' is no pitch; allowed: {PITCH}; next: {HELP}",
        ),
        (
            [f'0.{"0" * 100}1', '4 ft'],
            f"PITCH: '0.{'0' * 100}1' is no pitch; allowed: {PITCH}; next: {HELP}",
        ),
        (['6', ''], f"RUN: '' is no length; allowed: {LENGTH}; next: {HELP}"),
        (['6', '0'], f"RUN: '0' is 0, and a run of 0 has no rafter; allowed: {LENGTH}; next: {HELP}"),
        (['6', '-4'], f"RUN: '−4' is below zero; allowed: {LENGTH}; next: {HELP}"),
        (['6', '4 kg'], f"RUN: '4 kg' is no length; allowed: {LENGTH}; next: {HELP}"),
        (['6', '10001 ft'], f"RUN: '10001 ft' is over 10,000 ft; allowed: {LENGTH}; next: {HELP}"),
        (['6', '4 ft', '--format', 'xml'], f"--format: 'xml' is unknown; allowed: text, json; next: {HELP}"),
        (
            ['6', '4 ft', '--nearest', '3/16'],
            "--nearest: '3/16' is not a part of an inch that a tape shows; "
            f'allowed: 1/2, 1/4, 1/8, 1/16, 1/32, 1/64; next: {HELP}',
        ),
        (
            ['6', '4 ft', '--hip-thickness', '13'],
            f"--hip-thickness: '13' is out of range; allowed: above 0 and up to 12 in; next: {HELP}",
        ),
        (
            [
                '6',
                '4 ft',
                *['--spacing', '1', '--spacing', '2', '--spacing', '3', '--spacing', '4', '--spacing', '5'],
            ],
            f'--spacing: 5 spacings are too many; allowed: up to 4; next: {HELP}',
        ),
    ],
)
def test_what_cannot_be_looked_up_is_refused_in_a_line(words, line):
    assert ask('find', *words) == (2, '', f'rafterbook: {line}\n')


def test_every_spacing_at_fault_is_told():
    told = (
        f"rafterbook: --spacing[1]: '0' is out of range; allowed: above 0 and up to 96 in; next: {HELP}\n"
        f"rafterbook: --spacing[3]: 'x' is no length; allowed: {LENGTH}; next: {HELP}\n"
    )
    assert ask('find', '6', '4 ft', '--spacing', '0', '--spacing', '16', '--spacing', 'x') == (2, '', told)
