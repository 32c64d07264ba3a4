"""Reference tables as layers of text: rows by pitch, fractions a size smaller, decimals and degrees lined up."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeGuard

from markupsafe import Markup

from layouts.drawings import svg
from layouts.grid.grids import (
    BASELINE_SHIFT_EM,
    EDGE,
    FIGURE_SPACE,
    SIZES,
    fraction_text,
    padded,
    tab_stop,
)
from layouts.grid.table_columns import NOTHING, Column, Columns
from layouts.paper.trim import DIGIT_EM, FRACTION_OF_WHOLE, SPACE_EM, Trim, fraction_em, whole_em
from tablegen.numbers.figure import INCH, Figure

GAPS = (4.6, 3.4, 1.6)
"""Widths between columns tried for a table, in units."""
MOST_SPREAD = 24.0
"""What a column may be wider than its figures, in units."""
LABEL_GAP, LABEL_RULE, HEAD_GAP = 7.0, 3.6, 2.5
"""Between a row's name and its first figure; how far left of that figure the rule stands: not beside it as a 1 would."""
HEAD_SIZE = 7.6
HEAD_LETTER = 3.9
"""Size of a head and width of its letters on average, in units."""
MARK_EM = 0.5
FRACTION_GAP = 2.6
PLAIN_SHIFT = 2.6
"""How far decimals keep from the fractions of the column before, in units."""
NARROW_EM = {'.': 0.28, '°': 0.44, '-': 0.33, ' ': 0.25}
"""Widths of what is narrower than a digit, in em."""


@dataclass(frozen=True, slots=True)
class Layout:
    """How all pages of a table are set."""

    size: float
    label: float
    column: float
    """From one tab stop to the next as it is set."""
    tab: float
    """The tab stop to ask for, in rem."""
    whole: float
    digits: int
    """Of the longest whole number of a length."""
    feet: int
    """Digits of the longest feet before it, 0 for none."""
    columns: int
    """On one page."""


@dataclass(frozen=True, slots=True)
class TableGrid:
    """One page of a table; sizes and places in rem."""

    heads: str
    """Two lines."""
    wholes: str
    fractions: str
    size: float
    fraction_size: float
    column: float
    left: float
    fraction_left: float
    fraction_top: float
    row: float
    """Height of a row."""
    rules: Markup


