"""The ends of level boards in words: what is not square, in rows and in sentences."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from typing import Protocol

from layouts.words.frame import in_rows
from layouts.words.say import N_, _
from tablegen.frame.plan import BoardEnd, EndCut, Level
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.roof.member import Hand

HEADS = N_('Ends not square'), N_('end'), N_('cut'), N_('miter'), N_('blade'), N_('long on its')
HANDS = {Hand.LEFT: N_('left'), Hand.RIGHT: N_('right'), None: ''}
BOTH = N_('both')
CUTS = {
    EndCut.OUTSIDE: N_('outside corner'),
    EndCut.INSIDE: N_('inside corner'),
    EndCut.WALL: N_('against the wall'),
    EndCut.LEVEL: N_('lower, along the eave'),
    EndCut.UP: N_('upper, straight up the roof'),
}
LONG = {
    EndCut.OUTSIDE: (N_('outer face'), N_('outer face, upper edge')),
    EndCut.INSIDE: (N_('back'), N_('back, lower edge')),
    EndCut.WALL: (N_('outer face'), N_('outer face, upper edge')),
    EndCut.LEVEL: (N_('outer edge'), N_('outer edge')),
    EndCut.UP: (N_('outer edge'), N_('outer edge')),
}
"""Where the long point is, of a board whose end has no miter and of one that has."""
SAID = {
    Level.FASCIA: N_(
        'Fascia: sawn length from long point to long point; left and right as seen from outside.'
    ),
    Level.VALLEY_BOARD: N_(
        'Valley board: flat on the sheathing, its outer edge on the line from the corner of the plates up to where both meet; '
        'sawn length along that edge.'
    ),
}
ENDS_ARE = N_(
    'Miter: on the face, from the line square across it; blade: its tilt from square. Other ends are square.'
)
LOOKOUTS = N_('Lookouts: up each rake one at its foot, then one every {spacing} along it.')
RIDGE_ENDS = (
    N_('one end cut to the sheathing, {tilt} from square'),
    N_('one end to a point, blade {tilt}'),
    N_('one end to a point, {tilt} from square: past 45°, by hand saw'),
)
SAW_SCALE_DEGREES = 45


class Told(Protocol):
    """What is told of a level board, as the frame has it and as it is answered."""

    @property
    def mark(self) -> str: ...

    @property
    def ends(self) -> tuple[BoardEnd, ...]: ...


def end_rows(boards: Iterable[Told]) -> Iterator[tuple[str, ...]]:
    """Return a row for each way that ends are sawn, under HEADS: the marks, which end, its cut, and where it is long."""
    found: dict[tuple[str, ...], dict[str, None]] = {}
    for one in boards:
        sorts: dict[tuple[str, ...], list[BoardEnd]] = {}
        for end in one.ends:
            long = _(LONG[end.cut][end.miter.count != 0])
            sorts.setdefault((_(CUTS[end.cut]), end.miter.text, end.blade.text, long), []).append(end)
        for cells, ends in sorts.items():
            words = BOTH if len(ends) > 1 else HANDS[ends[0].hand]
            found.setdefault((_(words) if words else '', *cells), {})[one.mark] = None
    return ((in_rows(marks), *cells) for cells, marks in found.items())


def board_sentences(kinds: Sequence[Level], spacing: Fraction) -> Iterator[str]:
    """Return what is said under the level boards of a roof."""
    yield from (_(words) for kind, words in SAID.items() if kind in kinds)
    if any(kind in kinds for kind in SAID):
        yield _(ENDS_ARE)
    if Level.LOOKOUT in kinds:
        yield _(LOOKOUTS).format(spacing=text.in_units(spacing))


def ridge_end(cheeks: int, tilt: Figure | None) -> str:
    """Return how the end of a ridge is sawn that is not square."""
    if tilt is None:
        return ''
    if not cheeks:
        return _(RIDGE_ENDS[0]).format(tilt=tilt.text)
    past = tilt.count > SAW_SCALE_DEGREES * tilt.per
    return _(RIDGE_ENDS[2 if past else 1]).format(tilt=tilt.text)
