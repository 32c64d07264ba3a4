"""What the pages of a worked example have said of its roof, and how a book tells what follows from it."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import ROUND_CEILING, Decimal
from fractions import Fraction

from msgspec import Struct, field

from tablegen.proof.digits import SLACK, decimals, named, nearest, real, written
from tablegen.proof.roof import ANY_BOARDS, Boards
from tablegen.proof.roof_reading import run_told
from tablegen.proof.stated import Pitch, Stated

PLACES = 3
"""Decimals of what is told in thousandths."""
GAMBREL = 'gambrel'


class Roof(Struct):
    """What the pages of an example have said of the roof so far."""

    book: Stated
    kind: str
    pitches: dict[str, Pitch] = field(default_factory=dict)
    """By 'pitch', 'a-pitch' and 'b-pitch'."""
    given: dict[str, Fraction] = field(default_factory=dict)
    """Runs, overhang, thicknesses, in."""
    stop: str = ''
    """What a hip meets, 'commons' or the ridge; 'gambrel' of two slopes that meet at a purlin."""
    words: dict[str, str] = field(default_factory=dict)
    """What rafters are called."""
    jacks: tuple[str, ...] = ()
    """What the jacks of the table are called, from the shortest: numbers from the corner, or marks of a cut list."""

    summed: dict[str, Decimal] = field(default_factory=dict)
    """What is read and added, by what it is of."""

    @property
    def boards(self) -> Boards:
        """Return the book's."""
        return self.book.boards or ANY_BOARDS

    def settle(self) -> None:
        """Work out what follows from what is given."""
        it = self.given
        if self.kind == 'slopes':
            self._settle_slopes()
            return
        if 'run' not in it and 'width' in it:
            it['run'] = it['width'] / 2
        if 'overhang' not in it and {'whole-run', 'run'} <= set(it):
            it['overhang'] = it['whole-run'] - it['run']
        if {'run', 'overhang'} <= set(it):
            it.setdefault('whole-run', it['run'] + it['overhang'])
        if self.jacks and self.jacks[-1].isdigit() and 'spacing' in it:
            it['last-run'] = station(self, self.jacks[-1])

    def _settle_slopes(self) -> None:
        it = self.given
        if 'width' in it and len(self.pitches) > 1 and (self.stop != GAMBREL or 'a-run' in it):
            for name, run in zip(('a-run', 'b-run'), runs_of(self), strict=True):
                it[name] = Fraction(run)
            it['half-width'] = it['width'] / 2


class Form:
    """How a book tells lengths."""

    def __init__(self, book: Stated):
        self.per, self.in_feet = book.per, book.in_feet

    def length(self, value: Decimal, up: bool = False) -> tuple[str, ...]:
        """Return a length as it may be told, without its unit."""
        if up:
            value = ((value * self.per - SLACK).to_integral_value(ROUND_CEILING)) / self.per
        sign = '−' if nearest(value, self.per) < 0 else ''
        size = abs(Decimal(nearest(value, self.per)) / self.per)
        inches = written(size, self.per)
        found = [sign + inches]
        return (
            (*found, f'{sign}{inches}″', sign + written(size, self.per, True))
            if self.in_feet
            else tuple(found)
        )

    def off(self, value: Decimal) -> tuple[str, ...]:
        """Return how far something is off, with its way, to thousandths."""
        told = f'{"−+"[value > 0]}{decimals(abs(value), PLACES)}' if nearest(abs(value), 10**PLACES) else '0'
        return told, f'{told} in'


def angle(value: Decimal) -> tuple[str, ...]:
    """Return an angle as it is told."""
    return (f'{decimals(value, 2)}°',)


def station(roof: Roof, name: str) -> Fraction:
    """Return how far from the corner a jack stands: by its number, or back from the last, whose run is told."""
    space, last = roof.given['spacing'], roof.given.get('last-run')
    first = roof.given.get('first-space', space)
    if name.isdigit():
        return first + (int(name) - 1) * space
    at = roof.jacks.index(name)
    return first + at * space if last is None else last - (len(roof.jacks) - 1 - at) * space


def runs_of(roof: Roof) -> tuple[Decimal, Decimal]:
    """Return both level runs: to where the planes meet, or to the purlin and on to the ridge."""
    width, (low, high) = roof.given['width'], (roof.pitches[name].slope for name in ('a-pitch', 'b-pitch'))
    if roof.stop == GAMBREL:
        run = real(roof.given['a-run'])
        return run, real(width) / 2 - run
    run = real(width) * high / (low + high)
    return run, real(width) - run


def stated_sizes(book: Stated) -> Mapping[str, tuple[str, ...]]:
    """Return what pages say of the book's own boards."""
    boards = book.boards
    if not boards:
        return {}
    thick = {
        'ridge': boards.ridge,
        'hip': boards.hip,
        'valley': boards.hip,
        'rafter': boards.rafter,
        'seat': boards.seat,
    }
    told = {name: (named(value), f'{named(value)} in', run_told(value)) for name, value in thick.items()}
    return told | {
        'rafters': (boards.rafters,),
        'hips': (boards.hips,),
        'valleys': (boards.valleys,),
        'stock': (boards.hips, boards.valleys),
    }
