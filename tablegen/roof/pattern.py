"""Patterns: the lines of a member's ends and bird's mouth on the faces of its board, exact, to be drawn at full size."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction
from itertools import pairwise

from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import Measure, length_figure
from tablegen.roof.ends import Crossing, Point, crossings, squared
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
    FOOT = 'foot'
    """The center line of what stops it at its lower end."""
    HEAD = 'head'
    PLATE = 'plate'
    BEAM = 'beam'
    """The near face of a beam that a shed's rafter runs over, where its second bird's mouth stands."""
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


MOUTHS = {Name.BEAM: Line.UPPER_PLATE, Name.PLATE: Line.PLATE}
"""What a bird's mouth stands on, and the mark of its outer face."""
Notch = tuple[Point, Point, Point]


def pattern_of(member: Member) -> Pattern:
    """Return the pattern of a member.

    Notes:
        1. A foot that lies on a sloping roof, cut level with the blade tilted, is not drawn.
        2. One cheek for which no hand is wanted has its long point on the right side.
    """
    head, foot = crossings(member)
    board = _Board(member)
    mouths = {name: notch for name in MOUTHS if (notch := board.notch(name))}
    pieces = tuple(_pieces(board, head, foot, mouths))
    strokes = [
        *(
            line
            for name, at in board.centers(head, foot).items()
            for line in board.crossed(name, squared(at))
        ),
        *board.crossed(Name.HEAD, head),
        *(line for name, notch in mouths.items() for line in board.mouth(name, notch)),
        *(board.crossed(Name.TAIL, foot) if foot else ()),
    ]
    wastes = [
        *board.waste(head, pieces[0].first),
        *(Waste(face, notch) for notch in mouths.values() for face in (Face.LEFT, Face.RIGHT)),
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

    def centers(self, head: Crossing, foot: Crossing | None) -> dict[Name, Exact]:
        """Return where the center lines of what stops it lie, but for one that is the cut itself."""
        found = {Name.CENTER: exact(0)} if not head.square or head.center != 0 else {}
        if foot and any(mark.line is Line.FOOT for mark in self.member.marks):
            at = self.member.at(Line.FOOT)
            found |= {Name.FOOT: at} if not foot.square or foot.center != at else {}
        return found

    def notch(self, over: Name) -> Notch | None:
        """Return a bird's mouth over what it stands on: where the seat leaves the bottom edge, the corner, the heel's foot."""
        member, mouth = self.member, self.member.mouth
        if mouth is None or not self.stands_on(over):
            return None
        heel_at = member.at(Line.HEEL) if mouth.heel_back else member.at(MOUTHS[over])
        corner = self.down(heel_at, inches_of(known(mouth.stock_left)))
        level = inches_of(known(mouth.seat)) * Angle(member.slope).cosine()
        return Point(corner.along - level, self.depth), corner, self.down(heel_at, self.depth)

    def stands_on(self, over: Name) -> bool:
        return any(mark.line is MOUTHS[over] for mark in self.member.marks)

    def mouth(self, over: Name, notch: Notch) -> Iterator[Stroke]:
        """Return its lines and the plumb one over the plate, down to the height of the plate's top."""
        member = self.member
        assert member.mouth
        height = inches_of(member.mouth.height_above_plate) * Angle(member.slope).cosine()
        toe, corner, heel = notch
        for face in (Face.LEFT, Face.RIGHT):
            yield self.plumb(over, member.at(MOUTHS[over]), face, height)
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
    board: _Board, head: Crossing, foot: Crossing | None, mouths: Mapping[Name, Notch]
) -> Iterator[Piece]:
    """Return the stretches that are drawn: a tail whose cut is square is one with the bird's mouth."""
    zero, lean = exact(0), board.lean
    tops = [zero, *head.marks()]
    beam = [point.along - lean for point in mouths.get(Name.BEAM, ())]
    yield _piece(Part.HEAD, not head.square, [*tops, *beam], [*tops, *beam], lean)
    bottom = [point.along for point in mouths.get(Name.PLATE, ())]
    if bottom:
        bottom.append(board.member.at(Line.PLATE))
    if foot and foot.square and bottom:
        yield _piece(Part.MOUTH_AND_TAIL, False, [*bottom, foot.left], [foot.left], lean)
        return
    if bottom:
        yield _piece(Part.MOUTH, False, bottom, bottom, zero)
    if foot:
        below = [*foot.marks(), *(at for name, at in board.centers(head, foot).items() if name is Name.FOOT)]
        yield _piece(Part.TAIL, not foot.square, below, below, lean)


def _piece(part: Part, wrapped: bool, left: Iterable[Exact], right: Iterable[Exact], lean: Exact) -> Piece:
    """Return a piece over some places, those at its right on the top edge, and what a plumb line leans below it."""
    faces = ALL_FACES if wrapped else (Face.LEFT,)
    return Piece(part, faces, min(left) - MORE_IN, max(right) + lean + MORE_IN)
