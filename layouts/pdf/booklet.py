"""The booklet: one PDF in reading order that a screen can be led through, by outline, page numbers and links."""

from __future__ import annotations

import re
from collections.abc import Sequence
from pathlib import Path

import pydyf

from layouts.paper.page import LINK_TO_PAGE, Entry
from layouts.pdf.new_file import NewFile, Taken, reference
from layouts.pdf.written import Held, Page, Written, numbers_in

LINK = re.compile(
    rb'/A\s*<<[^<>]*/URI\s*\(%b(\d+)\)[^<>]*>>' % LINK_TO_PAGE.encode().replace(b':', rb'(?::|\\072)')
)
"""A link to a page's number, its colon as it is or by its code."""


def join(
    parts: Sequence[tuple[Path, Sequence[int]]],
    title: str,
    owner: str,
    outline: Sequence[Entry],
    out: Path,
    tagged: bool = False,
) -> list[Page]:
    """Write one PDF of some parts, and return its pages as they are in these.

    Given:
        parts    PDF files, each with the places of its pages in the book, from 0
        outline  its first level
        out      the file to write
        tagged   whether the only part has tags, which are kept
    """
    sources = [(Written(part), places) for part, places in parts]
    placed = [pair for source, places in sources for pair in zip(places, source.pages, strict=True)]
    pages = [page for _place, page in sorted(placed, key=lambda pair: pair[0])]
    if tagged:
        # Two tags that say the same stand in two places: they are not to be made one.
        ((source, _places),) = sources
        file = NewFile.of(source)
    else:
        file = NewFile()
        for page in pages:
            _add(file, page)
    _lead_links(file)
    catalog = file.pdf.catalog
    catalog['Outlines'] = _outline(file, outline)
    catalog['PageLabels'] = pydyf.Dictionary({'Nums': pydyf.Array([0, pydyf.Dictionary({'S': '/D'})])})
    catalog['PageLayout'] = '/SinglePage'
    file.write(out, title, owner)
    return pages


def _add(file: NewFile, page: Page) -> None:
    """Add a page; its links are no other page's, however alike."""
    source, _number, told = page
    links = [
        Held(file.renumbered(source, source.objects[number].told))
        for number in numbers_in(told.get('Annots', b''))
    ]
    said = {
        name: file.renumbered(source, said) for name, said in told.items() if name not in ('Annots', 'Parent')
    }
    if links:
        said['Annots'] = pydyf.Array([reference(file.add(link)) for link in links]).data
    file.add_page(said)


def _outline(file: NewFile, entries: Sequence[Entry]) -> bytes:
    """Add an outline of which only the first level is open, and return how it is named."""
    top = pydyf.Dictionary({'Type': '/Outlines', 'Count': len(entries)})
    file.pdf.add_object(top)
    _add_entries(file, entries, top)
    named: bytes = top.reference
    return named


def _add_entries(file: NewFile, entries: Sequence[Entry], above: pydyf.Dictionary) -> None:
    items: list[pydyf.Dictionary] = []
    for entry in entries:
        page = reference(file.pages[entry.page - 1])
        item = pydyf.Dictionary({'Title': pydyf.String(entry.name), 'Parent': above.reference})
        item['Dest'] = pydyf.Array([page, '/Fit'])
        if entry.below:
            item['Count'] = -len(entry.below)
        file.pdf.add_object(item)
        _add_entries(file, entry.below, item)
        if items:
            item['Prev'], items[-1]['Next'] = items[-1].reference, item.reference
        items.append(item)
    if items:
        above['First'], above['Last'] = items[0].reference, items[-1].reference


def _lead_links(file: NewFile) -> None:
    """Make links to a page's number lead to that page: parts are typeset apart and know none of each other's."""
    pages = [reference(page) for page in file.pages]
    for one in file.pdf.objects:
        if isinstance(one, Taken) and b'/URI' in one.held.told:
            before, number, after = LINK.split(one.held.told)
            one.held = Held(before + b'/Dest [%b /Fit]' % pages[int(number) - 1] + after)
