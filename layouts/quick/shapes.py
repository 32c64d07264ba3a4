"""Drawings of plain shapes, drawn with the typesetter's own operators, each on a line of its own as it writes them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from html import unescape
from math import cos, pi, radians, sin, sqrt
from typing import Any, NamedTuple
from urllib.parse import unquote

from layouts.quick.faces import UNITS
from layouts.quick.refusal import NotPlain
from layouts.quick.words import Cut

SCHEME = 'data:image/svg+xml,'
N = r'-?[\d.]+'
WHOLE = re.compile(
    rf'<svg xmlns="http://www\.w3\.org/2000/svg" viewBox="0 0 ({N}) ({N})" width="{N}" height="{N}">(.*)</svg>',
    re.DOTALL,
)
SHAPE = re.compile(r'<(line|path|circle|text)((?: [a-z0-9-]+="[^"]*")*)(?:/>|>([^<]*)</text>)')
ATTRIBUTE = re.compile(r' ([a-z0-9-]+)="([^"]*)"')
KNOWN = {
    'line': frozenset(('x1', 'y1', 'x2', 'y2', 'stroke', 'stroke-width', 'stroke-dasharray')),
    'path': frozenset(('d', 'fill', 'stroke', 'stroke-width', 'stroke-linejoin', 'stroke-dasharray')),
    'circle': frozenset(('cx', 'cy', 'r', 'fill', 'stroke', 'stroke-width')),
    'text': frozenset(
        ('x', 'y', 'font-family', 'font-size', 'font-weight', 'text-anchor', 'fill', 'transform')
    ),
}
POINTS = re.compile(rf'M{N} {N}(?:[ML]{N} {N}|Z)*')
POINT = re.compile(rf'([ML])({N} {N})|Z')
TURN = re.compile(rf'rotate\(({N}) ({N}) ({N})\)')
COLORS = {'#000': '0 0 0', '#fff': '1 1 1', '#ccc': '0.8 0.8 0.8'}
ESCAPES = {'%22': '"', '%3C': '<', '%3E': '>', '%23': '#'}
"""Of which drawings are full."""
START = '4 M'
"""How far corners of two lines reach, which no shape says."""


class Shape(NamedTuple):
    """One shape of a drawing."""

    kind: str
    said: dict[str, str]
    words: str


class Shapes:
    """Draws what a drawing's address holds."""

    def __init__(self, font_config: Any):
        self._fonts: dict[tuple[str, str], Cut] = {}
        self._font_config = font_config

    def draw(self, address: str, width: float, height: float, stream: Any) -> None:
        """Draw a drawing in a width and a height, px, from the upper left.

        Errors:
            NotPlain, before anything is drawn, if it has a shape that is not known here
        """
        wide, high, shapes = _read(address)
        fonts = [self._font(one) if one.kind == 'text' else None for one in shapes]
        scale = min(width / wide, height / high)
        stream.transform(scale, 0, 0, scale, (width - wide * scale) / 2, (height - high * scale) / 2)
        stream.set_alpha(1.0)
        stream.set_alpha(1.0, stroke=True)
        ops = [START, '0 0 0 rg', '0 0 0 RG']
        for one, font in zip(shapes, fonts, strict=True):
            if font is None:
                ops += _inked(one)
            else:
                ops += _worded(one, font, stream)
        stream.stream.append('\n'.join(ops).encode())

    def _font(self, one: Shape) -> Cut:
        key = one.said['font-weight'], one.said['font-size']
        if key not in self._fonts:
            self._fonts[key] = _font_of(one.said, self._font_config)
        for letter in one.words:
            self._fonts[key].wide(letter)
        return self._fonts[key]


def _read(address: str) -> tuple[float, float, list[Shape]]:
    """Return how wide and high a drawing is, and its shapes."""
    found = WHOLE.fullmatch(_unquoted(address.removeprefix(SCHEME))) if address.startswith(SCHEME) else None
    if not found:
        raise NotPlain('a_picture')
    shapes, end = [], 0
    for one in SHAPE.finditer(found[3]):
        said = dict(ATTRIBUTE.findall(one[2]))
        if one.start() != end or said.keys() - KNOWN[one[1]]:
            raise NotPlain(f'{one[1]}_in_a_drawing')
        colors = {said.get('fill', '#000'), said.get('stroke', '#000')} - {'none'}
        if colors - COLORS.keys() or not POINTS.fullmatch(said.get('d', 'M0 0')):
            raise NotPlain(f'{one[1]}_in_a_drawing')
        if one[1] == 'text' and not (one[3] or '').strip():
            raise NotPlain('text_without_words')
        shapes.append(Shape(one[1], said, unescape(one[3] or '')))
        end = one.end()
    if end != len(found[3]):
        raise NotPlain('a_drawing')
    return float(found[1]), float(found[2]), shapes


