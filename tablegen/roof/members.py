"""What a pitch has whatever the run, of a book's own boards at a regular corner: each record made once, when asked for."""

from __future__ import annotations

from functools import cached_property

from tablegen.geometry import seat
from tablegen.geometry.pitch import Pitch
from tablegen.geometry.stepping import Hold, common_hold, hip_hold
from tablegen.numbers.figure import Figure
from tablegen.roof.cheeks import Cheeks, cheeks_of
from tablegen.roof.jacks import Difference, differences_of
from tablegen.roof.lengths import Cuts, common_cut, hip_cut
from tablegen.roof.names import Why
from tablegen.roof.planes import Backing, Drop, backing_of, drop_of
from tablegen.roof.question import Boards
from tablegen.roof.seat import Notch, common_notch, dropped_hip, valley
from tablegen.roof.shortening import Shortening, shortening_of
from tablegen.roof.side import side
from tablegen.roof.tail import Tail, tail_of


class Members:
    """The members of a pitch: common rafter, hip and valley, jacks."""

    def __init__(self, pitch: Pitch, boards: Boards):
        self.pitch, self.side = pitch, side(pitch, boards)

    @cached_property
    def cut(self) -> Cuts:
        return Cuts(common_cut(self.side), hip_cut(self.side))

    @cached_property
    def common_hold(self) -> Hold:
        return common_hold(self.side.slope)

    @cached_property
    def hip_hold(self) -> Hold:
        return hip_hold(self.side.at)

    @cached_property
    def shortening(self) -> Shortening:
        return shortening_of(self.side)

    @cached_property
    def cheek(self) -> Cheeks:
        return cheeks_of(self.side)

    @cached_property
    def backing(self) -> Backing:
        return backing_of(self.side)

    @cached_property
    def drop(self) -> Drop:
        return drop_of(self.side)

    @cached_property
    def tail(self) -> Tail:
        """Over the overhang of the boards."""
        return tail_of(self.side)

    @cached_property
    def differences(self) -> tuple[Difference, ...]:
        return differences_of(self.side)

    @cached_property
    def mouth(self) -> Notch:
        """Of the commons."""
        return common_notch(self.side)

    @cached_property
    def dropped_mouth(self) -> Notch:
        """Of a dropped hip."""
        return dropped_hip(self.side)

    @cached_property
    def valley_mouth(self) -> Notch:
        return valley(self.side)

    @cached_property
    def valley_heel_out(self) -> Figure:
        """Level along the valley, from the inside corner outwards to its heel."""
        return self.side.length(seat.valley_heel_back(self.side.boards.valley_thickness_in, self.side.at))

    def fault(self, notch: Notch) -> Why | None:
        """Return why a member has no bird's mouth: where the commons' seat cuts these through no other matches it."""
        return Why.CUT_THROUGH if self.mouth.fault is Why.CUT_THROUGH else notch.fault
