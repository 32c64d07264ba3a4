"""find's JSON Schema: it cannot lag behind the answer's records, and every kind of roof's answer is what it says."""

from __future__ import annotations

import json
from importlib.resources import files

import pytest
from asking import ask
from jsonschema import Draft202012Validator
from labels.asked import ASKED, PITCH, RUN
from msgspec import Struct
from record_schemas import schemas

from layouts.told.find_answer import ASKED as ASKED_FOR
from layouts.words.fields import FIELDS
from tablegen.roof.layout import Brace, PitchFound, Rectangle, RectangleCheck

SCHEMA = json.loads(files('layouts.told').joinpath('schemas/find.json').read_text('utf-8'))
QUESTIONS = {
    **{name: (PITCH, RUN, *words) for name, words in ASKED.items()},
    'picked': ('8', '10 ft', '--show', 'drop, backing'),
    'nothing left': ('8', '1 in', '--ridge-thickness', '3'),
    'shallow': ('24', '10 ft', '--seat', '1/2'),
    'cut through': ('24', '10 ft', '--hip-thickness', '11', '--stock', '2x6'),
    'feet': ('30 deg', '4 m', '--lengths', 'feet-inches', '--spacing', '19.2'),
    'every caution': ('2', '3 ft', '--overhang', '30 in', '--seat', '1'),
    'no tail': ('8', '10 ft', '--overhang', '0', '--with', '8'),
    'steeper': ('5', '10 ft', '--with', '20'),
    'five sides': ('23 1/2', '10 ft', '--sides', '5'),
}


def faults(told: object) -> list[str]:
    """Return what the schema finds wrong."""
    return [f'{fault.json_path}: {fault.message}' for fault in Draft202012Validator(SCHEMA).iter_errors(told)]


@pytest.mark.parametrize('name', schemas())
def test_a_schema_is_one_and_that_of_the_records(name):
    made = schemas()[name]
    Draft202012Validator.check_schema(made)

    assert json.loads(files('layouts.told').joinpath(f'schemas/{name}.json').read_text('utf-8')) == made


@pytest.mark.parametrize('name', QUESTIONS)
def test_an_answer_is_what_the_schema_says(name):
    status, out, _ = ask('find', *QUESTIONS[name], '--format', 'json')

    assert status == 0
    assert faults(json.loads(out)) == []


@pytest.mark.parametrize(
    'change',
    [
        lambda told: told.pop('defers'),
        lambda told: told.update(new='x'),
        lambda told: told['drop'].pop('plumb'),
        lambda told: told['drop']['plumb'].update(inches='0.35'),
        lambda told: told['drop'].update(plumb={'degrees': '0.353553391'}),
        lambda told: told['seat']['common'].update(mark='deep'),
        lambda told: told['jack']['hip_jacks'][0].update(number='1'),
        lambda told: told['caution'][0].update(of=['everyone']),
    ],
)
def test_an_answer_that_is_not_is_refused(change):
    told = json.loads(ask('find', '8', '10 ft', '--format', 'json')[1])
    change(told)

    assert faults(told)


def test_every_field_is_called_something_and_nothing_else_is():
    """The names of the schema's objects are the records' fields; those of the dialect and of cautions are no fields."""
    objects = {
        name: one for name, one in SCHEMA['$defs'].items() if name not in ('length', 'angle', 'called')
    }
    fields = {name for one in objects.values() for name in one.get('properties', ())} - {'from'}
    groups = {name for one in SCHEMA['anyOf'] for name in one['properties']} - {
        *ASKED_FOR[0],
        *ASKED_FOR[1],
        'defers',
    }
    without_a_roof = {
        name for record in (Brace, PitchFound, Rectangle, RectangleCheck) for name in hints(record)
    }
    verbs = {'brace', 'pitch_found', 'rectangle', 'rectangle_check'}

    assert {
        words.lower().replace(' ', '_') for words in FIELDS
    } == fields | groups | without_a_roof | verbs | {'pitch'}


def hints(record: type[Struct]) -> set[str]:
    return set(record.__struct_fields__)
