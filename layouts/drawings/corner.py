"""The corner of a hip roof with a wing, seen from above, to scale."""

from __future__ import annotations

from math import sqrt

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg


class CornerLabels(Struct, frozen=True):
    """The words written on the drawing."""

    title: str
    ridge: str
    hip: str
    valley: str
    common: str
    end_common: str
    hip_jack: str
    valley_jack: str
    plate: str
    run: str
    spacing: str


def labelled_corner(labels: CornerLabels) -> Markup:
    """Return the plan of a hip end whose long side carries a wing of the same width."""
    # one function, long as it is: all its members and notes are placed by the same half dozen lengths
    width, height = 240.0, 146.0
    scale = 4.9
    run, spacing = 8.0, 2.0
    left, top = 26.0, 30.0

    def at(x: float, y: float) -> svg.Point:
        return left + x * scale, top + y * scale

    def member(a: svg.Point, b: svg.Point, thick: float = 0.55) -> str:
        dx, dy = b[0] - a[0], b[1] - a[1]
        long = sqrt(dx * dx + dy * dy)
        nx, ny = -dy / long * thick / 2, dx / long * thick / 2
        corners = [
            (a[0] + nx, a[1] + ny),
            (b[0] + nx, b[1] + ny),
            (b[0] - nx, b[1] - ny),
            (a[0] - nx, a[1] - ny),
        ]
        return svg.shape([at(*corner) for corner in corners], svg.HAIR, '#fff')

    end_x, wing_mid, wing_half, far = run, 26.0, 5.5, 40.0
    shapes = [
        svg.path(
            [
                at(far, 0),
                at(0, 0),
                at(0, 2 * run),
                at(wing_mid - wing_half, 2 * run),
                at(wing_mid - wing_half, 2 * run + 5.4),
            ],
            svg.LINE,
        ),
        svg.path(
            [at(wing_mid + wing_half, 2 * run + 5.4), at(wing_mid + wing_half, 2 * run), at(far, 2 * run)],
            svg.LINE,
        ),
    ]
    x = spacing
    while x < far:
        if x < end_x:  # hip jacks, both long sides
            shapes += [member((x, 0), (x, x)), member((x, 2 * run), (x, 2 * run - x))]
        else:
            shapes.append(member((x, 0), (x, run)))
            inside = wing_half - abs(x - wing_mid)
            if inside <= 0:
                shapes.append(member((x, run), (x, 2 * run)))
            elif inside < run:
                shapes.append(member((x, run), (x, 2 * run - inside)))
        x += spacing
    y = spacing
    while y < 2 * run:
        reach = min(y, 2 * run - y)
        shapes.append(member((0, y), (reach, y)))
        y += spacing
    for step in (1.5, 3.5):  # valley jacks of the wing's own roof
        depth = wing_half - step
        for side in (-1, 1):
            shapes.append(member((wing_mid, 2 * run - depth), (wing_mid + side * step, 2 * run - depth)))
    shapes += [
        member((end_x, run), (far, run), 0.75),
        member((wing_mid, 2 * run - wing_half), (wing_mid, 2 * run + 5.4), 0.75),
        member((0, 0), (end_x, run), 0.75),
        member((0, 2 * run), (end_x, run), 0.75),
        member((wing_mid - wing_half, 2 * run), (wing_mid, 2 * run - wing_half), 0.75),
        member((wing_mid + wing_half, 2 * run), (wing_mid, 2 * run - wing_half), 0.75),
    ]

    def note(words: str, words_at: svg.Point, target: svg.Point, anchor: str = 'start') -> None:
        shapes.append(svg.text(words, words_at, 8, anchor, 700))
        shift = {'start': -1.5, 'end': 1.5, 'middle': 0}[anchor]
        lift = -2.6 if anchor != 'middle' else 2.2 if target[1] > words_at[1] else -8
        shapes.append(svg.arrow((words_at[0] + shift, words_at[1] + lift), target))

    _x0, y0 = at(0, 0)
    note(labels.hip, (at(1, 0)[0], y0 - 14), at(1.7, 1.55), 'middle')
    note(labels.hip_jack, (at(8, 0)[0], y0 - 14), at(6, 2), 'middle')
    note(labels.common, (at(18, 0)[0], y0 - 14), at(18, 3), 'middle')
    note(labels.ridge, (at(27, 0)[0], y0 - 14), at(24.7, run - 0.3), 'middle')
    note(labels.plate, (at(35, 0)[0], y0 - 14), at(34, 0.05), 'middle')
    bottom = at(0, 2 * run)[1]
    note(labels.end_common, (at(2.6, 0)[0], bottom + 32), at(3.2, run + 0.3), 'middle')
    note(labels.valley, (at(17.5, 0)[0], bottom + 32), at(wing_mid - wing_half + 1.6, 2 * run - 1.5), 'end')
    note(labels.valley_jack, (at(32.6, 0)[0], bottom + 22), at(27.9, 2 * run - 2), 'start')
    shapes.append(svg.dimension(at(0, run), at(0, 0), 12, labels.run, 6))
    y = bottom + 6
    shapes += [svg.line(at(x, 2 * run), (at(x, 0)[0], y + 2), svg.HAIR) for x in (4, 6)]
    shapes.append(svg.arrow((at(4, 0)[0], y), (at(6, 0)[0], y), both=True))
    shapes.append(svg.text(labels.spacing, (at(4, 0)[0] - 3, y + 10), 7.5))
    return svg.drawing(width, height, labels.title, shapes)
