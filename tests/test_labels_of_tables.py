"""Every reference table of the finished book: each figure found by title, head and label, each worked out in space."""

from __future__ import annotations

import pytest
from headed import Table, reference_part
from labels.expected import Labels
from labels.hips_to_gables import cheeks, hips, jacks, trim_and_gables
from labels.other_roofs import finding_a_pitch, many_sides, setting_out_tables, two_pitches
from labels.ridge_to_tail import ridge, seat, tail

EXPECTED: tuple[Labels, ...] = (
    *setting_out_tables(),
    *ridge(),
    *seat(),
    *tail(),
    *hips(),
    *jacks(),
    *cheeks(),
    *trim_and_gables(),
    *two_pitches(),
    *many_sides(),
    *finding_a_pitch(),
)
BY_KEY = {one.key: one for one in EXPECTED}
COLUMNS = [(one.key, column.head) for one in EXPECTED for column in one.columns]


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
        expected = column.figure(value)
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


def test_every_printed_table_is_expected(skewed):
    assert sorted(skewed.titled) == sorted(one.title for one in EXPECTED)
