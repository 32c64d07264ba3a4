"""The outside reference: mpmath at 50 digits, for values and for the count nearest to them."""

from fractions import Fraction

from mpmath import mp, mpf

mp.dps = 50
CLEAR = mpf(10) ** -30
"""A count is decided when the value stands further than this from a half: 20 digits above mpmath's error."""


def real(value: Fraction | int) -> mpf:
    """Return a rational to 50 digits."""
    return mpf(value.numerator) / value.denominator


def count_of(value: mpf, per: int) -> int:
    """Return the nearest whole number of parts of a value that stands clear of a half."""
    doubled = 2 * per * value
    assert abs(doubled - 2 * mp.floor(doubled / 2) - 1) > CLEAR, 'a half, or too near one to be decided here'
    return int(mp.nint(per * value))
