"""A board of a roof to be marked: its left side under its top edge, every mark with its number, what lies between left out.

As every board it lies with its ridge at the left and its top edge up. A pair, cut left and right, has the top edge of each, and
the side of the left one.
"""

from __future__ import annotations

from itertools import pairwise
from math import atan, cos, sin

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.drawings.marked_board import beside
from layouts.paper.typeface import advance_em

SIDES = 50.0, 24.0
"""Left of the board and right of it, for the names of its top edges and ends."""
BREAK, PAST = 11.0, 1.3
"""Between two pieces of the board; and inches of wood drawn outside the outermost line of a piece."""
MOST_UNITS, MOST_HIGH, LOW = 13.0, 118.0, 76.0
"""In an inch; and from the uppermost top edge to the bottom edge, of a usual drawing and of a low one."""
GAP, APART = 9.0, 11.5
"""Between two top edges, and between them and the side; and between the numbers of two marks, at least."""
NUMBERS, ROW, BELOW = 19.0, 21.0, 17.5
"""Height of the row of numbers, of a row of distances, and of the bird's mouth's figures under the bottom edge."""
FIGURE, NUMBER = 12.2, 11.0
"""Sizes of type: figures to saw by are 3 mm high."""
OFF, NAME_SIZE, CENTER_NAME = 5.0, 8.5, 'c'


class CutEnd(Struct, frozen=True):
    """A cut over the top edge, in inches along it: from the left side to the right one."""

    left: float
    lean: float
    """How far along the edge it runs down the left side, for an inch of depth."""
    points: tuple[tuple[float, float], ...]
    """Along and across, from the left side."""

    @property
    def marks(self) -> list[float]:
        return [at for at, _ in self.points]


class Notch(Struct, frozen=True):
    """A bird's mouth."""

    heel_at: float
    """Where its heel's plumb line meets the top edge."""
    left: float
    """Stock left over it, square to the edge."""
    heel: float
    seat: float


class CutBoard(Struct, frozen=True):
    """Everything on a board, in inches along its top edge; for ink only."""

    slope: float
    depth: float
    thickness: float
    tops: tuple[tuple[str, CutEnd, CutEnd | None], ...]
    """The name, upper and lower end of each top edge that is drawn; the first is that of the side; no name where all cuts are
    square across: its top edge is then not drawn."""
    level_foot: float | None
    """Where a foot that lies on sheathing, cut level, meets the top edge."""
    notches: tuple[Notch, ...]
    words: tuple[str, str]
    """The heel's and the seat's figures."""
    plates: tuple[float, ...]
    """Plate lines."""
    marks: tuple[float, ...]
    """Every mark that has a number, from the upper end on."""
    center: bool
    """Whether the center line of what stops it is shown, at 0."""
    above: tuple[tuple[tuple[float, float, str], ...], ...]
    """Rows of distances drawn above it, from and to, the lowest row first."""

    @property
    def head(self) -> CutEnd:
        return self.tops[0][1]

    @property
    def foot(self) -> CutEnd | None:
        return self.tops[0][2]

    @property
    def lean(self) -> float:
        return self.depth * self.slope


class _Sheet(Struct, frozen=True):
    """Where the pieces of a board lie on the drawing."""

    pieces: tuple[tuple[float, float], ...]
    starts: tuple[float, ...]
    units: float

    def x(self, at: float) -> float:
        piece = max((n for n, (first, _) in enumerate(self.pieces) if first <= at), default=0)
        return self.starts[piece] + (at - self.pieces[piece][0]) * self.units

    @property
    def spans(self) -> list[tuple[float, float]]:
        return [
            (start, start + (last - first) * self.units)
            for start, (first, last) in zip(self.starts, self.pieces, strict=True)
        ]


def cut_board(board: CutBoard, title: str, ends: tuple[str, str], width: float, high: float) -> Markup:
    """Return the board.

    Given:
        ends   what stands at its upper and its lower end
        width  of the drawing, in units
        high   from the uppermost top edge to the bottom edge, at most
    """
    sheet = _sheet(board, width, high)
    shown = [one for one in board.tops if one[0]]
    strip = board.thickness * sheet.units
    top = ROW * len(board.above) + NUMBERS + 4
    edges = [top + place * (strip + GAP) for place in range(len(shown))]
    edge = top + len(shown) * (strip + GAP)
    foot = edge + board.depth * sheet.units
    shapes = _side(board, sheet, edge, foot, width)
    for (name, head, tail), y in zip(shown, edges, strict=True):
        shapes += _top_edge(sheet, y, strip, [head, tail])
        shapes.append(svg.text(name, (SIDES[0] - 7, y + strip / 2 + 3.5), NAME_SIZE, 'end', 800))
    shapes += _numbers(board, sheet, top, edge)
    for row, distances in enumerate(board.above):
        for start, stop, words in distances:
            y = top - NUMBERS - 4 - ROW * row
            shapes += _distance(sheet, (start, stop), y, top - NUMBERS, words)
    for name, x in zip(ends, (SIDES[0] - 9, width - SIDES[1] + 9 + NAME_SIZE * 0.72), strict=True):
        shapes.append(svg.text(name, (x, (edge + foot) / 2), NAME_SIZE, 'middle', 800, 90))
    return svg.drawing(width, foot + (BELOW if board.notches else 4.0), title, shapes)


