"""data: the run tables for other programs, a row at a time."""

from __future__ import annotations

import csv
import json
import tracemalloc
from io import StringIO

import pytest
from asking import ask

from layouts.command import main

HELP = 'see rafterbook data --help'
PITCH = 'a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to 24 in 12'
LENGTH = 'a length such as 4 ft, 4\' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m or 1400 mm'
HEADING = 'pitch,run_inches,run_text,common_inches,common_text,hip_valley_inches,hip_valley_text,rise_inches,rise_text\n'
# Source: √180, √324, √200.25, √344.25 and twice each, worked by mpmath, a general library, at 30 digits.
TWO_PITCHES = (
    HEADING
    + """\
6 in 12,12.000000000,12,13.416407865,13 7/16,18.000000000,18,6.000000000,6
6 in 12,24.000000000,24,26.832815730,26 13/16,36.000000000,36,12.000000000,12
7 1/2 in 12,12.000000000,12,14.150971698,14 1/8,18.553975315,18 9/16,7.500000000,7 1/2
7 1/2 in 12,24.000000000,24,28.301943396,28 5/16,37.107950631,37 1/8,15.000000000,15
"""
)
ASKED = ('--pitches', '6, 7.5', '--runs', '1 ft to 2 ft by 1 ft')
LONG = ('--pitches', '1 to 24', '--runs', '1/16 in to 500 ft by 1/16 in')


def test_csv():
    assert ask('data', *ASKED) == (0, TWO_PITCHES, '')


def test_json_lines_say_what_csv_says():
    status, told, remarks = ask('data', '--format', 'jsonl', *ASKED)

    assert (status, remarks) == (0, '')
    told = [json.loads(line) for line in told.splitlines()]
    assert [list(row) for row in told] == 4 * [['pitch', 'run', 'common', 'hip_valley', 'rise']]
    assert [flat(row) for row in told] == list(csv.DictReader(StringIO(TWO_PITCHES)))


def flat(row):
    """Return an object of JSON as CSV has it: each figure's own values after its name."""
    found = {}
    for name, value in row.items():
        inner = value.items() if isinstance(value, dict) else [('', value)]
        found |= {f'{name}_{key}'.rstrip('_'): one for key, one in inner}
    return found


def test_the_whole_default_book():
    told = ask('data')[1].splitlines()
    assert len(told) == 1 + 24 * 288
    assert told[-1] == '24 in 12,288.000000000,288,643.987577520,644,705.453045922,705 7/16,576.000000000,576'


def test_find_says_the_same():
    (row,) = csv.DictReader(StringIO(ask('data', '--pitches', '30 deg', '--runs', '55 1/2')[1]))
    lengths = json.loads(ask('find', '30 deg', '55 1/2', '--format', 'json')[1])['length']

    for name in ('common', 'hip_valley', 'rise'):
        assert lengths[name] == {'inches': row[f'{name}_inches'], 'text': row[f'{name}_text']}


def test_lengths_read_as_asked():
    told = ask('data', '--pitches', '6', '--runs', '4 ft', '--nearest', '1/8', '--lengths', 'feet-inches')[1]
    assert (
        told
        == HEADING + '6 in 12,48.000000000,48,53.665631460,4′ 5 5/8″,72.000000000,6′ 0″,24.000000000,2′ 0″\n'
    )


def test_a_settings_file_is_followed_and_overruled(tmp_path):
    file = tmp_path / 'my-book.toml'
    file.write_text(
        'smallest_part = "1/8"\npitches = [6, 7.5]\nruns = {from = 12, to = 24, by = 12}', 'utf-8'
    )

    assert len(ask('data', str(file))[1].splitlines()) == 5
    assert ask('data', str(file), '--nearest', '1/16') == (0, TWO_PITCHES, '')
    assert len(ask('data', str(file), '--runs', '4 ft', '--pitches', '6')[1].splitlines()) == 2


def test_a_file_with_a_byte_order_mark_is_read(tmp_path):
    file = tmp_path / 'my-book.toml'
    file.write_text('pitches = [6]\nruns = {from = 12, to = 12}', 'utf-8-sig')
    assert ask('data', str(file)) == (0, ''.join(TWO_PITCHES.splitlines(keepends=True)[:2]), '')


@pytest.mark.parametrize('form', ['csv', 'jsonl'])
def test_rows_are_not_held(monkeypatch, form):
    """Over two million rows are asked for; the reader leaves after three, and little memory was taken."""
    out, written = StringIO(), []

    def take(text):
        written.append(text)
        if len(written) == 4:
            raise BrokenPipeError

    monkeypatch.setattr(out, 'write', take)
    tracemalloc.start()
    status = main(['data', '--format', form, *LONG], out, StringIO())
    _, most_bytes = tracemalloc.get_traced_memory()
    tracemalloc.stop()

    assert status == 141
    assert len(written) == 4
    assert most_bytes < 2_000_000


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (['--format', 'xml'], "--format: 'xml' is unknown; allowed: csv, jsonl"),
        (['--pitches', ''], f"--pitches: '' is no pitch; allowed: {PITCH}"),
        (
            ['--pitches', '4 to 2'],
            "--pitches: the range goes backwards, 4 to 2; allowed: a range such as '4 to 12 by 1/2'",
        ),
        (
            ['--pitches', '4 to 12 by 0'],
            "--pitches: a range needs inches of rise and a step above 0; allowed: a range such as '4 to 12 by 1/2'",
        ),
        (['--pitches', '1 to 24 by 1/16'], '--pitches: 369 pitches are too many; allowed: up to 200'),
        (['--runs', ''], f"--runs: '' is no length; allowed: {LENGTH}"),
        (['--runs', '1 in to x'], f"--runs: 'x' is no length; allowed: {LENGTH}"),
        (['--runs', '0 to 4'], '--runs: a run of 0 has no rafter; allowed: above 0'),
        (
            ['--runs', '2 ft to 1 ft'],
            '--runs: the runs go backwards, from 2 ft to 1 ft; allowed: 2 ft or more',
        ),
        (['--runs', '1 in to 2 ft by 0'], '--runs: a step of 0 gets nowhere; allowed: from 1/16 in up'),
        (
            ['--runs', '1 in to 2 ft by 1/32'],
            '--runs: 1/32 in is below the smallest part; allowed: from 1/16 in up',
        ),
        (
            ['--nearest', '1/8', '--runs', '1 in to 2 ft by 1/16'],
            '--runs: 1/16 in is below the smallest part; allowed: from 1/8 in up',
        ),
    ],
)
def test_what_makes_no_table_is_refused_in_a_line(words, line):
    assert ask('data', *words) == (2, '', f'rafterbook: {line}; next: {HELP}\n')


def test_too_many_runs_are_counted():
    line = '--runs: 1,919,985 runs are too many; allowed: up to 100,000; next: take a longer step'
    assert ask('data', '--runs', '1 in to 10000 ft by 1/16') == (2, '', f'rafterbook: {line}\n')


def test_every_pitch_at_fault_is_told():
    told = ''.join(
        f"rafterbook: --pitches[{place}]: '{written}' is no pitch; allowed: {PITCH}; next: {HELP}\n"
        for place, written in ((2, 'x'), (3, 'y'))
    )
    assert ask('data', '--pitches', '4,x,y') == (2, '', told)
