"""A board with every mark of a member on it, to scale: its top edge unfolded over its side, what lies between left out.

Every board in the book lies one way round: the ridge at the left, the tail at the right, the top edge up. The side
that is drawn is then the left one of somebody who looks up the roof.
"""

from __future__ import annotations

from itertools import pairwise
from math import atan, cos, sin, tan

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.words.drawings import ENDS

WIDTH, SIDE = 240.0, 12.0
"""Of the drawing, and of what is left beside the board for the names of its ends."""
BREAK = 7.0
"""Between two pieces of the board."""
PAST = 1.2
"""Inches of wood drawn outside the outermost line of a piece."""
MOST_UNITS, MOST_HIGH, MOST_DEEP = 9.0, 62.0, 50.0
"""In an inch; from the far side of the top edge to the bottom edge; and where the top edge is not seen: a board is
not drawn larger."""
BELOW = 9.0
"""Under the bottom edge stand the figures of the bird's mouth, away from every plumb line."""
LEAST_DEEP = 14.0
"""A board that is drawn thinner, at a pitch over 24 in 12, does not show its bird's mouth."""
OTHERWISE = '1.6 1.2'
"""Dashes of what is cut in another arrangement."""
OFF = 4.5
"""How far beside what it measures an arrow lies."""
NAME_HALF = 15.0
"""Half of the longest name of an end."""
APART = 10.0
"""Between the numbers of two marks, at least."""
NUMBERS, ROW = 11.0, 13.0
"""Height of the row of numbers, and of a row of distances above it."""


class End(Struct, frozen=True):
    """A plumb cut at one end: where it leaves the top edge, inches from the line that is measured from."""

    far: float
    """On the far side."""
    center: float
    near: float
    """On the near side, the one that is drawn."""


class BoardMarks(Struct, frozen=True):
    """Everything on a board, in inches along its top edge; for ink only."""

    slope: float
    """Of the member itself."""
    depth: float
    thickness: float
    """0 where the cuts are square across and the top edge need not be seen."""
    head: End
    tail: End
    plate: float
    heel_at: float
    heel: float
    seat: float
    """Of the bird's mouth; heel 0 where there is none."""
    marks: tuple[float, ...]
    """Every mark that has a number, from the ridge end on; the first is what is measured from."""
    distances: tuple[tuple[float, str], ...]
    """Distances from there that are drawn, and their figures, the shortest first."""
    other_head: End | None = None
    """How the top edge would be cut otherwise at the upper end: dashed."""


class _Sheet(Struct, frozen=True):
    """Where the pieces of a board lie on the drawing."""

    pieces: tuple[tuple[float, float], ...]
    """First and last inch of each, along the top edge and along the bottom edge together."""
    starts: tuple[float, ...]
    units: float
    """In an inch."""

    def x(self, at: float, piece: int) -> float:
        return self.starts[piece] + (at - self.pieces[piece][0]) * self.units

    def piece_of(self, at: float) -> int:
        return max((n for n, (first, _) in enumerate(self.pieces) if first <= at), default=0)


def marked_board(
    board: BoardMarks,
    words: tuple[str, str],
    title: str,
    ends: tuple[str, str] = (ENDS['ridge'], ENDS['tail']),
    room: float = 1.0,
) -> Markup:
    """Return the board.

    Given:
        words  the heel's and the seat's figures
        ends   what stands at the board's upper end, and at its lower
        room   how much higher than usual it may be
    """
    sheet = _sheet(board, room)
    rows = len(board.distances)
    top = ROW * rows + NUMBERS + 8
    strip = board.thickness * sheet.units
    edge = top + strip
    foot = edge + board.depth * sheet.units
    shapes = _wood(sheet, top, edge, foot)
    shapes += ends_named((SIDE - 2, WIDTH - SIDE + 2), (edge + foot) / 2, *ends)
    shapes += _side(board, sheet, edge, foot, words)
    if strip:
        shapes += _top_edge(board, sheet, top, edge)
    shapes += _numbers(board, sheet, top, edge)
    shapes += _distances(board, sheet, top)
    return svg.drawing(WIDTH, max(foot + BELOW, (edge + foot) / 2 + NAME_HALF) + 3, title, shapes)


