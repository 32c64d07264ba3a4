"""Page, row and column of every figure that a worked example reads from the book."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from layouts.grid.reference_tables import cell_key
from layouts.pages.jack_pages import page_of_jack
from layouts.pages.pitch_pages import is_grid, page_of_addition, page_of_run
from layouts.paper.page import Index
from layouts.paper.trim import Trim
from layouts.words.examples import OPENING_ROWS, PLACES
from layouts.words.say import _, said, say
from tablegen.examples.records import RunSource, Source, Sources, Stands
from tablegen.examples.sources import JACK_LENGTHS
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.runs import head_of


@dataclass(frozen=True, slots=True)
class Place:
    """Where a figure stands; finished words."""

    page: int
    table: str
    """Its title, where a page may have several; else ''."""
    row: str
    column: str
    """'' where the row has one figure."""


@dataclass(frozen=True, slots=True)
class Places:
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
        return _together([self._place(source, tabled) for source in sources])

    def of_rows(self, each: Sequence[Sources]) -> tuple[Place, ...]:
        """Return the places of figures that stand below each other, a page said once."""
        found: dict[tuple[int, str], list[str]] = {}
        for source in (source for sources in each for source in sources if isinstance(source, Source)):
            place = self._in_table(source)
            found.setdefault((place.page, place.column), []).append(source.row)
        return tuple(
            Place(
                page,
                '',
                _said('rows' if len(rows) > 1 else 'row', rows[0], rows[-1]),
                _said('column', head),
            )
            for (page, head), rows in found.items()
        )

    def _place(self, source: Source | RunSource, tabled: Fraction | None) -> Place:
        return (
            self._in_table(source)
            if isinstance(source, Source)
            else self._in_runs(source, tabled or source.run_in)
        )

    def _in_table(self, source: Source) -> Place:
        if source.row in OPENING_ROWS:
            row, column = (_(one) if one else '' for one in OPENING_ROWS[source.row])
            page: int = self.index[f'{source.table}:{self.pitch.text}']
            return Place(page, '', _said('head', row), _said('head', column) if column else '')
        row = _said('row', source.row)
        if source.table == JACK_LENGTHS:
            number = int(source.row)
            page = page_of_jack(self.index, number, source.place, self.pitch, self.settings, self.trim)
            return Place(page, '', row, _said('jack', source.column))
        page = self.index[cell_key(source.table, source.row, source.place)]
        title = _said('title', source.title)
        return Place(page, title, row, _said('head', source.column))

    def _in_runs(self, source: RunSource, tabled: Fraction) -> Place:
        """Return a place in a table of runs.

        Given:
            tabled  the run that a small run is added to, in
        """
        run, table = source.run_in, source.table
        pitch, settings, trim = self.pitch, self.settings, self.trim
        listed = not is_grid(settings)
        column = _said('head', say(head_of(table))) if listed else ''
        if source.added:
            page = page_of_addition(self.index, table, run, tabled, pitch, settings, trim)
            row = _said('row', text.run(run)) if listed else _said('add', text.rational(run))
            return Place(page, '', row, column)
        page = page_of_run(self.index, table, run, pitch, settings, trim)
        if listed:
            return Place(page, '', _said('row', text.run(run)), column)
        feet = run // INCHES.group
        return Place(page, '', _said('row', f'{feet} ft'), f'{text.rational(run - INCHES.group * feet)} in')


def _together(places: list[Place]) -> tuple[Place, ...]:
    """Return places, those of one row of one table said once."""
    found: dict[tuple[int, str, str], list[str]] = {}
    for place in places:
        found.setdefault((place.page, place.table, place.row), []).append(place.column)
    return tuple(
        Place(*where, _said('column', _(PLACES['and']).join(heads)) if any(heads) else '')
        for where, heads in found.items()
    )


def _said(place: str, *words: object) -> str:
    """Return words of PLACES with what they place."""
    return _(PLACES[place]).format(*map(said, words))
