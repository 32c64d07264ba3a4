"""What a wing adds to a roof, whatever it stands on: its slopes, its valleys, its ridge and its hipped end."""

from __future__ import annotations

from msgspec.structs import replace

from tablegen.frame.asked import HipHead, RidgeTop
from tablegen.frame.gables import ridge_board
from tablegen.frame.hip_ends import Ends, end_slope, hip_member, jacks_of
from tablegen.frame.joined import Joined
from tablegen.frame.plan import (
    EAST,
    NORTH,
    SOUTH,
    ZERO,
    BoardEnd,
    CornerBoard,
    Edge,
    EndCut,
    Level,
    LevelBoard,
    Point,
    Reach,
    Region,
    Slope,
)
from tablegen.frame.stations import Places, between, clear_between, mirrored
from tablegen.frame.wood import at_corner, ridge_in, top_of
from tablegen.geometry import cheeks, corner, ridge, shortening
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, root
from tablegen.numbers.figure import degree_figure
from tablegen.roof.cheeks import one_cheek
from tablegen.roof.framing import valley
from tablegen.roof.member import End, Hand, Member, Stop
from tablegen.roof.members import Members
from tablegen.roof.stopped import met_end


def turned_over(slope: Slope) -> Slope:
    """Return a slope turned right to left, to be turned back."""
    long = slope.length_in
    regions = tuple(
        Region(
            tuple(reach.mirrored(long) for reach in reversed(region.lower)),
            tuple(reach.mirrored(long) for reach in reversed(region.upper)),
            mirrored(region.stations, long),
            region.tails,
        )
        for region in reversed(slope.regions)  # the first one stands at the left end
    )
    return replace(slope, regions=regions)


def cut(reaches: tuple[Reach, ...], start: Exact, end: Exact) -> tuple[Reach, ...]:
    """Return what lies of a line between two places along."""
    return tuple(
        reach.part(max(reach.start_in, start), min(reach.end_in, end))
        for reach in reaches
        if reach.start_in < end and reach.end_in > start
    )


def within(places: Places, start: Exact, end: Exact) -> Places:
    """Return the places between two, the last one too."""
    return tuple(place for place in places if start < place <= end)


def wing_ends(of: Joined) -> Ends:
    """Return the wing's hipped end."""
    own = Members(replace(of.own.side, at=of.own.side.pitch.corner))  # its hips stand between its own slopes
    return Ends(replace(of.asked, first_in=None), own, own, of.half_in, ZERO, ZERO, 1)


def wing_slopes(of: Joined) -> tuple[Slope, ...]:
    """Return the wing's left slope, its right one, and the one over its hipped end."""
    out = exact(of.wing.out_in)
    left, right = _wing_left(of), wing_right(of)
    if not of.wing.hipped:
        return left, right
    return left, right, end_slope(wing_ends(of), 'wing_front', (of.left_in, -out), EAST)


def _wing_left(of: Joined) -> Slope:
    origin = (of.left_in, ZERO)
    region = _wing_region(of)
    return Slope(
        'wing_left', of.own, exact(of.wing.out_in), origin, SOUTH, (region,), ZERO, top_of(of.own.side)
    )


def wing_right(of: Joined) -> Slope:
    """Return the wing's right slope, its left one turned over."""
    origin = (of.right_in, -exact(of.wing.out_in))
    return replace(turned_over(_wing_left(of)), name='wing_right', origin=origin, along=NORTH)


def _wing_region(of: Joined) -> Region:
    """Return the wing's left slope: its plate runs out from the inside corner at 0, its valley in from there."""
    asked, out, reach = of.asked, exact(of.wing.out_in), of.reach_in
    edge, thick = (
        (Edge.BOARD, asked.valleys.thickness_in * 0)
        if of.blind
        else (Edge.VALLEY, asked.valleys.thickness_in)
    )
    lower = (
        Reach(edge, 'V', -reach, ZERO, of.half_in, -1 / of.rate, thick),
        Reach(Edge.PLATE, '', ZERO, out, ZERO),
    )
    at_ridge = Edge.RIDGE if asked.ridge else Edge.MATE
    half = asked.rafters.thickness_in / 2
    upper = [Reach(at_ridge, 'R2', -reach, out, of.half_in, ZERO, ridge_in(asked))]
    jacks: Places = ()
    first = out - half
    if of.wing.hipped:
        ends = wing_ends(of)
        start = out - ends.end_run_in
        upper = [
            upper[0].part(-reach, start),
            Reach(Edge.HIP, 'H', start, out, of.half_in, -ends.rate, asked.hips.thickness_in),
        ]
        jacks, first = mirrored(jacks_of(ends, ends.first_common_in), out), out - ends.first_common_in
    commons = tuple(
        -place for place in reversed(between(-first, reach, asked.spacing_in, asked.rafters.thickness_in))
    )
    shortest = (
        of.shortest_jack_in(of.at.plan_b) * of.rate
    )  # along; one nearer to the valley's head has no wood to nail
    standing = clear_between(commons, -reach, shortest - reach, asked.rafters.thickness_in)
    places = tuple(place for place in standing if place > -reach) + jacks
    return Region(lower, tuple(upper), of.clear_on_wing(places))


