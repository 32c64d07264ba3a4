"""What one pitch has but once: cuts, lengths per foot of run, bevels."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.geometry import backing, cheeks, common, corner
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.angles import Angle
from tablegen.numbers.figure import Figure, Measure, decimal_figure, degree_figure, length_figure
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings

DEGREE_PLACES = 2
UNIT_PLACES = 3


@dataclass(frozen=True, slots=True)
class PitchValues:
    """What one pitch has but once: cuts, lengths per foot of run, bevels."""

    pitch: Pitch
    rise_per_foot: Figure
    """in per foot of run, to thousandths."""
    plumb_cut: Figure
    """deg, common, from square across the board's side."""
    level_cut: Figure
    """deg, common, its complement: the seat cut."""
    hip_plumb_cut: Figure
    hip_level_cut: Figure
    common_per_foot: Figure
    """in, to thousandths."""
    common_per_foot_part: Figure
    """The same to the smallest part."""
    hip_per_foot: Figure
    """in per foot of COMMON run, to thousandths."""
    hip_per_foot_part: Figure
    jack_cheek: Figure
    """deg, on the jack's top edge, from the line square across it."""
    jack_cheek_figure: Figure
    """in, against 12 on the square."""
    hip_cheek: Figure
    """deg, on the hip's square top edge, from the line square across it."""
    hip_cheek_figure: Figure
    backing_bevel: Figure
    """deg, each side of a backed hip's top, from square."""
    hip_drop: Figure
    """in, plumb, for the set hip thickness, to the smallest part."""
    jack_differences: tuple[Figure, ...]
    """in, one a spacing, to the smallest part."""


def pitch_values(pitch: Pitch, settings: Settings) -> PitchValues:
    """Return the figures that a pitch has once."""
    slope, at, measure = pitch.slope, pitch.corner, settings.measure
    plumb, hip_plumb = common.slope_angle(slope), corner.hip_angle(at)
    jack_cheek, hip_cheek = cheeks.jack(at), cheeks.hip_at_ridge(at)
    foot = INCHES.unit_run
    in_inches = Measure(measure.per)  # a square's figures and unit lengths are inches, however lengths read

    def deg(angle: Angle) -> Figure:
        return degree_figure(angle, DEGREE_PLACES)

    return PitchValues(
        pitch=pitch,
        rise_per_foot=decimal_figure(pitch.rise, UNIT_PLACES),
        plumb_cut=deg(plumb),
        level_cut=deg(plumb.complement()),
        hip_plumb_cut=deg(hip_plumb),
        hip_level_cut=deg(hip_plumb.complement()),
        common_per_foot=decimal_figure(common.line_length(foot, slope), UNIT_PLACES),
        common_per_foot_part=length_figure(common.line_length(foot, slope), in_inches),
        hip_per_foot=decimal_figure(corner.hip_length(foot, at), UNIT_PLACES),
        hip_per_foot_part=length_figure(corner.hip_length(foot, at), in_inches),
        jack_cheek=deg(jack_cheek.top),
        jack_cheek_figure=length_figure(jack_cheek.figure(), in_inches),
        hip_cheek=deg(hip_cheek.top),
        hip_cheek_figure=length_figure(hip_cheek.figure(), in_inches),
        backing_bevel=deg(backing.bevel(at)),
        hip_drop=length_figure(backing.drop_plumb(settings.hip_thickness, at), in_inches),
        jack_differences=tuple(
            length_figure(corner.jack_difference(spacing, at), in_inches) for spacing in settings.spacings
        ),
    )
