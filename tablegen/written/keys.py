"""What stands under the keys of a TOML file, read value by value."""

from __future__ import annotations

import unicodedata
from collections import Counter
from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise
from typing import Any

from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.numbers.units import INCHES, Stock
from tablegen.written.lengths import length
from tablegen.written.stocks import stock

LONGEST_NAME = 48


def leaves(tables: dict[str, Any], known: Sequence[str], above: str = '') -> list[tuple[str, object]]:
    """Return every key of a file with its dotted name; a table that no known key is in stands for its own keys."""
    found: list[tuple[str, object]] = []
    for key, value in tables.items():
        name = f'{above}{key}'
        if isinstance(value, dict) and any(one.startswith(f'{name}.') for one in known):
            found += leaves(value, known, f'{name}.')
        else:
            found.append((name, value))
    return found


def given_twice(found: list[tuple[str, object]]) -> list[BookError]:
    """Return the faults of keys that stand both by themselves and in a table."""
    names = Counter(name for name, _ in found)
    return [
        BookError(name, message('setting.given_twice'), '', message('setting.leave_one_out'))
        for name, times in names.items()
        if times > 1
    ]


def one_line(value: object, place: str) -> str:
    """Return a name that stands on one line."""
    if not isinstance(value, str) or len(value) > LONGEST_NAME or not (value.isprintable() or value == ''):
        problem = message('setting.no_name', value=repr(value))
        raise BookError(place, problem, message('setting.one_line', most=LONGEST_NAME))
    clean = unicodedata.normalize('NFC', value.strip())
    if any(unicodedata.combining(mark) and not letter.isalpha() for letter, mark in pairwise(f' {clean}')):
        problem = message('setting.marks_on_marks', value=repr(value))
        raise BookError(place, problem, message('setting.one_mark'))
    return clean


def choice(value: object, place: str, allowed: Sequence[str]) -> str:
    """Return a value that is one of those allowed."""
    if value not in allowed:
        raise BookError(place, message('error.unknown', value=repr(value)), tuple(allowed))
    return str(value)


def listed(value: object, place: str) -> list[object]:
    """Return the items of a list that is not empty."""
    if not isinstance(value, list) or not value:
        raise BookError(place, message('setting.no_list', value=repr(value)), message('setting.a_list'))
    return value


def positive(value: object, place: str, at_most: int) -> Fraction:
    """Return a length in inches above 0 and up to a limit."""
    inches = length(value, place)
    if not 0 < inches <= at_most:
        most = message('error.above_zero_to', most=f'{at_most} {INCHES.unit}')
        raise BookError(place, message('setting.out_of_range', written=value), most)
    return inches


def size(value: object, place: str) -> Stock:
    """Return a size of lumber."""
    return stock(value if isinstance(value, str) else repr(value), place)


def truth(value: object, place: str) -> bool:
    """Return whether something is so."""
    if not isinstance(value, bool):
        raise BookError(place, message('setting.neither', value=repr(value)), ('true', 'false'))
    return value


def smallest_part(value: object, place: str) -> int:
    """Return the parts to an inch of a smallest part such as '1/16'."""
    try:
        part = length(value, place)
    except BookError:
        part = Fraction(0)
    if part <= 0 or 1 / part not in INCHES.parts:
        raise BookError(place, message('setting.no_part', written=str(value)), INCHES.smallest_parts)
    return int(1 / part)
