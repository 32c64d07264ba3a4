"""The outline of the booklet for a screen: every kind of page by its head, pitches and groups of tables below theirs."""

from __future__ import annotations

from layouts.pages.book import Plan
from layouts.pages.contents_pages import CONTENTS_KEYS
from layouts.pages.marking_sheets import RIGHT
from layouts.pages.own_roof_pages import called, keys_of
from layouts.pages.slopes_pages import keys_of_file
from layouts.paper.page import Entry, Index
from layouts.words.lists import capital
from layouts.words.pages import ALL_MEMBERS, GROUP_HEADS, OUTLINE, WORDS, heading
from layouts.words.say import _
from tablegen.examples.shipped import FILES
from tablegen.groups import GROUPS

OF_A_PITCH = ('values', 'hip-values', 'jacks', 'common', 'hip-valley', 'rise')
OF_REFERENCE = ('after-the-length', 'care')
EXAMPLES = ('store', 'hip', 'jacks', 'valley', 'porch', 'saltbox', 'gambrel')


def outline(planned: Plan) -> tuple[Entry, ...]:
    """Return the first level of a book's outline, by page; covers of later sections stand below the book's own."""
    index, settings = planned.index, planned.settings
    heads = {
        key: WORDS[key]
        for key in ('contents', *CONTENTS_KEYS, RIGHT)
        if key not in (*OF_REFERENCE, 'examples', ALL_MEMBERS)
    }
    groups = {f'group-{group}': GROUP_HEADS[group] for group in GROUPS}
    first = [
        Entry(settings.title, 1, _covers(index)),
        *_entries(index, heads),
        *_above(_(OUTLINE['pitches']), tuple(_pitches(planned))),
        *_above(_(OUTLINE['reference']), _entries(index, {key: WORDS[key] for key in OF_REFERENCE} | groups)),
        *_above(heading('examples'), _examples(planned)),
        *_fillers(planned),
    ]
    return tuple(sorted(first, key=lambda entry: entry.page))


def _examples(planned: Plan) -> tuple[Entry, ...]:
    """Return the members worked through: those of each roof of the reader's own below its name."""
    index, settings = planned.index, planned.settings
    if not settings.own_roofs:
        worked = _entries(index, {f'example:{key}': OUTLINE[f'example_{key}'] for key in EXAMPLES})
        lists = ((file.stem, f'{ALL_MEMBERS}{keys_of_file(file.name)}') for file in FILES)
        beside = tuple(Entry(capital(name), index[key]) for name, key in lists if key in index)
        return (*worked, *_above(_(WORDS[ALL_MEMBERS]), beside))
    found: list[Entry] = []
    for place, name in enumerate(called(settings)):
        keys = keys_of(place)
        below = {f'example:{key}{keys}': OUTLINE[f'own_{key}'] for key in EXAMPLES}
        found += _above(name, _entries(index, below | {f'{ALL_MEMBERS}{keys}': WORDS[ALL_MEMBERS]}))
    return tuple(found)


def _entries(index: Index, names: dict[str, str]) -> tuple[Entry, ...]:
    return tuple(Entry(_(name), index[key]) for key, name in names.items() if key in index)


def _above(name: str, below: tuple[Entry, ...]) -> list[Entry]:
    """Return an entry over others, none where there are none."""
    return [Entry(name, min(entry.page for entry in below), below)] if below else []


def _covers(index: Index) -> tuple[Entry, ...]:
    sections = len(index.sections)
    return tuple(
        Entry(_(OUTLINE['section']).format(section=place, sections=sections), first)
        for place, (first, _count) in enumerate(index.sections, 1)
        if place > 1
    )


def _pitches(planned: Plan) -> list[Entry]:
    names = [pitch.text for pitch in planned.settings.pitches]
    each = {
        name: _entries(planned.index, {f'{part}:{name}': OUTLINE[part] for part in OF_A_PITCH})
        for name in names
    }
    return [entry for name, below in each.items() for entry in _above(name, below)]


def _fillers(planned: Plan) -> list[Entry]:
    """Return the first page to write on, and the last page of all, which every section ends with."""
    numbered = list(enumerate(planned.drafts, 1))
    notes = next((number for number, draft in numbered if draft.template == 'notes'), 0)
    last = Entry(heading('closing'), planned.index.total)
    return [Entry(heading('notes'), notes), last] if notes else [last]
