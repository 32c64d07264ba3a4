"""The ink of a finished page read back: what is stroked, words at any turn, drawings placed whole. ISO 32000-1, 8 and 9."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from math import hypot
from typing import Any

from msgspec import Struct, field
from pypdf.generic import ContentStream, TextStringObject

from layouts.pdf.read_back import SAME, Matrix, as_matrix, data_of, print_of, times, words_in
from layouts.pdf.typefaces import Typeface
from tablegen.proof.ink import Ink, Piece, Said, Spot, Stroke
from tablegen.proof.word import Unread, Word

TOKEN = re.compile(
    rb'([-+]?(?:\d+\.?\d*|\.\d+))|(/[^\s/<>\[\]]*)|<([0-9a-fA-F]*)>|(<<|>>|\[|\]|[A-Za-z\'"]+[*01]?)'
)
"""A number, a name, a string, or what opens, closes or ends an operation."""
BLANK, APART, OFF = 0.12, 0.6, 0.08
"""Shares of the size of type: a gap that is a blank, one that parts two phrases, and how far off its line a letter may be."""


class _State(Struct):
    matrix: Matrix = SAME
    width: float = 1.0
    dashed: bool = False


class _Letters(Struct):
    """What is said up to some letter."""

    text: str
    start: Spot
    end: Spot
    size: float
    way: Spot

    def goes_on(self, start: Spot, size: float, way: Spot) -> float | None:
        """Return how far after it a letter stands that belongs to it; None for another."""
        x, y = start[0] - self.end[0], start[1] - self.end[1]
        ahead, aside = x * self.way[0] + y * self.way[1], abs(x * self.way[1] - y * self.way[0])
        alike = (
            abs(size - self.size) < OFF * size and hypot(way[0] - self.way[0], way[1] - self.way[1]) < 0.01
        )
        return ahead if alike and aside < OFF * size and -OFF * size * 2 < ahead < APART * size else None


class _Pen(Struct):
    """Follows the operators of a page."""

    reader: Any
    faces: Callable[[Any], dict[str, Typeface]]
    deep: bool = True
    """Whether what is drawn in drawings placed whole is followed too."""
    state: _State = field(default_factory=_State)
    kept: list[_State] = field(default_factory=list)
    paths: list[list[Spot]] = field(default_factory=list)
    strokes: list[Stroke] = field(default_factory=list)
    letters: list[_Letters] = field(default_factory=list)
    pieces: list[Piece] = field(default_factory=list)
    labels: list[str] = field(default_factory=list)

    def follow(self, stream: Any, resources: Any) -> None:
        """Follow a page, or a drawing on it."""
        fonts = self.faces(resources)
        text, face, size = SAME, None, 0.0
        for given, name in operations_of(stream, self.reader):
            if name == b'Tm':
                text = as_matrix(given)
            elif name == b'Tf':
                face, size = fonts.get(str(given[0])), float(given[1])
            elif name in (b'TJ', b'Tj') and face:
                self._write(given[0] if name == b'TJ' else given, face, size, times(text, self.state.matrix))
            elif name == b'Do':
                self._place(str(given[0]), resources)
            elif name == b'BDC' and isinstance(given[1], dict) and '/ActualText' in given[1]:
                label = given[1]['/ActualText']
                self.labels.append(label.decode('utf-16') if isinstance(label, bytes) else str(label))
            else:
                self._draw(given, name)

    def _draw(self, given: Sequence[Any], name: bytes) -> None:
        state = self.state
        match name:
            case b'q':
                self.kept.append(_State(state.matrix, state.width, state.dashed))
            case b'Q' if self.kept:
                self.state = self.kept.pop()
            case b'cm':
                state.matrix = times(as_matrix(given), state.matrix)
            case b'w':
                state.width = float(given[0])
            case b'd':
                state.dashed = bool(given[0])
            case b'm':
                self.paths.append([self._at(given)])
            case b'l' | b'c' | b'v' | b'y' if self.paths:
                self.paths[-1].append(self._at(given[-2:]))
            case b'h' if self.paths:
                self.paths[-1].append(self.paths[-1][0])
            case b'S' | b's' | b'B':
                wide = state.width * hypot(state.matrix[0], state.matrix[1])
                self.strokes += [Stroke(tuple(path), wide, state.dashed) for path in self.paths]
                self.paths = []
            case b'f' | b'f*' | b'n':
                self.paths = []

    def _at(self, given: Sequence[Any]) -> Spot:
        return _spot(float(given[0]), float(given[1]), self.state.matrix)

    def _place(self, name: str, resources: Any) -> None:
        """Take down a drawing that has words of its own."""
        form = resources.get('/XObject', {})[name].get_object()
        own = form.get('/Resources')
        if not own or '/Font' not in own.get_object():
            return
        self.kept.append(_State(self.state.matrix, self.state.width, self.state.dashed))
        at = self.state.matrix = times(as_matrix(form.get('/Matrix', SAME)), self.state.matrix)
        left, low, right, high = map(float, form['/BBox'])
        corners = [_spot(left, low, at), _spot(right, high, at)]
        words = self._words(form, at, moved_only=at[:4] == SAME[:4] and left == low == 0)
        self.pieces.append(Piece(name.strip('/'), *corners[0], *corners[1], words))
        if self.deep:
            self.follow(form, own.get_object())
        self.state = self.kept.pop()

    def _words(self, form: Any, at: Matrix, moved_only: bool) -> Unread:
        """Return the words of a drawing; only one that is moved, and not turned or scaled, is like the page that it once was."""

        def read() -> list[Word]:
            return words_in(data_of(form), self.faces(form['/Resources'].get_object()), at)

        def alike() -> bytes:
            return print_of(data_of(form), self.faces(form['/Resources'].get_object())) if moved_only else b''

        return Unread(read, alike)

    def _write(self, pieces: Any, face: Typeface, size: float, at: Matrix) -> None:
        scale = hypot(at[0], at[1])
        way, high = (at[0] / scale, at[1] / scale), scale * size
        for letter, begun, ended in _letters(pieces, face, size / 1000):
            start, end = _spot(begun, 0.0, at), _spot(ended, 0.0, at)
            if letter.isspace():
                continue
            last = self.letters[-1] if self.letters else None
            ahead = last.goes_on(start, high, way) if last else None
            if last and ahead is not None:
                last.text += ' ' * (ahead > BLANK * high) + letter
                last.end = end
            else:
                self.letters.append(_Letters(letter, start, end, high, way))


def operations_of(stream: Any, reader: Any) -> Iterator[tuple[list[Any], bytes]]:
    """Return the operands and the name of every operation; those with strings in parentheses are the library's to read."""
    data = data_of(stream)
    if b'(' in data or b'BI' in data:
        yield from ContentStream(stream, reader).operations
        return
    given: list[Any] = []
    within: list[list[Any]] = []
    for number, name, code, other in TOKEN.findall(data):
        if number:
            given.append(float(number))
        elif name:
            given.append(name.decode('latin-1'))
        elif other in (b'[', b'<<'):
            within.append(given)
            given = []
        elif other in (b']', b'>>'):
            inner, given = given, within.pop()
            given.append(inner if other == b']' else dict(zip(inner[::2], inner[1::2], strict=True)))
        elif other:
            yield given, other
            given = []
        else:
            given.append(bytes.fromhex(code.decode()))


