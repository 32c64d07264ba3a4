"""What stands beside the lengths of an opening: sections of a few rows, each with its heads and figures in columns."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from layouts.opening.lines import Cell, Column, Line, widest, widths_of
from layouts.opening.sheet import GAP, NAME_GAP, Sheet, head_wide

MOST_GAP, MOST_BETWEEN = 10.0, 5.0
"""Between two columns and between two sections, at most, units."""
LEAST_SHARE, LEAST_NAME = 0.85, 0.87
"""Of their size, to which heads and names are cut before figures are."""
SHARES = (1.0, 0.97, 0.94, 0.91, 0.88, 0.85, 0.8, 0.75, 0.7, 0.65)
"""Of their size, in which heads are tried; in the last of them they push names into smaller type."""


class Section(Struct, frozen=True):
    """Rows under a head."""

    rows: tuple[Line, ...]
    title: str = ''
    """'' for no row of heads."""
    heads: tuple[str, ...] = ()
    """One a column of figures."""

    @property
    def height(self) -> int:
        """Return how many rows it takes."""
        return len(self.rows) + bool(self.title)

    @property
    def columns(self) -> list[list[Cell]]:
        """Return the cells of each column."""
        count = max(map(len, (line.cells for line in self.rows)))
        return [
            [line.cells[place] for line in self.rows if place < len(line.cells)] for place in range(count)
        ]

    def needs(self, size: float) -> float:
        """Return the width that its rows need, and its heads where they are set as small as they may be; units."""
        heads = [head_wide(one) * LEAST_SHARE for one in self.heads] or [0.0] * len(self.columns)
        cells = [widths_of(cells, size).whole for cells in self.columns]
        widths = [max(pair) for pair in zip(cells, heads, strict=True)]
        figures = sum(widths) + GAP * max(0, len(widths) - 1)
        title = head_wide(self.title) * LEAST_SHARE
        return max(self._names(size) + figures, title + (GAP + figures if self.heads else 0))

    def _names(self, size: float) -> float:
        return widest([line.name for line in self.rows], size) * LEAST_NAME + NAME_GAP

    def laid(self, sheet: Sheet, left: float, after: float) -> list[Column]:
        """Return its columns, the last one's fractions a given way left of the right edge."""
        columns, size, room = self.columns, sheet.size, sheet.end - left
        cells = [widths_of(one, size) for one in columns]
        heads = [head_wide(one) for one in self.heads] or [0.0] * len(columns)
        title = head_wide(self.title) if self.heads else 0.0
        for share in SHARES:
            widths = [max(one.whole, head * share) for one, head in zip(cells, heads, strict=True)]
            free = room - sum(widths) - max(self._names(size), title * share + GAP)
            gaps = len(widths) - 1
            if free >= GAP * gaps:
                break
        gap = min(MOST_GAP, max(GAP, free / gaps)) if gaps else 0
        found: list[Column] = []
        right = sheet.end
        for place in reversed(range(len(columns))):
            past = after if place == gaps else cells[place].after
            found.insert(0, Column(right - widths[place], right - past, right))
            right -= max(widths[place], cells[place].before + past) + gap
        return found


def put_sections(sheet: Sheet, sections: Sequence[Section], top: float, foot: float, left: float) -> None:
    """Put sections under one another between two heights, ruled apart, their figures against the right edge."""
    taken = sum(section.height for section in sections) * sheet.row
    between = min(MOST_BETWEEN, (foot - top - taken) / max(1, len(sections) - 1))
    lasts = [section.columns[-1] for section in sections if section.columns]
    after = max((widths_of(cells, sheet.size).after for cells in lasts), default=0)
    for section in sections:
        if section.columns:
            sheet.rule(top - between / 2, left, sheet.end)
        columns = section.laid(sheet, left, after)
        if section.title:
            _put_heads(sheet, section, top, left, columns)
        sheet.put(top + bool(section.title) * sheet.row, left, columns, section.rows)
        top += section.height * sheet.row + between


def _put_heads(sheet: Sheet, section: Section, top: float, left: float, columns: Sequence[Column]) -> None:
    """Put a section's title, and each head over its column; the title shares its room with the first."""
    heads = list(zip(section.heads, columns, strict=False))
    title, gap = head_wide(section.title), GAP if heads else 0
    first, right = (head_wide(heads[0][0]), heads[0][1].right) if heads else (0.0, sheet.end)
    begins = left + title * min(1.0, (right - left - gap) / (title + first)) + gap
    sheet.head(top, left, begins - gap, section.title, ends=False)
    for head, column in heads:
        sheet.head(top, begins, column.right, head)
        begins = column.right + GAP
