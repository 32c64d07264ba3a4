"""An L: a wing flush with the main roof's hipped left end, whose slope goes on as the wing's outer one.

Where both ridges have one height, one turns into the other. A lower one ends where its valley does, and a short upper hip goes on
from there to the main ridge's end.
"""

from __future__ import annotations

from msgspec.structs import replace

from tablegen.errors import BookError
from tablegen.frame.asked import HipHead
from tablegen.frame.hip_ends import end_slope, hip_stop, jacks_of
from tablegen.frame.joined import Joined
from tablegen.frame.limits import greatest
from tablegen.frame.plan import EAST, SOUTH, ZERO, CornerBoard, Edge, Plan, Point, Reach, Region, Slope
from tablegen.frame.stations import Places, between, clear_between, mirrored
from tablegen.frame.wing_parts import (
    cut,
    level_boards,
    only_right_valley,
    wing_ends,
    wing_hips,
    wing_right,
    within,
)
from tablegen.frame.wood import at_corner
from tablegen.geometry import corner, shortening
from tablegen.messages import message
from tablegen.numbers.exact import Exact, exact, one_term
from tablegen.roof.framing import hip
from tablegen.roof.member import Hand, Kind, Line, Member
from tablegen.roof.stopped import one_cheek_tail


def ell(of: Joined) -> Plan:
    """Return the plan of an L: its outer corner has the main roof's hip, its inside corner a valley.

    Errors:
        BookError for a wing whose ridge is so little lower that no hip goes on from it
    """
    base, out = of.base, exact(of.wing.out_in)
    front, back, left, *rest = base.slopes
    slopes = [_front(of, front), back, _left(of, left), *rest, wing_right(of)]
    if of.wing.hipped:
        slopes.append(end_slope(wing_ends(of), 'wing_front', (ZERO, -out), EAST))
    upper = () if of.level_ridges else (_upper_hip(of),)
    corners = (*base.corners[1:], *upper, only_right_valley(of), *wing_hips(of))
    edges = ('wing_front' if of.wing.hipped else '', 'wing_right', *base.edges)
    levels = (*base.levels, *level_boards(of))
    return replace(
        base, slopes=tuple(slopes), corners=corners, levels=levels, plates=_outline(of), edges=edges
    )


def _upper_hip(of: Joined) -> CornerBoard:
    """Return the hip from the main ridge's end down to the wing's ridge, over whose end it goes on to that one's far side.

    Errors:
        BookError where the two ridges are so near in height that nothing is left of it

    Source: its line is that of the main roof's hip, and below the wing's ridge lies in the slope of both ends: its top, which
    is dropped or backed, stays under that.
    """
    run = of.base.ridge_run_in - of.passed_in
    member = _hip_of(of, run)
    passed, ridge = of.reach_in - of.passed_in, of.ridge_in / 2
    least = max(
        _least_run(member, of),
        of.hip_beside_in - of.passed_in + of.half_rafter_in,  # its outer side is clear of the end common
        passed + ridge + of.asked.valleys.thickness_in / 2,  # the valley of the main ridge
    )
    if run < least:
        most = 2 * (of.base.ridge_run_in - least + passed) / one_term(of.rate)
        allowed = message(
            'frame.up_to_or_level',
            most=greatest(most, of.asked),
            level=greatest(of.level_width_in, of.asked),
        )
        raise BookError('wing.width', message('frame.no_upper_hip'), allowed)
    start = of.half_in - of.ridge_in / 2, of.passed_in
    return CornerBoard(member, start, (of.base.ridge_run_in / of.rate, of.base.ridge_run_in), Hand.RIGHT)


def _hip_of(of: Joined, run_in: Exact) -> Member:
    plane = at_corner(of.asked, run_in, of.main, of.own, a_on=Hand.RIGHT)
    foot = one_cheek_tail(of.own, Hand.RIGHT)
    return hip('', plane, hip_stop(of.asked), tail=foot, kind=Kind.UPPER_HIP)


def _least_run(member: Member, of: Joined) -> Exact:
    """Return the run over which each side of an upper hip is as long as it is thick, level, square to the main plate line."""
    ends = (Line.FOOT, Line.FOOT_LONG, Line.FOOT_CUT, Line.FOOT_SHORT)
    head = max(member.at(mark.line) for mark in member.marks if mark.line not in ends)
    foot = member.at(Line.FOOT) - member.at(Line.FOOT_SHORT)
    return (head + foot + member.thickness_in) / one_term(corner.hip_length(exact(1), of.at))