def _unquoted(address: str) -> str:
    """Return what an address says: its usual escapes first, and all of them where there are others."""
    told = address
    for escape, letter in ESCAPES.items():
        told = told.replace(escape, letter)
    return unquote(address) if '%' in told else told


def _font_of(said: dict[str, str], font_config: Any) -> Cut:
    """Return the font of a drawing's words, which is chosen by its weight alone."""
    from weasyprint.css.properties import INITIAL_VALUES
    from weasyprint.svg.text import Style

    style = Style()
    style.update(INITIAL_VALUES)
    style.font_config = font_config
    style['font_family'] = [said['font-family']]
    style['font_weight'] = int(said['font-weight'])
    style['font_size'] = float(said['font-size'])
    return Cut(style)


def _inked(one: Shape) -> Iterator[str]:
    """Return the operators of lines and grounds; the ground's color is black before and after."""
    said = one.said
    fill, stroke = said.get('fill', '#000'), said.get('stroke', 'none') != 'none'
    if stroke:
        yield f'{said.get("stroke-width", "1")} w'
    if 'stroke-dasharray' in said:
        yield f'[{said["stroke-dasharray"]}] 0 d'
    colored = fill not in ('none', '#000')
    if colored:
        yield f'{COLORS[fill]} rg'
    if one.kind == 'line':
        yield f'{said["x1"]} {said["y1"]} m\n{said["x2"]} {said["y2"]} l'
    elif one.kind == 'path':
        yield POINT.sub(
            lambda found: f'{found[2]} {found[1].lower()}\n' if found[1] else 'h\n', said['d']
        ).rstrip()
    else:
        yield _round(*(float(said[name]) for name in ('cx', 'cy', 'r')))
    yield {(True, True): 'B', (True, False): 'f', (False, True): 'S'}.get((fill != 'none', stroke), 'n')
    if colored:
        yield '0 0 0 rg'
    if 'stroke-dasharray' in said:
        yield '[] 0 d'


def _round(x: float, y: float, r: float) -> str:
    """Return a circle, as four curves."""
    part = r / sqrt(pi)
    places = (
        *((x + r, y + part, x + part, y + r, x, y + r), (x - part, y + r, x - r, y + part, x - r, y)),
        *((x - r, y - part, x - part, y - r, x, y - r), (x + part, y - r, x + r, y - part, x + r, y)),
    )
    curves = '\n'.join(' '.join(f'{one:f}' for one in place) + ' c' for place in places)
    return f'{x + r:f} {y:f} m\n{curves}\nh'


def _worded(one: Shape, font: Cut, stream: Any) -> Iterator[str]:
    """Return the operators of a line of words, each letter put by itself; those that end at their place are drawn apart."""
    said, size = one.said, float(one.said['font-size'])
    turned = TURN.fullmatch(said['transform']) if 'transform' in said else None
    if turned:
        angle, x, y = radians(float(turned[1])), float(turned[2]), float(turned[3])
        a, b = cos(angle), sin(angle)
        yield f'q\n{a:f} {b:f} {-b:f} {a:f} {x - a * x + b * y:f} {y - b * x - a * y:f} cm'
    x, y = float(said['x']), float(said['y'])
    anchor = said.get('text-anchor', 'start')
    if anchor == 'start':
        ops, _end = _letters(one, font, x, y, stream)
        yield from ops
    else:
        apart = stream.add_group(0, 0, 0, 0)
        ops, end = _letters(one, font, x, y, apart)
        apart.stream.append('\n'.join(ops).encode())
        apart.extra['BBox'][:] = (
            x - size,
            y - font.above - size,
            end + size,
            y + font.high - font.above + size,
        )
        back = (end - x) / 2 if anchor == 'middle' else end - x
        yield f'q\n1 0 0 1 {-back:f} 0 cm\n/{apart.id} Do\nQ'
    if turned:
        yield 'Q'


def _letters(one: Shape, font: Cut, x: float, y: float, stream: Any) -> tuple[list[str], float]:
    """Return the operators of letters, and where they end."""
    known, size = font.known(stream)
    ops = ['BT', f'/{known.hash} {size:f} Tf']
    for letter in one.words:
        if letter.strip():
            ops.append(f'1 0 0 -1 {x:f} {y:f} Tm\n[<{font.shown(letter, stream, 0)}>] TJ')
        x += font.wide(letter) / UNITS
    fill = one.said.get('fill', '#000')
    return [f'{COLORS[fill]} rg', *ops, 'ET', '0 0 0 rg'] if fill != '#000' else [*ops, 'ET'], x
