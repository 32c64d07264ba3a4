"""Rows: the figures of every table, finished, knowing nothing of pages."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry import backing, cheeks, common, corner, shortening
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import (
    Figure,
    Measure,
    decimal_figure,
    degree_figure,
    length_figure,
    length_of_root,
)
from tablegen.numbers.units import INCHES
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
    """Jack number n from the corner, at each spacing; every length ALONG its top edge, rounded once by itself.

    A hip jack is measured from the plate line. A valley jack n spaces from its valley's ridge end is as long: from the
    ridge center line.
    """

    number: int
    lengths: tuple[Figure | None, ...]
    """To the hip's or valley's center line, nothing taken off, one a spacing; None past the longest run."""
    long_points: tuple[Figure | None, ...]
    """To the long point of its cheek, for the set thicknesses of hip and rafter. The long point of a hip jack is on
    the side away from the corner, of a valley jack towards it."""
    short_points: tuple[Figure | None, ...]
    """To the short point; None too where the hip takes all of the jack's edge."""


def run_row(pitch: Pitch, run_in: Fraction, measure: Measure) -> RunRow:
    """Return the row of one run, in inches."""
    return next(run_rows(pitch, [run_in], measure))


def run_rows(pitch: Pitch, runs: Iterable[Fraction], measure: Measure) -> Iterator[RunRow]:
    """Return the rows of many runs of one pitch, one at a time."""
    common_square = common.line_length_squared(pitch.slope)
    hip_square = corner.hip_length_squared(pitch.corner)
    rise_square = pitch.slope.squared()
    for run_in in runs:
        square = run_in * run_in
        yield RunRow(
            run_in,
            length_of_root(common_square * square, measure),
            length_of_root(hip_square * square, measure),
            length_of_root(rise_square * square, measure),
        )


def pitch_values(pitch: Pitch, settings: Settings) -> PitchValues:
    """Return the figures that a pitch has once."""
    slope, at, measure = pitch.slope, pitch.corner, settings.measure
    plumb, hip_plumb = common.slope_angle(slope), corner.hip_angle(at)
    jack_cheek, hip_cheek = cheeks.jack(at), cheeks.hip_at_ridge(at)
    foot = Fraction(12)
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


def jack_rows(pitch: Pitch, settings: Settings) -> list[JackRow]:
    """Return the jacks from the corner as far as the runs go, each spacing to its own last jack."""
    last = settings.runs.last
    most = max(last // spacing for spacing in settings.spacings)
    at = pitch.corner
    off = shortening.along(shortening.jack_at_hip(settings.hip_thickness, at), pitch.slope)
    half = shortening.along(shortening.point_to_point(settings.rafter_thickness, at), pitch.slope) / 2

    spaced = [(spacing, corner.jack_difference(spacing, at)) for spacing in settings.spacings]

    def figures(number: int, less: Exact) -> tuple[Figure | None, ...]:
        return tuple(
            _jack_figure(number * difference - less, settings.measure) if number * spacing <= last else None
            for spacing, difference in spaced
        )

    return [
        JackRow(number, figures(number, exact(0)), figures(number, off - half), figures(number, off + half))
        for number in range(1, int(most) + 1)
    ]


def _jack_figure(length: Exact, measure: Measure) -> Figure | None:
    return length_figure(length, measure) if length > 0 else None


def part_runs(runs: Runs, per: int) -> list[Fraction]:
    """Return the small runs to add to a tabled run so that any run to the book's smallest part can be had.

    Given:
        per  smallest printed parts in an inch

    Returned:
        inches, below the step of the runs: the parts below coarse_part, the coarse parts below an inch, then whole
        inches; a reader adds at most one of each kind

    Notes:
        1. Sixteenths at least, whatever the book rounds to. A 1/32 book has one thirty-second beside them; a 1/64
           book has eighths and seven sixty-fourths, fourteen in all, since 63 would leave no room for the table.
    """
    coarse, least = coarse_part(per), Fraction(1, max(per, 16))
    fine = [least * n for n in range(1, int(coarse / least))]
    parts = (
        fine + [coarse * n for n in range(1, int(1 / coarse))] + [Fraction(n) for n in range(1, INCHES.group)]
    )
    return [part for part in parts if part < runs.step]


def coarse_part(per: int) -> Fraction:
    """Return of which parts of an inch a reader adds one first: sixteenths, or eighths in a 1/64 book."""
    return Fraction(1, 8) if per == 64 else Fraction(1, 16)


def offsets_of_foot(runs: Runs) -> list[Fraction] | None:
    """Return the inches past a whole foot at which runs fall, or None where feet and inches make no grid.

    Notes:
        1. Runs given in metric make a list: their inches, such as 50/127, are heads that nobody finds on a tape.
    """
    if (INCHES.group / runs.step).denominator != 1 or any(map(text.is_metric, (runs.first, runs.step))):
        return None
    return sorted({run % INCHES.group for run in runs})


def cells_of_foot(
    figures: dict[Fraction, Figure], feet: int, offsets: Sequence[Fraction]
) -> list[Figure | None]:
    """Return the figures of one foot's runs at some offsets in inches; None where the table has none."""
    return [figures.get(INCHES.group * feet + offset) for offset in offsets]
