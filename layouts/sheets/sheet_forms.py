"""Forms: pages and letters as reusable drawings of a new PDF, and its sheets."""

from __future__ import annotations

import zlib
from collections.abc import Iterable, Mapping
from functools import cache
from math import ceil, floor
from pathlib import Path
from typing import NamedTuple

import pydyf

from layouts.pdf.new_file import NewFile, reference
from layouts.pdf.written import Held, Page, entries, numbers_in
from layouts.sheets.fold import FIT_MM, POINTS_PER_MM
from layouts.sheets.letters import Letter


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
    form = _form({**entries(one.told), **more}, one.data or b'', box)
    return Form(reference(file.add(form)), left, low)


def letter_forms(file: NewFile, letters: Iterable[Letter]) -> dict[str, bytes]:
    """Return how drawings call the outlines of letters, and how the new file names them."""
    listed = sorted(letters, key=lambda one: one.name)
    return {f'glyph-{one.name}': reference(file.once(_letter_form(one))) for one in listed}


@cache
def _letter_form(one: Letter) -> Held:
    assert one.box is not None, 'only letters with an outline become forms'
    left, low, right, high = one.box
    box = floor(left) - 1, floor(low) - 1, ceil(right) + 1, ceil(high) + 1
    return _form(*_packed(one.drawn.encode('ascii')), box)


def add_sheet(file: NewFile, size_mm: tuple[float, float], drawn: bytes, named: Mapping[str, bytes]) -> None:
    """Add a page of the printer's paper with a drawing and the forms it names."""
    box = pydyf.Array([0, 0, *(round(POINTS_PER_MM * length, 3) for length in size_mm)])
    said, data = _packed(drawn)
    contents = file.add(Held(pydyf.Dictionary(said).data, data))
    forms = pydyf.Dictionary({'XObject': pydyf.Dictionary(named)})
    file.add_page({'MediaBox': box, 'Contents': reference(contents), 'Resources': forms})


def _form(said: Mapping[str, object], data: bytes, box: tuple[float, float, float, float]) -> Held:
    form = {'Type': '/XObject', 'Subtype': '/Form', 'BBox': pydyf.Array(box), **said}
    return Held(pydyf.Dictionary(form).data, data)


def _packed(drawn: bytes) -> tuple[dict[str, object], bytes]:
    """Return what is said of a drawing, and it."""
    data = zlib.compress(drawn)
    return {'Filter': '/FlateDecode', 'Length': len(data)}, data
