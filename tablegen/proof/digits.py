"""Numbers of fifty digits and more: arcs by their series, one rounding, printed numbers read and written."""

from __future__ import annotations

import re
from decimal import ROUND_FLOOR, Context, Decimal, setcontext
from fractions import Fraction
from functools import cache
from math import gcd

DIGITS = 60
SLACK = Decimal(10) ** -40
"""How far below a half a number may come out that is a half: the errors of sixty digits are smaller."""
FOOT_IN, METRIC_IN = 12, Fraction(10, 254)
NUMBER = re.compile(r'(?:(\d+) )?(\d+)/(\d+)|(\d+(?:\.\d+)?)')


def begin() -> None:
    """Make this thread's decimals precise enough."""
    setcontext(Context(prec=DIGITS))


def real(value: Fraction | int) -> Decimal:
    """Return a rational to all digits."""
    return Decimal(value.numerator) / Decimal(value.denominator)


def arctangent(value: Decimal) -> Decimal:
    """Return the angle of a tangent, 0 or more, radians: halved until its series runs fast."""
    halved = 0
    while value > Decimal('0.01'):
        value, halved = value / (1 + (1 + value * value).sqrt()), halved + 1
    term, total, n = value, value, 1
    while abs(term) > Decimal(10) ** -(DIGITS + 2):
        term *= -value * value
        n += 2
        total += term / n
    return total * Decimal(2**halved)


@cache
def pi() -> Decimal:
    """Return π."""
    return 4 * arctangent(Decimal(1))


@cache
def tangent(degrees: Fraction) -> Decimal:
    """Return the tangent of an angle under 90 degrees, by the series of sine and cosine."""
    turn = real(degrees) * pi() / 180
    parts, term, n = [Decimal(0), Decimal(0)], Decimal(1), 0
    while abs(term) > Decimal(10) ** -(DIGITS + 2):
        parts[n % 2] += term if n % 4 < 2 else -term
        n += 1
        term *= turn / n
    return parts[1] / parts[0]


def nearest(value: Decimal, per: int) -> int:
    """Return the whole count of parts nearest to a value; a half goes up."""
    return int((value * per + Decimal('0.5') + SLACK).to_integral_value(ROUND_FLOOR))


def written(value: Decimal, per: int, in_feet: bool = False) -> str:
    """Return a length as it is printed: '53 11/16', or in a book of feet and inches '4′ 5 11/16″', '1/2″'."""
    count = nearest(value, per)
    if not in_feet:
        return _mixed(count, per)
    feet, rest = divmod(count, per * FOOT_IN)
    if not feet:
        return f'{_mixed(rest, per)}″'
    inches = _mixed(rest, per)
    return f'{feet}′ {inches if rest >= per or not rest else f"0 {inches}"}″'


def _mixed(count: int, per: int) -> str:
    if count < 0:
        return f'−{_mixed(-count, per)}'
    whole, rest = divmod(count, per)
    if not rest:
        return str(whole)
    common = gcd(rest, per)
    return f'{whole} ' * bool(whole) + f'{rest // common}/{per // common}'


def decimals(value: Decimal, places: int) -> str:
    """Return a number in decimals as it is printed."""
    whole, rest = divmod(nearest(value, 10**places), 10**places)
    return f'{whole}.{rest:0{places}d}'


def read(words: str) -> Fraction | None:
    """Return the inches of a printed number, '7 1/2', '19.2', '1 1/2 in', '400 mm'; None where there is none."""
    bare, metric = words.removesuffix(' in'), words.endswith(' mm')
    found = NUMBER.fullmatch(bare.removesuffix(' mm').strip())
    if not found or found[3] == '0':
        return None
    whole, over, under, plain = found.groups()
    value = Fraction(plain) if plain else int(whole or 0) + Fraction(int(over), int(under))
    return value * METRIC_IN if metric else value


def read_run(words: str) -> Fraction | None:
    """Return the inches of a run: '4 ft', '4 ft 7 1/2 in', '9 in', '1200 mm'; None where there is none."""
    feet, foot, rest = words.partition(' ft')
    if not foot:
        return read(words)
    whole, more = read(feet), read(rest.strip()) if rest.strip() else Fraction(0)
    return None if whole is None or more is None else whole * FOOT_IN + more


def named(value: Fraction) -> str:
    """Return a number that was given as it is printed in a head: '3 1/2', '19.2', '15.748'."""
    if value.denominator in (1, 2, 4, 8, 16, 32, 64):
        return _mixed(value.numerator * (64 // value.denominator), 64)
    return decimals(real(value), 3).rstrip('0').rstrip('.')
