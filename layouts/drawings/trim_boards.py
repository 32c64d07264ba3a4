"""Boards along an eave, standing plumb, square to the slope and lying flat, each with the miter on its face.

The roof falls to the right, as a rafter lies with its ridge at the left.
"""

from __future__ import annotations

from math import atan, cos, radians, sin, tan

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg

WIDTH, HEIGHT = 241.0, 134.0
PANEL, BETWEEN = 74.0, 9.5
REACH, TALLEST = 54.0, 34.0
"""Of the roof that is drawn, level, and at most plumb."""
BOARD_LONG, BOARD_THICK = 26.0, 5.0
FACE_HEIGHT, FACE_TOP = 26.0, 78.0
END_SIZE = 6.5


class TrimPanel(Struct, frozen=True):
    """One way for a board to stand."""

    name: str
    turn: float
    """Degrees from the roof's slope to the board's face in the section: 0 lies flat, 90 is square to it."""
    miter: float
    """deg, on its face, from square."""
    upper_longer: bool
    """Whether, at an outside corner, the upper edge of the face is the longer one."""
    words: tuple[svg.Words, svg.Words]
    """Miter, bevel."""


def trim_boards(slope: float, panels: tuple[TrimPanel, ...], ends: tuple[str, str], title: str) -> Markup:
    """Return sections at the eave above the boards' faces with their miters.

    ends: what stands at the roof's upper and lower end
    """
    shapes = []
    for place, panel in enumerate(panels):
        x0 = place * (PANEL + BETWEEN)
        shapes += [
            svg.text(panel.name, (x0 + PANEL / 2, 8), 8, 'middle', 700),
            *_section(x0, atan(slope), panel, ends),
            *_face(x0, panel),
        ]
    return svg.drawing(WIDTH, HEIGHT, title, shapes)


def _section(x0: float, lean: float, panel: TrimPanel, ends: tuple[str, str]) -> list[str]:
    """Return the roof's line and the board at the eave, cut across."""
    reach = min(REACH, TALLEST / tan(lean))
    eave = (x0 + PANEL - 16.0, 46.0)
    top = (eave[0] - reach, eave[1] - reach * tan(lean))
    facing = lean + radians(panel.turn)
    along = (-cos(facing), -sin(facing))  # up the board's face
    out = (sin(facing), -cos(facing))
    start = eave if panel.turn else (eave[0] - 4 * cos(lean), eave[1] - 4 * sin(lean))
    sign = -1 if panel.turn else 1
    end = (start[0] + sign * along[0] * BOARD_LONG, start[1] + sign * along[1] * BOARD_LONG)
    corners = [start, end, *((x + out[0] * BOARD_THICK, y + out[1] * BOARD_THICK) for x, y in (end, start))]
    return [
        svg.line(eave, top, svg.LINE),
        svg.shape(corners, svg.LINE, '#fff'),
        svg.hatch(corners, 2.2),
        svg.text(ends[0], (top[0] - 4, top[1] + 16 * tan(lean) + 8), END_SIZE, weight=700),
        svg.text(ends[1], (x0 + PANEL, 36), END_SIZE, 'end', 700),
    ]


def _face(x0: float, panel: TrimPanel) -> list[str]:
    """Return the board's face from outside, its end at an outside corner at the right."""
    run, end, foot = FACE_HEIGHT * tan(radians(panel.miter)), x0 + PANEL - 8, FACE_TOP + FACE_HEIGHT
    high, low = (end, end - run) if panel.upper_longer else (end - run, end)
    across = ((end, FACE_TOP), (end, foot + 5)) if panel.upper_longer else ((end, foot), (end, FACE_TOP - 5))
    return [
        svg.path([(x0 + 4, FACE_TOP), (high, FACE_TOP), (low, foot), (x0 + 4, foot)], svg.LINE),
        svg.line((high, FACE_TOP), (low, foot), svg.HEAVY),
        svg.line(*across, svg.HAIR, '3 2') if panel.miter else '',
        svg.text(panel.words[0], (x0 + 4, foot + 12), 8.5, weight=700),
        svg.text(panel.words[1], (x0 + 4, foot + 23), 8.5, weight=700),
    ]