def layout_of(table: Columns, corner: str, trim: Trim) -> Layout:
    """Return how a table's columns are set: as many as will go on a page, in the largest type that takes them."""
    lengths = [cell for column in table.columns for cell in column.cells if _is_length(cell)]
    digits, feet = _digits(lengths)
    per = max((cell.per for cell in lengths), default=1)
    marked = max((len(mark) for column in table.columns for mark in column.marks), default=0)
    plain = max((_plain_em(column) for column in table.columns), default=0)
    longest = max(map(_em, table.labels))
    found = []
    for gap in GAPS:
        for size in SIZES:
            whole = whole_em(digits, feet) * size
            part = (fraction_em(per) + MARK_EM * marked) * size * FRACTION_OF_WHOLE
            needed = max(whole + FRACTION_GAP + part if lengths else 0, plain * size) + gap
            label = max(
                longest * size + LABEL_GAP, max(map(len, corner.split('\n'))) * HEAD_LETTER + HEAD_GAP
            )
            count = int((trim.text_width - label + gap - EDGE) // needed)
            found.append((min(count, len(table.columns)), size, label, needed, whole, gap))
    most = max(count for count, *_ in found)
    count, size, label, needed, whole, gap = next(one for one in found if one[0] == most)
    pages = -(-len(table.columns) // most)
    count = -(-len(table.columns) // pages)
    width = min((trim.text_width - label + gap - EDGE) / count, needed + MOST_SPREAD)
    return Layout(size, label, *tab_stop(width, trim), whole, digits, feet, count)


def table_grid(
    table: Columns,
    laid: Layout,
    corner: str,
    span: str,
    rules: Sequence[int],
    row_units: float,
    trim: Trim,
) -> TableGrid:
    """Return one page.

    Given:
        table      this page's rows and columns
        corner     head of the labels, in one line or two
        span       what the heads have in common, above them; '' for nothing
        rules      rows after which a rule is drawn
        row_units  height of a row, units
    """
    size, left = laid.size, laid.label - laid.column
    indent = _pushed(-left / size)
    shift = _pushed(PLAIN_SHIFT / size) if laid.whole else ''
    wholes, fractions = [], []
    lines = [
        [_texts(column, place, laid, shift) for column in table.columns] for place in range(len(table.labels))
    ]
    for name, cells in zip(table.labels, lines, strict=True):
        wholes.append('\t'.join([indent + name, *(whole for whole, _ in cells)]))
        fractions.append('\t'.join(fraction for _, fraction in cells))
    return TableGrid(
        _heads(table, laid, corner, _pushed(-left / HEAD_SIZE), span),
        '\n'.join(wholes),
        '\n'.join(fractions),
        _rem(size),
        _rem(size * FRACTION_OF_WHOLE),
        laid.tab,
        _rem(left),
        _rem(laid.label + laid.whole + FRACTION_GAP),
        _rem((1 - FRACTION_OF_WHOLE) * size * BASELINE_SHIFT_EM),
        _rem(row_units),
        _rules(len(table.labels), rules, laid.label, row_units, trim),
    )


def _pushed(width_em: float) -> str:
    """Return blanks that are together as wide as said, to a twentieth of an em."""
    if width_em <= 0:
        return ''
    pairs = [(round((width_em - few * SPACE_EM) / DIGIT_EM), few) for few in range(7)]
    many, few = min(
        pairs, key=lambda pair: (pair[0] < 0, abs(pair[0] * DIGIT_EM + pair[1] * SPACE_EM - width_em))
    )
    return FIGURE_SPACE * max(0, many) + ' ' * few


def _is_length(cell: object) -> TypeGuard[Figure]:
    """Return whether a cell is a length in parts of an inch, which has a fraction."""
    return isinstance(cell, Figure) and cell.unit == INCH and cell.per & (cell.per - 1) == 0


def _digits(lengths: Sequence[Figure]) -> tuple[int, int]:
    """Return digits of the longest whole number, and of the feet before it where lengths are in feet."""
    feet = [len(cell.parts.feet) for cell in lengths if cell.parts.feet]
    if feet:
        return 2, max(feet)
    return max((len(cell.parts.sign + (cell.parts.whole or '0')) for cell in lengths), default=0), 0


def _plain_em(column: Column) -> float:
    """Return the width of a column's widest decimal, angle or word, in em."""
    return max((_em(_plain(cell)) for cell in column.cells if not _is_length(cell)), default=0)


def _em(words: str) -> float:
    return sum(NARROW_EM.get(letter, DIGIT_EM) for letter in words)


def _plain(cell: object) -> str:
    if cell is None:
        return NOTHING
    return cell.text if isinstance(cell, Figure) else str(cell)


def _texts(column: Column, place: int, laid: Layout, shift: str) -> tuple[str, str]:
    """Return what stands in the layer of whole numbers, and in that of fractions."""
    cell, mark = column.cells[place], column.marks[place]
    if _is_length(cell):
        return padded(cell, laid.digits, laid.feet), fraction_text(cell) + mark
    if cell is None:
        return FIGURE_SPACE * max(0, laid.digits - 1) + column.none, ''
    before = max(len(_plain(one).partition('.')[0]) for one in column.cells if one is not None)
    return shift + FIGURE_SPACE * (before - len(_plain(cell).partition('.')[0])) + _plain(cell), ''


def _heads(table: Columns, laid: Layout, corner: str, indent: str, span: str) -> str:
    room = int((laid.column - 2) / HEAD_LETTER)
    pairs = [_broken(column.head, room) for column in table.columns]
    if any(high for high, _ in pairs):  # heads of one kind break alike
        pairs = [
            _broken(column.head, 0) if ': ' in column.head else pair
            for column, pair in zip(table.columns, pairs, strict=True)
        ]
    high_corner, _, low_corner = corner.rpartition('\n')
    if span:
        high, low = [span], [low or high for high, low in pairs]
    else:
        high, low = [high for high, _ in pairs], [low for _, low in pairs]
    return '\n'.join('\t'.join(line) for line in ([indent + high_corner, *high], [indent + low_corner, *low]))


def _broken(head: str, room: int) -> tuple[str, str]:
    """Return a head's upper and lower line, broken after a colon; one that has room stands on the lower."""
    if len(head) <= room or ' ' not in head:
        return '', head
    named, colon, rest = head.partition(': ')
    if colon:
        return f'{named}:', rest
    places = [place for place, letter in enumerate(head) if letter == ' ']
    cut = min(places, key=lambda place: abs(2 * place - len(head)))
    return head[:cut], head[cut + 1 :]


def _rules(rows: int, after: Sequence[int], label: float, row_units: float, trim: Trim) -> Markup:
    height, width = rows * row_units, trim.text_width
    across = [svg.line((0, row * row_units), (width, row * row_units), svg.HAIR) for row in after]
    shapes = [
        svg.line((0, 0), (width, 0), svg.LINE),
        *across,
        svg.line((0, height), (width, height), svg.LINE),
        svg.line((label - LABEL_RULE, 0), (label - LABEL_RULE, height), svg.HAIR),
    ]
    return svg.drawing(width, height + 1, 'rules', shapes, 'rules')


def _rem(units: float) -> float:
    return round(units / 10, 4)
