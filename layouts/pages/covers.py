"""The cover of the book, and of each of its later sections: it names what is inside and nothing else."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings.cover_rafter import cover_rafter
from layouts.pages.cover_title import lines_size, title_size
from layouts.pages.reference_pages import LETTERS, letters_of
from layouts.paper.page import Draft, Index, PageNumber
from layouts.words.drawings import COVER_DRAWING
from layouts.words.lists import capital, joined, span, steps
from layouts.words.pages import FIRST_SECTION, INSIDE
from layouts.words.say import _, n_
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.settings import Settings

PITCH_TABLES = ('opening', 'common', 'hip-valley', 'rise', 'jacks', 'values')
"""In the order in which a cover names them."""
BY_RUN = ('common', 'hip-valley', 'rise')
ROOM = 241.0, 194.0
"""Width and height of the drawing, in units."""
DRAWN = 0.7
"""Slope that shows well: the nearest of the pitches inside is drawn."""
FLATTEST, STEEPEST = 0.16, 1.7
"""Beyond these the drawing would be a thread."""
OF_FIRST_SECTION = ('how-to', 'words', 'cautions')
"""What a later section sends its reader to the first for."""


class CoverPage(Struct, frozen=True):
    """The cover of the book, or of one of its later sections."""

    title: str
    title_rem: float
    """Size of the letters of the title, or of the head of a later section."""
    head: tuple[str, ...]
    """The head of a later section, in lines; none on the book's own cover."""
    owner: str
    rafter: Markup
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
    """Its first and last page, links both."""
    also: str
    """What else is in a later section, '' for nothing."""
    elsewhere: str
    """What a later section's reader finds in the first, as words."""


def cover_draft(settings: Settings, section: int = 1, sections: int = 1, names: Sequence[str] = ()) -> Draft:
    """Return the cover of a section; names are the pitches and letters of groups in a later one."""

    def make(index: Index) -> CoverPage:
        inside = [pitch for pitch in settings.pitches if section == 1 or pitch.short in names]
        letters = [letter for letter in letters_of(settings).values() if section == 1 or letter in names]
        first, count = index.sections[section - 1]
        head = _head(inside, letters) if section > 1 else ()
        drawn = min(inside or settings.pitches, key=lambda pitch: abs(float(pitch.slope) - DRAWN))
        examples = 'examples' in index and first <= index['examples'] < first + count
        return CoverPage(
            settings.title,
            lines_size(head) if head else title_size(settings.title),
            head,
            settings.owner,
            cover_rafter(min(max(float(drawn.slope), FLATTEST), STEEPEST), *ROOM, COVER_DRAWING),
            span_of(inside),
            _runs(settings) if any(_in(index, table) for table in BY_RUN) else '',
            text.mixed(1, settings.measure.per),
            _tables(index, letters),
            (section, len(index.sections)),
            (PageNumber(first), PageNumber(first + count - 1)),
            _(INSIDE['examples']) if examples else '',
            joined([_(FIRST_SECTION[key]) for key in OF_FIRST_SECTION if key in index]),
        )

    return Draft('cover' if section == 1 else 'section_cover', make, f'section:{section}')


def spans(letters: Sequence[str]) -> str:
    """Return letters in a few words, none named that is not there: 'B to I and L', 'A and B', 'C'."""
    parts = []
    for _place, run in groupby(enumerate(letters), lambda one: LETTERS.index(one[1]) - one[0]):
        some = [letter for _place, letter in run]
        parts += [span(some[0], some[-1])] if len(some) > 2 else some
    return joined(parts)


def span_of(pitches: Sequence[Pitch]) -> str:
    """Return pitches by the first and the last, with their unit; '' for none."""
    return ' '.join(filter(None, _ends(pitches)))


def _ends(pitches: Sequence[Pitch]) -> tuple[str, str]:
    """Return the first and the last of some pitches, and the unit of both; one in degrees has its own with each."""
    ends = pitches[:1] if len(pitches) == 1 else [pitches[0], pitches[-1]] if pitches else []
    apart = all(pitch.unit for pitch in ends)
    names = [pitch.short if apart else pitch.text for pitch in ends]
    return span(*names) if len(names) > 1 else ''.join(names), ends[0].unit if ends and apart else ''


def _head(pitches: Sequence[Pitch], letters: Sequence[str]) -> tuple[str, ...]:
    tables = (
        n_('table {letters}', 'tables {letters}', len(letters)).format(letters=spans(letters))
        if letters
        else ''
    )
    if pitches and tables:
        return f'{span_of(pitches)},', tables
    if tables:
        return _('Reference'), tables
    return tuple(filter(None, _ends(pitches))) or tuple(_('The last\npages').split('\n'))


def _tables(index: Index, letters: Sequence[str]) -> str:
    """Return what tables there are, as the end of a sentence that begins with a capital."""
    found = [_(INSIDE[table]) for table in PITCH_TABLES if _in(index, table)]
    found += [_(INSIDE[key]) for key in ('glance', 'examples') if key in index]
    found += [_(INSIDE['groups']).format(letters=spans(letters))] if letters else []
    return capital(joined(found))


def _in(index: Index, table: str) -> bool:
    """Return whether any pitch has a table in the book."""
    return any(key.startswith(f'{table}:') for key in index.pages)


def _runs(settings: Settings) -> str:
    runs = settings.runs
    return steps(*(text.run(length) for length in (runs.first, runs.last, runs.step)))
