"""The worked examples of finished books: each step by its words, worked out in space; each place turned to."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from headed import PHRASE_GAP_REM, NotTold, Part, phrases, read, reference_part, said, sections
from headed_members import Members, members
from headed_pages import grid_parts, headed, under_spacings
from labels.every import EXPECTED
from labels.example_hips import hip_notch
from labels.example_roof import Roof
from labels.examples import jack_table, marks, small_print, steps
from labels.expected import DEPTHS
from labels.two_slopes import GAMBREL, SALTBOX
from made_books import set_alone
from oracle import seats
from oracle.planes import meet
from printed_words import Word
from skewed import HIP, HIPS, SkewedBook
from worked_books import ODD, PLAIN, ROOFS, book_of, examples_of
from worked_pages import Place, Step, WorkedPage, jack_rows

from layouts.html.page_html import pages_html

BOOKS = pytest.mark.parametrize('name', ROOFS)
METRIC = Roof(Fraction(6), Fraction(6), run=Fraction(1700 * 10, 254), spacing=Fraction(400 * 10, 254))
"""Runs by 100 mm: plate line and tail are tabled runs, since no inches add up to 11 ft 2 in there."""
PLACES = pytest.mark.parametrize(
    ('name', 'roof'), [*ROOFS.items(), ('metric', METRIC)], ids=[*ROOFS, 'metric']
)


@pytest.fixture(scope='module')
def listed(tmp_path_factory):
    written = 'pitches = [6]\nruns = {by = "5 1/2 in", to = "9 ft"}\nparts = ["values", "jacks", "common", "hip-valley", "examples"]'
    return set_alone(written, tmp_path_factory.mktemp('listed'))


@pytest.fixture(scope='module')
def metric(tmp_path_factory):
    written = 'pitches = [6]\nruns = {from = "100 mm", by = "100 mm", to = "3 m"}\njacks.spacings = ["400 mm"]\nparts = ["values", "jacks", "common", "hip-valley", "examples"]'  # fmt: skip
    return set_alone(written, tmp_path_factory.mktemp('metric'))


@BOOKS
def test_every_step_of_every_example(name, request):
    expected, wrong = steps(ROOFS[name]), []
    pages = examples_of(book_of(name, request))

    assert list(pages) == list(expected)
    for title, wanted in expected.items():
        for words, figure in wanted.items():
            try:
                found = pages[title].step(words).figure
            except NotTold as fault:
                found = str(fault)
            if found != figure:
                wrong.append(f'{title}, "{words}": printed {found}, expected {figure}')
        if len(pages[title].steps) != len(wanted):
            wrong.append(f'{title}: {len(pages[title].steps)} steps, {len(wanted)} expected')
    assert wrong == []


@BOOKS
def test_every_mark_of_every_board(name, request):
    pages = examples_of(book_of(name, request))

    assert {title: page.marks for title, page in pages.items() if page.marks} == marks(ROOFS[name])


@BOOKS
def test_the_table_of_jacks(name, request):
    """Long and short points from the jack's own run, rounded once; not from printed figures added."""
    book = book_of(name, request)
    (number,) = book.numbers('example_jacks_table')

    assert jack_rows(book.words(number)) == jack_table(ROOFS[name])
    heads = re.findall('<th>(.*?)</th>', pages_html([book.made.pages[number - 1]], ''))
    assert heads == [
        'jack',
        'plate line to hip center',
        'plate line to long point',
        'plate line to short point',
        'long point to tail',
    ]


@BOOKS
def test_the_small_print_has_its_figures(name, request):
    pages = examples_of(book_of(name, request))

    for title, words in small_print(ROOFS[name]).items():
        assert words in pages[title].small


# Places --------------------------------------------------------------------------------------------------------


def figures_at(book: SkewedBook, place: Place) -> list[str]:
    """Turn to a page and return what stands there in the row and under the heads named."""
    if place.kind == 'opening':
        found = members(place.page, book.words(place.page), book.rem)
        return [_of_member(found, place, head) for head in place.heads]
    if place.kind == 'table':
        part = _table(book, place)
        return [re.sub('[†‡§ ]+$', '', part.cell(head, place.row)) for head in place.heads]
    page = headed(place.page, book.words(place.page), book.rem)
    if place.kind == 'jacks':
        table = grid_parts(place.page, under_spacings(page, book.rem), 'jack', book.rem)[0]
        return [table.cell(head, place.row) for head in place.heads]
    if place.kind == 'added':
        (line,) = [one for one in grid_parts(place.page, page, 'ft', book.rem)[1:] if place.row in one.heads]
        return [line.cell(place.row, 'add')]
    (head,) = place.heads
    return [_in_runs(page.below, head, place.row.removesuffix(' ft'), book.rem)]


