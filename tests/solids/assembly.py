"""What an assembly of solids must satisfy: faces that touch, tops in the roof planes, no member inside another.

How far off any of it may be is worked out, not chosen: each figure that a member was made from is moved by half of its
last printed part, and what that moves is added up.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from functools import cached_property
from itertools import combinations
from math import inf

import numpy as np
from boards import NEAR, Gone, Member, flat
from manifold3d import Manifold
from reading import Place, Reading

FLOAT = 1e-4
"""in, what the sum of floats and the bend of an angle's own slope may add."""
LIFT = 0.25
"""How far a member is moved into another to see how much of its face bears, in."""
Off = tuple[float, float, float]
"""Nearest and furthest corner from where they should be, and the difference: out of line."""


@dataclass(frozen=True)
class Touch:
    """A face of one member on a face of another."""

    one: str
    face: str
    two: str
    on: str
    share: float = 0.75
    """How much of the face bears at least; 0 where members meet along an edge."""

    @property
    def names(self):
        return self.one, self.two

    def off(self, members: dict[str, Member]) -> Off:
        return _spread(members[self.two].faces[self.on].height(members[self.one].corners(self.face)))

    def __str__(self) -> str:
        return f'{self.one} ({self.face}) on {self.two} ({self.on})'


@dataclass(frozen=True)
class Lies:
    """Corners of one member, those on all of some faces, or a mark of it, in a face of another."""

    one: str
    faces: tuple[str, ...]
    two: str
    on: str

    @property
    def names(self):
        return self.one, self.two

    def off(self, members: dict[str, Member]) -> Off:
        one = members[self.one]
        marks = [one.points[name] for name in self.faces if name in one.points]
        return _spread(members[self.two].faces[self.on].height(marks or one.corners(*self.faces)))

    def __str__(self) -> str:
        return f'{self.one} ({", ".join(self.faces)}) in {self.two} ({self.on})'


@dataclass
class Assembly:
    members: dict[str, Member]
    touches: list[Touch]
    lies: list[Lies] = field(default_factory=list)

    def offs(self, like: Assembly | None = None, known: dict[str, Off] | None = None) -> dict[str, Off]:
        """Return how far everything is from where it should be; what is as in another assembly is known."""
        same = {name for name in self.members if like and self.members[name] is like.members[name]}
        found = {}
        for check in (*self.touches, *self.lies):
            key = str(check)
            found[key] = known[key] if same.issuperset(check.names) else check.off(self.members)
        for name, member in self.members.items():
            found |= {f'{name}: {what}': (off, off, 0.0) for what, off in member.closings.items()}
        return found

    # Solids in solids -----------------------------------------------------------------------------------------------

    def passing(self, allowed: dict[str, Off]) -> list[str]:
        """Return the pairs where one member is deeper in the other than the rounding of what they touch by."""
        found = []
        for one, two in combinations(
            [name for name, member in self.members.items() if not member.solid.is_empty()], 2
        ):
            shared = self.members[one].solid ^ self.members[two].solid
            if shared.volume() < 1e-6:
                continue
            places = np.asarray(shared.to_mesh64().vert_properties)[:, :3]
            deep = [
                np.ptp(places @ self.members[touch.two].faces[touch.on].normal) - _may_pass(touch, allowed)
                for touch in self.touches
                if {one, two} == set(touch.names)
            ]
            if not deep or min(deep) > FLOAT:
                found.append(f'{one} in {two}: {shared.volume():.4f} cubic in, past {deep}')
        return found

    def bare(self, allowed: dict[str, Off]) -> list[str]:
        """Return the touches where less of a face bears than should."""
        found = []
        for touch in self.touches:
            one, two = self.members[touch.one], self.members[touch.two]
            into = -LIFT * two.faces[touch.on].normal
            room = LIFT - max(allowed[str(touch)])
            bears = (one.solid.translate(tuple(into)) ^ two.solid).volume()
            if bears < touch.share * _area(one, touch.face) * room:
                found.append(f'{touch}: {bears / room / _area(one, touch.face):.2f} of it')
        return found


def _may_pass(touch: Touch, allowed: dict[str, Off]) -> float:
    """Return how deep rounding may put one member into another: a seat also where it is sawn too short."""
    short = allowed.get(f'{touch.one}: seat to underside', (0.0,)) if touch.face == 'seat' else (0.0,)
    return max(allowed[str(touch)]) + max(short)


def _spread(heights: np.ndarray) -> Off:
    low, high = float(heights.min()), float(heights.max())
    return low, high, high - low


def _area(member: Member, face: str) -> float:
    """Return the area of a face: of the solid's triangles that lie in it."""
    mesh = member.solid.to_mesh64()
    places = np.asarray(mesh.vert_properties)[:, :3][np.asarray(mesh.tri_verts)]
    on = places[np.all(abs(member.faces[face].height(places)) < NEAR, axis=1)]
    return float(np.sum(np.linalg.norm(np.cross(on[:, 1] - on[:, 0], on[:, 2] - on[:, 0]), axis=1)) / 2)


