"""What a proof-reader is given: words with their places, and where links lead; points, from the lower left corner."""

from __future__ import annotations

from collections.abc import Callable

from msgspec import Struct


class Word(Struct, frozen=True):
    """What stands together without a blank."""

    text: str
    left: float
    right: float
    base: float
    size: float
    bold: bool
    run: int
    """The run of text it is of: one string of the page."""
    stops: int = 0
    """How many tab stops stand before it in that string."""


class Unread(Struct, frozen=True):
    """Words that stand in a file."""

    read: Callable[[], list[Word]]
    alike: Callable[[], bytes]
    """Returns the same for words that are the same in the same places; b'' where that is not known."""

    def is_like(self, other: object) -> bool:
        """Return whether other words are known to be the same, without reading them."""
        return isinstance(other, Unread) and self.alike() == other.alike() != b''


class Link(Struct, frozen=True):
    """A link's place on its page."""

    left: float
    low: float
    right: float
    high: float
    target: int
    """The page that it leads to, from 1; 0 for none of the file."""
