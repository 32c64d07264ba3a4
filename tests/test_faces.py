"""Words as the shaper says them by itself, against the same words as the typesetter lays them out."""

from __future__ import annotations

from typing import Any

import pytest

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.pdf.documents import Job
from layouts.pdf.typeset import _styled, load_typesetter, set_document
from layouts.quick.faces import Face, Laid, Sized, face_of
from tablegen.settings import read_settings

SIZES = (5.3, 9.6, 32 / 3, 11.2, 38.667)
"""Pixels; between them, every rounding of a unit."""
PLAIN = (
    'Tail',
    'VAT,',
    '(fly)',
    'office',
    '11/16',
    '−0.7071',
    '4.76°',
    '2×6',
    'ledger—rafter',
    'Über',
    ' ',
    '17',
)
ASKED = ('e\u0301', 'שלום', '\u200b', '中')
"""Of which more than glyphs is to be known, or which the font has not."""
CUTS: tuple[dict[str, Any], ...] = (
    {'font_weight': 500, 'font_variation_settings': (('wdth', 86.0), ('wght', 500.0))},
    {'font_weight': 800, 'font_variation_settings': (('wdth', 76.0), ('wght', 800.0))},
    {'font_family': ('Table', 'Open Sans'), 'font_variation_settings': (('wdth', 86.0), ('wght', 500.0))},
)


@pytest.fixture(scope='module')
def planned():
    return plan(read_settings('pitches = [7]', ''))


@pytest.fixture(scope='module')
def styled(planned):
    load_typesetter()
    fonts, _sheet = _styled(style(planned.trim))

    def of(size: float, said: dict[str, Any]) -> Any:
        from weasyprint.css.properties import INITIAL_VALUES
        from weasyprint.svg.text import Style

        made = Style()
        made.update(INITIAL_VALUES)
        made.update({'font_family': ('Open Sans',), 'lang': 'en', 'font_size': size} | said)
        made.font_config = fonts
        return made

    return of


@pytest.mark.parametrize('said', CUTS, ids=('text', 'heavy', 'tables'))
def test_glyphs_and_heights_at_every_size_are_the_typesetters_own(said, styled):
    face, wrong = face_of(styled(SIZES[0], said)), []
    words = [word for word in PLAIN if Sized(face, SIZES[0]).glyphs(word) is not None]
    for size in SIZES:
        sized, laid = Sized(face, size), Laid(styled(size, said))
        wrong += [(size, word) for word in words if sized.glyphs(word) != laid.glyphs(word)]
        wrong += [size for a, b in ((sized.high, laid.high), (sized.above, laid.above)) if a != b]
        numbers = [one[0] for one in laid.glyphs(''.join(words))]
        wrong += [(size, one) for one in numbers if sized.advance(one) != laid.advance(one)]
    assert wrong == []
    assert set(PLAIN) - set(words) <= {'Über', 'ledger—rafter'}  # of which the tables' font has no letters
    assert [word for word in ASKED if sized.glyphs(word) is not None] == []


def test_a_shaper_that_says_otherwise_than_the_typesetter_is_not_asked(
    planned, styled, tmp_path, monkeypatch
):
    page = next(page for page in planned.pages() if page.template == 'opening')
    job = Job(pages_html([page], ''), style(planned.trim), 1, tmp_path / 'page.pdf')
    set_document(job)
    quickly = job.out.read_bytes()
    advance = Face.advance
    monkeypatch.setattr(Face, 'shaped', lambda *_asked: [])
    monkeypatch.setattr(Face, 'advance', lambda self, *asked: advance(self, *asked) + 1)
    face = face_of(styled(7.7, CUTS[0] | {'lang': 'de'}))
    set_document(job)

    assert face is None
    assert job.out.read_bytes() == quickly
