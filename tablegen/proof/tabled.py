"""What every cell of the reference tables should read, by its table, its column, its row and what its head says."""

from __future__ import annotations

from collections.abc import Callable
from decimal import ROUND_FLOOR, Decimal
from fractions import Fraction
from functools import cached_property

from msgspec import Struct
from msgspec.structs import replace

from tablegen.proof.digits import FOOT_IN, SLACK, decimals, real, tangent, written
from tablegen.proof.figures import figures
from tablegen.proof.roof import DEPTHS, EAVE, FAR, IN_A, LEAST_LEFT, UP, Corner, marks
from tablegen.proof.rows import NOTHING
from tablegen.proof.space import Plane, Vector, angle, cross, dot, level, meet, size, vector
from tablegen.proof.stated import Stated

HALF_DEGREE, OF_PLAN = Fraction(1, 2), 100
OLD_SEAT = Fraction(17, 12)
"""Of a hip's seat to the common's, by the old rule."""
SHARES = {'longest-seat-quarter': Fraction(1, 4), 'longest-seat-third': Fraction(1, 3)}


class Asked(Struct, frozen=True, dict=True):
    """One cell."""

    table: str
    """Its kind, whatever seat or size it is of."""
    column: str
    """Its kind, whatever its head says."""
    row: Fraction
    """The number that names its row."""
    of: Fraction
    """The number in its head, 0 for none."""
    stock: str
    """The size in its head, else the one in its title; '' for none."""
    at: Corner
    """Of the row's pitch, with the boards of the title."""
    book: Stated

    @cached_property
    def depth(self) -> Fraction:
        """Return how deep its stock is."""
        return DEPTHS[self.stock]

    @cached_property
    def common(self) -> Vector:
        """Return the way up of a common."""
        return vector(0, 1, self.at.slope)


def right(asked: Asked) -> str:
    """Return what a cell should read, '' for one that nothing is known of."""
    key = asked.table, asked.column
    if key in SAME:
        return figures(asked.at, asked.book)[SAME[key]]
    if key in LENGTHS:
        value = LENGTHS[key](asked)
        return signed(value, asked.book.per) if isinstance(value, Decimal) else value
    if key in ANGLES:
        return f'{decimals(ANGLES[key](asked), 2)}°'
    if key in NUMBERS:
        places, of = NUMBERS[key]
        return decimals(of(asked), places)
    return ''


def signed(value: Decimal, per: int) -> str:
    """Return a length as it is printed, a minus before one that is less than nothing."""
    count = int((value * per + Decimal('0.5') + SLACK).to_integral_value(ROUND_FLOOR))
    return written(value, per) if count >= 0 else f'−{written(Decimal(-count) / per, per)}'


# Ridges, tails, drops -------------------------------------------------------------------------------------------


def _past_hips(it: Asked) -> Decimal:
    """Ridge's theoretical end to where the outer side of a hip's one cheek ends on its face."""
    face = Plane(IN_A, FAR - real(it.row) / 2)
    ends = [meet(it.at.center.moved(sign * real(it.of) / 2), face, Plane(UP, Decimal(0))) for sign in (1, -1)]
    return FAR - min(end[0] for end in ends)


def _sits_down(it: Asked) -> Decimal:
    return it.at.rise_between(FAR - real(it.of) / 2, FAR)


def _never_notched(it: Asked, value: Decimal) -> str:
    return written(value, it.book.per) + '§' * (it.depth <= LEAST_LEFT)


def _plumb_depth(top: Plane, depth: Fraction) -> Decimal:
    """Top edge to underside, plumb."""
    place = Plane(EAVE, FAR), Plane(IN_A, FAR)
    return meet(top, *place)[2] - meet(top.moved(-real(depth)), *place)[2]


# Seats ----------------------------------------------------------------------------------------------------------


def _tabled(depth: Fraction, seat: Decimal, notch: Decimal) -> bool:
    """Return whether a seat is no longer than its stock is deep, and leaves half of it."""
    return seat <= real(depth) + SLACK and 2 * notch <= real(depth) + SLACK


def _common(it: Asked) -> str:
    """Height above plate, or stock left over the notch."""
    height, notch = it.at.common_mouth(it.stock)
    if not _tabled(it.depth, real(it.at.boards.seat), notch):
        return NOTHING
    value = height if it.column == 'height' else real(it.depth) - notch
    return written(value, it.book.per) + marks(it.depth, notch)


