"""The pages after the tables: rounding, what the numbers were checked against, the settings of this copy."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from layouts.pages import colophon
from layouts.pages.example_pages import on_one_opening
from layouts.pages.how_to_page import unit_after
from layouts.paper.longer import lines_in
from layouts.paper.page import Block, Draft, Index
from layouts.paper.trim import Trim, trim_of
from layouts.words.pages import heading
from layouts.words.say import _, n_, say
from tablegen.examples import nearest_pitch
from tablegen.geometry import corner, seventeen
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers import text
from tablegen.numbers.exact import nearest
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables import lookup
from tablegen.tables.runs import head_of

TWELVE_STEPS_IN = 144 * INCHES.unit_run / INCHES.group
BY_RUN = ('common', 'hip-valley', 'rise')
"""Tables, one of which shows a sum that is a part off."""
LINE, LINE_SIZE, SMALL_LINE, SMALL_SIZE = 11.3, 8.4, 9.9, 7.5
"""Height of a line of the settings with its rule and size of its type, where it is large and where it is small; units."""
INDENT = 10.0
"""Units by which a line of the settings stands in that goes on."""
OVER, AGAIN = 76.0, 114.0
"""What stands over and right under the settings, and what is said below them of how the book is printed again; units."""
MOST_LAST_LINES = 13
"""Lines of the settings on the book's last page, where their type is small."""
LONGEST_WHOLE = 24
"""Letters of a word that is not broken."""


class NumbersPage(Struct, frozen=True):
    """How the numbers are rounded, with the book's own case of a sum that is a part off."""

    part: str
    half_part: str
    limits: bool
    """Whether tables of limits are in the book."""
    sum_of: str
    """The table of the sum, as words."""
    sum_pitch: str
    sum_readings: tuple[tuple[str, str], ...]
    """None where no table of the book has such a sum."""
    sum_total: str
    sum_exact: str
    unit: str
    """What follows a length: ' in', or nothing where its text has its units."""
    drift_page: int
    """Where it stands what rounded steps add up to, 0 for nowhere."""
    seventeen_over: str
    """What 17 in place of √288 adds over twelve steps at 8 in 12, in."""


class MadePage(Struct, frozen=True):
    """The settings that made this copy."""

    lines: tuple[tuple[tuple[str, bool], ...], ...]
    """In words, each with whether it is kept whole: a name with a hyphen is, so that it can be read back."""
    counts: str
    """Figures of the pitches' tables, pages and sections."""
    small: bool
    """Whether their type is small, being many."""
    again: bool
    """Whether there is room to say how it is printed again and checked."""


class ClosingPage(Struct, frozen=True):
    """What is said once more on the last page of every section; on that of the book, the settings may stand below it."""

    hips: bool
    cheeks: bool
    made: MadePage | None = None


def back_block(settings: Settings, made: Draft | None) -> Block:
    """Return the last pages but the very last; made is the page of the settings, None where they stand on the very last."""
    whole = any(table in settings.parts for table in BY_RUN)
    keys = (
        ('numbers', 'checked') if whole else ('rounded',)
    )  # without a sum to show both have room on one page
    drafts = [Draft(key, lambda index: _numbers(settings, index), key, heading(key)) for key in keys]
    return Block((*drafts, *([made] if made else [])))


def made_draft(settings: Settings, figures: int) -> Draft:
    """Return the page of the settings of a copy; figures is how many are printed in the tables."""
    return Draft('made', lambda index: _made(settings, index, figures), 'made', heading('made'))


def is_made_last(settings: Settings) -> bool:
    """Return whether the settings of a copy stand on the book's last page: of a book of openings, where they are short."""
    return (
        on_one_opening(settings)
        and _lines(colophon.lines(settings), SMALL_SIZE, trim_of(settings)) <= MOST_LAST_LINES
    )


def closing_draft(settings: Settings) -> Draft:
    """Return the last page of every section: it speaks of what this book has."""
    return Draft('closing', lambda index: _closing(settings), '', heading('closing'))


def closing_made_draft(settings: Settings, figures: int) -> Draft:
    """Return the last page of a book where the settings of a copy stand on it."""

    def make(index: Index) -> ClosingPage:
        return replace(_closing(settings), made=_made(settings, index, figures))

    return Draft('closing_made', make, '', heading('closing'), also=('made',))


def _closing(settings: Settings) -> ClosingPage:
    parts = set(settings.parts)
    hips = bool(parts & {'hip-valley', 'values', 'glance'})
    return ClosingPage(hips, bool(parts & {'values', 'glance', 'square', 'cheeks'}))


def _numbers(settings: Settings, index: Index) -> NumbersPage:
    pitch = nearest_pitch(settings, Fraction(4))
    found = next((one for table in BY_RUN if table in settings.parts if (one := _sum(table, settings))), None)
    run, steep = TWELVE_STEPS_IN, pitch_of_rise(Fraction(8))
    over = seventeen.hip_length(run, steep.slope) - corner.hip_length(run, steep.corner)
    readings = tuple((text.run(r.run_in), r.figure.text) for r in found.readings) if found else ()
    return NumbersPage(
        text.mixed(1, settings.measure.per),
        text.mixed(1, 2 * settings.measure.per),
        'group-seat' in index,
        say(head_of(found.table)) if found else '',
        pitch.text,
        readings,
        found.total.text if found else '',
        found.direct.text if found else '',
        unit_after(settings),
        index.get('drift'),
        text.decimal(nearest(over, 1000), 3),
    )


def _sum(table: str, settings: Settings) -> lookup.Found | None:
    """Return two figures of a table whose sum is a part off the true length, or None for none."""
    pitch = nearest_pitch(settings, Fraction(4))
    per = INCHES.part
    runs = (Fraction(count, per) for count in range(per * 24, per * 96))
    found = (lookup.look_up(table, run, pitch, settings) for run in runs)
    return next((one for one in found if one and len(one.readings) == 2 and one.total != one.direct), None)


def _made(settings: Settings, index: Index, figures: int) -> MadePage:
    told, trim = colophon.lines(settings, index), trim_of(settings)
    room = trim.text_height - OVER
    if _lines(told, SMALL_SIZE, trim) * SMALL_LINE > room:
        told = colophon.lines(settings, index, pitches_named=False)
    small = _lines(told, LINE_SIZE, trim) * LINE > room
    high = _lines(told, SMALL_SIZE, trim) * SMALL_LINE if small else _lines(told, LINE_SIZE, trim) * LINE
    lines = tuple(tuple((word, len(word) < LONGEST_WHOLE) for word in line.split(' ')) for line in told)
    sections, counts = len(index.sections), []
    if figures:
        counts.append(_('{figures} figures in the tables of the pitches').format(figures=f'{figures:,}'))
    counts.append(n_('{count} page', '{count} pages', index.total).format(count=index.total))
    if sections > 1:
        counts.append(n_('{count} section', '{count} sections', sections).format(count=sections))
    return MadePage(lines, ', '.join(counts), small, high + AGAIN <= room)


def _lines(told: Sequence[str], size: float, trim: Trim) -> int:
    """Return how many lines settings take in type of a size, units."""
    return sum(lines_in(line, size, trim.text_width - INDENT) for line in told)
