"""The parts of a member worked out: what comes off, cheek cuts, bird's mouths, marks, and stepping off."""

from __future__ import annotations

from fractions import Fraction

from tablegen.checking.amounts import amount
from tablegen.examples.records import CheekCut, Deduction, Mark, Mouth, StepOff
from tablegen.geometry import seat, seventeen, shortening, tail
from tablegen.geometry.cheeks import Cheek
from tablegen.geometry.pitch import Pitch
from tablegen.geometry.stepping import (
    SQUARE,
    Hold,
    common_hold,
    drift,
    hip_hold,
    steps,
)
from tablegen.numbers.exact import Exact, Rational, exact, floor_of
from tablegen.numbers.figure import (
    Figure,
    Measure,
    decimal_figure,
    degree_figure,
    length_figure,
    length_of_count,
)
from tablegen.roof.cautions import Caution, pitch_cautions, seat_cautions
from tablegen.settings import Settings


def inches(length_in: Exact | Rational, settings: Settings) -> Figure:
    """Return a short length to the book's smallest part, always in plain inches."""
    return length_figure(length_in, Measure(settings.measure.per))


def deduction(
    reason: str, thickness_in: Fraction, level_in: Exact, slope: Exact, settings: Settings
) -> Deduction:
    """Return what comes off, level and along a member of a slope."""
    along = shortening.along(level_in, slope)
    return Deduction(reason, thickness_in, inches(level_in, settings), inches(along, settings))


def cheek_cut(cut: Cheek, side_in: Exact, slope: Exact, double: bool, settings: Settings) -> CheekCut:
    """Return a cheek with its readings.

    Given:
        side_in  level, from the mark on the center line to where the cut leaves either side
        slope    the member's own
    """
    return CheekCut(
        degree_figure(cut.saw),
        degree_figure(cut.blade),
        degree_figure(cut.top_from_square()),
        length_figure(cut.figure(), Measure(settings.measure.per)),
        double,
        inches(side_in, settings),
        inches(shortening.along(side_in, slope), settings),
    )


def mouth(
    depth_in: Fraction,
    height_in: Exact,
    heel_in: Exact,
    slope: Exact,
    overhang_in: Exact | Rational,
    settings: Settings,
    out_in: Exact | Rational = 0,
    run_in: Exact | None = None,
) -> Mouth | None:
    """Return a bird's mouth, None where the stock does not reach the plate, or the seat would spoil it.

    Given:
        heel_in      plumb, from the stock's own depth
        slope        the member's own
        overhang_in  level, of the commons
        out_in       level, how far outwards of the plate line the heel stands
        run_in       of a hip or valley: its own level run, of which no seat takes half; deep stock on a flat roof
                     would be notched up to the ridge
    """
    wide = heel_in / slope
    if heel_in <= 0 or seat.stock_left(depth_in, wide, slope) <= 0:
        return None
    if run_in is not None and 2 * wide > run_in:
        return None
    return Mouth(
        inches(tail.plumb_cut_length(depth_in, slope), settings),
        inches(height_in, settings),
        inches(heel_in, settings),
        inches(wide, settings),
        inches(out_in, settings),
        inches(seat.notch_depth(wide, slope), settings),
        inches(seat.stock_left(depth_in, wide, slope), settings),
        seat_cautions(depth_in, wide, exact(overhang_in), slope),
    )


def cautions(pitch: Pitch, cut: Mouth | None) -> tuple[Caution, ...]:
    """Return what a roof's pitch and a member's bird's mouth call for."""
    return pitch_cautions(pitch.slope) + (cut.cautions if cut else ())


def marks(settings: Settings, **places: Exact | Rational) -> tuple[Mark, ...]:
    """Return marks along the top edge, each rounded once, in the order of their places."""
    ordered = sorted(places.items(), key=lambda one: exact(one[1]))
    return tuple(Mark(key, length_figure(at, settings.measure)) for key, at in ordered)


def stick(overall_in: Exact, depth_in: Fraction, slope: Exact, settings: Settings) -> tuple[Figure, Figure]:
    """Return a cut member's length along its top edge, and the shortest board that has it, tip to tip, rounded up.

    Source: the plumb cut at its tail leans out by the depth times the slope, which is the set-in of a square cut
    measured along the edge.
    """
    lean = shortening.along(tail.square_cut_set_in(depth_in, slope), slope)
    return length_figure(overall_in, settings.measure), at_least(overall_in + lean, settings.measure)


def at_least(length_in: Exact, measure: Measure) -> Figure:
    """Return a length rounded up: what is not to be gone under."""
    return length_of_count(-floor_of(-length_in, measure.per), measure)


def common_step_off(run_in: Fraction, overhang_in: Fraction, pitch: Pitch, settings: Settings) -> StepOff:
    """Return a common's stepping off."""
    return _step_off(run_in, overhang_in, common_hold(pitch.slope), None, settings)


def hip_step_off(run_in: Fraction, overhang_in: Fraction, pitch: Pitch, settings: Settings) -> StepOff:
    """Return the stepping off of a regular hip or valley, by the run of the COMMON beside it."""
    held = hip_hold(pitch.corner)
    stamped = seventeen.hip_length(held.run_in, pitch.slope)
    return _step_off(run_in, overhang_in, held, stamped, settings)


def _step_off(
    run_in: Fraction, overhang_in: Fraction, held: Hold, stamped: Exact | None, settings: Settings
) -> StepOff:
    stepped, of_tail = steps(run_in, held), steps(overhang_in, held)
    return StepOff(
        held,
        stepped.whole,
        length_figure(stepped.left_level_in, SQUARE),
        length_figure(stepped.left_rise_in, SQUARE),
        of_tail.whole,
        length_figure(of_tail.left_level_in, SQUARE),
        length_figure(of_tail.left_rise_in, SQUARE),
        decimal_figure(stepped.step_in, 3),
        length_figure(stepped.step_in, Measure(settings.measure.per)),
        amount(drift(stepped, settings.measure.per)),
        None if stamped is None else amount(stepped.whole * (stamped - stepped.step_in)),
    )
