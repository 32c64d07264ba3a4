"""Readings for a terminal: groups of named values in columns, each with the line that it is measured from."""

from __future__ import annotations

import re
from collections.abc import Iterator
from textwrap import wrap

from layouts.verbs.columns import LEFT, MIXED, RIGHT, columns
from tablegen.readings import Group, Reading

WIDTH = 80
LONGEST_IN_A_COLUMN = 24
"""Letters; longer words get lines of their own."""
UNITS = {'_in': ' in', '_deg': ' deg'}
SPACING = re.compile(r'[\d./ ]+')


def group_lines(group: Group, above: str = '') -> Iterator[str]:
    """Return the lines of a group and of the groups in it, each under its whole name.

    Given:
        above  name of the group that it is in, '' for none
    """
    name = f'{above}: {spoken(group.key)}' if above else spoken(group.key).capitalize()
    readings = [value for value in group.values if isinstance(value, Reading)]
    if readings or group.from_line:
        yield name
    short = [reading for reading in readings if len(reading.text) <= LONGEST_IN_A_COLUMN]
    if short:
        rows = [(spoken(reading.key), measure(reading), _exact(reading)) for reading in short]
        yield from columns([('', '', ''), *rows], (LEFT, MIXED, RIGHT))[1:]
    for reading in readings:
        if reading not in short:
            yield from _wrapped(f'{spoken(reading.key)}: {reading.text}', '  ')
    if group.from_line:
        yield from _wrapped(f'({group.from_line.replace("_", " ")})', '  ')
    for value in group.values:
        if isinstance(value, Group):
            yield from group_lines(value, name)


def pick(group: Group, *keys: str) -> Reading:
    """Return the reading under some keys, the outermost group's first."""
    found = next(value for value in group.values if value.key == keys[0])
    return pick(found, *keys[1:]) if isinstance(found, Group) else found


def group_of(group: Group, *keys: str) -> Group:
    """Return the group under some keys, the outermost group's first."""
    found = next(value for value in group.values if value.key == keys[0])
    return group_of(found, *keys[1:]) if keys[1:] else found


def measure(reading: Reading) -> str:
    """Return a value as it is measured, without the inches' name, which its column has."""
    return reading.text.removesuffix(' in')


def exact(reading: Reading) -> str:
    """Return a value in decimals, without a unit."""
    return str(reading.data)


def spoken(key: str) -> str:
    """Return a key in words: 'hip_level_in' is 'hip level', '16_in' is 'at 16 in'."""
    words = re.sub('_(in|deg)$', '', key).replace('_', ' ')
    return f'at {words} in' if SPACING.fullmatch(words) else words


def _exact(reading: Reading) -> str:
    unit = next((words for end, words in UNITS.items() if reading.key.endswith(end)), None)
    return f'{reading.data}{unit}' if unit else ''


def _wrapped(words: str, indent: str) -> list[str]:
    return wrap(words, WIDTH, initial_indent=indent, subsequent_indent=indent + '  ')
