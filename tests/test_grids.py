"""Grids: every figure in the cell of its feet and inches, both layers in their columns, columns on the page."""

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from run_books import (
    FIELDS,
    SMALL_RUNS,
    TABLES,
    book_settings,
    grid_steps,
    grids_of,
    is_grid,
    is_list,
    settings_with,
    sixteenths,
)
from strategies import parts, styles
from table_pages import as_read, cells, heads, joined, pages_of, pieces, runs_in
from table_rows import run_rows

from layouts.paper.trim import FIGURE_SPACE, trim_of
from tablegen.numbers import text
from tablegen.numbers.figure import Measure, length_of_count
from tablegen.settings import BOOK_PARTS, Runs, Settings, read_settings
from tablegen.tables.runs import part_runs
from tablegen.written.pitches import pitch

HAIR = 0.3
"""A tenth of a millimetre, in units: nearer than that two figures touch, and further apart rows look askew."""
APART = 3.0
"""Units between columns: more than a word space, so that rows read as figures and not as a line of text."""
FEWEST = 3
"""Runs to a foot that make a grid worth having."""


def list_steps():
    """Steps that fill no foot, or fewer than three of which do."""
    return sixteenths().filter(lambda step: (12 / step).denominator != 1 or 12 / step < FEWEST)


def expected(book: Settings, place: int, field: str) -> dict[Fraction, str]:
    rows = run_rows(book.pitches[place], book.runs, book.measure)
    return {row.run_in: as_read(getattr(row, field)) for row in rows}


def printed(book: Settings, place: int, table: str) -> list[tuple[Fraction, str]]:
    """Return the cells with a figure on all pages of a table, in the order in which they are read."""
    pages = [page for _, page in pages_of(book, place) if is_grid(page) and page.table == table]
    return [cell for page in pages for cell in runs_in(page.grid) if cell[1]]


@given(book_settings(grid_steps(), parts=TABLES))
@settings(max_examples=12)
def test_every_run_stands_in_the_cell_of_its_feet_and_inches(book):
    """Once, and nothing stands where the book has no run."""
    assume(len({run % 12 for run in book.runs}) >= FEWEST)
    for place in range(len(book.pitches)):
        for table, field in FIELDS.items():
            cells = printed(book, place, table)
            assert expected(book, place, field) == dict(cells)
            assert len(cells) == book.runs.count()


@given(book_settings(list_steps(), parts=TABLES))
@settings(max_examples=12)
def test_a_step_that_fills_no_foot_makes_a_list(book):
    lists = [page for _, page in pages_of(book) if is_list(page)]
    columns = zip(*(expected(book, 0, field).values() for field in FIELDS.values()), strict=True)
    rows = [[text.run(run), *figures] for run, figures in zip(book.runs, columns, strict=True)]

    assert rows == [row for page in lists if page.table != SMALL_RUNS for row in joined(page.grid)]
    assert [text.run(run) for run in part_runs(book.runs, book.measure.per)] == [
        row[0] for page in lists if page.table == SMALL_RUNS for row in joined(page.grid)
    ]


def test_a_list_has_the_small_runs_to_add():
    """Sixteenths below the step, then whole inches, each with what it adds to each table."""
    book = settings_with(16, text.INCHES, Runs(Fraction(7, 2), Fraction(60), Fraction(7, 2)), [Fraction(6)])
    added = [page for _, page in pages_of(book) if getattr(page, 'table', '') == SMALL_RUNS]

    assert [len(joined(page.grid)) for page in added] == [15, 3]
    assert joined(added[0].grid)[12] == ['13/16 in', '15/16', '1 1/4', '7/16']
    assert joined(added[1].grid)[2] == ['3 in', '3 3/8', '4 1/2', '1 1/2']


@pytest.mark.parametrize('last', [4, 8, 12])
def test_fewer_than_three_runs_make_a_list(last):
    book = settings_with(16, text.INCHES, Runs(Fraction(4), Fraction(last), Fraction(4)), [Fraction(6)])
    templates = {template for template, _ in pages_of(book)}

    assert ('grid' in templates, 'list' in templates) == (last == 12, last != 12)


@given(book_settings(grid_steps(), parts=TABLES))
@settings(max_examples=12)
def test_an_opening_is_of_one_table(book):
    """Whose inches take several pages: it begins on the left and ends on the right."""
    pages = [page for _, page in pages_of(book) if is_grid(page)]
    assume(len({page.grid.heads for page in pages}) > 1)

    tables = [page.table for page in pages]
    assert all(tables.count(table) % 2 == 0 for table in tables)
    assert all(left == right for left, right in zip(tables[::2], tables[1::2], strict=True))


