"""Stepping off with the framing square: how it is held, how many steps, what is left, what drifts."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.geometry import corner
from tablegen.geometry.corner import Corner
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, Rational, exact, floor_of, nearest, root
from tablegen.numbers.figure import Figure, Measure, length_figure

BODY_REACH = 24
TONGUE_REACH = 16
"""Inches that a framing square's arms show, outside (common practice, no source)."""
RUN_PER_STEP = 12
"""Inches of common run in one step, where the tongue is long enough for its rise."""
SQUARE = Measure(16)
"""A framing square is read in sixteenths; √288 on it is 17."""


class Hold(Struct, frozen=True):
    """The two figures at which the square lies on the board's top edge: the body level, the tongue plumb."""

    body_in: Exact
    """Level run of one step of this member, in; the line along the body is level."""
    tongue_in: Exact
    """Its rise, in; the line along the tongue is plumb."""
    holds: int
    """Steps to a foot of common run: 1, or 2, 4… where the rise of a foot is over the tongue and both are halved."""

    @property
    def run_in(self) -> Fraction:
        """Return the common run of one step, in."""
        return Fraction(RUN_PER_STEP, self.holds)

    @property
    def step_in(self) -> Exact:
        """Return the length of one step along the top edge, in.

        Source: the right triangle of what is held on the two arms.
        """
        return root(self.body_in.squared() + self.tongue_in.squared())

    @property
    def body(self) -> Figure:
        """Return what is read on the body."""
        return length_figure(self.body_in, SQUARE)

    @property
    def tongue(self) -> Figure:
        """Return what is read on the tongue."""
        return length_figure(self.tongue_in, SQUARE)

    @property
    def text(self) -> str:
        """Return both as they are told everywhere, the body first: '12 & 6'."""
        return f'{self.body.text} & {self.tongue.text}'

    @property
    def run_text(self) -> str:
        """Return the common run of one step as it is said: '6 in'."""
        return text.run(self.run_in)


class Steps(Struct, frozen=True):
    """A length stepped off."""

    run_in: Fraction
    """Common run of one step, in: 12, or 6, 3… where the square's figures are halved."""
    whole: int
    """Full steps."""
    left_run_in: Exact
    """Odd run of the common left over, in."""
    left_level_in: Exact
    """The odd run held on the body, in: of the common, or of the hip itself."""
    left_rise_in: Exact
    """Its rise, held on the tongue, in."""
    step_in: Exact
    """Exact length of one step along the top edge, in."""


def hold(level_in: Exact | Rational, rise_in: Exact) -> Hold:
    """Return how a square is held for a step.

    Given:
        level_in  level run of a foot of common run in this member: 12 for a common, corner.hip_run for a hip
        rise_in   rise in that

    Notes:
        1. The body is always level and the tongue always plumb. Where the tongue is too short for the rise, or the
           body for the run, both figures are halved until it is not.
    """
    holds = 1
    while rise_in > TONGUE_REACH * holds or level_in > BODY_REACH * holds:
        holds *= 2
    return (
        Hold(exact(level_in) / holds, rise_in / holds, holds)
        if holds > 1
        else Hold(exact(level_in), rise_in, 1)
    )


def common_hold(slope: Exact) -> Hold:
    """Return how the square is held for a common rafter."""
    return hold(RUN_PER_STEP, slope * RUN_PER_STEP)


def hip_hold(at: Corner) -> Hold:
    """Return how the square is held for a hip or valley, a step being of A's run: √288 for a regular one."""
    return hold(corner.hip_run(Fraction(RUN_PER_STEP), at), at.slope_a * RUN_PER_STEP)


def steps(run_in: Exact | Fraction, held: Hold) -> Steps:
    """Return the steps of a member for the level run, in inches, of the COMMON rafter in or beside it."""
    whole = floor_of(exact(run_in) / held.run_in)
    left = run_in - exact(whole * held.run_in)
    share = left / held.run_in
    return Steps(held.run_in, whole, left, held.body_in * share, held.tongue_in * share, held.step_in)


def held_drift(stepped: Steps, held: Hold) -> Exact:
    """Return how far off the last whole step falls when the square is held at the figures that are read on it.

    Returned:
        in, along the top edge; above 0 is too long

    Source: the right triangle of those two figures against that of the exact ones: 17 against √288.
    """
    body, tongue = (Fraction(figure.count, SQUARE.per) for figure in (held.body, held.tongue))
    return stepped.whole * (root(body**2 + tongue**2) - stepped.step_in)


def drift(whole: int, step_in: Exact, per: int) -> Exact:
    """Return how far off the last of some steps falls when each is set to the nearest part of an inch.

    Given:
        whole    how many steps
        step_in  exact length of one, along the top edge
        per      parts in an inch to which a step is set

    Returned:
        in, along the top edge; above 0 is too long
    """
    return whole * (Fraction(nearest(step_in, per), per) - step_in)
