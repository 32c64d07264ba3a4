"""Boards as solids, marked and sawn as a framer does it: from one edge, by what was read.

A board lies along x, its left side towards y, its top edge at z = 0; x grows uphill. The mark x = 0 on the center
line of the top edge is the plate line's. Angles are radians, lengths inches, floats: nothing here is printed.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from functools import cache, cached_property
from math import cos, pi, sin

import numpy as np
from manifold3d import Manifold

LEFT, RIGHT = 1, -1
REACH = 300
NEAR = 1e-3
"""A corner so near a face is one of its corners, in."""
ACROSS = np.array([0.0, 1.0, 0.0])


class Gone(Exception):
    """A cut that leaves nothing of a face."""


@dataclass(frozen=True)
class Flat:
    """A plane, its normal out of the wood."""

    normal: np.ndarray
    point: np.ndarray

    def height(self, points) -> np.ndarray:
        """Return how far points stand out of the wood."""
        return (np.asarray(points, float) - self.point) @ self.normal

    def moved(self, turn, shift) -> Flat:
        return Flat(turn @ self.normal, turn @ self.point + shift)

    def crosses(self, line_point, direction) -> np.ndarray:
        """Return where a line meets it."""
        point, direction = np.asarray(line_point, float), np.asarray(direction, float)
        return point - self.height(point) / (self.normal @ direction) * direction


def flat(normal, point) -> Flat:
    normal = np.asarray(normal, float)
    return Flat(normal / np.linalg.norm(normal), np.asarray(point, float))


@dataclass(frozen=True)
class Member:
    """A solid where it stands, its faces and marks, and how far its own figures disagree with one another."""

    solid: Manifold
    faces: dict[str, Flat] = field(default_factory=dict)
    points: dict[str, np.ndarray] = field(default_factory=dict)
    closings: dict[str, float] = field(default_factory=dict)

    @cached_property
    def _corners(self) -> np.ndarray:
        return np.asarray(self.solid.to_mesh64().vert_properties)[:, :3]

    def corners(self, *faces: str) -> np.ndarray:
        """Return the solid's corners on all of some faces."""
        on = [abs(self.faces[face].height(self._corners)) < NEAR for face in faces]
        found = self._corners[np.all(on, axis=0)]
        if not len(found):
            raise Gone(f'nothing is left of {faces}')
        return found

    def placed(self, turn, shift) -> Member:
        return replace(
            self,
            solid=self.solid.transform(np.column_stack([turn, shift])),
            faces={name: face.moved(turn, shift) for name, face in self.faces.items()},
            points={name: turn @ point + shift for name, point in self.points.items()},
        )

    def mirrored(self, axis: int, at: float) -> Member:
        """Return its mirror image in the plane where x (axis 0) or y (axis 1) is at."""
        turn, shift = np.eye(3), np.zeros(3)
        turn[axis, axis], shift[axis] = -1.0, 2 * at
        return self.placed(turn, shift)


@cache
def box(low: tuple, high: tuple) -> Member:
    """Return a box between two corners, its faces named by axis and end: 'x-', 'x+' and so on."""
    solid = Manifold.cube(tuple(h - g for g, h in zip(low, high, strict=True))).translate(tuple(low))
    faces = {}
    for axis, name in enumerate('xyz'):
        normal = np.eye(3)[axis]
        faces |= {f'{name}-': flat(-normal, low), f'{name}+': flat(normal, high)}
    return Member(solid, faces)


@dataclass(frozen=True)
class Lines:
    """Plumb and level as they are marked on a board's side: angles from the line square across it."""

    plumb: float
    level: float

    def up(self) -> np.ndarray:
        return np.array([sin(self.plumb), 0.0, cos(self.plumb)])

    def beyond(self) -> np.ndarray:
        """Return the direction square to the plumb line, uphill."""
        return np.array([cos(self.plumb), 0.0, -sin(self.plumb)])

    def uphill(self) -> np.ndarray:
        """Return the level direction, uphill."""
        return np.array([sin(self.level), 0.0, -cos(self.level)])

    def over(self) -> np.ndarray:
        """Return the direction square to the level line, up."""
        return np.array([cos(self.level), 0.0, sin(self.level)])