def _longest(it: Asked) -> str:
    """Where an underside so far from the plate's outer edge leaves the plate's top, never too far."""
    share = SHARES[it.table]
    under = it.at.a.moved(-real(share * it.depth))
    seat = meet(under, Plane(UP, Decimal(0)), Plane(EAVE, Decimal(0)))[1]
    if not _tabled(it.depth, seat, real(share * it.depth)):
        return NOTHING
    count = int((seat * it.book.per + SLACK).to_integral_value(ROUND_FLOOR))
    thin = real(it.depth * (1 - share)) < LEAST_LEFT - SLACK
    return written(Decimal(count) / it.book.per, it.book.per) + '§' * thin


def _hip(it: Asked) -> str:
    """Height, heel or seat of a hip or a valley, where the common of the rafters' stock has a seat."""
    kind, _blank, what = it.column.rpartition('_')
    boards = it.at.boards
    _height, own_notch = it.at.common_mouth(boards.rafters)
    if not _tabled(DEPTHS[boards.rafters], real(boards.seat), own_notch):
        return NOTHING
    down = it.at.drop(boards.hip) if kind == 'dropped' else Decimal(0)
    out = it.at.valley_out() if it.table == 'valley-seat' else Decimal(0)
    height, heel, seat, notch = it.at.hip_mouth(it.stock, down, out)
    if what == 'height':
        return written(height, it.book.per)
    if heel <= 0 or not _tabled(it.depth, seat, notch):
        return NOTHING
    return (
        written(heel, it.book.per) if what == 'heel' else written(seat, it.book.per) + marks(it.depth, notch)
    )


def _low(it: Asked) -> Decimal | str:
    """How much lower a hip comes whose underside meets the plate's top an old rule's seat from the corner."""
    at = replace(it.at, boards=replace(it.at.boards, rafters=it.stock))
    if not _tabled(it.depth, real(at.boards.seat), at.common_mouth(it.stock)[1]):
        return NOTHING
    right_height = at.hip_mouth(it.stock, at.drop(at.boards.hip), Decimal(0))[0]
    inwards = level(at.hip)
    far = real(OLD_SEAT * at.boards.seat) / size(inwards)
    end = vector(inwards[0] * far, inwards[1] * far, 0)
    under = Plane(at.top.normal, dot(at.top.normal, end))
    corner = meet(under.moved(real(it.depth)), Plane(EAVE, Decimal(0)), Plane(IN_A, Decimal(0)))
    return right_height - corner[2]


# Cheeks, trim, and the rest -------------------------------------------------------------------------------------


def _miter(it: Asked, face: Vector, across: Vector) -> Decimal:
    """On a board's face: from the line square across it to the plane through the hip."""
    return angle(cross(face, it.at.center.normal), across)


def _bevel(it: Asked, face: Vector) -> Decimal:
    """Blade from square to a board's face, cut along the plane through the hip."""
    return 90 - angle(face, it.at.center.normal)


def _rafters(it: Asked) -> str:
    """Count rafters: both ends flush, and those on marks that do not run into the far one."""
    length, thick, mark, count = it.row * FOOT_IN, real(it.at.boards.rafter), it.of, 2
    while real(mark) + thick / 2 <= real(length) - thick:
        mark, count = mark + it.of, count + 1
    return str(count)


