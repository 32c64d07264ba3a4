"""The data files: every figure of the reference tables and of the runs under its name, worked out in space."""

from __future__ import annotations

import csv
from fractions import Fraction
from io import StringIO

import pytest
from asking import ask
from claimed import unclaimed
from labels.data_names import marks_of, marks_said, names_of, slug, stub_heads, stubs_of
from labels.every import EXPECTED
from labels.expected import BY_PITCH, Labels
from labels.pitch_pages import RUNS
from oracle.rounding import decimal, part
from skewed import LONGEST_FT, SKEWED

BY_KEY = {one.key: one for one in EXPECTED}


@pytest.fixture(scope='module')
def settings(tmp_path_factory) -> str:
    """Return the skewed book's settings file."""
    path = tmp_path_factory.mktemp('data') / 'skewed.toml'
    path.write_text(SKEWED)
    return str(path)


def told(*words: str) -> list[dict[str, str]]:
    """Return the rows that the command tells, by name."""
    status, out, err = ask('data', *words)
    assert (status, err) == (0, '')
    return list(csv.DictReader(StringIO(out)))


def cells(name: str, figure: str) -> dict[str, str]:
    """Return a printed figure as a data file has it: one value, or one in decimals and one as printed."""
    if not name.endswith('*'):
        return {name: figure.removesuffix('°').replace('−', '-')}
    bare = figure.replace('−', '-')
    value = sum(map(Fraction, bare.removeprefix('-').split())) if bare else None
    shown = '' if value is None else ('-' if bare.startswith('-') else '') + decimal(value, 6)
    return {f'{name[:-1]}inches': shown, f'{name[:-1]}text': figure}


def label_cells(wanted: Labels, label: str) -> dict[str, str]:
    """Return what a row is called by."""
    stubs = stubs_of(wanted)
    parts = label.split() if len(stubs) > 1 else [label]
    pitches = stubs in (('pitch',), ('a', 'b'))
    return {stub: f'{one} in 12' if pitches else one for stub, one in zip(stubs, parts, strict=True)}


@pytest.mark.parametrize('key', BY_KEY)
def test_a_table_as_data(settings, key):
    wanted = BY_KEY[key]
    rows, names, flags = told(settings, '--table', key), names_of(wanted), marks_of(wanted)
    expected, dashed = [], set()
    for place, (label, value) in enumerate(wanted.rows):
        row, figures = label_cells(wanted, label), {one.head: one.figure(value) for one in wanted.columns}
        for name, figure in zip(names, figures.values(), strict=True):
            row |= cells(name, '' if figure == '–' else figure.rstrip('†‡§'))
        for name, (head, marks) in flags.items():
            row[name] = str(max(map(marks.find, figures[head]), default=-1) + 1)
            dashed |= {(place, name)} if figures[head] == '–' else set()  # no figure that could be marked
        expected.append(row)

    assert list(rows[0]) == list(expected[0])
    assert [
        (row[next(iter(row))], name, row[name], wished[name])
        for place, (row, wished) in enumerate(zip(rows, expected, strict=True))
        for name in row
        if row[name] != wished[name] and (place, name) not in dashed
    ] == []


def test_the_list_of_tables(settings):
    """Each by its name, with its title, its heads in their order and the line that it is measured from."""
    rows = told(settings, '--tables')

    assert [row['table'] for row in rows] == list(BY_KEY)
    for row in rows:
        wanted, heads = BY_KEY[row['table']], row['heads'].split(' | ')
        named = [*stub_heads(wanted), *(column.head for column in wanted.columns)]
        says = (*wanted.says, *marks_said(wanted))
        assert row['title'] == wanted.title
        assert heads[: len(named)] == named
        assert [slug(head) for head in heads[len(named) :]] == list(marks_of(wanted))
        assert [words for words in says if words not in row['measured']] == [], row['measured']
        assert unclaimed(row['measured'].replace('; marks: thin', '; thin'), (*says, 'inches')) == []


def test_runs_as_data(settings):
    """A run's lengths in decimals, nine of them, and as printed."""
    names = {'common': RUNS[0], 'hip_valley': RUNS[1], 'rise': RUNS[2]}
    expected = []
    for label, at in BY_PITCH:
        for run in range(1, 12 * LONGEST_FT + 1):
            row = {'pitch': f'{label} in 12', 'run_inches': decimal(run, 9)}
            for name, runs in names.items():
                length = runs.length(at, run)
                row |= {f'{name}_inches': decimal(length, 9), f'{name}_text': part(length)}
            expected.append(row)
    assert told(settings) == expected
