"""What a pitch has whatever the run, of one side of a corner: each record made once, when asked for."""

from __future__ import annotations

from functools import cached_property

from tablegen.geometry import seat, stepping
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure
from tablegen.roof import seat as seats
from tablegen.roof.cheeks import CheeksOf
from tablegen.roof.jacks import differences_of
from tablegen.roof.lengths import Cuts, common_cut, hip_cut
from tablegen.roof.names import Why
from tablegen.roof.planes import backing_of, drop_of
from tablegen.roof.seat import Notch
from tablegen.roof.shortening import ShorteningOf
from tablegen.roof.side import Side
from tablegen.roof.tail import tail_of


class Members:
    """The members of one side of a corner: common rafter, hip and valley, jacks."""

    def __init__(self, side: Side):
        self.side = side

    @property
    def pitch(self) -> Pitch:
        return self.side.pitch

    cut = cached_property(lambda it: Cuts(common_cut(it.side), hip_cut(it.side)))
    common_hold = cached_property(lambda it: stepping.common_hold(it.side.slope))
    hip_hold = cached_property(lambda it: stepping.hip_hold(it.side.at))
    shortening = cached_property(lambda it: ShorteningOf(it.side))
    cheek = cached_property(lambda it: CheeksOf(it.side))
    backing = cached_property(lambda it: backing_of(it.side))
    drop = cached_property(lambda it: drop_of(it.side))
    tail = cached_property(lambda it: tail_of(it.side))
    """Over the overhang of the boards."""
    differences = cached_property(lambda it: differences_of(it.side))
    """Of jacks."""
    mouth = cached_property(lambda it: seats.common_notch(it.side))
    """Of the commons."""
    told_mouth = cached_property(lambda it: seats.common_mouth(it.side))
    """The same as it is told."""
    dropped_mouth = cached_property(lambda it: seats.dropped_hip(it.side))
    """Of a dropped hip."""
    backed_mouth = cached_property(lambda it: seats.backed_hip(it.side))
    valley_mouth = cached_property(lambda it: seats.valley(it.side))

    @cached_property
    def valley_heel_out(self) -> Figure:
        """Level along the valley, from the inside corner outwards to its heel."""
        return self.side.length(seat.valley_heel_back(self.side.boards.valley_thickness_in, self.side.at))

    def fault(self, notch: Notch) -> Why | None:
        """Return why a member has no bird's mouth: where the commons' seat cuts these through no other matches it."""
        return Why.CUT_THROUGH if self.mouth.fault is Why.CUT_THROUGH else notch.fault

    def seated(self, notch: Notch, inches: Exact) -> Figure | None:
        """Return a length of a bird's mouth, None where there is no such mouth."""
        return None if self.fault(notch) else self.side.length(inches)
