"""How often a length added up from a table's lines is not the length rounded once: counted over every sum."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from itertools import product
from math import isqrt


@dataclass(frozen=True, slots=True)
class SumsOff:
    """Sums of printed figures against the lengths themselves."""

    sums: int
    """How many there are."""
    off: int
    """How many of them are not the length rounded once."""
    most: int
    """Parts that the worst of them is off by."""


def sums_off(square: Fraction, lines: Iterable[Iterable[Fraction]], per: int) -> SumsOff:
    """Return how the sums of one figure from each of some groups of lines come out.

    Given:
        square  of the length over one inch of run
        lines   runs in inches, a group of lines at a time: feet, inches, parts of an inch; whole counts of smallest parts
        per     smallest parts in an inch

    Notes:
        1. Lengths are proportional to runs: with n the run in smallest parts, the length in smallest parts is the root of
           square × n², so its nearest count needs whole numbers alone.
    """
    groups = [[(n, _nearest(square, n)) for n in (int(run * per) for run in group)] for group in lines]
    sums = off = most = 0
    for parts in product(*groups):
        sums += 1
        apart = abs(sum(count for _, count in parts) - _nearest(square, sum(n for n, _ in parts)))
        if apart:
            off, most = off + 1, max(most, apart)
    return SumsOff(sums, off, most)


def _nearest(square: Fraction, n: int) -> int:
    return (isqrt(4 * square.numerator * n * n // square.denominator) + 1) // 2
