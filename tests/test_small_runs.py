"""Small runs to add: on facing pages all of them, in lines that have room, and cited where they stand."""

from fractions import Fraction

import pytest
from font_measures import advance_em
from hypothesis import given, settings
from run_books import (
    FIELDS,
    SMALL_RUNS,
    TABLES,
    book_settings,
    grid_steps,
    is_grid,
    is_list,
    settings_with,
    sixteenths,
)
from table_pages import HEADS, as_read, joined, number_of, pages_of, runs_in
from table_rows import run_rows

from layouts.pages.pitch_pages import page_of_addition, page_of_run
from layouts.paper.page import Index
from layouts.paper.trim import trim_of
from tablegen.numbers import text
from tablegen.settings import Runs
from tablegen.tables.runs import part_runs
from tablegen.written.lengths import length

LETTERS = (86, 500)
"""Width and weight of the lines of small runs, as the style sheet sets them."""
FRACTION = 0.85
"""Share of its full size at which a fraction is set, or less."""


@given(book_settings(grid_steps(), parts=TABLES))
@settings(max_examples=12)
def test_facing_pages_have_all_small_runs_to_add(book):
    """Each with what it adds to that table's figures, apart from its neighbors and on the page."""
    small = part_runs(book.runs, book.measure.per)
    names = [text.rational(run) for run in small]
    rows = list(run_rows(book.pitches[0], small, book.measure))
    pages = [page for _, page in pages_of(book)]
    for left, right in zip(pages[::2], pages[1::2], strict=True):
        if not (is_grid(left) and is_grid(right) and left.table == right.table):
            continue
        lines = [line for page in (left, right) for line in page.additions]
        added = {
            pair
            for line in lines
            for pair in zip(line.names.split('\t'), line.figures.split('\t'), strict=True)
        }
        figures = [as_read(getattr(row, FIELDS[left.table])) for row in rows]
        assert set(zip(names, figures, strict=True)) == added
        assert all(fits(line, trim_of(book).text_width) for line in lines)


@pytest.mark.parametrize('style', ['inches', 'feet-inches'])
@pytest.mark.parametrize('step', [1, 2, 3, 4])
def test_wide_small_runs_stand_in_shorter_lines(step, style):
    """Steep, and of several inches: a figure wider than its column would push the next under another run."""
    book = settings_with(64, style, Runs(Fraction(step), Fraction(288), Fraction(step)), [Fraction(60)])
    pages = [page for _, page in pages_of(book) if is_grid(page)]

    assert all(fits(line, trim_of(book).text_width) for page in pages for line in page.additions)


def as_set(figure: str) -> float:
    """Return how wide a figure is, em: its fraction is set smaller by the font of tables."""
    whole, gap, fraction = figure.rpartition(' ')
    if '/' not in fraction:
        return advance_em(figure, *LETTERS)
    return advance_em(whole + gap, *LETTERS) + FRACTION * advance_em(fraction, *LETTERS)


def fits(line, width: float) -> bool:
    """Return whether the pieces of a line of small runs are narrower than their column, and it than the text."""
    size, column = 8.0, 10 * line.column
    names, figures = line.names.split('\t'), line.figures.split('\t')
    widths = [advance_em(name, *HEADS) * size for name in ['for', *names]]
    widths += [as_set(figure) * size for figure in ['add', *figures]]
    last = max(widths[len(names)], widths[-1])
    stands = 10 * line.left + len(names) * column
    return max(widths) < column and len(names) == len(figures) and stands + last < width


