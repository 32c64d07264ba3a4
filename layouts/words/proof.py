"""The printed heads and labels by which a proof-reader finds figures on openings and glances, as these pages have them."""

from __future__ import annotations

from fractions import Fraction

from layouts.words.pages import AT_A_SPACING, GLANCE_HEADS, heading
from layouts.words.say import _
from tablegen.proof.digits import named
from tablegen.proof.figures import COMMON_OVERHANGS, HIP_OVERHANGS
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
        _('tongue: plumb'),
        _('a step: {run} of run'),
        (_left(book), _right(book)) if book.boards else (Side('', (), '', ()),) * 2,
        _glances(book),
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
            Rows(
                _('Off for a ridge {ridge}').format(ridge=ridge),
                ONE,
                (
                    (_('level'), ('common-at-ridge-level',)),
                    (_('along the top'), ('common-at-ridge-along',)),
                ),
            ),
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


def _right(book: Stated) -> Side:
    assert book.boards is not None
    boards = book.boards
    return Side(
        _('Hip, valley, jacks'),
        ((_('hip, valley'), 'hip'),),
        _('body: level'),
        (
            Rows(
                '',
                ONE,
                (
                    (_('Plumb cut'), ('hip-plumb-cut',)),
                    (_('Level cut'), ('hip-level-cut',)),
                    (_('Backing, each face'), ('backing',)),
                    (_('Drop, plumb; hip {thick}').format(thick=named(boards.hip)), ('drop',)),
                    (_('Valley’s heel: out, level'), ('valley-out',)),
                ),
            ),
            Rows(
                _('Off, center to face'),
                (_('level'), _('along top')),
                (
                    (_('Hip at a ridge'), ('hip-at-ridge-level', 'hip-at-ridge-along')),
                    (_('Hip at commons'), ('hip-at-commons-level', 'hip-at-commons-along')),
                    (_('Jack at a hip'), ('jack-at-hip-level', 'jack-at-hip-along')),
                ),
            ),
            Rows(
                _('Cheek, top edge'),
                (_('from square'), _('12 and')),
                (
                    (_('Jack'), ('jack-cheek', 'jack-12-and')),
                    (_('Hip, valley'), ('hip-cheek', 'hip-12-and')),
                ),
            ),
            Rows(
                _('Mouth {stock}').format(stock=_stocks(boards)),
                (_('height'), _('heel'), _('seat')),
                (
                    (_('Hip'), ('hip-height', 'hip-heel', 'hip-seat')),
                    (_('Valley'), ('valley-height', 'valley-heel', 'valley-seat')),
                ),
            ),
            _apart(book),
        ),
    )


def _stocks(boards: Boards) -> str:
    return ' '.join(dict.fromkeys((boards.hips, boards.valleys)))


def _apart(book: Stated) -> Rows:
    apart = sorted({*book.spacings, *map(Fraction, HIP_OVERHANGS)})
    return Rows(
        _('Apart; overhang'),
        (_('jacks'), _('hip tail')),
        tuple(
            (
                named(one),
                (
                    f'jacks-{named(one)}' if one in book.spacings else '',
                    f'hip-tail-{one}' if one in HIP_OVERHANGS else '',
                ),
            )
            for one in apart
        ),
    )


def _glances(book: Stated) -> tuple[Glance, ...]:
    spaced = [(_(AT_A_SPACING).format(spacing=named(one)), f'jacks-{named(one)}') for one in book.spacings]
    keys = {
        'glance': (
            ('common-plumb-cut', 'common-level-cut', 'hip-plumb-cut', 'hip-level-cut'),
            ('common-per-foot', 'hip-per-foot'),
        ),
        'glance-right': ((), ('jack-cheek', 'hip-cheek'), ('backing',)),
    }
    found = []
    for page, groups in keys.items():
        columns = []
        for (_over, heads), some in zip(GLANCE_HEADS[page], groups, strict=True):
            columns += (
                spaced if heads is None else [(_(head), key) for head, key in zip(heads, some, strict=True)]
            )
        found.append(Glance(heading(page), tuple((head.replace('\n', ' '), key) for head, key in columns)))
    return tuple(found)
