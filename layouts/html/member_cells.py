"""Rows of a name and up to four figures, each one run of text: words no wider than what is left beside them."""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup, escape

from layouts.paper.blanks import blank
from layouts.paper.longer import CUTS
from layouts.paper.table_font import line_em
from layouts.paper.typeface import advance_em

ENDS = (12.9, 7.5, 3.9, 0.0)
"""How far from the right edge each column ends, rem."""
GAP = 0.4
"""Between two words, rem."""
SIZE = 0.82
"""Of the type, rem."""


def member_line(name: str, cells: Sequence[str], is_head: bool, width: float) -> Markup:
    """Return a row, its figures against the ends of their columns, in smaller type what is too long for its room.

    Given:
        width  of the text, rem
    """
    ends = [width - end for end in ENDS]
    rooms = [end - before - GAP for end, before in zip(ends, (0.0, *ends), strict=False)]
    placed: list[tuple[float, float, Markup]] = []
    for place, (cell, end) in enumerate(zip(cells, ends, strict=True)):
        if cell:
            alone = not (place and cells[place - 1])
            wide, told = _told(cell, is_head, end if alone else rooms[place])
            placed.append((end - wide, wide, told))
    first = placed[0][0] - GAP if placed else width
    row, at = [], 0.0
    for begins, wide, told in [(0.0, *_told(name, is_head, first)), *placed]:
        between = blank((begins - at) / SIZE)
        row += [between, told]
        at = at + line_em(between) * SIZE + wide
    return Markup(''.join(row))


def _told(words: str, is_head: bool, room: float) -> tuple[float, Markup]:
    """Return how wide words are set, rem, and the words."""
    wide = (advance_em(words, *CUTS['bold']) if is_head else line_em(words)) * SIZE
    told = Markup(f'<b>{escape(words)}</b>') if is_head else escape(words)
    if wide <= room:
        return wide, told
    share = room / wide
    return room, Markup(f'<span style="font-size:{share:.3f}em;line-height:0">{told}</span>')
