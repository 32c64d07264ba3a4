"""Reading the covers of a book and of its sections: which pitches and pages are inside, and to what part lengths are rounded."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal

from tablegen.proof.counted import Counted
from tablegen.proof.digits import named, written
from tablegen.proof.found import Found
from tablegen.proof.names import SaidPage
from tablegen.proof.page import Page, close
from tablegen.proof.roof_reading import run_told
from tablegen.proof.sentences import told_within
from tablegen.proof.stated import Pitch, Stated, called


class CoverReader:
    """Reads all of them."""

    def __init__(self, names: SaidPage, book: Stated, counted: Counted):
        self.part, self.section, self.also, self.runs, self.steps, self.span = names.labels
        self.book, self.counted, self.found = book, counted, Found()
        self.covers: list[tuple[int, Mapping[str, str], str]] = []
        """Page, what is said of the section, and the first words below the title, or those in the largest type."""
        self.last = 0

    def page(self, page: Page) -> None:
        """Read a page, if it is one: it has no number."""
        self.last = page.number
        if page.folio or len(page.lines) < 2:
            return
        words = ' '.join(close(line) for line in page.lines[1:])
        part, section, also = (told_within(one, words) for one in (self.part, self.section, self.also))
        section = also or section
        if part is None and section is None:
            return
        self.found.read.add(page.number)
        large = max(word.size for word in page.body)
        title = ' '.join(close(line) for line in page.lines if line[0].size > large - 1)
        if part is not None:
            self._figure(
                page.number, self.part, part['part'], written(Decimal(1) / self.book.per, self.book.per)
            )
            inside = [word for line in page.lines for word in line if word.bold and word.size < large / 2]
            title = close(inside)
        if (runs := told_within(self.runs, words)) is not None:
            right = {name: run_told(getattr(self.book.runs, name)) for name in ('first', 'last', 'step')}
            self._figure(page.number, self.runs, runs['runs'], self.steps.format(**right))
        self.covers.append((page.number, section or {}, title))

    def end(self) -> None:
        """Hold what the covers say of sections against where these begin, and of pitches against where they stand."""
        ends = [*(number for number, _section, _title in self.covers[1:]), self.last + 1]
        for place, ((number, section, title), end) in enumerate(zip(self.covers, ends, strict=False), 1):
            right = {'section': place, 'sections': len(self.covers), 'first': number, 'last': end - 1}
            for name, printed in section.items():
                if name in right:
                    self._figure(number, f'{self.section}: {name}', printed, str(right[name]))
            there = self.book.pitches
            if place > 1:
                there = tuple(one for one in there if number <= self.counted.first_of(one) < end)
            spans = self._spans(there) if there else []
            if spans and not self.book.translated:
                printed = next(
                    (one for one in spans if title.startswith((f'{one}.', f'{one},')) or title == one), title
                )
                self._figure(number, '', printed, *spans)

    def _spans(self, pitches: Sequence[Pitch]) -> list[str]:
        """Return how pitches may be told, from the first to the last."""
        first, last = pitches[0], pitches[-1]
        if first == last:
            return [called(first)]
        both = [self.span.format(first=called(first), last=called(last))]
        if not (first.in_degrees or last.in_degrees):
            both.append(self.span.format(first=named(first.number), last=called(last)))
        return both

    def _figure(self, page: int, head: str, printed: str, *right: str) -> None:
        self.found.figure(page, '', head, printed, *right)
