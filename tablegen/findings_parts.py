"""The findings that every corner has, regular or not: shortening, cheeks, backing, drop, trim."""

from __future__ import annotations

from fractions import Fraction

from tablegen import text
from tablegen.angles import Angle
from tablegen.figures import Measure
from tablegen.geometry import backing, cheeks, corner, shortening, trim
from tablegen.geometry.cheeks import Cheek
from tablegen.geometry.corner import Corner
from tablegen.geometry.trim import Miter
from tablegen.readings import Group, Reading, degrees, length, yes_no

SIDE_AND_TOP = (
    'saw: on the side of the board, from the line square across it; blade: tilt from square, shoe on that side; '
    'top: on {top}; figure: held against 12 on the square, the line marked on the side of the 12'
)
PAST_SCALE = (
    "; the blade is past a saw's scale: cut the end plumb and square past the long point, set the shoe on that end, "
    'tilt the blade by blade_from_end and follow the plumb line on the side'
)


def _level_and_along(key: str, level_in, slope, measure: Measure) -> list[Reading]:
    return [
        length(f'{key}_level', level_in, measure),
        length(f'{key}_along', shortening.along(level_in, slope), measure),
    ]


def shortening_of(
    at: Corner, ridge_in: Fraction, hip_in: Fraction, rafter_in: Fraction, measure: Measure
) -> Group:
    """Return what comes off every line length on side A, level and along the edge.

    Given:
        at                         the corner, seen from side A
        ridge_in, hip_in, rafter_in  thicknesses, in
    """
    own, hip_own = at.slope_a, at.hip_slope
    return Group(
        'shortening',
        (
            *_level_and_along('common', shortening.at_ridge(ridge_in), own, measure),
            *_level_and_along('hip', shortening.hip_at_ridge(ridge_in, at), hip_own, measure),
            *_level_and_along(
                'hip_between_commons', shortening.hip_between_commons(rafter_in, at), hip_own, measure
            ),
            *_level_and_along('jack', shortening.jack_at_hip(hip_in, at), own, measure),
            *_level_and_along('valley_jack_at_ridge', shortening.at_ridge(ridge_in), own, measure),
            *_level_and_along(
                'jack_long_to_short_point', shortening.point_to_point(rafter_in, at), own, measure
            ),
            *_level_and_along(
                'hip_long_to_short_point', shortening.hip_point_to_point(hip_in, at), hip_own, measure
            ),
        ),
        "level: in plan, along the member's own center line, from the center line of what it meets to its face; "
        'along: the same on its top edge; hip: at a ridge; jack: at a hip or valley, a cripple at both ends',
    )


def jack_differences(at: Corner, spacings: tuple[Fraction, ...], measure: Measure) -> Group:
    """Return the difference of neighboring jacks of side A at each spacing."""
    return Group(
        'jack_difference',
        tuple(
            length(text.rational(one).replace(' ', '_'), corner.jack_difference(one, at), measure)
            for one in spacings
        ),
        'along the slope, plate line to the center line of the hip, per space on center along the plate',
    )


def _cheek(key: str, cut: Cheek, top: str, measure: Measure) -> Group:
    within = cut.within_scale()
    return Group(
        key,
        (
            degrees('saw', cut.saw),
            degrees('blade', cut.blade),
            degrees('top_from_edge', cut.top_from_edge),
            degrees('top_from_square', cut.top_from_square()),
            length('figure_against_12', cut.figure(), measure),
            yes_no('within_saw_scale', within),
            *(() if within else (degrees('blade_from_end', cut.from_end()),)),
        ),
        SIDE_AND_TOP.format(top=top) + ('' if within else PAST_SCALE),
    )


def jack_cheek(at: Corner, measure: Measure) -> Group:
    """Return the cheek of a jack or cripple of side A."""
    return _cheek(
        'jack',
        cheeks.jack(at),
        'its top edge, which lies in the roof plane (a cripple between hip and valley has this cut at both ends)',
        measure,
    )


def hip_cheek(key: str, cut: Cheek, measure: Measure) -> Group:
    """Return the cheek of a hip or valley with a square top."""
    return _cheek(key, cut, 'its top edge, left square to the sides: a backed top has another line', measure)


def cheeks_of(at: Corner, measure: Measure) -> Group:
    """Return the cheeks of side A: jack, hip at a ridge over A, hip against a common of A, backed hip."""
    backed = (cheeks.backed_top_at_ridge(at), cheeks.backed_top_at_common(at))
    return Group(
        'cheek',
        (
            jack_cheek(at, measure),
            hip_cheek('hip', cheeks.hip_at_ridge(at), measure),
            hip_cheek('hip_between_commons', cheeks.hip_at_common(at), measure),
            Group(
                'backed_hip',
                (
                    degrees('at_ridge_from_edge', backed[0]),
                    length('at_ridge_figure_against_12', _figure(backed[0]), measure),
                    degrees('at_common_from_edge', backed[1]),
                    length('at_common_figure_against_12', _figure(backed[1]), measure),
                ),
                "on the backed face towards this side, from the hip's long edge",
            ),
        ),
    )


def _figure(from_edge: Angle):
    return 12 * from_edge.tangent


def backing_of(at: Corner, hip_in: Fraction, measure: Measure) -> Group:
    """Return the backing bevel of the hip's face towards side A."""
    return Group(
        'backing',
        (degrees('bevel', backing.bevel(at)), length('depth', backing.drop_square(hip_in, at), measure)),
        "bevel: from the square top, in a section square to the hip; depth: down the hip's side, square to its edge",
    )


def drop_of(at: Corner, hip_in: Fraction, measure: Measure) -> Group:
    """Return the drop of a square-topped hip for side A."""
    return Group(
        'drop',
        (
            length('plumb', backing.drop_plumb(hip_in, at), measure),
            length('square_to_edge', backing.drop_square(hip_in, at), measure),
            length('thickness', hip_in, measure),
        ),
        'from the top of the hip on the line where the roof planes meet, down; two ways to measure one lowering',
    )


def _miter(key: str, cut: Miter) -> Group:
    return Group(key, (degrees('miter', cut.miter), degrees('bevel', cut.bevel)))


def trim_of(at: Corner) -> Group:
    """Return the compound miters of boards on side A and the cut of sheathing."""
    return Group(
        'trim',
        (
            _miter('standing_plumb', trim.standing_plumb(at)),
            _miter('square_to_slope', trim.square_to_slope(at)),
            _miter('in_the_roof_plane', trim.in_the_plane(at)),
            Group(
                'sheathing',
                (
                    degrees('from_eave', trim.sheathing_from_eave(at)),
                    degrees('plumb_bevel', trim.sheathing_plumb_bevel(at)),
                ),
                'on the face of the sheet, from the edge along the eave; bevel: blade from square for a plumb edge',
            ),
        ),
        "miter: on the board's face, from the line square across it; bevel: blade from square to that face",
    )
