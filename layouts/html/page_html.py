"""HTML: pages placed by templates, which hold the book's prose and place strings without making any."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from functools import cache
from importlib.resources import files
from pathlib import Path

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup, escape

from layouts.html.compiled import Compiled
from layouts.html.kept_numbers import with_kept_numbers
from layouts.html.member_cells import member_line
from layouts.html.numbered_steps import with_numbered_steps
from layouts.paper.longer import SIZES, fitted, size_for
from layouts.paper.page import Page
from layouts.paper.table_font import table_font_face
from layouts.paper.trim import Trim
from layouts.paper.typeface import check_letters, font_address
from layouts.words import say
from layouts.words.caution import caution_text
from tablegen.numbers.units import INCHES


@cache
def environment() -> Environment:
    """Return the templates; a misspelt name is an error, and every string is escaped."""
    made = Environment(
        loader=PackageLoader('layouts.html', 'templates'),
        undefined=StrictUndefined,
        autoescape=True,
        trim_blocks=True,
        lstrip_blocks=True,
        auto_reload=False,
        bytecode_cache=Compiled(Path(__file__).read_bytes()),
        extensions=['jinja2.ext.i18n'],
    )
    made.policies['ext.i18n.trimmed'] = True
    made.install_gettext_callables(say._, say.n_, newstyle=True)  # type: ignore[attr-defined]  # of the extension
    made.globals['base'] = INCHES.base
    made.filters |= {'kept': kept, 'fitted': fitted, 'caution': caution_text}
    made.globals['member_line'] = member_line
    return made


def kept(words: str, after: str = '') -> Markup:
    """Return words that stay in one line, lest a number part from its fraction."""
    return Markup(f'<span class="kept">{escape(words)}{escape(after)}</span>')


def pages_html(pages: Iterable[Page], title: str) -> str:
    """Return one HTML document of some pages, in their order.

    Notes:
        A page whose words are longer than the English is set smaller: a page that is made while it is taken here
        counts all of them, one made before only those of its template.
    """
    templates = environment()
    bodies = []
    say.told()
    for page in pages:
        body = templates.get_template(f'{page.template}.html').render(page=page, it=page.content)
        told = say.told()
        for _english, words in told:
            check_letters(words.replace('\n', ' '), 'language')
        bodies.append(_at_size(body, size_for(told)))
    return document_html(bodies, title)


def _at_size(body: str, size: int) -> str:
    return body if size == SIZES[0] else f'<div class="size_{size}">{body}</div>'


def document_html(bodies: Sequence[str], title: str) -> str:
    """Return one HTML document of pages, in the language in use."""
    shell = environment().get_template('document.html')
    return with_numbered_steps(
        with_kept_numbers(shell.render(title=title, bodies=bodies, language=say.language()))
    )


def style(trim: Trim) -> str:
    """Return the style sheet of a page format: the font, the page's own sizes, then what all share."""
    sizes = f"""
@font-face {{ font-family: "Open Sans"; src: url("{font_address()}"); }}
@page {{ size: {trim.width_mm}mm {trim.height_mm}mm; margin: {trim.top_mm}mm 0 {trim.foot_mm}mm 0; }}
html {{ font-size: {10 * trim.unit_pt}pt; }}
.left {{ padding: 0 {trim.inner_mm}mm 0 {trim.outer_mm}mm; }}
.right {{ padding: 0 {trim.outer_mm}mm 0 {trim.inner_mm}mm; }}
.page.grid .heads, .page.grid .additions {{ line-height: {trim.row_units / 10:.3f}rem; }}
.tab {{ width: {trim.tab_mm}mm; }}
.turned {{ line-height: {trim.tab_mm}mm; }}
.left .turned {{ left: {trim.tab_inset_mm}mm; }}
.left .tab {{ padding-left: {trim.tab_inset_mm}mm; }}
.right .tab {{ padding-right: {trim.tab_inset_mm}mm; }}
.inside {{ left: {trim.inner_mm}mm; right: {trim.outer_mm}mm; }}
.left .foot {{ left: {trim.outer_mm}mm; right: {trim.inner_mm}mm; }}
.folio {{ top: {trim.height_mm - trim.top_mm - trim.foot_mm + 1.2}mm; }}
.left .folio {{ left: {trim.outer_mm}mm; }}
.right .folio {{ right: {trim.outer_mm}mm; }}
"""
    book, words = (_style(name) for name in ('book', 'words'))
    smaller = [_smaller(words, size) for size in SIZES] if say.language() != say.SOURCE else []
    return ''.join((table_font_face(), sizes, book, words, *smaller))


def _style(name: str) -> str:
    return files('layouts.html').joinpath(f'styles/{name}.css').read_text('utf-8')


def _smaller(words: str, size: int) -> str:
    """Return the rules of words for the pages that are set in a size."""
    rules = re.sub(r'/\*.*?\*/', '', words, flags=re.DOTALL)
    rules = re.sub(r'[\d.]+rem', lambda found: f'{float(found[0][:-3]) * size / 100:.4f}rem', rules)
    return re.sub(r'(?m)(^|, )(?=\S[^{}]*\{)', rf'\1:where(.size_{size}) ', rules)
