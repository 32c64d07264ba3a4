"""Pieces of a table with the figures found in them: how a length is looked up."""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.paper.typeface import advance_em

LETTER = 3.9
"""Width of a letter of a figure, about."""
WIDTH, ROW, SIZE = 241.0, 11.8, 8.5
"""Of the pieces of an opening: width, height of a row, size of type."""
LABEL, LEAST_NEXT, AROUND, LAST = 26.0, 46.0, 8.0, 34.0
"""Where a row's first figure stands, how far from it the next is at least, what a frame needs beside its figure, and the width
of the last figure; units."""


class Rows(Struct, frozen=True):
    """Some rows of an opening, the middle one found."""

    head: str
    """What the rows are called by."""
    rows: Sequence[tuple[str, Sequence[str]]]
    """The name of each, and its figures."""


def found_rows(beside: Rows, stacked: Sequence[Rows], columns: Sequence[str], title: str) -> Markup:
    """Return the rows of an opening that a length is added up from, the first figure of each middle row framed.

    Given:
        beside   the feet
        stacked  what is added to them, one block under another as on the page
        columns  heads of the figures
    """
    left, right = 0.0, WIDTH / 2 + 1
    top = 12.0
    found = [cells[0] for block in (beside, *stacked) for _name, cells in block.rows if cells]
    apart = max(LEAST_NEXT, max(advance_em(one, svg.WIDTH, 800) for one in found) * SIZE + AROUND)
    shapes, low = _rows(beside, columns, left, top, apart), top + ROW * len(beside.rows) + 15
    for place, block in enumerate(stacked):
        shapes += _rows(block, columns if not place else (), right, top, apart)
        top += ROW * len(block.rows) + 15
    return svg.drawing(WIDTH, max(low, top) - 10, title, shapes)


def _rows(block: Rows, columns: Sequence[str], left: float, top: float, apart: float) -> list[str]:
    """Return a block: its heads, its rows, and the frame and the arrow of the figure that is found."""
    end = left + LABEL + apart + LAST
    shapes = [
        svg.text(block.head, (left, top - 3.5), 8, weight=700),
        svg.line((left, top), (end, top), svg.LINE),
    ]
    shapes += [
        svg.text(head, (left + LABEL + apart * place, top - 3.5), 8, weight=700)
        for place, head in enumerate(columns)
    ]
    for line, (name, cells) in enumerate(block.rows):
        y, found = top + ROW * line + 9.2, line == len(block.rows) // 2
        shapes.append(svg.text(name, (left + 2, y), SIZE, weight=800 if found else 600))
        shapes += [
            svg.text(
                cell, (left + LABEL + apart * place, y), SIZE, weight=800 if found and not place else 500
            )
            for place, cell in enumerate(cells)
        ]
        if found:
            x, low = left + LABEL - 3, y + 2.6
            box = [(x, low - ROW + 0.8), (x + apart - 4, low - ROW + 0.8), (x + apart - 4, low), (x, low)]
            shapes.append(svg.shape(box, svg.HEAVY))
    return shapes


def found_figure(
    heads: Sequence[str],
    labels: Sequence[str],
    cells: Sequence[Sequence[str]],
    at: tuple[int, int],
    corner: str,
    title: str,
) -> Markup:
    """Return the piece of table, its row and column ruled off and the figure where they cross framed.

    at: row and column of the figure that is looked up
    """
    longest = max(len(cell) for line in cells for cell in line)
    column, row, label, top = max(52.0, 22.0 + LETTER * longest), 13.5, 22.0, 16.0
    width, height = label + column * len(heads) + 2, top + row * len(labels) + 4
    shapes = [svg.line((0, top), (width, top), svg.LINE), svg.text(corner, (0, 11), 8)]
    for place, head in enumerate(heads):
        weight = 800 if place == at[1] else 500
        shapes.append(svg.text(head, (label + column * place + 6, 11), 8, weight=weight))
    for line, name in enumerate(labels):
        y = top + row * line + 10.5
        shapes.append(svg.text(name, (4, y), 8, weight=800 if line == at[0] else 500))
        for place, cell in enumerate(cells[line]):
            found = (line, place) == at
            shapes.append(svg.text(cell, (label + column * place + 6, y), 8.5, weight=800 if found else 500))
    x, y = label + column * at[1], top + row * at[0]
    shapes += [
        svg.shape(
            [(x, y + 0.5), (x + column - 5, y + 0.5), (x + column - 5, y + row - 0.5), (x, y + row - 0.5)],
            svg.HEAVY,
        ),
        svg.arrow((12, y + row / 2 + 0.3), (x - 1.5, y + row / 2 + 0.3), width=svg.LINE)
        if at[1] == 0
        else svg.arrow((12.5, y + row - 1.2), (x - 1.5, y + row - 1.2), width=svg.LINE),
        svg.arrow((x + column - 11, 2.5), (x + column - 11, y - 0.5), width=svg.LINE),
    ]
    return svg.drawing(width, height, title, shapes)
