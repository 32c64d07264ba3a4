"""What a proof-reader is given: words with their places, and where links lead; points, from the lower left corner."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Word:
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


@dataclass(frozen=True, slots=True)
class Link:
    """A link's place on its page."""

    left: float
    low: float
    right: float
    high: float
    target: int
    """The page that it leads to, from 1; 0 for none of the file."""
