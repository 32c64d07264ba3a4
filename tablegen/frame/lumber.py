"""Lumber as it is sold: a dressed size's nominal name, and board feet by it."""

from __future__ import annotations

from fractions import Fraction

from tablegen.numbers import text
from tablegen.numbers.units import INCHES, Stock

F = Fraction
# Source: American Softwood Lumber Standard, Voluntary Product Standard PS 20 (NIST), minimum dressed dry sizes of boards and
# dimension; tests hold them against tests/authorities/ps20-lumber.toml.
THICKNESSES = {
    F(3, 4): F(1), F(1): F(5, 4), F(5, 4): F(3, 2), F(3, 2): F(2), F(2): F(5, 2), F(5, 2): F(3), F(3): F(7, 2),
    F(7, 2): F(4), F(4): F(9, 2),
}  # fmt: skip
"""Nominal thickness by the dressed one, in."""
WIDTHS = {
    F(3, 2): 2, F(5, 2): 3, F(7, 2): 4, F(9, 2): 5, F(11, 2): 6, F(29, 4): 8, F(37, 4): 10, F(45, 4): 12, F(53, 4): 14,
    F(61, 4): 16,
}  # fmt: skip
"""Nominal width by the dressed one, in."""
INCH_MARK = '″'
STEP_IN = 2 * INCHES.group
"""Lumber is usually sold in steps of 2 ft: the same standard."""


def sold_as(thickness_in: Fraction, depth_in: Fraction) -> Stock:
    """Return the stock of a dressed size, however it lies: under its nominal name, or its own inches, 1 1/2″×10″, without one."""
    thickness_in, depth_in = sorted((thickness_in, depth_in))
    nominal = _nominal(thickness_in, depth_in)
    mark = '' if nominal else INCH_MARK
    thick, wide = map(text.rational, nominal or (thickness_in, depth_in))
    return Stock(f'{thick}{mark}×{wide}{mark}', thickness_in, depth_in)


def board_feet(stock: Stock, length_in: Fraction) -> Fraction | None:
    """Return the board feet of a length of some stock; None where its size has no nominal name.

    Notes:
        1. Nominal thickness times nominal width, in inches, times length in feet, over 12: common practice, no source.
    """
    nominal = _nominal(stock.thickness_in, stock.depth_in)
    if nominal is None:
        return None
    thick, wide = nominal
    return thick * wide * length_in / INCHES.group**2


def _nominal(thickness_in: Fraction, depth_in: Fraction) -> tuple[Fraction, Fraction] | None:
    thick, wide = THICKNESSES.get(thickness_in), WIDTHS.get(depth_in)
    return None if thick is None or wide is None else (thick, F(wide))
