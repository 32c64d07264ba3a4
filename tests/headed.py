"""Finding a printed figure as a carpenter does: by the title of its table, the head of its column, its row's label.

All from words and their places on the finished page; nothing here knows what a table should hold. Where two columns
of a table bear one head, or two rows one label, there is no telling them apart, and asking for either is an error.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from itertools import pairwise

from printed_words import Word

REM_MM = 25.4 * 10 / 72
"""The pocket edition's unit of type sizes, mm."""
TITLE_REM, FIGURE_REM = 1.05, 2.0
"""Titles are as large as that or larger, the great figure of a pitch larger still."""
PROSE_REM, HAIR_REM = (0.745, 0.765), 0.01
HEAD_LINES_REM = 0.96
"""Lines of prose stand further apart than the two lines of heads."""
PHRASE_GAP_REM = 0.28
"""Words further apart than this belong to two heads."""
REACH_MM = 0.9
"""How far a figure may begin left of its head, or end right of it: a digit is narrower in one layer than in the other."""
SAME_LINE_MM = 0.6


class NotTold(LookupError):
    """A figure that the page does not tell: no such head or label, or several alike."""


@dataclass(frozen=True, slots=True)
class Phrase:
    """Words that stand together."""

    text: str
    left: float
    right: float


@dataclass(frozen=True, slots=True)
class Part:
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


@dataclass(frozen=True, slots=True)
class Table:
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
    rows = _rows(below[first:last], [head.left for head in heads])
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


def _rows(below, lefts: Sequence[float]) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """Return labels and cells: a word is in the last column that begins left of it."""
    rows = []
    for line in below:
        label, cells = [], [[] for _ in lefts]
        for word in line:
            places = [place for place, left in enumerate(lefts) if left <= word.left + REACH_MM]
            (cells[places[-1]] if places else label).append(word)
        rows.append((said(label), tuple(said(cell) for cell in cells)))
    return tuple(rows)


# Tables of runs ------------------------------------------------------------------------------------------------


def grid_part(
    page: int, below: Sequence[Sequence[Word]], title: str, corner: str, rem: float
) -> tuple[Part, Part | None]:
    """Return a table of runs or jacks, and what it says of small runs to add at its foot, if anything."""
    start = next((place for place, line in enumerate(below) if line[0].text == corner), None)
    if start is None:
        raise NotTold(f'page {page}, "{title}": no head "{corner}"')
    heads = phrases(below[start][1:], PHRASE_GAP_REM * rem)
    size = max(word.size for word in below[start + 1])
    last = next(
        (
            n
            for n in range(start + 1, len(below))
            if abs(max(w.size for w in below[n]) - size) > HAIR_REM * rem
        ),
        len(below),
    )
    rows = _rows(below[start + 1 : last], [head.left for head in heads])
    line = said([word for line in below[:start] for word in line])
    part = Part(page, title, line, corner, '', tuple(head.text for head in heads), rows, '')
    if last < len(below) and below[last][0].text == 'for':
        names = phrases(below[last][1:], PHRASE_GAP_REM * rem)
        added = _rows(below[last + 1 : last + 2], [name.left for name in names])
        return part, Part(page, title, '', 'for', '', tuple(name.text for name in names), added, '')
    return replace(part, notes=said([word for line in below[last:] for word in line])), None


# Tables whose heads end where their figures end ------------------------------------------------------------------


def right_part(
    page: int, title: str, below: Sequence[Sequence[Word]], corner: str, rem: float, is_row: Callable
) -> Part:
    """Return a table whose columns are set to the right, its heads in one line or more.

    Given:
        is_row  tells a row from a line of heads or of small print
    """
    first = next(place for place, line in enumerate(below) if is_row(line))
    last = next((place for place in range(first, len(below)) if not is_row(below[place])), len(below))
    named, above = corner.split(), []
    for line in below[:first]:
        line = list(line)
        while named and line and line[0].text == named[0]:
            line.pop(0), named.pop(0)
        above.append(phrases(line, PHRASE_GAP_REM * rem))
    if named:
        raise NotTold(f'page {page}, "{title}": no "{corner}" at the head of the labels')
    rights = sorted({round(phrase.right, 1): phrase.right for phrase in above[-1]}.values())
    texts = ['' for _ in rights]
    for phrase in (phrase for line in above for phrase in line):
        place = next((n for n, right in enumerate(rights) if abs(right - phrase.right) < REACH_MM), None)
        if place is None:
            raise NotTold(f'page {page}, "{title}": "{phrase.text}" stands over no column')
        texts[place] = f'{texts[place]} {phrase.text}'.strip()
    rows = []
    for line in below[first:last]:
        label, cells = [], [[] for _ in rights]
        edge = phrases(line, PHRASE_GAP_REM * rem)[0].right
        for word in line:
            place = next((n for n, right in enumerate(rights) if word.right <= right + REACH_MM), None)
            (label if word.right <= edge else cells[place]).append(word)
        rows.append((said(label), tuple(said(cell) for cell in cells)))
    heads = tuple(text.replace('- ', '') for text in texts)
    return Part(
        page, title, '', corner, '', heads, tuple(rows), said([w for line in below[last:] for w in line])
    )


# Names and figures -----------------------------------------------------------------------------------------------


@dataclass
class Facts:
    """A page of names with a figure at the end of each line, under headings, in two halves."""

    page: int
    found: dict[tuple[str, str], list[str]] = field(default_factory=dict)

    def figure(self, heading: str, label: str) -> str:
        """Return the figure beside a label under a heading; one set in under another is 'that one: this one'."""
        figures = self.found.get((heading, label), [])
        if len(figures) != 1:
            known = [name for head, name in self.found if head == heading]
            raise NotTold(
                f'page {self.page}, "{heading}": {len(figures)} figures for "{label}" among {known}'
            )
        return figures[0]


def facts(page: int, words: Sequence[Word], left: float, right: float, rem: float) -> Facts:
    """Return what a page says in lines of name and figure, each half by itself."""
    found, middle = Facts(page), (left + right) / 2
    for begin, end in ((left, middle), (middle, right)):
        heading, above = '', ''
        edge = None
        for line in lines([word for word in words if begin - 1 < word.left < end]):
            if all(TITLE_REM > word.size / rem > 0.95 for word in line):
                heading, edge = said(line), line[0].left
            elif heading and len(line) > 1:
                cut = max(
                    pairwise(range(len(line))), key=lambda pair: line[pair[1]].left - line[pair[0]].right
                )[1]
                name = said(line[:cut])
                if line[0].left > edge + 0.1 * rem:
                    name = f'{above}: {name}'
                else:
                    above = name
                found.found.setdefault((heading, name), []).append(said(line[cut:]))
    return found
