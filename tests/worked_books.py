"""Finished books whose worked examples are read: their roofs, and the pages by title."""

from __future__ import annotations

from fractions import Fraction

from labels.example_roof import Roof
from labels.two_slopes import SMALL
from skewed import HIP, HIPS, RAFTER, RAFTERS, RIDGE, SEAT, VALLEYS, SkewedBook
from worked_pages import WorkedPage, worked_page

PLAIN = Roof(Fraction(6), Fraction(4), slopes=SMALL)
"""The book of three pitches, its settings as they come."""
SHORT = Fraction(36)
"""The skewed book's runs end at 4 ft: every run is cut to leave room for an overhang."""
ODD = Roof(
    Fraction(5), Fraction(5), RIDGE, HIP, RAFTER, RAFTERS, HIPS, VALLEYS, SEAT, SHORT, SHORT
)  # fmt: skip
LISTED = Roof(Fraction(6), Fraction(6))
"""Runs by 5 1/2 in make no grid of feet and inches; small runs are added from lists of their own."""
ROOFS = {'small_book': PLAIN, 'skewed': ODD, 'listed': LISTED}


def book_of(name: str, request) -> SkewedBook:
    found = request.getfixturevalue(name)
    return found if name == 'skewed' else SkewedBook(found)


def examples_of(book: SkewedBook) -> dict[str, WorkedPage]:
    """Return the pages of the examples by their titles."""
    templates = {page.template for page in book.made.pages if page.template.startswith('example_')}
    pages = [worked_page(number, book.words(number), book.rem) for number in book.numbers(*templates)]
    assert len({page.title for page in pages}) == len(pages)
    return {page.title: page for page in pages}
