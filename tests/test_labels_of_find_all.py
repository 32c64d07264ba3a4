"""What `find --all` prints is what its JSON has, name by name: that is proven key by key."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator

import pytest
from asking import ask
from fifty_digits import mpf
from labels.asked import ASKED, PITCH, RUN
from oracle.rounding import decimal

ASKED_FOR = ('pitch', 'rise_per_foot', 'run', 'nearest', 'rafters', 'caution', 'defers')
LONGEST = 24
"""Letters of words that stand in a column."""
Row = tuple[str, ...]


def spoken(key: str) -> str:
    """Return a key in words; a letter by itself is a side, but for 'a quarter' and 'a third'."""
    words = key.split('_')
    return ' '.join(
        word.upper()
        if word in ('a', 'b') and words[place + 1 : place + 2] not in (['quarter'], ['third'])
        else word
        for place, word in enumerate(words)
    )


def heading(path: tuple[str, ...]) -> str:
    said = ': '.join(map(spoken, path))
    return said[:1].upper() + said[1:]


SAID = {
    'within_a_quarter': 'not past a quarter of the depth',
    'past_a_quarter': 'past a quarter of the depth: a mark to look at, local code decides',
    'towards_side_a': 'towards side A',
    'towards_eave_b': 'towards eave B',
    'side_b': 'side B',
    'plate_a': 'plate A',
}
"""What is said of what a program is told by name."""
UNITS = {'inches': 'in', 'degrees': 'deg'}


def shown(value: str | bool) -> str:
    """Return a value without a unit: a ratio to thousandths."""
    if isinstance(value, bool):
        return 'yes' if value else 'no'
    return decimal(mpf(value), 3) if re.fullmatch(r'\d+\.\d{9}', str(value)) else str(value)


def expected(told: dict, path: tuple[str, ...]) -> Iterator[Row]:
    """Return heading, name and figures of every value of a group and of those in it."""
    for key, value in told.items():
        if key == 'from':
            continue
        if isinstance(value, list):
            for row in value:
                named = {
                    spoken(name): one['text'] if isinstance(one, dict) else one for name, one in row.items()
                }
                title = '' if spoken(key) in named else spoken(key)
                yield heading(path), title, *(f'{name} {text}' for name, text in named.items())
        elif not isinstance(value, dict):
            if len(text := SAID.get(str(value), shown(value))) <= LONGEST:
                yield heading(path), spoken(key), text
        elif unit := next((one for one in UNITS if one in value), None):
            text = value.get('text', f'{float(value.get("degrees", 0)):.2f}°')
            yield heading(path), spoken(key), text, f'{value[unit]} {UNITS[unit]}'
        elif set(value) in ({'level', 'along'}, {'plumb', 'level'}):
            yield from expected({f'{key}_{way}': one for way, one in value.items()}, path)
        else:
            yield from expected(value, (*path, key))


def printed(answer: str) -> Iterator[Row]:
    """Return the same as it is printed; rows of a table each with its heads."""
    above, title, heads = '', '', []
    for line in answer.split('\n'):
        cells = re.split(r'\s{2,}', line.strip())
        if line and not line.startswith(' '):
            above, title, heads = line, '', []
        elif cells[0] == 'spacing':
            heads = cells
        elif heads and len(cells) == len(heads):
            yield above, title, *(f'{head} {cell}' for head, cell in zip(heads, cells, strict=True))
        else:
            title, heads = '' if len(cells) > 1 else line.strip(), []
            if len(cells) > 1:
                yield above, *cells


def lines_of(told: dict) -> Iterator[str]:
    """Return every line that values are measured from."""
    for key, value in told.items():
        if key == 'from':
            yield value
        elif isinstance(value, dict):
            yield from lines_of(value)


@pytest.mark.parametrize('name', ['regular', 'two pitches', 'eight sides', 'ledger'])
def test_every_value_is_printed_under_its_own_name(name):
    _, data, _ = ask('find', PITCH, RUN, *ASKED[name], '--format', 'json')
    _, text, _ = ask('find', PITCH, RUN, *ASKED[name], '--all')
    told = {key: value for key, value in json.loads(data).items() if key not in ASKED_FOR}
    wanted, found = set(expected(told, ())), set(printed(text.partition('\n\n')[2]))

    assert sorted(wanted - found) == []
    assert sorted(found - wanted) == []
    squeezed = ' '.join(text.split())
    assert [line for line in lines_of(told) if f'({line})' not in squeezed] == []
