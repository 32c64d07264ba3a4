"""One face of a card as it lies: its title, its table by heads and rows, and the words under and beside it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from functools import cached_property
from itertools import pairwise

from msgspec import Struct

from tablegen.proof.page import Line, Phrase, close, lines_of, said, under
from tablegen.proof.word import Word

HAIR, EDGE, GAP, SKIPPED = 0.05, 1.2, 0.45, 1.5
"""How far type may be off its size, and heads their edge, points; words of a head stand closer than GAP of their size;
rows further apart than SKIPPED times the usual have lost one between them."""


class Row(Struct, frozen=True):
    """A row of a table: its label and what stands under each head."""

    label: str
    cells: tuple[str, ...]


class CardFace(Struct, frozen=True, dict=True):
    """The words of one side of a card."""

    page: int
    words: tuple[Word, ...]

    @cached_property
    def lines(self) -> list[Line]:
        """Return its lines from the top down."""
        return lines_of(self.words)

    @cached_property
    def title(self) -> str:
        """Return what the largest type says: the pitches, or what the side is for."""
        return close(self.lines[0]) if self.lines else ''

    @cached_property
    def what(self) -> str:
        """Return the line under the title."""
        return said(self.lines[1]) if len(self.lines) > 1 else ''

    @cached_property
    def _rows(self) -> list[Line]:
        """Return the lines that begin with a number in the type of most of these."""
        below = [line for line in self.lines[2:] if line[0].text[0].isdigit()]
        sizes = Counter(round(line[0].size, 1) for line in below)
        usual = max(sizes, key=lambda size: (sizes[size], size), default=0.0)
        return [line for line in below if abs(line[0].size - usual) < HAIR * 2]

    @cached_property
    def heads(self) -> list[Phrase]:
        """Return the heads of its columns, of the labels first; each ends where its figures do at the latest."""
        rows = self._rows
        over = [word for line in self.lines[2:] if rows and line[0].base > rows[0][0].base for word in line]
        margin = min((word.left for word in over), default=0.0)
        corner = [word for word in over if word.left < margin + HAIR or self._follows(word, over, margin)]
        columns: list[list[Word]] = []
        for phrase in _phrases([word for word in over if word not in corner]):
            right = phrase[-1].right
            same = next((one for one in columns if abs(_right(one) - right) < EDGE), None)
            if same is None:
                columns.append(list(phrase))
            else:
                same += phrase
        columns.sort(key=_right)
        return [_head(corner), *map(_head, columns)]

    def _follows(self, word: Word, over: Sequence[Word], margin: float) -> bool:
        """Return whether a word stands close after one at the margin."""
        return any(
            one.base == word.base and one.left < margin + HAIR and 0 < word.left - one.right < GAP * word.size
            for one in over
        )

    @cached_property
    def rows(self) -> list[Row]:
        """Return the rows of its table."""
        found = []
        for line in self._rows:
            label = [word for word in line if word.size > line[0].size - HAIR]
            rest = [word for word in line if word not in label]
            found.append(Row(said(label), tuple(under(self.heads[1:], rest))))
        return found

    @cached_property
    def skipped(self) -> list[str]:
        """Return the labels of rows under which the room of another is empty."""
        at = [line[0].base for line in self._rows]
        gaps = [one - other for one, other in pairwise(at)]
        usual = min(gaps, default=0.0)
        return [row.label for row, gap in zip(self.rows, gaps, strict=False) if gap > SKIPPED * usual]

    @cached_property
    def foot(self) -> str:
        """Return what is said under the table."""
        low = self._rows[-1][0].base if self._rows else 0.0
        return ' '.join(close(line) for line in self.lines[2:] if line[0].base < low - 1)

    def under_head(self, head: str) -> list[Line]:
        """Return the lines between a head among words and the next one, which are bold from end to end."""
        found: list[Line] | None = None
        for line in self.lines:
            if said(line) == head:
                found = []
            elif (
                found is not None
                and len({word.run for word in line}) == 1
                and line[0].bold
                and not found_figures(line)
            ):
                break
            elif found is not None:
                found.append(line)
        return found or []


def found_figures(line: Line) -> bool:
    """Return whether a line has a digit."""
    return any(letter.isdigit() for word in line for letter in word.text)


def _phrases(words: Sequence[Word]) -> Iterator[list[Word]]:
    """Yield words that stand together, line by line."""
    for line in lines_of(words):
        phrase = line[:1]
        for word in line[1:]:
            if word.left - phrase[-1].right > GAP * word.size:
                yield phrase
                phrase = []
            phrase.append(word)
        yield phrase


def _right(words: Sequence[Word]) -> float:
    return max(word.right for word in words)


def _head(words: Sequence[Word]) -> Phrase:
    lines = lines_of(words)
    told = ' '.join(said(line) for line in lines)
    if not lines:
        return Phrase('', 0.0, 0.0, 0.0, 0.0)
    return Phrase(told, min(word.left for word in words), _right(words), lines[-1][0].base, lines[-1][0].size)
