"""A roof plane over its run, whose members are to be made boards."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Measure
from tablegen.roof.member import Hand
from tablegen.roof.members import Members
from tablegen.roof.side import Side


class Plane(Struct, frozen=True):
    """A roof plane whose members are to be made boards."""

    members: Members
    """What they have whatever the run."""
    run_in: Exact | Fraction
    """Level, of its commons, plate line to ridge center line (of a shed: to the wall)."""
    measure: Measure
    """How lengths of boards are read."""
    other: Members | None = None
    """Of the other side of the corner, where its hip's or valley's two sides are not alike."""
    a_on: Hand | None = None
    """On which hand of its hip or valley this side lies; None where that is not asked and both sides are alike."""
    backed: bool = False
    """Whether hips are backed, and not dropped."""
    square_tails: bool = False
    """Whether hips and valleys end at fascias that stand square to the roof."""

    @property
    def side(self) -> Side:
        return self.members.side
