"""A language whose every word is 35 % longer: all pages bear it, no English is left on them, and their figures stay."""

from __future__ import annotations

import json
import re
from collections import Counter
from functools import cache
from io import StringIO
from pathlib import Path

import pseudo
import pytest
from made_books import made, misplaced, set_alone
from printed_words import told

from layouts.command import main
from layouts.html.page_html import pages_html, style
from layouts.pages.book import Plan, plan
from layouts.paper.longer import CUTS, SIZES, fitted, size_for
from layouts.paper.typeface import advance_em
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from layouts.sheets.counted import sheet_count
from layouts.sheets.fold import POINTS_PER_MM, sheet_sides
from layouts.sheets.marks import LEAST_LABEL_PT, sheet_label
from layouts.words import say
from tablegen.settings import BOOK_PARTS, read_settings

BOOK = f"""
title = "7"
pitches = [2, 18]
runs = {{to = "4 ft"}}
parts = {json.dumps(BOOK_PARTS)}
"""
LARGE = f"""
title = "7"
language = "{pseudo.NAME}"
paper = "a4"
trim = "large"
lengths = "feet-inches"
pitches = ["22.5 deg", "7 1/2", 24]
runs = {{from = "100 mm", to = "3 m", by = "250 mm"}}
parts = ["how-to", "words", "square", "glance", "values", "jacks", "common", "hip-valley", "set-out", "ridge", "hips"]
"""
PLACED = {'in', 'ft', 'deg', 'mm', 'rafterbook', 'make', 'Letter', 'complete', 'compact'}
"""Units, which stand with their numbers, and what is typed as it is."""
NUMBER = re.compile(r'\d+(?:[./]\d+)*')


@pytest.fixture(scope='module')
def english() -> Plan:
    return plan(read_settings(BOOK, ''))


@pytest.fixture(scope='module')
def longer(tmp_path_factory):
    with pseudo.spoken(tmp_path_factory.mktemp('catalogues')):
        yield made(BOOK + f'language = "{pseudo.NAME}"', tmp_path_factory.mktemp('longer'))


def english_in(text: str) -> list[str]:
    """Return the words of a text that have none of the language's letters: each of its words has one."""
    words = {
        word
        for word in re.findall(r'[^\W\d_]{2,}', text)
        if word.isascii() and re.search('[AEIOUYaeiouy]', word)
    }
    return sorted(words - PLACED)


@cache
def page_texts(pdf: Path) -> list[str]:
    return told('pdftotext', '-layout', pdf, '-').split('\f')[:-1]


def test_the_language_is_made_by_rule():
    assert pseudo.longer('hip') == 'hípéá'
    assert pseudo.longer('RIDGE') == 'RĮDGĘÉÁ'
    assert pseudo.longer('%(n)s <b>sheets</b> of {size}') == '%(n)s <b>shéétséáó</b> óféá {size}'
    said = [
        one for message in pseudo.messages() for one in ([message] if isinstance(message, str) else message)
    ]
    plain = [pseudo.KEPT.sub('', one) for one in said]
    assert sum(map(len, map(pseudo.longer, plain))) > 1.35 * sum(map(len, plain))


def test_every_page_stands_where_its_english_does(english, longer):
    assert [page.template for page in longer.pages] == [draft.template for draft in english.drafts]
    assert longer.built.sheets_of_paper == sheet_count(english)


def test_no_word_lies_on_another_or_off_its_page(longer):
    trim = longer.planned.trim
    pages = zip(longer.pages, longer.words, strict=True)
    found = [line for page, words in pages for line in misplaced(page, words, trim)]
    assert found == []


def test_no_english_is_left(longer):
    pages = zip(longer.pages, page_texts(longer.built.booklet), strict=True)
    left = {page.template: english_in(text) for page, text in pages if page.template != 'made'}
    assert {template: words for template, words in left.items() if words} == {}


def test_the_settings_alone_are_left_in_english(longer):
    (text,) = [
        text
        for page, text in zip(longer.pages, page_texts(longer.built.booklet), strict=True)
        if page.template == 'made'
    ]
    assert not {'By', 'settings', 'lines', 'figures', 'sections'} & set(english_in(text))


