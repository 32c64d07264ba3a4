"""Names on a plan: each where it touches no other line and no other name, on from its line's end or in the line, which gives way."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import atan2, cos, degrees, hypot, radians, sin

from layouts.drawings import svg
from layouts.drawings.svg import Point
from layouts.paper.typeface import advance_em
from layouts.patterns.boxes import Box, Turned

Line = tuple[Point, Point]
WEIGHT = 700
HIGH_EM, DOWN_EM = 0.95, 0.27
"""Of a name, the foot of a J with it; and from its middle down to the line that it stands on."""
CLEAR, ON, OFF, SHOWN = 0.9, 3.0, 1.6, 2.5
"""Round a name; between a line's end and a name that follows it; between a line and a name beside it; what is left of one at least."""
SIZES = (8.5, 7.5, 6.5, 5.5)
ROW_EM = 2.9
"""From one row of names that follow lines' ends to the next, over the largest size."""
SHARES = tuple(0.5 + way * step / 40 for step in range(19) for way in ((1, -1) if step else (1,)))
"""How far along its line a name is tried, from the middle out."""


class Names:
    """The names of one plan."""

    def __init__(
        self, heavy: Sequence[Line], thin: Sequence[Line], faint: Sequence[Line], rows: int, apart: float
    ):
        """Keep off some lines.

        Given:
            thin   those that give way, where need be, to a name across them
            faint  those without a name, which give way to one along them too
            rows   of names that may follow lines' ends, one behind another
            apart  how far rafters stand from one another: where there are two rows, a line goes past a name of the first
        """
        self.heavy, self.thin, self.faint, self.rows = list(heavy), list(thin), list(faint), rows
        most = SIZES[0] if rows == 1 else (apart - CLEAR) * 2 / HIGH_EM
        self.sizes = [size for size in SIZES if size <= most] or SIZES[-1:]
        self.taken: list[Turned] = []
        self.cuts: list[Turned] = []
        self.shapes: list[str] = []

    def put(self, words: str, line: Line, after: bool, beside: bool, across: bool = False) -> bool:
        """Name a line; return whether there was room.

        Given:
            line    from its upper end to its lower one
            after   whether on from its lower end comes before in it
            beside  whether it may stand beside its line: never of lines side by side, where it could be the next one's
            across  whether faint lines give way, and thin ones that are not parallel to it
        """
        head, foot = line
        turn = _upright(degrees(atan2(head[1] - foot[1], foot[0] - head[0])))
        thin = [one for one in self.thin if _parallel(one, line)] if across else [*self.thin, *self.faint]
        lines = [one for one in (*self.heavy, *thin) if one != line]
        for size in self.sizes:
            wide = advance_em(words, svg.WIDTH, WEIGHT) * size
            for middle, leader in self._middles(head, foot, wide, size, after, beside):
                box = Turned(middle, wide + 2 * CLEAR, size * HIGH_EM + 2 * CLEAR, turn)
                if self._free(box, lines) and not any(one.meets(*leader) for one in self.taken if leader):
                    self._take(words, box, size)
                    if leader:
                        self.shapes.append(svg.line(*leader, svg.HAIR))
                        self.heavy.append(leader)
                    if across or box.meets(*line):
                        self.cuts.append(box)
                    return True
        return False

    def left_of(self, line: Line) -> list[Line]:
        """Return what is left of a line beside the names that it gives way to."""
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
        self, head: Point, foot: Point, wide: float, size: float, after: bool, beside: bool
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
        for aside in (0, -away, away) if beside else (0,):
            for share in SHARES if long > wide + SHOWN else ():
                at = long * share
                yield (head[0] + x * at - y * aside, head[1] + y * at + x * aside), None


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
