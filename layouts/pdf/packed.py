"""What a document holds packed once it is set, and nothing else: its objects stand open, to be taken over as they are."""

from __future__ import annotations

import zlib
from typing import Any

import pydyf

from layouts.pdf.new_file import Taken
from layouts.pdf.written import Held, held

HARD = 5
"""How hard it is packed: 9 makes files smaller by a fiftieth, and takes twice as long."""


def pack(_document: object, pdf: Any) -> None:
    """Pack the streams of a document that the typesetter is about to write."""
    for number, one in enumerate(pdf.objects):
        if isinstance(one, pydyf.Stream) and 'Filter' not in one.extra:
            data = zlib.compress(_held_in(one), HARD)
            said = pydyf.Dictionary({**one.extra, 'Filter': '/FlateDecode', 'Length': len(data)})
            pdf.objects[number] = Taken(Held(said.data, data))
            pdf.objects[number].number = number


def _held_in(stream: Any) -> bytes:
    """Return what a stream holds; it is as a rule of bytes alone."""
    try:
        return b'\n'.join(stream.stream)
    except TypeError:
        return held(stream.data).data or b''
