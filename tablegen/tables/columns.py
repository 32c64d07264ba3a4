"""How tables make their columns: lengths to the book's smallest part, angles to hundredths, each under its own name."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Sequence
from fractions import Fraction
from functools import partial
from typing import Generic, TypeVar

from msgspec import Struct

from tablegen.geometry.pitch import Pitch
from tablegen.messages import Message, message
from tablegen.numbers import text
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, Rational
from tablegen.numbers.figure import (
    DEGREE,
    INCH,
    NEAREST,
    Figure,
    Measure,
    decimal_figure,
    degree_figure,
    degrees_known,
    length_figure,
)
from tablegen.numbers.units import Stock
from tablegen.settings import Settings
from tablegen.tables.table import Cell, Column, Kind, Needs, S, Table

DEGREE_PLACES = 2
UNIT_PLACES = 3
THICKNESSES_IN = tuple(map(Fraction, ('3/4', '1', '5/4', '3/2', '5/2', '7/2', '11/2')))
"""Thicknesses of the columns of rows by thickness, in."""
Length = Exact | Rational | None
V = TypeVar('V', Fraction, Stock)


class Make(Struct, Generic[S], frozen=True):
    """Makes columns of a book; a head is said under the column's key where none is given, a datum under its name."""

    settings: Settings

    def length(
        self,
        key: str,
        of: Callable[[S], Length],
        datum: str | Message = '',
        head: Message | None = None,
        marks: Callable[[S], tuple[str, ...]] | None = None,
        way: str = NEAREST,
        measure: Measure | None = None,
    ) -> Column[S]:
        """Return a column of lengths to the smallest part, in plain inches if no measure is given; None for a dash."""
        reads = measure or Measure(self.settings.measure.per)

        def cell(it: S) -> Cell:
            value = of(it)
            return None if value is None else length_figure(value, reads, way)

        return self._column(key, cell, datum, head, Kind.LENGTH, marks=marks)

    def given(self, key: str, of: Callable[[S], Fraction]) -> Column[S]:
        """Return a column of lengths that are what they are: thicknesses, legs."""
        return self._column(key, of, '', None, Kind.LENGTH)

    def degrees(
        self,
        key: str,
        of: Callable[[S], Angle | Fraction],
        datum: str | Message = '',
        head: Message | None = None,
    ) -> Column[S]:
        """Return a column of angles to hundredths of a degree; a Fraction is degrees that are known."""

        def cell(it: S) -> Figure:
            value = of(it)
            if isinstance(value, Fraction):
                return degrees_known(value, DEGREE_PLACES)
            return degree_figure(value, DEGREE_PLACES)

        return self._column(key, cell, datum, head, Kind.DEGREES, DEGREE)

    def decimal(
        self,
        key: str,
        of: Callable[[S], Exact | Rational],
        datum: str | Message = '',
        head: Message | None = None,
        places: int = UNIT_PLACES,
        unit: str = INCH,
    ) -> Column[S]:
        """Return a column of numbers in decimals: lengths per foot of run, factors."""
        return self._column(
            key, lambda it: decimal_figure(of(it), places, unit), datum, head, Kind.DECIMAL, unit
        )

    def count(
        self, key: str, of: Callable[[S], int], datum: str | Message = '', head: Message | None = None
    ) -> Column[S]:
        """Return a column of whole numbers."""
        return self._column(key, of, datum, head, Kind.COUNT)

    def word(self, key: str, of: Callable[[S], Message], head: Message) -> Column[S]:
        """Return a column of words."""
        return self._column(key, of, '', head, Kind.WORD)

    def pitch(self, of: Callable[[S], Pitch], key: str = 'pitch') -> Column[S]:
        """Return a column of pitches; where the book has none in degrees, its head says what they stand over."""
        over_base = key == 'pitch' and all(one.unit for one in self.settings.pitches)
        usual = message('head.in_base') if over_base else None
        return self._column(key, of, '', usual, Kind.PITCH)

    def table(
        self,
        group: str,
        key: str,
        subjects: Callable[[], Iterable[S]],
        columns: tuple[Column[S], ...],
        *notes: Message,
        title: Message | None = None,
        datum: str | Message = '',
        needs: Needs | None = None,
        stubs: int = 1,
    ) -> Table[S]:
        """Return a table; its title is said under its key where none is given, its datum under its name."""
        titled = title or message(f'table.{key.replace("-", "_")}')
        return Table(key, group, titled, columns, subjects, stubs, _datum(datum), notes, needs or Needs())

    def _column(
        self,
        key: str,
        cell: Callable[[S], Cell],
        datum: str | Message,
        head: Message | None,
        kind: Kind,
        unit: str = INCH,
        marks: Callable[[S], tuple[str, ...]] | None = None,
    ) -> Column[S]:
        return Column(key, head or message(f'head.{key}'), cell, _datum(datum), kind, unit, marks)


def _datum(named: str | Message) -> Message | None:
    return (message(f'datum.{named}') if isinstance(named, str) else named) if named else None


def each(
    make: Callable[..., Column[S]],
    key: str,
    values: Sequence[V],
    of: Callable[[S, V], Length | Angle],
    datum: str | Message = '',
    head: str = 'number',
    unit: str = INCH,
    marks: Callable[[S, V], tuple[str, ...]] | None = None,
) -> tuple[Column[S], ...]:
    """Return a column for each of several thicknesses, spacings or sizes, which names it in data and heads it.

    Given:
        make  the method of Make that the columns are made by
        of    gives a row's figure for one of the values
        head  name of the head's words, in which the value stands
        unit  that values are in, where these are numbers
    """
    made = []
    for value in values:
        own = partial(_of_value, marks, value) if marks else None
        named = message(f'head.{head}', number=value.name if isinstance(value, Stock) else value)
        given = {'marks': own} if own else {}
        made.append(
            make(f'{key}_{data_name(value, unit)}', partial(_of_value, of, value), datum, named, **given)
        )
    return tuple(made)


def _of_value(of: Callable[[S, V], object], value: V, it: S) -> object:
    return of(it, value)


def data_name(value: Fraction | Stock, unit: str = INCH) -> str:
    """Return a number or a size in letters, digits and underscores: 1_1_2_in, 400_mm, 18_ft, 2x8."""
    if isinstance(value, Stock):
        said = value.name.replace('×', 'x')
    else:
        said = text.millimeters(value) if text.is_metric(value) else f'{text.rational(value)} {unit}'
    return re.sub(r'[^a-z0-9]+', '_', said.strip())


def by_pitch(
    settings: Settings,
    group: str,
    key: str,
    columns: tuple[Column[Pitch], ...],
    *notes: Message,
    title: Message | None = None,
    datum: str | Message = '',
    span: str = '',
    pitches: Iterable[Pitch] | None = None,
) -> Table[Pitch]:
    """Return a table with a row a pitch.

    Given:
        span     name of what the heads have in common
        pitches  where they are not the book's
    """
    make, needs = Make[Pitch](settings), Needs(span=spanned(span) if span else None)
    named = (make.pitch(lambda it: it), *columns)
    rows = settings.pitches if pitches is None else pitches
    return make.table(group, key, lambda: rows, named, *notes, title=title, datum=datum, needs=needs)


def spanned(name: str) -> Message:
    """Return what heads have in common, above them."""
    return message(f'table.span.{name}')
