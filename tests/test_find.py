"""find: what it prints, digit for digit."""

from __future__ import annotations

import json
from decimal import Decimal

import mpmath
import pytest
from asking import ask

SIX_IN_TWELVE = """\
6 in 12, run 4 ft, to the nearest 1/16 in
rafters 2×8, hips 2×8, valleys 2×8

Lengths                                      measure  exact in  rounded
  common, plate line to ridge center        53 11/16   53.6656  +0.0219
  hip/valley, plate corner to ridge center  72         72.0000     none
  rise, plumb, plate line to ridge center   24         24.0000     none
  jack difference, 12 in on center          13 7/16    13.4164  +0.0211
  jack difference, 16 in on center          17 7/8     17.8885  −0.0135
  jack difference, 19.2 in on center        21 7/16    21.4663  −0.0288
  jack difference, 24 in on center          26 13/16   26.8328  −0.0203

Cuts on the side, from square across   plumb   level  body & tongue
  common, jack                        26.57°  63.43°  12 & 6
  hip/valley                          19.47°  70.53°  17 & 6
  Held 12 & 6: mark plumb along the tongue (6), level along the body (12).
  Held 17 & 6: mark plumb along the tongue (6), level along the body (17).

Cheeks                     top from square  along the body  side plumb   blade
  jack at a hip/valley              48.19°  12 & 10 3/4         26.57°  45.00°
  hip/valley, every cheek           46.69°  12 & 11 5/16        19.47°  45.00°

Off, center line of what is met to its face    level    along
  common at a ridge                            3/4      13/16
  hip/valley at a ridge, one cheek           1 1/16   1 1/8
  hip between commons, to its point          1 1/16   1 1/8
  jack at a hip/valley, on its center line   1 1/16   1 3/16
  end common, hips between commons             3/4      13/16
  end common, hips on the ridge              1 13/16  2

Bird’s mouths       seat    heel  height    depth   notch     left
  common 2×8       3 1/2  1 3/4   6 3/8   8 1/8    1 9/16  5 11/16
  hip dropped 2×8  4 1/2  1 5/8   6 1/16  7 11/16  1 1/2   5 3/4
  hip backed 2×8   3 3/4  1 5/16  6 3/8   7 11/16  1 1/4   6
  valley 2×8       4 1/2  1 5/8   6 3/8   7 11/16  1 1/2   5 3/4
  Seat: level. Heel, height above plate, depth from top edge to underside:
    plumb. Notch, and stock left over it: square to the edge. The valley’s heel
    stands 3/4 in outwards of the inside corner.

Tails, 12 in out from the plate, level         along
  common and jack, plate line to tail end   13 7/16
  hip/valley, plate corner to its point     18
  hip, plate corner to each side’s line     17 3/16
  valley, plate corner to each side’s line  18 13/16

Points, along the board                         level    along
  jack, long to short point                     1 1/2  1 11/16
  hip at a ridge, long to short point           1 1/2  1 9/16
  hip between commons, point back to its sides    3/4    13/16
  hip tail, point back to its sides               3/4    13/16
Hip: backed 18.43° each side, from its square top; or dropped 1/4 in, plumb,
which its bird’s mouth has already.

Caution, hips, valleys: Less deep than the cut end of the rafters, which is as
  long as their plumb cut. (IRC 2006 and 2009 R802.3; 2018 and later R802.4.3)

Lengths run along the top edge. Off: what comes off them, along, or off the run,
level. Rounded: the measure less the exact length, in inches; a half goes up.
Cheeks: on top, degrees from the line square across it, and the square held body
& tongue, marked along the body; on the side, the plumb cut from square across,
and the tilt of the blade from square.

Geometry is not strength: local code and a licensed designer decide.

More: --all, or --show with one or more of length, cut, square, shortening,
sawn, jack, seat, tail, cheek, backing, drop, trim, ridge, gable-stud, area.
"""

SIX_IN_TWELVE_OBJECT = {
    'pitch': '6 in 12',
    'rise_per_foot': {'inches': '6.000000000', 'text': '6'},
    'run': {'inches': '48.000000000', 'text': '4 ft'},
    'nearest': {'inches': '0.062500000', 'text': '1/16'},
    'rafters': '2×8',
}
SIX_IN_TWELVE_LENGTHS = {
    'common': {'inches': '53.665631460', 'text': '53 11/16'},
    'hip_valley': {'inches': '72.000000000', 'text': '72'},
    'rise': {'inches': '24.000000000', 'text': '24'},
}
SIX_IN_TWELVE_DIFFERENCES = [
    ('12', '13.416407865', '13 7/16'),
    ('16', '17.888543820', '17 7/8'),
    ('19.2', '21.466252584', '21 7/16'),
    ('24', '26.832815730', '26 13/16'),
]


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
    differences = [
        (row['spacing']['text'], row['difference']['inches'], row['difference']['text'])
        for row in told['jack']['difference']
    ]

    assert {name: told[name] for name in SIX_IN_TWELVE_OBJECT} == SIX_IN_TWELVE_OBJECT
    assert {name: told['length'][name] for name in SIX_IN_TWELVE_LENGTHS} == SIX_IN_TWELVE_LENGTHS
    assert differences == SIX_IN_TWELVE_DIFFERENCES


@pytest.mark.parametrize(('run', 'common'), [('1 ft', '13 3/8'), ('4 ft', '53 5/8')])
def test_to_the_nearest_eighth_as_the_trade_has_it(run, common):
    """Source: common practice, no source."""
    assert found('6', run, '--nearest', '1/8')['length']['common']['text'] == common


