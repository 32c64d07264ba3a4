"""A pitch's pages made and taken apart again: each figure with its run, each piece of text with its place."""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from font_measures import advance_em
from msgspec import Struct

from layouts.grid.grid import Grid
from layouts.pages.pitch_pages import pitch_block
from layouts.paper.page import Index
from layouts.paper.trim import FIGURE_SPACE, FRACTION_OF_WHOLE, trim_of
from tablegen.settings import Settings

FIGURES, HEADS = (86, 600), (80, 720)
"""Width and weight of a table's figures, and of its heads."""
FRACTION = re.compile(r'(?P<whole>.*?)(?P<gap> ?)(?P<fraction>\d+/\d+\S*)')
NOWHERE = Index({}, 0, ())
BLANK = f'{FIGURE_SPACE} '


class Piece(Struct, frozen=True):
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
    """Return label and texts of every row."""
    return [cells(line) for line in grid.rows.split('\n')]


def cells(line: str) -> list[str]:
    return [cell.replace(FIGURE_SPACE, '').strip() for cell in line.split('\t')]


def number_of(written: str) -> Fraction:
    """Return a number as a book writes it: '11 15/16', '7/8', '2.4'."""
    return sum((Fraction(word) for word in written.split()), Fraction(0))


def as_read(figure) -> str:
    """Return a figure as a table shows it: in a table of feet and inches the inches go unmarked."""
    return '' if figure is None else figure.text.removesuffix('″')


def pieces(grid: Grid) -> list[list[tuple[Piece | None, Piece | None]]]:
    """Return whole number and fraction of every row, the label with no fraction first, None where blank."""
    size, column, left = (10 * units for units in (grid.size, grid.column, grid.left))
    return [
        [_pair(cell, left + place * column, size) for place, cell in enumerate(line.split('\t'))]
        for line in grid.rows.split('\n')
    ]


def _pair(cell: str, stop: float, size: float) -> tuple[Piece | None, Piece | None]:
    found = FRACTION.fullmatch(cell)
    if not found:
        return _piece(cell, stop, size, FIGURES), None
    begins = stop + advance_em(found['whole'] + found['gap'], *FIGURES) * size
    fraction = _piece(found['fraction'], begins, size * FRACTION_OF_WHOLE, FIGURES)
    return _piece(found['whole'], stop, size, FIGURES), fraction


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
