"""A page that nobody sees: who has set it has done what is done once, before it divides into processes that would each do it."""

from __future__ import annotations

from pathlib import Path
from urllib.parse import quote

from layouts.html.page_html import document_html, style
from layouts.paper.trim import Trim
from layouts.pdf.typeset import Job

WEIGHTS = (500, 600, 700, 800)
"""In which drawings are lettered."""
WORDS = ''.join(
    f'<text x="1" y="9" font-family="Open Sans" font-size="8" font-weight="{weight}" text-anchor="end">1</text>'
    for weight in WEIGHTS
)
DRAWING = quote(
    f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9" width="9" height="9">{WORDS}</svg>'
)
PAGE = (
    f'<section id="warming-1" class="page left opening"><div class="opened"><h1>1</h1><pre>1</pre><p>1 <b>1</b></p>'
    f'<img alt="1" style="width:9pt;height:9pt" src="data:image/svg+xml,{DRAWING}"></div>'
    '<table class="facts"><tr><td class="n"><a href="page:1">1</a></td></tr></table></section>'
)
"""Both typefaces in all their cuts, a drawing, a table and a link."""


def warming_job(trim: Trim, folder: Path) -> Job:
    """Return a document of that page as a book of a format sets it: its style sheet is read then, and each font found."""
    return Job(document_html([PAGE], ''), style(trim), 1, folder / 'warming.pdf')
