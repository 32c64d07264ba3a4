"""Books made for the tests, with their plan beside them, and what is out of place on a printed page."""

from __future__ import annotations

import os
import pickle
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from functools import cache, cached_property
from hashlib import sha256
from io import StringIO
from itertools import takewhile
from pathlib import Path

import pytest
from complete import COMPLETE
from msgspec import Struct
from printed_words import Word, lines_of, words_of

from layouts.build import Built, build
from layouts.html.page_html import pages_html, style
from layouts.pages.book import Plan, plan
from layouts.paper.page import Page
from layouts.paper.trim import Trim
from layouts.pdf.documents import Job
from layouts.pdf.progress import Progress
from layouts.pdf.typeset import set_document
from tablegen.settings import read_settings

SMALL = f'{COMPLETE}title = "Three Pitches"\nowner = "The Garden Store"\npitches = [4, 6, 8]'
OPENINGS = """
edition = "compact"
parts = ["opening", "examples"]
pitches = ["1 to 24", "7 1/2"]
[stock]
ridge = "3/4"
hip = "3 1/2"
rafter = "1 3/4"
rafters = "2x8"
hips = "2x10"
valleys = "2x12"
seat = "3 1/2"
"""
"""A compact edition of every pitch, its boards as in the skewed book."""
ANYWHERE_ELSE = ('built-in', 'None', 'Undefined', 'Markup(', '{{', '}}', '{%', 'object at')
"""What is printed when a template names the wrong thing."""
OVERHANG, HAIR = 0.75, 0.1
"""mm: row labels may begin that far left of the text, less than half a figure; anything else not at all."""


class Once(Sequence[Page]):
    """Pages each of which is made when it is first taken, and then no more."""

    def __init__(self, pages: Sequence[Page]) -> None:
        self._pages, self._made = pages, cache(pages.__getitem__)

    def __len__(self) -> int:
        return len(self._pages)

    def __getitem__(self, place: int | slice) -> Page | list[Page]:
        places = range(len(self))[place]
        return [*map(self._made, places)] if isinstance(place, slice) else self._made(places)


class MadeBook(Struct, dict=True):
    """A finished book and what it was made from."""

    planned: Plan
    built: Built | Booklet

    @cached_property
    def pages(self) -> Sequence[Page]:
        return Once(self.planned.pages())

    @cached_property
    def words(self) -> list[list[Word]]:
        return words_of(self.built.booklet)

    @cached_property
    def lines(self) -> list[list[str]]:
        return lines_of(self.built.booklet, text_box(self.planned.trim))


def made(written: str, folder: Path) -> MadeBook:
    """Return a book made from the text of a settings file."""
    settings = read_settings(written, '')
    return MadeBook(plan(settings), build(settings, folder, Progress(StringIO())))


class Booklet(Struct):
    """The booklet of a book whose sheets and card nobody asks for."""

    booklet: Path


def set_alone(written: str, folder: Path) -> MadeBook:
    """Return a book of which the booklet alone is set, in one document, in the language in use."""
    planned = plan(read_settings(written, ''))
    out = folder / 'booklet.pdf'
    set_document(Job(pages_html(planned.pages(), ''), style(planned.trim), planned.index.total, out))
    return MadeBook(planned, Booklet(out))


def shared(factory: pytest.TempPathFactory) -> Path:
    """Return a folder that all processes of a run have."""
    base = factory.getbasetemp()
    return base.parent if 'PYTEST_XDIST_WORKER' in os.environ else base


def made_once(written: str, factory: pytest.TempPathFactory) -> MadeBook:
    """Return a book that one process of a run makes for all of them: the first that asks, while others wait for its lock."""
    folder = shared(factory) / f'book-{sha256(written.encode()).hexdigest()[:16]}'
    folder.mkdir(exist_ok=True)
    done = folder / 'built.pickle'
    with locked(folder / 'lock'):
        if done.exists():
            return MadeBook(plan(read_settings(written, '')), pickle.loads(done.read_bytes()))
        book = made(written, folder / 'book')
        done.write_bytes(pickle.dumps(book.built))
    return book


@contextmanager
def locked(file: Path) -> Iterator[None]:
    """Let one process in at a time; the lock of one that has ended, however it did, holds nobody up."""
    with file.open('w') as held:
        if sys.platform == 'win32':
            yield
            return
        from fcntl import LOCK_EX, LOCK_UN, flock

        flock(held, LOCK_EX)
        try:
            yield
        finally:
            flock(held, LOCK_UN)  # processes that were begun meanwhile have the file too


def text_box(trim: Trim) -> tuple[float, float, float, float]:
    """Return left, top, width and height in mm of what holds the text of a left or a right page, and no tab."""
    margin = min(trim.outer_mm, trim.inner_mm)
    return margin, 0, trim.width_mm - 2 * margin, trim.height_mm


def misplaced(page: Page, words: list[Word], trim: Trim) -> list[str]:
    """Return every word that stands outside its page's text, its tab and its folio, or on another word."""
    left, right = (trim.outer_mm, trim.inner_mm) if page.side == 'left' else (trim.inner_mm, trim.outer_mm)
    right, foot = trim.width_mm - right, trim.height_mm - trim.foot_mm
    folio = {str(page.number), *page.head.split()}
    found = []
    for word in words:
        if word.right <= left + HAIR - OVERHANG or word.left >= right:
            fits = page.tab is not None and word.text in page.tab.text and _in_tab(word, page, trim)
        elif word.top >= foot:
            fits = word.text in folio and word.foot <= trim.height_mm - 2
        else:
            fits = word.left >= left - OVERHANG and word.right <= right + HAIR
            fits = fits and word.top >= trim.top_mm - HAIR and word.foot <= foot + HAIR
        if not fits:
            found.append(f'page {page.number}, {page.template}: {word}')
    return found + [f'page {page.number}, {page.template}: {a} on {b}' for a, b in meeting(words)]


def meeting(words: list[Word]) -> list[tuple[Word, Word]]:
    """Return the pairs of words that lie on one another, looking no further down than a word reaches."""
    ordered = sorted(words, key=lambda word: word.top)
    return [
        (a, b)
        for place, a in enumerate(ordered)
        for b in takewhile(lambda b, foot=a.foot: b.top < foot, ordered[place + 1 :])
        if a.overlaps(b)
    ]


def _in_tab(word: Word, page: Page, trim: Trim) -> bool:
    outer = (0, trim.outer_mm) if page.side == 'left' else (trim.width_mm - trim.outer_mm, trim.width_mm)
    top = trim.top_mm + page.tab.top_mm
    return (
        outer[0] + trim.tab_inset_mm * (page.side == 'left') <= word.left
        and word.right <= outer[1] - trim.tab_inset_mm * (page.side == 'right')
        and top <= word.top
        and word.foot <= top + page.tab.height_mm
    )


def strayed(pages: list[Page], job: Job, trim: Trim) -> list[str]:
    """Return what is out of place in a typeset document of some pages."""
    found = words_of(job.out)
    assert len(found) == len(pages)
    return [line for page, words in zip(pages, found, strict=True) for line in misplaced(page, words, trim)]
