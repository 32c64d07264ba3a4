"""Tiles: a piece cut into pages, each a little larger than its share, so that every page laps over the next."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise
from math import ceil

from msgspec import Struct

from layouts.drawings.svg import Point
from layouts.patterns.boxes import Box

LAP_MM = 14.0
"""That two pages have in common; the joint lies in the middle of it."""
MARKS_AT = ((0.25, 0.2, 0.3, 0.15, 0.35, 0.4, 0.1), (0.75, 0.8, 0.7, 0.85, 0.65, 0.6, 0.9))
"""Shares of a joint at which its two register marks may stand, the best ones first."""
MARK_CLEAR_MM = 7.0
"""Between a register mark and a line that crosses its joint."""
Drawn = Callable[[Box], bool]
"""Says whether anything but the board's own edges is drawn in a box."""


class Joint(Struct, frozen=True):
    """Where two pages of a piece are joined; mm of the piece."""

    pages: tuple[int, int]
    """Numbers within the piece, from 0, the lower one first."""
    start: Point
    end: Point

    @property
    def upright(self) -> bool:
        return self.start[0] == self.end[0]

    def at(self, share: float) -> Point:
        (x, y), (right, foot) = self.start, self.end
        return x + (right - x) * share, y + (foot - y) * share

    def marks(self, drawn: Drawn) -> list[Point]:
        """Return its two register marks, off the lines that cross it: the same for both of its pages."""

        def clear(share: float) -> bool:
            x, y = self.at(share)
            off = MARK_CLEAR_MM
            return not drawn(Box(x - off, y - off, x + off, y + off))

        return [self.at(next(filter(clear, shares), shares[0])) for shares in MARKS_AT]


class Tiling(Struct, frozen=True):
    """How a piece lies over pages, in columns and rows."""

    wide: float
    high: float
    """Of the piece."""
    across: tuple[float, ...]
    """Where upright joints lie, from its left."""
    down: tuple[float, ...]
    """Where level ones lie, from above."""
    kept: tuple[int, ...] = ()
    """The tile, counted row by row, that each page shows: those that nothing is drawn on have none."""

    @property
    def count(self) -> int:
        return len(self.kept)

    @property
    def columns(self) -> int:
        return len(self.across) + 1

    def box(self, page: int) -> Box:
        """Return what a page shows of its piece."""
        return self._box(self.kept[page])

    def _box(self, tile: int) -> Box:
        row, column = divmod(tile, self.columns)
        left, right = _span(self.across, self.wide, column)
        top, foot = _span(self.down, self.high, row)
        return Box(left, top, right, foot)

    def share(self, page: int) -> Box:
        """Return the same without what it laps over its neighbors."""
        left, top, right, foot = self.box(page)
        half = LAP_MM / 2
        return Box(
            left + half * (left > 0),
            top + half * (top > 0),
            right - half * (right < self.wide),
            foot - half * (foot < self.high),
        )

    def without_bare(self, drawn: Drawn) -> Tiling:
        """Return the tiling with pages for those tiles alone that are drawn on, or lie between two such of a row."""
        kept: list[int] = []
        for row in range(len(self.down) + 1):
            tiles = range(row * self.columns, (row + 1) * self.columns)
            inked = [tile for tile in tiles if drawn(self._box(tile))]
            kept += range(inked[0], inked[-1] + 1) if inked else ()
        return Tiling(self.wide, self.high, self.across, self.down, tuple(kept))

    def joints(self) -> list[Joint]:
        """Return all joints, in the order of the lower page."""
        found, pages = [], {tile: page for page, tile in enumerate(self.kept)}
        for page, tile in enumerate(self.kept):
            box, half = self.box(page), LAP_MM / 2
            right, below = tile + 1, tile + self.columns
            if right % self.columns and right in pages:
                x = box.right - half
                found.append(Joint((page, pages[right]), (x, box.top), (x, box.foot)))
            if below in pages:
                y = box.foot - half
                found.append(Joint((page, pages[below]), (box.left, y), (box.right, y)))
        return found


def tiling(
    size: tuple[float, float], room: tuple[float, float], whole: tuple[float, float] | None, drawn: Drawn
) -> Tiling:
    """Return the fewest tiles over a piece, none larger than the room that a page has.

    Given:
        size   of the piece
        whole  from where to where, from above, no joint should lie: on the top edge of a folded strip
    """
    (wide, high), (across, down) = size, room
    return Tiling(wide, high, _joints(wide, across, None), _joints(high, down, whole)).without_bare(drawn)


def _span(joints: Sequence[float], long: float, place: int) -> tuple[float, float]:
    """Return from where to where a tile goes, what it laps over its neighbors included."""
    start = joints[place - 1] - LAP_MM / 2 if place else 0.0
    return start, joints[place] + LAP_MM / 2 if place < len(joints) else long


def _joints(long: float, room: float, whole: tuple[float, float] | None) -> tuple[float, ...]:
    """Return where joints lie: evenly, but none in what should be whole, if need be with one page more."""
    fewest = max(1, ceil((long - LAP_MM) / (room - LAP_MM)))
    for count in (fewest, fewest + 1):
        even = [(long - LAP_MM) / count * place + LAP_MM / 2 for place in range(1, count)]
        split = [place for place, at in enumerate(even) if whole and whole[0] < at < whole[1]]
        if not whole or not split:
            return tuple(even)
        at = even[split[0]]
        for other in sorted(whole, key=lambda edge: abs(edge - at)):
            moved = [*even[: split[0]], other, *even[split[0] + 1 :]]
            if len(split) == 1 and _fit(moved, long, room):
                return tuple(moved)
    return tuple(even)


def _fit(joints: list[float], long: float, room: float) -> bool:
    spans = pairwise([LAP_MM / 2, *joints, long - LAP_MM / 2])
    return all(0 < last - first <= room - LAP_MM for first, last in spans)
