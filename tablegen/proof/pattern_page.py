"""A page of a pattern as it is drawn: its lines by their ink, each with the words beside it; mm, from the lower left corner."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from functools import cached_property
from itertools import combinations, pairwise
from math import atan2, degrees, hypot

from msgspec import Struct, field

from tablegen.proof.digits import FOOT_IN
from tablegen.proof.ink import Said, Spot, Stroke
from tablegen.proof.page import Page
from tablegen.proof.stated import Pitch, pitch_of

MM = 72 / 25.4
SAWN, EDGE, DATUM, JOINT = 'sawn', 'edge', 'datum', 'joint'
INK = {
    (0.45, False): SAWN,
    (0.3, False): EDGE,
    (0.3, True): EDGE,
    (0.2, True): DATUM,
    (0.15, True): JOINT,
}
"""What a line is by its width, mm, and whether it is dashed."""
BESIDE = (0.9, 4.5)
"""How far words stand from the line that they name, mm."""
TURN, NEAR, MEET_MM = 1.0, 0.03, 0.1
"""Degrees that words may be askew to it; mm, of what is drawn at one place, and of what meets on two pages."""
FIRST_PITCH = re.compile(r'(\d+ )?\d+(/\d+|\.\d+)?°?(?=$| )')
"""Of the pitches that stand side by side."""
REACH = 6.4
"""Of a register mark's cross, mm."""


class Drawn(Struct, frozen=True):
    """A line with its name."""

    ink: str
    start: Spot
    end: Spot
    words: str = ''
    pages: frozenset[int] = frozenset()
    """That it is drawn on, where they are laid together."""

    @property
    def long(self) -> float:
        return hypot(self.end[0] - self.start[0], self.end[1] - self.start[1])

    @property
    def turn(self) -> float:
        """Return its angle from across the page, 0 to under 180 degrees, against the clock."""
        return degrees(atan2(self.end[1] - self.start[1], self.end[0] - self.start[0])) % 180

    def moved(self, by: Spot, page: int = 0) -> Drawn:
        """Return it elsewhere."""
        (x, y), (u, v) = self.start, self.end
        ends = (x + by[0], y + by[1]), (u + by[0], v + by[1])
        return Drawn(self.ink, *ends, self.words, frozenset([page]))

    def off(self, point: Spot) -> tuple[float, float]:
        """Return how far a point is along it from its start, and how far from its line."""
        (x, y), (u, v) = self.start, self.end
        across, up, long = u - x, v - y, self.long
        px, py = point[0] - x, point[1] - y
        return (px * across + py * up) / long, abs(px * up - py * across) / long


class PatternPage(Struct, dict=True):
    """One page."""

    page: Page
    lines: list[Drawn] = field(default_factory=list)
    said: list[Said] = field(default_factory=list)

    @property
    def number(self) -> int:
        return self.page.number

    @property
    def words(self) -> list[str]:
        return [one.text for one in self.said]

    @cached_property
    def title(self) -> str:
        """Return what the largest of its words say."""
        return max(self.said, key=lambda one: one.size).text if self.said else ''

    @cached_property
    def facts(self) -> str:
        """Return all that stands in lines across it, from the top down."""
        level = [one for one in self.said if abs(one.end[1] - one.start[1]) < NEAR]
        return ' '.join(one.text for one in sorted(level, key=lambda one: -one.start[1]))

    def board(self, kinds: Sequence[str]) -> tuple[str, Pitch | None]:
        """Return what the board is called that it is of, and its pitch, of two the first: they stand side by side at its head.

        Given:
            kinds  what boards are called
        """
        for words in (self.title, self.facts):
            parts = re.split(r', |\. |: ', words)
            for before, part in pairwise(parts):
                first = FIRST_PITCH.match(part) if f' in {FOOT_IN}' in part or '°' in part else None
                pitch = pitch_of(first[0]) if first else None
                if pitch is not None:
                    named = [kind for kind in kinds if f' {before.lower()}'.endswith(f' {kind}')]
                    return max(named, key=len, default=''), pitch
        return '', None

    @cached_property
    def marks(self) -> dict[str, Spot]:
        """Return the middle of every register mark, by its letter."""
        arms = [one for one in self.solid if abs(one.long - REACH) < NEAR]
        middles = [
            _middle(a)
            for a, b in combinations(arms, 2)
            if hypot(*_apart(_middle(a), _middle(b))) < NEAR and abs(a.turn - b.turn) > TURN
        ]
        letters = [one for one in self.said if re.fullmatch(r'[A-Z]\d*', one.text)]
        return {
            min(letters, key=lambda one: hypot(*_apart(one.start, at))).text: at for at in middles if letters
        }

    @cached_property
    def solid(self) -> list[Drawn]:
        """Return its thin lines that are not dashed: bars, ticks, marks."""
        return [
            Drawn('', *_ends(one))
            for one in self.page.ink.strokes
            if len(one.points) == 2 and not one.dashed and abs(one.width / MM - 0.2) < NEAR
        ]


