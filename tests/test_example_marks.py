"""Marks on the boards of worked examples: numbered along the board, and named by their numbers."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from worked_books import book_of, examples_of

ZERO = r'(?:from|Off at) mark (\d+)'
PLATE = r'Check mark (\d+)|to mark (\d+), body|end at mark (\d+)'
"""How the mark from which all is measured, and that over the plates, are named in words."""


@pytest.mark.parametrize('name', ['small_book', 'skewed'])
def test_marks_are_numbered_from_the_ridge_and_named_by_their_numbers(name, request):
    pages = examples_of(book_of(name, request))
    for title, page in pages.items():
        if not page.marks:
            continue
        along = sorted(page.marks, key=lambda words: inches_of(page.marks[words]))
        assert [page.numbers[words] for words in along] == list(range(1, len(along) + 1)), title
        (zero,) = [page.numbers[words] for words in page.marks if page.marks[words] == '0']
        (plate,) = [
            page.numbers[words] for words in page.marks if re.match('plate line|(inside )?corner of', words)
        ]
        about = [one for other, one in pages.items() if other.partition(':')[0] == title.partition(':')[0]]
        words = ' '.join(f'{one.small} {" ".join(step.words for step in one.steps)}' for one in about)
        assert set(re.findall(ZERO, words)) == {str(zero)}, title
        assert {number for found in re.findall(PLATE, words) for number in found if number} <= {str(plate)}, (
            title
        )


def inches_of(written: str) -> Fraction:
    """Return a distance as it is printed, in inches: '−1 1/4', '74 15/16'."""
    sign = -1 if written.startswith('−') else 1
    return sign * sum(map(Fraction, written.removeprefix('−').split()))