def ink_of(page: Any, reader: Any, faces: Callable[[Any], dict[str, Typeface]], deep: bool = True) -> Ink:
    """Return the ink of a page.

    Given:
        faces  gives what resources call the fonts that they name
        deep   whether lines and turned words of drawings placed whole are its ink too
    """
    pen = _Pen(reader, faces, deep)
    contents = page.get_contents()
    if contents is not None:
        pen.follow(contents, page['/Resources'].get_object())
    said = tuple(Said(one.text, one.start, one.end, one.size) for one in pen.letters)
    size = float(page.mediabox.width), float(page.mediabox.height)
    return Ink(tuple(pen.strokes), said, tuple(pen.pieces), tuple(pen.labels), size)


def _letters(pieces: Any, face: Typeface, scale: float) -> Iterator[tuple[str, float, float]]:
    """Return each letter of a string with where it begins and ends along its line."""
    x = 0.0
    for piece in pieces:
        if not isinstance(piece, str | bytes):
            x -= float(piece) * scale
            continue
        raw = piece.original_bytes if isinstance(piece, TextStringObject) else bytes(piece)  # type: ignore[arg-type]
        for code in (int.from_bytes(raw[n : n + 2], 'big') for n in range(0, len(raw) - 1, 2)):
            right = x + face.widths.get(code, face.usual) * scale
            yield face.letters.get(code, '\N{REPLACEMENT CHARACTER}'), x, right
            x = right


def _spot(x: float, y: float, at: Matrix) -> Spot:
    return x * at[0] + y * at[2] + at[4], x * at[1] + y * at[3] + at[5]
