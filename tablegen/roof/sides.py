"""Everything about a regular roof of many sides."""

from __future__ import annotations

from fractions import Fraction

from tablegen.geometry import cheeks, many_sided, shortening, tail
from tablegen.geometry.cheeks import Cheek
from tablegen.roof.cheeks import FACES, IN_THE_PLANE, SQUARE_TOP, cheek, jack_cheek
from tablegen.roof.jacks import jacks_of
from tablegen.roof.lengths import common_square, cuts_of, hip_square, squares_of
from tablegen.roof.planes import backing_of, drop_of, trim_of
from tablegen.roof.question import RoofQuestion
from tablegen.roof.readings import Group, Reading, at_least, length, set_degrees, whole
from tablegen.roof.seat import common_seat_of, hip_seats_of
from tablegen.roof.side import Side, side_a
from tablegen.roof.tail import common_tail_of, hip_tails


def sided(ask: RoofQuestion, sides: int) -> Side:
    """Return a side of a regular roof of so many; the run asked for is the apothem.

    Errors:
        BookError for fewer than 3 sides, or a seat or overhang that cannot be
    """
    return side_a(ask, many_sided.regular_corner(ask.pitch.slope, sides))


def many_sides(side: Side, sides: int, listed: bool = True) -> Group:
    """Return all that a pitch says about a regular roof of so many sides.

    Given:
        listed  whether each jack is told, or their differences only
    """
    return Group(
        'many_sided',
        (
            _plan(side, sides),
            _lengths(side),
            cuts_of(side, 'hip'),
            squares_of(common_square(side), hip_square(side, 'hip')),
            _shortening(side, sides),
            jacks_of(side, with_valley=False, listed=listed),
            Group('seat', (common_seat_of(side), *hip_seats_of(side))),
            _tail(side),
            _cheeks(side, sides),
            _peak(side, sides),
            backing_of(side),
            drop_of(side),
            trim_of(side.at),
        ),
        'apothem: level, the middle of the plan to the outside of the middle of a plate',
    )


def _plan(side: Side, sides: int) -> Group:
    measure, run_in = side.ask.measure, side.ask.run_in
    return Group(
        'plan',
        (
            whole('sides', sides),
            set_degrees('corner', many_sided.plan_corner_degrees(sides)),
            set_degrees('plate_miter', Fraction(180, sides)),
            length('apothem', run_in, measure),
            length('side', many_sided.side_from_apothem(run_in, sides), measure),
            length('middle_to_corner', many_sided.radius_from_apothem(run_in, sides), measure),
        ),
        'level, outside of plates; side: corner to corner; plate miter: on top of a plate, from the line square across it',
    )


def _lengths(side: Side) -> Group:
    measure = side.ask.measure
    return Group(
        'length',
        (
            length('common', shortening.along(side.run_in, side.slope), measure),
            length('hip', side.hip_length_in, measure),
            length('hip_per_foot_of_apothem', 12 * side.hip_length_in / side.run_in, measure),
            length('rise', side.run_in * side.slope, measure),
        ),
        'to the axis in the middle, nothing taken off; common: in the middle of a side, along the slope from the plate '
        'line; hip: along its own on its center line, from the corner of the plates; rise: plumb',
    )


def _shortening(side: Side, sides: int) -> Group:
    ask, at = side.ask, side.at
    post = shortening.at_ridge(2 * many_sided.peak_point(ask.hip_in, sides))
    return Group(
        'shortening',
        (
            *side.both('jack_at_hip', shortening.jack_at_hip(ask.hip_in, at), side.slope),
            *side.both('hip_at_least_post', post, at.hip_slope),
        ),
        "level: in plan, along the member's own center line; along: the same on its top edge; jack at hip: from the hip's "
        'center line to its face; hip at least post: from the axis to the face of the smallest post on which all hips '
        'find room, cut plumb and square; on a wider post half of its width across flats',
    )


def _tail(side: Side) -> Group:
    common = common_tail_of(side)
    hip = hip_tails(side, with_valley=False)
    plumb = length(
        'hip_plumb_cut',
        tail.plumb_cut_length(side.ask.hips.depth_in, side.at.hip_slope),
        side.ask.measure,
    )
    line = (
        '; hip: along the top edge, corner of the plates to the point on the center line where the eave lines meet; hip '
        'sides: to the plumb lines where the two cheeks to the fascias start'
    )
    return Group('tail', (*common.values[:-1], *hip, plumb, common.values[-1]), common.from_line + line)


def _cheeks(side: Side, sides: int) -> Group:
    back = shortening.set_back_at_ridge(side.ask.hip_in, side.at)
    return Group(
        'cheek',
        (
            jack_cheek(side, IN_THE_PLANE),
            _hip('hip_at_peak', many_sided.peak_cheek(side.pitch.slope, sides), side),
            _hip(
                'hip_tail',
                cheeks.hip_at_fascia(side.at),
                side,
                *side.both('point_to_side', back, side.at.hip_slope),
            ),
        ),
        f'{FACES}; hip at peak: both cheeks, where all hips meet without a post; hip tail: both cheeks, to the fascias; point to side: '
        'level and along, from the point on the center line to the plumb line where a cheek starts on the side, towards '
        'the ridge',
    )


def _hip(key: str, cut: Cheek, side: Side, *more: Reading) -> Group:
    return cheek(key, cut, SQUARE_TOP, side.ask.hip_in / 2, side, *more)


def _peak(side: Side, sides: int) -> Group:
    point, measure = many_sided.peak_point(side.ask.hip_in, sides), side.ask.measure
    return Group(
        'peak',
        (
            length('point_level', point, measure),
            length('point_along', shortening.along(point, side.at.hip_slope), measure),
            at_least('least_post_across_flats', 2 * point, measure),
        ),
        'point: along the hip, from the axis to where the hip is full width, both cheeks cut; least post: on which that '
        'many square-cut hips find room side by side; each is shortened by half of the post',
    )
