"""The text of every number: the only place where digits become characters."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from math import floor, gcd
from typing import NamedTuple

from tablegen.numbers import units

INCHES = 'inches'
FEET_INCHES = 'feet-inches'
STYLES = (INCHES, FEET_INCHES)
MINUS = '−'
MM_PER_INCH = Fraction(254, 10)
METRIC = 127
"""What divides the denominator of nearly every millimeter's inches: an inch is 127/5 mm."""


class Parts(NamedTuple):
    """A number as it is printed, in the parts that pages set apart."""

    sign: str = ''
    """MINUS, or nothing."""
    feet: str = ''
    """Digits of whole feet; '' where there are none, or the length reads in inches."""
    whole: str = ''
    """Digits of the whole number; '' for less than one before a fraction."""
    fraction: str = ''
    """'11/16', in lowest terms."""
    decimals: str = ''
    """'.416', every place printed."""
    mark: str = ''
    """'″' or '°' after the number."""

    @property
    def text(self) -> str:
        """Return the whole number as it is printed."""
        sign, feet, whole, fraction, decimals, mark = self
        gap = ' ' if whole and fraction else ''
        return f'{sign}{feet}{"′ " if feet else ""}{whole}{gap}{fraction}{decimals}{mark}'

    @property
    def before(self) -> str:
        """Return what stands left of the fraction: '53', '4′ 5', '' for less than an inch."""
        return f'{self.sign}{self.feet}{"′ " if self.feet else ""}{self.whole}'


def mixed(count: int, per: int) -> str:
    """Return a whole count of parts as a mixed number in lowest terms: '53 11/16', '7/8', '0'."""
    return mixed_parts(count, per).text


def mixed_parts(count: int, per: int) -> Parts:
    """Return a whole count of parts as a mixed number in lowest terms."""
    whole, part = divmod(abs(count), per)
    fraction = _fraction(part, per) if part else ''
    return Parts(MINUS if count < 0 else '', '', str(whole) if whole or not part else '', fraction)


@lru_cache(maxsize=256)  # a tape has few
def _fraction(part: int, per: int) -> str:
    shared = gcd(part, per)
    return f'{part // shared}/{per // shared}'


def feet_inches(count: int, per: int, group: int = units.INCHES.group) -> Parts:
    """Return a whole count of parts of an inch in feet and inches: 4′ 5 11/16″, 10′ 0 1/16″, 7/8″, 24′ 0″."""
    feet, parts = divmod(abs(count), group * per)
    inches = mixed_parts(parts, per)._replace(mark='″', sign=MINUS if count < 0 else '')
    # after feet, less than an inch still names its inches
    return inches._replace(feet=str(feet), whole=inches.whole or '0') if feet else inches


def length(count: int, per: int, style: str, group: int = units.INCHES.group) -> Parts:
    """Return a whole count of parts of an inch in the style that a book reads in."""
    return feet_inches(count, per, group) if style == FEET_INCHES else mixed_parts(count, per)


def decimal(count: int, places: int) -> str:
    """Return a whole count of the last decimal place, every place printed: 13416 at 3 is '13.416'."""
    return decimal_parts(count, places).text


def decimal_parts(count: int, places: int) -> Parts:
    """Return a whole count of the last decimal place."""
    whole, decimals = _digits(count, places)
    return Parts(sign=MINUS if count < 0 else '', whole=whole, decimals=decimals)


def _digits(count: int, places: int) -> tuple[str, str]:
    """Return the digits before the point, and the point with those behind it."""
    digits = str(abs(count)).rjust(places + 1, '0')
    return (digits[:-places], f'.{digits[-places:]}') if places else (digits, '')


def plain_decimal(count: int, places: int) -> str:
    """Return decimal(), with the hyphen that data files take for a minus sign."""
    whole, decimals = _digits(count, places)
    return f'{"-" if count < 0 else ""}{whole}{decimals}'


def degree_parts(count: int, places: int) -> Parts:
    """Return a whole count of the last decimal place of a degree, with its sign: '26.57°'."""
    return decimal_parts(count, places)._replace(mark='°')


def rational(value: Fraction) -> str:
    """Return a setting's own number shortly and exactly: '7 1/2', '19.2', '26.565', '1/3'."""
    return rational_parts(value).text


def rational_parts(value: Fraction) -> Parts:
    """Return a setting's own number shortly and exactly.

    Notes:
        1. Inches that were given in millimeters would be a fraction such as 95/127, which is on no tape: they are
           told to a thousandth of an inch, 0.748; so is what follows from them.
    """
    if value.denominator <= 64 and value.denominator & (value.denominator - 1) == 0:
        return mixed_parts(value.numerator, value.denominator)
    places = 1
    while places <= 9:
        if (value * 10**places).denominator == 1:
            return decimal_parts(int(value * 10**places), places)
        places += 1
    if value.denominator % METRIC == 0:
        return decimal_parts(floor(1000 * value + Fraction(1, 2)), 3)
    return mixed_parts(value.numerator, value.denominator)


def run(value: Fraction) -> str:
    """Return a level run in feet and inches, as a carpenter says it: '4 ft', '4 ft 7 1/2 in', '9 in'.

    Notes:
        1. One that was given in metric, and is no such length, stays in millimeters: '1200 mm'.
    """
    if is_metric(value):
        return millimeters(value)
    feet, inches = divmod(value, units.INCHES.group)
    words = [f'{feet} {units.INCHES.greater}'] if feet else []
    if inches or not feet:
        words.append(in_units(Fraction(inches)))
    return ' '.join(words)


def in_units(value: Fraction) -> str:
    """Return a length in its own unit, with its name: '7 1/2 in'."""
    return f'{rational(value)} {units.INCHES.unit}'


def is_metric(inches: Fraction) -> bool:
    """Return whether inches are a length in millimeters or tenths of them, and none that an inch tape shows."""
    return inches.denominator % METRIC == 0 and (10 * inches * MM_PER_INCH).denominator == 1


def millimeters(inches: Fraction) -> str:
    """Return inches as the millimeters that they are: '1200 mm', '12.5 mm'."""
    return f'{rational(inches * MM_PER_INCH)} mm'
