"""Amounts: an exact number rounded twice from the same value, once to be read and once to be kept."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.numbers import text
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, Rational, exact, sign
from tablegen.numbers.figure import INCH, Figure, decimal_figure, degree_figure

PLACES = 3
FINE_PLACES = 9


@dataclass(frozen=True, slots=True)
class Amount:
    """A number with its direction apart from its size."""

    sign: int
    """-1, 0 or 1, of the exact number."""
    size: Figure
    """Without its sign, to be read."""
    fine: Figure
    """With its sign, to nine decimals, for data."""


def amount(number: Exact | Rational, unit: str = INCH, places: int = PLACES) -> Amount:
    """Return a number of inches (or another unit, or none) as an amount."""
    number = exact(number)
    way = sign(number)
    size = -number if way < 0 else number
    return Amount(way, decimal_figure(size, places, unit), decimal_figure(number, FINE_PLACES, unit))


def angle_amount(angle: Angle, places: int = PLACES) -> Amount:
    """Return an angle in degrees as an amount."""
    way = 1 if angle.tangent is None else sign(angle.tangent)
    size = Angle(-angle.tan()) if way < 0 else angle
    return Amount(way, degree_figure(size, places), degree_figure(angle, FINE_PLACES))


def signed(told: Amount | Figure) -> str:
    """Return an amount to be read with its direction: '+0.084', '−0.096'; '0' for exactly nothing."""
    if isinstance(told, Figure):
        assert isinstance(told.value, Exact), 'only exact numbers have a sign that no rounding hides'
        told = amount(told.value, told.unit)
    if not told.sign:
        return '0'
    return ('+' if told.sign > 0 else text.MINUS) + told.size.text
