"""The worked examples: a garden store, its porch and its hip corner, computed for the book's own settings."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen import lookup
from tablegen.exact import Exact, nearest, root
from tablegen.figures import Figure, Measure, decimal_figure, length_figure
from tablegen.geometry import common, hip, jacks
from tablegen.lookup import Found
from tablegen.pitch import Pitch
from tablegen.rows import PitchValues, pitch_values
from tablegen.settings import Settings
from tablegen.stepping import SQUARE, Hold, Steps, common_hold, common_steps, drift, hip_hold, hip_steps

RAFTER_DEPTH = Fraction(11, 2)
"""Depth of the store's rafters, a dressed 2 × 6, in."""
STAMPED_HIP_RUN = Fraction(17)
"""What most squares are stamped with for a hip's run in a foot of common run, in place of √288."""
SEAT = Fraction(7, 2)
"""Level seat on the plate, in."""
MOST_JACKS = 6
"""Jacks of the example, where they stand so close that there would be no end of them."""


@dataclass(frozen=True, slots=True)
class StepOff:
    """The same length by stepping off with the square."""

    hold: Hold
    whole: int
    """Steps, each of the hold's common run."""
    left_level: Figure
    left_rise: Figure
    """Odd remainder, level on the body and plumb on the tongue, to sixteenths; count 0 where there is none."""
    step_exact: Figure
    """One whole step along the top edge, to thousandths."""
    step_set: Figure
    """The same to the book's smallest part."""
    drift: Figure
    """How far the last whole step is off when every step is set to that, to thousandths; + is long."""


@dataclass(frozen=True, slots=True)
class CommonExample:
    """One common rafter, from the width of a building to the marks."""

    key: str
    pitch: Pitch
    values: PitchValues
    width_in: Fraction | None
    """Outside to outside of the plates; None for a lean-to, whose run is measured."""
    run_in: Fraction
    overhang_in: Fraction
    length: Found
    whole: Found
    """Run and overhang together: ridge center line to tail."""
    heel: Found
    """Rise over the seat: how far the heel is cut up the plumb line."""
    ridge_half: Figure | None
    """Level; None where there is no ridge."""
    steps: StepOff


@dataclass(frozen=True, slots=True)
class HipExample:
    """The hip of a corner and its first jacks."""

    key: str
    pitch: Pitch
    values: PitchValues
    run_in: Fraction
    overhang_in: Fraction
    length: Found
    whole: Found
    shortening: Figure
    """Level, at a ridge: half the 45-degree thickness of the ridge, to the smallest part."""
    steps: StepOff
    seventeen_drift: Figure
    """How much too long the whole steps are with a full 17 held in place of √288, to thousandths."""


@dataclass(frozen=True, slots=True)
class JackExample:
    """The jacks of that corner at one spacing."""

    key: str
    pitch: Pitch
    values: PitchValues
    spacing_in: Fraction
    spacing_place: int
    """Which of the book's spacings it is, from 0."""
    difference: Figure
    jacks: tuple[tuple[int, Figure, Fraction], ...]
    """Number, line length and run of each."""
    shortening: Figure
    """Level, at the hip: half the hip's 45-degree thickness."""
    point_to_point: Figure
    """How much longer the long point is than the center, along the slope: half the jack's thickness there."""
    hand: Figure
    """One whole difference, to thousandths."""
    drift: Figure
    """How far the last jack is off if each is measured a rounded difference on from the one before."""


def store(settings: Settings) -> CommonExample | None:
    """Return the garden store's common rafter: 11 ft 2 in wide, 6 in 12 or the nearest in the book."""
    return _common('store', settings, Fraction(6), Fraction(134), None, Fraction(8))


def porch(settings: Settings) -> CommonExample | None:
    """Return the porch's lean-to rafter: run 4 ft 5 5/8 in, 4 in 12 or the nearest in the book."""
    return _common('porch', settings, Fraction(4), None, Fraction(429, 8), Fraction(6))


