"""Figures in drawings as the proof-reader reads them: the square of an opening, one rafter, the ends of a ridge, a jack unfolded."""

from __future__ import annotations

from functools import cache

import pytest
from msgspec.structs import replace

from layouts.pdf.prose import all_names
from layouts.pdf.read_back import pages_of
from tablegen.proof.page import Page
from tablegen.proof.proof import proof
from tablegen.proof.word import Word

names = cache(all_names)
BOARDS = ('example_store_board', 'example_hip_board')
DRAWN = {
    'the square of a common': ('opening:6 in 12', 0, '12', 8.5),
    'the square of a hip': ('opening:16 in 12', 1, '17', 8.5),
    'a rafter’s line length': ('one-rafter', 0, '15/16', 8.5),
    'what comes off it': ('one-rafter', 0, '3/4', 8.0),
    'its square': ('one-rafter', 0, '12', 9.0),
    'its tail': ('seat-cut-try', 0, '8', 8.5),
    'its seat': ('seat-cut-try', 0, '1/2', 8.0),
    'a ridge past its end': ('words-corner', 0, '13/16', 7.5),
    'a jack’s cheek': ('arms', 0, '48.19°', 9.0),
    'a board’s seat': ('example_store_board', 0, '1/2', 8.0),
    'its plate line': ('example_store_board', 0, '15/16', 8.0),
    'a hip’s tail': ('example_hip_board', 0, '112', 8.0),
    'a number of a mark': ('example_hip_board', 0, '5', 7.5),
}
"""A page, a figure in its drawing, and the size of its type, points."""


@pytest.fixture(scope='module')
def read(openings, small_book):
    """The pages that are looked at, by their keys: openings of a compact edition, the others of a complete one."""
    found = {}
    of_whole = ('one-rafter', 'seat-cut-try', 'words-corner', 'arms', *BOARDS)
    for book, keys in ((openings, ('opening:6 in 12', 'opening:16 in 12')), (small_book, of_whole)):
        pages, index = pages_of(book.built.booklet), dict(book.planned.index.pages)
        index |= {
            draft.template: n for n, draft in enumerate(book.planned.drafts, 1) if draft.template in BOARDS
        }
        kept = {index[key] + apart for key in keys for apart in (-1, 0, 1)} | {index['made'], len(pages)}
        pages = [page if page.number in kept else Page(page.number, []) for page in pages]
        found |= {key: (pages, index[key]) for key in keys}
    return found


def put(words: list[Word], figure: str, size: float) -> list[Word]:
    """Return words with another figure in place of one, which may be a word a letter."""
    for n in range(len(words)):
        some = words[n : n + len(figure)]
        count = next(
            (m for m in range(1, len(some) + 1) if ''.join(word.text for word in some[:m]) == figure), 0
        )
        if count and abs(words[n].size - size) < 0.1:
            at = next(m for m in reversed(range(n, n + count)) if any(map(str.isdigit, words[m].text)))
            old = words[at].text
            place = next(m for m in reversed(range(len(old))) if old[m].isdigit())
            other = f'{old[:place]}{(int(old[place]) + 3) % 10}{old[place + 1 :]}'
            return [*words[:at], replace(words[at], text=other), *words[at + 1 :]]
    return words


@pytest.mark.parametrize('what', DRAWN)
def test_a_digit_changed_in_a_drawing_is_found(read, what):
    key, side, figure, size = DRAWN[what]
    pages, number = read[key]
    page = pages[number + side - 1]
    drawn = put(page.draw(), figure, size)
    words = page.words if drawn != page.draw() else put(page.words, figure, size)
    assert (words, drawn) != (page.words, page.draw())
    changed = Page(page.number, words, page.links, page.see, lambda: drawn)
    faults = [
        [
            fault
            for fault in proof(some, names).faults
            if fault.page == page.number and fault.kind in ('figure', 'gap')
        ]
        for some in (pages, [changed if one is page else one for one in pages])
    ]
    assert faults[0] == []
    assert len(faults[1]) == 1
