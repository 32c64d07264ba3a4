"""Reading the pages that have a row for each pitch."""

from __future__ import annotations

from fractions import Fraction

from tablegen.proof.figures import figures
from tablegen.proof.found import Fault, Found
from tablegen.proof.names import Glance
from tablegen.proof.page import Page, Phrase, nearest_head, said
from tablegen.proof.roof import ANY_BOARDS, corner
from tablegen.proof.stated import Pitch, Stated, called, pitch_of

NEXT_LINE = 2.0
"""The upper line of a head is no further above its lower line than so many sizes."""


class GlanceReader:
    """Reads every page of one glance."""

    def __init__(self, glance: Glance, book: Stated):
        self.glance, self.book, self.found = glance, book, Found()
        self.there: set[Pitch] = set()

    def page(self, page: Page) -> None:
        """Read a page, if it is one."""
        if any(one.size > 10 for one in page.named(self.glance.title)):
            if self.book.translated and not _heads(page, self.glance):
                self.found.strange.append((page.number, self.glance.title))
                return
            self.found.read.add(page.number)
            self.there |= _read(page, self.glance, self.book, self.found)

    def end(self) -> None:
        """Look for the rows of all pitches."""
        wanted = [Pitch(Fraction(rise), False) for rise in self.glance.rises] or self.book.pitches
        for pitch in wanted if self.found.read else ():
            if pitch not in self.there:
                first = min(self.found.read)
                self.found.faults.append(Fault('opening', first, called(pitch), self.glance.title, '', ''))


def _read(page: Page, glance: Glance, book: Stated, found: Found) -> set[Pitch]:
    heads = _heads(page, glance)
    there: set[Pitch] = set()
    if not heads:
        found.faults.append(Fault('pitch', page.number, glance.title, '', '', ''))
        return there
    for line in page.lines:
        if line[0].base > heads[0].base - 1 or not line[0].bold or line[0].left > heads[0].left:
            continue
        first = next((n for n, word in enumerate(line) if word.run != line[0].run), len(line))
        pitch = pitch_of(said(line[:first]))
        if pitch is None or first == len(line) or line[first].text.isalpha():
            continue
        there.add(pitch)
        right = figures(corner(pitch.slope, book.boards or ANY_BOARDS), book)
        cells = nearest_head(heads, line[first:])
        for (head, key), printed in zip(glance.columns, cells, strict=True):
            found.figure(page.number, said(line[:first]), head, printed, right[key])
    return there


def _heads(page: Page, glance: Glance) -> list[Phrase]:
    """Return the heads of the columns; none where they are not those that are known, in their order."""
    lines = sorted({round(phrase.base, 1) for phrase in page.phrases}, reverse=True)
    wanted = [head for head, _key in glance.columns]
    for base in lines:
        low = [phrase for phrase in page.phrases if abs(phrase.base - base) < 0.3]
        low.sort(key=lambda phrase: phrase.left)
        for place in range(len(low) - len(wanted) + 1):
            some = [
                phrase if phrase.text == head else _with_upper(page, phrase)
                for phrase, head in zip(low[place:], wanted, strict=False)
            ]
            if [phrase.text for phrase in some] == wanted:
                return some
    return []


def _with_upper(page: Page, low: Phrase) -> Phrase:
    """Return a head's lower line with the line above it."""
    over = [
        phrase
        for phrase in page.phrases
        if low.base + 1 < phrase.base < low.base + NEXT_LINE * low.size
        and phrase.left < low.right
        and phrase.right > low.left
    ]
    if len(over) != 1:
        return low
    text = f'{over[0].text} {low.text}'
    return Phrase(text, min(over[0].left, low.left), max(over[0].right, low.right), low.base, low.size)