@given(book_settings(sixteenths(), parts=(*TABLES, 'jacks')))
@settings(max_examples=12)
def test_figures_stand_apart_in_columns_on_the_page(book):
    """Every piece is measured in the font: none is wider than its column, meets another or leaves the text."""
    for grid in grids_of(book):
        stops = [10 * (grid.left + k * grid.column) for k in range(len(heads(grid)) + 1)]
        for row in pieces(grid):
            found = [piece for pair in row for piece in pair if piece]
            columns = [[piece for piece in pair if piece] for pair in row if any(pair)]
            assert all(a.right + HAIR < b.left for a, b in pairwise(found))
            assert all(a[-1].right + APART < b[0].left for a, b in pairwise(columns[1:]))
            assert found[-1].right <= trim_of(book).text_width
            # at a wider one the tab after it would lead to the next stop but one
            assert all(
                whole.right < stop for (whole, _), stop in zip(row[:-1], stops[1:], strict=False) if whole
            )


@given(book_settings(sixteenths(), parts=(*TABLES, 'jacks')))
@settings(max_examples=12)
def test_heads_stand_apart_over_their_columns(book):
    for grid in grids_of(book):
        found = heads(grid)
        starts = [10 * (grid.left + k * grid.column) for k in range(len(found))]

        assert len(found) == len(pieces(grid)[0])
        assert all(head.right < stop for head, stop in zip(found, starts[1:], strict=False))
        assert found[-1].right < trim_of(book).text_width + 1


@given(book_settings(sixteenths(), parts=(*TABLES, 'jacks')))
@settings(max_examples=12)
def test_whole_numbers_end_and_fractions_begin_on_one_line(book):
    for grid in grids_of(book):
        in_words = 'run' in cells(grid.heads)  # its lengths begin on one line
        for column in list(zip(*pieces(grid), strict=True))[in_words:]:
            ends = [whole.right for whole, _ in column if whole]
            begins = [fraction.left for _, fraction in column if fraction]
            assert max(ends, default=0) - min(ends, default=0) < HAIR
            # two spaces stand for a foot mark, to 0.02 em
            assert max(begins, default=0) - min(begins, default=0) < 0.2


@given(book_settings(grid_steps() | sixteenths(), parts=BOOK_PARTS))
@settings(max_examples=12)
def test_no_page_has_more_rows_than_it_holds(book):
    for grid in grids_of(book):
        assert 0 < len(joined(grid)) <= trim_of(book).rows


def test_more_feet_than_a_page_holds_go_on_at_a_whole_group_of_six():
    """A page holds 25 rows: 60 feet begin anew at 24 and 48, so that rules stand at the same feet."""
    book = settings_with(16, text.INCHES, Runs(last=Fraction(720)), [Fraction(6)], parts=('common',))
    feet = [[row[0] for row in joined(grid)] for grid in grids_of(book)]

    assert [(rows[0], rows[-1]) for rows in feet] == [('0', '23')] * 2 + [('24', '47')] * 2 + [
        ('48', '60')
    ] * 2


def test_a_book_that_ends_before_its_first_jack_has_no_page_of_them():
    book = read_settings('parts = ["jacks"]\nruns = {to = "11 15/16 in"}', '')
    assert pages_of(book) == []


@given(st.integers(0, 10**6), parts(), styles())
def test_two_layers_make_the_figures_text(count, per, style):
    figure = length_of_count(count, Measure(per, style))
    whole, fraction = figure.parts.before, figure.parts.fraction

    assert ' '.join(filter(None, (whole, fraction))) == as_read(figure)
    assert '/' not in whole
    assert ' ' not in fraction


@pytest.mark.parametrize(
    ('figure', 'whole', 'fraction'),
    [
        (length_of_count(859, Measure(16)), '53', '11/16'),
        (length_of_count(11, Measure(16)), '', '11/16'),
        (length_of_count(848, Measure(16)), '53', ''),
        (length_of_count(859, Measure(16, text.FEET_INCHES)), '4′ 5', '11/16'),
        (length_of_count(1921, Measure(16, text.FEET_INCHES)), '10′ 0', '1/16'),
        (length_of_count(4608, Measure(16, text.FEET_INCHES)), '24′ 0', ''),
        (length_of_count(0, Measure(16)), '0', ''),
    ],
)
def test_a_figure_in_two_layers(figure, whole, fraction):
    assert (figure.parts.before, figure.parts.fraction) == (whole, fraction)


def test_feet_and_inches_keep_their_columns():
    """Tens of feet, ones of feet, tens and ones of inches, each under its like."""
    book = settings_with(16, text.FEET_INCHES, Runs(), [Fraction(6)], parts=('rise',))
    lines = grids_of(book)[0].rows.split('\n')
    cells = [line.split('\t')[1] for line in lines]

    assert cells[1] == FIGURE_SPACE * 2 + '  ' + FIGURE_SPACE + '6'
    assert cells[2] == FIGURE_SPACE + '1′ ' + FIGURE_SPACE + '0'
    assert cells[21] == '10′ ' + FIGURE_SPACE + '6'


def test_a_fractional_head_has_room_for_no_unit():
    book = settings_with(16, text.INCHES, Runs(Fraction(1, 2), Fraction(36), Fraction(1, 2)), [Fraction(6)])
    lines = [grid.heads.split('\t') for grid in grids_of(book)]

    assert not any(head.endswith('in') for head in lines[1][1:])
    assert any(
        head.endswith('in')
        for head in grids_of(Settings(pitches=(pitch('6'),), parts=TABLES))[1].heads.split('\t')
    )
