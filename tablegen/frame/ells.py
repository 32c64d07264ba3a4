"""An L: a wing as wide as the main roof and flush with its hipped left end, so that one ridge turns into the other."""

from __future__ import annotations

from dataclasses import replace

from tablegen.errors import BookError
from tablegen.frame.hips import end_slope, jacks_of
from tablegen.frame.joined import Joined
from tablegen.frame.plan import EAST, SOUTH, ZERO, Edge, Plan, Point, Reach, Region, Slope
from tablegen.frame.stations import Places, between, mirrored
from tablegen.frame.wing_parts import (
    cut,
    level_boards,
    only_right_valley,
    wing_ends,
    wing_hips,
    wing_right,
    within,
)
from tablegen.frame.wood import top_of
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.exact import exact


def ell(of: Joined) -> Plan:
    """Return the plan of an L: its outer corner has the main roof's hip, its inside corner a valley.

    Errors:
        BookError where wing and main roof are not alike, so that their ridges do not meet
    """
    if not of.level_ridges or of.main.side.slope != of.own.side.slope or of.blind:
        alike = message('frame.as_wide_as_the_main_roof', width=text.in_units(of.asked.width_in))
        raise BookError('wing.from_left', message('frame.unlike_ell'), alike, message('frame.set_it_in'))
    base, out = of.base, exact(of.wing.out_in)
    front, back, left, *rest = base.slopes
    slopes = [_front(of, front), back, _left(of, left), *rest, wing_right(of)]
    if of.wing.hipped:
        slopes.append(end_slope(wing_ends(of), 'wing_front', (ZERO, -out), EAST))
    corners = (*base.corners[1:], only_right_valley(of), *wing_hips(of))
    edges = ('wing_front' if of.wing.hipped else '', 'wing_right', *base.edges)
    levels = (*base.levels, *level_boards(of))
    return replace(
        base, slopes=tuple(slopes), corners=corners, levels=levels, plates=_outline(of), edges=edges
    )


def _front(of: Joined, front: Slope) -> Slope:
    """Return what is left of the main front: from its valley on."""
    (whole,) = front.regions
    start, right, long = of.half_in, of.right_in, front.length_in
    thick = of.asked.valleys.thickness_in
    lower = (
        Reach(Edge.VALLEY, 'V', start, right, of.reach_in, -of.rate, thick),
        whole.lower[0].part(right, long),
    )
    places = within(of.clear_of_corner(whole.stations, right), start, long)
    return replace(front, regions=(Region(lower, cut(whole.upper, start, long), places),))


def _left(of: Joined, left: Slope) -> Slope:
    """Return the main roof's left end and the wing's left slope, which are one."""
    (whole,) = left.regions
    asked, middle, long = of.asked, of.half_in, left.length_in + of.wing.out_in
    hip, end = whole.upper[0], whole.upper[1]
    half = asked.rafters.thickness_in / 2
    edge = Edge.RIDGE if asked.ridge else Edge.MATE
    ridge = Reach(edge, 'R2', middle, long, middle, ZERO, of.ridge_in)
    upper, last = [hip, end, ridge], long - half
    jacks: Places = ()
    if of.wing.hipped:
        ends = wing_ends(of)
        start = long - ends.end_run_in
        upper = [
            hip,
            end,
            ridge.part(middle, start),
            Reach(Edge.HIP, 'H', start, long, middle, -ends.rate, asked.hips.thickness_in),
        ]
        last, jacks = long - ends.first_common_in, mirrored(jacks_of(ends, ends.first_common_in), long)
    up_to = tuple(place for place in whole.stations if place <= middle)
    beyond = between(middle, last, asked.spacing_in, asked.rafters.thickness_in)[1:]
    lower = Reach(Edge.PLATE, '', ZERO, long, ZERO)
    region = Region((lower,), tuple(upper), (*up_to, *beyond, *jacks))
    return replace(left, length_in=long, along=SOUTH, regions=(region,), top_in=top_of(of.main.side))


def _outline(of: Joined) -> tuple[Point, ...]:
    (_, b, c, d), out = of.base.plates, exact(of.wing.out_in)
    return ((ZERO, -out), (of.right_in, -out), (of.right_in, ZERO), b, c, d)
