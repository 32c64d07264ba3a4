"""Words of a block put together and broken into lines where its room ends."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from functools import cache

from layouts.quick.faces import UNITS
from layouts.quick.lines import Line, Links, Putting, Space, Words, blank, inlines, kept_lines
from layouts.quick.looks import Look, said
from layouts.quick.refusal import NotPlain
from layouts.quick.tree import Element

BLANKS = re.compile('[ \t\n]+')
WIDE = 1e6
"""A room, px, in which nothing is broken that need not be."""


def broken_lines(
    told: Sequence[Words | Space], look: Look, rooms: float | Callable[[int], float], language: str
) -> list[Line]:
    """Return lines of words, broken where the room ends: px, of all of them or of each by its number."""
    indent = round((look.indent or 0) * UNITS)
    lines: list[Line] = []

    def room() -> int:
        return int((rooms(len(lines)) if callable(rooms) else rooms) * UNITS)

    if len(told) == 1 and (only := told[0]) and isinstance(only, Words) and not only.box and not only.whole:
        text = _even(only.text).removeprefix(' ')
        wide = only.wide(text.rstrip(' '))
        if wide and indent + wide <= room():
            above, below = max(look.baseline, only.above), max(look.height - look.baseline, only.below)
            return [Line(above, below, indent + wide, [(indent, only, text)])]
    flow = _Flow(told)
    bare = len(flow.text.rstrip(' '))
    if bare and '\n' not in flow.text and indent + flow.width(0, bare) <= room():
        return [flow.line(0, bare, look, indent)]
    for start, stop in flow.bounds(room, indent, language, look.white_space == 'nowrap'):
        lines.append(flow.line(start, stop, look, 0 if start else indent))
    return lines


def least_and_most(told: Sequence[Words | Space], look: Look, language: str) -> tuple[float, float]:
    """Return the width, in units, of the widest of some words where each stretch is broken wherever it may be, and where none is.

    Notes:
        1. As the typesetter counts the least: a stretch by itself, and after it where a letter would begin another line.
    """
    most = max((line.width for line in broken_lines(told, look, WIDE, language)), default=0.0)
    flow = _Flow(told)
    widest = here = sum(space.width for _at, space in flow.spaces)
    for first, last, one in flow.spans:
        text, start = flow.text[first:last], 0
        if one.look.white_space == 'nowrap' and one.whole != -1:
            here += one.wide(text)
            continue
        if one.box:
            widest, here = max(widest, here, one.box.width), 0.0
            continue
        for stop in _may_break(text + 'a', language) if one.whole != -1 else (1,):
            here += one.wide(text[start:stop].rstrip(' \n'))
            widest, here, start = max(widest, here), 0.0, stop
        here += one.wide(text[start:])
    return max(widest, here), most


def needed_width(blocks: Putting, one: Element, look: Look, free: float) -> float:
    """Return the width that a block asks for where none is said."""
    widest = 0.0
    line: list[Element | str] = []
    for child in one.within:
        if not isinstance(child, str) and blocks.looks[child][0].display == ('block', 'flow'):
            own, there = blocks.looks[child]
            width = said(own, there, 'width', None)
            if width is None or any(own.margin) or own.float != 'none':
                raise NotPlain('width_by_what_is_in_it')
            widest = max(widest, width)
        else:
            line.append(child)
    if not blank(line):
        told = inlines(line, look, blocks, Links())
        made = (
            kept_lines(told, look, True)
            if look.white_space == 'pre'
            else broken_lines(told, look, WIDE, blocks.language)
        )
        words = max((each.width / UNITS for each in made), default=0.0)
        if words > free and look.white_space == 'normal':
            raise NotPlain('wider_than_its_room')
        widest = max(widest, words)
    return widest


class _Flow:
    """Words put together, blanks made one, so that breaks are found in their whole text."""

    def __init__(self, told: Sequence[Words | Space]):
        self.spans: list[tuple[int, int, Words]] = []
        self.spaces: list[tuple[int, Space]] = []
        pieces: list[str] = []
        at = 0
        for one in told:
            if isinstance(one, Space):
                self.spaces.append((at, one))
                continue
            text = '\n' if one.whole == -1 else _even(one.text)
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
            if last <= start:
                continue
            if first >= stop:
                break
            total += one.wide(self.text[max(first, start) : min(last, stop)].strip('\n'))
        for at, space in self.spaces:
            if start <= at < stop if space.opens else start < at <= stop:
                total += space.width
        return total

    def bounds(
        self, room: Callable[[], int], indent: int, language: str, whole: bool
    ) -> Iterator[tuple[int, int]]:
        """Return where lines begin and end, blanks at their ends left out; the room is asked anew after each."""
        text = self.text
        start = last = 0
        taken: float = indent
        free = room()
        for stop in [*self._breaks(language, whole), len(text)]:
            piece = text[last:stop]
            if not piece.strip(' \n') and piece != '\n':
                last = stop
                continue
            bare = last + len(piece.rstrip(' \n'))
            need = self.width(last, bare)
            if taken + need > free and last > start and text[start:last].strip():
                yield start, self._end(start, last)
                start, taken, free = last, 0, room()
            if taken + need > free and not whole:
                raise NotPlain('a_word_wider_than_its_room')
            taken += need + self.width(bare, stop) if bare != stop else need
            last = stop
            if piece.endswith('\n'):
                yield start, self._end(start, stop - 1)
                start, taken, free = stop, 0, room()
        if text[start:].strip():
            yield start, self._end(start, len(text))

    def _end(self, start: int, stop: int) -> int:
        return start + len(self.text[start:stop].rstrip(' \n'))

    def _breaks(self, language: str, whole: bool) -> list[int]:
        """Return where the text may be broken, and where it must."""
        if whole:
            return [place + 1 for place, letter in enumerate(self.text) if letter == '\n']
        if not any(one.whole > 0 for _first, _last, one in self.spans):
            return _may_break(self.text, language)
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
            if last <= start:
                continue
            if first >= stop:
                break
            begins = max(first, start)
            while spaces and spaces[0][0] <= begins:
                made.width += spaces.pop(0)[1].width
            words = self.text[begins : min(last, stop)]
            # Blanks that end a stretch are drawn where the line ends with it, as the typesetter does.
            left = self.text[stop:last].strip('\n') if last > stop else ''
            made.parts.append((made.width, one, words + left if left and not left.strip() else words))
            made.width += one.wide(words)
            made.above, made.below = max(made.above, one.above), max(made.below, one.below)
        made.width += sum(space.width for _at, space in spaces)
        return made


def _even(text: str) -> str:
    """Return a text with its blanks made one."""
    return BLANKS.sub(' ', text) if '\n' in text or '  ' in text or '\t' in text else text


@cache
def _may_break(text: str, language: str) -> list[int]:
    from weasyprint.text.line_break import get_log_attrs

    told = get_log_attrs(text, language)
    return [place for place in range(1, len(text)) if told[place].is_line_break]
