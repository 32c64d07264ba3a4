"""Proof-reading what was made: the booklet, and its sheets where they lie beside it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from pypdf import PdfReader

from layouts.pdf.prose import all_names
from layouts.pdf.read_back import Pdf, pages_of, soundly
from layouts.words.proof_cards import card_names
from layouts.words.proof_told import told
from layouts.words.say import _, n_, speaking
from layouts.words.sheets import sheet_names
from tablegen.errors import BookError
from tablegen.proof.cards import read_card
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
            Folder(pages, sheet_names(), found).fold(inks(sheets))
    return found


def prove_made(booklet: Path, sheets: Path, card: Path) -> Found | None:
    """Return what is found in what was just made, before anybody sees it; None where its settings cannot be read back.

    Errors:
        BookError that tells what differs
    """
    try:
        found = prove(booklet, sheets)
    except NoBook:
        return None
    of_card = read_card(pages_of(card), card_names())
    faults = [*found.faults, *(of_card.faults if of_card else ())]
    if faults:
        more = n_('; {count} more differs', '; {count} more differ', len(faults) - 1).format(
            count=len(faults) - 1
        )
        problem = _('{first}{more}; nothing was put in place').format(
            first=told(faults[0]), more=more if faults[1:] else ''
        )
        raise BookError(
            _('proof'),
            problem,
            '',
            _(
                'this is a fault of the program: report it with the settings file; --no-proof makes the book without a proof'
            ),
        )
    return found


def _names(book: Stated) -> Names:
    with speaking(book.language):
        return all_names(book)


def inks(sheets: Path) -> Iterator[Ink]:
    """Yield what is on each side, the pages that are placed there whole."""
    pdf = soundly(sheets, lambda: Pdf(PdfReader(sheets)))
    for place in range(soundly(sheets, lambda: len(pdf.pages))):
        yield soundly(sheets, pdf.ink, place, False)
