"""Lines of an opening: a name and figures, each at its own place in a line that is one run of text in reading order."""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup, escape
from msgspec import Struct

from layouts.grid.grid import padded
from layouts.paper.blanks import blank
from layouts.paper.table_font import line_em
from layouts.paper.trim import FIGURE_SPACE
from tablegen.numbers.figure import Figure


class Cell(Struct, frozen=True):
    """What stands in a column."""

    text: str
    lead: str = ''
    """What of it stands left of the place where the column's fractions begin, a word space with it."""
    ends: bool = False
    """Whether it ends at the column's right edge instead."""


class Line(Struct, frozen=True):
    """One line."""

    name: str
    """Beginning with table_font.NAMES where its digits are bold."""
    cells: tuple[Cell, ...] = ()
    """One a column, empty ones too."""
    words: str = ''
    """Said right after the name, a figure then, and set smaller in its place."""


class Column(Struct, frozen=True):
    """Where a column stands; units."""

    left: float
    slot: float
    """Where fractions begin."""
    right: float


class Piece(Struct, frozen=True):
    """What stands at a place of a line; units."""

    begins: float
    width: float
    words: str


class Lines(Struct, frozen=True):
    """Lines under one another; sizes and places in rem."""

    left: float
    top: float
    size: float
    text: Markup

    @property
    def place(self) -> str:
        """Return where they stand, as a style."""
        return f'left:{self.left}rem;top:{self.top}rem;font-size:{self.size}rem'


def length(figure: Figure | None, mark: str = '', none: str = '') -> Cell:
    """Return a length, a mark beside it, whole numbers to end and fractions to begin under one another."""
    if figure is None:
        return Cell(none and f'{none} ', none and f'{none} ')
    parts = figure.parts
    whole = padded(figure, 2 if parts.feet else 0, len(parts.feet)).strip(FIGURE_SPACE)
    before = f'{whole} ' if whole else ''
    after = f'{parts.fraction}{parts.mark}{mark}'
    return Cell(before + after if parts.fraction or mark else whole + after, before)


def plain(words: str) -> Cell:
    """Return an angle, a decimal or a word, which ends at its column's edge."""
    return Cell(words, '', True)


class Widths(Struct, frozen=True):
    """How wide the cells of a column are; units."""

    before: float
    """Left of where fractions begin."""
    after: float
    whole: float


def widths_of(cells: Sequence[Cell], size: float) -> Widths:
    """Return how wide some cells are."""
    lengths = [one for one in cells if not one.ends]
    before = widest([one.lead for one in lengths], size)
    after = widest([one.text[len(one.lead) :] for one in lengths], size)
    return Widths(before, after, max(before + after, widest([one.text for one in cells if one.ends], size)))


def column_at(left: float, cells: Sequence[Cell], size: float, least: float = 0) -> Column:
    """Return a column from a left edge on, as wide as its cells or a least width; its figures keep to the right."""
    widths = widths_of(cells, size)
    right = left + max(widths.whole, least)
    return Column(left, right - widths.after, right)


def pieces_of(cells: Sequence[Cell], columns: Sequence[Column], size: float) -> list[Piece]:
    """Return the cells of a line in their columns, without empty ones."""
    found = []
    for cell, column in zip(cells, columns, strict=False):
        if cell.text:
            width = wide(cell.text, size)
            begins = column.right - width if cell.ends else column.slot - wide(cell.lead, size)
            found.append(Piece(begins, width, cell.text))
    return found


def lines_at(
    listed: Sequence[tuple[Line, Sequence[Piece]]],
    left: float,
    top: float,
    size: float,
    shares: Sequence[float],
    ends: bool = False,
) -> Lines:
    """Return lines, each name and cell brought to its place by blanks.

    Given:
        listed     each with the pieces of its cells
        left, top  where names begin, or with `ends` where they end, and the top of the first line, units
        size       of the type, units
        shares     of it in which each name is set
    """
    starts = [
        left - wide(line.name, size * share) if ends else left
        for (line, _cells), share in zip(listed, shares, strict=True)
    ]
    edge = min(starts)
    told = []
    for (line, cells), start, share in zip(listed, starts, shares, strict=True):
        pieces = []
        if line.words:
            pieces.append(Piece(start, wide(line.name, size), line.name))
            start += wide(f'{line.name} ', size)
        if small := line.words or line.name:
            pieces.append(Piece(start, wide(small, size * share), _smaller(small, share)))
        run = _run(edge, (*pieces, *cells), size)
        told.append(escape(''.join(run)) if share == 1 else ''.join(map(escape, run)))
    return Lines(round(edge / 10, 4), round(top / 10, 4), round(size / 10, 4), Markup('\n'.join(told)))


def _run(at: float, pieces: Sequence[Piece], size: float) -> list[str]:
    """Return a line from a place on: its pieces, blanks before each."""
    told: list[str] = []
    for one in pieces:
        blanks = blank((one.begins - at) / size)
        told += (blanks, one.words)
        at = at + wide(blanks, size) + one.width
    return told


def wide(words: str, size: float) -> float:
    """Return the width of words, units."""
    return line_em(words) * size


def widest(words: Sequence[str], size: float) -> float:
    """Return the width of the widest of some words, units."""
    return max((wide(one, size) for one in words), default=0)


def _smaller(words: str, share: float) -> str:
    if share == 1:
        return words
    return Markup(f'<span style="font-size:{share:.3f}em;line-height:0">{escape(words)}</span>')
