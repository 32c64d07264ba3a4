"""Lines of type on a pattern's page: they lie level, so they stand on the page itself and not in its drawing.

Notes:
    1. The typesetter sets a drawing's words letter by letter: most of a page's words would take most of its time.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from markupsafe import Markup, escape
from msgspec import Struct

from layouts.drawings import svg
from layouts.drawings.svg import Point
from layouts.paper.typeface import advance_em

LEAST = 0.88
"""Share of its size that a line at the head is set at."""
BASELINE = 1.388
"""From the top of a line's box, two letters high, to the line that they stand on, em: the font's own ascent and descent in the middle."""


class Typed(Struct, frozen=True):
    """A line of type."""

    words: str
    size: float
    """Mm."""
    weight: int
    after: float
    """From the line before to this one, mm."""


def set_in(words: str, room: float, size: float, weight: int, after: float) -> list[Typed]:
    """Return words in lines that have room; in one a little smaller, where that spares a line."""
    fits = room / advance_em(words, svg.WIDTH, weight)
    if LEAST <= fits / size < 1:
        return [Typed(words, round(fits - 0.01, 2), weight, after)]
    return [Typed(line, size, weight, after) for line in wrapped(words, room, size, weight)]


def wrapped(words: str, room: float, size: float, weight: int) -> list[str]:
    """Return words in lines of a size of type that have room."""
    lines = ['']
    for word in words.split(' '):
        longer = f'{lines[-1]} {word}'.strip()
        if advance_em(longer, svg.WIDTH, weight) * size <= room or not lines[-1]:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines


def high_mm(lines: Iterable[Typed]) -> float:
    """Return how far the last of some lines stands under where they begin."""
    return sum(line.after for line in lines)


def written(lines: Sequence[Typed], corner: Point) -> Markup:
    """Return lines one under another, from the left, as boxes of the page.

    Given:
        corner  the left end of what is above the first, mm of the paper
    """
    x, y = corner
    boxes = []
    for line in lines:
        y += line.after
        boxes.append(line_at(line.words, (x, y), line.size, line.weight))
    return Markup().join(boxes)


def line_at(words: str, at: Point, size: float, weight: int) -> Markup:
    """Return one line, its letters standing at a point."""
    top = at[1] - BASELINE * size
    return Markup(
        f'<p class="w{weight}" style="left:{at[0]:.2f}mm;top:{top:.3f}mm;font-size:{size:.2f}mm">{escape(words)}</p>'
    )


def style(weights: Iterable[int]) -> str:
    """Return how lines of some weights are set."""
    lines = '\n'.join(
        f'.w{weight} {{ font-weight: {weight}; font-variation-settings: "wdth" {svg.WIDTH}, "wght" {weight}; }}'
        for weight in weights
    )
    return f'p {{ position: absolute; margin: 0; white-space: nowrap; font-family: "Open Sans"; line-height: 2; }}\n{lines}'
