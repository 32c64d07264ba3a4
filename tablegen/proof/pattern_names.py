"""What is printed on patterns at full size; a room that knows the words gives it."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec import Struct


class PatternNames(Struct, frozen=True):
    """What is printed on patterns."""

    prints: str
    """How the words begin that every page has at its foot."""
    page: str
    title: str
    """What a board is, with {member}, {pitch} and {stock}."""
    sizes: str
    seated: str
    lengths: tuple[str, str, str]
    """Names of lines with their {length}: plumb over the seat, level, plumb."""
    lines: Mapping[str, str]
    """From the name of a line to what it is: plumb, level, leaning, top or edge."""
    edges: tuple[str, str, str]
    """Top edge, bottom edge, fold."""
    kinds: tuple[str, ...]
    """What boards are called."""
    corner: tuple[str, ...]
    """What members between two slopes are called."""
    to_tail: str
    lay_on: str
    lies_here: str
    bar: tuple[str, str]
    """What its ticks are called: 100 mm, 4 in."""
