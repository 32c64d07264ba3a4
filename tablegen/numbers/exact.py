"""Exact numbers, sums of rationals times roots of rationals, and their one rounding by integers."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from math import isqrt

from msgspec import Struct

Rational = int | Fraction
Terms = tuple[tuple[Fraction, Fraction], ...]
ONE = Fraction(1)
NOTHING = ((Fraction(0), ONE),)
"""The terms of zero, as one."""
ENDS_OF_SQUARES = {0, 1, 4, 9}
"""What is left of a square number by 16."""
SMALL = 2**32
"""Parts of one in which sums of roots are compared first."""
NEAR = 10**70  # steps in one of the rational that stands for a sum of roots, where a square must be rational


class Exact(Struct, frozen=True, eq=False):
    """A sum of coefficients times roots of rationals, held exactly.

    terms: (coefficient, radicand) pairs. No two radicands differ by the square of a rational, so the
    roots are linearly independent over the rationals: the sum is rational only if its one term has the
    radicand 1, and it is zero only if there is no term. That is what lets a tie be recognised.
    """

    terms: Terms = ()

    def __add__(self, other: Exact | Rational) -> Exact:
        other = exact(other)
        if not other.terms:
            return self
        if not self.terms:
            return other
        return Exact(_summed(self.terms, other.terms))

    __radd__ = __add__

    def __neg__(self) -> Exact:
        return Exact(tuple([(-c, q) for c, q in self.terms]))

    def __sub__(self, other: Exact | Rational) -> Exact:
        other = exact(other)
        if not other.terms:
            return self
        return Exact(_summed(self.terms, [(-c, q) for c, q in other.terms]))

    def __rsub__(self, other: Rational) -> Exact:
        return exact(other) - self

    def __mul__(self, other: Exact | Rational) -> Exact:
        if not isinstance(other, Exact):
            return Exact(tuple([(c * other, q) for c, q in self.terms])) if other else Exact()
        for one, scaled in ((other, self), (self, other)):
            if len(one.terms) == 1 and one.terms[0][1] is ONE:  # a rational leaves the roots as they are
                factor = one.terms[0][0]
                return Exact(tuple([(c * factor, q) for c, q in scaled.terms]))
        terms = ((c, q, d, r) for c, q in self.terms for d, r in other.terms)
        return Exact(_gathered((c * d, q if r is ONE else r if q is ONE else q * r) for c, q, d, r in terms))

    __rmul__ = __mul__

    def __truediv__(self, other: Exact | Rational) -> Exact:
        """Divide by a number of one term; more terms are not needed by any roof."""
        other = exact(other)
        if not other.terms:
            raise ZeroDivisionError('an Exact divided by zero')
        ((d, r),) = other.terms
        if r is ONE:
            return Exact(tuple([(c / d, q) for c, q in self.terms]))
        return Exact(_gathered((c / (d * r), r if q is ONE else q * r) for c, q in self.terms))

    def __rtruediv__(self, other: Rational) -> Exact:
        return exact(other) / self

    def __eq__(self, other: object) -> bool:
        return isinstance(other, (Exact, int, Fraction)) and not (self - other).terms

    def __ne__(self, other: object) -> bool:  # a Struct has its own, which knows nothing of this ==
        return not self == other

    def __hash__(self) -> int:
        raise TypeError('an Exact has many forms of one value: do not use it as a key')

    def __lt__(self, other: Exact | Rational) -> bool:
        return _compared(self, other) < 0

    def __gt__(self, other: Exact | Rational) -> bool:
        return _compared(self, other) > 0

    def __le__(self, other: Exact | Rational) -> bool:
        return _compared(self, other) <= 0

    def __ge__(self, other: Exact | Rational) -> bool:
        return _compared(self, other) >= 0

    def __float__(self) -> float:
        """Return the nearest ordinary float, for drawings only: no printed digit may come from it."""
        return floor_of(self, 10**17) / 10**17

    def squared(self) -> Fraction:
        """Return the square of a number of one term (or none), which is rational."""
        if not self.terms:
            return Fraction(0)
        ((c, q),) = self.terms
        return c * c * q


def exact(value: Exact | Rational) -> Exact:
    """Return a rational as an Exact; an Exact is returned as it is."""
    if isinstance(value, Exact):
        return value
    return Exact(((value if isinstance(value, Fraction) else Fraction(value), ONE),)) if value else Exact()


def root(square: Rational) -> Exact:
    """Return the root of a rational that is not negative."""
    if square < 0:
        raise ValueError(f'square must not be negative, got {square}')
    return Exact(_gathered([(ONE, Fraction(square))]))


def one_term(x: Exact | Rational) -> Exact:
    """Return a number of one term, whose square is rational: itself where it is one.

    Returned:
        the same number, or a rational within 1e-70 of a sum of several roots, which no printed figure can
        tell from the sum itself: such a sum is irrational, so it is never on a rounding boundary
    """
    x = exact(x)
    return x if len(x.terms) <= 1 else exact(Fraction(floor_of(x, NEAR), NEAR))


def sign(x: Exact) -> int:
    """Return -1, 0 or 1."""
    if not x.terms:
        return 0
    if len(x.terms) == 1:
        return 1 if x.terms[0][0] > 0 else -1
    scale = 1
    while True:
        low = floor_of(x, scale)
        if low != 0:
            return 1 if low > 0 else -1
        scale *= 2**32


def floor_of(x: Exact, scale: Rational = 1) -> int:
    """Return the greatest whole number not above x times a scale.

    Notes:
        1. One term: with s the square of the product, the floor is isqrt(floor(s)), no float; a rational needs no root.
        2. More terms: bounds are drawn closer until both have one floor. They always meet, since such a
           sum is irrational (see Exact).
    """
    top, bottom = scale.numerator, scale.denominator
    sizes = [(c.numerator * top, c.denominator * bottom, q) for c, q in x.terms]
    if not sizes:
        return 0
    if len(sizes) == 1 and sizes[0][2] is ONE:
        return sizes[0][0] // sizes[0][1]
    squares = [(n > 0, n * n * q.numerator, d * d * q.denominator) for n, d, q in sizes]
    if len(squares) == 1:
        positive, above, below = squares[0]
        whole = isqrt(above // below)
        if positive:
            return whole
        return -whole if whole * whole * below == above else -whole - 1
    bits = 64
    while True:
        low = high = 0
        for positive, above, below in squares:
            bound = isqrt((above << 2 * bits) // below)
            low += bound if positive else -bound - 1
            high += bound + 1 if positive else -bound
        if low >> bits == high >> bits:
            return low >> bits
        bits *= 2


def nearest(x: Exact | Rational, per: Rational) -> int:
    """Return the whole number of parts nearest to a number.

    Given:
        x    any number, in some unit
        per  how many of the smallest printed parts make that unit, positive

    Returned:
        a count of parts; of a number's size a half goes up, and the sign is put on after

    Notes:
        1. With s the size in parts, the count is (floor(2s) + 1) // 2. A rational is counted in whole numbers alone.
    """
    if not isinstance(x, Exact):
        above = 2 * per.numerator * x.numerator
        count = (abs(above) // (per.denominator * x.denominator) + 1) // 2
        return -count if above < 0 else count
    halves = floor_of(x, 2 * per)
    return (halves + 1) // 2 if halves >= 0 else -((floor_of(-x, 2 * per) + 1) // 2)


def nearest_root(square: Fraction, per: int, times: Rational = ONE) -> int:
    """Return nearest(times × root(square), per), by the short way that long tables use; times is not negative."""
    above, below = 2 * per * times.numerator, times.denominator
    return (isqrt(above * above * square.numerator // (below * below * square.denominator)) + 1) // 2


def _compared(a: Exact, b: Exact | Rational) -> int:
    """Return the sign of a less b: by floors in small parts, of single terms by their signs, their coefficients or their squares,
    which is quicker, where these decide it."""
    other = exact(b) if len(a.terms) > 1 else b
    if isinstance(other, Exact) and (len(a.terms) > 1 or len(other.terms) > 1):
        low, high = floor_of(a, SMALL), floor_of(other, SMALL)
        return (low > high) - (low < high) or sign(a - other)
    c, q = (a.terms or NOTHING)[0]
    d, r = (other.terms or NOTHING)[0] if isinstance(other, Exact) else (other, ONE)
    left, right = c.numerator, d.numerator
    if left <= 0 <= right or right <= 0 <= left:
        return (left > right) - (left < right)
    if q is r:
        return (c > d) - (c < d)
    # of their squares over one denominator
    below = left * left * q.numerator * d.denominator**2 * r.denominator
    above = right * right * r.numerator * c.denominator**2 * q.denominator
    return (below > above) - (below < above) if left > 0 else (below < above) - (below > above)


def _rational_root(square: Fraction) -> Fraction | None:
    above, below = square.numerator, square.denominator
    if above & 15 not in ENDS_OF_SQUARES or below & 15 not in ENDS_OF_SQUARES:
        return None
    top, bottom = isqrt(above), isqrt(below)
    return Fraction(top, bottom) if top * top == above and bottom * bottom == below else None


def _gathered(terms: Iterable[tuple[Fraction, Fraction]]) -> Terms:
    """Return the terms with those of one square class put together, and none that is zero."""
    told = []
    for c, q in terms:
        if not c or not q:
            continue
        if q is not ONE and (whole := _rational_root(q)) is not None:
            c, q = c * whole, ONE
        told.append((c, q))
    return _summed((), told) if len(told) > 1 else tuple(told)


def _summed(terms: Terms, more: Iterable[tuple[Fraction, Fraction]]) -> Terms:
    """Return gathered terms with more of them, none of a square other than 1."""
    kept = list(terms)
    for c, q in more:
        for place, (c0, q0) in enumerate(kept):
            if q is q0 or q == q0:
                kept[place] = (c0 + c, q0)
                break
            if q is ONE or q0 is ONE:  # the other is no square
                continue
            below = q.denominator * q0.numerator
            product = q.numerator * q0.denominator * below
            if product & 15 in ENDS_OF_SQUARES and (whole_root := isqrt(product)) ** 2 == product:
                kept[place] = (c0 + c * Fraction(whole_root, below), q0)  # √(a/b) is √(a·b)/b
                break
        else:
            kept.append((c, q))
    return tuple([term for term in kept if term[0]])
