"""The data files: every figure of the reference tables and of the runs under its name, worked out in space."""

from __future__ import annotations

import csv
import json
import re
from io import StringIO

import pytest
from asking import ask
from claimed import unclaimed
from labels.data_names import marks_of, names_of, stub_heads, stubs_of
from labels.every import EXPECTED
from labels.expected import BY_PITCH, Labels
from labels.pitch_pages import RUNS, of_jack
from msgspec import Struct
from oracle.rounding import nine_decimals, part
from skewed import LONGEST_FT, SKEWED, SPACINGS

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


class Cell(Struct, frozen=True):
    """What a file should tell of one figure, or of what a row is called by."""

    name: str
    """As in labels.data_names."""
    exact: str
    """'' for a word or a whole number, and for no figure."""
    text: str
    marks: list[str] | None = None

    @property
    def key(self) -> str:
        return re.sub(r'_(\*|inches|degrees)$', '', self.name)

    @property
    def unit(self) -> str:
        return 'degrees' if self.name.endswith('_degrees') else '' if self.name == self.key else 'inches'

    @property
    def is_figure(self) -> bool:
        return bool(self.unit) or self.name.startswith('area')

    def csv(self) -> dict[str, str]:
        """Return its cells by the names of their columns."""
        if not self.is_figure:
            return {self.key: self.text}
        exact = {f'{self.key}_{self.unit}'.rstrip('_'): self.exact, f'{self.key}_text': self.text}
        return exact if self.marks is None else exact | {f'{self.key}_marks': ' '.join(self.marks)}

    def json(self) -> object:
        """Return its value."""
        if not self.is_figure:
            return self.text if re.search('[^0-9]', self.text) else int(self.text)
        if not self.text:
            return None
        if not self.unit:
            return self.exact
        told = {self.unit: self.exact} | ({} if self.unit == 'degrees' else {'text': self.text})
        return told if self.marks is None else told | {'marks': self.marks}


def row_of(wanted: Labels, label: str, value: object) -> list[Cell]:
    """Return what a row should tell, in the order of the printed columns."""
    stubs = stubs_of(wanted)
    parts = label.split() if len(stubs) > 1 else [label]
    pitches = stubs in (('pitch',), ('a', 'b'))
    row = [
        Cell(name, nine_decimals(value) if '*' in name else '', f'{one} in 12' if pitches else one)
        for name, one in zip(stubs, parts, strict=True)
    ]
    for name, column in zip(names_of(wanted), wanted.columns, strict=True):
        figure, signs = column.figure(value), marks_of(wanted, column.head)
        text = figure.rstrip('†‡§').replace('—', '')
        marks = None if signs is None else [signs[sign] for sign in figure[len(text) :] if sign in signs]
        row.append(Cell(name, getattr(figure, 'exact', '') if text else '', text, marks))
    return row


@pytest.mark.parametrize('key', BY_KEY)
def test_a_table_as_data(settings, key):
    wanted = BY_KEY[key]
    rows = told(settings, '--table', key)
    expected = [row_of(wanted, label, value) for label, value in wanted.rows]
    objects = [{cell.key: cell.json() for cell in row} for row in expected]
    lines = ask('data', settings, '--table', key, '--format', 'jsonl')[1].splitlines()

    assert rows == [{name: text for cell in row for name, text in cell.csv().items()} for row in expected]
    assert list(rows[0]) == [name for cell in expected[0] for name in cell.csv()]
    assert [json.loads(line) for line in lines] == objects


def test_the_list_of_tables(settings):
    """Each by its name, with its title, its columns and heads in their order and the line that it is measured from."""
    rows = told(settings, '--tables')
    lines = ask('data', settings, '--tables', '--format', 'jsonl')[1].splitlines()

    assert [row['table'] for row in rows] == [
        'runs',
        'jack-lengths',
        'values',
        *BY_KEY,
        'engraved',
        'drift',
        'turned-over',
        'mark-to-mark',
    ]
    for row, line in list(zip(rows, lines, strict=True))[3:-4]:
        wanted, listed = BY_KEY[row['table']], json.loads(line)
        keys = [cell.key for cell in row_of(wanted, *wanted.rows[0])]
        assert row['title'] == wanted.title
        assert row['columns'].split(' | ') == keys == [column['key'] for column in listed['columns']]
        assert row['heads'].split(' | ') == [*stub_heads(wanted), *(column.head for column in wanted.columns)]
        assert [words for words in wanted.says if words not in row['measured']] == [], row['measured']
        assert unclaimed(row['measured'], (*wanted.says, 'inches')) == []
        assert listed['measured'] == row['measured']


def test_runs_as_data(settings):
    """A run's lengths in decimals, nine of them, and as printed."""
    names = {'common': RUNS[0], 'hip_valley': RUNS[1], 'rise': RUNS[2]}
    expected = []
    for label, at in BY_PITCH:
        for run in range(1, 12 * LONGEST_FT + 1):
            row = {'pitch': f'{label} in 12', 'run_inches': nine_decimals(run), 'run_text': str(run)}
            for name, runs in names.items():
                length = runs.length(at, run)
                row |= {f'{name}_inches': nine_decimals(length), f'{name}_text': part(length)}
            expected.append(row)
    assert told(settings) == expected


def test_jacks_as_data(settings):
    """Each by its number from the corner at every spacing: line length and both points, none past the longest run."""
    rows = told(settings, '--table', 'jack-lengths')
    heads = {'line': 'line', 'long': 'long_point', 'short': 'short_point'}
    expected = []
    for label, at in BY_PITCH:
        for number in range(1, LONGEST_FT + 1):
            row = {'pitch': f'{label} in 12', 'number': str(number)}
            for said, spacing in SPACINGS.items():
                for head, figure in of_jack(at, spacing, number).items():
                    name = f'{heads[head]}_{said.replace(".", "_")}_in'
                    row |= {f'{name}_inches': getattr(figure, 'exact', ''), f'{name}_text': figure}
            expected.append(row)
    assert rows == expected
