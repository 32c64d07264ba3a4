"""Fitting: the greatest type in which a table, or words, stand on a face of a card."""

from __future__ import annotations

from collections.abc import Sequence

from layouts.cards.faces import Block, Cell, Row, TableFace, Title, WordsFace
from layouts.cards.formats import Format
from layouts.cards.measures import (
    BOLD,
    FRACTION,
    HEAVY,
    LEAST_LINE_PT,
    LEAST_PT,
    LINE,
    TEXT,
    WHOLE,
    width_pt,
    wrapped,
)

GROUP = 6
"""Rows between rules."""
GAP_EM, LABEL_EM = 0.66, 1.12
"""Gap between columns and size of a row's label, in em of the table's type."""
MOST_GROWTH = 1.3
"""Type grows so much over the size aimed at, where there is room."""
MOST_LEAD = 1.75
"""A line is no taller than so many times its type."""
STEP_PT = 0.1
HEAD_EM, HEAD_LINE = 0.86, 1.12
HEAD_SPACE_PT, FOOT_SPACE_PT = 4.5, 5.0
"""What rules and the space beside them take, in points."""
NAME_GAP_EM, BETWEEN_BLOCKS = 0.7, 0.45
"""Gap after a name, in em; and between blocks, in lines."""


def foot_lines(words: str, form: Format) -> tuple[str, ...]:
    """Return what stands at the foot of a face, in lines."""
    return wrapped(words, form.inner_pt, form.note_pt)


def foot_height(form: Format, foot: Sequence[str]) -> float:
    """Return the height of the foot of a face, its rule and the space above included."""
    return len(foot) * form.note_pt * LINE + FOOT_SPACE_PT


def table_room(form: Format, foot: Sequence[str], size: float = LEAST_PT, head_lines: int = 2) -> float:
    """Return the height for the rows of a table in so big a type, heads and foot taken off."""
    return form.body_pt - head_lines * head_size(size) * HEAD_LINE - HEAD_SPACE_PT - foot_height(form, foot)


def most_rows(form: Format, foot: Sequence[str], size: float = LEAST_PT, head_lines: int = 2) -> int:
    """Return how many rows stand on a face in so big a type."""
    return max(0, int(table_room(form, foot, size, head_lines) / (size * LINE)))


def fullest_foot(form: Format, rows: int, *choices: str) -> tuple[str, ...]:
    """Return the first of some words whose lines leave room for so many rows; else the last."""
    feet = [foot_lines(words, form) for words in choices]
    return next((foot for foot in feet if most_rows(form, foot) >= rows), feet[-1])


def head_size(size: float) -> float:
    """Return the size of a table's heads."""
    return round(max(LEAST_PT, size * HEAD_EM), 2)


def column_width(head: Sequence[str], cells: Sequence[Cell], size: float) -> float:
    """Return how wide a column of figures is, its gap included."""
    whole = max(width_pt(cell.whole, size, WHOLE) for cell in cells)
    fraction = _fraction_width(cells, size)
    fraction += width_pt(' ', size, WHOLE) if fraction else 0
    return max(whole + fraction, *(width_pt(line, head_size(size), BOLD) for line in head)) + GAP_EM * size


def label_width(head: Sequence[str], labels: Sequence[str], size: float) -> float:
    """Return how wide the column of labels is."""
    return max(
        *(width_pt(label, size * LABEL_EM, HEAVY) for label in labels),
        *(width_pt(line, head_size(size), BOLD) for line in head),
    )


def table_face(
    form: Format,
    title: Title,
    heads: Sequence[tuple[str, ...]],
    rows: Sequence[Row],
    foot: Sequence[str],
    breaks: Sequence[int] | None = None,
) -> TableFace | None:
    """Return a face with a table in the greatest type that stands there, or None where none does.

    Given:
        heads   of the labels, then one a column
        breaks  rows before which a rule is drawn; None for every six
    """
    by_column = list(zip(*(row.cells for row in rows), strict=True))
    labels = [row.label for row in rows]
    for size in sizes_down(form.type_pt * MOST_GROWTH):
        room = table_room(form, foot, size, len(heads[0]))
        if len(rows) * max(size * LINE, LEAST_LINE_PT) > room:
            continue
        widths = [label_width(heads[0], labels, size)]
        widths += [column_width(head, cells, size) for head, cells in zip(heads[1:], by_column, strict=True)]
        left = form.inner_pt - sum(widths)
        if left >= 0:
            break
    else:
        return None
    share = left / max(len(by_column), 1)
    return TableFace(
        title,
        tuple(heads),
        _groups(rows, breaks),
        tuple(round(width + (share if place else 0), 3) for place, width in enumerate(widths)),
        tuple(round(_fraction_width(cells, size), 3) for cells in by_column),
        size,
        round(max(LEAST_LINE_PT, min(room / len(rows), size * MOST_LEAD)), 3),
        head_size(size),
        tuple(foot),
    )


def words_face(form: Format, title: Title, blocks: Sequence[Block], foot: Sequence[str]) -> WordsFace:
    """Return a face with as many blocks as stand there, in order, in the greatest type that holds them."""
    room = form.body_pt - foot_height(form, foot)
    kept = list(blocks)
    while True:
        for size in sizes_down(form.type_pt * MOST_GROWTH):
            if any(_pairs_width(block, size) > form.inner_pt for block in kept):
                continue
            broken = [_broken(block, form.inner_pt, size) for block in kept]
            lines = sum(len(block.rows) + bool(block.head) + BETWEEN_BLOCKS for block in broken)
            if lines * size * LINE <= room:
                return WordsFace(title, tuple(broken), size, round(size * LINE, 3), tuple(foot))
        kept.pop()


def _pairs_width(block: Block, size: float) -> float:
    """Return how wide columns of figures are, the gaps among them included."""
    columns = zip(*block.rows, strict=True) if block.figures else ()
    return sum(max(width_pt(cell, size, WHOLE) for cell in column) + GAP_EM * size for column in columns)


def sizes_down(greatest: float) -> list[float]:
    """Return the sizes of type to be tried, in points, from the greatest to the least that may be."""
    steps = int((greatest - LEAST_PT) / STEP_PT + 0.001)
    return [round(LEAST_PT + step * STEP_PT, 2) for step in range(steps, -1, -1)]


def _broken(block: Block, room: float, size: float) -> Block:
    """Return a block with its words broken into lines."""
    if block.figures:
        return block
    names = [row[0] for row in block.rows if len(row) == 2]
    width = max(width_pt(name, size, BOLD) for name in names) + NAME_GAP_EM * size if names else 0.0
    rows: list[tuple[str, ...]] = []
    for *name, words in block.rows:
        for place, line in enumerate(wrapped(words, room - width, size)):
            rows.append((*('' if place else one for one in name), line))
    return Block(block.head, tuple(rows), False, round(width, 3))


def _fraction_width(cells: Sequence[Cell], size: float) -> float:
    """Return the room for a column's fractions."""
    return max(width_pt(cell.fraction, size * FRACTION, TEXT) for cell in cells)


def _groups(rows: Sequence[Row], breaks: Sequence[int] | None) -> tuple[tuple[Row, ...], ...]:
    bounds = list(range(0, len(rows), GROUP)) if breaks is None else [0, *breaks]
    return tuple(
        tuple(rows[start:stop]) for start, stop in zip(bounds, [*bounds[1:], len(rows)], strict=True)
    )
