"""What an assembly of solids must satisfy: no member inside another, faces that should touch touching all over."""

from dataclasses import dataclass, field
from itertools import combinations

from boards import ANGLE_ERROR, LENGTH_ERROR
from manifold3d import Manifold

LONGEST = 160
SLACK = 2 * LENGTH_ERROR + 2 * LONGEST * ANGLE_ERROR
"""Most that a plumb or a top face can be off, in: two printed lengths decide where it is, and two printed angles
over the longest member, 160 in."""


@dataclass(frozen=True)
class Face:
    """Where a face of one member lies against another."""

    one: str
    two: str
    normal: tuple
    """Out of one, into two; length 1."""
    area: float
    """Of the smaller face, square inches."""
    share: float = 0.75
    """How much of it bears at least: a jack's cheek hangs below a shallower hip, a hip's seat spans a corner."""


@dataclass(frozen=True)
class Assembly:
    members: dict[str, Manifold]
    faces: list[Face]
    edges: dict[tuple[str, str], float] = field(default_factory=dict)
    """Pairs that meet along an edge only, and its length, in: rounding can put them SLACK into each other, twice."""

    def shared(self, one, two):
        return (self.members[one] ^ self.members[two]).volume()

    def passing(self):
        """Return the pairs where one member is deeper in the other than rounding can put it."""
        areas = {frozenset((face.one, face.two)): face.area for face in self.faces}
        areas |= {frozenset(pair): long * SLACK for pair, long in self.edges.items()}
        return [
            (one, two)
            for one, two in combinations(self.members, 2)
            if self.shared(one, two) > areas.get(frozenset((one, two)), 0) * SLACK + 1e-6
        ]

    def apart(self):
        """Return the faces that do not bear: moved on by twice the slack, one must be the slack deep in two."""
        found = []
        for face in self.faces:
            moved = self.members[face.one].translate(tuple(2 * SLACK * part for part in face.normal))
            if (moved ^ self.members[face.two]).volume() < face.share * face.area * SLACK:
                found.append((face.one, face.two))
        return found
