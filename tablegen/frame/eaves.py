"""The line of the eaves and rakes around a roof, and the fascias that stand on the tails."""

from __future__ import annotations

from collections.abc import Iterator

from tablegen.frame.asked import Asked, Bay, ManySided
from tablegen.frame.plan import Level, LevelBoard, Plan, Point, Slope
from tablegen.frame.wood import boards_of
from tablegen.numbers.exact import Exact, exact, one_term
from tablegen.roof.figures import size


def fascias(asked: Asked, plan: Plan) -> Iterator[LevelBoard]:
    """Return the fascia of every eave, to the long points of its outer face."""
    if not asked.fascia_in:
        return
    outer = outline(asked, plan, exact(asked.fascia_in))
    for place, name in enumerate(plan.edges):
        if name:
            start, end = outer[place], outer[(place + 1) % len(outer)]
            long = _length(asked, plan, place, start, end)
            yield LevelBoard(
                'F', Level.FASCIA, long, start, end, asked.fascia_in, boards_of(asked).tail_face_in
            )


def outline(asked: Asked, plan: Plan, more_in: Exact) -> tuple[Point, ...]:
    """Return the corners of the roof's edge in plan, each eave out by its overhang and so much more, each rake by its own.

    Source: a square corner of the framing moves out by what its two edges move; those of a regular roof, from its middle, as
    the apothem grows.
    """
    slopes = {slope.name: slope for slope in plan.slopes}
    if isinstance(asked.kind, (ManySided, Bay)):
        grown = plan.slopes[0].members.side.overhang_in + more_in
        share = one_term(plan.ridge_run_in + grown) / one_term(plan.ridge_run_in)
        return tuple((x * share, y * share) for x, y in plan.plates)
    return tuple(_moved(plan, slopes, place, asked, more_in) for place in range(len(plan.plates)))


def _moved(plan: Plan, slopes: dict[str, Slope], place: int, asked: Asked, more_in: Exact) -> Point:
    x, y = plan.plates[place]
    for edge in (place - 1, place):
        name = plan.edges[edge]
        out = slopes[name].members.side.overhang_in + more_in if name else exact(asked.gable_overhang_in)
        right, up = _outwards(plan, edge)
        x, y = x + right * out, y + up * out
    return x, y


def _outwards(plan: Plan, edge: int) -> tuple[int, int]:
    """Return the direction out of the building, square to an edge of the framing, which runs with the building at its left."""
    (x, y), (to_x, to_y) = plan.plates[edge], plan.plates[(edge + 1) % len(plan.plates)]
    east, north = (to_x > x) - (to_x < x), (to_y > y) - (to_y < y)
    return north, -east


def _length(asked: Asked, plan: Plan, place: int, start: Point, end: Point) -> Exact:
    """Return the length between two corners of the fascias' outline: along an axis, or of a regular roof as its plate has grown."""
    if not isinstance(asked.kind, (ManySided, Bay)):
        return size(end[0] - start[0]) + size(end[1] - start[1])
    slope = next(one for one in plan.slopes if one.name == plan.edges[place])
    grown = plan.ridge_run_in + slope.members.side.overhang_in + asked.fascia_in
    return slope.length_in * one_term(grown) / one_term(plan.ridge_run_in)
