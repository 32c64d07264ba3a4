"""Cuts of the typeface that are made once, and not for every document: its usual letters at one place of its axes.

Contract: the typesetter takes the letters that a document uses out of such a cut, as out of any font without axes: they have the
outlines and widths that they would have. The file depends on nothing but the document. A document with other letters has them cut
for itself; a typesetter that is not built as expected is left as it is.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager, suppress
from copy import copy
from functools import cache
from hashlib import sha256
from pathlib import Path
from typing import Any

from layouts.paper import once
from layouts.paper.table_font import TEXT
from layouts.pdf.libraries import shaper_release
from layouts.quick.shaper import glyphs_of, library

LETTERS = TEXT + '\N{NO-BREAK SPACE}÷•…\N{LATIN SMALL LIGATURE FF}ﬁﬂﬃﬄ'
NOT_AS_KNOWN = (AttributeError, TypeError, ValueError, LookupError)
"""What comes of asking a typesetter's insides for what is not there."""
_fonts: list[tuple[bytes, tuple[frozenset[int], bytes]]] = []
"""Fonts that this process has seen, each with what is to be known of it."""
_faces: dict[bytes, Any] = {}
"""Cuts that this process has, by what they are made of."""


@contextmanager
def static_cuts() -> Iterator[None]:
    """Have letters taken out of cuts that were made before, for a while."""
    from weasyprint.pdf import fonts

    plain = getattr(fonts.Font, 'clean', None)
    if plain is None:
        yield
        return

    def clean(font: Any, used: dict[int, str], hinting: bool) -> None:
        if 'fvar' in font.tables and used and not font.missing:
            usual, digest = _told(font)
            if used.keys() <= usual:
                with suppress(*NOT_AS_KNOWN):
                    _put_cut(font, plain, usual, digest, hinting)
        plain(font, used, hinting)

    fonts.Font.clean = clean
    try:
        yield
    finally:
        fonts.Font.clean = plain


def _told(font: Any) -> tuple[frozenset[int], bytes]:
    """Return the numbers of a font's usual letters, and its hash, once for a font: contents that are alike are found so in no time."""
    content = font.file_content
    for known, told in _fonts:
        if known == content:
            return told
    _fonts.append((content, (frozenset(glyphs_of(font.hb_font, LETTERS)), sha256(content).digest())))
    return _fonts[-1][1]


def _put_cut(font: Any, plain: Any, usual: frozenset[int], digest: bytes, hinting: bool) -> None:
    """Have a font be its cut."""
    place = repr((sorted(font.variations.items()), font.weight, font.style, hinting)).encode()
    made_of = _made_by() + digest + place
    if made_of not in _faces:
        kept_as = Path(__file__).with_name(f'cut-{sha256(place).hexdigest()}.ttf')
        cut = once.take(kept_as, made_of)
        if cut is None:
            whole = copy(font)
            whole.variations = dict(font.variations)
            plain(whole, dict.fromkeys(sorted(usual), ''), hinting)
            cut = whole.file_content
            once.keep(kept_as, made_of, cut)
        _faces[made_of] = cut, _face(cut)
    font.file_content, font.hb_face = _faces[made_of]
    font.tables = [name for name in font.tables if name != 'fvar']


def _face(cut: bytes) -> Any:
    """Return a font as the shaper's library knows it, for as long as this process lives: the order in which things end there is not ours."""
    from weasyprint.text.ffi import ffi

    harfbuzz = library()
    blob = harfbuzz.hb_blob_create(cut, len(cut), 0, ffi.NULL, ffi.NULL)  # 0: a copy of its own
    return harfbuzz.hb_face_create(blob, 0)


@cache
def _made_by() -> bytes:
    import fontTools
    import weasyprint

    told = f'{weasyprint.__version__} {fontTools.version} {shaper_release()}'
    return told.encode() + sha256(Path(__file__).read_bytes()).digest()
