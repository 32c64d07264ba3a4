"""Finding a pitch, and laying out square: what a tape, a level and two diagonals say."""

from __future__ import annotations

from fractions import Fraction
from typing import ClassVar

from msgspec import Struct
from msgspec.structs import replace

from tablegen.geometry import common, finding_pitch, setting_out
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.exact import Exact, nearest, sign
from tablegen.numbers.figure import Measure, degree_figure, length_figure
from tablegen.roof.figures import Degrees, Length, size
from tablegen.roof.names import Longer, Why

HALVES = 2


class PitchFound(Struct, frozen=True):
    """A measured slope as a pitch, in degrees, and as the nearest half pitch."""

    datum: ClassVar = ('roof.pitch_found',)
    rise_per_foot: Length
    angle: Degrees
    nearest_half_pitch: str | Why
    off_by_per_foot: Length
    """The measured rise less the nearest half pitch, told with its sign."""


class Rectangle(Struct, frozen=True):
    """The diagonal that makes a rectangle of plates square, both ways."""

    datum: ClassVar = ('roof.rectangle',)
    length: Length
    width: Length
    diagonal: Length


class RectangleCheck(Struct, frozen=True):
    """How far out of square a layout is by its two diagonals, as measured."""

    datum: ClassVar = ('roof.rectangle_check',)
    diagonals_should_be: Length
    push_along_length: Length
    verdict: Longer


class Brace(Struct, frozen=True):
    """A brace between two legs that are square to each other."""

    datum: ClassVar = ('roof.brace',)
    leg: Length
    other_leg: Length
    length: Length
    cut_on_leg: Degrees
    cut_on_other_leg: Degrees


def pitch_found(slope: Exact, measure: Measure) -> PitchFound:
    """Return a measured slope, which one of the functions of geometry.finding_pitch gives."""
    rise = finding_pitch.rise_per_foot(slope)
    half = Fraction(nearest(rise, HALVES), HALVES)
    off_by = length_figure(rise - half, measure)
    return PitchFound(
        length_figure(rise, measure),
        degree_figure(common.slope_angle(slope)),
        pitch_of_rise(half).text if half else Why.FLATTER,
        replace(off_by, parts=off_by.parts._replace(sign='+')) if off_by.count > 0 else off_by,
    )


def rectangle(length_in: Fraction, width_in: Fraction, measure: Measure) -> Rectangle:
    """Return the diagonal of a rectangle."""
    return Rectangle(
        length_figure(length_in, measure),
        length_figure(width_in, measure),
        length_figure(setting_out.diagonal(length_in, width_in), measure),
    )


def rectangle_check(
    length_in: Fraction, width_in: Fraction, diagonal_in: Fraction, other_in: Fraction, measure: Measure
) -> RectangleCheck:
    """Return how far out of square a layout is.

    Given:
        length_in, width_in    the sides, in, opposite ones equal
        diagonal_in, other_in  in
    """
    aside = setting_out.lean(length_in, diagonal_in, other_in)
    return RectangleCheck(
        length_figure(setting_out.diagonal(length_in, width_in), measure),
        length_figure(size(aside), measure),
        tuple(Longer)[sign(aside) + 1],
    )


def brace(leg_in: Fraction, other_in: Fraction, measure: Measure) -> Brace:
    """Return a brace's length and its two cuts."""
    return Brace(
        length_figure(leg_in, measure),
        length_figure(other_in, measure),
        length_figure(setting_out.diagonal(leg_in, other_in), measure),
        degree_figure(setting_out.brace_cut(leg_in, other_in)),
        degree_figure(setting_out.brace_cut(other_in, leg_in)),
    )
