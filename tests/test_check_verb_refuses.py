"""The verb check refuses: each mistake gets one line, with the next step, and status 2."""

import pytest
from check_support import run_check

JSON = ('--format', 'json')
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
            ('square', '--pitches', '3 to 30'),
            "--pitches: '3 to 30' is off the table; allowed: '2 to 18' or 4,6,8: whole inches per foot, 1 to 24",
        ),
        (
            ('square', '--pitches', '8 to 4'),
            "--pitches: '8 to 4' is off the table; allowed: '2 to 18' or 4,6,8: whole inches per foot, 1 to 24",
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
            ('corner', '--along', '6', '8', '--diagonal', '15'),
            '--diagonal: 1 ft 3 in cannot join sides of 6 in and 8 in; allowed: between 2 in and 1 ft 2 in; '
            'next: measure again',
        ),
    ],
)
def test_bad_input_gets_one_line_and_status_two(argv, said):
    status, out, err = run_check(*argv)

    line = said if '; next: ' in said else f'{said}; next: see rafterbook check {argv[0]} --help'
    assert (status, out) == (2, '')
    assert err == f'rafterbook: {line}\n'


def test_a_file_that_is_no_text_is_refused(tmp_path):
    path = tmp_path / 'square.csv'
    path.write_bytes(b'rise\xff')
    status, _, err = run_check('square', '--reads', str(path))

    assert (status, err) == (
        2,
        f'rafterbook: {path}: is no UTF-8 text, at byte 5; allowed: a CSV file of what the square shows; '
        'next: see rafterbook check square --help\n',
    )


@pytest.mark.parametrize(
    ('argv', 'line'),
    [
        ((), 'CHECK is missing; next: see rafterbook check --help'),
        (
            ('lenght',),
            "'lenght' is no CHECK; allowed: length, square, steps, corner, turn-over; next: did you mean length?",
        ),
    ],
)
def test_a_check_that_is_none_is_told(argv, line):
    assert run_check(*argv) == (2, '', f'rafterbook check: {line}\n')


def test_a_check_is_asked_by_its_own_options():
    """The error names the check, not the verb, and lists what that check takes."""
    line = (
        "rafterbook check turn-over: '--gpa' is unknown; allowed: --gap, --over, --within, --format; "
        'next: did you mean --gap?'
    )
    assert run_check('turn-over', '--gap', '1/16', '--gpa', '1') == (2, '', f'{line}\n')


@pytest.mark.parametrize(
    ('argv', 'said'),
    [
        (
            ('length', '--of', 'tail', '--pitch', '6', '--run', '1', '--reads', '1'),
            "--of: 'tail' is unknown; allowed: common, hip-valley, jack-difference, rise",
        ),
        (
            ('corner', '--along', '6', '8', '--diagonal', '10', '--format', 'csv'),
            "--format: 'csv' is unknown; allowed: text, json",
        ),
    ],
)
def test_an_unknown_word_is_told_with_those_known(argv, said):
    assert run_check(*argv) == (2, '', f'rafterbook: {said}; next: see rafterbook check {argv[0]} --help\n')
