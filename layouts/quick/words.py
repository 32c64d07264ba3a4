"""Words as a font draws them: each is shaped once a font and size, and drawn as often as it stands somewhere."""

from __future__ import annotations

import re
from functools import cached_property
from typing import Any, NamedTuple

from layouts.quick.faces import UNITS, Face, Glyph, Laid, Sized, face_of
from layouts.quick.layers import Inked
from layouts.quick.refusal import NotPlain

CHUNKS = re.compile('\t|[ \u2004-\u2007\u200a]+|[^\t \u2004-\u2007\u200a]+')
"""What no letter looks past: a tab, blanks, a word; digits keep the space after which they are bold."""


NAMED = tuple(
    f'font_{name}' for name in ('size', 'family', 'weight', 'style', 'stretch', 'variation_settings')
)


class Word(NamedTuple):
    """A word as it is shaped."""

    wide: int
    """How far it advances; units."""
    glyphs: list[Glyph]


class Cut:
    """One font at one size."""

    def __init__(self, style: Any):
        self._style = style
        self._face: Face | None = face_of(style)
        self._sized = Sized(self._face, style['font_size']) if self._face else None
        self._words: dict[str, Word] = {}
        self._wide: dict[str, int] = {}
        self._shown: dict[str, str] = {}
        """As they are drawn in a file, whose fonts these are."""
        self._file: object = None
        self._known: tuple[Any, float] = None, 0.0
        told = self._sized or self._laid
        self.high, self.above = told.high, told.above
        """How high its lines are of themselves, px, and where their base line is."""

    @cached_property
    def _laid(self) -> Laid:
        return Laid(self._style)

    def wide(self, text: str) -> int:
        """Return how far a text without tabs advances, in units."""
        found = self._wide.get(text)
        if found is None:
            found, words = 0, self._words
            for one in CHUNKS.findall(text):
                found += (words.get(one) or self._word(one))[0]
            self._wide[text] = found
        return found

    def underline(self, x: float, y: float, text: str, color: Any) -> Inked:
        """Return the line under a text whose base line begins at a place."""
        layout = self._laid.layout
        width = layout.underline_thickness
        down = y - layout.underline_position + width / 2
        return Inked('rule', x, down, self.wide(text) / UNITS, 0.0, (width, color))

    def known(self, stream: Any) -> tuple[Any, float]:
        """Return what the file that a stream is of calls the font, and its size."""
        if stream._fonts is not self._file:
            if self._face and self._sized:
                self._known = self._face.font(stream), self._sized.size
            else:
                self._known = stream.add_font(self._laid.font)
            self._file, self._shown = stream._fonts, {}
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
        known, words = self._shown, self._words
        shown = known.get(text)
        if shown is not None:
            return shown
        told, at = [], 0
        tabbed = '\t' in text
        for one in CHUNKS.findall(text):
            if one == '\t':
                if not tab:
                    raise NotPlain('tab')
                stop = (at // tab + 1) * tab
                told.append(f'>{-(stop - at) / size}<')
                at = stop
                continue
            shown = known.get(one)
            if shown is None:
                shown = known[one] = self._drawn((words.get(one) or self._word(one))[1], font, size)
            told.append(shown)
            if tabbed:
                at += words[one][0]
        shown = ''.join(told)
        if not tabbed:
            known[text] = shown
        return shown

    def _word(self, word: str) -> Word:
        glyphs = self._shaped(word)
        found = self._words[word] = Word(sum(one[1] for one in glyphs), glyphs)
        return found

    def _shaped(self, word: str) -> list[Glyph]:
        return (self._sized.glyphs(word) if self._sized else None) or self._laid.glyphs(word)

    def _drawn(self, glyphs: list[Glyph], font: Any, size: float) -> str:
        """Return glyphs as they are drawn, and tell the font which they are.

        Notes:
            1. A font has one width a glyph, rounded at the size that came first: what it is off is made good here.
        """
        shown, widths, em = '', font.widths, UNITS * size
        for number, advance, moved, letters in glyphs:
            if number not in widths:
                font.to_unicode.setdefault(number, letters)
                alone = (self._sized or self._laid).advance(number)
                widths[number] = round(alone * 1000 / em)
            right = moved / size
            kern = int(widths[number] + right - advance * 1000 / em)
            if moved or kern:
                shown += (f'>{-right}<' if moved else '') + f'{number:04x}' + (f'>{kern}<' if kern else '')
            else:
                shown += f'{number:04x}'
        return shown


class Cuts:
    """All fonts, each at all its sizes."""

    def __init__(self) -> None:
        self._known: dict[object, Cut] = {}

    def of(self, style: Any) -> Cut:
        """Return the font of a computed style."""
        key = (
            style['text_decoration_line'] != 'none',  # of which only a layout of underlined words knows
            *(tuple(style[name]) if name == 'font_family' else style[name] for name in NAMED),
        )
        found = self._known.get(key)
        if found is None:
            found = self._known[key] = Cut(style)
        return found
