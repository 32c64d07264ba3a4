"""The pages of each pitch, and all pitches at a glance, as printed: by head and label, worked out in space."""

from __future__ import annotations

from itertools import combinations

import pytest
from fifty_digits import real
from headed import sections
from headed_members import members
from headed_pages import grid_parts, headed, under_spacings
from headed_right import right_part
from labels.expected import BY_PITCH
from labels.members import common, hip_and_jacks
from labels.pitch_pages import FEET, INCHES, JACKS, RUNS, SMALL, glance, of_jack, of_run
from oracle.rounding import part
from pages_alone import inches
from run_books import grids_of
from skewed import HIP, RAFTER, SPACINGS
from table_pages import cells, joined

from tablegen.settings import read_settings

AT = dict(BY_PITCH)
GLANCE = {one.key: one for one in glance()}


def pages(book, template: str, pitch: str, title: str = ''):
    """Return the pages of a kind with a pitch at their head, each read by its head."""
    found = [(number, headed(number, book.words(number), book.rem)) for number in book.numbers(template)]
    return [
        (number, page)
        for number, page in found
        if page.pitch == f'{pitch} in 12' and title in ('', page.title)
    ]


@pytest.mark.parametrize('pitch', AT)
@pytest.mark.parametrize('runs', RUNS, ids=lambda runs: runs.left[0])
def test_a_table_of_runs(skewed, pitch, runs):
    """Every inch on one page, in the row of its feet; at the foot what each sixteenth adds."""
    at, seen, small, wrong = AT[pitch], [], [], []
    heads = (runs.left, runs.right(at))
    found_pages = [
        (number, page)
        for number, page in pages(skewed, 'grid', pitch)
        if (page.title, page.line) == heads[number % 2]
    ]
    for number, page in found_pages:
        table, *added = grid_parts(number, page, 'ft', skewed.rem)
        assert [label for label, _ in table.rows] == [label for label, _ in FEET]
        for head in table.heads:
            seen.append(head)
            for label, feet in FEET:
                expected, found = of_run(runs.length, at, 12 * feet + INCHES[head]), table.cell(head, label)
                if found != expected:
                    wrong.append(
                        f'page {number}, "{head}" beside {label} ft: printed {found}, expected {expected}'
                    )
        for line in added:
            for head in line.heads:
                small.append(head)
                expected, found = part(runs.length(at, SMALL[head])), line.cell(head, 'add')
                if found != expected:
                    wrong.append(f'page {number}, for {head} add: printed {found}, expected {expected}')
    assert wrong == []
    assert seen == list(INCHES)
    assert small == list(SMALL)


def test_a_list_of_runs():
    """Of steps that make no grid, and of the small runs to add: each length under its head, beside its run."""
    written = 'pitches = [5]\nruns = {by = "5 1/2 in", to = "9 ft"}\nparts = ["common", "hip-valley", "rise"]'
    lengths = dict(zip(('common', 'hip, valley', 'rise'), (runs.length for runs in RUNS), strict=True))
    grids, wrong = grids_of(read_settings(written, '')), []
    for grid in grids:
        heads = cells(grid.heads)
        assert heads == ['run', *lengths]
        for label, *found in joined(grid):
            run = inches(label)
            expected = [part(length(AT['5'], real(run))) for length in lengths.values()]
            wrong += [(label, found, expected)] * (found != expected)
    assert len(grids) > 1
    assert wrong == []


@pytest.mark.parametrize('pitch', AT)
def test_jacks_from_the_corner(skewed, pitch):
    """Line, long point and short point of every jack, under its spacing; and what the words below say of them."""
    found, notes = {}, ''
    for number, page in pages(skewed, 'jacks', pitch):
        assert (page.title, page.line) == ('Jacks, from the corner', 'inches, top edge, from the plate line')
        table = grid_parts(number, under_spacings(page, skewed.rem), 'jack', skewed.rem)[0]
        notes += table.notes
        cells = {(head, label): table.cell(head, label) for head in table.heads for label, _ in table.rows}
        assert not found.keys() & cells.keys()
        found |= cells
    expected = {
        (f'{name} in: {head}', label): figure
        for name, spacing in SPACINGS.items()
        for label, count in JACKS
        for head, figure in of_jack(AT[pitch], spacing, count).items()
    }

    assert {place: figure for place, figure in found.items() if figure} == {
        place: figure for place, figure in expected.items() if figure
    }
    assert f'hip {part(HIP)}, jacks {part(RAFTER)} in thick' in notes
    assert 'hip jack: on the side away from the corner; of a valley jack: towards it' in notes


@pytest.mark.parametrize('pitch', AT)
@pytest.mark.parametrize(
    ('template', 'title', 'line', 'named'),
    [
        ('values', 'Common rafter', 'angles in degrees, lengths in inches', common),
        ('hip_values', 'Hip, valley, jacks', 'square corner, one pitch; degrees, inches', hip_and_jacks),
    ],
)
def test_the_opening_by_member(skewed, pitch, template, title, line, named):
    """Every figure by its section, its name and the head of its column, and no more figures than these."""
    ((number, page),) = pages(skewed, template, pitch)
    expected, found = named(AT[pitch]), members(number, skewed.words(number), skewed.rem)
    wrong = [
        f'page {number}, {place}: printed {found.figure(*place)}, expected {figure}'
        for place, figure in expected.items()
        if found.figure(*place) != figure
    ]

    assert (page.title, page.line) == (title, line)
    assert wrong == []
    assert set(found.found) == set(expected)


def test_rows_that_were_changed_over_would_be_seen():
    """At one pitch or the other all figures of a page differ, but those that must agree in these sizes."""
    for named, must_agree in ((common, 1), (hip_and_jacks, 7)):
        each = [list(named(at).values()) for at in AT.values()]
        alike = [
            pair
            for pair in combinations(range(len(each[0])), 2)
            if all(figures[pair[0]] == figures[pair[1]] for figures in each)
        ]
        assert len(alike) == must_agree


@pytest.mark.parametrize('key', GLANCE)
def test_all_pitches_at_a_glance(skewed, key):
    wanted, (number,) = GLANCE[key], skewed.numbers(key)
    ((title, below),) = sections(skewed.words(number), skewed.rem)
    table = right_part(number, title, below, wanted.corner, skewed.rem, touching=key == 'glance_left')

    assert title == wanted.title
    assert table.heads == tuple(column.head for column in wanted.columns)
    assert [label for label, _ in table.rows] == [label for label, _ in wanted.rows]
    wrong = [
        f'page {number}, "{column.head}" beside {label}: printed {table.cell(column.head, label)}, '
        f'expected {column.figure(at)}'
        for column in wanted.columns
        for label, at in wanted.rows
        if table.cell(column.head, label) != column.figure(at)
    ]
    assert wrong == []
