"""What is drawn on a page: lines, words that may stand on their side, and drawings placed whole; points, from the lower left corner."""

from __future__ import annotations

from math import hypot

from msgspec import Struct

from tablegen.proof.word import Unread, Word

Spot = tuple[float, float]


class Stroke(Struct, frozen=True):
    """A line that is drawn along."""

    points: tuple[Spot, ...]
    """Where its stretches end, straight or curved."""
    width: float
    dashed: bool

    @property
    def long(self) -> float:
        """Return how far its ends are from one another."""
        (x, y), (u, v) = self.points[0], self.points[-1]
        return hypot(u - x, v - y)

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Return left, lower, right and upper bounds."""
        across, up = zip(*self.points, strict=True)
        return min(across), min(up), max(across), max(up)


class Said(Struct, frozen=True):
    """Words in a line, at whatever turn."""

    text: str
    start: Spot
    end: Spot
    size: float

    @property
    def middle(self) -> Spot:
        """Return the middle of its base."""
        return (self.start[0] + self.end[0]) / 2, (self.start[1] + self.end[1]) / 2


class Piece(Struct, frozen=True):
    """A drawing placed whole, such as a face of a card, with its words where they stand on the page."""

    name: str
    left: float
    low: float
    right: float
    high: float
    given: tuple[Word, ...] | Unread

    @property
    def words(self) -> tuple[Word, ...]:
        """Return those words."""
        return tuple(self.given.read()) if isinstance(self.given, Unread) else self.given


class Ink(Struct, frozen=True):
    """All of it."""

    strokes: tuple[Stroke, ...] = ()
    said: tuple[Said, ...] = ()
    pieces: tuple[Piece, ...] = ()
    labels: tuple[str, ...] = ()
    """Words that are drawn as outlines and go along as text."""
    size: Spot = (0.0, 0.0)
    """Of the paper."""
