"""Where a figure of a worked example stands in the book: the table, its row and its column."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction

from tablegen.examples.records import Length, RunSource, Source, Sources
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, length_figure
from tablegen.numbers.units import Stock
from tablegen.settings import Settings
from tablegen.tables.columns import data_name
from tablegen.tables.lookup import EXACT_LENGTH, look_up
from tablegen.tables.members import Members
from tablegen.tables.tables import tables

JACK_LENGTHS = 'jack-lengths'
"""Name here of a pitch's table of jacks: a reference table is called jacks too."""
COMMON, CORNER = 'values', 'hip-values'
"""The two pages of a pitch's opening by member."""
OPENING: dict[str, tuple[str, Callable[[Members], Figure | None]]] = {
    'plumb_cut': (COMMON, lambda it: it.common.plumb_cut),
    'level_cut': (COMMON, lambda it: it.common.level_cut),
    'ridge_level': (COMMON, lambda it: it.common.at_ridge.level),
    'ridge_along': (COMMON, lambda it: it.common.at_ridge.along),
    'height': (COMMON, lambda it: getattr(it.common.mouth, 'height', None)),
    'heel': (COMMON, lambda it: getattr(it.common.mouth, 'heel', None)),
    'notch': (COMMON, lambda it: getattr(it.common.mouth, 'notch', None)),
    'left': (COMMON, lambda it: getattr(it.common.mouth, 'left', None)),
    'hip_level': (CORNER, lambda it: it.hip.at_ridge.level),
    'hip_along': (CORNER, lambda it: it.hip.at_ridge.along),
    'between_level': (CORNER, lambda it: it.hip.between_commons.level),
    'between_along': (CORNER, lambda it: it.hip.between_commons.along),
    'side_level': (CORNER, lambda it: it.hip.set_back.level),
    'side_along': (CORNER, lambda it: it.hip.set_back.along),
    'hip_top': (CORNER, lambda it: it.hip.cheek.top),
    'hip_side': (CORNER, lambda it: it.hip.cheek.side),
    'drop': (CORNER, lambda it: it.hip.drop),
    'backing': (CORNER, lambda it: it.hip.backing_bevel),
    'dropped_height': (CORNER, lambda it: getattr(it.hip.dropped, 'height', None)),
    'dropped_heel': (CORNER, lambda it: getattr(it.hip.dropped, 'heel', None)),
    'dropped_seat': (CORNER, lambda it: getattr(it.hip.dropped, 'seat', None)),
    'dropped_left': (CORNER, lambda it: getattr(it.hip.dropped, 'left', None)),
    'valley_height': (CORNER, lambda it: getattr(it.hip.valley, 'height', None)),
    'valley_heel': (CORNER, lambda it: getattr(it.hip.valley, 'heel', None)),
    'valley_seat': (CORNER, lambda it: getattr(it.hip.valley, 'seat', None)),
    'valley_left': (CORNER, lambda it: getattr(it.hip.valley, 'left', None)),
    'valley_out': (CORNER, lambda it: it.hip.valley_back),
    'jack_level': (CORNER, lambda it: it.jack.at_hip.level),
    'jack_along': (CORNER, lambda it: it.jack.at_hip.along),
    'jack_top': (CORNER, lambda it: it.jack.cheek.top),
    'jack_side': (CORNER, lambda it: it.jack.cheek.side),
    'jack_points': (CORNER, lambda it: it.jack.points.along),
}
"""The figures of that opening by name: their page, and what stands there."""


def in_table(
    key: str,
    stub: Pitch | Fraction,
    column: str,
    figure: Figure,
    settings: Settings,
    of: Fraction | Stock | None = None,
) -> Sources:
    """Return where a figure stands in a reference table, nowhere if the book has no such cell or another figure in it.

    Given:
        stub    what names the row
        column  of the table, by its name in data
        of      the thickness, spacing or size that a column is for, where there is one for each
    """
    if isinstance(stub, Pitch):
        settings = replace(settings, pitches=(stub,))  # the other rows are of no use
    table = next((one for one in tables(settings) if one.key == key and one.group in settings.parts), None)
    name = column if of is None else f'{column}_{data_name(of)}'
    if table is None or (of is not None and name not in [one.key for one in table.columns]):
        return ()
    cell, place = table.cell(name, stub), table.place(name)
    if not isinstance(cell, Figure) or cell.text != figure.text:
        return ()
    row = stub.short if isinstance(stub, Pitch) else text.rational(stub)
    return (Source(table.key, row, table.columns[place].head, place - table.stubs, figure),)


def in_opening(key: str, figure: Figure, values: Members, settings: Settings) -> Sources:
    """Return where a figure stands on the opening by member of its pitch, nowhere if another one stands there."""
    page, told = OPENING[key]
    found = told(values) if 'values' in settings.parts else None
    return (Source(page, key, '', 0, figure),) if found is not None and found.text == figure.text else ()


def in_jacks(number: int, place: int, figure: Figure, settings: Settings) -> Sources:
    """Return where a jack's line length and its points stand, by its number from the corner."""
    if 'jacks' not in settings.parts:
        return ()
    column = f'{text.rational(settings.spacings[place])} in'
    return (Source(JACK_LENGTHS, str(number), column, place, figure),)


def read_length(
    table: str, run_in: Fraction, pitch: Pitch, settings: Settings
) -> tuple[Length, Sources] | None:
    """Return a length as the book's table of runs gives it and where that is, None if the book ends before it.

    Given:
        table  'common' or 'hip-valley'
    """
    found = look_up(table, run_in, pitch, settings)
    if found is None:
        return None
    if table not in settings.parts:
        direct = run_length(table, run_in, pitch, settings)
        return Length(run_in, (), direct, direct), ()
    readings = tuple((reading.run_in, reading.figure) for reading in found.readings)
    places = tuple(
        RunSource(table, reading.run_in, reading.figure, reading.added) for reading in found.readings
    )
    return Length(run_in, readings, found.total, found.direct), places


def run_length(table: str, run_in: Fraction, pitch: Pitch, settings: Settings) -> Figure:
    """Return the length of a run, rounded once."""
    exact: Exact = EXACT_LENGTH[table](run_in, pitch)
    return length_figure(exact, settings.measure)
