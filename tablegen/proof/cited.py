"""Following what is cited: every link to the page whose number stands in it, every entry of a pitch, every folio."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from msgspec.structs import replace

from tablegen.proof.found import Fault, Found
from tablegen.proof.page import Page, lines_of, said
from tablegen.proof.stated import Pitch, pitch_of
from tablegen.proof.word import Word

TITLE = 1.3
"""Heads are set larger than so many times the words at the foot."""


class Follower:
    """Follows every link, and holds every page's number against its place.

    Given:
        openings  the page of each side of a pitch's opening, which all are known at the end
    """

    def __init__(self, openings: Mapping[tuple[Pitch, int], int]):
        self.openings, self.found = openings, Found()
        self.entries: list[tuple[Pitch, Fault]] = []
        """Links that name a pitch, as they would be told."""
        self.headed: list[tuple[str, Fault]] = []
        """The same of links that may name the head of a page."""
        self.titled: dict[str, set[int]] = {}
        """Pages by their heads."""

    def page(self, page: Page) -> None:
        """Read its number, and follow its links."""
        if page.folio:
            self.found.folios += 1
            if page.folio != str(page.number):
                self.found.faults.append(Fault('folio', page.number, '', '', page.folio, str(page.number)))
        title = next(iter(page.phrases), None)
        if title and page.folio and title.size > page.notes_size * TITLE:
            self.titled.setdefault(title.text, set()).add(page.number)
        for words, target in _links(page):
            number = _number(page, words)
            if not number:
                continue
            self.found.links += 1
            if number.text.strip('.,;:()') != str(target):
                self.found.faults.append(
                    Fault('link', page.number, said(words), '', number.text, str(target))
                )
            named = said([word for word in words if word is not number])
            pitch = pitch_of(named)
            if pitch is None:
                entry = Fault('title', page.number, named, '', number.text, str(target))
                self.headed.append((named, entry))
                continue
            entry = Fault('entry', page.number, said(words), '', number.text, str(target))
            self.entries.append((pitch, entry))

    def end(self) -> None:
        """Say which links of a pitch lead elsewhere than to its opening, and which of a head elsewhere than to a page that has it."""
        for named, entry in self.headed:
            there = self.titled.get(named, set())
            if there and int(entry.right) not in there:
                self.found.faults.append(replace(entry, right=str(min(there))))
        for pitch, entry in self.entries:
            right = str(self.openings.get((pitch, 0), entry.right))
            if right != entry.right:
                self.found.faults.append(replace(entry, right=right))


def _links(page: Page) -> Iterator[tuple[list[Word], int]]:
    """Yield the words that each link covers and the place of the page that it leads to."""
    for link in page.links:
        words = [
            word
            for word in page.words
            if link.left <= (word.left + word.right) / 2 <= link.right
            and link.low <= word.base + word.size / 4 <= link.high
        ]
        if words:
            yield words, link.target


def _number(page: Page, words: Sequence[Word]) -> Word | None:
    """Return the page number of a link: the last of its words, or what stands next on the line of an entry."""
    if _is_number(words[-1]) and (len(words) == 1 or not pitch_of(said(words))):
        return words[-1]
    line = next(line for line in lines_of(page.words) if words[-1] in line)
    after = line[line.index(words[-1]) + 1 :]
    return after[0] if after and after[0].bold and _is_number(after[0]) else None


def _is_number(word: Word) -> bool:
    return word.text.strip('.,;:()').isdigit()
