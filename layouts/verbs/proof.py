"""proof: reads a finished booklet back, works every figure that it knows out by other means, and says what differs."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from itertools import groupby
from pathlib import Path
from typing import TYPE_CHECKING, TextIO

from layouts.verbs.options import Subparsers, add_verb
from layouts.words.say import N_, _, n_
from tablegen.errors import BookError

if TYPE_CHECKING:
    from tablegen.proof.found import Fault, Found

EXAMPLES = (
    'rafterbook proof',
    'rafterbook proof my-book/booklet.pdf',
    'rafterbook proof my-book/card.pdf',
    'rafterbook proof my-roof.pdf',
    'rafterbook proof pattern.pdf',
)
USUAL, SHEETS = 'output/booklet.pdf', 'sheets.pdf'
NOTES = N_("""\
Reads the pages of the pitches, those at a glance and the reference tables by
their printed titles, heads and labels alone, and works every figure out in
space with sixty digits, by nothing that made the book. Follows every link to the page whose number
stands there. Other pages are named as not read. Boards and rounding are those
of the page “How this copy was made”: whether these are yours is for you to see.
A sheets.pdf beside the booklet is cut, stacked and folded page by page, and its
marks are held against where its pages lie.
Of a card's sheets every figure is worked out by its row and head, and the line
that is cut along is measured against the size in the margin. The sheets of a
roof are worked out anew from the lines of what was asked for, which stand on
them: places, every mark from both ends, cuts, lists, what is cut from a board.
Of a pattern bars, angles and lengths are measured in the drawing, against what
is printed beside them, and pages are laid on one another.
Exit status 0: nothing differs, 1: something does, 2: no book of this kind.""")
TOLD = {
    'figure': N_('page {page}, {row}, “{head}”: printed {printed}, right {right}'),
    'link': N_('page {page}, “{row}” says page {printed} and leads to page {right}'),
    'entry': N_('page {page}, “{row}” says page {printed}; that pitch is on page {right}'),
    'folio': N_('page {right} of the file is numbered {printed}'),
    'pitch': N_('page {page}: its pitch or its heads are not known: {row}{printed}'),
    'opening': N_('“{head}” of {row}: not in its place'),
    'gap': N_('page {page}: a row is missing by {row}'),
    'ink': N_('page {page}, {row}: {printed} is not drawn as it is told: {right}'),
    'back': N_('page {page}: {row} does not lie behind its front'),
    'sheet-turned': N_('sheets: the page turned to as {head} is {printed}, not {right}'),
    'sheet-count': N_('sheets: {printed} pages are turned to, of {right}'),
    'sheet-pairs': N_('sheets, page {page}: fronts and backs do not go together'),
    'sheet-label': N_('sheets, page {page}: its margin says “{printed}”'),
    'sheet-shift': N_('sheets, from page {page} on: pages do not lie where they fold'),
    'sheet-fold': N_('sheets, page {page}: the fold is not marked where it is'),
    'sheet-cut': N_('sheets, page {page}: a cut is not marked where pages end'),
    'sheet-staple': N_('sheets, page {page}: staples are not marked on the outermost fold alone'),
    'sheet-bar': N_('sheets, page {page}: the bar is not as long as it says'),
    'missing': N_('page {page}: {row} of “{head}” is not there'),
}
UNREAD = N_('not read: drawings, notes and what they count')
NO_HEAD = N_('page {page}, {row}: printed {printed}, right {right}')
"""What is said of a fault of each kind, and of a figure that has no head."""


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
    from tablegen.proof.stated import NoBook

    given = Path(args.booklet)
    beside = given.with_name(SHEETS)
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


def lines(found: Found, unread: str) -> list[str]:
    """Return the answer: each fault, what was read, and what was not.

    Given:
        unread  what of such a document is never read
    """
    told = [_said(fault) for fault in found.faults]
    wrong = sum(fault.kind == 'figure' for fault in found.faults)
    read = n_('{count:,} figure read', '{count:,} figures read', found.figures).format(count=found.figures)
    differ = n_('{count} differs', '{count} differ', wrong).format(count=wrong)
    on = _('on pages {pages}').format(pages=ranges(sorted(found.read))) if found.read else ''
    told.append(f'{read} {on}: {differ}' if on else f'{read}: {differ}')
    others = sum(fault.kind != 'figure' and not fault.kind.startswith('sheet-') for fault in found.faults)
    followed = _(
        '{links} links followed, {folios} page numbers read; links, numbers, pages and rows amiss: {others}'
    )
    if found.links or found.folios or others:
        told.append(followed.format(links=found.links, folios=found.folios, others=others))
    if found.sheets:
        told.append(_folded(found))
    told += [
        _('not read: page {page}, “{words}”').format(page=page, words=words) for page, words in found.strange
    ]
    if found.unread:
        told.append(_('not read: figures of pages {pages}').format(pages=ranges(found.unread)))
    if found.read:
        told.append(unread)
    return told


def _folded(found: Found) -> str:
    sheets = n_('{count} sheet folded', '{count} sheets folded', found.sheets).format(count=found.sheets)
    wrong = sum(fault.kind.startswith('sheet-') for fault in found.faults)
    amiss = _('order, fold, cuts, staples, bar and margins amiss: {wrong}').format(wrong=wrong)
    return f'{sheets}: {amiss}'


def _said(fault: Fault) -> str:
    words = {name: getattr(fault, name) for name in ('page', 'row', 'head', 'right')}
    said = _(TOLD[fault.kind]) if fault.head or fault.kind != 'figure' else _(NO_HEAD)
    return said.format(**words, printed=fault.printed or _('nothing'))


def ranges(numbers: Sequence[int]) -> str:
    """Return numbers in rising order, neighbors as a range: '16–65, 79'."""
    runs = [
        [number for _n, number in some]
        for _apart, some in groupby(enumerate(numbers), lambda it: it[1] - it[0])
    ]
    return ', '.join(str(one[0]) if len(one) == 1 else f'{one[0]}–{one[-1]}' for one in runs)
