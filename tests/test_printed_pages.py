"""What holds for every printed page of both editions, from the letters that a renderer finds on them and their ink."""

from __future__ import annotations

import re
from collections import Counter
from itertools import groupby, pairwise
from statistics import median

import pytest
from made_books import MadeBook, misplaced, set_alone
from printed_ink import FRACTION, InkedPage, Run, inked_pages, is_mixed, least

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from tablegen.settings import read_settings

TABLES = {
    'drift', 'engraved', 'glance_left', 'glance_right', 'grid', 'hip_values', 'jacks', 'opening', 'ref_table', 'values',
}  # fmt: skip
"""Kinds of page that are tables of figures to saw by."""
BLOCKS = {'opening': 3}
"""Tables side by side, where there are several."""
HEAD_LINES = 4
"""Lines that title and heads take."""
SAWN_MM, SAWN_FRACTION_MM, NOTE_MM = 1.9, 1.45, 1.75
"""Heights of digits that are read at arm's length in bad light: the client's."""
MOST_WORDS = 5
"""Words in a row of a table, at most; a line of more is a note."""
MARGINS_MM, LEAST_FILLED = (8.5, 6.5, 7.5), 1 / 3
"""Of the pocket page: beside, above and below its text; how much of its height a page fills."""
A_ROW_A_PITCH = {'glance_left', 'glance_right', 'ref_table'}
"""Kinds of page that a book of three pitches fills an eighth of what the usual one does."""
SPACES_DIFFER_MM = 0.35
"""Between a number and its fraction, at most: heads are smaller, words on drawings wider."""
RASTER_MM = 0.015
"""What outlines of digits differ by, which the renderer rounds."""


@pytest.fixture(scope='module')
def compact(tmp_path_factory) -> MadeBook:
    return set_alone('edition = "compact"\npitches = [1, 6, 23]', tmp_path_factory.mktemp('compact'))


@pytest.fixture(scope='module', params=['complete', 'compact'])
def pages(request) -> list[tuple[int, str, InkedPage]]:
    """Number, kind and letters of every page of a standard book of either edition."""
    book = request.getfixturevalue('small_book' if request.param == 'complete' else 'compact')
    inked = inked_pages(book.built.booklet)
    return [
        (number, draft.template, page)
        for number, (draft, page) in enumerate(zip(book.planned.drafts, inked, strict=True), 1)
    ]


def rows(page: InkedPage) -> list[list[Run]]:
    """Return the lines of a page that are no notes, without its number."""
    return [
        line
        for line in page.lines()
        if line[0].base > page.foot and sum(run.text.isalpha() for run in line) <= MOST_WORDS
    ]


def neighbors(page: InkedPage) -> list[tuple[Run, Run]]:
    return [pair for line in rows(page) for pair in pairwise(line) if all(run.is_number for run in pair)]


def too_near(pages: list[tuple[int, str, InkedPage]]) -> list[str]:
    """Return cells that stand less than twice as far apart, in ink, as most numbers do from their fractions."""
    pairs = [
        (number, before, after, after.left - before.right)
        for number, kind, page in pages
        if kind in TABLES
        for before, after in neighbors(page)
    ]
    inside = median(gap for _number, before, after, gap in pairs if is_mixed((before, after)))
    return [
        f'page {number}: {before.text} | {after.text} {gap:.2f} mm'
        for number, before, after, gap in pairs
        if not is_mixed((before, after)) and gap < 2 * inside - RASTER_MM
    ]


def test_columns_are_twice_as_far_apart_as_a_number_from_its_fraction(pages):
    within = [
        pair for _number, kind, page in pages if kind in TABLES for pair in neighbors(page) if is_mixed(pair)
    ]
    spaces = [after.begins - before.ends for before, after in within]

    assert len(within) > 300
    assert max(spaces) - min(spaces) < SPACES_DIFFER_MM
    assert too_near(pages) == []


def test_columns_of_all_pitches_stand_apart_too(tmp_path):
    """Tables with the widest figures: tails, jacks and gable studs, up to 24 in 12."""
    planned = plan(read_settings('parts = ["tail", "jack-deductions", "gable"]', ''))
    places = [place for place, draft in enumerate(planned.drafts) if draft.template == 'ref_table']
    pages, out = planned.pages(), tmp_path / 'tables.pdf'
    html = pages_html([pages[place] for place in places], 'tables')
    set_document(Job(html, style(planned.trim), len(places), out))

    assert (
        too_near(
            [(place + 1, 'ref_table', page) for place, page in zip(places, inked_pages(out), strict=True)]
        )
        == []
    )


