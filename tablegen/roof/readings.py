"""Readings: named values of one question, grouped, each with the line that it is measured from."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from tablegen.numbers import text
from tablegen.numbers.angles import Angle, degrees_count
from tablegen.numbers.exact import Exact, Rational, exact, floor_of, nearest, sign
from tablegen.numbers.figure import (
    Measure,
    decimal_figure,
    degree_figure,
    length_figure,
    length_rounded_down,
    length_rounded_up,
    rounding_left,
)

LENGTH_PLACES = 9
READ_PLACES = 6
"""Decimals of an inch that a person is shown where no tape shows a length."""
ROUNDING_PLACES = 4
"""Decimals of an inch beside a rounded length."""
DEGREE_PLACES = 6
FINEST_PER = 64
"""Parts of an inch that the finest tape shows."""
NOTHING_LEFT = 'none: nothing is left of it'


@dataclass(frozen=True, slots=True)
class Reading:
    """One value."""

    key: str
    """Plain name, the unit at its end: 'hip_at_ridge_level_in', 'bevel_deg'; without a unit for words."""
    data: str | int | bool
    """For a data file: a decimal to nine places of an inch or six of a degree, a whole number, or words."""
    text: str
    """For a person: to the smallest part, or to hundredths of a degree; final."""
    inches: Exact | None = None
    """A length itself, which nothing has rounded; None for what is no length."""


@dataclass(frozen=True, slots=True)
class Rows:
    """Values of several things alike, one a row, the same readings in each."""

    key: str
    rows: tuple[tuple[Reading, ...], ...]


@dataclass(frozen=True, slots=True)
class Group:
    """A group of values under one name."""

    key: str
    values: tuple[Reading | Rows | Group, ...]
    from_line: str = ''
    """From where to where, and on which face, the values are read; '' where every value below says it."""


@dataclass(frozen=True, slots=True)
class Rounding:
    """What is left of a length when it is rounded."""

    exact: str
    """in, to four decimals."""
    added: str
    """in, to four decimals, with its sign: the measure less the exact length; 'none' where they are one."""


def length(key: str, inches: Exact | Rational, measure: Measure) -> Reading:
    """Return a length's reading; key without the unit."""
    count = nearest(inches, 10**LENGTH_PLACES)
    return _length(key, count, length_figure(inches, measure).text, exact(inches), measure)


def at_most(key: str, inches: Exact | Rational, measure: Measure) -> Reading:
    """Return the reading of a length that is not to be passed, rounded down, in decimals too."""
    count = floor_of(exact(inches), 10**LENGTH_PLACES)
    return _length(key, count, length_rounded_down(inches, measure).text, exact(inches), measure)


def at_least(key: str, inches: Exact | Rational, measure: Measure) -> Reading:
    """Return the reading of a length that is not to be gone under, rounded up, in decimals too."""
    count = -floor_of(-exact(inches), 10**LENGTH_PLACES)
    return _length(key, count, length_rounded_up(inches, measure).text, exact(inches), measure)


def set_length(key: str, inches: Fraction, said: str = '') -> Reading:
    """Return the reading of a length that was asked for, which nothing rounds.

    Given:
        said  how it is called, '' for inches; decimals stand for it where no tape shows it
    """
    said = said or f'{text.rational(inches)} in'
    if '/' in said and inches.denominator > FINEST_PER:
        said = f'{decimal_figure(inches, READ_PLACES).text} in'
    count = nearest(inches, 10**LENGTH_PLACES)
    return Reading(f'{key}_in', text.plain_decimal(count, LENGTH_PLACES), said, exact(inches))


def board(key: str, inches: Exact, measure: Measure) -> Reading:
    """Return the reading of a board's length; where nothing is left of it, that there is none."""
    return length(key, inches, measure) if sign(inches) > 0 else words(key, NOTHING_LEFT)


def signed(key: str, inches: Exact | Rational, measure: Measure) -> Reading:
    """Return the reading of a difference, with its sign also where it is above 0."""
    told = length(key, inches, measure)
    plus = '+' if nearest(inches, measure.per) > 0 else ''
    return Reading(told.key, told.data, f'{plus}{told.text}', told.inches)


def figure(key: str, inches: Exact | Rational, measure: Measure) -> Reading:
    """Return the reading of a figure on the square: in inches, however lengths read."""
    return length(key, inches, Measure(measure.per))


def rounding(reading: Reading, measure: Measure) -> Rounding:
    """Return what rounding a length's reading to the smallest part has left."""
    assert reading.inches is not None
    left = rounding_left(reading.inches, length_figure(reading.inches, measure))
    told = decimal_figure(left, ROUNDING_PLACES).text
    signed_told = f'+{told}' if sign(left) > 0 else told
    return Rounding(
        decimal_figure(reading.inches, ROUNDING_PLACES).text, signed_told if sign(left) else 'none'
    )


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


def as_data(finding: Group) -> dict[str, Any]:
    """Return a finding's values by key, its line under 'from' where it has one.

    Returned:
        a length twice: 'level_in' is the exact one in decimals, 'level_text' is it as a person reads it, rounded
        once; rows as a list of objects
    """
    found: dict[str, Any] = {}
    for value in finding.values:
        if isinstance(value, Group):
            found[value.key] = as_data(value)
        elif isinstance(value, Rows):
            found[value.key] = [_by_key(row) for row in value.rows]
        else:
            found |= _by_key((value,))
    return {**found, 'from': finding.from_line} if finding.from_line else found


def _by_key(readings: tuple[Reading, ...]) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for reading in readings:
        found[reading.key] = reading.data
        if reading.inches is not None:
            found[f'{reading.key.removesuffix("_in")}_text'] = reading.text
    return found


def _length(key: str, count: int, read: str, inches: Exact, measure: Measure) -> Reading:
    marked = read if measure.style == text.FEET_INCHES else f'{read} in'
    return Reading(f'{key}_in', text.plain_decimal(count, LENGTH_PLACES), marked, inches)
