"""The book as a whole: what is planned from the settings, and that every setting gives pages."""

from fractions import Fraction
from itertools import combinations, pairwise, product
from random import Random

import pytest
from cited_places import cited_in_vain, pages_of, text
from complete import complete_plan, read_complete
from hypothesis import example, given, settings
from hypothesis import strategies as st

from layouts.html.page_html import pages_html
from layouts.pages.book import figure_count, plan
from layouts.paper.page import MOST_IN_A_SECTION
from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.settings import BOOK_PARTS, EDITIONS, Settings

COMPLETE = complete_plan()
FIRST = {'compact': 'opening', 'complete': 'values'}
"""What a pitch begins with."""
PITCHES = [f'{rise} in 12' for rise in range(1, 25)]
TABLES = ('values', 'hip-values', 'jacks', 'common', 'hip-valley', 'rise')


def templates(planned) -> list[str]:
    return [draft.template for draft in planned.drafts]


def read(written: str) -> Settings:
    return read_complete(written)


def test_the_complete_book():
    """360 pages in five sections, with every pitch's five openings; 24 pitches of 864 lengths and more."""
    index = COMPLETE.index

    assert index.total == len(COMPLETE.drafts) == len(COMPLETE.pages()) == 360
    assert [count for _, count in index.sections] == [80, 72, 72, 80, 56]
    assert all(f'{table}:{name}' in index for table in TABLES for name in PITCHES)
    assert COMPLETE.figures == 24 * (3 * 288 + 3 * (24 + 18 + 15 + 12) + 13 + 38 + 4) == 27_024


@pytest.mark.parametrize('table', TABLES)
def test_pitches_follow_one_another(table):
    places = [COMPLETE.index[f'{table}:{name}'] for name in PITCHES]
    assert places == sorted(places)
    assert all(place % 2 == places[0] % 2 for place in places)


def test_every_pitch_opens_left_and_keeps_its_order():
    """The same place on every opening holds the same thing."""
    for name in PITCHES:
        first = COMPLETE.index[f'values:{name}']
        assert first % 2 == 0
        assert [COMPLETE.index[f'{table}:{name}'] - first for table in TABLES] == [0, 1, 2, 4, 6, 8]


def test_the_tabs_stand_apart_down_the_edge():
    tabs = {draft.tab.text: draft.tab for draft in COMPLETE.drafts if draft.tab and draft.tab.text.isdigit()}
    ends = [(tab.top_mm, tab.top_mm + tab.height_mm) for tab in tabs.values()]

    assert list(tabs) == [str(rise) for rise in range(1, 25)]
    assert all(end <= begin + 0.01 for (_, end), (begin, _) in pairwise(ends))
    assert ends[-1][1] <= COMPLETE.trim.height_mm - COMPLETE.trim.top_mm - COMPLETE.trim.foot_mm + 0.01


def test_the_figures_counted_are_those_in_the_tables():
    """Runs in three tables, three lengths of each jack, and what stands on the opening by member."""
    book = read('pitches = [4, 6]\nruns = {to = "30 in"}\njacks = {spacings = [12, 16]}')

    assert figure_count(book) == 2 * (3 * 30 + 3 * (2 + 1) + (13 + 38 + 2))
    assert figure_count(read('parts = ["glance"]')) == 0


def test_over_a_thousand_pages_are_refused_with_their_number():
    with pytest.raises(BookError) as refusal:
        plan(read('runs.by = "1/16 in"'))

    assert error_line(refusal.value) == (
        'runs.by: 1/16 in over 24 pitches would make 2,504 pages; allowed: up to 1,000 pages; '
        'next: take a longer step, shorter runs or fewer pitches'
    )


@pytest.mark.parametrize(
    ('edition', 'count'),
    [*(('compact', n) for n in (1, 2, 3, 5, 8, 13, 20, 21, 24)), *(('complete', n) for n in (1, 8, 21))],
)
def test_a_book_of_any_number_of_pitches_folds(edition, count):
    pitches = tuple(pitch_of_rise(Fraction(rise)) for rise in range(1, count + 1))
    index, first = plan(Settings(pitches=pitches, parts=EDITIONS[edition])).index, FIRST[edition]

    assert all(pages % 4 == 0 and pages <= MOST_IN_A_SECTION for _, pages in index.sections)
    assert sum(pages for _, pages in index.sections) == index.total
    assert [first for first, _ in index.sections] == [
        1 + sum(pages for _, pages in index.sections[:place]) for place in range(len(index.sections))
    ]
    assert all(index[f'{first}:{pitch.text}'] % 2 == 0 for pitch in pitches)


READ_FROM = {
    'store': 'Common rafter', 'hip': 'Hip or valley', 'jacks': 'Jacks, from the corner', 'valley': 'Hip or valley', 'porch': 'Common rafter',
}  # fmt: skip
"""Examples, and the title of a pitch's table that each reads."""


