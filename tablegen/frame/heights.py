"""How high a whole roof stands over its plates."""

from __future__ import annotations

from typing import ClassVar

from msgspec import Struct

from tablegen.frame.asked import Asked, Gambrel, RidgeTop, Shed, Upper
from tablegen.frame.plan import Plan
from tablegen.geometry import ridge
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import length_figure
from tablegen.roof.figures import Length


class Heights(Struct, frozen=True):
    """Of the roof, PLUMB over the main plates' top."""

    datum: ClassVar = ('cut_list.heights',)
    above_plate: Length
    """The main rafters' top edge over the plate line."""
    planes_meet: Length
    """The line where the planes of the tops meet at the highest ridge, or of a shed where the tops, run on, come to what its run goes to."""
    ridge_top: Length | None
    """None where there is no ridge board."""
    ridge_bottom: Length | None
    second_meet: Length | None
    """The three of a wing's ridge, R2; None where there is none."""
    second_top: Length | None
    second_bottom: Length | None
    other_plates: Length | None
    """The top of plates that stand higher or lower than the main ones: raised ends, a half-hip's ends, a saltbox's back."""
    purlin_top: Length | None
    """Of a gambrel's purlins: square-topped, set down until an edge lies in the lower slope."""
    beam_top: Length | None
    """Of a beam that a shed's rafters run over."""
    ledger_top: Length | None
    """Of a ledger's outer upper edge, which lies in the plane of the rafters' tops."""
    tail_top: Length
    """The tails' upper corner: the fascia's line; below 0 is under the plates' top."""


def heights_of(asked: Asked, plan: Plan) -> Heights:
    """Return the heights of a roof."""
    side, measure = plan.slopes[0].members.side, asked.measure

    def told(height: Exact | None) -> Length | None:
        return None if height is None else length_figure(height, measure)

    meet, top, bottom = ridge_heights(asked, plan, 'R')
    second_meet, second_top, second_bottom = ridge_heights(asked, plan, 'R2')
    if meet is None:
        meet = plan.slopes[0].top_in + plan.ridge_run_in * side.slope
    return Heights(
        length_figure(side.height_in, measure),
        length_figure(meet, measure),
        told(top),
        told(bottom),
        told(second_meet),
        told(second_top),
        told(second_bottom),
        told(next((slope.plate_in for slope in plan.slopes if slope.plate_in.terms), None)),
        told(_purlin(asked, plan)),
        told(_beam(asked, plan)),
        told(ledger_top_of(asked, plan)),
        length_figure(side.height_in - side.overhang_in * side.slope, measure),
    )


def ridge_heights(asked: Asked, plan: Plan, mark: str) -> tuple[Exact | None, Exact | None, Exact | None]:
    """Return where the planes meet at a ridge, its top and its underside; None for what is not there."""
    ends = [(slope, run) for slope in plan.slopes if (run := slope.run_to(mark)) is not None]
    if not ends:
        return None, None, None
    slope, run = ends[0]
    meet = slope.top_in + run * slope.members.side.slope
    if asked.ridge is None:
        return meet, None, None
    steeper = max(one.members.side.slope for one, _ in ends)
    top = meet
    if asked.ridge.top is not RidgeTop.BEVELED:
        top = meet - ridge.sits_down(asked.ridge.thickness_in, steeper)
    return meet, top, top - asked.ridge.depth_in


def _purlin(asked: Asked, plan: Plan) -> Exact | None:
    """Return the top of a purlin: under the line where the slopes meet, as a ridge of its thickness sits down."""
    if not isinstance(asked.kind, Gambrel):
        return None
    lower = plan.slopes[0]
    slope = lower.members.side.slope
    return lower.top_in + asked.kind.break_in * slope - ridge.sits_down(asked.rafters.thickness_in, slope)


def _beam(asked: Asked, plan: Plan) -> Exact | None:
    """Return the top of a beam that rafters run over: the rise from the plate's heel to the heel on it, the seats being alike."""
    if not isinstance(asked.kind, Shed) or asked.kind.upper is not Upper.BEAM_OVER:
        return None
    return (plan.ridge_run_in - asked.kind.thickness_in) * plan.slopes[0].members.side.slope


def ledger_top_of(asked: Asked, plan: Plan) -> Exact | None:
    """Return where the tops of rafters end at a ledger's outer face; None of a roof without one."""
    if not isinstance(asked.kind, Shed) or asked.kind.upper is not Upper.LEDGER:
        return None
    slope = plan.slopes[0]
    return slope.top_in + (plan.ridge_run_in - asked.kind.thickness_in) * slope.members.side.slope
