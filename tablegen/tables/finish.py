"""How the reference tables finish their numbers: lengths to the smallest part, angles to hundredths."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields
from fractions import Fraction
from typing import Any

from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, Rational
from tablegen.numbers.figure import (
    Figure,
    Measure,
    decimal_figure,
    degree_figure,
    degrees_known,
    length_figure,
    length_rounded_down,
    length_rounded_up,
)
from tablegen.settings import Settings

DEGREE_PLACES = 2
UNIT_PLACES = 3


def part(inches: Exact | Rational, settings: Settings) -> Figure:
    """Return a length to the book's smallest part."""
    return length_figure(inches, settings.measure)


def inches(settings: Settings) -> str:
    """Return what part() reads in, as words."""
    return 'feet and inches' if settings.measure.style == text.FEET_INCHES else 'inches'


def mark(inches: Exact | Rational, settings: Settings) -> Figure:
    """Return a length of less than a foot or so, to the smallest part, always in plain inches."""
    return length_figure(inches, Measure(settings.measure.per, text.INCHES))


def at_least(inches: Exact | Rational, settings: Settings) -> Figure:
    """Return a length that must not be less, rounded up to the smallest part, in plain inches."""
    return length_rounded_up(inches, Measure(settings.measure.per, text.INCHES))


def limit(inches: Exact | Rational, settings: Settings) -> Figure:
    """Return a length that is not to be passed, rounded DOWN to the smallest part, in plain inches."""
    return length_rounded_down(inches, Measure(settings.measure.per, text.INCHES))


def parts(lengths: Sequence[Exact | Rational], settings: Settings) -> tuple[Figure, ...]:
    """Return several lengths, each as mark() does."""
    return tuple(mark(one, settings) for one in lengths)


def unit(inches: Exact | Rational) -> Figure:
    """Return a length per foot of run, or a factor, to thousandths."""
    return decimal_figure(inches, UNIT_PLACES)


def deg(angle: Angle) -> Figure:
    """Return an angle to hundredths of a degree."""
    return degree_figure(angle, DEGREE_PLACES)


def degrees_figure(degrees: Fraction) -> Figure:
    """Return an angle that is known as degrees themselves, to hundredths."""
    return degrees_known(degrees, DEGREE_PLACES)


def cells(row: Any) -> dict[str, str]:
    """Return every cell of a row by name, as text for a data file; a tuple's cells are numbered from 1."""
    found: dict[str, str] = {}
    for field in fields(row):
        value = getattr(row, field.name)
        if isinstance(value, tuple):
            found |= {f'{field.name}_{place}': _cell(one) for place, one in enumerate(value, 1)}
        else:
            found[field.name] = _cell(value)
    return found


def _cell(value: object) -> str:
    if value is None:
        return ''
    if isinstance(value, (Figure, Pitch)):
        return value.text
    return text.rational(value) if isinstance(value, Fraction) else str(value)
