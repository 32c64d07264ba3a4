"""Readings for a terminal: groups of named values in columns, each with the line that it is measured from."""

from __future__ import annotations

import re
from collections.abc import Iterator
from textwrap import wrap

from layouts.told.columns import LEFT, MIXED, RIGHT, columns
from tablegen.roof.readings import Group, Reading, Rows

WIDTH = 80
LONGEST_IN_A_COLUMN = 24
"""Letters; longer words get lines of their own."""
UNITS = {'_in': ' in', '_deg': ' deg'}
SIDE = re.compile(r'\b(?:a(?! (?:quarter|third)\b)|b)\b')
"""The letter of a side in a name, which is no article."""


def group_lines(group: Group, above: str = '') -> Iterator[str]:
    """Return the lines of a group and of the groups in it, each under its whole name.

    Given:
        above  name of the group that it is in, '' for none
    """
    name = f'{above}: {spoken(group.key)}' if above else _capital(spoken(group.key))
    readings = [value for value in group.values if isinstance(value, Reading)]
    tables = [value for value in group.values if isinstance(value, Rows) and value.rows]
    if readings or tables or group.from_line:
        yield name
    short = [reading for reading in readings if len(reading.text) <= LONGEST_IN_A_COLUMN]
    if short:
        rows = [(spoken(reading.key), measure(reading), _exact(reading)) for reading in short]
        yield from columns([('', '', ''), *rows], (LEFT, MIXED, RIGHT))[1:]
    for reading in readings:
        if reading not in short:
            yield from _wrapped(f'{spoken(reading.key)}: {reading.text}', '  ')
    for table in tables:
        yield from table_lines(table)
    if group.from_line:
        yield from _wrapped(f'({group.from_line.replace("_", " ")})', '  ')
    for value in group.values:
        if isinstance(value, Group):
            yield from group_lines(value, name)


def table_lines(table: Rows) -> Iterator[str]:
    """Return rows in columns under the names of their readings; lengths without their unit."""
    heads = tuple(spoken(reading.key) for reading in table.rows[0])
    rows = [tuple(measure(reading) for reading in row) for row in table.rows]
    if spoken(table.key) not in heads:
        yield f'  {spoken(table.key)}'
    for line in columns([heads, *rows], (MIXED,) * len(heads)):
        yield f'  {line}'


def pick(group: Group, *keys: str) -> Reading:
    """Return the reading under some keys, the outermost group's first."""
    found = next(value for value in group.values if value.key == keys[0])
    if isinstance(found, Group):
        return pick(found, *keys[1:])
    assert isinstance(found, Reading), f'{keys[0]} is a table'
    return found


def group_of(group: Group, *keys: str) -> Group:
    """Return the group under some keys, the outermost group's first."""
    found = next(value for value in group.values if value.key == keys[0])
    assert isinstance(found, Group), f'{keys[0]} is no group'
    return group_of(found, *keys[1:]) if keys[1:] else found


def rows_of(group: Group, key: str) -> Rows:
    """Return the table of a group."""
    found = next(value for value in group.values if value.key == key)
    assert isinstance(found, Rows), f'{key} is no table'
    return found


def measure(reading: Reading) -> str:
    """Return a value as it is measured, without the inches' name, which its column has."""
    return reading.text.removesuffix(' in')


def measured(group: Group, key: str) -> str:
    """Return a length of a group as it is measured, by its key without the unit; 'none' where there is none."""
    found = [value for value in group.values if value.key == f'{key}_in' and isinstance(value, Reading)]
    return measure(found[0]) if found else 'none'


def spoken(key: str) -> str:
    """Return a key in words: 'hip_at_ridge_level_in' is 'hip at ridge level', 'side_a' is 'side A'."""
    words = re.sub('_(in|deg)$', '', key).replace('_', ' ')
    return SIDE.sub(lambda letter: letter[0].upper(), words)


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _exact(reading: Reading) -> str:
    unit = next((words for end, words in UNITS.items() if reading.key.endswith(end)), None)
    return f'{reading.data}{unit}' if unit else ''


def _wrapped(words: str, indent: str) -> list[str]:
    return wrap(words, WIDTH, initial_indent=indent, subsequent_indent=indent + '  ')
