"""Reading rows that have a name and up to a few figures, under the title and the heads that stand over them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from msgspec.structs import replace

from tablegen.proof.found import Found
from tablegen.proof.names import Rows
from tablegen.proof.page import SAME_LINE, Line, Page, Phrase, after, said, under

SIGNS = ('†', '‡', '§')
"""What stands beside a figure, and begins a line that says what a sign means."""
NOTHING = '—'
NOTES = 1.01
"""Figures are set larger than so many times the size of notes."""


class RowsReader:
    """The rows of one page, or of what of it stands right of an edge."""

    def __init__(
        self,
        page: Page,
        lines: Sequence[Line],
        edge: float,
        name: str,
        right: Mapping[str, str],
        found: Found,
    ):
        self.page, self.lines, self.edge, self.name, self.right, self.found = (
            page,
            lines,
            edge,
            name,
            right,
            found,
        )
        self.rows = [line for line in lines if max(word.size for word in line) > NOTES * page.notes_size]
        self.known: set[int] = set()
        """Lines that were read."""

    def read(self, groups: Sequence[Rows]) -> None:
        """Read rows group by group."""
        titles = [title for rows in groups if rows.title for title in self._titles(rows)]
        bases = sorted({title.base for title in titles}, reverse=True)
        for rows in groups:
            self._group(rows, bases)

    def figure(self, row: str, head: str, printed: str, *right: str) -> None:
        """Take down a figure of this page."""
        self.found.figure(self.page.number, f'{self.name}, {row}', head, printed, *right)

    def sentence(self, template: str, names: Mapping[str, str], end: str = '') -> None:
        """Read a line that says figures within words.

        Given:
            template  with {names} of figures
            end       what stands at its end, of figures' names too
        """
        values = {name: self.right[figure] for name, figure in names.items()}
        wanted = f'{template.format(**values)} {end.format(**values)}'.strip()
        lines = [line for line in self.lines if said(line) == wanted]
        self.known |= set(map(id, lines))
        start = template.partition('{')[0]
        instead = next((said(line) for line in self.lines if said(line).startswith(start)), '')
        self.figure(template, '', wanted if lines else instead, wanted)
        self.found.figures += len(names) - 1

    def strange(self, figures_from: float, above: float = float('inf')) -> None:
        """Take down lines with figures that no name is known for.

        Given:
            figures_from  size of type that figures are larger than
            above         height that they stand below
        """
        for line in self.lines:
            if (
                id(line) in self.known
                or line[0].bold
                or line[0].size <= figures_from
                or line[0].base >= above
            ):
                continue
            if any(map(str.isdigit, said(line))) and not said(line).startswith(SIGNS):
                self.found.strange.append((self.page.number, said(line)))

    def _titles(self, rows: Rows) -> list[Phrase]:
        return [title for title in self.page.named(rows.title) if title.left >= self.edge]

    def _group(self, rows: Rows, bases: Sequence[float]) -> None:
        heads, lines = self._under_title(rows, bases)
        named = {label: _begun(lines, label) for label, _keys in rows.rows if label}
        taken = {id(line) for told in named.values() for line, _words in told}
        bare = [line for line in lines if id(line) not in taken]
        for label, keys in rows.rows:
            right = [self.right[key] if key else '' for key in keys]
            none = set(right) == {NOTHING}
            told = named.get(label, [])
            if not label:  # of what goes on in other columns
                told = [(line, line) for line in bare[:1]]
                bare = bare[1:]
            over = heads
            if none and not told:  # a reason stands before the one dash
                told = [(line, line[-1:]) for line in lines if said(line).startswith(f'{label}: ')]
                over, right, keys = [], [NOTHING], keys[:1]
            self.known |= {id(line) for line, _words in told}
            cells = self._cells(over, told[0][1]) if len(told) == 1 else [''] * len(keys)
            row = f'{rows.title}: {label}' if rows.title else label
            for head, key, wanted, printed in zip(rows.heads, keys, right, cells, strict=False):
                if key or printed:
                    self.figure(row, head, printed, wanted)

    def _under_title(self, rows: Rows, bases: Sequence[float]) -> tuple[list[Phrase], list[Line]]:
        """Return the heads beside a title, and the lines down to the next title; for no title all lines."""
        if not rows.title:
            return [], self.rows
        titles = self._titles(rows)
        if len(titles) != 1:
            return [], []
        top = titles[0]
        wanted, near = [head for head in rows.heads if head], SAME_LINE * top.size
        heads = [
            phrase
            for phrase in self.page.phrases
            if abs(phrase.base - top.base) < near and phrase.left > top.left and phrase is not top
        ]
        heads.sort(key=lambda phrase: phrase.left)
        foot = next((base for base in bases if base < top.base - near), 0.0)
        lines = [line for line in self.rows if foot < line[0].base < top.base - 1]
        if rows.second and lines:
            second = after(lines[0], rows.second)
            said_below = under(heads, second) if second is not None else [''] * len(heads)
            heads = [
                replace(head, text=f'{head.text} {below}')
                for head, below in zip(heads, said_below, strict=True)
            ]
            self.known.add(id(lines[0]))
        return (heads, lines) if [head.text for head in heads] == wanted else ([], [])

    def _cells(self, heads: Sequence[Phrase], words: Line) -> list[str]:
        cells = under(heads, words) if heads else [' '.join(word.text for word in words)]
        return [with_signs(cell) for cell in cells]


def _begun(lines: Sequence[Line], label: str) -> list[tuple[Line, Line]]:
    """Return the lines that begin with a label, and their words after it; what goes on in other columns may begin so further right."""
    found = [(line, words) for line in lines if (words := after(line, label)) is not None]
    left = min((line[0].left for line, _words in found), default=0.0)
    return [(line, words) for line, words in found if line[0].left < left + line[0].size / 2]


def with_signs(cell: str) -> str:
    """Return a figure with its signs close to it."""
    for sign in SIGNS:
        cell = cell.replace(f' {sign}', sign)
    return cell
