"""Where a level board of several parts may be joined: at the center lines of the rafters that it holds, or that hold it."""

from __future__ import annotations

from collections.abc import Iterator

from tablegen.frame.plan import Edge, LevelBoard, Plan, Point, Slope
from tablegen.numbers.exact import Exact, exact
from tablegen.roof.member import Hand


def joints_of(board: LevelBoard, plan: Plan) -> tuple[Exact, ...]:
    """Return the places along a board, from its left end, in, where rafters stand; none of a board without any.

    Notes:
        1. Left as one sees it from outside: of a ridge from the first of its slopes.
        2. Rafters over against one another stand in line but beside an end that is hipped alone: the first slope's count.
    """
    for slope in plan.slopes:
        if found := sorted(_centers(board, plan, slope)):
            left = min(_along(slope, board.start), _along(slope, board.end))
            return tuple(one - left + _left_point(board) for one in found)
    return ()


def _centers(board: LevelBoard, plan: Plan, slope: Slope) -> Iterator[Exact]:
    under = board.edge is not None and plan.edges[board.edge] == slope.name
    for _region, along, lower, upper in slope.standing():
        at_it = upper.mark == board.mark and upper.edge in (Edge.RIDGE, Edge.PURLIN)
        if (under and lower.edge is Edge.PLATE) or at_it:
            yield along


def _along(slope: Slope, point: Point) -> Exact:
    return sum((slope.along[n] * (point[n] - slope.origin[n]) for n in (0, 1)), exact(0))


def _left_point(board: LevelBoard) -> Exact:
    """Return how far a mitered board's long point at the left is before its center line's end."""
    ways = (Hand.LEFT, Hand.RIGHT)
    mitered = [hand for hand in ways if any(one.hand is hand for one in board.ends)]
    if Hand.LEFT not in mitered:
        return exact(0)
    apart = [end - start for start, end in zip(board.start, board.end, strict=True)]
    long = sum(
        (one if one > 0 else -one for one in apart), exact(0)
    )  # it lies along one axis where it has joints
    return (board.length_in - long) / len(mitered)
