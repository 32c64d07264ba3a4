"""Boards where they stand, and what is given and fixed: plates, fascias, walls, beams, ridges and studs as blocks."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from functools import cached_property

import numpy as np
from boards import Board, Flat, Member, box, flat
from frame_slopes import Point, Slope
from manifold3d import Manifold

BIG = 500.0


@dataclass
class Placed:
    """A sawn board where it stands."""

    board: Board
    turn: np.ndarray
    shift: np.ndarray
    closings: dict[str, float] = field(default_factory=dict)

    @cached_property
    def faces(self) -> dict[str, Flat]:
        return {name: face.moved(self.turn, self.shift) for name, face in self.board.faces.items()}

    @cached_property
    def points(self) -> dict[str, np.ndarray]:
        return {name: self.turn @ at + self.shift for name, at in self.board.points.items()}

    @cached_property
    def solid(self) -> Manifold:
        return self.board.solid.transform(np.column_stack([self.turn, self.shift]))

    def corners(self, *faces: str) -> np.ndarray:
        known = self.board.__dict__.setdefault('known', {})
        if faces not in known:
            known[faces] = self.board.corners(*faces)
        return known[faces] @ self.turn.T + self.shift


def stood(board: Board, over: np.ndarray, way: Point, by: str, mark: str) -> Placed:
    """Return a board with a mark over a point, running up a way in plan, its level ('seat') or its plumb lines true."""
    lines = board.lines
    uphill, up = (lines.uphill(), lines.over()) if by == 'seat' else (lines.beyond(), lines.up())
    x, y = way
    world = np.array([(x, -y, 0.0), (y, x, 0.0), (0.0, 0.0, 1.0)])
    turn = world @ np.array([uphill, (0.0, 1.0, 0.0), up])
    return Placed(board, turn, np.asarray(over, float) - turn @ board.points[mark])


def block(at: np.ndarray, way: np.ndarray, long: Point, wide: Point, tall: Point, **more) -> Member:
    """Return a block that lies level along a way in plan: from and to along it, to its left, and up; faces named so.

    Given:
        more  closings
    """
    made = box(*zip(long, wide, tall, strict=True))
    turn = np.column_stack([(*way, 0.0), (-way[1], way[0], 0.0), (0.0, 0.0, 1.0)])
    names = {'x-': 'start', 'x+': 'end', 'y-': 'right', 'y+': 'left', 'z-': 'under', 'z+': 'top'}
    made = made.placed(turn, np.array([*at, 0.0]) if len(at) == 2 else np.asarray(at))
    return replace(
        made,
        faces={names[key]: face for key, face in made.faces.items()},
        closings={name.replace('_', ' '): off for name, off in more.items()},
    )


def trimmed(made: Member, name: str, cut: Flat) -> Member:
    """Return a block without what lies out of a plane."""
    solid = made.solid.trim_by_plane(tuple(-cut.normal), -float(cut.normal @ cut.point))
    return replace(made, solid=solid, faces={**made.faces, name: cut})


def joined(blocks: list[Member]) -> Member:
    """Return blocks that lie in line as one, with the faces of the first."""
    first, *rest = blocks
    solid = first.solid
    for one in rest:
        solid = solid + one.solid
    return replace(first, solid=solid)


def along_eave(slope: Slope, ends: tuple[Point, ...], inward: Point, tall: Point) -> Member:
    """Return boards along a slope's plate: their outer face is 'right', their inner one 'left'."""
    way = np.array(slope.along)
    return joined([block(slope.origin, way, end, inward, tall) for end in ends])


def leaning(slope: Slope, ends: Point, eave: np.ndarray, deep: float) -> Member:
    """Return a fascia square to a slope, from and to along it, its back's upper edge on the line of the eave; 'left' is its back."""
    turn = np.column_stack(
        [(*slope.along, 0.0), *(one / np.linalg.norm(one) for one in (slope.up, slope.normal))]
    )
    made = box((ends[0], -1.0, -deep), (ends[1], 0.0, 1.0)).placed(turn, eave)
    return replace(made, faces={'left': made.faces['y+'], 'right': made.faces['y-']})


def post(across_flats: float, sides: int, tall: Point) -> Member:
    """Return a post at the middle, a flat to each corner of the roof."""
    solid, faces = Manifold.cube((BIG, BIG, tall[1] - tall[0])).translate((-BIG / 2, -BIG / 2, tall[0])), {}
    for number in range(sides):
        turn = 2 * np.pi * number / sides - np.pi / 2 + np.pi / sides
        face = flat(
            (np.cos(turn), np.sin(turn), 0), np.array([np.cos(turn), np.sin(turn), 0]) * across_flats / 2
        )
        solid = solid.trim_by_plane(tuple(-face.normal), -float(face.normal @ face.point))
        faces[f'flat {number + 1}'] = face
    return Member(solid, faces)
