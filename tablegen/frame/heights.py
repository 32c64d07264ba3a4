"""How high a whole roof stands over its plates."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from tablegen.frame.asked import Asked, Gambrel, RidgeTop, Shed, Upper
from tablegen.frame.plan import Plan
from tablegen.geometry import ridge
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import length_figure
from tablegen.roof.figures import Length


@dataclass(frozen=True, slots=True)
class Heights:
    """Of the roof, PLUMB over the main plates' top."""

    datum: ClassVar = ('cut_list.heights',)
    above_plate: Length
    """The main rafters' top edge over the plate line."""
    planes_meet: Length
    """The line where the planes of the tops meet at the highest ridge, or the top edge's end of a shed."""
    ridge_top: Length | None
    """None where there is no ridge board."""
    ridge_bottom: Length | None
    purlin_top: Length | None
    """Of a gambrel's purlins: square-topped, set down until an edge lies in the lower slope."""
    beam_top: Length | None
    """Of a beam that a shed's rafters run over."""
    tail_top: Length
    """The tails' upper corner: the fascia's line; below 0 is under the plates' top."""


def heights_of(asked: Asked, plan: Plan) -> Heights:
    """Return the heights of a roof."""
    side, measure = plan.slopes[0].members.side, asked.measure
    highest = [slope for slope in plan.slopes if slope.ends_at('R')] or [plan.slopes[0]]
    meet = highest[0].top_in + plan.ridge_run_in * highest[0].members.side.slope
    top = bottom = None
    if asked.ridge and any(board.mark == 'R' for board in plan.levels):
        steeper = max(slope.members.side.slope for slope in highest)
        down = ridge.sits_down(asked.ridge.thickness_in, steeper)
        top = meet if asked.ridge.top is RidgeTop.BEVELED else meet - down
        bottom = top - asked.ridge.depth_in
    return Heights(
        length_figure(side.height_in, measure),
        length_figure(meet, measure),
        length_figure(top, measure) if top is not None else None,
        length_figure(bottom, measure) if bottom is not None else None,
        length_figure(_purlin(asked, plan), measure) if isinstance(asked.kind, Gambrel) else None,
        length_figure(_beam(asked, plan), measure) if _over(asked) else None,
        length_figure(side.height_in - side.overhang_in * side.slope, measure),
    )


def _purlin(asked: Asked, plan: Plan) -> Exact:
    """Return the top of a purlin: under the line where the slopes meet, as a ridge of its thickness sits down."""
    assert isinstance(asked.kind, Gambrel)
    lower = plan.slopes[0]
    slope = lower.members.side.slope
    return lower.top_in + asked.kind.break_in * slope - ridge.sits_down(asked.rafters.thickness_in, slope)


def _over(asked: Asked) -> bool:
    return isinstance(asked.kind, Shed) and asked.kind.upper is Upper.BEAM_OVER


def _beam(asked: Asked, plan: Plan) -> Exact:
    """Return the top of a beam that rafters run over: the rise from the plate's heel to the heel on it, the seats being alike."""
    assert isinstance(asked.kind, Shed)
    return (plan.ridge_run_in - asked.kind.thickness_in) * plan.slopes[0].members.side.slope
