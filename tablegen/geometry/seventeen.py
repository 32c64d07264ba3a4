"""What old squares make of a regular hip: 17 stamped for √288, its level run in a foot of common run."""

from __future__ import annotations

from fractions import Fraction

from tablegen.numbers.exact import Exact, exact, root
from tablegen.numbers.units import INCHES

RUN_PER_FOOT = Fraction(17)
"""in, where a true hip's is √288."""
SHARE = RUN_PER_FOOT / INCHES.base
"""Of a length of the common's, what the same is said to be along the hip."""


def hip_length(run_in: Fraction, slope: Exact) -> Exact:
    """Return the length, in, of a regular hip made so: √(17² + r²) for every foot of common run.

    Given:
        run_in  level run of the COMMON rafter beside it, in
    """
    return run_in * root(SHARE * SHARE + slope.squared())


def cheek_figure(slope: Exact) -> Exact:
    """Return the figure against 12, in, of its cheek made so: 12·17/√(17² + r²)."""
    return INCHES.base * exact(SHARE) / root(SHARE * SHARE + slope.squared())
