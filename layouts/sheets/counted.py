"""How the pages of a plan lie on the printer's paper, and how many sheets they take."""

from __future__ import annotations

from layouts.pages.book import Plan
from layouts.sheets.fold import SheetLayout, sheet_sides


def sheet_layout(planned: Plan) -> SheetLayout:
    """Return how a plan's pages lie on the printer's paper."""
    trim = planned.trim
    return SheetLayout(planned.settings.paper, trim.width_mm, trim.height_mm, trim.up)


def sheet_count(planned: Plan) -> int:
    """Return how many sheets of paper a plan takes, the one of instructions among them."""
    bounds = [(first - 1, count) for first, count in planned.index.sections]
    return len(sheet_sides(bounds, planned.trim.up)) // 2 + 1
