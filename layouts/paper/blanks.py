"""Blanks of several widths in the font of tables, which bring what follows to its place: a line stays one run of text."""

from __future__ import annotations

from bisect import bisect
from functools import cache
from itertools import combinations_with_replacement

from layouts.paper.table_font import BLANKS, line_em
from layouts.paper.trim import FIGURE_SPACE

MOST = 4
"""Blanks that come to a width together, to a hundredth of an em, beside those as wide as digits."""


def blank(em: float) -> str:
    """Return blanks that are together as wide as said, nearly."""
    digit = line_em(FIGURE_SPACE)
    wide_ones = max(0, int(em / digit) - 1)
    rest = em - wide_ones * digit
    widths, blanks = _blanks()
    place = bisect(widths, rest)
    if place and (place == len(widths) or rest - widths[place - 1] <= widths[place] - rest):
        place -= 1
    return FIGURE_SPACE * wide_ones + blanks[place]


@cache
def _blanks() -> tuple[list[float], list[str]]:
    """Return the widths that a few blanks make together, from none on, and the blanks."""
    found = {
        round(sum(map(line_em, some)), 3): ''.join(some)
        for count in range(MOST, -1, -1)
        for some in combinations_with_replacement(BLANKS, count)
    }
    widths = sorted(found)
    return widths, [found[one] for one in widths]
