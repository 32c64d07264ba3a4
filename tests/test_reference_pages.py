"""Reference tables as printed: every figure read back from the finished PDF by another program, page by page."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import pairwise, takewhile
from pathlib import Path

import pytest
from complete import complete, complete_plan
from printed_words import lines_of, words_of

from layouts.grid.reference_tables import TablePage
from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.pages.reference_pages import LETTERS
from layouts.paper.trim import trim_of
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from layouts.words.datum import datum_of
from layouts.words.say import say
from tablegen.geometry.pitch import Pitch
from tablegen.groups import GROUPS, HOUSE_GROUPS
from tablegen.messages import Message
from tablegen.numbers.figure import Figure
from tablegen.numbers.text import rational
from tablegen.settings import BOOK_PARTS, Settings, read_settings
from tablegen.tables.table import PAST_A_QUARTER, PAST_A_THIRD, THIN, Row
from tablegen.tables.tables import tables

BOOKS = {
    'inches': 'pitches = [4, "7 1/2", 8, 12, 18]',
    'feet': 'pitches = ["30 deg", 6]\nlengths = "feet-inches"\nsmallest_part = "1/64"\ntrim = "large"\npaper = "a4"',
}
SIGNS = {PAST_A_QUARTER: '†', PAST_A_THIRD: '‡', THIN: '§'}


def book(name: str) -> Settings:
    groups = ', '.join(f'"{group}"' for group in GROUPS)
    return read_settings(f'{BOOKS[name]}\nparts = [{groups}]\nruns = {{to = "1 ft"}}', '')


@pytest.fixture(scope='module', params=BOOKS)
def printed(request, tmp_path_factory) -> tuple[Settings, list[tuple[object, list[str]]], Path]:
    """Return settings and the reference pages, each with what it holds and the lines that another program reads."""
    settings = book(request.param)
    planned = plan(settings)
    pages = [page for page in planned.pages() if page.template.startswith('ref_')]
    pdf = tmp_path_factory.mktemp('book') / 'tables.pdf'
    set_document(Job(pages_html(pages, 'x'), style(planned.trim), len(pages), pdf))
    return (
        settings,
        list(
            zip(
                [page.content for page in pages],
                lines_of(pdf, (0, 0, planned.trim.width_mm, planned.trim.height_mm)),
                strict=True,
            )
        ),
        pdf,
    )


def cells_of(row: Row) -> list[str]:
    """Return a row's figures as a table prints them, blanks left out; what marks a notch stands at its figure."""
    return [
        text_of(cell) + ''.join(SIGNS[mark] for mark in marks)
        for cell, marks in zip(row.cells, row.marks, strict=True)
    ]


def text_of(value: object) -> str:
    if isinstance(value, Pitch):
        return value.short
    if isinstance(value, Figure):
        return value.text.removesuffix('″')
    if isinstance(value, Message):
        return say(value)
    return '' if value is None else rational(value) if isinstance(value, Fraction) else str(value)


def split(cells: list[str]) -> list[str]:
    return ' '.join(cells).split()


def rows_read(lines: list[str]) -> list[list[str]]:
    """Return the words of every line, a dash for no figure and the tab's letter left out."""
    return [
        [word for word in re.sub(r'([†‡§]+)', r' \1', line).split() if word not in ('—', *'ABCDEFGHIJKL')]
        for line in lines
    ]


def test_every_figure_of_every_table_is_read_back(printed):
    """All columns of a row in order, wherever a table was cut between columns: nothing more, nothing less."""
    settings, pages, _ = printed
    for table in tables(settings):
        read: dict[int, list[str]] = {}
        parts = [
            (section, lines)
            for content, lines in pages
            if isinstance(content, TablePage)
            for section in content.sections
            if re.fullmatch(re.escape(say(table.title)) + r'(, \d of \d)?', section.title)
        ]
        rows, stubs = list(table.rows()), table.stubs
        place = 0
        names = [split(cells_of(row)[:stubs]) for row in rows]
        for section, lines in parts:
            body = rows_read(after(section.title, lines))
            here = len(section.grid.rows.split('\n'))
            if place + here > len(
                rows
            ):  # the next columns of a table that was cut begin at its first row again
                place = 0
            for number in range(place, place + here):
                row = next(words for words in body if words[: len(names[number])] == names[number])
                read.setdefault(number, []).extend(row[len(names[number]) :])
                body = body[body.index(row) + 1 :]
            place += here
        for number, row in enumerate(rows):
            expected = split([re.sub(r'([†‡§]+)', r' \1', cell) for cell in cells_of(row)[stubs:]])
            assert read[number] == expected, (table.key, number)


