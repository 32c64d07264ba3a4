"""Typesetting: finished PDFs checked by other people's tools, and every complaint of the typesetter's an error."""

from __future__ import annotations

import subprocess
import sys
from collections import Counter
from importlib.abc import MetaPathFinder

import pytest
from complete import COMPLETE
from made_books import made, strayed
from msgspec.structs import replace
from printed_words import MM, faults_of, fonts_of, words_of
from pypdf import PdfReader
from quick_books import LACKS
from refused import refused

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.paper.page import Draft, Page, page_side
from layouts.paper.trim import trim_of
from layouts.pdf import parts as cut
from layouts.pdf import workers
from layouts.pdf.documents import Job, typeset
from layouts.pdf.parts import parts
from layouts.pdf.typeset import Remark, load_typesetter, set_document
from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.settings import Settings, read_settings

POCKET = trim_of(Settings())
FACES = 'Open-Sans', 'Table'


def empty(number: int) -> Page:
    """Return a page of lines to write on: it needs no contents."""
    return Page(number, page_side(number), 'notes', 'Notes', None, None)


def job(folder, count: int = 2, css: str = '', trim=POCKET, pages: int | None = None) -> Job:
    """Return a document of empty pages, from page 6."""
    numbers = range(6, 6 + count)
    html = pages_html([empty(number) for number in numbers], 'Notes')
    return Job(html, style(trim) + css, pages or count, folder / 'notes.pdf')


def set_and_told(jobs) -> tuple[list[int], None]:
    said = []
    typeset(jobs, said.append)
    return said


# The finished files ------------------------------------------------------------------------------------------


def test_as_many_pages_as_were_planned_and_said(small_book):
    built, planned = small_book.built, small_book.planned

    assert len(words_of(built.booklet)) == planned.index.total == built.pages
    assert len(words_of(built.sheets)) == 2 * built.sheets_of_paper
    assert built.sections == len(planned.index.sections)
    assert built.figures == planned.figures


@pytest.mark.parametrize('name', ['booklet', 'sheets'])
def test_a_checker_of_pdf_finds_nothing_wrong(small_book, name):
    assert faults_of(getattr(small_book.built, name)) == ''


@pytest.mark.parametrize('name', ['booklet', 'sheets'])
def test_only_our_typeface_is_inside(small_book, name):
    fonts = fonts_of(getattr(small_book.built, name))

    assert fonts
    assert {font.startswith(FACES) for font, _ in fonts} == {True}
    assert {embedded for _, embedded in fonts} == {True}


def test_pages_and_sheets_have_their_sizes(small_book):
    sizes = [
        {(round(float(page.mediabox.width) / MM, 1), round(float(page.mediabox.height) / MM, 1)) for page in PdfReader(file).pages}
        for file in (small_book.built.booklet, small_book.built.sheets)
    ]  # fmt: skip
    assert sizes == [{(100.0, 133.0)}, {(215.9, 279.4)}]


def test_two_builds_are_the_same_to_the_byte_on_however_many_cores(tmp_path, monkeypatch):
    """Of a book set in several documents, one after the other and side by side, and joined."""
    monkeypatch.setattr(cut, 'PAGES_OF_A_DOCUMENT', {False: 6, True: 6})
    books = []
    for cores in (1, 3):
        monkeypatch.setattr(workers, 'cores', lambda cores=cores: cores)
        written = 'pitches = [6]\nparts = ["glance", "values", "common"]'
        books.append(made(written, tmp_path / str(cores)).built)
    first, second = books

    assert first.booklet.read_bytes() == second.booklet.read_bytes()
    assert first.sheets.read_bytes() == second.sheets.read_bytes()
    assert first.card.path.read_bytes() == second.card.path.read_bytes()


def test_the_sheets_carry_the_pages_and_say_how_to_fold(small_book):
    """Every letter of the booklet is on a sheet; the first sheet, whose back is blank, is not of the booklet."""
    sheets = words_of(small_book.built.sheets)
    printed, carried = (
        Counter(letter for page in pages for word in page for letter in word.text)
        for pages in (small_book.words, sheets[2:])
    )

    assert {'Print', 'Cut', 'Fold', 'Staple'} <= {word.text for word in sheets[0]}
    assert sheets[1] == []
    assert printed == carried


