"""Roofs whose ridge runs from gable to gable, and sheds: every rafter of a slope is alike."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from tablegen.errors import BookError
from tablegen.frame.asked import Asked, Gable, Gambrel, Saltbox, Shed, Upper
from tablegen.frame.plan import (
    EAST,
    WEST,
    ZERO,
    Edge,
    Level,
    LevelBoard,
    Plan,
    Point,
    Reach,
    Region,
    Slope,
)
from tablegen.frame.stations import Places, at_gables, mirrored
from tablegen.frame.wood import boards_of, one_pitch, ridge_in, top_of, two_pitches
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, exact, one_term
from tablegen.roof.members import Members
from tablegen.roof.side import side

EDGES_OF = {
    Upper.WALL: Edge.WALL,
    Upper.LEDGER: Edge.LEDGER,
    Upper.BEAM_AGAINST: Edge.BEAM,
    Upper.BEAM_OVER: Edge.OVER,
}
"""What bounds a shed's slope above."""
EDGES = ('front', '', 'back', '')
"""Of a rectangle of plates with gables at its left and right."""


def gable(asked: Asked) -> Plan:
    """Return the plan of a gable roof of one pitch or, of a saltbox, of two."""
    width = asked.width_in
    if isinstance(asked.kind, Saltbox):
        front, back = two_pitches(asked, asked.kind.back, asked.overhang_in)
        below = asked.kind.back_plate_below_in
        run = _ridge_over_front(asked, front, back, below)
    else:
        assert isinstance(asked.kind, Gable)
        front = back = one_pitch(asked)
        run, below = exact(width / 2), Fraction(0)
    return _ridged(asked, (front, run, ZERO), (back, width - run, exact(-below)))


def gambrel(asked: Asked) -> Plan:
    """Return the plan of a gambrel: two slopes a side, a purlin where they meet."""
    kind = asked.kind
    assert isinstance(kind, Gambrel)
    half, out = asked.width_in / 2, kind.break_in
    if not 0 < out < half:
        raise BookError(
            'gambrel.break', message('frame.break_past_the_ridge'), message('frame.less_than_half_the_width')
        )
    lower, upper = one_pitch(asked), Members(side(kind.upper, boards_of(asked)))
    places = _places(asked)
    slopes, levels = [], [_level('R', Level.RIDGE, asked, exact(half))] if asked.ridge else []
    for number, (name, origin, along, stand) in enumerate(_two_sides(asked, places), 1):
        at_purlin, at_ridge = (
            _level_reach(Edge.PURLIN, f'P{number}', asked, exact(out), asked.rafters.thickness_in),
            _ridge_reach(asked, exact(half)),
        )
        base = top_of(lower.side)
        slopes.append(_slope(name, lower, asked, origin, along, stand, _plate(asked), at_purlin, ZERO, base))
        high = base + out * lower.side.slope - out * upper.side.slope
        slopes.append(
            _slope(f'{name}_upper', upper, asked, origin, along, stand, at_purlin, at_ridge, ZERO, high)
        )
        inward = exact(out) if name == 'front' else asked.width_in - exact(out)
        levels.append(_level(f'P{number}', Level.PURLIN, asked, inward, asked.rafters.thickness_in))
    return Plan(
        tuple(slopes), levels=tuple(levels), ridge_run_in=exact(half), plates=outline(asked), edges=EDGES
    )


def shed(asked: Asked) -> Plan:
    """Return the plan of one slope against a wall, on a ledger or at a beam; its run is the building's width."""
    kind = asked.kind
    assert isinstance(kind, Shed)
    if kind.upper is Upper.BEAM_OVER and kind.thickness_in < asked.seat_in:
        least = text.in_units(asked.seat_in)
        raise BookError('shed.thickness', message('frame.narrow_beam'), message('error.or_more', least=least))
    of = one_pitch(asked)
    reach = _level_reach(EDGES_OF[kind.upper], '', asked, exact(asked.width_in), kind.thickness_in)
    one = _slope(
        'front', of, asked, (ZERO, ZERO), EAST, _places(asked), _plate(asked), reach, ZERO, top_of(of.side)
    )
    return Plan(
        (one,), ridge_run_in=exact(asked.width_in), plates=outline(asked), edges=('front', '', '', '')
    )


