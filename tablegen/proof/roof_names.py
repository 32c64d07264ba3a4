"""What is printed on the sheets of a roof: titles, heads, names of rows and sentences with their places; a room that knows the words gives it."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec import Struct


class RoofNames(Struct, frozen=True):
    """Every mapping leads from what a thing is to what it is called, but for those that are told otherwise."""

    titles: Mapping[str, str]
    """Of sheets and parts: plan, section, plates, members, boards, studs, buy, asked."""
    heads: Mapping[str, str]
    """Of columns."""
    slopes: Mapping[str, str]
    kinds: Mapping[str, str]
    """From what members are called to what they are."""
    marks: Mapping[str, tuple[str, str]]
    """From the name of a mark to the end it is of and where across the board: 'center', 'side', 'long', 'short', 'left', 'right'."""
    heights: Mapping[str, str]
    """From the name of a height to what it is."""
    facts: Mapping[str, str]
    """From the name of a row of facts to what it tells."""
    sentences: Mapping[str, str]
    hands: tuple[str, str]
    below: str
    """What stands where a figure is in the table below."""
    level_ends: tuple[str, ...]
    """What is said of level boards whose end is not square."""
    levels: Mapping[str, str]
    """From what level boards are called to what they are."""
    level_cuts: Mapping[str, str]
    """From how an end of them is called that is not square to what it is."""
    both: str
    """Ends of a board."""
    every_side: str
    """What slopes are called of which there are many."""
    drawn: Mapping[str, str]
    """Words of drawings with their one length, from what it is."""

    def kind(self, what: str) -> str:
        """Return what a member is called."""
        return next((words for words, one in self.kinds.items() if one == what), what)


ROOF_KEYS = ('plates', 'members', 'buy', 'asked')
"""Titles without which sheets are no roof's."""
