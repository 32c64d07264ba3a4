"""Pieces cut from boards: against every way there is to cut few, against published examples, and what holds for any plan."""

from __future__ import annotations

from collections import Counter
from functools import cache
from math import ceil

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tablegen.frame.cutting import Cut, Cutting, bought, first_fit, least_by_length
from tablegen.frame.cutting_search import Search

PUBLISHED = {
    # V. Chvátal, Linear Programming, 1983, chapter 13: rolls of 100 in; 453 rolls are the fewest (the linear program says 452.25).
    'finals of 45, 36, 31 and 14 in': ((100,), {45: 97, 36: 610, 31: 395, 14: 211}, 453 * 100),
    # The paper machine of 5600 mm that is the standing example of encyclopedias: 73 rolls, by length alone 72.7.
    'thirteen widths': (
        (5600,),
        {1380: 22, 1520: 25, 1560: 12, 1710: 14, 1820: 18, 1880: 18, 1930: 20, 2000: 10, 2050: 12, 2100: 14, 2140: 16,
         2150: 18, 2200: 20},
        73 * 5600,
    ),
    # By hand: 7 + 3, 7 + 3 and 4 + 4.
    'by hand': ((10,), {7: 2, 4: 2, 3: 2}, 30),
}  # fmt: skip


def cutting(boards, pieces: dict[int, int], kerf: int = 0) -> Cutting:
    lengths = tuple(sorted(pieces, reverse=True))
    return Cutting(lengths, tuple(pieces[one] for one in lengths), tuple(sorted(boards)), kerf)


def searched(asked: Cutting, seconds: float = 20) -> Search:
    search = Search(asked, first_fit(asked), seconds)
    search.run()
    return search


def by_every_way(asked: Cutting) -> tuple[int, int]:
    """Return the length of the boards and their number of the best plan, every way of dealing the pieces out tried."""
    pieces = [one for one, n in zip(asked.pieces, asked.wanted, strict=True) for _ in range(n)]

    def board(part: int) -> int | None:
        some = [piece for place, piece in enumerate(pieces) if part >> place & 1]
        needed = sum(some) + asked.kerf * (len(some) - 1)
        return min((one for one in asked.boards if one >= needed), default=None)

    boards = [board(part) for part in range(1 << len(pieces))]

    @cache
    def best(left: int) -> tuple[int, int]:
        if not left:
            return 0, 0
        first, found, part = left & -left, [], left
        while part:
            if part & first and boards[part] is not None:
                length, number = best(left ^ part)
                found.append((length + boards[part], number + 1))
            part = (part - 1) & left
        return min(found)

    return best((1 << len(pieces)) - 1)


def holds(asked: Cutting, plan: list[Cut]) -> None:
    """Demand that a plan cuts all that is wanted, no more, and that every board holds its pieces and the kerfs between."""
    cut = Counter()
    for one in plan:
        pieces = [piece for piece, n in zip(asked.pieces, one.pattern, strict=True) for _ in range(n)]
        assert pieces
        assert sum(pieces) + asked.kerf * (len(pieces) - 1) <= one.board
        assert one.board in asked.boards
        cut.update(pieces)
    assert cut == dict(zip(asked.pieces, asked.wanted, strict=True))


@st.composite
def cuttings(draw, most_pieces: int, most_each: int) -> Cutting:
    """Boards of one to four lengths and pieces of them."""
    boards = draw(st.sets(st.integers(30, 300), min_size=1, max_size=4))
    pieces = draw(
        st.dictionaries(
            st.integers(3, max(boards)), st.integers(1, most_each), min_size=1, max_size=most_pieces
        )
    )
    return cutting(boards, pieces, draw(st.integers(0, 6)))


@pytest.mark.parametrize('name', PUBLISHED)
def test_a_published_example_is_cut_from_as_little_as_it_says(name):
    boards, pieces, length = PUBLISHED[name]
    search = searched(cutting(boards, pieces))

    holds(search.cutting, search.plan)
    assert bought(search.plan)[0] == search.least == length


@given(cuttings(most_pieces=4, most_each=2))
def test_few_pieces_are_cut_as_well_as_by_every_way_there_is(asked):
    search = searched(asked)

    assert bought(search.plan) == by_every_way(asked)
    assert bought(search.plan)[0] == search.least


@given(cuttings(most_pieces=12, most_each=9))
@settings(max_examples=60)
def test_a_plan_holds_and_is_no_better_than_its_bound(asked):
    first = first_fit(asked)
    search = searched(asked, 3)

    holds(asked, first)
    holds(asked, search.plan)
    assert 0 < least_by_length(asked) <= search.least <= bought(search.plan)[0] <= bought(first)[0]


@given(cuttings(most_pieces=4, most_each=2))
def test_no_plan_goes_under_the_bound_that_needs_no_search(asked):
    assert least_by_length(asked) <= by_every_way(asked)[0]


def test_a_search_without_time_keeps_the_plan_it_was_given():
    asked = cutting(*PUBLISHED['thirteen widths'][:2])
    first = first_fit(asked)
    search = Search(asked, first, 0)
    search.run()

    assert search.plan == first
    assert search.least == least_by_length(asked) == ceil(407160 / 5600) * 5600


def test_a_kerf_stands_between_pieces_and_none_after_the_last():
    """Two pieces of 48 need a board of 97 with a kerf of 1, three of 32 one of 98: by hand."""
    assert bought(searched(cutting((96, 97, 98), {48: 2}, 1)).plan) == (97, 1)
    assert bought(searched(cutting((96, 97, 98), {32: 3}, 1)).plan) == (98, 1)
    assert bought(searched(cutting((96,), {48: 2}, 1)).plan) == (192, 2)
