"""The book's typeface measured in its own file: advance widths and heights of figures at any width and weight."""

from functools import cache

from fontTools.pens.boundsPen import BoundsPen
from fontTools.ttLib import TTFont

from layouts.paper.typeface import font_path

FIGURES = '0123456789'


@cache
def face() -> TTFont:
    return TTFont(font_path(), lazy=True)


@cache
def glyphs(width: float, weight: float):
    """Return the outlines at one place of the font's two axes."""
    return face().getGlyphSet(location={'wdth': width, 'wght': weight})


@cache
def advance_em(words: str, width: float, weight: float) -> float:
    """Return how far words advance, in em."""
    names = face().getBestCmap()
    units = sum(glyphs(width, weight)[names[ord(letter)]].width for letter in words)
    return units / face()['head'].unitsPerEm


@cache
def box_em(letter: str, width: float, weight: float) -> tuple[float, float, float, float]:
    """Return the ink of a letter: left, foot, right, top, in em."""
    pen = BoundsPen(glyphs(width, weight))
    glyphs(width, weight)[face().getBestCmap()[ord(letter)]].draw(pen)
    return tuple(edge / face()['head'].unitsPerEm for edge in pen.bounds)


def figure_height_em(width: float, weight: float) -> float:
    """Return the height of the lowest figure: those with a flat top stand a little below the round ones."""
    return min(box_em(figure, width, weight)[3] for figure in FIGURES)


def ascent_and_descent_em() -> tuple[float, float]:
    """Return how far a line reaches above its base, and below it, in em."""
    head = face()['hhea']
    return head.ascent / face()['head'].unitsPerEm, -head.descent / face()['head'].unitsPerEm
