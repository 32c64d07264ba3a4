"""Tables: their cells in columns and rows, with borders that neighbors share."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import accumulate
from typing import Any

from msgspec import Struct, field

from layouts.quick.columns import Asked, fixed_widths
from layouts.quick.faces import UNITS
from layouts.quick.flow import least_and_most
from layouts.quick.layers import Inked, Layer, Room
from layouts.quick.lines import IN_LINE, Links, Putting, blank, inlines
from layouts.quick.looks import SIDES, Look, said
from layouts.quick.refusal import NotPlain
from layouts.quick.tree import Element

TABLE, ROW, CELL = ('block', 'table'), ('table-row',), ('table-cell',)
GROUPS = (('table-header-group',), ('table-row-group',))
COLUMNS = (('table-column-group',), ('table-column',))
ENOUGH = 1e-6
"""Added to a cell's room, px, lest words that it was made for are broken by the last place of a sum."""


class Cell(Struct):
    """A cell of a table."""

    element: Element
    look: Look
    width: Any
    """That is said, as a computed value."""
    row: int
    first: int
    """Of its columns."""
    span: int
    edge: tuple[float, ...] = ()
    """Half of the borders that it shares, px, and its padding, from the top clockwise."""
    layer: Layer = field(default_factory=Layer)
    height: float = 0.0
    baseline: float = 0.0
    """Under its upper edge."""

    @property
    def columns(self) -> range:
        """Return its columns."""
        return range(self.first, self.first + self.span)