@given(st.sets(st.sampled_from(BOOK_PARTS), min_size=1))
@settings(max_examples=6)
@example({'opening', 'how-to', 'examples'})
@example({'opening', 'rise', 'examples'})
@example({'common', 'how-to', 'jacks', 'glance', 'examples'})
def test_nothing_cites_a_page_that_is_not_there(parts):
    """Of a book of any parts: each page cited is turned to; an example is there if its table is, or if openings alone have lengths."""
    kept = tuple(part for part in BOOK_PARTS if part in parts)
    planned = plan(Settings(pitches=(pitch_of_rise(Fraction(6)),), parts=kept))
    pages = pages_of(pages_html(planned.pages(), 'Rafter Tables'))
    assert list(pages) == list(range(1, planned.index.total + 1))
    assert cited_in_vain(pages) == []

    kinds = templates(planned)
    titles = [text(pages[number]) for number, kind in enumerate(kinds, 1) if kind in ('grid', 'jacks')]
    tabled = {one for one, title in READ_FROM.items() if any(title in told for told in titles)}
    wanted = set(READ_FROM) if 'opening' in kinds and 'grid' not in kinds else tabled
    shown = {kind.split('_')[1] for kind in kinds if kind.startswith('example_')} & set(READ_FROM)
    assert shown == (wanted if 'examples' in parts else set())


TRIMMED = ['trim = "pocket"', 'trim = "large"']
PAPERS = ['paper = "letter"', 'paper = "a4"']
LENGTHS = ['lengths = "inches"', 'lengths = "feet-inches"']
PARTS = ['smallest_part = "1/16"', 'smallest_part = "1/64"', 'smallest_part = "1/2"']
RUNS = [
    '', 'runs = {to = "9 in"}', 'runs = {by = "5 in"}', 'runs = {by = "3 1/2 in", to = "90 ft"}',
    'runs = {from = "1/2 in", to = "6 ft", by = "1/2 in"}', 'runs = {by = "12 in", to = "60 ft"}',
    'runs = {from = "40 ft", to = "40 ft"}',
]  # fmt: skip
PITCHED = [
    'pitches = [6]', 'pitches = ["26.565 deg", "45 deg"]', 'pitches = [0.5, 7.5, 100]\nsteep = true',
]  # fmt: skip
KEPT = ['', 'parts = ["common"]', 'parts = ["rise", "examples", "how-to"]', 'parts = ["jacks", "values"]']
STOCK = ['', 'jacks.spacings = ["2 in", "400 mm"]\nstock.ridge = 3.5']
KINDS = [RUNS, KEPT, TRIMMED, PAPERS, LENGTHS, PARTS, PITCHED, STOCK]


def books() -> list[tuple[str, ...]]:
    """Return a book for each of the runs with each of the parts, the rest dealt out so that every pair of choices comes up."""
    dealt, pairs = Random(15), list(product(RUNS, KEPT))
    columns = []
    for kind in KINDS[2:]:
        column: list[str] = []
        while len(column) < len(pairs):
            some = (kind * len(KEPT))[: len(KEPT)]
            dealt.shuffle(some)
            column += some
        columns.append(column)
    return [(*pair, *rest) for pair, *rest in zip(pairs, *columns, strict=True)]


def test_every_setting_gives_a_book():
    """Planned, its pages made, and placed by templates that refuse a missing name."""
    for chosen in books():
        planned = plan(read('\n'.join(chosen)))
        html = pages_html(planned.pages(), planned.settings.title)
        assert html.count('<section ') == planned.index.total, chosen
        assert 'None' not in html, chosen


def test_every_pair_of_choices_comes_up():
    for one, other in combinations(range(len(KINDS)), 2):
        found = {(book[one], book[other]) for book in books()}
        assert len(found) == len(KINDS[one]) * len(KINDS[other])


def test_a_book_needs_no_owner_and_no_title():
    assert plan(read('title = ""\nowner = ""\npitches = [6]')).pages()[0].content.owner == ''


def test_a_later_section_is_named_after_its_pitches():
    pages = COMPLETE.pages()
    covers = [page for page in pages if page.template == 'section_cover']

    assert [page.number for page in covers] == [first for first, _ in COMPLETE.index.sections[1:]]
    assert [' '.join(page.content.head) for page in covers] == [
        '7 to 13 in 12',
        '14 to 20 in 12',
        '21 to 24 in 12, tables A to C',
        'Reference tables D to I',
    ]


def test_every_part_has_tabs_of_its_own():
    """Front, square, glance, reference and examples by a word; none of them where another's stands."""
    words: dict[str, list[str]] = {}
    for number, draft in enumerate(COMPLETE.drafts, 1):
        if draft.tab and draft.tab.turned:
            words.setdefault(draft.tab.text, []).append(draft.template)
        elif not draft.tab:
            assert draft.template in (
                'cover',
                'section_cover',
                'notes',
                'closing',
                'marking_sheet',
                'numbers',
                'checked',
                'made',
            ), number
    tabs = {draft.tab.text: draft.tab for draft in COMPLETE.drafts if draft.tab and draft.tab.turned}
    ends = [(tab.top_mm, tab.top_mm + tab.height_mm) for tab in tabs.values()]

    assert [(word, templates[0]) for word, templates in words.items()] == [
        ('Start', 'cautions'),
        ('Square', 'existing_pitch'),
        ('Glance', 'glance_left'),
        ('Tables', 'ref_part'),
        ('Examples', 'example_store_table'),
    ]
    assert all(template.startswith(('example_', 'own_members')) for template in words['Examples'])
    assert all(abs(end - begin) < 0.01 for (_, end), (begin, _) in pairwise(ends))
