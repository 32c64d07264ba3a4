"""Words on a pattern: each where it touches no line, no mark and no other word, or, where there is no such place, nowhere."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import product
from math import atan2, cos, degrees, hypot, radians, sin

from layouts.drawings import svg
from layouts.drawings.svg import Point
from layouts.paper.typeface import advance_em
from layouts.patterns.boxes import Box, Turned, inside

SIZE, SMALL = 2.9, 2.3
"""Of words, mm: of lines and faces, and where there is little room."""
WEIGHT = 600
CLEAR = 0.7
"""Round words, at least."""
OFF = 1.2
"""Between a line and its name."""
SHARES = (0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88)
GRID = 3.0
"""Steps in which places for words are tried."""
CROSS = 9.0
"""Across a cross on waste wood."""


class Labels:
    """The words of one page."""

    def __init__(self, room: Box, lines: list[tuple[Point, Point]]):
        """Keep to a room, and off some lines in it."""
        self.room, self.lines = room, lines
        self.taken: list[Turned] = []
        self.shapes: list[str] = []

    def take(self, box: Turned) -> None:
        """Keep a place free of words."""
        self.taken.append(box)

    def free(self, box: Turned) -> bool:
        """Return whether a box lies in the room and touches nothing."""
        wider = Turned(box.middle, box.wide + 2 * CLEAR, box.high + 2 * CLEAR, box.degrees)
        return (
            all(map(self.room.holds, wider.corners))
            and not any(wider.meets(*line) for line in self.lines)
            and not any(wider.overlaps(one) for one in self.taken)
        )

    def along(self, names: Sequence[str], a: Point, b: Point) -> bool:
        """Name a line beside it, by the first name that has a place; return whether one had."""
        angle = degrees(atan2(a[1] - b[1], b[0] - a[0]))
        angle = angle if -90 < angle <= 90 else angle - 180 if angle > 90 else angle + 180
        for words, size in product(names, (SIZE, SMALL)):
            away = size / 2 + OFF
            across = (sin(radians(angle)) * away, cos(radians(angle)) * away)
            places = (
                (
                    a[0] + (b[0] - a[0]) * share + side * across[0],
                    a[1] + (b[1] - a[1]) * share + side * across[1],
                )
                for share, side in product(SHARES, (-1, 1))
            )
            if hypot(b[0] - a[0], b[1] - a[1]) > _wide(words, size) and self._put(words, size, places, angle):
                return True
        return False

    def beside(self, names: Sequence[str], a: Point, b: Point, away: float) -> bool:
        """Write the first name that has a place along a level or upright line, so far to its right or below it."""
        upright = a[0] == b[0]
        places = [
            (a[0] + away, a[1] + (b[1] - a[1]) * share)
            if upright
            else (a[0] + (b[0] - a[0]) * share, a[1] + away)
            for share in SHARES
        ]
        return any(self._put(words, SMALL, places, 90.0 if upright else 0.0) for words in names)

    def within(self, words: str, box: Box, weight: int = 800) -> bool:
        """Write level words somewhere in a box, as far to its left as may be."""
        return any(self._put(words, size, _grid(box), 0.0, weight) for size in (SIZE, SMALL))

    def crossed(self, words: str, outline: tuple[Point, ...]) -> bool:
        """Put a cross, with a word under it, on waste wood, as near its middle as may be."""
        xs, ys = zip(*outline, strict=True)
        box = Box(
            max(min(xs), self.room.left), max(min(ys), self.room.top), min(max(xs), self.room.right), min(max(ys), self.room.foot)
        )  # fmt: skip
        places = [place for place in _grid(box) if inside(place, outline)]
        if not places:
            return False
        middle = tuple(sum(place[axis] for place in places) / len(places) for axis in (0, 1))
        places.sort(key=lambda place: hypot(place[0] - middle[0], place[1] - middle[1]))
        for share in (1.0, 0.7, 0.45):
            size, arm = SMALL * max(share, 0.8), CROSS * share / 2
            whole = Turned((0.0, 0.0), max(_wide(words, size), 2 * arm), 2 * arm + size)
            for x, y in places:
                lying = Turned((x, y), whole.wide, whole.high)
                if all(inside(one, outline) for one in lying.corners) and self.free(lying):
                    self.take(lying)
                    up = y - size / 2
                    self.shapes += [
                        svg.line((x - arm, up - arm), (x + arm, up + arm), 0.35),
                        svg.line((x - arm, up + arm), (x + arm, up - arm), 0.35),
                        svg.text(words, (x, y + whole.high / 2 - 0.2 * size), size, 'middle', WEIGHT),
                    ]
                    return True
        return False

    def _put(
        self, words: str, size: float, middles: Iterable[Point], angle: float, weight: int = WEIGHT
    ) -> bool:
        wide = _wide(words, size, weight)
        for middle in middles:
            box = Turned(middle, wide, size, angle)
            if self.free(box):
                self.take(box)
                down = 0.28 * size  # from the middle of the letters to the line that they stand on
                base = middle[0] + sin(radians(angle)) * down, middle[1] + cos(radians(angle)) * down
                self.shapes.append(svg.text(words, base, size, 'middle', weight, angle))
                return True
        return False


def _wide(words: str, size: float, weight: int = WEIGHT) -> float:
    return advance_em(words, svg.WIDTH, weight) * size


def _grid(box: Box) -> Iterator[Point]:
    """Return places in a box, column by column from the left."""
    across = range(int((box.right - box.left) / GRID) + 1)
    down = range(int((box.foot - box.top) / GRID) + 1)
    for column, row in product(across, down):
        yield box.left + column * GRID, box.top + row * GRID