def plane(normal, point) -> Member:
    """Return a plane that members lie in, as a member without a body."""
    return Member(Manifold(), {'face': flat(normal, point)})


def point(at) -> Member:
    """Return a mark that lies somewhere, as a member without a body."""
    return Member(Manifold(), {}, {'mark': np.asarray(at, float)})


# Rounding, and one figure misread ------------------------------------------------------------------------------------


@dataclass
class Built:
    """An assembly made from a reading, with how far off it is and may be."""

    build: Callable[[Reading], Assembly]
    read: Reading

    def __post_init__(self) -> None:
        self.assembly = self.build(self.read)
        self.offs = self.assembly.offs()
        self.allowed = self._allowed()

    def _allowed(self) -> dict[str, Off]:
        """Return what rounding can move each check by: half a part of every figure, added up."""
        total = np.full((len(self.offs), 3), FLOAT)
        for place, figure in self.read.used.items():
            if figure.half:
                self._add(total, place, figure.half, -figure.half)
        return self._by_check(total)

    def _add(self, total: np.ndarray, place: Place, *ways: float) -> None:
        """Add to every check the most that it moves when a figure is read as so much more."""
        moved = [self._moved(place, by) for by in ways]
        rows = list({row: None for one in moved for row in one})
        if rows:
            total[rows] += np.max([[abs(one.get(row, np.zeros(3))) for row in rows] for one in moved], axis=0)

    def _by_check(self, total: np.ndarray) -> dict[str, Off]:
        return {key: tuple(most) for key, most in zip(self._rows, total.tolist(), strict=True)}

    @cached_property
    def _rows(self) -> dict[str, int]:
        return {key: n for n, key in enumerate(self.offs)}

    @cached_property
    def _was(self) -> np.ndarray:
        return np.array(list(self.offs.values()))

    @cached_property
    def _held(self) -> dict[str, list[tuple[int, Touch | Lies]]]:
        """Return by member every check that it has part in, with its row."""
        found: dict[str, list[tuple[int, Touch | Lies]]] = {}
        for check in (*self.assembly.touches, *self.assembly.lies):
            for name in set(check.names):
                found.setdefault(name, []).append((self._rows[str(check)], check))
        return found

    def _made_again(self, by: dict[Place, float]) -> Iterator[tuple[int, Off]]:
        """Yield the checks, by row, of what is made from figures that are read as so much more, and how far off each is now."""
        members = self.build(Reading(self.read.pages, by, self.read)).members
        for name, member in members.items():
            if member is not self.assembly.members[name]:
                for what, off in member.closings.items():
                    yield self._rows[f'{name}: {what}'], (off, off, 0.0)
                for row, check in self._held.get(name, ()):
                    yield row, check.off(members)

    def _moved(self, place: Place, by: float) -> dict[int, np.ndarray]:
        """Return what a figure read as so much more moves, by row."""
        try:
            return {row: np.subtract(off, self._was[row]) for row, off in self._made_again({place: by})}
        except Gone:
            return dict.fromkeys(self._rows.values(), np.full(3, np.inf))

    def felt(self, by: dict[Place, float]) -> bool:
        """Return whether anything is off when figures are read as so much more."""
        most = self._most
        try:
            return any(np.any(abs(np.array(off)) > most[row]) for row, off in self._made_again(by))
        except Gone:
            return True

    @cached_property
    def _most(self) -> np.ndarray:
        return np.array(list(self.allowed.values()))

    def misread(self, by: dict[Place, float]) -> dict[str, Off]:
        """Return how far off everything is when figures are read as so much more."""
        try:
            return self.build(Reading(self.read.pages, by, self.read)).offs(self.assembly, self.offs)
        except Gone:
            return dict.fromkeys(self.offs, (inf, inf, inf))

    def exchanged(self, one: Place, two: Place) -> list[str]:
        """Return what does not close when two figures are read for each other."""
        more = self.read.used[two].value - self.read.used[one].value
        return self.open(self.misread({one: more, two: -more}))

    def open(self, offs: dict[str, Off] | None = None) -> list[str]:
        """Return the checks that are further off than rounding can make them."""
        return [
            f'{key}: off {off[0]:.4f} to {off[1]:.4f}, rounding {max(self.allowed[key]):.4f}'
            for key, off in (offs or self.offs).items()
            if any(abs(one) > may for one, may in zip(off, self.allowed[key], strict=True))
        ]

    def unfelt(self) -> list[tuple[Place, float]]:
        """Return the figures that may be misread without anything being off, and by how much."""
        steps = [(place, way * figure.step) for place, figure in self.read.used.items() for way in (1, -1)]
        return [(place, step) for place, step in steps if not self.felt({place: step})]
