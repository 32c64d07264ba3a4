"""Blocks: where each stands on its page, by the rules of the style sheets' standard, and what is drawn of it."""

from __future__ import annotations

from layouts.quick.layers import Inked, Layer, Room
from layouts.quick.lines import Line, Links, broken_lines, inlines, kept_lines
from layouts.quick.looks import Look
from layouts.quick.refusal import NotPlain
from layouts.quick.tables import TABLE, Table
from layouts.quick.tree import Element
from layouts.quick.words import UNITS, Cut

AUTO = 'auto'


class Blocks:
    """Puts the blocks of one page."""

    def __init__(
        self, looks: dict[Element, tuple[Look, dict[str, float]]], cuts: dict[object, Cut], language: str
    ):
        self.looks, self.cuts, self.language = looks, cuts, language
        self.waiting: list[list[tuple[Element, float, float, Layer]]] = [[]]

    def cut(self, look: Look) -> Cut:
        """Return the font of a look."""
        found = self.cuts.get(look.cut_key)
        if found is None:
            found = self.cuts[look.cut_key] = Cut(look.style)
        return found

    def wide(self, look: Look, text: str) -> int:
        """Return how far words advance."""
        return self.cut(look).wide(text)

    def put(self, one: Element, room: Room, layer: Layer) -> None:
        """Put a block that stands in the flow."""
        look, placed = self.looks[one]
        if look.position == 'relative':
            if any(
                look.place[side] != AUTO for side in ('left', 'right', 'top', 'bottom')
            ) or placed.keys() - {'width', 'height', 'margin-left', 'margin-top'}:
                raise NotPlain('moved_from_its_place')
            inner = Layer()
            layer.over.append(inner)
            self.waiting.append([])
            x, y, width, height = self._in_flow(one, look, placed, room, inner)
            self._put_waiting(x, y, width, height)
        elif look.position == 'static':
            if look.transform:
                raise NotPlain('turned_in_the_flow')
            self._in_flow(one, look, placed, room, layer)
        else:
            raise NotPlain(f'position_{look.position}')

    def _in_flow(
        self, one: Element, look: Look, placed: dict[str, float], room: Room, layer: Layer
    ) -> tuple[float, float, float, float]:
        """Put a block, and return its padding box."""
        top, right, bottom, left = (value or 0.0 for value in look.margin)
        if None in look.margin:
            raise NotPlain('margin_auto')
        top, left = placed.get('margin-top', top), placed.get('margin-left', left)
        above, below = look.border[0] + look.padding[0], look.border[2] + look.padding[2]
        before, after = look.border[3] + look.padding[3], look.border[1] + look.padding[1]
        room.margins.append(top)
        x = room.x + left
        width = self._said(look, placed, 'width', room.width)
        if width is None:
            width = room.width - left - right - before - after
        height = self._said(look, placed, 'height', None)
        if one.tag == 'img':
            y = room.settle()
            # It is clipped, and so drawn after the words around it.
            drawn = Inked('image', x + before, y + above, width, height or 0.0, one)
            layer.over.append(Layer(ink=[drawn]))
            room.y = y + above + (height or 0.0) + below
        elif look.display == TABLE:
            y = room.settle()
            height = Table(self, one, look).put(Room(x, y, width, []), layer)
            room.y = y + height
        else:
            place = len(layer.grounds)
            if above:
                room.settle()
            began = room.y
            inner = Room(x + before, began + above, width, room.margins)
            self.fill(one, look, inner, layer)
            y = began if above or inner.first is None else inner.first
            if inner.first is None and (height or below) and not above:
                y = inner.settle()
            if room.first is None and (above or inner.first is not None):
                room.first = y
            if height is not None:
                room.margins = []
                room.y = y + above + height + below
            elif below:
                inner.settle()
                room.y, room.margins = inner.y + below, []
            else:
                room.y, room.margins = inner.y, inner.margins
            if height is None:
                height = inner.y - y - above
            self._ground(look, x, y, before + width + after, above + height + below, layer, place)
        room.margins.append(bottom)
        edge = look.border
        return (
            x + edge[3],
            y + edge[0],
            before + width + after - edge[3] - edge[1],
            above + (height or 0) + below - edge[0] - edge[2],
        )

    def _said(self, look: Look, placed: dict[str, float], name: str, whole: float | None) -> float | None:
        """Return a length that a look or its style attribute says, px; None for auto."""
        if name in placed:
            return placed[name]
        value = look.place[name]
        if value == AUTO:
            return None
        if value.unit == '%' and whole is not None:
            return float(value.value) * whole / 100
        if value.unit != 'px':
            raise NotPlain(f'{name}_{value}')
        return float(value.value)

    def _ground(
        self, look: Look, x: float, y: float, width: float, height: float, layer: Layer, place: int
    ) -> None:
        if look.background.alpha or any(look.border):
            layer.grounds.insert(place, Inked('ground', x, y, width, height, look))

    def fill(self, one: Element, look: Look, room: Room, layer: Layer) -> None:
        """Put what stands in a block."""
        if look.bullet:
            place = room.x - self.wide(look, look.bullet) / UNITS, room.next + look.baseline
            layer.over.append(Layer(ink=[Inked('words', *place, 0.0, 0.0, (look, look.bullet))]))
        line: list[Element | str] = []
        for child in one.within:
            if isinstance(child, str):
                line.append(child)
                continue
            own, _placed = self.looks[child]
            if own.position == 'absolute':
                if any(not isinstance(part, str) or part.strip() for part in line):
                    raise NotPlain('placed_within_a_line')
                down = room.next
                self.waiting[-1].append((child, room.x, down, layer))
                layer.over.append(Layer())
                self.waiting[-1][-1] = (child, room.x, down, layer.over[-1])
            elif own.display in (('block', 'flow'), TABLE):
                self._lines(line, look, room, layer)
                line = []
                self.put(child, room, layer)
            elif own.display == ('inline', 'flow'):
                line.append(child)
            elif own.display != ('none',):
                raise NotPlain(f'display_{own.display}')
        self._lines(line, look, room, layer)

    def _lines(self, within: list[Element | str], look: Look, room: Room, layer: Layer) -> None:
        if not within or (
            all(isinstance(one, str) and not one.strip() for one in within) and look.white_space != 'pre'
        ):
            return
        links = Links()
        told = inlines(within, look, self.looks, links)
        if look.white_space == 'pre':
            lines = kept_lines(told, look, self.wide)
        elif look.white_space in ('normal', 'nowrap'):
            lines = broken_lines(told, look, room.width, self.wide, self.language)
        else:
            raise NotPlain(f'white-space_{look.white_space}')
        if lines:
            y = room.settle()
            for line in lines:
                self._line(line, look, room, y, links, layer)
                y += line.above + line.below
            room.y = y

    def _line(self, line: Line, look: Look, room: Room, y: float, links: Links, layer: Layer) -> None:
        width, base = line.width / UNITS, y + line.above
        free = 0.0 if width >= room.width else room.width - width
        x = room.x + {'start': 0.0, 'center': free / 2, 'end': free}[look.align]
        met: dict[int, tuple[float, float]] = {}
        for at, words, text in line.parts:
            layer.ink.append(Inked('words', x + at / UNITS, base, 0.0, 0.0, (words.look, text)))
            if words.link:
                begins, _ = met.get(words.link, (x + at / UNITS, 0))
                met[words.link] = begins, x + (at + self.wide(words.look, text.rstrip())) / UNITS
        for link, (begins, ends) in met.items():
            target, own = links.led[link - 1]
            layer.links.append(Inked('link', begins, base - own.baseline, ends - begins, own.height, target))

    def _put_waiting(self, x: float, y: float, width: float, height: float) -> None:
        """Put what is placed by the edges of the block whose padding box this is."""
        for one, static_x, static_y, layer in self.waiting.pop():
            look, placed = self.looks[one]
            left, right, top, bottom = (
                self._said(look, placed, side, whole)
                for side, whole in (('left', width), ('right', width), ('top', height), ('bottom', height))
            )
            wide = self._said(look, placed, 'width', width)
            if None in look.margin or any(look.margin) or placed.keys() & {'margin-left', 'margin-top'}:
                raise NotPlain('margin_of_what_is_placed')
            around = look.border[1] + look.border[3] + look.padding[1] + look.padding[3]
            if wide is None:
                if left is not None and right is not None:
                    wide = width - left - right - around
                else:
                    wide = self._needed(one, look, width - (left or 0) - (right or 0) - around)
            if left is not None:
                begins = x + left
            elif right is not None:
                begins = x + width - right - around - wide
            else:
                begins = static_x
            self._placed(one, look, placed, wide, begins, (y, height, top, bottom, static_y), layer)

    def _placed(
        self,
        one: Element,
        look: Look,
        placed: dict[str, float],
        wide: float,
        x: float,
        down: tuple[float, float, float | None, float | None, float],
        layer: Layer,
    ) -> None:
        y, height, top, bottom, static_y = down
        begins = y + top if top is not None else static_y if bottom is None else 0.0
        self.waiting.append([])
        room = Room(x, begins, wide, [])
        room.first = begins
        edges = self._in_flow(one, look, {**placed, 'width': wide}, room, layer)
        own_waiting = self.waiting[-1]
        if top is None and bottom is not None:
            room.settle()
            if own_waiting:
                raise NotPlain('placed_from_below')
            layer.moved(0.0, y + height - bottom - room.y)
        self._put_waiting(*edges)
        if look.transform:
            layer.turn = self._turn(look, edges)

    def _turn(self, look: Look, edges: tuple[float, float, float, float]) -> tuple[float, float, float]:
        ((name, angle),) = look.transform
        origin = look.style['transform_origin']
        if name != 'rotate' or any(one.value for one in origin) or any(look.border):
            raise NotPlain(f'transform_{name}')
        return angle, edges[0], edges[1]

    def _needed(self, one: Element, look: Look, free: float) -> float:
        """Return the width that a block asks for where none is said."""
        widest = 0.0
        line: list[Element | str] = []
        for child in one.within:
            if not isinstance(child, str) and self.looks[child][0].display == ('block', 'flow'):
                own, there = self.looks[child]
                width = self._said(own, there, 'width', None)
                if width is None or any(own.margin):
                    raise NotPlain('width_by_what_is_in_it')
                widest = max(widest, width)
            else:
                line.append(child)
        if any(not isinstance(part, str) or part.strip() for part in line):
            told = inlines(line, look, self.looks, Links())
            made = (
                kept_lines(told, look, self.wide)
                if look.white_space == 'pre'
                else broken_lines(told, look, 1e6, self.wide, self.language)
            )
            words = max((each.width / UNITS for each in made), default=0.0)
            if words > free and look.white_space == 'normal':
                raise NotPlain('wider_than_its_room')
            widest = max(widest, words)
        return widest
