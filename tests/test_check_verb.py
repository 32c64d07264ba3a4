"""The verb check, as a user calls it."""

import re

import pytest
from check_support import data, run_check
from mpmath import mpf, sqrt

from layouts.verbs import check

LENGTH = ('length', '--pitch', '6', '--run', '1 ft', '--reads', '13 3/8', '--total-run', '12 ft')
STEPS = ('steps', '--pitch', '6', '--run', '13 ft 5 in', '--step', '13 3/8')
CORNER = ('corner', '--along', '6 ft', '8 ft', '--diagonal', '10 ft 1/8 in')
TURN_OVER = ('turn-over', '--gap', '1/16', '--over', '16 in')
EXAMPLES = (LENGTH, STEPS, CORNER, TURN_OVER, ('square',))


def test_length_in_text():
    status, out, err = run_check(*LENGTH)

    assert out == (
        'Common rafter, 6 in 12, run 1 ft\n'
        '  exact            13.416 in\n'
        '  nearest 1/8 in   13 3/8 in\n'
        '  nearest 1/16 in  13 7/16 in\n'
        '  read             13 3/8 in\n'
        '  difference       0.041 in short: 0.33 of 1/8 in, on the nearest mark\n'
        '  over 12 steps    0.497 in short in a run of 12 ft\n'
        '  exact for        5.907 in 12 (26.21°)\n'
        'Right to the eighth: it may be off by 1/16 in, half of 1/8 in, the finest part\n'
        'read.\n'
    )
    assert (status, err) == (0, '')


def test_length_in_json():
    status, found = data(*LENGTH)

    assert (status, found['verdict']) == (0, 'right')
    assert found['exact'] == {'inches': '13.416407865', 'text': '13.416'}
    assert found['nearest']['text'] == '13 3/8'
    assert found['difference']['inches'] == '-0.041407865'
    assert found['repeated']['error']['inches'] == '-0.496894380'
    assert found['exact_for']['rise_per_foot']['inches'] == '5.906828675'


def test_steps_in_text():
    status, out, _ = run_check(*STEPS)

    assert status == 1
    assert out == (
        'Common rafter, 6 in 12, run 13 ft 5 in\n'
        '  square held     12 & 6: plumb along the tongue, level along the body\n'
        '  whole steps     13, each of 1 ft of common run\n'
        '  odd remainder   5 in on the body & 2 1/2 in on the tongue\n'
        '  exact step      13.416 in\n'
        '  step as set     13 3/8 in: 0.041 in short\n'
        '  exact length    180.003 in\n'
        '  last mark       179.465 in: 0.538 in short\n'
        '  off by 1/64     0.203 in after 13 steps\n'
        '  off by 1/32     0.406 in after 13 steps\n'
        '  off by 1/16     0.813 in after 13 steps\n'
        '  to stay within  1/8 in, a step may be off by 0.0096 in: set it to 1/64 or\n'
        '                  finer\n'
        'Wrong: the last mark may be off by 1/8 in, taken where nothing else is said.\n'
        'Measure the whole length once at the end, whatever the steps say.\n'
    )


def test_steps_in_json():
    status, found = data(*STEPS, '--marks')

    assert (status, found['whole_steps'], found['odd_remainder']['tongue']['text']) == (1, 13, '2 1/2')
    assert found['last_mark'] == {'inches': '179.465169944', 'text': '179.465'}
    assert found['error'] == {'inches': '-0.538302245', 'text': '−0.538'}
    assert [mark['number'] for mark in found['marks']] == list(range(1, 14))
    assert found['marks'][9]['exact']['inches'] == '134.164078650'


def test_the_marks_of_steps_stand_in_columns():
    _, out, _ = run_check(*STEPS, '--marks')

    assert '  step  mark, in  exact, in    steps as set\n     1   13 7/16     13.416  0.041 in short\n' in out
    assert '    13  174 7/16    174.413  0.538 in short\n' in out


def test_marks_are_those_of_the_step_that_was_set():
    """Source: n steps of 13.42 in less n √180, by mpmath; without a step, n of 13 7/16."""
    for words, step in ((('--step', '13.42'), '13.42'), ((), '13.4375')):
        _, found = data(*STEPS[:5], *words, '--marks')
        for mark in found['marks']:
            wanted = mark['number'] * (mpf(step) - sqrt(180))
            assert abs(mpf(mark['off']['inches']) - wanted) <= mpf('0.51e-9')


