"""The standard book's own examples on one page each: followed through its own printed tables to the printed figures."""

from __future__ import annotations

from re import sub

import pytest
from claimed import page_text
from headed import lines, said
from labels.example_roof import Roof
from labels.examples import marks
from labels.opened_examples import steps
from labels.two_slopes import GAMBREL, SALTBOX, STANDARD
from made_books import Booklet, MadeBook
from msgspec.structs import replace
from opening_places import cited_wrongly
from oracle.rounding import mixed, nearest
from own_roofs import STORE
from printed_words import words_of
from skewed import SkewedBook
from worked_pages import worked_page

from layouts.html.page_html import pages_html, style
from layouts.pages import slopes_pages, slopes_room
from layouts.pages.book import plan
from layouts.pages.slopes_room import LOOK
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from tablegen.examples.shipped import FILES, shipped_roofs
from tablegen.frame.roof_file import read_roof
from tablegen.settings import EDITIONS, Settings, read_settings

COMMON = 'A common rafter: the garden store'
ONE_PAGE = ('example_store_opening', 'example_saltbox_table', 'example_gambrel_table')
ROOF = Roof(6, 4, slopes=STANDARD, opened=True)


@pytest.fixture(scope='module')
def book(tmp_path_factory) -> SkewedBook:
    """The standard book, of which the examples' pages and the openings that they cite are set."""
    planned, out = plan(Settings()), tmp_path_factory.mktemp('own') / 'pages.pdf'
    cited = [planned.index[f'opening:{rise} in 12'] + side for rise in (5, 6, 9, 16) for side in (0, 1)]
    made = MadeBook(planned, Booklet(out))
    wanted = [page for page in made.pages if page.template in ONE_PAGE or page.number in cited]
    set_document(Job(pages_html(wanted, ''), style(planned.trim), len(wanted), out))
    found = dict(zip((page.number for page in wanted), words_of(out), strict=True))
    made.words = [found.get(page.number, []) for page in made.pages]
    return SkewedBook(made)


@pytest.fixture(scope='module')
def pages(book):
    found = [worked_page(number, book.words(number), book.rem) for number in book.numbers(*ONE_PAGE)]
    return {page.title: page for page in found}


def test_the_book_has_80_pages_and_the_roofs_theirs(book, pages):
    """The first faces the common, the other ends the examples; the store's pages are all there."""
    planned = book.made.planned
    kinds = [draft.template for draft in planned.drafts if draft.template.startswith('example_')]

    assert (planned.index.total, len(planned.index.sections)) == (80, 1)
    assert list(pages) == [COMMON, SALTBOX, GAMBREL]
    assert (pages[COMMON].number % 2, pages[SALTBOX].number) == (0, pages[COMMON].number + 1)
    assert len(kinds) == 11
    assert kinds[-1] == ONE_PAGE[-1]


def test_every_step_is_worked_out_in_space(pages):
    expected = steps(ROOF)
    wrong = [
        f'{title}, "{words}": printed {found}, expected {figure}'
        for title in (COMMON, SALTBOX, GAMBREL)
        for words, figure in expected[title].items()
        if (found := pages[title].step(words).figure) != figure
    ]
    assert wrong == []
    assert [len(page.steps) for page in pages.values()] == [len(expected[title]) for title in pages]
    assert pages[COMMON].marks == marks(ROOF)['A common rafter: marks']


def test_every_place_that_is_cited_has_the_figure(book, pages):
    wrong, seen = cited_wrongly(book.made, pages)

    assert wrong == []
    assert seen > 38


@pytest.mark.parametrize(('words', 'of'), [('Tail cut', 'LR'), ('Ridge cut', 'UR'), ('Height above', 'LR')])
def test_a_figure_of_one_rafter_stands_under_its_mark(book, pages, words, of):
    """A lower rafter alone has a tail and a bird's mouth, an upper one alone the ridge's cut."""
    below = lines(book.words(pages[GAMBREL].number))
    (heads,) = [line for line in below if said(line) == 'LR UR']
    (row,) = [line for line in below if said(line[1:]).startswith(words)]
    (head,) = [word for word in heads if word.text == of]
    assert abs(row[-1].right - head.right) < 0.3


