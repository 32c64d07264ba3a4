"""The cover of the book, and of each of its later sections: it names what is inside and nothing else."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import groupby

from markupsafe import Markup

from layouts.drawings.fan import pitch_fan
from layouts.pages.cover_title import lines_size, title_size
from layouts.pages.reference_pages import LETTERS
from layouts.paper.page import Draft, Index
from layouts.words.pages import FIRST_SECTION, INSIDE
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.settings import Settings

PITCH_TABLES = ('common', 'hip-valley', 'rise', 'jacks', 'values')
"""In the order in which a cover names them."""
BY_RUN = ('common', 'hip-valley', 'rise')
FAN = 196
"""Width and height of the fan, in units."""
OF_FIRST_SECTION = ('how-to', 'words', 'cautions')
"""What a later section sends its reader to the first for."""


@dataclass(frozen=True, slots=True)
class CoverPage:
    """The cover of the book, or of one of its later sections."""

    title: str
    title_rem: float
    """Size of the letters of the title, or of the head of a later section."""
    head: tuple[str, ...]
    """The head of a later section, in lines; none on the book's own cover."""
    owner: str
    fan: Markup
    pitches: str
    """'1 to 24 in 12', '' for none."""
    runs: str
    """'' where no table goes by runs."""
    part: str
    tables: str
    """The tables inside, as words; '' for none."""
    section: tuple[int, int]
    """Its number and how many there are."""
    pages: tuple[int, int]
    """Its first and last page."""
    also: str
    """What else is in a later section, '' for nothing."""
    elsewhere: str
    """What a later section's reader finds in the first, as words."""


def cover_draft(settings: Settings, section: int = 1, sections: int = 1, names: Sequence[str] = ()) -> Draft:
    """Return the cover of a section; names are the pitches and letters of groups in a later one."""

    def make(index: Index) -> CoverPage:
        inside = [pitch for pitch in settings.pitches if section == 1 or pitch.short in names]
        letters = [
            letter
            for group, letter in LETTERS.items()
            if (letter in names if section > 1 else f'group-{group}' in index)
        ]
        first, count = index.sections[section - 1]
        head = _head(span_of(inside), spans(letters)) if section > 1 else ()
        examples = 'examples' in index and first <= index['examples'] < first + count
        return CoverPage(
            settings.title,
            lines_size(head) if head else title_size(settings.title),
            head,
            settings.owner,
            pitch_fan(settings.pitches, inside, FAN, FAN, settings.title),
            span_of(inside),
            _runs(settings) if any(_in(index, table) for table in BY_RUN) else '',
            text.mixed(1, settings.measure.per),
            _tables(index, letters),
            (section, len(index.sections)),
            (first, first + count - 1),
            INSIDE['examples'] if examples else '',
            _joined([FIRST_SECTION[key] for key in OF_FIRST_SECTION if key in index]),
        )

    return Draft('cover' if section == 1 else 'section_cover', make, f'section:{section}')


def spans(letters: Sequence[str]) -> str:
    """Return letters in a few words, none named that is not there: 'B to I and L', 'A and B', 'C'."""
    places = list(LETTERS.values())
    parts = []
    for _, run in groupby(enumerate(letters), lambda one: places.index(one[1]) - one[0]):
        some = [letter for _, letter in run]
        parts += [f'{some[0]} to {some[-1]}'] if len(some) > 2 else some
    return _joined(parts)


def span_of(pitches: Sequence[Pitch]) -> str:
    """Return pitches by the first and the last, with their unit; '' for none."""
    ends = pitches[:1] if len(pitches) == 1 else [pitches[0], pitches[-1]] if pitches else []
    if any(pitch.short.endswith('°') for pitch in ends):
        return ' to '.join(pitch.text for pitch in ends)
    return f'{" to ".join(pitch.short for pitch in ends)} in 12' if ends else ''


def _head(pitches: str, letters: str) -> tuple[str, ...]:
    tables = f'{"tables" if " " in letters else "table"} {letters}' if letters else ''
    if pitches and tables:
        return f'{pitches},', tables
    if tables:
        return 'Reference', tables
    if not pitches:
        return 'The last', 'pages'
    first, _, unit = pitches.partition(' in 12')
    return (first, 'in 12') if pitches.endswith(' in 12') and not unit else (pitches,)


def _tables(index: Index, letters: Sequence[str]) -> str:
    """Return what tables there are, as the end of a sentence that begins with a capital."""
    found = [INSIDE[table] for table in PITCH_TABLES if _in(index, table)]
    found += [INSIDE[key] for key in ('glance', 'examples') if key in index]
    found += [f'{INSIDE["groups"]} {spans(letters)}'] if letters else []
    said = _joined(found)
    return said[:1].upper() + said[1:]


def _in(index: Index, table: str) -> bool:
    """Return whether any pitch has a table in the book."""
    return any(key.startswith(f'{table}:') for key in index.pages)


def _runs(settings: Settings) -> str:
    runs = settings.runs
    return f'{text.run(runs.first)} to {text.run(runs.last)} by {text.run(runs.step)}'


def _joined(words: Sequence[str]) -> str:
    """Return words with commas and an 'and'."""
    return ' and '.join(filter(None, (', '.join(words[:-1]), *words[-1:])))
