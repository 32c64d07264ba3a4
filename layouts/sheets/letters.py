"""Letters as outlines, for the small type beside pages: they are of the font alone, so the usual ones are made once."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from fontTools.pens.basePen import BasePen
from fontTools.pens.boundsPen import BoundsPen
from msgspec import Struct, json

from layouts.paper import once
from layouts.paper.table_font import TEXT
from layouts.paper.typeface import GlyphSet, font_digest, glyph_name, glyphs_at, units_per_em

FACE = (88.0, 500.0)
Point = tuple[float, float]


class Letter(Struct, frozen=True):
    """A letter's shape, in font units."""

    name: str
    """Of its glyph."""
    advance: float
    box: tuple[float, float, float, float] | None
    """Around its outline; None for a space."""
    drawn: str
    """Its outline as PDF operators."""


class _Usual(Struct, frozen=True):
    units: int
    """In an em."""
    letters: dict[str, Letter]


def units() -> int:
    """Return how many font units an em is."""
    return _usual().units


@cache
def letter(character: str) -> Letter:
    """Return a letter's shape."""
    return _usual().letters.get(character) or _made(character)


@cache
def _usual() -> _Usual:
    import fontTools

    made_of = repr((TEXT, FACE, fontTools.version)).encode() + font_digest() + Path(__file__).read_bytes()
    kept_as = Path(__file__).with_name('letters.json')
    told = once.take(kept_as, made_of)
    if told is None:
        told = json.encode(_Usual(units_per_em(), {one: _made(one) for one in TEXT}))
        once.keep(kept_as, made_of, told)
    return json.decode(told, type=_Usual)


def _made(character: str) -> Letter:
    name, glyphs = glyph_name(character), glyphs_at(*FACE)
    bounds, pen = BoundsPen(glyphs), _OperatorPen(glyphs)
    glyphs[name].draw(bounds)
    glyphs[name].draw(pen)
    return Letter(name, glyphs[name].width, bounds.bounds, '\n'.join([*pen.operators, 'f']))


class _OperatorPen(BasePen):  # type: ignore[misc]  # fontTools carries no types, so its class is Any
    """Writes an outline as PDF operators; the base class turns other curves into cubic ones."""

    def __init__(self, glyph_set: GlyphSet) -> None:
        super().__init__(glyph_set)
        self.operators: list[str] = []

    def _write(self, operator: str, *points: Point) -> None:
        self.operators.append(' '.join(f'{value:.0f}' for point in points for value in point) + operator)

    def _moveTo(self, pt: Point) -> None:
        self._write(' m', pt)

    def _lineTo(self, pt: Point) -> None:
        self._write(' l', pt)

    def _curveToOne(self, pt1: Point, pt2: Point, pt3: Point) -> None:
        self._write(' c', pt1, pt2, pt3)

    def _closePath(self) -> None:
        self.operators.append('h')
