"""A document's pages set the quick way where they are plain, and the typesetter's own way where they are not.

Contract: a page that is set here has the words, lines, grounds, drawings and links that the typesetter gives it, each where
it puts it and drawn in the same order; tests/test_quick.py compares the dots of both. What is not known here is refused
(NotPlain) and set by the typesetter, a page at a time. Its cascade, its shaper, its images and its stream are used as they
are; what is asked of its insides is asked in this room alone.
"""

from __future__ import annotations

import logging
import re
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from itertools import pairwise
from typing import Any

from layouts.quick.blocks import Blocks
from layouts.quick.cascade import Cascade
from layouts.quick.drawing import Images, QuickPage
from layouts.quick.layers import Layer, Room
from layouts.quick.looks import Looks
from layouts.quick.refusal import NotPlain
from layouts.quick.shapes import Shapes
from layouts.quick.tree import read

BODY = re.compile(r'(.*<body>\n?)(.*)(</body>.*)', re.DOTALL)
PAGE, SMALLER = re.compile(r'<section id="[a-z]+-'), re.compile(r'<div class="size_\d\d">')
"""What a page begins with, and before it one that is set smaller."""
PAGE_NAME = re.compile(r'<section id="([a-z]+-\d+)"')
CLOSE = 0.01
"""A page is full to so many CSS pixels: heights are said to a thousandth of the size of type."""


def quick_document(
    typesetter: Any, html: str, sheets: Sequence[Any], fonts: Any, tell: Callable[[int], None]
) -> Any:
    """Return a document that the typesetter can write.

    Given:
        html    a whole document, a page a section
        sheets  its style sheets as the typesetter has read them, with the fonts
        tell    told of every page that is set here

    Errors:
        whatever is raised where the typesetter is not built as it was
    """
    found = BODY.fullmatch(html)
    bodies = _bodies(found[2]) if found else []
    if not found or not bodies:  # it runs on, from page to page
        return typesetter.HTML(string=html).render(stylesheets=sheets, font_config=fonts)
    before, _pages, after = found.groups()
    quick = _begun(typesetter, before, after, sheets, fonts)
    placed: list[QuickPage | None] = []
    for body in bodies:
        try:
            placed.append(quick.page(body))
            tell(1)
        except NotPlain:
            placed.append(None)
    others: list[Any] = []
    if not all(placed):
        rest = ''.join(body for body, page in zip(bodies, placed, strict=True) if page is None)
        others = (
            typesetter.HTML(string=before + rest + after).render(stylesheets=sheets, font_config=fonts).pages
        )
    return quick.document.copy(list(_in_order(placed, others)))


def _bodies(pages: str) -> list[str]:
    """Return the HTML of each page."""
    begins = [one.start() for one in PAGE.finditer(pages)]
    wide = len('<div class="size_00">')
    begins = [at - wide if SMALLER.fullmatch(pages, max(0, at - wide), at) else at for at in begins]
    return [pages[begin:end] for begin, end in pairwise([*begins, len(pages)])]


def _begun(typesetter: Any, before: str, after: str, sheets: Sequence[Any], fonts: Any) -> Quick:
    """Return what sets pages; for documents of one style sheet, whose fonts keep it, the same: what it knows does not change pages."""
    kept: dict[tuple[str, str], Quick] = vars(fonts).setdefault('set_quickly', {})
    if (before, after) not in kept:
        kept[before, after] = Quick(typesetter, before, after, sheets, fonts)
    kept[before, after].begin()
    return kept[before, after]


def _in_order(placed: list[QuickPage | None], others: list[Any]) -> Iterator[Any]:
    """Return all pages in order, each that ran over with what is left of it."""
    left = list(others)
    for page in placed:
        yield page or left.pop(0)
        while page is None and left and not left[0].anchors:
            yield left.pop(0)
    yield from left


class Quick:
    """Sets the pages of documents of one style sheet."""

    def __init__(self, typesetter: Any, before: str, after: str, sheets: Sequence[Any], fonts: Any):
        """Before and after are a document without its pages."""
        self._typesetter, self._before, self._after = typesetter, before, after
        self._sheets, self._fonts = sheets, fonts
        self.document = self._rendered('')
        self._empty = {'': self.document.pages[0]}
        """Pages as they are before anything is put on them, by what the style sheet calls them."""
        whole = typesetter.HTML(string=before + after)
        context = self._context(whole)
        body = context.style_for(whole.etree_element.find('body'))
        self._read = lambda address: context.get_image_from_uri(url=address, context=context)
        self._shapes = Shapes(fonts)
        self._looks = Looks(Cascade(whole, context.style_for._sheets).of, body)
        self._language: str = body['lang']

    def begin(self) -> None:
        """Begin another document, whose drawings are its own."""
        self._images = Images(self._read, self._shapes)

    def page(self, html: str) -> QuickPage:
        """Set a page.

        Errors:
            NotPlain if it has anything that is not set here, or is too full
        """
        tree = read(html.strip())
        blocks = Blocks(self._looks.of(tree), self._language)
        empty = self._page_called(blocks.looks[tree][0].style['page'])
        box = empty._page_box
        x, y = box.content_box_x(), box.content_box_y()
        room, layer = Room(x, y, box.width, []), Layer()
        blocks.put(tree, room, layer)
        lowest = max(room.y, blocks.beside.bottom if blocks.beside else 0.0)
        if lowest > y + box.height + CLOSE:
            raise NotPlain('a_page_that_is_too_full')
        (name,) = PAGE_NAME.findall(html)
        return QuickPage((empty.width, empty.height), {name: (x, y, 0.0, 0.0)}, layer, blocks, self._images)

    def _page_called(self, name: str) -> Any:
        if name not in self._empty:
            self._empty[name] = self._rendered(f'<section style="page:{name}"></section>').pages[0]
        return self._empty[name]

    def _rendered(self, html: str) -> Any:
        """Return the document with some HTML for its pages, as the typesetter lays it out."""
        with _unheard():
            whole = self._typesetter.HTML(string=self._before + html + self._after)
            return whole.render(stylesheets=self._sheets, font_config=self._fonts)

    def _context(self, whole: Any) -> Any:
        from weasyprint import DEFAULT_OPTIONS
        from weasyprint.document import Document

        options = {**DEFAULT_OPTIONS, 'stylesheets': self._sheets}
        return Document._build_layout_context(whole, self._fonts, None, {}, options)


@contextmanager
def _unheard() -> Iterator[None]:
    """Let nobody hear of the page that is laid out to know how large pages are."""
    progress = logging.getLogger('weasyprint.progress')
    progress.disabled = True
    try:
        yield
    finally:
        progress.disabled = False
