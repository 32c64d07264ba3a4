"""The area of a whole roof along its slopes, out to its eaves and its barge rafters: what is sheathed.

Every slope is measured in plan, by the lines that bound it, and stretched by its own steepness. Where two slopes meet at a hip or a
valley, the line between them goes on to the eaves.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from tablegen.frame.plan import Edge, Plan, Reach, Region, Slope
from tablegen.numbers.exact import Exact, exact, one_term, root, sign

HALF = Fraction(1, 2)


def area_in2(plan: Plan, gable_overhang_in: Fraction) -> Exact:
    """Return the area of all slopes, square inches."""
    hipped = 'left' in plan.edges
    return sum((_area(slope, gable_overhang_in, hipped) for slope in plan.slopes), exact(0))


def _area(slope: Slope, gable_in: Fraction, hipped: bool) -> Exact:
    """Return the area of one slope.

    Source: a plane that rises m to one of run is √(1 + m²) as large as its plan.
    """
    m = one_term(slope.members.side.slope)
    in_plan = sum(
        (part for region in slope.regions for part in _parts(region, slope, gable_in, hipped)), exact(0)
    )
    return in_plan * root(1 + m.squared())


def _parts(region: Region, slope: Slope, gable_in: Fraction, hipped: bool) -> Iterator[Exact]:
    """Return the areas in plan that make up a region: over the plate line, out to the eave, past the gables.

    Given:
        hipped  whether the roof's ends are eaves
    """
    out, hips = slope.members.side.overhang_in, [one for one in region.upper if sign(one.rate)]
    bounds = region.lower[0].start_in, region.lower[-1].end_in
    yield _under(region.upper, *bounds) - _under(region.lower, *bounds)
    for plate in region.lower:
        if plate.edge is not Edge.PLATE or not region.tails:
            continue
        length = plate.end_in - plate.start_in
        before = [one for one in region.lower if sign(one.rate) and one.end_in <= plate.start_in]
        after = [one for one in region.lower if sign(one.rate) and one.start_in >= plate.end_in]
        longer = _along([*hips, *before], plate.start_in) - _along([*hips, *after], plate.end_in)
        yield out * length + longer * out * out * HALF
    for first, left in ((True, region.lower[0]), (False, region.lower[-1])):
        end = left.start_in if first else left.end_in
        if (end if first else slope.length_in - end).terms:
            continue  # this region ends within the slope
        upper = region.upper[0 if first else -1]
        if hipped and upper.edge is Edge.HIP:
            yield _at_raised(upper, upper.start_in if first else slope.length_in - upper.end_in, out)
            continue
        top, rate = upper.at(end), upper.rate if first else -upper.rate
        if sign(top - left.at(end)):
            base = -out if left.edge is Edge.PLATE else left.at(end)
            yield gable_in * (top - base) - rate * gable_in**2 * HALF


def _at_raised(hip: Reach, along_in: Exact, out: Exact) -> Exact:
    """Return what more there is, in plan, where a hip crosses a raised plate and not the corner of the plates.

    Given:
        along_in  from the end of the slope's plate line to where the hip begins

    Source: of the slope whose end it passes, the triangle on from there to the eaves' corner; of the one whose plate it crosses, the
    strip of eave less up to there.
    """
    rate = one_term(hip.rate if sign(hip.rate) > 0 else -hip.rate)
    up = hip.at(hip.start_in) if sign(hip.rate) > 0 else hip.at(hip.end_in)
    if sign(along_in):
        return out * out * HALF / rate - out * along_in
    return (up + out) * (up + out) * HALF / rate if sign(up) else exact(0)


def _under(reaches: tuple[Reach, ...], start_in: Exact, end_in: Exact) -> Exact:
    """Return the area between the plate line and some lines, in plan, from one place along to another."""
    within = [(one, max(one.start_in, start_in), min(one.end_in, end_in)) for one in reaches]
    return sum(
        ((one.at(start) + one.at(end)) * (end - start) * HALF for one, start, end in within if start < end),
        exact(0),
    )


def _along(slanted: list[Reach], along_in: Exact) -> Exact:
    """Return how far the line that goes on from the plate there goes along per inch outwards; 0 at a gable."""
    for one in slanted:
        if one.spans(along_in) and not sign(one.at(along_in)):
            return 1 / one_term(one.rate)
    return exact(0)
