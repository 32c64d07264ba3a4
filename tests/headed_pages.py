"""The pages that are no reference tables, read by their heads: runs and jacks, cuts and lengths, rows to the right."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from itertools import pairwise

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
from printed_words import Word

GRID_REACH_MM = 1.7
"""A digit of the widest whole number, where the heads stand over the last digits."""
HEAD_REM = 1.2
"""What stands under the title of a pitch's page is no further down."""
ROW_REM = 0.8
"""Rows set to the right, and lines of name and figure, are larger; their heads and the small print below smaller."""


# Tables of runs ------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Headed:
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


# Tables whose heads end where their figures end ------------------------------------------------------------------


def right_part(page: int, title: str, below: Sequence[Sequence[Word]], corner: str, rem: float) -> Part:
    """Return a table whose columns are set to the right, its heads in one line or more; its rows are set larger."""
    rows = [max(word.size for word in line) / rem > ROW_REM for line in below]
    first = rows.index(True)
    last = next((place for place in range(first, len(below)) if not rows[place]), len(below))
    named, above = corner.split(), []
    for line in below[:first]:
        line = list(line)
        while named and line and line[0].text == named[0]:
            line.pop(0), named.pop(0)
        above.append(phrases(line, PHRASE_GAP_REM * rem))
    if named:
        raise NotTold(f'page {page}, "{title}": no "{corner}" at the head of the labels')
    rights = sorted({round(phrase.right, 1): phrase.right for phrase in above[-1]}.values())
    texts = ['' for _ in rights]
    for phrase in (phrase for line in above for phrase in line):
        place = next((n for n, right in enumerate(rights) if abs(right - phrase.right) < REACH_MM), None)
        if place is None:
            raise NotTold(f'page {page}, "{title}": "{phrase.text}" stands over no column')
        texts[place] = f'{texts[place]} {phrase.text}'.strip()
    found = []
    for line in below[first:last]:
        label, cells = [], [[] for _ in rights]
        edge = phrases(line, PHRASE_GAP_REM * rem)[0].right
        for word in line:
            place = next((n for n, right in enumerate(rights) if word.right <= right + REACH_MM), None)
            (label if word.right <= edge else cells[place]).append(word)
        found.append((said(label), tuple(said(cell) for cell in cells)))
    heads = tuple(text.replace('- ', '') for text in texts)
    return Part(
        page, title, '', corner, '', heads, tuple(found), said([w for line in below[last:] for w in line])
    )


# Names and figures -----------------------------------------------------------------------------------------------


@dataclass
class Facts:
    """A page of names with a figure at the end of each line, under headings, in two halves."""

    page: int
    found: dict[tuple[str, str], list[str]] = field(default_factory=dict)

    def figure(self, heading: str, label: str) -> str:
        """Return the figure beside a label under a heading; one set in under another is 'that one: this one'."""
        figures = self.found.get((heading, label), [])
        if len(figures) != 1:
            known = [name for head, name in self.found if head == heading]
            raise NotTold(
                f'page {self.page}, "{heading}": {len(figures)} figures for "{label}" among {known}'
            )
        return figures[0]


def facts(page: int, words: Sequence[Word], left: float, right: float, rem: float) -> Facts:
    """Return what a page says in lines of name and figure, each half by itself."""
    found, middle = Facts(page), (left + right) / 2
    for begin, end in ((left, middle), (middle, right)):
        heading, above = '', ''
        edge = None
        for line in lines([word for word in words if begin - 1 < word.left < end]):
            if all(TITLE_REM > word.size / rem > 0.95 for word in line):
                heading, edge = said(line), line[0].left
            elif heading and len(line) > 1 and line[0].size / rem > ROW_REM:
                cut = max(
                    pairwise(range(len(line))), key=lambda pair: line[pair[1]].left - line[pair[0]].right
                )[1]
                name = said(line[:cut])
                if line[0].left > edge + 0.1 * rem:
                    name = f'{above}: {name}'
                else:
                    above = name
                found.found.setdefault((heading, name), []).append(said(line[cut:]))
    return found