def ends_named(
    ends: tuple[float, float], middle: float, head: str, tail: str = ENDS['tail'], size: float = 7.0
) -> list[str]:
    """Return the names of a board's two ends, written up along them, outside of the board."""
    return [
        svg.text(name, (x, middle), size, 'middle', 800, 90)
        for name, x in ((head, ends[0] - 2.5), (tail, ends[1] + 2.5 + size * 0.72))
    ]


def _sheet(board: BoardMarks, room_high: float) -> _Sheet:
    """Return the pieces in which a board is drawn: its head, its bird's mouth, its tail; near ones are one."""
    lean = board.depth * board.slope
    toe = board.seat * cos(atan(board.slope)) * (1 + board.slope**2) if board.heel else 0.0
    head, tail = board.head, board.tail
    upper = [0.0, *(at for end in (head, board.other_head) if end for at in (end.far, end.center, end.near))]
    spans = [
        (min(upper) - PAST, max(upper) + lean + PAST),
        (
            min(board.plate, board.heel_at + lean - toe) - PAST,
            max(board.plate, board.heel_at) + (lean if board.heel else 0.0) + PAST,
        ),
        (min(tail.far, tail.center, tail.near) - PAST, max(tail.far, tail.center, tail.near) + lean + PAST),
    ]
    pieces = [spans[0]]
    for span in spans[1:]:
        if span[0] <= pieces[-1][1] + PAST:
            pieces[-1] = (pieces[-1][0], max(span[1], pieces[-1][1]))
        else:
            pieces.append(span)
    room = WIDTH - 2 * SIDE - BREAK * (len(pieces) - 1)
    long = sum(last - start for start, last in pieces)
    high = room_high * (MOST_HIGH if board.thickness else MOST_DEEP) / (board.depth + board.thickness)
    units = min(MOST_UNITS, high, room / long)
    pieces = _widened(pieces, room / units - long)
    starts = [SIDE]
    for start, last in pieces[:-1]:
        starts.append(starts[-1] + (last - start) * units + BREAK)
    return _Sheet(tuple(pieces), tuple(starts), units)


def _widened(pieces: list[tuple[float, float]], spare: float) -> list[tuple[float, float]]:
    """Return pieces with more wood where no other piece shows it: before the head, before the bird's mouth, at the end."""
    each = spare / len(pieces)
    (first, stop), *rest = pieces
    widened = [(first - each, stop)]
    for start, last in rest[:1] if len(pieces) > 2 else []:
        widened.append((start - min(each, (start - stop) / 2), last))
    widened += rest[len(widened) - 1 :]
    used = sum(last - start for start, last in widened) - sum(last - start for start, last in pieces)
    return [*widened[:-1], (widened[-1][0], widened[-1][1] + spare - used)]


def _wood(sheet: _Sheet, top: float, edge: float, foot: float) -> list[str]:
    """Return the edges of every piece, and the breaks between them."""
    shapes = []
    spans = [
        (start, start + (last - first) * sheet.units)
        for start, (first, last) in zip(sheet.starts, sheet.pieces, strict=True)
    ]
    for left, right in spans:
        shapes += [svg.line((left, y), (right, y), svg.LINE) for y in sorted({top, edge, foot})]
    for (_, right), (left, _) in pairwise(spans):
        shapes += [svg.line((x, top - 2), (x, foot + 2), svg.HAIR, '1 1.6') for x in (right, left)]
    return shapes


def _plumb(
    board: BoardMarks, sheet: _Sheet, at: float, edge: float, foot: float
) -> tuple[svg.Point, svg.Point]:
    x = sheet.x(at, sheet.piece_of(at))
    return (x, edge), (x + (foot - edge) * tan(atan(board.slope)), foot)


