"""The columns that a card of all pitches may have, and which of them go on first."""

from __future__ import annotations

from msgspec import Struct
from msgspec.structs import replace

from layouts.cards.faces import Cell, cell_of
from layouts.words import cards as words
from layouts.words.cards import ColumnWords
from layouts.words.say import _
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.roof.members import Members
from tablegen.settings import Settings
from tablegen.tables.values import One, Values

FIRST_SPACINGS = (INCHES.spacing, INCHES.spacings[-1])
"""Spacings of jacks that are wanted before others (common practice, no source)."""


class Column(Struct, frozen=True):
    """One column of a pitch's values with its words on a card."""

    of: One
    name: str
    """What it is called where the program says what is on a card."""
    head: tuple[str, ...]
    """What it is of, and on which face or in which unit: three lines."""
    narrow: tuple[str, ...]
    """The same where there is little room."""
    meaning: str
    shared: str
    """The head as it is read, where several columns have one meaning."""

    @property
    def said(self) -> str:
        """Return the head as it is read."""
        return self.shared or '\n'.join(self.head).replace('-\n', '').replace('\n', ' ')

    def narrowed(self) -> Column:
        """Return the column with the head that takes less room."""
        return replace(self, head=self.narrow)

    def cell(self, it: Members) -> Cell:
        """Return a pitch's figure."""
        figure = self.of.cell(it)
        return cell_of(figure if isinstance(figure, Figure) else None)


def columns(settings: Settings) -> tuple[list[Column], list[Column]]:
    """Return all columns in the order they stand in, and in the order in which they are wanted."""
    of = Values(settings)
    jacks = {
        spacing: _column(column, words.JACKS, spacing=text.rational(spacing))
        for spacing, column in zip(settings.spacings, of.jack_differences, strict=True)
    }
    plumb, level = _column(of.common_plumb_cut, words.PLUMB), _column(of.common_level_cut, words.LEVEL)
    hip_plumb = _column(of.hip_plumb_cut, words.HIP_PLUMB)
    common, hip = _column(of.common_per_foot, words.COMMON), _column(of.hip_per_foot, words.HIP)
    side_jack, side_hip = _column(of.jack_cheek_top, words.CHEEK), _column(of.hip_cheek_top, words.HIP_CHEEK)
    backing = _column(of.hip_backing, words.BACKING)
    drop = _column(of.hip_drop, words.DROP, hip=text.rational(settings.hip_thickness))
    stand = [plumb, level, hip_plumb, common, hip, *jacks.values(), side_jack, side_hip, backing, drop]
    first = [jacks[one] for one in FIRST_SPACINGS if one in jacks] or list(jacks.values())[:1]
    rest = [column for column in jacks.values() if column not in first]
    wanted = [plumb, common, hip, *first[:1], side_jack, side_hip, *first[1:], hip_plumb, backing, drop]
    return stand, [*wanted, *rest, level]


def _column(of: One, told: ColumnWords, **values: str) -> Column:
    name, head, meaning, narrow, said = (_(one).format(**values) if one else '' for one in told)
    return Column(of, name, tuple(head.split('\n')), tuple((narrow or head).split('\n')), meaning, said)
