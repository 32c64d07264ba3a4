"""What the readers of a roof's sheets share: the roof worked out, the words, what is found, lengths as they are told."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from decimal import Decimal
from fractions import Fraction
from math import ceil

from msgspec import Struct, field

from tablegen.proof.digits import FOOT_IN, SLACK, decimals, named, nearest, real, written
from tablegen.proof.found import Fault, Found
from tablegen.proof.roof_names import RoofNames
from tablegen.proof.roof_slopes import Slope
from tablegen.proof.roof_stated import Asked, Unstated, inches_of
from tablegen.proof.roof_whole import Roof

MINUS = '−'
MM, MM_ALONE = Fraction(254, 10), 127
"""Of an inch; a prime of what is told in millimeters and is on no tape of inches."""


class Stood(Struct):
    """A rafter where it stands, as the layout of plates has it."""

    slope: Slope
    low: Decimal
    high: Decimal
    """Between which its center is along the plate: alike where the spacing tells it."""
    hand: str
    """'' for one that has none."""


class Reading(Struct):
    """All of it."""

    asked: Asked
    roof: Roof
    names: RoofNames
    found: Found
    stood: dict[str, list[Stood]] = field(default_factory=dict)
    """By mark."""
    kinds: dict[str, str] = field(default_factory=dict)
    """What each mark is, as the list of members has it."""
    overalls: dict[str, str] = field(default_factory=dict)
    """How long each is overall, as that list has it."""
    handed: set[str] = field(default_factory=set)
    """Those that have a mate cut the other way."""
    sticks: dict[str, list[Decimal]] = field(default_factory=dict)
    """How long the pieces of each mark are that are cut from boards, as they are told; of the level boards and studs too."""
    counts: dict[str, int] = field(default_factory=dict)
    """How many the lists tell."""

    def figure(self, page: int, row: str, head: str, printed: str, *right: str) -> None:
        """Take a figure down, however its sign stands."""
        self.found.figure(page, row, head, plain(printed), *map(plain, right))

    def length(
        self, page: int, row: str, head: str, printed: str, *values: Decimal, up: bool = False
    ) -> None:
        """Take a length down: of several it may be any between them.

        Given:
            up  whether it is one that is rounded to the next part
        """
        per = self.asked.per
        low, high = (nearest(self.rounded_up(one) if up else one, per) for one in (min(values), max(values)))
        counts = (Decimal(count) / per for count in range(low, high + 1))
        self.figure(page, row, head, printed, *(told for count in counts for told in self.told(count)))

    def any_of(self, *values: Decimal) -> list[str]:
        """Return how a length in inches may be told that is between some."""
        per = self.asked.per
        counts = range(nearest(min(values), per), nearest(max(values), per) + 1)
        return [self.told(Decimal(count) / per)[0] for count in counts]

    def told(self, value: Decimal) -> list[str]:
        """Return how a length may be told, without its unit."""
        per = self.asked.per
        sign = MINUS if nearest(value, per) < 0 else ''
        size = abs(Decimal(nearest(value, per)) / per)
        return [sign + written(size, per), sign + written(size, per, True).removesuffix('″')]

    def rounded_up(self, value: Decimal) -> Decimal:
        """Return the next whole part up, so that a board is never cut short."""
        return Decimal(ceil(value * self.asked.per - SLACK)) / self.asked.per

    def degrees(self, page: int, row: str, head: str, printed: str, value: Decimal) -> None:
        """Take an angle down."""
        self.figure(page, row, head, printed, f'{decimals(value, 2)}°')

    def row(self, words: Iterable[str], between: str = 'and') -> str:
        """Return words in a row as they are told."""
        *first, last = words
        return self.names.sentences[between].format(first=', '.join(first), last=last) if first else last

    def pitches(self, told: Sequence[str]) -> str:
        """Return pitches in a row as they are told: what all are over but once."""
        over = f' in {FOOT_IN}'
        if all(one.endswith(over) for one in told):
            return self.row(one.removesuffix(over) for one in told) + over
        return self.row(told)

    def strange(self, page: int, words: str) -> None:
        """Take down what is not known."""
        self.found.strange.append((page, words))

    def missing(self, page: int, row: str) -> None:
        """Take down that a row is missing."""
        self.found.faults.append(Fault('gap', page, row, '', '', ''))


def value_of(words: str) -> Decimal | None:
    """Return the inches of a printed length; None where it is none."""
    bare = plain(words)
    try:
        size = real(inches_of(bare.removeprefix(MINUS)))
        return -size if bare.startswith(MINUS) else size
    except Unstated:
        return None


def lengths_of(words: str) -> list[Decimal]:
    """Return the inches of a printed length in a list, an empty one where it is none."""
    value = value_of(words)
    return [] if value is None else [value]


def plain(words: str) -> str:
    """Return a printed length without its unit, its sign close before it."""
    bare = words.replace(f'{MINUS} ', MINUS).strip()
    return re.sub(r' in$', '', bare).removesuffix('″')


def run_told(inches: Fraction) -> str:
    """Return a length that was given as it is told: '24 ft', '13 ft 5 1/2 in', '3 1/2 in'."""
    if inches.denominator % MM_ALONE == 0 and (inches * 10 * MM).denominator == 1:
        return f'{named(inches * MM)} mm'
    feet, rest = divmod(inches, FOOT_IN)
    words = [f'{feet} ft'] if feet else []
    if rest or not feet:
        words.append(f'{named(rest)} in')
    return ' '.join(words)


def marks_of(words: str) -> list[str]:
    """Return the marks that a row of them names: 'C, HJ1–HJ3' are four."""
    found = []
    for one in words.split(', '):
        first, dash, last = one.partition('–')
        name = first.rstrip('0123456789')
        if dash and last.startswith(name):
            found += [f'{name}{n}' for n in range(int(first[len(name) :]), int(last[len(name) :]) + 1)]
        else:
            found.append(one)
    return found


def total(words: str) -> int:
    """Return the sum of the counts that words tell: '4 left, 4 right' are eight."""
    return sum(int(one) for one in re.findall(r'(?<!\S)\d+(?!\S)', words.replace(',', ' ')))
