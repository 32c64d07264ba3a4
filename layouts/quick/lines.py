"""Lines of words: what stands in a block one after another, broken where it has to be."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from functools import cache

from layouts.quick.looks import Look
from layouts.quick.refusal import NotPlain
from layouts.quick.tree import Element
from layouts.quick.words import UNITS

BLANKS = re.compile('[ \t\n]+')
Wide = Callable[[Look, str], int]
"""How far words advance in a look, in units."""


@dataclass(slots=True)
class Words:
    """A stretch of one look."""

    text: str
    look: Look
    above: float
    """How far the boxes around it reach over the base line, and below it; px."""
    below: float
    whole: int
    """Of which element that is not broken it is a part; 0 for none."""
    link: int
    """Of which link it is a part; 0 for none."""


@dataclass(slots=True)
class Space:
    """What an element's padding takes in a line."""

    width: float
    opens: bool


@dataclass(slots=True)
class Line:
    """A line as it stands: words and spaces from the left."""

    above: float
    below: float
    width: float = 0
    parts: list[tuple[float, Words, str]] = field(default_factory=list)
    """Where they begin, units from the line's own beginning; the words, and what of them stands here."""


@dataclass(slots=True)
class Links:
    """The links of some lines, and how they look."""

    led: list[tuple[Element, Look]] = field(default_factory=list)


def inlines(
    within: Sequence[Element | str],
    look: Look,
    looks: dict[Element, tuple[Look, dict[str, float]]],
    links: Links,
) -> list[Words | Space]:
    """Return what stands in a block's lines, in order."""
    told: list[Words | Space] = []
    wholes = [0]

    def add(
        some: Sequence[Element | str], look: Look, above: float, below: float, whole: int, link: int
    ) -> None:
        for one in some:
            if isinstance(one, str):
                told.append(Words(one, look, above, below, whole, link))
            elif one.tag == 'br':
                told.append(Words('\n', look, above, below, -1, link))
            else:
                own, placed = looks[one]
                _refuse_odd(one, own, placed)
                part_of = whole
                if own.white_space != look.white_space:
                    if own.white_space != 'nowrap' or whole:
                        raise NotPlain(f'white-space_{own.white_space}')
                    wholes[0] += 1
                    part_of = wholes[0]
                led = link
                if one.tag == 'a':
                    links.led.append((one, own))
                    led = len(links.led)
                left, right = (own.padding[side] * UNITS for side in (3, 1))
                if left:
                    told.append(Space(left, True))
                inner = max(above, own.baseline), max(below, own.height - own.baseline)
                add(one.within, own, *inner, part_of, led)
                if right:
                    told.append(Space(right, False))

    add(within, look, look.baseline, look.height - look.baseline, 0, 0)
    return told


def _refuse_odd(one: Element, look: Look, placed: dict[str, float]) -> None:
    if look.display != ('inline', 'flow') or look.position != 'static' or one.tag == 'img':
        raise NotPlain(f'{one.tag}_in_a_line')
    if placed or any(look.margin) or any(look.border) or look.vertical_align != 'baseline':
        raise NotPlain(f'space_around_{one.tag}_in_a_line')
    if look.background.alpha:
        raise NotPlain('a_ground_in_a_line')


def kept_lines(told: Sequence[Words | Space], look: Look, wide: Wide) -> list[Line]:
    """Return the lines of preformatted words, as they are."""
    lines = [Line(look.baseline, look.height - look.baseline)]
    for one in told:
        if isinstance(one, Space):
            raise NotPlain('space_in_preformatted_words')
        for place, text in enumerate(one.text.split('\n')):
            if place:
                lines.append(Line(look.baseline, look.height - look.baseline))
            if text:
                line = lines[-1]
                if '\t' in text:
                    line.width = _after_tabs(line.width, one.look, text, wide, line, one)
                else:
                    line.parts.append((line.width, one, text))
                    line.width += wide(one.look, text)
                line.above, line.below = max(line.above, one.above), max(line.below, one.below)
    if not lines[-1].parts:
        lines.pop()
    return lines


