"""Forms: pages and letters as reusable drawings of a new PDF, and its sheets."""

from __future__ import annotations

import zlib
from collections.abc import Mapping
from pathlib import Path
from typing import NamedTuple

import pydyf

from layouts.pdf.new_file import NewFile, reference
from layouts.pdf.written import Held, Page, entries, numbers_in
from layouts.sheets.fold import FIT_MM, POINTS_PER_MM
from layouts.sheets.marks import glyph_outline


class Form(NamedTuple):
    """A page as a drawing."""

    name: bytes
    """By which the new file knows it."""
    left: float
    low: float
    """The lower left corner of its box, in points."""


def page_form(file: NewFile, page: Page, number: int, size_mm: tuple[float, float], source: Path) -> Form:
    """Return a page, the number-th of its source, as a form of the new file: its data untouched, its resources taken once."""
    left, low, right, high = box = page.trim
    found = ((right - left) / POINTS_PER_MM, (high - low) / POINTS_PER_MM)
    if turned := int(page.told.get('Rotate', 0)):
        raise ValueError(f'{source}: page {number} is turned by {turned}°')
    if any(abs(a - b) > FIT_MM for a, b in zip(found, size_mm, strict=True)):
        shown, wanted = (' × '.join(f'{length:.2f}' for length in size) for size in (found, size_mm))
        raise ValueError(f'{source}: page {number} is {shown} mm, not {wanted} mm')
    contents = numbers_in(page.told.get('Contents', b''))
    if len(contents) != 1:
        raise ValueError(f'{source}: page {number} is drawn in {len(contents)} parts, not 1')
    one = page.source.objects[contents[0]]
    more: dict[str, object] = {
        key: file.renumbered(page.source, page.told[key])
        for key in ('Resources', 'Group')
        if key in page.told
    }
    return Form(_form(file, {**entries(one.told), **more}, one.data or b'', box), left, low)


def glyph_form(file: NewFile, name: str) -> bytes:
    """Return a letter's outline as a form, as the new file knows it."""
    outline, box = glyph_outline(name)
    return _form(file, *_packed(outline.encode('ascii')), box)


def add_sheet(file: NewFile, size_mm: tuple[float, float], drawn: bytes, named: Mapping[str, bytes]) -> None:
    """Add a page of the printer's paper with a drawing and the forms it names."""
    box = pydyf.Array([0, 0, *(round(POINTS_PER_MM * length, 3) for length in size_mm)])
    said, data = _packed(drawn)
    contents = file.add(Held(pydyf.Dictionary(said).data, data))
    forms = pydyf.Dictionary({'XObject': pydyf.Dictionary(named)})
    file.add_page({'MediaBox': box, 'Contents': reference(contents), 'Resources': forms})


def _form(
    file: NewFile, said: Mapping[str, object], data: bytes, box: tuple[float, float, float, float]
) -> bytes:
    form = {'Type': '/XObject', 'Subtype': '/Form', 'BBox': pydyf.Array(box), **said}
    return reference(file.add(Held(pydyf.Dictionary(form).data, data)))


def _packed(drawn: bytes) -> tuple[dict[str, object], bytes]:
    """Return what is said of a drawing, and it."""
    data = zlib.compress(drawn)
    return {'Filter': '/FlateDecode', 'Length': len(data)}, data
