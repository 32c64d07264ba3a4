"""A finished PDF read back: the words of its pages from the letters that they draw, and the places of its links."""

from __future__ import annotations

import logging
import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cached_property, partial
from pathlib import Path
from typing import Any

from pypdf import PageObject, PdfReader
from pypdf.errors import PyPdfError

from tablegen.proof.ink import Ink
from tablegen.proof.page import Page
from tablegen.proof.stated import NoBook
from tablegen.proof.word import Link, Word

Matrix = tuple[float, float, float, float, float, float]
SAME: Matrix = (1, 0, 0, 1, 0, 0)
PAIR = re.compile(rb'<([0-9a-fA-F]+)> *<([0-9a-fA-F]+)>')
OPERATION = re.compile(
    rb'^(?:(?P<q>q)|(?P<Q>Q)|(?P<cm>[-.\d ]+) cm|(?P<Tm>[-.\d ]+) Tm|/(?P<face>\S+) (?P<Tf>[.\d]+) Tf|\[(?P<TJ>.*)\] TJ)$',
    re.MULTILINE,
)
"""What moves or writes letters, each on a line of its own, as the typesetter writes them."""
PIECE = re.compile(rb'<([0-9a-f]*)>|(-?[.\d]+)')
"""Codes of letters, or how far back the next begin, in thousandths of their size."""
TAB = 10
"""In the same thousandths: letters that begin so much further on stand past a tab stop; there is no other gap."""
TURNED = 0.001
"""Letters that stand on their side, as those of a tab, are left out."""


@dataclass
class Typeface:
    """What a font's two-byte codes say, and how wide they are, in thousandths of its size."""

    bold: bool
    letters: dict[int, str]
    widths: dict[int, float]
    usual: float
    known: dict[bytes, tuple[str, float]] = field(default_factory=dict)

    def glyph(self, code: bytes) -> tuple[str, float]:
        """Return what a code says, given as four hexadecimal digits, and how wide it is."""
        if code not in self.known:
            number = int.from_bytes(bytes.fromhex(code.decode()), 'big')
            letter = self.letters.get(number, '\N{REPLACEMENT CHARACTER}')
            self.known[code] = letter, self.widths.get(number, self.usual)
        return self.known[code]


def pages_of(path: Path) -> list[Page]:
    """Return the pages of a PDF.

    Errors:
        NoBook for what is no PDF; OSError for what cannot be read
    """
    logging.getLogger('pypdf').setLevel(
        logging.CRITICAL
    )  # what it thinks of other people's files is no answer
    try:
        pdf = Pdf(PdfReader(path))
        return [
            Page(place + 1, pdf.words(place), pdf.links(place), partial(pdf.ink, place))
            for place in range(len(pdf.pages))
        ]
    except (PyPdfError, LookupError, ValueError, TypeError, AttributeError) as fault:
        raise NoBook(str(path)) from fault


@dataclass
class Pdf:
    """A PDF whose pages are read, each font once."""

    reader: PdfReader
    fonts: dict[int, Typeface] = field(default_factory=dict)

    @cached_property
    def pages(self) -> list[PageObject]:
        """Return its pages."""
        return list(self.reader.pages)

    @cached_property
    def places(self) -> dict[int, int]:
        """Return the place of each page from 1, by the number of its object."""
        numbered = enumerate((page.indirect_reference for page in self.pages), 1)
        return {one.idnum: place for place, one in numbered if one}

    def words(self, place: int) -> list[Word]:
        """Return the words of a page, by its place from 0."""
        page = self.pages[place]
        contents = page.get_contents()
        if contents is None:
            return []
        fonts = self.faces(page['/Resources'].get_object())
        return list(words_in(contents.get_data(), fonts))

    def ink(self, place: int, deep: bool = True) -> Ink:
        """Return what is drawn on a page, by its place from 0; see ink_of."""
        from layouts.pdf.ink_back import ink_of  # which reads with what is here

        return ink_of(self.pages[place], self.reader, self.faces, deep)

    def faces(self, resources: Any) -> dict[str, Typeface]:
        """Return what resources call the fonts that they name."""
        named = resources.get('/Font', {})
        return {name: self._typeface(font) for name, font in named.get_object().items()} if named else {}

    def links(self, place: int) -> list[Link]:
        """Return the links of a page to pages."""
        annotations: Any = self.pages[place].get('/Annots')
        return [link for one in annotations or [] for link in self._links(one.get_object())]

    def _links(self, annotation: Any) -> Iterator[Link]:
        goal = annotation.get('/Dest') or (annotation.get('/A') or {}).get('/D')
        if annotation.get('/Subtype') == '/Link' and isinstance(goal, list):
            left, one, right, other = map(float, annotation['/Rect'])
            target = self.places.get(getattr(goal[0], 'idnum', 0), 0)
            yield Link(left, min(one, other), right, max(one, other), target)

    def _typeface(self, font: Any) -> Typeface:
        key = id(font.get_object())
        if key not in self.fonts:
            self.fonts[key] = _typeface(font.get_object())
        return self.fonts[key]


