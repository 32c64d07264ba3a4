"""Numbers that stay in one line: a mixed number with its fraction, feet with their inches, a number with its unit."""

from __future__ import annotations

import re

from tablegen.numbers.units import INCHES

_ONE = r'\d[\d.,]*(?:(?<=\d) \d+/\d+)?(?:/\d+)?[″°]?'
_UNIT = rf'(?: (?:{INCHES.over_base}|in|ft|mm)(?![\w’]))?'
NUMBER = re.compile(rf'(?<![\w/])(?:\d+′ )?{_ONE}{_UNIT}(?:(?<= ft) {_ONE}{_UNIT})?')
TAGS = re.compile(r'(<[^>]*>)')
BLOCKS = ('<pre', '</pre', '<title', '</title')
"""A line of a table is never broken, and a title is no HTML."""


def with_kept_numbers(html: str) -> str:
    """Return HTML in which a line never ends within a number or before its unit.

    Notes:
        1. An element of its own keeps its spaces as they are: a no-break space would not be found by who looks for `5 5/16` in the PDF.
    """
    told, whole = [], False
    for place, piece in enumerate(TAGS.split(html)):
        if place % 2:
            if piece.startswith(BLOCKS):
                whole = piece[1] != '/'
        elif not whole and ' ' in piece:
            piece = NUMBER.sub(_kept, piece)
        told.append(piece)
    return ''.join(told)


def _kept(found: re.Match[str]) -> str:
    return f'<nobr>{found[0]}</nobr>' if ' ' in found[0] else found[0]
