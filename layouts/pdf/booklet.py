"""The booklet: one PDF in reading order that a screen can be led through, by outline, page numbers and links."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from pypdf import PageObject, PdfReader, PdfWriter
from pypdf.generic import (
    ArrayObject,
    BooleanObject,
    DictionaryObject,
    IndirectObject,
    NameObject,
    NumberObject,
    TextStringObject,
)

from layouts.paper.page import LINK_TO_PAGE, Entry
from layouts.words.say import language

PRODUCER = 'rafterbook'


def join(
    parts: Sequence[tuple[Path, Sequence[int]]],
    title: str,
    owner: str,
    outline: Sequence[Entry],
    out: Path,
    tagged: bool = False,
) -> list[PageObject]:
    """Write one PDF of some parts, and return its pages.

    Given:
        parts    PDF files, each with the places of its pages in the book, from 0
        outline  its first level
        out      the file to write
        tagged   whether the only part has tags, which are kept
    """
    if tagged:
        ((part, _places),) = parts
        writer = PdfWriter(clone_from=PdfReader(part))
        del writer.root_object[NameObject('/Outlines')]
    else:
        writer = PdfWriter()
        for page in _in_order(parts):
            writer.add_page(page)
    _add_outline(writer, outline)
    _lead_links(writer)
    name_file(writer, title, owner)
    numbered = DictionaryObject({NameObject('/S'): NameObject('/D')})
    writer.root_object[NameObject('/PageLabels')] = DictionaryObject(
        {NameObject('/Nums'): ArrayObject([NumberObject(0), numbered])}
    )
    writer.page_layout = '/SinglePage'
    # Two tags that say the same stand in two places: they are not to be made one.
    writer.compress_identical_objects(remove_duplicates=not tagged, remove_unreferenced=True)
    writer._ID = None
    with out.open('wb') as stream:
        writer.write(stream)
    return [*writer.pages]


def _in_order(parts: Sequence[tuple[Path, Sequence[int]]]) -> list[PageObject]:
    """Return the book's pages, by their places."""
    listed = (
        (place, page)
        for part, places in parts
        for place, page in zip(places, PdfReader(part).pages, strict=True)
    )
    return [page for _place, page in sorted(listed, key=lambda one: one[0])]


def name_file(writer: PdfWriter, title: str, owner: str = '') -> None:
    """Say what a file is and in which language; its window bears the title, not the file's name."""
    writer.add_metadata({'/Title': title, '/Producer': PRODUCER} | ({'/Author': owner} if owner else {}))
    writer.root_object[NameObject('/Lang')] = TextStringObject(language())
    preferences = writer.viewer_preferences or writer.create_viewer_preferences()
    preferences[NameObject('/DisplayDocTitle')] = BooleanObject(True)


def _add_outline(writer: PdfWriter, entries: Sequence[Entry], above: IndirectObject | None = None) -> None:
    for entry in entries:
        added = writer.add_outline_item(
            title=entry.name, page_number=entry.page - 1, parent=above, is_open=False
        )
        _add_outline(writer, entry.below, added)


def _lead_links(writer: PdfWriter) -> None:
    """Make links to a page's number lead to that page: parts are typeset apart and know none of each other's."""
    listed = [*writer.pages]
    pages = [page.indirect_reference for page in listed]
    for page in listed:
        for reference in page.get('/Annots', ()):
            link = reference.get_object()
            if '/A' in link:
                number = int(link.pop('/A')['/URI'].removeprefix(LINK_TO_PAGE))
                link[NameObject('/Dest')] = ArrayObject([pages[number - 1], NameObject('/Fit')])
