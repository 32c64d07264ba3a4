"""What the checks tell, key by key, worked out in space; what is allowed, and the verdict, are proven elsewhere."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

import pytest
from check_support import data
from fifty_digits import mp, mpf, real
from labels.told import Told, grouped, inside
from oracle import square_checks
from oracle.corner import common_length, corner, rise
from oracle.rounding import MINUS, decimal, nearest, part

AT = corner(Fraction(15, 2))


def exact(value) -> str:
    return decimal(value, 9).replace(MINUS, '-')


def given(value, said: str) -> Told:
    """Return what was given, as it was said."""
    return {'inches': exact(value), 'text': said}


def counted(value, per: int) -> Told:
    """Return a length to a part of an inch."""
    return {'inches': exact(value), 'text': part(value, per)}


def thousandths(value) -> Told:
    """Return a length that is read in decimals."""
    return {'inches': exact(value), 'text': decimal(value, 3)}


def length() -> Told:
    """Return what 42 1/2 in says of 3 ft of run, three times that in 9 ft."""
    true, read = common_length(AT, 36), mpf(85) / 2
    off = read - true
    found = mp.sqrt(read**2 - mpf(36) ** 2) / 36  # the slope that would be so long
    return grouped(
        {
            '': {'check': 'length', 'of': 'common', 'pitch': '7 1/2 in 12', 'part': '1/2 in'},
            'rise_per_foot': thousandths(rise(AT, 12)),
            'run': given(36, '3 ft'),
            'read': given(read, '42 1/2'),
            'exact': thousandths(true),
            'nearest': counted(true, 2),
            'nearest_book_part': counted(true, 16),
            'difference': thousandths(off),
            'repeated.total_run': given(108, '9 ft'),
            'repeated.left_run': given(0, '0 in'),
            'repeated.error': thousandths(3 * off),
            'exact_for.rise_per_foot': thousandths(12 * found),
            'exact_for.angle': {'degrees': decimal(mp.degrees(mp.atan2(found, 1)), 9)},
        }
    ) | {'parts_off': exact(2 * off), 'marks_off': nearest(2 * off, 1), 'repeated.steps': 3}


def steps() -> Told:
    """Return what nine steps of 14.2 in and 5 in of run come to."""
    step, run, odd = common_length(AT, 12), mpf(113), mpf(5)
    true, set_to = common_length(AT, run), mpf(142) / 10
    last = 9 * set_to + common_length(AT, odd)
    told = grouped(
        {
            '': {'check': 'steps', 'of': 'common', 'pitch': '7 1/2 in 12', 'set_to': '1/64 in'},
            'rise_per_foot': thousandths(rise(AT, 12)),
            'run': given(run, '9 ft 5 in'),
            'held.body': counted(12, 16),
            'held.tongue': counted(rise(AT, 12), 16),
            'held.run': given(12, '1 ft'),
            'odd_run': given(odd, '5 in'),
            'odd_remainder.body': counted(odd, 16),
            'odd_remainder.tongue': counted(rise(AT, odd), 16),
            'exact_step': thousandths(step),
            'step': given(set_to, '14.2'),
            'step_error': thousandths(set_to - step),
            'exact_length': thousandths(true),
            'last_mark': thousandths(last),
            'error': thousandths(last - true),
            'step_allowed': {'inches': exact(mpf(1) / 8 / 9), 'text': decimal(mpf(1) / 8 / 9, 4)},
        }
    )
    for place, off in enumerate((64, 32, 16)):
        told |= {f'drift.{place}.step_off_by': f'1/{off} in'}
        told |= inside(f'drift.{place}.total', thousandths(mpf(9) / off))
    return told | {'whole_steps': 9, 'held.steps_to_a_foot': 1, 'step_given': True, 'within_allowed': False}


def out_of_corner() -> Told:
    """Return what a diagonal of 9 ft 3 in says of 6 ft by 7 ft."""
    long, short, measured = mpf(84), mpf(72), mpf(111)
    true = square_checks.mark_to_mark(long, short)
    out = square_checks.opened(long, short, measured - true)
    unseen = square_checks.opened(long, short, mpf(1) / 32)
    return grouped(
        {
            '': {'check': 'corner'},
            'long_side': given(long, '7 ft'),
            'short_side': given(short, '6 ft'),
            'diagonal': given(measured, '111'),
            'true_diagonal': thousandths(true),
            'difference': thousandths(measured - true),
            'out': {'degrees': exact(mp.degrees(out))},
            'over_long_side': thousandths(long * mp.sin(out)),
            'unseen': thousandths(long * mp.sin(unseen)),
        }
    )


def turn_over() -> Told:
    """Return what 1/64 in between the two lines at 16 in says of a square."""
    angle = square_checks.turned_over(real(Fraction(1, 64)))
    return grouped(
        {
            '': {'check': 'turn-over'},
            'gap': given(real(Fraction(1, 64)), '1/64'),
            'over': given(16, '1 ft 4 in'),
            'out': {'degrees': exact(mp.degrees(angle))},
            'error': thousandths(square_checks.out_over(angle, 16)),
            'over_body': thousandths(square_checks.out_over(angle, 24)),
            'over_wall': thousandths(square_checks.out_over(angle, 144)),
        }
    )


ASKED = {
    'length': (('--pitch', '7.5', '--run', '3 ft', '--reads', '42 1/2', '--total-run', '9 ft'), length),
    'steps': (('--pitch', '7.5', '--run', '9 ft 5 in', '--step', '14.2'), steps),
    'corner': (('--along', '6 ft', '7 ft', '--diagonal', '9 ft 3 in'), out_of_corner),
    'turn-over': (('--gap', '1/64', '--over', '16 in', '--within', '1/32'), turn_over),
}


def flat(told: object, above: str = '') -> Iterator[tuple[str, object]]:
    """Return every value under its whole key; places in a list count from 0."""
    if isinstance(told, (dict, list)):
        for key, value in told.items() if isinstance(told, dict) else enumerate(told):
            yield from flat(value, f'{above}.{key}' if above else str(key))
    else:
        yield above, told


@pytest.mark.parametrize('check', ASKED)
def test_every_key(check):
    words, wanted = ASKED[check]
    found = data(check, *words)[1]
    told = {key: value for key, value in flat(found) if not key.startswith(('allowed', 'verdict'))}

    assert told == wanted()


def told_of(*words: str) -> dict:
    return data(*words)[1]


def test_what_seventeen_adds_to_a_hip():
    """Nine steps of √(17² + r²) against nine of √(288 + r²), and what is held on the body for an odd 5 in."""
    told = told_of('steps', '--pitch', '7.5', '--run', '9 ft 5 in', '--of', 'hip-valley')['with_seventeen']
    rise_in = mpf(15) / 2
    old, true = mp.sqrt(17**2 + rise_in**2), mp.sqrt(288 + rise_in**2)

    assert told['step']['inches'] == exact(old)
    assert told['error']['inches'] == exact(9 * (old - true))
    assert told['odd_body']['text'] == part(mpf(17) * 5 / 12)


def test_what_a_tape_may_be_off_by_is_told_apart_from_what_was_said():
    """NIST Handbook 44, section 5.52: 1/32 in for a tape of up to 6 ft; tests/authorities/hb44-tapes.toml."""
    told = told_of(
        'length', '--pitch', '6', '--run', '1 ft', '--reads', '13 3/8', '--tape', '--within', '1/8'
    )['allowed']

    assert told['own']['inches'] == exact(mpf(1) / 8)
    assert told['tape'] == {'inches': exact(mpf(1) / 32), 'text': '1/32 in'}
    assert told['total']['inches'] == exact(mpf(5) / 32)
    assert 'Handbook 44' in told['tape_source']


def test_what_a_square_shows_is_told_beside_what_is_right(tmp_path):
    path = tmp_path / 'square.csv'
    path.write_text(
        'rise,common,hip_valley,jack_16,jack_24,jack_cheek,hip_cheek\n8,14.5,18.76,19.23,28.84,10,10 7/8\n'
    )
    (cell,) = [one for one in told_of('square', '--reads', str(path))['cells'] if one['column'] == 'common']
    right = common_length(corner(8), 12)

    assert cell['shown']['text'] == '14.5'
    assert cell['right']['text'] == decimal(right, 2)
    assert cell['difference']['inches'] == exact(mpf(29) / 2 - right)
    assert (cell['rise'], cell['verdict']) == (8, 'wrong')
