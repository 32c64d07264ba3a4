"""The booklet: parts joined into one PDF in reading order, with its outline and its title."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from pypdf import PdfReader, PdfWriter
from pypdf.generic import NameObject, TextStringObject

from layouts.words.say import language

IDENTIFIER = b'rafterbook-00001'


def join(
    parts: Sequence[Path], title: str, owner: str, outline: Sequence[tuple[str, int]], out: Path
) -> None:
    """Write one PDF of some parts.

    Given:
        parts    PDF files in reading order
        outline  names and page numbers, from 1
        out      the file to write
    """
    writer = PdfWriter()
    for part in parts:
        writer.append(PdfReader(part), import_outline=False)
    for name, number in outline:
        writer.add_outline_item(title=name, page_number=number - 1)
    writer.metadata = None
    writer.add_metadata({'/Title': title, '/Producer': 'rafterbook'} | ({'/Author': owner} if owner else {}))
    writer.root_object[NameObject('/Lang')] = TextStringObject(language())
    writer.create_viewer_preferences()
    writer.page_layout = '/TwoPageRight'
    writer.compress_identical_objects(remove_duplicates=True, remove_unreferenced=True)
    writer._ID = None
    writer.write(out)
