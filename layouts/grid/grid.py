"""A page of a table: its columns at tab stops, each row one run of text."""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.grid.fitting import Fit, Look, Widest, is_length, plain
from layouts.grid.table_columns import Column, Columns
from layouts.paper.longer import CUTS, size_in
from layouts.paper.table_font import line_em
from layouts.paper.trim import DIGIT_EM, FIGURE_SPACE, SPACE_EM, Trim
from layouts.paper.typeface import advance_em
from tablegen.numbers.figure import Figure

GROUP = 6
"""Rows between rules."""
GROUP_SHIFT = 1.0
"""How much further a rule between groups of columns keeps from the figures right of it."""
HEAD_GAP = 1.2
"""Between two heads at least, in units."""
STOP_GAP = 0.5
"""Between a label and the stop after it at least, units; one that comes nearer passes it."""
PLAIN_SHIFT = 2.6
"""How far decimals keep from the fractions of the column before, in units."""


class Grid(Struct, frozen=True):
    """One page of a table; sizes and places in rem. All rows are one block of text at tab stops, which is what the
    typesetter sets fastest; the font itself sets fractions a size smaller (layouts/paper/table_font.py)."""

    over: str
    """What stands over the heads: groups of columns, or the upper lines of heads; '' for no such line."""
    heads: str
    """Corner and column heads."""
    rows: str
    """Labels and figures, a line a row."""
    size: float
    head_size: float
    column: float
    """Width of a column as it is set."""
    tab: float
    """The tab stop to ask for."""
    left: float
    """Where lines begin."""
    row: float
    """Height of a row."""
    rules: Markup


