"""Hip roofs and half-hips: a rectangle of plates whose ridge ends over sloping ends."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from tablegen.errors import BookError
from tablegen.frame.asked import Asked, Eaves, HalfHip, Hip, HipHead
from tablegen.frame.gables import outline, ridge_board
from tablegen.frame.limits import least
from tablegen.frame.plan import (
    EAST,
    NORTH,
    SOUTH,
    WEST,
    ZERO,
    CornerBoard,
    Edge,
    Plan,
    Point,
    Reach,
    Region,
    Slope,
)
from tablegen.frame.stations import Places, between, from_corner, mirrored, to_corner
from tablegen.frame.wood import at_corner, ridge_in, top_of, two_pitches
from tablegen.geometry import corner, ridge, shortening, tail
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, exact
from tablegen.roof.framing import hip
from tablegen.roof.member import Hand, Member, Stop
from tablegen.roof.members import Members
from tablegen.roof.stopped import one_cheek_tail

HANDS = (Hand.RIGHT, Hand.LEFT, Hand.RIGHT, Hand.LEFT)
"""On which hand of each hip the main slope lies, from the left front corner around."""


@dataclass(frozen=True, slots=True)
class Ends:
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
    def first_common_in(self) -> Exact:
        """Return where the first full common stands, along from the corner: at the ridge's end, or clear of the hip's cheek."""
        if self.asked.hip_head is HipHead.BETWEEN:
            return self.end_run_in
        at, half = self.main.side.at, self.asked.rafters.thickness_in / 2
        met = shortening.set_back_at_ridge(ridge_in(self.asked), at)
        return self.end_run_in - met + self.asked.hips.thickness_in / 2 / at.plan_a.sine() + half


def hipped(asked: Asked) -> Plan:
    """Return the plan of a hip roof, hipped at both ends or at the left one.

    Errors:
        BookError where no ridge is left between the ends, or a hip would lean back
    """
    kind = asked.kind
    assert isinstance(kind, Hip)
    if kind.eaves is Eaves.EQUAL and kind.end:
        return _raised(asked, kind, kind.end)
    main, end = two_pitches(asked, kind.end or asked.pitch)
    return _roof(Ends(asked, main, end, exact(asked.width_in / 2), ZERO, ZERO, kind.ends))


def _raised(asked: Asked, kind: Hip, pitch: Pitch) -> Plan:
    """Return the plan of a hip roof of equal overhangs, the plates of its steeper ends raised so that eaves are level.

    Errors:
        BookError for ends that are flatter than the sides: those plates are not the ones to raise

    Source: the hip's line goes through the corner of the eaves, and over a raised plate so far inward of the other plate
    line as its slope rises by what the plate is raised.
    """
    main, end = two_pitches(asked, pitch, asked.overhang_in)
    rise = tail.plate_raise(asked.overhang_in, main.side.at)
    if rise < 0:
        raise BookError('hip.end_pitch', message('frame.flatter_ends'), message('frame.steeper_ends'))
    up = rise / main.side.slope
    return _roof(Ends(asked, main, end, exact(asked.width_in / 2), up, rise, kind.ends))


def half_hipped(asked: Asked) -> Plan:
    """Return the plan of a gable roof whose two ends are hipped at the top.

    Errors:
        BookError where the gable is as high as the ridge
    """
    kind = asked.kind
    assert isinstance(kind, HalfHip)
    main, end = two_pitches(asked, kind.end or asked.pitch, asked.gable_overhang_in)
    up = kind.gable_rise_in / main.side.slope
    if not 0 < up < asked.width_in / 2:
        raise BookError(
            'half-hip.gable_rise', message('frame.gable_up_to_the_ridge'), message('frame.below_the_ridge')
        )
    out = corner.run_b(end.side.overhang_in, end.side.at)
    if out - up > main.side.overhang_in:
        raise BookError('half-hip.gable_rise', message('frame.low_gable'), '', message('frame.higher_gable'))
    return _roof(Ends(asked, main, end, exact(asked.width_in / 2), up, exact(kind.gable_rise_in), 2, True))


def _roof(of: Ends) -> Plan:
    asked, long = of.asked, of.asked.length_in
    _checked_length(of)
    slopes = [*_main(of), end_slope(of, 'left', (ZERO, asked.width_in - of.on_plate_in), SOUTH)]
    if of.number > 1:
        slopes.append(end_slope(of, 'right', (exact(long), of.on_plate_in), NORTH))
    corners = _corners(of)
    hipped = not of.over_gable
    edges = ('front', 'right' if hipped and of.number > 1 else '', 'back', 'left' if hipped else '')
    start, last = (
        of.end_run_in,
        long - of.end_run_in if of.number > 1 else exact(long + asked.gable_overhang_in),
    )
    left, right = start - of.past_in, last + of.past_in if of.number > 1 else last
    points: tuple[Point, Point] = ((left, of.run_in), (right, of.run_in))
    levels = (ridge_board(asked, 'R', *points, right - left),) if asked.ridge else ()
    return Plan(tuple(slopes), corners, levels, of.run_in, plates=outline(asked), edges=edges)


def _checked_length(of: Ends) -> None:
    """Refuse a roof on whose ridge the commons that its hips' heads ask for have no room.

    Errors:
        BookError for that

    Notes:
        1. One common may serve both ends where hips stand clear of it, with one cheek each; and a gable's own serves a hip's head
           that is cut to it, where it stands on the ridge's very end.
    """
    asked, wood, first = of.asked, of.asked.rafters.thickness_in, of.first_common_in
    single = asked.hip_head is HipHead.SINGLE
    if of.number > 1:
        shortest = 2 * first if single else 2 * first + wood
    else:
        shortest = first + wood / 2
        if asked.length_in != shortest:
            shortest += wood
    if asked.length_in < shortest:
        meet = of.end_run_in * of.number >= asked.length_in
        problem = 'frame.hips_meet' if meet else 'frame.short_ridge'
        raise BookError(
            'length',
            message(problem, length=text.in_units(asked.length_in)),
            message('frame.over', least=least(shortest, asked)),
        )


def _main(of: Ends) -> tuple[Slope, Slope]:
    """Return the two main slopes: the back's left end is the roof's right one, its rafters over against the front's."""
    asked, two, places = of.asked, of.number > 1, _along(of)
    long, wide = exact(asked.length_in), exact(asked.width_in)
    return (
        _main_slope(of, 'front', (ZERO, ZERO), EAST, places, True, two),
        _main_slope(of, 'back', (long, wide), WEST, mirrored(places, long), two, True),
    )


