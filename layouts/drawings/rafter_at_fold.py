"""One common rafter across two facing pages, to scale and cut short at the fold, with its marks and the square in both holds.

The ridge is at the left, the top edge up. Inches are counted along the top edge from the ridge center line on the left
page, from the plate line on the right one, and square down into the board.
"""

from __future__ import annotations

from collections.abc import Callable
from math import atan, cos, sin

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.drawings.framing_square import HeldSquare, held_square
from layouts.drawings.marked_board import ends_named
from layouts.drawings.square_at_edge import square_at_edge
from layouts.words.drawings import ENDS, ONE_RAFTER_DRAWING
from tablegen.geometry.stepping import BODY_REACH, Hold

MOST_UNITS, MOST_HIGH, MOST_HOLDS = 7.2, 126.0, 2
"""In an inch: a tenth of true size in the pocket edition; of the drawing, so that the steps have room below; steps to a foot of run
up to which there is room for the square: past any pitch of a house there is none."""
PAST_EDGE, PAST_CORNER = 2.6, 0.8
"""Inches of an arm drawn past the edge, and of the body past the corner of the notch."""
WASTE = 3.2
"""Inches of board drawn outside its cuts."""
END, LEVEL_ROOM, CROWN_ROOM, CUT_ROOM = 12.0, 50.0, 46.0, 80.0
"""Units for the name of an end; for what is taken off; for the words at the top edge; for those at the cut's foot."""
DIM, OVER_EDGE, UNDER = 11.0, 21.0, 27.0
"""Where the dimensions run; from them to the top edge at least; for words below the board; units."""
SIZE, DISC = 8.0, 5.2
PINCH, FROM_FOOT, UNDER_FOOT, LEAST_DEEP = 13.0, 7.0, 6.0, 42.0
"""Length of an arrow beside what comes off, and how far its word keeps from the bottom edge, or stands under that of a
board drawn less deep than so; units."""
LABELS = ONE_RAFTER_DRAWING


class RafterAtFold(Struct, frozen=True):
    """What is drawn; inches, for ink only, and finished texts."""

    slope: float
    depth: float
    tail: float
    """Along the top edge, from the plate line."""
    off: float
    """Level, from the ridge center line to the cut."""
    height: float
    """Above the plate, plumb; 0 where there is no bird's mouth."""
    seat: float
    hold: Hold
    length_text: str
    tail_text: str
    off_text: str
    height_text: str
    seat_text: str

    @property
    def angle(self) -> float:
        return atan(self.slope)

    @property
    def cut(self) -> float:
        """Return where the ridge's plumb cut leaves the top edge."""
        return self.off / cos(self.angle)

    def plumb(self, at: float, down: float) -> svg.Point:
        """Return a point so far down the plumb line that leaves the top edge somewhere."""
        return at + down * sin(self.angle), down * cos(self.angle)

    def through(self, at: float, deep: float) -> svg.Point:
        """Return the point of that line so deep in the board, square to its edge."""
        return at + deep * self.slope, deep

    @property
    def corner(self) -> svg.Point:
        """Return the corner of the notch."""
        return self.plumb(0.0, self.height)

    @property
    def toe(self) -> svg.Point:
        """Return the seat's inner end."""
        x, y = self.corner
        return x - self.seat * cos(self.angle), y + self.seat * sin(self.angle)


def rafter_at_fold(it: RafterAtFold, width: float) -> tuple[Markup, Markup]:
    """Return both halves, each as wide as its page's text and as high as what it shows; units."""
    square = held_square(it.hold, PAST_EDGE)
    above = max(-y for _, y in square.outline())
    below = square.heel[1]
    left = it.cut + square.span + PAST_EDGE * cos(it.angle)
    before = square.span - it.toe[0] - min(x for x, _ in square.outline()) if it.height else WASTE
    right = max(before, WASTE) + it.tail + it.depth * it.slope + WASTE
    units = min(
        MOST_UNITS,
        (width - END - LEVEL_ROOM - CROWN_ROOM) / left,
        (width - END - LEVEL_ROOM - WASTE) / (it.cut + it.depth * it.slope),
        (width - END - 6) / right,
        (MOST_HIGH - DIM - 4) / (above + it.depth + below),
    )
    edge = DIM + max(OVER_EDGE, above * units + 4)
    foot = edge + it.depth * units
    height = max(foot + UNDER, foot + below * units + 3, edge + square.heel[1] * units + 12)
    left_height = min(height, _under(it, square, units, edge, foot, width)[1] + DISC)
    return (
        svg.drawing(width, left_height, LABELS['left'], _left(it, square, units, edge, foot, width)),
        svg.drawing(width, height, LABELS['right'], _right(it, square, units, edge, foot, width)),
    )


