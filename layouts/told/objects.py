"""Any record as an object for programs: its fields by name, figures by the dialect, what is said by name as its name."""

from __future__ import annotations

import json
from collections.abc import Mapping
from enum import StrEnum
from fractions import Fraction
from typing import Any

from msgspec import Struct

from layouts.told import dialect
from layouts.words.caution import caution_source, caution_text
from layouts.words.roof import datum_words
from layouts.words.say import say
from tablegen.checking.written import Part, Written
from tablegen.geometry.pitch import Pitch
from tablegen.messages import Message
from tablegen.numbers import text
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import DEGREE, INCH, RATIO, Figure
from tablegen.roof.called import Called
from tablegen.written.lengths import inches_in

DATUM, FROM = 'datum', 'from'
"""The field, or constant of a class, that names from which line a record's figures are measured; its key for programs."""
TOLD_UNITS = (INCH, DEGREE, RATIO)


def values_of(record: Any) -> dict[str, Any]:
    """Return a record's fields by name, those that it has not left out."""
    known = ((name, getattr(record, name)) for name in record.__struct_fields__ if name != DATUM)
    return {name: value for name, value in known if value is not None}


def as_data(value: Any) -> Any:
    """Return a record, or any value in one, for JSON; what a record has left out is left out."""
    match value:
        case Figure(unit=unit, value=Exact() as exactly) if unit not in TOLD_UNITS:  # a reading's own
            return dialect.length(exactly * inches_in(unit), f'{value.text} {unit}')
        case Figure():
            return dialect.told(value)
        case Written():
            return as_data(value.figure)
        case Fraction():
            return dialect.length(value, text.run(value))
        case Part() | Pitch():
            return value.text
        case Message():
            return say(value)
        case StrEnum():
            return value.value
        case Called(caution, of):
            words = {'text': caution_text(caution), 'source': caution_source(caution)}
            return {'name': caution.key, 'of': as_data(of), **words}
        case tuple():
            return [as_data(one) for one in value]
        case Mapping():
            return {as_data(key): as_data(one) for key, one in value.items()}
        case _ if isinstance(value, Struct):
            found = {name: as_data(one) for name, one in values_of(value).items()}
            line = datum_words(getattr(value, DATUM, ()))
            return found | {FROM: line} if line else found
    return value


def json_text(told: Mapping[str, Any]) -> str:
    """Return an object as it is printed."""
    return json.dumps(told, indent=2, ensure_ascii=False) + '\n'
