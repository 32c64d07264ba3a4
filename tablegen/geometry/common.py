"""Common rafters: line length, rise and cuts."""

from __future__ import annotations

from fractions import Fraction

from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, root


def line_length(run_in: Exact | Fraction, slope: Exact) -> Exact:
    """Return the line length of a common rafter.

    Given:
        run_in  level run, in, from outside of plate to center of ridge
        slope   rise over run

    Returned:
        in, along the slope, between the same two plumb lines

    Source: the right triangle of run and rise; per foot of run it is √(144 + r²), r the rise per foot.
    """
    return run_in * root(line_length_squared(slope))


def line_length_squared(slope: Exact) -> Fraction:
    """Return the square of the line length for one inch of run, in²: what long tables of runs are rounded from."""
    return 1 + slope.squared()


def rise(run_in: Exact | Fraction, slope: Exact) -> Exact:
    """Return the rise in inches over a level run in inches."""
    return slope * run_in


def slope_angle(slope: Exact) -> Angle:
    """Return the angle of the slope from level.

    Returned:
        the plumb cut as marked from the line square across the board; the level cut is its complement
    """
    return Angle(slope)
