"""The printed heads and labels by which a proof-reader finds figures on openings and glances, as these pages have them."""

from __future__ import annotations

import re
from itertools import zip_longest

from layouts.words.members import (
    COMMON,
    COMMON_LESS,
    COMMON_TITLE,
    HELD,
    HIP,
    HIP_LESS,
    HIP_TITLE,
    JACK_DIFFERENCES,
    WITH_ROOT,
    Group,
    Row,
    called,
    groups,
)
from layouts.words.pages import AT_A_SPACING, GLANCE_HEADS, LENGTHS, heading
from layouts.words.runs import JACK, JACK_HEADS, JACKS, LIST, OVER, RUN, SMALL_RUNS
from layouts.words.say import _, said, say
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.units import INCHES
from tablegen.proof.digits import named
from tablegen.proof.figures import COMMON_OVERHANGS, HIP_OVERHANGS
from tablegen.proof.names import Glance, Listed, Member, Names, Rows, RunTable, Sheet, Side
from tablegen.proof.roof import DEPTHS, Boards
from tablegen.proof.stated import Stated
from tablegen.settings import read_settings
from tablegen.tables.runs import head_of
from tablegen.tables.table import Cell, Kind
from tablegen.tables.tables import tables
from tablegen.tables.values import Values

KINDS = {'common': 'common', 'hip-valley': 'hip', 'rise': 'rise'}
JACK_LENGTHS = {'line': 'line', 'long_point': 'long', 'short_point': 'short'}
"""What the lengths of a table by the run, and of a column of jacks, are of."""
OF_A_SIZE, OF_A_NUMBER = re.compile(r'-\d.*'), re.compile(r'(_\d+)+(_in|_ft|_mm)?$|_\d+x\d+$')
"""What of the names of tables and columns says of which seat, size, thickness or spacing they are."""
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
        _members(book) if book.boards else (),
        _run_tables(book),
        (_('for'), _('add')),
        Listed(
            (_lengths(book, LIST[0]), _lengths(book, SMALL_RUNS[0])),
            _(RUN),
            tuple((say(head_of(kind)), name) for kind, name in KINDS.items()),
        ),
        Listed(
            (_(JACKS[0]),), _(JACK), tuple((_(head), JACK_LENGTHS[key]) for key, head in JACK_HEADS.items())
        ),
        _sheets(book),
    )


def _lengths(book: Stated, title: str) -> str:
    return _(title).format(lengths=_(LENGTHS['feet-inches' if book.in_feet else 'inches']))


def _members(book: Stated) -> tuple[Member, Member]:
    """Return the pages of a pitch by member, as the pages have them."""
    settings = read_settings(book.written, '')
    of = Values(settings)

    def member(title: str, name: str, held: str, less: tuple[str, str], some: tuple[Group, ...]) -> Member:
        rows = tuple(
            Rows(
                group.name,
                tuple(
                    ' '.join(filter(None, one)) for one in zip_longest(group.heads, group.below, fillvalue='')
                )
                or ONE,
                tuple(
                    (called(row, of, settings).strip(), _figures(row, book))
                    for row in group.rows
                    if row.values
                ),
                group.second.strip(),
            )
            for group in groups(some, settings)
        )
        halved, divided = (_(words).strip() for words in less)
        return Member(_(title), name, _(HELD), held, halved, divided, rows)

    with_root = _(HELD).replace('{body}', _(WITH_ROOT))
    return (
        member(COMMON_TITLE, 'common', _(HELD), COMMON_LESS, COMMON),
        member(HIP_TITLE, 'hip', with_root, HIP_LESS, HIP),
    )


def _figures(row: Row, book: Stated) -> tuple[str, ...]:
    """Return the names of a row's figures."""
    if row.values == (JACK_DIFFERENCES,):
        return tuple(f'jacks-{named(spacing)}' for spacing in book.spacings)
    return tuple(name.replace('_', '-').replace('-12-and', '-held') for name in row.values)


def _sheets(book: Stated) -> tuple[Sheet, ...]:
    """Return the reference tables, their heads as the tables themselves have them."""
    found = []
    for table in tables(read_settings(book.written, '')):
        stubs, columns = table.columns[: table.stubs], table.columns[table.stubs :]
        corner = [table.needs.corner] if table.needs.corner else [stub.head for stub in stubs]
        part = message('table.part', title=table.title, place='{place}', count='{count}')
        by_pitch = stubs[0].kind is Kind.PITCH and table.group != 'find-pitch'
        rows = (
            ()
            if by_pitch
            else tuple(' '.join(_cell(stub.cell(it)) for stub in stubs) for it in table.subjects())
        )
        found.append(
            Sheet(
                OF_A_SIZE.sub('', table.key),
                table.group,
                say(table.title),
                say(part),
                ' '.join(say(head).replace('\n', ' ') for head in corner),
                say(table.needs.span) if table.needs.span else '',
                tuple((say(column.head), OF_A_NUMBER.sub('', column.key)) for column in columns),
                rows,
            )
        )
    return tuple(found)


def _cell(cell: Cell) -> str:
    """Return the name of a row as it is printed."""
    return cell.short if isinstance(cell, Pitch) else str(said(cell))


def _run_tables(book: Stated) -> tuple[RunTable, ...]:
    """Return the tables by the run; what stands in the title of a right page is read there."""
    values = {
        'common': ('plumb_cut', 'common-plumb-cut'),
        'hip-valley': ('hip_plumb_cut', 'hip-plumb-cut'),
        'rise': ('rise_per_foot', 'rise-per-foot'),
    }
    return tuple(
        RunTable(
            KINDS[kind],
            _lengths(book, OVER[kind][0][0]),
            _(OVER[kind][1][0]).format(**{name: '{value}'}),
            figure,
        )
        for kind, (name, figure) in values.items()
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
        _('body: level'),
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
                    (_('Hip'), ('dropped-hip-height-marked', 'dropped-hip-heel', 'dropped-hip-seat')),
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
    return tuple(found)
