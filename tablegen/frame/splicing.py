"""Pieces longer than any board, made of several that are butted end to end."""

from __future__ import annotations

from collections.abc import Sequence


def spliced(length: int, boards: Sequence[int], joints: Sequence[int] = ()) -> list[int]:
    """Return the fewest parts that make a length, each no longer than a board; without places for joints all but the last whole boards.

    Given:
        boards  lengths that can be bought, shortest first
        joints  places where two parts may meet; where no boards reach from one to the next they count for nothing

    Notes:
        1. Of several ways the one that buys least, of those alike the one whose shortest part is the longest.
        2. Whole boards need no cut. Of the boards that may stand before the last part, that is taken which buys least; of
           those alike, the one that leaves the shorter of the two longest, so that no joint stands beside a stub.
    """
    longest = boards[-1]
    if length <= longest:
        return [length]
    if parts := _between(joints, length, boards):
        return parts
    whole = (length - 1) // longest - 1
    rest = length - whole * longest
    ways = [(board, rest - board) for board in boards if 0 < rest - board <= longest]

    def judged(way: tuple[int, int]) -> tuple[int, int]:
        first, last = way
        return first + next(board for board in boards if board >= last), -min(way)

    return [longest] * whole + [*min(ways, key=judged)]


def _between(joints: Sequence[int], length: int, boards: Sequence[int]) -> list[int]:
    """Return the parts between some of the joints; none where boards do not reach."""
    best: dict[int, tuple[int, int, int, list[int]]] = {0: (0, 0, 0, [])}
    for end in (*sorted(one for one in joints if 0 < one < length), length):
        ways = [
            (
                parts + 1,
                bought + next(board for board in boards if board >= end - start),
                max(-(end - start), shortest or -length),
                [*before, end - start],
            )
            for start, (parts, bought, shortest, before) in best.items()
            if 0 < end - start <= boards[-1]
        ]
        if ways:
            best[end] = min(ways)
    return best[length][-1] if length in best else []
