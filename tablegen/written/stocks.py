"""Sizes of lumber as people write them: 2x8, 2×8."""

from __future__ import annotations

from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.numbers.units import INCHES, Stock
from tablegen.written.numbers import normalized


def stock(name: str, place: str = 'stock') -> Stock:
    """Return the stock of a name such as 2x8 or 2×8.

    Errors:
        BookError if it is no size of the list
    """
    clean = normalized(name).lower().replace(' ', '')
    for size in INCHES.stocks:
        if normalized(size.name) == clean:
            return size
    sizes = tuple(size.name for size in INCHES.stocks)
    raise BookError(place, message('reader.no_stock', written=name), sizes)
