"""find refuses what cannot be looked up, each mistake in a line that names the place, the value and what is allowed."""

from __future__ import annotations

import pytest
from asking import ask

PITCH = 'a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to 24 in 12'
LENGTH = 'a length such as 4 ft, 4\' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m or 1400 mm'
HELP = 'see rafterbook find --help'


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (['', '4 ft'], f"PITCH: '' is no pitch; allowed: {PITCH}; next: {HELP}"),
        (['0', '4 ft'], f"PITCH: '0' is flat: a rafter needs a rise; allowed: {PITCH}; next: {HELP}"),
        (['-3', '4 ft'], f"PITCH: '-3' is below zero; allowed: {PITCH}; next: {HELP}"),
        (['-3/12', '4 ft'], f"PITCH: '-3/12' is below zero; allowed: {PITCH}; next: {HELP}"),
        (['--', '-3', '4 ft'], f"PITCH: '-3' is below zero; allowed: {PITCH}; next: {HELP}"),
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
        (['6', '-4'], f"RUN: '-4' is below zero; allowed: {LENGTH}; next: {HELP}"),
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
            '--plate-length: 120 in is less than twice the run of the ends: the hips meet before it; '
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
            '--sides: asks about a many-sided roof, --with does not; next: leave --sides or --with out',
        ),
        (
            ['8', '--show', 'drop', '--sides', '8'],
            '--show: picks from a square corner of one pitch; next: leave it out, or give --all',
        ),
        (
            ['8', '--sides', '8', '--plate-length', '40 ft'],
            '--plate-length: a many-sided roof has no use for it; next: leave --plate-length out',
        ),
        (
            ['8', '--sides', '8', '--ridge-thickness', '3'],
            '--ridge-thickness: a many-sided roof has no use for it; next: leave --ridge-thickness out',
        ),
        (
            ['8', '--sides', '8', '--valley-stock', '2x10'],
            '--valley-stock: a many-sided roof has no use for it; next: leave --valley-stock out',
        ),
        (
            ['8', '--with', '6', '--corner', '100', '--plate-length', '40 ft'],
            '--plate-length: is for a hip roof with square corners; next: leave it or the angle of the corner out',
        ),
        (
            ['8', '--shed', 'wall', '--hip-stock', '2x10'],
            '--hip-stock: a shed has no use for it; next: leave --hip-stock out',
        ),
        (
            ['8', '--shed', 'wall', '--run-to', 'wall'],
            '--run-to: is of a ledger; next: leave --run-to out, or give --shed ledger',
        ),
        (
            ['8', '--ledger-thickness', '2'],
            '--ledger-thickness: a roof of one pitch with square corners has no use for it; '
            'next: leave --ledger-thickness out, or give --shed ledger',
        ),
        (['8', '--shed', 'ridge'], f"--shed: 'ridge' is unknown; allowed: wall, ledger; next: {HELP}"),
        (
            ['8', '--shed', 'ledger', '--run-to', 'x'],
            f"--run-to: 'x' is unknown; allowed: wall, ledger; next: {HELP}",
        ),
        (
            ['8', '--shed', 'ledger', '--ledger-thickness', '0'],
            f"--ledger-thickness: '0' is out of range; allowed: above 0 and up to 12 in; next: {HELP}",
        ),
        (
            ['8', '--shed', 'wall', '--show', 'drop'],
            "--show: a shed has no 'drop'; allowed: length, cut, square, shed, seat, tail, gable-stud, area; "
            f'next: {HELP}',
        ),
        (
            ['8', '--all', '--show', 'drop'],
            '--show: picks, and --all shows everything; next: leave one of the two out',
        ),
        (
            ['8', '--valley-stock', '2x3'],
            f"--valley-stock: '2x3' is no size of rafter stock; allowed: 2×4, 2×6, 2×8, 2×10, 2×12; next: {HELP}",
        ),
        (
            ['8', '--show', 'seet'],
            "--show: 'seet' is unknown; allowed: length, cut, square, shortening, sawn, jack, seat, tail, cheek, "
            'backing, drop, trim, ridge, gable-stud, area; next: did you mean seat?',
        ),
    ],
)
def test_what_no_roof_can_be_is_refused_in_a_line(words, line):
    assert ask('find', words[0], '10 ft', *words[1:]) == (2, '', f'rafterbook: {line}\n')