def _main_slope(
    of: Ends, name: str, origin: Point, along: Point, places: Places, left: bool, right: bool
) -> Slope:
    asked, long = of.asked, exact(of.asked.length_in)
    start, last = (of.end_run_in if left else ZERO), long - of.end_run_in if right else long
    upper = []
    if left:
        upper.append(_hip(of, ZERO, start, of.up_in, of.rate))
    edge = Edge.RIDGE if asked.ridge else Edge.MATE
    upper.append(Reach(edge, 'R', start, last, of.run_in, ZERO, ridge_in(asked)))
    if right:
        upper.append(_hip(of, last, long, of.run_in, -of.rate))
    lower = Reach(Edge.PLATE, '', ZERO, long, ZERO)
    return Slope(
        name,
        of.main,
        long,
        origin,
        along,
        (Region((lower,), tuple(upper), places),),
        ZERO,
        top_of(of.main.side),
    )


def _hip(of: Ends, start: Exact, last: Exact, inward: Exact, rate: Exact) -> Reach:
    return Reach(Edge.HIP, 'H', start, last, inward, rate, of.asked.hips.thickness_in)


def _along(of: Ends) -> Places:
    """Return where the front's rafters stand: jacks at its hips, commons from the one ridge end to the other."""
    asked, long, half = of.asked, exact(of.asked.length_in), of.asked.rafters.thickness_in / 2
    two, start = of.number > 1, of.first_common_in
    last = long - start if two else long - half
    if two and start < last < start + asked.rafters.thickness_in and asked.hip_head is HipHead.SINGLE:
        start = last = (start + last) / 2  # one common for both ends
    jacks = jacks_of(of, start)
    # from the hipped end: the odd bay stands at the other
    middle = between(start, last, asked.spacing_in, asked.rafters.thickness_in)
    return (*jacks, *middle, *(mirrored(jacks, long) if two else ()))


