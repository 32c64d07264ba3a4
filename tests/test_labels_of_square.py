"""The pages on checking a square, as printed: by head and label, worked out in space."""

from __future__ import annotations

import pytest
from headed import Table, sections
from headed_right import right_part, small_tables
from labels.square_pages import drift, engraved, mark_to_mark, marks, turned_over

WHOLE = {one.key: one for one in (engraved(), drift())}
SMALL = {'true_square': (turned_over(), mark_to_mark()), 'step_off': (marks(),)}


def wrong(wanted, table: Table) -> list[str]:
    """Return the figures that are not as they should be, by page, head and label."""
    found = [(column, label, value) for column in wanted.columns for label, value in wanted.rows]
    return [
        f'page {page}, "{wanted.title}", "{column.head}" beside {label}: printed {told}, expected {column.figure(value)}'
        for column, label, value in found
        for page, told in [table.cell(column.head, label)]
        if told != column.figure(value)
    ]


@pytest.mark.parametrize('key', WHOLE)
def test_a_page(skewed, key):
    wanted, (number,) = WHOLE[key], skewed.numbers(key)
    ((title, below),) = sections(skewed.words(number), skewed.rem)
    table = Table((right_part(number, title, below, wanted.corner, skewed.rem),))

    assert title == wanted.title
    assert table.heads == [column.head for column in wanted.columns]
    assert table.labels == [label for label, _ in wanted.rows]
    assert wrong(wanted, table) == []


@pytest.mark.parametrize(('page', 'wanted'), [(page, one) for page, some in SMALL.items() for one in some])
def test_a_small_table(skewed, page, wanted):
    (number,) = skewed.numbers(page)
    table = Table(tuple(small_tables(number, skewed.words(number), wanted.title, wanted.corner, skewed.rem)))

    assert table.heads == [column.head for column in wanted.columns]
    assert table.labels == [label for label, _ in wanted.rows]
    assert wrong(wanted, table) == []
