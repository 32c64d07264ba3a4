"""Everything about a corner of two pitches, and about a regular many-sided roof."""

from __future__ import annotations

from fractions import Fraction

from tablegen import text
from tablegen.angles import tangent_of_degrees
from tablegen.errors import BookError
from tablegen.exact import Exact, sign
from tablegen.figures import Measure
from tablegen.findings_parts import (
    backing_of,
    cheeks_of,
    drop_of,
    hip_cheek,
    jack_cheek,
    jack_differences,
    shortening_of,
    trim_of,
)
from tablegen.findings_roof import RoofQuestion, hip_seat_of, seat_of, valley_seat_of
from tablegen.geometry import backing, corner, many_sided, seat, tail
from tablegen.geometry.corner import SQUARE, Corner
from tablegen.pitch import Pitch
from tablegen.readings import Group, degrees, length, set_degrees, whole, words

SQUARE_DEGREES = Fraction(90)


def two_pitches(ask: RoofQuestion, other: Pitch, corner_degrees: Fraction = SQUARE_DEGREES) -> Group:
    """Return all that two pitches say about the corner where they meet.

    Given:
        ask             side A: its pitch and run
        other           side B's pitch
        corner_degrees  plan angle between the eaves, inside the building, above 0 and below 180

    Errors:
        BookError if the hip leans back, the corner is no corner, or the overhang cannot be
    """
    if not 0 < corner_degrees < 180:
        raise BookError(
            'corner', f'{text.rational(corner_degrees)} degrees is no corner', 'above 0 and below 180'
        )
    half = SQUARE if corner_degrees == SQUARE_DEGREES else tangent_of_degrees(corner_degrees / 2)
    at = corner.corner(ask.pitch.slope, other.slope, half)
    tail.checked_overhang(ask.overhang_in, ask.run_in)
    return Group(
        'two_pitches',
        (
            set_degrees('corner', corner_degrees),
            _hip(ask.run_in, at, ask.measure),
            _side('side_a', ask.pitch.text, ask.run_in, at, ask),
            _side('side_b', other.text, corner.run_b(ask.run_in, at), at.turned(), ask),
            _slide(at, ask),
            _seats(at, ask),
            _eaves(at, ask),
        ),
        'side a is the pitch and run asked for, side b the other; the runs rise to one ridge height',
    )


def _hip(run_in: Fraction, at: Corner, measure: Measure) -> Group:
    hip = corner.hip_angle(at)
    return Group(
        'hip',
        (
            degrees('plan_from_eave_a', at.plan_a),
            degrees('plan_from_eave_b', at.plan_b),
            length('per_foot_of_run_a', corner.hip_length(Fraction(12), at), measure),
            length('length', corner.hip_length(run_in, at), measure),
            length('own_run', corner.hip_run(run_in, at), measure),
            length('rise_per_foot_of_own_run', 12 * at.hip_slope, measure),
            degrees('plumb_cut', hip),
            degrees('level_cut', hip.complement()),
        ),
        'length: along its slope on the center line, corner of the plates to the ridge center line; plumb cut: on '
        "the board's side, from square; a valley has the same",
    )


def _side(key: str, pitch_text: str, run_in, at: Corner, ask: RoofQuestion) -> Group:
    measure = ask.measure
    return Group(
        key,
        (
            words('pitch', pitch_text),
            length('run', run_in, measure),
            shortening_of(at, ask.ridge_in, ask.hip_in, ask.rafter_in, measure),
            jack_differences(at, ask.spacings, measure),
            cheeks_of(at, measure),
            backing_of(at, ask.hip_in, measure),
            drop_of(at, ask.hip_in, measure),
            trim_of(at),
        ),
    )


def _slide(at: Corner, ask: RoofQuestion) -> Group:
    aside = backing.slide(ask.hip_in, at)
    way = ('towards eave b', 'not needed', 'towards eave a')[sign(aside) + 1]
    return Group(
        'slide',
        (
            length('aside', _size(aside), ask.measure),
            words('way', way),
            length('drop_plumb', backing.drop_when_slid(ask.hip_in, at), ask.measure),
        ),
        'instead of two drops: the square-topped hip moved aside, level and square to its length, then dropped once',
    )


