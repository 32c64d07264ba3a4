"""TOML text read into plain values, every number exact and none so long that it could hang the program."""

from __future__ import annotations

import re
import tomllib
from decimal import Decimal
from fractions import Fraction
from typing import Any

from tablegen.errors import BookError
from tablegen.messages import Message, message

MOST_DIGITS = 40
MOST_VALUES = 1000
"""Of one file, in lists and tables together."""
MOST_NAMES = 16
"""Of a key with points in it: a thousand take the parser a second, and ten thousand minutes."""
NAME = r"""(?:[\w-]++|"[^"\n]*+"|'[^'\n]*+')"""
DEEP_KEY = re.compile(rf'(?<![\w-]){NAME}(?:[ \t]*+\.[ \t]*+{NAME}){{{MOST_NAMES}}}')


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
        if DEEP_KEY.search(written):
            raise _Unmeasurable(message('reader.key_too_deep', most=MOST_NAMES))
        tables = tomllib.loads(written, parse_float=_decimal)
        count = _counted(tables)
    except RecursionError:
        problem = message('reader.no_toml', fault=message('reader.nested_too_deep'))
        raise BookError(source, problem, '', message('reader.mend')) from None
    except (_Unmeasurable, tomllib.TOMLDecodeError) as fault:  # which tells line and column
        problem = message('reader.no_toml', fault=fault.args[0])
        raise BookError(source, problem, '', message('reader.mend_place')) from None
    except ValueError:  # of a whole number longer than Python reads
        problem = message('reader.no_toml', fault=message('reader.too_many_digits', most=MOST_DIGITS))
        raise BookError(source, problem, '', message('reader.mend')) from None
    if count > MOST_VALUES:
        problem = message('reader.too_many_values', count=count)
        raise BookError(source, problem, message('error.up_to', most=MOST_VALUES))
    return tables


def _decimal(written: str) -> Fraction:
    """Return a TOML number with a point or an exponent, exactly; Fraction alone would take 1e999999999 up."""
    value = Decimal(written)
    if not value.is_finite() or abs(value.adjusted()) > MOST_DIGITS or len(written) > MOST_DIGITS:
        raise _Unmeasurable(message('reader.no_measure', written=written[:MOST_DIGITS]))
    return Fraction(value)


def _counted(value: object) -> int:
    """Return how many values stand in one, and refuse a whole number too long to be told."""
    if isinstance(value, dict):
        value = list(value.values())
    if isinstance(value, list):
        return sum(map(_counted, value))
    if isinstance(value, int) and abs(value) >= 10**MOST_DIGITS:
        raise _Unmeasurable(message('reader.too_many_digits', most=MOST_DIGITS))
    return 1
