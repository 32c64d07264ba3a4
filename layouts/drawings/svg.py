"""The few shapes of which every drawing is made; one unit is a point in the pocket edition."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from math import atan2, cos, degrees, hypot, radians, sin, sqrt

from markupsafe import Markup, escape

from layouts.paper.typeface import advance_em
from layouts.words.say import _

Point = tuple[float, float]
HAIR, LINE, HEAVY = 0.3, 0.7, 1.4
"""Widths of ink: a dimension line, an outline, what matters most."""
QUOTED = {letter: f'%{ord(letter):02X}' for letter in '%"#&<>\n'}
"""What an address, an attribute or who looks through tags would take for something else, the sign that begins these first."""
WIDTH, SMALLEST = 100, 0.8
"""Width of the cut that drawings are lettered in, and how small longer words may be set, of their size."""

Words = str | tuple[str, dict[str, str]]
"""English words, and what stands in them by name."""
Place = Callable[[float, float], Point]
"""Where a point of the drawn thing, in its own inches, stands in the drawing."""


def drawing(width: float, height: float, title: str, shapes: Iterable[str], css: str = '') -> Markup:
    """Return a whole drawing of so many units, with a title for those who cannot see it.

    Notes:
        1. It is an image by address, not part of the page's own tree: the typesetter then works out no style
           for its shapes and draws one that stands on many pages from one reading, three times as fast.
    """
    content = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width:.2f} {height:.2f}" '
        f'width="{width:.2f}" height="{height:.2f}">{"".join(shapes)}</svg>'
    )
    for letter, told in QUOTED.items():
        content = content.replace(letter, told)
    return Markup(
        f'<img class="drawing {css}" alt="{escape(_(title))}" style="width:{width / 10:.3f}rem;height:{height / 10:.3f}rem" '
        f'src="data:image/svg+xml,{content}">'
    )


def line(a: Point, b: Point, width: float = LINE, dash: str = '') -> str:
    """Return a line from one point to another."""
    dashed = f' stroke-dasharray="{dash}"' if dash else ''
    return (
        f'<line x1="{a[0]:.2f}" y1="{a[1]:.2f}" x2="{b[0]:.2f}" y2="{b[1]:.2f}" '
        f'stroke="#000" stroke-width="{width}"{dashed}/>'
    )


def shape(points: Iterable[Point], width: float = LINE, fill: str = 'none', dash: str = '') -> str:
    """Return a closed outline; fill is none, #000 or #fff."""
    path = 'M' + 'L'.join(f'{x:.2f} {y:.2f}' for x, y in points) + 'Z'
    stroke = f'stroke="#000" stroke-width="{width}"' if width else 'stroke="none"'
    dashed = f' stroke-dasharray="{dash}"' if dash else ''
    return f'<path d="{path}" fill="{fill}" {stroke}{dashed} stroke-linejoin="miter"/>'


def path(points: Iterable[Point], width: float = LINE) -> str:
    """Return an open line through points."""
    there = 'M' + 'L'.join(f'{x:.2f} {y:.2f}' for x, y in points)
    return f'<path d="{there}" fill="none" stroke="#000" stroke-width="{width}" stroke-linejoin="miter"/>'


def dot(at: Point, radius: float = 1.2, fill: str = '#000') -> str:
    """Return a round dot."""
    return f'<circle cx="{at[0]:.2f}" cy="{at[1]:.2f}" r="{radius}" fill="{fill}" stroke="#000" stroke-width="{HAIR}"/>'


