"""Pieces longer than any board, made of several that are butted end to end."""

from __future__ import annotations

from collections.abc import Sequence


def spliced(length: int, boards: Sequence[int]) -> list[int]:
    """Return the fewest parts that make a length, each no longer than a board, all but the last whole boards.

    Given:
        boards  lengths that can be bought, shortest first

    Notes:
        1. Whole boards need no cut. Of the boards that may stand before the last part, that is taken which buys least; of
           those alike, the one that leaves the shorter of the two longest, so that no joint stands beside a stub.
    """
    longest = boards[-1]
    if length <= longest:
        return [length]
    whole = (length - 1) // longest - 1
    rest = length - whole * longest
    ways = [(board, rest - board) for board in boards if 0 < rest - board <= longest]

    def judged(way: tuple[int, int]) -> tuple[int, int]:
        first, last = way
        return first + next(board for board in boards if board >= last), -min(way)

    return [longest] * whole + [*min(ways, key=judged)]
