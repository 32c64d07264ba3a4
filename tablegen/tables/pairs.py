"""The pairs of pitches whose corners have tables."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import combinations
from typing import NamedTuple

from tablegen.geometry.corner import Corner, square_corner
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.messages import message
from tablegen.settings import Settings
from tablegen.tables.columns import Make
from tablegen.tables.table import Column, Needs, Row, Table

RISES = (4, 5, 6, 8, 9, 10, 12)


class Pair(NamedTuple):
    """Two pitches that meet at a square corner, the flatter one A."""

    a: Pitch
    b: Pitch
    at: Corner
    """Seen from side A."""
    back: Corner
    """From side B."""


def pairs() -> Iterator[Pair]:
    """Return every pair of common pitches with their corner."""
    for a, b in combinations(map(pitch_of_rise, map(Fraction, RISES)), 2):
        at = square_corner(a.slope, b.slope)
        yield Pair(a, b, at, at.turned())


def pair_table(
    key: str, columns: tuple[Column[Pair], ...], settings: Settings, datum: str = '', **notes: object
) -> Table[Pair]:
    """Return a table with a row a pair, and with one note, in which some thicknesses stand, if any are given."""
    make, note = Make[Pair](settings), message(f'note.{key.replace("-", "_")}', **notes)
    named = (make.pitch(lambda it: it.a, 'a'), make.pitch(lambda it: it.b, 'b'), *columns)
    said, needs = [note] if notes else [], Needs(rule=_next_a)
    return make.table('unequal', key, pairs, named, *said, datum=datum, needs=needs, stubs=2)


def _next_a(above: Row, below: Row) -> bool:
    return above.cells[0] != below.cells[0]