def test_without_a_step_nothing_is_judged():
    status, out, _ = run_check(*STEPS[:5])
    _, found = data(*STEPS[:5])

    assert status == 0
    assert '  nearest 1/16    13 7/16 in: 0.021 in long\n' in out
    assert 'as set' not in out
    assert 'Wrong' not in out
    assert (found['verdict'], found['step_given'], found['within_allowed']) == ('not_judged', False, False)
    assert found['allowed']['rule'] == 'usual'


def test_what_the_end_may_be_off_by_is_said_to_be_given_only_where_it_is():
    status, out, _ = run_check(*STEPS, '--within', '3/4')

    assert status == 0
    assert 'Right: the last mark may be off by 3/4 in, as you said.\n' in out


@pytest.mark.parametrize(
    ('reads', 'said'),
    [
        ('13 in', '0.416 in short: 6.66 of 1/16 in, 7 marks short of the\n                   nearest\n'),
        ('13 1/2', '0.084 in long: 0.17 of 1/2 in, on the nearest mark\n'),
        ('13 9/16', '0.146 in long: 2.34 of 1/16 in, 2 marks past the nearest\n'),
    ],
)
def test_a_reading_lies_past_the_nearest_mark_or_short_of_it(reads, said):
    _, out, _ = run_check('length', '--pitch', '6', '--run', '1 ft', '--reads', reads)

    assert said in out


def test_a_hip_says_what_seventeen_would_do():
    _, out, _ = run_check('steps', '--of', 'hip-valley', '--pitch', '8', '--run', '12 ft')

    assert '  with 17 for √288  step 18.788 in: 0.320 in long at the last step\n' in out


def test_corner_in_text():
    status, out, _ = run_check(*CORNER)

    assert status == 1
    assert out == (
        'Corner with sides of 6 ft and 8 ft\n'
        '  true diagonal   120.000 in\n'
        '  measured        120 1/8 in: 0.125 in long\n'
        '  out of square   0.124° wider than 90°\n'
        '  over long side  0.208 in in 8 ft, outwards\n'
        '  cannot be seen  less than 0.104 in, with a diagonal read to 1/8 in\n'
        'Out of square: the diagonal may be off by 1/16 in, half of 1/8 in, the finest\n'
        'part read.\n'
    )


def test_a_square_corner_in_text():
    status, out, _ = run_check('corner', '--along', '6 ft', '8 ft', '--diagonal', '10 ft')

    assert status == 0
    assert '  out of square   0°: exactly square\n  over long side  0.000 in in 8 ft\n' in out


def test_turn_over_in_text():
    status, out, _ = run_check(*TURN_OVER)

    assert status == 1
    assert '  the square’s error  0.112°, half of what shows\n  over 1 ft 4 in      0.031 in\n' in out
    assert '  over 24 in          0.047 in\n  over 12 ft          0.281 in\n' in out


def test_corner_and_turn_over_in_json():
    _, found = data(*CORNER)
    _, turned = data(*TURN_OVER)

    assert found['out'] == {'degrees': '0.124404657'}
    assert found['over_long_side'] == {'inches': '0.208441840', 'text': '0.208'}
    assert turned['out']['degrees'] == '0.111905891'


def test_jacks_are_checked_by_their_spacing():
    status, out, _ = run_check(
        'length', '--of', 'jack-difference', '--pitch', '8', '--spacing', '16 in', '--reads', '19.23'
    )

    assert status == 0
    assert out.startswith('Difference of jacks, 8 in 12, spacing 1 ft 4 in\n')


def test_the_tape_is_named_with_its_source():
    _, out, _ = run_check(*LENGTH, '--tape')

    assert (
        'plus 1/32 in for the tape (NIST Handbook 44, section 5.52 Linear\nMeasures: metal tapes).\n' in out
    )


@pytest.mark.parametrize('argv', EXAMPLES, ids=lambda argv: argv[0])
def test_text_fits_eighty_columns(argv):
    _, out, _ = run_check(*argv)

    assert out.endswith('\n')
    assert max(map(len, out.splitlines())) <= 80


@pytest.mark.parametrize('argv', EXAMPLES, ids=lambda argv: argv[0])
def test_no_float_is_in_the_data(argv):
    _, found = data(*argv)

    assert found['check'] == argv[0]


@pytest.mark.parametrize('name', check.CHECKS)
def test_every_check_has_an_example_in_its_help(name, monkeypatch):
    monkeypatch.setenv('COLUMNS', '80')
    status, shown, err = run_check(name, '--help')
    examples = re.split('^examples?:$', shown, flags=re.MULTILINE)[-1].strip().splitlines()

    assert (status, err) == (0, '')
    assert all(example.strip().startswith(f'rafterbook check {name}') for example in examples)
    assert max(map(len, shown.splitlines())) <= 80