class Table:
    """Puts one table."""

    def __init__(self, blocks: Putting, one: Element, look: Look):
        """Read its rows and cells.

        Errors:
            NotPlain if it has anything beside head, body and cells of one row each, or borders that neighbors do not share
        """
        self._blocks, self._look = blocks, look
        if look.style['border_collapse'] != 'collapse' or any((*look.border, *look.padding)):
            raise NotPlain('table_with_borders_of_its_own')
        self._rows: list[list[Cell]] = []
        self._lined: list[tuple[Look, range]] = []
        """Looks of rows and of groups, and their rows: borders are theirs too."""
        self._high: list[float] = []
        """How high rows are at least."""
        self._said: list[float | None] = []
        """Widths of columns; px."""
        for group in one.elements:
            own = blocks.looks[group][0]
            if own.display in COLUMNS:
                self._said += [said(*blocks.looks[column], 'width', None) for column in group.elements]
                continue
            if own.display not in GROUPS:
                raise NotPlain(f'{group.tag}_in_a_table')
            above = len(self._rows)
            self._rows += [list(self._cells(row, above + at)) for at, row in enumerate(group.elements)]
            self._lined.append((own, range(above, len(self._rows))))
        if not self._rows or not all(self._rows):
            raise NotPlain('a_row_without_cells')
        self._count = max(cells[-1].first + cells[-1].span for cells in self._rows)
        self._across, self._down = self._borders()

    def _cells(self, row: Element, at: int) -> Iterator[Cell]:
        look, placed = self._blocks.looks[row]
        if look.display != ROW or look.background.alpha or placed.keys() - {'height'}:
            raise NotPlain(f'{row.tag}_in_a_table')
        self._lined.append((look, range(at, at + 1)))
        self._high.append(placed.get('height', _px(look.place['height']) or 0.0))
        first = 0
        for one in row.elements:
            own, placed = self._blocks.looks[one]
            if own.display != CELL or own.position != 'static' or 'rowspan' in one.attributes or placed:
                raise NotPlain(f'{one.tag}_in_a_row')
            if own.background.alpha or own.place['height'] != 'auto':
                raise NotPlain('a_cell_with_a_ground_or_a_height')
            span = int(one.attributes.get('colspan', '1'))
            yield Cell(one, own, own.place['width'], at, first, span)
            first += span

    def _borders(self) -> tuple[list[list[Inked | None]], list[list[Inked | None]]]:
        """Return the borders across, over every row and under the last, and those down: of two the wider one."""
        across: list[list[Inked | None]] = [[None] * self._count for _ in range(len(self._rows) + 1)]
        down: list[list[Inked | None]] = [[None] * (self._count + 1) for _ in self._rows]

        def set_one(kind: list[list[Inked | None]], row: int, column: int, look: Look, side: int) -> None:
            width, before = look.border[side], kind[row][column]
            if width > (before.width if before else 0):
                color = look.style[f'border_{SIDES[side]}_color']
                kind[row][column] = Inked('rule', 0, 0, width, 0, color)

        cells = [(one.look, range(one.row, one.row + 1), one.columns) for row in self._rows for one in row]
        for look, rows, columns in [*cells, *((*one, range(self._count)) for one in self._lined)]:
            for row in rows:
                set_one(down, row, columns[0], look, 3)
                set_one(down, row, columns[-1] + 1, look, 1)
            for column in columns:
                set_one(across, rows[0], column, look, 0)
                set_one(across, rows[-1] + 1, column, look, 2)
        for _look, rows, columns in cells:
            for column in columns[1:]:
                down[rows[0]][column] = None
        return across, down

    def put(self, room: Room, layer: Layer) -> float:
        """Put the table in a room, and return its height."""
        top, bottom = (max(map(wide, self._across[row])) / 2 for row in (0, -1))
        left, right = wide(self._down[0][0]) / 2, wide(self._down[0][-1]) / 2
        for row in self._rows:
            for one in row:
                over, under = (
                    max(wide(self._across[at][column]) for column in one.columns)
                    for at in (one.row, one.row + 1)
                )
                sides = (wide(self._down[one.row][at]) for at in (one.first + one.span, one.first))
                after, before = sides
                halves = over / 2, after / 2, under / 2, before / 2
                one.edge = tuple(
                    half + padding for half, padding in zip(halves, one.look.padding, strict=True)
                )
        widths = self._widths(room.width - left - right)
        places = list(accumulate(widths, initial=room.x + left))
        heights = [room.y + top]
        for row in self._rows:
            heights.append(heights[-1] + self._row(row, widths, places, heights[-1]))
            for one in row:
                for kind in ('grounds', 'ink', 'over', 'links'):
                    getattr(layer, kind).extend(getattr(one.layer, kind))
        layer.grounds.extend(sorted(self._ruled(places, heights), key=lambda rule: rule.more[0]))
        return heights[-1] + bottom - room.y

    def _widths(self, room: float) -> list[float]:
        if self._look.style['table_layout'] == 'fixed':
            return fixed_widths(self._fixed(room), room)
        if self._said:
            raise NotPlain('columns_of_a_table_by_its_words')
        asked = Asked.nothing(self._count)
        spanning = []
        for one in (one for row in self._rows for one in row):
            share = float(one.width.value) if one.width != 'auto' and one.width.unit == '%' else 0.0
            width = None if share else _px(one.width)
            around = one.edge[1] + one.edge[3]
            least, most = self._least_and_most(one.element, one.look)
            least, most = least + around, max(least, most if width is None else width) + around
            if one.span > 1:
                spanning.append((one.columns, least, most))
            else:
                asked.cell(one.first, least, most, share, width is not None)
        for columns, least, most in spanning:
            asked.wide_cell(columns, least, most)
        return asked.widths(room)

    def _fixed(self, room: float) -> list[float | None]:
        """Return the widths that columns say, and where they say none the cells of the first row."""
        cells = self._rows[0]
        if self._count not in (len(self._said), cells[-1].first + cells[-1].span):
            raise NotPlain('columns_that_say_no_width')
        listed = self._said + [None] * (self._count - len(self._said))
        for one in cells:
            if one.width != 'auto' and listed[one.first] is None:
                share = one.width.unit == '%'
                if one.span > 1:
                    raise NotPlain('a_cell_of_several_columns_that_says_a_width')
                wide = float(one.width.value) * room / 100 if share else _px(one.width) or 0.0
                listed[one.first] = wide + one.edge[1] + one.edge[3]
        return listed

    def _least_and_most(self, one: Element, look: Look) -> tuple[float, float]:
        """Return how wide what stands in a cell is where all that may break is broken, and where nothing is; px."""
        blocks, least, most = self._blocks, 0.0, 0.0
        line: list[Element | str] = []
        for child in (*one.within, None):
            own = blocks.looks[child][0] if isinstance(child, Element) else None
            if child is not None and (own is None or own.display in (('inline', 'flow'), IN_LINE)):
                line.append(child)
                continue
            if not blank(line):
                told = inlines(line, look, blocks, Links())
                narrow, broad = least_and_most(told, look, blocks.language)
                least, most = max(least, narrow / UNITS), max(most, broad / UNITS)
            line = []
            if own is not None and isinstance(child, Element):
                if own.display != ('block', 'flow') or own.place['width'] != 'auto' or child.tag == 'img':
                    raise NotPlain('a_cell_as_wide_as_what_is_in_it')
                around = sum(
                    (own.margin[side] or 0) + own.border[side] + own.padding[side] for side in (1, 3)
                )
                inner = self._least_and_most(child, own)
                least, most = max(least, inner[0] + around), max(most, inner[1] + around)
        return least, most

    def _row(self, row: list[Cell], widths: list[float], places: list[float], y: float) -> float:
        """Put a row's cells, and return its height."""
        for one in row:
            width = sum(widths[column] for column in one.columns) - one.edge[1] - one.edge[3]
            inner = Room(places[one.first] + one.edge[3], y + one.edge[0], width + ENOUGH, [])
            waiting, beside = len(self._blocks.waiting[-1]), self._blocks.beside
            self._blocks.fill(one.element, one.look, inner, one.layer)
            inner.settle()
            if len(self._blocks.waiting[-1]) > waiting or self._blocks.beside is not beside:
                raise NotPlain('placed_within_a_cell')
            one.height = inner.y - y + one.edge[2]
            words = [ink.y - y for ink in one.layer.ink if ink.what in ('words', 'box')]
            one.baseline = words[0] if words else inner.y - y
        lined = [one for one in row if one.look.vertical_align not in ('top', 'middle', 'bottom')]
        baseline = max((one.baseline for one in lined), default=0.0)
        for one in lined:
            one.layer.moved(0.0, baseline - one.baseline)
            one.height += baseline - one.baseline
        height = max([self._high[row[0].row], *(one.height for one in row)])
        for one in row:
            share = {'bottom': 1.0, 'middle': 0.5}.get(one.look.vertical_align, 0.0)
            one.layer.moved(0.0, (height - one.height) * share)
        return height

    def _ruled(self, places: list[float], heights: list[float]) -> Iterator[Inked]:
        """Return the borders as they are drawn, in order: on, and as far beyond, as half of those that they meet."""

        def half(kind: list[list[Inked | None]], *at: tuple[int, int]) -> float:
            inside = [(row, place) for row, place in at if 0 <= row < len(kind) and 0 <= place < len(kind[0])]
            return max((wide(kind[row][place]) for row, place in inside), default=0.0) / 2

        def over(row: int, at: int) -> Iterator[Inked]:
            if rule := self._across[row][at]:
                begins = places[at] - half(self._down, (row - 1, at), (row, at))
                ends = places[at + 1] + half(self._down, (row - 1, at + 1), (row, at + 1))
                yield Inked('rule', begins, heights[row], ends - begins, 0.0, (rule.width, rule.more))

        def before(row: int, at: int) -> Iterator[Inked]:
            if rule := self._down[row][at]:
                begins = heights[row] - half(self._across, (row, at - 1), (row, at))
                ends = heights[row + 1] + half(self._across, (row + 1, at - 1), (row + 1, at))
                yield Inked('rule', places[at], begins, 0.0, ends - begins, (rule.width, rule.more))

        for at in range(self._count):
            yield from over(0, at)
        for row in range(len(self._rows)):
            yield from before(row, 0)
            for at in range(self._count):
                yield from before(row, at + 1)
                yield from over(row + 1, at)


def wide(border: Inked | None) -> float:
    """Return how wide a border is, px."""
    return border.width if border else 0.0


def _px(width: Any) -> float | None:
    """Return a width that is said in px; None for auto."""
    if width == 'auto':
        return None
    if width.unit != 'px':
        raise NotPlain(f'width_{width}')
    return float(width.value)
