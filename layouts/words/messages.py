"""The English of messages, by their names: english/ROOM.toml has those whose names begin with the room's."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import IO, Any


def english(name: str) -> str:
    """Return the English of a message such as 'caution.short_seat'.

    Errors:
        KeyError for a name without words
    """
    room, _, rest = name.partition('.')
    return words_of(room)[rest]


@cache
def words_of(room: str) -> dict[str, str]:
    """Return the words of a room's messages, by their names without the room's."""
    written = (
        Path(__file__).parent / 'english' / f'{room}.toml'
    )  # a look-up has no time for importlib.resources
    return dict(_leaves(tomllib.loads(written.read_text('utf-8')))) if written.is_file() else {}


def tables_of(room: str) -> dict[str, dict[str, str]]:
    """Return the words of a room whose file has tables, by the table's name and their own."""
    found: dict[str, dict[str, str]] = {}
    for name, words in words_of(room).items():
        table, _, own = name.rpartition('.')
        found.setdefault(table, {})[own] = words
    return found


def extract(
    file: IO[bytes], *_keywords: object, options: object
) -> Iterator[tuple[int, None, str, list[str]]]:
    """Give the words to who makes a catalogue, as babel asks for them."""
    for _name, words in _leaves(tomllib.loads(file.read().decode('utf-8'))):
        if words:
            yield 1, None, words, []


def _leaves(table: dict[str, Any], above: str = '') -> Iterator[tuple[str, str]]:
    """Return all words of a table and of those in it, each by its whole name."""
    for name, words in table.items():
        if isinstance(words, dict):
            yield from _leaves(words, f'{above}{name}.')
        else:
            yield f'{above}{name}', words
