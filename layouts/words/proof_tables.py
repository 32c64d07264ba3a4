"""The printed titles and heads by which a proof-reader finds figures in tables and on pages by member, as these have them."""

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
from layouts.words.pages import LENGTHS
from layouts.words.runs import INCHES, JACK, JACK_HEADS, JACKS, LIST, OVER, RUN, SMALL_RUNS
from layouts.words.say import _, said, say
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.proof.digits import named
from tablegen.proof.names import Listed, Member, Rows, RunTable, Sheet, TableNames
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


def table_names(book: Stated) -> TableNames:
    """Return them for a copy of these settings, in the language in use."""
    return TableNames(
        _(INCHES),
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
        by_pitch = stubs[0].kind is Kind.PITCH and len(stubs) == 1 and table.group != 'find-pitch'
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
