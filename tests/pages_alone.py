"""Pages of a book set by themselves and read, and lengths worked out by the right triangles."""

from __future__ import annotations

import re
from fractions import Fraction
from pathlib import Path

from card_support import lines_of
from mpmath import sqrt

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from tablegen.settings import read_settings

LENGTHS = {
    'common': ('line length of the common rafter', lambda run, r: run * sqrt(144 + r * r) / 12),
    'hip-valley': ('line length of the hip or valley', lambda run, r: run * sqrt(288 + r * r) / 12),
    'rise': ('rise', lambda run, r: run * r / 12),
}
"""What each table tells, and its length by the right triangles, of a run and a rise in inches."""


def printed(written: str, *keys: str, folder: Path) -> list[str]:
    """Return the words of some pages of a book, set by themselves."""
    planned = plan(read_settings(written, ''))
    pages = [planned.pages()[planned.index[key] - 1] for key in keys]
    out = folder / 'pages.pdf'
    set_document(Job(pages_html(pages, 'pages'), style(planned.trim), len(pages), out))
    return [' '.join(lines_of(out, number)) for number in range(1, len(pages) + 1)]


def inches(words: str) -> Fraction:
    """Return a run such as '4 ft 7 5/16 in'."""
    feet, whole, part = re.fullmatch(
        r'(?:(\d+) ft ?)?(?:(\d+)(?: |(?= in)))?(?:(\d+/\d+) )?(?:in)?', words
    ).groups()
    return 12 * Fraction(feet or 0) + Fraction(whole or 0) + Fraction(part or 0)
