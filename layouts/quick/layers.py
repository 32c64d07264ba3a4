"""What is drawn of a page, and the room in which its blocks are put."""

from __future__ import annotations

from math import cos, sin
from typing import Any

from msgspec import Struct, field


class Inked(Struct):
    """Something drawn; px from the page's upper left."""

    what: str
    """ground, rule, words, image or box."""
    x: float
    y: float
    width: float
    height: float
    more: Any


class Layer(Struct):
    """What is drawn of an element that is placed: grounds first, then words and drawings, then what is placed in it."""

    grounds: list[Inked] = field(default_factory=list)
    ink: list[Inked] = field(default_factory=list)
    over: list[Layer] = field(default_factory=list)
    links: list[Inked] = field(default_factory=list)
    turn: tuple[float, float, float] | None = None
    """An angle, and the point about which it is turned."""

    def moved(self, right: float, down: float) -> None:
        """Move all of it."""
        for one in (*self.grounds, *self.ink, *self.links):
            one.x, one.y = one.x + right, one.y + down
            if one.what == 'box':
                one.more.moved(right, down)
        for layer in self.over:
            layer.moved(right, down)
        if self.turn:
            self.turn = self.turn[0], self.turn[1] + right, self.turn[2] + down


class Room(Struct):
    """Where blocks are put: the place of the next, and margins above it that are yet to be one."""

    x: float
    y: float
    width: float
    margins: list[float]
    first: float | None = None
    """Where the first thing in it came to stand."""

    @property
    def next(self) -> float:
        """Return where the next thing would stand."""
        return self.y + (max(0.0, *self.margins) + min(0.0, *self.margins) if self.margins else 0.0)

    def settle(self) -> float:
        """Make the margins above one, and return where the next thing stands."""
        self.y = self.next
        self.margins.clear()
        if self.first is None:
            self.first = self.y
        return self.y


def turned(turn: tuple[float, float, float]) -> tuple[float, float, float, float, float, float]:
    """Return the matrix of a turn about a point."""
    angle, x, y = turn
    a, b = cos(angle), sin(angle)
    return a, b, -b, a, x - a * x + b * y, y - b * x - a * y
