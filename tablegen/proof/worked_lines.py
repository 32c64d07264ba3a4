"""The pages of worked examples as lines of steps: number, words, figures at their right, and where these stand; marks; columns."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import groupby, pairwise

from msgspec import Struct, field

from tablegen.proof.names import Citing
from tablegen.proof.page import Line, Page, close, said

APART, MARGIN, NEXT_LINE, ALIKE = 0.5, 3.0, 1.75, 0.3
"""Shares of the size of type: how far cells of a line are apart at least, how far lines of a paragraph are apart at most, what sizes
of one line's words differ by; and points that what begins a line stands from the edge at most."""
SIGNS = ('−', '+')


class Told(Struct):
    """A step, or words between steps, with what is cited below them."""

    number: str
    """'' for what has none."""
    words: str
    figures: tuple[str, ...] = ()
    cited: str = ''


class Marked(Struct):
    """A mark of a board."""

    number: str
    name: str
    figure: str


class Worked(Struct):
    """A page."""

    steps: list[Told] = field(default_factory=list)
    marks: list[Marked] = field(default_factory=list)
    rows: list[tuple[str, tuple[str, ...]]] = field(default_factory=list)
    """Of a table of jacks."""
    heads: list[str] = field(default_factory=list)
    """Over the figures of its steps, or of its table."""

    def numbers(self) -> list[list[str]]:
        """Return the numbers of its steps, and of its marks, each list as it should count from 1."""
        found: list[list[str]] = [
            [mark.number for mark in sorted(self.marks, key=lambda one: int(one.number))]
        ]
        for step in self.steps:
            if step.number == '1' or (step.number and len(found) == 1):
                found.append([])
            if step.number:
                found[-1].append(step.number)
        return found


def worked_page(page: Page, names: Mapping[str, object], citing: Citing) -> Worked:
    """Return what stands below the title of a page.

    Given:
        names  what marks are called
    """
    return _Reader(page, names, citing).read()


