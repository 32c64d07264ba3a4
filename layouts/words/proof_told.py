"""What a proof-reader found, in lines: what differs, what was read, what was not."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from layouts.words.say import N_, _, n_
from tablegen.proof.found import Fault, Found

TOLD = {
    'figure': N_('page {page}, {row}, “{head}”: printed {printed}, right {right}'),
    'link': N_('page {page}, “{row}” says page {printed} and leads to page {right}'),
    'entry': N_('page {page}, “{row}” says page {printed}; that pitch is on page {right}'),
    'title': N_('page {page}, “{row}” says page {printed}; that head is on page {right}'),
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
    'words': N_('page {page}: these words are not known: {row}'),
    'cited': N_('page {page}, {row}: “{head}” is not what stands on page {printed}'),
    'missing': N_('page {page}: {row} of “{head}” is not there'),
}
UNREAD = N_('not read: other drawings, notes and what they count')
NO_HEAD = N_('page {page}, {row}: printed {printed}, right {right}')
"""What is said of a fault of each kind, and of a figure that has no head."""


def lines(found: Found, unread: str) -> list[str]:
    """Return the answer: each fault, what was read, and what was not.

    Given:
        unread  what of such a document is never read
    """
    found_lines = [told(fault) for fault in found.faults]
    wrong = sum(fault.kind == 'figure' for fault in found.faults)
    read = n_('{count:,} figure read', '{count:,} figures read', found.figures).format(count=found.figures)
    differ = n_('{count} differs', '{count} differ', wrong).format(count=wrong)
    on = _('on pages {pages}').format(pages=ranges(sorted(found.read))) if found.read else ''
    found_lines.append(f'{read} {on}: {differ}' if on else f'{read}: {differ}')
    others = sum(fault.kind != 'figure' and not fault.kind.startswith('sheet-') for fault in found.faults)
    followed = _(
        '{links} links followed, {folios} page numbers read; links, numbers, pages and rows amiss: {others}'
    )
    if found.links or found.folios or others:
        found_lines.append(followed.format(links=found.links, folios=found.folios, others=others))
    if found.sheets:
        found_lines.append(_folded(found))
    found_lines += [
        _('not read: page {page}, “{words}”').format(page=page, words=words) for page, words in found.strange
    ]
    if rest := found.unread:
        found_lines.append(_unread(found, len(rest)).format(pages=ranges(rest)))
    if found.read:
        found_lines.append(unread)
    return found_lines


def _unread(found: Found, count: int) -> str:
    if found.folios:
        return n_(
            'not read: figures in words and drawings of page {pages}',
            'not read: figures in words and drawings of pages {pages}',
            count,
        )
    return n_('not read: figures of page {pages}', 'not read: figures of pages {pages}', count)


def _folded(found: Found) -> str:
    sheets = n_('{count} sheet folded', '{count} sheets folded', found.sheets).format(count=found.sheets)
    wrong = sum(fault.kind.startswith('sheet-') for fault in found.faults)
    amiss = _('order, fold, cuts, staples, bar and margins amiss: {wrong}').format(wrong=wrong)
    return f'{sheets}: {amiss}'


def told(fault: Fault) -> str:
    """Return what differs, in a line."""
    words = {name: getattr(fault, name) for name in ('page', 'row', 'head', 'right')}
    said = _(TOLD[fault.kind]) if fault.head or fault.kind != 'figure' else _(NO_HEAD)
    return said.format(**words, printed=fault.printed or ('' if fault.kind == 'pitch' else _('nothing')))


def ranges(numbers: Sequence[int]) -> str:
    """Return numbers in rising order, neighbors as a range: '16–65, 79'."""
    runs = [
        [number for _n, number in some]
        for _apart, some in groupby(enumerate(numbers), lambda it: it[1] - it[0])
    ]
    return ', '.join(str(one[0]) if len(one) == 1 else f'{one[0]}–{one[-1]}' for one in runs)
