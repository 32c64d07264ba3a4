"""Everything that is known of one run at one pitch, each number exact until its one rounding."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from tablegen import text
from tablegen.angles import Angle
from tablegen.exact import Exact, Rational, nearest_root
from tablegen.figures import (
    Figure,
    Measure,
    decimal_figure,
    degree_figure,
    length_figure,
    length_of_count,
    rounding_left,
)
from tablegen.geometry import common, hip, jacks
from tablegen.pitch import Pitch
from tablegen.settings import Settings
from tablegen.stepping import RUN_PER_STEP, Hold, common_hold, hip_hold

DATA_PLACES = 9


@dataclass(frozen=True, slots=True)
class Places:
    """How many decimals a finding is told to."""

    length: int
    """Of an inch."""
    degree: int


@dataclass(frozen=True, slots=True)
class Given:
    """A length that was asked about, which nothing has rounded."""

    inches: Figure
    """in, in decimals."""
    text: str
    """As a carpenter says it; in decimals of an inch where no tape shows it."""


@dataclass(frozen=True, slots=True)
class Length:
    """One length, read three ways."""

    inches: Figure
    """in, in decimals."""
    part: Figure
    """To the smallest printed part."""
    left: Figure
    """in, in decimals: the part less the exact length, which is what rounding has added."""


@dataclass(frozen=True, slots=True)
class Cut:
    """A cut's angle, and how the framing square gives it."""

    degrees: Figure
    held: str
    """Figures on the body and on the tongue, and along which of them the cut is marked."""


@dataclass(frozen=True, slots=True)
class JackDifference:
    """What each further jack of one spacing gains, along the slope."""

    spacing: Given
    """On center, along the plate."""
    difference: Length


@dataclass(frozen=True, slots=True)
class Finding:
    """One run at one pitch: a regular corner, before any shortening."""

    pitch: Pitch
    rise_per_foot: Figure
    """in per foot of run, in decimals."""
    run: Given
    """Level run of the common rafter."""
    part_text: str
    """The smallest printed part: '1/16'."""
    common: Length
    """Common rafter: plate line to ridge center line, along the slope."""
    hip_valley: Length
    """Hip or valley: plate corner to ridge center line, along its own slope."""
    rise: Length
    """Plumb, plate line to ridge center line."""
    jack_differences: tuple[JackDifference, ...]
    plumb_cut: Cut
    """Common: from square across the side of the board. The level cut is its complement."""
    level_cut: Cut
    hip_plumb_cut: Cut
    hip_level_cut: Cut
    jack_cheek: Cut
    """From square across the top face."""
    hip_cheek: Cut
    """From square across the top face, left square to the sides."""
    backing_bevel: Figure
    """Each side of a backed hip's top, from square to the sides, in a section square to the hip."""
    hip_thickness: Given
    hip_drop: Length
    """Plumb, for an unbacked hip of that thickness."""


@dataclass(frozen=True, slots=True)
class DataRow:
    """A row of the run tables as a data file gives it."""

    run: Figure
    common: Figure
    common_part: Figure
    hip_valley: Figure
    hip_valley_part: Figure
    rise: Figure
    rise_part: Figure


def find(pitch: Pitch, run_in: Fraction, settings: Settings, places: Places) -> Finding:
    """Return all that is known of one run at one pitch.

    Given:
        run_in    level run of the common rafter, in, above 0
        settings  smallest part and how lengths read, jack spacings, thickness of the hip
        places    decimals of the lengths and of the degrees
    """
    slope, measure = pitch.slope, settings.measure
    on_square = Measure(measure.per, text.INCHES)

    def told(inches: Exact | Rational) -> Length:
        return length_told(inches, measure, places.length)

    def given_inches(inches: Fraction) -> Given:
        return _given(inches, f'{text.rational(inches)} in', places.length)

    def cut(angle: Angle, held: str) -> Cut:
        return Cut(degree_figure(angle, places.degree), held)

    def cheek(angle: Angle, figure: Exact) -> Cut:
        return cut(
            angle, f'{RUN_PER_STEP} & {length_figure(figure, on_square).text}, along the {RUN_PER_STEP}'
        )

    def plumb_and_level(angle: Angle, hold: Hold) -> tuple[Cut, Cut]:
        plumb, level = (
            cut(one, f'{hold.text}, along the {arm}')
            for one, arm in ((angle, 'tongue'), (angle.complement(), 'body'))
        )
        return plumb, level

    plumb_cut, level_cut = plumb_and_level(common.slope_angle(slope), common_hold(slope))
    hip_plumb_cut, hip_level_cut = plumb_and_level(hip.slope_angle(slope), hip_hold(slope))
    return Finding(
        pitch=pitch,
        rise_per_foot=decimal_figure(pitch.rise, places.length),
        run=_given(run_in, text.run(run_in), places.length),
        part_text=text.rational(Fraction(1, measure.per)),
        common=told(common.line_length(run_in, slope)),
        hip_valley=told(hip.line_length(run_in, slope)),
        rise=told(common.rise(run_in, slope)),
        jack_differences=tuple(
            JackDifference(given_inches(spacing), told(jacks.difference(spacing, slope)))
            for spacing in settings.spacings
        ),
        plumb_cut=plumb_cut,
        level_cut=level_cut,
        hip_plumb_cut=hip_plumb_cut,
        hip_level_cut=hip_level_cut,
        jack_cheek=cheek(jacks.cheek(slope), jacks.cheek_figure(slope)),
        hip_cheek=cheek(hip.cheek(slope), hip.cheek_figure(slope)),
        backing_bevel=degree_figure(hip.backing_bevel(slope), places.degree),
        hip_thickness=given_inches(settings.hip_thickness),
        hip_drop=told(hip.drop(settings.hip_thickness, slope)),
    )


def length_told(inches: Exact | Rational, measure: Measure, places: int) -> Length:
    """Return a length in decimals, to the smallest part, and what that rounding has added."""
    part = length_figure(inches, measure)
    return Length(decimal_figure(inches, places), part, decimal_figure(rounding_left(inches, part), places))


def data_rows(pitch: Pitch, settings: Settings) -> Iterator[DataRow]:
    """Return the rows of one pitch over the settings' runs, one at a time."""
    measure, slope_squared = settings.measure, pitch.slope.squared()
    squares = (common.line_length_squared(pitch.slope), hip.line_length_squared(pitch.slope), slope_squared)
    for run_in in settings.runs:
        row = [decimal_figure(run_in, DATA_PLACES)]
        for square in squares:
            square *= run_in * run_in
            count = nearest_root(square, 10**DATA_PLACES)
            row.append(Figure(count, 10**DATA_PLACES, row[0].unit, text.decimal(count, DATA_PLACES)))
            row.append(length_of_count(nearest_root(square, measure.per), measure))
        yield DataRow(*row)


def plain(figure: Figure) -> str:
    """Return a figure in decimals as data files take it: no degree sign, a hyphen for a minus."""
    return text.plain_decimal(figure.count, len(str(figure.per)) - 1)


def _given(inches: Fraction, said: str, places: int) -> Given:
    figure = decimal_figure(inches, places)
    on_a_tape = inches.denominator <= 64 or '/' not in said
    return Given(figure, said if on_a_tape else f'{figure.text} in')