def _of_member(found: Members, place: Place, head: str) -> str:
    """Return the figure in the one row that begins with the words named, under a head."""
    figures = [
        said
        for (_, name, column), all_said in found.found.items()
        if column == head and (name == place.row or re.match(rf'{re.escape(place.row)}(?![’\w])', name))
        for said in all_said
    ]
    assert len(figures) == 1, f'{place}: {figures}'
    return re.sub('[†‡§]+$', '', figures[0])


def _in_runs(below: list[list[Word]], head: str, row: str, rem: float) -> str:
    """Return a cell of a table of runs: a figure ends where its head's number ends, or to the right of it."""
    top = next(line for line in below if line[0].text in ('ft', 'run'))
    heads = phrases(top[1:], PHRASE_GAP_REM * rem)
    (wanted,) = [one for one in heads if one.text == head]
    count = len(row.split())
    (line,) = [line for line in below if said(line[:count]) == row and (count > 1 or line[1].text != 'ft')]
    return said(
        [
            word
            for word in line[count:]
            if max((one for one in heads if one.left < word.right), key=lambda one: one.left) == wanted
        ]
    )


def _table(book: SkewedBook, place: Place) -> Part:
    for title, below in sections(book.words(place.page), book.rem):
        if re.sub(r', \d+ of \d+$', '', title) == place.title:
            named = HEADED[place.title]
            return reference_part(place.page, title, below, named.corner, named.span, book.rem)
    raise NotTold(f'page {place.page} has no "{place.title}"')


HEADED = {one.title: one for one in EXPECTED}
"""What stands at the head of the tables that examples read from."""


def placed(pages: dict[str, WorkedPage]) -> list[tuple[str, Step]]:
    return [(title, step) for title, page in pages.items() for step in page.steps if step.places]


@PLACES
def test_every_place_that_is_cited_has_the_figure(name, roof, request):
    """The page is turned to: in the named row, under the named head, stands a figure of the step."""
    book = book_of(name, request)
    wrong, seen = [], 0
    jacks = jack_table(roof)
    for title, step in placed(examples_of(book)):
        told = f' {step.words} {step.figure} '
        for place in step.places:
            for figure in figures_at(book, place):
                seen += 1
                known = told if place.kind != 'jacks' else f' {" . ".join(jacks[place.row])} '
                if not re.search(rf'(?<=[\s&(]){re.escape(figure)}(?=[\s.,;])', known):
                    wrong.append(f'{title}, "{step.words}": page {place.page} has {figure} there, {place}')
    assert wrong == []
    assert seen > (40 if name == 'skewed' else 20)


@PLACES
def test_the_first_place_of_a_step_has_its_own_figure(name, roof, request):
    """But for readings that are added, where the sum is told."""
    book = book_of(name, request)
    for title, step in placed(examples_of(book)):
        first, *more = step.places
        (figure, *_) = figures_at(book, first)
        if title in (SALTBOX, GAMBREL):  # of two rafters, the first one's first, whatever is added
            assert figure in f'{step.figure} {step.words}'
            continue
        if more and more[0].kind in ('added', 'runs'):
            parts = [figure, *(one for place in more for one in figures_at(book, place))]
            assert ' + '.join(parts) in step.words
        elif first.kind != 'jacks' and not {'Stepped', 'left,'} & set(step.words.split()):
            assert figure == step.figure


