"""TOML text read into plain values, every number exact and none so long that it could hang the program."""

from __future__ import annotations

import tomllib
from decimal import Decimal
from fractions import Fraction
from typing import Any

from tablegen.errors import BookError
from tablegen.messages import Message, message

MOST_DIGITS = 40


class _Unmeasurable(Exception):
    """A number that measures nothing; its argument says why."""

    def __init__(self, why: Message):
        super().__init__(why)


def read_toml(written: str, source: str) -> dict[str, Any]:
    """Return the tables of a TOML text; numbers with a point are Fractions.

    Errors:
        BookError naming the source, and line and column where the text breaks off
    """
    try:
        tables = tomllib.loads(written, parse_float=_decimal)
        _refuse_vast(tables)
    except RecursionError:
        problem = message('reader.no_toml', fault=message('reader.nested_too_deep'))
        raise BookError(source, problem, '', message('reader.mend')) from None
    except (_Unmeasurable, tomllib.TOMLDecodeError) as fault:  # which tells line and column
        problem = message('reader.no_toml', fault=fault.args[0])
        raise BookError(source, problem, '', message('reader.mend_place')) from None
    return tables


def _decimal(written: str) -> Fraction:
    """Return a TOML number with a point or an exponent, exactly; Fraction alone would take 1e999999999 up."""
    value = Decimal(written)
    if not value.is_finite() or abs(value.adjusted()) > MOST_DIGITS or len(written) > MOST_DIGITS:
        raise _Unmeasurable(message('reader.no_measure', written=written[:MOST_DIGITS]))
    return Fraction(value)


def _refuse_vast(value: object) -> None:
    """Refuse a whole number too long to be told."""
    if isinstance(value, dict):
        value = list(value.values())
    if isinstance(value, list):
        for item in value:
            _refuse_vast(item)
    elif isinstance(value, int) and abs(value) >= 10**MOST_DIGITS:
        raise _Unmeasurable(message('reader.too_many_digits', most=MOST_DIGITS))
