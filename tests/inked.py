"""What a drawing says by its ink: each dimension with its two ends and its word, each pointer with its word and tip.

Read from the image as it stands on the page, with no help from the code that drew it. A dimension is an arrow with a
head at either end, or two arrows that point at one another across what they measure; its word is the one that a plain
line joins to it, else the nearest. A pointer is an arrow with one head; its word stands at its tail.
"""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from functools import cached_property
from itertools import combinations, pairwise
from math import cos, radians, sin
from urllib.parse import unquote

from drawn import (
    SVG,
    TOUCH,
    Drawn,
    Point,
    Stroke,
    alike,
    crossing,
    direction,
    distance,
    from_line,
    inside,
    may_touch,
    near,
    read,
    to_stretch,
)
from font_measures import advance_em, box_em
from msgspec import Struct

from layouts.html.page_html import pages_html

BESIDE = 8.0
"""Units: how far from its arrow a word may stand."""
WIDTH = 100
"""Of the letters: a drawing's words are set in the typeface as it is."""


class NotDrawn(LookupError):
    """What the drawing does not say, or says twice."""


class Label(Struct, frozen=True):
    """Words on a drawing."""

    text: str
    at: Point
    size: float
    anchor: str
    weight: int
    turn: float
    """Degrees anticlockwise."""
    on_black: bool

    def corners(self) -> list[Point]:
        """Return the corners of the box that its ink fills, one after the other."""
        inks = [box_em(letter, WIDTH, self.weight) for letter in self.text if letter != ' ']
        long = advance_em(self.text, WIDTH, self.weight) * self.size
        start = {'start': 0.0, 'middle': -long / 2, 'end': -long}[self.anchor]
        foot, top = (edge(ink[side] for ink in inks) * self.size for edge, side in ((min, 1), (max, 3)))
        c, s = cos(radians(self.turn)), sin(radians(self.turn))
        return [
            (self.at[0] + x * c - y * s, self.at[1] - x * s - y * c)
            for x, y in ((start, foot), (start + long, foot), (start + long, top), (start, top))
        ]

    def away(self, a: Point, b: Point) -> float:
        """Return how far a stretch of line is from the box, 0 where it runs into it."""
        box = self.corners()
        sides = list(zip(box, box[1:] + box[:1], strict=True))
        if any(crossing(a, b, *side) for side in sides) or inside(a, box):
            return 0.0
        return min(
            [to_stretch(corner, a, b) for corner in box]
            + [to_stretch(end, *side) for end in (a, b) for side in sides]
        )


class Arrow(Struct, frozen=True):
    """A line with a head at its end, and where both is true at its start."""

    start: Point
    end: Point
    both: bool


class Dimension(Struct, frozen=True):
    """What an arrow spans, left or upper end first, and the word at it."""

    ends: tuple[Point, Point]
    word: str

    @property
    def length(self) -> float:
        return distance(*self.ends)

    @property
    def direction(self) -> float:
        return direction(*self.ends)


