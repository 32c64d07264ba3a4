"""Contents, covers and sections: turn to the page that is named, and what was named stands there."""

from __future__ import annotations

import re
from functools import cache

import pytest
from complete import read_complete
from each import some
from made_books import strayed
from printed_words import Word
from run_books import is_grid

from layouts.html.page_html import pages_html, style
from layouts.pages.book import Plan, plan
from layouts.pages.contents_pages import ENTRY_COLUMNS, GROUP_COLUMNS, PITCH_COLUMNS, WANTED
from layouts.pages.covers import spans
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from tablegen.groups import GROUPS
from tablegen.settings import BOOK_PARTS, read_settings

LINE_MM, COLUMN_MM = 1.0, 0.5
"""Words whose feet are closer than the first stand in one line; a number ends so near its column's right edge."""
HEADING_MM = 4.5
"""Type of a page's heading is larger than that, any other but a cover's smaller."""
HEADING_FOOT_MM = 20
COLUMNS = {
    ENTRY_COLUMNS: (0.48, 1.0),
    GROUP_COLUMNS: (0.30, 0.65, 1.0),
    PITCH_COLUMNS: (0.184, 0.388, 0.592, 0.796, 1.0),
}
"""Where the columns of a list end, in widths of the text."""
LETTERS = 'ABCDEFGHIJKL'


def text_edges(book, number: int) -> tuple[float, float]:
    """Return the left and right edge of a page's text, in mm."""
    trim = book.planned.trim
    left, right = (trim.outer_mm, trim.inner_mm) if number % 2 == 0 else (trim.inner_mm, trim.outer_mm)
    return left, trim.width_mm - right


def listed(book, number: int) -> list[tuple[str, int]]:
    """Return every name and page printed in lists, each name being what stands left of its number."""
    left, right = text_edges(book, number)
    ends = [left + (right - left) * share for shares in COLUMNS.values() for share in shares]
    found = []
    beside = [word for word in book.words[number - 1] if left - 1 < word.left < right]  # no thumb tab
    for line in lines_of_words(beside):
        name = []
        for word in line:
            if name and word.text.isdigit() and min(abs(word.right - end) for end in ends) < COLUMN_MM:
                found.append((' '.join(name), int(word.text)))
                name = []
            else:
                name.append(word.text)
    return [one for one in found if one != ('Contents', number)]  # the folio


def lines_of_words(words: list[Word]) -> list[list[Word]]:
    """Return words line by line, each from the left."""
    rows: list[list[Word]] = []
    for word in sorted(words, key=lambda word: word.foot):
        if not rows or word.foot - rows[-1][0].foot > LINE_MM:
            rows.append([])
        rows[-1].append(word)
    return [sorted(row, key=lambda word: word.left) for row in rows]


def heading(book, number: int) -> str:
    words = book.words[number - 1]
    return ' '.join(word.text for word in words if word.size > HEADING_MM and word.foot < HEADING_FOOT_MM)


def folio(book, number: int) -> str:
    """Return the line at the foot of a page without its number, which must be the page's own."""
    low = book.planned.trim.height_mm - book.planned.trim.foot_mm
    words = [word.text for word in book.words[number - 1] if word.top >= low]
    words.remove(str(number))
    return ' '.join(words)


def contents_page(book) -> int:
    return next(number for number in range(1, 9) if heading(book, number) == 'Contents')


def test_every_entry_of_the_contents_leads_to_its_heading(small_book):
    """To the page's own heading; a pitch to its big figure, a group of tables to its letter on the tab."""
    number = contents_page(small_book)
    names = dict(listed(small_book, number))

    assert {'Before you cut', 'Worked examples', '6 in 12', 'B Seats'} <= names.keys()
    for name, page in names.items():
        if name in WANTS:
            continue
        tab, before = small_book.pages[page - 1].tab, small_book.pages[page - 2].tab
        assert tab is None or tab.turned or before is None or before.text != tab.text, (
            f'{name} begins before page {page}'
        )
        if name.endswith(' in 12'):
            assert heading(small_book, page).split()[0] == name.removesuffix(' in 12') == tab.text
            assert folio(small_book, page) == name
        elif name[0] in LETTERS and name[1] == ' ':
            assert f'{tab.text} {folio(small_book, page)}' == name
        else:
            assert name in (heading(small_book, page), folio(small_book, page))
            assert name == heading(small_book, page) or name == 'Worked examples'


