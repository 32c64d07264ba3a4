"""The verb check, as a user calls it."""

import io
import json

import pytest
from check_support import run_check

from layouts.verbs import check
from tablegen.checking.square_figures import KEYS

OLD = """rise,common,hip_valley,jack_16,jack_24,jack_side_cut,hip_side_cut
8,14.42,18.78,19.23,28.84,10,10 7/8
17,20.81,24.04,27.74,41.62,6 15/16,8 1/2
18,21.63,24.75,28.84,43.27,6 11/16,8 1/4
"""
LENGTH = ('length', '--pitch', '6', '--run', '1 ft', '--reads', '13 3/8', '--total-run', '12 ft')
STEPS = ('steps', '--pitch', '6', '--run', '13 ft 5 in', '--step', '13 3/8')
CORNER = ('corner', '--sides', '6 ft', '8 ft', '--diagonal', '10 ft 1/8 in')
TURN_OVER = ('turn-over', '--gap', '1/16', '--over', '16 in')
EXAMPLES = (LENGTH, STEPS, CORNER, TURN_OVER, ('square',))
JSON = ('--format', 'json')


@pytest.fixture
def square_file(tmp_path):
    def write(content):
        path = tmp_path / 'myscale.csv'
        path.write_text(content, 'utf-8')
        return str(path)

    return write


def refuse_float(written):
    raise AssertionError(f'{written} is a float')


def data(*argv):
    status, out, _ = run_check(*argv, *JSON)
    return status, json.loads(out, parse_float=refuse_float)


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
    assert found['exact'] == {'inches': '13.416407865'}
    assert found['nearest']['text'] == '13 3/8'
    assert found['difference']['inches'] == '-0.041407865'
    assert found['repeated']['inches'] == '-0.496894380'
    assert found['exact_for']['rise_per_foot'] == '5.906828675'


def test_steps_in_text():
    status, out, _ = run_check(*STEPS)

    assert status == 1
    assert out == (
        'Common rafter, 6 in 12, run 13 ft 5 in\n'
        '  whole steps     13\n'
        '  odd remainder   5 in on the arm of the run, 2 1/2 in on that of the rise\n'
        '  exact step      13.416 in\n'
        '  step as set     13 3/8 in: 0.041 in short\n'
        '  exact length    180.003 in\n'
        '  last mark       179.465 in: 0.538 in short\n'
        '  off by 1/64     0.203 in after 13 steps\n'
        '  off by 1/32     0.406 in after 13 steps\n'
        '  off by 1/16     0.813 in after 13 steps\n'
        '  to stay within  1/8 in, a step may be off by 0.0096 in: set it to 1/64 or\n'
        '                  finer\n'
        'Wrong: the last mark may be off by 1/8 in, as was set.\n'
        'Measure the whole length once at the end, whatever the steps say.\n'
    )


def test_steps_in_json():
    status, found = data(*STEPS, '--marks')

    assert (status, found['whole_steps'], found['odd_remainder']['rise']['text']) == (1, 13, '2 1/2')
    assert found['last_mark'] == {'inches': '179.465169944', 'error_inches': '-0.538302245'}
    assert [mark['step'] for mark in found['marks']] == list(range(1, 14))
    assert found['marks'][9]['inches'] == '134.164078650'


def test_the_marks_of_steps_stand_in_columns():
    _, out, _ = run_check(*STEPS, '--marks')

    assert '  step  mark, in  exact, in  rounded steps\n     1   13 7/16     13.416  0.021 in long\n' in out


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
    status, out, _ = run_check('corner', '--sides', '6 ft', '8 ft', '--diagonal', '10 ft')

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

    assert found['out_of_square'] == {'degrees': '0.124404657', 'inches_over_long_side': '0.208441840'}
    assert turned['error']['degrees'] == '0.111905891'


def test_the_square_s_figures_in_text_csv_and_json():
    status, out, _ = run_check('square')
    _, table, _ = run_check('square', '--format', 'csv')
    _, found = data('square')

    assert status == 0
    assert '   8   14.42        18.76     19.23     28.84             10        10 7/8\n' in out
    assert '8,14.42,18.76,19.23,28.84,10,10 7/8\n' in table
    assert [row['rise'] for row in found['rows']] == list(range(2, 19))
    assert [found['rows'][6][key]['text'] for key in KEYS] == [
        '14.42',
        '18.76',
        '19.23',
        '28.84',
        '10',
        '10 7/8',
    ]


@pytest.mark.parametrize(('given', 'rises'), [('1 to 24', list(range(1, 25))), ('8,4,8', [4, 8])])
def test_other_rises(given, rises):
    _, found = data('square', '--rises', given)

    assert [row['rise'] for row in found['rows']] == rises


def test_what_is_printed_can_be_filled_in_and_read_back(square_file):
    """The right figures are judged right; the empty template is refused until something is filled in."""
    _, table, _ = run_check('square', '--format', 'csv', '--rises', '1 to 24')
    status, found = data('square', '--reads', square_file(table))
    _, blank, _ = run_check('square', '--blank')
    refused, _, said = run_check('square', '--reads', square_file(blank))

    assert (status, found['verdict'], found['counts']['right']) == (0, 'right', 144)
    assert refused == 2
    assert 'has no figure in it' in said