@pytest.mark.parametrize('name', ['small_book', 'skewed'])
def test_figures_that_the_book_tables_are_given_their_place(name, request):
    """Else a book could cite nothing and pass."""
    pages = examples_of(book_of(name, request))
    for title, words in (
        ('A common rafter: the garden store', 'Line length'), ('A common rafter: the garden store', 'To the tail'), ('A common rafter: the garden store', 'Off at the ridge'),
        ('A common rafter: the garden store', 'Heel'), ('A common rafter: the garden store', 'Height above plate'), ('A common rafter: the garden store', 'Notch'),
        ('The store’s hip: length, upper end', 'Line length'), ('The store’s hip: length, upper end', 'one cheek'),
        ('The store’s hip: length, upper end', 'as far down'), ('The store’s hip: mouth and tail', 'dropped, plumb'),
        ('The store’s hip: mouth and tail', 'Its height above plate'), ('The store’s hip: cuts and steps', 'on the side'),
        ('The store’s hip: cuts and steps', 'On the top edge'), ('The store’s hip: cuts and steps', 'as far past'),
        ('The store’s hip jacks', 'tabled length'), ('The store’s hip jacks', 'on the jack’s center'),
        ('The store’s hip jacks', 'Short to long'), ('The wing’s valley: length, upper end', 'Off at the ridges'),
        ('The wing’s valley: mouth and tail', 'The heel stands outwards'), ('A shed’s rafter: the porch', 'Line length'),
    ):  # fmt: skip
        assert pages[title].step(words).places, (title, words)


def test_a_book_of_metric_runs_has_runs_of_its_own(request):
    """1700 mm, the tabled run below 5 ft 7 in, with the 200 mm of overhang that bring it to another tabled run."""
    page = examples_of(book_of('metric', request))['A common rafter: the garden store']

    assert 'A garden store 3400 mm wide' in page.small
    assert 'overhang 200 mm' in page.small
    assert page.step('Run: half of').figure == '1700 mm'
    assert [one.row for one in page.step('To the tail: run and overhang, 1900 mm').places] == ['1900 mm']


# Sides ---------------------------------------------------------------------------------------------------------


def test_long_points_stand_on_the_side_that_is_named(small_book):
    """Of a hip between the store's long side A, at its right as one looks up it, and the hipped end B, at its left; of
    a jack of A, which has the corner at its left."""
    pages, at = examples_of(SkewedBook(small_book)), PLAIN.at
    hip, jack = at.hip_board(PLAIN.hip), at.rafter(PLAIN.spacing, PLAIN.rafter)
    face = at.across_a(PLAIN.run - PLAIN.ridge / 2)
    hip_left, hip_right = (at.along_hip(meet(side, hip.top, face)) for side in (hip.left, hip.right))
    against = at.hip_side(PLAIN.hip)
    jack_left, jack_right = (meet(side, jack.top, against)[2] for side in (jack.left, jack.right))

    assert hip_right > hip_left
    assert (
        'The long point is away from the hipped end.'
        in pages['The store’s hip: length, upper end'].step('as far down').words
    )
    assert 'the left side as you look up the roof, the hipped end at its left' in pages['The store’s hip: marks'].small  # fmt: skip
    assert pages['The store’s hip: marks'].marks['short point, near side']
    assert jack_right > jack_left
    assert (
        'with the corner at your left as you look up the roof, on the right'
        in pages['The store’s hip jacks'].small
    )
    assert 'the jack with the corner at its left' in pages['Hip jack 4: marks'].small


# Cautions ------------------------------------------------------------------------------------------------------


def test_an_example_says_what_its_notch_calls_for(skewed, small_book):
    """Its own stock under its own notch: the skewed book's hip is notched past a third, the plain store's rafter is not."""
    depth = DEPTHS[HIPS]
    height = ODD.height
    wide = seats.hip_seat(ODD.at, height, depth, HIP)
    assert hip_notch(ODD.at, wide) > depth / 3
    pages = examples_of(skewed)
    assert (
        'Look again. The notch takes more than a third of the depth.'
        in pages['The store’s hip: mouth and tail'].small
    )
    assert 'Local code and a licensed designer decide.' in pages['The store’s hip: mouth and tail'].small
    care = re.search(r'Clauses: page (\d+)\.', pages['The store’s hip: mouth and tail'].small)
    assert 'R802.7.1' in read(skewed.words(int(care[1])))
    assert 'Look again' not in pages['A common rafter: the garden store'].small
    told = {
        title for title, page in examples_of(SkewedBook(small_book)).items() if 'Look again' in page.small
    }
    assert told == {'A saltbox: marks of C1', 'A gambrel: marks of LR'}  # at 8 in 12, past a quarter
