"""A page as it is read: its lines, the phrases of its heads, and figures found by row and head."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cached_property
from itertools import groupby

from msgspec import Struct, field

from tablegen.proof.ink import Ink
from tablegen.proof.word import Link, Unread, Word

SAME_LINE, WORD_GAP, SLACK, SPACE, TOUCH = 0.12, 0.9, 0.14, 0.25, 0.06
"""Shares of the size of type: how far apart bases of one line are, words of one name at most, a figure past
its head, the strings of one head, and strings of one word."""
Line = list[Word]


def said(words: Sequence[Word]) -> str:
    """Return words as they are read, a word space between two."""
    return ' '.join(word.text for word in words)


def close(words: Sequence[Word]) -> str:
    """Return words of a line as they stand: one that touches the next is no word by itself."""
    told = ''
    for word, before in zip(words, [None, *words], strict=False):
        apart = before is not None and word.left - before.right > TOUCH * word.size
        told += f' {word.text}' if apart else word.text
    return told


class Phrase(Struct, frozen=True):
    """Bold words that stand together, such as a head."""

    text: str
    left: float
    right: float
    base: float
    size: float


class Page(Struct, dict=True):
    """The words of a page."""

    number: int
    """Its place in the file, from 1."""
    given: list[Word] | Unread
    links: list[Link] = field(default_factory=list)
    see: Callable[[], Ink] = Ink
    draw: Callable[[], list[Word]] = list

    @cached_property
    def words(self) -> list[Word]:
        """Return its words."""
        return self.given.read() if isinstance(self.given, Unread) else self.given

    def forget(self) -> None:
        """Keep nothing of what was read; it is read again where it is asked for."""
        for name in self.__dict__.keys() - set(self.__struct_fields__):
            del self.__dict__[name]

    @cached_property
    def ink(self) -> Ink:
        """Return what is drawn on it."""
        return self.see()

    @property
    def is_drawn(self) -> bool:
        """Return whether it is known what its drawings say."""
        return self.draw is not list

    @cached_property
    def drawn(self) -> list[Word]:
        """Return the words of parts of drawings that are placed whole; none where that is not known."""
        return self.draw()

    @cached_property
    def _foot(self) -> Line:
        """Return the lowest line: the page's number, and what the page is called beside it."""
        return next(reversed(lines_of(self.words)), [])

    @cached_property
    def folio(self) -> str:
        """Return the number printed at the foot, '' where there is none."""
        found = [word for word in self._foot if word.bold and word.text.isdigit()]
        larger = all(word.size < found[0].size for word in self._foot if not word.bold) if found else False
        return found[0].text if len(found) == 1 and larger else ''

    @cached_property
    def notes_size(self) -> float:
        """Return the size of its notes, which is that of the words at the foot."""
        return max((word.size for word in self._foot if not word.bold), default=0.0)

    @cached_property
    def body(self) -> list[Word]:
        """Return its words without that line and without what stands further out than the number: the thumb tab."""
        foot = self._foot
        if not self.folio:
            return self.words
        first = foot[0].bold and foot[0].text == self.folio
        left, right = (foot[0].left, float('inf')) if first else (0.0, foot[-1].right)
        known = set(map(id, foot))
        return [
            word for word in self.words if id(word) not in known and word.right > left and word.left < right
        ]

    @cached_property
    def lines(self) -> list[Line]:
        """Return its lines from the top down, each from left to right."""
        return lines_of(self.body)

    @cached_property
    def phrases(self) -> list[Phrase]:
        """Return its bold phrases, one a string of text; a number in a head has a string of its own a word space on."""
        found: list[Line] = []
        bold = (word for word in self.body if word.bold)
        for _run, some in groupby(bold, key=lambda word: (word.run, word.stops)):
            words = list(some)
            last = found[-1][-1] if found else words[0]
            near = words[0].base == last.base and 0 < words[0].left - last.right < SPACE * last.size
            near = near and not words[0].stops
            found[-1:] = [found[-1] + words] if found and near else [*found[-1:], words]
        return [phrase_of(words) for words in found]

    def named(self, text: str) -> list[Phrase]:
        """Return the bold phrases of these words."""
        return [phrase for phrase in self.phrases if phrase.text == text]

    @cached_property
    def pitch(self) -> str:
        """Return what the largest type of the page says, with what stands beside it: '6 in 12', '30°'."""
        if not self.body:
            return ''
        largest = max(self.body, key=lambda word: word.size)
        beside = [word for word in self.body if abs(word.base - largest.base) < SAME_LINE and word.bold]
        return said(sorted(beside, key=lambda word: word.left))


def lines_of(words: Sequence[Word]) -> list[Line]:
    """Return words line by line."""
    found: list[Line] = []
    for word in sorted(words, key=lambda word: -word.base):
        if found and abs(found[-1][0].base - word.base) < SAME_LINE * max(word.size, found[-1][0].size):
            found[-1].append(word)
        else:
            found.append([word])
    return [sorted(line, key=lambda word: word.left) for line in found]


def under(heads: Sequence[Phrase], words: Sequence[Word]) -> list[str]:
    """Return what stands under each head whose figures end at its right edge; a word past the last is under none."""
    found: list[Line] = [[] for _head in heads]
    for word in words:
        middle = (word.left + word.right) / 2
        place = next((n for n, head in enumerate(heads) if middle <= head.right + SLACK * word.size), None)
        if place is not None:
            found[place].append(word)
    return [said(cell) for cell in found]


def nearest_head(heads: Sequence[Phrase], words: Sequence[Word]) -> list[str]:
    """Return what stands under each head: a number, its fraction with it, under the one nearest to it from side to side;
    where there is one a head, each in its turn."""
    cells: list[Line] = []
    for word in words:
        last = cells[-1][-1] if cells else word
        if '/' in word.text and last.text.isdigit() and word.left - last.right < WORD_GAP * word.size:
            cells[-1].append(word)
        else:
            cells.append([word])
    if len(cells) == len(heads):
        return [said(cell) for cell in cells]
    found: list[Line] = [[] for _head in heads]
    for cell in cells:
        middle = (cell[0].left + cell[-1].right) / 2
        apart = [max(head.left - middle, middle - head.right) for head in heads]
        found[apart.index(min(apart))] += cell
    return [said(cell) for cell in found]


def after(line: Line, label: str) -> Line | None:
    """Return the words of a line right of the label that it begins with; None where it does not."""
    count = len(label.split())
    return line[count:] if said(line[:count]) == label and len(line) > count else None


def before(line: Line, label: str) -> str | None:
    """Return the figure that stands close before a label within a line; None where the label is not there."""
    wanted = label.split()
    for place in range(len(line) - len(wanted) + 1):
        if [word.text for word in line[place : place + len(wanted)]] != wanted:
            continue
        first = place
        while first and line[first].left - line[first - 1].right < WORD_GAP * line[first].size:
            first -= 1
        return said(line[first:place])
    return None


def phrase_of(words: Line) -> Phrase:
    """Return words that stand together."""
    return Phrase(
        said(words), words[0].left, words[-1].right, words[0].base, max(word.size for word in words)
    )
