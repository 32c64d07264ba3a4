"""How often a length added up from a table's lines is not the length rounded once: counted over every sum."""

from __future__ import annotations

from bisect import bisect
from collections.abc import Iterable, Sequence
from fractions import Fraction
from math import isqrt, lcm

from msgspec import Struct

Line = tuple[int, int]
"""A run, and what rounding has added to its length."""


class Sums(Struct, frozen=True):
    """Sums of printed figures against the lengths themselves; what rounding has added is in bits of a part."""

    count: int
    """How many there are."""
    half: int
    """Half a part."""
    overs: list[int]
    """What it has added to every sum of a line from each group but the last, less what is taken off; from the least."""
    last: list[int]
    """And to the lines of the last group."""
    left_out: list[int]
    """And to sums of all groups that are not to be counted."""

    def off(self, parts: int = 0) -> int:
        """Return how many of them are more than so many parts off the length rounded once.

        Notes:
            1. A sum is right where rounding has added half a part at most, one part off up to a part and a half. So only the
               last group's lines are gone through.
        """
        most = (2 * parts + 1) * self.half
        within = sum(bisect(self.overs, most - one) - bisect(self.overs, -most - one) for one in self.last)
        return self.count - within + sum(-most < one <= most for one in self.left_out)


class Less(Struct, frozen=True):
    """What is taken off a sum: one printed figure or several, and the run that they stand for, exactly."""

    count: int = 0
    """Smallest parts in all, as printed."""
    run_in: Fraction = Fraction(0)
    """Of it the rational part, in; below 0 where it is put on."""
    run_squared: Fraction = Fraction(0)
    """Square of what is taken off beside that, in²: half a hip's thickness on the skew is no rational run."""


def sums_of(
    square: Fraction, lines: Iterable[Iterable[Fraction]], per: int, less: Less | None = None
) -> Sums:
    """Return the sums of one figure from each of some groups of lines.

    Given:
        square  of the length over one inch of run
        lines   runs in inches, a group of lines at a time: feet, inches, parts of an inch; whole counts of smallest parts
        per     smallest parts in an inch
        less    what every sum is less; runs that are no longer than that are left out

    Notes:
        1. What rounding has added to a sum is what it has added to its lines.
    """
    less = less or Less()
    scale = per * (less.run_in * per).denominator
    groups = [[run.numerator * scale // run.denominator for run in group] for group in lines]
    taken, skew = int(less.run_in * scale), less.run_squared * scale**2
    one, skewed, bits = _steps(square * Fraction(per, scale) ** 2, skew, sum(map(max, groups)) + abs(taken))
    half = 1 << bits - 1
    *before, last = [[(n, half - (n * one + half) % (2 * half)) for n in group] for group in groups]
    of_less = taken * one + skewed - (less.count << bits)
    shortest = taken + isqrt(int(skew)) + bool(skew)
    short = _added([[line for line in group if line[0] <= shortest] for group in (*before, last)])
    left_out = [over + of_less for run, over in short if run <= shortest]
    overs = sorted(over + of_less for _run, over in _added(before))
    return Sums(len(overs) * len(last) - len(left_out), half, overs, [over for _run, over in last], left_out)


def _added(groups: Sequence[Sequence[Line]]) -> list[Line]:
    """Return every sum of one line from each group."""
    added = [(0, 0)]
    for group in groups:
        added = [(run + n, over + more) for run, over in added for n, more in group]
    return added


def _steps(square: Fraction, skew: Fraction, longest: int) -> tuple[int, int, int]:
    """Return root(square), root(square × skew) and how many bits of a part both are told in: enough to round by, a half going up.

    Given:
        longest  the greatest n for which root(square) × (n − root(skew)) is to be rounded

    Notes:
        1. Where one of these comes to is over a half where a − b + c is not over 0, a being a whole number, b = 2 n root(square) and
           c = 2 root(square × skew). With d the denominator of b² and c², the product of all four a ± b ± c is a whole number
           over d²; where it is 0 and a − b + c is not, b and c are rational. So a − b + c is 0, or no nearer to 0 than
           1 / (d² m³), m being more than any of the four: the bits tell apart less. One root is told upwards and the other
           downwards, so that what is a half exactly is never under it.
    """
    across = square * skew
    below = lcm(square.denominator, across.denominator)
    most = (
        4 * (isqrt(4 * square.numerator * longest**2 // square.denominator) + isqrt(int(4 * across)) + 2) + 1
    )
    bits = (2 * (longest + 1) * below**2 * most**3).bit_length()
    up = isqrt((square.numerator << 2 * bits) // square.denominator) + 1
    return up, isqrt((across.numerator << 2 * bits) // across.denominator), bits
