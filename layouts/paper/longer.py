"""Longer words: how small they are set where a page was laid out for the English, all decided before it is typeset."""

from __future__ import annotations

import re
from collections.abc import Sequence
from math import sqrt

from markupsafe import Markup, escape

from layouts.paper.typeface import advance_em

SIZES = range(100, 78, -2)
"""Percent of its size in English in which prose may be set; in the last, words are still of 6.7 points, notes of 5.4."""
BREAKS = re.compile(r'[ \n]+')
"""Where a line may end: not at a space that keeps its words together."""
CUTS = {'text': (86, 500), 'figures': (86, 600), 'bold': (80, 720), 'heavy': (76, 800)}
"""Width and weight of each cut of the typeface."""


def size_for(told: Sequence[tuple[str, str]]) -> int:
    """Return in how many percent of its size prose is set, whose words are longer than their English before them.

    Notes:
        Letters that are s times as large take s² of the room, so s is the root of what the words have grown by, and
        a little less, since longer words leave more of a line's end empty.
    """
    source, longer = (sum(advance_em(one[way], *CUTS['text']) for one in told) for way in (0, 1))
    if longer <= source:
        return SIZES[0]
    return next((size for size in SIZES if size <= 98 / sqrt(longer / source)), SIZES[-1])


def fitted(words: str, room: float, size: float, cut: str = 'text') -> str | Markup:
    """Return a line of words, set smaller where it would be wider than its room; room and size in one unit."""
    wide = advance_em(words, *CUTS[cut]) * size
    if wide <= room:
        return words
    style = f'font-size:{room / wide:.3f}em;line-height:0;white-space:nowrap'
    return Markup(f'<span style="{style}">{escape(words)}</span>')


def size_in(words: Sequence[str], rooms: Sequence[float], size: float, cut: str) -> float:
    """Return the size of type, no greater than one, in which each of some words has room; one unit for all."""
    wide = [advance_em(one, *CUTS[cut]) for one in words]
    return min([size, *(room / em for room, em in zip(rooms, wide, strict=True) if em)])


def lines_in(words: str, size: float, width: float) -> int:
    """Return in how many lines words are set; size and width in one unit."""
    space = advance_em(' ', *CUTS['text']) * size
    lines, used = 1, -space
    for word in filter(None, BREAKS.split(words)):
        wide = advance_em(word, *CUTS['text']) * size
        if used + space + wide > width:
            lines, used = lines + (used > 0), -space
        used += space + wide
        if used > width:  # a word that is broken
            lines, used = lines + int(used // width), used % width
    return lines
