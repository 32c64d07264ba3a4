"""Stepping off: how the square is held, how many steps, what is left, what drifts."""

from fractions import Fraction

import pytest
from fifty_digits import CLEAR, mp, real
from hypothesis import given
from strategies import parts, rises, runs

from tablegen.exact import exact, nearest, root
from tablegen.stepping import BODY_REACH, TONGUE_REACH, common_hold, common_steps, drift, hip_hold, hip_steps


@pytest.mark.parametrize(
    ('rise', 'body', 'tongue', 'plumb_on_body', 'holds'),
    [
        (6, 12, 6, False, 1),
        (16, 12, 16, False, 1),
        (17, 17, 12, True, 1),
        (24, 24, 12, True, 1),
        (30, 6, 15, False, 2),
        (48, 24, 6, True, 2),
        (120, Fraction(3, 2), 15, False, 8),
    ],
)
def test_hold_for_a_common(rise, body, tongue, plumb_on_body, holds):
    held = common_hold(exact(Fraction(rise, 12)))

    assert (held.body_in, held.tongue_in) == (exact(body), exact(tongue))
    assert (held.plumb_on_body, held.holds) == (plumb_on_body, holds)


@pytest.mark.parametrize(
    ('rise', 'part', 'holds'),
    [(6, 1, 1), (16, 1, 1), (17, Fraction(1, 2), 2), (24, Fraction(1, 2), 2)],
)
def test_hold_for_a_hip(rise, part, holds):
    """√288 lies past the tongue's end, so a rise that does too has both halved."""
    held = hip_hold(exact(Fraction(rise, 12)))

    assert (held.body_in, held.tongue_in) == (root(288) / holds, exact(Fraction(rise, holds)))
    assert (held.plumb_on_body, held.holds) == (False, holds)


@given(rises())
def test_both_figures_are_on_the_square_and_in_proportion(rise):
    slope = exact(rise / 12)
    for held, run in ((common_hold(slope), exact(12)), (hip_hold(slope), root(288))):
        level, plumb = held.body_in, held.tongue_in
        if held.plumb_on_body:
            level, plumb = plumb, level
        assert held.body_in <= BODY_REACH
        assert held.tongue_in <= TONGUE_REACH
        assert held.holds * level == run
        assert held.holds * plumb == rise


@given(rises(), runs())
def test_steps_and_remainder_make_the_run(rise, run):
    slope = exact(rise / 12)
    common, hip = common_steps(run, slope), hip_steps(run, slope)

    assert common.whole == hip.whole == run // 12
    assert 12 * common.whole + common.left_run_in == run
    assert common.left_level_in == common.left_run_in < 12
    assert hip.left_level_in == root(2) * common.left_run_in
    assert common.left_rise_in == hip.left_rise_in == common.left_run_in * rise / 12


@given(rises(), runs())
def test_steps_and_remainder_make_the_length(rise, run):
    """Whole steps and the slant of the remainder reach the length at 50 digits."""
    slope, m = exact(rise / 12), real(rise) / 12
    for steps, length in (
        (common_steps(run, slope), real(run) * mp.sqrt(1 + m * m)),
        (hip_steps(run, slope), real(run) * mp.sqrt(2 + m * m)),
    ):
        step = real(steps.step_in.squared())
        left = real(steps.left_level_in.squared() + steps.left_rise_in.squared())
        assert abs(steps.whole * mp.sqrt(step) + mp.sqrt(left) - length) < CLEAR


def test_drift_at_six_in_twelve():
    """Ten steps of 13 3/8 in fall 0.414 in short of √18000 = 134.164 in."""
    off = drift(common_steps(Fraction(120), exact(Fraction(1, 2))), 8)

    assert off == Fraction(1070, 8) - root(18000)
    assert nearest(off, 1000) == -414


def test_seventeen_for_the_hip_run_is_a_third_of_an_inch_long_over_twelve_steps():
    """At 8 in 12: the step with 17 in place of √288, twelve times, is 0.320 in too long."""
    step = hip_steps(Fraction(12), exact(Fraction(2, 3))).step_in

    assert nearest(12 * (root(17**2 + 8**2) - step), 1000) == 320


@given(rises(), runs(), parts())
def test_drift_is_at_most_half_a_part_a_step(rise, run, per):
    for steps in (common_steps(run, exact(rise / 12)), hip_steps(run, exact(rise / 12))):
        off = drift(steps, per)
        assert -Fraction(steps.whole, 2 * per) <= off <= Fraction(steps.whole, 2 * per)
