"""Page, row and column of every figure that a worked example reads from the book."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from layouts.grid.reference_tables import cell_key
from layouts.pages.jack_pages import page_of_jack
from layouts.pages.pitch_pages import is_grid, page_of_addition, page_of_run
from layouts.paper.page import Index
from layouts.paper.trim import Trim
from layouts.words.examples import LENGTHS, OPENING_ROWS, PLACES, SHEET_ROWS
from layouts.words.say import _, said, say
from tablegen.examples.records import RunSource, Source, Sources, Stands
from tablegen.examples.sources import JACK_LENGTHS, OPENING
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.opening_runs import reads_openings
from tablegen.tables.runs import head_of


class Place(Struct, frozen=True):
    """Where a figure stands; finished words."""

    page: int
    table: str
    """Its title, where a page may have several; else ''."""
    row: str
    column: str
    """'' where the row has one figure."""
    other: int = 0
    """Another page where one stands in a row and column of the same names; 0 for none."""


class _Spot(Struct, frozen=True):
    """One figure's place, before those that stand together are told together."""

    page: int
    table: str
    row: str
    column: str
    """Finished words, '' for none."""
    said: str = 'row'
    """How PLACES says the row."""


def on_both(first: tuple[Place, ...], second: tuple[Place, ...]) -> tuple[Place, ...]:
    """Return the places of two pitches' figures; where they are called alike, they are told together."""
    if len(first) == len(second) == 1 and replace(first[0], page=second[0].page) == second[0]:
        return (replace(first[0], other=second[0].page),)
    return first + second


class Places(Struct, frozen=True):
    """Finds the places of one example's figures."""

    pitch: Pitch
    index: Index
    settings: Settings
    trim: Trim

    def of(self, stands: Stands) -> dict[str, tuple[Place, ...]]:
        """Return the places of every step."""
        return {step: self.of_step(sources) for step, sources in stands.items()}

    def of_step(self, sources: Sources) -> tuple[Place, ...]:
        """Return the places of one step's figures."""
        runs = [source for source in sources if isinstance(source, RunSource)]
        tabled = next((source.run_in for source in runs if not source.added), None)
        return _together([self._spot(source, tabled) for source in sources])

    def of_rows(self, each: Sequence[Sources]) -> tuple[Place, ...]:
        """Return the places of figures that stand below each other, a page said once."""
        found: dict[tuple[int, str], list[str]] = {}
        for source in (source for sources in each for source in sources if isinstance(source, Source)):
            spot = self._in_table(source)
            found.setdefault((spot.page, spot.column), []).append(spot.row)
        return tuple(
            Place(
                page,
                '',
                _said('to' if len(rows) > 1 else 'row', rows[0], rows[-1]),
                _said('column', head),
            )
            for (page, head), rows in found.items()
        )

    def _spot(self, source: Source | RunSource, tabled: Fraction | None) -> _Spot:
        return (
            self._in_table(source)
            if isinstance(source, Source)
            else self._in_runs(source, tabled or source.run_in)
        )

    def _in_table(self, source: Source) -> _Spot:
        if source.table == OPENING:
            names = self._on_sheet() | {'spacing': source.column}
            title, row, column = (_(one).format(**names) if one else '' for one in SHEET_ROWS[source.row])
            page = self.index[f'{OPENING}:{self.pitch.text}'] + source.place
            return _Spot(page, title and _said('title', title), row, column and _said('head', column), 'head')
        if source.row in OPENING_ROWS:
            row, column = (_(one) if one else '' for one in OPENING_ROWS[source.row])
            page = self.index[f'{source.table}:{self.pitch.text}']
            return _Spot(page, '', row, column and _said('head', column), 'head')
        if source.table == JACK_LENGTHS:
            place = (int(source.row), source.place, self.pitch, self.settings, self.trim)
            return _Spot(page_of_jack(self.index, *place), '', source.row, _said('jack', source.column))
        page = self.index[cell_key(source.table, source.row, source.place)]
        return _Spot(page, _said('title', source.title), source.row, _said('head', source.column))

    def _on_sheet(self) -> dict[str, object]:
        """Return what the names of an opening's rows have in them."""
        settings = self.settings
        return {
            'ridge': text.rational(settings.ridge_thickness),
            'thick': text.rational(settings.hip_thickness),
            'rafters': settings.rafters.name,
            'base': INCHES.base,
        }

    def _in_runs(self, source: RunSource, tabled: Fraction) -> _Spot:
        """Return a place in a table of runs.

        Given:
            tabled  the run that a small run is added to, in
        """
        run, table = source.run_in, source.table
        pitch, settings, trim = self.pitch, self.settings, self.trim
        page = page_of_run(self.index, table, run, pitch, settings, trim)
        if reads_openings(settings):
            return _Spot(page, '', _run_on_opening(run), _said('head', _(LENGTHS[table])))
        listed = not is_grid(settings)
        column = _said('head', say(head_of(table))) if listed else ''
        if source.added:
            page = page_of_addition(self.index, table, run, tabled, pitch, settings, trim)
            return (
                _Spot(page, '', text.run(run), column)
                if listed
                else _Spot(page, '', text.rational(run), column, 'add')
            )
        if listed:
            return _Spot(page, '', text.run(run), column)
        feet = run // INCHES.group
        return _Spot(page, '', f'{feet} ft', f'{text.rational(run - INCHES.group * feet)} in')


def _run_on_opening(run: Fraction) -> str:
    """Return what names a run's row on an opening: feet, inches, or a part of an inch."""
    return text.run(run) if run >= 1 else text.rational(run)


def _together(spots: list[_Spot]) -> tuple[Place, ...]:
    """Return places: columns of one row told together, then the rows under the same columns."""
    columns: dict[tuple[int, str, str, str], list[str]] = {}
    for spot in spots:
        columns.setdefault((spot.page, spot.table, spot.said, spot.row), []).append(spot.column)
    rows: dict[tuple[int, str, str, str, str], list[str]] = {}
    for (page, table, way, row), heads in columns.items():
        under = _said('column', _listed(heads)) if any(heads) else ''
        rows.setdefault((page, table, way, under, row if way == 'add' else ''), []).append(row)
    return tuple(
        Place(page, table, _rows(way, names), under)
        for (page, table, way, under, _alone), names in rows.items()
    )


def _rows(way: str, names: list[str]) -> str:
    if way == 'row' and len(names) > 1:
        return _said('rows', _listed(names))
    return _listed([_said(way, one) for one in names])


def _listed(words: Sequence[str]) -> str:
    """Return words in a row, the last two with 'and' between them."""
    *first, last = words
    return _(PLACES['and']).join([', '.join(first), last]) if first else last


def _said(place: str, *words: object) -> str:
    """Return words of PLACES with what they place."""
    return _(PLACES[place]).format(*map(said, words))
