"""Pages of jacks: line, long point and short point of each under its spacing, and where a jack is cited."""

from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st
from run_books import book_settings, grids_of, sixteenths
from table_pages import as_read, cells, joined, pages_of
from table_rows import jack_rows

from layouts.pages.jack_pages import page_of_jack
from layouts.paper.page import Index
from layouts.paper.trim import trim_of
from tablegen.numbers import text
from tablegen.settings import Settings

JACK_HEADS = {'line': 'lengths', 'long': 'long_points', 'short': 'short_points'}


@given(book_settings(sixteenths(), parts=('jacks',)), st.sets(st.integers(96, 512), min_size=1, max_size=4))
@settings(max_examples=15)
def test_jacks_stand_by_their_number(book, spacings):
    book = Settings(
        measure=book.measure, runs=book.runs, pitches=book.pitches, trim=book.trim, parts=('jacks',),
        spacings=tuple(Fraction(spacing, 16) for spacing in sorted(spacings)),
    )  # fmt: skip
    wanted = {
        (text.rational(spacing), head, row.number): as_read(getattr(row, field)[place])
        for row in jack_rows(book.pitches[0], book)
        for place, spacing in enumerate(book.spacings)
        for head, field in JACK_HEADS.items()
    }
    found = {}
    for grid in grids_of(book):
        groups = [group.removesuffix(' in') for group in cells(grid.over)[1:] if group]
        heads = cells(grid.heads)[1:]
        assert heads == list(JACK_HEADS) * len(groups)
        for label, *texts in joined(grid):
            for place, words in enumerate(texts):
                key = groups[place // len(JACK_HEADS)], heads[place], int(label)
                assert key not in found
                found[key] = words

    assert {key: words for key, words in found.items() if words} == {
        key: words for key, words in wanted.items() if words
    }
    pages = [template for template, _ in pages_of(book)]
    assert len(pages) % 2 == 0


@given(book_settings(sixteenths(), parts=('jacks',)))
@settings(max_examples=15)
def test_a_jack_is_cited_where_it_stands(book):
    pages = [page for _, page in pages_of(book) if page and page.table == 'jacks']
    index = Index({f'jacks:{book.pitches[0].text}': 40}, 99, ())
    for row in jack_rows(book.pitches[0], book):
        for place, spacing in enumerate(book.spacings):
            if row.lengths[place]:
                number = page_of_jack(index, row.number, place, book.pitches[0], book, trim_of(book))
                page = pages[number - 40].grid
                assert f'{text.rational(spacing)} in' in cells(page.over)
                assert str(row.number) in [label for label, *_ in joined(page)]
