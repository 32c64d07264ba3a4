"""What to buy: pieces with their marks on boards, joined ones, refusals, board feet and sheathing, each figure by hand."""

from __future__ import annotations

import sys
import tomllib
from collections import Counter
from fractions import Fraction
from itertools import accumulate
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layouts.told.objects import as_data
from layouts.words.error import error_lines
from tablegen.errors import BookError
from tablegen.frame.buying import Buying, Piece, Shop, buying, sheathing_for
from tablegen.frame.lumber import THICKNESSES, WIDTHS, board_feet, sold_as
from tablegen.frame.splicing import spliced
from tablegen.numbers.exact import exact, root
from tablegen.numbers.figure import Measure
from tablegen.written.numbers import number
from tablegen.written.stocks import stock

FOOT = Fraction(12)
LENGTHS = tuple(FOOT * feet for feet in (8, 10, 12, 14, 16, 18, 20, 24))
SHOP = Shop(LENGTHS, Fraction(1, 8))
EIGHT, TEN = stock('2×8'), stock('2×10')
LUMBER = Path(__file__).parents[1] / 'authorities/ps20-lumber.toml'


def pieces_of(found: Buying) -> Counter:
    """Return how many pieces of each mark and part are on the boards."""
    return Counter(
        (sawn.mark, sawn.part) for size in found.sizes for board in size.boards for sawn in board.cut
    )


def test_eight_rafters_and_two_jacks_are_cut_from_five_boards():
    """95 + 95 + 1/8 = 190 1/8 in go on 16 ft, 192 in; the two of 36 in on 8 ft. Of all lengths 70 ft do: twice 24 for three, 8 for one, 14 for 95 + 36 + 36."""
    rafters, jacks = Piece('C', EIGHT, 95 * root(1), 8), Piece('J1', EIGHT, 36 * FOOT / 12, 2)

    (size,) = buying([rafters, jacks], Shop((8 * FOOT, 16 * FOOT), Fraction(1, 8))).sizes
    (longer,) = buying([rafters, jacks], SHOP).sizes

    assert (longer.together, len(longer.boards)) == (70 * FOOT, 4)
    assert [(one.number, one.length) for one in size.buy] == [(4, 16 * FOOT), (1, 8 * FOOT)]
    assert [[sawn.mark for sawn in board.cut] for board in size.boards] == [['C', 'C']] * 4 + [['J1', 'J1']]
    assert [board.offcut.text for board in size.boards] == ['1 3/4'] * 4 + ['23 3/4']
    assert (size.together, size.least, size.proven) == (72 * FOOT, 72 * FOOT, True)
    assert size.waste.text == '0.037'  # 1 − (8 · 95 + 2 · 36) / 864
    assert size.board_feet.text == '96.0'  # 2 × 8 in × 72 ft / 12


def test_a_piece_is_taken_to_the_part_above_it():
    """96 in and a hair more is no longer cut from 8 ft."""
    (size,) = buying([Piece('C', EIGHT, 96 * root(Fraction(10001, 10000)))], SHOP).sizes

    assert [board.length for board in size.boards] == [10 * FOOT]
    assert size.boards[0].cut[0].length.text == '96 1/16'


def test_sizes_are_bought_apart_and_board_feet_added():
    found = buying([Piece('C', EIGHT, exact(100), 2), Piece('H', TEN, exact(200))], SHOP)

    assert [(size.stock, size.board_feet.text) for size in found.sizes] == [('2×8', '24.0'), ('2×10', '30.0')]
    assert found.board_feet.text == '54.0'


def test_a_piece_longer_than_every_board_is_refused_with_the_length_that_would_do():
    pieces = [Piece('H', TEN, exact(24 * FOOT + Fraction(1, 100))), Piece('V', TEN, exact(30 * FOOT))]
    said = 'buy.lengths: H needs 24 ft 1/16 in of 2×10, and the longest board is 24 ft; next: a board of 26 ft would do'

    with pytest.raises(BookError) as caught:
        buying(pieces, SHOP)
    lines = error_lines(caught.value)
    assert lines[0] == f'{said}: add it to the lengths'
    assert len(lines) == 2


def test_a_ridge_longer_than_every_board_is_made_of_several():
    """25 ft: 12 ft, a whole board, and 13 ft of a 14; not 24 ft and a stub."""
    (size,) = buying([Piece('R', TEN, exact(25 * FOOT), may_be_joined=True)], SHOP).sizes

    cut = {(sawn.part, sawn.parts): sawn.length.text for board in size.boards for sawn in board.cut}
    assert cut == {(1, 2): '144', (2, 2): '156'}
    assert size.together == 26 * FOOT


