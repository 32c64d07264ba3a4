"""Names on a plan: each where it touches no line and no other name, along its line or on from the line's end."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product
from math import atan2, cos, degrees, hypot, radians, sin

from layouts.drawings import svg
from layouts.drawings.svg import Point
from layouts.paper.typeface import advance_em
from layouts.patterns.boxes import Box, Turned

Line = tuple[Point, Point]
WEIGHT = 700
HIGH_EM, DOWN_EM = 0.95, 0.27
"""Of a name, the foot of a J with it; and from its middle down to the line that it stands on."""
CLEAR, ON, OFF = 0.9, 3.0, 1.6
"""Round a name; between a line's end and a name that follows it; between a line and a name beside it."""
SIZES = (8.5, 7.5, 6.5, 5.5)
ROW_EM = 2.9
"""From one row of names that follow lines' ends to the next, over the largest size."""
SHARES = tuple(0.5 + way * step / 40 for step in range(19) for way in ((1, -1) if step else (1,)))
"""How far along its line a name is tried, from the middle out."""


class Names:
    """The names of one plan."""

    def __init__(self, heavy: Sequence[Line], thin: Sequence[Line], rows: int, apart: float):
        """Keep off some lines.

        Given:
            thin  those that give way, where need be, to a name across them
            rows   of names that may follow lines' ends, one behind another
            apart  how far rafters stand from one another: where there are two rows, a line goes past a name of the first
        """
        self.heavy, self.thin, self.rows = list(heavy), list(thin), rows
        most = SIZES[0] if rows == 1 else (apart - CLEAR) * 2 / HIGH_EM
        self.sizes = [size for size in SIZES if size <= most] or SIZES[-1:]
        self.taken: list[Turned] = []
        self.cuts: list[Turned] = []
        self.shapes: list[str] = []

    def put(self, words: str, head: Point, foot: Point, after: bool, across: bool = False) -> bool:
        """Name a line; return whether there was room.

        Given:
            after   whether on from its lower end comes before beside it
            across  whether thin lines that are not parallel to it give way
        """
        turn = _upright(degrees(atan2(head[1] - foot[1], foot[0] - head[0])))
        lines = [*self.heavy, *(one for one in self.thin if not across or _parallel(one, (head, foot)))]
        for size in self.sizes:
            wide = advance_em(words, svg.WIDTH, WEIGHT) * size
            for middle, leader in self._middles(head, foot, wide, size, after):
                box = Turned(middle, wide + 2 * CLEAR, size * HIGH_EM + 2 * CLEAR, turn)
                if self._free(box, lines) and not any(one.meets(*leader) for one in self.taken if leader):
                    self._take(words, box, size)
                    if leader:
                        self.shapes.append(svg.line(*leader, svg.HAIR))
                        self.heavy.append(leader)
                    if across:
                        self.cuts.append(box)
                    return True
        return False

    def left_of(self, line: Line) -> list[Line]:
        """Return what is left of a thin line beside the names that it gives way to."""
        pieces = [line]
        for box in self.cuts:
            pieces = [piece for one in pieces for piece in _outside(one, box)]
        return pieces

    def _free(self, box: Turned, lines: Sequence[Line]) -> bool:
        reach = hypot(box.wide, box.high) / 2
        return not any(
            hypot(one.middle[0] - box.middle[0], one.middle[1] - box.middle[1])
            < reach + hypot(one.wide, one.high) / 2
            and box.overlaps(one)
            for one in self.taken
        ) and not any(_near(line, box.middle, reach) and box.meets(*line) for line in lines)

    def _take(self, words: str, box: Turned, size: float) -> None:
        self.taken.append(box)
        down, turn = size * DOWN_EM, radians(box.degrees)
        base = box.middle[0] + sin(turn) * down, box.middle[1] + cos(turn) * down
        self.shapes.append(svg.text(words, base, size, 'middle', WEIGHT, box.degrees))

    def _middles(
        self, head: Point, foot: Point, wide: float, size: float, after: bool
    ) -> Iterator[tuple[Point, Line | None]]:
        """Return where the middle of a name may be, with a line that leads to one far from its own."""
        long = hypot(foot[0] - head[0], foot[1] - head[1])
        if not long:
            return
        x, y = (foot[0] - head[0]) / long, (foot[1] - head[1]) / long
        for row in range(self.rows if after else 0):
            start = row * (ROW_EM * SIZES[0] + ON)
            leader = (foot, (foot[0] + x * start, foot[1] + y * start)) if row else None
            off = start + ON + wide / 2
            yield (foot[0] + x * off, foot[1] + y * off), leader
        away = OFF + size * HIGH_EM / 2
        if long > wide:
            for share, side in product(SHARES, (-1, 1)):
                middle = (
                    head[0] + x * long * share - y * side * away,
                    head[1] + y * long * share + x * side * away,
                )
                yield middle, None


def _near(line: Line, point: Point, within: float) -> bool:
    """Return whether a line may come so near to a point: what is quickly told."""
    return all(min(a, b) - within < at < max(a, b) + within for a, b, at in zip(*line, point, strict=True))


def _parallel(a: Line, b: Line) -> bool:
    (ax, ay), (bx, by) = ((end[0] - start[0], end[1] - start[1]) for start, end in (a, b))
    return abs(ax * by - ay * bx) < 0.1 * hypot(ax, ay) * hypot(bx, by)


def _outside(line: Line, box: Turned) -> list[Line]:
    """Return the parts of a line that are not in a box."""
    upright = Box(-box.wide / 2, -box.high / 2, box.wide / 2, box.high / 2)
    own = box.own(line[0]), box.own(line[1])
    within = upright.clipped(*own)
    if within is None:
        return [line]
    shares = [_share(own, point) for point in within]
    places = [
        (line[0][0] + (line[1][0] - line[0][0]) * share, line[0][1] + (line[1][1] - line[0][1]) * share)
        for share in shares
    ]
    return [piece for piece in ((line[0], places[0]), (places[1], line[1])) if piece[0] != piece[1]]


def _share(line: Line, point: Point) -> float:
    axis = 0 if abs(line[1][0] - line[0][0]) > abs(line[1][1] - line[0][1]) else 1
    return (point[axis] - line[0][axis]) / (line[1][axis] - line[0][axis])


def _upright(angle: float) -> float:
    return angle if -90 < angle <= 90 else angle - 180 if angle > 90 else angle + 180
