"""A finished PDF read back: the words of its pages from the letters that they draw, and the places of its links."""

from __future__ import annotations

import logging
import re
from collections.abc import Callable, Iterator
from functools import cached_property, partial
from hashlib import blake2b
from pathlib import Path
from typing import Any, TypeVar

from msgspec import Struct, field
from pypdf import PageObject, PdfReader
from pypdf.errors import PyPdfError

from layouts.pdf.typefaces import Typeface, typeface_of
from tablegen.proof.ink import Ink
from tablegen.proof.page import Page
from tablegen.proof.stated import NoBook
from tablegen.proof.word import Link, Unread, Word

Found = TypeVar('Found')
Matrix = tuple[float, float, float, float, float, float]
SAME: Matrix = (1, 0, 0, 1, 0, 0)
OPERATION = re.compile(
    rb'^(?:(?P<q>q)|(?P<Q>Q)|(?P<cm>[-.\d ]+) cm|(?P<Tm>[-.\d ]+) Tm|/(?P<face>\S+) (?P<Tf>[.\d]+) Tf|\[(?P<TJ>.*)\] TJ|/(?P<Do>\S+) Do)$',
    re.MULTILINE,
)
"""What moves or writes letters, or places a drawing, each on a line of its own, as the typesetter writes them."""
PIECE = re.compile(rb'<([0-9a-f]*)>|(-?[.\d]+)')
"""Codes of letters, or how far back the next begin, in thousandths of their size."""
TAB = 10
"""In the same thousandths: letters that begin so much further on stand past a tab stop; there is no other gap."""
TURNED = 0.001
"""Letters that stand on their side, as those of a tab, are left out."""


def pages_of(path: Path) -> list[Page]:
    """Return the pages of a PDF.

    Errors:
        NoBook for what is no PDF; OSError for what cannot be read
    """
    logging.getLogger('pypdf').setLevel(
        logging.CRITICAL
    )  # what it thinks of other people's files is no answer
    pdf = soundly(path, lambda: Pdf(PdfReader(path)))
    return [
        Page(
            place + 1,
            Unread(partial(soundly, path, pdf.words, place), partial(soundly, path, pdf.print_of, place)),
            soundly(path, pdf.links, place),
            partial(soundly, path, pdf.ink, place),
            partial(soundly, path, pdf.drawn, place),
        )
        for place in range(soundly(path, lambda: len(pdf.pages)))
    ]


def soundly(path: Path, read: Callable[..., Found], *given: Any) -> Found:
    """Return what reading a file gives.

    Errors:
        NoBook for what is no PDF; OSError for what cannot be read
    """
    try:
        return read(*given)
    except (PyPdfError, LookupError, ValueError, TypeError, AttributeError) as fault:
        raise NoBook(str(path)) from fault


class Pdf(Struct, dict=True):
    """A PDF whose pages are read, each font once."""

    reader: PdfReader
    fonts: dict[int, Typeface] = field(default_factory=dict)
    placed: dict[int, list[tuple[str, Matrix]]] = field(default_factory=dict)
    """What is placed whole on each page that was read, and where."""

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
        """Return the words of a page, by its place from 0, without those of what is placed whole."""
        placed = self.placed[place] = []
        return words_in(*self._written(place), placed=placed)

    def drawn(self, place: int) -> list[Word]:
        """Return the words of what is placed whole on a page: parts of drawings."""
        if place not in self.placed:
            self.words(place)
        page: Any = self.pages[place]
        forms: Any = page['/Resources'].get_object().get('/XObject', {}) if self.placed[place] else {}
        found: list[Word] = []
        for name, at in self.placed[place]:
            form = forms.get_object()[f'/{name}'].get_object()
            if form.get('/Subtype') == '/Form' and '/Resources' in form:
                matrix = times(as_matrix(form.get('/Matrix', SAME)), at)
                found += words_in(data_of(form), self.faces(form['/Resources'].get_object()), matrix)
        return found

    def print_of(self, place: int) -> bytes:
        """Return the same for pages with the same words in the same places."""
        return print_of(*self._written(place))

    def _written(self, place: int) -> tuple[bytes, dict[str, Typeface]]:
        page: Any = self.pages[place]
        contents = page['/Contents'].get_object() if '/Contents' in page else []
        streams = contents if isinstance(contents, list) else [contents]
        data = b'\n'.join(data_of(one.get_object()) for one in streams)
        return data, self.faces(page['/Resources'].get_object()) if data else {}

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
            self.fonts[key] = typeface_of(font.get_object())
        return self.fonts[key]


