"""Paging: sections that fold, openings that open, and an index that leads where it says."""

from itertools import chain

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layouts.pages.paging import Furniture, Pages, lay_out
from layouts.paper.page import MOST_IN_A_SECTION, Block, Draft, page_side

NOTES = Draft('notes', lambda index: 'note')
CLOSING = Draft('closing', lambda index: 'last')


def section_cover(place, count, names) -> Draft:
    return Draft('section_cover', lambda index: (place, count, tuple(names)), f'section:{place}')


FURNITURE = Furniture(NOTES, CLOSING, CLOSING, section_cover)


def block(name: str, pages: int, opens_left: bool = False) -> Block:
    """Return a block whose pages have a key and another name each, and say where the index finds them."""
    drafts = tuple(
        Draft('page', lambda index, key=f'{name}.{n}': index[key], f'{name}.{n}', also=(f'also {name}.{n}',))
        for n in range(pages)
    )
    return Block(drafts, opens_left, (name,))


def blocks():
    """Blocks of a book: one that opens on a right-hand page, then some that open left, of any size."""
    sizes = st.lists(st.integers(1, 45).map(lambda half: 2 * half) | st.integers(1, 30), max_size=30)
    return st.tuples(st.integers(1, 20), sizes).map(
        lambda drawn: [block('front', drawn[0]), *(block(str(n), size, True) for n, size in enumerate(drawn[1]))]
    )  # fmt: skip


def cut(drafts, index) -> list[list[Draft]]:
    """Return the pages of each section."""
    return [drafts[first - 1 : first - 1 + count] for first, count in index.sections]


@given(blocks())
def test_sections_fold_and_are_thin_enough_to(book):
    drafts, index = lay_out(book, FURNITURE)

    assert all(count % 4 == 0 and 0 < count <= MOST_IN_A_SECTION for _, count in index.sections)
    assert list(chain.from_iterable(cut(drafts, index))) == drafts
    assert index.total == len(drafts)


@given(blocks())
def test_every_page_of_every_block_is_there_once_in_its_order(book):
    drafts, _ = lay_out(book, FURNITURE)
    wanted = [draft for one in book for draft in one.drafts]

    assert wanted == [draft for draft in drafts if draft.template == 'page']


@given(blocks())
def test_a_block_that_opens_left_does_so_in_its_section_and_in_the_book(book):
    drafts, index = lay_out(book, FURNITURE)
    for one in book[1:]:
        at = drafts.index(one.drafts[0])
        first = max(first for first, _ in index.sections if first <= at + 1)
        assert page_side(at + 1) == 'left'
        assert (at + 1 - first) % 2 == 1


@given(blocks())
def test_later_sections_have_covers_and_all_end_with_the_closing_page(book):
    drafts, index = lay_out(book, FURNITURE)
    sections = cut(drafts, index)
    covers = [section[0].make(index) for section in sections[1:]]

    assert [(place, count) for place, count, _ in covers] == [
        (place, len(sections)) for place in range(2, len(sections) + 1)
    ]
    assert all(section[-1] == CLOSING for section in sections)
    assert [draft.template for draft in drafts].count('section_cover') == len(sections) - 1
    assert drafts.count(CLOSING) == len(sections)


@given(blocks())
def test_a_cover_names_the_blocks_of_its_section(book):
    drafts, index = lay_out(book, FURNITURE)
    for section in cut(drafts, index)[1:]:
        held = [one.pitches[0] for one in book if any(draft in section for draft in one.drafts)]
        assert list(section[0].make(index)[2]) == held


@given(blocks())
def test_the_index_leads_to_the_page(book):
    drafts, index = lay_out(book, FURNITURE)
    for page in Pages(drafts, index):
        if page.template == 'page':
            assert page.content == page.number
    for one in book:
        for draft in one.drafts:
            assert index[draft.key] == index[draft.also[0]] == drafts.index(draft) + 1
            assert draft.key in index
    assert 'nowhere' not in index


@given(blocks())
def test_notes_only_fill_what_folding_asks_for(book):
    """At most three at a section's end, and one before a block that must open left."""
    drafts, index = lay_out(book, FURNITURE)
    for section in cut(drafts, index):
        assert section.count(NOTES) <= 3 + sum(draft.key.endswith('.0') for draft in section)


def test_a_book_of_eighty_pages_is_one_section():
    assert lay_out([block('front', 79)], FURNITURE)[1].sections == ((1, 80),)
    assert lay_out([block('front', 39), block('a', 40, True)], FURNITURE)[1].sections == ((1, 80),)


def test_one_page_more_makes_two():
    book = [block('front', 40), block('a', 40, True)]
    assert lay_out(book, FURNITURE)[1].sections == ((1, 44), (45, 44))


@pytest.mark.parametrize('pages', [77, 79, 80, 100, 152, 300])
def test_a_block_too_long_for_a_section_is_cut_between_openings(pages):
    drafts, index = lay_out([block('front', 7), block('long', pages, True)], FURNITURE)
    places = [number for number, draft in enumerate(drafts, 1) if draft.key.startswith('long.')]

    assert max(count for _, count in index.sections) <= MOST_IN_A_SECTION
    assert all(page_side(number) == ('right' if n % 2 else 'left') for n, number in enumerate(places))


def test_sections_share_the_pages_evenly():
    """Twenty-four pitches of eight pages: no section is a third longer than another."""
    _, index = lay_out([block('front', 9), *(block(str(n), 8, True) for n in range(24))], FURNITURE)
    counts = [count for _, count in index.sections]

    assert len(counts) == 3
    assert max(counts) < 4 / 3 * min(counts)


def test_the_first_page_of_that_name_counts():
    same = Draft('page', lambda index: None, 'twice')
    assert lay_out([Block((same, same, same))], FURNITURE)[1]['twice'] == 1


@pytest.mark.parametrize(('number', 'side'), [(1, 'right'), (2, 'left'), (3, 'right'), (224, 'left')])
def test_a_book_opens_on_a_right_hand_page(number, side):
    assert page_side(number) == side