WANTS = {
    'cut a common rafter': 'one_rafter_left', 'cut a shed’s rafter': 'example_porch_table', 'cut a hip': 'example_hip_table',
    'cut jacks': 'example_jacks_table', 'cut a valley': 'example_valley_table',
    'set a shed on a ledger': 'example_porch_table', 'frame a saltbox': 'example_saltbox_table',
    'frame a gambrel': 'example_gambrel_table', 'fill in my own marks': 'marking_sheet', 'check my square': 'true_square',
    'read an old square’s figure': 'engraved', 'find an old roof’s pitch': 'existing_pitch',
    'know what steps add up to': 'drift', 'print this book again': 'made',
}  # fmt: skip


def test_what_a_reader_wants_to_do_leads_to_the_page_that_tells_it(small_book):
    names = dict(listed(small_book, contents_page(small_book)))

    assert len(WANTS) == len(WANTED)
    assert {name: small_book.pages[names[name] - 1].template for name in WANTS} == WANTS


def test_no_want_is_listed_that_the_book_does_not_answer():
    planned = plan(read_settings('pitches = [6]\nparts = ["values"]', ''))
    wanted = [name for column in planned.pages()[2].content.wanted for name, _page in column]

    assert wanted == ['print this book again']


def test_every_page_before_the_pitches_is_in_the_contents(small_book):
    first = small_book.planned.index['values:4 in 12']
    named = {page for _, page in listed(small_book, contents_page(small_book))}
    other = {1, contents_page(small_book)}

    notes = {number for number in range(1, first) if heading(small_book, number) == 'Notes'}
    assert set(range(1, first)) - notes - other <= named


def test_sections_are_told_by_their_pages(small_book):
    """By the first on the contents page, by both on every cover: a cover has no number, a section's last page its own words."""
    words = ' '.join(small_book.lines[contents_page(small_book) - 1])
    said = re.search(r'Sections begin on pages (.*)\.', words)[1]
    begins = [int(one) for one in said.split(' and ')]
    bounds = list(zip(begins, [begins[1] - 1, len(small_book.pages)], strict=True))

    assert begins[0] == 1
    for place, (first, last) in enumerate(bounds, 1):
        cover = ' '.join(' '.join(small_book.lines[first - 1]).split())
        assert f'Section {place} of 2, pages {first} to {last}' in cover
        assert str(first) not in [word.text for word in small_book.words[first - 1] if word.top > 125]
        assert heading(small_book, last) == 'Once more, before the saw'


@pytest.mark.parametrize(
    ('letters', 'said'),
    [('BCDEFGHIL', 'B to I and L'), ('AB', 'A and B'), ('C', 'C'), ('ABCEGHI', 'A to C, E and G to I'), (LETTERS, 'A to L')],
)  # fmt: skip
def test_letters_are_named_and_no_others(letters, said):
    assert spans(list(letters)) == said


NAMED = {
    'common': 'common rafters', 'hip-valley': 'hips and valleys', 'rise': 'rises', 'jacks': 'jacks',
    'values': 'cuts', 'glance': 'all pitches at a glance', 'examples': 'worked examples',
}  # fmt: skip


NEEDS = {
    'how-to': 'one-rafter',
    **{part: part for part in ('words', 'square', 'glance', 'examples')},
    **{group: f'group-{group}' for group in GROUPS},
}
"""Parts of a book and the page at which they begin."""


@cache
def without(left_out: str) -> Plan:
    """Return the plan of a book of one pitch with all parts but one."""
    return plan(
        read_settings(f'pitches = [6]\nparts = {[part for part in BOOK_PARTS if part != left_out]}', '')
    )


@pytest.mark.parametrize('part', some(BOOK_PARTS))
def test_a_part_left_out_is_nowhere(part):
    planned = without(part)
    pages = planned.pages()
    grids = [pages[place].content for place, draft in enumerate(planned.drafts) if draft.template == 'grid']

    assert NEEDS.get(part, f'{part}:6 in 12') not in planned.index
    assert {grid.table for grid in grids if is_grid(grid)} == {'common', 'hip-valley', 'rise'} - {part}
    assert all(NEEDS.get(name, f'{name}:6 in 12') in planned.index for name in BOOK_PARTS if name != part)


