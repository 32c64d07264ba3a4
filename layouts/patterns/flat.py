"""A piece of a board folded flat: its faces one under another, in mm from the upper left corner of what is drawn.

Folded round a board whose left side looks at you, ridge at the left, the middle of three faces lies on the top edge.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import hypot

from msgspec import Struct

from layouts.drawings.svg import Point
from layouts.patterns.boxes import Box
from tablegen.numbers.text import MM_PER_INCH
from tablegen.roof import ends
from tablegen.roof.ends import crossings
from tablegen.roof.member import inches_of
from tablegen.roof.pattern import Face, Name, Part, Pattern, Piece

AIR_MM = 6.0
"""Of paper over the board and under it."""
OFF_FOLD_MM = 14.0
"""Between a fold and the nearest joint, where there is a choice."""
MM = float(MM_PER_INCH)


class Line(Struct, frozen=True):
    """A line of a flat piece."""

    name: Name | str
    """Where it is one of the board's own, an edge, a fold, the middle of its top or the edge of a hip's backing: its word."""
    face: Face
    start: Point
    end: Point

    @property
    def long(self) -> float:
        return hypot(self.end[0] - self.start[0], self.end[1] - self.start[1])


TOP_EDGE, BOTTOM_EDGE, FOLD = 'top_edge', 'bottom_edge', 'fold'
MIDDLE, BACKING = 'middle', 'backing'


class Flat(Struct, frozen=True):
    """A piece folded flat, mm."""

    piece: Piece
    lines: tuple[Line, ...]
    wastes: tuple[tuple[Point, ...], ...]
    bands: dict[Face, tuple[float, float]]
    """Where each face begins and ends, from above."""
    wide: float
    high: float

    @property
    def top_whole(self) -> tuple[float, float] | None:
        """Return between which heights no joint should lie: over the top edge and beside it."""
        if Face.TOP not in self.bands:
            return None
        upper, lower = self.bands[Face.TOP]
        beside = [
            abs(line.start[1] - edge)
            for line in self.lines
            if line.name == BACKING
            for edge in (upper, lower)
        ]
        off = OFF_FOLD_MM + min(beside, default=0.0)
        return upper - off, lower + off

    def drawn_in(self, box: Box) -> bool:
        """Return whether a box has any line but the board's own edges."""
        return any(isinstance(line.name, Name) and box.clipped(line.start, line.end) for line in self.lines)


def folded_flat(whole: Pattern, piece: Piece) -> Flat:
    """Return a piece of a pattern, what is outside of it cut off."""
    member = whole.member
    deep, thick = (float(size) * MM for size in (member.stock.depth_in, member.thickness_in))
    wide = float(piece.last - piece.first) * MM
    bands, y = {}, AIR_MM
    for face in piece.faces:
        high = thick if face is Face.TOP else deep
        bands[face] = (y, y + high)
        y += high
    field = Box(0.0, 0.0, wide, y + AIR_MM)

    def at(face: Face, point: ends.Point) -> Point:
        down = float(point.across) * MM
        upper, lower = bands[face]
        return float(point.along - piece.first) * MM, upper + down if face is Face.LEFT else lower - down

    lines = [
        Line(stroke.name, stroke.face, *ends)
        for stroke in piece.strokes
        if stroke.face in bands
        and (ends := field.clipped(at(stroke.face, stroke.start), at(stroke.face, stroke.end)))
    ]
    wastes = [
        tuple(at(waste.face, point) for point in waste.outline)
        for waste in piece.wastes
        if waste.face in bands
    ]
    head, foot = crossings(member)
    cut = float((head if piece.part is Part.HEAD else foot).center - piece.first) * MM
    middle = (cut, wide) if piece.part is Part.HEAD else (0.0, cut)
    backing = {face: float(inches_of(down)) * MM for face, down in whole.backing.items()}
    return Flat(
        piece, (*_edges(bands, wide, middle, backing), *lines), tuple(wastes), bands, wide, y + AIR_MM
    )


def _edges(
    bands: Mapping[Face, tuple[float, float]],
    wide: float,
    middle: tuple[float, float],
    backing: Mapping[Face, float],
) -> Iterator[Line]:
    """Return the board's own edges; a strip is folded at two of them, and has the middle of the top up to its cut between."""

    def along(name: str, face: Face, y: float, ends: tuple[float, float] = (0.0, wide)) -> Line:
        return Line(name, face, (ends[0], y), (ends[1], y))

    for face, (upper, lower) in bands.items():
        if face is Face.TOP:
            yield along(MIDDLE, face, (upper + lower) / 2, middle)
            continue
        top, bottom = (upper, lower) if face is Face.LEFT else (lower, upper)
        yield along(FOLD if Face.TOP in bands else TOP_EDGE, face, top)
        yield along(BOTTOM_EDGE, face, bottom)
        if face in backing:
            yield along(BACKING, face, top + backing[face] * (1 if face is Face.LEFT else -1))