def test_numbers_are_the_same(english, longer, tmp_path):
    """On all pages but those for notes; of the tables of runs on the first, for all have the same few words, and on every third of the others."""
    templates = [draft.template for draft in english.drafts]
    places = [
        n
        for n, one in enumerate(templates)
        if one != 'notes'
        and (one != 'grid' or templates.index(one) == n)
        and (one != 'ref_table' or n % 3 == 0)
    ]
    pages, texts, out = english.pages(), page_texts(longer.built.booklet), tmp_path / 'english.pdf'
    with say.speaking(say.SOURCE):
        html = pages_html([pages[place] for place in places], '7')
        set_document(Job(html, style(english.trim), len(places), out))

    for place, theirs in zip(places, page_texts(out), strict=True):
        assert Counter(NUMBER.findall(texts[place])) == Counter(NUMBER.findall(theirs)), templates[place]


def test_sheets_have_no_english(longer):
    assert english_in(told('pdftotext', '-l', '1', longer.built.sheets, '-')) == []
    sides = sheet_sides([(0, 12), (12, 12)], 4)
    assert english_in(' '.join(map(sheet_label, sides))) == []


def test_cards_have_no_english(longer):
    assert english_in(told('pdftotext', longer.built.card.path, '-')) == []


@pytest.mark.parametrize(
    'words',
    [
        ['find', '8', '10 ft', '--all'],
        ['find', '8', '10 ft', '--with', '12', '--all'],
        ['find', '6', '8 ft', '--sides', '8', '--all'],
        ['find', '4', '9 ft', '--shed', 'ledger', '--all'],
        ['find', '8', '10 ft', '--seat', '99'],
        ['pitch', '--rise', '5 ft', '--run', '10 ft'],
        ['diagonal', '24 ft', '36 ft'],
        ['brace', '30', '40'],
        ['check', 'length', '--pitch', '6', '--run', '1 ft', '--reads', '13 3/8', '--total-run', '12 ft'],
        ['check', 'square', '--pitches', '2 to 18'],
        ['check', 'steps', '--pitch', '6', '--run', '13 ft 5 in', '--step', '13.42'],
        ['check', 'corner', '--along', '6 ft', '8 ft', '--diagonal', '10 ft'],
        ['check', 'turn-over', '--gap', '1/64', '--over', '16 in', '--within', '1/32'],
        ['make', '--plan'],
    ],
    ids=lambda words: ' '.join(words[:2]),
)
def test_a_terminal_is_answered_in_the_language(words, tmp_path, monkeypatch):
    monkeypatch.setenv(say.LANGUAGE, pseudo.NAME)
    out, err = StringIO(), StringIO()
    with pseudo.spoken(tmp_path):
        main(words, out, err)

    answer = re.sub(r'--\w+|rafterbook \w+', '', out.getvalue() + err.getvalue())
    assert re.search('[éáóíú]', answer)
    assert english_in(answer) == []


@pytest.mark.thorough
def test_large_print_in_feet_and_inches_bears_them_too(tmp_path):
    with pseudo.spoken(tmp_path):
        book = set_alone(LARGE, tmp_path)
        pages = zip(book.pages, book.words, strict=True)
        assert [line for page, words in pages for line in misplaced(page, words, book.planned.trim)] == []
        texts = zip(book.pages, page_texts(book.built.booklet), strict=True)
        assert {word for page, text in texts if page.template != 'made' for word in english_in(text)} == set()


def test_no_word_is_smaller_than_the_least_label(longer):
    """A label in a sheet's margin is left out rather than set smaller than that."""
    least = LEAST_LABEL_PT / POINTS_PER_MM
    small = {word.text for words in longer.words for word in words if word.size < least}
    assert small == set()


@pytest.mark.parametrize('grown', [1.0, 1.1, 1.2, 1.35, 1.5])
def test_words_that_have_grown_take_the_room_of_the_english(grown):
    share = size_for([('w' * 100, 'w' * round(100 * grown))]) / 100

    assert share**2 * grown <= 1
    assert share**2 * grown > 0.9
    assert size_for([('w' * 100, 'w' * 300)]) == SIZES[-1]


def test_a_line_is_set_smaller_only_where_it_has_no_room():
    room = advance_em('ridge center line', *CUTS['text']) * 8.4

    assert fitted('ridge center line', room, 8.4) == 'ridge center line'
    assert 'font-size:0.500em' in fitted('ridge center line', room / 2, 8.4)
