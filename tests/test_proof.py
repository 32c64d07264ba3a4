"""The proof-reader: a good book has nothing that differs, every error that is planted is found, and nothing is shared.

Its own arithmetic is not the book's, nor that of tests/oracle; the three agree on every figure of the openings.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from asking import ask
from msgspec.structs import replace
from pypdf import PdfReader
from test_rooms import built

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.pdf.read_back import Pdf, pages_of
from layouts.pdf.typeset import Job, set_document
from layouts.words.proof import names
from tablegen.proof.found import Fault, Found
from tablegen.proof.page import Page
from tablegen.proof.proof import proof
from tablegen.settings import read_settings
from tablegen.tables.tables import tables

BY_RUN, BESIDE, STEEP = (2 + 1) * (24 + 11 + 15 + 1), 4 + 4 + 2 + 2 + 2 + 6 + 5 + 5 + 8 + 4 + 6 + 12, 8
"""Figures of an opening: of lengths and exact feet, and beside them; pitches whose steps, on both pages, are told too."""


EXAMPLES, AFTER_EXAMPLES, ALL_EXAMPLES = 444, 3, 903
"""Figures and places of the worked examples where a pitch has one opening, and pages after them; the same of the complete edition and of the pages before its pitches."""


@pytest.fixture(scope='module')
def read(openings):
    """The pages of the book with every opening."""
    return pages_of(openings.built.booklet)


@pytest.fixture(scope='module')
def whole(small_book):
    """The pages of a complete edition."""
    return pages_of(small_book.built.booklet)


def test_nothing_differs_in_a_good_book_and_every_figure_is_read(openings):
    status, told, remarks = ask('proof', str(openings.built.booklet))

    count, first = 25 * (BY_RUN + BESIDE) + 2 * STEEP, openings.planned.index['opening:1 in 12']
    lines = told.splitlines()
    last = openings.planned.index.total - AFTER_EXAMPLES
    assert (status, remarks) == (0, '')
    assert (
        lines[0]
        == f'{count + EXAMPLES:,} figures read on pages 1–2, {first}–{last + 1}, {last + 3}: 0 differ'
    )
    assert lines[1].endswith('amiss: 0')
    assert lines[2] == '9 sheets folded: order, fold, cuts, staples, bar and margins amiss: 0'
    assert lines[3:] == [
        f'not read: figures in words and drawings of pages 3, {last + 2}',
        'not read: other drawings, notes and what they count',
    ]


MEMBER, RUNS, SMALL_RUNS = 13 + 42, 24 * 12, 15
"""Figures of an opening by member; tabled runs, and small runs below them."""
SPACINGS = (12, 16, 19.2, 24)
RISES, ENGRAVED, DRIFT = 24, 7, 7
"""Rows and columns of the two pages on a square's figures."""