Length = Callable[[Asked], Decimal | str]
SAME = {
    ('hips', 'plumb_cut'): 'hip-plumb-cut',
    ('hips', 'level_cut'): 'hip-level-cut',
    ('hips', 'per_foot'): 'hip-per-foot',
    ('hips', 'backing_bevel'): 'hip-backing',
    ('hips', 'drop_plumb'): 'hip-drop',
    ('jacks', 'off_at_hip_or_valley'): 'jack-at-hip-along',
    ('jacks', 'off_at_ridge'): 'common-at-ridge-along',
    ('jacks', 'short_to_long_point'): 'jack-points-along',
    **{
        ('cheeks', f'{member}_{what}'): f'{member}-cheek-{what.replace("_", "-")}'
        for member in ('jack', 'hip')
        for what in ('side', 'top', 'top_12_and')
    },
    ('gable-and-area', 'top_cut'): 'common-plumb-cut',
    ('pitch-to-degrees', 'slope'): 'common-plumb-cut',
    ('pitch-to-degrees', 'slope_per_foot'): 'common-per-foot',
    ('valley-seat', 'heel_out'): 'valley-heel-out',
    ('height', 'heel'): 'heel',
}
"""Figures that stand on the pages of a pitch too."""
LENGTHS: dict[tuple[str, str], Length] = {
    ('shortening-level', 'common'): lambda it: it.at.common_off(it.row)[0],
    ('shortening-level', 'shed_on_ledger'): lambda it: it.at.common_less(it.row)[0],
    ('shortening-level', 'hip_or_jack'): lambda it: it.at.hip_off(it.row)[0],
    ('shortening-level', 'end_common'): lambda it: it.at.common_off(it.row)[0],
    ('ridge-ends', 'end_common_with_hip'): _past_hips,
    ('shortening-common', 'off_along_edge'): lambda it: it.at.common_off(it.of)[1],
    ('shortening-hip', 'off_along_edge'): lambda it: it.at.hip_off(it.of)[1],
    ('shortening-jack', 'off_along_edge'): lambda it: it.at.jack_off(it.of)[1],
    ('ridge-sits-down', 'sits_down'): _sits_down,
    ('height', 'height'): _common,
    ('stock-left', 'notch'): lambda it: it.at.common_mouth('2×4')[1],
    ('stock-left', 'left'): _common,
    ('longest-seat-quarter', 'seat'): _longest,
    ('longest-seat-third', 'seat'): _longest,
    **{
        ('hip-seat', f'{way}_{what}'): _hip
        for way in ('dropped', 'backed')
        for what in ('height', 'heel', 'seat')
    },
    **{('valley-seat', what): _hip for what in ('height', 'heel', 'seat')},
    ('valley-seat', 'plumb_depth'): lambda it: _plumb_depth(it.at.top, it.depth),
    ('old-rule', 'low'): _low,
    ('tail-common', 'tail_overhang'): lambda it: it.at.common_length(it.of),
    ('tail-hip', 'tail_overhang'): lambda it: it.at.hip_length(it.of),
    ('tail-fall', 'fall_overhang'): lambda it: it.at.rise(it.of),
    ('tail-plumb-cut', 'plumb_cut'): lambda it: _never_notched(it, _plumb_depth(it.at.a, it.depth)),
    ('tail-square-cut', 'lower_corner_set_in'): lambda it: _never_notched(
        it, size(level(it.at.a.normal)) * real(it.depth)
    ),
    ('hips', 'drop_square_to_edge'): lambda it: it.at.drop_square(it.at.boards.hip),
    ('drop-plumb', 'drop'): lambda it: it.at.drop(it.of),
    ('drop-square', 'drop'): lambda it: it.at.drop_square(it.of),
    ('jacks', 'difference'): lambda it: it.at.jack_difference(it.of),
    ('set-backs', 'set_back'): lambda it: it.at.sides_of_hip(it.of)[1] / 2,
    ('backed-cheeks', 'at_ridge_top_12_and'): lambda it: it.at.against_12(it.at.hip, it.at.a, IN_A),
    ('backed-cheeks', 'at_common_top_12_and'): lambda it: it.at.against_12(it.at.hip, it.at.a, EAVE),
    ('trim', 'sheathing_up_for_12_along'): lambda it: (
        FOOT_IN * size((Decimal(0), it.at.hip[1], it.at.hip[2])) / it.at.hip[0]
    ),
    ('gable-and-area', 'stud_difference'): lambda it: it.at.rise(it.of),
    ('rafters-needed', 'rafters'): _rafters,
    ('degrees-to-pitch', 'rise_part'): lambda it: FOOT_IN * tangent(it.row),
    ('pitch-to-degrees', 'gap_on_level'): lambda it: it.at.rise(it.of),
}
ANGLES: dict[tuple[str, str], Callable[[Asked], Decimal]] = {
    ('backed-cheeks', 'at_ridge_top'): lambda it: it.at.cheek(it.at.hip, it.at.a, IN_A),
    ('backed-cheeks', 'at_common_top'): lambda it: it.at.cheek(it.at.hip, it.at.a, EAVE),
    ('trim', 'square_to_slope_miter'): lambda it: _miter(it, it.common, it.at.a.normal),
    ('trim', 'square_to_slope_bevel'): lambda it: _bevel(it, it.common),
    ('trim', 'in_roof_plane_miter'): lambda it: _miter(it, it.at.a.normal, it.common),
    ('trim', 'in_roof_plane_bevel'): lambda it: _bevel(it, it.at.a.normal),
    ('trim', 'sheathing_from_eave'): lambda it: angle(EAVE, it.at.hip),
}
NUMBERS: dict[tuple[str, str], tuple[int, Callable[[Asked], Decimal]]] = {
    ('gable-and-area', 'area_factor'): (3, lambda it: 1 / it.at.a.normal[2]),
    ('gable-and-area', 'area_over_100_of_plan'): (1, lambda it: OF_PLAN / it.at.a.normal[2]),
    ('degrees-to-pitch', 'rise'): (3, lambda it: FOOT_IN * tangent(it.row)),
    ('degrees-to-pitch', 'half_rise'): (3, lambda it: FOOT_IN * tangent(it.row + HALF_DEGREE)),
}
"""Decimals, and what is told in them."""
KNOWN = {table for table, _column in (*SAME, *LENGTHS, *ANGLES, *NUMBERS)}
"""Kinds of tables that are read."""
