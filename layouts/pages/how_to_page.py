"""How to find a length: one figure looked up in the book's own table, by page, row and column."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from markupsafe import Markup

from layouts.drawings.reading import found_figure
from layouts.pages.pitch_pages import page_of_run
from layouts.paper.page import Draft, Index
from layouts.paper.trim import Trim
from layouts.words.pages import FOUND, heading
from layouts.words.say import _
from tablegen.examples import nearest_pitch
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.lookup import addends, look_up
from tablegen.tables.opening_runs import opening_runs, reads_openings
from tablegen.tables.runs import run_length

TABLES = ('common', 'hip-valley', 'rise')
"""The first of these that is in the book is shown."""
WANTED_PITCH = Fraction(6)
MOST_FEET, PAST = 4, Fraction(59, 8)
"""Of the run that is read on an opening: 4 ft 7 3/8 in."""
ODD_PART = Fraction(5, INCHES.part)


@dataclass(frozen=True, slots=True)
class HowToPage:
    """How to find a length."""

    pitch: str
    run: str
    page: int
    found: Markup
    """What is found there, and from where to where it is measured."""
    picture: Markup
    odd_run: str
    odd_steps: tuple[tuple[str, str], ...]
    odd_total: str
    part: str
    unit: str
    """What follows a length: ' in', or nothing where its text has its units."""


def how_to_draft(settings: Settings, trim: Trim) -> Draft | None:
    """Return the page, or None where no table of the book can show it."""
    tables = [name for name in TABLES if name in settings.parts]
    runs, per = settings.runs, INCHES.group / settings.runs.step
    if reads_openings(settings):
        run = min(Fraction(MOST_FEET * INCHES.group), opening_runs(settings).feet[-1])
        make = _maker('common', run, run + PAST, settings, trim)
        return Draft('how_to_opening', make, 'how-to', heading('how-to'))
    if not tables or per.denominator != 1 or per < 3 or runs.count() < 4 * per:
        return None
    steps = int((per * 4 + per / 2) if runs.count() > per * 6 else per * 2)
    run = runs.first + runs.step * steps
    make = _maker(tables[0], run, run + ODD_PART, settings, trim)
    return Draft('how_to', make, 'how-to', heading('how-to'))


def _maker(
    table: str, run: Fraction, wanted: Fraction, settings: Settings, trim: Trim
) -> Callable[[Index], HowToPage]:
    pitch = nearest_pitch(settings, WANTED_PITCH)
    odd = wanted if addends(wanted, settings) else run

    def make(index: Index) -> HowToPage:
        found, odd_found = look_up(table, run, pitch, settings), look_up(table, odd, pitch, settings)
        assert found is not None, 'the run is tabled'
        assert odd_found is not None, 'it has addends'
        steps = tuple((text.run(reading.run_in), reading.figure.text) for reading in odd_found.readings)
        return HowToPage(
            pitch.text,
            text.run(run),
            page_of_run(index, table, run, pitch, settings, trim),
            Markup(_(FOUND[table])).format(length=f'{found.total.text}{unit_after(settings)}'),
            _picture(table, run, pitch, settings),
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


def _picture(table: str, run: Fraction, pitch: Pitch, settings: Settings) -> Markup:
    """Return the figure amid its neighbors, three rows by three columns of the table."""
    feet = [int(run // INCHES.group) + step for step in (-1, 0, 1)]
    offsets = [run % INCHES.group + settings.runs.step * step for step in (-1, 0, 1)]
    if not 0 <= offsets[0] <= offsets[2] < INCHES.group:
        offsets = sorted(offset % INCHES.group for offset in offsets)
    cells = [
        [_text(table, INCHES.group * foot + offset, pitch, settings) for offset in offsets] for foot in feet
    ]
    heads = [f'{text.rational(offset)} in' for offset in offsets]
    at = (1, offsets.index(run % INCHES.group))
    return found_figure(heads, [str(foot) for foot in feet], cells, at, 'ft', heading('how-to'))


def _text(table: str, run: Fraction, pitch: Pitch, settings: Settings) -> str:
    return run_length(table, run, pitch, settings.measure).text if run else ''
