"""The JSON Schemas of what verbs tell of records, made from the records' types; `python tests/record_schemas.py` writes them."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping
from enum import StrEnum
from fractions import Fraction
from pathlib import Path
from types import NoneType, UnionType
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

from msgspec import Struct

from layouts.told.find_answer import ASKED, CAUTION
from layouts.told.objects import DATUM, FROM
from layouts.told.roof_answer import ALWAYS
from tablegen.checking.corner import CornerCheck, TurnOver
from tablegen.checking.reading import LengthCheck
from tablegen.checking.square_figures import KEYS
from tablegen.checking.square_judging import SquareCheck
from tablegen.checking.steps import StepsCheck
from tablegen.checking.written import Part, Written
from tablegen.frame.cut_list import CutList
from tablegen.geometry.pitch import Pitch
from tablegen.messages import Message
from tablegen.numbers.figure import DEGREE, INCH, RATIO
from tablegen.roof.answer import Answer
from tablegen.roof.called import Called, Of
from tablegen.roof.layout import Brace, PitchFound, Rectangle, RectangleCheck

Schema = dict[str, Any]
TOP = Path(__file__).resolve().parent.parent
WORDS: Schema = {'type': 'string', 'minLength': 1}
LENGTH: Schema = {'$ref': '#/$defs/length'}
UNITS = {INCH: 'length', DEGREE: 'angle', RATIO: 'decimal'}
PLAIN: dict[Any, Schema] = {
    str: WORDS,
    bool: {'type': 'boolean'},
    int: {'type': 'integer', 'minimum': 0},
    Message: WORDS,
    Pitch: WORDS,
    Part: {'type': 'string', 'pattern': '^[0-9./]+ (in|ft|yd|mm|cm|m)$'},
    Written: LENGTH,
    Fraction: LENGTH,
}
CHECKS = {'length': LengthCheck, 'steps': StepsCheck, 'corner': CornerCheck, 'turn-over': TurnOver}
MEASURED: dict[str, Any] = {
    'pitch_found': PitchFound,
    'rectangle': Rectangle,
    'rectangle_check': RectangleCheck,
    'brace': Brace,
}


def schemas() -> dict[str, Schema]:
    """Return the schema of each file by its name."""
    return {
        'find': find_schema(),
        'check': check_schema(),
        'measured': measured_schema(),
        'roof': roof_schema(),
    }


def find_schema() -> Schema:
    """Return what find tells a program of any roof; groups that were not picked are not there."""
    defs = _dialect()
    roofs = [_roof(record, defs) for record in get_args(Answer)]
    says = 'A regular roof, a corner of two pitches, a roof of many sides, a shed; what a roof has not is not there.'
    return _file('find', says, roofs, defs)


def check_schema() -> Schema:
    """Return what a check tells a program; what it has left out is not there."""
    defs = _dialect()
    named = {'check': {'const': 'square'}}
    found = [_with({'check': {'const': name}}, _of_record(record, defs)) for name, record in CHECKS.items()]
    found[0]['properties']['marks_off'] = {'type': 'integer'}  # a reading may be short
    figures = _object({'rise': PLAIN[int], **dict.fromkeys(KEYS, LENGTH)})
    carried = _object({**named, 'rows': {'type': 'array', 'items': figures, 'minItems': 1}})
    judged = _with(named, _of_record(SquareCheck, defs))
    says = 'What a check finds, what a square should carry, what its own figures say; what is left out is not there.'
    return _file('check', says, [*found, carried, judged], defs)


def measured_schema() -> Schema:
    """Return what pitch, diagonal and brace tell a program."""
    defs = _dialect()
    found = {name: _of(record, defs) for name, record in MEASURED.items()}
    made = [
        _object({'pitch_found': found['pitch_found']}),
        _object({name: found[name] for name in ('rectangle', 'rectangle_check')}, ['rectangle_check']),
        _object({'brace': found['brace']}),
    ]
    return _file('pitch, diagonal, brace', 'A pitch, a rectangle laid out, a brace.', made, defs)


def roof_schema() -> Schema:
    """Return what roof tells a program; groups that were not picked are not there."""
    defs = _dialect()
    made = _of_record(CutList, defs)
    whole = _object({**made['properties'], 'defers': WORDS}) | {'required': [*ALWAYS, 'defers']}
    says = 'One whole roof: its members by their marks, boards, heights, cautions, what to buy; what it has not is not there.'
    return _file('roof', says, [whole], defs)


def _dialect() -> dict[str, Schema]:
    decimal = {'type': 'string', 'pattern': r'^-?[0-9]+\.[0-9]{9}$'}
    return {
        'decimal': {'description': 'The exact value, correctly rounded to nine places.', **decimal},
        'length': _object({'inches': _ref('decimal'), 'text': WORDS}),
        'angle': _object({'degrees': _ref('decimal')}),
    }


def _file(verb: str, says: str, any_of: list[Schema], defs: dict[str, Schema]) -> Schema:
    return {
        '$schema': 'https://json-schema.org/draft/2020-12/schema',
        'title': f'rafterbook {verb} --format json',
        'description': says,
        'anyOf': any_of,
        '$defs': dict(sorted(defs.items())),
    }


def _with(first: dict[str, Schema], record: Schema) -> Schema:
    required = [*first, *record['required']]
    return record | {'properties': {**first, **record['properties']}, 'required': required}


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
    if get_origin(hint) is Mapping:
        names, told = get_args(hint)
        return _object({one.value: _of(told, defs) for one in names})
    if hint in PLAIN:
        return PLAIN[hint]
    if issubclass(hint, StrEnum):
        return {'enum': [one.value for one in hint]}
    name = re.sub(r'(?<=[a-z])(?=[A-Z])', '_', hint.__name__).lower()
    if name not in defs:
        defs[name] = _of_called(defs) if hint is Called else _of_record(hint, defs)
    return _ref(name)


def _of_record(record: type, defs: dict[str, Schema]) -> Schema:
    assert issubclass(record, Struct)
    hints = get_type_hints(record, include_extras=True)
    named = {name: hints[name] for name in record.__struct_fields__ if name != DATUM}
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
    for name, made in schemas().items():
        path = TOP / f'layouts/told/schemas/{name}.json'
        path.write_text(json.dumps(made, indent=2, ensure_ascii=False) + '\n', 'utf-8')
