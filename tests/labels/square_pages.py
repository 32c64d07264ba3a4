"""The pages on checking a square: turned over, mark to mark, engraved figures, steps."""

from __future__ import annotations

from fractions import Fraction

from fifty_digits import mpf, real
from mpmath import sqrt
from oracle import cuts, framing_square, square_checks
from oracle.corner import common_length, corner, hip_length, jack_difference, rise
from oracle.rounding import MINUS, decimal, degrees, nearest, part

from labels.expected import Labels, by, col

RISES = tuple((str(rise), corner(Fraction(rise))) for rise in range(1, 25))
GAPS = tuple(
    (part(gap, 64), real(gap)) for gap in map(Fraction, ('1/64', '1/32', '3/64', '1/16', '3/32', '1/8'))
)
ARMS = tuple(
    (f'{body} & {tongue}', (body, tongue))
    for body, tongue in ((12, 5), (12, 9), (16, 12), (15, 8), (20, 15), (24, 7), (24, 10), (12, 12), (24, 16))
)
EXCESS = real(Fraction(1, 32))
STEP_PITCH = corner(Fraction(5))
"""The book's pitch nearest to 6 in 12, at which steps are shown."""
STEPS = tuple((str(number), number) for number in range(1, 13))


def hundredths(number) -> str:
    return decimal(number, 2)


def thousandths(number) -> str:
    return decimal(number, 3)


def signed(number) -> str:
    """Return a distance with its sign, to thousandths; '0' where it rounds to nothing."""
    told = decimal(abs(number), 3)
    if told == '0.000':
        return '0'
    return (MINUS if number < 0 else '+') + told


def turned_over() -> Labels:
    """Return the small table of the turn-over test."""
    angle = square_checks.turned_over
    return Labels(
        'turned-over', 'Turned over', 'gap at 16 in', GAPS,
        (
            col('out of square', angle, lambda turn: degrees(turn, 3)),
            col('in 24 in', lambda gap: square_checks.out_over(angle(gap), 24), thousandths),
            col('in 12 ft', lambda gap: square_checks.out_over(angle(gap), 144), thousandths),
        ),
        (),
    )  # fmt: skip


def mark_to_mark() -> Labels:
    """Return the small table of diagonals between marks."""
    return Labels(
        'mark-to-mark', 'Mark to mark, by tape', 'body & tongue', ARMS,
        (
            col('must measure', lambda arms: square_checks.mark_to_mark(*arms), lambda long: part(long, 32)),
            col(
                '1/32 long: out in 24 in',
                lambda arms: square_checks.out_over(square_checks.opened(*arms, EXCESS), 24),
                thousandths,
            ),
        ),
        (),
    )  # fmt: skip


def engraved() -> Labels:
    """Return the page of what a square should carry."""
    figure = framing_square.figure_against_12
    length, jacks, cheek = 'length, per foot of run', 'jacks differ, spaced', 'cheek (“side cut”)'
    return Labels(
        'engraved', 'What a square should carry', 'rise in 12', RISES,
        (
            col(f'{length}: common', lambda at: common_length(at, 12), hundredths),
            col(f'{length}: hip, valley', lambda at: hip_length(at, 12), hundredths),
            col(f'{length}: by 17', lambda at: sqrt(mpf(17) ** 2 + rise(at, 12) ** 2), hundredths),
            col(f'{jacks}: 16 in', lambda at: jack_difference(at, 16), hundredths),
            col(f'{jacks}: 24 in', lambda at: jack_difference(at, 24), hundredths),
            col(f'{cheek}: jack', lambda at: figure(cuts.jack_cheek(at))),
            col(f'{cheek}: hip', lambda at: figure(cuts.hip_cheek(at))),
        ),
        (),
    )  # fmt: skip


def step(at):
    """Return one true step: a foot of run, or half of it where the tongue is too short for the rise."""
    return common_length(at, 12) / (2 if at.rise_a > framing_square.FULL_TONGUE else 1)


def _off(at, steps):
    return square_checks.drift(step(at), mpf(nearest(step(at), 16)) / 16, steps)


def drift() -> Labels:
    """Return the page of what rounded steps add up to."""
    counts = {f'{count} steps': count for count in (4, 8, 12, 16, 20, 24)}
    return Labels(
        'drift', 'What the steps add up to', 'rise in 12', RISES,
        (col('step set to', step), *by(counts, _off, signed)), (),
    )  # fmt: skip


def marks() -> Labels:
    """Return the marks of the steps at the pitch that is shown."""
    return Labels(
        'marks', f'Marks at 5 in 12, and how steps of {part(step(STEP_PITCH))} miss them', 'step', STEPS,
        (
            col('from mark 0, top edge', lambda number: number * step(STEP_PITCH)),
            col('missed by', lambda number: _off(STEP_PITCH, number), signed),
        ),
        (),
    )  # fmt: skip
