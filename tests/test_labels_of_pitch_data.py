"""The data files of what a pitch has but once, and of the square: every figure under its name, worked out in space."""

from __future__ import annotations

import csv
import json
from io import StringIO

import pytest
from asking import ask
from labels import square_pages
from labels.expected import BY_PITCH
from labels.members import common, hip_and_jacks
from oracle.corner import hip_run, rise
from oracle.framing_square import arms
from oracle.rounding import Printed, part
from skewed import SKEWED

WAYS, CHEEK = ('level', 'along'), ('top', 'top_12_and', 'side', 'blade')
HELD = ('body', 'tongue')


def both(name: str) -> list[str]:
    return [f'{name}_{way}' for way in WAYS]


COMMON = [
    'common_plumb_cut', 'common_level_cut', 'common_held', 'common_per_foot', 'common_per_foot_part',
    'common_tail_per_foot', *both('common_at_ridge'), 'common_height', 'common_heel', 'common_notch', 'common_left',
]  # fmt: skip
"""Names in data of what the page of the common rafter says, in its order."""
CORNER = [
    'hip_plumb_cut', 'hip_level_cut', 'hip_held', 'hip_per_foot', 'hip_per_foot_part', 'hip_tail_per_foot',
    'hip_backing', 'hip_drop', 'valley_heel_out', *both('hip_at_ridge'), *both('hip_between_commons'),
    *both('jack_at_hip'), *(f'hip_cheek_{one}' for one in CHEEK), *(f'jack_cheek_{one}' for one in CHEEK),
    *both('hip_points'), *both('hip_set_back'), *both('jack_points'),
    *(f'{member}_{one}' for member in ('dropped_hip', 'valley') for one in ('height', 'heel', 'seat', 'left')),
    *(f'jack_difference_{one}_in' for one in ('12', '16', '19_2', '24')),
]  # fmt: skip
"""The same of hip, valley and jacks."""
SIGNS = {'†': 'past_a_quarter', '‡': 'past_a_third', '§': 'thin'}


@pytest.fixture(scope='module')
def settings(tmp_path_factory) -> str:
    """Return the skewed book's settings file."""
    path = tmp_path_factory.mktemp('data') / 'skewed.toml'
    path.write_text(SKEWED)
    return str(path)


def objects(*words: str) -> list[dict]:
    """Return the rows that the command tells as JSON lines, CSV telling the same."""
    status, out, err = ask('data', *words, '--format', 'jsonl')
    assert (status, err) == (0, '')
    found = [json.loads(line) for line in out.splitlines()]
    rows = list(csv.DictReader(StringIO(ask('data', *words)[1])))
    for one, row in zip(found, rows, strict=True):
        for key, value in one.items():
            if isinstance(value, dict):
                unit = next(name for name in value if name in ('inches', 'degrees'))
                assert row[f'{key}_{unit}'] == value[unit]
                assert row[f'{key}_text'] == value.get('text', row[f'{key}_text'])
    return found


def told(figure: Printed) -> dict[str, object]:
    """Return a printed figure as JSON should tell it."""
    bare = figure.rstrip('†‡§').removeprefix('12 & ')
    if bare.endswith('°'):
        return {'degrees': figure.exact}
    marks = [SIGNS[sign] for sign in figure if sign in SIGNS]
    return {'inches': figure.exact, 'text': bare} | ({'marks': marks} if marks else {})


def test_what_a_pitch_has_but_once(settings):
    """Every figure of its opening, and that no bird's mouth is missing."""
    rows = objects(settings, '--table', 'values')
    for row, (label, at) in zip(rows, BY_PITCH, strict=True):
        figures = dict(
            zip([*COMMON, *CORNER], [*common(at).values(), *hip_and_jacks(at).values()], strict=True)
        )
        squares = {'common': arms(12, rise(at, 12)), 'hip': arms(hip_run(at, 12), rise(at, 12))}
        for member, held in squares.items():
            del figures[f'{member}_held']
            figures |= {f'{member}_{name}': part(one) for name, one in zip(HELD, held, strict=True)}
        assert row.pop('pitch') == f'{label} in 12'
        assert [row.pop(f'{member}_why') for member in ('common', 'dropped_hip', 'valley')] == [None] * 3
        unmarked = {key: {k: v for k, v in value.items() if v != []} for key, value in row.items()}
        assert unmarked == {name: told(figure) for name, figure in figures.items()}


@pytest.mark.parametrize(
    ('key', 'wanted', 'names'),
    [
        ('engraved', square_pages.engraved(), 'common hip_valley jack_16 jack_24 jack_cheek hip_cheek'),
        (
            'drift',
            square_pages.drift(),
            'step ' + ' '.join(f'off_after_{n}_steps' for n in (4, 8, 12, 16, 20, 24)),
        ),
        ('turned-over', square_pages.turned_over(), 'out out_in_24_in out_in_12_ft'),
        ('mark-to-mark', square_pages.mark_to_mark(), 'diagonal out_in_24_in'),
    ],
)
def test_tables_on_the_square(settings, key, wanted, names):
    rows = objects(settings, '--table', key)
    for row, (label, at) in zip(rows, wanted.rows, strict=True):
        stubs = [row.pop(name) for name in list(row) if name not in names.split()]
        called = [one['text'] if isinstance(one, dict) else str(one).removesuffix(' in 12') for one in stubs]
        assert ' & '.join(called) == label
        figures = [column.figure(at) for column in wanted.columns if not column.head.endswith('by 17')]
        assert list(row) == names.split()
        assert [one['text'] for one in row.values() if 'text' in one] == [
            '0.000' if figure == '0' else figure.removeprefix('+') for figure in figures if '°' not in figure
        ]
        assert [
            (one, figure.exact) for one, figure in zip(row.values(), figures, strict=True)
            if getattr(figure, 'exact', None) not in (None, *one.values())
        ] == []  # fmt: skip


def test_they_are_listed(settings):
    """What a pitch has but once after its runs and jacks, the square's last; every column says what it is measured on."""
    listed = {one['table']: one for one in objects(settings, '--tables')}

    assert list(listed)[:3] == ['runs', 'jack-lengths', 'values']
    assert list(listed)[-4:] == ['engraved', 'drift', 'turned-over', 'mark-to-mark']
    columns = [column for key in ('values', *list(listed)[-4:]) for column in listed[key]['columns'][1:]]
    assert [column['key'] for column in columns if not (column['measured'] and column['head'])] == []
