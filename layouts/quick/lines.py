"""Lines of words: what stands in a block one after another, broken where it has to be."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from msgspec import Struct, field

from layouts.quick.faces import UNITS
from layouts.quick.layers import Inked, Layer, Room
from layouts.quick.looks import Look
from layouts.quick.refusal import NotPlain
from layouts.quick.tree import Element

IN_LINE = ('inline', 'flow-root')
"""How a box is displayed that stands in a line."""
BOX = '\u2e80'
"""Stands in a line's text for a box, before and after which it may be broken as at such a letter."""


class Boxed(Struct):
    """A box that stands in a line like a letter."""

    layer: Layer
    """As it is drawn where its upper left is the page's."""
    width: float
    """In units."""
    above: float
    """How far it reaches over the base line, and below it; px."""
    below: float


class Words(Struct):
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
    box: Boxed | None = None
    """Which it is, and no words; its look is then that of what it stands in."""

    def wide(self, text: str) -> float:
        """Return how far some of its text advances, in units."""
        return self.look.cut.wide(text) if self.box is None else self.box.width if text else 0


class Space(Struct):
    """What an element's padding takes in a line."""

    width: float
    opens: bool


class Line(Struct):
    """A line as it stands: words and spaces from the left."""

    above: float
    below: float
    width: float = 0
    parts: list[tuple[float, Words, str]] = field(default_factory=list)
    """Where they begin, units from the line's own beginning; the words, and what of them stands here."""


class Links(Struct):
    """The links of some lines, and how they look."""

    led: list[tuple[Element, Look]] = field(default_factory=list)


class Putting(Protocol):
    """What puts blocks, in lines and cells too."""

    looks: dict[Element, tuple[Look, dict[str, float]]]
    waiting: list[list[tuple[Element, float, float, Layer]]]
    language: str

    @property
    def beside(self) -> object:
        """Return the drawing beside what follows it; None for none."""

    def fill(self, one: Element, look: Look, room: Room, layer: Layer) -> None:
        """Put what stands in a block."""

    def boxed(self, one: Element) -> Boxed:
        """Return a box that stands in a line."""


def blank(within: Sequence[Element | str]) -> bool:
    """Tell whether nothing stands there but blanks."""
    return all(isinstance(one, str) and not one.strip() for one in within)


def inlines(
    within: Sequence[Element | str], look: Look, blocks: Putting, links: Links
) -> list[Words | Space]:
    """Return what stands in a block's lines, in order."""
    around = look.baseline, look.height - look.baseline
    if len(within) == 1 and isinstance(within[0], str):
        return [Words(within[0], look, *around, 0, 0)]
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
                own, placed = blocks.looks[one]
                if own.display == IN_LINE or one.tag == 'img':
                    box = blocks.boxed(one)
                    around = max(above, box.above), max(below, box.below)
                    told.append(Words(BOX, look, *around, whole, link, box))
                    continue
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

    add(within, look, *around, 0, 0)
    return told


def _refuse_odd(one: Element, look: Look, placed: dict[str, float]) -> None:
    if look.display != ('inline', 'flow') or look.position != 'static':
        raise NotPlain(f'{one.tag}_in_a_line')
    if placed or any(look.margin) or any(look.border) or look.vertical_align != 'baseline':
        raise NotPlain(f'space_around_{one.tag}_in_a_line')
    if look.background.alpha:
        raise NotPlain('a_ground_in_a_line')


def kept_lines(told: Sequence[Words | Space], look: Look, measured: bool) -> list[Line]:
    """Return the lines of preformatted words, as they are; how wide they are only if they are to be measured."""
    lines = [Line(look.baseline, look.height - look.baseline)]
    for one in told:
        if isinstance(one, Space) or one.box:
            raise NotPlain('space_in_preformatted_words')
        if '\t' in one.text and not one.look.tab:
            raise NotPlain('tab')
        for place, text in enumerate(one.text.split('\n')):
            if place:
                lines.append(Line(look.baseline, look.height - look.baseline))
            if text:
                line = lines[-1]
                if line.parts:
                    line.width = _end(*line.parts[-1])
                line.parts.append((line.width, one, text))
                line.above, line.below = max(line.above, one.above), max(line.below, one.below)
    if not lines[-1].parts:
        lines.pop()
    if measured:
        for line in lines:
            line.width = _end(*line.parts[-1]) if line.parts else 0
    return lines


def _end(at: float, one: Words, text: str) -> float:
    """Return where preformatted words end, whose tab stops are counted from their own beginning."""
    end, tab = 0, one.look.tab
    for place, cell in enumerate(text.split('\t')):
        if place:
            end = (end // tab + 1) * tab
        end += one.look.cut.wide(cell)
    return at + end


def put_line(line: Line, look: Look, room: Room, y: float, links: Links, layer: Layer) -> None:
    """Put a line of a block under a height."""
    base, x = y + line.above, room.x
    if look.align != 'start':
        free = max(0.0, room.width - line.width / UNITS)
        x += {'center': free / 2, 'end': free}[look.align]
    met: dict[int, tuple[float, float]] = {}
    for at, words, text in line.parts:
        begins = x + at / UNITS
        if words.box:
            words.box.layer.moved(begins, base - words.box.above)
            layer.ink.append(Inked('box', begins, base, 0.0, 0.0, words.box.layer))
            layer.over += (
                words.box.layer.over
            )  # as a drawing is clipped, and so drawn after the words around it
            words.box.layer.over = []
            continue
        layer.ink.append(Inked('words', begins, base, 0.0, 0.0, (words.look, text)))
        if words.link:
            first, _ = met.get(words.link, (begins, 0))
            met[words.link] = first, x + (at + words.look.cut.wide(text.rstrip())) / UNITS
    for link, (begins, ends) in met.items():
        target, own = links.led[link - 1]
        layer.links.append(Inked('link', begins, base - own.baseline, ends - begins, own.height, target))
