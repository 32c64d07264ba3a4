"""The cut list of a whole roof: every member and board by its mark, as it is told."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction
from typing import ClassVar

from msgspec import Struct

from tablegen.frame.asked import Asked
from tablegen.frame.buying import Buying
from tablegen.frame.frame import Frame
from tablegen.frame.framed import Framed
from tablegen.frame.gable_ends import Stud
from tablegen.frame.heights import Heights
from tablegen.frame.lumber import sold_as
from tablegen.frame.plan import BoardEnd, Level
from tablegen.frame.roof_keys import kind_of
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import Measure, length_figure
from tablegen.roof.cautions import Caution
from tablegen.roof.cheeks import OneCheek, TwoCheeks
from tablegen.roof.figures import Degrees, Length, PlumbLevel, TwoWays
from tablegen.roof.lengths import Held, held_of
from tablegen.roof.member import Backs, End, Hand, Kind, LowerCorner, Mark, Stop
from tablegen.roof.seat import Mouth
from tablegen.roof.taped import Taped, taped


class CutEnd(Struct, frozen=True):
    """One end of a member."""

    stop: Stop | None
    """What stops it, None at a tail."""
    off: TwoWays | None
    """What comes off for that, from its center line to its face."""
    cheek: OneCheek | TwoCheeks | None
    other_cheek: OneCheek | TwoCheeks | None
    """The right one of two that are not alike: the first is then the left one's."""
    long: Hand | None
    """The side where one cheek has its long point."""
    hollow: bool
    """Whether two cheeks have their long points on the sides."""
    bevel: Degrees | None
    """Of a foot that is cut level and lies on sheathing: the blade's tilt from square."""
    square: bool
    """Whether a tail ends at fascias that stand square to the roof."""
    lower: LowerCorner | None
    """Of a tail cut square to the top edge."""


class Place(Struct, frozen=True):
    """Where one of them stands."""

    slope: str
    center: Length
    """Along the plate from its left end, seen from outside."""
    near_edge: Length


class CutMember(Struct, frozen=True):
    """All members that are cut alike."""

    datum: ClassVar = ('cut_list.member', 'cut_list.place')
    mark: str
    hand: Hand | None
    kind: Kind
    number: int
    stock: str
    pitch: Pitch
    other_pitch: Pitch | None
    cut_from: Length
    """Of the shortest board that it can be cut from, rounded up."""
    overall: Length
    """Along the top edge, from its first point to its last."""
    cut: PlumbLevel
    held: Held
    head: CutEnd
    tail: CutEnd
    mouth: Mouth | None
    upper_mouth: Mouth | None
    """Over a beam."""
    backs: Backs | None
    """Of a backed hip."""
    marks: tuple[Mark, ...]
    tape: tuple[Taped, ...]
    places: tuple[Place, ...]
    """None of a hip or valley, which stands at a corner."""


class CutBoard(Struct, frozen=True):
    """A ridge or another level board."""

    datum: ClassVar = ('cut_list.board',)
    mark: str
    kind: Level
    number: int
    stock: str
    length: Length
    end_cheeks: int
    end_tilt: Degrees | None
    ends: tuple[BoardEnd, ...]


class Warned(Struct, frozen=True):
    """A caution, with the marks that call for it; none where the whole roof does."""

    caution: Caution
    of: tuple[str, ...]


class Measured(Struct, frozen=True):
    """What one thing should measure."""

    what: str
    length: Length


class ToCheck(Struct, frozen=True):
    """One thing to measure before more is cut."""

    check: str
    measures: tuple[Measured, ...]


class OfRoof(Struct, frozen=True):
    """What was asked for."""

    datum: ClassVar = ('cut_list.asked',)
    name: str | None
    kind: str
    pitch: Pitch
    other_pitch: Pitch | None
    width: Fraction | None
    length: Fraction | None
    overhang: Fraction
    spacing: Fraction
    nearest: Fraction


class CutList(Struct, frozen=True):
    """One whole roof as it is told."""

    roof: OfRoof
    members: tuple[CutMember, ...]
    boards: tuple[CutBoard, ...]
    studs: tuple[Stud, ...]
    heights: Heights
    checks: tuple[ToCheck, ...]
    caution: tuple[Warned, ...]
    buy: Buying | None


def cut_list(frame: Frame, buy: Buying | None) -> CutList:
    """Return a frame as it is told, with what to buy for it, where that was asked for."""
    asked = frame.asked
    return CutList(
        _roof(asked),
        tuple(_member(one, asked.measure) for one in frame.members),
        tuple(_boards(frame)),
        frame.studs,
        frame.heights,
        tuple(
            ToCheck(one.name, tuple(Measured(what, length) for what, length in one.figures.items()))
            for one in frame.checks
        ),
        tuple(Warned(one.caution, one.marks) for one in frame.concerns),
        buy,
    )


def _roof(asked: Asked) -> OfRoof:
    return OfRoof(
        asked.name or None,
        kind_of(asked),
        asked.pitch,
        asked.other_pitch,
        asked.width_in or None,
        asked.length_in or None,
        asked.overhang_in,
        asked.spacing_in,
        Fraction(1, asked.measure.per),
    )


def _member(framed: Framed, measure: Measure) -> CutMember:
    one = framed.member
    return CutMember(
        one.name,
        framed.hand,
        one.kind,
        framed.count,
        one.stock.name,
        one.pitch,
        one.other_pitch,
        one.stick,
        one.overall,
        one.cut,
        held_of(one.hold),
        _end(one.head),
        _end(one.tail),
        one.mouth,
        one.upper_mouth,
        one.backs,
        one.marks,
        taped(one, measure),
        tuple(
            Place(place.slope, place.center, place.near_edge)
            for place in framed.standing
            if place.center and place.near_edge
        ),
    )


def _end(end: End) -> CutEnd:
    off = TwoWays(end.off.level, end.off.along) if end.off else None
    stop = end.off.stop if end.off else None
    return CutEnd(stop, off, end.cut, end.other, end.long, end.hollow, end.bevel, end.square, end.lower)


def _boards(frame: Frame) -> Iterator[CutBoard]:
    """Return a board for each mark, with how many are alike."""
    numbers: Counter[str] = Counter()
    for board in frame.levels:
        numbers[board.mark] += board.number
    for board in {one.mark: one for one in frame.levels}.values():
        stock = sold_as(board.thickness_in, board.depth_in)
        length = length_figure(board.length_in, frame.asked.measure)
        number = numbers[board.mark]
        tilt, ends = board.end_tilt, board.ends
        yield CutBoard(board.mark, board.level, number, stock.name, length, board.end_cheeks, tilt, ends)
