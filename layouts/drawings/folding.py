"""Small drawings of what is done with the printed sheets: turn, cut, fold, staple."""

from __future__ import annotations

from markupsafe import Markup

from layouts.drawings import svg
from layouts.words.say import N_

WIDTH, HEIGHT = 140.0, 92.0


def flipping(up: int) -> Markup:
    """Return a sheet with the edge over which the printer turns it in black."""
    wide, high = (58.0, 76.0) if up == 4 else (76.0, 58.0)
    x, y = 32.0, (HEIGHT - high) / 2
    corners = [(x, y), (x + wide, y), (x + wide, y + high), (x, y + high)]
    shapes = [
        svg.shape(corners, svg.LINE, '#fff'),
        svg.line((x + wide / 2, y), (x + wide / 2, y + high), svg.HAIR, '3 2'),
    ]
    if up == 4:
        shapes.append(svg.line((x, y + high / 2), (x + wide, y + high / 2), svg.HAIR))
    # the edge it turns over: upright sheets over the long edge, sheets laid across over the short one
    shapes += [
        svg.line((x, y), (x, y + high), 3),
        svg.arc((x, y + high / 2), 17, 35, 145, svg.LINE),
        svg.arrow_head((x - 17 * 0.82, y + high / 2 - 17 * 0.57), 235, 5),
    ]
    return svg.drawing(WIDTH, HEIGHT, N_('The edge over which the sheet turns'), shapes)


def cutting() -> Markup:
    """Return a pile cut across its middle, the lower half going inside the upper."""
    wide, half, x, y = 56.0, 34.0, 14.0, 8.0
    shapes = []
    for step in (4, 2, 0):
        shapes.append(svg.shape(_box(x + step, y + step, wide, half), svg.LINE, '#fff'))
    for step in (4, 2, 0):
        shapes.append(svg.shape(_box(x + step, y + half + 6 + step, wide, half), svg.LINE, '#fff'))
    shapes += [
        svg.line((x - 8, y + half + 5), (x + wide + 12, y + half + 5), svg.LINE, '5 2.5'),
        svg.text('A', (x + wide / 2, y + half / 2 + 4), 12, 'middle', 700),
        svg.text('B', (x + wide / 2, y + half * 1.5 + 10), 12, 'middle', 700),
        svg.text(N_('B inside A'), (x + wide + 18, y + half + 26), 10, 'start', 500),
        svg.arc((x + wide + 7, y + half + 4), 19, -70, 70, svg.LINE),
        svg.arrow_head((x + wide + 7 + 19 * 0.34, y + half + 4 - 19 * 0.94), 165, 5),
    ]
    return svg.drawing(WIDTH, HEIGHT, N_('The pile cut in two, the lower half put inside the upper'), shapes)


def folding() -> Markup:
    """Return the pile folded at its middle, first page outside."""
    base, spine, top = 76.0, 44.0, 20.0
    shapes = []
    for step in (0, 2.6, 5.2):
        shapes.append(
            svg.path(
                [
                    (spine - 32 + step * 0.4, base - 4 - step),
                    (spine, top + 40 - step),
                    (spine + 42 - step, base - 30 - step),
                ]
            )
        )
    shapes += [
        svg.shape([(20, 20), (60, 12), (60, 66), (20, 76)], svg.LINE, '#fff'),
        svg.shape([(60, 12), (104, 22), (104, 78), (60, 66)], svg.LINE, '#fff'),
        svg.line((60, 8), (60, 72), svg.LINE, '4 2'),
        svg.text('1', (92, 58), 14, 'middle', 700),
        svg.arc((60, 40), 36, 20, 62, svg.LINE),
        svg.arrow_head((60 + 36 * 0.94, 40 - 36 * 0.34), -62, 5),
    ][0:]
    return svg.drawing(WIDTH, HEIGHT, N_('The pile folded at the dashed line, page 1 outside'), shapes[3:])


def stapling() -> Markup:
    """Return the spine with its two staples, a quarter of its length from either end."""
    x, y, wide, high = 30.0, 8.0, 52.0, 72.0
    shapes = [svg.shape(_box(x, y, wide, high), svg.LINE, '#fff'), svg.line((x, y), (x, y + high), 2)]
    for share in (0.25, 0.75):
        at = y + high * share
        shapes += [svg.line((x, at - 5), (x, at + 5), 4), svg.line((x - 8, at), (x - 3, at), svg.HAIR)]
        shapes.append(svg.text('1/4', (x - 22, at + 3), 9))
    return svg.drawing(WIDTH, HEIGHT, N_('Two staples in the spine, a quarter from each end'), shapes)


def _box(x: float, y: float, wide: float, high: float) -> list[svg.Point]:
    return [(x, y), (x + wide, y), (x + wide, y + high), (x, y + high)]
