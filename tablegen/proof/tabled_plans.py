"""What every cell of the tables on setting out, on two pitches and on many sides should read, from points and planes."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from decimal import ROUND_CEILING, Decimal
from fractions import Fraction
from functools import cache, cached_property

from msgspec import Struct

from tablegen.proof.digits import FOOT_IN, SLACK, arctangent, decimals, named, pi, real, tangent, written
from tablegen.proof.roof import EAVE, IN_A, UP
from tablegen.proof.space import Plane, Vector, angle, between, cross, dot, level, meet, plane, size, vector

SPACING = Fraction(16)
"""in, at which differences of jacks are told."""
SIDES, EQUAL, CUTS = '-sides', 'equal_legs', 'cut_other_leg'


class Hip(Struct, frozen=True, dict=True):
    """The line where two roofs meet over the corner of their plates: eave A along x, the building at its left."""

    slopes: tuple[Decimal, Decimal]
    eaves: tuple[Vector, Vector]
    """Level directions from the corner along both plates."""
    inward: tuple[Vector, Vector]
    """Level directions square to them, into the building."""

    @cached_property
    def edges(self) -> tuple[Vector, ...]:
        """Return the way up of each side's commons."""
        return tuple((x, y, slope) for (x, y, _z), slope in zip(self.inward, self.slopes, strict=True))

    @cached_property
    def planes(self) -> tuple[Plane, ...]:
        """Return both roofs, their normals upwards."""
        found = [cross(eave, edge) for eave, edge in zip(self.eaves, self.edges, strict=True)]
        return tuple(plane(one if one[2] > 0 else (-one[0], -one[1], -one[2])) for one in found)

    @cached_property
    def line(self) -> Vector:
        """Return the hip, uphill, over one inch of the run of A."""
        found = cross(self.planes[0].normal, self.planes[1].normal)
        run = dot(found, self.inward[0])
        return found[0] / run, found[1] / run, found[2] / run

    @cached_property
    def ahead(self) -> Vector:
        """Return the level direction of the hip."""
        flat, long = level(self.line), size(level(self.line))
        return flat[0] / long, flat[1] / long, Decimal(0)

    @cached_property
    def towards(self) -> tuple[Vector, Vector]:
        """Return the level directions square to the hip, towards eave A and towards eave B."""
        left = cross(UP, self.ahead)
        back = (-left[0], -left[1], Decimal(0))
        return (left, back) if dot(left, self.inward[0]) < 0 else (back, left)

    @cached_property
    def top(self) -> Plane:
        """Return the hip's square top."""
        found = cross(self.line, self.towards[0])
        return plane(found if found[2] > 0 else (-found[0], -found[1], -found[2]))

    def under(self, side: int, away: Decimal) -> Decimal:
        """Return how far a roof lies under the hip's line, plumb, so far away from it square to the hip."""
        x, y, _z = self.towards[side]
        normal = self.planes[side].normal
        return (normal[0] * x * away + normal[1] * y * away) / normal[2]

    def jacks(self, side: int) -> Decimal:
        """Return the difference of jacks on a side, a spacing apart along its eave."""
        center, foot = plane(self.towards[0]), self.eaves[side]
        start = (foot[0] * real(SPACING), foot[1] * real(SPACING), Decimal(0))
        crosswise = Plane(foot, real(SPACING))
        return size(between(start, meet(self.planes[side], crosswise, center)))

    def cut(self, line: Vector) -> Decimal:
        """Return the angle on the hip's side from the line square across to another line of that side."""
        return angle(cross(self.towards[0], self.line), line)

    def to_face(self, face: Vector, thickness: Decimal) -> Decimal:
        """Return the level way along the hip from a center line to the face of what is so thick, square to a direction."""
        return thickness / 2 / abs(dot(self.ahead, face))

    def jack_off(self, side: int, hip: Decimal) -> Decimal:
        """Return the same along a jack's run, from the hip's center line to its side."""
        return hip / 2 / abs(dot(self.inward[side], self.towards[side]))

    def spread(self, way: Vector, face: Vector, thickness: Decimal) -> Decimal:
        """Return how far apart, level along a board, a plumb face cuts its two sides."""
        across = cross(UP, way)
        return thickness * abs(dot(across, face) / dot(way, face))

    def reach(self, way: Vector, face: Vector, thickness: Decimal) -> Decimal:
        """Return how far a blade reaches along that face from side to side."""
        along = self.spread(way, face, thickness)
        return (along * along + thickness * thickness).sqrt()


def against_12(edge: Vector, top: Plane, face: Vector) -> Decimal:
    """Return the tongue's figure that goes with 12 of the body along an edge, for the line where a plumb face cuts its top."""
    line = cross(top.normal, face)
    return FOOT_IN * size(cross(line, edge)) / abs(dot(line, edge))


@cache
def of_pitches(a: Decimal, b: Decimal) -> Hip:
    """Return the hip of two slopes at a square corner."""
    return Hip((a, b), (EAVE, vector(0, 1, 0)), (IN_A, EAVE))


