"""How often a length added up from a table's lines is not the length rounded once: counted over every sum."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from math import isqrt, lcm


@dataclass(frozen=True, slots=True)
class SumsOff:
    """Sums of printed figures against the lengths themselves."""

    sums: int
    """How many there are."""
    off: int
    """How many of them are not the length rounded once."""
    far: int
    """How many of them are more than one part off."""


@dataclass(frozen=True, slots=True)
class Less:
    """What is taken off a sum: one printed figure or several, and the run that they stand for, exactly."""

    count: int = 0
    """Smallest parts in all, as printed."""
    run_in: Fraction = Fraction(0)
    """Of it the rational part, in; below 0 where it is put on."""
    run_squared: Fraction = Fraction(0)
    """Square of what is taken off beside that, in²: half a hip's thickness on the skew is no rational run."""


def sums_off(
    square: Fraction, lines: Iterable[Iterable[Fraction]], per: int, less: Less | None = None
) -> SumsOff:
    """Return how the sums of one figure from each of some groups of lines come out.

    Given:
        square  of the length over one inch of run
        lines   runs in inches, a group of lines at a time: feet, inches, parts of an inch; whole counts of smallest parts
        per     smallest parts in an inch
        less    what every sum is less; runs that are no longer than that are left out

    Notes:
        1. Lengths are proportional to runs: with n the run in smallest parts, the length in smallest parts is the root of
           square × n², so its nearest count needs whole numbers alone.
    """
    less = less or Less()
    scale = per * (less.run_in * per).denominator
    groups = [[(int(run * scale), _nearest(square, run * per)) for run in group] for group in lines]
    taken, skew = int(less.run_in * scale), less.run_squared * scale**2
    shortest = taken + isqrt(int(skew)) + bool(skew)
    *before, last = groups
    added = [(-taken, -less.count)]
    for group in before:
        added = [(run + n, whole + count) for run, whole in added for n, count in group]
    over_one = square * Fraction(per, scale) ** 2
    nearest = _nearest_of(over_one, skew) if skew else _known(over_one, _longest(groups) - taken).__getitem__
    left = shortest - taken
    apart = [whole + count - nearest(run + n) for run, whole in added for n, count in last if run + n > left]
    right = apart.count(0)
    return SumsOff(len(apart), len(apart) - right, len(apart) - right - apart.count(1) - apart.count(-1))


def _longest(groups: Iterable[Iterable[tuple[int, int]]]) -> int:
    return sum(max(n for n, _count in group) for group in groups)


def _known(square: Fraction, longest: int) -> list[int]:
    """Return the whole numbers nearest to root(square) × n, a half going up, for every n up to the longest, at least."""
    known = _of_square(square)
    times, per = 4 * square.numerator, square.denominator
    known += [(isqrt(times * n * n // per) + 1) // 2 for n in range(len(known), longest + 1)]
    return known


@lru_cache(maxsize=2)  # of a pitch, which is asked for several times before the next one
def _of_square(square: Fraction) -> list[int]:
    return []


def _nearest(square: Fraction, run: Fraction) -> int:
    above, below = run.numerator, run.denominator
    return (isqrt(4 * square.numerator * above * above // (square.denominator * below * below)) + 1) // 2


def _nearest_of(square: Fraction, skew: Fraction) -> Callable[[int], int]:
    """Return what gives the whole number nearest to root(square) × (n − root(skew)), a half going up.

    Notes:
        1. It is (floor(root(y)) + 1) // 2 with y = 4 square (n² + skew) − root(64 square² n² skew), and floor(root(y)) is the
           root of y's own floor: whole numbers all the way.
    """
    per = lcm(square.denominator, (square * skew).denominator, (64 * square**2 * skew).denominator)
    times, plus, rooted = (
        int(one) for one in (4 * per * square, 4 * per * square * skew, 64 * (per * square) ** 2 * skew)
    )

    def nearest(n: int) -> int:
        up = isqrt(rooted * n * n - 1) + 1 if rooted else 0
        return (isqrt((times * n * n + plus - up) // per) + 1) // 2

    return nearest