def _after_tabs(at: float, look: Look, text: str, wide: Wide, line: Line, one: Words) -> float:
    """Add words with tabs in them, whose stops are counted from their own beginning, and return where they end."""
    if not look.tab:
        raise NotPlain('tab')
    line.parts.append((at, one, text))
    end = 0
    for place, cell in enumerate(text.split('\t')):
        if place:
            end = (end // look.tab + 1) * look.tab
        end += wide(look, cell)
    return at + end


def broken_lines(
    told: Sequence[Words | Space], look: Look, room: float, wide: Wide, language: str
) -> list[Line]:
    """Return lines of words, broken where the room, px, ends."""
    flow = _Flow(told, wide)
    lines = []
    for start, stop in flow.bounds(
        int(room * UNITS), round((look.indent or 0) * UNITS), language, look.white_space == 'nowrap'
    ):
        lines.append(flow.line(start, stop, look, round((look.indent or 0) * UNITS) if start == 0 else 0))
    return lines


def least_width(told: Sequence[Words | Space], wide: Wide, language: str) -> float:
    """Return the width, in units, of the widest of some words where each stretch is broken wherever it may be.

    Notes:
        1. As the typesetter counts it: a stretch by itself, and after it where a letter would begin another line.
    """
    flow = _Flow(told, wide)
    widest = here = sum(space.width for _at, space in flow.spaces)
    for first, last, one in flow.spans:
        text, start = flow.text[first:last], 0
        if one.look.white_space == 'nowrap' and one.whole != -1:
            here += wide(one.look, text)
            continue
        for stop in _may_break(text + 'a', language) if one.whole != -1 else (1,):
            here += wide(one.look, text[start:stop].rstrip(' \n'))
            widest, here, start = max(widest, here), 0.0, stop
        here += wide(one.look, text[start:])
    return max(widest, here)


class _Flow:
    """Words put together, blanks made one, so that breaks are found in their whole text."""

    def __init__(self, told: Sequence[Words | Space], wide: Wide):
        self.wide = wide
        self.spans: list[tuple[int, int, Words]] = []
        self.spaces: list[tuple[int, Space]] = []
        pieces: list[str] = []
        at = 0
        for one in told:
            if isinstance(one, Space):
                self.spaces.append((at, one))
                continue
            text = '\n' if one.whole == -1 else BLANKS.sub(' ', one.text)
            if text[:1] == ' ' and (not pieces or pieces[-1][-1] in ' \n'):
                text = text[1:]
            if text:
                self.spans.append((at, at + len(text), one))
                pieces.append(text)
                at += len(text)
        self.text = ''.join(pieces)

    def width(self, start: int, stop: int) -> float:
        """Return how far a part of the text advances."""
        total = 0.0
        for first, last, one in self.spans:
            if first < stop and last > start:
                total += self.wide(one.look, self.text[max(first, start) : min(last, stop)].strip('\n'))
        for at, space in self.spaces:
            if start <= at < stop if space.opens else start < at <= stop:
                total += space.width
        return total

    def bounds(self, room: int, indent: int, language: str, whole: bool) -> Iterator[tuple[int, int]]:
        """Return where lines begin and end, blanks at their ends left out."""
        text = self.text
        start = last = 0
        taken: float = indent
        for stop in [*self._breaks(language, whole), len(text)]:
            piece = text[last:stop]
            if not piece.strip(' \n') and piece != '\n':
                last = stop
                continue
            bare = last + len(piece.rstrip(' \n'))
            need = self.width(last, bare)
            if taken + need > room and last > start and text[start:last].strip():
                yield start, self._end(start, last)
                start, taken = last, 0
            if taken + need > room and not whole:
                raise NotPlain('a_word_wider_than_its_room')
            taken += self.width(last, stop) if bare != stop else need
            last = stop
            if piece.endswith('\n'):
                yield start, self._end(start, stop - 1)
                start, taken = stop, 0
        if text[start:].strip():
            yield start, self._end(start, len(text))

    def _end(self, start: int, stop: int) -> int:
        return start + len(self.text[start:stop].rstrip(' \n'))

    def _breaks(self, language: str, whole: bool) -> list[int]:
        """Return where the text may be broken, and where it must."""
        if whole:
            return [place + 1 for place, letter in enumerate(self.text) if letter == '\n']
        wholes = [0] * len(self.text)
        for first, last, one in self.spans:
            if one.whole > 0:
                wholes[first:last] = [one.whole] * (last - first)
        return [
            at for at in _may_break(self.text, language) if not wholes[at] or wholes[at] != wholes[at - 1]
        ]

    def line(self, start: int, stop: int, look: Look, indent: int) -> Line:
        """Return the line from one place of the text to another."""
        made = Line(look.baseline, look.height - look.baseline, indent)
        spaces = [
            (at, space)
            for at, space in self.spaces
            if (start <= at < stop if space.opens else start < at <= stop)
        ]
        for first, last, one in self.spans:
            if first >= stop or last <= start:
                continue
            begins = max(first, start)
            while spaces and spaces[0][0] <= begins:
                made.width += spaces.pop(0)[1].width
            words = self.text[begins : min(last, stop)]
            # Blanks that end a stretch are drawn where the line ends with it, as the typesetter does.
            left = self.text[stop:last].strip('\n')
            made.parts.append((made.width, one, words + left if last > stop and not left.strip() else words))
            made.width += self.wide(one.look, words)
            made.above, made.below = max(made.above, one.above), max(made.below, one.below)
        made.width += sum(space.width for _at, space in spaces)
        return made


@cache
def _may_break(text: str, language: str) -> list[int]:
    from weasyprint.text.line_break import get_log_attrs

    told = get_log_attrs(text, language)
    return [place for place in range(1, len(text)) if told[place].is_line_break]
