"""Hips and valleys of a roof: the line where two slopes meet, the board on it, what its ends are cut to."""

from __future__ import annotations

from decimal import Decimal

from msgspec.structs import replace

from tablegen.proof.digits import SLACK, real
from tablegen.proof.roof import UP
from tablegen.proof.roof_slopes import LEVEL, ZERO, Slope
from tablegen.proof.roof_stated import THICK, Asked
from tablegen.proof.roof_stops import Stop
from tablegen.proof.roof_whole import Corner
from tablegen.proof.space import Plane, Vector, angle, cross, dot, level, meet, plane
from tablegen.proof.timber import End, Timber, past

HALF = real(THICK) / 2


def line_of(left: Slope, right: Slope) -> tuple[Vector, Vector]:
    """Return the direction uphill of the line where two slopes meet, and its point over the plate lines' corner."""
    found = cross(left.top.normal, right.top.normal)
    edge = found if found[2] > 0 else (-found[0], -found[1], -found[2])
    higher = max(left, right, key=lambda one: one.origin[2])
    return edge, meet(left.top, right.top, higher.line(ZERO))


def center_of(left: Slope, right: Slope) -> Plane:
    """Return the plumb plane through that line."""
    edge, foot = line_of(left, right)
    return plane(cross(UP, level(edge)), foot)


def hip(
    asked: Asked,
    slopes: tuple[Slope, Slope],
    main: Slope,
    head: End,
    center: Plane,
    tail: End | None = None,
    hand: int | None = None,
) -> Corner:
    """Return the hip between two slopes.

    Given:
        slopes  that on its left and that on its right, looking up it
        main    in whose run it is stepped off; it has the hand on which this lies
        tail    where it is not cut to the tails of both
        hand    where it has another
    """
    left, right = slopes
    edge, foot = line_of(left, right)
    tail = tail or End((left.tail, right.tail))
    high = main.above
    board = Timber(foot, edge, THICK, asked.depth('stock.hips'), head, tail, center, high)
    drops = [_drop(board, slope, aside) for slope, aside in zip(slopes, (1, -1), strict=True)]
    backs = None
    if asked.word('cuts.hips', 'dropped') == 'dropped':
        foot = foot[0], foot[1], foot[2] - max(drops)
        board = replace(board, foot=foot, height=high - max(drops))
    else:
        backs = angle(board.top, left.top.normal), angle(board.top, right.top.normal)
    if hand is None and not (_alike(board) and abs(drops[0] - drops[1]) < SLACK):
        hand = 0 if main is left else 1
    return Corner('hip', (left.name, right.name), board, main.inward, hand, (drops[0], drops[1]), backs)


def valley(
    asked: Asked, slopes: tuple[Slope, Slope], main: Slope, head: End, center: Plane, unlike: bool
) -> Corner:
    """Return the valley between two slopes.

    Given:
        unlike  whether these are of two pitches: it has a hand then, that of the main slope where its head has no long point
    """
    left, right = slopes
    edge, foot = line_of(left, right)
    tail = End((left.tail, right.tail), hollow=True)
    board = Timber(foot, edge, THICK, asked.depth('stock.valleys'), head, tail, center, main.above)
    faces = [one.line(ZERO) for one in slopes]
    sides = [plane(board.left, foot).moved(side) for side in (HALF, -HALF)]
    reached = [dot(board.ahead, meet(side, face, LEVEL)) for side in sides for face in faces]
    board = replace(board, out=dot(board.ahead, foot) - min(reached))
    apart = board.at(head, HALF) - board.at(head, -HALF)
    hand = (0 if main is left else 1) if unlike else None
    if abs(apart) > SLACK and len(head.faces) == 1:
        hand = 0 if apart > 0 else 1
    return Corner('valley', (left.name, right.name), board, main.inward, hand)


def stop_of(edge: str, one: Slope, other: Slope, start: Decimal | None = None, end: Decimal | None = None) -> Stop:  # fmt: skip
    """Return a hip or valley as what rafters end at."""
    return Stop(edge, center_of(one, other), THICK, start=start, end=end)


def _drop(board: Timber, slope: Slope, aside: int) -> Decimal:
    """Return how far a side of a hip's square top must come down to lie in a slope."""
    side = plane(board.left, board.foot).moved(aside * HALF)
    station, square = plane(board.ahead, board.foot), plane(board.top, board.foot)
    return meet(side, square, station)[2] - meet(side, slope.top, station)[2]


def _alike(board: Timber) -> bool:
    """Return whether its left side is its right one's likeness."""
    ends = ((board.head, True), (board.tail, False))
    return all(abs(board.at(end, HALF, upper) - board.at(end, -HALF, upper)) < SLACK for end, upper in ends)


def commons_head(main: Slope, end: Slope, run: tuple[Decimal, Decimal], foot: Vector) -> End:
    """Return the head of a hip in the corner of the last common of a slope and the end common."""
    return End((past(main.line(run[0]), THICK, foot), past(end.line(run[1]), THICK, foot)), thick=THICK)
