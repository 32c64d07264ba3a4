"""Reading a pattern back from its finished PDF: lines of ink in mm, by the operators of every page, and pages joined by their marks."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cached_property
from itertools import combinations
from math import hypot
from pathlib import Path

from msgspec import Struct
from msgspec.structs import replace
from oracle.boards import LEFT, RIGHT, TOP
from printed_words import MM, Word, words_of
from pypdf import PageObject, PdfReader

Point = tuple[float, float]
WHOLE = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)
SAWN = 0.45
"""Width of what is sawn, mm."""
TRUE = 0.05
"""Millimeters that ink may be off."""
INCH = 25.4
REACH = 6.4
"""Of a register mark's cross, mm."""


class Ink(Struct, frozen=True):
    """A straight line, mm from the upper left corner of its page; its ends from above, or from the left."""

    a: Point
    b: Point
    width: float
    dashed: bool

    @property
    def long(self) -> float:
        return hypot(self.b[0] - self.a[0], self.b[1] - self.a[1])

    @property
    def middle(self) -> Point:
        return (self.a[0] + self.b[0]) / 2, (self.a[1] + self.b[1]) / 2

    def moved(self, by: Point) -> Ink:
        return replace(self, a=_sum(self.a, by), b=_sum(self.b, by))


class Page(Struct, frozen=True, dict=True):
    """One page."""

    wide: float
    high: float
    inks: tuple[Ink, ...]
    words: tuple[Word, ...]

    @property
    def said(self) -> str:
        return ' '.join(word.text for word in self.words)

    @cached_property
    def marks(self) -> dict[str, Point]:
        """Return the middle of every register mark by its letter."""
        arms = [ink for ink in self.inks if abs(ink.long - REACH) < 0.02]
        crosses = [a.middle for a, b in combinations(arms, 2) if away(a.middle, b.middle) < 0.02]
        letters = [word for word in self.words if re.fullmatch(r'[A-Z]\d*', word.text)]
        return {min(letters, key=lambda one: away((one.left, one.base), at)).text: at for at in crosses}


def away(a: Point, b: Point) -> float:
    return hypot(a[0] - b[0], a[1] - b[1])


def _sum(a: Point, b: Point) -> Point:
    return a[0] + b[0], a[1] + b[1]


def pages_of(pdf: Path) -> list[Page]:
    """Return every page of a pattern."""
    reader = PdfReader(pdf)
    return [
        Page(float(page.mediabox.width) / MM, float(page.mediabox.height) / MM, tuple(_inks(page)), tuple(words))
        for page, words in zip(reader.pages, words_of(pdf), strict=True)
    ]  # fmt: skip


def _operations(page: PageObject) -> Iterator[tuple[list[str], str]]:
    """Return every operator of a page with what stands before it: strings are written in hexadecimal, so blanks part all."""
    operands: list[str] = []
    for word in page.get_contents().get_data().decode('latin-1').split():
        if word[0].isalpha():
            yield operands, word
            operands = []
        else:
            operands.append(word)


def _inks(page: PageObject) -> list[Ink]:
    """Return what is stroked: the state of a page's drawing is followed as ISO 32000-1, 8.4, has it."""
    found, kept, path = [], [], []
    at, width, dashed = WHOLE, 1.0, False
    high = float(page.mediabox.height)
    for operands, operator in _operations(page):
        match operator:
            case 'q':
                kept.append((at, width, dashed))
            case 'Q':
                at, width, dashed = kept.pop()
            case 'cm':
                at = _times(tuple(map(float, operands)), at)
            case 'w':
                width = float(operands[0])
            case 'd':
                dashed = operands[0] != '[]'
            case 'm':
                path = [[_placed(at, operands)]]
            case 'l':
                path[-1].append(_placed(at, operands))
            case 'S' | 'B':
                scale = hypot(at[0], at[1]) / MM
                for points in path:
                    ends = [(x / MM, (high - y) / MM) for x, y in points]
                    if len(ends) == 2:
                        a, b = sorted(ends, key=lambda one: (round(one[1], 2), one[0]))
                        found.append(Ink(a, b, round(width * scale, 3), dashed))
                path = []
            case 'f' | 'n':
                path = []
    return found


