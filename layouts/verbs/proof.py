"""proof: reads a finished booklet back, works every figure that it knows out by other means, and says what differs."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TextIO

from layouts.verbs.options import Subparsers, add_verb
from layouts.words.say import N_, _
from tablegen.errors import BookError

EXAMPLES = (
    'rafterbook proof',
    'rafterbook proof my-book/booklet.pdf',
    'rafterbook proof my-book/card.pdf',
    'rafterbook proof my-roof.pdf',
    'rafterbook proof pattern.pdf',
)
USUAL, SHEETS = 'output/booklet.pdf', 'sheets.pdf'
NOTES = N_("""\
Reads the pages of the pitches, those at a glance, those on reading a length, on
an old roof's pitch and on the square, the worked examples and the reference
tables by their printed titles, heads, labels and sentences alone, and works
every figure out in space with sixty digits, by nothing that made the book: an
example's from what its page says of the roof, a list of all members from what
it says was asked for; how many rafters there are only without hips or valleys.
Where it cites a page, that row and column must have its figure; the rows that a
marking sheet cites must be those of what its line is for, the opening that it
counts theirs.
Cautions and the pages of words must say every sentence whole. Of drawings the
square of an opening, the rafter over two pages, boards of examples, a jack's
faces and what comes off at a hip roof's ridge are read. Follows every link to
the page whose number stands there. Other pages are named as not read. Boards
and rounding are those of the lines “How this copy was made”: whether these are
yours is for you to see.
A sheets.pdf beside the booklet is cut, stacked and folded page by page, and its
marks are held against where its pages lie.
Of a card's sheets every figure is worked out by its row and head, and the line
that is cut along is measured against the size in the margin. The sheets of a
roof are worked out anew from the lines of what was asked for, which stand on
them: places, every mark from both ends, cuts, lists, what is cut from a board.
Of a pattern bars, angles and lengths are measured in the drawing, against what
is printed beside them, and pages are laid on one another.
Exit status 0: nothing differs, 1: something does, 2: no book of this kind.""")


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    summary = _('read a finished booklet, card, roof or pattern back and check its figures')
    parser = add_verb(subparsers, 'proof', summary, run, EXAMPLES, _(NOTES))
    words = _('the booklet, a card, the sheets of a roof or a pattern (default {usual})').format(usual=USUAL)
    parser.add_argument('booklet', nargs='?', default=USUAL, metavar='PDF', help=words)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print what was read and what differs."""
    from layouts.pdf.proving import prove_pages  # slower than a look-up
    from layouts.pdf.read_back import pages_of
    from layouts.verbs.proof_documents import other_document
    from layouts.words.proof_told import UNREAD, lines
    from tablegen.proof.stated import NoBook

    given = Path(args.booklet)
    beside = given.parent / SHEETS
    sheets = beside if beside != given and beside.is_file() else None
    try:
        pages = pages_of(given)
        try:
            found, unread = prove_pages(pages, sheets), _(UNREAD)
        except NoBook:
            other = other_document(pages)
            if other is None:
                raise
            found, unread = other
    except NoBook:
        raise BookError(
            args.booklet,
            _('is no booklet of this program'),
            _('a PDF with the page of how the copy was made'),
            _('give the booklet.pdf that “make” wrote'),
        ) from None
    for line in lines(found, unread):
        print(line, file=out)
    return 1 if found.faults else 0
