"""Square corners and measured slopes: a rectangle by its diagonals, 3-4-5, a brace, a level and a tape."""

from __future__ import annotations

from math import atan, cos, degrees, sin

from markupsafe import Markup

from layouts.drawings import svg

WIDTH = 241.0
END_SIZE = 6.5


def square_layout(words: dict[str, str], title: str) -> Markup:
    """Return a rectangle of plates with both diagonals and a 3-4-5 corner, and a brace.

    words: 'diagonals', 'three', 'four', 'five', 'leg', 'brace'
    """
    height = 122.0
    unit = 12.0
    left, base = 10.0, 104.0
    wide, tall = 11 * unit, 7 * unit

    def at(x: float, y: float) -> svg.Point:
        return left + x, base - y

    a, b = (4 * unit, 0.0), (0.0, 3 * unit)
    shapes = [
        svg.shape([at(0, 0), at(wide, 0), at(wide, tall), at(0, tall)], svg.HEAVY),
        svg.line(at(0, 0), at(wide, tall), svg.HAIR, '4 2'),
        svg.line(at(0, tall), at(wide, 0), svg.HAIR, '4 2'),
        svg.line(at(*a), at(*b), svg.LINE),
        svg.text(words['four'], at(2 * unit, -10), 9, 'middle', 700),
        svg.text(words['three'], at(5, 1.3 * unit), 9, 'start', 700),
        svg.text(words['five'], at(1.3 * unit, 2.15 * unit), 9, 'start', 700),
        svg.text(words['diagonals'], at(wide / 2, tall + 6), 8, 'middle'),
    ]
    x, y, leg = 176.0, base, 52.0
    post = [(x, y), (x + 7, y), (x + 7, y - 88), (x, y - 88)]
    beam = [(x, y - 88), (x + 62, y - 88), (x + 62, y - 81), (x, y - 81)]
    corner = (x + 7, y - 81)
    low, far = (corner[0], corner[1] + leg), (corner[0] + leg * 0.9, corner[1])
    shapes += [
        svg.shape(post, svg.LINE),
        svg.shape(beam, svg.LINE),
        svg.line(low, far, 2.4),
        svg.dot(low, 1.6),
        svg.dot(far, 1.6),
        svg.dot(corner, 1.6, '#fff'),
        svg.text(words['leg'], (corner[0] + 18, corner[1] + 10), 8),
        svg.text(words['leg'], (x - 3, corner[1] + leg / 2), 8, 'end'),
        svg.text(words['brace'], ((low[0] + far[0]) / 2 + 6, (low[1] + far[1]) / 2 + 8), 8, weight=700),
    ]
    return svg.drawing(WIDTH, height, title, shapes)


def level_gap(slope: float, level: float) -> float:
    """Return the plumb gap between the free end of a level and the roof, in."""
    return slope * level


def level_and_tape(slope: float, level: float, words: dict[str, str], title: str) -> Markup:
    """Return a level held level with one end on a roof, and the tape at its other end, to scale; ridge at the left.

    words: 'level', 'gap', 'pitch', 'ridge', 'tail'
    """
    gap = level_gap(slope, level)
    scale = min(130 / level, 54 / gap)
    touch = (WIDTH / 2 - level * scale / 2, 26.0)
    free = (touch[0] + level * scale, touch[1])
    foot = (free[0], free[1] + gap * scale)
    lean = atan(slope)
    out = (24.0 * cos(lean), 24.0 * sin(lean))
    upper, lower = (touch[0] - out[0], touch[1] - out[1]), (foot[0] + out[0], foot[1] + out[1])
    middle, high, low = (touch[0] + free[0]) / 2, touch[1] - 6.5, touch[1] - 2.5
    shapes = [
        svg.line(upper, lower, svg.HEAVY),
        svg.shape([touch, free, (free[0], free[1] - 9), (touch[0], touch[1] - 9)], svg.LINE, '#fff'),
        svg.shape([(middle - 8, low), (middle + 8, low), (middle + 8, high), (middle - 8, high)], svg.HAIR),
        svg.dot((middle, touch[1] - 4.5), 1.4, '#fff'),
        svg.arrow(free, foot, both=True, width=svg.LINE),
        svg.text(words['gap'], (free[0] + 5, (free[1] + foot[1]) / 2 + 3), 9, weight=700),
        svg.text(words['level'], (touch[0], touch[1] - 13), 8),
        svg.arc(foot, 24, 180 - degrees(lean), 180),
        svg.line(foot, (foot[0] - 40, foot[1]), svg.HAIR, '3 2'),
        svg.text(words['pitch'], (foot[0] - 44, foot[1] + 2), 9, 'end', 700),
        svg.text(words['ridge'], (upper[0] - 3, upper[1] + 4), END_SIZE, 'end', 700),
        svg.text(words['tail'], (lower[0] + 3, lower[1]), END_SIZE, weight=700),
    ]
    return svg.drawing(WIDTH, lower[1] + 7, title, shapes)
