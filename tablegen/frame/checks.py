"""What is measured before anything is cut, and on the first pieces: the plates, the ridge, what must measure equal."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec import Struct

from tablegen.frame.asked import MIDDLES, Asked, Bay, Hip, HipTop, ManySided, Wing
from tablegen.frame.plan import Plan
from tablegen.geometry import many_sided, setting_out
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, length_figure
from tablegen.roof.member import Kind
from tablegen.roof.seat import greater_drop


class Check(Struct, frozen=True):
    """One thing to measure."""

    name: str
    """What; its words are the reader's language's."""
    figures: dict[str, Figure]
    """What it should be, by name."""


def checks_of(asked: Asked, plan: Plan, ridge_top: Figure | None) -> Iterator[Check]:
    """Return the checks of a roof, in the order they are made."""

    def told(name: str, **lengths: Exact) -> Check:
        return Check(name, {key: length_figure(length, asked.measure) for key, length in lengths.items()})

    is_round = isinstance(asked.kind, (ManySided, Bay))
    if isinstance(asked.kind, (ManySided, Bay)):
        half, apothem = many_sided.half_central(asked.kind.sides), plan.ridge_run_in
        side, radius = 2 * apothem * half.tan(), apothem / half.cosine()
        if isinstance(asked.kind, ManySided):
            yield told('sides', side=side, apothem=apothem)
            yield told('corners', radius=radius)
        elif asked.kind.wall_through == MIDDLES:
            yield told('bay_halves', side=side, half=side / 2, apothem=apothem)
            yield told('bay_hips', radius=radius)
            yield told('bay_wall', wall=2 * apothem)
        else:
            yield told('bay_sides', side=side, apothem=apothem)
            yield told('bay_corners', radius=radius)
            yield told('bay_wall', wall=2 * radius)
    else:
        yield told('diagonals', diagonal=setting_out.diagonal(asked.length_in, asked.width_in))
    if isinstance(asked.kind, Wing):
        yield told('wing_diagonals', diagonal=setting_out.diagonal(asked.kind.width_in, asked.kind.out_in))
    for slope in plan.slopes:
        if slope.name == 'left' and slope.plate_in.terms and isinstance(asked.kind, Hip):
            yield told(
                'raised_plates',
                raised=slope.plate_in,
                crossed=slope.plate_in / plan.slopes[0].members.side.slope,
            )
    if any(one.member.kind is Kind.UPPER_HIP for one in plan.corners):
        yield Check('upper_hip', {})
        if asked.hip_top is HipTop.DROPPED:
            yield told('upper_hip_top', drop=greater_drop(plan.slopes[0].members.side))
    if ridge_top is not None:
        yield Check('ridge_height', {'height': ridge_top})
    if plan.corners:
        yield Check('to_the_peak' if is_round else 'hips_alike', {})
    yield Check('cut_two', {})
