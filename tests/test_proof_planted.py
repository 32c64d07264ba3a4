"""Every error that is planted in a finished book is found by the proof-reader, on the page where it is."""

from __future__ import annotations

import pytest
from msgspec.structs import replace
from planted_errors import (
    change_a_digit,
    cited_wrong,
    entry_wrong,
    head,
    in_a_table,
    page_missing,
    pages_swapped,
    row,
    swapped,
    with_planted,
)

from layouts.pdf.read_back import pages_of
from layouts.words.proof import names
from tablegen.proof.page import Page
from tablegen.proof.proof import proof


@pytest.fixture(scope='module')
def read(openings):
    """The pages of the book with every opening."""
    return pages_of(openings.built.booklet)


@pytest.fixture(scope='module')
def whole(small_book):
    """The pages of a complete edition of three pitches."""
    return pages_of(small_book.built.booklet)


@pytest.fixture(scope='module')
def every_table(skewed):
    """The pages of a book with every part that have tables, and its settings; of all others no words."""
    pages, index = pages_of(skewed.made.built.booklet), skewed.made.planned.index
    tables = [index[key] for key in index.pages if key.startswith('table-')]
    kept = {*range(min(tables), max(tables) + 2), index['made']} - {first for first, _count in index.sections}
    return [page if page.number in kept else Page(page.number, []) for page in pages]


PLANTED = {
    'heads of two columns swapped': head('5 in 12', 1, {'heel': 'seat', 'seat': 'heel'}),
    'heads of lengths swapped': head('6 in 12', 0, {'common': 'rise', 'rise': 'common'}),
    'a head changed': head('7 in 12', 0, {'plate': 'wall'}),
    'the thickness of a title changed': head('8 in 12', 0, {'3/4': '1/4'}),
    'two figures of a row swapped': row('9 in 12', 1, 'Hip, valley', swapped),
    'a row missing': row('10 in 12', 1, 'Jack at a hip', lambda words: []),
    'a row of lengths missing': row('11 in 12', 0, '17', lambda words: []),
    'a row twice': row('12 in 12', 0, 'Plumb cut', lambda words: [*words, *(replace(one, base=one.base - 3) for one in words)]),
    'a label changed': row('13 in 12', 1, 'Valley’s heel: out, level', lambda words: [replace(words[0], text='Hip’s'), *words[1:]]),
    'pages out of order': pages_swapped,
    'a page missing': page_missing,
    'a page cited wrong': cited_wrong,
    **{f'a digit changed, {seed}': change_a_digit(seed) for seed in range(3)},
}  # fmt: skip


@pytest.mark.parametrize('planted', PLANTED)
def test_a_planted_error_is_found_where_it_is(read, planted):
    found, page = with_planted(read, PLANTED[planted])

    assert found.faults
    assert page in {fault.page for fault in found.faults}
    if planted.startswith('two figures'):
        assert {(fault.head, fault.page) for fault in found.faults} == {
            ('from square', page),
            ('square 12 &', page),
        }
    if planted.startswith('a row missing'):
        assert [(fault.head, fault.printed) for fault in found.faults] == [('level', ''), ('along top', '')]


def test_an_entry_that_leads_to_another_page_than_it_names_is_found(whole):
    found, page = with_planted(whole, entry_wrong)
    assert [(fault.kind, fault.page, fault.row) for fault in found.faults] == [
        ('title', page, 'Seat, cut, try')
    ]


@pytest.mark.parametrize('seed', range(5))
def test_an_error_planted_in_a_table_is_found_where_it_is(whole, seed):
    found, page = with_planted(whole, in_a_table(seed))
    assert page in {fault.page for fault in found.faults}


def test_every_reference_table_is_read(every_table):
    """Setting out, two pitches at a corner and many sides too, which no edition has unasked."""
    found = proof(every_table, names)
    assert [fault for fault in found.faults if fault.kind in ('figure', 'missing', 'pitch')] == []
    assert {page.number for page in every_table if any(word.stops for word in page.words)} <= found.read


@pytest.mark.parametrize('seed', range(5))
def test_an_error_planted_in_any_reference_table_is_found_where_it_is(every_table, seed):
    found, page = with_planted(every_table, in_a_table(seed))
    assert page in {fault.page for fault in found.faults}


@pytest.mark.thorough
@pytest.mark.parametrize('seed', range(10, 110))
def test_a_digit_changed_anywhere_is_found(read, seed):
    found, page = with_planted(read, change_a_digit(seed))
    assert page in {fault.page for fault in found.faults}
    assert {fault.kind for fault in found.faults if fault.page != page} <= {
        'cited'
    }  # where what stood there is cited


@pytest.mark.thorough
@pytest.mark.parametrize('seed', range(10, 110))
def test_any_error_planted_in_a_table_is_found(whole, seed):
    found, page = with_planted(whole, in_a_table(seed))
    assert page in {fault.page for fault in found.faults}
