"""The size of a cover's title: as large as lets every line stay above the drawing."""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil

SIZES_REM = (3.6, 3.0, 2.4, 1.9, 1.5, 1.2)
ROOM_REM = 6.6
"""From the title's top to the drawing's."""
WIDTH_REM = 24.2
WIDE_EM, CAPITAL_EM, SMALL_EM, SPACE_EM = 0.86, 0.57, 0.48, 0.2
"""Widths of letters in the heavy cut, about: M and W, other capitals and figures, small letters, the space."""
BROKEN_LINE = 1.2
"""A line breaks between words, and so holds this much less than its width."""


def title_size(title: str) -> float:
    """Return the size in rem of the letters of a title."""
    wide = sum(map(_letter_em, title))
    for size in SIZES_REM:
        lines = ceil(wide * size / WIDTH_REM)
        if lines > 1:
            lines = ceil(wide * size * BROKEN_LINE / WIDTH_REM)
        if lines * size <= ROOM_REM:
            return size
    return SIZES_REM[-1]


def lines_size(lines: Sequence[str]) -> float:
    """Return the size in rem of the letters of a head whose lines are already broken."""
    wide = max(sum(map(_letter_em, line)) for line in lines)
    fits = (size for size in SIZES_REM if wide * size <= WIDTH_REM and len(lines) * size <= ROOM_REM)
    return next(fits, SIZES_REM[-1])


def _letter_em(letter: str) -> float:
    if letter == ' ':
        return SPACE_EM
    if letter in 'MWmw@%—':
        return WIDE_EM
    return SMALL_EM if letter.islower() else CAPITAL_EM
