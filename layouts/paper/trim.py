"""Trim sizes: how big a page is, what stands on it, and how many columns and rows it holds."""

from __future__ import annotations

from msgspec import Struct

from tablegen.settings import Settings

POINTS_PER_MM = 72 / 25.4
PAPERS_MM = {'letter': (215.9, 279.4), 'a4': (210.0, 297.0)}

DIGIT_EM, SLASH_EM, SPACE_EM, FOOT_EM = 0.502, 0.387, 0.217, 0.235
"""Advance widths of Open Sans at width 86, in em; a test measures them again in the font."""
FIGURE_SPACE = '\u2007'
"""A blank as wide as a digit."""
FRACTION_OF_WHOLE = 0.86
"""Size of a fraction's figures beside the whole number's: still above 1.45 mm at the smallest size."""


class Trim(Struct, frozen=True):
    """One page format; lengths in mm, or in units of 1/10 rem (a point, in the pocket edition)."""

    name: str
    width_mm: float
    height_mm: float
    unit_pt: float
    """Points in one unit: all type and drawings grow with it."""
    inner_mm: float
    outer_mm: float
    top_mm: float
    foot_mm: float
    rows: int
    """Rows of a table that fit below a page's head."""
    row_units: float
    """Height of a row."""
    up: int
    """Pages on one side of a sheet."""

    @property
    def tab_inset_mm(self) -> float:
        """Return how far a tab's letters keep from the edge: a trim as big as its paper is not printed there."""
        return 4.5 if self.up == 2 else 0.0

    @property
    def tab_mm(self) -> float:
        """Return how wide the part of a tab is that has its letters."""
        return self.outer_mm - 1.2 - self.tab_inset_mm

    @property
    def text_width(self) -> float:
        """Return the width of the text, in units."""
        return (self.width_mm - self.inner_mm - self.outer_mm) * POINTS_PER_MM / self.unit_pt

    @property
    def text_height(self) -> float:
        """Return the height of the text, in units."""
        return (self.height_mm - self.top_mm - self.foot_mm) * POINTS_PER_MM / self.unit_pt


def trim_of(settings: Settings) -> Trim:
    """Return the page format that the settings ask for."""
    if settings.trim == 'pocket':
        return Trim('pocket', 100, 133, 1.0, 8.0, 6.5, 6.5, 7.5, 25, 10.6, 4)
    width, height = PAPERS_MM[settings.paper]
    row = 13.2 if settings.paper == 'letter' else 12.6  # half of A4 is the shorter page
    return Trim('large', height / 2, width, 1.36, 12.5, 11.0, 10.0, 11.0, 25, row, 2)


def whole_em(digits: int, feet_digits: int = 0) -> float:
    """Return the width of a whole number in em, or of feet and whole inches where feet have digits."""
    inches = digits * DIGIT_EM
    return inches + (feet_digits * DIGIT_EM + FOOT_EM + SPACE_EM if feet_digits else 0)


def mixed_em(words: str) -> float:
    """Return the width of a mixed number in em."""
    narrow = {'/': SLASH_EM, ' ': SPACE_EM, '′': FOOT_EM}
    return sum(narrow.get(letter, DIGIT_EM) for letter in words)


def fraction_em(per: int) -> float:
    """Return the width of the widest fraction of a smallest part, in em of its own size."""
    digits = len(str(per))
    return (2 * digits * DIGIT_EM + SLASH_EM) if per > 1 else 0