def test_an_old_square_in_text(square_file):
    status, out, _ = run_check('square', '--reads', square_file(OLD))

    assert status == 1
    assert out == (
        '18 figures read\n'
        '  rise       column  shown  right            off\n'
        '     8  hip, valley  18.78  18.76  0.018 in long  17\n'
        '    17  hip, valley  24.04  24.02  0.019 in long  17\n'
        '    18  hip, valley  24.75  24.74  0.011 in long  17\n'
        '   15 right\n'
        '    3 computed with 17 in place of √288 = 16.9706\n'
        'An old square’s convention, no misprint: its hip figures are computed with 17\n'
        'in place of √288. They are too long by a little at every step: use the figures\n'
        'given here.\n'
    )


def test_a_misprinted_square_in_text(square_file):
    worn = OLD.replace('18.78', '18.76').replace('24.04', '24.02').replace('24.75', '24.74')
    status, out, _ = run_check('square', '--reads', square_file(worn.replace('6 15/16', '7 3/16')))

    assert status == 1
    assert out == (
        '18 figures read\n'
        '  rise         column   shown    right            off\n'
        '    17  jack side cut  7 3/16  6 15/16  0.267 in long  wrong: of 16\n'
        '   17 right\n'
        '    1 wrong\n'
        '1 misprint or bad reading: look again. Its hip figures follow √288, as they\n'
        'should.\n'
    )


def test_a_square_judged_in_csv_and_json(square_file):
    path = square_file(OLD)
    _, table, _ = run_check('square', '--reads', path, '--format', 'csv')
    _, found = data('square', '--reads', path)

    assert table.splitlines()[:3] == [
        'rise,column,shown,right,difference_inches,verdict,belongs_to_rise',
        '8,common,14.42,14.42,-0.002205102,right,',
        '8,hip_valley,18.78,18.76,0.018336961,seventeen,',
    ]
    assert (found['hip_convention'], found['misprints']) == ('seventeen', [])


def test_a_square_can_come_through_standard_input(monkeypatch):
    monkeypatch.setattr('sys.stdin', io.StringIO(OLD))

    assert run_check('square', '--reads', '-')[0] == 1


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


LENGTHS = 'a length such as 4 ft, 4\' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m or 1400 mm'


@pytest.mark.parametrize(
    ('argv', 'said'),
    [
        (
            ('length', '--pitch', '6', '--run', '1 ft', '--reads', 'thirteen'),
            f"--reads: 'thirteen' is no length; allowed: {LENGTHS}",
        ),
        (
            ('length', '--pitch', '6', '--reads', '13'),
            '--run: is missing; allowed: --run with --of common, and no --spacing',
        ),
        (
            ('length', '--pitch', '6', '--run', '1', '--spacing', '16', '--reads', '13'),
            '--run: stands for common, and --spacing does not; allowed: --run with --of common, and no --spacing',
        ),
        (
            ('length', '--pitch', '6', '--run', '1 ft', '--reads', '13', '--nearest', '1/10'),
            "--nearest: '1/10' is not a part of an inch that a tape shows; "
            'allowed: 1/2, 1/4, 1/8, 1/16, 1/32, 1/64',
        ),
        (
            ('steps', '--pitch', '0', '--run', '1 ft'),
            "--pitch: '0' is flat: a rafter needs a rise; allowed: a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, "
            '7 1/2 or 26.565 deg, above 0 and up to 24 in 12',
        ),
        (
            ('square', '--rises', '3 to 30'),
            "--rises: '3 to 30' is off the table; allowed: '2 to 18' or 4,6,8: whole inches per foot, 1 to 24",
        ),
        (
            ('square', '--rises', '8 to 4'),
            "--rises: '8 to 4' is off the table; allowed: '2 to 18' or 4,6,8: whole inches per foot, 1 to 24",
        ),
        (
            ('square', '--reads', 'x.csv', '--blank'),
            '--blank: does not go with --reads; next: leave out --blank',
        ),
        (('square', '--blank', *JSON), '--blank: is a CSV to fill in; next: leave out --format json'),
        (
            ('square', '--reads', 'not-there.csv'),
            'not-there.csv: cannot be read: No such file or directory; '
            'allowed: a CSV file of what the square shows; '
            'next: rafterbook check square --blank prints one to fill in',
        ),
        (
            ('corner', '--sides', '6', '8', '--diagonal', '15'),
            '--diagonal: 1 ft 3 in cannot join sides of 6 in and 8 in; allowed: between 2 in and 1 ft 2 in; '
            'next: measure again',
        ),
    ],
)
def test_bad_input_gets_one_line_and_status_two(argv, said):
    status, out, err = run_check(*argv)

    assert (status, out) == (2, '')
    assert err == f'{said}\n'


def test_a_file_that_is_no_text_is_refused(tmp_path):
    path = tmp_path / 'square.csv'
    path.write_bytes(b'rise\xff')
    status, _, err = run_check('square', '--reads', str(path))

    assert (status, err) == (
        2,
        f'{path}: is no UTF-8 text, at byte 5; allowed: a CSV file of what the square shows\n',
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
def test_every_check_has_an_example_in_its_help(name, capsys, monkeypatch):
    monkeypatch.setenv('COLUMNS', '80')
    with pytest.raises(SystemExit) as ended:
        run_check(name, '--help')
    shown = capsys.readouterr().out

    assert ended.value.code == 0
    assert f'rafterbook check {name}' in shown.partition('example')[2]
    assert max(map(len, shown.splitlines())) <= 80