def _placed(left: float, edge: float, units: float) -> Callable[[svg.Point], svg.Point]:
    """Return where a point of the board stands, whose line that is counted from stands at the left."""
    return lambda point: (left + point[0] * units, edge + point[1] * units)


def _under(
    it: RafterAtFold, square: HeldSquare, units: float, edge: float, foot: float, width: float
) -> tuple[int, float]:
    """Return on which side of the cut's foot its name stands, 1 for the tail's, and its base line."""
    low = max(foot, edge + square.heel[1] * units)
    side = 1 if END + LEVEL_ROOM + it.through(it.cut, it.depth)[0] * units + CUT_ROOM < width else -1
    # under the figure of what comes off, where that stands below the board too
    return side, low + (11 if side > 0 or it.depth * units > LEAST_DEEP else 21)


def _left(
    it: RafterAtFold, square: HeldSquare, units: float, edge: float, foot: float, width: float
) -> list[str]:
    ridge = END + LEVEL_ROOM
    at = _placed(ridge, edge, units)
    cut_foot, line_foot = at(it.through(it.cut, it.depth)), at(it.through(0.0, it.depth))
    cut_top = at((it.cut, 0.0))
    beside = max(DISC - ridge, min(-9.0, cut_top[0] - ridge - (9 + DISC) * it.slope - DISC - 2))
    side, under = _under(it, square, units, edge, foot, width)
    return [
        *_wood((END, width), edge, foot, open_left=False),
        *ends_named((END, width + 99), (edge + foot) / 2, ENDS['ridge'])[:1],
        *(square_at_edge(it.hold, square, at, (it.cut, 0.0), (LABELS['tongue'], LABELS['body']), edge - DIM - 9) if it.hold.holds <= MOST_HOLDS else []),
        svg.line((END, edge), (width, edge), svg.HEAVY),
        svg.line((ridge, DIM - 3), at((0.0, 0.0)), svg.HAIR),
        svg.line(at((0.0, 0.0)), line_foot, svg.LINE, '3 2'),
        svg.line(cut_top, cut_foot, svg.HEAVY),
        svg.arrow((width, DIM), (ridge, DIM)),
        svg.text((LABELS['length'], {'figure': it.length_text}), ((ridge + width) / 2, DIM - 2.5), SIZE + 0.5, 'middle', 700),
        *(_pinched(it, at, units) if it.hold.holds <= MOST_HOLDS else []),
        *_numbered(2, (ridge + beside, edge - 9), at((0.0, 0.0))),
        *_numbered(1, (width - DISC - 1, edge - 8)),
        svg.text(LABELS['crown'], (width - 2 * DISC - 3, edge - 5), 7, 'end'),
        *_numbered(5, (cut_foot[0] + 12 * side, under - 2.6), cut_foot),
        svg.text(LABELS['ridge_cut'], (cut_foot[0] + 19 * side, under), SIZE, 'start' if side > 0 else 'end'),
        *_numbered(8, (END + 9, edge + 10)),
        *_cross((END + 26, edge + 10), 5),
    ]  # fmt: skip


def _pinched(it: RafterAtFold, at: Callable[[svg.Point], svg.Point], units: float) -> list[str]:
    """Return what comes off for the ridge, level, between two arrows."""
    fall, foot = PINCH * sin(it.angle), at((0.0, it.depth))[1]
    inside = it.depth * units > LEAST_DEEP
    deep = it.depth - max(3.0, FROM_FOOT + fall if inside else fall - UNDER_FOOT) / units
    level = (cos(it.angle), -sin(it.angle))
    a = at(it.through(0.0, deep))
    b = (a[0] + it.off * units * level[0], a[1] + it.off * units * level[1])
    tail = (a[0] - PINCH * level[0], a[1] - PINCH * level[1])
    low = tail[1] + 3 if inside else max(tail[1] + 3, foot + UNDER_FOOT + 3)
    return [
        svg.arrow(tail, a),
        svg.arrow((b[0] + PINCH * level[0], b[1] + PINCH * level[1]), b),
        svg.text((LABELS['off'], {'figure': it.off_text}), (tail[0] - 2, low), SIZE, 'end', 700),
    ]


