"""Stepping off with the framing square: how it is held, how many steps, what is left, what drifts."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.exact import Exact, Rational, exact, nearest, root
from tablegen.geometry import common, hip

BODY_REACH = 24
TONGUE_REACH = 16
"""Inches that a framing square's arms show, outside (common practice, no source)."""
RUN_PER_STEP = 12
"""Inches of common run in one step."""


@dataclass(frozen=True, slots=True)
class Hold:
    """The two figures at which the square lies on the board's edge."""

    body_in: Exact
    tongue_in: Exact
    plumb_on_body: bool
    """False: the body marks the level line and the tongue the plumb line. True: the other way about."""
    holds: int
    """Holds that make one step: 1, or 2, 4… where the full figures run off the square and are halved."""


@dataclass(frozen=True, slots=True)
class Steps:
    """A length stepped off."""

    whole: int
    """Full steps of 12 in of common run."""
    left_run_in: Fraction
    """Odd run of the common left over, in."""
    left_level_in: Exact
    """The odd run held on the level arm, in: of the common, or of the hip itself."""
    left_rise_in: Exact
    """Its rise, held on the other arm, in."""
    step_in: Exact
    """Exact length of one step along the edge, in."""


def hold(level_in: Exact | Rational, rise_in: Exact) -> Hold:
    """Return how a square is held for a step.

    Given:
        level_in  level run of one step of this member: 12 for a common, √288 for a regular hip
        rise_in   rise of one step

    Notes:
        1. The rise is put on the tongue where it reaches, else on the body if the run then fits on the
           tongue, else both figures are halved until they fit.
    """
    level, holds = exact(level_in), 1
    while True:
        if level <= BODY_REACH and rise_in <= TONGUE_REACH:
            return Hold(level, rise_in, False, holds)
        if rise_in <= BODY_REACH and level <= TONGUE_REACH:
            return Hold(rise_in, level, True, holds)
        level, rise_in, holds = level / 2, rise_in / 2, 2 * holds


def common_hold(slope: Exact) -> Hold:
    """Return how the square is held for a common rafter."""
    return hold(RUN_PER_STEP, slope * RUN_PER_STEP)


def hip_hold(slope: Exact) -> Hold:
    """Return how the square is held for a regular hip or valley: √288, on most squares read as 17."""
    return hold(root(hip.RUN_SQUARED) * RUN_PER_STEP, slope * RUN_PER_STEP)


def common_steps(run_in: Fraction, slope: Exact) -> Steps:
    """Return a common rafter's steps for a level run in inches."""
    whole, left = divmod(run_in, RUN_PER_STEP)
    step = common.line_length(Fraction(RUN_PER_STEP), slope)
    return Steps(int(whole), left, exact(left), common.rise(left, slope), step)


def hip_steps(run_in: Fraction, slope: Exact) -> Steps:
    """Return a regular hip's steps for the level run of the COMMON rafter beside it, in inches."""
    whole, left = divmod(run_in, RUN_PER_STEP)
    step = hip.line_length(Fraction(RUN_PER_STEP), slope)
    return Steps(int(whole), left, left * root(hip.RUN_SQUARED), common.rise(left, slope), step)


def drift(steps: Steps, per: int) -> Exact:
    """Return how far off the last whole step falls when each step is set to the nearest part of an inch.

    Given:
        per  parts in an inch to which a step is set

    Returned:
        in, along the edge; above 0 is too long
    """
    return steps.whole * (Fraction(nearest(steps.step_in, per), per) - steps.step_in)
