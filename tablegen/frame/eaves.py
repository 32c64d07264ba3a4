"""The line of the eaves and rakes around a roof, and the fascias that stand on the tails."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial

from msgspec.structs import replace

from tablegen.frame.asked import MIDDLES, Asked, Bay, HalfHip, ManySided, Shed, TailCut
from tablegen.frame.plan import BoardEnd, EndCut, Level, LevelBoard, Plan, Point
from tablegen.frame.wood import boards_of
from tablegen.geometry import trim
from tablegen.geometry.corner import square_corner
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, one_term, sign
from tablegen.numbers.figure import degree_figure, length_figure
from tablegen.roof.member import Hand
from tablegen.roof.side import Side

RIGHT_GABLE, LEFT_GABLE = 1, 3
"""Places of a half-hip's gables in the plan's edges."""
WALL_OF_SHED = 2
"""The edge of a shed's framing that its upper ends are held at, which nothing overhangs."""


def fascias(asked: Asked, plan: Plan) -> tuple[LevelBoard, ...]:
    """Return the fascia of every eave, from long point to long point; those alike have one mark, the shortest the first."""
    boards = sorted(_fascias(asked, plan) if asked.fascia_in else (), key=lambda one: one.length_in)
    sorts = dict.fromkeys(_sort(asked, one) for one in boards)
    marks = {sort: f'F{number}' if len(sorts) > 1 else 'F' for number, sort in enumerate(sorts, 1)}
    return tuple(replace(one, mark=marks[_sort(asked, one)]) for one in boards)


def _sort(asked: Asked, one: LevelBoard) -> tuple[str, tuple[BoardEnd, ...]]:
    return length_figure(one.length_in, asked.measure).decimal, one.ends


def _fascias(asked: Asked, plan: Plan) -> Iterator[LevelBoard]:
    if isinstance(asked.kind, HalfHip):
        yield from _over_gables(asked, plan)
    for place, name in enumerate(plan.edges):
        if not name or not _is_left(asked, plan, place):
            continue
        slope = next(one for one in plan.slopes if one.name == name)
        reach = partial(
            _square_reach if asked.tail is TailCut.SQUARE else _plumb_reach, asked, slope.members.side
        )
        start, end = (
            _corner(
                asked, plan, corner, partial(reach, _is_inside(asked, plan, corner)) if mate else _no_more
            )
            for corner, mate in (
                (place, _mate(asked, plan, place - 1)),
                ((place + 1) % len(plan.plates), _mate(asked, plan, place + 1)),
            )
        )
        if _is_regular(asked):  # as its plate has grown
            long = slope.length_in * _grown(plan, reach(False, slope.members.side))
        else:
            long = _from_to(plan, place, start, end)
        ends = tuple(_ends(asked, plan, place))
        deep = boards_of(asked).tail_face_in
        yield LevelBoard('F', Level.FASCIA, long, start, end, asked.fascia_in, deep, ends=ends, edge=place)


def _over_gables(asked: Asked, plan: Plan) -> Iterator[LevelBoard]:
    """Return the fascia of each half-hip, from the line of one hip to that of the other where its tails end; square at both ends.

    Notes:
        1. It stands plumb on its tails, in one plane with the barge rafters under it.
    """
    deep, long = boards_of(asked).tail_face_in, exact(asked.length_in)
    for edge, place, out in (
        (RIGHT_GABLE, long, asked.gable_overhang_in),
        (LEFT_GABLE, exact(0), -asked.gable_overhang_in),
    ):
        ends = []
        for hip in plan.corners:
            (x, y), (to_x, to_y) = hip.start, hip.end
            if x == place:
                ends.append((place + out, y + out * (to_y - y) / one_term(to_x - x)))
        low, high = sorted(ends, key=lambda point: point[1])
        start, end = (low, high) if edge == RIGHT_GABLE else (high, low)
        yield LevelBoard('F', Level.FASCIA, high[1] - low[1], start, end, asked.fascia_in, deep, edge=edge)


def _no_more(_: Side) -> Exact:
    return exact(0)


def _is_left(asked: Asked, plan: Plan, place: int) -> bool:
    """Return whether an eave has any length: before an L's wing that is flush with a gable none may be left of the main one."""
    if _is_regular(asked):
        return True
    corners = outline(asked, plan)
    return sign(_from_to(plan, place, corners[place], corners[(place + 1) % len(corners)])) > 0


def _from_to(plan: Plan, place: int, start: Point, end: Point) -> Exact:
    """Return how far it is from one point to another along an edge of the framing."""
    right, up = _outwards(plan, place)
    return (start[0] - end[0]) * up + (end[1] - start[1]) * right


def _mate(asked: Asked, plan: Plan, edge: int) -> str:
    """Return the name of the slope whose fascia meets one at an end, '' where none does; at a bay's wall its own other half's."""
    if isinstance(asked.kind, Bay) and not 0 <= edge < len(plan.edges):
        return '' if asked.kind.wall_through == MIDDLES else plan.edges[0]
    edge %= len(plan.edges)
    return plan.edges[edge] if plan.edges[edge] and _is_left(asked, plan, edge) else ''


def _ends(asked: Asked, plan: Plan, place: int) -> Iterator[BoardEnd]:
    """Return how a fascia's ends are mitered, the left one first; at a gable, and at a wall square to it, it is square."""
    slopes = {slope.name: slope.members.side for slope in plan.slopes}
    own = slopes[plan.edges[place]]
    for hand, corner, beside in ((Hand.LEFT, place, place - 1), (Hand.RIGHT, place + 1, place + 1)):
        if not (mate := _mate(asked, plan, beside)):
            continue
        inside = _is_inside(asked, plan, corner % len(plan.plates))
        wall = isinstance(asked.kind, Bay) and not 0 <= beside < len(plan.edges)
        at = own.at if _is_regular(asked) else square_corner(own.slope, slopes[mate].slope)
        miter = trim.square_to_slope(at) if asked.tail is TailCut.SQUARE else trim.standing_plumb(at)
        cut = EndCut.WALL if wall else EndCut.INSIDE if inside else EndCut.OUTSIDE
        yield BoardEnd(hand, cut, degree_figure(miter.miter), degree_figure(miter.bevel))


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
    return tuple(_corner(asked, plan, place, _no_more) for place in range(len(plan.plates)))


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
        if isinstance(asked.kind, Shed) and edge == WALL_OF_SHED:
            out = exact(0)
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
