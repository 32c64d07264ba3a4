"""The line of the eaves and rakes around a roof, and the fascias that stand on the tails."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial

from tablegen.frame.asked import Asked, Bay, ManySided, TailCut
from tablegen.frame.plan import Level, LevelBoard, Plan, Point
from tablegen.frame.wood import boards_of
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, one_term, sign
from tablegen.roof.side import Side


def fascias(asked: Asked, plan: Plan) -> Iterator[LevelBoard]:
    """Return the fascia of every eave, from long point to long point."""
    if not asked.fascia_in:
        return
    for place, name in enumerate(plan.edges):
        if name:
            slope = next(one for one in plan.slopes if one.name == name)
            reach = partial(
                _square_reach if asked.tail is TailCut.SQUARE else _plumb_reach, asked, slope.members.side
            )
            start, end = (
                _corner(asked, plan, one, partial(reach, _is_inside(asked, plan, one)))
                for one in (place, (place + 1) % len(plan.plates))
            )
            if _is_regular(asked):  # as its plate has grown
                long = slope.length_in * _grown(plan, reach(False, slope.members.side))
            else:
                right, up = _outwards(plan, place)
                long = (start[0] - end[0]) * up + (end[1] - start[1]) * right
            if sign(long) <= 0:
                continue  # an L's wing, flush with a gable whose overhang ends over its eave: no main eave is left there
            yield LevelBoard(
                'F', Level.FASCIA, long, start, end, asked.fascia_in, boards_of(asked).tail_face_in
            )


def _is_regular(asked: Asked) -> bool:
    return isinstance(asked.kind, (ManySided, Bay))


def _grown(plan: Plan, more_in: Exact) -> Exact:
    """Return what the sides of a regular roof are at its eaves, and so much farther out, over what they are at its plates.

    Source: they grow, from its middle, as the apothem does.
    """
    out = plan.slopes[0].members.side.overhang_in + more_in
    return one_term(plan.ridge_run_in + out) / one_term(plan.ridge_run_in)


def _plumb_reach(asked: Asked, own: Side, inside: bool, other: Side) -> Exact:
    """Return how far past the other eave's tails a plumb fascia's long point is: of its outer face, at an inside corner of its back."""
    return exact(0 if inside else asked.fascia_in)


def _square_reach(asked: Asked, own: Side, inside: bool, other: Side) -> Exact:
    """Return the same of a fascia square to its slope: of its outer face's upper edge, at an inside corner of its back's lower one.

    Source: so far square out of the other fascia's back a point is, out cos θ' + down sin θ': its thickness where the outer face's
    upper edge, which lies t sin θ under the eave, meets the other outer face; nothing where the back's lower edge, d cos θ under it,
    meets the other back.
    """
    slope, across = Angle(own.slope), Angle(other.slope)
    if inside:
        return -boards_of(asked).tail_face_in * slope.cosine() * other.slope
    return asked.fascia_in * (1 - slope.sine() * across.sine()) / across.cosine()


def outline(asked: Asked, plan: Plan) -> tuple[Point, ...]:
    """Return the corners of the roof's edge in plan, each eave out by its overhang, each rake by its own."""
    return tuple(_corner(asked, plan, place, lambda _: exact(0)) for place in range(len(plan.plates)))


def _corner(asked: Asked, plan: Plan, place: int, more: Callable[[Side], Exact]) -> Point:
    """Return a corner of the framing moved out by the overhangs beside it, and each eave by more.

    Source: a square corner of the framing moves out by what its two edges move.
    """
    x, y = plan.plates[place]
    if _is_regular(asked):
        share = _grown(plan, more(plan.slopes[0].members.side))
        return x * share, y * share
    slopes = {slope.name: slope.members.side for slope in plan.slopes}
    for edge in (place - 1, place):
        name = plan.edges[edge]
        out = slopes[name].overhang_in + more(slopes[name]) if name else exact(asked.gable_overhang_in)
        right, up = _outwards(plan, edge)
        x, y = x + right * out, y + up * out
    return x, y


def _is_inside(asked: Asked, plan: Plan, place: int) -> bool:
    """Return whether the framing turns in at a corner."""
    if _is_regular(asked):
        return False
    (right, up), (next_right, next_up) = _outwards(plan, place - 1), _outwards(plan, place)
    return right * next_up - up * next_right < 0


def _outwards(plan: Plan, edge: int) -> tuple[int, int]:
    """Return the direction out of the building, square to an edge of the framing, which runs with the building at its left."""
    east, north = _along(plan, edge)
    return north, -east


def _along(plan: Plan, edge: int) -> tuple[int, int]:
    """Return the direction of an edge of the framing; the main front's, where a wing flush with its end leaves nothing of it."""
    (x, y), (to_x, to_y) = plan.plates[edge], plan.plates[(edge + 1) % len(plan.plates)]
    if (x, y) == (to_x, to_y):
        return 1, 0
    return (to_x > x) - (to_x < x), (to_y > y) - (to_y < y)
