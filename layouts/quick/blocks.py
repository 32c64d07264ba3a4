"""Blocks: where each stands on its page, by the rules of the style sheets' standard, and what is drawn of it."""

from __future__ import annotations

from layouts.quick.beside import Beside
from layouts.quick.faces import UNITS
from layouts.quick.flow import broken_lines, needed_width
from layouts.quick.layers import Inked, Layer, Room
from layouts.quick.lines import IN_LINE, Boxed, Links, blank, inlines, kept_lines, put_line
from layouts.quick.looks import Look, said
from layouts.quick.refusal import NotPlain
from layouts.quick.tables import TABLE, Table
from layouts.quick.tree import Element


class Blocks:
    """Puts the blocks of one page."""

    def __init__(self, looks: dict[Element, tuple[Look, dict[str, float]]], language: str):
        self.looks, self.language = looks, language
        self.waiting: list[list[tuple[Element, float, float, Layer]]] = [[]]
        self.beside: Beside | None = None

    def put(self, one: Element, room: Room, layer: Layer) -> None:
        """Put a block that stands in the flow."""
        look, placed = self.looks[one]
        if look.position == 'relative':
            if any(
                look.place[side] != 'auto' for side in ('left', 'right', 'top', 'bottom')
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
        if None in look.margin:
            raise NotPlain('margin_auto')
        top, right, bottom, left = look.outside
        if placed:
            top, left = placed.get('margin-top', top), placed.get('margin-left', left)
        above, after, below, before = look.around
        room.margins.append(top)
        x = room.x + left
        width = said(look, placed, 'width', room.width)
        if width is None:
            width = room.width - left - right - before - after
        height = said(look, placed, 'height', None)
        if one.tag == 'img':
            y = room.settle()
            if self.beside and y < self.beside.bottom:
                raise NotPlain('a_drawing_under_a_drawing')
            # It is clipped, and so drawn after the words around it.
            more = one, look.padding
            drawn = Inked('image', x + before, y + above, width, height or 0.0, more)
            layer.over.append(Layer(ink=[drawn]))
            room.y = y + above + (height or 0.0) + below
        elif look.display == TABLE:
            y = room.settle()
            if self.beside:  # beside which it has no room
                y = max(y, self.beside.bottom)
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

    def _ground(
        self, look: Look, x: float, y: float, width: float, height: float, layer: Layer, place: int
    ) -> None:
        if look.seen:
            layer.grounds.insert(place, Inked('ground', x, y, width, height, look))

    def fill(self, one: Element, look: Look, room: Room, layer: Layer) -> None:
        """Put what stands in a block."""
        if look.bullet:
            place = room.x - look.cut.wide(look.bullet) / UNITS, room.next + look.baseline
            layer.over.append(Layer(ink=[Inked('words', *place, 0.0, 0.0, (look, look.bullet))]))
        line: list[Element | str] = []
        bare = True  # whether it has nothing but blanks
        for child in one.within:
            if isinstance(child, str):
                line.append(child)
                bare = bare and not child.strip()
                continue
            own, _placed = self.looks[child]
            if own.float != 'none':
                self._put_beside(child, line, room, layer)
            elif own.position == 'absolute':
                if not bare:
                    raise NotPlain('placed_within_a_line')
                layer.over.append(Layer())
                self.waiting[-1].append((child, room.x, room.next, layer.over[-1]))
            elif own.display in (('block', 'flow'), TABLE):
                self._lines(line, look, room, layer)
                line, bare = [], True
                self.put(child, room, layer)
            elif own.display in (('inline', 'flow'), IN_LINE):
                line.append(child)
                bare = False
            elif own.display != ('none',):
                raise NotPlain(f'display_{own.display}')
        self._lines(line, look, room, layer)

    def _put_beside(self, one: Element, line: list[Element | str], room: Room, layer: Layer) -> None:
        """Put a drawing at the right, beside what follows it."""
        look, placed = self.looks[one]
        width, height = (said(look, placed, name, None) for name in ('width', 'height'))
        if one.tag != 'img' or look.float != 'right' or look.position != 'static' or self.beside:
            raise NotPlain('beside')
        if (
            any(look.margin)
            or any(look.border)
            or width is None
            or height is None
            or ''.join(map(str, line)).strip()
        ):
            raise NotPlain('beside')
        top, right, bottom, left = look.padding
        x, y = room.x + room.width - right - width, room.next
        layer.over.append(Layer(ink=[Inked('image', x, y + top, width, height, (one, look.padding))]))
        self.beside = Beside(x - left, y, y + top + height + bottom)

    def _lines(self, within: list[Element | str], look: Look, room: Room, layer: Layer) -> None:
        if look.white_space != 'pre' and blank(within):
            return
        if not within:
            return
        links = Links()
        told = inlines(within, look, self, links)
        if look.white_space == 'pre':
            lines = kept_lines(told, look, look.align != 'start')
        elif look.white_space in ('normal', 'nowrap'):
            beside = self.beside if self.beside and room.next < self.beside.bottom else None
            rooms = beside.rooms(look, room) if beside else room.width
            lines = broken_lines(told, look, rooms, self.language)
            if beside:
                beside.refuse_uneven(lines, look)
        else:
            raise NotPlain(f'white-space_{look.white_space}')
        if lines:
            y = room.settle()
            for line in lines:
                put_line(line, look, room, y, links, layer)
                y += line.above + line.below
            room.y = y

    def boxed(self, one: Element) -> Boxed:
        """Return a box that stands in a line."""
        look, placed = self.looks[one]
        width, height = (said(look, placed, name, None) for name in ('width', 'height'))
        placed_alone = look.position != 'static' or look.float != 'none' or look.transform
        if width is None or placed_alone or any(look.margin) or look.vertical_align != 'baseline':
            raise NotPlain('a_box_in_a_line')
        if height is None if one.tag == 'img' else look.style['overflow'] != 'visible':
            raise NotPlain('a_box_in_a_line')
        if any(self.looks[inner][0].display != ('inline', 'flow') for inner in one.elements):
            raise NotPlain('blocks_in_a_box_in_a_line')
        layer, room = Layer(), Room(0.0, 0.0, width, [], 0.0)
        wide = self._in_flow(one, look, {**placed, 'width': width}, room, layer)[2]
        height = room.settle()
        above = max((ink.y for ink in layer.ink), default=height)
        return Boxed(layer, (wide + look.border[1] + look.border[3]) * UNITS, above, height - above)

    def _put_waiting(self, x: float, y: float, width: float, height: float) -> None:
        """Put what is placed by the edges of the block whose padding box this is."""
        for one, static_x, static_y, layer in self.waiting.pop():
            look, placed = self.looks[one]
            left, right = said(look, placed, 'left', width), said(look, placed, 'right', width)
            top, bottom = said(look, placed, 'top', height), said(look, placed, 'bottom', height)
            wide = said(look, placed, 'width', width)
            if look.spaced or placed.keys() & {'margin-left', 'margin-top'}:
                raise NotPlain('margin_of_what_is_placed')
            around = look.around[1] + look.around[3]
            if wide is None:
                if left is not None and right is not None:
                    wide = width - left - right - around
                else:
                    wide = needed_width(self, one, look, width - (left or 0) - (right or 0) - around)
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
        beside, self.beside = self.beside, None
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
        self.beside = beside

    def _turn(self, look: Look, edges: tuple[float, float, float, float]) -> tuple[float, float, float]:
        ((name, angle),) = look.transform
        origin = look.style['transform_origin']
        if name != 'rotate' or any(one.value for one in origin) or any(look.border):
            raise NotPlain(f'transform_{name}')
        return angle, edges[0], edges[1]
