"""The pages before the pitches that say figures in sentences and rows, as the proof-reader reads them."""

from __future__ import annotations

import random

import pytest
from planted_errors import change_digit_of, forget, put, with_planted
from test_proof_examples import said_by

from layouts.pdf.read_back import pages_of
from layouts.words import proof_pages
from layouts.words.pages import heading
from layouts.words.proof import names
from tablegen.proof.page import Page
from tablegen.proof.proof import proof

KINDS = ('reading', 'one-rafter', 'seat-cut-try', 'existing', 'arms', 'square', 'stepping')


@pytest.fixture(scope='module')
def read(small_book):
    """These pages of a complete edition, all of the pitch that they cite, and its settings; of all others no words."""
    pages, index = pages_of(small_book.built.booklet), small_book.planned.index
    cited = index['values:6 in 12']
    kept = {index[kind] for kind in KINDS} | {index['made'], *range(cited, cited + 10)}
    return [page if page.number in kept else Page(page.number, []) for page in pages]


def test_their_sentences_are_those_of_the_templates():
    known = {
        words
        for told in (
            proof_pages.EXISTING,
            proof_pages.ARMS,
            proof_pages.STEPPING,
            proof_pages.READING,
            proof_pages.TRUE_SQUARE,
        )
        for words in told
    }
    known |= {
        proof_pages.PAST,
        proof_pages.EXACTLY,
        proof_pages.BETWEEN,
        proof_pages.BETWEEN_HEAD,
        *proof_pages.FOOT,
    }
    known |= {*proof_pages.GAPS, *proof_pages.DIAGONALS, *proof_pages.MARKS, *proof_pages.OF_ARMS}
    assert known <= said_by(('existing_pitch', 'arms', 'step_off', 'true_square', 'how_to', 'exact'))


def test_they_are_read_and_nothing_differs(read, small_book):
    found = proof(read, names)
    assert [fault for fault in found.faults if fault.kind not in ('opening', 'missing')] == []
    assert {small_book.planned.index[kind] for kind in KINDS} <= found.read


def planted(kind: str, what: str, chosen: random.Random):
    """Plant a digit, a word in another's place, or a row or sentence that is missing."""

    def plant(pages: list[Page]) -> int:
        page = next(page for page in pages if page.phrases and page.phrases[0].text == heading(kind))
        lines = [
            line for line in page.lines[1:] if line[0].left < page.lines[0][0].left + 15 or kind == 'square'
        ]
        told = [word for line in lines for word in line if len(word.text) > 1 and '°' not in word.text]
        if what == 'digit':
            of_digits = [
                word
                for word in told
                if any(map(str.isdigit, word.text)) and '/' not in word.text and word.text not in ('10', '11')
            ]
            change_digit_of(page, chosen.choice(of_digits), chosen)
        elif what == 'word':
            change = {
                'plumb': 'level',
                'level:': 'plumb:',
                'tongue': 'heel',
                'step': 'mark',
                'measure': 'miss',
                'must': 'may',
                'nearest': 'next',
                'ridge': 'plate',
            }
            word = chosen.choice([word for word in told if word.text in change])
            put(page, {word: change[word.text]})
        else:
            rows = [line for line in lines if line[0].bold and any(map(str.isdigit, line[-1].text))][1:]
            told_by_arms = [line for line in lines if line[0].text in ('common,', 'hip,', 'jack’s')]
            gone = chosen.choice(told_by_arms or rows or lines[-4:])
            page.words[:] = [word for word in page.words if word not in gone]
            forget(page)
        return page.number

    return plant


@pytest.mark.parametrize('what', ['digit', 'word', 'row'])
@pytest.mark.parametrize('kind', KINDS)
def test_an_error_planted_there_is_found(read, kind, what):
    found, page = with_planted(read, planted(kind, what, random.Random(5)))
    assert page in {fault.page for fault in found.faults}