def _right(
    it: RafterAtFold, square: HeldSquare, units: float, edge: float, foot: float, width: float
) -> list[str]:
    tail_foot = it.through(it.tail, it.depth)
    plate = width - END - (tail_foot[0] + WASTE) * units
    at = _placed(plate, edge, units)
    tail = at((it.tail, 0.0))
    shapes = [
        *_wood((0.0, width - END), edge, foot, open_left=True),
        *ends_named((-99, width - END), (edge + foot) / 2, ENDS['ridge'])[1:],
        svg.line((plate, DIM - 3), at((0.0, 0.0)), svg.HAIR),
        svg.line((tail[0], DIM - 3), tail, svg.HAIR),
        svg.arrow((0.0, DIM), (plate, DIM)),
        svg.arrow((plate, DIM), (tail[0], DIM), both=True),
        svg.text((LABELS['tail'], {'figure': it.tail_text}), ((plate + tail[0]) / 2, DIM - 2.5), SIZE + 0.5, 'middle', 700),
        *_numbered(3, (plate - 9, edge - 9), at((0.0, 0.0))),
        *_numbered(4, (tail[0] - 9, edge - 9), tail),
        *_cross((width - END - 9, edge + 10), 5),
    ]  # fmt: skip
    if it.height:
        shapes += _notch(it, square, at, units, foot)
    end = at(tail_foot)
    shapes += [
        svg.line(tail, end, svg.HEAVY),
        svg.line((0.0, edge), (width - END, edge), svg.HEAVY),
        svg.line(end, (end[0], foot + 4), svg.HAIR),
        svg.text(LABELS['tail_cut'], (width, foot + 11.5), SIZE, 'end'),
    ]
    return shapes


def _notch(
    it: RafterAtFold, square: HeldSquare, at: Callable[[svg.Point], svg.Point], units: float, foot: float
) -> list[str]:
    """Return the bird's mouth, its height, and the square on the bottom edge."""
    corner, toe, heel = at(it.corner), at(it.toe), at(it.through(0.0, it.depth))
    reach = min(BODY_REACH, float(it.hold.body_in) + it.seat + PAST_CORNER)
    long = HeldSquare(square.span, square.heel, square.tongue, square.body, square.tongue_end, reach)
    beside = (PAST_CORNER / cos(it.angle)) * units + 4
    top, low = (at((0.0, 0.0))[0] + beside, at((0.0, 0.0))[1]), (corner[0] + beside, corner[1])
    middle = _middle(top, low)
    inside = [(toe[0] + corner[0] * 2 + heel[0]) / 4, (toe[1] + corner[1] * 2 + heel[1]) / 4]
    return [
        svg.shape([toe, corner, heel], 0, '#fff'),
        *(square_at_edge(it.hold, long, at, (it.toe[0] - square.span, it.depth), (LABELS['tongue_short'], LABELS['body_short']), foot) if it.hold.holds <= MOST_HOLDS else []),
        svg.line(at((0.0, 0.0)), corner, svg.LINE, '3 2'),
        svg.path([toe, corner, heel], svg.HEAVY),
        *_cross((inside[0], inside[1]), 2.2),
        svg.arrow(top, low, both=True),
        svg.line(corner, (low[0] + 2, low[1]), svg.HAIR),
        *_numbered(6, (middle[0] + 12, middle[1] - 4)),
        svg.text(it.height_text, (middle[0] + 3.5 + 10 * it.slope, middle[1] + 10), SIZE, 'start', 700),
        svg.arrow((heel[0] + 8, foot + 7), _middle(corner, heel)),
        svg.text(LABELS['heel'], (heel[0] + 9.5, foot + 10.5), SIZE),
        svg.arrow((heel[0] + 4, foot + 20), _middle(corner, _middle(toe, corner))),
        *_numbered(7, (heel[0] + 4, foot + 20)),
        svg.text((LABELS['seat'], {'figure': it.seat_text}), (heel[0] + 11, foot + 23), SIZE, 'start', 700),
    ]  # fmt: skip


def _wood(ends: tuple[float, float], edge: float, foot: float, open_left: bool) -> list[str]:
    """Return the board's edges, its end, and the break at the fold."""
    fold, end = ends if open_left else ends[::-1]
    middle, turn = (edge + foot) / 2, 3.5 if open_left else -3.5
    broken = [
        (fold, edge - 3),
        (fold, middle - 6),
        (fold + turn, middle - 2),
        (fold, middle + 2),
        (fold, foot + 3),
    ]
    return [
        svg.line((ends[0], foot), (ends[1], foot), svg.LINE),
        svg.line((end, edge), (end, foot), svg.LINE),
        svg.path(broken, svg.HAIR),
    ]  # fmt: skip


def _numbered(number: int, center: svg.Point, target: svg.Point | None = None) -> list[str]:
    """Return a number on a black disc, with a line to what it marks."""
    led = [svg.line(center, target, svg.HAIR)] if target else []
    return [
        *led,
        svg.dot(center, DISC),
        svg.text(str(number), (center[0], center[1] + 2.8), 7.5, 'middle', 800, fill='#fff'),
    ]


def _middle(a: svg.Point, b: svg.Point) -> svg.Point:
    return (a[0] + b[0]) / 2, (a[1] + b[1]) / 2


def _cross(center: svg.Point, half: float) -> list[str]:
    (x, y) = center
    return [
        svg.line((x - half, y - half), (x + half, y + half)),
        svg.line((x - half, y + half), (x + half, y - half)),
    ]
