"""The objects of a PDF as they stand in its file: read no further than where they are and which others they name. ISO 32000-1, 7.3 and 7.5.

Contract: files with one table of places, as the typesetter and this program write them, are read here, and any other by a reader of all
that there are, which takes ten times as long; that is remarked on. What is joined is the same; tests/test_written.py says so.
"""

from __future__ import annotations

import re
import warnings
from collections.abc import Iterator
from io import BytesIO
from itertools import pairwise
from pathlib import Path
from typing import NamedTuple

from layouts.pdf.remark import Remark
from tablegen.errors import BookError
from tablegen.messages import message

REFERENCE = re.compile(rb'\((?:[^\\()]|\\.)*\)|\b(\d+) 0 R\b', re.DOTALL)
"""A string, in which nothing is named, or another object that is named."""
TOKEN = re.compile(
    rb'\[[^\[\]<>()]*\]|<<|>>|[\[\]]|\((?:[^\\()]|\\.)*\)|<[^<>]*>|\d+ 0 R\b|/?[^\s/<>\[\]()]+', re.DOTALL
)
TABLE = re.compile(rb'xref\n0 \d+\n((?:\d{10} \d{5} [nf] \n)+)trailer\s(.*?)\sstartxref\s(\d+)\s', re.DOTALL)
STREAM, STREAM_ENDS = b'>>\nstream\n', b'\nendstream'


class Held(NamedTuple):
    """One object of a file."""

    told: bytes
    """What it says; of a stream, what is said of what it holds."""
    data: bytes | None = None
    """What a stream holds, as it is."""


class Written:
    """A PDF's objects, by their numbers."""

    def __init__(self, file: Path):
        """Read a file."""
        try:
            self.objects, trailer = _by_table(file.read_bytes())
        except ValueError as fault:
            said = message('making.other_file', words=str(fault))
            slow = BookError('typesetter', said, '', message('making.slow_but_right'))
            warnings.warn(Remark(slow), stacklevel=2)
            self.objects, trailer = _by_library(file)
        told = entries(trailer)
        (self.root,) = numbers_in(told['Root'])
        self.info = numbers_in(told.get('Info', b''))
        self.pages = list(self._pages(*numbers_in(self.entries(self.root)['Pages'])))

    def entries(self, number: int) -> dict[str, bytes]:
        """Return what an object says under each name."""
        return entries(self.objects[number].told)

    def _pages(self, number: int) -> Iterator[Page]:
        told = self.entries(number)
        if told['Type'] == b'/Page':
            yield Page(self, number, told)
        for kid in numbers_in(told.get('Kids', b'')):
            yield from self._pages(kid)


class Page(NamedTuple):
    """A page of a file."""

    source: Written
    number: int
    told: dict[str, bytes]
    """What it says under each name."""

    @property
    def trim(self) -> tuple[float, float, float, float]:
        """Return the lower left and the upper right corner of what is left of it once it is trimmed, in points."""
        told = self.told.get('TrimBox') or self.told['MediaBox']
        left, low, right, high = map(float, told.strip(b'[ ]').split())
        return left, low, right, high


def entries(told: bytes) -> dict[str, bytes]:
    """Return what stands under each name of a dictionary, as it is written."""
    deep, begins, found = 0, 0, []
    for token in TOKEN.finditer(told):
        if token[0] in (b'<<', b'['):
            deep += 1
            if deep == 2:
                begins = token.start()
        elif token[0] in (b'>>', b']'):
            deep -= 1
            if deep == 1:
                found.append(told[begins : token.end()])
        elif deep == 1:
            found.append(token[0])
    return {name[1:].decode(): value for name, value in zip(found[::2], found[1::2], strict=True)}


def numbers_in(told: bytes) -> list[int]:
    """Return the numbers of the objects that are named somewhere, in order."""
    return [int(found[1]) for found in REFERENCE.finditer(told) if found[1]]


def held(told: bytes) -> Held:
    """Return an object of what stands in its file."""
    said, stream, data = told.partition(STREAM)
    return Held(said + b'>>', data[: data.rindex(STREAM_ENDS)]) if stream else Held(told)


def _by_table(data: bytes) -> tuple[dict[int, Held], bytes]:
    """Return a file's objects and its trailer.

    Errors:
        ValueError where it has no table of places, or something is not where that says
    """
    begins = data.rfind(b'\nxref\n') + 1
    table = TABLE.match(data, begins)
    if not table or int(table[3]) != begins:
        raise ValueError('no table of places')
    rows = table[1].splitlines()
    begun = sorted((int(row[:10]), number) for number, row in enumerate(rows) if row[17:18] == b'n')
    bodies = pairwise([*begun, (begins, 0)])
    return {number: _body(number, data[start:stop]) for (start, number), (stop, _next) in bodies}, table[2]


def _body(number: int, told: bytes) -> Held:
    head = b'%d 0 obj' % number
    if not told.startswith(head):
        raise ValueError(f'no object {number} in its place')
    return held(told[len(head) : told.rindex(b'endobj')].strip())


def _by_library(file: Path) -> tuple[dict[int, Held], bytes]:
    from pypdf import PdfReader
    from pypdf.generic import NullObject, PdfObject

    def told(one: PdfObject | None) -> bytes:
        out = BytesIO()
        (NullObject() if one is None else one).write_to_stream(out)
        return out.getvalue()

    reader = PdfReader(file)
    trailer = told(reader.trailer)
    numbers = range(1, int(entries(trailer)['Size']))
    return {number: held(told(reader.get_object(number))) for number in numbers}, trailer
