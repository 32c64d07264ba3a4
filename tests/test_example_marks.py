"""Marks on the boards of worked examples: numbered along the board, and named by their numbers."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from oracle.rounding import part
from worked_books import book_of, examples_of

ZERO = r'(?:from|Off at) mark (\d+)'
PLATE = r'Check mark (\d+)|to mark (\d+), body|end at mark (\d+)'
"""How the mark from which all is measured, and that over the plates, are named in words."""


BOOKS = pytest.mark.parametrize('name', ['small_book', 'skewed', 'openings'])
UPPER_END = 'purlin center line'
"""Of a lower rafter what its marks are measured from; of an upper one what stands past its last cut."""
LENGTH = r'(?:Cut to cut|Overall, [^,]*?,) ([\d/ ]+?) in[;,]'


@BOOKS
def test_marks_are_numbered_from_the_ridge_and_named_by_their_numbers(name, request):
    pages = examples_of(book_of(name, request))
    for title, page in pages.items():
        if not page.marks:
            continue
        along = sorted(page.marks, key=lambda words: inches_of(page.marks[words]))
        assert [page.numbers[words] for words in along] == list(range(1, len(along) + 1)), title
        (zero,) = [page.numbers[words] for words in page.marks if page.marks[words] == '0']
        (plate,) = [
            page.numbers[words]
            for words in page.marks
            if re.match('plate line|(inside )?corner of', words)
            or (words == UPPER_END and page.marks[words] != '0')
        ]
        about = [
            one
            for other, one in pages.items()
            if other == title
            or (other.partition(':')[0] == title.partition(':')[0] and 'of' not in title.split())
        ]
        words = ' '.join(f'{one.small} {" ".join(step.words for step in one.steps)}' for one in about)
        assert set(re.findall(ZERO, words)) == {str(zero)}, title
        assert {number for found in re.findall(PLATE, words) for number in found if number} <= {str(plate)}, (
            title
        )


@BOOKS
def test_a_length_that_its_marks_do_not_make_is_told(name, request):
    """Each mark is rounded by itself: what lies between two of them may be a part off the length rounded once."""
    seen = 0
    for title, page in examples_of(book_of(name, request)).items():
        found = re.search(LENGTH, page.small) if page.marks else None
        if not found:
            continue
        cut = sorted(
            (inches_of(at), page.numbers[words])
            for words, at in page.marks.items()
            if at != '0' and words != UPPER_END
        )
        apart, seen = cut[-1][0] - cut[0][0], seen + 1
        said = f'Mark {cut[-1][1]} less mark {cut[0][1]} is {part(apart)}' in page.small
        assert said == (apart != inches_of(found[1])), title
    assert seen >= 3


def inches_of(written: str) -> Fraction:
    """Return a distance as it is printed, in inches: '−1 1/4', '74 15/16'."""
    sign = -1 if written.startswith('−') else 1
    return sign * sum(map(Fraction, written.removeprefix('−').split()))
