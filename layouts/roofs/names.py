"""Names on a plan: each where it touches no other line and no other name, on from its line's end or in the line, which gives way."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import atan2, cos, degrees, hypot, radians, sin
from operator import itemgetter, mul

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
SIZES, LARGE = (8.5, 7.5, 6.5, 5.5), (12.0, 10.0, 8.5)
"""Of names; of those where none follows a line's end."""
ROW_EM = 2.9
"""From one row of names that follow lines' ends to the next, over the largest size."""
SHARES = tuple(0.5 + way * step / 40 for step in range(19) for way in ((1, -1) if step else (1,)))
"""How far along its line a name is tried, from the middle out."""

WAYS = tuple(radians(7.5 + 15 * step) for step in range(24))
"""In which an arrow goes from a name to a far line: along none that rafters, hips or valleys usually have."""
REACHES = range(8, 44, 4)
"""How long such an arrow may be."""
OVER = 8, 40
"""For how much more of its length it counts to cross a thin line or a heavy one."""


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
        most = SIZES[0] if rows < 2 else (apart - CLEAR) * 2 / HIGH_EM
        self.sizes = LARGE if rows == 0 else [size for size in SIZES if size <= most] or SIZES[-1:]
        self.taken: list[Turned] = []
        self.cuts: list[Turned] = []
        self.pointers: list[Line] = []
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
        lines = [one for one in (*self.heavy, *thin, *self.pointers) if one != line]
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

    def point(self, words: str, line: Line) -> bool:
        """Name a line by an arrow to its middle, from where there is room; return whether there was any."""
        tip = (line[0][0] + line[1][0]) / 2, (line[0][1] + line[1][1]) / 2
        thin = [one for one in (*self.thin, *self.faint) if one != line]
        heavy = [one for one in self.heavy if one != line]
        for size in self.sizes[-2:]:
            found: list[tuple[float, Turned, Line]] = []
            wide = advance_em(words, svg.WIDTH, WEIGHT) * size
            for reach in REACHES:
                if any(one[0] <= reach for one in found):
                    break
                for box, leader in _around(tip, reach, wide, size):
                    if self._clear(box, leader, [*heavy, *thin, line]):
                        over = (sum(_cross(leader, one) for one in some) for some in (thin, heavy))
                        found.append((sum(map(mul, over, OVER), reach), box, leader))
            if found:
                _cost, box, leader = min(found, key=itemgetter(0))
                self._take(words, box, size)
                self.shapes.append(svg.arrow(*leader))
                self.pointers.append(leader)
                return True
        return False

    def _clear(self, box: Turned, leader: Line, lines: Sequence[Line]) -> bool:
        """Return whether a name and its arrow touch no other name and no other arrow, and the name no line."""
        return (
            self._free(box, [*lines, *self.pointers])
            and not any(one.meets(*leader) for one in self.taken)
            and not any(_cross(leader, one) for one in self.pointers)
        )

    def left_of(self, line: Line) -> list[Line]:
        """Return what is left of a line beside the names that it gives way to."""
        return _left_of(line, self.cuts)

    def beside(self, line: Line) -> list[Line]:
        """Return what is left of a line beside all names."""
        return _left_of(line, self.taken)

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


def _around(tip: Point, reach: float, wide: float, size: float) -> Iterator[tuple[Turned, Line]]:
    """Return boxes for a name at the far ends of arrows of one length, level and upright, each with its arrow."""
    half = wide / 2 + CLEAR + OFF, size * HIGH_EM / 2 + CLEAR + OFF
    for way in WAYS:
        x, y = cos(way), -sin(way)
        start = tip[0] + x * reach, tip[1] + y * reach
        for turn, (across, up) in ((0, half), (90, half[::-1])):
            out = min(across / abs(x), up / abs(y))
            yield (
                Turned((start[0] + x * out, start[1] + y * out), 2 * half[0], 2 * half[1], turn),
                (start, tip),
            )


def _cross(a: Line, b: Line) -> bool:
    """Return whether two lines cross."""
    return _side(a, b[0]) * _side(a, b[1]) < 0 and _side(b, a[0]) * _side(b, a[1]) < 0


def _side(line: Line, point: Point) -> float:
    """Return on which side of a line a point is: over 0 on one, under 0 on the other."""
    (ax, ay), (bx, by) = line
    return (bx - ax) * (point[1] - ay) - (by - ay) * (point[0] - ax)


def _near(line: Line, point: Point, within: float) -> bool:
    """Return whether a line may come so near to a point: what is quickly told."""
    return all(min(a, b) - within < at < max(a, b) + within for a, b, at in zip(*line, point, strict=True))


def _parallel(a: Line, b: Line) -> bool:
    (ax, ay), (bx, by) = ((end[0] - start[0], end[1] - start[1]) for start, end in (a, b))
    return abs(ax * by - ay * bx) < 0.1 * hypot(ax, ay) * hypot(bx, by)


def _left_of(line: Line, boxes: Sequence[Turned]) -> list[Line]:
    pieces = [line]
    for box in boxes:
        pieces = [piece for one in pieces for piece in _outside(one, box)]
    return pieces


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
