"""Stepping off: how the square is held, how many steps, what is left, what drifts."""

from fractions import Fraction

import pytest
from fifty_digits import CLEAR, mp, real
from hypothesis import given
from strategies import parts, rises, runs

from tablegen.geometry import seventeen
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.geometry.stepping import (
    BODY_REACH,
    TONGUE_REACH,
    common_hold,
    drift,
    hip_hold,
    steps,
)
from tablegen.numbers.exact import exact, nearest, root


@pytest.mark.parametrize(
    ('rise', 'body', 'tongue', 'holds', 'run'),
    [
        (6, '12', '6', 1, '1 ft'),
        (16, '12', '16', 1, '1 ft'),
        (17, '6', '8 1/2', 2, '6 in'),
        (23, '6', '11 1/2', 2, '6 in'),
        (24, '6', '12', 2, '6 in'),
        (30, '6', '15', 2, '6 in'),
        (48, '3', '12', 4, '3 in'),
        (120, '1 1/2', '15', 8, '1 1/2 in'),
    ],
)
def test_hold_for_a_common(rise, body, tongue, holds, run):
    """Body first and level, tongue plumb; halved, and again, until the rise is on the tongue."""
    held = common_hold(exact(Fraction(rise, 12)))

    assert (held.body.text, held.tongue.text, held.text) == (body, tongue, f'{body} & {tongue}')
    assert (held.holds, held.run_text) == (holds, run)


@pytest.mark.parametrize(
    ('rise', 'holds'),
    [(6, 1), (16, 1), (17, 2), (24, 2), (60, 4), (120, 8)],
)
def test_hold_for_a_hip(rise, holds):
    held = hip_hold(pitch_of_rise(Fraction(rise)).corner)

    assert (held.body_in, held.tongue_in) == (root(288) / holds, exact(Fraction(rise, holds)))
    assert (held.holds, held.run_in) == (holds, Fraction(12, holds))


@given(rises())
def test_both_figures_are_on_the_square_and_in_proportion(rise):
    pitch = pitch_of_rise(rise)
    for held, run in ((common_hold(pitch.slope), exact(12)), (hip_hold(pitch.corner), root(288))):
        assert held.body_in <= BODY_REACH
        assert held.tongue_in <= TONGUE_REACH
        assert held.holds * held.body_in == run
        assert held.holds * held.tongue_in == rise
        assert held.holds == 1 or 2 * held.tongue_in > TONGUE_REACH  # no more often than there is need


def both(rise, run):
    pitch = pitch_of_rise(rise)
    return steps(run, common_hold(pitch.slope)), steps(run, hip_hold(pitch.corner))


@given(rises(), runs())
def test_steps_and_remainder_make_the_run(rise, run):
    slope = exact(rise / 12)
    common, hip = both(rise, run)

    step = 12
    while 12 * slope > TONGUE_REACH * Fraction(12, step):
        step = Fraction(step, 2)
    assert common.run_in == hip.run_in == step
    assert common.whole == hip.whole == run // step
    assert step * common.whole + common.left_run_in == run
    assert common.left_level_in == common.left_run_in < step
    assert common.left_rise_in <= TONGUE_REACH
    assert hip.left_level_in == root(2) * common.left_run_in
    assert common.left_rise_in == hip.left_rise_in == common.left_run_in * rise / 12


@given(rises(), runs())
def test_steps_and_remainder_make_the_length(rise, run):
    """Whole steps and the slant of the remainder reach the length at 50 digits."""
    m = real(rise) / 12
    lengths = real(run) * mp.sqrt(1 + m * m), real(run) * mp.sqrt(2 + m * m)
    for stepped, length in zip(both(rise, run), lengths, strict=True):
        step = real(stepped.step_in.squared())
        left = real(stepped.left_level_in.squared() + stepped.left_rise_in.squared())
        assert abs(stepped.whole * mp.sqrt(step) + mp.sqrt(left) - length) < CLEAR


def test_drift_at_six_in_twelve():
    """Ten steps of 13 3/8 in fall 0.414 in short of √18000 = 134.164 in."""
    off = drift(10, common_hold(exact(Fraction(1, 2))).step_in, 8)

    assert off == Fraction(1070, 8) - root(18000)
    assert nearest(off, 1000) == -414


def test_seventeen_for_the_hip_run_is_a_third_of_an_inch_long_over_twelve_steps():
    """At 8 in 12: the step with 17 in place of √288, twelve times, is 0.320 in too long."""
    step = hip_hold(pitch_of_rise(Fraction(8)).corner).step_in

    assert nearest(12 * (root(17**2 + 8**2) - step), 1000) == 320
    assert seventeen.hip_length(Fraction(12), exact(Fraction(2, 3))) == root(17**2 + 8**2)


@given(rises(), runs(), parts())
def test_drift_is_at_most_half_a_part_a_step(rise, run, per):
    for stepped in both(rise, run):
        off = drift(stepped.whole, stepped.step_in, per)
        assert -Fraction(stepped.whole, 2 * per) <= off <= Fraction(stepped.whole, 2 * per)
