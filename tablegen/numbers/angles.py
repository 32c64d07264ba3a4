"""Angles held by their exact tangent, and their degrees right in every printed digit."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from math import isqrt

from msgspec import Struct

from tablegen.numbers.exact import Exact, Terms, exact, floor_of, one_term, root, sign

UNIT = 10**80  # one, in the fixed-point arithmetic of tangent_of_degrees
KNOWN = {30: root(Fraction(1, 3)), 45: exact(1), 60: root(3)}
"""Tangents whose square is rational, by degrees."""


class Angle(Struct, frozen=True):
    """An angle from 0 to 90 degrees (or 0 to -90) by its tangent.

    tangent: exact, or None for 90 degrees.
    """

    tangent: Exact | None

    def tan(self) -> Exact:
        """Return the tangent of an angle that is no right angle.

        Errors:
            ZeroDivisionError at 90 degrees
        """
        if self.tangent is None:
            raise ZeroDivisionError('a right angle has no tangent')
        return self.tangent

    def complement(self) -> Angle:
        """Return 90 degrees less this angle, which is not negative; exact for a tangent of one term."""
        if self.tangent is None:
            return Angle(Exact())
        return Angle(1 / one_term(self.tangent) if self.tangent.terms else None)

    def cosine(self) -> Exact:
        """Return the cosine, one term; exact for a tangent of one term (see one_term)."""
        return Exact() if self.tangent is None else _cosine(self.tangent.terms)

    def sine(self) -> Exact:
        """Return the sine, one term; exact for a tangent of one term (see one_term)."""
        return exact(1) if self.tangent is None else _sine(self.tangent.terms)


@lru_cache(maxsize=1024)
def _cosine(tangent: Terms) -> Exact:
    return root(1 / (1 + one_term(Exact(tangent)).squared()))


@lru_cache(maxsize=1024)
def _sine(tangent: Terms) -> Exact:
    return one_term(Exact(tangent)) * _cosine(tangent)


def angle_of_sine(sine: Exact) -> Angle:
    """Return the angle of 0 to 90 degrees that has a sine."""
    sine = one_term(sine)
    cosine = root(1 - sine.squared())
    return Angle(sine / cosine if cosine.terms else None)


def half_angle_of_cosine(cosine: Exact) -> Angle:
    """Return half of the angle of 0 to 180 degrees that has a cosine.

    Source: tan ψ/2 = (1 − cos ψ) / sin ψ, which needs no root of a root.
    """
    cosine = one_term(cosine)
    sine = root(1 - cosine.squared())
    if sine.terms:
        return Angle((1 - cosine) / sine)
    return Angle(Exact() if sign(cosine) > 0 else None)


def degrees_count(angle: Angle, places: int) -> int:
    """Return the angle as a whole count of the last decimal place of a degree, the nearest.

    Given:
        angle   any
        places  decimals of a degree, 1 or more

    Returned:
        a count, a half of the last place going up; for 26.565 degrees and 2 places, 2657

    Notes:
        1. An angle whose squared tangent is rational is never at a half of a decimal place unless it is
           a multiple of 15 degrees (Niven's theorem on rational cosines), so more digits decide it.
        2. An angle that was given in degrees may be at a half, and its tangent does not say so exactly
           (tangent_of_degrees). What 40 more digits cannot tell from a half is taken for one.
    """
    if angle.tangent is None:
        return 90 * int(10**places)
    negative = sign(angle.tangent) < 0
    tangent = -angle.tangent if negative else angle.tangent
    for guard in (12, 40):
        one = 10 ** (places + guard)
        steps = _arctan_degrees(floor_of(tangent, one), one)
        count, rest = divmod(steps, 10**guard)
        half = 10**guard // 2
        if abs(rest - half) > 10**6:  # the arithmetic below errs by less than 10**5 of its steps
            count += rest > half
            break
    else:
        count += 1
    return -count if negative else count


def tangent_of_degrees(degrees: Fraction) -> Exact:
    """Return the tangent of an angle of 0 to 90 degrees, neither included.

    Returned:
        exact where its square is rational (30, 45 and 60 degrees, by Niven's theorem); else a rational
        within 1e-55 of it, which no printed figure can tell from the tangent itself
    """
    if degrees in KNOWN:
        return KNOWN[degrees.numerator]
    angle = _pi(UNIT) * degrees.numerator // (180 * degrees.denominator)
    sine, cosine, term, power = 0, 0, UNIT, 0
    while term:
        if power % 2:
            sine += term if power % 4 == 1 else -term
        else:
            cosine += term if power % 4 == 0 else -term
        power += 1
        term = term * angle // UNIT // power
    return exact(Fraction(sine, cosine))


def _arctan_degrees(tangent: int, one: int) -> int:
    """Return the angle in steps of 1/one degree; the tangent is in the same steps, not negative."""
    if tangent > one:
        return 90 * one - _arctan_degrees(one * one // tangent, one)
    for _ in range(4):  # atan t = 2 atan(t / (1 + root(1 + t²))): four halvings, so the series is short
        tangent = tangent * one // (one + isqrt(one * one + tangent * tangent))
    return 16 * _arctan_series(tangent, one) * 180 * one // (_pi(one) or 1)


def _arctan_series(t: int, one: int) -> int:
    total, power, odd, step = t, t, 1, -1
    square = t * t // one
    while power:
        power = power * square // one
        odd += 2
        total += step * (power // odd)
        step = -step
    return total


@lru_cache(maxsize=16)
def _pi(one: int) -> int:
    """Return pi in steps of 1/one, by Machin's sum 16 atan(1/5) - 4 atan(1/239)."""
    return 16 * _arctan_series(one // 5, one) - 4 * _arctan_series(one // 239, one)
