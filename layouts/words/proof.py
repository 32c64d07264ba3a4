"""The printed heads and labels by which a proof-reader finds figures on openings and glances, as these pages have them."""

from __future__ import annotations

from itertools import zip_longest

from layouts.words.pages import AT_A_SPACING, GLANCE_HEADS, heading
from layouts.words.proof_examples import example_names
from layouts.words.proof_marking import marking_names
from layouts.words.proof_members import list_names
from layouts.words.proof_pages import said_pages
from layouts.words.proof_tables import table_names
from layouts.words.say import _
from layouts.words.square import ENGRAVED, STEP, STEPS
from tablegen.numbers.units import INCHES
from tablegen.proof.digits import named
from tablegen.proof.figures import COMMON_OVERHANGS, HIP_OVERHANGS, STEP_COUNTS
from tablegen.proof.names import Glance, Names, Rows, Side
from tablegen.proof.roof import DEPTHS, Boards
from tablegen.proof.stated import Stated

ONE = ('',)
"""Of a column without a head."""


def names(book: Stated) -> Names:
    """Return them for a copy of these settings, in the language in use."""
    return Names(
        _('ft'),
        _('in'),
        _('parts of an inch'),
        _('exact foot'),
        _('body: level'),
        _('tongue: plumb'),
        _('a step: {run} of run'),
        (_left(book), _right(book)) if book.boards else (Side('', (), '', ()),) * 2,
        _glances(book),
        table_names(book),
        example_names(),
        said_pages(book),
        marking_names(),
        list_names(),
    )


def _left(book: Stated) -> Side:
    assert book.boards is not None
    ridge, seat = named(book.boards.ridge), named(book.boards.seat)
    return Side(
        _('Common rafter'),
        ((_('common'), 'common'), (_('rise'), 'rise')),
        _('body: level'),
        (
            Rows(
                '',
                ONE,
                (
                    (_('Plumb cut'), ('common-plumb-cut',)),
                    (_('Level cut'), ('common-level-cut',)),
                ),
            ),
            _off(_('Off for a ridge {ridge}').format(ridge=ridge), 'common-at-ridge'),
            _off(_('Off for a ledger {ledger}').format(ledger=named(book.boards.rafter)), 'common-at-ledger'),
            Rows(
                _('Seat {seat}').format(seat=seat),
                (_('over plate'),),
                (*((size, (f'height-{size}',)) for size in DEPTHS), (_('heel'), ('heel',))),
            ),
            Rows(
                _('Overhang'),
                (_('tail'),),
                tuple((str(out), (f'tail-{out}',)) for out in COMMON_OVERHANGS),
            ),
        ),
    )


def _off(title: str, key: str) -> Rows:
    return Rows(title, ONE, ((_('level'), (f'{key}-level',)), (_('along the top'), (f'{key}-along',))))


def _right(book: Stated) -> Side:
    assert book.boards is not None
    boards = book.boards
    return Side(
        _('Hip, valley, jacks'),
        ((_('hip, valley'), 'hip'),),
        _('body: level (√288)'),
        (
            Rows(
                '',
                ONE,
                (
                    (_('Plumb cut'), ('hip-plumb-cut',)),
                    (_('Level cut'), ('hip-level-cut',)),
                    (_('Backing, each face'), ('hip-backing',)),
                    (_('Drop, plumb; hip {thick}').format(thick=named(boards.hip)), ('hip-drop',)),
                    (_('Valley’s heel: out, level'), ('valley-heel-out',)),
                ),
            ),
            Rows(
                _('Comes off, center to face'),
                (_('level'), _('along top')),
                (
                    (_('Hip at ridge, one cheek'), ('hip-at-ridge-level', 'hip-at-ridge-along')),
                    (_('Hip at commons, two'), ('hip-between-commons-level', 'hip-between-commons-along')),
                    (_('Valley, one or two'), ('hip-at-ridge-level', 'hip-at-ridge-along')),
                    (_('Jack at a hip'), ('jack-at-hip-level', 'jack-at-hip-along')),
                ),
            ),
            Rows(
                _('Cheek on top'),
                (_('from square'), _('square {base} &').format(base=INCHES.base)),
                (
                    (_('Jack'), ('jack-cheek-top', 'jack-cheek-top-12-and')),
                    (_('Hip, valley'), ('hip-cheek-top', 'hip-cheek-top-12-and')),
                ),
            ),
            Rows(
                _('Bird’s mouth {stock}').format(stock=_stocks(boards)),
                (_('height'), _('heel'), _('seat')),
                (
                    (
                        _('Hip, dropped'),
                        ('dropped-hip-height-marked', 'dropped-hip-heel', 'dropped-hip-seat'),
                    ),
                    (_('Valley'), ('valley-height-marked', 'valley-heel', 'valley-seat')),
                ),
            ),
            _apart(book),
        ),
    )


def _stocks(boards: Boards) -> str:
    return ' '.join(dict.fromkeys((boards.hips, boards.valleys)))


def _apart(book: Stated) -> Rows:
    rows = zip_longest(book.spacings, HIP_OVERHANGS)
    return Rows(
        _('Jacks apart'),
        (_('longer by'), _('overhang'), _('hip tail')),
        tuple(
            (
                named(apart) if apart else '',
                (
                    f'jacks-{named(apart)}' if apart else '',
                    f'overhang-{out}' if out else '',
                    f'hip-tail-{out}' if out else '',
                ),
            )
            for apart, out in rows
        ),
    )


def _glances(book: Stated) -> tuple[Glance, ...]:
    spaced = [(_(AT_A_SPACING).format(spacing=named(one)), f'jacks-{named(one)}') for one in book.spacings]
    keys = {
        'glance': (
            ('common-plumb-cut', 'common-level-cut', 'hip-plumb-cut', 'hip-level-cut'),
            ('common-per-foot', 'hip-per-foot'),
        ),
        'glance-right': ((), ('jack-cheek-top', 'hip-cheek-top'), ('hip-backing',)),
    }
    found = []
    for page, some_keys in keys.items():
        columns = []
        for (_over, heads), some in zip(GLANCE_HEADS[page], some_keys, strict=True):
            columns += (
                spaced if heads is None else [(_(head), key) for head, key in zip(heads, some, strict=True)]
            )
        found.append(Glance(heading(page), tuple((head.replace('\n', ' '), key) for head, key in columns)))
    return (*found, *_of_a_square())


def _of_a_square() -> tuple[Glance, Glance]:
    """Return the pages of what a square should carry, and of what rounded steps add up to."""
    heads = [_(head) for _over, heads in ENGRAVED for head in heads]
    carried = zip(heads, ('common', 'hip', 'by-17', 'jacks-16', 'jacks-24', 'jack', 'hip-cheek'), strict=True)
    step = ' '.join(map(_, STEP))
    steps = tuple((f'{count} {_(STEPS)}', f'drift-{count}') for count in STEP_COUNTS)
    rises = tuple(range(1, 25))
    return (
        Glance(heading('engraved'), tuple((head, f'square-{key}') for head, key in carried), rises),
        Glance(heading('drift'), ((step, 'drift-step'), *steps), rises),
    )
