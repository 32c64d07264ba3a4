"""Letters taken out of a cut that was made once: the same outlines and widths as those cut for the document alone."""

from __future__ import annotations

from contextlib import nullcontext
from io import BytesIO

import pytest
from fontTools.ttLib import TTFont
from markupsafe import Markup
from pypdf import PdfReader

from layouts.html.page_html import document_html, style
from layouts.paper.trim import trim_of
from layouts.pdf import static_cuts, typeset
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from tablegen.settings import read_settings

STYLE = style(trim_of(read_settings('', '')))
USUAL = '<p>Cut the first office 5 1/2 × √2, “10°” — <b>stuff 12</b></p>'


def fonts(html: str, file) -> dict[str, dict[str, object]]:
    """Return what a document's fonts draw: by font and by glyph, its outline and its widths."""
    page = Markup(f'<section class="page left" id="page-1">{html}</section>')
    set_document(Job(document_html([page], ''), STYLE, 1, file))
    found = {}
    for font in PdfReader(file).pages[0]['/Resources']['/Font'].values():
        inside = font['/DescendantFonts'][0]['/FontDescriptor']['/FontFile2'].get_data()
        read = TTFont(BytesIO(inside))
        found[font['/BaseFont']] = {
            name: (read['glyf'][name].__dict__, read['hmtx'][name])
            for name in read.getGlyphOrder()
            if read['glyf'][name].numberOfContours
        }
    return found


@pytest.mark.parametrize('words', [USUAL, f'{USUAL}<p>Ärger, Ωμέγα</p>'])
def test_letters_are_the_same_as_if_cut_for_the_document(words, tmp_path, monkeypatch):
    """Of a document with the usual letters only, and of one with others."""
    static_cuts._faces.clear()
    found = fonts(words, tmp_path / 'cut.pdf')
    assert len(static_cuts._faces) == 2 - (words != USUAL)
    monkeypatch.setattr(typeset, 'static_cuts', nullcontext)

    assert len(found) == 2
    assert fonts(words, tmp_path / 'plain.pdf') == found


def test_a_typesetter_that_is_built_otherwise_cuts_them_itself(tmp_path, monkeypatch):
    found = fonts(USUAL, tmp_path / 'cut.pdf')
    monkeypatch.setattr(static_cuts, '_face', lambda cut: cut.no_such_face)
    static_cuts._faces.clear()

    assert fonts(USUAL, tmp_path / 'plain.pdf') == found
    assert static_cuts._faces == {}
