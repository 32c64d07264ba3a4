"""Typefaces of a finished PDF: what the codes of their letters say, and how wide these are."""

from __future__ import annotations

import re
from functools import cached_property
from typing import Any

from msgspec import Struct, field

PAIR = re.compile(rb'<([0-9a-fA-F]+)> *<([0-9a-fA-F]+)>')
_Run = tuple[tuple[tuple[str, float, float], ...], float]
"""What stands between blanks, '' for nothing, with where each begins and ends, and where all ends."""


class Typeface(Struct, dict=True):
    """What a font's two-byte codes say, and how wide they are, in thousandths of its size."""

    bold: bool
    letters: dict[int, str]
    widths: dict[int, float]
    usual: float
    known: dict[bytes, _Run] = field(default_factory=dict)
    glyphs: dict[bytes, tuple[str, float]] = field(default_factory=dict)

    @cached_property
    def print_of(self) -> bytes:
        """Return the same for typefaces that say the same."""
        listed = sorted(self.letters.items()), sorted(self.widths.items()), self.usual, self.bold
        return repr(listed).encode()

    def run(self, codes: bytes) -> _Run:
        """Return what a string of codes says, each of four hexadecimal digits."""
        if codes not in self.known:
            words, text, begun, at = [], '', 0.0, 0.0
            for n in range(0, len(codes), 4):
                letter, wide = self._glyph(codes[n : n + 4])
                if letter.isspace():
                    words.append((text, begun, at))
                    text, begun = '', at + wide
                else:
                    text += letter
                at += wide
            self.known[codes] = (*words, (text, begun, at)), at
        return self.known[codes]

    def _glyph(self, code: bytes) -> tuple[str, float]:
        if code not in self.glyphs:
            number = int(code, 16)
            letter = self.letters.get(number, '\N{REPLACEMENT CHARACTER}')
            self.glyphs[code] = letter, self.widths.get(number, self.usual)
        return self.glyphs[code]


def typeface_of(font: Any) -> Typeface:
    """Return what a font of a file says."""
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