class _Reader:
    def __init__(self, page: Page, names: Mapping[str, object], citing: Citing):
        self.names, self.found = names, Worked()
        self.title, *self.lines = page.lines
        self.edge = self.title[0].left
        self.cites = tuple(one.partition(' ')[0] for one in (citing.page, citing.pages))
        self.last = 0.0
        """Height of the line before."""
        self.size = 0.0
        """Of what was cited last in it; 0 for none."""
        self.indent = self.edge
        self.columns: list[float] = []
        """Right edges of the heads over its figures."""
        self.upper: list[Line] = []
        """Heads in the line above."""
        self.marks: list[tuple[str, Line, Line]] = []
        """Number, name and figure of each."""

    def read(self) -> Worked:
        for line in self.lines:
            self._line(line)
        self.found.marks = [Marked(number, said(name), close(figure)) for number, name, figure in self.marks]
        return self.found

    def _line(self, line: Line) -> None:
        first, cells = line[0], cells_of(line)
        at_edge = abs(first.left - self.edge) < MARGIN
        if all(word.bold for word in line):
            if len(cells) > 2 and all(map(_is_figure, cells[1:])):
                self.found.rows.append((close(cells[0]), tuple(map(close, cells[1:]))))
                return
            if not first.text.isdigit() and self._heads(cells, at_edge):
                return
        if at_edge and first.bold and first.text.isdigit() and len(line) > 1:
            self.size = 0.0
            if not self._marked(line):
                self._numbered(line, cells)
        elif (first.bold and first.text in self.cites and self.found.steps) or (
            self.size
            and abs(first.size - self.size) < ALIKE
            and first.left >= self.edge - MARGIN
            and self._goes_on(line)
        ):
            self._cite(line)
        elif self._name_goes_on(line):
            pass
        elif at_edge or (abs(first.left - self.indent) < MARGIN and self._goes_on(line)):
            self._words(line, at_edge)
        else:
            return
        self.last = first.base

    def _goes_on(self, line: Line) -> bool:
        return 0 < self.last - line[0].base < NEXT_LINE * max(word.size for word in line)

    def _heads(self, cells: Sequence[Line], at_edge: bool) -> bool:
        """Take down heads, the line above them being their own; return whether these were any."""
        if len(cells) == 1 and at_edge:
            self.size, self.indent = 0.0, self.edge
            return True  # a heading
        if len(cells) < 2 or any(map(str.isdigit, cells[0][0].text[:1])):
            return False
        if not self.found.rows and (not self.found.steps or not self.found.steps[-1].number):
            told = [close(cell) for cell in cells]
            for cell, place in ((cell, place) for cell in self.upper for place in range(len(cells))):
                if cell[0].left < cells[place][-1].right and cells[place][0].left < cell[-1].right:
                    told[place] = f'{close(cell)} {told[place]}'
            self.upper = list(cells)
            self.found.heads, self.columns = told, [cell[-1].right for cell in cells]
        return True

    def _marked(self, line: Line) -> bool:
        """Take down one or two marks of a board; return whether the line is of such."""
        parts = [list(some) for _bold, some in groupby(line, key=lambda word: word.bold)]
        apart = [cell for part in parts for cell in (cells_of(part) if part[0].bold else [part])]
        some = [apart[place : place + 3] for place in range(0, len(apart), 3)]
        if not all(len(one) == 3 and self._begins(said(one[1])) for one in some):
            return False
        self.marks += [(close(number), list(name), figure) for number, name, figure in some]
        return True

    def _begins(self, name: str) -> bool:
        return any(f'{one} '.startswith(f'{name} ') for one in self.names)

    def _name_goes_on(self, line: Line) -> bool:
        """Add to the names of marks above what stands below them; return whether they go on."""
        if not self.marks or not self._goes_on(line) or any(word.bold for word in line):
            return False
        base = self.marks[-1][1][0].base
        names = [
            name
            for _number, name, _figure in self.marks
            if name[0].base == base and said(name) not in self.names
        ]
        parts = [(name, [word for word in line if name[0].left - MARGIN < word.left]) for name in names]
        if not parts:
            return False
        for (name, words), (_next, later) in zip(parts, [*parts[1:], ([], [])], strict=True):
            name += [word for word in words if word not in later]
        return True

    def _numbered(self, line: Line, cells: list[Line]) -> None:
        figures: list[Line] = []
        while len(cells) > 1 and all(word.bold for word in cells[-1]) and _is_figure(cells[-1]):
            figures.insert(0, cells.pop())
        words = cells[0][1:] + [word for cell in cells[1:] for word in cell]
        self.indent = words[0].left if words else self.edge
        self.found.steps.append(Told(line[0].text, close(words), self._in_columns(figures)))

    def _in_columns(self, figures: list[Line]) -> tuple[str, ...]:
        """Return figures under the heads of two rafters, '' where one has none."""
        if self.found.rows or len(self.columns) <= len(figures):
            return tuple(map(close, figures))
        found = [''] * len(self.columns)
        for cell in figures:
            apart = [abs(cell[-1].right - right) for right in self.columns]
            found[apart.index(min(apart))] = close(cell)
        return tuple(found) if figures else ()

    def _cite(self, line: Line) -> None:
        step = self.found.steps[-1]
        step.cited = f'{step.cited} {close(line)}'.strip()
        self.size = line[0].size

    def _words(self, line: Line, at_edge: bool) -> None:
        self.size = 0.0
        first, *beside = cells_of(line)
        if all(word.bold for cell in beside for word in cell):
            line = first  # beside it is a drawing
        if not at_edge or (
            self.found.steps
            and not self.found.steps[-1].number
            and self._goes_on(line)
            and not self.found.steps[-1].cited
        ):
            step = self.found.steps[-1]
            step.words = f'{step.words} {close(line)}'
        else:
            self.indent = self.edge
            self.found.steps.append(Told('', close(line)))


def cells_of(line: Line) -> list[Line]:
    """Return the words of a line by the wide gaps between them; a number that begins it stands alone."""
    found: list[Line] = [line[:1]]
    for before, word in pairwise(line):
        if word.left - before.right > APART * min(word.size, before.size):
            found.append([word])
        else:
            found[-1].append(word)
    return found


def _is_figure(cell: Line) -> bool:
    words = said(cell)
    return any(map(str.isdigit, words)) and (words[0].isdigit() or words[0] in SIGNS or '×' in words)
