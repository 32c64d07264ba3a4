"""Stepping off with the square: how many steps, what is left over, and what the errors add up to."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.checking.allowance import GIVEN, NOT_JUDGED, RIGHT, USUAL, Allowance, verdict
from tablegen.checking.amounts import Amount, amount
from tablegen.checking.members import MEMBERS
from tablegen.checking.written import Written
from tablegen.errors import BookError
from tablegen.geometry import seventeen
from tablegen.geometry.pitch import Pitch
from tablegen.geometry.stepping import SQUARE, Hold, Steps, common_hold, hip_hold, steps
from tablegen.messages import message
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, Measure, length_figure
from tablegen.numbers.units import INCHES

DRIFT_PARTS = (64, 32, SQUARE.per)
"""Errors of one step whose sum is shown, one of so many to an inch."""
STAY_WITHIN = Fraction(1, 8)
"""in; what the end of a stepped rafter may be off by, if nothing else is said (chosen here, no source)."""


@dataclass(frozen=True, slots=True)
class Drift:
    """What one error of a step comes to at the last whole step."""

    per: int
    """The step is off by one of so many parts of an inch."""
    total: Amount
    """in."""


@dataclass(frozen=True, slots=True)
class SeventeenSteps:
    """The same hip stepped off with 17 in place of √288."""

    step: Amount
    """in."""
    error: Amount
    """At the last whole step, in; above 0 is long."""
    left_level: Figure
    """Odd run on the body, in: 17/12 of the common's."""


@dataclass(frozen=True, slots=True)
class StepsCheck:
    """A member stepped off."""

    kind: str
    """A key of members.STEPPED."""
    pitch: Pitch
    run_in: Fraction
    """Level run of the common rafter, in."""
    hold: Hold
    """How the square is held for one step."""
    whole: int
    """Whole steps, each of the hold's common run."""
    left_run_in: Fraction
    """Odd run of the common, in."""
    left_level: Figure
    """The odd run on the body, to a sixteenth: the common's, or the hip's own."""
    left_rise: Figure
    """Its rise on the tongue, to a sixteenth."""
    step: Amount
    """Exact length of one step, in."""
    set_to: Written | None
    """What the step is set to; None for the nearest sixteenth."""
    set_figure: Figure
    step_error: Amount
    """Set step less exact step, in; above 0 is long."""
    end: Amount
    """Exact length from end to end, in."""
    reached: Amount
    """Where the last mark falls, the odd remainder taken as exact, in."""
    error: Amount
    """reached less end, in."""
    drifts: tuple[Drift, ...]
    """For a step off by 1/64, 1/32, 1/16."""
    step_allowed: Amount | None
    """What one step may be off by, in, for the end to stay within what is allowed; None with no whole step."""
    setting: int | None
    """The coarsest part of an inch to which a step may be set for that: 64 for 1/64; None if none will do."""
    seventeen: SeventeenSteps | None
    """None for a common rafter."""
    allowed: Allowance
    verdict: str
    """'right' where the last mark is within what is allowed, else 'wrong'; 'not-judged' without a step that was set,
    or where the run is shorter than one."""
    within: bool
    """Whether the last mark is within what is allowed, judged or not."""


@dataclass(frozen=True, slots=True)
class StepMark:
    """Where the mark of one step goes, measured from the start in one length."""

    number: int
    exact: Amount
    """in."""
    figure: Figure
    """To the smallest part."""
    stepped: Amount
    """Where steps as they are set would put it, less the exact place, in."""


def check_steps(
    kind: str,
    pitch: Pitch,
    run_in: Fraction,
    set_to: Written | None = None,
    within_in: Fraction | None = None,
) -> StepsCheck:
    """Return a member stepped off with a step as it was set.

    Given:
        kind       a key of members.STEPPED
        run_in     level run of the common rafter, in
        set_to     the step, along the top edge; None for the exact one to the nearest sixteenth
        within_in  what the end may be off by, in; None for STAY_WITHIN

    Errors:
        BookError for a run or a step of nothing
    """
    for place, given in (('run', run_in), ('step', set_to.inches if set_to else None)):
        if given == 0:
            raise BookError(place, message('checks.nothing_to_step'), message('error.above_zero'))
    held = _held(kind, pitch)
    stepped, end = steps(run_in, held), MEMBERS[kind].length(run_in, pitch)
    step, whole = stepped.step_in, stepped.whole
    set_figure = set_to.figure if set_to else length_figure(step, SQUARE)
    set_in = set_to.inches if set_to else Fraction(set_figure.count, set_figure.per)
    error = whole * (set_in - step)
    allowed = Allowance(
        USUAL if within_in is None else GIVEN, None, STAY_WITHIN if within_in is None else within_in, None
    )
    within = verdict(error, allowed)
    return StepsCheck(
        kind,
        pitch,
        run_in,
        held,
        whole,
        stepped.left_run_in,
        length_figure(stepped.left_level_in, SQUARE),
        length_figure(stepped.left_rise_in, SQUARE),
        amount(step),
        set_to,
        set_figure,
        amount(set_in - step),
        amount(end),
        amount(end + error),
        amount(error),
        tuple(Drift(per, amount(Fraction(whole, per))) for per in DRIFT_PARTS),
        amount(allowed.inches / whole, places=4) if whole else None,
        _setting(allowed.inches, whole),
        None if kind == 'common' else _seventeen(pitch, stepped),
        allowed,
        within if set_to and whole else NOT_JUDGED,
        within == RIGHT,
    )


def mark_rows(
    kind: str, pitch: Pitch, count: int, measure: Measure, set_to: Written | None = None
) -> tuple[StepMark, ...]:
    """Return where the marks of so many steps go, and how far the steps as they are set leave them.

    Given:
        set_to  the step, along the top edge; None for the exact one to the smallest part
    """
    step = _held(kind, pitch).step_in
    set_in = set_to.inches if set_to else _set(step, measure)
    return tuple(
        StepMark(n, amount(n * step), length_figure(n * step, measure), amount(n * (set_in - step)))
        for n in range(1, count + 1)
    )


def _set(step: Exact, measure: Measure) -> Fraction:
    figure = length_figure(step, measure)
    return Fraction(figure.count, figure.per)


def _setting(within_in: Fraction, whole: int) -> int | None:
    """Return the coarsest part whose half, made at every step, stays within what is allowed."""
    return next((per for per in INCHES.parts if Fraction(whole, 2 * per) <= within_in), None)


def _held(kind: str, pitch: Pitch) -> Hold:
    return common_hold(pitch.slope) if kind == 'common' else hip_hold(pitch.corner)


def _seventeen(pitch: Pitch, true: Steps) -> SeventeenSteps:
    old = seventeen.hip_length(true.run_in, pitch.slope)
    return SeventeenSteps(
        amount(old),
        amount(true.whole * (old - true.step_in)),
        length_figure(true.left_run_in * seventeen.SHARE, SQUARE),
    )