def _times(a: tuple[float, ...], b: tuple[float, ...]) -> tuple[float, ...]:
    return (
        a[0] * b[0] + a[1] * b[2], a[0] * b[1] + a[1] * b[3], a[2] * b[0] + a[3] * b[2], a[2] * b[1] + a[3] * b[3],
        a[4] * b[0] + a[5] * b[2] + b[4], a[4] * b[1] + a[5] * b[3] + b[5],
    )  # fmt: skip


def _placed(at: tuple[float, ...], operands: list) -> Point:
    x, y = (float(one) for one in operands[:2])
    return x * at[0] + y * at[2] + at[4], x * at[1] + y * at[3] + at[5]


def joined(pages: list[Page]) -> list[list[Ink]]:
    """Return the ink of every piece whose pages are laid mark on mark; both marks of a joint must meet."""
    pieces: list[list[tuple[Page, Point]]] = []
    for page in pages:
        shifts = [
            (piece, _sum(by, (other.marks[letter][0] - at[0], other.marks[letter][1] - at[1])))
            for piece in pieces[-1:]
            for other, by in piece
            for letter, at in page.marks.items()
            if letter in other.marks
        ]
        if shifts:
            assert all(away(by, shifts[0][1]) < 0.02 for _piece, by in shifts)
            assert len(shifts) >= 2
            shifts[0][0].append((page, shifts[0][1]))
        else:
            pieces.append([(page, (0.0, 0.0))])
    return [[ink.moved(by) for page, by in piece for ink in page.inks] for piece in pieces]


def flat(lines, thick, wrapped):
    """Return lines on faces, in, as they lie where the strip is flat, mm: down from the left side's top edge."""
    down = {
        LEFT: lambda across: across,
        TOP: lambda across: -across,
        RIGHT: lambda across: -thick - across,
    }
    return [
        tuple((along_ * INCH, down[face](across) * INCH) for along_, across in ends)
        for face, *ends in lines
        if wrapped or face == LEFT
    ]


def off_by(wanted, inks):
    """Return how far what is sawn is off the lines that are wanted, wherever on the paper they lie, mm."""
    return min(worst(wanted, *one) for one in laid_on(wanted, inks))


def laid_on(wanted, inks):
    """Return what is sawn with every way that the wanted lines may lie on the paper."""
    drawn = [ink for ink in inks if ink.width == SAWN]
    at_a_corner = min(wanted[0])
    for ink in drawn:
        for end in (ink.a, ink.b):
            yield drawn, (end[0] - float(at_a_corner[0]), end[1] - float(at_a_corner[1]))


def datums_off(wanted, others, inks):
    """Return how far lines that nothing is sawn along are off the ink, the wanted ones lying where they fit best."""
    _drawn, by = min(laid_on(wanted, inks), key=lambda one: worst(wanted, *one))
    drawn = [ink for ink in inks if ink.dashed or ink.width == SAWN]  # one may be the cut itself
    points = [_sum(tuple(map(float, point)), by) for line in others for point in line]
    return max((min(beside(point, ink.a, ink.b) for ink in drawn) for point in points), default=0.0)


def worst(wanted, drawn, shift):
    """Return how far off the ends of lines are, or ink that is on none of them, where the paper lies so."""
    lines = [tuple((float(x) + shift[0], float(y) + shift[1]) for x, y in line) for line in wanted]
    ends = [end for ink in drawn for end in (ink.a, ink.b)]
    off = [min(away(point, end) for end in ends) for line in lines for point in line]
    return max(off + [min(beside(end, *line) for line in lines) for end in ends])


def beside(point, a, b):
    """Return how far a point is from a stretch of line."""
    long = away(a, b)
    share = ((point[0] - a[0]) * (b[0] - a[0]) + (point[1] - a[1]) * (b[1] - a[1])) / long**2
    share = min(1.0, max(0.0, share))
    return away(point, (a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])))
