"""The sloping end of a roof: what a hip roof, a half-hip and a hipped wing have in common."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from tablegen.frame.asked import Asked, HipHead
from tablegen.frame.plan import (
    ZERO,
    Edge,
    Point,
    Reach,
    Region,
    Slope,
)
from tablegen.frame.stations import Places, from_corner, mirrored, to_corner
from tablegen.frame.wood import at_corner, ridge_in, top_of
from tablegen.geometry import corner, ridge, shortening
from tablegen.numbers.exact import Exact, exact, floor_of
from tablegen.roof.framing import hip
from tablegen.roof.member import Hand, Member, Stop
from tablegen.roof.members import Members
from tablegen.roof.stopped import one_cheek_tail


class Ends(Struct, frozen=True):
    """The sloping ends of one roof."""

    asked: Asked
    main: Members
    end: Members
    run_in: Exact
    """Of the main slopes."""
    up_in: Exact
    """How far inward of the main plate line a hip crosses the end's: 0 where their plates stand at one height."""
    rise_in: Exact
    """How high the end's plate stands over the main ones."""
    number: int
    """Of sloping ends: 2, or 1, at the left."""
    over_gable: bool = False
    """Whether the ends stand over gables, as a half-hip's: its eaves are no part of the main ones."""

    @property
    def on_plate_in(self) -> Exact:
        """Return where the end's plate begins, inward of the main one: at a half-hip's hip, else at the corner."""
        return self.up_in if self.over_gable else ZERO

    @property
    def end_run_in(self) -> Exact:
        """Return the run of the end's slope."""
        return corner.run_b(self.run_in - self.up_in, self.main.side.at)

    @property
    def rate(self) -> Exact:
        """Return how far a hip runs inward of the main slope per inch along it."""
        return self.main.side.at.plan_a.tan()

    @property
    def past_in(self) -> Exact:
        """Return what the ridge runs past the point where the center lines meet."""
        if self.asked.hip_head is HipHead.BETWEEN or not self.asked.ridge:
            return ridge.end_past_commons(self.asked.rafters.thickness_in)
        thick = self.asked.hips.thickness_in
        return ridge.end_past_hips(self.asked.ridge.thickness_in, thick, self.main.side.at)

    @property
    def hip_side_in(self) -> Exact:
        """Return where the side of a hip with one cheek comes to the ridge's side, along from the corner."""
        at = self.main.side.at
        met = shortening.set_back_at_ridge(ridge_in(self.asked), at)
        return self.end_run_in - met + self.asked.hips.thickness_in / 2 / at.plan_a.sine()

    @property
    def first_common_in(self) -> Exact:
        """Return where the first full common stands, along from the corner: at the ridge's end, or clear of the hip's cheek.

        Notes:
            1. There at a whole part of the tape, so that it and the jacks, which stand whole spaces from it, are laid out as they are told.
        """
        if self.asked.hip_head is HipHead.BETWEEN:
            return self.end_run_in
        per = self.asked.measure.per
        clear = self.hip_side_in + self.half_in
        return max(self.end_run_in, exact(Fraction(-floor_of(-clear, per), per)))

    @property
    def last_jack_in(self) -> Exact:
        """Return how far along a jack may stand at most: beside the first common, and on the hip, before it comes to the ridge."""
        if self.asked.hip_head is HipHead.BETWEEN:
            return self.end_run_in - 2 * self.half_in
        return min(self.end_run_in, self.hip_side_in) - self.half_in

    @property
    def last_end_jack_in(self) -> Exact:
        """Return the same on the end's slope, from the hip's corner: beside the end common, and clear of the ridge's end."""
        half = self.half_in
        wider = half if self.asked.hip_head is HipHead.BETWEEN else max(half, exact(ridge_in(self.asked) / 2))
        return self.run_in - self.on_plate_in - half - wider

    @property
    def half_in(self) -> Exact:
        """Return half of a rafter's thickness."""
        return exact(self.asked.rafters.thickness_in / 2)


def hip_reach(of: Ends, start: Exact, last: Exact, inward: Exact, rate: Exact) -> Reach:
    return Reach(Edge.HIP, 'H', start, last, inward, rate, of.asked.hips.thickness_in)


def jacks_of(of: Ends, first_common: Exact) -> Places:
    asked, thick = of.asked, of.asked.rafters.thickness_in
    if asked.hip_head is HipHead.SINGLE and asked.first_in is None:
        jacks = to_corner(first_common, asked.spacing_in)
    else:
        jacks = from_corner(first_common, first_common - of.last_jack_in, asked.spacing_in, asked.first_in)
    if of.over_gable:  # a half-hip has a gable under it, and its rafter flush with that
        beside = exact(thick * Fraction(3, 2))
        return (exact(thick / 2), *(max(place, beside) for place in jacks if place > thick / 2))
    return jacks


def end_slope(of: Ends, name: str, origin: Point, along: Point) -> Slope:
    """Return a sloping end: jacks to both hips, the end common in the middle."""
    asked, last = of.asked, of.last_end_jack_in
    half, start = of.run_in - of.on_plate_in, of.up_in - of.on_plate_in
    long, rate = 2 * half, of.end.side.at.plan_a.tan()
    upper = (
        hip_reach(of, start, half, ZERO, rate),
        Reach(
            Edge.RIDGE, 'R', half, half, of.end_run_in, ZERO, ridge_in(asked), of.past_in,
            clipped=asked.hip_head is HipHead.SINGLE,
        ),
        hip_reach(of, half, long - start, of.end_run_in, -rate),
    )  # fmt: skip
    lower = Reach(Edge.PLATE, '', ZERO, long, ZERO)
    alike = of.main.side.slope == of.end.side.slope
    jacks = (
        jacks_of(of, of.first_common_in)
        if alike and not of.up_in.terms
        else from_corner(half, half - last, asked.spacing_in, asked.first_in)
    )
    # over against the main slope's, but clear of the end common
    jacks = tuple(min(place, last) for place in jacks if place < half)
    places = (*jacks, half, *mirrored(jacks, long))
    region = Region((lower,), upper, places)
    return Slope(name, of.end, long, origin, along, (region,), of.rise_in, of.rise_in + top_of(of.end.side))


def handed(of: Ends) -> bool:
    """Return whether a hip of one hand cannot stand for one of the other."""
    unlike = of.main.side.slope != of.end.side.slope
    return unlike or of.asked.hip_head is HipHead.SINGLE or of.over_gable


def hip_stop(asked: Asked) -> Stop:
    """Return what hips meet at the ridge."""
    return Stop.COMMONS if asked.hip_head is HipHead.BETWEEN else Stop.RIDGE


def hip_member(of: Ends, a_on: Hand) -> Member:
    stop = hip_stop(of.asked)
    plane = at_corner(of.asked, of.run_in - of.up_in, of.main, of.end, a_on=a_on)
    if (
        not of.over_gable
    ):  # from where it crosses the end's plate its tail goes out to the corner of the eaves
        out = replace(of.main.side, overhang_in=of.main.side.overhang_in + of.up_in)
        made = hip('', replace(plane, members=Members(out)), stop)
        return replace(made, on_raised_plate=bool(of.up_in.terms))
    # over a half-hip's gable there is no main eave: the tail ends at the end's fascia, and goes as far as its overhang
    main = replace(of.main.side, overhang_in=corner.run_b(of.end.side.overhang_in, of.end.side.at))
    plane = replace(plane, members=Members(main))
    return replace(hip('', plane, stop, tail=one_cheek_tail(of.end, a_on)), on_raised_plate=True)