@pytest.mark.parametrize('left_out', BOOK_PARTS)
def test_a_cover_names_what_is_inside_and_nothing_else(left_out):
    planned = without(left_out)
    cover = planned.pages()[0].content
    tabs = {draft.tab.text for draft in planned.drafts if draft.tab} & set(LETTERS)

    assert {part for part, name in NAMED.items() if name in cover.tables.lower()} == NAMED.keys() - {left_out}
    spelled = re.search(r'reference tables (.*)$', cover.tables)[1]
    assert set(expanded(spelled)) == tabs


def expanded(spelled: str) -> str:
    """Return the letters that some words name: 'A to C and E' names A, B, C and E."""
    found = ''
    for one in re.split(', | and ', spelled):
        first, _, last = one.partition(' to ')
        found += LETTERS[LETTERS.index(first) : LETTERS.index(last or first) + 1]
    return found


def test_a_book_of_one_table_names_that_alone():
    cover = plan(read_settings('pitches = [6]\nparts = ["rise"]', '')).pages()[0].content

    assert (cover.pitches, cover.tables, cover.runs) == ('6 in 12', 'Rises', '1 in to 24 ft by 1 in')
    assert plan(read_settings('parts = ["values"]', '')).pages()[0].content.runs == ''


def test_a_later_section_sends_its_reader_to_nothing_that_is_not_there():
    planned = plan(read_settings('parts = ["common", "rise", "values"]', ''))
    covers = [page.content for page in planned.pages() if page.template == 'section_cover']

    assert covers
    assert {cover.elsewhere for cover in covers} == {'the cautions'}


def test_the_contents_of_a_long_book_keep_to_their_page(tmp_path):
    """Fourteen sections, twelve groups, every pitch that a first page of contents holds."""
    written = f'parts = {list(BOOK_PARTS)}\nruns = {{by = "1/4 in", to = "20 ft"}}\njacks.spacings = [16]'
    planned = plan(read_settings(written, ''))
    pages = [planned.pages()[number - 1] for number in range(1, 4)]
    job = Job(pages_html(pages, ''), style(planned.trim), len(pages), tmp_path / 'contents.pdf')
    set_document(job)

    assert [page.template for page in pages] == ['cover', 'cautions', 'contents']
    assert len(planned.index.sections) > 12
    assert strayed(pages, job, planned.trim) == []


@pytest.mark.parametrize(
    'written', ['', 'pitches = "3 to 11"\nruns = {to = "10 ft", by = "3 in"}\nsmallest_part = "1/8"']
)
def test_a_cover_names_the_pitches_and_groups_of_its_section(written):
    """By the thumb tabs of its pages; the book's own cover those of all."""
    settings = read_complete(written)
    planned = plan(settings)
    pages = planned.pages()
    for place, (first, count) in enumerate(planned.index.sections):
        drafts = planned.drafts if not place else planned.drafts[first - 1 : first - 1 + count]
        tabs = list(dict.fromkeys(draft.tab.text for draft in drafts if draft.tab and not draft.tab.turned))
        pitches, letters = (
            [tab for tab in tabs if tab not in LETTERS],
            [tab for tab in tabs if tab in LETTERS],
        )
        cover = pages[first - 1].content
        span = f'{pitches[0]} to {pitches[-1]} in 12' if pitches else ''
        assert cover.pitches == span
        if place:
            head = ' '.join(cover.head)
            assert head.partition(',')[0].startswith(span or 'Reference')
            assert (
                not letters
                or list(expanded(head.rpartition('table')[2].removeprefix('s').strip())) == letters
            )
        inside = {draft.template for draft in planned.drafts[first - 1 : first - 1 + count]}
        assert bool(cover.also) == ('example_store_table' in inside)
        runs = settings.runs
        assert cover.runs == f'{said(runs.first)} to {said(runs.last)} by {said(runs.step)}'
        assert cover.part == f'1/{settings.measure.per}'


def said(run_in) -> str:
    """Return whole feet, or whole inches of less than a foot."""
    return f'{run_in // 12} ft' if run_in >= 12 else f'{run_in} in'


@pytest.mark.parametrize(
    ('left_out', 'elsewhere'),
    [
        ('', 'how to find a length, the words and the cautions'),
        ('how-to', 'the words and the cautions'),
        ('words', 'how to find a length and the cautions'),
    ],
)
def test_what_a_later_section_sends_its_reader_for_is_in_the_first(left_out, elsewhere):
    kept = [part for part in BOOK_PARTS if part != left_out]
    planned = plan(read_settings(f'pitches = "1 to 8"\nparts = {kept}', ''))
    number = planned.index.sections[1][0]

    assert planned.pages()[number - 1].content.elsewhere == elsewhere
