"""Dressed sizes of framing lumber: what is sold as 2×8 measures 1½ by 7¼ in."""

from __future__ import annotations

from tablegen.errors import BookError
from tablegen.numbers.units import INCHES, Stock


def stock(name: str, place: str = 'stock') -> Stock:
    """Return the stock of a name such as 2x8 or 2×8.

    Errors:
        BookError if it is no size of the list
    """
    clean = name.strip().lower().replace('x', '×').replace(' ', '')
    for size in INCHES.stocks:
        if size.name == clean:
            return size
    raise BookError(
        place, f"'{name}' is no size of rafter stock", ', '.join(size.name for size in INCHES.stocks)
    )
