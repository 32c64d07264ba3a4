"""How to find a length: what is measured, then one figure looked up in the book's own table, by page, row and column."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings.reading import Rows, found_figure, found_rows
from layouts.drawings.run_section import measured_gable, measured_shed
from layouts.pages.pitch_pages import page_of_run
from layouts.paper.page import Draft, Index, PageNumber
from layouts.paper.trim import Trim
from layouts.words.drawings import RUN_DRAWING, SHED_RUN_DRAWING
from layouts.words.pages import FOUND, heading
from layouts.words.say import N_, _
from tablegen.examples import nearest_pitch
from tablegen.geometry import common
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.exact import nearest
from tablegen.numbers.figure import decimal_figure
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.lookup import Found, addends, look_up
from tablegen.tables.opening_runs import opening_runs, reads_openings
from tablegen.tables.runs import run_length

TABLES = ('common', 'hip-valley', 'rise')
"""The first of these that is in the book is shown."""
WANTED_PITCH = Fraction(6)
MOST_FEET, PAST = 4, Fraction(59, 8)
"""Of the run that is read on an opening: 4 ft 7 3/8 in."""
ODD_PART = Fraction(5, INCHES.part)
DRAWN, SHED_DRAWN = 0.5, 0.25
"""Slopes of the two drawings."""
OPENING_PLACES, TABLE_PLACES, SHOWN_PLACES = 4, 3, 3
"""Decimals of a foot's length on an opening and elsewhere, and of the length that is made of it."""
COLUMNS = (N_('common'), N_('rise'))
"""Of lengths on the left page of an opening."""


class RunPage(Struct, frozen=True):
    """What is measured before a length is looked up."""

    gable: Markup
    shed: Markup


class Exactly(Struct, frozen=True):
    """A length by the exact foot, rounded once."""

    page: PageNumber
    """Where the foot's length stands; 0 on the page that is read anyhow."""
    run: str
    """Inches, as a decimal."""
    base: int
    foot: str
    length: str
    past: str
    """What is past whole inches."""
    per: int
    parts: int
    total: str


class HowToPage(Struct, frozen=True):
    """Where a figure stands, and how figures are added."""

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
    exact: Exactly | None


def how_to_drafts(settings: Settings, trim: Trim) -> list[Draft]:
    """Return both pages, none where no table of the book can show them."""
    tables = [name for name in TABLES if name in settings.parts]
    runs, per = settings.runs, INCHES.group / settings.runs.step
    if reads_openings(settings):
        run = min(Fraction(MOST_FEET * INCHES.group), opening_runs(settings).feet[-1])
        reading = _Reading('how_to_opening', 'common', run, run + PAST, settings, trim)
    elif not tables or per.denominator != 1 or per < 3 or runs.count() < 4 * per:
        return []
    else:
        steps = int((per * 4 + per / 2) if runs.count() > per * 6 else per * 2)
        run = runs.first + runs.step * steps
        reading = _Reading('how_to', tables[0], run, run + ODD_PART, settings, trim)
    return [
        Draft('how_to_run', _run_page, 'how-to', heading('how-to')),
        Draft(reading.template, reading.page, 'reading', heading('reading')),
    ]


def _run_page(index: Index) -> RunPage:
    return RunPage(measured_gable(DRAWN, RUN_DRAWING), measured_shed(SHED_DRAWN, SHED_RUN_DRAWING))


class _Reading(Struct, frozen=True):
    """What is looked up, and where."""

    template: str
    table: str
    run: Fraction
    wanted: Fraction
    """The run between the figures, where the book can add it up."""
    settings: Settings
    trim: Trim

    def page(self, index: Index) -> HowToPage:
        """Return the page that tells it."""
        settings, pitch = self.settings, nearest_pitch(self.settings, WANTED_PITCH)
        opened = self.template == 'how_to_opening'
        odd = self.wanted if addends(self.wanted, settings) else self.run
        found, odd_found = (look_up(self.table, run, pitch, settings) for run in (self.run, odd))
        assert found is not None, 'the run is tabled'
        assert odd_found is not None, 'it has addends'
        steps = tuple((text.run(reading.run_in), reading.figure.text) for reading in odd_found.readings)
        told = odd_found if opened else found
        values = index.get(f'values:{pitch.text}')
        return HowToPage(
            pitch.text,
            text.run(self.run),
            page_of_run(index, self.table, self.run, pitch, settings, self.trim),
            Markup(_(FOUND[self.table])).format(length=f'{told.total.text}{unit_after(settings)}'),
            _rows_of(odd_found, pitch, settings)
            if opened
            else _picture(self.table, self.run, pitch, settings),
            text.run(odd),
            steps if len(steps) > 1 else (),
            odd_found.total.text,
            text.mixed(1, settings.measure.per),
            unit_after(settings),
            _exactly(odd_found, pitch, settings, values)
            if opened or (values and self.table == 'common')
            else None,
        )


def unit_after(settings: Settings) -> str:
    """Return what follows a length in prose."""
    return ' in' if settings.measure.style == text.INCHES else ''


def _exactly(found: Found, pitch: Pitch, settings: Settings, page: PageNumber) -> Exactly:
    """Return the same length by the printed length of a foot, as a pocket calculator gives it."""
    places = TABLE_PLACES if page else OPENING_PLACES
    foot = decimal_figure(common.line_length(INCHES.unit_run, pitch.slope), places)
    per = settings.measure.per
    thousandths = nearest(found.run_in / INCHES.base * Fraction(foot.text), 10**SHOWN_PLACES)
    past = Fraction(thousandths % 10**SHOWN_PLACES, 10**SHOWN_PLACES)
    return Exactly(
        page,
        f'{float(found.run_in):g}',
        INCHES.base,
        foot.text,
        text.decimal(thousandths, SHOWN_PLACES),
        text.decimal(int(past * 10**SHOWN_PLACES), SHOWN_PLACES),
        per,
        nearest(past, per),
        found.direct.text,
    )


def _rows_of(found: Found, pitch: Pitch, settings: Settings) -> Markup:
    """Return the rows of the opening that a length is added up from, each between its neighbors."""
    runs = opening_runs(settings)
    listed = {_('ft'): runs.feet, _('in'): runs.inches, _('parts of an inch'): runs.parts}
    blocks = []
    for head, some in listed.items():
        at = next((some.index(one.run_in) for one in found.readings if one.run_in in some), None)
        if at is not None:
            blocks.append(Rows(head, _neighbors(some, at, pitch, settings)))
    return found_rows(blocks[0], blocks[1:], COLUMNS, heading('reading'))


def _neighbors(
    runs: Sequence[Fraction], at: int, pitch: Pitch, settings: Settings
) -> list[tuple[str, list[str]]]:
    feet = runs[0] >= INCHES.group
    shown = [runs[place] if 0 <= place < len(runs) else None for place in (at - 1, at, at + 1)]
    return [
        (
            text.rational(run / INCHES.group if feet else run),
            [run_length(name, run, pitch, settings.measure).text for name in ('common', 'rise')],
        )
        if run
        else ('', [])
        for run in shown
    ]


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
    return found_figure(heads, [str(foot) for foot in feet], cells, at, 'ft', heading('reading'))


def _text(table: str, run: Fraction, pitch: Pitch, settings: Settings) -> str:
    return run_length(table, run, pitch, settings.measure).text if run else ''
