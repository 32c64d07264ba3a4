"""Proof-reading what was made: the booklet, and its sheets where they lie beside it."""

from __future__ import annotations

from pathlib import Path

from pypdf import PdfReader
from pypdf.errors import PyPdfError

from layouts.pdf.read_back import Pdf, pages_of
from layouts.words.proof import names
from layouts.words.say import speaking
from layouts.words.sheets import sheet_names
from tablegen.proof.folded import Folder
from tablegen.proof.found import Found
from tablegen.proof.ink import Ink
from tablegen.proof.names import Names
from tablegen.proof.page import Page
from tablegen.proof.proof import proof
from tablegen.proof.stated import NoBook, Stated, stated


def prove(booklet: Path, sheets: Path | None = None) -> Found:
    """Return what is found in a booklet, and in its sheets once they are folded.

    Errors:
        NoBook for what is no booklet; OSError for what cannot be read
    """
    return prove_pages(pages_of(booklet), sheets)


def prove_pages(pages: list[Page], sheets: Path | None = None) -> Found:
    """Return the same of pages that were read."""
    found = proof(pages, _names)
    if sheets is not None:
        with speaking(stated(pages).language):
            Folder(pages, sheet_names(), found).fold(_inks(sheets))
    return found


def _names(book: Stated) -> Names:
    with speaking(book.language):
        return names(book)


def _inks(sheets: Path) -> list[Ink]:
    """Return what is on each side, the pages that are placed there whole."""
    try:
        pdf = Pdf(PdfReader(sheets))
        return [pdf.ink(place, deep=False) for place in range(len(pdf.pages))]
    except (PyPdfError, LookupError, ValueError, TypeError, AttributeError) as fault:
        raise NoBook(str(sheets)) from fault