def corner(settings: Settings) -> HipExample | None:
    """Return the hip of the store's far end: common run 6 ft 3 in, 8 in 12 or the nearest in the book."""
    pitch = nearest_pitch(settings, Fraction(8))
    run, overhang = _reachable(Fraction(75), settings), Fraction(8)
    length = lookup.look_up('hip-valley', run, pitch, settings)
    whole = lookup.look_up('hip-valley', run + overhang, pitch, settings)
    if length is None or whole is None:
        return None
    steps = _step_off(hip_hold(pitch.slope), hip_steps(run, pitch.slope), settings)
    shortening = length_figure(settings.ridge_thickness / root(2), Measure(settings.measure.per))
    stamped = root(STAMPED_HIP_RUN * STAMPED_HIP_RUN + (12 * pitch.slope).squared())
    foot = stamped - hip.line_length(Fraction(12), pitch.slope)
    over = Fraction(steps.whole, steps.hold.holds) * foot
    return HipExample(
        'corner',
        pitch,
        pitch_values(pitch, settings),
        run,
        overhang,
        length,
        whole,
        shortening,
        steps,
        decimal_figure(over, 3),
    )


def corner_jacks(settings: Settings) -> JackExample:
    """Return the jacks of that corner at 16 in on center or the book's nearest spacing."""
    pitch = nearest_pitch(settings, Fraction(8))
    run = _reachable(Fraction(75), settings)
    place = min(range(len(settings.spacings)), key=lambda i: abs(settings.spacings[i] - 16))
    spacing = settings.spacings[place]
    count = max(1, min(MOST_JACKS, int((run - 1) // spacing)))
    difference = jacks.difference(spacing, pitch.slope)
    per, measure = settings.measure.per, settings.measure
    in_inches = Measure(per)  # short deductions are inches, however lengths read
    return JackExample(
        'jacks',
        pitch,
        pitch_values(pitch, settings),
        spacing,
        place,
        length_figure(difference, in_inches),
        tuple((n, length_figure(n * difference, measure), n * spacing) for n in range(1, count + 1)),
        length_figure(settings.hip_thickness / root(2), in_inches),
        length_figure(common.line_length(settings.rafter_thickness / 2, pitch.slope), in_inches),
        decimal_figure(difference, 3),
        decimal_figure(count * (Fraction(nearest(difference, per), per) - difference), 3),
    )


def nearest_pitch(settings: Settings, rise_in: Fraction) -> Pitch:
    """Return the book's pitch nearest to a rise per foot."""
    return min(settings.pitches, key=lambda one: _distance(one.rise, rise_in))


def _distance(rise: Exact, wanted: Fraction) -> Exact:
    return rise - wanted if rise >= wanted else wanted - rise


def _reachable(run_in: Fraction, settings: Settings) -> Fraction:
    """Return the run, or the longest tabled one with room for an overhang where the book ends before it."""
    return run_in if run_in + 12 <= settings.runs.last else settings.runs.last - settings.runs.last % 1 - 12


def _common(key, settings, rise, width, run, overhang) -> CommonExample | None:
    pitch = nearest_pitch(settings, rise)
    wanted = run if width is None else width / 2
    run_in = _reachable(wanted, settings)
    if run_in <= overhang:
        return None
    length = lookup.look_up('common', run_in, pitch, settings)
    whole = lookup.look_up('common', run_in + overhang, pitch, settings)
    heel = lookup.look_up('rise', SEAT, pitch, settings)
    if length is None or whole is None or heel is None:
        return None
    return CommonExample(
        key,
        pitch,
        pitch_values(pitch, settings),
        None if width is None else 2 * run_in,
        run_in,
        overhang,
        length,
        whole,
        heel,
        None if width is None else length_figure(settings.ridge_thickness / 2, Measure(settings.measure.per)),
        _step_off(common_hold(pitch.slope), common_steps(run_in, pitch.slope), settings),
    )


def _step_off(held: Hold, steps: Steps, settings: Settings) -> StepOff:
    return StepOff(
        held,
        steps.whole,
        length_figure(steps.left_level_in, SQUARE),
        length_figure(steps.left_rise_in, SQUARE),
        decimal_figure(steps.step_in, 3),
        length_figure(steps.step_in, Measure(settings.measure.per)),
        decimal_figure(drift(steps, settings.measure.per), 3),
    )
