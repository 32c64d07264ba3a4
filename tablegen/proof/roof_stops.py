"""What the rafters of a slope end at, above and below, and so what they are."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from msgspec import Struct, field

from tablegen.proof.digits import SLACK
from tablegen.proof.space import Plane

KINDS = {
    ('plate', 'ridge'): 'common',
    ('plate', 'end'): 'end_common',
    ('plate', 'wall'): 'shed_rafter',
    ('plate', 'hip'): 'hip_jack',
    ('plate', 'valley'): 'hip_jack',
    ('plate', 'purlin'): 'lower_rafter',
    ('purlin', 'ridge'): 'upper_rafter',
    ('valley', 'ridge'): 'valley_jack',
    ('valley', 'hip'): 'cripple',
    ('valley', 'valley'): 'cripple',
    ('board', 'ridge'): 'laid_jack',
    ('board', 'hip'): 'laid_jack',
}
"""What a rafter is by what is below and above it."""


class Stop(Struct, frozen=True):
    """What rafters end at: the plumb plane of its center line, and how thick it is."""

    edge: str
    """'ridge', 'end' of a ridge, 'hip', 'valley', 'purlin', 'wall', 'board'."""
    center: Plane
    thick: Fraction
    off: Decimal | None = None
    """What comes off there, level, where it is not half of that thickness."""
    start: Decimal | None = None
    end: Decimal | None = None
    """Along the slope, where it is not all along."""
    lies_on: Plane | None = None
    """What a rafter lies on there, where no board stops it."""
    over: Plane | None = None
    """The near face of a beam that rafters run over."""
    clips: tuple[Plane, ...] = ()
    """Faces beside it that take the corners off what is thicker."""

    def spans(self, along: Decimal) -> bool:
        """Return whether a place along lies on it."""
        after = self.start is None or along >= self.start - SLACK
        return after and (self.end is None or along <= self.end + SLACK)


class Region(Struct):
    """A part of a slope whose rafters run from one lower line to one upper line."""

    upper: list[Stop] = field(default_factory=list)
    lower: list[Stop] = field(default_factory=list)
    """Where it is not the plate line."""
    start: Decimal | None = None
    end: Decimal | None = None
    eaves: bool = True
    """Whether rafters over the plate run on past it."""

    def spans(self, along: Decimal) -> bool:
        """Return whether a rafter may stand there."""
        after = self.start is None or along >= self.start - SLACK
        return after and (self.end is None or along <= self.end + SLACK)


class Way(Struct, frozen=True):
    """Where a rafter runs: from how far inward, off what, to how far, and to what."""

    region: Region
    foot: Decimal
    off: Stop | None
    head: Decimal
    to: Stop

    @property
    def kind(self) -> str:
        """Return what a rafter there is."""
        return KINDS[self.off.edge if self.off else 'plate', self.to.edge]
