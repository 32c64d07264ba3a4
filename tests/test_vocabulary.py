"""One word for one thing, in the whole book, its sheets and cards, the command's help and README."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from asking import ask
from printed_words import told

from layouts.verbs import VERBS
from layouts.words.starter import starter

OTHERS = {
    'lean-to': 'shed', 'projection': 'overhang', 'projections': 'overhang', 'side cut': 'cheek', 'side cuts': 'cheek',
    'centre': 'center', 'mitre': 'miter', 'neighbour': 'neighbor', 'bevelled': 'beveled', 'handsaw': 'hand saw',
    'from the long edge': 'from square across', 'from its long edge': 'from square across',
    'blade and tongue': 'body and tongue', 'colour': 'color', 'grey': 'gray',
}  # fmt: skip
"""What a thing is not called, and what it is."""
ENGRAVED = 'What a square should carry'
"""The one page that may say what squares are stamped with."""


def others_in(words: str) -> list[str]:
    return [word for word in OTHERS if re.search(rf'\b{word}\b', words, re.IGNORECASE)]


def test_every_page_of_the_book(small_book):
    found = []
    for page, lines in zip(small_book.pages, small_book.lines, strict=True):
        words = re.sub(r'- (?=[a-z])', '', ' '.join(' '.join(lines).split()))
        found += [
            (page.number, word) for word in others_in(words) if page.head != ENGRAVED or word != 'side cut'
        ]
    assert found == []


def test_its_sheets_and_its_card(small_book):
    for pdf in (small_book.built.sheets, small_book.built.card.path):
        assert others_in(' '.join(told('pdftotext', '-l', '2', pdf, '-').split())) == []


@pytest.mark.parametrize('verb', VERBS)
def test_the_help_of_every_verb(verb):
    status, words, _ = ask(verb, '--help')

    assert status == 0
    assert others_in(' '.join(words.split())) == []


def test_the_starter_file_and_readme():
    readme = (Path(__file__).resolve().parent.parent / 'README.md').read_text('utf-8')

    assert others_in(' '.join(starter().split())) == []
    assert others_in(' '.join(readme.split())) == []
