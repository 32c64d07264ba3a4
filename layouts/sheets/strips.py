"""Strips: bands of white on a sheet for a line of small type, or for the bar that is measured with a rule."""

from __future__ import annotations

from msgspec import Struct

from layouts.sheets.fold import POINTS_PER_MM, SheetLayout

UNPRINTABLE_MM = 4.5
"""A strip along the paper's edge that a home printer may leave white; lines run into it, letters keep out."""
INSET_MM = 1.5
"""Between small type and whatever stands beside it."""
BAR_MM, BAR_IN_MM = 100.0, 4 * 25.4
"""The bar's two lengths: 100 mm, and 4 in."""
BAR_TICK_MM = 0.9
FOLD_BANDS_MM = (1.2, 4.0)
"""How far from the fold the bands of type and bar begin where pages fill their paper."""
FOLD_BAND_MM = 2.4


class Strip(Struct, frozen=True):
    """One band, along the sheet's foot or up its fold; mm from the sheet's lower left corner."""

    x: float
    y: float
    """Where it begins."""
    long: float
    high: float
    turned: bool = False
    """Whether it runs up the sheet, its letters' heads to the left."""

    def at(self, along: float, up: float) -> tuple[float, float]:
        """Return a place in the strip as one on the sheet."""
        return (self.x - up, self.y + along) if self.turned else (self.x + along, self.y + up)

    def matrix(self, along: float, up: float, scale: float) -> str:
        """Return the operands that put a drawing of some scale at a place in the strip, along it."""
        x, y = (POINTS_PER_MM * length for length in self.at(along, up))
        a, b = (0.0, scale) if self.turned else (scale, 0.0)
        return f'{a:.6f} {b:.6f} {-b:.6f} {a:.6f} {x:.3f} {y:.3f} cm'

    def part(self, start: float, end: float) -> Strip:
        """Return the part of it between two places along it, its type clear of what stands at both."""
        x, y = self.at(start + INSET_MM, 0.0)
        return Strip(x, y, end - start - 2 * INSET_MM, self.high, self.turned)


def upper_strip(sheet_mm: tuple[float, float], margins_mm: tuple[float, float], right_mm: float) -> Strip:
    """Return what a printer prints of the upper margin, from the left up to a place.

    Given:
        sheet_mm    width and height of the sheet
        margins_mm  free at each side, and above
    """
    beside, above = margins_mm
    x = max(beside, UNPRINTABLE_MM) + INSET_MM
    return Strip(x, sheet_mm[1] - above, right_mm - x, above - UNPRINTABLE_MM)


def label_strip(layout: SheetLayout) -> Strip:
    """Return where a side's name stands: in the upper margin, left of the fold mark, or along the fold."""
    if _has_margins(layout):
        return upper_strip(layout.sheet_mm, layout.margins_mm, layout.sheet_mm[0] / 2 - INSET_MM)
    return _along_fold(layout, FOLD_BANDS_MM[0]).part(0.0, layout.sheet_mm[1] - 2 * UNPRINTABLE_MM)


def bar_strip(layout: SheetLayout) -> Strip:
    """Return where a side's bar lies, in its middle: in the lower margin, or along the fold.

    Notes:
        Pages as big as half of their paper leave no margin; what is nearest the fold is then free on every page,
        and goes out of sight in the folded book.
    """
    if not _has_margins(layout):
        return _along_fold(layout, FOLD_BANDS_MM[1])
    beside, foot = layout.margins_mm
    x = max(beside, UNPRINTABLE_MM)
    return Strip(x, UNPRINTABLE_MM, layout.sheet_mm[0] - 2 * x, foot - UNPRINTABLE_MM)


def bar(strip: Strip) -> tuple[list[tuple[float, float, float, float]], Strip, Strip]:
    """Return the bar in the middle of a strip, and the parts of the strip before and after it.

    Returned:
        lines between two points of the sheet, mm: the bar, a tick across its start, one up at 100 mm and one down at 4 in
    """
    start, middle = (strip.long - BAR_IN_MM) / 2, strip.high / 2
    end = start + BAR_IN_MM
    lines = [
        (start, middle, end, middle),
        (start, middle - BAR_TICK_MM, start, middle + BAR_TICK_MM),
        (start + BAR_MM, middle, start + BAR_MM, middle + BAR_TICK_MM),
        (end, middle, end, middle - BAR_TICK_MM),
    ]
    drawn = [(*strip.at(*line[:2]), *strip.at(*line[2:])) for line in lines]
    return drawn, strip.part(0.0, start), strip.part(end, strip.long)


def _has_margins(layout: SheetLayout) -> bool:
    return layout.margins_mm[1] - UNPRINTABLE_MM > 2 * BAR_TICK_MM


def _along_fold(layout: SheetLayout, from_fold_mm: float) -> Strip:
    width, height = layout.sheet_mm
    return Strip(width / 2 - from_fold_mm, UNPRINTABLE_MM, height - 2 * UNPRINTABLE_MM, FOLD_BAND_MM, True)
