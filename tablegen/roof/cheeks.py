"""Cheeks: each with its line on the top edge, from square across, and the saw's two settings on the side."""

from __future__ import annotations

from fractions import Fraction

from tablegen.geometry import cheeks, shortening
from tablegen.geometry.cheeks import Cheek
from tablegen.geometry.stepping import RUN_PER_STEP, hold
from tablegen.numbers import text
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Measure, length_figure
from tablegen.roof.readings import Group, Reading, degrees, figure, length, words, yes_no
from tablegen.roof.side import Side

FACES = (
    'top: on the top edge, from the line square across it; top figure: held against 12 on the square, the line marked '
    'along the 12; top held: the same on body & tongue, marked along the body, both halved where the tongue is too '
    'short; side: the plumb cut, on the side of the board, from the line square across it, and the tilt of the blade from '
    'square, the shoe on that side'
)
"""From which line, on which face, every cheek is read."""
PAST_SCALE = (
    "; the tilt is past a saw's scale, 45 degrees: mark top and sides and cut to the lines with a hand saw; a wheel saw "
    'only if its blade reaches so far (blade reach, along the blade): cut the end plumb and square past the long '
    'point, set the shoe on that end, tilt the blade by end blade tilt and follow the plumb line on the side'
)
SQUARE_TOP = 'its top is left square to the sides; a backed top has another line'
IN_THE_PLANE = 'its top edge lies in the roof plane'
JACK_TOP = (
    f'{IN_THE_PLANE}; so cut are both ends of a cripple between hip and valley, and the lower end of '
    'a valley jack'
)


def cheek(key: str, cut: Cheek, top: str, crossed_in: Fraction, side: Side, *more: Reading) -> Group:
    """Return one cheek's readings.

    Given:
        top         what its top is
        crossed_in  the thickness that it crosses: half of the board's for each of two cheeks to a point
        more        readings of its points
    """
    within, measure = cut.within_scale(), side.ask.measure
    past = (degrees('end_blade_tilt', cut.from_end()), length('blade_reach', cut.reach(crossed_in), measure))
    return Group(
        key,
        (
            degrees('top_from_square', cut.top_from_square()),
            figure('top_figure_on_12', cut.figure(), measure),
            words('top_held', _held(cut.figure(), measure)),
            degrees('side_plumb', cut.saw),
            degrees('side_blade_tilt', cut.blade),
            yes_no('within_saw_scale', within),
            *(() if within else past),
            *more,
        ),
        top + ('' if within else PAST_SCALE),
    )


def jack_cheek(side: Side, top: str = JACK_TOP) -> Group:
    """Return the cheek of a jack or cripple of this side."""
    points = side.both(
        'long_to_short_point', shortening.point_to_point(side.ask.rafter_in, side.at), side.slope
    )
    return cheek('jack', cheeks.jack(side.at), top, side.ask.rafter_in, side, *points)


def cheeks_of(side: Side) -> Group:
    """Return the cheeks of this side: its jacks, and hips and valleys where they meet what stands on it."""
    ask, at = side.ask, side.at
    at_ridge, tail = cheeks.hip_at_ridge(at), cheeks.hip_at_fascia(at)
    return Group(
        'cheek',
        (
            jack_cheek(side),
            _one('hip_at_ridge', at_ridge, ask.hip_in, side),
            _one('valley_at_ridge', at_ridge, ask.valley_thickness_in, side),
            _two(
                'hip_between_commons',
                cheeks.hip_at_common(at),
                ask.hip_in,
                shortening.set_back_at_common(ask.hip_in, at),
                side,
            ),
            _two(
                'valley_between_ridges',
                at_ridge,
                ask.valley_thickness_in,
                shortening.set_back_at_ridge(ask.valley_thickness_in, at),
                side,
            ),
            _two('hip_tail', tail, ask.hip_in, shortening.set_back_at_ridge(ask.hip_in, at), side),
            _two(
                'valley_tail',
                tail,
                ask.valley_thickness_in,
                shortening.set_back_at_ridge(ask.valley_thickness_in, at),
                side,
            ),
            backed_of(side),
        ),
        'hip or valley at ridge: one cheek over the whole thickness, on the side of a ridge over this side; between '
        'commons or ridges, and at the tail between two fascias: two cheeks, this one on the side towards this roof '
        'plane; point to side: level and along, from the mark on the center line to the plumb line where this cheek '
        "starts on the side: towards the tail from the ridge's end, towards the ridge from a hip's tail, outwards from a "
        "valley's tail, which is hollow",
    )


def backed_of(side: Side) -> Group:
    """Return the lines of the cuts on a hip's backed face towards this side."""
    at_ridge, at_common = cheeks.backed_at_ridge(side.at), cheeks.backed_at_common(side.at)
    measure = side.ask.measure
    return Group(
        'backed_hip',
        (
            degrees('at_ridge_top_from_square', at_ridge),
            figure('at_ridge_top_figure_on_12', _against_12(at_ridge), measure),
            words('at_ridge_top_held', _held(_against_12(at_ridge), measure)),
            degrees('at_common_top_from_square', at_common),
            figure('at_common_top_figure_on_12', _against_12(at_common), measure),
            words('at_common_top_held', _held(_against_12(at_common), measure)),
        ),
        'top: on the backed face towards this side, from the line square across the hip; top figure: held against 12 '
        'on the square, the line marked along the 12; top held: the same on body & tongue, along the body; the saw as for a hip that is not backed',
    )


def _one(key: str, cut: Cheek, thickness_in: Fraction, side: Side) -> Group:
    points = shortening.hip_point_to_point(thickness_in, side.at)
    return cheek(
        key, cut, SQUARE_TOP, thickness_in, side, *side.both('long_to_short_point', points, side.at.hip_slope)
    )


def _two(key: str, cut: Cheek, thickness_in: Fraction, back_in: Exact, side: Side) -> Group:
    return cheek(
        key, cut, SQUARE_TOP, thickness_in / 2, side, *side.both('point_to_side', back_in, side.at.hip_slope)
    )


def _held(figure_in: Exact, measure: Measure) -> str:
    """Return how the square is held for a figure against 12: '12 & 10', or '6 & 12 3/8' past the tongue's end."""
    halved = hold(RUN_PER_STEP, figure_in).holds
    on_tongue = length_figure(figure_in / halved, Measure(measure.per))
    return f'{text.rational(Fraction(RUN_PER_STEP, halved))} & {on_tongue.text}'


def _against_12(from_square: Angle) -> Exact:
    tangent = from_square.complement().tangent
    assert tangent is not None  # the line is square across nowhere
    return 12 * tangent
