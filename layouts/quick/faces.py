"""Fonts at all their sizes: one is found by the typesetter once, and its shaper then asked itself for words at any size.

Contract: glyphs, advances and heights are those that the typesetter gets, to the last unit. It looks for a font anew for every size,
half a millisecond each, and lays out a paragraph for every word. Here both ways are compared for each font, by letters that stand
closer and digits; where they differ, or a word has letters of which more than their glyphs is to be known, it is asked as always.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from copy import copy
from typing import Any
from unicodedata import category, name

from layouts.quick.refusal import NotPlain
from layouts.quick.shaper import glyphs_of, library

UNITS = 1024
"""Of the shaper in a CSS pixel."""
MOST_GLYPHS = 0xFFFF
"""Above it the shaper tells that there is none."""
TO_THE_RIGHT, BY_LETTERS, NUMBERS = 4, 1, 5
"""A direction, clusters that are no larger than letters, and how many numbers tell a glyph, as many as tell its place."""
LATIN, COMMON = 0x4C61746E, 0x5A797979
"""Scripts: `Latn` where there is such a letter, else `Zyyy`."""
LETTER = re.compile('[A-Za-z]')
PLAIN = frozenset(('Lu', 'Ll', 'Nd', 'No', 'Pc', 'Pd', 'Pe', 'Pf', 'Pi', 'Po', 'Ps', 'Sc', 'Sm', 'So', 'Zs'))
"""Kinds of letters that are drawn as they stand: none that is put over another, or is not seen."""
LEFT_TO_RIGHT = (range(0x20, 0x180), range(0x2000, 0x2300))
"""Numbers of letters among which none asks to be written the other way."""
PROBES = ('Tom. VAT, ffi fly "We 1/2', '0123456789 1/7-4.1, (74) 11/16')
"""Words by which both ways are compared, of each script."""


Glyph = tuple[int, int, int, str]
"""Of a word: its number, how far it advances and to the right of where it would stand, units, and the letters that it is."""


def face_of(style: Any) -> Face | None:
    """Return the font of a computed style, whatever its size; None where it is not known here."""
    if style['text_decoration_line'] != 'none':  # of which only a layout of underlined words knows
        return None
    named = ('weight', 'style', 'stretch', 'variation_settings')
    key = (*style['font_family'], style['lang'], *(style[f'font_{name}'] for name in named))
    known: dict[object, Face | None] = vars(style.font_config).setdefault('faces', {})
    if key not in known:
        made = Face(style)
        known[key] = made if made.is_as_told() else None
    return known[key]


class Laid:
    """Words in one font at one size, as the typesetter lays them out."""

    def __init__(self, style: Any):
        from weasyprint.text.ffi import FROM_UNITS, pango
        from weasyprint.text.line_break import Layout, line_size

        self.layout = Layout(style)
        self.layout.set_text('0')
        line, _ = self.layout.get_first_line()
        self.font = line.runs[0].data.item.analysis.font
        self.high: float = line_size(line, style)[1]
        """How high its lines are of themselves, px, and where their base line is."""
        self.above: float = pango.pango_layout_get_baseline(self.layout.layout) * FROM_UNITS

    def runs(self, text: str) -> list[Any]:
        """Return the runs of a line of words."""
        from weasyprint.text.ffi import ffi

        self.layout.set_text(text)
        line, _ = self.layout.get_first_line()
        told, run = [], line.runs[0]
        while run != ffi.NULL:
            told.append(run.data)
            run = run.next
        return told

    def glyphs(self, word: str) -> list[Glyph]:
        """Return a word's glyphs.

        Errors:
            NotPlain if some are of another font, or do not stand in a row
        """
        glyphs, raw = [], word.encode()
        for item in self.runs(word):
            if item.item.analysis.font != self.font or item.item.analysis.level % 2:
                raise NotPlain(f'letters_of_{word!r}')
            string, clusters, first = item.glyphs, item.glyphs.log_clusters, item.item.offset
            count = string.num_glyphs
            for place, info in enumerate(string.glyphs[0:count]):
                if info.glyph > MOST_GLYPHS or info.geometry.y_offset:
                    raise NotPlain(f'letters_of_{word!r}')
                ends = item.item.length if place == count - 1 else clusters[place + 1]
                letters = raw[first + clusters[place] : first + ends].decode()
                glyphs.append((info.glyph, info.geometry.width, info.geometry.x_offset, letters))
        return glyphs

    def advance(self, glyph: int) -> int:
        """Return how far a glyph advances by itself, in units."""
        from weasyprint.text.ffi import ffi, pango

        extents = ffi.new('PangoRectangle *')
        pango.pango_font_get_glyph_extents(self.font, glyph, ffi.NULL, extents)
        return int(extents.width)


class Face:
    """A font at any size."""

    def __init__(self, style: Any):
        from weasyprint.text.ffi import ffi, pango
        from weasyprint.text.fonts import get_pango_font_key

        self._library, self._ffi = library(), ffi
        self.laid = Laid(style)
        self._size = style['font_size']
        self._first = pango.pango_font_get_hb_font(self.laid.font)
        self._face = self._library.hb_font_get_face(self._first)
        self._key, *_ = get_pango_font_key(self.laid.font)
        self._unused: Any = None
        """What a file has of it, as it begins; what it holds is the same for all of one file."""
        self._contents: dict[Any, bytes] = vars(style.font_config).setdefault('contents', {})
        self._count = ffi.new('unsigned int *')
        coords = self._library.hb_font_get_var_coords_normalized(self._first, self._count)
        self._coords = coords, self._count[0]
        self._buffer = self._library.hb_buffer_create()
        self._library.hb_buffer_set_cluster_level(self._buffer, BY_LETTERS)
        self._letters: dict[str, int] = {}
        """What may be asked here, with its script."""
        self._scripts = {}
        self._ascii = all(self._script(chr(number)) for number in range(0x20, 0x7F))
        for probe, script in zip(PROBES, (LATIN, COMMON), strict=True):
            language = pango.pango_language_to_string(self.laid.runs(probe)[0].item.analysis.language)
            self._scripts[script] = self._library.hb_language_from_string(language, -1)

    def is_as_told(self) -> bool:
        """Tell whether the shaper says by itself what the typesetter is told."""
        sized = Sized(self, self._size)
        heights = sized.high == self.laid.high and sized.above == self.laid.above
        return heights and all(sized.glyphs(probe) == self.laid.glyphs(probe) for probe in PROBES)

    def font(self, stream: Any) -> Any:
        """Return what the file that a stream is of has of the font, nothing of which is used yet where it is new there."""
        fonts = stream._fonts
        if self._key not in fonts:
            if self._unused is None:
                made, _size = stream.add_font(self.laid.font)
                made.file_content = self._contents.setdefault(self._face, made.file_content)
                self._unused = _unused(made)
            fonts[self._key] = _unused(self._unused)
        return fonts[self._key]

    def at(self, size: float) -> Any:
        """Return the shaper's font of a size, kept as long as the process lives."""
        font = self._library.hb_font_create(self._face)
        self._library.hb_font_set_scale(font, int(size * UNITS), int(size * UNITS))
        self._library.hb_font_set_ptem(font, int(size * UNITS) / UNITS)
        self._library.hb_font_set_var_coords_normalized(font, *self._coords)
        return font

    def heights(self, font: Any) -> tuple[float, float]:
        """Return how far letters reach over the base line and below it, px."""
        told = self._ffi.new('int[12]')
        self._library.hb_font_get_extents_for_direction(font, TO_THE_RIGHT, told)
        return told[0] / UNITS, -told[1] / UNITS

    def advance(self, font: Any, glyph: int) -> int:
        """Return how far a glyph advances by itself, in units."""
        return int(self._library.hb_font_get_glyph_h_advance(font, glyph))

    def script(self, word: str) -> int | None:
        """Return the script of a word; None if one of its letters asks for more than its glyph."""
        if self._ascii and word.isascii() and word.isprintable():
            return LATIN if LETTER.search(word) else COMMON
        found = COMMON
        for letter in word:
            script = self._letters.get(letter)
            if script is None:
                script = self._letters[letter] = self._script(letter)
            if not script:
                return None
            if script == LATIN:
                found = LATIN
        return found

    def _script(self, letter: str) -> int:
        """Return the script of a letter; 0 where it is not plain."""
        number, kind = ord(letter), category(letter)
        latin = name(letter, '').startswith('LATIN ')
        if (
            kind not in PLAIN
            or (kind[0] == 'L' and not latin)
            or not any(number in some for some in LEFT_TO_RIGHT)
        ):
            return 0
        if not [*glyphs_of(self._first, letter)]:
            return 0
        return LATIN if latin else COMMON

    def shaped(self, font: Any, word: str, script: int) -> list[Glyph] | None:
        """Return a word's glyphs; None where they do not stand in a row."""
        library, buffer, raw = self._library, self._buffer, word.encode()
        library.hb_buffer_clear_contents(buffer)
        library.hb_buffer_add_utf8(buffer, raw, len(raw), 0, len(raw))
        library.hb_buffer_set_direction(buffer, TO_THE_RIGHT)
        library.hb_buffer_set_script(buffer, script)
        library.hb_buffer_set_language(buffer, self._scripts[script])
        library.hb_shape(font, buffer, self._ffi.NULL, 0)
        infos = library.hb_buffer_get_glyph_infos(buffer, self._count)
        places = library.hb_buffer_get_glyph_positions(buffer, self._count)
        count = NUMBERS * self._count[0]
        told = self._ffi.unpack(infos, count)
        numbers, begins = told[::NUMBERS], told[2::NUMBERS]
        told = self._ffi.unpack(places, count)
        if any(told[3::NUMBERS]) or max(numbers, default=0) > MOST_GLYPHS or 0 in numbers:
            return None
        letters: Sequence[str] = word
        if len(begins) != len(word) or len(raw) != len(word):
            ends = [*begins[1:], len(raw)]
            letters = [raw[begin:end].decode() for begin, end in zip(begins, ends, strict=True)]
        return list(zip(numbers, told[::NUMBERS], told[2::NUMBERS], letters, strict=True))


class Sized:
    """A font at one size."""

    def __init__(self, face: Face, size: float):
        self._face, self._font = face, face.at(size)
        self.size = int(size * UNITS) / UNITS
        self.above, below = face.heights(self._font)
        self.high = self.above + below

    def glyphs(self, word: str) -> list[Glyph] | None:
        """Return a word's glyphs; None where the typesetter is to be asked."""
        script = self._face.script(word)
        return None if script is None else self._face.shaped(self._font, word, script)

    def advance(self, glyph: int) -> int:
        """Return how far a glyph advances by itself, in units."""
        return self._face.advance(self._font, glyph)


def _unused(font: Any) -> Any:
    """Return a copy of a file's font, of which no letter is used."""
    made = copy(font)
    made.widths, made.to_unicode, made.missing, made.variations = {}, {}, {}, dict(font.variations)
    return made
