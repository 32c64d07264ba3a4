"""A whole roof: its slopes, the boards in its corners, its level boards, its rakes, what is measured of it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from msgspec import Struct, field

from tablegen.proof.digits import real
from tablegen.proof.roof_slopes import ZERO, Slope
from tablegen.proof.roof_stated import THICK, Asked
from tablegen.proof.space import Plane, Vector, between, dot, size
from tablegen.proof.timber import Timber


class Corner(Struct, frozen=True):
    """A hip or valley where it lies."""

    kind: str
    """'hip', 'upper_hip', 'valley'."""
    sides: tuple[str, str]
    """Names of the slopes on its left and on its right."""
    board: Timber
    inward: Vector
    """Into which slope the common run goes that it is stepped off by."""
    hand: int | None
    """0 for left, 1 for right; None where it has no mate cut the other way."""
    drops: tuple[Decimal, Decimal] = (ZERO, ZERO)
    """How far its square top must come down, plumb, for its left edge to lie in the slope there, and its right one."""
    backs: tuple[Decimal, Decimal] | None = None
    """Angles of a backed top, from square, to the left and to the right."""

    @property
    def slopes(self) -> frozenset[str]:
        """Return the names of what it lies between."""
        return frozenset(self.sides)

    @property
    def run(self) -> Decimal:
        """Return that run."""
        assert self.board.center
        along = self.board.to(self.board.center) or ZERO
        return abs(dot(self.inward, self.board.ahead)) * along * self.board.flat


class Rake(Struct, frozen=True):
    """The sloping edge of a slope at a gable."""

    slope: Slope
    end: Decimal
    """Where it is along the slope, at the outside of framing."""
    outwards: int
    foot: Decimal
    top: Decimal
    """From how far inward to how far there are studs under it, what stands in their way taken off."""


class Level(Struct):
    """A ridge or purlin: from one end of it to the other, what an end is cut to."""

    start: Vector
    end: Vector
    tilt: Decimal | None = None
    """Of a saw's blade at its end; None where that is square."""

    @property
    def length(self) -> Decimal:
        """Return how long it is sawn."""
        return size(between(self.start, self.end))


class Roof(Struct):
    """All of them."""

    asked: Asked
    slopes: list[Slope]
    corners: list[Corner] = field(default_factory=list)
    rakes: list[Rake] = field(default_factory=list)
    levels: dict[str, Level] = field(default_factory=dict)
    """By mark."""
    measured: dict[str, dict[str, Decimal]] = field(default_factory=dict)
    """What is measured before more is cut, by its sentence and the places in that."""
    laid: Plane | None = None
    """What a wing's rafters are laid on: the boards on the main roof's sheathing."""

    def slope(self, name: str) -> Slope:
        """Return the slope of a name."""
        return next(one for one in self.slopes if one.name == name)

    def barges(self) -> Iterator[tuple[Slope, str, Timber]]:
        """Yield every barge rafter: its slope, what it is, its board."""
        out = real(self.asked.inches('overhang.gable'))
        for rake in self.rakes if out else ():
            along = rake.end + rake.outwards * (out - real(THICK) / 2)
            board = rake.slope.rafter(along, self.asked.depth('stock.rafters'))
            upper = rake.slope.way(along).off is not None
            yield rake.slope, 'upper_barge' if upper else 'barge', board.without_mouth()


def rakes_of(slope: Slope, ends: Sequence[int], top: Decimal, beside: Decimal, foot: Decimal = ZERO, under: Decimal = ZERO) -> Iterator[Rake]:  # fmt: skip
    """Yield the rakes of a slope.

    Given:
        ends           -1 for its left end, 1 for its right one
        top, foot      how far inward it goes, from where
        beside, under  what of that is in a stud's way there
    """
    for way in ends:
        yield Rake(slope, ZERO if way < 0 else slope.length, way, foot + under, top - beside)
