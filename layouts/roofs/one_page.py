"""Marking sheets are one page each, where that can be done: how many pages each took, and what is said on those that took more."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from pypdf import PdfReader

from layouts.roofs.marking import MarkingSheet
from layouts.words.say import _


def pages_of(made: Path, sheets: Sequence[MarkingSheet], after: str) -> dict[str, int]:
    """Return how many pages each sheet of a finished document takes, by its key.

    Given:
        after  the key of what follows the last
    """
    reader = PdfReader(made)
    there = reader.named_destinations
    keys = [*(one.key for one in sheets), after]
    first = [reader.get_destination_page_number(there[key]) or 0 for key in keys]
    return {
        key: second - begins for key, begins, second in zip(keys[:-1], first[:-1], first[1:], strict=True)
    }


def numbered(sheets: Sequence[MarkingSheet], pages: Mapping[str, int]) -> str:
    """Return the style of the sheets that take several pages: over each of them, which of how many it is."""
    return ''.join(
        f"""
@page {one.key} {{ counter-increment: page {one.key};
  @top-right {{ content: "{_words(one, pages[one.key])}"; font: 800 13pt "Open Sans"; vertical-align: bottom; }} }}
"""
        for one in sheets
        if pages[one.key] > 1
    )


def _words(one: MarkingSheet, pages: int) -> str:
    words = _('{marks}: {number} of {pages}')
    return words.format(marks=one.named, number=f'" counter({one.key}) "', pages=pages)
