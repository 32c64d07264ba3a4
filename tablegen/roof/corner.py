"""Everything about a corner of two pitches."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from tablegen.errors import BookError
from tablegen.geometry import backing, corner, shortening, tail
from tablegen.geometry.corner import SQUARE
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.angles import tangent_of_degrees
from tablegen.numbers.exact import Exact, exact, sign
from tablegen.roof.cheeks import cheeks_of
from tablegen.roof.jacks import jacks_of
from tablegen.roof.lengths import common_cuts_of, common_square, hip_cuts_of, hip_square, squares_of
from tablegen.roof.planes import backing_of, drop_of, trim_of
from tablegen.roof.question import RoofQuestion
from tablegen.roof.readings import Group, Reading, board, degrees, length, set_degrees, words
from tablegen.roof.ridge import ridge_of
from tablegen.roof.seat import TOO_SHALLOW, common_seat_of, hip_seats_of, valley_seat_of
from tablegen.roof.shortening import common_less, end_commons_sawn, hip_less, shortening_of
from tablegen.roof.side import Side, side_a, side_b
from tablegen.roof.tail import common_tail_of, hip_tails

SQUARE_DEGREES = Fraction(90)


def corner_sides(
    ask: RoofQuestion, other: Pitch, corner_degrees: Fraction = SQUARE_DEGREES
) -> tuple[Side, Side]:
    """Return the two sides of a corner.

    Given:
        ask             side A: its pitch and run
        other           side B's pitch
        corner_degrees  plan angle between the eaves, inside the building, above 0 and below 180

    Errors:
        BookError if the hip leans back, the corner is no corner, or seat or overhang cannot be
    """
    if not 0 < corner_degrees < 180:
        raise BookError(
            'corner', f'{text.rational(corner_degrees)} degrees is no corner', 'above 0 and below 180'
        )
    half = SQUARE if corner_degrees == SQUARE_DEGREES else tangent_of_degrees(corner_degrees / 2)
    a = side_a(ask, corner.corner(ask.pitch.slope, other.slope, half))
    return a, side_b(a, other)


def two_pitches(a: Side, b: Side, corner_degrees: Fraction = SQUARE_DEGREES, listed: bool = True) -> Group:
    """Return all that two pitches say about the corner where they meet.

    Given:
        a, b    its sides
        listed  whether each jack is told, or their differences only
    """
    return Group(
        'two_pitches',
        (
            set_degrees('corner', corner_degrees),
            _hip(a),
            hip_cuts_of(a),
            squares_of(
                Group('side_a', common_square(a).values),
                Group('side_b', common_square(b).values),
                hip_square(a),
            ),
            _sawn(a, b),
            _side('side_a', a, listed),
            _side('side_b', b, listed),
            _drop(a, b),
            _slide(a, b),
            _seats(a, b),
            _eaves(a, b),
            ridge_of(a),
        ),
        'side A is the pitch and run asked for, side B the other; their ridges and plates are at one height; a ridge over '
        'A runs along eave A',
    )


def _hip(a: Side) -> Group:
    measure, at = a.ask.measure, a.at
    return Group(
        'hip_valley',
        (
            degrees('plan_from_eave_a', at.plan_a),
            degrees('plan_from_eave_b', at.plan_b),
            length('length', a.hip_length_in, measure),
            length('length_per_foot_of_run_a', corner.hip_length(Fraction(12), at), measure),
            length('own_run', a.run_in / at.plan_a.sine(), measure),
            length('rise_per_foot_of_own_run', 12 * at.hip_slope, measure),
        ),
        'plan: level, from the eave to the center line; length: along its slope on the center line, corner of the plates '
        'to the ridge center line, nothing taken off; a valley has the same',
    )


def _side(key: str, side: Side, listed: bool) -> Group:
    measure = side.ask.measure
    return Group(
        key,
        (
            words('pitch', side.pitch.text),
            Group(
                'length',
                (
                    length('run', side.run_in, measure),
                    length('common', shortening.along(side.run_in, side.slope), measure),
                    length('rise', side.run_in * side.slope, measure),
                ),
                'run: level; common: along the slope; rise: plumb; all plate line to ridge center line',
            ),
            common_cuts_of(side),
            shortening_of(side),
            jacks_of(side, listed=listed),
            Group('seat', (common_seat_of(side),)),
            common_tail_of(side),
            cheeks_of(side),
            backing_of(side),
            drop_of(side),
            trim_of(side.at),
        ),
    )


def _sawn(a: Side, b: Side) -> Group:
    ask, measure = a.ask, a.ask.measure
    values: list[Reading] = []
    for name, side in (('a', a), ('b', b)):
        ridge_off = shortening.at_ridge(ask.ridge_in)
        values.append(board(f'common_{name}', common_less(side, ridge_off), measure))
        values += [_renamed(one, f'{_bare(one)}_{name}') for one in end_commons_sawn(side)]
    center = shortening.hip_between_commons(ask.rafter_in, a.at)
    values.append(board('hip_between_commons_center_line', hip_less(a, center), measure))
    for name, side in (('a', a), ('b', b)):
        off = shortening.hip_at_common(ask.rafter_in, side.at)
        back = shortening.set_back_at_common(ask.hip_in, side.at)
        values.append(board(f'hip_between_commons_side_{name}', hip_less(side, off + back), measure))
    for member, thick in (('hip', ask.hip_in), ('valley', ask.valley_thickness_in)):
        for name, side in (('a', a), ('b', b)):
            off = shortening.hip_at_ridge(ask.ridge_in, side.at)
            back = shortening.set_back_at_ridge(thick, side.at)
            key = f'{member}_at_ridge_over_{name}'
            values.append(board(f'{key}_long_point', hip_less(side, off - back), measure))
            values.append(board(f'{key}_short_point', hip_less(side, off + back), measure))
    aside = shortening.double_cheek_aside(ask.rafter_in, ask.rafter_in, a.at)
    way = ('towards side A', 'on the center line', 'towards side B')[sign(aside) + 1]
    return Group(
        'sawn',
        (
            *values,
            length('double_cheek_point_aside', _size(aside), measure),
            words('double_cheek_point', way),
        ),
        'along the top edge, what is taken off for ridge and commons being off, each rounded once; commons: from the '
        'plate line; hip and valley: from the corner of the plates; side: to the plumb line where the cheek towards that '
        'side starts; double cheek point aside: level, square to the hip, from its center line to where its two cheeks '
        'meet; past half of its thickness it has one cheek only',
    )


def _drop(a: Side, b: Side) -> Group:
    measure, thick = a.ask.measure, a.ask.hip_in
    drops = [backing.drop_plumb(thick, side.at) for side in (a, b)]
    gaps = [backing.gap_when_dropped(thick, side.at) for side in (a, b)]
    on = next((name for name, gap in zip('AB', gaps, strict=True) if sign(gap)), '')
    return Group(
        'drop',
        (
            length('plumb', max(drops), measure),
            words('gap_on', f'side {on}' if on else 'neither side'),
            length('gap_plumb', max(gaps), measure),
        ),
        'the hip, on its line, is dropped by the greater of the two drops; its edge towards the other side then lies so '
        'far under that roof plane, plumb: fill the gap, back that edge, or slide the hip',
    )


def _slide(a: Side, b: Side) -> Group:
    measure, thick = a.ask.measure, a.ask.hip_in
    aside = backing.slide(thick, a.at)
    way = ('towards eave B', 'not needed', 'towards eave A')[sign(aside) + 1]
    return Group(
        'slide',
        (
            length('aside', _size(aside), measure),
            words('way', way),
            length('drop_plumb', backing.drop_when_slid(thick, a.at), measure),
            *(
                _changed(key, backing.slid_jack(thick, side.at), side, side.slope)
                for key, side in (('jacks_of_a', a), ('jacks_of_b', b))
            ),
            *(
                _changed(key, backing.slid_hip_at_ridge(thick, side.at), side, side.at.hip_slope)
                for key, side in (('hip_at_ridge_over_a', a), ('hip_at_ridge_over_b', b))
            ),
        ),
        'instead of the greater drop: the square-topped hip moved aside, level, square to its length, then dropped once, '
        'plumb, both edges lying in their planes; jacks and hip become longer or shorter by so much, level and along '
        "the top edge; a slid hip misses the plates' corner: its bird's mouth is not given",
    )


def _changed(key: str, level_in: Exact, side: Side, slope: Exact) -> Group:
    become = ('shorter', 'as they were', 'longer')[sign(level_in) + 1]
    return Group(key, (words('become', become), *side.both('by', _size(level_in), slope)))


def _seats(a: Side, b: Side) -> Group:
    """Return the bird's mouths that stand at one height above plate, side A's seat being set."""
    return Group(
        'seat',
        (
            length('height_above_plate', a.height_in, a.ask.measure),
            length('seat_a', a.seat_in, a.ask.measure),
            length('seat_b', b.seat_in, a.ask.measure)
            if sign(b.seat_in) > 0
            else words('seat_b', TOO_SHALLOW),
            *hip_seats_of(a),
            valley_seat_of(a),
        ),
        'plates at one height; height above plate: plumb, the same on both sides; seats of the commons: level, from the '
        'outside of plate inwards; the hip, not slid, is dropped by the greater of the two drops',
    )


def _eaves(a: Side, b: Side) -> Group:
    measure = a.ask.measure
    raised = tail.plate_raise(a.ask.overhang_in, a.at)
    which = ('plate A', 'neither plate', 'plate B')[sign(raised) + 1]
    hip_valley, hip_a, valley_a = hip_tails(a)
    _, hip_b, valley_b = hip_tails(b)
    sides = [
        _renamed(one, f'{member}_tail_side_{name}')
        for member, name, one in (
            ('hip', 'a', hip_a),
            ('hip', 'b', hip_b),
            ('valley', 'a', valley_a),
            ('valley', 'b', valley_b),
        )
    ]
    return Group(
        'eaves',
        (
            length('overhang_a', a.overhang_in, measure),
            length('overhang_b', b.overhang_in, measure),
            _renamed(hip_valley, 'hip_valley_tail'),
            *sides,
            length('raise_for_equal_overhangs', _size(raised), measure),
            words('raised', which),
        ),
        'overhangs: level, square to their eaves, that end at one height with the plates at one height; hip and valley '
        'tail: along the top edge, corner of the plates to the point on the center line where the eave lines meet; side: to '
        'the plumb line where the cheek to the fascia of that side starts; raise: plumb, of one plate, where both '
        'overhangs are that of A instead',
    )


def _bare(one: Reading) -> str:
    return one.key.removesuffix('_in')


def _renamed(one: Reading, name: str) -> Reading:
    """Return a reading under another name, its unit kept."""
    return replace(one, key=f'{name}{one.key.removeprefix(_bare(one))}')


def _size(x: Exact) -> Exact:
    return -x if sign(exact(x)) < 0 else x
