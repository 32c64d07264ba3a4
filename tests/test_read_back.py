"""A finished booklet read back from its PDF: every cell of one pitch, every citation, nothing out of place."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from made_books import ANYWHERE_ELSE, misplaced
from printed_words import Word
from run_books import is_grid
from table_pages import as_read
from table_rows import run_rows

from layouts.pages.contents_pages import ContentsPage
from layouts.pages.how_to_page import HowToPage
from tablegen.tables.runs import part_runs

SIX = '6 in 12'
FIELDS = {'common': 'common', 'hip-valley': 'hip_valley', 'rise': 'rise'}
LINE_MM, COLUMN_MM = 1.0, 0.4
"""Words whose feet are closer than the first stand in one line; edges closer than the second are one edge."""


def figures_of(book, table: str, name: str = SIX) -> dict[Fraction, str]:
    """Return the figures of one table by their run, computed anew."""
    settings = book.planned.settings
    pitch = next(pitch for pitch in settings.pitches if pitch.text == name)
    rows = run_rows(pitch, settings.runs, settings.measure)
    return {row.run_in: as_read(getattr(row, FIELDS[table])) for row in rows}


def pages_of(book, table: str, name: str = SIX) -> list:
    return [
        page
        for page in book.pages
        if is_grid(page.content) and (page.content.table, page.head) == (table, name)
    ]


def lines_on(book, number: int) -> list[str]:
    return [' '.join(line.split()) for line in book.lines[number - 1]]


def printed_rows(words: list[Word]) -> dict[str, list[Word]]:
    """Return the words right of each row's label, which is the first in its line."""
    rows: list[list[Word]] = []
    for word in sorted(words, key=lambda word: word.foot):
        if not rows or word.foot - rows[-1][0].foot > LINE_MM:
            rows.append([])
        rows[-1].append(word)
    ordered = [sorted(row, key=lambda word: word.left) for row in rows]
    return {row[0].text: row[1:] for row in ordered}


@pytest.mark.parametrize('table', FIELDS)
def test_every_cell_of_a_pitch_is_printed(small_book, table):
    """Line by line as one tool gives the text: label, then each figure in its order, and no more."""
    figures = figures_of(small_book, table)
    pages = pages_of(small_book, table)
    seen = 0
    for page, first_inch in zip(pages, (0, 6), strict=True):
        lines = lines_on(small_book, page.number)
        for feet in range(25):
            row = [figures.get(Fraction(12 * feet + first_inch + inch), '') for inch in range(6)]
            assert ' '.join(filter(None, [str(feet), *row])) in lines
            seen += sum(map(bool, row))

    assert seen == len(figures) == 288


@pytest.mark.parametrize('table', FIELDS)
def test_every_cell_stands_under_its_inches(small_book, table):
    """By the places of the words: a whole number ends where its head's number ends, its fraction follows it."""
    figures, trim = figures_of(small_book, table), small_book.planned.trim
    foot = trim.height_mm - trim.foot_mm
    for page in pages_of(small_book, table):
        words = [
            word
            for word in small_book.words[page.number - 1]
            if word.right > 6 and word.left < 94 and word.foot < foot
        ]
        rows = printed_rows(words)
        heads = [word for word in rows['ft'] if word.text.isdigit()]
        for feet in range(25):
            cells = {head.text: '' for head in heads}
            for word in rows[str(feet)]:
                head = max((head for head in heads if head.left < word.right), key=lambda head: head.left)
                assert '/' in word.text or abs(word.right - head.right) < COLUMN_MM
                cells[head.text] = f'{cells[head.text]} {word.text}'.strip()
            wanted = {inch: figures.get(Fraction(12 * feet + int(inch)), '') for inch in cells}
            assert wanted == cells


def test_the_small_runs_stand_at_the_foot_of_every_table(small_book):
    settings = small_book.planned.settings
    pitch = next(pitch for pitch in settings.pitches if pitch.text == SIX)
    rows = list(run_rows(pitch, part_runs(settings.runs, settings.measure.per), settings.measure))
    for table, field in FIELDS.items():
        lines = [line for page in pages_of(small_book, table) for line in lines_on(small_book, page.number)]
        names, added = (
            [word for line in lines if line.startswith(start) for word in line.removeprefix(start).split()]
            for start in ('for ', 'add ')
        )
        assert names == [
            f'{n.numerator}/{n.denominator}' for n in part_runs(settings.runs, settings.measure.per)
        ]
        assert added == ' '.join(getattr(row, field).text for row in rows).split()


def test_nothing_is_printed_outside_its_place(small_book):
    """Every word of every page is in the text, the tab or the folio, and none on another."""
    found = [
        line
        for page, words in zip(small_book.pages, small_book.words, strict=True)
        for line in misplaced(page, words, small_book.planned.trim)
    ]
    assert found == []


def test_every_page_but_a_cover_bears_its_number_and_tab(small_book):
    for page, words in zip(small_book.pages, small_book.words, strict=True):
        low = small_book.planned.trim.height_mm - small_book.planned.trim.foot_mm
        folio = {word.text for word in words if word.top >= low}
        assert (str(page.number) in folio) == ('cover' not in page.template)
        beside = [word.text for word in words if word.right < 6.4 or word.left > 93.6]
        assert beside == ([page.tab.text] if page.tab else [])


def test_no_slip_of_a_template_is_printed(small_book):
    words = [word.text for page in small_book.words for word in page]
    assert [word for word in words if any(slip in word for slip in ANYWHERE_ELSE)] == []


# Citations ---------------------------------------------------------------------------------------------------


def cell_is_on(book, number: int, table: str, run: Fraction, name: str) -> bool:
    """Return whether a page prints the figure of a run in the row of its feet."""
    feet, figure = str(run // 12), figures_of(book, table, name)[run]
    return any(
        line.split()[0] == feet and f' {figure} ' in f'{line} ' for line in lines_on(book, number) if line.split()
    )  # fmt: skip


def test_the_page_cited_is_the_page_printed(small_book):
    """What a reader sees beside the word 'page' in how-to is the page found below; examples have tests of their own."""
    ((page, words),) = [
        (page, words)
        for page, words in zip(small_book.pages, small_book.words, strict=True)
        if isinstance(page.content, HowToPage)
    ]
    numbers = [
        int(after.text.strip('.,:;'))
        for word, after in pairwise(words)
        if word.text == 'page' and after.text[0].isdigit()
    ]

    assert numbers == [page.content.page, page.content.exact.page]


def test_the_how_to_leads_to_its_figure(small_book):
    how = next(page.content for page in small_book.pages if isinstance(page.content, HowToPage))
    (run,) = [
        run
        for run in figures_of(small_book, 'common', how.pitch)
        if f'{run // 12} ft {run % 12} in' == how.run
    ]

    assert cell_is_on(small_book, how.page, 'common', run, how.pitch)
    assert f'{figures_of(small_book, "common", how.pitch)[run]} in' in how.found


def test_the_contents_lead_to_what_they_name(small_book):
    contents = next(page.content for page in small_book.pages if isinstance(page.content, ContentsPage))
    pitches = [entry for column in contents.pitches for entry in column]

    for name, number in (entry for column in contents.entries for entry in column):
        assert small_book.pages[number - 1].head == name
        assert small_book.pages[number - 2].head != name
    assert [name for name, _ in pitches] == ['4 in 12', '6 in 12', '8 in 12']
    for name, number in pitches:
        assert small_book.pages[number - 1].head == name
        assert small_book.pages[number - 2].head != name