def held(body: float, tongue: float) -> Lines:
    """Return the lines of a square held at the edge: its body marks level, its tongue plumb."""
    slope = np.arctan2(tongue, body)
    return Lines(slope, pi / 2 - slope)


@dataclass(frozen=True)
class Off:
    """A length as it is taken from a mark: level, square to the plumb line, or along the top edge."""

    length: float
    level: bool

    def along(self, lines: Lines) -> float:
        return self.length / cos(lines.plumb) if self.level else self.length


@dataclass(frozen=True)
class Cheek:
    """How a cheek is sawn: to lines on side and top, or along the side's line with the blade tilted."""

    plumb: float
    """Of its line on the side, from square across."""
    top: float | None = None
    """Of its line on the top edge, from square across."""
    blade: float | None = None
    back: Off | None = None
    """With the blade: from the mark on the center line to the plumb line of a side."""


@dataclass(frozen=True)
class Board(Member):
    """A board on the trestles."""

    lines: Lines = field(kw_only=True)
    thick: float = field(kw_only=True)
    depth: float = field(kw_only=True)

    def sawn(self, name: str, cut: Flat) -> Board:
        """Return the board without what lies out of a plane."""
        solid = self.solid.trim_by_plane(tuple(-cut.normal), -float(cut.normal @ cut.point))
        return replace(self, solid=solid, faces={**self.faces, name: cut})

    def hollowed(self, cuts: dict[str, Flat]) -> Board:
        """Return the board without what lies out of all of some planes."""
        gone = self.solid
        for cut in cuts.values():
            gone = gone.trim_by_plane(tuple(cut.normal), float(cut.normal @ cut.point))
        return replace(self, solid=self.solid - gone, faces={**self.faces, **cuts})

    def marked(self, **points) -> Board:
        return replace(self, points={**self.points, **points})

    def told(self, **closings) -> Board:
        """Return the board with what its figures, measured on it as it is sawn, differ by from those printed."""
        named = {name.replace('_', ' '): value for name, value in closings.items()}
        return replace(self, closings={**self.closings, **named})

    # Plumb cuts and cheeks: at x on the center line of the top edge, the upper end's or the lower's ---------------

    def plumb_cut(self, name: str, x: float, upper: bool = True) -> Board:
        way = 1 if upper else -1
        return self.sawn(name, flat(way * self.lines.beyond(), (x, 0, 0)))

    def cheek(self, x: float, longer: int, how: Cheek, start: int = 0, upper: bool = True, top=None) -> Flat:
        """Return the plane of a cheek through a mark on the center line.

        Given:
            longer  the side that reaches further uphill
            start   with the blade: the side whose plumb line the saw follows, from there if nothing is to be set back
            top     normal of the face that the line on top is drawn on; the square top where there is none
        """
        way = 1 if upper else -1
        if how.top is None:
            begin = x + start * longer * how.back.along(self.lines) if how.back else x
            beyond = np.array([cos(how.plumb), 0.0, -sin(how.plumb)])
            normal = cos(how.blade) * beyond - longer * sin(how.blade) * ACROSS
            return flat(way * normal, (begin, start * self.thick / 2, 0))
        face = np.array([0.0, 0.0, 1.0]) if top is None else top
        square_across = np.cross(face, (1.0, 0.0, 0.0))
        line = cos(how.top) * square_across + longer * sin(how.top) * np.array([1.0, 0.0, 0.0])
        normal = np.cross(line, (sin(how.plumb), 0.0, cos(how.plumb)))
        return flat(way * np.sign(normal[0]) * normal, (x, 0, 0))

    def starts(self, cut: str, side: int) -> float:
        """Return where a cheek's plumb line on a side leaves the line of the square top."""
        return self.faces[cut].crosses((0, side * self.thick / 2, 0), (1, 0, 0))[0]

    def level_of(self, along: float) -> float:
        """Return a length along the top edge, level: square to the plumb line."""
        return along * cos(self.lines.plumb)

    # Bird's mouths ------------------------------------------------------------------------------------------------

    def seated(self, height: float, out: float = 0.0) -> Board:
        """Cut the bird's mouth by its height above plate, down the plumb line of the mark.

        Given:
            out  the heel's plumb line so far out of that line, level
        """
        up = self.lines.up()
        return self._mouth(-height * up, np.array([-out / cos(self.lines.plumb), 0, 0]), None)

    def notched(self, heel: float, seat: float, out: float = 0.0) -> Board:
        """Cut the bird's mouth from the underside: the heel up its plumb line, from there the seat, level, uphill."""
        up, line = self.lines.up(), np.array([-out / cos(self.lines.plumb), 0, 0])
        return self._mouth(line - self.depth / up[2] * up + heel * up, line, seat)

    def _mouth(self, on_seat, on_heel, seat) -> Board:
        """Given: a point of the seat, a point of the heel's plumb line, how long the seat is sawn."""
        over, beyond, uphill = self.lines.over(), self.lines.beyond(), self.lines.uphill()
        below, heel = flat(-over, on_seat), flat(beyond, on_heel)
        gone = self.solid.trim_by_plane(tuple(-over), -float(over @ on_seat))
        gone = gone.trim_by_plane(tuple(beyond), float(beyond @ on_heel))
        corner = below.crosses(on_heel, self.lines.up())
        if seat is not None:
            end = corner + seat * uphill
            gone = gone.trim_by_plane(tuple(-uphill), -float(uphill @ end))
        stand = below.crosses((0, 0, 0), self.lines.up())
        board = replace(self, solid=self.solid - gone, faces={**self.faces, 'seat': below, 'heel': heel})
        return board.marked(stand=stand, corner=corner)

    def mouth(self) -> dict[str, float]:
        """Return the bird's mouth as it is sawn, measured on the board."""
        corner, up = self.points['corner'], self.lines.up()
        ends = (self.corners('seat') - corner) @ self.lines.uphill()
        return {
            'height': -self.points['stand'][2] / up[2],
            'heel': (self.depth + corner[2]) / up[2],
            'seat': max(ends),
            'notch': self.depth + corner[2],
            'left': -corner[2],
        }

    # Standing ------------------------------------------------------------------------------------------------------

    def stood(self, over, direction, by: str = 'seat', mark: str = 'stand') -> Member:
        """Return the board where it stands.

        Given:
            over       where its mark goes
            direction  level and uphill
            by         'seat': its level lines lie level; 'plumb': its plumb lines stand plumb
        """
        uphill, up = (
            (self.lines.uphill(), self.lines.over())
            if by == 'seat'
            else (self.lines.beyond(), self.lines.up())
        )
        forward = np.array([*direction, 0.0]) / np.hypot(*direction)
        world = np.column_stack([forward, np.cross((0, 0, 1), forward), (0, 0, 1)])
        turn = world @ np.column_stack([uphill, ACROSS, up]).T
        shift = np.asarray(over, float) - turn @ self.points[mark]
        moved = self.placed(turn, shift)
        return Member(moved.solid, moved.faces, moved.points, moved.closings)


def stock(lines: Lines, thick: float, depth: float) -> Board:
    """Return an uncut board that runs far past its mark both ways."""
    solid = Manifold.cube((2 * REACH, thick, depth)).translate((-REACH, -thick / 2, -depth))
    faces = {
        'top': flat((0, 0, 1), (0, 0, 0)),
        'under': flat((0, 0, -1), (0, 0, -depth)),
        'left': flat((0, 1, 0), (0, thick / 2, 0)),
        'right': flat((0, -1, 0), (0, -thick / 2, 0)),
    }
    return Board(solid, faces, lines=lines, thick=thick, depth=depth)


def from_square(figure: float) -> float:
    """Return the angle, from square across, of the line along the 12 of a square held at 12 and a figure."""
    return np.arctan2(12, figure)


def bevel_by_depth(down: float, thick: float) -> float:
    """Return the bevel of a top planed from its center line to so far down its side, square to the edge."""
    return np.arctan2(down, thick / 2)
