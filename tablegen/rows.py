"""Rows: the figures of every table, finished, knowing nothing of pages."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from tablegen.exact import nearest_root
from tablegen.figures import Figure, Measure, decimal_figure, degree_figure, length_figure, length_of_count
from tablegen.geometry import common, hip, jacks
from tablegen.pitch import Pitch
from tablegen.settings import Runs, Settings

DEGREE_PLACES = 2
UNIT_PLACES = 3


@dataclass(frozen=True, slots=True)
class RunRow:
    """The lengths of one run at one pitch."""

    run_in: Fraction
    """Level run of the common rafter, in."""
    common: Figure
    """Common rafter: plate line to ridge center line, along the slope."""
    hip_valley: Figure
    """Hip or valley beside it: plate corner to ridge center line, along its own slope."""
    rise: Figure
    """Plumb, plate line to ridge center line."""


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


@dataclass(frozen=True, slots=True)
class JackRow:
    """Jack number n from the corner, at each spacing."""

    number: int
    lengths: tuple[Figure | None, ...]
    """Plate line to hip center line, one a spacing; None past the longest run."""


def run_row(pitch: Pitch, run_in: Fraction, measure: Measure) -> RunRow:
    """Return the row of one run, in inches."""
    return next(run_rows(pitch, [run_in], measure))


def run_rows(pitch: Pitch, runs: Iterable[Fraction], measure: Measure) -> Iterator[RunRow]:
    """Return the rows of many runs of one pitch, one at a time."""
    common_square = common.line_length_squared(pitch.slope)
    hip_square = hip.line_length_squared(pitch.slope)
    rise_square = pitch.slope.squared()
    per = measure.per
    for run_in in runs:
        square = run_in * run_in
        yield RunRow(
            run_in,
            length_of_count(nearest_root(common_square * square, per), measure),
            length_of_count(nearest_root(hip_square * square, per), measure),
            length_of_count(nearest_root(rise_square * square, per), measure),
        )


def pitch_values(pitch: Pitch, settings: Settings) -> PitchValues:
    """Return the figures that a pitch has once."""
    slope, measure = pitch.slope, settings.measure
    plumb, hip_plumb = common.slope_angle(slope), hip.slope_angle(slope)
    foot = Fraction(12)
    in_inches = Measure(measure.per)  # a square's figures and unit lengths are inches, however lengths read

    def deg(angle):
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
        hip_per_foot=decimal_figure(hip.line_length(foot, slope), UNIT_PLACES),
        hip_per_foot_part=length_figure(hip.line_length(foot, slope), in_inches),
        jack_cheek=deg(jacks.cheek(slope)),
        jack_cheek_figure=length_figure(jacks.cheek_figure(slope), in_inches),
        hip_cheek=deg(hip.cheek(slope)),
        hip_cheek_figure=length_figure(hip.cheek_figure(slope), in_inches),
        backing_bevel=deg(hip.backing_bevel(slope)),
        hip_drop=length_figure(hip.drop(settings.hip_thickness, slope), in_inches),
        jack_differences=tuple(
            length_figure(jacks.difference(spacing, slope), in_inches) for spacing in settings.spacings
        ),
    )


def jack_rows(pitch: Pitch, settings: Settings) -> list[JackRow]:
    """Return the jacks from the corner as far as the runs go, each spacing to its own last jack."""
    last = settings.runs.last
    most = max(last // spacing for spacing in settings.spacings)
    return [
        JackRow(
            number,
            tuple(
                length_figure(jacks.difference(number * spacing, pitch.slope), settings.measure)
                if number * spacing <= last
                else None
                for spacing in settings.spacings
            ),
        )
        for number in range(1, int(most) + 1)
    ]


def part_runs(runs: Runs) -> list[Fraction]:
    """Return the small runs to add to a tabled run so that any run to a sixteenth can be had.

    Returned:
        inches: the sixteenths below the step of the runs, up to 15/16, then whole inches below the step
    """
    sixteenths = [Fraction(n, 16) for n in range(1, 16) if Fraction(n, 16) < runs.step]
    return sixteenths + [Fraction(n) for n in range(1, 12) if n < runs.step]
