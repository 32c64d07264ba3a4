"""One page of an opening as it is put together: lines, heads and rules on rows of one height, in groups."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from markupsafe import Markup
from msgspec import Struct, field

from layouts.drawings import svg
from layouts.opening.lines import Column, Line, Lines, Piece, lines_at, pieces_of, wide
from layouts.paper.longer import CUTS, fitted
from layouts.paper.trim import Trim
from layouts.paper.typeface import advance_em

TOP = 39.0
"""What head and column heads take above the first row, units."""
HEAD_SIZE = 7.4
GROUP, GROUP_GAP = 6, 3.0
"""Rows between rules, and what is free there, units."""
NAME_GAP = 4.6
"""Between a name and the first figure, at least."""
GAP = 6.0
"""Between two columns, at least, units: more than three word spaces, a number being parted from its fraction by one."""


class Head(Struct, frozen=True):
    """A few bold words over a column, in rem."""

    left: float
    top: float
    width: float
    words: str | Markup
    right: bool
    """Whether they end at the right edge of their place."""

    @property
    def place(self) -> str:
        """Return where it stands, as a style."""
        return f'left:{self.left}rem;top:{self.top}rem;width:{self.width}rem'


class Sheet(Struct):
    """What is put on one page so far; places in units, rows from 0."""

    trim: Trim
    rows: int
    size: float
    """Of the type."""
    foot: float
    """What notes take below the last row, units."""
    apart: float
    """What is free between two blocks, units."""
    lines: list[Lines] = field(default_factory=list)
    heads: list[Head] = field(default_factory=list)
    shapes: list[str] = field(default_factory=list)

    @property
    def row(self) -> float:
        """Return the height of a row."""
        gaps = (self.rows - 1) // GROUP * GROUP_GAP
        return round((self.trim.text_height - TOP - self.foot - gaps) / self.rows, 2)

    @property
    def end(self) -> float:
        """Return the right edge."""
        return self.trim.text_width

    def y(self, row: float) -> float:
        """Return the top of a row."""
        return TOP + row * self.row + max(0, int(row)) // GROUP * GROUP_GAP

    def put(
        self, top: float, left: float, columns: Sequence[Column], listed: Sequence[Line], ends: bool = False
    ) -> None:
        """Put lines from a place on, names in smaller type where they are too long for their room; see lines_at."""
        placed = [(line, pieces_of(line.cells, columns, self.size)) for line in listed]
        shares = [1.0 if ends else self._share(left, *one) for one in placed]
        self.lines.append(lines_at(placed, left, top, self.size, shares, ends))

    def _share(self, left: float, line: Line, cells: Sequence[Piece]) -> float:
        """Return how large a line's name is set that begins at a place, of the size, before its cells."""
        before = wide(f'{line.name} ', self.size) if line.words else 0.0
        room = min((cell.begins - NAME_GAP for cell in cells), default=self.end) - left - before
        return min(1.0, room / max(wide(line.words or line.name, self.size), room))

    def put_rows(self, row: int, left: float, columns: Sequence[Column], listed: Sequence[Line]) -> None:
        """Put lines whose names end at an edge on rows, with what is free between groups of rows."""
        cuts = [
            0,
            *(at - row for at in range(row - row % GROUP + GROUP, row + len(listed), GROUP)),
            len(listed),
        ]
        for first, last in pairwise(cuts):
            self.put(self.y(row + first), left, columns, listed[first:last], ends=True)

    def head(self, top: float, left: float, right: float, words: str, ends: bool = True) -> None:
        """Put a head between two edges, at the right one or the left, smaller where it has no room."""
        words = fitted(words, right - left, HEAD_SIZE, 'bold')
        left, top, width = (round(one / 10, 3) for one in (left, top, right - left))
        self.heads.append(Head(left, top, width, words, ends))

    def rule(self, top: float, left: float, right: float, width: float = svg.HAIR) -> None:
        """Draw a level rule."""
        self.shapes.append(svg.line((left, top), (right, top), width))

    def rule_over(self, row: int, left: float, right: float) -> None:
        """Draw a rule between a group of rows and the next, which begins with a row."""
        self.rule(self.y(row) - GROUP_GAP / 2, left, right)

    def down(self, at: float, first: float, last: float) -> None:
        """Draw a rule beside the names of rows, from one row to the end of another."""
        self.shapes.append(svg.line((at, self.y(first)), (at, self.y(last) + self.row), svg.HAIR))

    def rules(self) -> Markup:
        """Return all rules as one drawing."""
        return svg.drawing(self.trim.text_width, self.trim.text_height, 'rules', self.shapes, 'rules')


def head_wide(words: str) -> float:
    """Return the width of a head, units."""
    return advance_em(words, *CUTS['bold']) * HEAD_SIZE