@pytest.mark.parametrize('rise', ['1/2', '3', '7.5', '12', '17', '24'])
@pytest.mark.parametrize('run', ['1/16', '55 1/2', '288'])
def test_decimals_are_those_of_fifty_digits(rise, run):
    """Source: the relations of the right triangles, worked by mpmath, a general library, at 50 digits."""
    with mpmath.workdps(50):
        r = mpmath.mpf({'1/2': '0.5'}.get(rise, rise))
        feet = mpmath.mpf({'1/16': '0.0625', '55 1/2': '55.5'}.get(run, run)) / 12
        common, hip = mpmath.sqrt(144 + r**2), mpmath.sqrt(288 + r**2)
        lengths = {'rise': r * feet, 'common': common * feet, 'hip_valley': hip * feet}
        told = found(f'{rise} in 12', run)
        tangents = {
            told['cut']['common']['plumb']['degrees']: r / 12,
            told['cut']['common']['level']['degrees']: 12 / r,
            told['cut']['hip_valley']['plumb']['degrees']: r / mpmath.sqrt(288),
            told['cut']['hip_valley']['level']['degrees']: mpmath.sqrt(288) / r,
            told['cheek']['jack']['top_from_square']['degrees']: common / 12,
            told['cheek']['hip_at_ridge']['top_from_square']['degrees']: hip / mpmath.sqrt(288),
            told['backing']['bevel']['degrees']: r / hip,
        }

        for name, length in lengths.items():
            wanted = Decimal(mpmath.nstr(length, 40))
            assert abs(Decimal(told['length'][name]['inches']) - wanted) <= Decimal(10) ** -9 / 2
        for degrees, tangent in tangents.items():
            wanted = Decimal(mpmath.nstr(mpmath.degrees(mpmath.atan(tangent)), 40))
            assert abs(Decimal(degrees) - wanted) <= Decimal(10) ** -9 / 2


def test_spacings_asked_for_replace_the_usual_ones():
    told = found('6', '4 ft', '--spacing', '16 in', '--spacing', '1 1/2 ft')
    assert [row['spacing']['text'] for row in told['jack']['difference']] == ['16', '18']


def test_the_drop_is_for_the_thickness_asked_for():
    """Source: half of 3 in, times 12/√288, by hand: 1.060660172."""
    told = found('12', '4 ft', '--hip-thickness', '3 in')['drop']
    assert told['hip_thickness']['inches'] == '3.000000000'
    assert told['plumb']['inches'] == '1.060660172'


def test_feet_and_inches():
    assert found('6', '4 ft', '--lengths', 'feet-inches')['length']['common']['text'] == '4′ 5 11/16″'
    assert line_of('common, plate line to ridge center', '6', '4 ft', '--lengths', 'feet-inches').startswith(
        '4′ 5 11/16″ '
    )


def test_a_pitch_in_degrees_tells_its_rise():
    assert ask('find', '30 deg', '4 ft')[1].startswith('30° (6.928203 in 12), run 4 ft, ')
    assert found('30 deg', '4 ft')['rise_per_foot']['inches'] == '6.928203230'


def test_a_run_of_whole_millimeters_that_no_inch_tape_shows_is_told_in_them():
    """Source: 1 in is 25.4 mm exactly, so 1.4 m is 7000/127 in."""
    told, tape = found('6', '1.4 m'), found('6', '1524 mm')
    assert (told['run']['inches'], told['run']['text']) == ('55.118110236', '1400 mm')
    assert (tape['run']['inches'], tape['run']['text']) == ('60.000000000', '5 ft')


@pytest.mark.parametrize(
    ('pitch', 'said'),
    [
        (
            '6',
            [
                'Held 12 & 6: mark plumb along the tongue (6), level along the body (12).',
                'Held 17 & 6: mark plumb along the tongue (6), level along the body (17).',
            ],
        ),
        (
            '18',
            [
                'Held 6 & 9: mark plumb along the tongue (9), level along the body (6); 6 in of run a step.',
                'Held 8 1/2 & 9: mark plumb along the tongue (9), level along the body (8 1/2); 6 in of run a step.',
            ],
        ),
    ],
)
def test_which_arm_of_the_square_gives_which_line(pitch, said):
    """Source: a square's tongue is 16 in long; past it both figures are halved, a foot of run being two steps."""
    told = ' '.join(ask('find', pitch, '4 ft')[1].split())
    assert all(one in told for one in said)


def test_a_square_s_body_is_24_in_long():
    """Source: 1 and 24 in 12: tan a = 24, so 12/sin a is 12.01; turned about, 12/sin a is 288.2 in, on no square."""
    held = found('24', '10 ft', '--with', '1')['two_pitches']['square']['hip_valley']
    a = mpmath.atan(mpmath.mpf(1) / 24)
    assert Decimal(held['run_of_step']['inches']) == Decimal('0.75')
    assert (
        abs(Decimal(held['level_on_body']['inches']) - Decimal(mpmath.nstr(12 / mpmath.sin(a) / 16, 30)))
        < Decimal(10) ** -9
    )


def test_steep_is_let_pass_when_asked_for():
    assert found('36', '4 ft', '--steep')['pitch'] == '36 in 12'


def test_text_fits_a_terminal():
    for words in (
        ['6', '4 ft'],
        ['7 1/2', '23 ft 11 in', '--lengths', 'feet-inches'],
        ['26.565 deg', '1.4 m', '--nearest', '1/64'],
    ):
        assert max(map(len, ask('find', *words)[1].splitlines())) <= 80
