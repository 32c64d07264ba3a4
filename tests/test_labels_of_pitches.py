"""The pages of each pitch, and all pitches at a glance, as printed: by head and label, worked out in space."""

from __future__ import annotations

import pytest
from headed import sections
from headed_pages import grid_parts, headed
from headed_right import right_part
from labels.expected import BY_PITCH
from labels.pitch_pages import FEET, INCHES, JACKS, RUNS, SMALL, glance, of_jack, of_run, values
from oracle.rounding import part
from skewed import SPACINGS

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
@pytest.mark.parametrize('runs', RUNS, ids=lambda runs: runs.title)
def test_a_table_of_runs(skewed, pitch, runs):
    """Every inch on one page, in the row of its feet; at the foot what each sixteenth adds."""
    at, seen, small, wrong = AT[pitch], [], [], []
    for number, page in pages(skewed, 'grid', pitch, runs.title):
        table, *added = grid_parts(number, page, 'ft', skewed.rem)
        assert page.line == (runs.right(at) if number % 2 else runs.left)
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


@pytest.mark.parametrize('pitch', AT)
def test_jacks_from_the_corner(skewed, pitch):
    ((number, page),) = pages(skewed, 'jacks', pitch)
    (table,) = grid_parts(number, page, 'jack', skewed.rem)

    assert (page.title, page.line) == (
        'Jacks, from the corner',
        'inches along the slope, plate line to hip center',
    )
    assert {(head, label): table.cell(head, label) for head in table.heads for label, _ in table.rows} == {
        (f'{name} in', label): of_jack(AT[pitch], spacing, count)
        for name, spacing in SPACINGS.items()
        for label, count in JACKS
    }


@pytest.mark.parametrize('pitch', AT)
def test_cuts_and_lengths(skewed, pitch):
    ((number, page),) = pages(skewed, 'values', pitch)
    expected, found = values(AT[pitch]), skewed.facts(number)
    wrong = [
        f'page {number}, {place}: printed {found.figure(*place)}, expected {figure}'
        for place, figure in expected.items()
        if found.figure(*place) != figure
    ]

    assert page.title == 'Cuts and lengths'
    assert wrong == []
    assert set(found.found) == set(expected)


@pytest.mark.parametrize('key', GLANCE)
def test_all_pitches_at_a_glance(skewed, key):
    wanted, (number,) = GLANCE[key], skewed.numbers(key)
    ((title, below),) = sections(skewed.words(number), skewed.rem)
    table = right_part(number, title, below, wanted.corner, skewed.rem, touching=True)

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
