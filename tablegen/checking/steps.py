"""Stepping off with the square: how many steps, what is left over, and what the errors add up to."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.checking.allowance import Allowance, Verdict, allowance, verdict
from tablegen.checking.amounts import amount
from tablegen.checking.members import MEMBERS
from tablegen.checking.written import Part, Written
from tablegen.errors import BookError
from tablegen.geometry import seventeen
from tablegen.geometry.pitch import Pitch
from tablegen.geometry.stepping import SQUARE, Hold, Steps, common_hold, hip_hold, steps
from tablegen.messages import message
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Measure, decimal_figure, length_figure
from tablegen.numbers.units import INCHES
from tablegen.roof.figures import Length

DRIFT_PARTS = (64, 32, SQUARE.per)
"""Errors of one step whose sum is shown, one of so many to an inch."""
STAY_WITHIN = Fraction(1, 8)
"""in; what the end of a stepped rafter may be off by, if nothing else is said (chosen here, no source)."""


FINE_PLACES = 4
"""Decimals of what a step may be off by."""


class Held(Struct, frozen=True):
    """How the square is held for one step."""

    body: Length
    tongue: Length
    steps_to_a_foot: int
    """Of common run: 1, or 2, 4… where the tongue is too short and both figures are a share of those of a foot."""
    run: Fraction
    """Common run of one step, in."""


class Remainder(Struct, frozen=True):
    """How the odd run is held, to a sixteenth."""

    body: Length
    """The common's odd run, or the hip's own."""
    tongue: Length
    """Its rise."""


class Drift(Struct, frozen=True):
    """What one error of a step comes to at the last whole step."""

    step_off_by: Part
    total: Length
    """in."""


class SeventeenSteps(Struct, frozen=True):
    """The same hip stepped off with 17 in place of √288."""

    step: Length
    """in."""
    error: Length
    """At the last whole step, in; above 0 is long."""
    odd_body: Length
    """Odd run on the body, in: 17/12 of the common's."""


class StepMark(Struct, frozen=True):
    """Where the mark of one step goes, measured from the start in one length."""

    number: int
    mark: Length
    """To the smallest part."""
    exact: Length
    """in."""
    off: Length
    """Where steps as they are set would put it, less the exact place, in."""


class StepsCheck(Struct, frozen=True):
    """A member stepped off."""

    of: str
    """A key of members.STEPPED."""
    pitch: Pitch
    rise_per_foot: Length
    run: Fraction
    """Level run of the common rafter, in."""
    held: Held
    whole_steps: int
    odd_run: Fraction
    """Odd run of the common, in."""
    odd_remainder: Remainder
    exact_step: Length
    """in."""
    step: Length
    """As it is set; the nearest sixteenth where nobody has set it."""
    step_given: bool
    step_error: Length
    """Set step less exact step, in; above 0 is long."""
    exact_length: Length
    """From end to end, in."""
    last_mark: Length
    """Where the last mark falls, the odd remainder taken as exact, in."""
    error: Length
    """Last mark less exact length, in."""
    drift: tuple[Drift, ...]
    """For a step off by 1/64, 1/32, 1/16."""
    step_allowed: Length | None
    """What one step may be off by, in, for the end to stay within what is allowed; None with no whole step."""
    set_to: Part | None
    """The coarsest part of an inch to which a step may be set for that; None if none will do."""
    with_seventeen: SeventeenSteps | None
    """None for a common rafter."""
    marks: tuple[StepMark, ...]
    allowed: Allowance
    verdict: Verdict
    """RIGHT where the last mark is within what is allowed; NOT_JUDGED without a step that was set, or where the run
    is shorter than one."""
    within_allowed: bool
    """Whether the last mark is within what is allowed, judged or not."""


def check_steps(
    kind: str,
    pitch: Pitch,
    run_in: Fraction,
    set_to: Written | None = None,
    within_in: Fraction | None = None,
    with_marks: bool = False,
) -> StepsCheck:
    """Return a member stepped off with a step as it was set.

    Given:
        kind        a key of members.STEPPED
        run_in      level run of the common rafter, in
        set_to      the step, along the top edge; None for the exact one to the nearest sixteenth
        within_in   what the end may be off by, in; None for STAY_WITHIN
        with_marks  whether the place of each mark is told

    Errors:
        BookError for a run or a step of nothing
    """
    for place, given in (('run', run_in), ('step', set_to.inches if set_to else None)):
        if given == 0:
            raise BookError(place, message('check.nothing_to_step'), message('error.above_zero'))
    held = _held(kind, pitch)
    stepped, end = steps(run_in, held), MEMBERS[kind].length(run_in, pitch)
    step, whole = stepped.step_in, stepped.whole
    setting = set_to.figure if set_to else length_figure(step, SQUARE)
    set_in = set_to.inches if set_to else Fraction(setting.count, setting.per)
    error = whole * (set_in - step)
    allowed = allowance(None, within_in, usual_in=STAY_WITHIN)
    within = verdict(error, allowed)
    coarsest = _setting(allowed.total, whole)
    return StepsCheck(
        kind,
        pitch,
        amount(pitch.rise),
        run_in,
        Held(held.body, held.tongue, held.holds, held.run_in),
        whole,
        run_in - stepped.whole * stepped.run_in,
        Remainder(length_figure(stepped.left_level_in, SQUARE), length_figure(stepped.left_rise_in, SQUARE)),
        amount(step),
        setting,
        bool(set_to),
        amount(set_in - step),
        amount(end),
        amount(end + error),
        amount(error),
        tuple(Drift(_part(per), amount(Fraction(whole, per))) for per in DRIFT_PARTS),
        decimal_figure(allowed.total / whole, FINE_PLACES) if whole else None,
        _part(coarsest) if coarsest else None,
        None if kind == 'common' else _seventeen(pitch, stepped),
        mark_rows(kind, pitch, whole, SQUARE, set_to) if with_marks else (),
        allowed,
        within if set_to and whole else Verdict.NOT_JUDGED,
        within == Verdict.RIGHT,
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
        StepMark(n, length_figure(n * step, measure), amount(n * step), amount(n * (set_in - step)))
        for n in range(1, count + 1)
    )


def _set(step: Exact, measure: Measure) -> Fraction:
    figure = length_figure(step, measure)
    return Fraction(figure.count, figure.per)


def _setting(within_in: Fraction, whole: int) -> int | None:
    """Return the coarsest part whose half, made at every step, stays within what is allowed."""
    return next((per for per in INCHES.parts if Fraction(whole, 2 * per) <= within_in), None)


def _part(per: int) -> Part:
    """Return one of so many parts of an inch."""
    return Part(INCHES.unit, Fraction(1), per, None, False)


def _held(kind: str, pitch: Pitch) -> Hold:
    return common_hold(pitch.slope) if kind == 'common' else hip_hold(pitch.corner)


def _seventeen(pitch: Pitch, true: Steps) -> SeventeenSteps:
    old = seventeen.hip_length(true.run_in, pitch.slope)
    return SeventeenSteps(
        amount(old),
        amount(true.whole * (old - true.step_in)),
        length_figure(true.left_run_in * seventeen.SHARE, SQUARE),
    )
