"""The verb check on squares: what should stand there, and files of what does."""

import io

import pytest
from check_support import data, run_check

from tablegen.checking.square_figures import KEYS

OLD = """rise,common,hip_valley,jack_16,jack_24,jack_cheek,hip_cheek
8,14.42,18.78,19.23,28.84,10,10 7/8
17,20.81,24.04,27.74,41.62,6 15/16,8 1/2
18,21.63,24.75,28.84,43.27,6 11/16,8 1/4
"""


@pytest.fixture
def square_file(tmp_path):
    def write(content):
        path = tmp_path / 'myscale.csv'
        path.write_text(content, 'utf-8')
        return str(path)

    return write


def test_the_square_s_figures_in_text_csv_and_json():
    status, out, _ = run_check('square')
    _, table, _ = run_check('square', '--format', 'csv')
    _, found = data('square')

    assert status == 0
    assert '   8   14.42        18.76     19.23     28.84          10     10 7/8\n' in out
    assert '\n8,14.422205102,14.42,18.761663039,18.76,19.229606802,19.23,' in table
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
    _, found = data('square', '--pitches', given)

    assert [row['rise'] for row in found['rows']] == rises


def test_what_is_printed_can_be_filled_in_and_read_back(square_file):
    """The right figures are judged right; the empty template is refused until something is filled in."""
    _, blank, _ = run_check('square', '--blank', '--pitches', '1 to 24')
    right = {str(row['rise']): row for row in data('square', '--pitches', '1 to 24')[1]['rows']}
    head, *rows = (line.split(',') for line in blank.splitlines())
    filled = [[row[0], *(right[row[0]][key]['text'] for key in head[1:])] for row in rows]
    status, found = data('square', '--reads', square_file('\n'.join(map(','.join, [head, *filled]))))
    refused, _, said = run_check('square', '--reads', square_file(blank))

    assert (status, found['verdict'], found['counts']['right']) == (0, 'right', 144)
    assert refused == 2
    assert 'has no figure in it' in said


@pytest.mark.parametrize('encoding', ['utf-16-le', 'utf-16-be', 'utf-8'])
def test_a_file_with_the_mark_of_its_letters_is_read(square_file, encoding):
    """As some terminals write what is sent into a file."""
    printed = run_check('square', '--blank')[1]
    filled = printed.replace('\n6,', '\n6,13.42', 1)
    path = square_file(filled)
    told = run_check('square', '--reads', path)
    with open(path, 'wb') as file:
        file.write(f'\ufeff{filled}'.replace('\n', '\r\n').encode(encoding))

    assert run_check('square', '--reads', path) == told
    assert told[0] == 0


def test_an_old_square_in_text(square_file):
    status, out, _ = run_check('square', '--reads', square_file(OLD))

    assert status == 1
    assert out == (
        '18 figures read\n'
        '  rise       column  shown  right            off\n'
        '     8  hip, valley  18.78  18.76  0.018 in long  17, cut off\n'
        '    17  hip, valley  24.04  24.02  0.019 in long  17\n'
        '    18  hip, valley  24.75  24.74  0.011 in long  17, cut off\n'
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
        '  rise      column   shown    right            off\n'
        '    17  jack cheek  7 3/16  6 15/16  0.267 in long  wrong: of 16\n'
        '   17 right\n'
        '    1 wrong\n'
        '1 misprint or bad reading: look again. Its hip figures follow √288, as they\n'
        'should.\n'
    )


def test_a_lone_figure_that_is_cut_off_in_text(square_file):
    rounded = 'rise,common,hip_valley,jack_16,jack_24,jack_cheek,hip_cheek\n7,,18.36,,,,\n9,,19.20,,,,\n10,,19.70,,,,\n'
    status, out, _ = run_check('square', '--reads', square_file(rounded))

    assert status == 1
    assert '     9  hip, valley  19.20  19.21  0.009 in short  cut off, alone\n' in out
    assert '1 misprint or bad reading: look again.' in out


def test_a_square_judged_in_csv_and_json(square_file):
    path = square_file(OLD)
    _, table, _ = run_check('square', '--reads', path, '--format', 'csv')
    _, found = data('square', '--reads', path)

    assert table.splitlines()[:3] == [
        'rise,column,shown_inches,shown_text,right_inches,right_text,difference_inches,difference_text,verdict,'
        'belongs_to_rise',
        '8,common,14.420000000,14.42,14.422205102,14.42,-0.002205102,−0.002,right,',
        '8,hip_valley,18.780000000,18.78,18.761663039,18.76,0.018336961,0.018,seventeen,',
    ]
    assert found['hip_convention'] == 'seventeen'
    assert not any(cell['misprint'] for cell in found['cells'])


def test_a_square_can_come_through_standard_input(monkeypatch):
    monkeypatch.setattr('sys.stdin', io.StringIO(OLD))

    assert run_check('square', '--reads', '-')[0] == 1
