"""Widths of words on a card, and words broken into lines: all before anything is typeset."""

from __future__ import annotations

from layouts.paper.typeface import advance_em

TEXT, WHOLE, BOLD, HEAVY = (86, 600), (86, 700), (80, 720), (76, 800)
"""Width and weight of each cut of the typeface on cards: nothing is lighter than 600."""
LEAST_PT, LEAST_LINE_PT = 7.5, 9.3
"""Floors of figures that are read in bad light: their height is 1.9 mm."""
LINE = LEAST_LINE_PT / LEAST_PT
FRACTION = 0.86
"""Size of a fraction beside its whole number."""


def width_pt(words: str, size: float, cut: tuple[int, int] = TEXT) -> float:
    """Return how wide a line of words is."""
    return advance_em(words, *cut) * size


def wrapped(words: str, room: float, size: float, cut: tuple[int, int] = TEXT) -> tuple[str, ...]:
    """Return words broken into lines no wider than the room, in points; a single word is never broken, nor a no-break space."""
    lines: list[str] = []
    for word in words.split(' '):
        longer = f'{lines[-1]} {word}' if lines else word
        if lines and width_pt(longer, size, cut) <= room:
            lines[-1] = longer
        else:
            lines.append(word)
    return tuple(lines)
