"""The search for the plan that buys least: patterns by their prices, whole boards by a general solver, the bound by whole numbers.

What the solver says is a proposal: a plan counts as its boards and pieces count, and a bound holds because whole prices, which
the solver's are rounded to, are shown to pay for no pattern more than its board costs.

Source: Gilmore, P. C., and Gomory, R. E., A linear programming approach to the cutting-stock problem, Operations Research 9
(1961); patterns of too great a reduced cost can stand in no better plan.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from time import monotonic

import highspy
import numpy as np
from numpy.typing import NDArray

from tablegen.frame.cutting import Cut, Cutting, Pattern, bought, dealt, least_by_length

SCALE = 2**24
"""Whole prices in what one part of a board costs."""
MOST_PARTS = 3_000_000
"""Of a board: tables of more take too long."""
MOST_CELLS = 20_000_000
FIRST_SHARE = 4
"""Of the time: a part for the patterns that the prices led to, before all that could help are added."""
MOST_PATTERNS = 4000
"""That a last search looks at."""
Table = NDArray[np.int64]


class TimeIsUp(Exception):
    """The search has to end."""


class Solver(highspy.Highs):
    """The general solver, on one thread, so that it answers alike each time; some of its versions greet before they can be asked not to."""

    def enableCallbacks(self) -> None:
        self.silent()
        for option, value in (('threads', 1), ('mip_rel_gap', 0.0), ('mip_abs_gap', 0.999)):
            self.setOptionValue(option, value)
        super().enableCallbacks()  # type: ignore[no-untyped-call]


class Search:
    """A search for the plan that buys least, for so many seconds at most.

    Attributes:
        plan   the best so far
        least  the length of boards that no plan goes under, as far as is known
    """

    def __init__(self, cutting: Cutting, plan: list[Cut], seconds: float):
        self.cutting, self.plan, self.least = cutting, plan, least_by_length(cutting)
        self._until = monotonic() + seconds
        self._columns: dict[Pattern, int] = {}
        """Patterns, each with the shortest board that holds it."""

    def run(self) -> None:
        """Look until the plan is shown to buy least, or the time is up."""
        if self.cutting.boards[-1] > MOST_PARTS:
            return
        try:
            prices = self._priced()
            self._whole(self._time_left() / FIRST_SHARE)
            if bought(self.plan)[0] > self.least:
                helping = self._that_could_help(prices)
                self._add(helping or [])
                if self._whole(self._time_left()) and helping is not None:
                    self.least = bought(self.plan)[0]
            self._whole(self._time_left(), within=bought(self.plan)[0])
        except TimeIsUp:
            pass

    def _priced(self) -> list[int]:
        """Gather patterns until no further one is worth its board; return the whole prices that bound every plan."""
        cutting = self.cutting
        self._add([cut.pattern for cut in self.plan])
        for place, piece in enumerate(cutting.pieces):
            for board in cutting.boards:
                most = min(cutting.wanted[place], (board + cutting.kerf) // (piece + cutting.kerf))
                self._add(
                    [tuple(most if one == place else 0 for one in range(len(cutting.pieces)))] if most else []
                )
        while True:
            prices = [max(0, round(price * SCALE)) for price in self._linear()]
            tables = self._worth(prices)
            fair = self._fair(prices, tables[0])
            paid = sum(price * n for price, n in zip(fair, cutting.wanted, strict=True))
            self.least = max(self.least, cutting.up_to_step(Fraction(paid, SCALE)))
            best = [self._best(tables, prices, board) for board in cutting.boards]
            if not self._add(
                pattern for pattern, board in best if self._value(pattern, prices) > board * SCALE
            ):
                return fair

    def _add(self, patterns: Iterator[Pattern] | list[Pattern]) -> bool:
        """Keep patterns; return whether any of them is new."""
        before = len(self._columns)
        for pattern in patterns:
            board = self.cutting.board_for(pattern)
            assert board is not None, 'only patterns that a board holds are made'
            self._columns[pattern] = board
        return len(self._columns) > before

    def _worth(self, prices: list[int]) -> list[Table]:
        """Return, from each length of piece on to the shortest, the most that lengths of board with a kerf can be worth."""
        cutting = self.cutting
        tables = [np.zeros(cutting.boards[-1] + cutting.kerf + 1, dtype=np.int64)]
        for piece, wanted, price in reversed(list(zip(cutting.pieces, cutting.wanted, prices, strict=True))):
            best, left, several = tables[0], wanted, 1
            while left:
                several = min(several, left)
                length = several * (piece + cutting.kerf)
                if length < len(best):
                    with_it = best.copy()
                    np.maximum(best[length:], best[:-length] + several * price, out=with_it[length:])
                    best = with_it
                left -= several
                several *= 2
            tables.insert(0, best)
            self._time_left()
        return tables

    def _fair(self, prices: list[int], worth: Table) -> list[int]:
        """Return prices by which no pattern is worth more than its board: the dual bound is exact by them."""
        over = max(
            Fraction(int(worth[board + self.cutting.kerf]), board * SCALE) for board in self.cutting.boards
        )
        return prices if over <= 1 else [int(price / over) for price in prices]

    def _best(self, tables: list[Table], prices: list[int], board: int) -> tuple[Pattern, int]:
        """Return the pattern worth most on a board."""
        room, pattern = board + self.cutting.kerf, []
        for place, piece in enumerate(self.cutting.pieces):
            n, length = 0, piece + self.cutting.kerf
            while (
                n * length <= room
                and tables[place + 1][room - n * length] + n * prices[place] != tables[place][room]
            ):
                n += 1
            room -= n * length
            pattern.append(n)
        return tuple(pattern), board

    def _value(self, pattern: Pattern, prices: list[int]) -> int:
        return sum(n * price for n, price in zip(pattern, prices, strict=True))

    def _that_could_help(self, fair: list[int]) -> list[Pattern] | None:
        """Return every pattern that may stand in a plan a step shorter, None where there are too many."""
        cutting, found = self.cutting, []
        if len(fair) * cutting.boards[-1] > MOST_CELLS:
            return None
        tables = self._worth(fair)
        paid = sum(price * n for price, n in zip(fair, cutting.wanted, strict=True))
        spare = (bought(self.plan)[0] - cutting.step) * SCALE - paid
        for board in cutting.boards:
            for pattern in self._worth_at_least(tables, fair, board, board * SCALE - spare):
                found.append(pattern)
                if len(found) > MOST_PATTERNS:
                    return None
        return found

    def _worth_at_least(
        self, tables: list[Table], prices: list[int], board: int, least: int
    ) -> Iterator[Pattern]:
        """Return the patterns of a board that are worth so much."""
        waiting: list[tuple[Pattern, int, int]] = [((), board + self.cutting.kerf, least)]
        while waiting:
            begun, room, missing = waiting.pop()
            place = len(begun)
            if place == len(prices):
                if any(begun):
                    yield begun
                continue
            length = self.cutting.pieces[place] + self.cutting.kerf
            for n in range(min(self.cutting.wanted[place], room // length) + 1):
                short = missing - n * prices[place]
                if tables[place + 1][room - n * length] >= short:
                    waiting.append(((*begun, n), room - n * length, short))

    def _linear(self) -> list[float]:
        """Return the price of each piece by the linear program over the patterns that are kept."""
        solver = self._model([float(board) for board in self._columns.values()], whole=False)
        solver.run()
        return list(solver.getSolution().row_dual)

    def _whole(self, seconds: float, within: int | None = None) -> bool:
        """Look for the plan of whole boards that buys least, or of the fewest boards within a length, and keep what is better.

        Returned:
            whether the solver says that none of the patterns kept make a better one
        """
        step = self.cutting.step
        boards = list(self._columns.values())
        solver = self._model([1.0 if within else board / step for board in boards], whole=True)
        if within:
            places = np.arange(len(boards), dtype=np.int32)
            solver.addRow(0.0, within / step, len(boards), places, np.array(boards) / step)
        solver.setOptionValue('time_limit', seconds)
        solver.run()
        times = [round(value) for value in solver.getSolution().col_value]
        patterns = [pattern for pattern, n in zip(self._columns, times, strict=False) for _ in range(n)]
        plan = dealt(self.cutting, patterns)
        if plan is not None and bought(plan) < bought(self.plan):
            self.plan = plan
        return plan is not None and solver.getModelStatus() == highspy.HighsModelStatus.kOptimal

    def _model(self, costs: list[float], whole: bool) -> Solver:
        """Return the program that covers what is wanted with the patterns that are kept."""
        model, columns = highspy.HighsLp(), list(self._columns)
        filled = [[(row, n) for row, n in enumerate(pattern) if n] for pattern in columns]
        model.num_col_, model.num_row_ = len(columns), len(self.cutting.pieces)
        model.col_cost_ = np.array(costs)
        model.col_lower_, model.col_upper_ = np.zeros(len(columns)), np.full(len(columns), highspy.kHighsInf)
        model.row_lower_ = np.array(self.cutting.wanted, dtype=np.float64)
        model.row_upper_ = np.full(len(self.cutting.pieces), highspy.kHighsInf)
        matrix = model.a_matrix_
        matrix.format_ = highspy.MatrixFormat.kColwise
        matrix.start_ = np.cumsum([0, *map(len, filled)], dtype=np.int32)
        matrix.index_ = np.array([row for column in filled for row, _ in column], dtype=np.int32)
        matrix.value_ = np.array([n for column in filled for _, n in column], dtype=np.float64)
        if whole:
            model.integrality_ = [highspy.HighsVarType.kInteger] * len(columns)
        solver = Solver()  # type: ignore[no-untyped-call]
        solver.setOptionValue('time_limit', self._time_left())
        solver.passModel(model)
        return solver

    def _time_left(self) -> float:
        left = self._until - monotonic()
        if left <= 0:
            raise TimeIsUp
        return left
