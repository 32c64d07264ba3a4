"""Patterns: the lines of a member's ends and bird's mouth on the faces of its board, exact, to be drawn at full size."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from enum import StrEnum
from fractions import Fraction
from itertools import pairwise

from msgspec import Struct
from msgspec.structs import replace

from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import Measure, length_figure
from tablegen.roof.ends import Crossing, Point, crossings, squared, tangent_of
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


class Stroke(Struct, frozen=True):
    """A straight line on one face."""

    name: Name
    face: Face
    start: Point
    end: Point


class Waste(Struct, frozen=True):
    """Wood of one face that is sawn off: a convex outline, or a hollow one at a valley's tail."""

    face: Face
    outline: tuple[Point, ...]


class Piece(Struct, frozen=True):
    """A stretch of the board that is drawn as one."""

    part: Part
    faces: tuple[Face, ...]
    """One side where every cut is square across; all that fold round the board where one is not."""
    first: Exact
    """Along the edge."""
    last: Exact
    strokes: tuple[Stroke, ...]
    wastes: tuple[Waste, ...]


class Pattern(Struct, frozen=True):
    """A member's lines at full size."""

    member: Member
    pieces: tuple[Piece, ...]
    """From the ridge end to the tail."""
    overhang: Length
    """LEVEL, of the commons."""
    head_to_plate: Length | None
    """ALONG the top edge, on its center: from the cut to the plate line; None where there is no bird's mouth."""
    plate_to_tail: Length | None
    head_to_foot: Length
    """The same from the upper cut to the lower one."""
    backing: Mapping[Face, Length]
    """Of a backed hip: how far down each side its bevel comes, SQUARE to the top edge."""


MOUTHS = {Name.BEAM: Line.UPPER_PLATE, Name.PLATE: Line.PLATE}
"""What a bird's mouth stands on, and the mark of its outer face."""
Notch = tuple[Point, Point, Point]


def pattern_of(member: Member) -> Pattern:
    """Return the pattern of a member.

    Notes:
        1. One cheek for which no hand is wanted has its long point on the right side.
        2. Of a hip that is backed all is laid on the board before that.

    Source: a bevel planed from the center line of the top comes out so far down a side as half of the thickness rises by it.
    """
    head, foot = crossings(member)
    board = _Board(member)
    measure = Measure(member.marks[0].at.per)
    plate = member.at(Line.PLATE) if member.mouth else None
    backs = {Face.LEFT: member.backs.left, Face.RIGHT: member.backs.right} if member.backs else {}
    return Pattern(
        member,
        tuple(board.pieces(head, foot)),
        length_figure(member.overhang_in, measure),
        None if plate is None else length_figure(plate - head.center, measure),
        None if plate is None else length_figure(foot.center - plate, measure),
        length_figure(foot.center - head.center, measure),
        {
            face: length_figure(tangent_of(bevel) * member.thickness_in / 2, measure)
            for face, bevel in backs.items()
        },
    )


class _Board(Struct, frozen=True):
    """A member's board, on which lines are laid."""

    member: Member

    @property
    def depth(self) -> Exact:
        return exact(self.member.stock.depth_in)

    def down(self, at: Exact, across: Exact, lean: Exact | None = None) -> Point:
        """Return the point of a line that leaves the top edge there, so far below that edge; of a plumb one where none is told."""
        return Point(at + across * (self.member.slope if lean is None else lean), across)

    def crossed(self, name: Name, cut: Crossing) -> Iterator[Stroke]:
        """Return a cut on all faces."""
        for face, at, lean in zip((Face.LEFT, Face.RIGHT), (cut.left, cut.right), cut.leans, strict=True):
            yield Stroke(name, face, Point(at, exact(0)), self.down(at, self.depth, lean))
        for start, end in pairwise(cut.over_top(self.member.thickness_in)):
            yield Stroke(name, Face.TOP, start, end)

    def center(self, line: Line, cut: Crossing) -> list[Stroke]:
        """Return the center line of what stops an end, if there is one and it is not the cut itself: parallel to one in one plane."""
        names = {Line.CENTER: Name.CENTER, Line.FOOT: Name.FOOT}
        if all(mark.line is not line for mark in self.member.marks):
            return []
        at = self.member.at(line)
        off = cut.center - at
        if not cut.between and not off.terms:
            return []
        center = squared(at, self.member.slope)
        if not cut.between:
            center = replace(center, left=cut.left - off, right=cut.right - off)
        return list(self.crossed(names[line], center))

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

    def mouth(self, over: Name) -> Iterator[Stroke]:
        """Return its lines and the plumb one over the plate, down to the height of the plate's top; none where there is no mouth."""
        member, notch = self.member, self.notch(over)
        if notch is None or member.mouth is None:
            return
        height = inches_of(member.mouth.height_above_plate) * Angle(member.slope).cosine()
        toe, corner, heel = notch
        for face in (Face.LEFT, Face.RIGHT):
            at = member.at(MOUTHS[over])
            yield Stroke(over, face, Point(at, exact(0)), self.down(at, height))
            yield Stroke(Name.SEAT, face, toe, corner)
            yield Stroke(Name.HEEL, face, corner, heel)

    def waste(self, cut: Crossing, end: Exact) -> Iterator[Waste]:
        """Return what a cut takes off at its end of the board, as far as the pattern shows it."""
        top, edge = exact(0), exact(self.member.thickness_in)
        for face, at, lean in zip((Face.LEFT, Face.RIGHT), (cut.left, cut.right), cut.leans, strict=True):
            foot = self.down(at, self.depth, lean)
            yield Waste(face, (Point(end, top), Point(at, top), foot, Point(end, self.depth)))
        yield Waste(Face.TOP, (Point(end, top), *cut.over_top(self.member.thickness_in), Point(end, edge)))

    def pieces(self, head: Crossing, foot: Crossing) -> Iterator[Piece]:
        """Return the stretches that are drawn, from the ridge end on: a tail whose cut is square is one with the bird's mouth."""
        upper = [*self.center(Line.CENTER, head), *self.crossed(Name.HEAD, head), *self.mouth(Name.BEAM)]
        yield self.piece(Part.HEAD, upper, Name.BEAM, head=head)
        mouth, lower = list(self.mouth(Name.PLATE)), list(self.crossed(Name.TAIL, foot))
        if not self.member.tail.bevel:  # what lies on another roof is stopped by no center line
            lower += self.center(Line.FOOT, foot)
        if mouth and foot.square:
            yield self.piece(Part.MOUTH_AND_TAIL, [*mouth, *lower], Name.PLATE, foot=foot)
            return
        if mouth:
            yield self.piece(Part.MOUTH, mouth, Name.PLATE)
        yield self.piece(Part.TAIL, lower, foot=foot)

    def piece(
        self,
        part: Part,
        strokes: Sequence[Stroke],
        over: Name | None = None,
        head: Crossing | None = None,
        foot: Crossing | None = None,
    ) -> Piece:
        """Return a stretch over some lines, with the waste of the bird's mouth and of the ends in it."""
        places = [point.along for stroke in strokes for point in (stroke.start, stroke.end)]
        first, last = min(places) - MORE_IN, max(places) + MORE_IN
        notch = self.notch(over) if over else None
        wastes = [
            *(self.waste(head, first) if head else ()),
            *(Waste(face, notch) for face in (Face.LEFT, Face.RIGHT) if notch),
            *(self.waste(foot, last) if foot else ()),
        ]
        wrapped = any(cut and not cut.square for cut in (head, foot))
        faces = ALL_FACES if wrapped else (Face.LEFT,)
        return Piece(part, faces, first, last, tuple(strokes), tuple(wastes))
