"""A table whose rows are one run of text at tab stops: its heads, and what stands below each, by their places."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from msgspec import Struct

from tablegen.proof.page import Line, Page, Phrase, phrase_of, said

ONE_STOP, OVERLAP, ALIKE = 0.6, 0.1, 0.1
"""Shares of the size of type: how far two heads at one tab stop are apart at most, how far what belongs to a head reaches
past its left at least, and what the lines of heads differ by at most."""


class Laid(Struct, frozen=True):
    """A table, or as much of it as stands in one place."""

    corner: str
    """Head of the rows' names, its lines with a word space between."""
    heads: tuple[Phrase, ...]
    """In their lower lines, from left to right; each text has the line above it where that is its own."""
    above: tuple[Phrase, ...]
    """What stands over several heads."""
    rows: tuple[tuple[str, tuple[str, ...]], ...]
    """The name of each row, and what stands under every head, '' for nothing."""

    def group(self, head: Phrase) -> str:
        """Return what stands over a head and its neighbors, '' for nothing."""
        left = [one.text for one in self.above if one.left <= head.left + ONE_STOP * head.size]
        return left[-1] if left else ''


def laid(page: Page, top: float, foot: float = 0.0, *, paired: bool) -> Laid | None:
    """Return the table between two heights of a page; None where none is found.

    Given:
        paired  whether the line above a head is its own; else it stands over several
    """
    lines = [line for line in page.lines if foot < line[0].base < top - 1]
    rows = [line for line in lines if not line[0].bold and is_row(line)]
    if not rows:
        return None
    over = [line for line in lines if line[0].bold and line[0].base > rows[0][0].base]
    if not over:
        return None
    over = [line for line in over if abs(line[0].size - over[-1][0].size) < ALIKE * line[0].size]
    lower = list(cells_of(over[-1]))
    upper = [cell for line in over[:-1] for cell in cells_of(line)]
    corner = said([word for line in over for word in line if not word.stops])
    heads = [_with(head, upper) if paired else head for head in lower]
    return Laid(corner, tuple(heads), tuple(upper), tuple(_row(line, heads) for line in rows))


def is_row(line: Line) -> bool:
    """Return whether a line is one run of text with tab stops."""
    return any(word.stops for word in line) or (
        len({word.run for word in line}) == 1 and line[0].text.isdigit()
    )


def cells_of(line: Line) -> Iterator[Phrase]:
    """Return what stands at each tab stop of a line."""
    for (_run, stops), words in groupby(line, key=lambda word: (word.run, word.stops)):
        if stops:
            yield phrase_of(list(words))


def _with(head: Phrase, upper: Sequence[Phrase]) -> Phrase:
    high = next((one for one in upper if abs(one.left - head.left) < ONE_STOP * head.size), None)
    return Phrase(f'{high.text} {head.text}', head.left, head.right, head.base, head.size) if high else head


def _row(line: Line, heads: Sequence[Phrase]) -> tuple[str, tuple[str, ...]]:
    return said([word for word in line if not word.stops]), tuple(stand_under(heads, line))


def stand_under(heads: Sequence[Phrase], line: Line) -> list[str]:
    """Return what stands under each head: what stands at one tab stop ends right of its left edge and left of the next one's."""
    found: list[Line] = [[] for _head in heads]
    for stops, some in groupby(line, key=lambda word: word.stops):
        cell = list(some)
        if stops:
            end = cell[-1].right - OVERLAP * cell[-1].size
            past = [n for n, head in enumerate(heads) if head.left < end]
            found[past[-1] if past else 0] += cell
    return [said(cell) for cell in found]