class Inked(Struct, frozen=True, dict=True):
    """One drawing."""

    drawn: Drawn
    labels: tuple[Label, ...]

    @cached_property
    def arrows(self) -> tuple[Arrow, ...]:
        """Return every arrow; a head that sits on no line, or on several, is an error."""
        lines = [stroke.points for stroke in self.drawn.strokes if len(stroke.points) == 2]
        found: dict[tuple[Point, ...], Arrow] = {}
        for tip, *sides, _ in self._heads():
            back = tuple(sum(pair) / 2 for pair in zip(*sides, strict=True))
            on = {
                frozenset(line): (line[1 - end], line[end])
                for line in lines
                for end in (0, 1)
                if distance(line[end], tip) < TOUCH and alike(line[1 - end], line[end], back, tip)
            }
            if not on and self._turned(tip):
                continue
            if len(on) != 1:
                raise NotDrawn(f'{len(on)} lines end in the head at {tip}')
            ((key, (start, end)),) = on.items()
            found[key] = Arrow(start, end, key in found)
        return tuple(found.values())

    @cached_property
    def angles(self) -> tuple[tuple[str, tuple[Point, ...]], ...]:
        """Return the word at every arc with a head at its end or start, and the arc's points."""
        tips = [head[0] for head in self._heads()]
        arcs = [arc for tip in tips if (arc := self._turned(tip))]
        return tuple(
            (min((to_path(label, arc), label.text) for label in self.labels)[1], arc) for arc in arcs
        )

    def angle(self, word: str) -> tuple[Point, ...]:
        """Return the points of the one arc at which a word stands."""
        return self._only([arc for said, arc in self.angles if said == word], word)

    def _turned(self, tip: Point) -> tuple[Point, ...] | None:
        """Return the arc that ends or begins in a head."""
        for stroke in self.drawn.strokes:
            ends = (stroke.points[0], stroke.points[-1])
            if (
                len(stroke.points) > 3
                and stroke.fill == 'none'
                and any(distance(end, tip) < TOUCH for end in ends)
            ):
                return stroke.points
        return None

    def _heads(self) -> list[tuple[Point, ...]]:
        strokes = self.drawn.strokes
        return [s.points for s in strokes if s.fill == '#000' and not s.width and len(s.points) == 4]

    @cached_property
    def _pinches(self) -> tuple[tuple[Arrow, Arrow], ...]:
        """Return pairs of arrows on one line that point at one another across a gap."""
        single = [arrow for arrow in self.arrows if not arrow.both]
        return tuple(
            (a, b)
            for a, b in combinations(single, 2)
            if distance(a.start, b.start) > distance(a.end, b.end) > TOUCH
            and from_line(b.start, a.start, a.end) < 0.1
            and from_line(b.end, a.start, a.end) < 0.1
            and distance(a.start, b.end) > distance(a.start, a.end)
            and distance(b.start, a.end) > distance(b.start, b.end)
        )

    @cached_property
    def dimensions(self) -> tuple[Dimension, ...]:
        """Return every dimension."""
        found = [(a.start, a.end, self._word_of(a.start, a.end)) for a in self.arrows if a.both]
        for a, b in self._pinches:
            found.append((a.end, b.end, self._nearest(a.start, b.start)[1]))
        return tuple(Dimension(tuple(sorted((a, b))), word) for a, b, word in found)

    @cached_property
    def pointers(self) -> tuple[tuple[str, Point], ...]:
        """Return the word at the tail, '' where there is none, and the tip of every pointer."""
        pinched = {arrow for pair in self._pinches for arrow in pair}
        single = [arrow for arrow in self.arrows if not arrow.both and arrow not in pinched]
        ranked = [
            min((label.away(one.start, one.start), label.text) for label in self.labels) for one in single
        ]
        return tuple(
            (word if away <= BESIDE else '', one.end)
            for (away, word), one in zip(ranked, single, strict=True)
        )

    def dimension(self, word: str) -> Dimension:
        """Return the one dimension at which a word stands."""
        return self._only([one for one in self.dimensions if one.word == word], word)

    def pointed(self, word: str) -> Point:
        """Return where the one pointer of a word ends."""
        return self._only([tip for said, tip in self.pointers if said == word], word)

    def label(self, word: str) -> Label:
        """Return the one label that says so."""
        return self._only([one for one in self.labels if one.text == word], word)

    def _only(self, found: list, word: str):
        if len(found) != 1:
            raise NotDrawn(f'"{word}" {len(found)} times; words: {[one.text for one in self.labels]}')
        return found[0]

    def _nearest(self, a: Point, b: Point) -> tuple[float, str]:
        ranked = sorted((label.away(a, b), label.text) for label in self.labels)
        if ranked[0][0] > BESIDE:
            raise NotDrawn(f'no word within {BESIDE} of the arrow from {a} to {b}')
        return ranked[0]

    def _word_of(self, a: Point, b: Point) -> str:
        """Return the word that a plain line joins to a dimension, else the nearest."""
        for stroke in self.drawn.strokes:
            if len(stroke.points) != 2 or stroke.dashed or set(stroke.points) == {a, b}:
                continue
            for tip, tail in (stroke.points, stroke.points[::-1]):
                within = to_stretch(tip, a, b) < 0.1 and min(distance(tip, a), distance(tip, b)) > 1
                joined = (label.text for label in self.labels if label.away(tail, tail) < 3)
                if within and (word := next(joined, '')):
                    return word
        return self._nearest(a, b)[1]

    def collisions(self) -> list[str]:
        """Return words that lie on one another, that a line runs through, or that leave the frame."""
        found, boxed = [], [(label, label.corners()) for label in self.labels]
        for (a, around), (b, box) in combinations(boxed, 2):
            sides = zip(box, box[1:] + box[:1], strict=True) if may_touch(around, box) else ()
            if any(a.away(*side) < TOUCH for side in sides):
                found.append(f'"{a.text}" on "{b.text}"')
        for label, box in boxed:
            if not all(-0.5 <= x <= self.drawn.width + 0.5 for x, _ in box) or not all(
                -0.5 <= y <= self.drawn.height + 0.5 for _, y in box
            ):
                found.append(f'"{label.text}" out of the frame')
            found += [
                f'a line through "{label.text}"'
                for stroke in self.drawn.strokes
                for a, b in pairwise(stroke.points)
                if not hidden(stroke)
                and not label.on_black
                and may_touch(box, (a, b))
                and label.away(a, b) == 0
            ]
        return found


def hidden(stroke: Stroke) -> bool:
    """Return whether a shape is there to wipe away only."""
    return not stroke.width and stroke.fill == '#fff'


def inked(markup: str) -> Inked:
    """Return what a drawing says."""
    root = ET.fromstring(unquote(re.search(r'data:image/svg\+xml,([^"]*)"', markup)[1]))
    return Inked(read(markup), tuple(_label(node) for node in root.iter(f'{SVG}text')))


def drawings_on(page) -> list[Inked]:
    """Return every drawing of a page, as its HTML has it."""
    return [inked(image) for image in re.findall(r'<img class="drawing[^>]*>', pages_html([page], ''))]


def _label(node: ET.Element) -> Label:
    turned = re.match(r'rotate\((\S+) (\S+) (\S+)\)', node.get('transform', ''))
    at = float(node.get('x')), float(node.get('y'))
    assert not turned or (near(float(turned[2]), at[0]) and near(float(turned[3]), at[1]))
    return Label(
        node.text,
        at,
        float(node.get('font-size')),
        node.get('text-anchor'),
        int(node.get('font-weight')),
        -float(turned[1]) if turned else 0.0,
        node.get('fill') == '#fff',
    )


def to_path(label: Label, points: tuple[Point, ...]) -> float:
    """Return how far a label is from a line through points."""
    return min(label.away(a, b) for a, b in pairwise(points))
