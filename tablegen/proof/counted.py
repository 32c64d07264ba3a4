"""The pages of a pitch, counted by openings from its first one, and what stands on them."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from functools import cached_property

from msgspec import Struct

from tablegen.proof.names import Member
from tablegen.proof.stated import Pitch

END = 10_000
"""A page past every other."""
OF_SIDES = ('common', 'hip')
"""What pages are of that stand left and right of an opening where that is all that a pitch has."""


class Counted(Struct, frozen=True, dict=True):
    """Where a book has what of each pitch; all is known once its pages are read."""

    pitches: tuple[Pitch, ...]
    openings: Mapping[tuple[Pitch, int], int]
    members: Mapping[tuple[Pitch, str], int]
    tables: Mapping[tuple[Pitch, str, str], Mapping[Fraction, int]]
    """Pages of tables by the run and of jacks, by what they are of."""
    rows: tuple[Member, ...]
    jacks: str
    """What jacks are called by their numbers."""
    translated: bool
    """Whether its words may stand otherwise than where they are looked for."""

    def page_of(self, kind: str, side: int, pitch: Pitch) -> int | None:
        """Return the first page of a kind: 'opening', 'member', 'runs', 'jacks'; None where there is none.

        Given:
            side  0 for the common, 1 for hip and valley
        """
        if kind == 'opening':
            return self.openings.get((pitch, side))
        if kind == 'member':
            return self.members.get((pitch, OF_SIDES[side]))
        of, by_run = ('line', False) if kind == 'jacks' else (OF_SIDES[side], True)
        return self._tables.get((pitch, of, by_run))

    @cached_property
    def _tables(self) -> dict[tuple[Pitch, str, bool], int]:
        """Return the first page of each kind of table of a pitch: lengths by the run, or jacks."""
        found: dict[tuple[Pitch, str, bool], int] = {}
        for (pitch, of, more), there in self.tables.items():
            key = pitch, of, not more
            found[key] = min(found.get(key, END), *there.values(), END)
        return found

    def has(self, kind: str, side: int) -> bool:
        """Return whether the book has such pages."""
        return any(self.page_of(kind, side, pitch) for pitch in self.pitches)

    def first_of(self, pitch: Pitch) -> int:
        """Return the first page of a pitch, 0 for one that has none."""
        return self._firsts.get(pitch, 0)

    @cached_property
    def _firsts(self) -> dict[Pitch, int]:
        found: dict[Pitch, int] = {}
        for some in (self.openings, self.members, self._tables):
            for key, page in some.items():
                found[key[0]] = min(found.get(key[0], END), page)
        return found

    def rows_have(self, side: int, words: str, keys: tuple[str, ...]) -> bool:
        """Return whether words name rows of the page by member, and these have all figures whose names begin so."""
        labels = {label: names for rows in self.rows[side].rows for label, names in rows.rows}
        found: list[str] = []
        for word in words.split('; '):
            exact = [label for label in labels if label == word]
            begun = exact or [
                label for label in labels if label.startswith((f'{word} ', f'{word},', f'{word}:'))
            ]
            if not begun:
                return False
            found += (name.replace('-held', '-12-and') for label in begun for name in labels[label])
        return all(
            any(
                one.removeprefix(f'{OF_SIDES[side]}-').startswith(key.removeprefix(f'{OF_SIDES[side]}-'))
                for one in found
            )
            for key in keys
        )