def ledgers(asked: Asked) -> Iterator[LevelBoard]:
    """Return a shed's ledger: on the wall, as long as the roof is, out to the barge rafters' outer faces."""
    kind = asked.kind
    if isinstance(kind, Shed) and kind.upper is Upper.LEDGER:
        out, inward = asked.gable_overhang_in, exact(asked.width_in - kind.thickness_in / 2)
        ends = (exact(-out), inward), (exact(asked.length_in + out), inward)
        long = exact(asked.length_in + 2 * out)
        yield LevelBoard('LG', Level.LEDGER, long, *ends, kind.thickness_in, kind.depth_in)


def outline(asked: Asked) -> tuple[Point, ...]:
    """Return the corners of a rectangle of plates, from the left front one."""
    long, wide = exact(asked.length_in), exact(asked.width_in)
    return ((ZERO, ZERO), (long, ZERO), (long, wide), (ZERO, wide))


def ridge_board(asked: Asked, mark: str, start: Point, end: Point, length_in: Exact) -> LevelBoard:
    """Return a ridge board between two points of the plan."""
    assert asked.ridge
    return LevelBoard(
        mark, Level.RIDGE, length_in, start, end, asked.ridge.thickness_in, asked.ridge.depth_in
    )


def _ridge_over_front(asked: Asked, front: Members, back: Members, below_in: Fraction) -> Exact:
    """Return the front's run to the ridge.

    Source: both slopes reach one height there: run · m = (width − run) · m' − what the back's plate stands below.
    """
    both = one_term(front.side.slope + back.side.slope)
    run = one_term(back.side.slope * asked.width_in - below_in) / both
    if not 0 < run < asked.width_in:
        raise BookError(
            'saltbox.back_plate_below', message('frame.no_ridge_between'), message('frame.a_higher_back')
        )
    return run


def _ridged(asked: Asked, *sides: tuple[Members, Exact, Exact]) -> Plan:
    places, slopes = _places(asked), []
    for (name, origin, along, stand), (of, run, plate) in zip(_two_sides(asked, places), sides, strict=True):
        slopes.append(
            _slope(
                name, of, asked, origin, along, stand, _plate(asked), _ridge_reach(asked, run), plate,
                plate + top_of(of.side),
            )
        )  # fmt: skip
    run = sides[0][1]
    levels = (_level('R', Level.RIDGE, asked, run),) if asked.ridge else ()
    return Plan(tuple(slopes), levels=levels, ridge_run_in=run, plates=outline(asked), edges=EDGES)


def _places(asked: Asked) -> Places:
    return at_gables(asked.length_in, asked.rafters.thickness_in, asked.spacing_in, asked.first_in)


def _two_sides(asked: Asked, places: Places) -> tuple[tuple[str, Point, Point, Places], ...]:
    """Return front and back, their rafters over against one another."""
    corner = (exact(asked.length_in), exact(asked.width_in))
    return (
        ('front', (ZERO, ZERO), EAST, places),
        ('back', corner, WEST, mirrored(places, asked.length_in)),
    )


def _slope(
    name: str,
    of: Members,
    asked: Asked,
    origin: Point,
    along: Point,
    places: Places,
    lower: Reach,
    upper: Reach,
    plate_in: Exact,
    top_in: Exact,
) -> Slope:
    region = Region((lower,), (upper,), places)
    return Slope(name, of, exact(asked.length_in), origin, along, (region,), plate_in, top_in)


def _level_reach(edge: Edge, mark: str, asked: Asked, inward_in: Exact, thickness_in: Fraction) -> Reach:
    return Reach(edge, mark, ZERO, exact(asked.length_in), inward_in, ZERO, thickness_in)


def _plate(asked: Asked) -> Reach:
    return _level_reach(Edge.PLATE, '', asked, ZERO, Fraction(0))


def _ridge_reach(asked: Asked, run_in: Exact) -> Reach:
    return _level_reach(Edge.RIDGE if asked.ridge else Edge.MATE, 'R', asked, run_in, ridge_in(asked))


def _level(
    mark: str, level: Level, asked: Asked, inward_in: Exact, thickness_in: Fraction | None = None
) -> LevelBoard:
    """Return a ridge or purlin from gable to gable, out to the barge rafters."""
    out, long = asked.gable_overhang_in, asked.length_in
    thick = ridge_in(asked) if thickness_in is None else thickness_in
    depth = asked.ridge.depth_in if asked.ridge and thickness_in is None else asked.rafters.depth_in
    ends = (exact(-out), inward_in), (exact(long + out), inward_in)
    return LevelBoard(mark, level, exact(long + 2 * out), *ends, thick, depth)
