"""Rows of a name and up to four figures: where each column ends, and words no wider than what is left beside them."""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup

from layouts.paper.longer import CUTS, fitted
from layouts.paper.typeface import advance_em

ENDS = (12.9, 7.5, 3.9, 0.0)
"""How far from the right edge each column ends, rem."""
WIDTH, GAP = 24.1, 0.4
"""Of the text, at least; and between two words."""
NAME_SIZE, CELL_SIZE = 0.8, 0.84


def name_beside(name: str, cells: Sequence[str], is_head: bool) -> str | Markup:
    """Return a row's name, no wider than its first figure leaves it."""
    left = [
        WIDTH - end - advance_em(cell, *_cut(is_head, 'figures')) * CELL_SIZE - GAP
        for cell, end in zip(cells, ENDS, strict=True)
        if cell
    ]
    return fitted(name, min(left, default=WIDTH), NAME_SIZE, _cut_name(is_head, 'text'))


def cell_beside(cells: Sequence[str], place: int, is_head: bool) -> str | Markup:
    """Return what stands in a column, no wider than the column where there is something in the one before."""
    taken = place and cells[place - 1]
    room = ENDS[place - 1] - ENDS[place] - GAP if taken else WIDTH
    return fitted(cells[place], room, CELL_SIZE, _cut_name(is_head, 'figures'))


def _cut_name(is_head: bool, otherwise: str) -> str:
    return 'bold' if is_head else otherwise


def _cut(is_head: bool, otherwise: str) -> tuple[int, int]:
    return CUTS[_cut_name(is_head, otherwise)]
