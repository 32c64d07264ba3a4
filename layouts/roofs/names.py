"""Names on a plan: each where it touches no line and no other name, along its line or on from the line's end."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product
from math import atan2, cos, degrees, hypot, radians, sin

from layouts.drawings import svg
from layouts.drawings.svg import Point
from layouts.paper.typeface import advance_em
from layouts.patterns.boxes import Turned

WEIGHT = 700
HIGH_EM, DOWN_EM = 0.95, 0.27
"""Of a name, the foot of a J with it; and from its middle down to the line that it stands on."""
CLEAR, ON, OFF = 0.9, 3.0, 1.6
"""Round a name; between a line's end and a name that follows it; between a line and a name beside it."""
SIZES = (8.5, 7.5, 6.5, 5.5)
SHARES = (0.5, 0.62, 0.38, 0.75, 0.25, 0.87, 0.13)


class Names:
    """The names of one plan."""

    def __init__(self, lines: Sequence[tuple[Point, Point]]):
        """Keep off some lines."""
        self.lines = lines
        self.taken: list[Turned] = []
        self.shapes: list[str] = []

    def put(self, words: str, head: Point, foot: Point, after: bool) -> bool:
        """Name a line; return whether there was room.

        Given:
            after  whether on from its lower end comes before beside it
        """
        turn = _upright(degrees(atan2(head[1] - foot[1], foot[0] - head[0])))
        for size in SIZES:
            wide = advance_em(words, svg.WIDTH, WEIGHT) * size
            for middle in _middles(head, foot, wide, size, after):
                box = Turned(middle, wide + 2 * CLEAR, size * HIGH_EM + 2 * CLEAR, turn)
                if self._free(box):
                    self._take(words, box, size)
                    return True
        return False

    def _free(self, box: Turned) -> bool:
        reach = hypot(box.wide, box.high) / 2
        return not any(
            hypot(one.middle[0] - box.middle[0], one.middle[1] - box.middle[1])
            < reach + hypot(one.wide, one.high) / 2
            and box.overlaps(one)
            for one in self.taken
        ) and not any(box.meets(*line) for line in self.lines)

    def _take(self, words: str, box: Turned, size: float) -> None:
        self.taken.append(box)
        down, turn = size * DOWN_EM, radians(box.degrees)
        base = box.middle[0] + sin(turn) * down, box.middle[1] + cos(turn) * down
        self.shapes.append(svg.text(words, base, size, 'middle', WEIGHT, box.degrees))


def _middles(head: Point, foot: Point, wide: float, size: float, after: bool) -> Iterator[Point]:
    """Return where the middle of a name may be."""
    long = hypot(foot[0] - head[0], foot[1] - head[1])
    if not long:
        return
    x, y = (foot[0] - head[0]) / long, (foot[1] - head[1]) / long
    if after:
        yield foot[0] + x * (ON + wide / 2), foot[1] + y * (ON + wide / 2)
    away = OFF + size * HIGH_EM / 2
    if long > wide:
        for share, side in product(SHARES, (-1, 1)):
            yield head[0] + x * long * share - y * side * away, head[1] + y * long * share + x * side * away


def _upright(angle: float) -> float:
    return angle if -90 < angle <= 90 else angle - 180 if angle > 90 else angle + 180
