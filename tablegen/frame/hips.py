"""Hip roofs and half-hips: a rectangle of plates whose ridge ends over sloping ends."""

from __future__ import annotations

from tablegen.errors import BookError
from tablegen.frame.asked import Asked, Eaves, HalfHip, Hip, HipHead
from tablegen.frame.gables import outline, ridge_board
from tablegen.frame.hip_ends import Ends, end_slope, handed, hip_member, hip_reach, jacks_of
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
from tablegen.frame.stations import Places, between, mirrored
from tablegen.frame.wood import ridge_in, top_of, two_pitches
from tablegen.geometry import corner, tail
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.exact import exact
from tablegen.roof.member import Hand

HANDS = (Hand.RIGHT, Hand.LEFT, Hand.RIGHT, Hand.LEFT)
"""On which hand of each hip the main slope lies, from the left front corner around."""


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
        upper.append(hip_reach(of, ZERO, start, of.up_in, of.rate))
    edge = Edge.RIDGE if asked.ridge else Edge.MATE
    upper.append(Reach(edge, 'R', start, last, of.run_in, ZERO, ridge_in(asked)))
    if right:
        upper.append(hip_reach(of, last, long, of.run_in, -of.rate))
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
        boards.append(CornerBoard(hip_member(of, a_on), start, end, a_on if handed(of) else None))
    return tuple(boards)
