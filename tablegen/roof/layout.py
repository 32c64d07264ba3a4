"""Group a pitch, and laying out square: what a tape, a level and two diagonals say."""

from __future__ import annotations

from fractions import Fraction

from tablegen.geometry import finding_pitch, setting_out
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.exact import Exact, nearest, sign
from tablegen.numbers.figure import Measure
from tablegen.roof.readings import Group, degrees, length, signed, words

HALVES = 2


def pitch_found(slope: Exact, measure: Measure) -> Group:
    """Return a measured slope as a pitch, in degrees, and as the nearest half pitch.

    Given:
        slope  from one of the functions of geometry.finding_pitch
    """
    rise = finding_pitch.rise_per_foot(slope)
    half = Fraction(nearest(rise, HALVES), HALVES)
    near = pitch_of_rise(half).text if half else 'flatter than 1/4 in 12'
    return Group(
        'pitch_found',
        (
            length('rise_per_foot', rise, measure),
            degrees('angle', finding_pitch.degrees_of(slope)),
            words('nearest_half_pitch', near),
            signed('off_by_per_foot', rise - half, measure),
        ),
        'rise per 12 in of level run; angle from level; off by: the measured rise less the nearest half pitch',
    )


def rectangle(length_in: Fraction, width_in: Fraction, measure: Measure) -> Group:
    """Return the diagonal that makes a rectangle of plates square, both ways."""
    return Group(
        'rectangle',
        (
            length('length', length_in, measure),
            length('width', width_in, measure),
            length('diagonal', setting_out.diagonal(length_in, width_in), measure),
        ),
        'all to the same corners, outside to outside; square when BOTH diagonals measure this',
    )


def rectangle_check(
    length_in: Fraction, width_in: Fraction, diagonal_in: Fraction, other_in: Fraction, measure: Measure
) -> Group:
    """Return how far out of square a layout is by its two diagonals, as measured.

    Given:
        length_in, width_in    the sides, in, opposite ones equal
        diagonal_in, other_in  in
    """
    aside = setting_out.lean(length_in, diagonal_in, other_in)
    longer = ('the second diagonal is the longer', 'square', 'the first diagonal is the longer')[
        sign(aside) + 1
    ]
    return Group(
        'rectangle_check',
        (
            length('diagonals_should_be', setting_out.diagonal(length_in, width_in), measure),
            length('push_along_length', -aside if sign(aside) < 0 else aside, measure),
            words('verdict', longer),
        ),
        'push: how far the opposite side is moved along its own length, away from the end of the longer diagonal, until '
        'both diagonals are equal',
    )


def brace(leg_in: Fraction, other_in: Fraction, measure: Measure) -> Group:
    """Return the length of a brace between two legs that are square to each other, and its two cuts."""
    return Group(
        'brace',
        (
            length('leg', leg_in, measure),
            length('other_leg', other_in, measure),
            length('length', setting_out.diagonal(leg_in, other_in), measure),
            degrees('cut_on_leg', setting_out.brace_cut(leg_in, other_in)),
            degrees('cut_on_other_leg', setting_out.brace_cut(other_in, leg_in)),
        ),
        'legs from their inner corner to the long points of the brace; length between the long points; cuts on the '
        "brace's side, from square across",
    )