TABLES = 'parts = ["values", "jacks", "common", "hip-valley", "rise"]'
EDITIONS = [
    f'{COMPLETE}pitches = ["26.565 deg"]\ntrim = "large"',
    f'{TABLES}\npitches = [6]\ntrim = "large"\npaper = "a4"\nlengths = "feet-inches"\nsmallest_part = "1/64"',
    'pitches = [0.5, "26.565 deg"]\nsmallest_part = "1/64"\nlengths = "feet-inches"\nstock.rafters = "2x12"',
    *(
        pytest.param(written, marks=pytest.mark.thorough)
        for written in (
            'parts = ["glance"]\npitches = ["1 to 12 by 1/8", "42.123456 deg"]\njacks.spacings = [96, 95.5, 90, 80.25]\n'
            'smallest_part = "1/64"',
            'pitches = [24]\nsmallest_part = "1/32"\ntrim = "large"\npaper = "a4"\njacks.spacings = ["2 in", 95.5]',
            'parts = ["values", "jacks", "common", "rise", "examples"]\npitches = [20]\nlengths = "feet-inches"\n'
            'jacks.spacings = ["2 in", "24 in"]',
            'parts = ["values", "hip-valley", "examples"]\npitches = [24]\nruns = {by = "4 in"}\npaper = "a4"',
            f'{TABLES}\npitches = ["26.565 deg", "45 deg"]\nruns = {{by = "5 1/2 in", to = "40 ft"}}',
            'parts = ["how-to", "words", "common"]\npitches = [0.5]\nsmallest_part = "1/2"\n'
            'runs = {from = "1/2 in", by = "1/2 in", to = "30 in"}',
        )
    ),
]
"""Where most has to find room: large print, long figures, many jacks, steep, flat, many pitches."""


@pytest.mark.parametrize('written', EDITIONS)
def test_every_edition_keeps_to_its_pages(written, tmp_path):
    """As many pages as planned, each word in the text, the tab or the folio, and none on another."""
    planned = plan(read_settings(written, ''))
    html = pages_html(planned.pages(), '')
    whole = Job(html, style(planned.trim), planned.index.total, tmp_path / 'book.pdf')
    set_document(whole)

    assert strayed(planned.pages(), whole, planned.trim) == []


# The typesetter's own voice ----------------------------------------------------------------------------------


WARNS = 'p { colr: red }'


def test_whatever_the_typesetter_remarks_on_is_told_and_an_error_here(tmp_path):
    """In these tests; who makes a book gets it, and a line."""
    with pytest.raises(Remark) as remark:
        set_document(job(tmp_path, css=2 * WARNS))
    assert error_line(remark.value.args[0]).startswith('typesetter: said: Ignored `colr: red')

    with pytest.warns(Remark) as said:
        set_document(job(tmp_path, css=2 * WARNS))
    assert len(said) == 2, 'one a place in the style'
    assert len(words_of(tmp_path / 'notes.pdf')) == 2


def test_a_thing_that_a_page_would_lack_is_a_fault(tmp_path):
    with pytest.raises(BookError) as refusal:
        set_document(job(tmp_path, css=LACKS))

    assert error_line(refusal.value).startswith('typesetter: said: Failed to load image')
    assert error_line(refusal.value).endswith(
        '; next: this is a fault of the program: report it with the settings file'
    )


def test_silence_is_none(tmp_path):
    set_document(job(tmp_path))
    assert len(words_of(tmp_path / 'notes.pdf')) == 2


def test_a_page_that_runs_over_is_told_by_its_number(tmp_path):
    """Page 7 is taller than its paper; nothing is written."""
    with pytest.raises(BookError) as refusal:
        set_document(job(tmp_path, 3, css='#page-7 .ruled { height: 12mm }'))

    assert 'set 4 pages where 3 were planned: page 7 runs over' in error_line(refusal.value)
    assert not (tmp_path / 'notes.pdf').exists()


def test_fewer_pages_than_planned_are_an_error_too(tmp_path):
    with refused('set 2 pages where 3 were planned'):
        set_document(job(tmp_path, 2, pages=3))


@pytest.mark.parametrize('cores', [1, 2])
def test_an_error_comes_home_from_every_process(cores, tmp_path, monkeypatch):
    monkeypatch.setattr(workers, 'cores', lambda: cores)
    bad = job(tmp_path, css=LACKS)

    with refused('typesetter: said: Failed'):
        typeset([bad, replace(bad, out=tmp_path / 'other.pdf')])


