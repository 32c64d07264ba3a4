"""The boards of a roof by their marks: each in its place, its marks along the top edge, its steps and how the square is held."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from decimal import Decimal

from tablegen.proof.digits import FOOT_IN, SLACK, real, written
from tablegen.proof.roof import arms
from tablegen.proof.roof_reading import Reading
from tablegen.proof.roof_whole import Corner
from tablegen.proof.timber import Timber

SQUARE_PARTS = 16
"""Parts of an inch on a framing square."""
CORNERS, BARGES = ('hip', 'upper_hip', 'valley'), ('barge', 'upper_barge')


class Boards:
    """The board of a mark: one, or the two between which it is by how its place is printed."""

    def __init__(self, found: list[Timber], kind: str, corner: Corner | None = None):
        self.found, self.kind, self.corner = found, kind, corner

    @property
    def stock(self) -> str:
        """Return the key of what size it is."""
        return {'hip': 'stock.hips', 'upper_hip': 'stock.hips', 'valley': 'stock.valleys'}.get(
            self.kind, 'stock.rafters'
        )

    @property
    def one(self) -> Timber:
        """Return one of them, for whatever does not depend on its place."""
        return self.found[0]

    def each(self, value: Callable[[Timber], Decimal]) -> list[Decimal]:
        """Return what may be the value of each."""
        return [value(board) for board in self.found]

    @property
    def runs(self) -> list[tuple[Decimal, Decimal]]:
        """Return the level run that is stepped off in feet of common run, and how far the board goes for one inch of it."""
        found = []
        for board in self.found:
            assert board.center
            whole = board.to(board.center)
            assert whole is not None
            level = whole * board.flat
            found.append((self.corner.run, level / self.corner.run) if self.corner else (level, Decimal(1)))
        return found


def boards_of(mark: str, it: Reading, hand: str = '') -> Boards | None:
    """Return the board of a mark; None of one that stands nowhere.

    Given:
        hand  of a hip or valley, where all on a sheet are of one
    """
    kind = kind_of(mark, it)
    if kind in CORNERS:
        corners = sorted(corners_of(mark, it, hand), key=lambda one: one.hand or 0)
        return Boards([corners[0].board], kind, corners[0]) if corners else None
    if kind in BARGES:
        barges = [board for _slope, board in barges_of(mark, it)]
        return Boards(barges[:1], kind) if barges else None
    standing = sorted(it.stood.get(mark, []), key=lambda one: (one.high - one.low, one.hand))
    if not standing:
        return None
    one, depth = standing[0], it.asked.depth('stock.rafters')
    places = sorted({one.low, one.high})
    return Boards([one.slope.rafter(place, depth, kind) for place in places], kind)


def corners_of(mark: str, it: Reading, hand: str = '') -> list[Corner]:
    """Return the hips or valleys of a mark: those of its kind that are as long as the list of members says."""
    kind = [one for one in it.roof.corners if one.kind == kind_of(mark, it)]
    hands = [hand] if hand else it.names.hands if mark in it.handed else ['']
    kind = [one for one in kind if ('' if one.hand is None else it.names.hands[one.hand]) in hands] or kind
    return [one for one in kind if it.overalls.get(mark, '') in it.told(one.board.overall)] or kind


def barges_of(mark: str, it: Reading) -> list[tuple[str, Timber]]:
    """Return the barge rafters of a mark, each with the name of its slope."""
    kind = kind_of(mark, it)
    there = [(slope.name, board) for slope, what, board in it.roof.barges() if what == kind]
    return [one for one in there if it.overalls.get(mark, '') in it.told(one[1].overall)] or there


def hand_of(board: Timber, hands: Sequence[str]) -> str:
    """Return the hand of a rafter, '' where it has none: that of its head's long point, or else of its tail's."""
    half = real(board.thick) / 2
    ends = ((board.head, True, 1), (board.tail, False, -1))
    for end, upper, way in ends:
        apart = way * (board.at(end, half, upper) - board.at(end, -half, upper))
        if abs(apart) > SLACK:
            return hands[0 if apart > 0 else 1]
    return ''


def kind_of(mark: str, it: Reading) -> str:
    """Return what a mark is, '' of one that the lists have not."""
    return it.names.kinds.get(it.kinds.get(mark, ''), '')


def place_of(board: Timber, where: tuple[str, str]) -> Decimal:
    """Return where a mark is along the top edge, from the plate line."""
    end, across = where
    if end == 'plate':
        return Decimal(0)
    if end == 'heel':
        return -board.out / board.flat
    if end == 'beam':
        return (board.head.line and board.to(board.head.line)) or Decimal(0)
    upper = end == 'head'
    cut = board.head if upper else board.tail
    if across == 'tip':
        return board.reach(cut, upper)
    half = real(board.thick) / 2
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
    body, tongue = square_in(board, far)
    whole = int((run + SLACK) * far / body)
    left = run * far / body - whole
    return whole, left * body, left * tongue


def steps_between(
    board: Timber, runs: Sequence[tuple[Decimal, Decimal]]
) -> list[tuple[int, Decimal, Decimal]]:
    """Return the same of runs between some: of the least, the greatest, and on both sides of each whole step between them."""
    found = [steps_of(board, run, far) for run, far in runs]
    for whole in range(min(found)[0] + 1, max(found)[0] + 1):
        body, tongue = square_in(board, runs[0][1])
        found += [(whole - 1, body, tongue), (whole, Decimal(0), Decimal(0))]
    return found


def square_in(board: Timber, far: Decimal) -> tuple[Decimal, Decimal]:
    """Return how far level and how far up a step goes, exactly."""
    rise = board.edge[2] / ((board.edge[0] ** 2 + board.edge[1] ** 2).sqrt()) * far
    return arms(FOOT_IN * far, FOOT_IN * rise)


def few_steps(boards: Boards, it: Reading) -> list[str]:
    """Return how steps may be told in a table."""
    found, lefts = [], steps_between(boards.one, boards.runs)
    for whole in sorted({whole for whole, _body, _tongue in lefts}):
        bodies, tongues = ([one[1:][n] for one in lefts if one[0] == whole] for n in (0, 1))
        if min(bodies) < SLACK:
            found.append(str(whole))
        mark = '″' if it.asked.in_feet else ''
        for body in it.any_of(*bodies):
            for tongue in it.any_of(*tongues):
                found.append(
                    it.names.sentences['few-stepped'].format(whole=whole, body=f'{body}{mark}', tongue=tongue)
                )
    return found


def square_of(board: Timber, far: Decimal) -> tuple[str, str, str]:
    """Return the body's and the tongue's figures for its cuts, and the common run of a step."""
    body, tongue = square_in(board, far)
    return written(body, SQUARE_PARTS), written(tongue, SQUARE_PARTS), written(body / far, SQUARE_PARTS)
