"""What a roof was asked as: the lines of a roof file that makes its sheets again."""

from __future__ import annotations

import json
from collections.abc import Iterator
from enum import Enum
from fractions import Fraction

from tablegen.frame.asked import Asked
from tablegen.frame.roof_keys import FIELDS, KINDS, MEASURE, RIDGE, kind_of, unused
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.units import Stock
from tablegen.written.pitches import STEEPEST

STEEP, THICKNESS = 'steep', 'shed.thickness'


def asked_lines(asked: Asked) -> tuple[str, ...]:
    """Return the lines; keys that such a roof has no use for are left out."""
    kind = kind_of(asked)
    found = {'kind': kind, **{key: value for key, value in _values(asked, kind) if value not in (None, '')}}
    useless = unused(kind, found)
    if any(isinstance(one, Pitch) and one.rise > STEEPEST for one in found.values()):
        found[STEEP] = True
    return tuple(
        f'{key} = {json.dumps(_written(key, value), ensure_ascii=False)}'
        for key, value in found.items()
        if key not in useless
    )


def _values(asked: Asked, kind: str) -> Iterator[tuple[str, object]]:
    yield from ((key, getattr(asked, field)) for key, field in FIELDS.items())
    yield from ((key, getattr(asked.measure, field)) for key, field in MEASURE.items())
    own = ((key, getattr(asked.kind, field)) for key, field in KINDS[kind].keys.items())
    yield from ((key, value) for key, value in own if value or key != THICKNESS)
    yield 'ridge.board', asked.ridge is not None
    if asked.ridge:
        yield from ((key, getattr(asked.ridge, field)) for key, field in RIDGE.items())


def _written(key: str, value: object) -> object:
    """Return a value as a roof file has it."""
    match value:
        case tuple():
            return [_written(key, one) for one in value]
        case Pitch() as pitch:
            return pitch.text
        case Stock() as stock:
            return stock.name
        case Enum() as choice:
            return choice.value
        case Fraction() if key == 'buy.allowance':
            return f'{text.rational(value * 100)} %'
        case Fraction():
            return text.run(value)
        case bool() if key == 'wing.end':
            return 'hip' if value else 'gable'
        case int() if key == 'smallest_part':
            return text.mixed(1, value)
    return value
