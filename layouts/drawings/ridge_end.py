"""The end of a hip roof's ridge, seen from above, both ways to frame it; to scale. The ridge comes from the left."""

from __future__ import annotations

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.drawings.plan import CENTER, DIAGONAL

PANEL, HEIGHT, BETWEEN = 116.0, 104.0, 9.0
TOP, FOOT, END_SIZE = 12.0, 16.0, 6.5
"""What the names above and the figures below take; type of the ridge's name."""
SMALL = (7.0, 7.5, 11.0, 0.9)
"""Of a lower drawing: type of names and of figures, what these take, radius of the dots."""


class RidgeEnd(Struct, frozen=True):
    """Outlines about the ridge's theoretical end, inches; x towards the end common, y to the left of that."""

    past: float
    """How far the ridge runs past the theoretical end, and what comes off the end common."""
    ridge: tuple[svg.Point, ...]
    end_common: tuple[svg.Point, ...]
    hips: tuple[tuple[svg.Point, ...], ...]
    side_commons: tuple[tuple[svg.Point, ...], ...] = ()


class Frame(Struct, frozen=True):
    """How far is shown from the theoretical end, inches."""

    wide: float
    tall: float


def between_commons(ridge: float, hip: float, common: float, frame: Frame) -> RidgeEnd:
    """Return a ridge's end flush with the last side commons, each hip in a corner of two commons, cut to a point."""
    past, half, wide, aside = common / 2, ridge / 2, common / 2, hip / DIAGONAL
    far, tall = frame.wide, frame.tall
    return RidgeEnd(
        past,
        ((-far, half), (past, half), (past, -half), (-far, -half)),
        ((past, wide), (far, wide), (far, -wide), (past, -wide)),
        tuple(
            _hip(
                ((past + aside, side * wide), (past, side * wide), (past, side * (wide + aside))), hip, frame
            )
            for side in (1, -1)
        ),
        tuple(
            ((-past, side * half), (past, side * half), (past, side * tall), (-past, side * tall))
            for side in (1, -1)
        ),
    )


def hips_on_ridge(ridge: float, hip: float, common: float, frame: Frame) -> RidgeEnd:
    """Return a ridge's end between two hips on its sides, one cheek each; a thicker end common is clipped to both."""
    half, wide, aside, far = ridge / 2, common / 2, hip / DIAGONAL, frame.wide
    past, bears = half + aside, min(half, wide)
    upper = ((past, bears), (past + wide - bears, wide), (far, wide))
    return RidgeEnd(
        past,
        ((-far, half), (past, half), (past, -half), (-far, -half)),
        (*upper, *((x, -y) for x, y in reversed(upper))),
        tuple(_hip(((past, side * half), (half - aside, side * half)), hip, frame) for side in (1, -1)),
    )


def _hip(cut: tuple[svg.Point, ...], thickness: float, frame: Frame) -> tuple[svg.Point, ...]:
    """Return a hip from the points of its cheeks out to the frame, at 45 degrees to the ridge."""
    side = 1 if cut[0][1] > 0 else -1
    long = DIAGONAL * min(frame.wide, frame.tall) - thickness / 2

    def far(point: svg.Point) -> svg.Point:
        out = (long - (point[0] + side * point[1]) / DIAGONAL) / DIAGONAL
        return point[0] + out, point[1] + side * out

    return (far(cut[0]), *cut, far(cut[-1]))


def ridge_ends(
    ridge: float,
    hip: float,
    common: float,
    words: dict[str, str],
    figures: tuple[svg.Words, svg.Words],
    title: str,
    height: float = HEIGHT,
) -> Markup:
    """Return both ways side by side, with what the ridge runs past in bold.

    words:   'between', 'on_ridge' (names of the two), 'ridge' (its end)
    figures: what the ridge runs past in each
    height:  of the drawing
    """
    name_size, figure_size, foot, dot = (8, 9, FOOT, 1.7) if height == HEIGHT else SMALL
    past, tall = ridge / 2 + hip / DIAGONAL, (height - TOP - foot) / 2
    scale = tall / max(1.9 * past, past + 1.6 * common, 1.7 * hip)
    frame = Frame(PANEL / 2 / scale, tall / scale)
    shapes: list[str] = []
    for place, (name, make) in enumerate((('between', between_commons), ('on_ridge', hips_on_ridge))):
        end = make(ridge, hip, common, frame)
        x0, y0 = PANEL / 2 + place * (PANEL + BETWEEN), TOP + tall

        def at(point: svg.Point, x0: float = x0, y0: float = y0) -> svg.Point:
            return x0 + point[0] * scale, y0 - point[1] * scale

        outlines = (*end.side_commons, *end.hips, end.end_common, end.ridge)
        shapes += [svg.shape(map(at, outline), svg.LINE, '#fff') for outline in outlines]
        shapes += [
            svg.line(at((-frame.wide, 0)), at((frame.wide, 0)), svg.HAIR, CENTER),
            svg.line(at((0, 0)), at((end.past, 0)), 2.2),
            svg.dot(at((0, 0)), dot),
            svg.dot(at((end.past, 0)), dot, '#fff'),
            svg.text(words['ridge'], (x0 - PANEL / 2, y0 + ridge / 2 * scale + 9), END_SIZE, weight=700),
            svg.text(words[name], (x0, 8), name_size, 'middle', 700),
            svg.text(figures[place], (x0, height - 3), figure_size, 'middle', 700),
        ]
    return svg.drawing(2 * PANEL + BETWEEN, height, title, shapes)
