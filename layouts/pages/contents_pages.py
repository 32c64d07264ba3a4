"""Contents: everything that has a page of its own, by its heading and its page."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from itertools import pairwise

from layouts.pages.reference_pages import letters_of
from layouts.paper.page import Draft, Index, PageNumber
from layouts.words.lists import span
from layouts.words.pages import GROUP_HEADS, heading
from layouts.words.say import _
from tablegen.geometry.pitch import Pitch
from tablegen.settings import Settings

ENTRY_COLUMNS, CONTENTS_COLUMNS = 2, 3
FIRST_CONTENTS_ROWS, CONTENTS_ROWS = 8, 24
"""Rows of pitches on the first page of contents, between the other lists, and on later ones."""
CONTENTS_KEYS = (
    'cautions',
    'how-to',
    'reading',
    'one-rafter',
    'seat-cut-try',
    'words',
    'words-corner',
    'existing',
    'arms',
    'square',
    'stepping',
    'engraved',
    'drift',
    'glance',
    'glance-right',
    'after-the-length',
    'care',
    'examples',
    'numbers',
    'checked',
    'made',
)
"""In the order of their pages; each is headed by its word."""

Listed = tuple[tuple[tuple[str, PageNumber], ...], ...]
"""Columns of name and page."""


@dataclass(frozen=True, slots=True)
class ContentsPage:
    """What is where."""

    entries: Listed
    pitches: Listed
    sections: str
    """First page and last page of each section, where there are several."""
    groups: Listed
    """Groups of reference tables, each with its letter."""
    first: bool


def contents_drafts(settings: Settings) -> list[Draft]:
    """Return the pages of contents; pitches that do not stand on the first go on to others."""
    count = len(settings.pitches)
    later = range(CONTENTS_COLUMNS * FIRST_CONTENTS_ROWS, count, CONTENTS_COLUMNS * CONTENTS_ROWS)
    return [
        Draft('contents', _maker(settings, start, stop), '' if start else 'contents', heading('contents'))
        for start, stop in pairwise([0, *later, count])
    ]


def _maker(settings: Settings, start: int, stop: int) -> Callable[[Index], ContentsPage]:
    def make(index: Index) -> ContentsPage:
        entries = [(heading(key), index[key]) for key in CONTENTS_KEYS if key in index]
        listed = [(pitch.text, _first_page(index, pitch)) for pitch in settings.pitches[start:stop]]
        listed = [(name, page) for name, page in listed if page]
        groups = [
            (f'{letter}  {_(GROUP_HEADS[group])}', index[f'group-{group}'])
            for group, letter in letters_of(settings).items()
        ]
        bounds = [span(str(first), str(first + count - 1)) for first, count in index.sections]
        return ContentsPage(
            _in_columns(entries, ENTRY_COLUMNS),
            _in_columns(listed, CONTENTS_COLUMNS),
            ', '.join(bounds) if len(bounds) > 1 else '',
            _in_columns(groups, CONTENTS_COLUMNS),
            start == 0,
        )

    return make


def _in_columns(listed: list[tuple[str, PageNumber]], columns: int) -> Listed:
    rows = -(-len(listed) // columns) or 1
    return tuple(tuple(listed[at : at + rows]) for at in range(0, len(listed), rows))


def _first_page(index: Index, pitch: Pitch) -> PageNumber:
    found = [
        index[f'{part}:{pitch.text}']
        for part in ('opening', 'values', 'jacks', 'common', 'hip-valley', 'rise')
        if f'{part}:{pitch.text}' in index
    ]
    return min(found, default=PageNumber())