def test_a_line_never_ends_within_a_number_or_before_its_unit(pages):
    broken = [
        f'page {number}: {before.text} / {after.text}'
        for number, _kind, page in pages
        for line in page.lines()
        if sum(run.text.isalpha() for run in line) > 1  # a row of a table may end so
        for before, after in [(line[-1], page.after(line[-1]))]
        if not (before.in_table or after.in_table)
        and 0 < before.base - after.base < 8
        and after.begins < before.begins
        and re.search(r'\d[′°]?$', before.text)
        and (FRACTION.match(after.text) or after.text.rstrip('.,;:') in ('in', 'ft'))
    ]
    assert broken == []


def test_a_row_of_a_table_is_read_as_the_row(pages):
    """Its letters follow one another in the file from left to right, which is what is copied, searched and read aloud."""
    apart = []
    for number, kind, page in pages:
        if kind not in TABLES:
            continue
        lines = {id(run): place for place, line in enumerate(page.lines()) for run in line}
        of_rows = [run for run in page.runs if run.in_table] or page.runs
        pieces = [list(piece) for _line, piece in groupby(of_rows, lambda run, lines=lines: lines[id(run)])]
        taken = Counter(lines[id(piece[0])] for piece in pieces if page.is_row(piece))
        for place in range(HEAD_LINES if of_rows is page.runs else 0):
            del taken[place]  # a head of two lines is read before the next one
        blocks = BLOCKS.get(kind, 1)
        apart += [f'page {number}, {kind}: line {line}' for line, count in taken.items() if count > blocks]
        apart += [
            f'page {number}, {kind}: {after.text} before {before.text}'
            for piece in pieces
            for before, after in pairwise(piece)
            if after.begins < before.begins
        ]
    assert apart == []


def test_a_figure_is_found_as_it_is_printed(pages):
    """4 ft 7 in and 6 ft of run at 6 in 12: 61 1/2 and 80 1/2 in."""
    assert any('61 1/2' in page.text or '6 80 1/2' in ' '.join(page.text.split()) for *_which, page in pages)


def test_digits_are_high_enough_to_be_read(pages):
    low = []
    for number, kind, page in pages:
        figures = {id(run) for line in rows(page) for run in line} if kind in TABLES else set()
        for run in page.runs:
            if not run.is_number:
                continue
            wanted = SAWN_MM if id(run) in figures else NOTE_MM
            wanted = SAWN_FRACTION_MM if FRACTION.fullmatch(run.text) else wanted
            if least(run.heights) < wanted - RASTER_MM:
                low.append(f'page {number}, {kind}: {run.text} {least(run.heights):.2f} mm')
    assert low == []


def test_no_page_is_nearly_empty(pages):
    """But those meant for writing; how full each is stands beside its number."""
    filled = [
        (round(float(page.filled(*MARGINS_MM)), 2), number, kind)
        for number, kind, page in pages
        if kind != 'notes'
    ]
    least = dict.fromkeys(A_ROW_A_PITCH, LEAST_FILLED / 2)
    assert [one for one in sorted(filled) if one[0] < least.get(one[2], LEAST_FILLED)] == []


def test_apostrophes_and_quotation_marks_are_curly(pages):
    straight = [
        f'page {number}: {line}'
        for number, kind, page in pages
        if kind not in ('made', 'closing_made')  # print lines of a settings file
        for line in page.text.partition('Asked for:')[0].split('\n')  # from there on, lines of a roof file
        if re.search(r'["\']', line)
    ]
    assert straight == []


@pytest.fixture(scope='module')
def crowded(tmp_path_factory):
    """The widest figures that openings may have: half pitches, thirty-seconds, feet and inches."""
    written = (
        'edition = "compact"\nparts = ["opening"]\npitches = [1, "7 1/2", "23 1/2"]\n'
        'smallest_part = "1/32"\nlengths = "feet-inches"'
    )
    return set_alone(written, tmp_path_factory.mktemp('crowded'))


def test_the_widest_figures_keep_to_one_opening_a_pitch(crowded):
    """Nothing lies on another word or off the page, no figure is set under the height to be sawn by."""
    places = [crowded.planned.index[f'opening:{name} in 12'] for name in ('1', '7 1/2', '23 1/2')]
    inked = inked_pages(crowded.built.booklet)

    assert places == [places[0], places[0] + 2, places[0] + 4]
    for number in (place + side for place in places for side in (0, 1)):
        page = crowded.pages[number - 1]
        assert misplaced(page, crowded.words[number - 1], crowded.planned.trim) == []
        figures = [run for run in inked[number - 1].runs if run.in_table and run.text.isdigit()]
        assert len(figures) > 60
        assert min(least(run.heights) for run in figures) > 1.88
