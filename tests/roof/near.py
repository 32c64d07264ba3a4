"""The book's exact numbers as mpmath numbers, and how near is near."""

from fractions import Fraction

from mpmath import mp, mpf

from tablegen.exact import exact

NEAR = mpf('1e-9')


def number(x):
    """Return an Exact, or a rational, at mpmath's digits."""
    terms = exact(x).terms
    return sum(
        (mpf(c.numerator) / c.denominator * mp.sqrt(mpf(q.numerator) / q.denominator) for c, q in terms),
        mpf(0),
    )


def radians(angle):
    """Return an Angle in radians."""
    return mp.pi / 2 if angle.tangent is None else mp.atan(number(angle.tangent))


def gap(ours, model):
    """Return how far a number of ours is from the model's, in inches or radians."""
    value = radians(ours) if hasattr(ours, 'tangent') else number(ours)
    return abs(value - model)


def real(x: Fraction):
    return mpf(x.numerator) / x.denominator
