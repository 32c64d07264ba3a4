"""A piece of a table with one figure found in it: how a length is looked up."""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup

from layouts.drawings import svg

LETTER = 3.9
"""Width of a letter of a figure, about."""


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
