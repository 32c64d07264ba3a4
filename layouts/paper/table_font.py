"""The typeface of tables: letters of Open Sans, heavier digits, and what a line of a table tells apart by itself.

Every digit of a fraction is a size smaller, and the digits that name a line are bold: a line with its name and its mixed
numbers, `12  161 1/2`, is then one run of text, found, copied and read as it is printed, and set in one go.
"""

from __future__ import annotations

from base64 import b64encode
from functools import cache
from hashlib import sha256
from io import BytesIO
from pathlib import Path
from typing import Any, NamedTuple

from layouts.paper import once
from layouts.paper.trim import FRACTION_OF_WHOLE
from layouts.paper.typeface import advance_em, font_path

FAMILY = 'Table'


class Cut(NamedTuple):
    """A place on the typeface's two axes."""

    width: int
    weight: int


LETTERS, DIGITS, BOLD = Cut(86, 500), Cut(86, 600), Cut(82, 720)
NAMES = '\u2002'
"""The space after which digits name a line."""
BLANKS = ' \u2004\u2005\u2006\u2007\u200a'
"""Of several widths, which bring a figure to its place."""
MOST_DIGITS = 2
"""Digits of a numerator or a denominator."""
NUMBERS = '0123456789/'
NOT_NEEDED = ('GDEF', 'GPOS', 'GSUB', 'STAT')
TEXT = ''.join(map(chr, range(0x20, 0x7F))) + NAMES + BLANKS + '′″−–—.°×√†‡§·’“”'


@cache
def table_font_face() -> str:
    """Return the style sheet's rule for the font, which is in it."""
    import fontTools

    own = (font_path(), Path(__file__))
    made_of = f'{fontTools.version} {FRACTION_OF_WHOLE}'.encode()
    made_of += b''.join(sha256(one.read_bytes()).digest() for one in own)
    font = once.take(Path(__file__), made_of)
    if font is None:
        font = _font()
        once.keep(Path(__file__), made_of, font)
    data = b64encode(font).decode('ascii')
    return f'@font-face {{ font-family: "{FAMILY}"; src: url("data:font/ttf;base64,{data}"); }}\n'


@cache
def line_em(words: str) -> float:
    """Return how far words of a table advance, in em."""
    total, bold, parted = 0.0, False, '/' in words
    for place, letter in enumerate(words):
        if letter not in NUMBERS:
            bold = letter == NAMES
            total += advance_em(letter, *LETTERS)
            continue
        em = advance_em(letter, *(BOLD if bold else DIGITS))
        if parted and '/' in words[max(0, place - MOST_DIGITS) : place + MOST_DIGITS + 1]:
            em *= FRACTION_OF_WHOLE
        total += em
    return total


@cache
def _font() -> bytes:
    """Return the font file."""
    font = _cut(LETTERS)
    names = font.getBestCmap()
    numbers = [names[ord(one)] for one in NUMBERS]
    for cut, end in ((DIGITS, ''), (BOLD, '.bold')):
        other = _cut(cut)
        for name in numbers:
            _put(font, name + end, other, name, 1)
            _put(font, f'{name}{end}.fraction', other, name, FRACTION_OF_WHOLE)
    font.setGlyphOrder(font['glyf'].glyphOrder)
    _tell_apart(font, numbers, names[ord(NAMES)])
    for record in font['name'].names:
        if record.nameID in (1, 4, 6, 16):
            record.string = FAMILY
    written = BytesIO()
    font.save(written)
    return written.getvalue()


@cache
def _letters() -> bytes:
    """Return the variable font with the letters of tables only."""
    from fontTools.subset import Options, Subsetter
    from fontTools.ttLib import TTFont

    font = TTFont(BytesIO(font_path().read_bytes()), recalcTimestamp=False)
    for table in NOT_NEEDED:
        del font[table]  # before they are read: half of the time
    options = Options()
    options.layout_features = []
    options.name_IDs = ['*']
    cut = Subsetter(options)
    cut.populate(text=TEXT)
    cut.subset(font)
    written = BytesIO()
    font.save(written)
    return written.getvalue()


def _cut(cut: Cut) -> Any:
    """Return the typeface at one place of its axes."""
    from fontTools.ttLib import TTFont
    from fontTools.varLib.instancer import instantiateVariableFont

    font = TTFont(BytesIO(_letters()), recalcTimestamp=False)
    return instantiateVariableFont(font, {'wdth': cut.width, 'wght': cut.weight})


def _put(font: Any, name: str, other: Any, likeness: str, size: float) -> None:
    """Put a glyph of another font into this one, at a size, on the same line."""
    from fontTools.pens.transformPen import TransformPen
    from fontTools.pens.ttGlyphPen import TTGlyphPen

    glyphs = other.getGlyphSet()
    pen = TTGlyphPen(glyphs)
    glyphs[likeness].draw(TransformPen(pen, (size, 0, 0, size, 0, 0)))
    advance, left = other['hmtx'][likeness]
    font['glyf'][name] = pen.glyph()
    font['hmtx'][name] = (round(advance * size), round(left * size))


def _tell_apart(font: Any, numbers: list[str], names: str) -> None:
    """Let digits after the space of names be bold, and those on both sides of a slash be smaller, by themselves."""
    from fontTools.feaLib.builder import addOpenTypeFeaturesFromString

    *digits, slash = numbers
    taken = "@digit' lookup smaller"
    fractions = '\n'.join(
        f"sub {' '.join([taken] * above)} @slash' lookup smaller {' '.join([taken] * below)};"
        for above in range(MOST_DIGITS, 0, -1)
        for below in range(MOST_DIGITS, 0, -1)
    )

    def listed(ones: list[str], *ends: str) -> str:
        return ' '.join(one + end for end in ends for one in ones)

    addOpenTypeFeaturesFromString(
        font,
        f"""@number = [{listed(numbers, '')}]; @bold = [{listed(numbers, '.bold')}];
@digit = [{listed(digits, '', '.bold')}]; @slash = [{slash} {slash}.bold];
@whole = [{listed(numbers, '', '.bold')}]; @part = [{listed(numbers, '.fraction', '.bold.fraction')}];
lookup bolder {{ sub @number by @bold; }} bolder;
lookup smaller {{ sub @whole by @part; }} smaller;
feature calt {{
lookup named {{ sub [{names} @bold] @number' lookup bolder; }} named;
lookup fractions {{ {fractions} }} fractions;
}} calt;""",
    )
