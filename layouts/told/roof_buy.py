"""What `roof` tells a person to buy: boards size by size, what is cut from each, sheathing."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction

from layouts.told.blocks import Block, in_inches, paragraph
from layouts.told.columns import LEFT, MIXED, RIGHT, columns
from layouts.words.say import N_, _
from tablegen.frame.buying import Board, Buying, OfSize, Sawn
from tablegen.numbers import text

JOINTS = N_(
    'A piece of several parts is butted end to end, each joint where a rafter or a post holds it: a designer decides how. Its parts '
    'are in order from the left end, seen from outside; of a ridge from the front or the wing’s left side.'
)
CUT_HEADS = (N_('boards'), N_('length'), N_('left over'), N_('cut, in this order'))


def buy_blocks(buy: Buying) -> Iterator[Block]:
    """Return what to buy, size by size, and what is cut from each board."""
    for size in buy.sizes:
        yield [*paragraph(bought_words(size)), *_cut_from(size)]
    if has_joints(buy):
        yield paragraph(_(JOINTS))
    yield paragraph(*whole_words(buy))


def has_joints(buy: Buying) -> bool:
    """Return whether any piece is made of several."""
    return any(sawn.parts for size in buy.sizes for board in size.boards for sawn in board.cut)


def whole_words(buy: Buying) -> list[str]:
    """Return what is said of all sizes together: board feet, sheathing."""
    said = [_('Board feet together: {feet}, by nominal size.').format(feet=buy.board_feet.text)]
    if sheathing := buy.sheathing:
        words = _(
            'Sheathing: {area} square feet along the slopes, {more} with {percent} % for cuts and waste: {sheets} sheets '
            'of 4 × 8 ft.'
        )
        percent = text.rational(Fraction(sheathing.allowance.count * 100, sheathing.allowance.per))
        said.append(
            words.format(
                area=sheathing.square_feet.text,
                more=sheathing.with_allowance.text,
                percent=percent,
                sheets=sheathing.sheets,
            )
        )
    return said


def bought_words(size: OfSize) -> str:
    """Return what to buy of one size."""
    boards = ', '.join(
        _('{number} of {length}').format(number=one.number, length=text.run(one.length)) for one in size.buy
    )
    if size.proven:
        bound = _('no plan buys less')
    else:
        bound = _('every plan buys {least} or more').format(least=text.run(size.least))
    words = _('Buy {stock}: {boards}; {together} together, {bound}.')
    if not size.searched and not size.proven:
        words = _(
            'Buy {stock}: {boards}; {together} together, {bound}; the longest piece was cut first, and installing '
            'rafterbook[buying] lets the least be searched for.'
        )
    return words.format(stock=size.stock, boards=boards, together=text.run(size.together), bound=bound)


def _cut_from(size: OfSize) -> Block:
    return columns([tuple(map(_, CUT_HEADS)), *cut_rows(size)], (RIGHT, LEFT, MIXED, LEFT))


def cut_rows(size: OfSize) -> list[tuple[str, str, str, str]]:
    """Return what is cut from each board, boards alike in one row: how many, how long, what is left over, the pieces."""
    alike = Counter((text.run(board.length), _pieces(board), board.offcut.text) for board in size.boards)
    return [(str(n), length, left, pieces) for (length, pieces, left), n in alike.items()]


def _pieces(board: Board) -> str:
    """Return the pieces of a board; several of one mark as their number and it."""
    counted = Counter(map(_piece, board.cut))
    return ', '.join(name if n == 1 else f'{n} × {name}' for name, n in counted.items())


def _piece(sawn: Sawn) -> str:
    if sawn.parts is None:
        return sawn.mark
    words = _('{mark} part {part} of {parts}, {length}')
    return words.format(mark=sawn.mark, part=sawn.part, parts=sawn.parts, length=in_inches(sawn.length))
