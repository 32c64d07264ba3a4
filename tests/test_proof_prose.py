"""The pages of prose as the proof-reader reads them: every sentence of their templates stands whole, every number is worked out."""

from __future__ import annotations

import random
from functools import cache

import pytest
from planted_errors import change_digit_of, forget, put

from layouts.html.page_html import environment
from layouts.html.said_by import said_by
from layouts.pdf.prose import PROSE, all_names
from layouts.pdf.read_back import pages_of
from tablegen.proof.page import Page
from tablegen.proof.proof import proof

KINDS = [kind for kind in PROSE if kind not in ('rounded', 'closing')]
names = cache(all_names)


@pytest.fixture(scope='module')
def read(small_book):
    """These pages of a complete edition; of all others no words."""
    pages, index = pages_of(small_book.built.booklet), small_book.planned.index
    kept = {*map(index.__getitem__, KINDS), *(len(pages) - n for n in (0, 1)), *ends(small_book)}
    return [page if page.number in kept else Page(page.number, []) for page in pages]


def ends(book) -> list[int]:
    """Return the last page of every section."""
    return [n for n, draft in enumerate(book.planned.drafts, 1) if draft.template == 'closing']


@pytest.mark.parametrize('kind', PROSE)
def test_the_sentences_of_a_template_are_those_of_the_catalogue(kind):
    made = environment()
    assert made.loader
    for template in PROSE[kind]:
        source = made.loader.get_source(made, template)[0]
        told = [words for _line, _function, words in made.extract_translations(source)]
        own = [' '.join((words if isinstance(words, str) else words[0]).split()) for words in told]
        assert [words for words, _always in said_by(template) if words in own] == own


def test_they_are_read_and_nothing_differs(read, small_book):
    found, index = proof(read, names), small_book.planned.index
    assert [fault for fault in found.faults if fault.kind not in ('opening', 'missing', 'link')] == []
    assert {index[kind] for kind in KINDS} | set(ends(small_book)) <= found.read


def words_of(pages: list[Page], number: int) -> tuple[Page, list]:
    page = pages[number - 1]
    bullets = [word for line in page.lines[1:] for word in line if not word.bold]
    return page, [word for word in bullets if len(word.text) > 2 and '"' not in word.text]


@pytest.mark.parametrize('kind', KINDS)
def test_a_word_left_out_or_a_digit_changed_is_found(read, small_book, kind):
    number, chosen = small_book.planned.index[kind], random.Random(3)
    for what in ('word', 'digit'):
        copy = [Page(page.number, list(page.words), page.links) for page in read]
        page, words = words_of(copy, number)
        if what == 'word':
            plain = [
                word
                for word in words
                if word.text
                in (
                    'level',
                    'level,',
                    'plumb',
                    'depth.',
                    'exactly,',
                    'plate',
                    'strength.',
                    'lines;',
                    'numbers',
                    'hips',
                )
            ]
            gone = chosen.choice(plain)
            page.words[:] = [word for word in page.words if word is not gone]
            forget(page)
        else:
            digits = [word for word in words if any(map(str.isdigit, word.text))]
            if not digits or kind == 'made':  # what it counts is changed below
                continue
            change_digit_of(page, chosen.choice(digits), chosen)
        assert number in {fault.page for fault in proof(copy, names).faults}


def test_a_wrong_count_of_pages_or_sections_is_found(read, small_book):
    number = small_book.planned.index['made']
    for old in (str(len(read)), str(len(ends(small_book)))):
        copy = [Page(page.number, list(page.words), page.links) for page in read]
        page = copy[number - 1]
        line = next(line for line in page.lines if any(word.text.startswith('section') for word in line))
        put(page, {next(word for word in line if word.text == old): str(int(old) + 1)})
        assert [
            (fault.page, fault.printed, fault.right)
            for fault in proof(copy, names).faults
            if fault.kind == 'figure'
        ] == [(number, str(int(old) + 1), old)]


@pytest.mark.parametrize(('pitch', 'found'), {'1 in 12': 1, '2 in 12': 1, '3 in 12': 0}.items())
def test_a_caution_that_is_cut_short_on_an_opening_is_found(openings, pitch, found):
    pages, index = pages_of(openings.built.booklet), openings.planned.index
    number = index[f'opening:{pitch}'] + 1
    copy = [
        Page(page.number, list(page.words) if page.number in (number - 1, number, index['made']) else [])
        for page in pages
    ]
    page = copy[number - 1]
    page.words[:] = [word for word in page.words if word.text != 'beams,']
    forget(page)
    told = [fault.row for fault in proof(copy, names).faults if (fault.page, fault.kind) == (number, 'words')]
    assert [row for row in told if 'designed as beams' in row] == told
    assert len(told) == found


COVERED = {
    'the part': (1, '1/16', '1/32'),
    'the steepest pitch': (1, '12', '14'),
    'the longest run': (1, '24', '22'),
    'the last page of a section': (2, None, '9'),
    'the number of a section': (2, '2', '3'),
}
"""Which cover, a word of it (None: the last number), and what is put there."""


@pytest.mark.parametrize('what', COVERED)
def test_an_error_planted_on_a_cover_is_found(small_book, what):
    which, old, new = COVERED[what]
    pages, sections = pages_of(small_book.built.booklet), small_book.planned.index.sections
    number = sections[which - 1][0]
    copy = [Page(page.number, list(page.words), page.links) for page in pages]
    told = [word for word in copy[number - 1].words if word.size < 12]
    last = [word for word in told if word.text.rstrip('.,').isdigit()][
        -2 if old is None and which > 1 else -1
    ]
    word = next((word for word in told if word.text.strip('.,') == old), last)
    put(copy[number - 1], {word: word.text.replace(word.text.strip('.,'), new)})
    found = [
        [fault for fault in proof(some, names).faults if fault.page == number and fault.kind == 'figure']
        for some in (pages, copy)
    ]
    assert found[0] == []
    assert len(found[1]) == 1
