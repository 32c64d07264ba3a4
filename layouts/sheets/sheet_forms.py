"""Forms: pages and letters as reusable drawings of a new PDF, and its sheets written whole."""

from __future__ import annotations

import os
from pathlib import Path

from pypdf import PageObject, PdfWriter
from pypdf.generic import (
    ArrayObject,
    ByteStringObject,
    DecodedStreamObject,
    DictionaryObject,
    IndirectObject,
    NameObject,
    PdfObject,
    RectangleObject,
    StreamObject,
)

from layouts.pdf.booklet import name_file
from layouts.sheets.fold import FIT_MM, POINTS_PER_MM
from layouts.sheets.marks import glyph_outline


def page_form(
    writer: PdfWriter, page: PageObject, number: int, size_mm: tuple[float, float], source: Path
) -> StreamObject:
    """Return a page, the number-th of its source, as a form of the new file: its data untouched, its resources copied once."""
    box = page.trimbox
    found = (float(box.width) / POINTS_PER_MM, float(box.height) / POINTS_PER_MM)
    if page.rotation:
        raise ValueError(f'{source}: page {number} is turned by {page.rotation}°')
    if any(abs(a - b) > FIT_MM for a, b in zip(found, size_mm, strict=True)):
        shown, wanted = (' × '.join(f'{length:.2f}' for length in size) for size in (found, size_mm))
        raise ValueError(f'{source}: page {number} is {shown} mm, not {wanted} mm')
    contents = page['/Contents'].get_object() if '/Contents' in page else ArrayObject()
    if isinstance(contents, StreamObject) and '/Filter' in contents:
        form: StreamObject = _stream(contents.clone(writer, force_duplicate=True))
    else:
        parts = contents if isinstance(contents, ArrayObject) else [contents]
        joined = DecodedStreamObject()
        joined.set_data(b'\n'.join(_stream(part).get_data() for part in parts))
        form = joined.flate_encode()
        writer._add_object(form)
    form[NameObject('/Type')] = NameObject('/XObject')
    form[NameObject('/Subtype')] = NameObject('/Form')
    form[NameObject('/BBox')] = RectangleObject([float(edge) for edge in box])
    for key in ('/Resources', '/Group'):
        if key in page:
            form[NameObject(key)] = page.raw_get(key).clone(writer)
    return form


def drawn_form(form: StreamObject) -> IndirectObject:
    """Return the name under which a new file holds a form."""
    assert form.indirect_reference is not None, 'page_form has put it into the file'
    return form.indirect_reference


def corner_of(form: StreamObject) -> tuple[float, float]:
    """Return the lower left corner of a form's box."""
    box = form['/BBox']
    assert isinstance(box, RectangleObject), 'page_form has set it'
    return float(box[0]), float(box[1])


def _stream(part: PdfObject | None) -> StreamObject:
    found = part.get_object() if part is not None else None
    assert isinstance(found, StreamObject), 'contents are streams'
    return found


def glyph_form(writer: PdfWriter, name: str) -> IndirectObject:
    """Return a letter's outline as a form."""
    outline, box = glyph_outline(name)
    drawn = DecodedStreamObject()
    drawn.set_data(outline.encode('ascii'))
    form = drawn.flate_encode()
    form[NameObject('/Type')] = NameObject('/XObject')
    form[NameObject('/Subtype')] = NameObject('/Form')
    form[NameObject('/BBox')] = RectangleObject(box)
    return writer._add_object(form)


def add_sheet(
    writer: PdfWriter, size_mm: tuple[float, float], drawn: bytes, named: dict[str, IndirectObject]
) -> None:
    """Add a page of the printer's paper with a drawing and the forms it names."""
    page = writer.add_blank_page(*(round(POINTS_PER_MM * length, 3) for length in size_mm))
    contents = DecodedStreamObject()
    contents.set_data(drawn)
    page[NameObject('/Contents')] = writer._add_object(contents.flate_encode())
    forms = DictionaryObject({NameObject(name): form for name, form in named.items()})
    page[NameObject('/Resources')] = DictionaryObject({NameObject('/XObject'): forms})


def identify(writer: PdfWriter, digest: bytes) -> None:
    """Give a file the identifier that its contents make, so that the same contents are the same file."""
    identifier = ByteStringObject(digest[:16])
    writer._ID = ArrayObject([identifier, identifier])


def write_whole(writer: PdfWriter, title: str, out: Path) -> None:
    """Write beside the file and rename, so that no half-written file ever bears its name."""
    name_file(writer, title)
    partial = out.with_name(out.name + '.partial')
    try:
        with partial.open('wb') as stream:
            writer.write(stream)
        os.replace(partial, out)
    finally:
        partial.unlink(missing_ok=True)