def _seats(at: Corner, ask: RoofQuestion) -> Group:
    """Return the seats that bring both commons and the hip to one height above plate, side A's seat being set."""
    depth, measure = ask.stock.depth_in, ask.measure
    seat.checked_seat(depth, ask.seat_in, at.slope_a)
    height = seat.height_above_plate(depth, ask.seat_in, at.slope_a)
    on_b = seat.seat_for_height(depth, height, at.slope_b)
    drop = max(backing.drop_plumb(ask.hip_in, at), backing.drop_plumb(ask.hip_in, at.turned()))
    return Group(
        'seat',
        (
            words('stock', ask.stock.name),
            length('height_above_plate', height, measure),
            length('seat_a', ask.seat_in, measure),
            length('seat_b', on_b, measure)
            if on_b > 0
            else words('seat_b', 'none: this stock is too shallow to reach the plate'),
            hip_seat_of('hip_dropped', ask, at, seat.hip_height_above_plate(height, drop)),
            hip_seat_of('hip_backed', ask, at, height),
            valley_seat_of(ask, at, height),
        ),
        'plates at one height; seats level, from the outside of plate inwards; height above plate: plumb, the same on '
        'both sides; the hip, not slid, is dropped by the greater of the two drops',
    )


def _eaves(at: Corner, ask: RoofQuestion) -> Group:
    raised = tail.plate_raise(ask.overhang_in, at)
    which = ('plate a', 'neither plate', 'plate b')[sign(raised) + 1]
    return Group(
        'eaves',
        (
            length('overhang_a', ask.overhang_in, ask.measure),
            length('overhang_b', tail.eave_matching_overhang(ask.overhang_in, at), ask.measure),
            length('hip_tail', tail.hip_tail(ask.overhang_in, at), ask.measure),
            length('raise_for_equal_overhangs', _size(raised), ask.measure),
            words('raised', which),
        ),
        'overhangs level, square to their eaves, that end at one height with the plates at one height; or equal '
        'overhangs, with one plate raised, plumb',
    )


def _size(x: Exact) -> Exact:
    return -x if sign(x) < 0 else x


def many_sides(ask: RoofQuestion, sides: int) -> Group:
    """Return all that a pitch says about a regular roof of so many sides; the run asked for is the apothem.

    Errors:
        BookError for fewer than 3 sides or an overhang that cannot be
    """
    measure, slope, run_in = ask.measure, ask.pitch.slope, ask.run_in
    at = many_sided.regular_corner(slope, sides)
    tail.checked_overhang(ask.overhang_in, run_in)
    hip = corner.hip_angle(at)
    point = many_sided.peak_point(ask.hip_in, sides)
    return Group(
        'many_sided',
        (
            whole('sides', sides),
            set_degrees('corner', many_sided.plan_corner_degrees(sides)),
            set_degrees('plate_miter', Fraction(180, sides)),
            length('apothem', run_in, measure),
            length('side', many_sided.side_from_apothem(run_in, sides), measure),
            length('middle_to_corner', many_sided.radius_from_apothem(run_in, sides), measure),
            Group(
                'hip',
                (
                    length('per_foot_of_apothem', many_sided.hip_length(Fraction(12), slope, sides), measure),
                    length('own_run_per_foot_of_apothem', many_sided.hip_unit_run(sides), measure),
                    length('length', many_sided.hip_length(run_in, slope, sides), measure),
                    length('tail', tail.hip_tail(ask.overhang_in, at), measure),
                    degrees('plumb_cut', hip),
                    degrees('level_cut', hip.complement()),
                ),
                'along its slope on the center line, corner of the plates to the axis in the middle',
            ),
            jack_differences(at, ask.spacings, measure),
            Group('cheek', (jack_cheek(at, measure), _peak(ask, slope, sides))),
            Group(
                'peak',
                (
                    length('point', point, measure),
                    length('least_post_across_flats', 2 * point, measure),
                ),
                'point: level along the hip, from the axis to where the hip is full width, both cheeks cut; least post: '
                'on which that many square-cut hips find room side by side; each is shortened by half of the post',
            ),
            seat_of(ask, at),
            backing_of(at, ask.hip_in, measure),
            drop_of(at, ask.hip_in, measure),
            trim_of(at),
        ),
        'apothem: level, the middle of the plan to the outside of the middle of a plate',
    )


def _peak(ask: RoofQuestion, slope, sides: int) -> Group:
    return hip_cheek('hip_at_peak', many_sided.peak_cheek(slope, sides), ask.measure)