@given(book_settings(grid_steps() | sixteenths(), parts=TABLES))
@settings(max_examples=10)
def test_a_run_is_cited_where_its_figure_stands(book):
    """A run of the table in its cell; a small run in the lines below it, on that page or the one that faces it."""
    pages = [page for _, page in pages_of(book)]
    first = next(place for place, page in enumerate(pages) if page is not None and has_common(page))
    index, pitch = Index({f'common:{book.pitches[0].text}': 40 + first}, 99, ()), book.pitches[0]

    where = (pitch, book, trim_of(book))

    small = part_runs(book.runs, book.measure.per)
    for run in list(book.runs)[:: max(1, book.runs.count() // 12)]:
        here = page_of_run(index, 'common', run, *where) - 40
        assert run in tabled(pages[here])
        for part in small:
            there = page_of_addition(index, 'common', part, run, *where) - 40
            assert part in (tabled(pages[there]) if part in set(book.runs) else added(pages[there]))
            if part not in set(book.runs) and both_sides(pages, here):
                assert there in (here, here ^ 1)


def both_sides(pages, place: int) -> bool:
    """Return whether a page and the one that faces it are of one grid: then they have all its small runs."""
    opening = pages[place : place + 1] + pages[place ^ 1 : (place ^ 1) + 1]
    return len(opening) == 2 and all(is_grid(page) and page.table == 'common' for page in opening)


def has_common(page) -> bool:
    return is_list(page) or page.table == 'common'


def tabled(page) -> set[Fraction]:
    """Return the runs whose figures stand on a page, by the labels that a reader goes by."""
    if is_grid(page):
        return {run for run, words in runs_in(page.grid) if words}
    return set() if page.table == SMALL_RUNS else {length(label) for label, *_ in joined(page.grid)}


def added(page) -> set[Fraction]:
    """Return the small runs that stand on a page."""
    if is_grid(page):
        return {
            Fraction(name) if '/' in name else number_of(name)
            for line in page.additions
            for name in line.names.split('\t')
        }
    return {length(label) for label, *_ in joined(page.grid)} if page.table == SMALL_RUNS else set()


def test_a_book_to_a_thirty_second_says_a_thirty_second():
    """One of them beside the fifteen sixteenths; in a 1/64 book sixty-fourths and eighths."""
    for per, most in ((16, ['1/16']), (32, ['1/32', '1/16']), (64, ['1/64', '1/32', '3/64'])):
        book = settings_with(per, text.INCHES, Runs(last=Fraction(60)), [Fraction(6), Fraction(24)])
        page = next(page for _, page in pages_of(book) if is_grid(page))

        assert page.additions[0].names.split('\t')[: len(most)] == most
        assert len(page.additions) == 1


def test_metric_runs_are_listed_in_millimeters():
    """A run of 10 cm is 500/127 in: neither a head of a column nor a row that a tape shows."""
    tenth = Fraction(500, 127)
    book = settings_with(16, text.INCHES, Runs(tenth, 30 * tenth, tenth), [Fraction(6)], parts=('common',))
    inches = settings_with(16, text.INCHES, Runs(tenth, Fraction(120), Fraction(1)), [Fraction(6)])
    pages = [page for _, page in pages_of(book)]

    assert [row[0] for row in joined(pages[0].grid)][:3] == ['100 mm', '200 mm', '300 mm']
    assert all(
        is_list(page) for _, page in pages_of(inches) if hasattr(page, 'grid') and page.table != 'jacks'
    )
    assert '/127' not in ''.join(str(page) for _, page in pages_of(inches))


def test_of_two_pages_as_near_the_facing_one_is_cited():
    """Feet 24 to 47 stand on the second opening: what is added to 30 ft is read there, not a leaf before."""
    book = settings_with(16, text.INCHES, Runs(last=Fraction(720)), [Fraction(6)], parts=('common',))
    index, where = Index({'common:6 in 12': 40}, 99, ()), (book.pitches[0], book, trim_of(book))
    here = page_of_run(index, 'common', Fraction(360), *where)

    assert here == 42
    assert page_of_addition(index, 'common', Fraction(15, 16), Fraction(360), *where) == 43
    assert page_of_addition(index, 'common', Fraction(1, 16), Fraction(367), *where) == 42
