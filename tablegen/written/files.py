"""TOML text read into plain values, every number exact and none so long that it could hang the program."""

from __future__ import annotations

import tomllib
from decimal import Decimal
from fractions import Fraction
from typing import Any

from tablegen.errors import BookError

MOST_DIGITS = 40


def read_toml(written: str, source: str) -> dict[str, Any]:
    """Return the tables of a TOML text; numbers with a point are Fractions.

    Errors:
        BookError naming the source, and line and column where the text breaks off
    """
    try:
        tables = tomllib.loads(written, parse_float=_decimal)
        _refuse_vast(tables)
    except RecursionError:
        raise BookError(source, 'cannot be read as TOML: brackets nested too deep', '', 'mend that') from None
    except ValueError as fault:  # TOMLDecodeError tells line and column
        raise BookError(source, f'cannot be read as TOML: {fault}', '', 'mend that place') from None
    return tables


def _decimal(written: str) -> Fraction:
    """Return a TOML number with a point or an exponent, exactly; Fraction alone would take 1e999999999 up."""
    value = Decimal(written)
    if not value.is_finite() or abs(value.adjusted()) > MOST_DIGITS or len(written) > MOST_DIGITS:
        raise ValueError(f'{written[:MOST_DIGITS]} is no number that measures anything')
    return Fraction(value)


def _refuse_vast(value: object) -> None:
    """Raise ValueError at a whole number too long to be told."""
    if isinstance(value, dict):
        value = list(value.values())
    if isinstance(value, list):
        for item in value:
            _refuse_vast(item)
    elif isinstance(value, int) and abs(value) >= 10**MOST_DIGITS:
        raise ValueError(f'a whole number of over {MOST_DIGITS} digits measures nothing')