@cache
def of_sides(sides: int, slope: Decimal) -> Hip:
    """Return the hip between two sides of a regular plan: eave B is eave A on the other side of the line to the middle."""
    half = tangent(Fraction(180, sides))
    long = (1 + half * half).sqrt()
    middle = (half / long, 1 / long, Decimal(0))

    def mirrored(one: Vector) -> Vector:
        twice = 2 * dot(one, middle)
        return twice * middle[0] - one[0], twice * middle[1] - one[1], Decimal(0)

    return Hip((slope, slope), (EAVE, mirrored(EAVE)), (IN_A, mirrored(IN_A)))


class Cell(Struct, frozen=True):
    """What a cell of these tables is of."""

    hip: Hip
    ridge: Decimal
    thick: Decimal
    """Of hips."""
    rafter: Decimal

    @property
    def slide(self) -> Decimal:
        """Return how far a square-topped hip is slid towards eave A, so that one drop serves both roofs."""
        a, b = (self.hip.under(side, Decimal(1)) for side in (0, 1))
        return self.thick / 2 * (b - a) / (a + b)

    def slid(self, side: int) -> Decimal:
        """Return by how much jacks of a side change then, level."""
        return self.slide / abs(dot(self.hip.inward[side], self.hip.towards[side]))

    def sloped(self, side: int, length: Decimal) -> Decimal:
        """Return a level length along a side's slope."""
        return length * size(self.hip.edges[side])

    def drop(self, side: int) -> Decimal:
        """Return how far a hip's square edge lies over a roof, plumb, its center line in both."""
        return self.hip.under(side, self.thick / 2)

    def commons(self) -> tuple[Decimal, Decimal]:
        """Return how far, from the point where center lines meet, the hip's comes to the first of two commons' faces, and how
        far aside of it their corner stands."""
        half, both = self.rafter / 2, self.hip.inward
        first = max(half / abs(dot(self.hip.ahead, one)) for one in both)
        corner = (-half * (both[0][0] + both[1][0]), -half * (both[0][1] + both[1][1]), Decimal(0))
        return first, abs(dot(corner, self.hip.towards[0]))


