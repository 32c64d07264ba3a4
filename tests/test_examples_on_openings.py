"""The worked examples of the compact edition: each step worked out in space, each place turned to on its pitch's opening."""

from __future__ import annotations

import re

import pytest
from labels.example_roof import Roof
from labels.examples import jack_table, marks
from labels.opened_examples import steps
from labels.two_slopes import STANDARD
from opening_places import cited_wrongly, figures_on_opening
from skewed import HIP, HIPS, RAFTER, RAFTERS, RIDGE, SEAT, VALLEYS, SkewedBook
from worked_books import examples_of
from worked_pages import jack_rows

from layouts.pages.book import plan
from tablegen.settings import read_settings

ROOF = Roof(6, 4, RIDGE, HIP, RAFTER, RAFTERS, HIPS, VALLEYS, SEAT, slopes=STANDARD, opened=True)


@pytest.fixture(scope='module')
def book(openings) -> SkewedBook:
    return SkewedBook(openings)


@pytest.fixture(scope='module')
def pages(book):
    return examples_of(book)


def test_every_step_of_every_example(pages):
    expected = steps(ROOF)
    wrong = [
        f'{title}, "{words}": printed {found}, expected {figure}'
        for title, wanted in expected.items()
        for words, figure in wanted.items()
        if (found := pages[title].step(words).figure) != figure
    ]
    assert wrong == []
    assert {title: len(page.steps) for title, page in pages.items()} == {
        title: len(one) for title, one in expected.items()
    }


def test_every_mark_of_every_board_and_every_jack(book, pages):
    assert {title: page.marks for title, page in pages.items() if page.marks} == marks(ROOF)
    (number,) = book.numbers('example_jacks_table')
    assert jack_rows(book.words(number)) == jack_table(ROOF)


def test_every_place_that_is_cited_has_the_figure(book, pages):
    wrong, seen = cited_wrongly(book.made, pages)
    assert wrong == []
    assert seen > 65


def test_readings_that_are_added_are_told_and_their_sum_where_it_is_a_part_off(book, pages):
    for page in pages.values():
        for step in page.steps:
            runs = [place for place in step.places if place.kind == 'runs']
            numbers = {place.page for place in runs}
            read = [figure for place in runs for figure in figures_on_opening(book.made, place)]
            if len(numbers) > 1:  # of two rafters
                for number in numbers:
                    of = [place for place in runs if place.page == number]
                    added = [figure for place in of for figure in figures_on_opening(book.made, place)]
                    assert ' + '.join(added) in (step.words if len(of) > 1 else f'{step.words} {step.figure}')
            elif len(runs) > 1:
                assert ' + '.join(read) in step.words
            elif runs and 'steps of' not in step.words:
                assert (
                    (f'& {read[0]}' in step.figure)
                    if 'Odd remainder' in step.words
                    else read[0] == step.figure
                )


def test_a_step_that_stands_on_the_opening_has_its_place(pages):
    """Else a book could cite nothing and pass: what has none is a run, what was said above, or the square's own."""
    without = {
        re.sub(r'[\d/]+ ', '', step.words)[:13]
        for page in pages.values()
        for step in page.steps
        if not step.places
    }
    assert without == {
        'Run: half of ', 'Run: level, o', 'Then the tail', 'Off at mark 1', 'Off at mark 2', 'Heel, plumb, ', 'Seat: level, ',
        'Tail: two che', 'Overall, from', 'steps of for ', 'Run: ft × ÷ (', 'Run: to the p',
    }  # fmt: skip


SETTINGS = {
    'one pitch': 'pitches = [8]',
    'one pitch, halved': 'pitches = [20]\ntrim = "large"\npaper = "a4"',
    'past the scale': 'steep = true\npitches = [40]',
    'feet and inches': 'pitches = [16]\nlengths = "feet-inches"\nsmallest_part = "1/64"',
    'a finer tape': 'pitches = [7]\nsmallest_part = "1/32"',
    'no 16 on center': 'pitches = [6]\njacks.spacings = ["19.2"]',
    'no such part': 'pitches = [6]\nstock.rafter = "1.6"',
    'short runs': 'pitches = [6]\nruns.to = "3 ft"',
    'degrees': 'pitches = ["33.3 deg"]\nstock.rafters = "2x4"',
}


@pytest.mark.parametrize('written', SETTINGS.values(), ids=SETTINGS)
def test_other_books_cite_what_they_have(written):
    """Ten pages whatever is asked, every place on an opening of the pitch that is worked."""
    planned = plan(read_settings(written, ''))
    pages = [page for page in planned.pages() if page.template.startswith('example_')]
    openings = {
        number
        for name, first in planned.index.pages.items()
        if name.startswith('opening:')
        for number in (first, first + 1)
    }

    assert len(pages) == 10
    assert pages[0].number % 2 == 0
    for page in pages:
        cited = {place.page for places in page.content.at.values() for place in places}
        assert cited <= openings
    assert any(page.content.at.get('length') for page in pages)
