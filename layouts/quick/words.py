"""Words as a font draws them: each is shaped once a font and size, and drawn as often as it stands somewhere."""

from __future__ import annotations

import re
from typing import Any, NamedTuple

from layouts.quick.layers import Inked
from layouts.quick.refusal import NotPlain

CHUNKS = re.compile('\t|[ \u2004-\u2007\u200a]+|[^\t \u2004-\u2007\u200a]+')
"""What no letter looks past: a tab, blanks, a word; digits keep the space after which they are bold."""
MOST_GLYPHS = 0xFFFF
"""Above it the shaper tells that there is none."""
UNITS = 1024
"""Of the shaper in a CSS pixel."""


class Glyph(NamedTuple):
    """A glyph of a word."""

    number: int
    advance: int
    moved: int
    """To the right; units, as its advance."""
    letters: str
    """That it stands for."""


class Word(NamedTuple):
    """A word as it is shaped."""

    wide: int
    """How far it advances; units."""
    glyphs: list[Glyph]


class Cut:
    """One font at one size."""

    def __init__(self, style: Any):
        from weasyprint.text.ffi import FROM_UNITS, pango
        from weasyprint.text.line_break import Layout, line_size

        self._layout = Layout(style)
        self._words: dict[str, Word] = {}
        self._wide: dict[str, int] = {}
        self._shown: dict[str, str] = {}
        """As they are drawn in a file, whose fonts these are."""
        self._file: object = None
        self._known: tuple[Any, float] = None, 0.0
        self._layout.set_text('0')
        line, _ = self._layout.get_first_line()
        self.font = line.runs[0].data.item.analysis.font
        self.high: float = line_size(line, style)[1]
        """How high its lines are of themselves, px, and where their base line is."""
        self.above: float = pango.pango_layout_get_baseline(self._layout.layout) * FROM_UNITS

    def wide(self, text: str) -> int:
        """Return how far a text without tabs advances, in units."""
        found = self._wide.get(text)
        if found is None:
            found = self._wide[text] = sum(self._word(one).wide for one in CHUNKS.findall(text))
        return found

    def underline(self, x: float, y: float, text: str, color: Any) -> Inked:
        """Return the line under a text whose base line begins at a place."""
        width = self._layout.underline_thickness
        down = y - self._layout.underline_position + width / 2
        return Inked('rule', x, down, self.wide(text) / UNITS, 0.0, (width, color))

    def known(self, stream: Any) -> tuple[Any, float]:
        """Return what the file that a stream is of calls the font, and its size."""
        if stream._fonts is not self._file:
            self._file, self._shown, self._known = stream._fonts, {}, stream.add_font(self.font)
        return self._known

    def shown(self, text: str, stream: Any, tab: int) -> str:
        """Return a text as it is drawn.

        Given:
            stream  that it is drawn on
            tab     how far apart tab stops are, units; 0 for none

        Notes:
            1. What a tab skips is drawn 1024/1000 as far: so does the typesetter.
        """
        font, size = self.known(stream)
        told, at = [], 0
        for one in CHUNKS.findall(text):
            if one == '\t':
                if not tab:
                    raise NotPlain('tab')
                stop = (at // tab + 1) * tab
                told.append(f'>{-(stop - at) / size}<')
                at = stop
            else:
                shown = self._shown.get(one)
                if shown is None:
                    shown = self._shown[one] = self._drawn(self._word(one).glyphs, font, size)
                told.append(shown)
                if tab:
                    at += self._words[one].wide
        return ''.join(told)

    def _word(self, word: str) -> Word:
        found = self._words.get(word)
        if found is None:
            glyphs = self._shaped(word)
            found = self._words[word] = Word(sum(one.advance for one in glyphs), glyphs)
        return found

    def _shaped(self, word: str) -> list[Glyph]:
        from weasyprint.text.ffi import ffi

        self._layout.set_text(word)
        line, _ = self._layout.get_first_line()
        glyphs, raw = [], word.encode()
        run = line.runs[0]
        while run != ffi.NULL:
            item, run = run.data, run.next
            if item.item.analysis.font != self.font or item.item.analysis.level % 2:
                raise NotPlain(f'letters_of_{word!r}')
            string, clusters, first = item.glyphs, item.glyphs.log_clusters, item.item.offset
            count = string.num_glyphs
            for place, info in enumerate(string.glyphs[0:count]):
                if info.glyph > MOST_GLYPHS or info.geometry.y_offset:
                    raise NotPlain(f'letters_of_{word!r}')
                ends = item.item.length if place == count - 1 else clusters[place + 1]
                letters = raw[first + clusters[place] : first + ends].decode()
                glyphs.append(Glyph(info.glyph, info.geometry.width, info.geometry.x_offset, letters))
        return glyphs

    def _drawn(self, glyphs: list[Glyph], font: Any, size: float) -> str:
        """Return glyphs as they are drawn, and tell the font which they are.

        Notes:
            1. A font has one width a glyph, rounded at the size that came first: what it is off is made good here.
        """
        from weasyprint.text.ffi import FROM_UNITS, ffi, pango

        shown = ''
        for one in glyphs:
            font.to_unicode.setdefault(one.number, one.letters)
            if one.number not in font.widths:
                extents = ffi.new('PangoRectangle *')
                pango.pango_font_get_glyph_extents(self.font, one.number, ffi.NULL, extents)
                font.widths[one.number] = round(extents.width * 1000 * FROM_UNITS / size)
            moved = one.moved / size
            kern = int(font.widths[one.number] + moved - one.advance * 1000 * FROM_UNITS / size)
            shown += (f'>{-moved}<' if moved else '') + f'{one.number:04x}' + (f'>{kern}<' if kern else '')
        return shown


class Cuts:
    """All fonts, each at all its sizes."""

    def __init__(self) -> None:
        self._known: dict[object, Cut] = {}

    def of(self, style: Any) -> Cut:
        """Return the font of a computed style."""
        key = (
            style['text_decoration_line'] != 'none',  # of which only a layout of underlined words knows
            *(
                str(style[f'font_{name}'])
                for name in ('size', 'family', 'weight', 'style', 'stretch', 'variation_settings')
            ),
        )
        found = self._known.get(key)
        if found is None:
            found = self._known[key] = Cut(style)
        return found