@pytest.mark.parametrize('file', FILES, ids=lambda file: file.stem)
def test_the_standard_book_has_the_roof_of_the_file(file):
    """What `rafterbook roof` frames of the file is what the book works through."""
    asked = read_roof(file.read_text('utf-8'), '')
    (found,) = [one for one in shipped_roofs(Settings()) if one.file == file.name]
    assert replace(found.frame.asked, ridge=asked.ridge, hips=asked.hips, valleys=asked.valleys) == asked


@pytest.mark.parametrize(
    ('written', 'kinds'),
    [
        ('roofs = []', set()),
        ('pitches = [6]', set()),
        ('pitches = [5, 9]', {'saltbox', 'gambrel'}),
        ('runs.to = "6 ft"', {'gambrel'}),
        ('pitches = [5, "33 deg"]', set()),
        ('stock.seat = "2 15/16"', set()),  # whose common is cautioned on two pages: the roofs would make 88
    ],
)
def test_a_book_has_those_that_its_pitches_and_runs_allow(written, kinds):
    planned = plan(read_settings(written, ''))
    found = {
        draft.template.split('_')[1] for draft in planned.drafts if draft.template.startswith('example_')
    }

    assert found & {'saltbox', 'gambrel'} == kinds
    assert {'store', 'hip', 'jacks', 'valley', 'porch'} >= found - kinds
    assert planned.index.total <= 80


@pytest.mark.parametrize('edition', EDITIONS)
def test_jacks_longer_than_the_runs_of_a_book_are_read_by_the_foot(edition):
    """Five of this roof's jacks stand 16 in apart: two past a table of runs to 4 ft, and only the first three in one of jacks."""
    roof = replace(read_roof(STORE, 'store.toml'), measure=Settings().measure)
    settings = replace(
        read_settings(f'edition = "{edition}"\npitches = [7]\nruns.to = "4 ft"', 'book.toml'),
        roofs=('store.toml',),
        own_roofs=(roof,),
    )
    planned = plan(settings)
    place = next(n for n, draft in enumerate(planned.drafts) if draft.template == 'example_jacks_table')
    html = sub('<[^>]+>', '', pages_html([planned.pages()[place]], ''))

    foot = 12 * (1 + (7 / 12) ** 2) ** 0.5
    by_foot = f'Run in feet × exact foot {foot:.4f}.', mixed(nearest(80 / 12 * foot, 16), 16)
    assert [one in html for one in by_foot] == [edition == 'compact', True]
    assert ('1 to 3' in html) == (edition == 'complete')


@pytest.mark.parametrize('written', ['', 'lengths = "feet-inches"\npitches = ["10", "3 1/4"]'])
def test_what_is_counted_to_see_how_close_lines_must_stand_is_what_the_page_says(written, monkeypatch):
    counted: list[slopes_room.Told] = []

    def kept(*given):
        counted.append(slopes_room.told_of(*given))
        return counted[-1]

    monkeypatch.setattr(slopes_pages, 'told_of', kept)
    planned = plan(read_settings(f'edition = "compact"\n{written}', ''))
    made = planned.pages()
    places = [place for place, draft in enumerate(planned.drafts) if draft.template in ONE_PAGE[1:]]
    said_there = [''.join(page_text(pages_html([made[place]], '')).split()) for place in places]

    assert len(counted) == len(said_there) > 0
    for told, words in zip(counted, said_there, strict=True):
        sentences = (*told.steps.values(), told.intro, told.along, LOOK)
        assert [one for one in sentences if ''.join(one.split()) not in words] == []
