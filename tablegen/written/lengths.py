"""Lengths as people write them, read into exact inches; the only module that touches pint."""

from __future__ import annotations

import re
from fractions import Fraction
from functools import cache

from msgspec import Struct

from tablegen.errors import BookError, Word, did_you_mean
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.written.numbers import NUMBER, NoNumber, Number, normalized, read_number

ALLOWED = message('reader.a_length')
FEET_MARK = r"(?:(?:feet|foot|ft)(?![a-z])\.?|')"
INCHES_MARK = r'(?:(?:inches|inch|in)(?![a-z])\.?|")'
FEET_AND_INCHES = re.compile(
    rf'(?:(?P<feet>{NUMBER}) ?{FEET_MARK}(?:(?:-| - |,? ?)(?=[0-9.])|$))?'  # 4 ft, and 4'- before inches
    rf'(?:(?P<inches>{NUMBER}) ?(?P<mark>{INCHES_MARK})?)?',  # 7 1/2 in, or a bare number
    re.IGNORECASE,
)
OTHER_UNIT = re.compile(
    rf'(?P<number>{NUMBER}) ?(?:(?P<mm>mm|millimet(?:re|er)s?)|(?P<cm>cm|centimet(?:re|er)s?)|'
    r'(?P<m>m|met(?:re|er)s?)|(?P<yd>yd|yards?))',
    re.IGNORECASE,
)


class WrittenLength(Struct, frozen=True):
    """A length as it was written."""

    inches: Fraction
    """Not negative, at most 10,000 ft."""
    unit: str
    """Of the last number: 'in', 'ft', 'mm', 'cm', 'm' or 'yd'."""
    last: Number
    """The last number, which names the finest part."""


def length(written: object, place: Word = 'length') -> Fraction:
    """Return a length in inches, exactly.

    Given:
        written  text as read_length takes it, or a whole number or Fraction of inches
        place    what to call it in an error

    Errors:
        BookError if it is no such length
    """
    if isinstance(written, (int, Fraction)) and not isinstance(written, bool):
        return _within(Fraction(written), str(written), place)
    if not isinstance(written, str):
        raise BookError(place, message('reader.no_length', written=repr(written)), ALLOWED)
    return read_length(written, place).inches


def read_length(written: str, place: Word = 'length') -> WrittenLength:
    """Return what was written: feet and inches, another unit of length, or a bare number of inches.

    Errors:
        BookError if it is no such length: a sign, a numerator not below its denominator, 12 inches or more
        after feet, over 10,000 ft
    """
    clean = normalized(written)
    if clean.startswith('-'):
        raise BookError(place, message('reader.below_zero', written=written), ALLOWED)
    try:
        found = _feet_and_inches(clean) or _other_unit(clean)
        if found is None:
            raise NoNumber(clean, _run_together(clean))
    except NoNumber as fault:
        problem = message('reader.no_length', written=f"'{written}'")
        raise BookError(place, problem, ALLOWED, did_you_mean(_readable(fault, clean))) from None
    _within(found.inches, written, place)
    return found


def inches_in(unit: str) -> Fraction:
    """Return the inches in one 'in', 'ft', 'mm', 'cm', 'm' or 'yd'."""
    return {'in': Fraction(1), 'ft': Fraction(INCHES.group)}.get(unit) or _by_library(unit)


def _feet_and_inches(clean: str) -> WrittenLength | None:
    match = FEET_AND_INCHES.fullmatch(clean)
    if not match or not (match['feet'] or match['inches']):
        return None
    feet, inches = (read_number(match[part]) if match[part] else None for part in ('feet', 'inches'))
    if feet and inches and inches.value >= INCHES.group:
        more, rest = divmod(inches.value, INCHES.group)
        raise NoNumber(clean, text.run((feet.value + more) * INCHES.group + rest))
    total = (feet.value * INCHES.group if feet else 0) + (inches.value if inches else 0)
    last = inches or feet
    assert last is not None  # one of the two was there
    return WrittenLength(Fraction(total), 'in' if inches else 'ft', last)


def _other_unit(clean: str) -> WrittenLength | None:
    match = OTHER_UNIT.fullmatch(clean)
    if not match:
        return None
    last = read_number(match['number'])
    unit = next(name for name in ('mm', 'cm', 'm', 'yd') if match[name])
    return WrittenLength(last.value * inches_in(unit), unit, last)


def _readable(fault: NoNumber, clean: str) -> str:
    """Return what was probably meant by a text, as it can be read."""
    words = fault.meant_in(clean)
    try:
        return words if words and (_feet_and_inches(words) or _other_unit(words)) else ''
    except NoNumber as again:
        return again.meant_in(words)


def _run_together(clean: str) -> str:
    """Return what was probably meant by a number with something in its middle: 4 1/2 for 4½5."""
    found = re.fullmatch(rf'(?P<number>{NUMBER}) [0-9/]+(?P<unit>[^0-9]*)', clean)
    if not found or '/' not in found['number']:
        return ''
    try:
        read_number(found['number'])
    except NoNumber:
        return ''
    return found['number'] + found['unit']


def _within(inches: Fraction, written: str, place: Word) -> Fraction:
    if inches < 0:
        raise BookError(place, message('reader.below_zero', written=written), ALLOWED)
    if inches > INCHES.longest:
        most = INCHES.longest // INCHES.group
        problem = message('reader.too_long', written=written, most=most, unit=INCHES.greater)
        raise BookError(place, problem, ALLOWED)
    return inches


@cache
def _by_library(unit: str) -> Fraction:
    """Return the inches in one of another unit of length, as pint defines it exactly."""
    import pint  # half a second: only a length in another unit has to wait for it

    registry: pint.UnitRegistry[Fraction] = pint.UnitRegistry(non_int_type=Fraction)
    return Fraction(registry.Quantity(Fraction(1), unit).to('inch').magnitude)