@given(
    st.integers(1, 5000),
    st.sets(st.integers(20, 300), min_size=1, max_size=5).map(sorted),
)
def test_parts_make_the_piece_and_are_as_few_as_can_be(length, boards):
    parts = spliced(length, boards)

    assert sum(parts) == length
    assert len(parts) == -(-length // boards[-1])
    assert all(0 < part <= boards[-1] for part in parts)
    assert all(part in boards for part in parts[:-1])


@given(
    st.integers(100, 1000),
    st.sets(st.integers(1, 999), min_size=40),
    st.sets(st.integers(60, 300), min_size=1, max_size=5).map(sorted),
)
def test_parts_meet_at_joints_where_boards_reach_from_one_to_the_next(length, joints, boards):
    parts, places = (
        spliced(length, boards, sorted(joints)),
        sorted({0, length} | {one for one in joints if one < length}),
    )
    reached, steps = {0}, 0
    while length not in reached and steps < len(places):  # by the fewest boards, one after another
        reached |= {b for a in reached for b in places if 0 < b - a <= boards[-1]}
        steps += 1

    assert sum(parts) == length
    if length in reached and length > boards[-1]:
        assert set(accumulate(parts)) <= set(places)
        assert len(parts) == steps


@given(
    st.lists(
        st.builds(
            Piece,
            st.sampled_from(['A', 'B', 'C', 'D']),
            st.sampled_from([EIGHT, TEN]),
            st.fractions(1, 288, max_denominator=100),
            st.integers(1, 6),
        ),
        min_size=1,
        max_size=8,
    ),
    st.sampled_from([Fraction(0), Fraction(1, 8), Fraction(16, 127)]),
    st.sampled_from([2, 16, 64]),
)
def test_every_piece_is_on_one_board_which_holds_it_with_its_kerfs(pieces, kerf, per):
    found = buying(pieces, Shop(LENGTHS, kerf, Measure(per)))

    wanted = Counter()
    for piece in pieces:
        wanted[piece.mark, None] += piece.number
    assert pieces_of(found) == wanted
    for size in found.sizes:
        for board in size.boards:
            used = sum(Fraction(sawn.length.count, sawn.length.per) for sawn in board.cut)
            with_kerfs = used + kerf * (len(board.cut) - 1)
            assert with_kerfs <= board.length
            assert Fraction(board.offcut.count, board.offcut.per) <= board.length - with_kerfs
        assert size.least <= size.together == sum(one.number * one.length for one in size.buy)


def test_without_the_solver_the_longest_is_cut_first_and_the_bound_is_told(monkeypatch):
    """Boards of 10 for 6, 5, 5, 4: first fit finds 6 + 4 and 5 + 5. For 5, 4, 4, 3, 2, 2 it takes three boards, the least is two."""
    shop = Shop((Fraction(10),), Fraction(0))
    pieces = [Piece(str(inches), EIGHT, exact(inches)) for inches in (5, 4, 4, 3, 2, 2)]
    (with_it,) = buying(pieces, shop).sizes
    monkeypatch.setitem(sys.modules, 'tablegen.frame.cutting_search', None)
    (without,) = buying(pieces, shop).sizes

    assert (without.together, without.least, without.proven, without.searched) == (30, 20, False, False)
    assert (with_it.together, with_it.least, with_it.proven, with_it.searched) == (20, 20, True, True)


def test_nominal_sizes_are_the_standard_s():
    rows = tomllib.loads(LUMBER.read_text('utf-8'), parse_float=Fraction)['value']

    def standard(*names: str) -> dict[Fraction, Fraction]:
        """Return nominal sizes by dressed dry ones."""
        found = [row for row in rows if row['quantity'] in [f'{name}, dressed dry (green)' for name in names]]
        return {number(row['printed'].split(' (')[0]): number(row['given']['nominal_in']) for row in found}

    assert standard('board thickness', 'dimension thickness') == THICKNESSES
    assert standard('width') == WIDTHS


@pytest.mark.parametrize(
    ('thick', 'deep', 'name', 'feet'),
    [('3/4', '7 1/4', '1×8', '8'), ('1 1/2', '9 1/4', '2×10', '20'), ('1 1/2', '10', '1 1/2″×10″', None)],
)
def test_a_dressed_size_is_sold_under_its_nominal_name(thick, deep, name, feet):
    """Board feet of 12 ft: 1 × 8 in × 12 ft / 12 and 2 × 10 in × 12 ft / 12."""
    found = sold_as(number(thick), number(deep))

    assert found.name == name
    assert board_feet(found, 12 * FOOT) == (feet and number(feet))


def test_sheathing_is_told_with_its_allowance_and_in_sheets():
    """24 by 36 ft at 12 in 12: 864 √2 = 1221.88 square feet, a tenth more 1344.07: 42.002 sheets, so 43."""
    told = as_data(sheathing_for(864 * 144 * root(2), Fraction(1, 10)))
    told.pop('from')

    assert told == {
        'square_feet': '1221.880517890',
        'allowance': '0.100000000',
        'with_allowance': '1344.068569679',
        'sheets': 43,
    }
