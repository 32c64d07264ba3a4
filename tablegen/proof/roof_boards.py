"""The boards of a roof by their marks: each in its place, its marks along the top edge, its steps and how the square is held."""

from __future__ import annotations

from decimal import Decimal

from tablegen.proof.digits import FOOT_IN, SLACK, real, written
from tablegen.proof.roof import arms
from tablegen.proof.roof_reading import Reading
from tablegen.proof.roof_slopes import MAIN, run_of
from tablegen.proof.space import dot
from tablegen.proof.timber import Timber

SQUARE_PARTS = 16
"""Parts of an inch on a framing square."""


def timber_of(mark: str, it: Reading, hand: str = '') -> Timber | None:
    """Return the board of a mark: a rafter where it stands, a hip at its corner; None of one that is not worked out.

    Given:
        hand  of a hip, on which the main slope lies, where it is told
    """
    assert it.roof
    kind = kind_of(mark, it)
    if kind == 'hip' and it.roof.hips:
        return it.roof.hip(hip_of(hand, it))
    if kind == 'barge':
        main = it.roof.slopes[0]
        return main.rafter(main.length / 2, it.asked.depth('stock.rafters'))
    standing = it.stood.get(mark)
    if not standing:
        return None
    one = standing[0]
    return one.slope.rafter(one.along, it.asked.depth('stock.rafters'))


def kind_of(mark: str, it: Reading) -> str:
    """Return what a mark is, '' of one that the lists have not."""
    return it.names.kinds.get(it.kinds.get(mark, ''), '')


def hip_of(hand: str, it: Reading) -> int:
    """Return which hip is one of a hand: the first has the main slope on its right."""
    return 1 if hand == it.names.hands[0] else 0


def run_to_step(board: Timber, mark: str, it: Reading) -> tuple[Decimal, Decimal]:
    """Return the level run that is stepped off in feet of common run, and how far the board goes for one inch of it."""
    assert it.roof
    assert board.center
    kind = kind_of(mark, it)
    whole = board.to(board.center)
    assert whole is not None
    if kind == 'hip':
        mains = [one for one in it.roof.slopes if one.name in MAIN]
        starts = [dot(one.inward, board.foot) - dot(one.inward, one.origin) for one in mains]
        run = run_of(mains[0]) - min(starts, key=abs)
        return run, _level(board, whole) / run
    return _level(board, whole), Decimal(1)


def _level(board: Timber, along: Decimal) -> Decimal:
    return along * _flat(board)


def _flat(board: Timber) -> Decimal:
    """Return how far level an inch along the top edge goes."""
    x, y, z = board.edge
    return (x * x + y * y).sqrt() / (x * x + y * y + z * z).sqrt()


def place_of(board: Timber, where: tuple[str, str]) -> Decimal:
    """Return where a mark is along the top edge, from the plate line."""
    end, across = where
    if end == 'plate':
        return Decimal(0)
    if across == 'tip':
        return board.reach(board.head) if end == 'head' else board.reach(board.tail, False)
    cut, upper, half = (
        (board.head, True, real(board.thick) / 2)
        if end == 'head'
        else (board.tail, False, real(board.thick) / 2)
    )
    sides = [board.at(cut, half, upper), board.at(cut, -half, upper)]
    match across:
        case 'center':
            return board.at(cut, Decimal(0), upper)
        case 'left' | 'side':
            return sides[0]
        case 'right':
            return sides[1]
        case 'long':
            return max(sides) if upper else min(sides)
    return min(sides) if upper else max(sides)


def steps_of(board: Timber, run: Decimal, far: Decimal) -> tuple[int, Decimal, Decimal]:
    """Return the whole steps of a run, and what is left of it on the body and the tongue.

    Given:
        far  how far level the board goes for an inch of common run
    """
    rise = board.edge[2] / ((board.edge[0] ** 2 + board.edge[1] ** 2).sqrt()) * far
    body, _tongue = arms(FOOT_IN * far, FOOT_IN * rise)
    step = body / far
    whole = int((run + SLACK) / step)
    left = run - whole * step
    return whole, left * far, left * rise


def few_steps(board: Timber, mark: str, it: Reading) -> str:
    """Return how steps are told in a table."""
    run, far = run_to_step(board, mark, it)
    whole, body, tongue = steps_of(board, run, far)
    if body < SLACK:
        return str(whole)
    told_body, told_tongue = (it.told(one)[0] for one in (body, tongue))
    return it.names.sentences['few-stepped'].format(whole=whole, body=told_body, tongue=told_tongue)


def square_of(board: Timber, far: Decimal) -> tuple[str, str, str]:
    """Return the body's and the tongue's figures for its cuts, and the common run of a step."""
    rise = board.edge[2] / ((board.edge[0] ** 2 + board.edge[1] ** 2).sqrt()) * far
    body, tongue = arms(FOOT_IN * far, FOOT_IN * rise)
    return written(body, SQUARE_PARTS), written(tongue, SQUARE_PARTS), written(body / far, SQUARE_PARTS)
