"""What stands along the eaves and rakes of a roof: fascias from corner to corner, lookouts that carry barge rafters."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from fractions import Fraction

from msgspec import Struct

from tablegen.proof.digits import FOOT_IN, SLACK, real
from tablegen.proof.roof_slopes import LEVEL, Slope, run_of
from tablegen.proof.roof_stated import THICK
from tablegen.proof.roof_whole import Roof
from tablegen.proof.space import Plane, angle, between, cross, dot, meet, plane, size


class Cut(Struct, frozen=True):
    """An end of a level board that is not square."""

    hand: int | None
    """0 for left, 1 for right, seen from outside."""
    what: str
    miter: Decimal
    """On its face, from the line square across."""
    blade: Decimal


class Laid(Struct, frozen=True):
    """A fascia or a valley board."""

    kind: str
    length: Decimal
    ends: tuple[Cut, ...]


FASCIA_DEEP = Decimal('5.5')
"""in, of what is sold as 1 by 6, dressed. Source: Voluntary Product Standard PS 20."""


def fascias(roof: Roof) -> list[Laid]:
    """Return all fascias: to where their outer faces' upper edges meet the next one's outer face, at an inside corner to where
    their backs meet, at a gable over the barge rafters; over a half-hip's gable from hip to hip.
    """
    found = []
    for slope in roof.slopes if roof.asked.inches('overhang.fascia') else ():
        for before, after in _eaves(slope):
            ends = _end(roof, slope, before, -1), _end(roof, slope, after, 1)
            cuts = tuple(cut for _place, cut in ends if cut)
            found.append(Laid('fascia', ends[1][0] - ends[0][0], cuts))
    return found


def _eaves(slope: Slope) -> Iterator[tuple[Plane, Plane]]:
    """Yield what is at both ends of each eave of a slope; beside a wing that is flush with a gable nothing may be left of one."""
    for before, after in slope.eave_ends:
        if slope.place_of(slope.eave, after) - slope.place_of(slope.eave, before) > SLACK:
            yield before, after


def _end(roof: Roof, slope: Slope, side: Plane, way: int) -> tuple[Decimal, Cut | None]:
    """Return where a fascia ends along a slope, and its cut where that is not square.

    Given:
        side  what bounds the slope there
        way   1 at its right end, -1 at its left one
    """
    outer, top = slope.tail.moved(-real(roof.asked.inches('overhang.fascia'))), slope.top
    corner, hand = meet(slope.eave, side, LEVEL), max(way, 0)
    mates = (
        one
        for one in roof.slopes
        if one is not slope and any(side.is_like(each) for pair in _eaves(one) for each in pair)
    )
    mate = next((one for one in mates if abs(dot(one.inward, corner) - one.eave.offset) < SLACK), None)
    along = dot(slope.along, meet(outer, top, side))
    if abs(dot(side.normal, slope.inward)) < SLACK:
        return along, None
    if mate is None:
        if roof.asked.word('kind') == 'bay':
            return along, _cut(hand, 'wall', slope, side)
        return dot(slope.along, corner), None
    mate_outer = mate.tail.moved(-real(roof.asked.inches('overhang.fascia')))
    points = meet(outer, top, mate_outer), meet(slope.tail, top, mate.tail)
    line = cross(outer.normal, mate_outer.normal)
    miter = plane(cross(line, between(*points)), points[0])
    if way * dot(mate.inward, slope.along) < SLACK:
        return dot(slope.along, points[0]), _cut(hand, 'outside', slope, miter)
    low = top.moved(-FASCIA_DEEP if top.normal[2] > 0 else FASCIA_DEEP) if slope.square else top
    return dot(slope.along, meet(slope.tail, low, mate.tail)), _cut(hand, 'inside', slope, miter)


def _cut(hand: int, what: str, slope: Slope, miter: Plane) -> Cut:
    """Return how an end is sawn whose cut lies in a plane: the line of that on the board's face, the blade's tilt."""
    face = slope.tail.normal
    return Cut(hand, what, 90 - angle(cross(face, miter.normal), slope.along), 90 - angle(face, miter.normal))


def valley_boards(roof: Roof) -> list[Laid]:
    """Return the boards that a wing's rafters stand on: flat on the main roof, from its plate's corner up to where both meet."""
    if roof.laid is None or not roof.asked.inches('wing.valley_boards', Fraction(3, 4)):
        return []
    front, found = roof.slope('front'), []
    for wing in (roof.slope('wing_left'), roof.slope('wing_right')):
        run = run_of(wing)
        edge = cross(front.top.normal, wing.top.normal)
        ends = tuple(
            Cut(None, what, 90 - angle(edge, line), Decimal(0))
            for what, line in (('level', front.along), ('up', front.edge))
        )
        found.append(Laid('valley_board', run / abs(dot(edge, wing.inward)) * size(edge), ends))
    return found


def lookouts(roof: Roof, places: Mapping[str, Sequence[Decimal]]) -> Counter[Decimal]:
    """Return how many lookouts there are of each length: of every rake one at its foot and one every space up the slope.

    Given:
        places  where rafters stand along each slope

    Returned:
        up to a foot of overhang blocks from the gable's rafter to the barge rafter; past it they run back to the near side of the
        rafter next to the gable's
    """
    out, thick, found = real(roof.asked.inches('overhang.gable')), real(THICK), Counter[Decimal]()
    if out <= thick:
        return found
    for rake in roof.rakes:
        way = rake.slope.way(rake.end)
        up = (way.head - way.foot) * (1 + rake.slope.rise**2).sqrt()
        back = Decimal(0)
        if out > FOOT_IN:
            apart = sorted(abs(place - rake.end) for place in places[rake.slope.name])
            back = next(one for one in apart if one - apart[0] > thick + SLACK) - thick / 2
        found[back + out - thick] += int((up + SLACK) / real(roof.asked.inches('spacing'))) + 1
    return found
