"""Fold: sheets are printed, turned, cut, stacked and folded here as a person would do it, then read."""

from __future__ import annotations

import pytest
from folded import LEFT, read_folded

from layouts.sheets.fold import PAPERS_MM, SheetLayout, half_sheet, sheet_sides

PAGE_COUNTS = range(4, 101, 4)
SECTIONS = [[(0, 4), (4, 8)], [(0, 76), (76, 80), (156, 64)], [(0, 12), (12, 12), (24, 4), (28, 20)]]


@pytest.mark.parametrize('up', [2, 4])
@pytest.mark.parametrize('pages', PAGE_COUNTS)
def test_a_folded_section_reads_in_order(pages, up):
    assert [list(range(pages))] == read_folded(sheet_sides([(0, pages)], up), up)


@pytest.mark.parametrize('up', [2, 4])
@pytest.mark.parametrize('sections', SECTIONS)
def test_every_section_reads_in_order(sections, up):
    expected = [list(range(first, first + pages)) for first, pages in sections]
    assert expected == read_folded(sheet_sides(sections, up), up)


@pytest.mark.parametrize('pages', PAGE_COUNTS)
def test_no_sheet_is_wasted(pages):
    """Four pages a half-sheet, eight a whole one: the last may be half empty, never quite."""
    assert -(-pages // 8) * 2 == len(sheet_sides([(0, pages)], 4))
    assert pages // 4 * 2 == len(sheet_sides([(0, pages)], 2))


def test_facing_pages_on_a_front_add_up_to_one_more_than_the_section():
    """Outside and inside of any half-sheet: common practice, no source."""
    sums = {sum(face) for nest in range(5) for face in half_sheet(nest, 20)}
    assert {21} == sums


def test_a_cover_is_the_first_front():
    assert half_sheet(0, 8) == ((8, 1), (2, 7))


@pytest.mark.parametrize('pages', PAGE_COUNTS)
def test_only_the_last_sheet_of_an_odd_section_says_that_its_lower_half_is_blank(pages):
    sides = sheet_sides([(0, pages)], 4)
    odd = pages % 8 == 4
    assert [False] * (len(sides) - 2) + [odd, odd] == [side.lower_blank for side in sides]
    assert [2 if side.lower_blank else 4 for side in sides] == [len(side.panels) for side in sides]


def test_a_sheet_of_one_row_has_no_lower_half_to_be_blank():
    assert not any(side.lower_blank for side in sheet_sides([(0, 4)], 2))


@pytest.mark.parametrize('up', [2, 4])
def test_creep_grows_inwards_and_points_to_the_spine(up):
    """A page is nested by as many half-sheets as there are pairs of pages before it, or after it, if fewer."""
    for side in sheet_sides([(0, 44)], up):
        for panel in side.panels:
            depth = min(panel.page, 43 - panel.page) // 2
            towards_spine = 1 if panel.column == LEFT else -1
            assert panel.shift_mm == pytest.approx(0.1 * depth * towards_spine)


@pytest.mark.parametrize(
    ('sections', 'message'),
    [
        ([(0, 6)], 'section 1 is 6 pages from place 0: it must be a multiple of 4 from place 0'),
        ([(0, 0)], 'section 1 is 0 pages'),
        ([(1, 8)], 'section 1 is 8 pages from place 1: it must be a multiple of 4 from place 0'),
        ([(0, 8), (12, 4)], 'section 2 is 4 pages from place 12: it must be a multiple of 4 from place 8'),
        ([(0, 8), (4, 8)], 'section 2 is 8 pages from place 4'),
    ],
)
def test_sections_that_do_not_fold_are_refused(sections, message):
    with pytest.raises(ValueError, match=message):
        sheet_sides(sections, 4)


def test_papers_have_their_standard_sizes():
    """A4 by ISO 216; US Letter is 8 1/2 by 11 inches of 25.4 mm."""
    assert {'a4': (210, 297), 'letter': pytest.approx((8.5 * 25.4, 11 * 25.4))} == PAPERS_MM


@pytest.mark.parametrize(
    ('paper', 'width', 'height', 'up', 'margins'),
    [
        ('letter', 100, 133, 4, (7.95, 6.7)),
        ('a4', 100, 133, 4, (5.0, 15.5)),
        ('letter', 139.7, 215.9, 2, (0, 0)),
        ('a4', 148.5, 210, 2, (0, 0)),
    ],
)
def test_the_block_lies_in_the_middle_of_the_paper(paper, width, height, up, margins):
    assert SheetLayout(paper, width, height, up).margins_mm == pytest.approx(margins)


@pytest.mark.parametrize(
    ('paper', 'width', 'height', 'up', 'message'),
    [
        ('legal', 100, 133, 4, "no such sheet: 4 pages on 'legal'"),
        ('a4', 100, 133, 3, "no such sheet: 3 pages on 'a4'"),
        ('a4', 106, 133, 4, '4 pages of 106 × 133 mm are more than a side of a4 holds'),
        ('letter', 139.7, 216.2, 2, 'more than a side of letter holds'),
    ],
)
def test_a_layout_that_cannot_be_is_refused(paper, width, height, up, message):
    with pytest.raises(ValueError, match=message):
        SheetLayout(paper, width, height, up)
