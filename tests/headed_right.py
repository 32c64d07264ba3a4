"""Tables whose figures end where their heads end: all pitches at a glance, what a square carries, cards."""

from __future__ import annotations

from collections.abc import Sequence

from headed import PHRASE_GAP_REM, NotTold, Part, Phrase, lines, phrases, said
from msgspec import Struct
from printed_words import Word

ROW_REM = 0.8
"""Rows are set larger than that, heads and small print smaller."""
EDGE_MM = 0.6
"""How far two words that end at one edge may be apart."""
Lines = Sequence[Sequence[Word]]


def right_part(page: int, title: str, below: Lines, corner: str, rem: float, touching: bool = False) -> Part:
    """Return a table of a page of the book: heads in lines, those of several columns over them, then rows."""
    rows = [max(word.size for word in line) / rem > ROW_REM for line in below]
    first = rows.index(True)
    last = next((place for place in range(first, len(below)) if not rows[place]), len(below))
    gap = PHRASE_GAP_REM * rem
    return table_to_the_right(
        page, title, below[:first], below[first:last], below[last:], corner, gap, touching
    )


class CardFace(Struct, frozen=True):
    """One face of a card."""

    title: str
    """In great figures, with the unit beside them."""
    line: str
    """Below it."""
    below: list[list[Word]]

    def table(self, page: int, corner: str, labels: int) -> Part:
        """Return the table of a face; labels says how many rows it has."""
        named = corner.split()
        first = next(place for place, line in enumerate(self.below) if line[0].text == named[-1]) + 1
        heads, rows = self.below[:first], self.below[first : first + labels]
        gap = 0.3 * max(word.size for line in heads for word in line)
        return table_to_the_right(page, self.line, heads, rows, self.below[first + labels :], corner, gap)


def card_face(words: Sequence[Word], width: float, height: float) -> CardFace:
    """Return the face that stands first on a sheet.

    Given:
        width, height  of the card, mm
    """
    largest = max(word.size for word in words)
    great = [word for word in words if word.size > largest - 0.01]
    left, top = min(word.left for word in words), min(word.base for word in great)
    mine = [
        word for word in words if word.right < left + width - 4 and top - 1 < word.base < top + height - 8
    ]
    title, line, *below = lines(mine)
    return CardFace(said(title), said(line), below)


def table_to_the_right(
    page, title, heads: Lines, rows: Lines, after: Lines, corner: str, gap: float, touching=False
) -> Part:
    """Return a table.

    Given:
        corner  words at the head of the labels, a line each or all in one
        gap     words further apart than this belong to two heads
        touching  heads may stand nearer than that: the columns end where their figures do
    """
    named, above = corner.split(), []
    for line in heads:
        words = list(line)
        while named and words and words[0].text == named[0]:
            words.pop(0), named.pop(0)
        above.append(words)
    if named:
        raise NotTold(f'page {page}, "{title}": no "{corner}" at the head of the labels')
    low = above.pop()
    rights = _ends(rows, gap) if touching else [phrase.right for phrase in phrases(low, gap)]
    columns = [[] for _ in rights]
    for word in low:
        columns[_column(word, rights, page, title)].append(word)
    extents = [
        Phrase('', min(word.left for word in words), max(word.right for word in words)) for words in columns
    ]
    names, groups = [said(words) for words in columns], []
    for line in reversed(above):
        for phrase in phrases(line, gap):
            below = [place for place, extent in enumerate(extents) if _over(phrase, extent)]
            if len(below) > 1:
                groups.insert(0, phrase)
            elif below:
                names[below[0]] = f'{phrase.text} {names[below[0]]}'
            else:
                raise NotTold(f'page {page}, "{title}": "{phrase.text}" stands over no column')
    for group in _groups(groups):
        for place, extent in enumerate(extents):
            names[place] = f'{group.text}: {names[place]}' if _over(group, extent) else names[place]
    names = [name.replace('- ', '') for name in names]
    cells = tuple(_row(line, rights, gap, page, title) for line in rows)
    notes = said([word for line in after for word in line])
    return Part(page, title, '', corner, '', tuple(names), cells, notes)


def small_tables(page: int, words: Sequence[Word], title: str, corner: str, rem: float) -> list[Part]:
    """Return the tables under a title within a page: in the half that it stands over, or in both."""
    gap, middle = (
        PHRASE_GAP_REM * rem,
        (min(word.left for word in words) + max(word.right for word in words)) / 2,
    )
    places = [
        (line[0].base, phrase)
        for line in lines(words)
        for phrase in phrases(line, gap)
        if phrase.text == title
    ]
    if len(places) != 1:
        raise NotTold(f'page {page}: "{title}" stands there {len(places)} times')
    base, over = places[0]
    sides = [over.left < middle, over.right > middle]
    halves = [
        lines([word for word in words if word.base > base + EDGE_MM and (word.left > middle) == bool(side)])
        for side in (0, 1)
        if sides[side]
    ]
    return [right_part(page, title, half, corner, rem) for half in halves]


def _ends(rows: Lines, gap: float) -> list[float]:
    """Return where the figures of the columns end."""
    ends = sorted(phrase.right for line in rows for phrase in phrases(line, gap)[1:])
    return [end for place, end in enumerate(ends) if not place or end - ends[place - 1] > EDGE_MM]


def _column(word: Word, rights: Sequence[float], page: int, title: str) -> int:
    place = next((n for n, right in enumerate(rights) if word.right <= right + EDGE_MM), None)
    if place is None:
        raise NotTold(f'page {page}, "{title}": "{word.text}" stands in no column')
    return place


def _row(line: Sequence[Word], rights: Sequence[float], gap: float, page: int, title: str):
    label, cells = [], [[] for _ in rights]
    edge = phrases(line, gap)[0].right
    for word in line:
        (label if word.right <= edge else cells[_column(word, rights, page, title)]).append(word)
    return said(label), tuple(said(cell) for cell in cells)


def _over(one: Phrase, other: Phrase) -> bool:
    return one.left < other.right and other.left < one.right


def _groups(over: Sequence[Phrase]) -> list[Phrase]:
    """Return what stands over several heads, lines above each other joined."""
    found: list[Phrase] = []
    for phrase in over:
        place = next((n for n, one in enumerate(found) if _over(phrase, one)), None)
        if place is None:
            found.append(phrase)
        else:
            one = found[place]
            left, right = min(one.left, phrase.left), max(one.right, phrase.right)
            found[place] = Phrase(f'{one.text} {phrase.text}', left, right)
    return found
