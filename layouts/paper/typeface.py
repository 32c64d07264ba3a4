"""The one typeface: where its file is, and whether it has the letters that a cover asks for."""

from __future__ import annotations

import json
from functools import cache
from hashlib import sha256
from io import BytesIO
from pathlib import Path
from typing import Literal, Protocol

from layouts.paper import once
from tablegen.errors import BookError
from tablegen.messages import message

EM = 'em'
FILE = 'OpenSans[wdth,wght].ttf'


class Glyph(Protocol):
    """A letter's shape."""

    width: float
    """How far it advances, in font units."""

    def draw(self, pen: object) -> None:
        """Draw its outline with a pen."""


class GlyphSet(Protocol):
    """The letters of a font at one place of its axes."""

    def __getitem__(self, name: str) -> Glyph:
        """Return a letter by its glyph's name."""


class Head(Protocol):
    """A font's head table."""

    unitsPerEm: int


class Font(Protocol):
    """As much of a font as is used here; its library has no types."""

    def getBestCmap(self) -> dict[int, str]:
        """Return the glyph's name of each code point."""

    def getGlyphSet(self, *, location: dict[str, float]) -> GlyphSet:
        """Return the glyphs at a place of the axes."""

    def __getitem__(self, table: Literal['head']) -> Head:
        """Return the head table."""


def font_path() -> Path:
    """Return the font file that the package fontpkg-open-sans carries.

    Errors:
        BookError if it is not there
    """
    try:
        import fontpkg_open_sans
    except ImportError:
        raise _missing() from None
    found = Path(fontpkg_open_sans.__file__).parent / 'files' / FILE
    if not found.is_file():
        raise _missing()
    return found


def font_address() -> str:
    """Return the font file's address for a style sheet."""
    return font_path().as_uri()


@cache
def letters() -> frozenset[int]:
    """Return the code points that the font can set."""
    return frozenset(_names())


@cache
def advance_em(words: str, width: float, weight: float) -> float:
    """Return how far words advance, in em, at one place of the font's two axes."""
    advances = _advances(width, weight)
    other = advances['']
    return sum([advances.get(letter, other) for letter in words]) / advances[EM]


@cache
def _advances(width: float, weight: float) -> dict[str, float]:
    """Return how far every letter advances at a place of the axes, in font units; under '' any other, under EM an em."""
    import fontTools

    made_of = repr((width, weight, fontTools.version)).encode() + font_digest()
    kept_as = Path(__file__).with_name(f'advances-{width}-{weight}.json')
    told = once.take(kept_as, made_of)
    if told is None:
        glyphs = glyphs_at(width, weight)
        found = {chr(point): glyphs[name].width for point, name in _names().items()}
        told = json.dumps(found | {'': glyphs['.notdef'].width, EM: units_per_em()}).encode()
        once.keep(kept_as, made_of, told)
    advances: dict[str, float] = json.loads(told)
    return advances


@cache
def font_digest() -> bytes:
    """Return a hash of the font and of what reads it here."""
    return sha256(font_path().read_bytes() + Path(__file__).read_bytes()).digest()


def glyph_name(letter: str) -> str:
    """Return the name of a letter's glyph."""
    return _names().get(ord(letter), '.notdef')


def units_per_em() -> int:
    """Return the font's own units in an em."""
    return _font()['head'].unitsPerEm


@cache
def _names() -> dict[int, str]:
    return _font().getBestCmap()


@cache
def _font() -> Font:
    from fontTools.ttLib import TTFont

    font: Font = TTFont(BytesIO(font_path().read_bytes()), lazy=True)
    return font


@cache
def glyphs_at(width: float, weight: float) -> GlyphSet:
    """Return the font's glyphs at one place of its two axes."""
    return _font().getGlyphSet(location={'wdth': width, 'wght': weight})


def check_letters(words: str, place: str) -> None:
    """Refuse words with a letter that the book's font does not have.

    Errors:
        BookError naming the letters
    """
    if words.isascii():
        return
    missing = sorted({letter for letter in words if ord(letter) not in letters()})
    if missing:
        raise BookError(
            place,
            message('making.no_letters', letters=' '.join(missing)),
            message('making.known_letters'),
            message('making.write_otherwise'),
        )


def _missing() -> BookError:
    return BookError('font', message('making.no_font', file=FILE), '', message('making.get_font'))
