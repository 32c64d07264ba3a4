"""What a whole roof's own numbers call for, each caution once, with the marks of the members that call for it."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec import Struct

from tablegen.frame.asked import Asked, Bay, ManySided, Shed
from tablegen.frame.framed import Framed
from tablegen.frame.plan import Plan
from tablegen.geometry import tail
from tablegen.roof import cautions
from tablegen.roof.cautions import Caution
from tablegen.roof.member import Kind, Stop


class Concern(Struct, frozen=True):
    """One caution."""

    caution: Caution
    marks: tuple[str, ...]
    """Of the members that call for it; none where the whole roof does."""


def concerns_of(asked: Asked, plan: Plan, members: tuple[Framed, ...]) -> tuple[Concern, ...]:
    """Return the cautions of a roof."""
    found: dict[Caution, list[str]] = {one: [] for one in _of_roof(asked, plan)}
    for caution, mark in _of_members(asked, members):
        found.setdefault(caution, []).append(mark)
    return tuple(Concern(one, tuple(dict.fromkeys(marks))) for one, marks in found.items())


def _of_roof(asked: Asked, plan: Plan) -> Iterator[Caution]:
    if not isinstance(asked.kind, Shed):
        yield cautions.TIES_AT_A_PEAK if isinstance(asked.kind, (ManySided, Bay)) else cautions.TIES
    deepest = max(
        tail.plumb_cut_length(asked.rafters.depth_in, one.members.side.slope) for one in plan.slopes
    )
    if asked.ridge and plan.levels and asked.ridge.depth_in < deepest:
        yield cautions.SHALLOW_RIDGE


def _of_members(asked: Asked, members: tuple[Framed, ...]) -> Iterator[tuple[Caution, str]]:
    shed = isinstance(asked.kind, Shed)
    for framed in members:
        member = framed.member
        for one in member.cautions:
            yield cautions.LOW_SHED if shed and one is cautions.LOW_SLOPE else one, member.name
        if member.kind.in_corner:
            cut_end = tail.plumb_cut_length(asked.rafters.depth_in, asked.pitch.slope)
            if cut_end > member.stock.depth_in:
                yield cautions.SHALLOW_HIP, member.name
        if member.kind is Kind.VALLEY and any(off.stop is Stop.VALLEY for off in member.deductions):
            yield cautions.CARRYING_VALLEY, member.name
        if member.kind is Kind.UPPER_HIP:
            yield cautions.HUNG_HIP, member.name
