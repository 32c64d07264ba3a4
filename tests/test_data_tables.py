"""data --table: every reference table for other programs, as many rows and figures as the book prints."""

from __future__ import annotations

import csv
import json
from fractions import Fraction
from io import StringIO

import pytest
from asking import ask

from tablegen.settings import Settings
from tablegen.tables.data_columns import table_data
from tablegen.tables.finish import cells
from tablegen.tables.tables import tables

HELP = 'see rafterbook data --help'
EVERY = tables(Settings())


def rows_of(*words: str) -> list[dict]:
    status, told, remarks = ask('data', *words)
    assert (status, remarks) == (0, '')
    return list(csv.DictReader(StringIO(told)))


def worth(mixed: str) -> Fraction:
    """Return the value of a mixed number with its sign."""
    size = sum(map(Fraction, mixed.removeprefix('−').split()))
    return -size if mixed.startswith('−') else size


def test_the_list_names_every_table():
    listed = rows_of('--tables')

    assert [row['table'] for row in listed] == [table.key for table in EVERY]
    assert all(row['title'] and row['measured'] for row in listed)


@pytest.mark.parametrize('table', EVERY, ids=lambda table: table.key)
def test_every_figure_of_a_table_is_told(table):
    """Text as the book prints it, and a number worth the same."""
    rows = table.rows(Settings())
    printed = [list(cells(row).values()) for row in rows]
    names = next(table_data(rows, table.names()))
    told = rows_of('--table', table.key)

    assert len(told) == len(printed)
    for row, book in zip(told, printed, strict=True):
        shown = [name for name in names if f'{name.removesuffix("_inches")}_text' not in names]
        assert len(shown) == len(book)
        for name, cell in zip(shown, book, strict=True):
            if not name.endswith('_text'):
                assert row[name] == cell.removesuffix('°').replace('−', '-')
                continue
            assert row[name] == cell
            assert not cell or Fraction(row[f'{name.removesuffix("_text")}_inches']) == worth(cell)


def test_json_lines_say_what_csv_says():
    words = ('--table', 'hips', '--pitches', '8', '--nearest', '1/8')
    assert [json.loads(line) for line in ask('data', *words, '--format', 'jsonl')[1].splitlines()] == rows_of(
        *words
    )


def test_one_row():
    """Source: t/2 · 8/√288 = 0.354, the nearest eighth 3/8; √(288 + 64) = 18.762."""
    (row,) = rows_of('--table', 'hips', '--pitches', '8', '--nearest', '1/8')

    assert (row['drop_plumb_inches'], row['drop_plumb_text']) == ('0.375000', '3/8')
    assert (row['per_foot_inches'], row['backing_bevel_degrees']) == ('18.762', '23.09')


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (['--table', 'hipz'], "--table: 'hipz' is no reference table; next: did you mean hips?"),
        (['--table', 'x'], "--table: 'x' is no reference table; next: rafterbook data --tables lists them"),
        (
            ['--table', 'hips', '--runs', '4 ft'],
            '--runs: a reference table has no runs; next: leave --runs out',
        ),
        (['--tables', '--format', 'xml'], f"--format: 'xml' is unknown; allowed: csv, jsonl; next: {HELP}"),
    ],
)
def test_what_is_no_table_is_refused_in_a_line(words, line):
    assert ask('data', *words) == (2, '', f'rafterbook: {line}\n')
