"""Columns of a table: how wide each is, by the rules that the typesetter follows."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

NEAR = 1e-9
"""Widths as near as this to one another, as a share, are the same."""


class Asked(Struct):
    """What a table's columns ask for; px."""

    least: list[float]
    """Where all that may break is broken."""
    most: list[float]
    """Where nothing is."""
    shares: list[float]
    """Of the table's width, in hundredths; 0 where none is said."""
    said: list[bool]
    """Whether a width is said."""

    @classmethod
    def nothing(cls, count: int) -> Asked:
        """Return what so many empty columns ask for."""
        return cls([0.0] * count, [0.0] * count, [0.0] * count, [False] * count)

    def cell(self, column: int, least: float, most: float, share: float, said: bool) -> None:
        """Add what a cell of one column asks for."""
        self.least[column] = max(self.least[column], least)
        self.most[column] = max(self.most[column], most)
        self.shares[column] = max(self.shares[column], share)
        self.said[column] |= said

    def wide_cell(self, columns: range, least: float, most: float) -> None:
        """Add what a cell of several columns asks for, after those of one."""
        for widths, asked in ((self.least, least), (self.most, most)):
            more = asked - sum(widths[one] for one in columns)
            if more > 0:
                self._spread(widths, more, columns)

    def widths(self, room: float) -> list[float]:
        """Return the width of every column of a table as wide as its room, or wider where that is not enough."""
        all_of_them = range(len(self.least))
        for column in all_of_them:
            self.shares[column] = min(self.shares[column], 100 - sum(self.shares[:column]))
        room = max(room, sum(self.least))
        with_shares, with_said, most = self.least[:], self.least[:], self.most[:]
        for column in all_of_them:
            if self.shares[column]:
                width = max(self.shares[column] / 100 * room, self.least[column])
                with_shares[column] = with_said[column] = most[column] = width
            elif self.said[column]:
                with_said[column] = self.most[column]
        if room * (1 + NEAR) >= sum(most):
            self._spread(most, room - sum(most), all_of_them)
            return most
        guesses = [self.least, with_shares, with_said, most]
        place = max(
            place
            for place in range(len(guesses))
            if all(sum(guess) <= room * (1 + NEAR) for guess in guesses[: place + 1])
        )
        lower, upper = guesses[place : place + 2]
        part = (room - sum(lower)) / (sum(upper) - sum(lower))
        return [low + (high - low) * part for low, high in zip(lower, upper, strict=True)]

    def _spread(self, widths: list[float], more: float, columns: Sequence[int]) -> None:
        """Make columns wider by so much in all: those of which the least is said before the others."""
        free = [one for one in columns if not self.said[one] and not self.shares[one]]
        for some in (
            [one for one in free if self.most[one] > 0],
            free,
            [one for one in columns if self.said[one] and not self.shares[one] and self.most[one] > 0],
            [one for one in columns if self.shares[one] > 0 and self.most[one] > 0],
            columns,
        ):
            if some:
                break
        if all(self.shares[one] > 0 for one in some):
            weights = [self.shares[one] for one in some]
        else:
            weights = [self.most[one] if any(self.most[each] > 0 for each in some) else 1.0 for one in some]
        whole = sum(weights)
        for one, weight in zip(some, weights, strict=True):
            widths[one] += more * weight / whole


def fixed_widths(said: Sequence[float | None], room: float) -> list[float]:
    """Return the width of every column of a table whose columns alone say it; the others share what is left.

    Notes:
        1. Where they say more than there is room, the table is wider.
    """
    rest = max(0.0, room - sum(width or 0.0 for width in said))
    unsaid = said.count(None)
    widths = [rest / unsaid if width is None else width for width in said]
    return widths if unsaid else [width + rest / len(widths) for width in widths]
