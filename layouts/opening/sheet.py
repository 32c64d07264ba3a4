"""One page of an opening as it is put together: lines, heads and rules on rows of one height."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from markupsafe import Markup

from layouts.drawings import svg
from layouts.opening.lines import Line, Lines, lines_at
from layouts.paper.longer import CUTS, fitted
from layouts.paper.table_font import line_em
from layouts.paper.trim import Trim
from layouts.paper.typeface import advance_em

TOP, FOOT = 39.0, 38.0
"""What head and column heads take above the first row, and notes below the last, units."""
HEAD_SIZE = 7.4
GROUP = 6
"""Rows between rules."""
NAME_GAP, SLACK = 4.6, 0.8
"""Between a name and the first figure, at least; how far ink may pass the right edge, lest a rounding count."""
GAP = 6.5
"""Between two columns, at least, units."""


@dataclass(frozen=True, slots=True)
class Head:
    """A few bold words over a column, in rem."""

    left: float
    top: float
    width: float
    words: str | Markup
    right: bool
    """Whether they end at the right edge of their place."""


@dataclass
class Sheet:
    """What is put on one page so far; places in units, rows from 0."""

    trim: Trim
    rows: int
    size: float
    """Of the type."""
    lines: list[Lines] = field(default_factory=list)
    heads: list[Head] = field(default_factory=list)
    shapes: list[str] = field(default_factory=list)

    @property
    def row(self) -> float:
        """Return the height of a row."""
        return round((self.trim.text_height - TOP - FOOT) / self.rows, 2)

    @property
    def end(self) -> float:
        """Return the right edge."""
        return self.trim.text_width

    def y(self, row: float) -> float:
        """Return the top of a row."""
        return TOP + row * self.row

    def put(
        self, row: float, left: float, stops: tuple[float, float], listed: Sequence[Line], ends: bool = False
    ) -> None:
        """Put lines from a row on, in smaller type where words are too long for their room; see lines_at."""
        size = self.size * min([1.0, *self._shares(left, stops, listed, ends)])
        self.lines.append(lines_at(listed, left, self.y(row), stops, size, self.trim, ends))

    def _shares(
        self, left: float, stops: tuple[float, float], listed: Sequence[Line], ends: bool
    ) -> Iterator[float]:
        """Return which share of its size each name and each last figure has room for."""
        first, apart = stops
        for line in listed:
            room = (first if line.cells else self.end) - left - NAME_GAP
            if line.name and not ends:
                yield room / wide([line.name], self.size)
            if line.cells and line.cells[-1]:
                yield (self.end + SLACK - first - apart * (len(line.cells) - 1)) / wide(
                    [line.cells[-1]], self.size
                )

    def head(self, row: float, left: float, right: float, words: str, ends: bool = True) -> None:
        """Put a head between two edges, at the right one or the left, smaller where it has no room."""
        words = fitted(words, right - left, HEAD_SIZE, 'bold')
        top, width = self.y(row), right - left
        left, top, width = (round(one / 10, 3) for one in (left, top, width))
        self.heads.append(Head(left, top, width, words, ends))

    def rule(self, row: float, left: float, right: float, width: float = svg.HAIR) -> None:
        """Draw a rule over a row."""
        self.shapes.append(svg.line((left, self.y(row)), (right, self.y(row)), width))

    def down(self, at: float, first: float, last: float) -> None:
        """Draw a rule beside the names of rows."""
        self.shapes.append(svg.line((at, self.y(first)), (at, self.y(last)), svg.HAIR))

    def rules(self) -> Markup:
        """Return all rules as one drawing."""
        return svg.drawing(self.trim.text_width, self.trim.text_height, 'rules', self.shapes, 'rules')


def head_wide(words: str) -> float:
    """Return the width of a head, units."""
    return advance_em(words, *CUTS['bold']) * HEAD_SIZE


def wide(cells: Sequence[str], size: float) -> float:
    """Return the width of the widest of some cells, units."""
    return max((line_em(cell) for cell in cells), default=0) * size