def _front(of: Joined, front: Slope) -> Slope:
    """Return what is left of the main front: from its valley on."""
    (whole,) = front.regions
    start, right, long = of.half_in, of.right_in, front.length_in
    thick = of.asked.valleys.thickness_in
    lower = (
        Reach(Edge.VALLEY, 'V', start, right, of.reach_in, -of.rate, thick),
        whole.lower[0].part(right, long),
    )
    kept, near = _common_at_corner(of), of.beside_in
    if kept is None:
        places = of.clear_of_corner(whole.stations, right)
    else:
        wood = of.asked.rafters.thickness_in
        low, high = min(right - near, kept - wood), max(right + near, kept + wood)
        places = clear_between(whole.stations, low, high, wood, kept)
    upper = cut(whole.upper, start, long)
    region = Region(lower, upper, within(places, start, long))
    if kept is None or not 0 <= kept - right <= shortening.jack_at(thick, of.at.plan_a):
        return replace(front, regions=(region,))
    beside = lower[0].part(kept, kept)  # it stands on the valley, before the plate
    others = replace(region, stations=tuple(place for place in region.stations if place != kept))
    return replace(front, regions=(Region((beside,), upper, (kept,)), others))


def _common_at_corner(of: Joined) -> Exact | None:
    """Return where the common stands that the upper hip's head is cut to, if that is at the inside corner; None where it is not."""
    place = of.base.ridge_run_in / of.rate
    if of.level_ridges or of.asked.hip_head is not HipHead.BETWEEN:
        return None
    room = of.beside_in + of.asked.rafters.thickness_in
    return place if -room < place - of.right_in < room else None


def _left(of: Joined, left: Slope) -> Slope:
    """Return the main roof's left end and the wing's left slope, which are one."""
    (whole,) = left.regions
    asked, inward, long = of.asked, of.half_in, left.length_in + of.wing.out_in
    middle, turn = of.base.ridge_run_in, left.length_in - of.reach_in
    hip, end, on = whole.upper
    commons = tuple(place for place in whole.stations if place <= middle)
    if of.level_ridges:
        end, aside = _with_one_hip(of, end)
        commons = _up_to(of, commons[:-1], middle + aside)
    edge = Edge.RIDGE if asked.ridge else Edge.MATE
    ridge = Reach(edge, 'R2', turn, long, inward, ZERO, of.ridge_in)
    upper, last = [hip, end, *cut((on,), middle, turn), ridge], long - of.half_rafter_in
    jacks: Places = ()
    if of.wing.hipped:
        ends = wing_ends(of)
        start = long - ends.end_run_in
        upper[-1:] = [
            ridge.part(turn, start),
            Reach(Edge.HIP, 'H', start, long, inward, -ends.rate, asked.hips.thickness_in),
        ]
        last, jacks = long - ends.first_common_in, mirrored(jacks_of(ends, ends.first_common_in), long)
    beyond = between(middle, last, asked.spacing_in, asked.rafters.thickness_in)[1:]
    if not of.level_ridges:
        beyond = _at_upper_hip(of, beyond, left.length_in)
    lower = Reach(Edge.PLATE, '', ZERO, long, ZERO)
    region = Region((lower,), tuple(upper), (*commons, *beyond, *jacks))
    return replace(left, length_in=long, along=SOUTH, regions=(region,))


def _with_one_hip(of: Joined, end: Reach) -> tuple[Reach, Exact]:
    """Return what an end common beside one hip alone stands against, and how far aside of the ridge's center line it stands.

    Source: with single cheeks one thicker than the ridge is clipped to both hips; moved away from the one hip until it is flush
    with the ridge's side there, it is cut square.
    """
    thick = of.asked.rafters.thickness_in
    if of.asked.hip_head is HipHead.BETWEEN or thick <= of.ridge_in:
        return end, ZERO
    aside = exact((thick - of.ridge_in) / 2)
    return replace(end, start_in=end.start_in + aside, end_in=end.end_in + aside, clipped=False), aside


def _up_to(of: Joined, places: Places, last: Exact) -> Places:
    """Return places and a last one, one more beside those where the bay before the last would be too wide."""
    if places and last - places[-1] > of.asked.spacing_in:
        places = (*places, places[-1] + of.asked.rafters.thickness_in)
    return (*places, last)


def _at_upper_hip(of: Joined, places: Places, wide_in: Exact) -> Places:
    """Return places along the left slope with a common against the upper hip's foot, and the next ones clear of it and of the hip."""
    at_foot, thick = wide_in - of.passed_in, exact(of.asked.rafters.thickness_in)
    above = wide_in - max(of.hip_beside_in + of.half_rafter_in, of.reach_in)
    return clear_between(places, above, at_foot + thick, thick, at_foot)


def _outline(of: Joined) -> tuple[Point, ...]:
    (_, b, c, d), out = of.base.plates, exact(of.wing.out_in)
    return ((ZERO, -out), (of.right_in, -out), (of.right_in, ZERO), b, c, d)
