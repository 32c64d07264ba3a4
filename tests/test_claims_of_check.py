"""What the checks say in words, line by line; their figures and verdicts are proven key by key."""

from __future__ import annotations

import re

import pytest
from asking import ask
from claimed import claims, strange

OLD = 'rise,common,hip_valley,jack_16,jack_24,jack_cheek,hip_cheek\n'
SQUARES = {
    'right': f'{OLD}8,14.42,18.76,19.23,28.84,10,10 7/8\n',
    'old': f'{OLD}8,14.42,18.78,19.23,28.84,10,10 7/8\n17,20.81,24.04,27.74,41.62,6 15/16,8 1/2\n',
    'no hips': f'{OLD}8,14.42,,19.23,28.84,10,\n',
    'cut off': f'{OLD}8,14.422,18.76,19.2,28.84,10,10 7/8\n5,13,17.691,17.33,26,11 1/16,11 1/2\n',
    'misprints': f'{OLD}8,14.42,18.78,19.23,28.84,10,10 7/8\n9,15,19.20,20,30,9 5/8,9\n17,20.81,24.04,27.74,40,6 15/16,8 1/2\n',
    'misprint': f'{OLD}8,14.42,18.76,19.23,28.84,10,10 7/8\n9,14.42,19.21,20,30,9 5/8,10 5/8\n',
}
LENGTH = ('length', '--pitch', '6', '--run', '1 ft', '--reads')
STEPS = ('steps', '--pitch', '6', '--run')
CORNER = ('corner', '--along', '6 ft', '8 ft', '--diagonal')
ASKED = {
    'length': (
        (*LENGTH, '13 3/8', '--total-run', '12 ft 5 in'),
        (*LENGTH, '13.416'),
        (*LENGTH, '13 in', '--within', '1/2', '--tape'),
        (*LENGTH, '13 9/16'),
        (*LENGTH, '12', '--of', 'common'),
        (*LENGTH, '17 3/8', '--of', 'hip-valley', '--total-run', '4 ft'),
        ('length', '--pitch', '6', '--spacing', '16 in', '--reads', '17 7/8', '--of', 'jack-difference', '--total-run', '32 in'),
        (*LENGTH, '6', '--of', 'rise'),
    ),
    'steps': (
        (*STEPS, '13 ft 5 in', '--step', '13 3/8'),
        (*STEPS, '13 ft', '--step', '13.416', '--marks'),
        (*STEPS, '13 ft', '--within', '3/4', '--marks'),
        (*STEPS, '13 ft'),
        (*STEPS, '5 in'),
        (*STEPS, '100 ft', '--within', '1/64'),
        (*STEPS, '13 ft 5 in', '--of', 'hip-valley', '--step', '18'),
        ('steps', '--pitch', '20', '--run', '13 ft 2 in', '--step', '11 11/16'),
        ('steps', '--pitch', '36', '--steep', '--run', '13 ft 2 in'),
    ),
    'corner': (
        (*CORNER, '10 ft 1/8 in'),
        (*CORNER, '9 ft 11 in'),
        (*CORNER, '10 ft', '--tape'),
    ),
    'turn-over': (
        ('turn-over', '--gap', '1/16', '--over', '16 in'),
        ('turn-over', '--gap', '1/64', '--over', '16 in', '--within', '1/32'),
    ),
    'square': (('square',),),
}  # fmt: skip
"""Questions whose answers together say all that a check may say."""


def lines(answer: str) -> str:
    """Return an answer, a line for each that is told: what is broken off stands under its own column."""
    told = re.sub(r'\n {10,}(?=\S)', ' ', answer)
    return re.sub(r'(?<=[\w.,])\n(?=[a-z√\d])', ' ', told)


def squares(folder) -> list[tuple[str, ...]]:
    """Return the questions about squares that someone has read."""
    found = []
    for name, written in SQUARES.items():
        path = folder / f'{name}.csv'
        path.write_text(written, 'utf-8')
        found.append(('square', '--reads', str(path)))
    return found


@pytest.mark.parametrize('check', ASKED)
def test_the_words_of_a_check(check, tmp_path):
    wanted, used, unknown = claims('check')[check], set(), []
    for words in (*ASKED[check], *(squares(tmp_path) if check == 'square' else ())):
        status, out, err = ask('check', *words)
        assert (status in (0, 1), err) == (True, '')
        unknown += strange(lines(out), wanted, {}, used, in_order=False)
    assert unknown == []
    assert [wanted[place] for place in sorted(set(range(len(wanted))) - used)] == []
