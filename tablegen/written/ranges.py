"""Ranges as people write them: 'FIRST to LAST by STEP', the words in any case."""

from __future__ import annotations

import re

from msgspec import Struct

RANGE = re.compile(r'(?P<first>.+?)\s+to\s+(?P<last>.+?)(?:\s+by\s+(?P<step>.+))?', re.IGNORECASE | re.DOTALL)


BETWEEN = re.compile(r'\s(?:to|by)\s', re.IGNORECASE)


class WrittenRange(Struct, frozen=True):
    """The words of a range, each still to be read by who knows what they are."""

    first: str
    last: str
    step: str | None
    """None where none was written."""


def split_range(written: str) -> WrittenRange | None:
    """Return the words of a range; None where there is not one 'to' between two of them."""
    match = RANGE.fullmatch(written.strip())
    if not match or any(BETWEEN.search(words or '') for words in match.group('last', 'step')):
        return None
    return WrittenRange(match['first'], match['last'], match['step'])