def _sheet(board: CutBoard, width: float, most: float) -> _Sheet:
    """Return the pieces in which a board is drawn: its head, its bird's mouths, its foot; near ones are one."""
    spans = sorted(_spans(board))
    pieces = [spans[0]]
    for first, last in spans[1:]:
        if first <= pieces[-1][1] + PAST:
            pieces[-1] = (pieces[-1][0], max(last, pieces[-1][1]))
        else:
            pieces.append((first, last))
    room = width - sum(SIDES) - BREAK * (len(pieces) - 1)
    shown = len([one for one in board.tops if one[0]])
    high = (most - GAP * shown) / (board.depth + board.thickness * shown)
    units = min(MOST_UNITS, high, room / sum(last - first for first, last in pieces))
    pieces = _widened(pieces, room / units)
    starts = [SIDES[0]]
    for first, last in pieces[:-1]:
        starts.append(starts[-1] + (last - first) * units + BREAK)
    return _Sheet(tuple(pieces), tuple(starts), units)


def _spans(board: CutBoard) -> list[tuple[float, float]]:
    heads = [at for _, head, _ in board.tops for at in head.marks]
    spans = [(min([0.0] * board.center + heads) - PAST, max(heads) + board.lean + PAST)]
    for one in board.notches:
        toe = one.heel_at + one.left * board.slope - one.seat / cos(atan(board.slope))
        spans.append((toe - PAST, one.heel_at + board.lean + PAST))
    spans += [(at - PAST, at + PAST) for at in board.plates]
    ends = [(foot, at) for _, _, foot in board.tops if foot for at in foot.marks]
    if feet := [at + foot.lean * down for foot, at in ends for down in (0.0, board.depth)]:
        spans.append((min(feet) - PAST, max(feet) + PAST))
    if board.level_foot is not None:
        spans.append((board.level_foot - board.depth / board.slope - PAST, board.level_foot + PAST))
    return spans


def _widened(pieces: list[tuple[float, float]], room: float) -> list[tuple[float, float]]:
    """Return pieces that fill a room, in inches: what is left of it is wood that no piece shows yet, before each but the first."""
    for place in range(len(pieces) - 1, 0, -1):
        spare = room - sum(last - first for first, last in pieces)
        more = min(spare / place, (pieces[place][0] - pieces[place - 1][1]) / 2)
        pieces = [*pieces[:place], (pieces[place][0] - more, pieces[place][1]), *pieces[place + 1 :]]
    return pieces


def _side(board: CutBoard, sheet: _Sheet, edge: float, foot: float, width: float) -> list[str]:
    """Return the left side: its edges, what is sawn off, its plumb lines and bird's mouths."""
    units, slope = sheet.units, board.slope

    def at(along: float, across: float = 0.0) -> svg.Point:
        return sheet.x(along) + across * slope * units, edge + across * units

    shapes = [svg.line((left, y), (right, y)) for left, right in sheet.spans for y in (edge, foot)]
    for (_, right), (left, _) in pairwise(sheet.spans):
        shapes += [svg.line((x, edge - 3), (x, foot + 1), svg.HAIR, '1 1.6') for x in (right, left)]
    first, last = sheet.spans[0][0], sheet.spans[-1][1]
    head = (at(board.head.left), at(board.head.left, board.depth))
    shapes.append(svg.hatch([(first, edge), *head, (first, foot)], 7))
    cuts = [head]
    if board.level_foot is not None:
        cuts.append((at(board.level_foot), (sheet.x(board.level_foot) - board.depth / slope * units, foot)))
    elif board.foot:
        out = board.foot.lean * board.depth * units
        cuts.append((at(board.foot.left), (sheet.x(board.foot.left) + out, foot)))
    if len(cuts) > 1:
        shapes.append(svg.hatch([(last, edge), *cuts[1], (last, foot)], 7))
    if board.center:
        shapes.append(svg.line(at(0.0), at(0.0, board.depth), svg.HAIR, '6 1.5 1 1.5'))
    shapes += [svg.line(at(one), at(one, board.depth * 0.6), svg.HAIR, '3 2') for one in board.plates]
    for one in board.notches:
        shapes += _notch(
            board, one, at(one.heel_at, one.left), at(one.heel_at, board.depth), (sheet.units, width)
        )
    return shapes + [svg.line(start, stop, svg.HEAVY) for start, stop in cuts]


