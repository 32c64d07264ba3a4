"""What a table is, whoever shows it: its columns, from where to where each is measured, its rows, and what pages may do."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from enum import StrEnum
from fractions import Fraction
from typing import Generic, TypeVar

from msgspec import Struct

from tablegen.geometry.pitch import Pitch
from tablegen.messages import Message
from tablegen.numbers.figure import INCH, Figure
from tablegen.roof.names import Mark

Cell = Figure | Pitch | Fraction | int | Message | None
"""A figure is finished; a Fraction is a length that is given, in its column's unit, which nothing rounds; None is told
as missing."""
S = TypeVar('S')
"""What a row is about: a pitch with its corner, a run, a thickness."""
PAST_A_QUARTER, PAST_A_THIRD, THIN = Mark.PAST_A_QUARTER.value, Mark.PAST_A_THIRD.value, 'thin'
"""Marks beside a figure: a notch deeper than a share of the stock, too little left under a tail."""
MARKS = (PAST_A_QUARTER, PAST_A_THIRD, THIN)


class Kind(StrEnum):
    """What the cells of a column are."""

    PITCH = 'pitch'
    LENGTH = 'length'
    """To a part of the unit, as a fraction; or given, a Fraction."""
    DECIMAL = 'decimal'
    """A number in decimals, of a unit or a ratio."""
    DEGREES = 'degrees'
    COUNT = 'count'
    """A whole number, an int."""
    WORD = 'word'


class Column(Struct, Generic[S], frozen=True):
    """One column; it makes its own cells, so that no head can come to stand over another's figures."""

    key: str
    """Its name in data, which says what the figures are of: 'drop_1_1_2_in', 'height_2x8'; no two of a table alike."""
    head: Message
    cell: Callable[[S], Cell]
    """Makes a row's cell."""
    datum: Message | None = None
    """From where to where, on which face; None where the table's own says it all."""
    kind: Kind = Kind.LENGTH
    unit: str = INCH
    """Of a length or a decimal: as in Figure."""
    marks: Callable[[S], tuple[str, ...]] | None = None
    """Gives those of MARKS that stand beside a row's figure; None for a column that has no marks."""


class Row(Struct, frozen=True):
    """Finished cells, one a column, and the marks beside each."""

    cells: tuple[Cell, ...]
    marks: tuple[tuple[str, ...], ...]


class Needs(Struct, frozen=True):
    """What a table's pages may do."""

    cuts: tuple[int, ...] = ()
    """Columns on each page, stubs apart, where a table is best cut in one place; () for as many as go on."""
    rule: Callable[[Row, Row], bool] | None = None
    """Tells whether a rule stands between two rows; None for a rule after every six."""
    dashes: bool = True
    """Whether a dash stands where there is no figure; a triangle of figures leaves its other half blank."""
    corner: Message | None = None
    """Head of the rows' names, where the stubs' own heads are too long for it."""
    span: Message | None = None
    """What the heads have in common, above them."""


class Table(Struct, Generic[S], frozen=True):
    """One table: what its page, a data file and a look-up are all made from."""

    key: str
    """Plain name, for data files and page anchors; no two alike."""
    group: str
    """The part of the book that it is in."""
    title: Message
    columns: tuple[Column[S], ...]
    """The stubs first."""
    subjects: Callable[[], Iterable[S]]
    """Gives what each row is about, in order; nothing is worked out before it is asked for."""
    stubs: int = 1
    """Columns that name a row."""
    datum: Message | None = None
    """From where to where, on which face: what holds for every column, before what the columns say themselves."""
    notes: tuple[Message, ...] = ()
    needs: Needs = Needs()

    def rows(self) -> Iterator[Row]:
        """Return the rows, each made as it is taken."""
        told, unmarked = [column.cell for column in self.columns], ((),) * len(self.columns)
        any_marks = any(column.marks for column in self.columns)
        for subject in self.subjects():
            cells = tuple([cell(subject) for cell in told])
            marks: tuple[tuple[str, ...], ...] = unmarked
            if any_marks:
                marks = tuple(
                    column.marks(subject) if column.marks and cell is not None else ()
                    for column, cell in zip(self.columns, cells, strict=True)
                )
            yield Row(cells, marks)

    def cell(self, key: str, *stubs: Cell) -> Cell:
        """Return the cell of one column in the row that some stubs name, the other cells not being worked out.

        Returned:
            None where the table has no such row

        Errors:
            KeyError for a column that it has not
        """
        column = self.columns[self.place(key)]
        for subject in self.subjects():
            if all(own.cell(subject) == wanted for own, wanted in zip(self.columns, stubs, strict=False)):
                return column.cell(subject)
        return None

    def place(self, key: str) -> int:
        """Return the place of a column, from 0.

        Errors:
            KeyError for one that the table has not
        """
        places = {column.key: place for place, column in enumerate(self.columns)}
        return places[key]
