"""Contents: what a reader wants to do, then everything that has a page of its own, by its heading and its page."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from markupsafe import Markup
from msgspec import Struct

from layouts.pages.reference_pages import letters_of
from layouts.paper.longer import CUTS
from layouts.paper.page import Draft, Index, PageNumber
from layouts.paper.typeface import advance_em
from layouts.words.lists import joined
from layouts.words.pages import GROUP_HEADS, WANTS, heading
from layouts.words.say import _
from tablegen.geometry.pitch import Pitch
from tablegen.settings import Settings

ENTRY_COLUMNS, GROUP_COLUMNS, PITCH_COLUMNS = 2, 3, 5
FIRST_CONTENTS_ROWS, CONTENTS_ROWS = 5, 24
"""Rows of pitches on the first page of contents, between the other lists, and on later ones."""
COLUMN_EM = 6.0
"""Room for a pitch and its page's number; one whose name is too long goes by its short name."""
WANTED = {
    'common': ('one-rafter', 'example:store', 'how-to'),
    'shed': ('example:porch',),
    'hip': ('example:hip',),
    'jacks': ('example:jacks',),
    'valley': ('example:valley',),
    'ledger': ('example:porch',),
    'saltbox': ('example:saltbox',),
    'gambrel': ('example:gambrel',),
    'marks': ('marking-sheet',),
    'square': ('square',),
    'old-square': ('engraved',),
    'existing': ('existing',),
    'drift': ('drift',),
    'again': ('made',),
}
"""What a reader may want to do, and where it is told: the first of these pages that the book has."""
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
    'all-members',
    'marking-sheet',
    'numbers',
    'rounded',
    'checked',
    'made',
)
"""Each is headed by its word."""

Listed = tuple[tuple[tuple[str, PageNumber], ...], ...]
"""Columns of name and page."""


class ContentsPage(Struct, frozen=True):
    """What is where."""

    wanted: Listed
    entries: Listed
    pitches: Listed
    sections: str | Markup
    """The first page of each section, links all, where there are several."""
    groups: Listed
    """Groups of reference tables, each with its letter."""
    first: bool


def contents_drafts(settings: Settings) -> list[Draft]:
    """Return the pages of contents; pitches that do not stand on the first go on to others."""
    count = len(settings.pitches)
    later = range(PITCH_COLUMNS * FIRST_CONTENTS_ROWS, count, PITCH_COLUMNS * CONTENTS_ROWS)
    return [
        Draft('contents', _maker(settings, start, stop), '' if start else 'contents', heading('contents'))
        for start, stop in pairwise([0, *later, count])
    ]


def _maker(settings: Settings, start: int, stop: int) -> Callable[[Index], ContentsPage]:
    def make(index: Index) -> ContentsPage:
        wanted = [
            (_(WANTS[want]), index[next(key for key in keys if key in index)])
            for want, keys in WANTED.items()
            if any(key in index for key in keys)
        ]
        entries = sorted(
            ((heading(key), index[key]) for key in CONTENTS_KEYS if key in index), key=lambda entry: entry[1]
        )
        room = COLUMN_EM - advance_em(str(index.total), *CUTS['bold'])
        listed = [
            (pitch.text if advance_em(pitch.text, *CUTS['text']) <= room else pitch.short, page)
            for pitch in settings.pitches[start:stop]
            if (page := _first_page(index, pitch))
        ]
        groups = [
            (f'{letter}  {_(GROUP_HEADS[group])}', index[f'group-{group}'])
            for group, letter in letters_of(settings).items()
        ]
        begins = [PageNumber(first) for first, _count in index.sections]
        return ContentsPage(
            _in_columns(wanted, ENTRY_COLUMNS),
            _in_columns(entries, ENTRY_COLUMNS),
            _in_columns(listed, PITCH_COLUMNS),
            Markup(joined(['{}'] * len(begins))).format(*begins) if len(begins) > 1 else '',
            _in_columns(groups, GROUP_COLUMNS),
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