def _notch(
    board: CutBoard, one: Notch, corner: svg.Point, end: svg.Point, sizes: tuple[float, float]
) -> list[str]:
    (units, width), angle, foot = sizes, atan(board.slope), end[1]
    long = one.seat * units
    heel_x = min(end[0] + 2, width - advance_em(board.words[0], svg.WIDTH, 700) * FIGURE - 2)
    toe = (corner[0] - long * cos(angle), corner[1] + long * sin(angle))
    right, up = OFF * cos(angle), OFF * sin(angle)
    seat_x, base = min(toe[0] + 2, heel_x - 8), foot + BELOW - 6
    said = [
        svg.text(board.words[0], (heel_x, base), FIGURE, 'start', 700),
        svg.text(board.words[1], (seat_x, base), FIGURE, 'end', 700),
    ]
    return [
        svg.shape([toe, corner, end], 0, '#fff'),
        svg.hatch([toe, corner, end], 3),
        svg.path([toe, corner, end], svg.HEAVY),
        *beside(corner, end, (right, -up)),
        *beside(toe, corner, (-up, -right)),
        *([] if one is not board.notches[0] else said),
    ]


def _top_edge(sheet: _Sheet, y: float, strip: float, ends: list[CutEnd | None]) -> list[str]:
    """Return one top edge, its left side below, with the cuts across it."""
    shapes = []
    for left, right in sheet.spans:
        shapes += [svg.line((left, level), (right, level)) for level in (y, y + strip)]
        shapes.append(svg.line((left, y + strip / 2), (right, y + strip / 2), svg.HAIR, '6 1.5 1 1.5'))
    for end, outer in zip(ends, (sheet.spans[0][0], sheet.spans[-1][1]), strict=True):
        if end:
            cross = [
                (sheet.x(along), y + strip - strip * across / end.points[-1][1])
                for along, across in end.points
            ]
            for a, b in pairwise(cross):
                shapes.append(svg.hatch([(outer, a[1]), a, b, (outer, b[1])], 7))
            shapes.append(svg.path(cross, svg.HEAVY))
    return shapes


def _numbers(board: CutBoard, sheet: _Sheet, top: float, edge: float) -> list[str]:
    """Return a number over every mark, moved apart from its neighbors, with a line down to it."""
    named = [(str(number), at) for number, at in enumerate(board.marks, 1)]
    if board.center:
        named.append((CENTER_NAME, 0.0))
        named.sort(key=lambda one: (one[1], one[0] != CENTER_NAME))
    feet = [sheet.x(at) for _, at in named]
    shapes = []
    for (number, _), x, seat in zip(named, feet, _apart(feet), strict=True):
        shapes += [
            svg.text(number, (seat, top - 9), NUMBER, 'middle', 800),
            svg.path([(seat, top - 7), (x, top - 2), (x, edge)], svg.HAIR),
        ]
    return shapes


def _apart(feet: list[float]) -> list[float]:
    """Return where numbers stand, as near over their marks as they may."""
    seats = list(feet)
    for _ in range(60):
        for place, (a, b) in enumerate(pairwise(seats)):
            if b - a < APART:
                seats[place : place + 2] = [(a + b - APART) / 2, (a + b + APART) / 2]
    return seats


def _distance(sheet: _Sheet, ends: tuple[float, float], y: float, from_y: float, words: str) -> list[str]:
    """Return an arrow between two places with its words over it, and lines to it from the row next to the board."""
    a, b = (sheet.x(at) for at in ends)
    within = advance_em(words, svg.WIDTH, 700) * FIGURE < b - a - 4
    said = ((a + b) / 2, y - 3, 'middle') if within else (b + 4, y + 4, 'start')
    return [
        *(svg.line((x, y - 3), (x, from_y), svg.HAIR, '2 2') for x in (a, b)),
        svg.arrow((a, y), (b, y), both=True),
        svg.text(words, said[:2], FIGURE, said[2], 700),
    ]
