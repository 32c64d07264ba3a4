"""Patterns: the lines of a member's ends and bird's mouth on the faces of its board, exact, to be drawn at full size."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction
from itertools import pairwise

from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import Measure, length_figure
from tablegen.roof.ends import Crossing, Point, crossings
from tablegen.roof.figures import Length
from tablegen.roof.member import Line, Member, inches_of, known

MORE_IN = Fraction(3, 4)
"""Of the board that a piece shows past its outermost line."""


class Face(StrEnum):
    """A face of a board, seen with its ridge end at the left."""

    RIGHT = 'right'
    TOP = 'top'
    LEFT = 'left'


ALL_FACES = tuple(Face)
"""As they lie when they are folded flat: down from the bottom edge of the right side to that of the left one."""


class Name(StrEnum):
    """What a line of a pattern is."""

    CENTER = 'center'
    """Of what stops the member at its upper end."""
    HEAD = 'head'
    PLATE = 'plate'
    HEEL = 'heel'
    SEAT = 'seat'
    TAIL = 'tail'
    """The tail, or the foot where something stops it."""


class Part(StrEnum):
    """What a piece shows."""

    HEAD = 'head'
    MOUTH = 'mouth'
    TAIL = 'tail'
    MOUTH_AND_TAIL = 'mouth_and_tail'


@dataclass(frozen=True, slots=True)
class Stroke:
    """A straight line on one face."""

    name: Name
    face: Face
    start: Point
    end: Point


@dataclass(frozen=True, slots=True)
class Waste:
    """Wood of one face that is sawn off: a convex outline, or a hollow one at a valley's tail."""

    face: Face
    outline: tuple[Point, ...]


@dataclass(frozen=True, slots=True)
class Piece:
    """A stretch of the board that is drawn as one."""

    part: Part
    faces: tuple[Face, ...]
    """One side where every cut is square across; all that fold round the board where one is not."""
    first: Exact
    """Along the edge."""
    last: Exact


@dataclass(frozen=True, slots=True)
class Pattern:
    """A member's lines at full size."""

    member: Member
    pieces: tuple[Piece, ...]
    """From the ridge end to the tail."""
    strokes: tuple[Stroke, ...]
    """Of the whole board."""
    wastes: tuple[Waste, ...]
    overhang: Length
    """LEVEL, of the commons."""
    head_to_plate: Length | None
    """ALONG the top edge, on its center: from the cut to the plate line; None where there is no plate."""
    plate_to_tail: Length | None


def pattern_of(member: Member) -> Pattern:
    """Return the pattern of a member.

    Notes:
        1. A foot that lies on a sloping roof, cut level with the blade tilted, is not drawn.
        2. One cheek for which no hand is wanted has its long point on the right side.
    """
    head, foot = crossings(member)
    board = _Board(member)
    notch = board.notch()
    pieces = tuple(_pieces(board, head, foot, notch))
    strokes = [
        *board.crossed(Name.CENTER, Crossing(exact(0), exact(0), exact(0), None)),
        *board.crossed(Name.HEAD, head),
        *(board.mouth(notch) if notch else ()),
        *(board.crossed(Name.TAIL, foot) if foot else ()),
    ]
    wastes = [
        *board.waste(head, pieces[0].first),
        *(Waste(face, notch) for face in (Face.LEFT, Face.RIGHT) if notch),
        *(board.waste(foot, pieces[-1].last) if foot else ()),
    ]
    measure = Measure(member.marks[0].at.per)
    plate = member.at(Line.PLATE) if member.kind.stands_on_plate else None
    return Pattern(
        member,
        pieces,
        tuple(strokes),
        tuple(wastes),
        length_figure(member.overhang_in, measure),
        None if plate is None else length_figure(plate - head.center, measure),
        None if plate is None or foot is None else length_figure(foot.center - plate, measure),
    )


