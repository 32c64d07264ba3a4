"""Dressed sizes of framing lumber: what is sold as 2×8 measures 1½ by 7¼ in."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.errors import BookError


@dataclass(frozen=True, slots=True)
class Stock:
    """One size of rafter stock, dry."""

    name: str
    """As it is sold: '2×8'."""
    thickness_in: Fraction
    """Dressed, in: across the edge."""
    depth_in: Fraction
    """Dressed, in: square to the edge, top to bottom."""


TWO_IN = Fraction(3, 2)
SIZES = (
    Stock('2×4', TWO_IN, Fraction(7, 2)),
    Stock('2×6', TWO_IN, Fraction(11, 2)),
    Stock('2×8', TWO_IN, Fraction(29, 4)),
    Stock('2×10', TWO_IN, Fraction(37, 4)),
    Stock('2×12', TWO_IN, Fraction(45, 4)),
)
"""Source: American Softwood Lumber Standard, Voluntary Product Standard PS 20 (NIST), minimum dressed dry sizes."""
THICKNESSES_IN = tuple(Fraction(quarters, 4) for quarters in (3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 22))
"""Dressed dry thicknesses, ¾ to 5½ in, from the same standard: boards and dimension to 4 in, then the widths of
nominal 5 and 6 in, as two or three members nailed side by side come near them too."""


def stock(name: str, place: str = 'stock') -> Stock:
    """Return the stock of a name such as 2x8 or 2×8.

    Errors:
        BookError if it is no size of the list
    """
    clean = name.strip().lower().replace('x', '×').replace(' ', '')
    for size in SIZES:
        if size.name == clean:
            return size
    raise BookError(place, f"'{name}' is no size of rafter stock", ', '.join(size.name for size in SIZES))