def data_of(stream: Any) -> bytes:
    """Return what a stream holds, unpacked; its file keeps it packed alone."""
    data: bytes = stream.get_data()
    stream.decoded_self = None
    return data


def print_of(contents: bytes, fonts: dict[str, Typeface]) -> bytes:
    """Return the same for contents that write the same words in the same places."""
    found = blake2b(contents)
    for name, face in sorted(fonts.items()):
        found.update(name.encode() + face.print_of)
    return found.digest()


def words_in(
    contents: bytes,
    fonts: dict[str, Typeface],
    begun: Matrix = SAME,
    placed: list[tuple[str, Matrix]] | None = None,
) -> list[Word]:
    """Follow the page's state from one string to the next.

    Given:
        placed  takes what is placed whole
    """
    matrix, kept, face, size, pen = begun, [], None, 0.0, _Pen()
    for found in OPERATION.finditer(contents):
        name = found.lastgroup
        if name == 'q':
            kept.append(matrix)
        elif name == 'Q' and kept:
            matrix = kept.pop()
        elif name == 'cm':
            matrix = times(as_matrix(found['cm'].split()), matrix)
        elif name == 'Tm':
            pen.end()
            pen.begin(times(as_matrix(found['Tm'].split()), matrix))
        elif name == 'Tf':
            face, size = fonts.get(f'/{found["face"].decode("latin-1")}'), float(found['Tf'])
        elif name == 'TJ' and face and not pen.turned:
            pen.write(found['TJ'], face, size)
        elif name == 'Do' and placed is not None:
            placed.append((found['Do'].decode('latin-1'), matrix))
    pen.end()
    return pen.words


class _Pen(Struct):
    """Writes one run of text, whatever typefaces its letters are of."""

    at: Matrix = SAME
    x: float = 0.0
    letters: str = ''
    begun: float = 0.0
    high: float = 0.0
    bold: bool = False
    run: int = 0
    stops: int = 0
    words: list[Word] = field(default_factory=list)

    @property
    def turned(self) -> bool:
        """Return whether letters stand on their side or on their head."""
        return abs(self.at[1]) > TURNED or self.at[0] <= 0

    def begin(self, at: Matrix) -> None:
        """Begin another run at a place."""
        self.at, self.x, self.run, self.stops = at, at[4], self.run + 1, 0

    def write(self, pieces: bytes, face: Typeface, size: float) -> None:
        """Write a string."""
        wide, high = self.at[0] * size / 1000, abs(self.at[3]) * size
        for codes, back in PIECE.findall(pieces.replace(b'>0<', b'')):
            if back:
                ahead = -float(back)
                if ahead > TAB:
                    self.end()
                    self.stops += 1
                self.x += ahead * wide
                continue
            words, long = face.run(codes)
            start = self.x
            for n, (letters, begun, ended) in enumerate(words):
                if n:
                    self.end()
                if letters and self.letters:
                    self.letters += letters
                elif letters:
                    self.letters, self.begun = letters, start + begun * wide
                    self.high, self.bold = high, face.bold
                self.x = start + ended * wide
            self.x = start + long * wide

    def end(self) -> None:
        """End the word that has been written, if there is one."""
        if self.letters:
            self.words.append(
                Word(self.letters, self.begun, self.x, self.at[5], self.high, self.bold, self.run, self.stops)
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
