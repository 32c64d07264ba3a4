"""The marking sheets as the proof-reader reads them: each line cites the rows and pages on which its figures are read."""

from __future__ import annotations

import pytest
from planted_errors import forget, put, with_planted

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.pdf.documents import Job
from layouts.pdf.read_back import pages_of
from layouts.pdf.typeset import set_document
from layouts.words.proof import names
from tablegen.proof.page import Page
from tablegen.proof.proof import proof
from tablegen.settings import read_settings

BOOK = 'edition = "compact"\npitches = [7]\nstock = {ridge = "3/4", hip = "3 1/2", hips = "2x10"}'
SET = {'marking_sheet', 'opening', 'glance_left', 'glance_right', 'closing_made', 'made'}
"""Kinds of page that are set: the sheets, all that they cite, and the settings."""


@pytest.fixture(scope='module')
def read(tmp_path_factory):
    planned, out = plan(read_settings(BOOK, '')), tmp_path_factory.mktemp('sheets') / 'pages.pdf'
    numbers = [n for n, draft in enumerate(planned.drafts, 1) if draft.template in SET]
    html = pages_html([planned.pages()[number - 1] for number in numbers], '')
    set_document(Job(html, style(planned.trim), len(numbers), out))
    words = {number: page.words for number, page in zip(numbers, pages_of(out), strict=True)}
    return [Page(number, words.get(number, [])) for number in range(1, len(planned.drafts) + 1)]


@pytest.fixture(scope='module')
def whole(small_book):
    """The sheets of a complete edition, all that they cite, and the settings; of all others no words."""
    pages, index = pages_of(small_book.built.booklet), small_book.planned.index
    cited = [one for one in index.pages if one.startswith(('group-', 'glance', 'marking-sheet', 'made'))]
    first = index['values:4 in 12']
    kept = {*map(index.__getitem__, cited), *range(first, first + 30)}
    return [page if page.number in kept else Page(page.number, []) for page in pages]


def sheet(pages: list[Page], which: int) -> Page:
    titles = names_of(pages).titles
    return next(page for page in pages if page.phrases and page.phrases[0].text == titles[which])


def names_of(pages: list[Page]):
    from tablegen.proof.stated import stated

    return names(stated(pages)).marking


def test_both_sheets_are_read_and_nothing_differs(read):
    found = proof(read, names)
    assert found.faults == []
    assert {sheet(read, 0).number, sheet(read, 1).number} <= found.read


def changed(which: int, old: str, new: str, place: int = 0):
    """Put another word in place of one that stands there."""

    def plant(pages: list[Page]) -> int:
        page = sheet(pages, which)
        word = [word for line in page.lines for word in line if word.text == old][place]
        put(page, {word: new})
        return page.number

    return plant


def missing(pages: list[Page]) -> int:
    """Leave out the line of a figure, its number and its place."""
    page = sheet(pages, 0)
    lines = page.lines
    first = next(n for n, line in enumerate(lines) if any(word.text == 'Tail,' for word in line))
    last = next(n for n, line in enumerate(lines) if line[0].text == '6')
    gone = {id(word) for line in lines[first : last - 1] for word in line}
    page.words[:] = [word for word in page.words if id(word) not in gone]
    forget(page)
    return page.number


PLANTED = {
    'a name changed': changed(0, 'Together', 'Alone'),
    'a figure of another row': changed(0, 'Overhang', 'Seat'),
    'the other page of the opening': changed(0, 'left', 'right', 1),
    'another thickness': changed(0, '3/4', '1/4'),
    'another page of a glance': changed(1, '17', '18', 2),
    'another number': changed(1, '15', '16'),
    'another stock': changed(1, '2×10', '2×12'),
    'a line missing': missing,
}


IN_WHOLE = {
    'another opening': changed(0, '3,', '4,'),
    'the other page of the opening': changed(1, 'right:', 'left:', 3),
    'a figure of another row': changed(0, 'Heel', 'Notch'),
    'a row left out': changed(1, 'commons;', 'jacks;'),
    'the page of another group': changed(1, 'p.', 'p. 9'),
    'tables by the run for jacks': changed(1, 'jack', 'row'),
}


@pytest.mark.parametrize('planted', IN_WHOLE)
def test_an_error_planted_where_openings_are_counted_is_found(whole, planted):
    found, page = with_planted(whole, IN_WHOLE[planted])
    assert page in {fault.page for fault in found.faults}


def test_openings_are_counted_and_nothing_differs(whole):
    found = proof(whole, names)
    assert [fault for fault in found.faults if fault.kind not in ('opening', 'missing')] == []
    assert {sheet(whole, 0).number, sheet(whole, 1).number} <= found.read


@pytest.mark.parametrize('planted', PLANTED)
def test_an_error_planted_on_a_sheet_is_found(read, planted):
    found, page = with_planted(read, PLANTED[planted])
    assert page in {fault.page for fault in found.faults}
