"""Boards along an eave, standing plumb, square to the slope and lying flat, each with the miter on its face."""

from __future__ import annotations

from dataclasses import dataclass
from math import atan, cos, radians, sin, tan

from markupsafe import Markup

from layouts.drawings import svg

WIDTH, HEIGHT = 241.0, 144.0
PANEL = 74.0
BOARD_LONG, BOARD_THICK = 26.0, 5.0
FACE_HEIGHT = 26.0


@dataclass(frozen=True, slots=True)
class TrimPanel:
    """One way for a board to stand."""

    name: str
    turn: float
    """Degrees from the roof's slope to the board's face in the section: 0 lies flat, 90 is square to it."""
    miter: float
    """deg, on its face, from square."""
    words: tuple[str, str]
    """Miter, bevel."""


def trim_boards(slope: float, panels: tuple[TrimPanel, ...], title: str) -> Markup:
    """Return sections at the eave above the boards' faces with their miters."""
    lean = atan(slope)
    shapes = []
    for place, panel in enumerate(panels):
        x0 = place * (PANEL + 9.5)
        eave = (x0 + 16.0, 44.0)
        reach = PANEL - 20
        top = (eave[0] + reach, eave[1] - reach * slope * min(1, 34 / (reach * slope)))
        scale = (eave[1] - top[1]) / (top[0] - eave[0])
        lean = atan(scale)
        facing = lean + radians(panel.turn)
        along = (cos(facing), -sin(facing))
        square = (-sin(facing), -cos(facing))
        start = (eave[0], eave[1]) if panel.turn else (eave[0] + 4 * cos(lean), eave[1] - 4 * sin(lean))
        sign = -1 if panel.turn else 1
        corners = [
            start,
            (start[0] + sign * along[0] * BOARD_LONG, start[1] + sign * along[1] * BOARD_LONG),
            (
                start[0] + sign * along[0] * BOARD_LONG + square[0] * BOARD_THICK,
                start[1] + sign * along[1] * BOARD_LONG + square[1] * BOARD_THICK,
            ),
            (start[0] + square[0] * BOARD_THICK, start[1] + square[1] * BOARD_THICK),
        ]
        face_top = 78.0
        run = FACE_HEIGHT * tan(radians(panel.miter))
        end = x0 + PANEL - 8
        face = [
            (x0 + 4, face_top),
            (end - run, face_top),
            (end, face_top + FACE_HEIGHT),
            (x0 + 4, face_top + FACE_HEIGHT),
        ]
        shapes += [
            svg.line(eave, top, svg.LINE),
            svg.shape(corners, svg.LINE, '#fff'),
            svg.hatch(corners, 2.2),
            svg.text(panel.name, (x0 + PANEL / 2, 8), 8, 'middle', 700),
            svg.path(face, svg.LINE),
            svg.line(face[1], face[2], svg.HEAVY),
            svg.line(face[2], (end, face_top - 5), svg.HAIR, '3 2') if panel.miter else '',
            svg.text(panel.words[0], (x0 + 4, face_top + FACE_HEIGHT + 12), 8.5, weight=700),
            svg.text(panel.words[1], (x0 + 4, face_top + FACE_HEIGHT + 23), 8.5, weight=700),
        ]
    return svg.drawing(WIDTH, HEIGHT - 12, title, shapes)
