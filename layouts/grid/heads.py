"""Heads of a reference table: two lines, each broken where it does not fit its column."""

from __future__ import annotations

from collections.abc import Sequence

HEAD_SIZE, HEAD_LETTER, HEAD_GAP = 7.6, 3.9, 2.5
"""Size of a head, width of its letters on average, and what is free right of the labels' head; in units."""


def corner_width(corner: str) -> float:
    """Return the width that the head of the labels needs, in units."""
    return max(map(len, corner.split('\n'))) * HEAD_LETTER + HEAD_GAP


def two_lines(
    heads: Sequence[str], corner: str, span: str, column: float
) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return the upper and the lower line of heads, that of the labels first.

    Given:
        corner  head of the labels, in one line or two
        span    what the heads have in common, above them; '' for nothing
        column  width of a column, units
    """
    pairs = [_broken(head, int((column - 2) / HEAD_LETTER)) for head in heads]
    if any(high for high, _ in pairs):  # heads of one kind break alike
        pairs = [_broken(head, 0) if ': ' in head else pair for head, pair in zip(heads, pairs, strict=True)]
    high_corner, _, low_corner = corner.rpartition('\n')
    if span:
        return (high_corner, span), (low_corner, *(low or high for high, low in pairs))
    return (high_corner, *(high for high, _ in pairs)), (low_corner, *(low for _, low in pairs))


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
