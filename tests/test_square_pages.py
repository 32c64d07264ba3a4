"""The openings on checking the tool, as they are printed: every figure read back from the PDF."""

from __future__ import annotations

import pytest
from card_support import decimals, lines_of, mixed
from check_support import real, rounded
from complete import complete_plan, read_complete
from mpmath import asin, degrees, mpf, sqrt
from msgspec.structs import replace

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from tablegen.numbers import text
from tablegen.numbers.figure import Measure
from tablegen.settings import BOOK_PARTS

STEPS = (4, 8, 12, 16, 20, 24)
ONE_PITCH = read_complete('pitches = [6]')


@pytest.fixture(scope='module')
def printed(tmp_path_factory):
    """Return the lines of the four pages of the usual book."""
    planned = complete_plan()
    first = planned.index['square']
    pages = planned.pages()[first - 1 : first + 3]
    out = tmp_path_factory.mktemp('square') / 'square.pdf'
    set_document(Job(pages_html(pages, 'square'), style(planned.trim), 4, out))
    return [lines_of(out, page) for page in range(1, 5)]


def signed(number: mpf) -> str:
    count = rounded(abs(number), 1000)
    if number == 0:
        return '0'
    return ('+' if number > 0 else '−') + text.decimal(count, 3)


def test_the_openings_lie_between_the_words_and_the_glance():
    index = complete_plan().index

    assert index['words'] < index['existing'] == index['square'] - 2 == index['glance'] - 6
    assert index['square'] % 2 == 0
    assert index['values:1 in 12'] == index['glance'] + 2


@pytest.mark.parametrize('left_out', ['words', 'how-to', 'glance'])
def test_they_begin_on_the_left_whatever_else_is_left_out(left_out):
    book = replace(ONE_PITCH, parts=tuple(part for part in BOOK_PARTS if part != left_out))

    assert plan(book).index['square'] % 2 == 0


def test_a_book_without_them_has_six_pages_less():
    book = replace(ONE_PITCH, parts=tuple(part for part in BOOK_PARTS if part != 'square'))

    assert 'square' not in plan(book).index
    assert plan(book).index['glance'] == plan(ONE_PITCH).index['glance'] - 6


def test_the_turn_over_table(printed):
    lines = '\n'.join(printed[0])
    for gap in ('1/64', '1/32', '3/64', '1/16', '3/32', '1/8'):
        sine = real(gap) / 32
        figures = f'{decimals(degrees(asin(sine)), 3)}° {decimals(24 * sine, 3)} {decimals(144 * sine, 3)}'
        assert f'{gap} {figures}' in lines


def test_the_diagonals(printed):
    """Twice 12, five whole triangles, and two to the nearest 1/32."""
    lines = '\n'.join(printed[0])
    marks = ((12, 5), (12, 9), (16, 12), (15, 8), (20, 15), (24, 7), (24, 10), (12, 12), (24, 16))
    for body, tongue in marks:
        true = sqrt(mpf(body) ** 2 + tongue**2)
        error = 24 * ((true + real('1/32')) ** 2 - true**2) / (2 * body * tongue)
        assert f'{body} & {tongue} {mixed(true, 32)} {decimals(error, 3)}' in lines


def test_where_the_marks_of_steps_go(printed):
    lines = '\n'.join(printed[1])
    for step in range(1, 13):
        true = step * sqrt(180)
        assert f'{step} {mixed(true)} {signed(step * real("13.4375") - true)}' in lines


def test_the_engraved_figures(printed):
    for rise in range(1, 25):
        common, hip = sqrt(mpf(144) + rise**2), sqrt(mpf(288) + rise**2)
        old = sqrt(mpf(289) + rise**2)  # by 17 in a foot of common run, as old squares have it
        decimal = ' '.join(decimals(one, 2) for one in (common, hip, old, common * 16 / 12, common * 2))
        cuts = f'{mixed(144 / common)} {mixed(12 * sqrt(288) / hip)}'
        assert f'{rise} {decimal} {cuts}' in printed[2]


def test_the_drift_of_rounded_steps(printed):
    """A tongue shows 16 in: over that a step is of 6 in of run, half as long."""
    for rise in range(1, 25):
        step = sqrt(mpf(144) + rise**2) / (1 if rise <= 16 else 2)
        off = mpf(rounded(step, 16)) / 16 - step
        assert ' '.join([str(rise), mixed(step), *(signed(count * off) for count in STEPS)]) in printed[3]


def test_a_finer_tape_drifts_less(tmp_path):
    planned = plan(replace(ONE_PITCH, measure=Measure(64, 'feet-inches')))
    pages = planned.pages()[planned.index['square'] - 1 :][:4]
    set_document(Job(pages_html(pages, 'square'), style(planned.trim), 4, tmp_path / 'a.pdf'))
    off = mpf(rounded(sqrt(180), 64)) / 64 - sqrt(180)

    assert f'6 {mixed(sqrt(180), 64)} {signed(4 * off)}' in '\n'.join(lines_of(tmp_path / 'a.pdf', 4))
