"""data --table: every table for other programs, as CSV and as JSON lines that the package's schema allows."""

from __future__ import annotations

import csv
import json
from importlib.resources import files
from io import StringIO

import pytest
from asking import ask
from jsonschema import Draft202012Validator

from tablegen.settings import Settings
from tablegen.tables.tables import every_table

HELP = 'see rafterbook data --help'
EVERY = [
    *(table.key for table in every_table(Settings())),
    'engraved',
    'drift',
    'turned-over',
    'mark-to-mark',
]
SCHEMA = json.loads(files('layouts.told').joinpath('schemas/data.json').read_text('utf-8'))


PITCH = {'pitch': '8 in 12'}


def rows_of(*words: str) -> list[dict]:
    status, told, remarks = ask('data', *words)
    assert (status, remarks) == (0, '')
    return list(csv.DictReader(StringIO(told)))


def objects_of(*words: str) -> list[dict]:
    status, told, remarks = ask('data', *words, '--format', 'jsonl')
    assert (status, remarks) == (0, '')
    return [json.loads(line) for line in told.splitlines()]


def faults(told: object, what: str) -> list[str]:
    """Return what a schema finds wrong with a row, or with a table of the list."""
    validator = Draft202012Validator(SCHEMA | {'$ref': f'#/$defs/{what}'})
    return [fault.message for fault in validator.iter_errors(told)]


def test_the_schema_is_one():
    Draft202012Validator.check_schema(SCHEMA)


@pytest.mark.parametrize('key', EVERY)
def test_rows_are_what_the_schema_says(key):
    words = ('--pitches', '4, 7.5, 30 deg') + (
        ('--runs', '1 ft to 5 ft by 1 in') if key in ('runs', 'jack-lengths') else ()
    )
    rows = objects_of('--table', key, *words)

    assert rows
    assert [faults(row, 'row') for row in rows if faults(row, 'row')] == []


@pytest.mark.parametrize(
    'row',
    [
        PITCH | {'heel': {'inches': '2.3', 'text': '2 5/16'}},
        PITCH | {'heel': {'inches': '2.333333333'}},
        PITCH | {'heel': {'inches': 2.333333333, 'text': '2 5/16'}},
        PITCH | {'heel': {'inches': '2.333333333', 'text': '2 5/16', 'marks': ['deep']}},
        PITCH | {'Heel': {'inches': '2.333333333', 'text': '2 5/16'}},
        PITCH,
    ],
)
def test_another_form_is_none(row):
    assert faults(row, 'row')


def test_the_list_is_what_the_schema_says():
    listed = objects_of('--tables')

    assert [one['table'] for one in listed] == [row['table'] for row in rows_of('--tables')] == EVERY
    assert [faults(one, 'table') for one in listed if faults(one, 'table')] == []


def test_one_row():
    """Source: t/2 · 8/√288 = 0.353553391, the nearest eighth 3/8; √(288 + 64) = 18.761663039; mpmath at 30 digits."""
    words = ('--table', 'hips', '--pitches', '8', '--nearest', '1/8')
    (row,), (told,) = rows_of(*words), objects_of(*words)

    assert (row['drop_plumb_inches'], row['drop_plumb_text']) == ('0.353553391', '3/8')
    assert (row['per_foot_inches'], row['per_foot_text']) == ('18.761663039', '18.762')
    assert (row['backing_bevel_degrees'], row['backing_bevel_text']) == ('23.093469270', '23.09°')
    assert told['drop_plumb'] == {'inches': '0.353553391', 'text': '3/8'}
    assert told['backing_bevel'] == {'degrees': '23.093469270'}


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (['--table', 'hipz'], "--table: 'hipz' is no table; next: did you mean hips?"),
        (['--table', 'x'], "--table: 'x' is no table; next: rafterbook data --tables lists them"),
        (
            ['--table', 'hips', '--runs', '4 ft'],
            '--runs: a reference table has no runs; next: leave --runs out',
        ),
        (['--tables', '--format', 'xml'], f"--format: 'xml' is unknown; allowed: csv, jsonl; next: {HELP}"),
    ],
)
def test_what_is_no_table_is_refused_in_a_line(words, line):
    assert ask('data', *words) == (2, '', f'rafterbook: {line}\n')