def valleys(of: Joined, long_left: bool) -> tuple[CornerBoard, ...]:
    """Return the valleys, the left one first; none under a roof that is laid on."""
    if of.blind:
        return ()
    middle: Point = (of.left_in + of.half_in, of.reach_in)
    boards = []
    for is_left, start, a_on in ((True, of.left_in, Hand.LEFT), (False, of.right_in, Hand.RIGHT)):
        longer = is_left == long_left and not of.level_ridges
        member, end = _valley(of, a_on, longer), middle
        if longer:
            end = (of.top_in if is_left else of.left_in + of.right_in - of.top_in, of.base.ridge_run_in)
        unlike = of.main.side.slope != of.own.side.slope
        hand = member.head.long or (a_on if unlike else None)
        boards.append(CornerBoard(member, (start, ZERO), end, hand))
    return tuple(boards)


def only_right_valley(of: Joined) -> CornerBoard:
    """Return the valley of an L, in the corner of two ridges of one height or at the upper hip."""
    board = _valley(of, Hand.RIGHT, False, Stop.HIP)
    return CornerBoard(board, (of.right_in, ZERO), (of.left_in + of.half_in, of.reach_in), board.head.long)


def _valley(of: Joined, a_on: Hand, longer: bool, against: Stop = Stop.VALLEY) -> Member:
    run = of.base.ridge_run_in if longer else of.reach_in
    plane = at_corner(of.asked, run, of.main, of.own, a_on)
    if of.level_ridges or longer:
        return valley('', plane, Stop.RIDGES if of.level_ridges else Stop.RIDGE)
    return valley('', plane, head=_on_longer(of, a_on, against))


def _on_longer(of: Joined, a_on: Hand, stop: Stop) -> End:
    """Return the head of the shorter valley on the side of the longer one, or of an L's on that of the hip in the same line.

    Source: both run at the plan angle a to the main eave, towards each other, so at 180 − 2a; its tangent by the double
    angle. Square to each other at a regular corner.
    """
    side, thick, tangent = of.main.side, of.asked.valleys.thickness_in, of.rate
    apart = 1 - tangent.squared()
    if not apart:
        return met_end(side, stop, thick, exact(thick / 2))
    plan = Angle(2 * tangent / abs(apart))
    off = thick / 2 / plan.sine()
    cut = one_cheek(side, cheeks.hip_against(plan, of.at), thick, thick / plan.tan())
    long = a_on.other if apart > 0 else a_on
    return met_end(side, stop, thick, off, cut, long)


def wing_hips(of: Joined) -> tuple[CornerBoard, ...]:
    """Return the hips of a hipped wing."""
    if not of.wing.hipped:
        return ()
    out, ends = exact(of.wing.out_in), wing_ends(of)
    peak: Point = (of.left_in + of.half_in, ends.end_run_in - out)
    handed = of.asked.hip_head is HipHead.SINGLE
    return tuple(
        CornerBoard(hip_member(ends, a_on), (x, -out), peak, a_on if handed else None)
        for x, a_on in ((of.left_in, Hand.LEFT), (of.right_in, Hand.RIGHT))
    )


def level_boards(of: Joined) -> tuple[LevelBoard, ...]:
    """Return the wing's ridge, and the boards of a blind valley."""
    x, asked = of.left_in + of.half_in, of.asked
    start = -exact(of.wing.out_in) - asked.gable_overhang_in
    if of.wing.hipped:
        ends = wing_ends(of)
        start = ends.end_run_in - of.wing.out_in - ends.past_in
    found = []
    if asked.ridge:
        end, cheeked, tilt = _ridge_end(of)
        one = ridge_board(asked, 'R2', (x, start), (x, end), end - start)
        found.append(replace(one, end_cheeks=cheeked, end_tilt=degree_figure(tilt) if tilt else None))
    if of.blind and of.wing.board_in:
        up = shortening.along(of.reach_in, of.main.side.slope)
        long = root((of.half_in * of.half_in).terms[0][0] + up.squared())
        along = corner.in_plane(of.at)
        up_slope, level = degree_figure(along), degree_figure(along.complement())
        square = degree_figure(Angle(ZERO))
        for foot in (of.left_in, of.right_in):
            board = LevelBoard(
                'VB',
                Level.VALLEY_BOARD,
                long,
                (foot, ZERO),
                (x, of.reach_in),
                of.wing.board_in,
                asked.rafters.depth_in,
                ends=(
                    BoardEnd(None, EndCut.UP, up_slope, square),
                    BoardEnd(None, EndCut.LEVEL, level, square),
                ),
            )
            found.append(board)
    return tuple(found)


def _ridge_end(of: Joined) -> tuple[Exact, int, Angle | None]:
    """Return where the wing's ridge ends, up on the plan, how many cheeks it has there, and the blade's tilt for them."""
    asked, thick = of.asked, of.asked.valleys.thickness_in
    if of.blind:
        assert asked.ridge
        flush = (
            asked.ridge.top is RidgeTop.FLUSH
        )  # planed into both planes it reaches the line where they meet
        down = ridge.sits_down(asked.ridge.thickness_in, of.own.side.slope) if flush else ZERO
        back = (down + of.lift_in) / of.main.side.slope
        return of.reach_in - back, 0, Angle(of.main.side.slope).complement()
    if of.level_ridges:
        return of.reach_in - ridge_in(asked) / 2, 0, None
    return of.reach_in - shortening.jack_at(thick, of.at.plan_a), 2, of.at.plan_a