Value = Callable[[Cell], Decimal]
LENGTHS: Mapping[str, Value] = {
    'jack_difference_a': lambda it: it.hip.jacks(0),
    'jack_difference_b': lambda it: it.hip.jacks(1),
    'jack_difference': lambda it: it.hip.jacks(0),
    'jack_a_12_and': lambda it: against_12(it.hip.edges[0], it.hip.planes[0], it.hip.towards[0]),
    'jack_b_12_and': lambda it: against_12(it.hip.edges[1], it.hip.planes[1], it.hip.towards[0]),
    'jack_12_and': lambda it: against_12(it.hip.edges[0], it.hip.planes[0], it.hip.towards[0]),
    'hip_a_12_and': lambda it: against_12(it.hip.line, it.hip.top, it.hip.inward[0]),
    'hip_b_12_and': lambda it: against_12(it.hip.line, it.hip.top, it.hip.inward[1]),
    'peak_12_and': lambda it: against_12(it.hip.line, it.hip.top, EAVE),
    'drop_a': lambda it: it.drop(0),
    'drop_b': lambda it: it.drop(1),
    'drop_plumb': lambda it: it.drop(0),
    'gap_a': lambda it: it.drop(1) - it.drop(0),
    'overhang_b': lambda it: FOOT_IN * it.hip.slopes[0] / it.hip.slopes[1],
    'slide': lambda it: it.slide,
    'drop_once_slid': lambda it: it.hip.under(0, it.thick / 2 + it.slide),
    'jacks_a_shorter_level': lambda it: it.slid(0),
    'jacks_a_shorter_along': lambda it: it.sloped(0, it.slid(0)),
    'jacks_b_longer_level': lambda it: it.slid(1),
    'jacks_b_longer_along': lambda it: it.sloped(1, it.slid(1)),
    'hip_longer_at_ridge_a': lambda it: it.slide * abs(dot(it.hip.towards[0], it.hip.inward[0]) / dot(it.hip.ahead, it.hip.inward[0])),
    'hip_at_ridge_a': lambda it: it.hip.to_face(it.hip.inward[0], it.ridge),
    'hip_at_ridge_b': lambda it: it.hip.to_face(it.hip.inward[1], it.ridge),
    'hip_between_commons': lambda it: it.commons()[0],
    'point_aside_to_b': lambda it: it.commons()[1],
    'jack_a': lambda it: it.hip.jack_off(0, it.thick),
    'jack_b': lambda it: it.hip.jack_off(1, it.thick),
    'jack_a_short_to_long_point': lambda it: it.hip.spread(it.hip.inward[0], it.hip.towards[0], it.rafter),
    'jack_b_short_to_long_point': lambda it: it.hip.spread(it.hip.inward[1], it.hip.towards[0], it.rafter),
    'hip_a_set_back': lambda it: it.hip.spread(it.hip.ahead, it.hip.inward[0], it.thick) / 2,
    'hip_b_set_back': lambda it: it.hip.spread(it.hip.ahead, it.hip.inward[1], it.thick) / 2,
    'off_level': lambda it: it.hip.jack_off(0, it.thick),
    'short_to_long_point_level': lambda it: it.hip.spread(it.hip.inward[0], it.hip.towards[0], it.rafter),
    'set_back_level': lambda it: it.hip.spread(it.hip.ahead, EAVE, it.thick) / 2,
}  # fmt: skip
AT_LEAST: Mapping[str, Value] = {
    'jack_a_reach': lambda it: it.hip.reach(it.hip.inward[0], it.hip.towards[0], it.rafter),
    'hip_b_reach': lambda it: it.hip.reach(it.hip.ahead, it.hip.inward[1], it.thick),
    'reach': lambda it: it.hip.reach(it.hip.inward[0], it.hip.towards[0], it.rafter),
    'peak-reach': lambda it: it.hip.reach(it.hip.ahead, EAVE, it.thick / 2),
    'least_post': lambda it: it.hip.spread(it.hip.ahead, EAVE, it.thick),
}
"""Rounded up."""
ANGLES: Mapping[str, Value] = {
    'plan_from_eave_a': lambda it: angle(EAVE, it.hip.ahead),
    'plumb_cut': lambda it: it.hip.cut(UP),
    'hip_plumb_cut': lambda it: it.hip.cut(UP),
    'jack_a_blade': lambda it: angle(it.hip.inward[0], it.hip.towards[0]),
    'jack_b_blade': lambda it: angle(it.hip.inward[1], it.hip.towards[0]),
    'blade': lambda it: angle(it.hip.inward[0], it.hip.towards[0]),
    'peak-blade': lambda it: angle(it.hip.ahead, EAVE),
    'backing_a': lambda it: angle(it.hip.top.normal, it.hip.planes[0].normal),
    'backing_b': lambda it: angle(it.hip.top.normal, it.hip.planes[1].normal),
    'backing_bevel': lambda it: angle(it.hip.top.normal, it.hip.planes[0].normal),
    'corner': lambda it: 180 - angle(*it.hip.eaves),
    'plate_miter': lambda it: angle(it.hip.ahead, IN_A),
}
NUMBERS: Mapping[str, Value] = {
    'per_foot_of_run_a': lambda it: FOOT_IN * size(it.hip.line),
    'hip_per_foot': lambda it: FOOT_IN * size(it.hip.line),
    'side': lambda it: 2 * FOOT_IN * abs(it.hip.line[0]),
    'apothem': lambda it: Decimal(FOOT_IN) / 2 / abs(it.hip.line[0]),
    'hip_run': lambda it: FOOT_IN * size(level(it.hip.line)),
}
"""To three decimals."""
PEAK, PLACES = 'sides-peak', 3
PAIRED = {
    'unequal-hips',
    'unequal-cheeks',
    'unequal-fit',
    'unequal-slide',
    'unequal-shortening',
    'unequal-points',
}
BY_SIDES, TRIANGLES = {'sides', 'sides-jacks', PEAK}, 'whole-triangles'
SET_OUT = {'diagonals', 'braces', TRIANGLES}


def is_known(table: str) -> bool:
    """Return whether a table is one of these."""
    return table in PAIRED | BY_SIDES | SET_OUT or table.endswith(SIDES)


def of_plan(table: str, column: str, cell: Cell, per: int) -> tuple[str, ...]:
    """Return what a cell of a table of two pitches or of many sides should read, none where it is not known."""
    name = f'peak-{column}' if table == PEAK and column in ('blade', 'reach') else column
    if name in LENGTHS:
        return (written(LENGTHS[name](cell), per),)
    if name in AT_LEAST:
        whole = (AT_LEAST[name](cell) * per - SLACK).to_integral_value(ROUND_CEILING)
        return (written(whole / per, per),)
    if name in ANGLES:
        return (f'{decimals(ANGLES[name](cell), 2)}°',)
    return (decimals(NUMBERS[name](cell), PLACES),) if name in NUMBERS else ()


def set_out(table: str, column: str, label: str, of: Fraction, per: int) -> tuple[str, ...]:
    """Return what a cell of a table for setting out should read, none where it is not known.

    Given:
        label  what names its row
        of     the number in its head, 0 for none
    """
    numbers = [Fraction(one) for one in label.split()]
    if table == TRIANGLES:
        short, long, diagonal = numbers
        right = short * short + long * long == diagonal * diagonal
        return ('-'.join(named(one * of) for one in numbers),) if right else ()
    leg = sum(numbers, Fraction(0))
    if table == 'diagonals':
        if of > leg:
            return ('',)
        leg, of = leg * FOOT_IN, of * FOOT_IN
    other = leg if column == EQUAL else of
    if column == CUTS:
        return (f'{decimals(arctangent(real(leg / other)) * 180 / pi(), 2)}°',)
    length = size(vector(real(leg), real(other), 0))
    feet = written(length, per, True)
    return written(length, per), feet, feet.removesuffix('″')
