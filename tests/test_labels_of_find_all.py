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

LONGEST = 24
"""Letters of words that stand in a column."""
Row = tuple[str, ...]


def spoken(key: str) -> str:
    """Return a key in words; a letter by itself is a side, but for 'a quarter' and 'a third'."""
    words = re.sub(r'_(?:in|deg|text)$', '', key).split('_')
    return ' '.join(
        word.upper()
        if word in ('a', 'b') and words[place + 1 : place + 2] not in (['quarter'], ['third'])
        else word
        for place, word in enumerate(words)
    )


def heading(path: tuple[str, ...]) -> str:
    said = ': '.join(map(spoken, path))
    return said[:1].upper() + said[1:]


def shown(value: str | bool) -> str:
    """Return a value without a unit: a ratio to thousandths."""
    if isinstance(value, bool):
        return 'yes' if value else 'no'
    return decimal(mpf(value), 3) if re.fullmatch(r'\d+\.\d{9}', str(value)) else str(value)


def expected(told: dict, path: tuple[str, ...]) -> Iterator[Row]:
    """Return heading, name and figures of every value of a group and of those in it."""
    for key, value in told.items():
        if isinstance(value, dict):
            yield from expected(value, (*path, key))
        elif isinstance(value, list):
            for row in value:
                named = {
                    spoken(name): text for name, text in row.items() if not name.endswith(('_in', '_deg'))
                }
                title = '' if spoken(key) in named else spoken(key)
                yield (
                    heading(path),
                    title,
                    *(f'{name} {str(text).removesuffix(" in")}' for name, text in named.items()),
                )
        elif key.endswith('_deg'):
            text = told.get(f'{key.removesuffix("_deg")}_text', f'{float(value):.2f}°')
            yield heading(path), spoken(key), text, f'{value} deg'
        elif key.endswith('_in'):
            yield heading(path), spoken(key), told[f'{key[:-3]}_text'].removesuffix(' in'), f'{value} in'
        elif not key.endswith('_text') and key != 'from' and len(str(value)) <= LONGEST:
            yield heading(path), spoken(key), shown(value)


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
    told = {key: value for key, value in json.loads(data).items() if isinstance(value, dict)}
    wanted, found = set(expected(told, ())), set(printed(text.partition('\n\n')[2]))

    assert sorted(wanted - found) == []
    assert sorted(found - wanted) == []
    squeezed = ' '.join(text.split())
    assert [line for line in lines_of(told) if f'({line.replace("_", " ")})' not in squeezed] == []