@pytest.mark.parametrize('cores', [1, 2])
def test_a_remark_comes_home_from_every_process(cores, tmp_path, monkeypatch):
    monkeypatch.setattr(workers, 'cores', lambda: cores)
    one = job(tmp_path, css=WARNS)

    with pytest.raises(Remark, match='colr'):
        typeset([one])
    with pytest.warns(Remark, match='colr') as said:
        typeset([one, replace(one, out=tmp_path / 'other.pdf')])
    assert len(said) == 2


@pytest.mark.parametrize('cores', [1, 2])
def test_every_page_laid_out_is_told(cores, tmp_path, monkeypatch):
    monkeypatch.setattr(workers, 'cores', lambda: cores)
    one, two = job(tmp_path, 3), replace(job(tmp_path, 2), out=tmp_path / 'other.pdf')

    assert sum(set_and_told([one, two])) == 5
    assert (tmp_path / 'notes.pdf').exists()
    assert (tmp_path / 'other.pdf').exists()


@pytest.mark.parametrize(
    ('kinds', 'shares'),
    [
        (['cover', *['how'] * 3, 'made'], [3, 2]),
        (['cover', *map(str, range(40)), *['grid'] * 130, 'made'], [10, 10, 10, 10, 2, 32, 33, 33, 32]),
        (['grid'] * 12, [12]),
    ],
)
def test_documents_are_cut_by_the_kinds_of_their_pages(kinds, shares, tmp_path):
    """What says title, owner or paper apart; many of a kind apart from few; as many documents as pay."""
    pages = [empty(number) for number in range(1, len(kinds) + 1)]
    made = list(parts(pages, kinds, POCKET, 'Notes', tmp_path))

    assert [one.job.pages for one in made] == shares
    assert [one.job.html.count('<section ') for one in made] == shares
    assert sorted(place for one in made for place in one.places) == [*range(len(kinds))]
    assert len({one.job.out for one in made}) == len(made)


class Refusing(MetaPathFinder):
    """Stands in for a system without Pango: the typesetter's import fails as it does there."""

    def find_spec(self, name, path=None, target=None):
        if name == 'weasyprint':
            raise OSError(
                "cannot load library 'libpango-1.0-0': libpango-1.0-0: cannot open shared object file"
            )


@pytest.mark.skipif(
    not sys.platform.startswith('linux'), reason='where the loader knows libraries by one name'
)
def test_the_typesetter_is_loaded_without_asking_other_programs():
    """For where its libraries are: all are there, the loader's own names of them."""
    asked = (
        'import sys; sys.addaudithook(lambda name, told: name == "subprocess.Popen" and print(told[1])); '
        'from layouts.pdf.typeset import load_typesetter; load_typesetter(); '
        'from weasyprint.text import ffi; print(ffi.pango is None, ffi.harfbuzz_subset is None)'
    )
    assert subprocess.check_output([sys.executable, '-c', asked], text=True) == 'False False\n'


def test_a_missing_system_library_is_named(monkeypatch):
    monkeypatch.delitem(sys.modules, 'weasyprint', raising=False)
    monkeypatch.setattr(sys, 'meta_path', [Refusing(), *sys.meta_path])

    with pytest.raises(BookError) as refusal:
        load_typesetter()

    assert error_line(refusal.value) == (
        'typesetter: the system library libpango-1.0-0 is missing; '
        'next: run: python3 layouts/bootstrap.py setup (it says what to install on this system)'
    )


def test_a_misspelt_name_in_a_template_is_an_error():
    draft = Draft('cover', lambda index: None)
    page = Page(1, 'right', draft.template, '', None, {'titel': 'Rafter Tables'})

    with pytest.raises(Exception, match=r'has no attribute .title'):
        pages_html([page], 'Rafter Tables')


def test_words_of_the_users_are_escaped():
    planned = plan(read_settings('title = "<b>&amp;"\npitches = [6]\nparts = ["values"]', ''))
    html = pages_html(planned.pages(), planned.settings.title)

    assert '<b>&amp;</h1>' not in html
    assert '&lt;b&gt;&amp;amp;' in html
