"""Fold: which page lies where on which side of which sheet, so that printed sheets fold into a booklet.

Four pages a side, portrait sheet: print both sides, flip on the LONG edge. Cut the pile once across the
middle, slip the lower pile inside (under) the upper one, fold at the center line with the fronts outside, staple.
Two pages a side, landscape sheet: print both sides, flip on the SHORT edge. Fold, staple; nothing is cut.
Either way the paper turns about its upright center line, so what is printed on the left half of a front
has the right half of the back behind it, and every page stands upright.
"""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

POINTS_PER_MM = 72 / 25.4
PAPERS_MM = {'letter': (215.9, 279.4), 'a4': (210.0, 297.0)}
"""Width and height of a paper held upright: US Letter is 8 1/2 × 11 in, A4 is by ISO 216."""

CREEP_MM = 0.1
"""How far each nested half-sheet is pushed out by the one around it: about the thickness of 80 g paper.
Every page is shifted towards the spine by this much for each half-sheet around its own, so that outer
margins come out even once the fore-edge is trimmed."""

FIT_MM = 0.05
"""Lengths that differ by less are the same length."""


class SheetLayout(Struct, frozen=True):
    """How pages lie on the printer's paper: abutting at spine and cut, the block in the middle of the sheet."""

    paper: str
    """'letter' or 'a4'."""
    trim_width_mm: float
    trim_height_mm: float
    up: int
    """Pages on one side of a sheet: 4 on an upright sheet, 2 on a sheet laid across."""

    def __post_init__(self) -> None:
        if self.paper not in PAPERS_MM or self.up not in (2, 4):
            raise ValueError(f'no such sheet: {self.up} pages on {self.paper!r}')
        if min(self.margins_mm) < -FIT_MM:
            size = f'{self.trim_width_mm} × {self.trim_height_mm} mm'
            raise ValueError(f'{self.up} pages of {size} are more than a side of {self.paper} holds')

    @property
    def rows(self) -> int:
        """Return how many half-sheets a sheet gives."""
        return self.up // 2

    @property
    def sheet_mm(self) -> tuple[float, float]:
        """Return width and height of the sheet as it is printed."""
        width, height = PAPERS_MM[self.paper]
        return (width, height) if self.up == 4 else (height, width)

    @property
    def margins_mm(self) -> tuple[float, float]:
        """Return what is left of the paper at each side, and above and below."""
        width, height = self.sheet_mm
        return (width - 2 * self.trim_width_mm) / 2, (height - self.rows * self.trim_height_mm) / 2

    def corner_mm(self, column: int, row: int) -> tuple[float, float]:
        """Return the lower left corner of a panel, from the lower left corner of the sheet."""
        side, foot = self.margins_mm
        return side + column * self.trim_width_mm, foot + (self.rows - 1 - row) * self.trim_height_mm


class Panel(Struct, frozen=True):
    """One page's place on a side of a sheet."""

    column: int
    """0 left of the spine, 1 right of it."""
    row: int
    """0 upper half of the sheet, 1 lower half."""
    page: int
    """Place of the page in the booklet, from 0."""
    nest: int
    """Half-sheets around its own: 0 is the outermost."""

    @property
    def shift_mm(self) -> float:
        """Return the shift against creep, positive to the right: always towards the spine."""
        return CREEP_MM * self.nest * (1 if self.column == 0 else -1)


class SheetSide(Struct, frozen=True):
    """One side of one sheet."""

    section: int
    """Number of the section, from 1."""
    sections: int
    sheet: int
    """Number of the sheet in its section, from 1."""
    sheets: int
    """Sheets in the section."""
    face: str
    """'front' (outside of the fold) or 'back'."""
    lower_blank: bool
    """Whether the lower half stays empty, because the section has an odd number of half-sheets."""
    panels: tuple[Panel, ...]


def half_sheet(nest: int, pages: int) -> tuple[tuple[int, int], tuple[int, int]]:
    """Return the pages on the front (left, right) and on the back (left, right) of a half-sheet.

    Given:
        nest    half-sheets around this one, 0 for the outermost
        pages   pages in the section, a multiple of 4

    Returned:
        page numbers from 1; the front is the outside of the fold

    Source:
        one sheet within another, folded once: common practice; the tests fold it.
    """
    return (pages - 2 * nest, 1 + 2 * nest), (2 + 2 * nest, pages - 1 - 2 * nest)


def sheet_sides(sections: Sequence[tuple[int, int]], up: int) -> list[SheetSide]:
    """Return the sides of all sheets in the order in which a two-sided printer takes them.

    Given:
        sections   place of the first page, from 0, and number of pages (a multiple of 4) of each section;
                   together they are the whole booklet, in order
        up         pages on one side of a sheet, 2 or 4

    Returned:
        front, back, front, back … of the sheets of the first section, then of the next. With four pages
        a side the upper halves are the outer half-sheets of a section, in order, and the lower halves the
        inner ones; of an odd number the last lower half stays blank.

    Errors:
        ValueError where sections leave a gap, overlap, or do not fold.
    """
    sides: list[SheetSide] = []
    expected = 0
    for number, (first, pages) in enumerate(sections, 1):
        if first != expected or pages < 4 or pages % 4:
            raise ValueError(
                f'section {number} is {pages} pages from place {first}: '
                f'it must be a multiple of 4 from place {expected}'
            )
        expected = first + pages
        halves = pages // 4
        rows = up // 2
        sheets = -(-halves // rows)
        for sheet in range(sheets):
            nests = [nest for nest in range(sheet, rows * sheets, sheets) if nest < halves]
            for face in (0, 1):
                panels = tuple(
                    Panel(column, row, first + page - 1, nest)
                    for row, nest in enumerate(nests)
                    for column, page in enumerate(half_sheet(nest, pages)[face])
                )
                name = ('front', 'back')[face]
                blank = len(nests) < rows
                sides.append(SheetSide(number, len(sections), sheet + 1, sheets, name, blank, panels))
    return sides
