"""A book cut into documents, set side by side and each kept by itself."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from functools import cache, partial
from itertools import pairwise
from pathlib import Path

from msgspec import Struct

from layouts.html.page_html import pages_html, style
from layouts.paper.page import Page
from layouts.paper.trim import Trim
from layouts.pdf.documents import Job, Unmade

OF_THE_COPY = frozenset(('cover', 'section_cover', 'made', 'closing_made'))
"""Kinds of page that say the title, the owner or the paper: a document of their own, so that all others stay what they were."""
MANY = 6
"""Pages of a kind that come in such numbers are set the quick way, as a rule."""
PAGES_OF_A_DOCUMENT = {False: 10, True: 24}
"""Fewer pages than this a document, and what each takes by itself costs more than it saves; more, and one process ends after all others.
True where there are many of a kind."""
MOST_DOCUMENTS = 4


class Part(Struct, frozen=True):
    """A document of some pages of a book."""

    job: Job | Unmade
    places: Sequence[int]
    """Of its pages in the book, from 0."""


def parts(
    pages: Sequence[Page],
    kinds: Sequence[str],
    trim: Trim,
    title: str,
    folder: Path,
    tagged: bool = False,
    made_of: str = '',
) -> Iterator[Part]:
    """Return a book's pages as documents, each made when it is asked for.

    Given:
        pages   in order; only those of one document are taken at a time
        kinds   the template of each
        folder  where the documents will be written
        tagged  whether they are to be: then they are one document, since tags of several cannot be joined
        made_of  all that the pages are made of which are not of the copy; '' where their HTML tells it

    Notes:
        How many there are is of the book and not of the machine: where a document begins can be told from its bytes.
    """
    css = cache(partial(style, trim))  # made where a document is

    def job(places: Sequence[int], out: Path) -> Job:
        html = pages_html((pages[place] for place in places), title)
        return Job(html, css(), len(places), out, tagged)

    for number, places in enumerate([range(len(pages))] if tagged else _shares(kinds)):
        out = folder / f'part-{number}.pdf'
        if not made_of or kinds[places[0]] in OF_THE_COPY:
            yield Part(job(places, out), places)
        else:
            known_by = made_of, repr(trim), repr([(place, kinds[place]) for place in places])
            yield Part(Unmade(known_by, len(places), out, partial(job, places, out)), places)


def _shares(kinds: Sequence[str]) -> Iterator[Sequence[int]]:
    """Return the places of pages that go into one document: those that take longest first, then those of this copy."""
    counts = Counter(kinds)

    def of(group: bool | None) -> list[int]:
        return [
            place
            for place, kind in enumerate(kinds)
            if group == (None if kind in OF_THE_COPY else counts[kind] >= MANY)
        ]

    for many in (False, True):
        listed = of(many)
        count = max(1, min(MOST_DOCUMENTS, len(listed) // PAGES_OF_A_DOCUMENT[many]))
        bounds = [round(len(listed) * share / count) for share in range(count + 1)]
        yield from (listed[start:stop] for start, stop in pairwise(bounds) if start < stop)
        if not many and of(None):
            yield of(None)
