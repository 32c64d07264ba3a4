"""What the property tests draw from: roofs, runs, parts of an inch and exact numbers."""

from fractions import Fraction

from hypothesis import strategies as st

from tablegen.numbers.exact import Exact, exact, root
from tablegen.numbers.text import STYLES
from tablegen.numbers.units import INCHES


def parts():
    """Smallest printed parts in an inch."""
    return st.sampled_from(INCHES.parts)


def styles():
    """How lengths read."""
    return st.sampled_from(STYLES)


def rationals(most: int = 1000):
    """Rationals of either sign."""
    return st.fractions(-most, most, max_denominator=500)


def squares(most: int = 100_000):
    """Squares: rationals not below zero."""
    return st.fractions(0, most, max_denominator=500)


def runs():
    """Level runs up to 40 ft, to a 64th of an inch, in."""
    return st.integers(1, 40 * 12 * 64).map(lambda count: Fraction(count, 64))


def rises():
    """Inches of rise per foot of run, to a 16th, up to 24."""
    return st.integers(1, 24 * 16).map(lambda count: Fraction(count, 16))


def terms():
    """Coefficients with small radicands, so that square classes often meet."""
    coefficients = st.fractions(-50, 50, max_denominator=32)
    radicands = st.sampled_from(
        [Fraction(q) for q in (1, 2, 3, 5, 6, 8, 9, 12, 18, 27, 50)] + [Fraction(1, 2)]
    )
    return st.lists(st.tuples(coefficients, radicands), max_size=6)


def added_up(pairs: list[tuple[Fraction, Fraction]]) -> Exact:
    """Return the sum of coefficients times roots, made by the operators that the book uses."""
    return sum((coefficient * root(radicand) for coefficient, radicand in pairs), exact(0))