def text(
    words: Words,
    at: Point,
    size: float = 7.5,
    anchor: str = 'start',
    weight: int = 500,
    turn: float = 0,
    fill: str = '#000',
) -> str:
    """Return a line of words, said here; turn is in degrees, anticlockwise, about its point.

    Notes:
        A drawing has the room that its English takes: longer words are set as much smaller, and as much narrower, as
        make them no wider.
    """
    if isinstance(words, str):
        source, told = words, _(words)
    else:
        source, told = (one.format(**words[1]) for one in (words[0], _(words[0])))
    narrower = ''
    if told != source:
        share = advance_em(source, WIDTH, weight) / advance_em(told, WIDTH, weight)
        if share < 1:
            wide = advance_em(source, WIDTH, weight) * size
            size = round(size * max(sqrt(share), SMALLEST), 2)
            narrower = f' textLength="{wide:.2f}" lengthAdjust="spacingAndGlyphs"'
    turned = f' transform="rotate({-turn:.2f} {at[0]:.2f} {at[1]:.2f})"' if turn else ''
    colored = '' if fill == '#000' else f' fill="{fill}"'
    return (
        f'<text x="{at[0]:.2f}" y="{at[1]:.2f}" font-family="Open Sans" font-size="{size}" '
        f'font-weight="{weight}" text-anchor="{anchor}"{narrower}{colored}{turned}>{escape(told)}</text>'
    )


def arrow_head(tip: Point, direction: float, size: float = 3.2) -> str:
    """Return a slim filled arrow head at its tip; direction in degrees, anticlockwise from the right."""
    back = [
        (tip[0] - size * cos(radians(direction + side)), tip[1] + size * sin(radians(direction + side)))
        for side in (-16, 16)
    ]
    return shape([tip, *back], 0, '#000')


def arrow(a: Point, b: Point, both: bool = False, width: float = HAIR) -> str:
    """Return a line with an arrow head at its end, or at both ends."""
    direction = degrees(atan2(a[1] - b[1], b[0] - a[0]))
    heads = arrow_head(b, direction) + (arrow_head(a, direction + 180) if both else '')
    return line(a, b, width) + heads


def dimension(
    a: Point,
    b: Point,
    off: float,
    words: Words,
    size: float = 7.5,
    gap: float = 1.6,
    weight: int = 500,
    share: float = 0.5,
) -> str:
    """Return a dimension from a to b, drawn so far to the left of that direction, with its words.

    The words lie along the line, that share of it from a, on its outer side, and are turned to be read from below or
    the right.
    """
    along = degrees(atan2(a[1] - b[1], b[0] - a[0]))
    away = (sin(radians(along)) * -off, -cos(radians(along)) * off)
    c, d = (a[0] + away[0], a[1] + away[1]), (b[0] + away[0], b[1] + away[1])
    step = 1.0 + 2.0 / max(hypot(*away), 0.1)
    witness = [
        line(
            (p[0] + away[0] * 0.12, p[1] + away[1] * 0.12),
            (p[0] + away[0] * step, p[1] + away[1] * step),
            HAIR,
        )
        for p in (a, b)
    ]
    upright = along if -90 < along <= 90 else along - 180
    side = 1 if (upright == along) == (off > 0) else -1
    lift = gap if side > 0 else -(gap + size * 0.72)
    middle = (c[0] + (d[0] - c[0]) * share, c[1] + (d[1] - c[1]) * share)
    at = (middle[0] - sin(radians(upright)) * lift, middle[1] - cos(radians(upright)) * lift)
    return ''.join(witness) + arrow(c, d, both=True) + text(words, at, size, 'middle', weight, upright)


def arc(center: Point, radius: float, start: float, end: float, width: float = HAIR) -> str:
    """Return an arc from one direction to another, in degrees anticlockwise from the right."""
    steps = max(2, int(abs(end - start) / 4))
    turns = [radians(start + (end - start) * step / steps) for step in range(steps + 1)]
    return path([(center[0] + radius * cos(t), center[1] - radius * sin(t)) for t in turns], width)


def hatch(points: list[Point], spacing: float = 3.0) -> str:
    """Return slanting hatch lines inside a convex outline: cut wood."""
    lines = []
    low = min(x + y for x, y in points)
    high = max(x + y for x, y in points)
    level = low + spacing / 2
    while level < high:
        cuts = []
        for (x1, y1), (x2, y2) in zip(points, points[1:] + points[:1], strict=True):
            first, second = x1 + y1 - level, x2 + y2 - level
            if (first < 0) != (second < 0):
                share = first / (first - second)
                cuts.append((x1 + (x2 - x1) * share, y1 + (y2 - y1) * share))
        if len(cuts) == 2:
            lines.append(line(cuts[0], cuts[1], HAIR))
        level += spacing
    return ''.join(lines)
