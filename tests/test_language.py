"""The language: a catalogue, found in the package or in a folder that is named, is all that it takes."""

from __future__ import annotations

import io

import pytest
from babel.messages.catalog import Catalog
from babel.messages.mofile import write_mo
from pypdf import PdfReader

from layouts.command import main
from layouts.html.page_html import pages_html
from layouts.pages.book import plan
from layouts.words import say
from layouts.words.error import error_lines
from tablegen.errors import BookError
from tablegen.settings import read_settings

BOOK = """
language = "xx"
pitches = [6]
runs = {from = "1 ft", to = "4 ft", by = "1 ft"}
parts = ["common"]
"""


@pytest.fixture
def catalogues(tmp_path, monkeypatch):
    """Give a folder with a catalogue of a language xx, and speak English again afterwards."""
    made = tmp_path / 'catalogues' / 'xx' / 'LC_MESSAGES' / 'rafterbook.mo'
    made.parent.mkdir(parents=True)
    catalogue = Catalog('de')
    catalogue.add('Rafter Tables', 'Sparren')
    with made.open('wb') as file:
        write_mo(file, catalogue)
    monkeypatch.setenv('RAFTERBOOK_CATALOGUES', str(tmp_path / 'catalogues'))
    yield tmp_path
    say.use(say.SOURCE)


def test_english_needs_no_catalogue():
    say.use('en')

    assert (say.language(), say.languages(), say._('Rafter Tables')) == ('en', ['en'], 'Rafter Tables')


def test_a_language_without_a_catalogue_is_refused_with_those_there_are(catalogues):
    with pytest.raises(BookError) as fault, say.speaking('de'):
        pass

    assert error_lines(fault.value) == ["language: 'de' has no catalogue; allowed: en, xx"]


def test_the_terminal_speaks_the_language_that_its_environment_names(catalogues, monkeypatch):
    monkeypatch.setenv('RAFTERBOOK_LANGUAGE', 'yy')
    err = io.StringIO()

    assert main(['--version'], io.StringIO(), err) == 2
    assert (
        err.getvalue()
        == "rafterbook: language: 'yy' has no catalogue; allowed: en, xx; next: see rafterbook --help\n"
    )
    monkeypatch.setenv('RAFTERBOOK_LANGUAGE', 'xx')
    assert main(['--version'], io.StringIO(), err) == 0
    assert say._('Rafter Tables') == 'Sparren'


def test_pages_and_files_say_their_language_and_the_colophon_says_it_too(catalogues):
    with say.speaking('xx'):
        planned = plan(read_settings(BOOK, ''))
        assert pages_html(planned.pages(), 'book').startswith('<!doctype html>\n<html lang="xx">')
        assert 'language' in pages_html([planned.pages()[planned.index['made'] - 1]], 'made')
    (catalogues / 'book.toml').write_text(BOOK, encoding='utf-8')

    assert main(['make', str(catalogues / 'book.toml'), '--out', str(catalogues)], io.StringIO()) == 0
    for name in ('booklet', 'sheets', 'card'):
        assert PdfReader(catalogues / f'{name}.pdf').root_object['/Lang'] == 'xx'
    assert say.language() == say.SOURCE  # the terminal's own again


def test_processes_that_set_pages_know_the_book_s_language(catalogues, set_anew, monkeypatch):
    """Who translates is told to say less where a page is too full, and not to report it."""

    def full(*given):
        raise BookError('typesetter', f'sets {say.language()}')

    monkeypatch.setattr('layouts.pdf.typeset.set_document', full)
    (catalogues / 'book.toml').write_text(BOOK, encoding='utf-8')
    err = io.StringIO()

    assert main(['make', str(catalogues / 'book.toml'), '--out', str(catalogues)], io.StringIO(), err) == 2
    assert err.getvalue().startswith('rafterbook: typesetter: sets xx')
