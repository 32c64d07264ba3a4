"""The worked examples as the proof-reader reads them: every sentence is known, every planted error is found."""

from __future__ import annotations

import pytest
from planted_errors import with_planted
from planted_examples import KINDS, example_pages, in_an_example

from layouts.html.page_html import environment
from layouts.pdf.read_back import pages_of
from layouts.words import proof_examples
from layouts.words.proof import names
from tablegen.proof.page import Page
from tablegen.proof.proof import proof

TOLD_BY_NUMBERS = set('%0123456789')
OF_EXAMPLES = ('example_', 'stepping', 'common_mouth', 'one_rafter_')


@pytest.fixture(scope='module')
def read(openings):
    """The pages of the examples, of the openings that they cite and of the settings; of all others no words."""
    pages = pages_of(openings.built.booklet)
    examples = example_pages(pages)
    index = openings.planned.index
    cited = {index[f'opening:{rise} in 12'] + side for rise in (4, 5, 6, 9, 16) for side in (0, 1)}
    kept = {*(page.number for page in examples), *cited, index['made'], len(pages)}
    return [page if page.number in kept else Page(page.number, []) for page in pages]


def said_by(begins: tuple[str, ...]) -> set[str]:
    """Return all that templates say whose names begin so."""
    made = environment()
    found = set()
    for name in made.list_templates():
        if name.startswith(begins):
            assert made.loader
            for _line, _function, words in made.extract_translations(made.loader.get_source(made, name)[0]):
                found.add(' '.join((words if isinstance(words, str) else words[0]).split()))
    return found


def test_sentences_and_titles_are_those_of_the_templates():
    """What tells a figure in a template of the examples is known, and nothing is known that no template says."""
    known = {words for said, _members in proof_examples.SAID.values() for some in said for words in some}
    titles = {title for some in proof_examples.TITLES.values() for title in some}
    others = {*proof_examples.JACK_COLUMNS, proof_examples.SUM_OFF, proof_examples.PAGE, proof_examples.PAGES}
    figures = {words for words in said_by(OF_EXAMPLES) if TOLD_BY_NUMBERS & set(words)}

    assert known | titles | others <= said_by(OF_EXAMPLES)
    assert figures <= known | titles | others


def test_nothing_of_the_examples_is_unknown(read, openings):
    found = proof(read, names)
    pages = {page.number for page in example_pages(read)}

    assert len(pages) == 12
    assert pages <= found.read
    assert [fault for fault in found.faults if fault.page in pages] == []
    assert found.strange == []


@pytest.mark.parametrize('seed', range(2))
@pytest.mark.parametrize('kind', KINDS)
def test_an_error_planted_in_an_example_is_found_where_it_is(read, kind, seed):
    found, page = with_planted(read, in_an_example(KINDS[kind], seed))
    assert page in {fault.page for fault in found.faults}


@pytest.mark.parametrize('seed', range(3))
def test_a_place_changed_is_found_where_figures_stand_in_tables(small_book, seed):
    found, page = with_planted(
        pages_of(small_book.built.booklet), in_an_example(KINDS['a place changed'], seed)
    )
    assert (page, 'cited') in {(fault.page, fault.kind) for fault in found.faults}


@pytest.mark.thorough
@pytest.mark.parametrize('seed', range(10, 60))
@pytest.mark.parametrize('kind', KINDS)
def test_any_error_planted_in_an_example_is_found(read, kind, seed):
    found, page = with_planted(read, in_an_example(KINDS[kind], seed))
    assert page in {fault.page for fault in found.faults}
