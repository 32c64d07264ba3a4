"""Finding what stands in the places of a sentence that is known but for them."""

from __future__ import annotations

import re
from functools import cache

STOP = re.compile(r'\\\.(?!\d)')
"""A point that no digit follows."""
PLACE = re.compile(r'\\\{(\w+)\\\}')


@cache
def pattern(sentence: str) -> re.Pattern[str]:
    """Return what finds a sentence that ends with the words; see _source."""
    return re.compile(f'{_source(sentence)}$')


@cache
def _open(sentence: str) -> re.Pattern[str]:
    """Return what finds a sentence after which words may follow."""
    return re.compile(_source(sentence))


def _source(sentence: str) -> str:
    """Return what finds a sentence with places in braces; a name that stands twice must stand for the same."""
    known: set[str] = set()

    def place(found: re.Match[str]) -> str:
        name = found[1]
        again, known_before = f'(?P={name})', name in known
        known.add(name)
        return again if known_before else f'(?P<{name}>.+?)'

    escaped = STOP.sub(r'\.(?!\\d)', re.escape(sentence).replace(r'\ ', ' '))
    return PLACE.sub(place, escaped)


def told(sentence: str, words: str) -> dict[str, str] | None:
    """Return what words say in the places of a sentence; None where they are another."""
    found = pattern(sentence).match(words)
    return found.groupdict() if found else None


def told_within(sentence: str, words: str) -> dict[str, str] | None:
    """Return the same of a sentence that stands somewhere within words."""
    if '{' not in sentence:
        return {} if sentence in words else None
    found = _open(sentence).search(words)
    return found.groupdict() if found else None


def before(sentence: str, name: str) -> str:
    """Return the words that lead to a place of a sentence: 'plumb cut' of 'side: plumb cut {plumb}'."""
    parts = re.split(r'[}:;,.]', sentence.partition(f'{{{name}}}')[0])
    return next((part.strip() for part in reversed(parts) if part.strip()), '')


@cache
def _parts(sentence: str) -> tuple[str, re.Pattern[str]]:
    """Return what a sentence begins with before its first place, and what finds it where it begins."""
    return sentence.partition('{')[0], _open(sentence)


def told_at(sentence: str, words: str, start: int) -> tuple[dict[str, str], int] | None:
    """Return what words say from a place on in the places of a sentence, and where it ends; None where they are another."""
    begins, whole = _parts(sentence)
    found = whole.match(words, start) if words.startswith(begins, start) else None
    return (found.groupdict(), found.end()) if found else None
