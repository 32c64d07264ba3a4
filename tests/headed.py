"""Finding a printed figure as a carpenter does: by the title of its table, the head of its column, its row's label.

All from words and their places on the finished page; nothing here knows what a table should hold. Where two columns
of a table bear one head, or two rows one label, there is no telling them apart, and asking for either is an error.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from msgspec import Struct
from msgspec.structs import replace
from printed_words import Word

REM_MM = 25.4 * 10 / 72
"""The pocket edition's unit of type sizes, mm."""
TITLE_REM, FIGURE_REM = 1.05, 1.9
"""Titles are as large as that or larger, the great figure of a pitch larger still."""
PROSE_REM, HAIR_REM = (0.745, 0.765), 0.01
HEAD_LINES_REM = 0.96
"""Lines of prose stand further apart than the two lines of heads."""
PHRASE_GAP_REM = 0.28
"""Words further apart than this belong to two heads."""
REACH_MM, CELL_REACH_MM = 0.9, 1.5
"""How far a figure may begin left of its head, or end right of it."""
SAME_LINE_MM = 0.6


class NotTold(LookupError):
    """A figure that the page does not tell: no such head or label, or several alike."""


class Phrase(Struct, frozen=True):
    """Words that stand together."""

    text: str
    left: float
    right: float


class Part(Struct, frozen=True):
    """A table, or as much of it as stands on one page."""

    page: int
    title: str
    line: str
    """The small print between title and heads."""
    corner: str
    span: str
    """What stands over several heads at once."""
    heads: tuple[str, ...]
    rows: tuple[tuple[str, tuple[str, ...]], ...]
    """Label and cells, '' where nothing is printed."""
    notes: str

    def cell(self, head: str, label: str) -> str:
        """Return what is printed under a head beside a label."""
        column, row = (
            self._only(self.heads, head, 'column'),
            self._only([name for name, _ in self.rows], label, 'row'),
        )
        return self.rows[row][1][column]

    def _only(self, names: Sequence[str], wanted: str, what: str) -> int:
        places = [place for place, name in enumerate(names) if name == wanted]
        if len(places) == 1:
            return places[0]
        which = ', '.join(str(place + 1) for place in places)
        said = (
            f'{what}s {which} are all "{wanted}"' if places else f'no {what} "{wanted}" among {list(names)}'
        )
        raise NotTold(f'page {self.page}, "{self.title}": {said}')


class Table(Struct, frozen=True):
    """A table that may go over several pages, by rows or by columns."""

    parts: tuple[Part, ...]

    @property
    def heads(self) -> list[str]:
        return list(dict.fromkeys(head for part in self.parts for head in part.heads))

    @property
    def labels(self) -> list[str]:
        return list(dict.fromkeys(label for part in self.parts for label, _ in part.rows))

    def cell(self, head: str, label: str) -> tuple[int, str]:
        """Return the page and what is printed there under a head beside a label."""
        here = [
            part for part in self.parts if head in part.heads and label in [name for name, _ in part.rows]
        ]
        if len(here) != 1:
            pages = [part.page for part in here]
            raise NotTold(f'"{self.parts[0].title}": "{head}" beside "{label}" stands on pages {pages}')
        return here[0].page, here[0].cell(head, label)


# Lines -------------------------------------------------------------------------------------------------------


def lines(words: Sequence[Word]) -> list[list[Word]]:
    """Return words by the line they stand on, from the top, each line from the left."""
    found: list[list[Word]] = []
    for word in sorted(words, key=lambda word: word.base):
        if found and word.base - found[-1][0].base < SAME_LINE_MM:
            found[-1].append(word)
        else:
            found.append([word])
    return [sorted(line, key=lambda word: word.left) for line in found]


def phrases(line: Sequence[Word], gap: float) -> list[Phrase]:
    """Return the words of a line in groups that stand further apart than a gap."""
    found: list[Phrase] = []
    for word in line:
        if found and word.left - found[-1].right < gap:
            found[-1] = Phrase(f'{found[-1].text} {word.text}', found[-1].left, word.right)
        else:
            found.append(Phrase(word.text, word.left, word.right))
    return found