def jacks_of(of: Ends, first_common: Exact) -> Places:
    asked, thick = of.asked, of.asked.rafters.thickness_in
    if asked.hip_head is HipHead.SINGLE and asked.first_in is None:
        jacks = to_corner(first_common, asked.spacing_in)
    else:
        jacks = from_corner(first_common, exact(thick), asked.spacing_in, asked.first_in)
    if of.over_gable:  # a half-hip has a gable under it, and its rafter flush with that
        beside = exact(thick * Fraction(3, 2))
        return (exact(thick / 2), *(max(place, beside) for place in jacks if place > thick / 2))
    return jacks


def end_slope(of: Ends, name: str, origin: Point, along: Point) -> Slope:
    """Return a sloping end: jacks to both hips, the end common in the middle."""
    asked, thick = of.asked, exact(of.asked.rafters.thickness_in)
    half, start = of.run_in - of.on_plate_in, of.up_in - of.on_plate_in
    long, rate = 2 * half, of.end.side.at.plan_a.tan()
    upper = (
        _hip(of, start, half, ZERO, rate),
        Reach(
            Edge.RIDGE, 'R', half, half, of.end_run_in, ZERO, ridge_in(asked), of.past_in,
            clipped=asked.hip_head is HipHead.SINGLE,
        ),
        _hip(of, half, long - start, of.end_run_in, -rate),
    )  # fmt: skip
    lower = Reach(Edge.PLATE, '', ZERO, long, ZERO)
    alike = of.main.side.slope == of.end.side.slope
    jacks = (
        jacks_of(of, of.first_common_in)
        if alike and not of.up_in.terms
        else from_corner(half, thick, asked.spacing_in, asked.first_in)
    )
    # over against the main slope's, but clear of the end common
    jacks = tuple(min(place, half - thick) for place in jacks if place < half)
    places = (*jacks, half, *mirrored(jacks, long))
    region = Region((lower,), upper, places)
    return Slope(name, of.end, long, origin, along, (region,), of.rise_in, of.rise_in + top_of(of.end.side))


def _corners(of: Ends) -> tuple[CornerBoard, ...]:
    """Return the hips, from the left front corner around."""
    long, wide = exact(of.asked.length_in), exact(of.asked.width_in)
    left, right = of.end_run_in, long - of.end_run_in
    starts = ((ZERO, of.up_in), (long, of.up_in), (long, wide - of.up_in), (ZERO, wide - of.up_in))
    ends = ((left, of.run_in), (right, of.run_in), (right, of.run_in), (left, of.run_in))
    boards = []
    for start, end, a_on in zip(starts, ends, HANDS, strict=True):
        if of.number == 1 and end is not ends[0] and end is not ends[3]:
            continue
        boards.append(CornerBoard(hip_member(of, a_on), start, end, a_on if _handed(of) else None))
    return tuple(boards)


def _handed(of: Ends) -> bool:
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
        return hip('', replace(plane, members=Members(out)), stop)
    # over a half-hip's gable there is no main eave: the tail ends at the end's fascia, and goes as far as its overhang
    main = replace(of.main.side, overhang_in=corner.run_b(of.end.side.overhang_in, of.end.side.at))
    plane = replace(plane, members=Members(main))
    return hip('', plane, stop, tail=one_cheek_tail(of.end, a_on))
