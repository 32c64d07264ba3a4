"""A language made by rule: every message of the program, accented and 35 % longer, what it places and its markup kept."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache
from math import ceil
from pathlib import Path

import pytest
from babel.messages.catalog import Catalog
from babel.messages.extract import extract_from_dir
from babel.messages.mofile import write_mo

from layouts.words import say

ROOT = Path(__file__).parent.parent
NAME = 'xx'
LONGER = 0.35
KEPT = re.compile(r'(<[^>]*>|&\w+;|%\(\w+\)s|%%|\{[^}]*\})')
"""Markup, and places for values."""
ACCENTED = str.maketrans('AEIOUaeiouy', 'ĄĘĮØŲáéíóúý')
"""No letter higher than an English one, lest a line reach into the one above."""
TAIL = 'éáóíú'
WORD = re.compile(r'[A-Za-z](?:[A-Za-z’\'-]*[A-Za-z])?')
KEYWORDS = {'_': None, 'N_': None, 'n_': (1, 2), 'gettext': None, 'ngettext': (1, 2)}


@cache
def messages() -> tuple[str | tuple[str, ...], ...]:
    """Return all messages of the program, by the mappings that a translator extracts them with."""
    mappings = tomllib.loads((ROOT / 'pyproject.toml').read_text('utf-8'))['tool']['babel']['mappings']
    methods = [(mapping['pattern'], mapping['method']) for mapping in mappings]
    options = {
        mapping['pattern']: {key: value for key, value in mapping.items() if key not in ('pattern', 'method')}
        for mapping in mappings
    }
    found = extract_from_dir(ROOT, methods, options, KEYWORDS)
    return tuple(dict.fromkeys(message for _, _, message, *_ in found))


def longer(words: str) -> str:
    """Return words in the made-up language."""
    return ''.join(piece if KEPT.fullmatch(piece) else _longer(piece) for piece in KEPT.split(words))


def _longer(piece: str) -> str:
    found = WORD.findall(piece)
    owed = LONGER * (len(piece) - len(''.join(found))) if found else 0.0

    def lengthened(word: re.Match[str]) -> str:
        nonlocal owed
        owed += LONGER * len(word[0])
        more = ''.join(TAIL[place % len(TAIL)] for place in range(ceil(owed)))
        owed -= len(more)
        return (word[0] + (more.upper() if len(word[0]) > 1 and word[0].isupper() else more)).translate(
            ACCENTED
        )

    return WORD.sub(lengthened, piece)


def write_catalogue(folder: Path) -> None:
    """Write the language's catalogue into a folder of catalogues."""
    made = folder / NAME / 'LC_MESSAGES' / f'{say.DOMAIN}.mo'
    made.parent.mkdir(parents=True)
    catalogue = Catalog('en')
    for message in messages():
        if isinstance(message, str):
            catalogue.add(message, longer(message))
        else:
            catalogue.add(message, tuple(map(longer, message)))
    with made.open('wb') as file:
        write_mo(file, catalogue)


@contextmanager
def spoken(folder: Path) -> Iterator[None]:
    """Speak the made-up language, for as long as the block lasts."""
    write_catalogue(folder)
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv(say.CATALOGUES, str(folder))
        with say.speaking(NAME):
            yield
