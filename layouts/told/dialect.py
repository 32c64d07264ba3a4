"""The one form in which programs are told a figure, in JSON and in CSV: its exact value in decimals, and as it is read."""

from __future__ import annotations

from fractions import Fraction

from tablegen.numbers import text
from tablegen.numbers.exact import Exact, nearest
from tablegen.numbers.figure import DATA_PLACES, DEGREE, FOOT, INCH, Figure

UNITS = {INCH: 'inches', DEGREE: 'degrees', FOOT: 'feet'}
"""What a figure's unit is called in a file; a ratio has none."""
TEXT = 'text'


def told(figure: Figure) -> dict[str, str] | str:
    """Return a figure for JSON, as its unit asks.

    Returned:
        a length as {'inches': '53.665631460', 'text': '53 11/16'}, an angle as {'degrees': '26.565051177'}, a number
        without a unit as its decimals
    """
    if figure.unit not in UNITS:
        return figure.decimal
    known = {UNITS[figure.unit]: figure.decimal}
    return known if figure.unit == DEGREE else known | {TEXT: figure.text}


def length(inches: Fraction | Exact, said: str) -> dict[str, str]:
    """Return a length that was asked for, which nothing rounds, as it is said: '4 ft 7 1/2 in'."""
    return {UNITS[INCH]: decimal(inches), TEXT: said}


def decimal(number: Fraction | Exact) -> str:
    """Return a number in the decimals of a figure."""
    return text.plain_decimal(nearest(number, 10**DATA_PLACES), DATA_PLACES)


def column_names(key: str, unit: str) -> tuple[str, str]:
    """Return the names of a figure's two columns in CSV: NAME_inches, NAME_degrees or NAME, and NAME_text."""
    return f'{key}_{UNITS[unit]}' if unit in UNITS else key, f'{key}_{TEXT}'


def cells(figure: Figure | None) -> tuple[str, str]:
    """Return a figure's two cells in CSV; empty ones where there is none."""
    return ('', '') if figure is None else (figure.decimal, figure.text)
