"""The ink of one page of a piece: its lines, joints with register marks, names and crosses; mm of the paper."""

from __future__ import annotations

from msgspec import Struct

from layouts.drawings import svg
from layouts.drawings.svg import Point
from layouts.patterns.boxes import Box, Turned
from layouts.patterns.flat import BACKING, FOLD, MIDDLE, Flat
from layouts.patterns.labels import Labels
from layouts.patterns.tiles import LAP_MM, Joint, Tiling
from layouts.words import patterns as words
from layouts.words.say import _
from tablegen.roof.pattern import Face, Name, Pattern

CUT, DATUM, EDGE, JOINT = 0.45, 0.2, 0.3, 0.15
"""Widths of ink, mm: what is sawn, what is measured from, the board's own edges, where pages meet."""
DATUMS = (Name.CENTER, Name.FOOT, Name.PLATE, Name.BEAM, MIDDLE, BACKING)
"""Lines that nothing is sawn along."""
DASHES = {
    Name.CENTER: '6 1.5 1 1.5',
    Name.FOOT: '6 1.5 1 1.5',
    Name.PLATE: '4 1.5',
    Name.BEAM: '4 1.5',
    FOLD: '9 2',
    BACKING: '2.5 1',
    MIDDLE: '10 1.5 1.5 1.5',
}
JOINT_DASH = '2 1.4'
FACE_IN, EDGE_OFF = 17.0, 2.0
"""From a page's side to the middle of a face's name, at least; and from a face's edge."""
MARK_ARM, MARK_ROUND = 3.2, 1.9
"""Half of a register mark's cross, and the radius of its ring."""


class Tile(Struct, frozen=True):
    """One page of a piece, and where its ink lies on the paper."""

    whole: Pattern
    flat: Flat
    tiling: Tiling
    page: int
    """Within the piece, from 0."""
    first: int
    """Number, in the whole pattern, of the piece's first page."""
    joints_before: int
    """Of the pieces before: no letter stands for two marks of a pattern."""
    corner: Point
    """Upper left one of its ink, mm from that of the paper."""

    @property
    def shown(self) -> Box:
        """Return what of the piece is on it."""
        return self.tiling.box(self.page)

    def place(self, point: Point) -> Point:
        """Return a point of the piece as one of the paper."""
        return self.corner[0] + point[0] - self.shown.left, self.corner[1] + point[1] - self.shown.top

    @property
    def room(self) -> Box:
        left, top, right, foot = self.shown
        return Box(*self.corner, self.corner[0] + right - left, self.corner[1] + foot - top)


def letter(place: int) -> str:
    """Return the letter of a register mark."""
    return f'{chr(ord("A") + place % 26)}{place // 26 or ""}'


def page_ink(tile: Tile) -> list[str]:
    """Return the shapes of a page."""
    shapes, drawn = [], []
    for line in sorted(tile.flat.lines, key=lambda one: width_of(one.name)):
        shown = tile.shown.clipped(line.start, line.end)
        if shown:
            a, b = map(tile.place, shown)
            drawn.append((line, a, b))
            shapes.append(svg.line(a, b, width_of(line.name), DASHES.get(line.name, '')))
    joints = [(n, one) for n, one in enumerate(tile.tiling.joints()) if tile.page in one.pages]
    seams = [(tile.place(one.start), tile.place(one.end)) for _n, one in joints]
    labels = Labels(tile.room, [(a, b) for _line, a, b in drawn] + seams)
    for number, joint in joints:
        shapes += _joint(tile, number, joint, labels)
    for line, a, b in sorted(drawn, key=lambda one: one[0].long):
        labels.along(words.line_names(tile.whole, line.name, line.face), a, b)
    for outline in tile.flat.wastes:
        labels.crossed(_(words.WASTE), tuple(map(tile.place, outline)))
    if Face.TOP in tile.flat.bands:
        _faces(tile, labels)
    return shapes + labels.shapes


def width_of(name: str) -> float:
    """Return how wide a line is drawn."""
    if name in DATUMS:
        return DATUM
    return CUT if name in tuple(Name) else EDGE


def _faces(tile: Tile, labels: Labels) -> None:
    """Say of every face that a page shows which it is."""
    room = tile.room
    for face, (upper, lower) in tile.flat.bands.items():
        top, foot = (tile.place((0.0, y))[1] for y in (upper, lower))
        inner = Box(
            room.left + FACE_IN, max(top, room.top) + EDGE_OFF, room.right - FACE_IN, min(foot, room.foot) - EDGE_OFF
        )  # fmt: skip
        labels.within(_(words.FACES[face]), inner)


def _joint(tile: Tile, number: int, joint: Joint, labels: Labels) -> list[str]:
    """Return a joint's line, its register marks and what is done there; they keep other words away."""
    a, b = map(tile.place, (joint.start, joint.end))
    shapes = [svg.line(a, b, JOINT, JOINT_DASH)]
    for place, (x, y) in enumerate(map(tile.place, joint.marks(tile.flat.drawn_in))):
        shapes += [
            svg.line((x - MARK_ARM, y), (x + MARK_ARM, y), DATUM),
            svg.line((x, y - MARK_ARM), (x, y + MARK_ARM), DATUM),
            f'<circle cx="{x:.2f}" cy="{y:.2f}" r="{MARK_ROUND}" fill="none" stroke="#000" stroke-width="{DATUM}"/>',
            svg.text(
                letter(2 * (tile.joints_before + number) + place),
                (x + 0.6, y - MARK_ROUND - 0.6),
                2.6,
                weight=800,
            ),
        ]
        labels.take(Turned((x, y), 2 * MARK_ARM, 2 * MARK_ARM + 2))
    lower = tile.page == joint.pages[0]
    other = tile.first + joint.pages[1 if lower else 0]
    said = [_(one).format(page=other) for one in (words.LAY_ON if lower else words.LIES_HERE, words.TO_PAGE)]
    labels.beside(said, a, b, (1 if lower else -1) * LAP_MM / 4)
    return shapes
