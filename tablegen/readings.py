"""Readings: named values of one question, grouped, each with the line that it is measured from."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen import text
from tablegen.angles import Angle, degrees_count
from tablegen.exact import Exact, Rational, exact, floor_of, nearest
from tablegen.figures import (
    Measure,
    degree_figure,
    length_figure,
    length_rounded_down,
    length_rounded_up,
)

LENGTH_PLACES = 9
DEGREE_PLACES = 6


@dataclass(frozen=True, slots=True)
class Reading:
    """One value."""

    key: str
    """Plain name, the unit at its end: 'hip_level_in', 'bevel_deg'; without a unit for words."""
    data: str | int | bool
    """For a data file: a decimal to nine places of an inch or six of a degree, a whole number, or words."""
    text: str
    """For a person: to the smallest part, or to hundredths of a degree; final."""


@dataclass(frozen=True, slots=True)
class Group:
    """A group of values under one name."""

    key: str
    values: tuple[Reading | Group, ...]
    from_line: str = ''
    """From where to where, and on which face, the values are read; '' where every value below says it."""


def length(key: str, inches: Exact | Rational, measure: Measure) -> Reading:
    """Return a length's reading; key without the unit."""
    count = nearest(inches, 10**LENGTH_PLACES)
    return _length(key, count, length_figure(inches, measure).text, measure)


def at_most(key: str, inches: Exact | Rational, measure: Measure) -> Reading:
    """Return the reading of a length that is not to be passed, rounded down, in decimals too."""
    count = floor_of(exact(inches), 10**LENGTH_PLACES)
    return _length(key, count, length_rounded_down(inches, measure).text, measure)


def at_least(key: str, inches: Exact | Rational, measure: Measure) -> Reading:
    """Return the reading of a length that is not to be gone under, rounded up, in decimals too."""
    count = -floor_of(-exact(inches), 10**LENGTH_PLACES)
    return _length(key, count, length_rounded_up(inches, measure).text, measure)


def _length(key: str, count: int, read: str, measure: Measure) -> Reading:
    marked = read if measure.style == text.FEET_INCHES else f'{read} in'
    return Reading(f'{key}_in', text.plain_decimal(count, LENGTH_PLACES), marked)


def degrees(key: str, angle: Angle) -> Reading:
    """Return an angle's reading; key without the unit."""
    count = degrees_count(angle, DEGREE_PLACES)
    return Reading(f'{key}_deg', text.plain_decimal(count, DEGREE_PLACES), degree_figure(angle).text)


def set_degrees(key: str, value: Fraction) -> Reading:
    """Return the reading of an angle known as degrees themselves."""
    count = nearest(value, 10**DEGREE_PLACES)
    return Reading(
        f'{key}_deg', text.plain_decimal(count, DEGREE_PLACES), f'{text.decimal(nearest(value, 100), 2)}°'
    )


def ratio(key: str, value: Exact | Rational, places: int = 3) -> Reading:
    """Return the reading of a number without a unit."""
    plain = text.plain_decimal(nearest(value, 10**LENGTH_PLACES), LENGTH_PLACES)
    return Reading(key, plain, text.decimal(nearest(value, 10**places), places))


def words(key: str, said: str) -> Reading:
    """Return words as a reading."""
    return Reading(key, said, said)


def whole(key: str, count: int) -> Reading:
    """Return a whole number as a reading."""
    return Reading(key, count, str(count))


def yes_no(key: str, answer: bool) -> Reading:
    """Return an answer as a reading."""
    return Reading(key, answer, 'yes' if answer else 'no')


def as_data(finding: Group) -> dict:
    """Return a finding's values by key, its line under 'from' where it has one."""
    found = {
        value.key: as_data(value) if isinstance(value, Group) else value.data for value in finding.values
    }
    return {**found, 'from': finding.from_line} if finding.from_line else found
