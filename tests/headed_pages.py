"""The pages that are no reference tables, read by their heads: runs and jacks, cuts and lengths."""

from __future__ import annotations

from collections.abc import Sequence

from headed import (
    FIGURE_REM,
    HAIR_REM,
    PHRASE_GAP_REM,
    REACH_MM,
    SAME_LINE_MM,
    TITLE_REM,
    NotTold,
    Part,
    lines,
    phrases,
    read,
    rows_under,
    said,
)
from msgspec import Struct
from msgspec.structs import replace
from printed_words import Word

GRID_REACH_MM = 2.2
"""A digit of the widest whole number, where the heads stand over the last digits."""
HEAD_REM = 1.2
"""What stands under the title of a pitch's page is no further down."""


# Tables of runs ------------------------------------------------------------------------------------------------


class Headed(Struct, frozen=True):
    """A page with the pitch in great figures at its head."""

    pitch: str
    title: str
    line: str
    """What stands under the title."""
    below: list[list[Word]]


def headed(page: int, words: Sequence[Word], rem: float) -> Headed:
    """Return a pitch's page by its head."""
    great = [word for word in words if word.size / rem >= FIGURE_REM]
    if not great:
        raise NotTold(f'page {page}: no pitch at its head')
    foot = max(word.base for word in great)
    unit = [
        word
        for word in words
        if 0.95 < word.size / rem < TITLE_REM and abs(word.base - foot) < SAME_LINE_MM / 2
    ]
    rest = [word for word in words if word not in great and word not in unit]
    titles = [word for word in rest if word.size / rem >= TITLE_REM and word.base < foot]
    under = max(word.base for word in titles) + HEAD_REM * rem
    line = [word for word in rest if word not in titles and word.base <= under]
    below = [word for word in rest if word.base > under]
    return Headed(read([*great, *unit]), read(titles), read(line), lines(below))


def grid_parts(page: int, found: Headed, corner: str, rem: float) -> list[Part]:
    """Return a table of runs or jacks, then what it says of small runs to add at its foot, if anything."""
    below, title = found.below, f'{found.pitch}, {found.title}'
    if below[0][0].text != corner:
        raise NotTold(f'page {page}, "{title}": no head "{corner}"')
    heads = phrases(below[0][1:], PHRASE_GAP_REM * rem)
    size = max(word.size for word in below[1])
    last = next(
        (n for n in range(1, len(below)) if abs(max(word.size for word in below[n]) - size) > HAIR_REM * rem),
        len(below),
    )
    rows = rows_under(below[1:last], [head.left for head in heads], GRID_REACH_MM)
    small = below[last:]
    parts = [Part(page, title, found.line, corner, '', tuple(head.text for head in heads), rows, '')]
    while len(small) > 1 and small[0][0].text == 'for':
        names = phrases(small[0][1:], PHRASE_GAP_REM * rem)
        added = rows_under(small[1:2], [name.left for name in names])
        parts.append(Part(page, title, found.line, 'for', '', tuple(name.text for name in names), added, ''))
        small = small[2:]
    notes = said([word for line in small for word in line])
    return [replace(part, notes=notes) for part in parts]


def under_spacings(found: Headed, rem: float) -> Headed:
    """Return a page of jacks with its two lines of heads read as one: each under the spacing that begins left of it."""
    spacings, heads, *rows = found.below
    groups, names = phrases(spacings, PHRASE_GAP_REM * rem), phrases(heads[1:], PHRASE_GAP_REM * rem)
    joined = [heads[0]]
    for name in names:
        above = [group for group in groups if group.left <= name.left + REACH_MM]
        if not above:
            raise NotTold(f'no spacing over "{name.text}"')
        word = next(word for word in heads if word.left == name.left)
        joined.append(replace(word, text=f'{above[-1].text}: {name.text}'))
    return replace(found, below=[joined, *rows])
