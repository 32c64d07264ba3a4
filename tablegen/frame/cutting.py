"""Pieces cut from boards, by whole counts: what a board holds, the plan that fills longest first, what no plan can go under."""

from __future__ import annotations

from fractions import Fraction
from math import ceil, gcd

from msgspec import Struct

Pattern = tuple[int, ...]
"""How many of each length of piece are cut from one board."""


class Cut(Struct, frozen=True):
    """One board and what is cut from it."""

    board: int
    """Its length."""
    pattern: Pattern


class Cutting(Struct, frozen=True):
    """Pieces to be cut from boards of some lengths; every length a whole count of one part, none below 1."""

    pieces: tuple[int, ...]
    """Their different lengths, longest first."""
    wanted: Pattern
    boards: tuple[int, ...]
    """Lengths that can be bought, shortest first; the last is no shorter than any piece."""
    kerf: int
    """What the saw takes between two pieces, 0 or more."""

    @property
    def step(self) -> int:
        """Return what every sum of boards is a multiple of."""
        return gcd(*self.boards)

    def taken(self, pattern: Pattern) -> int:
        """Return the length that a pattern takes: its pieces, and a kerf between each two."""
        return sum(n * (piece + self.kerf) for n, piece in zip(pattern, self.pieces, strict=True)) - self.kerf

    def board_for(self, pattern: Pattern) -> int | None:
        """Return the shortest board that holds a pattern, None where none does."""
        taken = self.taken(pattern)
        return next((board for board in self.boards if board >= taken), None)

    def up_to_step(self, length: Fraction) -> int:
        """Return the least sum of boards that a length may come to."""
        return ceil(length / self.step) * self.step


def bought(plan: list[Cut]) -> tuple[int, int]:
    """Return what a plan is judged by: the length of its boards, then their number."""
    return sum(cut.board for cut in plan), len(plan)


def dealt(cutting: Cutting, patterns: list[Pattern]) -> list[Cut] | None:
    """Return the boards of some patterns, each cut to what is still wanted and no longer than it needs.

    Returned:
        None where something wanted is left over, or a pattern is too long for any board
    """
    left, plan = list(cutting.wanted), []
    for pattern in patterns:
        cut = tuple(map(min, pattern, left))
        board = cutting.board_for(cut)
        if board is None:
            return None
        if any(cut):
            left = [n - m for n, m in zip(left, cut, strict=True)]
            plan.append(Cut(board, cut))
    return None if any(left) else plan


def first_fit(cutting: Cutting) -> list[Cut]:
    """Return the best of the plans that fill boards of one length, the longest piece that still fits first.

    Notes:
        1. First fit decreasing. A piece longer than the boards of its plan gets the shortest that holds it, and every board
           is then as short as what is cut from it lets it be.
    """
    plans = [_filled(cutting, board) for board in cutting.boards]
    return min(plans, key=bought)


def _filled(cutting: Cutting, board: int) -> list[Cut]:
    left, plan = list(cutting.wanted), []
    while any(left):
        longest = next(piece for piece, n in zip(cutting.pieces, left, strict=True) if n)
        room = max(board, next(one for one in cutting.boards if one >= longest)) + cutting.kerf
        pattern = []
        for place, piece in enumerate(cutting.pieces):
            n = min(left[place], room // (piece + cutting.kerf))
            room -= n * (piece + cutting.kerf)
            left[place] -= n
            pattern.append(n)
        shortest = cutting.board_for(tuple(pattern))
        assert shortest is not None, 'it was filled within a board'
        plan.append(Cut(shortest, tuple(pattern)))
    return plan


def least_by_length(cutting: Cutting) -> int:
    """Return a length of boards that no plan can go under: what pieces and kerfs add up to.

    Notes:
        1. A board of length B holds pieces that, each with a kerf, are B and one kerf long at most: at the price of B to
           B + kerf none costs more than its board.
    """
    price = min(Fraction(board, board + cutting.kerf) for board in cutting.boards)
    with_kerfs = sum(
        n * (piece + cutting.kerf) for n, piece in zip(cutting.wanted, cutting.pieces, strict=True)
    )
    return cutting.up_to_step(price * with_kerfs)