def after(title: str, lines: list[str]) -> list[str]:
    """Return the lines below a title, to the next table's."""
    start = next(place for place, line in enumerate(lines) if title in line)
    return lines[start + 1 :]


def test_every_table_says_from_where_to_where(printed):
    settings, pages, _ = printed
    sections = [
        section for content, _ in pages if isinstance(content, TablePage) for section in content.sections
    ]
    for table in tables(settings):
        line = datum_of(table, table.columns)
        said = {one.line for one in sections if one.title.startswith(say(table.title))}
        assert said == {line[0].upper() + line[1:]}


def test_marks_are_explained_where_they_stand(printed):
    _, pages, _ = printed
    for mark, said in (
        ('†', '† past a quarter of the depth, ‡ past a third'),
        ('§', '§ under 3 1/2 in left, too little under a tail'),
    ):
        marked = [
            lines for content, lines in pages if isinstance(content, TablePage) and mark in ''.join(lines)
        ]
        assert marked
        assert all(said in ' '.join(' '.join(lines).split()) for lines in marked)


def test_cautions_stand_where_they_matter(printed):
    _, pages, _ = printed
    words = [' '.join(' '.join(lines).split()) for _, lines in pages]
    care = next(page for page in words if page.startswith('Where care is due'))

    assert 'Local code and a licensed designer decide.' in care
    assert 'A rafter notched at the plate overhangs by more than 24 in.' in care
    assert sum('licensed designer' in page for page in words) > 1
    assert any('it is never propped' in page for page in words)


def test_no_words_run_into_each_other_or_off_the_page(printed):
    settings, _, pdf = printed
    trim = trim_of(settings)
    for page in words_of(pdf):
        assert all(
            word.left >= 0 and word.right <= trim.width_mm - 2
            for word in page
            if word.text not in (*LETTERS, 'Tables')  # on tabs
        )
        places = sorted(page, key=lambda word: word.top)
        for place, word in enumerate(places):
            below = takewhile(lambda other: other.top < word.foot, places[place + 1 :])  # noqa: B023
            assert not [(word.text, other.text) for other in below if word.overlaps(other)]


@pytest.mark.parametrize('group', GROUPS)
def test_a_group_is_in_only_if_it_is_asked_for(group):
    others = tuple(name for name in GROUPS if name != group)
    keys = {f'table-{table.key}' for table in tables(Settings()) if table.group == group}

    alone = plan(read_settings(f'pitches = [6]\nparts = ["{group}"]', ''))
    without = plan(read_settings(f'pitches = [6]\nparts = {list(others)}', ''))
    assert {key for key in alone.index.pages if key.startswith('table-')} == keys
    assert not keys & set(without.index.pages)
    assert f'group-{group}' in alone.index
    assert f'group-{group}' not in without.index


def test_the_usual_book_is_a_house_framers():
    assert [part for part in complete().parts if part in GROUPS] == list(HOUSE_GROUPS)
    assert set(GROUPS) < set(BOOK_PARTS)


@pytest.mark.parametrize(('parts', 'pages'), [('["gable"]', 5), ('["ridge", "seat"]', 29), ('["glance"]', 0)])
def test_pages_are_counted_before_anything_is_set(parts, pages):
    """Twenty-four pitches: an opening for the part, then a drawing and its tables, a page each."""
    planned = plan(read_settings(f'parts = {parts}', ''))
    assert sum(draft.template.startswith('ref_') for draft in planned.drafts) == pages


def test_every_group_opens_left_with_its_drawing():
    planned = complete_plan()
    for group in HOUSE_GROUPS:
        number = planned.index[f'group-{group}']
        assert number % 2 == 0
        assert planned.drafts[number - 1].template != 'ref_table'


def test_tabs_of_groups_stand_apart_and_no_letter_is_left_out():
    whole, few = (
        {
            draft.tab.text: draft.tab
            for draft in plan(settings).drafts
            if draft.tab and draft.tab.text.isalpha() and not draft.tab.turned
        }
        for settings in (book('inches'), read_settings('parts = ["tail", "trim"]', ''))
    )
    ends = [(tab.top_mm, tab.top_mm + tab.height_mm) for tab in whole.values()]

    assert ''.join(whole) == 'ABCDEFGHIJKL'
    assert ''.join(few) == 'AB'
    assert {letter: whole[letter] for letter in few} == few
    assert all(end <= begin + 0.01 for (_, end), (begin, _) in pairwise(ends))
