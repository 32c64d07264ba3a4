"""The JSON Schema of find's answer, made from the types of its records.

python -m layouts.told.schema > layouts/told/schemas/find.json
"""

from __future__ import annotations

import json
import re
import sys
from dataclasses import fields, is_dataclass
from enum import StrEnum
from types import NoneType, UnionType
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

from layouts.told.find_answer import ASKED, CAUTION
from layouts.told.objects import DATUM, FROM
from tablegen.numbers.figure import DEGREE, INCH, RATIO
from tablegen.roof.answer import Answer
from tablegen.roof.called import Called, Of

Schema = dict[str, Any]
WORDS: Schema = {'type': 'string', 'minLength': 1}
UNITS = {INCH: 'length', DEGREE: 'angle', RATIO: 'decimal'}
PLAIN: dict[Any, Schema] = {str: WORDS, bool: {'type': 'boolean'}, int: {'type': 'integer', 'minimum': 0}}


def find_schema() -> Schema:
    """Return what find tells a program of any roof; groups that were not picked are not there."""
    defs: dict[str, Schema] = {
        'decimal': {
            'description': 'The exact value, correctly rounded to nine places.',
            'type': 'string',
            'pattern': r'^-?[0-9]+\.[0-9]{9}$',
        },
        'length': _object({'inches': _ref('decimal'), 'text': WORDS}),
        'angle': _object({'degrees': _ref('decimal')}),
    }
    roofs = [_roof(record, defs) for record in get_args(Answer)]
    return {
        '$schema': 'https://json-schema.org/draft/2020-12/schema',
        'title': 'rafterbook find --format json',
        'description': 'A regular roof, a corner of two pitches, a roof of many sides, a shed; what a roof has not is not there.',
        'anyOf': roofs,
        '$defs': dict(sorted(defs.items())),
    }


def _roof(record: type, defs: dict[str, Schema]) -> Schema:
    """Return the answer about a kind of roof: what was asked, its groups, its cautions, and who decides."""
    groups = _of_record(record, defs)['properties']
    asked = {name: _ref('length') if name in ASKED[1] else WORDS for name in (*ASKED[0], *ASKED[1])}
    always = {**asked, CAUTION: groups.pop(CAUTION), 'defers': WORDS}
    return _object(always) | {'properties': {**always, **groups}}


def _of(hint: Any, defs: dict[str, Schema]) -> Schema:
    """Return the schema of a value by its type; that of a record is kept under its name."""
    if get_origin(hint) is Annotated:
        return _ref(UNITS[get_args(hint)[1]])
    if get_origin(hint) in (Union, UnionType):
        told = [_of(one, defs) for one in get_args(hint) if one is not NoneType]
        return told[0] if len(told) == 1 else {'anyOf': told}
    if get_origin(hint) is tuple:
        return {'type': 'array', 'items': _of(get_args(hint)[0], defs)}
    if hint in PLAIN:
        return PLAIN[hint]
    if issubclass(hint, StrEnum):
        return {'enum': [one.value for one in hint]}
    name = re.sub(r'(?<=[a-z])(?=[A-Z])', '_', hint.__name__).lower()
    if name not in defs:
        defs[name] = _of_called(defs) if hint is Called else _of_record(hint, defs)
    return _ref(name)


def _of_record(record: type, defs: dict[str, Schema]) -> Schema:
    assert is_dataclass(record)
    hints = get_type_hints(record, include_extras=True)
    named = {field.name: hints[field.name] for field in fields(record) if field.name != DATUM}
    made = {name: _of(hint, defs) for name, hint in named.items()}
    left_out = [name for name, hint in named.items() if NoneType in get_args(hint)]
    return _object(made | ({FROM: WORDS} if hasattr(record, DATUM) or DATUM in hints else {}), left_out)


def _of_called(defs: dict[str, Schema]) -> Schema:
    of = {'type': 'array', 'items': _of(Of, defs), 'minItems': 1}
    return _object({'name': WORDS, 'of': of, 'text': WORDS, 'source': WORDS})


def _object(properties: dict[str, Schema], left_out: list[str] | None = None) -> Schema:
    required = [name for name in properties if name not in (left_out or ())]
    return {
        'type': 'object',
        'properties': properties,
        'required': required,
        'additionalProperties': False,
    }


def _ref(name: str) -> Schema:
    return {'$ref': f'#/$defs/{name}'}


if __name__ == '__main__':
    sys.stdout.write(json.dumps(find_schema(), indent=2, ensure_ascii=False) + '\n')