def grid(
    table: Columns,
    laid: Fit,
    over: Sequence[str],
    heads: Sequence[str],
    after: Sequence[int],
    row_units: float,
    head_size: float = 0,
    in_group: int = 0,
) -> Grid:
    """Return one page.

    Given:
        table      this page's rows and columns
        over       of the labels and every column, what stands over its head; none for no such line
        heads      the same of heads
        after      rows after which a rule is drawn
        row_units  height of a row, units
        head_size  of the heads' type, units; 0 for that of the figures
        in_group   columns between rules down the page; 0 for none
    """
    column, tab = laid.stop()
    widest = max(map(line_em, table.labels)) * laid.size
    before = 1 + int((widest + STOP_GAP) // column)  # stops that labels take; columns begin at the next
    left = laid.label - before * column
    head_size = _head_size(laid, over, heads, in_group, head_size or laid.size)
    shift = pushed(PLAIN_SHIFT / laid.size, laid.look) if laid.wide.digits else ''
    columns = [_texts(one, laid.wide, shift) for one in table.columns]
    indent, head_indent = (pushed(-left / size, laid.look) for size in (laid.size, head_size))
    groups = range(in_group, len(columns), in_group) if in_group else ()
    downs = [
        laid.label - laid.look.label_rule + column * place - (GROUP_SHIFT if place else 0)
        for place in (0, *groups)
    ]

    def line(first: str, wide: float, others: Sequence[str]) -> str:
        """Return a line, what it begins with being so wide; units."""
        passed = int((max(0.0, -left) + wide + STOP_GAP) // column) if before > 1 else 0
        return first + '\t' * (before - passed) + '\t'.join(others)

    def bold(words: str) -> float:
        return advance_em(words, *CUTS['bold']) * head_size

    return Grid(
        line(head_indent + over[0], bold(over[0]), _at_stops(over[1:], head_size, column)) if over else '',
        line(head_indent + heads[0], bold(heads[0]), heads[1:]),
        '\n'.join(
            line(indent + name, line_em(name) * laid.size, [one[place] for one in columns])
            for place, name in enumerate(table.labels)
        ),
        _rem(laid.size),
        _rem(head_size),
        _rem(column),
        tab,
        _rem(left),
        _rem(row_units),
        _rules(len(table.labels) * row_units, [row * row_units for row in after], downs, laid.trim),
    )


def _head_size(laid: Fit, over: Sequence[str], heads: Sequence[str], in_group: int, size: float) -> float:
    """Return the size of heads, in units: as small as a head needs that would push all after it a stop on."""
    column, _tab = laid.stop()
    corner, spanned = min(laid.label, column), len(over) < len(heads)
    above = column * (in_group or (laid.columns if spanned else 1))
    rooms = [corner if place == 0 else above for place in range(len(over))]
    rooms += [column if place else corner for place in range(len(heads) - 1)]
    rooms.append(min(column, laid.trim.text_width - laid.label - column * (len(heads) - 2) + HEAD_GAP))
    return size_in([*over, *heads], [room - HEAD_GAP for room in rooms], size, 'bold')


def _at_stops(over: Sequence[str], size: float, column: float) -> list[str]:
    """Return what stands over heads without the stops that a group's head passes which is wider than a column; units."""
    told: list[str] = []
    past = 0
    for words in over:
        if past and not words:
            past -= 1
            continue
        told.append(words)
        past = int(advance_em(words, *CUTS['bold']) * size // column)
    return told


def padded(figure: Figure, digits: int, feet: int) -> str:
    """Return the whole number moved right by spaces as wide as a digit; a foot mark keeps its own width.

    Given:
        digits  of the longest whole number
        feet    digits of the longest feet before it, 0 where lengths are in inches alone
    """
    if not feet:
        return figure.parts.before.rjust(digits, FIGURE_SPACE)
    sign, of_feet, inches, *_ = figure.parts
    # two word spaces are as wide as the foot mark and its space, to 0.02 em
    before = (sign + of_feet if of_feet else '').rjust(feet, FIGURE_SPACE) + ('′ ' if of_feet else '  ')
    return before + (inches if of_feet else sign + inches).rjust(digits, FIGURE_SPACE)


def pushed(width_em: float, look: Look) -> str:
    """Return blanks that are together about as wide as said."""
    if width_em <= 0:
        return ''
    pairs = [
        (max(0, round((width_em - few * SPACE_EM) / DIGIT_EM)), few) for few in range(look.narrow_spaces + 1)
    ]
    many, few = min(pairs, key=lambda pair: abs(pair[0] * DIGIT_EM + pair[1] * SPACE_EM - width_em))
    return FIGURE_SPACE * many + ' ' * few


def _texts(column: Column, wide: Widest, shift: str) -> list[str]:
    """Return what stands in each row of a column."""
    given = [cell for cell in column.cells if cell is not None]
    longest = 0 if all(map(is_length, given)) else max(map(_before, given))
    found = []
    for cell, mark in zip(column.cells, column.marks, strict=True):
        if is_length(cell):
            fraction = f' {cell.parts.fraction}' if cell.parts.fraction else ''
            found.append(padded(cell, wide.digits, wide.feet) + fraction + mark)
        elif cell is None:
            found.append(column.none.rjust(wide.digits, FIGURE_SPACE))
        else:
            found.append(shift + FIGURE_SPACE * (longest - _before(cell)) + plain(cell))
    return found


def _before(cell: object) -> int:
    """Return how many letters stand before a number's point, or a word's end."""
    return len(cell.parts.before if isinstance(cell, Figure) and cell.parts.decimals else plain(cell))


def _rules(height: float, across: Sequence[float], down: Sequence[float], trim: Trim) -> Markup:
    """Return the rules of a table: above and below it, under groups of rows, and left of columns."""
    width = trim.text_width
    lines = [((0.0, 0.0), (width, 0.0), svg.LINE), ((0.0, height), (width, height), svg.LINE)]
    lines += [((0.0, top), (width, top), svg.HAIR) for top in across]
    lines += [((left, 0.0), (left, height), svg.HAIR) for left in down]
    return svg.drawing(width, height + 1, 'rules', [svg.line(*one) for one in lines], 'rules')


def _rem(units: float) -> float:
    return round(units / 10, 4)
