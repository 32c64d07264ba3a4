"""The sheets of a roof as lines: each from its title on, whatever page it runs over to; tables by the left edges of their heads."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from msgspec import Struct, field

from tablegen.proof.page import Line, Page, close, lines_of
from tablegen.proof.word import Word

TITLE_PT, HEADING_PT, FOOT_PT = 18.0, 12.0, 45.0
"""Titles and headings are set larger than so much; what stands lower than that on a page is its foot."""
HEAD_PT, FIGURE_PT = (9.0, 10.0), 13.0
"""Heads of tables are set between these, figures larger than that."""
NEXT_LINE = 1.6
"""A heading goes on in a line that is no further below than so many of its size."""
GAP, EDGE = 0.45, 1.0
"""Words of a head stand closer than so many of their size; points that a cell may begin left of its head."""


class Row(Struct, frozen=True):
    """A line of a table."""

    page: int
    cells: tuple[str, ...]


class Table(Struct):
    """A table under its heads."""

    heads: tuple[str, ...]
    rows: list[Row] = field(default_factory=list)

    def column(self, head: str) -> int | None:
        """Return which column a head is over; None where it is over none, or over several."""
        return self.heads.index(head) if self.heads.count(head) == 1 else None


class Sheet(Struct):
    """What stands from one title to the next."""

    page: int
    left: float
    """Where its lines begin."""
    title: str
    more: str
    """What stands beside the title in smaller type."""
    lines: list[tuple[int, Line]] = field(default_factory=list)

    @property
    def pages(self) -> set[int]:
        """Return the pages that it runs over."""
        return {self.page, *(page for page, _line in self.lines)}

    def parts(self) -> Iterator[tuple[str, list[tuple[int, Line]]]]:
        """Yield what stands under each heading, '' before the first."""
        heading, kept, above = '', list[tuple[int, Line]](), 0.0
        for page, line in self.lines:
            if self._is_heading(line):
                if heading and not kept and 0 < above - line[0].base < NEXT_LINE * line[0].size:
                    heading = f'{heading} {close(line)}'
                else:
                    yield heading, kept
                    heading, kept = close(line), []
                above = line[0].base
            else:
                kept.append((page, line))
        yield heading, kept

    def _is_heading(self, line: Line) -> bool:
        sized = all(word.bold and HEADING_PT < word.size < FIGURE_PT for word in line)
        return sized and line[0].left < self.left + EDGE


def sheets_of(pages: Sequence[Page]) -> list[Sheet]:
    """Return the sheets in their order."""
    found: list[Sheet] = []
    for page in pages:
        for line in lines_of(page.words):
            if line[0].base < FOOT_PT:
                continue
            if line[0].size > TITLE_PT:
                title = [word for word in line if word.size > TITLE_PT]
                sheet = Sheet(page.number, line[0].left, close(title), close(line[len(title) :]))
                if found and not (found[-1].lines or found[-1].more):  # a long one goes on in the next line
                    sheet.title = f'{found.pop().title} {sheet.title}'
                found.append(sheet)
            elif found:
                found[-1].lines.append((page.number, line))
    return found


def is_head(line: Line) -> bool:
    """Return whether a line has heads of a table alone."""
    return all(word.bold and HEAD_PT[0] < word.size < HEAD_PT[1] for word in line)


def tables_in(lines: Sequence[tuple[int, Line]]) -> Iterator[Table]:
    """Yield the tables that stand among some lines."""
    heads: list[Line] = []
    lefts: list[float] = []
    table: Table | None = None
    for page, line in lines:
        if is_head(line):
            if table and table.rows:
                yield table
                heads, table = [], None
            heads.append(line)
            lefts, told = _columns(heads)
            table = Table(told)
        elif table:
            if _goes_on(line, lefts):
                _add(table, page, line, lefts)
            else:
                if table.rows:
                    yield table
                heads, table = [], None
    if table and table.rows:
        yield table


def facts_in(lines: Sequence[tuple[int, Line]]) -> list[tuple[int, str, str]]:
    """Return each name in bold at the left with what is said beside it, over how many lines so ever."""
    found: list[tuple[int, str, str]] = []
    left = min((line[0].left for _page, line in lines), default=0.0)
    for page, line in lines:
        name = [word for word in line if word.bold]
        if line[0].left < left + EDGE and name and line[: len(name)] == name and len(name) < len(line):
            found.append((page, close(name), close(line[len(name) :])))
        elif found and line[0].left > left + 50 and not line[0].bold and found[-1][0] == page:
            found[-1] = (page, found[-1][1], f'{found[-1][2]} {close(line)}')
    return found


def _columns(heads: Sequence[Line]) -> tuple[list[float], tuple[str, ...]]:
    columns: dict[float, list[str]] = {}
    for line in heads:
        for phrase in _phrases(line):
            left = next((one for one in columns if abs(one - phrase[0].left) < EDGE), phrase[0].left)
            columns.setdefault(left, []).append(close(phrase))
    lefts = sorted(columns)
    return lefts, tuple(' '.join(columns[left]) for left in lefts)


def _phrases(line: Line) -> Iterator[list[Word]]:
    phrase = line[:1]
    for word in line[1:]:
        if word.left - phrase[-1].right > GAP * word.size:
            yield phrase
            phrase = []
        phrase.append(word)
    yield phrase


def _goes_on(line: Line, lefts: Sequence[float]) -> bool:
    """Return whether a line is still of the table: it has a name in bold, figures, or goes on in a later column."""
    return line[0].bold or line[0].left > lefts[0] + EDGE or any(word.size > FIGURE_PT for word in line)


def _add(table: Table, page: int, line: Line, lefts: Sequence[float]) -> None:
    cells: list[list[Word]] = [[] for _left in lefts]
    before: list[Word] = []
    for word in line:
        place = sum(left <= word.left + EDGE for left in lefts) - 1
        (cells[place] if place >= 0 else before).append(word)
    told = (close(before), *map(close, cells))
    if line[0].bold or any(word.size > FIGURE_PT for word in line):
        table.rows.append(Row(page, told))
    elif table.rows:
        last = table.rows[-1]
        joined = tuple(f'{one} {more}'.strip() for one, more in zip(last.cells, told, strict=True))
        table.rows[-1] = Row(last.page, joined)
