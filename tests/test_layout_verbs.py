"""pitch, diagonal and brace: what is measured on a building, told as a pitch, a diagonal, a brace."""

from __future__ import annotations

import json
from importlib.resources import files
from math import atan, degrees, hypot

import pytest
from asking import ask
from jsonschema import Draft202012Validator

SCHEMA = Draft202012Validator(
    json.loads(files('layouts.told').joinpath('schemas/measured.json').read_text('utf-8'))
)
"""What they tell a program, every time that a test asks for it."""


def told(*words: str) -> dict:
    status, said, remarks = ask(*words, '--format', 'json')
    assert (status, remarks) == (0, '')
    found = json.loads(said)
    SCHEMA.validate(found)
    return found


@pytest.mark.parametrize(
    ('words', 'rise'),
    [
        (('--rise', '4 ft', '--run', '8 ft'), '6.000000000'),
        (('--level', '24', '--gap', '13 1/4'), '6.625000000'),
        (('--length', '13 ft', '--run', '12 ft'), '5.000000000'),
        (('--length', '15 in', '--rise', '9 in'), '9.000000000'),
        (('--degrees', '45 deg'), '12.000000000'),
    ],
)
def test_a_pitch_is_found(words, rise):
    """Source: 5-12-13 and 9-12-15; 13¼ over 24 is 6⅝ over 12; 45 degrees rise as they run."""
    found = told('pitch', *words)['pitch_found']

    assert found['rise_per_foot']['inches'] == rise
    assert found['angle']['degrees'] == f'{degrees(atan(float(rise) / 12)):.9f}'


def test_a_pitch_in_text():
    assert ask('pitch', '--level', '24', '--gap', '13 1/4')[1] == (
        'Pitch found\n'
        '  rise per foot                 6 5/8     6.625000000 in\n'
        '  angle                    28.90°       28.902357036 deg\n'
        '  nearest half pitch  6 1/2 in 12\n'
        '  off by per foot                 +1/8    0.125000000 in\n'
        '  (rise per 12 in of level run; angle from level; off by: the measured rise less\n'
        '    the nearest half pitch)\n'
    )


def test_a_diagonal_and_two_that_were_measured():
    """Source: 24 by 18 ft has a diagonal of 30; (d1² − d2²) / 4p, by hand: (361² − 359²) / 1152 = 1.25."""
    both = told('diagonal', '24 ft', '18 ft', '--reads', '361', '359')

    assert both['rectangle']['diagonal']['inches'] == '360.000000000'
    assert both['rectangle_check']['push_along_length']['inches'] == '1.250000000'
    assert both['rectangle_check']['verdict'] == 'first_is_longer'
    assert ask('diagonal', '24 ft', '18 ft', '--lengths', 'feet-inches')[1].splitlines()[3].split()[:3] == [
        'diagonal',
        '30′',
        '0″',
    ]


def test_a_brace():
    brace = told('brace', '3 ft', '2 ft')['brace']

    assert brace['length']['inches'] == f'{hypot(36, 24):.9f}'
    assert brace['cut_on_leg']['degrees'] == f'{degrees(atan(36 / 24)):.9f}'


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (
            ['pitch', '--rise', '4'],
            'pitch: these measures do not make a pitch; allowed: --rise and --run, --level and --gap, --length and '
            '--run, --length and --rise, or --degrees alone; next: see rafterbook pitch --help',
        ),
        (
            ['pitch', '--length', '4', '--run', '5'],
            '--length: 4 in is no longer than its run; allowed: more than the run; next: see rafterbook pitch --help',
        ),
        (
            ['pitch', '--rise', '0', '--run', '5'],
            '--rise: 0 in measures nothing; allowed: above 0; next: see rafterbook pitch --help',
        ),
        (
            ['pitch', '--degrees', '90'],
            "--degrees: '90' is no such angle; allowed: degrees above 0 and below 90; next: see rafterbook pitch --help",
        ),
        (
            ['diagonal', '3 ft', '4 ft', '--reads', '7 ft', '5 ft'],
            '--reads: no such layout has these diagonals; allowed: between the difference and the sum of its '
            'sides; next: see rafterbook diagonal --help',
        ),
        (
            ['brace', '0', '3 ft'],
            "LEG: '0' measures nothing; allowed: a length such as 4 ft, 4' 7 1/2\", 55.5 in, 55 1/2 (inches), 1.4 m "
            'or 1400 mm; next: see rafterbook brace --help',
        ),
    ],
)
def test_what_measures_nothing_is_refused_in_a_line(words, line):
    assert ask(*words) == (2, '', f'rafterbook: {line}\n')
