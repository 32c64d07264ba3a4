"""Where a figure of a worked example stands in the book: the table, its row and its column."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from tablegen.examples.records import Length, RunSource, Source, Sources
from tablegen.geometry.pitch import Pitch
from tablegen.groups import GROUPS
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import Stock
from tablegen.settings import Settings
from tablegen.tables.columns import data_name
from tablegen.tables.lookup import look_up
from tablegen.tables.opening_runs import reads_openings
from tablegen.tables.runs import run_length
from tablegen.tables.tables import table_of

JACK_LENGTHS = 'jack-lengths'
"""Name here of a pitch's table of jacks: a reference table is called jacks too."""
COMMON, CORNER = 'values', 'hip-values'
"""The two pages of a pitch's opening by member."""
ON_COMMON = ('plumb_cut', 'level_cut', 'ridge_level', 'ridge_along', 'height', 'heel', 'notch', 'left')
"""Figures that stand on the first of them, by their names here; all others stand on the second."""
OPENING = 'opening'
"""The one opening of a pitch, in a book that has no pages by member."""
ON_LEFT = [
    'plumb_cut',
    'level_cut',
    'body',
    'tongue',
    'exact_foot',
    'ridge_level',
    'ridge_along',
    'height',
    'heel',
    'jack_side',
]
ON_RIGHT = [
    *[
        'hip_body',
        'hip_tongue',
        'hip_side',
        'drop',
        'hip_level',
        'hip_along',
        'valley_off_level',
        'valley_off_along',
        'between_level',
        'between_along',
        'jack_level',
        'jack_along',
    ],
    *['jack_top', 'jack_on_12', 'hip_top', 'hip_on_12', 'difference', 'valley_out'],
    *(f'{member}_{figure}' for member in ('dropped', 'valley') for figure in ('height', 'heel', 'seat')),
]
"""Figures that stand on its pages, by their names here; what is on neither is reached from what is."""
ON_OPENING = {name: place for place, names in enumerate((ON_LEFT, ON_RIGHT)) for name in names}
ON_OPENING_ALONE = {
    'body',
    'tongue',
    'exact_foot',
    'hip_body',
    'hip_tongue',
    'jack_on_12',
    'hip_on_12',
    'difference',
}
"""Those that the pages by member do not have by these names."""
Cell = tuple[str, Pitch | Fraction, str, Figure] | tuple[str, Pitch | Fraction, str, Figure, Fraction | Stock]
"""A figure, and where it may stand: a reference table, what names the row, the column by its name in data, and the
thickness, spacing or size that the column is for, where there is one for each."""


class Book(Struct, frozen=True):
    """The pages on which figures of one pitch may stand."""

    pitch: Pitch
    settings: Settings

    @property
    def opened(self) -> bool:
        """Return whether what a pitch has but once stands on its one opening."""
        return OPENING in self.settings.parts and 'values' not in self.settings.parts

    def stands(self, names: tuple[str, ...], *cells: Cell) -> Sources:
        """Return where figures stand: in the opening by member or the one opening, by their names, or in reference tables."""
        found: Sources = ()
        if self.opened:
            found = self.on_opening(*names)
        else:
            opened = names if 'values' in self.settings.parts else ()
            found = tuple(
                Source(COMMON if name in ON_COMMON else CORNER, name, '', 0)
                for name in opened
                if name not in ON_OPENING_ALONE
            )
        return found or tuple(one for cell in cells for one in self.in_table(*cell))

    def on_opening(self, *names: str) -> tuple[Source, ...]:
        """Return where those of some figures stand that are on the one opening."""
        return tuple(Source(OPENING, name, '', ON_OPENING[name]) for name in names if name in ON_OPENING)

    def in_table(
        self,
        key: str,
        stub: Pitch | Fraction,
        column: str,
        figure: Figure,
        of: Fraction | Stock | None = None,
    ) -> Sources:
        """Return where a figure stands in a reference table, nowhere if there is no such cell or another figure in it."""
        settings = self.settings
        if not any(group in settings.parts for group in GROUPS):
            return ()
        if isinstance(stub, Pitch):
            settings = replace(settings, pitches=(stub,))  # the other rows are of no use
        table = table_of(key, settings)
        name = column if of is None else f'{column}_{data_name(of)}'
        if (
            table is None
            or table.group not in settings.parts
            or (of is not None and name not in [one.key for one in table.columns])
        ):
            return ()
        cell, place = table.cell(name, stub), table.place(name)
        if not isinstance(cell, Figure) or cell.text != figure.text:
            return ()
        row = stub.short if isinstance(stub, Pitch) else text.rational(stub)
        return (Source(table.key, row, table.columns[place].head, place - table.stubs, table.title),)

    def in_jacks(self, number: int, place: int) -> Sources:
        """Return where a jack's line length and its points stand, by its number from the corner; nowhere past the book's last run."""
        spacing = self.settings.spacings[place]
        if 'jacks' not in self.settings.parts or number * spacing > self.settings.runs.last:
            return ()
        column = f'{text.rational(spacing)} in'
        return (Source(JACK_LENGTHS, str(number), column, place),)

    def read(self, table: str, run_in: Fraction) -> Length | None:
        """Return a length as the book's table of runs gives it, None if the book ends before it.

        Given:
            table  'common' or 'hip-valley'
        """
        found = look_up(table, run_in, self.pitch, self.settings)
        if found is None:
            return None
        if table not in self.settings.parts and not reads_openings(self.settings):
            direct = run_length(table, run_in, self.pitch, self.settings.measure)
            return Length((), direct, direct, ())
        sources = tuple(RunSource(table, one.run_in, one.added) for one in found.readings)
        return Length(tuple(one.figure for one in found.readings), found.total, found.direct, sources)

    def in_rises(self, figure: Figure) -> Sources:
        """Return where the rise of the seat stands, if it can be read in one place and is a figure: the heel."""
        settings = self.settings
        found = look_up('rise', settings.seat, self.pitch, settings) if 'rise' in settings.parts else None
        if found is None or len(found.readings) > 1 or found.direct.count != figure.count:
            return ()
        return (RunSource('rise', found.readings[0].run_in, found.readings[0].added),)
