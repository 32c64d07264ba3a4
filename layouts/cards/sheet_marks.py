"""Marks of a sheet of cards, as PDF operators: cut lines with round corners, film borders, holes, ticks."""

from __future__ import annotations

from layouts.cards.formats import FILM_HOLE_MM, HOLE_CENTER_MM, PAPER_HOLE_MM, SEAL_MM, Format
from layouts.cards.sheet import CardSheet
from layouts.sheets.fold import FIT_MM, POINTS_PER_MM
from layouts.sheets.marks import HAIRLINE_PT, Line, draw_lines, line_mm

KAPPA = 0.5523
"""How far a curve's handles reach, in radii, for a quarter of a circle."""


def card_marks(sheet: CardSheet, form: Format, places: list[tuple[int, int]], back: bool) -> str:
    """Return the marks of one side.

    Given:
        places  column and row of every card on this side
        back    whether holes are on the left

    Notes:
        1. Solid: cut the paper, punch the wide hole in it. Dashed: the film's border and its narrow hole.
        2. A card that fills the paper has no cut line.
    """
    drawn = [f'q 0 G {HAIRLINE_PT} w']
    whole = all(abs(card - paper) < FIT_MM for card, paper in zip(sheet.card_mm, sheet.sheet_mm, strict=True))
    width, height = sheet.card_mm
    for column, row in places:
        x, y = sheet.corner_mm(column, row)
        center = (x + (HOLE_CENTER_MM if back else width - HOLE_CENTER_MM), y + height - HOLE_CENTER_MM)
        drawn.append('[] 0 d')
        if not whole:
            drawn.append(_rounded(x, y, width, height, form.corner_mm))
        drawn.append(_circle(*center, PAPER_HOLE_MM))
        drawn.append('[1.5 1] 0 d')
        if not whole:
            reach = 2 * SEAL_MM
            drawn.append(
                _rounded(x - SEAL_MM, y - SEAL_MM, width + reach, height + reach, form.corner_mm + SEAL_MM)
            )
        drawn.append(_circle(*center, FILM_HOLE_MM))
    drawn.append('Q\n')
    return '\n'.join(drawn) + ('' if whole else draw_lines(_ticks(sheet)))


def _ticks(sheet: CardSheet) -> list[Line]:
    """Return cut marks in line with the edges of every card, in the margins but the upper, which has words."""
    width, _ = sheet.sheet_mm
    side, foot = sheet.margins_mm
    lines: list[tuple[float, float, float, float]] = []
    for column in range(sheet.columns):
        left = sheet.corner_mm(column, 0)[0]
        for x in (left, left + sheet.card_mm[0]):
            lines.append((x, 0.0, x, foot - SEAL_MM))
    for row in range(sheet.rows):
        low = sheet.corner_mm(0, row)[1]
        for y in (low, low + sheet.card_mm[1]):
            lines += [(0.0, y, side - SEAL_MM, y), (width - side + SEAL_MM, y, width, y)]
    return [line_mm(*line) for line in lines]


def _circle(x: float, y: float, across: float) -> str:
    return _rounded(x - across / 2, y - across / 2, across, across, across / 2)


def _rounded(x: float, y: float, width: float, height: float, radius: float) -> str:
    """Return a rectangle with round corners, in mm, as PDF operators."""
    left, low, right, top = x, y, x + width, y + height
    handle = radius * (1 - KAPPA)
    path = [
        ('m', (left + radius, low)),
        ('l', (right - radius, low)),
        ('c', (right - handle, low, right, low + handle, right, low + radius)),
        ('l', (right, top - radius)),
        ('c', (right, top - handle, right - handle, top, right - radius, top)),
        ('l', (left + radius, top)),
        ('c', (left + handle, top, left, top - handle, left, top - radius)),
        ('l', (left, low + radius)),
        ('c', (left, low + handle, left + handle, low, left + radius, low)),
    ]
    numbers = (
        ' '.join(f'{POINTS_PER_MM * value:.3f}' for value in points) + f' {name}' for name, points in path
    )
    return ' '.join(numbers) + ' h S'
