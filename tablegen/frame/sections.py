"""A roof cut through square to its plates: each slope's run, overhang and heights, those alike as one."""

from __future__ import annotations

from msgspec import Struct

from tablegen.frame.asked import Asked, Bay, ManySided
from tablegen.frame.heights import ridge_heights
from tablegen.frame.plan import Edge, Plan, Slope
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.exact import Exact, exact, sign
from tablegen.numbers.figure import length_figure
from tablegen.roof.figures import Length

UPPER = '_upper'
"""How the name of a gambrel's upper slope ends."""


class Leg(Struct, frozen=True):
    """A stretch of the top edges, from its lower line to its upper one."""

    pitch: Pitch
    slope: Exact
    run: Length
    """LEVEL."""
    top: Length
    """Of its upper end, PLUMB over the main plates."""


class Section(Struct, frozen=True):
    """Half a roof: one slope, a gambrel's two."""

    slopes: tuple[str, ...]
    """Names of those that are so."""
    legs: tuple[Leg, ...]
    """From the plate up."""
    upper: Edge
    """What is at its upper end."""
    overhang: Length
    above_plate: Length
    """The top edge over this slope's own plate, at the plate line, PLUMB."""
    plate: Length
    """This slope's plate over the main ones."""
    tail_top: Length
    """The tail's upper corner over the main plates; below 0 is under them."""
    ridge_top: Length | None
    ridge_bottom: Length | None
    """Over the main plates; None where there is no ridge board."""


def sections_of(asked: Asked, plan: Plan) -> tuple[Section, ...]:
    """Return the sections of a roof."""
    found: dict[tuple[str, ...], tuple[Slope, list[str]]] = {}
    for slope in plan.slopes:
        if not slope.name.endswith(UPPER) and _reach(asked, plan, slope) is not None:
            side, up = slope.members.side, _reach(asked, plan, slope)
            assert up
            sizes = (up[0], side.slope, side.overhang_in, slope.plate_in, slope.top_in)
            key = tuple(length_figure(size, asked.measure).decimal for size in sizes)
            found.setdefault(key, (slope, []))[1].append(slope.name)
    return tuple(_section(asked, plan, slope, tuple(names)) for slope, names in found.values())


def _reach(asked: Asked, plan: Plan, slope: Slope) -> tuple[Exact, Edge, str] | None:
    """Return how far inward the rafters go that end square to their slope, and what is there; None where none stands on a plate.

    Notes:
        1. Of a roof of many sides all end at hips, which meet at its peak.
        2. An L's side has its end common at the main ridge's end, the others at the wing's ridge: of one height they are of that.
    """
    if isinstance(asked.kind, (ManySided, Bay)):
        return plan.ridge_run_in, Edge.HIP, ''
    reached = [
        (upper.at(along), upper.off_in is None, (upper.edge, upper.mark))
        for _, along, lower, upper in slope.standing()
        if lower.edge is Edge.PLATE
    ]
    level = [one for one in reached if one[2][0] not in (Edge.HIP, Edge.VALLEY)]
    furthest = max(level, key=lambda one: one[:2], default=None)
    return furthest and (furthest[0], *furthest[2])


def _section(asked: Asked, plan: Plan, slope: Slope, names: tuple[str, ...]) -> Section:
    side = slope.members.side
    reach = _reach(asked, plan, slope)
    assert reach, 'a section has a rafter on a plate'
    run, edge, mark = reach
    legs = [_leg(asked, slope, exact(0), run)]
    above = next((one for one in plan.slopes if one.name == slope.name + UPPER), None)
    if above:
        ways = [upper for _, _, _, upper in above.standing()]
        last = ways[0]
        legs.append(_leg(asked, above, run, last.at(last.start_in)))
        edge, mark = last.edge, last.mark
    top = bottom = None
    if edge is Edge.RIDGE and mark:
        _, top, bottom = ridge_heights(asked, plan, mark)
    tail = slope.top_in - side.overhang_in * side.slope
    return Section(
        names,
        tuple(legs),
        edge,
        length_figure(side.overhang_in, asked.measure),
        length_figure(slope.top_in - slope.plate_in, asked.measure),
        length_figure(slope.plate_in, asked.measure),
        length_figure(tail, asked.measure),
        length_figure(top, asked.measure) if top is not None else None,
        length_figure(bottom, asked.measure) if bottom is not None else None,
    )


def exact_of(figure: Length) -> Exact:
    """Return what a length was rounded from, in."""
    assert isinstance(figure.value, Exact)
    return figure.value


def _leg(asked: Asked, slope: Slope, foot_in: Exact, head_in: Exact) -> Leg:
    side = slope.members.side
    assert sign(head_in - foot_in) > 0
    return Leg(
        side.pitch,
        side.slope,
        length_figure(head_in - foot_in, asked.measure),
        length_figure(slope.top_in + side.slope * head_in, asked.measure),
    )
