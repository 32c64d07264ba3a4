"""What stands beside the lengths of an opening: sections of a few rows, each with its heads and figures in columns."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from layouts.opening.lines import Line
from layouts.opening.sheet import GAP, Sheet, head_wide, wide

LEAST_WIDTH, HEAD_GAP = 20.0, 2.5
"""Of a column; between two heads; units."""
ALONE = 40.0
"""From the only column to a next one, units: any width will do."""


@dataclass(frozen=True, slots=True)
class Section:
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


def put_sections(
    sheet: Sheet, sections: Sequence[Section], row: int, left: float, ruled: bool = True
) -> None:
    """Put sections under one another, from a row on, their figures against the right edge."""
    for section in sections:
        if ruled:
            sheet.rule(row, left, sheet.end)
        _put(sheet, section, row, left)
        row += section.height


def _put(sheet: Sheet, section: Section, row: int, left: float) -> None:
    count = max((len(line.cells) for line in section.rows), default=0)
    columns = [
        [line.cells[place] for line in section.rows if place < len(line.cells)] for place in range(count)
    ]
    widths = [max(wide(column, sheet.size), LEAST_WIDTH) for column in columns]
    apart = max(widths[:-1]) + GAP if count > 1 else ALONE
    lasts = widths[-1] if widths else 0
    first = sheet.end - lasts - apart * (count - 1)
    if section.title:
        rights = [first + apart * place + widths[place] for place in range(count - 1)] + [sheet.end]
        _put_heads(sheet, section, row, left, rights)
    sheet.put(row + bool(section.title), left, (first, apart), section.rows)


def _put_heads(sheet: Sheet, section: Section, row: int, left: float, rights: Sequence[float]) -> None:
    """Put a section's title, and each head over its column or as far left of it as the next one needs."""
    natural = [head_wide(one) for one in (section.title, *section.heads)]
    room = sheet.end - left - HEAD_GAP * len(section.heads)
    share = min(1.0, room / sum(natural))
    free = sheet.end
    for head, right, width in reversed(list(zip(section.heads, rights, natural[1:], strict=False))):
        ends = min(right, free)
        free = ends - width * share - HEAD_GAP
        sheet.head(row, free + HEAD_GAP, ends, head)
    sheet.head(row, left, free, section.title, ends=False)
