"""Any record of an answer as lines for a terminal: what each value is called, as it is measured and exactly."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from enum import StrEnum
from textwrap import wrap
from typing import Any

from msgspec import Struct

from layouts.told.columns import LEFT, MIXED, RIGHT, WIDTH, columns
from layouts.told.objects import DATUM, as_data, json_text, values_of
from layouts.words.fields import label
from layouts.words.roof import datum_words, name_words
from layouts.words.say import _
from tablegen.numbers.figure import DEGREE, INCH, Figure
from tablegen.roof.figures import PlumbLevel, TwoWays

LONGEST_IN_A_COLUMN = 24
"""Letters; longer words get lines of their own."""


def lines_of(record: Any, name: str) -> Iterator[str]:
    """Return the lines of a record and of the records in it, each under its whole name."""
    readings, tables, inner = _parted(record)
    line = datum_words(getattr(record, DATUM, ()))
    if readings or tables or line:
        yield name
    short = [(said, value) for said, value in readings if len(told(value)) <= LONGEST_IN_A_COLUMN]
    if short:
        rows = [(said, told(value), _exact(value)) for said, value in short]
        yield from columns([('', '', ''), *rows], (LEFT, MIXED, RIGHT))[1:]
    for said, value in readings:
        if (said, value) not in short:
            yield from wrapped(f'{said}: {told(value)}', '  ')
    for said, table in tables:
        yield from _table_lines(said, table)
    if line:
        yield from wrapped(f'({line})', '  ')
    for said, one in inner:
        yield from lines_of(one, f'{name}: {said}')


def told(value: Any) -> str:
    """Return a value as a person reads it; of a length the measure, without its unit."""
    match value:
        case Figure():
            return value.text
        case StrEnum():
            return name_words(value)
        case bool():
            return _('yes') if value else _('no')
    return str(value)


def capital(words: str) -> str:
    """Return words with a capital."""
    return words[:1].upper() + words[1:]


def wrapped(words: str, indent: str) -> list[str]:
    """Return words in lines, those after the first further in."""
    return wrap(words, WIDTH, initial_indent=indent, subsequent_indent=indent + '  ')


Named = list[tuple[str, Any]]


def _parted(record: Any) -> tuple[Named, Named, Named]:
    """Return a record's single values, its tables and its records, by what each is called."""
    readings: Named = []
    tables: Named = []
    inner: Named = []
    for field, value in values_of(record).items():
        if isinstance(value, (TwoWays, PlumbLevel)):
            ways = values_of(value).items()
            readings += [
                (_('{what} {way}').format(what=label(field), way=label(way)), one) for way, one in ways
            ]
        elif isinstance(value, tuple):
            tables += [(label(field), value)] if value else []
        else:
            (inner if isinstance(value, Struct) and not isinstance(value, Figure) else readings).append(
                (label(field), value)
            )
    return readings, tables, inner


def _table_lines(name: str, table: Sequence[Any]) -> Iterator[str]:
    """Return records alike in columns under the names of their fields."""
    heads = tuple(map(label, values_of(table[0])))
    rows = [tuple(map(told, values_of(one).values())) for one in table]
    if name not in heads:
        yield f'  {name}'
    for line in columns([heads, *rows], (MIXED,) * len(heads)):
        yield f'  {line}'


def _exact(value: Any) -> str:
    unit = {INCH: 'in', DEGREE: 'deg'}.get(value.unit) if isinstance(value, Figure) else None
    return f'{value.decimal} {unit}' if unit else ''


def told_as(form: str, found: dict[str, Any]) -> str:
    """Return some records by name, as 'json' or as lines."""
    if form == 'json':
        return json_text({name: as_data(one) for name, one in found.items()})
    return '\n\n'.join('\n'.join(lines_of(one, capital(label(name)))) for name, one in found.items()) + '\n'