def _typeface(font: Any) -> Typeface:
    listed = font.get('/DescendantFonts')
    below = listed[0].get_object() if listed else {}
    widths: dict[int, float] = {}
    first = None
    for item in below.get('/W', []):
        one = item.get_object()
        if isinstance(one, list) and first is not None:
            widths |= {first + n: float(width) for n, width in enumerate(one)}
            first = None
        else:
            first = int(one)
    said = font['/ToUnicode'].get_object().get_data() if '/ToUnicode' in font else b''
    letters = {
        int.from_bytes(bytes.fromhex(code.decode()), 'big'): bytes.fromhex(text.decode()).decode(
            'utf-16-be', 'replace'
        )
        for code, text in PAIR.findall(said.partition(b'endcodespacerange')[2])
    }
    return Typeface('Bold' in str(font.get('/BaseFont')), letters, widths, float(below.get('/DW', 1000)))


def words_in(contents: bytes, fonts: dict[str, Typeface], placed: Matrix = SAME) -> Iterator[Word]:
    """Follow the page's state from one string to the next."""
    matrix, kept, face, size, pen = placed, [], None, 0.0, _Pen()
    for found in OPERATION.finditer(contents):
        name = found.lastgroup
        if name == 'q':
            kept.append(matrix)
        elif name == 'Q' and kept:
            matrix = kept.pop()
        elif name == 'cm':
            matrix = times(as_matrix(found['cm'].split()), matrix)
        elif name == 'Tm':
            yield from pen.ended()
            pen.begin(times(as_matrix(found['Tm'].split()), matrix))
        elif name == 'Tf':
            face, size = fonts.get(f'/{found["face"].decode("latin-1")}'), float(found['Tf'])
        elif name == 'TJ' and face and not pen.turned:
            yield from pen.write(found['TJ'], face, size)
    yield from pen.ended()


@dataclass
class _Pen:
    """Writes one run of text, whatever typefaces its letters are of."""

    at: Matrix = SAME
    x: float = 0.0
    letters: str = ''
    begun: float = 0.0
    high: float = 0.0
    bold: bool = False
    run: int = 0
    stops: int = 0

    @property
    def turned(self) -> bool:
        """Return whether letters stand on their side or on their head."""
        return abs(self.at[1]) > TURNED or self.at[0] <= 0

    def begin(self, at: Matrix) -> None:
        """Begin another run at a place."""
        self.at, self.x, self.run, self.stops = at, at[4], self.run + 1, 0

    def write(self, pieces: bytes, face: Typeface, size: float) -> Iterator[Word]:
        """Write a string, and yield the words that end in it."""
        wide, high = self.at[0] * size / 1000, abs(self.at[3]) * size
        for codes, back in PIECE.findall(pieces.replace(b'>0<', b'')):
            for code in [codes[n : n + 4] for n in range(0, len(codes), 4)]:
                letter, width = face.glyph(code)
                if letter.isspace():
                    yield from self.ended()
                elif self.letters:
                    self.letters += letter
                else:
                    self.letters, self.begun, self.high, self.bold = letter, self.x, high, face.bold
                self.x += width * wide
            if back:
                ahead = -float(back)
                if ahead > TAB:
                    yield from self.ended()
                    self.stops += 1
                self.x += ahead * wide

    def ended(self) -> Iterator[Word]:
        """Yield the word that has been written, if there is one."""
        if self.letters:
            yield Word(
                self.letters, self.begun, self.x, self.at[5], self.high, self.bold, self.run, self.stops
            )
            self.letters = ''


def as_matrix(given: Any) -> Matrix:
    """Return six operands as a matrix."""
    a, b, c, d, e, f = map(float, given)
    return a, b, c, d, e, f


def times(m: Matrix, n: Matrix) -> Matrix:
    """Return one matrix after another."""
    return (
        m[0] * n[0] + m[1] * n[2],
        m[0] * n[1] + m[1] * n[3],
        m[2] * n[0] + m[3] * n[2],
        m[2] * n[1] + m[3] * n[3],
        m[4] * n[0] + m[5] * n[2] + n[4],
        m[4] * n[1] + m[5] * n[3] + n[5],
    )
