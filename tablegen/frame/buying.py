"""What to buy for a roof: boards of each size with the pieces that are cut from each, board feet, sheathing."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction
from math import ceil, lcm
from time import monotonic
from typing import ClassVar

from msgspec import Struct

from tablegen.errors import BookError, SettingsFaults
from tablegen.frame.cutting import Cut, Cutting, bought, first_fit, least_by_length
from tablegen.frame.lumber import STEP_IN, board_feet
from tablegen.frame.splicing import spliced
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, exact, floor_of
from tablegen.numbers.figure import (
    RATIO,
    Measure,
    decimal_figure,
    length_figure,
    length_rounded_down,
    length_rounded_up,
)
from tablegen.numbers.units import INCHES, Stock
from tablegen.roof.figures import Length, Ratio, ratio

SECONDS = 4.0
"""That the search for the least may take, over all sizes."""
AREA_PLACES = 1
SHEET_FT2 = 4 * 8
"""Of a sheet of sheathing, 4 by 8 ft: common practice, no source."""


class Piece(Struct, frozen=True):
    """Members alike, as they are cut from boards."""

    mark: str
    stock: Stock
    length_in: Exact | Fraction
    """From end to end, what a board must have for one of them."""
    number: int = 1
    may_be_joined: bool = False
    """Whether it may be made of several, butted end to end: a ridge, a fascia."""
    joints_in: tuple[Exact, ...] = ()
    """Where two of them may meet, from its left end; empty for anywhere."""


class Shop(Struct, frozen=True):
    """What can be bought, and how it is cut."""

    lengths_in: tuple[Fraction, ...]
    """Of boards, from the shortest."""
    kerf_in: Fraction
    measure: Measure = Measure()


class Sawn(Struct, frozen=True):
    """One piece of a board."""

    mark: str
    length: Length
    """From end to end, to the smallest part above it."""
    part: int | None = None
    parts: int | None = None
    """Of a piece that is made of several."""


class Board(Struct, frozen=True):
    """One board to buy and what is cut from it, in that order."""

    length: Fraction
    cut: tuple[Sawn, ...]
    offcut: Length


class Bought(Struct, frozen=True):
    """Boards of one length to buy."""

    number: int
    length: Fraction


class OfSize(Struct, frozen=True):
    """All boards of one size."""

    datum: ClassVar = ('buying.size', 'buying.piece')
    stock: str
    buy: tuple[Bought, ...]
    boards: tuple[Board, ...]
    together: Fraction
    """Length of all boards."""
    waste: Ratio
    """Share of that length that is no piece."""
    board_feet: Ratio | None
    """By nominal size; None where the size has none."""
    least: Fraction
    """No plan buys less than this length."""
    proven: bool
    """Whether this plan buys no more."""
    searched: bool
    """Whether it was searched for; else the longest piece that still fits was cut first."""


class Sheathing(Struct, frozen=True):
    """Area of the roof planes, in square feet, and sheets of 4 by 8 ft."""

    datum: ClassVar = ('buying.sheathing',)
    square_feet: Ratio
    allowance: Ratio
    """Share that is added for cuts and waste."""
    with_allowance: Ratio
    sheets: int


class Buying(Struct, frozen=True):
    """What to buy for one roof."""

    sizes: tuple[OfSize, ...]
    board_feet: Ratio
    """Of all sizes that have a nominal name."""
    sheathing: Sheathing | None = None


def buying(pieces: Sequence[Piece], shop: Shop, sheathing: Sheathing | None = None) -> Buying:
    """Return the boards to buy for some pieces, size by size: the least length of boards, then the fewest boards.

    Errors:
        SettingsFaults naming every piece that no board holds and that may not be joined
    """
    stocks = {piece.stock.name: piece.stock for piece in pieces}
    _refuse_too_long(pieces, shop)
    until = monotonic() + SECONDS
    sizes = tuple(
        _of_size(stock, [piece for piece in pieces if piece.stock.name == name], shop, until - monotonic())
        for name, stock in stocks.items()
    )
    feet = sum((board_feet(stocks[size.stock], size.together) or Fraction(0) for size in sizes), Fraction(0))
    return Buying(sizes, _tenths(feet), sheathing)


def sheathing_for(square_in: Exact, allowance: Fraction) -> Sheathing:
    """Return the sheathing of a roof of so many square inches, along its slopes, and a share more for cuts and waste."""
    feet = square_in / INCHES.group**2
    more = feet * (1 + allowance)
    return Sheathing(_tenths(feet), ratio(exact(allowance)), _tenths(more), -floor_of(-more / SHEET_FT2))


def _refuse_too_long(pieces: Iterable[Piece], shop: Shop) -> None:
    faults = []
    for piece in pieces:
        needed = length_rounded_up(piece.length_in, shop.measure)
        inches = Fraction(needed.count, needed.per)
        if inches > shop.lengths_in[-1] and not piece.may_be_joined:
            problem = message(
                'buying.too_long',
                mark=piece.mark,
                needed=text.run(inches),
                stock=piece.stock.name,
                longest=text.run(shop.lengths_in[-1]),
            )
            would = message('buying.would_do', length=text.run(Fraction(ceil(inches / STEP_IN) * STEP_IN)))
            faults.append(BookError('buy.lengths', problem, '', would))
    if faults:
        raise SettingsFaults('', faults)


def _of_size(stock: Stock, pieces: Sequence[Piece], shop: Shop, seconds: float) -> OfSize:
    per = lcm(shop.measure.per, shop.kerf_in.denominator, *(one.denominator for one in shop.lengths_in))
    boards = tuple(int(one * per) for one in shop.lengths_in)
    waiting = _sawn(pieces, boards, per, shop.measure)
    lengths = sorted(waiting, reverse=True)
    cutting = Cutting(
        tuple(lengths), tuple(len(waiting[one]) for one in lengths), boards, int(shop.kerf_in * per)
    )
    plan, least, searched = _plan(cutting, seconds)
    made = []
    for cut in sorted(plan, key=lambda one: (one.board, one.pattern), reverse=True):
        sawn = tuple(
            waiting[length].pop(0) for length, n in zip(lengths, cut.pattern, strict=True) for _ in range(n)
        )
        left = Fraction(cut.board - min(cut.board, cutting.taken(cut.pattern) + cutting.kerf), per)
        made.append(Board(Fraction(cut.board, per), sawn, length_rounded_down(left, shop.measure)))
    whole = bought(plan)[0]
    used = sum(length * n for length, n in zip(lengths, cutting.wanted, strict=True))
    feet = board_feet(stock, Fraction(whole, per))
    numbers = {board.length: sum(one.length == board.length for one in made) for board in made}
    return OfSize(
        stock.name,
        tuple(Bought(n, length) for length, n in numbers.items()),
        tuple(made),
        Fraction(whole, per),
        ratio(exact(1 - Fraction(used, whole))),
        None if feet is None else _tenths(feet),
        Fraction(least, per),
        proven=whole == least,
        searched=searched,
    )


def _sawn(
    pieces: Iterable[Piece], boards: tuple[int, ...], per: int, measure: Measure
) -> dict[int, list[Sawn]]:
    """Return the pieces to be sawn by their lengths in parts, in the order in which they were given."""
    found: dict[int, list[Sawn]] = {}
    for piece in pieces:
        figure = length_rounded_up(piece.length_in, measure)
        length = figure.count * per // figure.per
        joints = [length_figure(one, measure).count * per // figure.per for one in piece.joints_in]
        parts = spliced(length, boards, joints) if piece.may_be_joined else [length]
        for _ in range(piece.number):
            for place, part in enumerate(parts, 1):
                said = length_rounded_up(Fraction(part, per), measure)
                of = (place, len(parts)) if len(parts) > 1 else (None, None)
                found.setdefault(part, []).append(Sawn(piece.mark, said, *of))
    return found


def _plan(cutting: Cutting, seconds: float) -> tuple[list[Cut], int, bool]:
    """Return a plan, the length that none goes under, and whether the plan was searched for."""
    plan, least = first_fit(cutting), least_by_length(cutting)
    if bought(plan) == (least, -(-least // cutting.boards[-1])):
        return plan, least, False  # neither a shorter one nor one of fewer boards can be
    try:
        from tablegen.frame.cutting_search import Search  # a fifth of a second, and an extra to install
    except ImportError:
        return plan, least, False
    search = Search(cutting, plan, seconds)
    search.run()
    return search.plan, search.least, True


def _tenths(number: Exact | Fraction) -> Ratio:
    return decimal_figure(number, AREA_PLACES, RATIO)
