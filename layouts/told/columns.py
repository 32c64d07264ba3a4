"""Text in aligned columns, for a terminal."""

from __future__ import annotations

import re
from collections.abc import Sequence
from textwrap import wrap

WIDTH = 80
"""Of a terminal, in letters."""
NARROWEST = 14
"""That names may be set in lines of, where a table is wider."""
LEFT, RIGHT, MIXED = 'left', 'right', 'mixed'
"""How a column stands; mixed numbers line up where their fraction begins: '53 11/16' over '72'."""
GAP = INDENT = '  '
MIXED_NUMBER = re.compile(r'(?P<whole>.*?) ?(?P<fraction>[+−]?\d+/\d+)?(?P<mark>″?)')


def columns(rows: Sequence[Sequence[str]], stands: Sequence[str]) -> list[str]:
    """Return lines of aligned columns under their headings, within WIDTH: names go on in more lines, or columns stand under others.

    Given:
        rows    texts, as many in every row as there are columns: the headings first; a row of one text
                alone is the heading of a group
        stands  how each column stands
    """
    cells = [row for row in rows if len(row) > 1]
    made = [
        _column(column, how, INDENT if place == 0 else '')
        for place, (column, how) in enumerate(zip(zip(*cells, strict=True), stands, strict=True))
    ]
    room = WIDTH - sum(len(GAP) + len(column[0]) for column in made[1:])
    if room < len(made[0][0]):
        return _named(cells, made[1:], room) if room >= NARROWEST else _under(cells, made, stands)
    lines = iter([GAP.join(line).rstrip() for line in zip(*made, strict=True)])
    return [row[0] if len(row) == 1 else next(lines) for row in rows]


def _named(cells: Sequence[Sequence[str]], others: Sequence[Sequence[str]], room: int) -> list[str]:
    """Return lines whose names, the first of a row, stand in so many letters; what else a row has stands on its first line."""
    lines = []
    for place, row in enumerate(cells):
        indent = INDENT if place else ''
        first, *more = wrap(row[0], room, initial_indent=indent, subsequent_indent=indent + INDENT)
        lines.append(GAP.join([first.ljust(room), *(column[place] for column in others)]).rstrip())
        lines += more
    return lines


def _under(cells: Sequence[Sequence[str]], made: Sequence[Sequence[str]], stands: Sequence[str]) -> list[str]:
    """Return a table in two, under one another, each with the names."""
    fit, wide = 0, len(made[0][0])
    while wide + len(GAP) + len(made[fit + 1][0]) <= WIDTH:
        fit += 1
        wide += len(GAP) + len(made[fit][0])
    parts = slice(1, fit + 1), slice(fit + 1, None)
    return [
        line
        for part in parts
        for line in columns([(row[0], *row[part]) for row in cells], (stands[0], *stands[part]))
    ]


def _column(cells: Sequence[str], how: str, indent: str) -> list[str]:
    head, *body = cells
    body = [indent + cell for cell in (_mixed(body) if how == MIXED else body)]
    width = max(map(len, [head, *body]))
    return [cell.ljust(width) if how == LEFT else cell.rjust(width) for cell in [head, *body]]


def _mixed(cells: Sequence[str]) -> list[str]:
    parted = [_parted(cell) for cell in cells]
    numbers = [parts for parts in parted if parts]
    before = max((len(whole) for whole, _ in numbers), default=0)
    after = max((len(tail) for _, tail in numbers), default=0)
    return [
        parts[0].rjust(before) + parts[1].ljust(after) if parts else cell.rjust(before + after)
        for cell, parts in zip(cells, parted, strict=True)
    ]


def _parted(cell: str) -> tuple[str, str] | None:
    """Return the whole of a mixed number and its fraction with the mark; None for words, which stand at the right."""
    if not re.search(r'\d', cell):
        return None
    match = MIXED_NUMBER.fullmatch(cell)
    assert match is not None, 'every part of a mixed number may be missing, so any line matches'
    return match['whole'], (f' {match["fraction"]}' if match['fraction'] else '') + match['mark']
