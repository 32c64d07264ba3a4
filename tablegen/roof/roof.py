"""Everything that one pitch, one run and sizes of stock say about a roof with regular corners."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from tablegen.geometry import common, gable
from tablegen.roof.cheeks import cheeks_of
from tablegen.roof.jacks import jacks_of
from tablegen.roof.lengths import common_square, cuts_of, hip_square, lengths_of, squares_of
from tablegen.roof.planes import backing_of, drop_of, trim_of
from tablegen.roof.question import RoofQuestion
from tablegen.roof.readings import Group, Rows, degrees, length, ratio, set_length
from tablegen.roof.ridge import ridge_of
from tablegen.roof.seat import seat_of
from tablegen.roof.shortening import sawn_of, shortening_of
from tablegen.roof.side import Side, side_a
from tablegen.roof.tail import tail_of

__all__ = ['GROUPS', 'RoofQuestion', 'roof_findings']


def gable_of(side: Side) -> Group:
    """Return the difference of gable studs at each spacing and the cut on their tops."""
    measure, slope = side.ask.measure, side.slope
    rows = tuple(
        (set_length('spacing', one), length('difference', gable.stud_difference(one, slope), measure))
        for one in side.ask.spacings
    )
    return Group(
        'gable_stud',
        (Rows('difference', rows), degrees('top_cut', common.slope_angle(slope))),
        "difference: plumb, per space on center; top cut: on the stud's side, from the line square across it",
    )


def area_of(side: Side) -> Group:
    """Return how much roof lies over level plan."""
    return Group(
        'area', (ratio('roof_per_plan', gable.area_factor(side.slope)),), 'roof over level plan, any unit'
    )


GROUPS: dict[str, Callable[[Side], Group]] = {
    'length': lengths_of,
    'cut': cuts_of,
    'square': lambda side: squares_of(common_square(side), hip_square(side)),
    'shortening': shortening_of,
    'sawn': sawn_of,
    'jack': jacks_of,
    'seat': seat_of,
    'tail': tail_of,
    'cheek': cheeks_of,
    'backing': backing_of,
    'drop': drop_of,
    'trim': lambda side: trim_of(side.at),
    'ridge': ridge_of,
    'gable_stud': gable_of,
    'area': area_of,
}
"""What is found of a roof with regular corners, in this order."""


def roof_findings(
    ask: RoofQuestion, keys: Iterable[str] = tuple(GROUPS), listed: bool = True
) -> tuple[Group, ...]:
    """Return the groups of GROUPS that are asked for, in its order.

    Given:
        listed  whether each jack is told, or their differences only

    Errors:
        BookError for a seat that cuts through the stock, an overhang or a plate length that cannot be
    """
    side, wanted = side_a(ask), set(keys)
    makers = GROUPS if listed else GROUPS | {'jack': lambda side: jacks_of(side, listed=False)}
    return tuple(make(side) for key, make in makers.items() if key in wanted)
