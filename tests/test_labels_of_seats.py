"""Bird's mouths at every pitch, flat to steep, hips and valleys of stock of their own: figures, marks and dashes."""

from __future__ import annotations

from fractions import Fraction

import pytest
from headed import REM_MM, Part, body, marked, reference_part, sections
from labels.seats import Sizes, seat
from oracle.corner import corner
from printed_words import words_of

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from tablegen.settings import read_settings

ROWS = tuple((str(rise), corner(Fraction(rise))) for rise in range(1, 25))
EXPECTED = seat(Sizes(ROWS, Fraction(3, 2), '2×8', '2×10', '2×12'))


@pytest.fixture(scope='module')
def titled(tmp_path_factory) -> dict[str, tuple[int, list]]:
    """Return the lines below each title of the group's tables, those pages set by themselves."""
    planned = plan(read_settings('parts = ["seat"]\n[stock]\nhips = "2x10"\nvalleys = "2x12"', ''))
    pages, trim = [page for page in planned.pages() if page.template == 'ref_table'], planned.trim
    pdf = tmp_path_factory.mktemp('seats') / 'seats.pdf'
    set_document(Job(pages_html(pages, 'x'), style(trim), len(pages), pdf))
    edge = min(trim.outer_mm, trim.inner_mm)
    return {
        title: (page.number, below)
        for page, words in zip(pages, words_of(pdf), strict=True)
        for title, below in sections(
            body(words, edge, trim.width_mm - edge, trim.height_mm - trim.foot_mm), REM_MM * trim.unit_pt
        )
    }


@pytest.mark.parametrize('wanted', EXPECTED, ids=lambda one: one.key)
def test_a_table(titled, wanted):
    number, below = titled[wanted.title]
    table: Part = reference_part(number, wanted.title, below, wanted.corner, wanted.span, REM_MM)

    assert list(table.heads) == [column.head for column in wanted.columns]
    assert [label for label, _ in table.rows] == [label for label, _ in wanted.rows]
    wrong = [
        f'"{column.head}" beside {label}: printed {found}, expected {column.figure(at)}'
        for column in wanted.columns
        for label, at in wanted.rows
        if (found := marked(table.cell(column.head, label))) != column.figure(at)
    ]
    assert wrong == []