def pattern_page(page: Page) -> PatternPage:
    """Return a page with its lines, each with the words beside it."""
    said = [
        Said(
            one.text,
            (one.start[0] / MM, one.start[1] / MM),
            (one.end[0] / MM, one.end[1] / MM),
            one.size / MM,
        )
        for one in page.ink.said
    ]
    lines = [line for stroke in page.ink.strokes if (line := _drawn(stroke)) is not None]
    return PatternPage(page, [_named(line, said) for line in lines], said)


def _drawn(stroke: Stroke) -> Drawn | None:
    if len(stroke.points) != 2:
        return None
    for (width, dashed), ink in INK.items():
        if stroke.dashed is dashed and abs(stroke.width / MM - width) < NEAR:
            return Drawn(ink, *_ends(stroke))
    return None


def _ends(stroke: Stroke) -> tuple[Spot, Spot]:
    (x, y), (u, v) = stroke.points
    return (x / MM, y / MM), (u / MM, v / MM)


def _named(line: Drawn, said: list[Said]) -> Drawn:
    beside = []
    for one in said:
        turn = degrees(atan2(one.end[1] - one.start[1], one.end[0] - one.start[0])) % 180
        askew = abs(turn - line.turn)
        along, off = line.off(one.middle) if line.long else (0.0, 0.0)
        if min(askew, 180 - askew) < TURN and 0 < along < line.long and BESIDE[0] < off < BESIDE[1]:
            beside.append((off, one.text))
    return Drawn(line.ink, line.start, line.end, min(beside)[1] if beside else '')


def _middle(line: Drawn) -> Spot:
    return (line.start[0] + line.end[0]) / 2, (line.start[1] + line.end[1]) / 2


def _apart(one: Spot, other: Spot) -> Spot:
    return one[0] - other[0], one[1] - other[1]


# Pages laid together ----------------------------------------------------------------------------------------


class Piece(Struct, dict=True):
    """Pages laid mark on mark."""

    pages: list[tuple[PatternPage, Spot]]
    """Each with where its corner then lies."""

    @cached_property
    def lines(self) -> list[Drawn]:
        """Return all lines, what goes on over a joint as one."""
        found: list[Drawn] = []
        for page, by in self.pages:
            for line in page.lines:
                if line.ink != JOINT:
                    _join(found, line.moved(by, page.number))
        return found


def _join(found: list[Drawn], line: Drawn) -> None:
    """Add a line, or make one of another page longer that it lies on."""
    for place, other in enumerate(found):
        if other.ink != line.ink or not other.long or other.pages & line.pages:
            continue
        ends = [other.off(line.start), other.off(line.end)]
        if max(off for _along, off in ends) > NEAR * 2:
            continue
        reach = sorted(along for along, _off in ends)
        if reach[0] < other.long + NEAR and reach[1] > -NEAR:
            points = sorted((other.start, other.end, line.start, line.end), key=lambda one: other.off(one)[0])
            pages = other.pages | line.pages
            found[place] = Drawn(other.ink, points[0], points[-1], other.words or line.words, pages)
            return
    found.append(line)


def pieces_of(pages: list[PatternPage]) -> Iterator[Piece]:
    """Yield the pieces: pages that have marks in common, in the order of their first pages."""
    left = list(pages)
    while left:
        piece = [(left.pop(0), (0.0, 0.0))]
        while True:
            found = next(((page, by) for page in left if (by := _shift(page, piece)) is not None), None)
            if found is None:
                break
            left.remove(found[0])
            piece.append(found)
        yield Piece(sorted(piece, key=lambda one: one[0].number))


def _shift(page: PatternPage, piece: list[tuple[PatternPage, Spot]]) -> Spot | None:
    for other, by in piece:
        for letter, at in shared(page.marks, other.marks):
            there = other.marks[letter]
            return by[0] + there[0] - at[0], by[1] + there[1] - at[1]
    return None


def shared(one: Mapping[str, Spot], other: Mapping[str, Spot]) -> list[tuple[str, Spot]]:
    """Return the marks of one page that another has too."""
    return [(letter, at) for letter, at in sorted(one.items()) if letter in other]
