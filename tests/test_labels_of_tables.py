"""Every reference table of the finished book: each figure found by title, head and label, each worked out in space."""

from __future__ import annotations

import re
from itertools import combinations

import pytest
from claimed import unclaimed
from headed import Table, marked, reference_part, sections
from labels.every import EXPECTED
from labels.expected import Labels
from labels.notes import CLAUSE, NOTES
from labels.seats import DASH

from tablegen.tables.tables import tables

BY_KEY = {one.key: one for one in EXPECTED}
COLUMNS = [(one.key, column.head) for one in BY_KEY.values() for column in one.columns]


def printed(book, wanted: Labels) -> Table:
    """Return a table as it is printed."""
    parts = book.titled.get(wanted.title, [])
    assert parts, f'no page bears the title "{wanted.title}"'
    return Table(
        tuple(
            reference_part(page, wanted.title, below, wanted.corner, wanted.span, book.rem)
            for page, below in parts
        )
    )


@pytest.mark.parametrize(('key', 'head'), COLUMNS, ids=[f'{key}: {head}' for key, head in COLUMNS])
def test_a_column(skewed, key, head):
    wanted = BY_KEY[key]
    (column,) = [one for one in wanted.columns if one.head == head]
    table, wrong = printed(skewed, wanted), []
    for label, value in wanted.rows:
        page, found = table.cell(head, label)
        found, expected = marked(found), column.figure(value)
        if found != expected:
            wrong.append(
                f'page {page}, "{wanted.title}", "{head}" beside {label}: printed {found}, expected {expected}'
            )
    assert wrong == []


@pytest.mark.parametrize('key', BY_KEY)
def test_a_table_has_these_heads_and_rows_and_says_what_it_measures(skewed, key):
    wanted = BY_KEY[key]
    table = printed(skewed, wanted)

    assert table.heads == [column.head for column in wanted.columns]
    assert table.labels == [label for label, _ in wanted.rows]
    for part in table.parts:
        assert len(part.heads) == len(set(part.heads)), f'page {part.page}: heads alike'
        line = part.line[:1].lower() + part.line[1:]
        assert [words for words in wanted.says if words not in line] == [], line
        assert unclaimed(line, (*wanted.says, 'inches')) == []


@pytest.mark.parametrize('key', BY_KEY)
def test_what_stands_at_the_foot_of_a_table(skewed, key):
    """Thicknesses, limits and what is done with them: each is expected, and nothing else stands there."""
    told = re.sub(CLAUSE, '', printed(skewed, BY_KEY[key]).parts[-1].notes)
    assert [words for words in NOTES.get(key, ()) if words not in told] == [], told
    assert unclaimed(told, NOTES.get(key, ())) == []


def test_parts_of_a_table_are_numbered_in_their_order(skewed):
    found: dict[str, list[str]] = {}
    for number in skewed.numbers('ref_table'):
        for title, _ in sections(skewed.words(number), skewed.rem):
            name, _, which = title.rpartition(', ')
            if re.fullmatch(r'\d+ of \d+', which):
                found.setdefault(name, []).append(which)
    assert found
    for name, parts in found.items():
        assert parts == [f'{place} of {len(parts)}' for place in range(1, len(parts) + 1)], name


def test_every_table_is_expected(skewed):
    """A new table, or a table under another name, has no figure that is proven."""
    assert sorted(skewed.titled) == sorted(one.title for one in EXPECTED)
    assert [table.key for table in tables(skewed.made.planned.settings)] == [one.key for one in EXPECTED]


ALIKE = {
    ('shortening-level', 'common', 'end common'): 'half of the thickness, both',
    (
        'unequal-points',
        'jack A: points',
        'hip B: side',
    ): 'half of a hip that is twice as thick as the rafters',
    ('unequal-points', 'jack B: points', 'hip A: side'): 'the same',
}
"""Columns of one table with the same figures throughout, and why."""


def test_no_two_columns_of_a_table_agree_but_those_that_must(skewed):
    """Else heads could be exchanged and nothing would tell."""
    found = set()
    for key, wanted in BY_KEY.items():
        table = printed(skewed, wanted)
        cells = {head: [table.cell(head, label)[1] for label in table.labels] for head in table.heads}
        told = [head for head in cells if set(cells[head]) != {DASH}]
        found |= {(key, one, two) for one, two in combinations(told, 2) if cells[one] == cells[two]}
    assert found == set(ALIKE)


def test_no_two_tables_of_the_same_heads_agree(skewed):
    """Else their titles could be exchanged."""
    found = {}
    for key, wanted in BY_KEY.items():
        table = printed(skewed, wanted)
        cells = tuple(
            (head, label, table.cell(head, label)[1]) for head in table.heads for label in table.labels
        )
        found.setdefault(cells, []).append(key)
    assert [keys for keys in found.values() if len(keys) > 1] == []
