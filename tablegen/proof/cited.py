"""Following what is cited: every link to the page whose number stands in it, every entry of a pitch, every folio."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from tablegen.proof.found import Fault, Found
from tablegen.proof.page import Page, lines_of, said
from tablegen.proof.stated import Pitch, pitch_of
from tablegen.proof.word import Word


def follow(pages: Sequence[Page], openings: Mapping[Pitch, int], found: Found) -> None:
    """Follow every link, and hold every page's number against its place."""
    for page in pages:
        if page.folio:
            found.folios += 1
            if page.folio != str(page.number):
                found.faults.append(Fault('folio', page.number, '', '', page.folio, str(page.number)))
        for words, target in _links(page):
            number = _number(page, words)
            if not number:
                continue
            found.links += 1
            if number.text.strip('.,;:()') != str(target):
                found.faults.append(Fault('link', page.number, said(words), '', number.text, str(target)))
            pitch = pitch_of(said([word for word in words if word is not number]))
            if pitch is not None and openings.get(pitch, target) != target:
                found.faults.append(
                    Fault('entry', page.number, said(words), '', number.text, str(openings[pitch]))
                )


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
