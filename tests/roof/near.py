"""The book's exact numbers as mpmath numbers, and how near is near."""

from fifty_digits import mp, mpf, real

from tablegen.numbers.exact import exact

NEAR = mpf('1e-9')


def number(x):
    """Return an Exact, or a rational, at mpmath's digits."""
    terms = exact(x).terms
    return sum((real(c) * mp.sqrt(real(q)) for c, q in terms), mpf(0))


def radians(angle):
    """Return an Angle in radians."""
    return mp.pi / 2 if angle.tangent is None else mp.atan(number(angle.tangent))


def gap(ours, model):
    """Return how far a number of ours is from the model's, in inches or radians."""
    value = radians(ours) if hasattr(ours, 'tangent') else number(ours)
    return abs(value - model)