def _side(board: BoardMarks, sheet: _Sheet, edge: float, foot: float, words: tuple[str, str]) -> list[str]:
    """Return the plumb lines of the near side, and the bird's mouth."""

    def plumb(at: float, down_to: float, width: float, dash: str = '') -> str:
        start, end = _plumb(board, sheet, at, edge, down_to)
        return svg.line(start, end, width, dash)

    shapes = [plumb(0.0, foot, svg.HAIR, '5 1.5 1 1.5')] if board.head.near else []
    # over a valley's inside corner, and to its heel, which stands elsewhere
    shapes += [plumb(at, foot, svg.HAIR, '3 2') for at in sorted({board.plate, board.heel_at})]
    for cut in (board.head.near, board.tail.near):
        shapes.append(plumb(cut, foot, svg.HEAVY))
    if board.heel and foot - edge > LEAST_DEEP:
        angle = atan(board.slope)
        start, end = _plumb(board, sheet, board.heel_at, edge, foot)
        above = board.depth / cos(angle) - board.heel
        corner = (
            start[0] + above * sin(angle) * sheet.units,
            start[1] + above * cos(angle) * sheet.units,
        )
        seat = board.seat * sheet.units
        toe = (corner[0] - seat * cos(angle), corner[1] + seat * sin(angle))
        notch = [toe, corner, end]
        shapes += [svg.shape(notch, 0, '#fff'), svg.hatch(notch, 2.4), svg.path(notch, svg.HEAVY)]
        right, up = OFF * cos(angle), OFF * sin(angle)
        shapes += beside(corner, end, (right, -up))
        shapes += beside(toe, corner, (-up, -right))
        shapes.append(svg.text(words[0], (end[0] + 1, foot + BELOW), 8, 'start', 700))
        shapes.append(svg.text(words[1], (toe[0] + 1, foot + BELOW), 8, 'end', 700))
    return shapes


def beside(a: svg.Point, b: svg.Point, off: svg.Point) -> list[str]:
    """Return an arrow between two points, drawn so far off, with lines to them."""
    c, d = ((x + off[0], y + off[1]) for x, y in (a, b))
    return [svg.line(a, c, svg.HAIR), svg.line(b, d, svg.HAIR), svg.arrow(c, d, both=True)]


def _top_edge(board: BoardMarks, sheet: _Sheet, top: float, edge: float) -> list[str]:
    """Return the cuts across the top edge, and its center line, which ends at the tail: past a point it would make an X of it."""
    middle = (top + edge) / 2
    shapes = []
    for start, (first, last) in zip(sheet.starts, sheet.pieces, strict=True):
        stop = start + (min(last, board.tail.center) - first) * sheet.units
        shapes.append(svg.line((start, middle), (stop, middle), svg.HAIR, '5 1.5 1 1.5'))

    def cut(end: End) -> list[svg.Point]:
        piece = sheet.piece_of(end.center)
        return [(sheet.x(at, piece), y) for at, y in ((end.far, top), (end.center, middle), (end.near, edge))]

    if board.other_head:
        shapes += [svg.line(a, b, svg.LINE, OTHERWISE) for a, b in pairwise(cut(board.other_head))]
    return shapes + [svg.path(cut(end), svg.HEAVY) for end in (board.head, board.tail)]


def _numbers(board: BoardMarks, sheet: _Sheet, top: float, edge: float) -> list[str]:
    """Return a number over every mark, moved apart from its neighbors, with a line down to it."""
    feet = [sheet.x(at, sheet.piece_of(at)) for at in board.marks]
    shapes, seats = [], _apart(feet)
    for number, (x, seat) in enumerate(zip(feet, seats, strict=True), 1):
        shapes += [
            svg.text(str(number), (seat, top - 8), 7.5, 'middle', 800),
            svg.path([(seat, top - 6.5), (x, top - 1), (x, edge)], svg.HAIR),
        ]
    return shapes


def _apart(feet: list[float]) -> list[float]:
    """Return where numbers stand, as near over their marks as they may."""
    seats = list(feet)
    for _ in range(40):
        for place in range(len(seats) - 1):
            missing = APART - (seats[place + 1] - seats[place])
            if missing > 0:
                seats[place] -= missing / 2
                seats[place + 1] += missing / 2
    shift = max(0.0, SIDE - 6 - seats[0]) if seats else 0.0
    return [seat + shift for seat in seats]


def _distances(board: BoardMarks, sheet: _Sheet, top: float) -> list[str]:
    """Return the distances from the first line, one above another."""
    shapes = []
    start = sheet.x(0.0, sheet.piece_of(0.0))
    for row, (at, figure) in enumerate(board.distances):
        y = top - NUMBERS - 7 - ROW * row
        stop = sheet.x(at, sheet.piece_of(at))
        shapes += [
            svg.line((stop, y - 3), (stop, top - NUMBERS - 3.5), svg.HAIR),
            svg.arrow((start, y), (stop, y), both=True),
            svg.text(figure, ((start + stop) / 2, y - 2), 8, 'middle', 700),
        ]
    if board.distances:
        shapes.append(svg.line((start, y - 3), (start, top - NUMBERS - 3.5), svg.HAIR))
    return shapes
