"""The pages before the tables: cover, cautions, contents, how to find a length, the words, the glance."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from markupsafe import Markup

from layouts.cover_title import title_size
from layouts.drawings.corner import CornerLabels, labelled_corner
from layouts.drawings.fan import pitch_fan
from layouts.drawings.rafter import RafterLabels, labelled_rafter
from layouts.drawings.reading import found_figure
from layouts.pages import Block, Draft, Index
from layouts.pitch_pages import page_of_run
from layouts.reference_pages import LETTERS
from layouts.square_pages import square_drafts
from layouts.trim import Trim
from layouts.words import WORDS
from tablegen import text
from tablegen.figures import length_figure
from tablegen.lookup import EXACT_LENGTH, addends, look_up
from tablegen.pitch import Pitch
from tablegen.reference.groups import GROUPS
from tablegen.rows import PitchValues, pitch_values
from tablegen.settings import Settings
from tablegen.worked import nearest_pitch

CONTENTS_COLUMNS = 3
FIRST_CONTENTS_ROWS, CONTENTS_ROWS = 8, 24
"""Rows of pitches on the first page of contents, below everything else, and on later ones."""
CONTENTS_KEYS = (
    'cautions',
    'how-to',
    'order',
    'words',
    'square',
    'glance',
    'after-the-length',
    'examples',
    'numbers',
    'checked',
    'made',
)
GLANCE_ROWS = 24


@dataclass(frozen=True, slots=True)
class CoverPage:
    """The cover of the book, or of one of its later sections."""

    title: str
    title_rem: float
    owner: str
    fan: Markup
    pitches: str
    pitch_unit: str
    """'in 12', or '' where a pitch is in degrees and has its unit with it."""
    runs: str
    part: str
    section: tuple[int, int]
    """Its number and how many there are."""
    tables: str
    """Letters of the groups of reference tables in it, '' for none."""


@dataclass(frozen=True, slots=True)
class ContentsPage:
    """What is where."""

    entries: tuple[tuple[str, int], ...]
    pitches: tuple[tuple[tuple[str, int], ...], ...]
    """Columns of pitch and page."""
    sections: tuple[tuple[int, int, int], ...]
    """Number, first page, last page of each section, where there are several."""
    groups: tuple[tuple[tuple[str, int], ...], ...]
    """Columns of groups of reference tables, each with its letter, and their pages."""
    first: bool


@dataclass(frozen=True, slots=True)
class HowToPage:
    """How to find a length."""

    pitch: str
    run: str
    page: int
    answer: str
    picture: Markup
    odd_run: str
    odd_steps: tuple[tuple[str, str], ...]
    odd_total: str
    part: str
    unit: str
    """What follows a length: ' in', or nothing where its text has its units."""


@dataclass(frozen=True, slots=True)
class DrawingPage:
    """A page with one drawing."""

    picture: Markup


@dataclass(frozen=True, slots=True)
class GlancePage:
    """All pitches, one row each; half of an opening."""

    groups: tuple[tuple[PitchValues, ...], ...]
    spacings: tuple[str, ...]
    hip_thickness: str


def cover_draft(settings: Settings, section: int = 1, sections: int = 1, names: Sequence[str] = ()) -> Draft:
    """Return the cover of a section; names are the pitches in a later one."""

    def make(index: Index) -> CoverPage:
        letters = [name for name in names if name in LETTERS.values()] if section > 1 else _letters(index)
        inside = [pitch for pitch in settings.pitches if pitch.short in names]
        if section == 1:
            inside = list(settings.pitches)
        return CoverPage(
            settings.title,
            title_size(settings.title),
            settings.owner,
            pitch_fan(settings.pitches, inside, 202, 202, settings.title),
            *(_span_of(inside) if inside else ('', '')),
            f'{text.run(settings.runs.first)} to {text.run(settings.runs.last)} by {text.run(settings.runs.step)}',
            text.mixed(1, settings.measure.per),
            (section, len(index.sections)),
            ' to '.join(dict.fromkeys((letters[0], letters[-1]))) if letters else '',
        )

    return Draft('cover' if section == 1 else 'section_cover', make, f'section:{section}')


def front_block(settings: Settings, trim: Trim) -> Block:
    """Return the pages before the first pitch."""
    drafts = [cover_draft(settings), Draft('cautions', lambda index: None, 'cautions', WORDS['cautions'])]
    starts = [
        0,
        *range(
            CONTENTS_COLUMNS * FIRST_CONTENTS_ROWS, len(settings.pitches), CONTENTS_COLUMNS * CONTENTS_ROWS
        ),
    ]
    for start, stop in pairwise([*starts, len(settings.pitches)]):
        key = 'contents' if not start else ''
        drafts.append(Draft('contents', _contents_maker(settings, start, stop), key, WORDS['contents']))
    if 'how-to' in settings.parts:
        how = _how_to(settings, trim)
        if how is not None:
            drafts.append(Draft('how_to', how, 'how-to', WORDS['how-to']))
        drafts.append(Draft('order', lambda index: None, 'order', WORDS['order']))
    if 'words' in settings.parts:
        _open_left(drafts)
        drafts.append(Draft('words_rafter', _rafter_page(settings), 'words', WORDS['words']))
        drafts.append(Draft('words_corner', _corner_page, '', WORDS['words']))
    if 'square' in settings.parts:
        _open_left(drafts)
        drafts += square_drafts(settings)
    if 'glance' in settings.parts:
        _open_left(drafts)
        for start in range(0, len(settings.pitches), GLANCE_ROWS):
            some = settings.pitches[start : start + GLANCE_ROWS]
            for side in ('left', 'right'):
                key = 'glance' if not start and side == 'left' else ''
                drafts.append(Draft(f'glance_{side}', _glance_maker(settings, some), key, WORDS['glance']))
    return Block(tuple(drafts))


def _letters(index: Index) -> list[str]:
    return [LETTERS[group] for group in GROUPS if f'group-{group}' in index]


def _open_left(drafts: list[Draft]) -> None:
    """Add a page of notes where the next page would not lie on the left of an opening."""
    if len(drafts) % 2 == 0:
        drafts.append(Draft('notes', lambda index: None, '', WORDS['notes']))


def _span_of(pitches: Sequence[Pitch]) -> tuple[str, str]:
    ends = pitches[:1] if len(pitches) == 1 else (pitches[0], pitches[-1])
    if any(pitch.short.endswith('°') for pitch in ends):
        return ' to '.join(pitch.text for pitch in ends), ''
    return ' to '.join(pitch.short for pitch in ends), 'in 12'


def _contents_maker(settings: Settings, start: int, stop: int):
    def make(index: Index) -> ContentsPage:
        entries = [(WORDS[key], index[key]) for key in CONTENTS_KEYS if key in index]
        listed = [(pitch.text, _first_page(index, pitch)) for pitch in settings.pitches[start:stop]]
        listed = [(name, page) for name, page in listed if page]
        groups = [
            (f'{LETTERS[group]}  {WORDS["groups"][group]}', index[f'group-{group}'])
            for group in GROUPS
            if f'group-{group}' in index
        ]
        bounds = [(n, first, first + count - 1) for n, (first, count) in enumerate(index.sections, 1)]
        return ContentsPage(
            tuple(entries),
            _in_columns(listed),
            tuple(bounds) if len(bounds) > 1 else (),
            _in_columns(groups),
            start == 0,
        )

    return make


def _in_columns(listed: list[tuple[str, int]]) -> tuple[tuple[tuple[str, int], ...], ...]:
    rows = -(-len(listed) // CONTENTS_COLUMNS) or 1
    return tuple(tuple(listed[at : at + rows]) for at in range(0, len(listed), rows))


def _first_page(index: Index, pitch: Pitch) -> int:
    found = [
        index[f'{part}:{pitch.text}']
        for part in ('values', 'jacks', 'common', 'hip-valley', 'rise')
        if f'{part}:{pitch.text}' in index
    ]
    return min(found, default=0)


def _how_to(settings: Settings, trim: Trim):
    """Return the maker of the page, or None where no table of the book can show it."""
    tables = [name for name in ('common', 'hip-valley', 'rise') if name in settings.parts]
    pitch = nearest_pitch(settings, Fraction(6))
    runs, per = settings.runs, 12 / settings.runs.step
    if not tables or per.denominator != 1 or per < 3 or runs.count() < 4 * per:
        return None
    table, run = (
        tables[0],
        runs.first + runs.step * int((per * 4 + per / 2) if runs.count() > per * 6 else per * 2),
    )
    odd = run + Fraction(5, 16) if addends(run + Fraction(5, 16), settings) else run

    def make(index: Index) -> HowToPage:
        feet = [int(run // 12) + step for step in (-1, 0, 1)]
        offsets = [run % 12 + runs.step * step for step in (-1, 0, 1)]
        if not 0 <= offsets[0] <= offsets[2] < 12:
            offsets = sorted(offset % 12 for offset in offsets)
        column = offsets.index(run % 12)
        cells = [[_text(table, 12 * foot + offset, pitch, settings) for offset in offsets] for foot in feet]
        found, odd_found = look_up(table, run, pitch, settings), look_up(table, odd, pitch, settings)
        heads = [f'{text.rational(offset)} in' for offset in offsets]
        picture = found_figure(heads, [str(foot) for foot in feet], cells, (1, column), 'ft', WORDS['how-to'])
        steps = tuple((text.run(reading.run_in), reading.figure.text) for reading in odd_found.readings)
        return HowToPage(
            pitch.text,
            text.run(run),
            page_of_run(index, table, run, pitch, settings, trim),
            found.total.text,
            picture,
            text.run(odd),
            steps if len(steps) > 1 else (),
            odd_found.total.text,
            text.mixed(1, settings.measure.per),
            unit_after(settings),
        )

    return make


def unit_after(settings: Settings) -> str:
    """Return what follows a length in prose."""
    return ' in' if settings.measure.style == text.INCHES else ''


def _text(table: str, run: Fraction, pitch: Pitch, settings: Settings) -> str:
    return length_figure(EXACT_LENGTH[table](run, pitch.slope), settings.measure).text if run else ''


def _rafter_page(settings: Settings):
    # flatter and steeper than this the words would meet
    slope = min(0.9, max(0.375, float(nearest_pitch(settings, Fraction(6)).slope)))
    return lambda index: DrawingPage(labelled_rafter(slope, RafterLabels(**WORDS['rafter_drawing'])))


def _corner_page(index: Index) -> DrawingPage:
    return DrawingPage(labelled_corner(CornerLabels(**WORDS['corner_drawing'])))


def _glance_maker(settings: Settings, pitches: Sequence[Pitch]):
    def make(index: Index) -> GlancePage:
        values = [pitch_values(pitch, settings) for pitch in pitches]
        groups = tuple(tuple(values[at : at + 6]) for at in range(0, len(values), 6))
        spacings = tuple(text.rational(spacing) for spacing in settings.spacings)
        return GlancePage(groups, spacings, text.rational(settings.hip_thickness))

    return make