@dataclass(frozen=True, slots=True)
class _Board:
    """A member's board, on which lines are laid."""

    member: Member

    @property
    def depth(self) -> Exact:
        return exact(self.member.stock.depth_in)

    @property
    def lean(self) -> Exact:
        """Return how far along the edge a plumb line goes from the top edge to the bottom one."""
        return self.depth * self.member.slope

    def down(self, at: Exact, across: Exact) -> Point:
        """Return the point of the plumb line that leaves the top edge there, so far below that edge."""
        return Point(at + across * self.member.slope, across)

    def plumb(self, name: Name, at: Exact, face: Face, across: Exact) -> Stroke:
        return Stroke(name, face, Point(at, exact(0)), self.down(at, across))

    def crossed(self, name: Name, cut: Crossing) -> Iterator[Stroke]:
        """Return a plumb cut on all faces."""
        yield self.plumb(name, cut.left, Face.LEFT, self.depth)
        yield self.plumb(name, cut.right, Face.RIGHT, self.depth)
        for start, end in pairwise(cut.over_top(self.member.thickness_in)):
            yield Stroke(name, Face.TOP, start, end)

    def notch(self) -> tuple[Point, Point, Point] | None:
        """Return the bird's mouth: where the seat leaves the bottom edge, the corner, where the heel leaves it."""
        member, mouth = self.member, self.member.mouth
        if mouth is None:
            return None
        heel_at = member.at(Line.HEEL if mouth.heel_back else Line.PLATE)
        corner = self.down(heel_at, inches_of(known(mouth.stock_left)))
        level = inches_of(known(mouth.seat)) * Angle(member.slope).cosine()
        return Point(corner.along - level, self.depth), corner, self.down(heel_at, self.depth)

    def mouth(self, notch: tuple[Point, Point, Point]) -> Iterator[Stroke]:
        """Return its lines and the plate line, down to the height of the plate's top."""
        member = self.member
        assert member.mouth
        over = inches_of(member.mouth.height_above_plate) * Angle(member.slope).cosine()
        toe, corner, heel = notch
        for face in (Face.LEFT, Face.RIGHT):
            yield self.plumb(Name.PLATE, member.at(Line.PLATE), face, over)
            yield Stroke(Name.SEAT, face, toe, corner)
            yield Stroke(Name.HEEL, face, corner, heel)

    def waste(self, cut: Crossing, end: Exact) -> Iterator[Waste]:
        """Return what a cut takes off at its end of the board, as far as the pattern shows it."""
        top, edge = exact(0), exact(self.member.thickness_in)
        for face, at in ((Face.LEFT, cut.left), (Face.RIGHT, cut.right)):
            yield Waste(
                face, (Point(end, top), Point(at, top), self.down(at, self.depth), Point(end, self.depth))
            )
        yield Waste(Face.TOP, (Point(end, top), *cut.over_top(self.member.thickness_in), Point(end, edge)))


def _pieces(
    board: _Board, head: Crossing, foot: Crossing | None, notch: tuple[Point, ...] | None
) -> Iterator[Piece]:
    """Return the stretches that are drawn: a tail whose cut is square is one with the bird's mouth."""
    zero = exact(0)
    yield _piece(Part.HEAD, not head.square, [zero, *head.marks()], [zero, *head.marks()], board.lean)
    bottom = [point.along for point in notch or ()]
    if notch:
        bottom.append(board.member.at(Line.PLATE))
    if foot and foot.square and notch:
        yield _piece(Part.MOUTH_AND_TAIL, False, [*bottom, foot.left], [foot.left], board.lean)
        return
    if notch:
        yield _piece(Part.MOUTH, False, bottom, bottom, zero)
    if foot:
        yield _piece(Part.TAIL, not foot.square, foot.marks(), foot.marks(), board.lean)


def _piece(part: Part, wrapped: bool, left: Iterable[Exact], right: Iterable[Exact], lean: Exact) -> Piece:
    """Return a piece over some places, those at its right on the top edge, and what a plumb line leans below it."""
    faces = ALL_FACES if wrapped else (Face.LEFT,)
    return Piece(part, faces, min(left) - MORE_IN, max(right) + lean + MORE_IN)
