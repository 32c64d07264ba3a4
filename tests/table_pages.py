"""A pitch's pages made and taken apart again: each figure with its run, each piece of text with its place."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from font_measures import advance_em

from layouts.grid.grid import Grid
from layouts.pages.pitch_pages import pitch_block
from layouts.paper.page import Index
from layouts.paper.trim import FIGURE_SPACE, trim_of
from tablegen.settings import Settings

WHOLES, FRACTIONS, HEADS = (86, 600), (86, 500), (80, 720)
"""Width and weight of a table's layers, as the style sheet sets them."""
NOWHERE = Index({}, 0, ())
BLANK = f'{FIGURE_SPACE} '


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece of text and how far its ink reaches, in units from the left of the text."""

    words: str
    left: float
    right: float


def pages_of(settings: Settings, place: int = 0) -> list[tuple[str, object]]:
    """Return template and contents of every page of one pitch."""
    block = pitch_block(settings.pitches[place], place, settings, trim_of(settings))
    return [(draft.template, draft.make(NOWHERE)) for draft in block.drafts]


def runs_in(grid: Grid) -> Iterator[tuple[Fraction, str]]:
    """Return the run that every cell of a grid of feet and inches stands for, and its text; '' for a blank."""
    offsets = [Fraction(0) + number_of(head.removesuffix(' in')) for head in cells(grid.heads)[1:]]
    for label, *texts in joined(grid):
        for offset, words in zip(offsets, texts, strict=True):
            yield 12 * int(label) + offset, words


def joined(grid: Grid) -> list[list[str]]:
    """Return label and texts of every row, the two layers joined: '53' and '11/16' are '53 11/16'."""
    wholes, fractions = grid.wholes.split('\n'), grid.fractions.split('\n')
    return [
        [cells(line)[0], *(' '.join(filter(None, pair)) for pair in zip(cells(line)[1:], cells(below), strict=True))]
        for line, below in zip(wholes, fractions, strict=True)
    ]  # fmt: skip


def cells(line: str) -> list[str]:
    return [cell.replace(FIGURE_SPACE, '').strip() for cell in line.split('\t')]


def number_of(written: str) -> Fraction:
    """Return a number as a book writes it: '11 15/16', '7/8', '2.4'."""
    return sum((Fraction(word) for word in written.split()), Fraction(0))


def as_read(figure) -> str:
    """Return a figure as a table shows it: in a table of feet and inches the inches go unmarked."""
    return '' if figure is None else figure.text.removesuffix('″')


def layers(grid: Grid) -> list[list[tuple[Piece | None, Piece | None]]]:
    """Return whole number and fraction of every row, the label with no fraction first, None where blank."""
    size, small, column = (10 * units for units in (grid.size, grid.fraction_size, grid.column))
    left, fraction_left = 10 * grid.left, 10 * grid.fraction_left
    rows = []
    for line, below in zip(grid.wholes.split('\n'), grid.fractions.split('\n'), strict=True):
        wholes = [_piece(cell, left + k * column, size, WHOLES) for k, cell in enumerate(line.split('\t'))]
        fractions = [
            _piece(cell, fraction_left + k * column, small, FRACTIONS)
            for k, cell in enumerate(below.split('\t'))
        ]
        rows.append(list(zip(wholes, [None, *fractions], strict=True)))
    return rows


def heads(grid: Grid) -> list[Piece]:
    """Return corner and heads of a grid."""
    left, column = 10 * grid.left, 10 * grid.column
    return [
        _piece(head, left + k * column, 10 * grid.size, HEADS)
        for k, head in enumerate(grid.heads.split('\t'))
    ]


def _piece(cell: str, stop: float, size: float, axes: tuple[int, int]) -> Piece | None:
    ink = cell.strip(BLANK)
    if not ink:
        return None
    before = cell[: len(cell) - len(cell.lstrip(BLANK))]
    return Piece(ink, stop + advance_em(before, *axes) * size, stop + advance_em(cell.rstrip(BLANK), *axes) * size)  # fmt: skip