def said(words: Sequence[Word]) -> str:
    """Return words as they are read; what was broken at a hyphen or set apart from its sign is joined."""
    return ' '.join(word.text for word in words).replace('− ', '−')


def marked(cell: str) -> str:
    """Return a cell with its marks at its figure: beside a whole number they stand where its fraction would."""
    figure = cell.rstrip('†‡§')
    return figure.rstrip() + cell[len(figure) :]


def read(words: Sequence[Word]) -> str:
    """Return words of one line or several as they are read."""
    return ' '.join(said(line) for line in lines(words))


def body(words: Sequence[Word], left: float, right: float, foot: float) -> list[Word]:
    """Return the words of a page without its tab and its folio."""
    return [word for word in words if left - 1 < word.left and word.right < right + 1 and word.base < foot]


# Tables at tab stops: a head stands where its column begins ----------------------------------------------------


def sections(words: Sequence[Word], rem: float) -> Iterator[tuple[str, list[list[Word]]]]:
    """Return every title of a page with the lines below it, to the next title."""
    title, below = None, []
    for line in lines(words):
        sizes = [word.size / rem for word in line]
        if min(sizes) >= TITLE_REM and max(sizes) < FIGURE_REM:
            if title is not None:
                yield title, below
            title, below = said(line), []
        else:
            below.append(line)
    if title is not None:
        yield title, below


def reference_part(
    page: int, title: str, below: Sequence[Sequence[Word]], corner: str, span: str, rem: float
) -> Part:
    """Return a table of the reference pages.

    Given:
        corner  words at the head of the labels, which must stand there
        span    words over several heads, which must stand there; '' for none
    """
    first = next((place for place, line in enumerate(below) if not _prose(line, rem)), None)
    if not first:
        raise NotTold(f'page {page}, "{title}": no rows')
    last = next((place for place in range(first, len(below)) if _prose(below[place], rem)), len(below))
    low = below[first - 1]
    two = first > 1 and low[0].base - below[first - 2][0].base < HEAD_LINES_REM * rem
    high = below[first - 2] if two else []
    line = said([word for line in below[: first - 1 - two] for word in line])
    heads = _heads_at_stops(page, title, high, low, corner, span, rem)
    rows = rows_under(below[first:last], [head.left for head in heads])
    notes = said([word for line in below[last:] for word in line])
    return Part(page, title, line, corner, span, tuple(head.text for head in heads), rows, notes)


def _prose(line: Sequence[Word], rem: float) -> bool:
    return all(PROSE_REM[0] <= word.size / rem <= PROSE_REM[1] for word in line)


def _heads_at_stops(page, title, high, low, corner, span, rem) -> list[Phrase]:
    high, low = list(high), list(low)
    named = corner.split()
    upper = [high.pop(0) for word in named[:-1] if high and high[0].text == word]
    lower = [low.pop(0) for word in named[len(upper) :] if low and low[0].text == word]
    if said([*upper, *lower]) != corner:
        raise NotTold(f'page {page}, "{title}": no "{corner}" at the head of the labels')
    if span:
        if said(high) != span:
            raise NotTold(f'page {page}, "{title}": "{said(high)}" stands over the heads, not "{span}"')
        high = []
    heads = phrases(low, PHRASE_GAP_REM * rem)
    for above in phrases(high, PHRASE_GAP_REM * rem):
        place = max(
            (place for place, head in enumerate(heads) if head.left <= above.left + REACH_MM), default=None
        )
        if place is None:
            raise NotTold(f'page {page}, "{title}": "{above.text}" stands over no head')
        heads[place] = replace(heads[place], text=f'{above.text} {heads[place].text}')
    return heads


def rows_under(
    below, lefts: Sequence[float], reach: float = CELL_REACH_MM
) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """Return labels and cells: a word is in the last column that begins left of it."""
    rows = []
    for line in below:
        label, cells = [], [[] for _ in lefts]
        for word in line:
            places = [place for place, left in enumerate(lefts) if left <= word.left + reach]
            (cells[places[-1]] if places else label).append(word)
        rows.append((said(label), tuple(said(cell) for cell in cells)))
    return tuple(rows)
