"""Lengths as people write them, read into exact inches; the only module that touches pint."""

from __future__ import annotations

import re
from fractions import Fraction
from functools import cache

from tablegen.errors import BookError

ALLOWED = 'a length such as 4 ft, 4\' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m or 1400 mm'
NUMBER = r'(?:\d+[ -]+\d+/\d+|\d+/\d+|\d+(?:\.\d*)?|\.\d+)'
FEET = r"(?:feet|foot|ft\.?|')"
INCHES = r'(?:inches|inch|in\.?|")'
FEET_AND_INCHES = re.compile(
    rf'(?:(?P<feet>{NUMBER})\s*{FEET}(?:\s*[-,]?\s*(?=[\d.])|$))?'  # 4 ft, and 4'- before inches
    rf'(?:(?P<inches>{NUMBER})\s*{INCHES}?)?',  # 7 1/2 in, or a bare number
    re.IGNORECASE,
)
OTHER_UNIT = re.compile(
    rf'(?P<number>{NUMBER})\s*(?P<unit>mm|millimet(?:re|er)s?|cm|centimet(?:re|er)s?|m|met(?:re|er)s?|yd|yards?)'
)
VULGAR = {'½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8'}
MARKS = str.maketrans({'′': "'", '’': "'", '″': '"', '”': '"', '⁄': '/', '–': '-', '\u00a0': ' '})
LONGEST_NUMBER = 40
"""Characters: more digits than this measure nothing."""
LONGEST_IN = 120_000
"""10,000 ft: past this a length is a slip of the pen."""


def number(written: str) -> Fraction:
    """Return a whole, decimal or mixed number, exactly: '3 1/2' is 7/2 (pint would read 3/2).

    Errors:
        ValueError if it is none, is out of all measure, or a fraction has a zero below its line
    """
    if len(written) > LONGEST_NUMBER or not re.fullmatch(NUMBER, written):
        raise ValueError(written)
    words = re.split(r'[ -]+', written)
    try:
        return sum((Fraction(word) for word in words), Fraction(0))
    except ZeroDivisionError:
        raise ValueError(written) from None


def length(written: str | int | Fraction, place: str = 'length') -> Fraction:
    """Return a length in inches, exactly.

    Given:
        written  text with feet and inches, with another unit of length, or a bare number of inches
        place    what to call it in an error

    Returned:
        inches, not negative, at most 10,000 ft

    Errors:
        BookError if it is no such length
    """
    if isinstance(written, (int, Fraction)) and not isinstance(written, bool):
        return _within(Fraction(written), str(written), place)
    if not isinstance(written, str):
        raise BookError(place, f'{written!r} is no length', ALLOWED)
    clean = written.translate(MARKS).strip()
    for sign, fraction in VULGAR.items():
        clean = clean.replace(sign, f' {fraction}')
    clean = re.sub(r"''", '"', re.sub(r'\s+', ' ', clean)).strip()
    if clean.startswith(('-', '−')):
        raise BookError(place, f"'{written}' is below zero", ALLOWED)
    try:
        match = FEET_AND_INCHES.fullmatch(clean)
        if match and (match['feet'] or match['inches']):
            feet, inches = (number(match[part]) if match[part] else 0 for part in ('feet', 'inches'))
            return _within(12 * feet + inches, written, place)
        match = OTHER_UNIT.fullmatch(clean)
        if match:
            return _within(number(match['number']) * _inches_in(match['unit']), written, place)
    except ValueError:
        pass
    raise BookError(place, f"'{written}' is no length", ALLOWED)


def _within(inches: Fraction, written: str, place: str) -> Fraction:
    if inches < 0:
        raise BookError(place, f"'{written}' is below zero", ALLOWED)
    if inches > LONGEST_IN:
        raise BookError(place, f"'{written}' is over 10,000 ft", ALLOWED)
    return inches


@cache
def _registry():
    import pint  # half a second: only a length in another unit has to wait for it

    return pint.UnitRegistry(non_int_type=Fraction)


@cache
def _inches_in(unit: str) -> Fraction:
    """Return the inches in one of another unit of length, as pint defines it exactly."""
    return Fraction(_registry().Quantity(Fraction(1), unit).to('inch').magnitude)