def test_the_ten_pages_of_a_pitch_and_the_reference_tables_are_read(whole, small_book):
    """Every run by the inch, small runs, jacks, what stands in titles, the pages by member, each cell of each table."""
    found, index, settings = proof(whole, names), small_book.planned.index, small_book.planned.settings
    jacks = 3 * sum(int(24 * 12 // spacing) for spacing in SPACINGS)
    pitches = 3 * (MEMBER + 3 * (RUNS + SMALL_RUNS + 1) + jacks + 6 + 4 + 3)
    reference = sum(
        (len(table.columns) - table.stubs) * len(list(table.subjects()))
        for table in tables(settings)
        if table.group in settings.parts
    )
    first = min(page for key, page in index.pages.items() if key.endswith(':4 in 12'))

    assert (found.faults, found.strange) == ([], [])
    assert found.figures == pitches + reference + RISES * (ENGRAVED + DRIFT) + ALL_EXAMPLES
    assert {*range(first, first + 30)} | {
        index[key] for key in index.pages if key.startswith('table-')
    } <= found.read


def test_the_pages_at_a_glance_are_read_in_any_edition(small_book):
    pdf = Pdf(PdfReader(small_book.built.booklet))
    index = small_book.planned.index
    wanted = {index['glance'], index['glance'] + 1, index['made']}
    pages = [
        Page(place + 1, pdf.words(place) if place + 1 in wanted else []) for place in range(len(pdf.pages))
    ]
    found = proof(pages, names)

    assert (found.figures, found.faults) == (3 * (6 + 4 + 3), [])
    row = next(line for line in pages[index['glance']].lines if line[0].text == '6')
    pages[index['glance']].words.remove(row[-1])
    pages[index['glance']].words.append(replace(row[-1], text='19.48°'))
    assert [
        (fault.row, fault.head, fault.right)
        for fault in proof([Page(p.number, p.words) for p in pages], names).faults
    ] == [('6', 'each face', row[-1].text)]


MIXED = (
    'pitches = [5, 7]\njacks = {spacings = ["16 in"]}\nparts = ["how-to", "opening", "values", "common", "glance", "examples"]',
    'pitches = [9]\nparts = ["how-to", "values", "rise", "tail"]',
)
"""Books of other parts than an edition's."""


@pytest.mark.parametrize('written', MIXED)
def test_nothing_differs_in_a_book_of_any_parts(written, tmp_path):
    planned, out = plan(read_settings(written, '')), tmp_path / 'booklet.pdf'
    set_document(Job(pages_html(planned.pages(), ''), style(planned.trim), planned.index.total, out))
    found = proof(pages_of(out), names)

    assert [fault for fault in found.faults if fault.kind != 'link'] == []
    assert planned.index['marking-sheet'] in found.read


# What it answers, and what it shares -----------------------------------------------------------------------------


def test_what_differs_is_told_with_page_row_head_printed_and_right(monkeypatch):
    faults = [
        Fault('figure', 28, '6 in 12, 4 ft', 'common', '53 3/4', '53 11/16'),
        Fault('figure', 29, '6 in 12, Backing, each face', '', '', '18.43°'),
        Fault('folio', 30, '', '', '31', '30'),
    ]
    monkeypatch.setattr('layouts.pdf.read_back.pages_of', lambda path: [])
    monkeypatch.setattr(
        'layouts.pdf.proving.proof', lambda *_ignored: Found(figures=2, pages=1, faults=faults)
    )
    status, told, remarks = ask('proof', 'booklet.pdf')

    assert (status, remarks) == (1, '')
    assert told.splitlines() == [
        'page 28, 6 in 12, 4 ft, “common”: printed 53 3/4, right 53 11/16',
        'page 29, 6 in 12, Backing, each face: printed nothing, right 18.43°',
        'page 30 of the file is numbered 31',
        '2 figures read: 2 differ',
        '0 links followed, 0 page numbers read; links, numbers, pages and rows amiss: 1',
        'not read: figures of page 1',
    ]


@pytest.mark.parametrize('named', ['', '.', '/'])
def test_a_folder_is_no_booklet(named):
    status, told, remarks = ask('proof', named)
    assert (status, told) == (2, '')
    assert (
        remarks == f'rafterbook: {named or "."}: Is a directory; next: mend that and give the command again\n'
    )


@pytest.mark.parametrize('written', [b'', b'no PDF\n', None, 'cut'])
def test_what_is_no_book_is_refused_in_a_line(openings, tmp_path, written):
    booklet = openings.built.booklet
    other = booklet.parent / 'sheets.pdf'
    path = tmp_path / 'booklet.pdf'
    path.write_bytes(
        other.read_bytes()
        if written is None
        else booklet.read_bytes()[:50_000]
        if written == 'cut'
        else written
    )
    status, told, remarks = ask('proof', str(path))

    assert (status, told) == (2, '')
    assert remarks == (
        f'rafterbook: {path}: is no booklet of this program; allowed: a PDF with the page of how the copy was made; '
        'next: give the booklet.pdf that “make” wrote\n'
    )


def test_it_shares_nothing_with_what_made_the_book():
    rooms = built()
    assert rooms['tablegen/proof/'] == set()
    assert {room for room, used in rooms.items() if 'tablegen/proof/' in used} == {
        'layouts/words/',
        'layouts/pdf/',
        'layouts/roofs/',
        'layouts/patterns/',
        'layouts/verbs/',
    }
    for path in (Path(__file__).parent.parent / 'tablegen' / 'proof').glob('*.py'):
        for line in path.read_text('utf-8').splitlines():
            assert not line.startswith(('from tablegen', 'import tablegen')) or line.startswith(
                ('from tablegen.proof.', 'from tablegen.proof import ')
            ), line
